"""Signs into words of the trade, always with the viewpoint: the one place where + becomes "clockwise"."""

from __future__ import annotations

from typing import Literal

from magview.spec.magneto import Magneto, Rotation

Viewpoint = Literal["drive end", "breaker end"]


def turning_word(sign: float, rotation: Rotation, viewpoint: Viewpoint) -> Rotation:
    """Whether a turn of this sign (positive = with rotation) looks clockwise from a viewpoint.

    `rotation` is the magneto's, as seen from the drive end; the breaker end sees the mirror image.
    """
    clockwise = (sign >= 0) == (rotation == "clockwise")
    return "clockwise" if clockwise == (viewpoint == "drive end") else "anticlockwise"


def breaker_end_sense(magneto: Magneto) -> int:
    """+1 where the rotor turns clockwise seen from the breaker end, −1 where anticlockwise."""
    return 1 if turning_word(1, magneto.rotation, "breaker end") == "clockwise" else -1


def plate_move(magneto: Magneto, degrees: float) -> str:
    """Say a backplate move [deg] as a person would."""
    way = "with" if degrees >= 0 else "against"
    seen = turning_word(degrees, magneto.rotation, "breaker end")
    return f"turn the backplate {abs(degrees):.2f}° {way} rotation ({seen} seen from the breaker end)"


def screw_move(magneto: Magneto, degrees: float) -> str:
    """Say a contact-screw move [deg] as a person would, looking at the screw's head."""
    clockwise = (degrees >= 0) == magneto.contact_screw.positive_is_clockwise
    effect = "closer" if degrees >= 0 else "wider"
    word = "clockwise" if clockwise else "anticlockwise"
    return f"turn the contact screw {abs(degrees):.1f}° {word} (contacts {effect})"
