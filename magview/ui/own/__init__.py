"""The guided editor for files of one's own.

Begin reading in `window.py`.
"""
