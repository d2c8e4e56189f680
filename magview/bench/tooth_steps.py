"""A planned move of the coupling as single steps, one tooth at a time, with the marks to check at each."""

from __future__ import annotations

from dataclasses import dataclass, replace
from fractions import Fraction

from magview.bench.state import Engaged, Mounting
from magview.bench.words import teeth_words, way_words
from magview.physics.engine.coupling import crank_advance_deg, rotor_shift_deg
from magview.spec.language import marked, tr
from magview.spec.magneto import Rotation


@dataclass(frozen=True)
class ToothStep:
    """One tooth at one face, and the position from as found that it leads to."""

    face: str
    """"magneto flange" or "disc": what is moved."""
    teeth: int
    """+1 with rotation, −1 against it."""
    magneto_teeth: int
    disc_teeth: int


def steps_between(start: tuple[int, int], end: tuple[int, int]) -> list[ToothStep]:
    """The single steps from one position (magneto flange, disc) to another: all of A, the disc, then B, the flange.

    So they are done with the magneto off: the disc is set on again, then the flange is counted from its paint.
    """
    (i, j), steps = start, []
    while j != end[1]:
        way = 1 if end[1] > j else -1
        j += way
        steps.append(ToothStep("disc", way, i, j))
    while i != end[0]:
        way = 1 if end[0] > i else -1
        i += way
        steps.append(ToothStep("magneto flange", way, i, j))
    return steps


def step_words(step: ToothStep, rotation: Rotation, mounting: Mounting) -> str:
    """The move, and the place of the painted marks afterwards."""
    after = replace(mounting, magneto_teeth=step.magneto_teeth, disc_teeth=step.disc_teeth)
    teeth = teeth_words(step.teeth, rotation, "engine")
    words = (
        tr("B: move the magneto flange {teeth} on the disc.", teeth=teeth)
        if step.face == "magneto flange"
        else tr("A: move the disc {teeth} on the drive flange, the magneto flange with it.", teeth=teeth)
    )
    return f"{words} {marks_words(after)}"


_MARKS = {
    (False, False): marked(
        "Check the marks: disc in line with the drive flange's mark, magneto flange in line with the disc's mark."
    ),
    (False, True): marked(
        "Check the marks: disc in line with the drive flange's mark, magneto flange {flange} from the disc's mark."
    ),
    (True, False): marked(
        "Check the marks: disc {disc} from the drive flange's mark, magneto flange in line with the disc's mark."
    ),
    (True, True): marked(
        "Check the marks: disc {disc} from the drive flange's mark, magneto flange {flange} from the disc's mark."
    ),
}
"""By the disc's mark apart, and the magneto flange's."""


def marks_words(mounting: Mounting) -> str:
    """Return where the three painted marks must stand."""
    i, j = mounting.marks_apart
    return tr(_MARKS[j != 0, i != 0], disc=way_words(j), flange=way_words(i))


def tooth_degrees(magneto_teeth: int, drive_teeth: int, rotor_turns_per_crank_turn: float | Fraction) -> str:
    """Return the angle of one tooth of each face, at rotor and crank. Raises ValueError for no such coupling."""

    def degrees(i: int, j: int) -> str:
        rotor = rotor_shift_deg(magneto_teeth, drive_teeth, i, j)
        crank = crank_advance_deg(magneto_teeth, drive_teeth, i, j, rotor_turns_per_crank_turn)
        return tr("{rotor:.3deg} of rotor = {crank:.3deg} of crank", rotor=rotor, crank=crank)

    return tr(
        "One tooth of the disc on the drive flange (A) is {disc}; of the magneto flange on the disc (B) {magneto}; "
        "A one against and B one with rotation together {both}.",
        magneto=degrees(1, 0),
        disc=degrees(0, 1),
        both=degrees(1, -1),
    )


def tooth_of_disc_words(engaged: Engaged) -> str:
    """The angle of one tooth between disc and drive flange (A)."""
    teeth = engaged.installation.disc
    rotor, crank = _tooth(engaged, 0, 1)
    return tr(
        "one of {teeth} teeth (A) is {rotor:deg} of rotor = {crank:deg} of crank",
        teeth=teeth.drive_teeth, rotor=rotor, crank=crank,
    )  # fmt: skip


def tooth_of_flange_words(engaged: Engaged) -> str:
    """The angle of one tooth between magneto flange and disc (B)."""
    teeth = engaged.installation.disc
    rotor, crank = _tooth(engaged, 1, 0)
    return tr(
        "one of {teeth} teeth (B) is {rotor:deg} of rotor = {crank:deg} of crank",
        teeth=teeth.magneto_teeth, rotor=rotor, crank=crank,
    )  # fmt: skip


def _tooth(engaged: Engaged, i: int, j: int) -> tuple[float, float]:
    teeth = engaged.installation.disc
    rotor = rotor_shift_deg(teeth.magneto_teeth, teeth.drive_teeth, i, j)
    return rotor, crank_advance_deg(teeth.magneto_teeth, teeth.drive_teeth, i, j, engaged.ratio)


def far_apart(engaged: Engaged) -> list[Mounting]:
    """Mountings of which there is as much to say as there can be: neither, either, both marks half a turn away."""
    coupling = engaged.installation.disc
    return [
        Mounting(0.0, 0.0, 0.0, magneto, disc)
        for magneto in (0, -(coupling.magneto_teeth // 2))
        for disc in (0, -(coupling.drive_teeth // 2))
    ]


def coupling_words(engaged: Engaged) -> str:
    """The coupling's teeth."""
    coupling = engaged.installation.disc
    return tr(
        "{drive_teeth} teeth at the drive, {magneto_teeth} at the magneto.",
        magneto_teeth=coupling.magneto_teeth,
        drive_teeth=coupling.drive_teeth,
    )
