"""The breaker end as a scene: compartment, rotor's ring, marks, straightedge and glass for one instant.

The compartment fills the picture; rotor and pole shoes are a band round it. Begin reading at `breaker_scene`.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal

import numpy as np

from magview.bench.state import BenchState
from magview.drawing.breaker_end import (
    NUMBER_BEFORE_DEG,
    RING,
    SHOES,
    BreakerLayout,
    ByEye,
    Pose,
    breaker_layout,
    pose_at,
)
from magview.drawing.breaker_glass import Sight, glass, seen_past_mm, sight
from magview.drawing.breaker_names import naming, readings_at_parts, texts
from magview.drawing.breaker_pieces import CONTACT_HEAD, breaker_pieces, screws
from magview.drawing.scene import (
    CornerLine,
    CornerWords,
    Group,
    Hand,
    Layer,
    Options,
    Piece,
    Scene,
    Turn,
    Word,
)
from magview.drawing.shapes import Array, band, circle, polar_point, rotate
from magview.spec.language import format_length, number, tr
from magview.spec.magneto import Magneto

MARK_NUMBERS = 0.945
"""Radius of the numbers of the rim marks, as a share of the rim's."""


@dataclass(frozen=True)
class Shown:
    """State that the breaker end is drawn from: neither engine nor electrical values are needed."""

    magneto: Magneto
    rotor_deg: float = 0.0
    backplate_deg: float = 0.0
    screw_deg: float = 0.0
    assumed: bool = False
    """Whether cam, arm and screw are plain proportions that no file gives: then no gap is told."""
    exaggeration: float = 1.0
    """Scale at which the gap is drawn, by lifting the arm further; the picture says so."""

    by_eye: ByEye | None = None
    """The setting as an eye has it, where nothing true may be measured in the picture."""

    @classmethod
    def of(cls, state: BenchState, exaggeration: float = 1.0, by_eye: ByEye | None = None) -> Shown:
        """Take from a bench's state."""
        ahead = by_eye.ahead_deg if by_eye is not None else 0.0
        at = state.magneto, state.rotor_deg + ahead, state.backplate_deg, state.screw_deg
        return cls(*at, state.magneto.assumed, exaggeration, by_eye)

    @property
    def past_neutral_deg(self) -> float:
        """Return how far the rotor stands past the nearest of its neutrals; negative short of it."""
        pitch = 360.0 / self.magneto.poles
        return pitch / 2 - (pitch / 2 - self.rotor_deg) % pitch + 0.0

    @property
    def pose(self) -> Pose:
        """Return where everything stands."""
        turns = self.rotor_deg, self.backplate_deg, self.screw_deg
        return pose_at(self.magneto, *turns, self.exaggeration, self.by_eye)


def breaker_scene(shown: Shown, options: Options = Options()) -> Scene:  # noqa: B008  (a frozen value)
    """The breaker end of a magneto at one instant."""
    layout, now = breaker_layout(shown.magneto), shown.pose
    plate = Turn(now.turns_deg["plate"])
    at_mark = sight(layout, now)
    tells = options.numbers and not shown.assumed
    plan, tips = naming(layout, shown.backplate_deg, texts(shown.magneto, tells, options))
    ringed = "pole shoe" not in options.hidden
    round_mm = (SHOES[1] if ringed else 1.0) * layout.rim_outer
    half = round_mm / 0.985
    return Scene(
        name="breaker",
        box=(-half, -half, half, half),
        groups=_groups(layout, now, options),
        words=(
            *_still_words(layout, None if "rotor scale" in options.hidden else (tr("neutral"), tr("E-gap"))),
            *(_pole_letters(layout, now) if ringed else ()),
            *_read_mark(layout, at_mark, options),
            *_lobe_numbers(layout, now),
            *((_arm_name(layout, now, plate),) if _says_arm(options) else ()),
        ),
        corners=_corners(shown, layout, now, at_mark, options),
        plan=plan,
        tips=tips,
        readings=readings_at_parts(now, tells, options),
        hands=tuple(hand for hand in _hands(layout, now) if hand.part not in options.hidden),
        glasses=(glass(layout, at_mark, options.eye_deg, measured=options.numbers),)
        if "straightedge" not in options.hidden
        else (),
        mirrored=options.mirrored,
        round_mm=round_mm,
        assumed=tr("assumed") if shown.assumed else "",
        lit=options.hovering,
        in_hand=options.in_hand,
        description=_description(shown, layout, now, options),
    )


# ---------------------------------------------------------------------- groups


@lru_cache(maxsize=16)
def _kept(layout: BreakerLayout, hidden: frozenset[str], still_motion: bool) -> dict[str, tuple[Piece, ...]]:
    """The magneto's pieces without those that are not to be seen; the very same tuples as long as nothing changes."""
    away = hidden | ({"tolerance"} if "rotor scale" in hidden else set())
    kept = {name: tuple(p for p in pieces if p.part not in away) for name, pieces in breaker_pieces(layout).items()}
    if still_motion or "rotor" in hidden:
        kept["chevrons"] = ()
    return kept


def _groups(layout: BreakerLayout, now: Pose, options: Options) -> tuple[Group, ...]:
    turns = now.turns_deg
    kept = _kept(layout, options.hidden, options.still_motion)
    pivot, screw = screws(layout)["pivot"], screws(layout)["contact screw"]
    plate, rotor, cam = Turn(turns["plate"]), Turn(turns["rotor"]), Turn(turns["cam"])
    aside = _aside(layout, seen_past_mm(options.eye_deg))
    placed: tuple[tuple[str, Layer, tuple[Turn, ...]], ...] = (
        ("case", "ground", ()),
        ("plate", "plate", (plate,)),
        ("clamps", "plate", ()),
        ("bracket", "plate", (plate,)),
        ("stop", "plate", (Turn(turns["stop"], pivot), plate)),
        ("screws", "plate", (plate,)),
        ("contact screw", "plate", (Turn(turns["screw"], screw), plate)),
        ("rotor", "moving", (rotor,)),
        ("chevrons", "moving", (rotor,)),
        ("cam", "moving", (cam,)),
        ("straightedge", "moving", (*aside, cam)),
        ("arm", "moving", (Turn(turns["arm"], pivot), plate)),
        ("pivots", "moving", (plate,)),
    )
    return tuple(Group(name, layer, kept[name], turned) for name, layer, turned in placed)


_FAR_MM = 1e6
"""A turn about a point so far off is a move to one side."""


def _aside(layout: BreakerLayout, past_mm: float) -> tuple[Turn, ...]:
    """The straightedge as an eye beside it sees it: as a whole so far past its place [mm]."""
    if not past_mm:
        return ()
    far = polar_point(_FAR_MM, layout.step_bearing() + 180.0)
    return (Turn(layout.sense * math.degrees(past_mm / _FAR_MM), far),)


# ---------------------------------------------------------------------- words on parts


@lru_cache(maxsize=16)
def _still_words(layout: BreakerLayout, scale: tuple[str, str] | None) -> tuple[Word, ...]:
    """Numbers of the rim marks, and the words of the rotor's scale: neutral and E-gap, where it is shown."""
    magneto = layout.magneto
    r, sense = layout.rim_outer, layout.sense
    words = [
        Word(
            str(lobe),
            polar_point(MARK_NUMBERS * r, bearing - NUMBER_BEFORE_DEG * sense),
            bold=True,
            height_mm=0.083 * r,
        )
        for lobe, bearing in enumerate(layout.marks.tolist(), 1)
    ]
    if scale is None:
        return tuple(words)
    # Between the shoes; each word leans away from the other, so that they never meet.
    middle, room = (SHOES[0] + SHOES[1]) / 2 * r, _between_shoes_mm(layout)
    sense = layout.rotor_sense
    e_gap = sense * magneto.e_gap_deg
    words.append(Word(scale[0], polar_point(middle, -1.2 * sense), "second_ink", align=_side(-sense), room_mm=room))
    words.append(
        Word(scale[1], polar_point(middle, e_gap + 0.9 * sense), size=0.92, bold=True, align=_side(sense),
             room_mm=room - r * math.radians(magneto.e_gap_deg))
    )  # fmt: skip
    return tuple(words)


def _between_shoes_mm(layout: BreakerLayout) -> float:
    """From neutral to the nearest pole shoe, along the chord."""
    free = 0.25 * 360.0 / layout.magneto.poles
    return float(SHOES[1] * layout.rim_outer * math.sin(math.radians(min(free, 60.0)))) * 0.97


def _pole_letters(layout: BreakerLayout, now: Pose) -> tuple[Word, ...]:
    poles, middle = layout.magneto.poles, (RING[0] + RING[1]) / 2 * layout.rim_outer
    thick, words = (RING[1] - RING[0]) * layout.rim_outer, []
    for i in range(poles):
        aside = 9.0 * layout.rotor_sense if i == 0 else 0.0  # beside the rotor's index
        at = polar_point(middle, now.turns_deg["rotor"] + i * 360.0 / poles + aside)
        name = ("north", "south")[i % 2]
        words.append(Word("NS"[i % 2], at, f"{name}_line", bold=True, layer="moving", height_mm=thick))
    return tuple(words)


def _read_mark(layout: BreakerLayout, at: Sight, options: Options) -> tuple[Word, ...]:
    """The number of the mark that the edge is read against, in a disc."""
    if "straightedge" in options.hidden:
        return ()
    bearing = float(layout.marks[at.lobe]) - NUMBER_BEFORE_DEG * layout.sense
    place = polar_point(MARK_NUMBERS * layout.rim_outer, bearing)
    return (
        Word(
            str(at.lobe + 1),
            place,
            "paper",
            bold=True,
            layer="moving",
            disc="ink",
            height_mm=0.083 * layout.rim_outer,
        ),
    )


def _lobe_numbers(layout: BreakerLayout, now: Pose) -> tuple[Word, ...]:
    first = layout.lobe_bearing() + now.turns_deg["cam"]
    return tuple(
        Word(str(lobe), polar_point(0.76 * layout.lobe_top, first - layout.sense * peak), "steel_line", 0.92, True,
             layer="moving", height_mm=0.28 * layout.lobe_top)
        for lobe, peak in enumerate(layout.magneto.cam.lobe_peaks_deg, 1)
    )  # fmt: skip


def _says_arm(options: Options) -> bool:
    if options.hovering == "breaker arm":
        return True
    return options.names and (options.named is None or "breaker arm" in options.named)


def _arm_name(layout: BreakerLayout, now: Pose, plate: Turn) -> Word:
    """The arm's name along it."""
    k, arms = layout.size, layout.arms
    ends = np.array([layout.at(3.6 * k, 0.2 * k), layout.at(arms.heel_arm_mm + 2.0 * k, 1.7 * k)])
    ends = rotate(rotate(ends, now.turns_deg["arm"], screws(layout)["pivot"]), plate.bearing_deg)
    if ends[1, 0] < ends[0, 0]:
        ends = ends[::-1]
    along = ends[1] - ends[0]
    bearing = math.degrees(math.atan2(-along[1], along[0]))
    middle = ends.mean(axis=0)
    return Word(
        tr("breaker arm"), (float(middle[0]), float(middle[1])), "steel_line", layer="moving", bearing_deg=bearing,
        room_mm=float(np.hypot(*along)),
    )  # fmt: skip


# ---------------------------------------------------------------------- corners


def _corners(shown: Shown, layout: BreakerLayout, now: Pose, at: Sight, options: Options) -> tuple[CornerWords, ...]:
    clockwise = (layout.rotor_sense > 0) != options.mirrored
    way, sign = (tr("clockwise"), "↻") if clockwise else (tr("anticlockwise"), "↺")
    turns = tr("turns {way}", way=way), f"{sign} {way}", sign
    if layout.sense != layout.rotor_sense:
        cam_sign = "↺" if clockwise else "↻"
        turns = (
            tr("rotor {way}, cam against it", way=way),
            tr("rotor {rotor} cam {cam}", rotor=sign, cam=cam_sign),
            sign,
        )
    title = (tr("Through from the drive end"), tr("From the drive end")) if options.mirrored else (tr("Breaker end"),)
    head = CornerWords("top-left", (
        CornerLine(title, size=1.17, bold=True),
        CornerLine(turns, "second_ink"),
        *((CornerLine((options.remark,), "second_ink", 0.92),) if options.remark else ()),
        CornerLine((_to_scale(shown, layout), ""), "second_ink", 0.92),
    ))  # fmt: skip
    if not options.numbers:
        return (head,)
    angle = CornerWords("top-right", (
        CornerLine((f"{number(abs(shown.past_neutral_deg), 1)}°",), size=1.33, bold=True),
        CornerLine((*_from_neutral(shown.past_neutral_deg), ""), "second_ink", 0.92),
    ))  # fmt: skip
    lines = []
    if not shown.assumed:
        gap = format_length(now.gap_mm, options.inches)
        wordings = tr("gap {gap}", gap=gap), gap
        if now.just_touching:
            wordings = tr("contacts just touching"), tr("just touching")
        elif not now.gap_mm:
            wordings = tr("contacts closed"), tr("closed")
        lines.append(CornerLine(wordings, "lift" if now.gap_mm else "ink", 1.08, True))
    if "straightedge" not in options.hidden:
        lines.append(CornerLine(at.wordings(options.inches), "second_ink"))
    return head, angle, CornerWords("bottom-left", tuple(lines))


def _to_scale(shown: Shown, layout: BreakerLayout) -> str:
    if shown.by_eye is not None:
        return tr("as an eye sees it; not to be measured")
    if shown.exaggeration != 1.0:
        return tr("gap drawn {factor}×", factor=shown.exaggeration)
    if shown.assumed:
        return tr("cam, arm and contacts assumed")
    if layout.arms.plain:
        return tr("lift to scale; arm and heel plain")
    if layout.timing.ratio != 1.0:
        return tr("cam {ratio:.3g} turns a rotor turn", ratio=layout.timing.ratio)
    return tr("to scale; ring outside: scheme")


def _from_neutral(past_deg: float) -> tuple[str, str]:
    """The side of neutral that the rotor is on, in a longer and a shorter wording."""
    if past_deg < 0.0:
        return tr("rotor before neutral"), tr("before neutral")
    return tr("rotor past neutral"), tr("past neutral")


def _description(shown: Shown, layout: BreakerLayout, now: Pose, options: Options) -> str:
    way = tr("clockwise") if layout.rotor_sense > 0 else tr("anticlockwise")
    if not options.numbers:
        return tr("Breaker end, seen from there; the rotor turns {way}.", way=way)
    rotor = f"{number(shown.past_neutral_deg, 1)}°"
    if shown.assumed:
        return tr(
            "Breaker end, seen from there; the rotor turns {way} and stands {rotor} past neutral. "
            "Cam, arm and contacts are assumed.",
            way=way, rotor=rotor,
        )  # fmt: skip
    gap = format_length(now.gap_mm, options.inches)
    return tr(
        "Breaker end, seen from there; the rotor turns {way} and stands {rotor} past neutral. The gap is {gap}.",
        way=way, rotor=rotor, gap=gap,
    )  # fmt: skip


# ---------------------------------------------------------------------- hands


def _hands(layout: BreakerLayout, now: Pose) -> tuple[Hand, ...]:
    """Yield the parts that can be turned, the uppermost last: plate, rotor by its ring or its cam, contact screw."""
    r, sense, zero = layout.rim_outer, float(layout.sense), (0.0, 0.0)
    plate = now.turns_deg["plate"]
    screw = rotate(np.array(screws(layout)["contact screw"]), plate)
    middle = float(screw[0]), float(screw[1])
    head = 1.0 if layout.magneto.contact_screw.positive_is_clockwise else -1.0
    cam = rotate(breaker_pieces(layout)["cam"][0].outlines[0], now.turns_deg["cam"])
    return (
        Hand("backplate", "backplate_deg", circle(zero, layout.plate), zero, sense),
        Hand("rotor", "rotor_deg", _ring(RING[0] * r, RING[1] * r), zero, float(layout.rotor_sense)),
        Hand("cam", "rotor_deg", cam, zero, sense / layout.timing.ratio),
        Hand("contact screw", "screw_deg", circle(middle, CONTACT_HEAD * layout.size, 24), middle, head),
    )


@lru_cache(maxsize=4)
def _ring(inner: float, outer: float) -> Array:
    return band(inner, outer, 0.0, 360.0)


def _side(sense: float) -> Literal["left", "right"]:
    """Alignment of a word that begins at its place and leans away clockwise (+1) or anticlockwise (−1)."""
    return "left" if sense > 0 else "right"
