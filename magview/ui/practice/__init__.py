"""The practice room: pictures without numbers, the tray, the work, and the debrief.

Begin reading in `window.py`.
"""
