"""The bench: the place, and its page with pictures, plots and the calculators' panels.

What other places may ask of it stands in `readings.py`. Begin reading in `page.py`; the pictures share
their room in `pictures.py`.
"""
