"""Learn: the place, and a lesson as a page, which is the practice room with a step above it.

Begin reading in `page.py`.
"""
