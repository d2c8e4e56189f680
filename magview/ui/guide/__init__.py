"""The guide on screen.

Begin reading in `window.py`.
"""
