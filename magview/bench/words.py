"""Signs into words of the trade, always with the viewpoint: the one place where + becomes "clockwise"."""

from __future__ import annotations

import re
from typing import Literal

from magview.physics.engine.coupling import Move
from magview.spec.base import SpecError
from magview.spec.engine import Engine
from magview.spec.language import in_english, marked, tr, tr_n
from magview.spec.magneto import Magneto, Rotation

Viewpoint = Literal["drive end", "breaker end", "engine"]
"""The last: as one stands at the engine, the magneto taken off, which is the breaker end's side."""


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
    return tr("clockwise") if _clockwise(sign, rotation, viewpoint) else tr("anticlockwise")


def _clockwise(sign: float, rotation: Rotation, viewpoint: Viewpoint) -> bool:
    return ((sign > 0) == (rotation == "clockwise")) == (viewpoint == "drive end")


def breaker_end_sense(magneto: Magneto) -> int:
    """+1 where the rotor turns clockwise seen from the breaker end, −1 where anticlockwise."""
    return 1 if _clockwise(1, magneto.rotation, "breaker end") else -1


def cam_sense(magneto: Magneto) -> int:
    """+1 where the cam turns clockwise seen from the breaker end, else −1; plate and marks go by it."""
    return -breaker_end_sense(magneto) if magneto.cam.turns_against_rotor else breaker_end_sense(magneto)


def drive_end_sense(magneto: Magneto) -> int:
    """+1 where the rotor turns clockwise seen from the drive end, −1 where anticlockwise."""
    return -breaker_end_sense(magneto)


_PLATE = {
    (True, True): marked("turn the backplate {angle:deg} with rotation (clockwise seen from the breaker end)"),
    (True, False): marked("turn the backplate {angle:deg} with rotation (anticlockwise seen from the breaker end)"),
    (False, True): marked("turn the backplate {angle:deg} against rotation (clockwise seen from the breaker end)"),
    (False, False): marked(
        "turn the backplate {angle:deg} against rotation (anticlockwise seen from the breaker end)"
    ),
}
"""By with rotation, and clockwise."""

_PLATE_BY_CAM = {
    (True, True): marked("turn the backplate {angle:deg} with the cam (clockwise seen from the breaker end)"),
    (True, False): marked("turn the backplate {angle:deg} with the cam (anticlockwise seen from the breaker end)"),
    (False, True): marked("turn the backplate {angle:deg} against the cam (clockwise seen from the breaker end)"),
    (False, False): marked(
        "turn the backplate {angle:deg} against the cam (anticlockwise seen from the breaker end)"
    ),
}
"""The same where the cam turns against the rotor."""


def plate_move(magneto: Magneto, degrees: float) -> str:
    """Say a backplate move [deg], positive with rotation, as a person would."""
    forward = degrees >= 0
    clockwise = (cam_sense(magneto) > 0) == forward
    words = _PLATE_BY_CAM if magneto.cam.turns_against_rotor else _PLATE
    return tr(words[forward, clockwise], angle=abs(degrees))


def plate_turn(degrees: float) -> str:
    """Say a backplate move [deg], positive with rotation, where the viewpoint needs no saying."""
    angle = abs(degrees)
    if degrees >= 0:
        return tr("turn the backplate {angle:deg} with rotation", angle=angle)
    return tr("turn the backplate {angle:deg} against rotation", angle=angle)


_SCREW = {
    (True, True): marked("turn the contact screw {angle:deg} clockwise (contacts closer)"),
    (True, False): marked("turn the contact screw {angle:deg} clockwise (contacts wider)"),
    (False, True): marked("turn the contact screw {angle:deg} anticlockwise (contacts closer)"),
    (False, False): marked("turn the contact screw {angle:deg} anticlockwise (contacts wider)"),
}
"""By clockwise, and closer."""


def screw_move(magneto: Magneto, degrees: float) -> str:
    """Say a contact-screw move [deg] as a person would, looking at the screw's head."""
    closer = degrees >= 0
    return tr(_SCREW[closer == magneto.contact_screw.positive_is_clockwise, closer], angle=abs(degrees))


def setting_moves(magneto: Magneto, plate_deg: float, screw_deg: float) -> list[str]:
    """The moves of screw and plate [deg] that are large enough to be made, in the order that ends in one pass."""
    moves = []
    if abs(screw_deg) >= 0.005:
        moves.append(screw_move(magneto, screw_deg))
    if abs(plate_deg) >= 0.005:
        moves.append(plate_move(magneto, plate_deg))
    return moves


def way_words(teeth: int) -> str:
    """A number of teeth, positive with rotation, where the rotation is not known."""
    if teeth == 0:
        return tr("not moved")
    if teeth > 0:
        return tr_n("{count} tooth with rotation", "{count} teeth with rotation", count=teeth)
    return tr_n("{count} tooth against rotation", "{count} teeth against rotation", count=-teeth)


def short_words(teeth: int) -> str:
    """Teeth for a narrow column: "3 with", "1 against"."""
    if teeth == 0:
        return "0"
    return tr("{count} with", count=teeth) if teeth > 0 else tr("{count} against", count=-teeth)


_TEETH = re.compile(r"([-+−]?)\s*(\d{1,4})(?:[.,]0*)?\s*(.*)")


def teeth_of(text: str) -> int:
    """Teeth as people write them, positive with rotation: "3", "-3", "3 with", "3 teeth against rotation".

    Raises SpecError, in one sentence with examples, for anything else.
    """
    match = _TEETH.fullmatch(text.strip())
    if match is not None:
        sign, count, word = -1 if match[1] in ("-", "−") else 1, int(match[2]), match[3].casefold()
        if word in ("", "teeth"):
            return sign * count
        way = _ways().get(word)
        if way is not None and not match[1]:
            return way * count
    raise SpecError(
        tr(
            "“{text}” is not a whole number of teeth: write one such as 3, -3, {ahead} or {back} (rotation)",
            text=text.strip()[:40],
            ahead=short_words(3),
            back=short_words(-3),
        )
    )


def _ways() -> dict[str, int]:
    """Units after a number of teeth: in the window's language as it is shown, and in English."""

    def behind(count: int) -> set[str]:
        return {words(count).replace(str(abs(count)), "").strip().casefold() for words in (short_words, way_words)}

    ways = {word: sign for sign in (1, -1) for count in (1, 2) for word in behind(sign * count)}
    with in_english():
        ways |= {word: sign for sign in (1, -1) for count in (1, 2) for word in behind(sign * count)}
    return ways | {"with rotation": 1, "against rotation": -1}


_SEEN: dict[tuple[Viewpoint, bool], str] = {
    ("drive end", True): marked("{move} (clockwise seen from the drive end)"),
    ("drive end", False): marked("{move} (anticlockwise seen from the drive end)"),
    ("breaker end", True): marked("{move} (clockwise seen from the breaker end)"),
    ("breaker end", False): marked("{move} (anticlockwise seen from the breaker end)"),
    ("engine", True): marked("{move} (clockwise as you stand at the engine)"),
    ("engine", False): marked("{move} (anticlockwise as you stand at the engine)"),
}


def teeth_words(teeth: int, rotation: Rotation, viewpoint: Viewpoint) -> str:
    """A number of teeth, positive with rotation, as words with their viewpoint.

    Examples
    --------
    >>> teeth_words(-2, "anticlockwise", "drive end")
    '2 teeth against rotation (clockwise seen from the drive end)'
    """
    return seen_words(way_words(teeth), teeth, rotation, viewpoint)


def seen_words(move: str, sign: float, rotation: Rotation, viewpoint: Viewpoint) -> str:
    """Words of a move with rotation (sign above 0) or against it (below), and how it looks; at 0 words alone."""
    return tr(_SEEN[viewpoint, _clockwise(sign, rotation, viewpoint)], move=move) if sign else move


_TURNED = {True: marked("{move} (clockwise)"), False: marked("{move} (anticlockwise)")}


def turned_words(teeth: int, rotation: Rotation, viewpoint: Viewpoint) -> str:
    """`teeth_words` under a line that names the viewpoint: "1 tooth with rotation (anticlockwise)"."""
    if teeth == 0:
        return way_words(teeth)
    return tr(_TURNED[_clockwise(teeth, rotation, viewpoint)], move=way_words(teeth))


def move_words(move: Move, rotation: Rotation, viewpoint: Viewpoint) -> tuple[str, str]:
    """The moves of A, the disc on the drive flange, and of B, the magneto flange on the disc."""
    return (
        teeth_words(move.disc_teeth, rotation, viewpoint),
        teeth_words(move.magneto_teeth, rotation, viewpoint),
    )


PARTS = (
    marked("backplate"),
    marked("breaker arm"),
    marked("cam"),
    marked("clamp screw"),
    marked("connecting rod"),
    marked("contact screw"),
    marked("contacts"),
    marked("crank"),
    marked("cylinder"),
    marked("direction of rotation"),
    marked("disc"),
    marked("drive flange"),
    marked("heel"),
    marked("lock screw"),
    marked("magneto flange"),
    marked("painted mark"),
    marked("piston"),
    marked("piston pin"),
    marked("pivot"),
    marked("plate scale"),
    marked("pointer"),
    marked("pole shoe"),
    marked("rim"),
    marked("rim mark"),
    marked("rotor"),
    marked("rotor scale"),
    marked("spring"),
    marked("step"),
    marked("straightedge"),
    marked("timing disc"),
)
"""Names of drawn parts, marked here and translated where they are shown."""


_CRANK = {
    "clockwise": marked("turns clockwise seen from the propeller end, anticlockwise from the rear end"),
    "anticlockwise": marked("turns anticlockwise seen from the propeller end, clockwise from the rear end"),
}
"""By the way seen from the propeller end."""


def rotation_words(engine: Engine) -> str:
    """Direction of a crank from both viewpoints in use: engine manuals often mean the rear, pictures here the
    propeller end."""
    return tr(_CRANK[engine.rotation_from("propeller")])
