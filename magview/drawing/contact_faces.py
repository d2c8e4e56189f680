"""The faces of the contacts as eyes find them: frosted, light marks, a mound, a deep pit; edge on and face on."""

from __future__ import annotations

from typing import Literal, get_args

import numpy as np

from magview.drawing.breaker_end import BreakerLayout
from magview.drawing.scene import Corner, Glass, Group, Piece, Scene, Style
from magview.drawing.shapes import Array, circle, polar

Grade = Literal["frosted", "light", "mound", "pit"]


def faces_grade(faces: str) -> Grade | None:
    """The grade that faces are drawn in; None for faces that are new or dressed flat."""
    return next((grade for grade in get_args(Grade) if grade == faces), None)


def pip_outline(layout: BreakerLayout, height_mm: float) -> Array:
    """A mound on the fixed contact's face, so high [mm], about a third of the face wide."""
    k, arm = layout.size, layout.arms.contact_arm_mm
    across = np.linspace(-0.8 * k, 0.8 * k, 17)
    up = height_mm * np.cos(np.linspace(-np.pi / 2, np.pi / 2, 17)) ** 2
    return np.array([layout.at(arm + float(a), float(u)) for a, u in zip(across, up, strict=True)])


def face_glass(grade: Grade, corner: Corner) -> Glass:
    """One face seen from the front, in a glass; the zero is its middle and its radius is 1."""
    face = Piece("contacts", (circle((0.0, 0.0), 0.92),), Style("contact", "contact_line", 1.3))
    group = Group("face", "moving", (face, *_marks(grade)), clip=circle((0.0, 0.0), 1.0))
    scene = Scene("face", (-1.0, -1.0, 1.0, 1.0), (group,))
    return Glass(corner, scene, 1.0, 30.0, 0.11, above_em=2.4, tells_factor=False)


def _spots(count: int, radius: float, within: float, turn_deg: float = 0.0) -> tuple[Array, ...]:
    """Spots spread evenly over a disc, as seeds stand in a flower: the same every time."""
    places = [polar(within * (i / count) ** 0.5, 137.508 * i + turn_deg) for i in range(count)]
    return tuple(circle((float(x), float(y)), radius, 12) for x, y in places)


def _marks(grade: Grade) -> tuple[Piece, ...]:
    frost = Piece("contacts", _spots(160, 0.02, 0.86), Style("hair", fill_alpha=0.55))
    if grade == "frosted":
        return (frost,)
    if grade == "light":
        return (
            frost,
            Piece("contacts", _spots(9, 0.06, 0.6, 40.0), Style("steel_low", "contact_line")),
        )
    light = tuple(circle((-0.06 * i, 0.07 * i), 0.42 - 0.12 * i, 48) for i in range(3))
    if grade == "mound":
        shades = ("steel", "steel_high", "contact")
        return (
            frost,
            *(Piece("contacts", (o,), Style(s, "contact_line")) for o, s in zip(light, shades, strict=True)),
        )
    burnt = Piece("contacts", (_ragged(0.62, 0.06),), Style("bracket", "bracket_line", fill_alpha=0.8))
    pit = Piece("contacts", (_ragged(0.36, 0.05),), Style("steel_low", "contact_line", 1.3))
    deep = Piece("contacts", (_ragged(0.2, 0.03),), Style("contact_line"))
    return frost, burnt, pit, deep


def _ragged(radius: float, by: float) -> Array:
    turns = np.linspace(0.0, 360.0, 60, endpoint=False)
    wave = np.sin(np.radians(5 * turns)) + 0.6 * np.sin(np.radians(11 * turns + 40.0))
    return polar(radius + by * wave, turns)
