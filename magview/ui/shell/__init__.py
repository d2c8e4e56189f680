"""The window that holds the six places, with its bar, menus and foot; it knows all of them, none knows it.

Begin reading in `window.py`, then `places.py`.
"""
