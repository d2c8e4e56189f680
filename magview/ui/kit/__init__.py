"""Parts that every screen uses: the look, widgets (gauge, steps, strip, cards, table), entry fields, file dialogs,
language, start-up order.

Nothing here knows a place. Begin reading in `look.py`.
"""
