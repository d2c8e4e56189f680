"""The calculator's pages beside the pictures.

Begin reading in `setting_panel.py`.
"""
