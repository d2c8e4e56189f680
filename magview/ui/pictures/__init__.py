"""The pictures on screen: drawn from `magview.drawing`, turned by hand, mouse or keyboard.

Begin reading in `picture_view.py` and `scene_painter.py`.
"""
