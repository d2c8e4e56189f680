"""The guide: pages, search, and the book as one file. Nothing here knows Qt.

The pages are Markdown in ``resources/guide``, in the order of its ``index.md``; formulas stand there and nowhere
else. Begin reading in `pages.py`.
"""
