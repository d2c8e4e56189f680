"""The window that holds the places; it knows all of them, none knows it.

Begin reading in `window.py`.
"""
