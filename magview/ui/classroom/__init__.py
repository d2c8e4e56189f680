"""The class: a pupil's desk, an instructor's set, exercises being written, and a class gathered.

Begin reading in `room.py`.
"""
