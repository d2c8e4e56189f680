"""What every screen uses: widgets, entry fields, theme, language, start-up order.

Nothing here knows a place. Begin reading in `style.py`.
"""
