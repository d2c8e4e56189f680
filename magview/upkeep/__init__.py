"""The program's own housekeeping: its folders, its log, reports of its faults, its place on the desktop.

A report names kinds of act and numbers, no file and no typed word; it is offered at the next start and sent
nowhere. Begin reading in `places.py`.
"""
