"""Work: the place, and a job sheet as a page.

What the bench has for a sheet comes through a protocol; the bench is not known here.
Begin reading in `sheet_page.py`.
"""
