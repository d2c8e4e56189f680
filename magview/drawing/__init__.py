"""Pictures as data: pure functions from a state to shapes in millimetres and degrees, and SVG of them.

Screen, paper and class draw the same shapes. No Qt, no colours of a theme.
Begin reading in `scene.py`, then `breaker_hero.py`.

The drawing is the computation: the cam's outline is made from the lift curve and the arm stands where the linkage
puts it, so the gap on screen is the gap in the table; a test measures it in pixels.
"""
