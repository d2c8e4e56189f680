"""Behaviour of cam, engine, coil and coupling: numpy arrays in, arrays or small frozen results out.

Rooms: `cam` and `engine` at the bottom; `electric`, `trials`, `uncertainty`; `wear` on top. Not here: sentences for
people, unless an error says one. Begin reading in `cam/setting.py`.

No iteration over the mechanism: the profile is offset by the heel's radius (pitch curve), each of its points meets
the heel at a cam angle in closed form, and the slopes of the lift curve are closed form too. The lift curve needs
numpy only; scipy is imported where something needs it, for it loads slowly. A cam whose heel would ride over its
hollow is refused when its curve is built. Public functions take and return degrees and millimetres and say so in
their names; positive is the way the rotor turns in service, what opens late has a positive error. The formulas
stand in the guide's theory pages.
"""
