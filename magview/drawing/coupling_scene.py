"""The toothed coupling as a scene: two rings of teeth, paint, and a planned move as before and after.

Seen from the magneto's drive end, or mirrored, as one stands at the engine with the magneto taken off. Numbers of
teeth and angles are true. A move is told as A, the disc on the drive flange, then B, a count of teeth from the disc's
paint to where the magneto flange's paint belongs. Begin reading at `coupling_scene`; its words are in
`coupling_words`.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from functools import lru_cache

import numpy as np

from magview.bench.planned import counts
from magview.bench.state import BenchState, Engaged
from magview.bench.words import drive_end_sense
from magview.drawing.coupling_words import FOUND_EM, Told, corner_lines, foot_em, head_em, steps
from magview.drawing.drive_end import DISC_IN_MM, DISC_OUT_MM, DRIVE_MM, HUB_MM, DrivePose, drive_pose, toothed
from magview.drawing.other_drives import other_drive_scene
from magview.drawing.scene import CornerLine, CornerWords, Group, Hatch, Options, Piece, Scene, Style, Turn, Word
from magview.drawing.shapes import Point, arc, circle, polar, polar_point
from magview.physics.engine.coupling import Move
from magview.spec.engine import Coupling
from magview.spec.language import tr

PAINT = "painted mark"

_BARS = {
    "drive flange": (DISC_OUT_MM + 3.2, DRIVE_MM - 0.4),
    "disc": (DISC_IN_MM + 3.0, DISC_OUT_MM - 2.6),
    "magneto flange": (HUB_MM + 1.6, DISC_IN_MM - 8.2),
}
"""From where to where the paint of each part goes [mm], …"""
_BAR_MM = 2.0
"""… and the room it takes across [mm]."""
_RING_MM = 9.0
"""Between the teeth on either side of the disc [mm]."""

ALONG_A, ALONG_B = (DISC_OUT_MM + DISC_IN_MM) / 2 + 0.2, DISC_IN_MM - 5.2
"""Radii on which the teeth of each step are counted [mm]."""

_BOX = 46.0
_COLUMN_EM = 12.0
"""Least width of the words where they stand beside the coupling."""


def coupling_scene(
    state: BenchState,
    options: Options = Options(),  # noqa: B008  (a frozen value)
    move: Move | None = None,
    at_engine: bool = False,
    room_em: tuple[float, float] = (40.0, 40.0),
    aside_deg: float = 0.0,
    seen: DrivePose | None = None,
) -> Scene:
    """The coupling as it stands, with a planned move if one is given.

    `at_engine`: as one stands at the engine, the magneto taken off; its flange is then shown where it will come.
    `room_em`: width and height of the picture; in a wide one words stand beside the coupling, else above and below.
    `aside_deg`: the whole coupling is drawn turned by so much. `seen`: how the parts stand while they move.
    """
    engaged = state.engaged
    if engaged is None:
        return Scene(
            name="coupling", box=(-_BOX, -_BOX, _BOX, _BOX), groups=(),
            words=(Word(tr("This magneto is not on an engine."), (0.0, 0.0), "second_ink", room_mm=2 * _BOX),),
            corners=(CornerWords("top-left", (CornerLine((tr("Drive end"),), size=1.17, bold=True),)),),
            description=tr("This magneto is not on an engine."),
        )  # fmt: skip
    if engaged.installation.coupling is None:
        return other_drive_scene(state, engaged, options, at_engine)
    wide, high = room_em
    above, below = head_em(high), foot_em(high)
    beside = min(high, wide - _COLUMN_EM) > 1.05 * min(wide, high - above - below)
    below = below if move is not None else FOUND_EM if options.numbers else 0.6
    across = 2 * _BOX * max(wide / high, (_COLUMN_EM + high) / high) if beside else 2 * _BOX
    box = (-_BOX, -_BOX, across - _BOX, _BOX) if at_engine else (_BOX - across, -_BOX, _BOX, _BOX)
    margins = (0.0, 0.0) if beside else (above, below)
    scale = min(wide / across, (high - sum(margins)) / (2 * _BOX))
    picture = _Picture(state, engaged, options, move, at_engine, aside_deg, seen)
    told = picture.told()
    return Scene(
        name="coupling",
        box=box,
        mirrored=at_engine,
        groups=tuple(picture.groups()),
        words=tuple(picture.words(1.0 / max(scale, 1e-6))),
        corners=tuple(corner_lines(told, options.numbers, beside, high)),
        margins_em=margins,
        round_mm=DRIVE_MM + 1.0,
        lit=options.hovering,
        description=" ".join([_description(engaged, at_engine), *(f"{step[0]}." for step in steps(told))]),
    )


def _description(engaged: Engaged, at_engine: bool) -> str:
    coupling = engaged.installation.disc
    return tr(
        "The coupling seen {where}: {drive} teeth between drive flange and disc, {magneto} between disc and "
        "magneto flange.",
        where=tr("as one stands at the engine") if at_engine else tr("from the magneto's drive end"),
        drive=coupling.drive_teeth, magneto=coupling.magneto_teeth,
    )  # fmt: skip


@lru_cache(maxsize=16)
def _parts(coupling: Coupling, ghost: bool, marked: bool) -> dict[str, tuple[Piece, ...]]:
    """The three parts with their paint at the top; without the magneto's flange only where it will come."""
    drive, magneto = coupling.drive_teeth, coupling.magneto_teeth
    flange = (circle((0, 0), DRIVE_MM, 180), toothed(drive, DISC_OUT_MM, 1))
    disc = (toothed(drive, DISC_OUT_MM, 0), toothed(magneto, DISC_IN_MM, 0, inward=True))
    hub = (toothed(magneto, DISC_IN_MM, -1, inward=True), circle((0, 0), HUB_MM, 72))
    look = (
        Style("hub", "hub_line", dash=(4.0, 3.0), fill_alpha=0.25) if ghost
        else Style("hub", "hub_line", hatch=Hatch((45.0,), 2.2, 0.25))
    )  # fmt: skip
    parts = {
        "drive flange": Piece("drive flange", flange, Style("drive", "drive_line")),
        "disc": Piece("disc", disc, Style("disc", "disc_line")),
        "magneto flange": Piece("magneto flange", hub, look),
    }
    bare = {"magneto flange"} if ghost else set()
    return {p: (piece, _bar(p)) if marked and p not in bare else (piece,) for p, piece in parts.items()}


@lru_cache(maxsize=16)
def _bar(part: str, hollow: str = "") -> Piece:
    """The paint of a part at the top, or hollow, in the colour of a role, where it was or is to come."""
    inner, outer = _BARS[part]
    half = 0.95 if hollow else 0.85
    look = Style(line=hollow, width_px=1.8, dash=(3.0, 2.0)) if hollow else Style("paint", "paint_line")
    outline = np.array([(-half, inner), (half, inner), (half, outer), (-half, outer)])
    return Piece(PAINT, (outline,), look)


class _Free:
    """Places on the parts that no word has taken yet."""

    def __init__(self, em_mm: float) -> None:
        self._em_mm = em_mm
        self._taken: list[tuple[float, float, float, float]] = []

    def hold(self, at: Point, wide_mm: float, high_mm: float) -> None:
        """Keep names off a thing of this size, whatever stands there already."""
        self._taken.append((*at, wide_mm / 2, high_mm / 2))

    def take(self, places: list[Point], wide_em: float, high_em: float = 1.6) -> Point | None:
        """The first place that is free for a word of this size; one as wide as high stands on a disc."""
        wide, high = wide_em * self._em_mm / 2, high_em * self._em_mm / 2
        for x, y in places:
            if all(_apart((x, y, wide, high), other) for other in self._taken):
                self._taken.append((x, y, wide, high))
                return x, y
        return None


def _apart(one: tuple[float, float, float, float], other: tuple[float, float, float, float]) -> bool:
    (x, y, wide, high), (ox, oy, other_wide, other_high) = one, other
    if wide == high and other_wide == other_high:
        return math.hypot(x - ox, y - oy) >= wide + other_wide
    return abs(x - ox) >= wide + other_wide or abs(y - oy) >= high + other_high


class _Picture:
    """One picture of a coupling, with what a move does to it."""

    def __init__(
        self, state: BenchState, engaged: Engaged, options: Options, move: Move | None, at_engine: bool,
        aside_deg: float, seen: DrivePose | None,
    ) -> None:  # fmt: skip
        self.state, self.engaged, self.options, self.move, self.at_engine = state, engaged, options, move, at_engine
        self.coupling, self.sense = engaged.installation.disc, drive_end_sense(state.magneto)
        self.marked = PAINT not in options.hidden
        at = engaged.mounting
        self.now, self.found, self.after = (
            pose.aside(aside_deg)
            for pose in (
                drive_pose(state, engaged),
                drive_pose(state, engaged, replace(at, magneto_teeth=0, disc_teeth=0)),
                drive_pose(state, engaged) if move is None else after_move(state, engaged, move),
            )
        )
        self.seen = self.now if seen is None else seen.aside(aside_deg)
        self.along_a, self.along_b = counts(at, move) if move else (0, 0)

    def told(self) -> Told:
        """Facts that the words tell of it."""
        strayed = self.now.disc != self.found.disc or (not self.at_engine and self.now.hub != self.found.hub)
        strayed = strayed and self.options.numbers and self.move is None and self.marked
        return Told(self.state, self.engaged, self.at_engine, self.move, self.along_a, self.along_b, strayed)

    def groups(self) -> Iterator[Group]:
        """The parts, paint where it was or is to come, and the counts."""
        ghost = self.at_engine
        parts = _parts(self.coupling, ghost, self.marked)
        hub = self.after.hub if ghost and self.move is not None else self.seen.hub
        for part, bearing in (("drive flange", self.seen.flange), ("disc", self.seen.disc), ("magneto flange", hub)):
            yield Group(part, "moving", parts[part], (Turn(bearing),))
        if self.told().strayed:
            yield from self._hollow("found", self.found, "second_ink", not ghost)
        if self.move is not None:
            yield from self._hollow("after", self.after, "planned", True)
            yield Group("counts", "moving", tuple(self._counts()))

    def _hollow(self, name: str, pose: DrivePose, role: str, hub: bool) -> Iterator[Group]:
        for part, now, then in (("disc", self.now.disc, pose.disc), ("magneto flange", self.now.hub, pose.hub)):
            # At the engine the magneto's flange is not there: only where it will come.
            if (now != then or (self.at_engine and part != "disc")) and (hub or part == "disc"):
                yield Group(f"{part}-{name}", "moving", (_bar(part, role),), (Turn(then),))

    def _counts(self) -> Iterator[Piece]:
        if self.along_a:
            yield from sweep(ALONG_A, self.now.disc, self.after.disc)
        if self.along_b:
            line = np.array([polar(_BARS["disc"][0], self.after.disc), polar(ALONG_B, self.after.disc)])
            yield Piece("", (line,), Style(line="planned", width_px=1.2, dash=(2.0, 3.0)), closed=False)
            yield from sweep(ALONG_B, self.after.disc, self.after.hub)

    # ------------------------------------------------------------------ words

    def words(self, em_mm: float) -> Iterator[Word]:
        """Counts, numbers of teeth and names, the most important first: none is written over another."""
        free, drive, magneto = _Free(em_mm), self.coupling.drive_teeth, self.coupling.magneto_teeth
        steps_on = (
            ("A", ALONG_A, self.now.disc, self.along_a, self.sense * 360.0 / drive),
            ("B", ALONG_B, self.after.disc, self.along_b, self.sense * 360.0 / magneto),
        )
        for step in steps_on:
            yield from self._last(free, *step[1:])
        for step in steps_on:
            yield from self._letter(free, em_mm, *step)
        for radius, teeth, role in ((DISC_OUT_MM, drive, "drive_line"), (DISC_IN_MM, magneto, "hub_line")):
            yield from self._teeth(free, em_mm, radius, teeth, role)
        for step in steps_on:
            yield from self._others(free, *step[1:])
        if not self.options.names:
            return
        for bar in self._painted():
            free.hold(*bar)
        for radius, text, role in (
            (DISC_OUT_MM + 6.6, tr("drive flange"), "drive_line"),
            ((DISC_OUT_MM + DISC_IN_MM) / 2, tr("disc"), "disc_line"),
            (HUB_MM + 3.4, tr("magneto flange"), "hub_line"),
        ):  # fmt: skip
            wide = 0.6 * len(text)
            places = [(0.0, -radius), (0.0, radius)]
            if wide * em_mm < _RING_MM:  # beside the middle a word lies across the ring
                places += [(-radius, 0.0), (radius, 0.0)]
            at = free.take(places, wide, 1.2) if wide * em_mm < 30.0 else None
            if at is not None:
                yield Word(text, at, role, 0.92, layer="moving", room_mm=30.0)

    def _painted(self) -> Iterator[tuple[Point, float, float]]:
        """Middle, width and height [mm] of the paint on each part."""
        if not self.marked:
            return
        hub = self.after.hub if self.at_engine else self.now.hub
        for part, bearing in (("drive flange", self.now.flange), ("disc", self.now.disc), ("magneto flange", hub)):
            inner, outer = _BARS[part]
            along, across = abs(math.sin(math.radians(bearing))), abs(math.cos(math.radians(bearing)))
            long = outer - inner
            yield polar_point((inner + outer) / 2, bearing), long * along + _BAR_MM, long * across + _BAR_MM

    @staticmethod
    def _teeth(free: _Free, em_mm: float, radius: float, teeth: int, role: str) -> Iterator[Word]:
        """Say the number of a ring's teeth, with the word where there is room."""
        whole, places = (
            tr("{count} teeth", count=teeth),
            [polar_point(radius, b) for b in (180.0, 0.0, 150.0, 210.0, 90.0)],
        )
        for text in (whole, str(teeth)):
            wide = 0.7 * len(text) + 0.8
            if wide * em_mm > 26.0 and text is whole:
                continue
            at = free.take(places[:2] if text is whole else places, wide)
            if at is not None:
                yield Word(text, at, role, 1.0, True, layer="moving", paper=True)
                return

    @staticmethod
    def _last(free: _Free, radius: float, start_deg: float, teeth: int, pitch_deg: float) -> Iterator[Word]:
        """The number that the count comes to."""
        if not teeth:
            return
        step = math.copysign(pitch_deg, pitch_deg * teeth)
        at = free.take([polar_point(radius, start_deg + (abs(teeth) - _back(radius)) * step)], 1.75, 1.75)
        if at is not None:
            yield _number(abs(teeth), at)

    @staticmethod
    def _others(free: _Free, radius: float, start_deg: float, teeth: int, pitch_deg: float) -> Iterator[Word]:
        """The numbers on the way there, as long as there is room for all of them."""
        step, mine = math.copysign(pitch_deg, pitch_deg * teeth), []
        for tooth in range(1, abs(teeth)):
            at = free.take([polar_point(radius, start_deg + (tooth - _back(radius)) * step)], 1.75, 1.75)
            if at is None:
                return
            mine.append(_number(tooth, at))
        yield from mine

    @staticmethod
    def _letter(
        free: _Free, em_mm: float, letter: str, radius: float, start_deg: float, teeth: int, pitch_deg: float
    ) -> Iterator[Word]:
        """A letter behind where the count begins."""
        if not teeth:
            return
        way = math.copysign(1.0, pitch_deg * teeth)
        first = (1.0 - _back(radius)) * abs(pitch_deg)  # its number stands so far on
        nearest = max(9.0, math.degrees(1.1 * em_mm / radius), math.degrees(1.85 * em_mm / radius) - first)
        places = [polar_point(radius, start_deg - way * share * nearest) for share in (1.0, 1.4, 1.9, 2.5, 3.2, 4.0)]
        at = free.take(places, 1.8, 1.8)
        if at is not None:
            yield Word(letter, at, "panel", 1.0, True, disc="planned", layer="moving")


def _number(tooth: int, at: Point) -> Word:
    return Word(str(tooth), at, "planned", 0.92, True, disc="panel", layer="moving")


def _back(radius: float) -> float:
    """Distance of a number before its tooth, in teeth: short of the arrow's head."""
    return 0.5 if radius > 25.0 else 0.72


def after_move(state: BenchState, engaged: Engaged, move: Move) -> DrivePose:
    """Return where the three parts stand once a move, counted from as found, is made."""
    teeth = replace(engaged.mounting, magneto_teeth=move.magneto_teeth, disc_teeth=move.disc_teeth)
    return drive_pose(state, engaged, teeth)


def sweep(radius: float, start_deg: float, end_deg: float) -> Iterator[Piece]:
    """An arrow along a ring from a bearing to another."""
    way = math.copysign(1.0, end_deg - start_deg)
    short = way * math.degrees(2.4 / radius)
    line = arc(radius, start_deg, end_deg - short) if way > 0 else arc(radius, end_deg - short, start_deg)
    yield Piece("", (line,), Style(line="paper", width_px=5.5, line_alpha=0.75), closed=False)
    yield Piece("", (line,), Style(line="planned", width_px=2.6), closed=False)
    tip, base = polar(radius, end_deg), end_deg - 1.3 * short
    barbs = [polar(radius + side * 1.5, base) for side in (1.0, -1.0)]
    yield Piece("", (np.array([tip, *barbs]),), Style("planned"))
