"""Pictures as data: pure functions from a state to shapes in millimetres and degrees, and SVG of them.

Screen, paper and class draw the same shapes. No Qt, no colours of a theme. Begin reading in `breaker_end.py`.
"""
