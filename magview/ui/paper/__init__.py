"""Documents as PDF: the only room that lays out pages with Qt. What a document is stands in `magview.paper`.

Begin reading in `pdf.py`.
"""
