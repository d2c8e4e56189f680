"""Lessons over the practice room.

Begin reading in `lesson_view.py`.
"""
