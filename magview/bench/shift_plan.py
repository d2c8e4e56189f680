"""A tooth shift as it is done at the engine: numbers, arrows and paint; it needs neither cam nor magneto file."""

from __future__ import annotations

from dataclasses import dataclass
from fractions import Fraction
from typing import Literal

from magview.bench.words import Viewpoint, direction_word, way_words
from magview.physics.engine.coupling import Move, rotor_shift_deg
from magview.physics.engine.lamp import LOOK_FIRST_DEG
from magview.spec.language import marked, tr
from magview.spec.magneto import Rotation

Face = Literal["A", "B"]
"""A: the disc on the drive flange, engine side. B: the magneto flange on the disc, magneto side."""

FACES: tuple[Face, ...] = ("A", "B")

FACE_SIDES = {"A": marked("ENGINE SIDE"), "B": marked("MAGNETO SIDE")}
FACE_PARTS = {"A": marked("disc"), "B": marked("magneto flange")}

_SIGNS = {1: "↻", -1: "↺", 0: ""}
_WITH, _AGAINST, _STAYS = marked("WITH rotation"), marked("AGAINST rotation"), marked("leave as it is")


@dataclass(frozen=True)
class ShiftPlan:
    """A move of one coupling from as found. Teeth positive with rotation, angles in crank degrees BTDC."""

    magneto_teeth: int
    drive_teeth: int
    rotor_turns_per_crank_turn: float | Fraction
    move: Move
    reads_btdc_deg: float
    wanted_btdc_deg: float
    tolerance_deg: float | None = None
    rotation: Rotation | None = None
    """The rotor's, seen from the drive end; without it there are no arrows."""
    magneto: str = ""
    engine: str = ""
    position: str = ""
    """"left", "right" or "single" of the magneto; "" where it is not known."""
    flange_from_disc: int = 0
    """The magneto flange's paint from the disc's as found [teeth]."""
    disc_from_drive: int = 0
    """The disc's paint from the drive flange's as found [teeth]."""
    warnings: tuple[str, ...] = ()
    conditions: tuple[tuple[str, bool], ...] = ()
    """The four that agree when No. 1 fires, in words, and whether each does as found."""

    @property
    def title(self) -> str:
        """The title of the page."""
        return tr("Tooth-shift plan: {magneto}", magneto=tr(self.magneto)) if self.magneto else tr("Tooth-shift plan")

    def teeth(self, face: Face) -> int:
        """Teeth to move at a face."""
        return self.move.disc_teeth if face == "A" else self.move.magneto_teeth

    def of_face(self, face: Face) -> int:
        """Teeth that a face of the disc has."""
        return self.drive_teeth if face == "A" else self.magneto_teeth

    @property
    def moves(self) -> bool:
        """Whether there is a tooth to move at all."""
        return any(self.teeth(face) for face in FACES)

    @property
    def far_off(self) -> bool:
        """Whether the error is so large that stroke, mark and finger are looked at first."""
        return abs(self.reads_btdc_deg - self.wanted_btdc_deg) > LOOK_FIRST_DEG

    @property
    def count_b(self) -> int:
        """Teeth from the disc's paint to where the magneto flange's paint belongs."""
        return self.flange_from_disc + self.move.magneto_teeth

    def clockwise(self, teeth: int, viewpoint: Viewpoint) -> int:
        """+1 where so many teeth go clockwise as seen, −1 anticlockwise, 0 for none or a rotation not known."""
        if not teeth or self.rotation is None:
            return 0
        with_rotation = 1 if (self.rotation == "clockwise") == (viewpoint == "drive end") else -1
        return with_rotation if teeth > 0 else -with_rotation

    def sign(self, teeth: int, viewpoint: Viewpoint) -> str:
        """The arrow of so many teeth as seen."""
        return _SIGNS[self.clockwise(teeth, viewpoint)]

    def way(self, teeth: int, viewpoint: Viewpoint) -> str:
        """The same in a word."""
        return "" if self.rotation is None else direction_word(teeth, self.rotation, viewpoint)

    @property
    def flange_past_deg(self) -> float:
        """Of the magneto flange past where it stood [rotor deg], positive with rotation."""
        return rotor_shift_deg(self.magneto_teeth, self.drive_teeth, self.move.magneto_teeth, self.move.disc_teeth)


def with_or_against(teeth: int) -> str:
    """The way of a move in capitals."""
    return tr(_STAYS if teeth == 0 else _WITH if teeth > 0 else _AGAINST)


def start_words(plan: ShiftPlan) -> str:
    """The paint as found."""
    a, b = plan.disc_from_drive, plan.flange_from_disc
    if not a and not b:
        return tr("All paint stood in line before.")
    return tr(
        "Before: disc's paint {disc} from the drive flange's, magneto flange's paint {flange} from the disc's.",
        disc=_apart(a), flange=_apart(b),
    )  # fmt: skip


def check_words(plan: ShiftPlan) -> str:
    """Places of the paint once A and B are done."""
    return tr(
        "From the drive flange's paint to the disc's: {disc}. From the disc's paint to the magneto flange's: "
        "{flange}.",
        disc=_apart(plan.disc_from_drive + plan.move.disc_teeth), flange=_apart(plan.count_b),
    )  # fmt: skip


def past_words(plan: ShiftPlan) -> str:
    """Distance of the magneto flange in the end from where it stood."""
    angle = abs(plan.flange_past_deg)
    if plan.flange_past_deg >= 0:
        return tr("{angle:deg} of rotor past where it stood, with rotation", angle=angle)
    return tr("{angle:deg} of rotor short of where it stood, against rotation", angle=angle)


def act_a(plan: ShiftPlan) -> str:
    """Instruction for the disc."""
    teeth = plan.move.disc_teeth
    if not teeth:
        return tr("Leave the disc on the drive flange as it is.")
    return tr(
        "Set the disc on the drive flange again, {teeth}. The crank stays. Check the disc's paint: {apart} from the "
        "drive flange's.",
        teeth=way_words(teeth), apart=_apart(plan.disc_from_drive + teeth),
    )  # fmt: skip


def act_b(plan: ShiftPlan) -> str:
    """Instruction for the magneto flange."""
    if plan.count_b == 0:
        return tr("Put the magneto flange's paint in line with the paint on the disc: {past}.", past=past_words(plan))
    return tr(
        "Count {teeth} from the paint on the disc: there the magneto flange's paint belongs, {past}.",
        teeth=way_words(plan.count_b), past=past_words(plan),
    )  # fmt: skip


def _apart(teeth: int) -> str:
    return tr("in line") if teeth == 0 else way_words(teeth)
