"""The job sheet on screen.

Begin reading in `window.py`.
"""
