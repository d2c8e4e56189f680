"""The guide: the place, its page, and a window of its own beside the work.

Begin reading in `page.py`.
"""
