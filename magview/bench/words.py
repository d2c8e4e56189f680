"""Signs into words of the trade, always with the viewpoint: the one place where + becomes "clockwise"."""

from __future__ import annotations

from typing import Literal

from magview.physics.coupling import Move
from magview.spec.magneto import Magneto, Rotation

Viewpoint = Literal["drive end", "breaker end"]


def direction_word(sign: float, rotation: Rotation, viewpoint: Viewpoint) -> str:
    """The way something turns, as a watcher sees it.

    Parameters
    ----------
    sign : above 0 = with the rotor's rotation, below 0 = against it [-]; only its sign counts.
    rotation : the rotor's rotation as the file has it, seen from the drive end.
    viewpoint : where the watcher stands; the breaker end sees the mirror image.

    Returns
    -------
    "clockwise" or "anticlockwise"; nothing for 0.
    """
    if sign == 0:
        return ""
    clockwise = (sign > 0) == (rotation == "clockwise")
    return "clockwise" if clockwise == (viewpoint == "drive end") else "anticlockwise"


def breaker_end_sense(magneto: Magneto) -> int:
    """+1 where the rotor turns clockwise seen from the breaker end, −1 where anticlockwise."""
    return 1 if direction_word(1, magneto.rotation, "breaker end") == "clockwise" else -1


def drive_end_sense(magneto: Magneto) -> int:
    """+1 where the rotor turns clockwise seen from the drive end, −1 where anticlockwise."""
    return -breaker_end_sense(magneto)


def plate_move(magneto: Magneto, degrees: float) -> str:
    """Say a backplate move [deg] as a person would."""
    way = "with" if degrees >= 0 else "against"
    seen = direction_word(1 if degrees >= 0 else -1, magneto.rotation, "breaker end")
    return f"turn the backplate {abs(degrees):.2f}° {way} rotation ({seen} seen from the breaker end)"


def screw_move(magneto: Magneto, degrees: float) -> str:
    """Say a contact-screw move [deg] as a person would, looking at the screw's head."""
    clockwise = (degrees >= 0) == magneto.contact_screw.positive_is_clockwise
    effect = "closer" if degrees >= 0 else "wider"
    word = "clockwise" if clockwise else "anticlockwise"
    return f"turn the contact screw {abs(degrees):.2f}° {word} (contacts {effect})"


def setting_moves(magneto: Magneto, plate_deg: float, screw_deg: float) -> list[str]:
    """The moves of plate and screw [deg] that are large enough to be made."""
    moves = []
    if abs(plate_deg) >= 0.005:
        moves.append(plate_move(magneto, plate_deg))
    if abs(screw_deg) >= 0.005:
        moves.append(screw_move(magneto, screw_deg))
    return moves


def way_words(teeth: int) -> str:
    """A number of teeth, positive with rotation, where the rotation is not known."""
    if teeth == 0:
        return "not moved"
    count = "1 tooth" if abs(teeth) == 1 else f"{abs(teeth)} teeth"
    return f"{count} {'with' if teeth > 0 else 'against'} rotation"


def short_words(teeth: int) -> str:
    """Teeth for a narrow column: "3 with", "1 against"."""
    return f"{abs(teeth)} {'with' if teeth > 0 else 'against'}" if teeth else "0"


def teeth_words(teeth: int, rotation: Rotation, viewpoint: Viewpoint) -> str:
    """A number of teeth, positive with rotation, as words with their viewpoint.

    Examples
    --------
    >>> teeth_words(-2, "anticlockwise", "drive end")
    '2 teeth against rotation (clockwise seen from the drive end)'
    """
    if teeth == 0:
        return way_words(teeth)
    return f"{way_words(teeth)} ({direction_word(teeth, rotation, viewpoint)} seen from the {viewpoint})"


def move_words(move: Move, rotation: Rotation, viewpoint: Viewpoint) -> tuple[str, str]:
    """What to do with the magneto's flange on the disc, and with the disc on the drive's flange."""
    return (
        teeth_words(move.magneto_teeth, rotation, viewpoint),
        teeth_words(move.disc_teeth, rotation, viewpoint),
    )
