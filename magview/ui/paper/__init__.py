"""PDF: the only room that lays out pages with Qt.

Begin reading in `pdf.py`.
"""
