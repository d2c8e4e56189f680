"""The guided editor for files of one's own.

Nothing here knows where its page stands. Begin reading in `editor.py`.
"""
