"""The bench: the place, and its page with pictures, plots and the calculators' panels.

What other places may ask of it stands in `readings.py`. Begin reading in `page.py`; its pictures share the room in `pictures.py`.
"""
