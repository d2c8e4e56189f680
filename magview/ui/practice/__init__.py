"""Practise: the place, and an attempt as a page: pictures without numbers, the tray, the work, and the debrief.

Nothing here knows a lesson or a class. Begin reading in `page.py`.
"""
