"""Files of one's own: drafts of magnetos, engines and installations, and the fields a guided editor asks for.

A draft keeps what was typed: text that is no number stays in it and is refused at its field. No Qt. Begin
reading in `drafts.py`.
"""
