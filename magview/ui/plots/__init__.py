"""The plots on screen, drawn from `magview.curves`.

Begin reading in `sheet.py`.
"""
