"""Files of one's own: drafts of magnetos, engines and installations, and the fields a guided editor asks for.

No Qt. Begin reading in `drafts.py`.
"""
