"""The toothed coupling as a scene: two rings of teeth, paint, and a planned move as before and after.

Seen from the magneto's drive end, or mirrored, as one stands at the engine with the magneto taken off. Numbers of
teeth and angles are true. A move is told as A, the disc on the drive flange, then B, a count of teeth from the disc's
paint to where the magneto flange's paint belongs. Begin reading at `coupling_scene`.
"""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from functools import lru_cache

import numpy as np

from magview.bench.state import BenchState, Engaged, firing_btdc_deg
from magview.bench.words import drive_end_sense
from magview.drawing.drive_end import DrivePose, drive_pose, toothed
from magview.drawing.scene import CornerLine, CornerWords, Group, Hatch, Options, Piece, Scene, Style, Turn, Word
from magview.drawing.shapes import Point, arc, circle, polar
from magview.physics.engine.coupling import Move
from magview.spec.engine import Coupling
from magview.spec.language import tr

FLANGE, DRIVE_JOINT, MAGNETO_JOINT, HOLE = 44.0, 33.5, 20.5, 6.5
"""Radii [mm]: outside of the drive flange, the two rings of teeth, the hole of the magneto flange."""

_PAINT = {
    "drive flange": (DRIVE_JOINT + 3.2, FLANGE - 0.4),
    "disc": (MAGNETO_JOINT + 3.0, DRIVE_JOINT - 2.6),
    "magneto flange": (HOLE + 1.6, MAGNETO_JOINT - 8.2),
}
"""From where to where the paint of each part goes [mm]."""

ALONG_A, ALONG_B = (DRIVE_JOINT + MAGNETO_JOINT) / 2 + 0.2, MAGNETO_JOINT - 5.2
"""Radii on which the teeth of each step are counted [mm]."""

_BOX = 46.0


def coupling_scene(
    state: BenchState,
    options: Options = Options(),  # noqa: B008  (a frozen value)
    move: Move | None = None,
    at_engine: bool = False,
) -> Scene:
    """The coupling as it stands, with a planned move from as found if one is given.

    `at_engine`: as one stands at the engine, the magneto taken off; its flange is then shown where it will come.
    """
    engaged = state.engaged
    if engaged is None:
        return Scene(
            name="coupling", box=(-_BOX, -_BOX, _BOX, _BOX), groups=(),
            words=(Word(tr("This magneto is not on an engine."), (0.0, 0.0), "second_ink", room_mm=2 * _BOX),),
            corners=(CornerWords("top-left", (CornerLine((tr("Drive end"),), size=1.17, bold=True),)),),
            description=tr("This magneto is not on an engine."),
        )  # fmt: skip
    picture = _Picture(state, engaged, options, move, at_engine)
    return Scene(
        name="coupling",
        box=(-_BOX, -_BOX, _BOX, _BOX),
        mirrored=at_engine,
        groups=tuple(picture.groups()),
        words=tuple(picture.words()),
        corners=tuple(picture.corners()),
        margins_em=(3.4, 5.4 if move is not None else 0.6),
        lit=options.hovering,
        description=picture.description(),
    )


@lru_cache(maxsize=8)
def _parts(coupling: Coupling, ghost: bool) -> dict[str, tuple[Piece, ...]]:
    """The three parts with their paint at the top; without the magneto's flange only where it will come."""
    drive, magneto = coupling.drive_teeth, coupling.magneto_teeth
    flange = (circle((0, 0), FLANGE, 180), toothed(drive, DRIVE_JOINT, 1))
    disc = (toothed(drive, DRIVE_JOINT, 0), toothed(magneto, MAGNETO_JOINT, 0, inward=True))
    hub = (toothed(magneto, MAGNETO_JOINT, -1, inward=True), circle((0, 0), HOLE, 72))
    look = (
        Style("hub", "hub_line", dash=(4.0, 3.0), fill_alpha=0.25) if ghost
        else Style("hub", "hub_line", hatch=Hatch((45.0,), 2.2, 0.25))
    )  # fmt: skip
    return {
        "drive flange": (Piece("drive flange", flange, Style("drive", "drive_line")), _bar("drive flange")),
        "disc": (Piece("disc", disc, Style("disc", "disc_line")), _bar("disc")),
        "magneto flange": (Piece("magneto flange", hub, look), *(() if ghost else (_bar("magneto flange"),))),
    }


def _bar(part: str, hollow: bool = False) -> Piece:
    """The paint of a part at the top, or hollow, where it is to come."""
    inner, outer = _PAINT[part]
    half = 0.95 if hollow else 0.85
    look = Style(line="planned", width_px=1.8, dash=(3.0, 2.0)) if hollow else Style("paint", "paint_line")
    return Piece("paint", (np.array([(-half, inner), (half, inner), (half, outer), (-half, outer)]),), look)


class _Picture:
    """One picture of a coupling, with what a move does to it."""

    def __init__(
        self, state: BenchState, engaged: Engaged, options: Options, move: Move | None, at_engine: bool
    ) -> None:
        self.state, self.engaged, self.options, self.move, self.at_engine = state, engaged, options, move, at_engine
        self.coupling, self.sense = engaged.installation.coupling, drive_end_sense(state.magneto)
        self.now = drive_pose(state, engaged)
        self.after = self.now if move is None else after_move(state, engaged, move)

    def groups(self) -> Iterator[Group]:
        ghost = self.at_engine
        parts = _parts(self.coupling, ghost)
        hub = self.after.hub if ghost else self.now.hub
        for part, bearing in (("drive flange", self.now.flange), ("disc", self.now.disc), ("magneto flange", hub)):
            yield Group(part, "moving", parts[part], (Turn(bearing),))
        if self.move is None:
            return
        for part, bearing, moved in (
            ("disc", self.after.disc, self.move.disc_teeth), ("magneto flange", self.after.hub, True),
        ):  # fmt: skip
            if moved:
                yield Group(f"{part}-after", "moving", (_bar(part, hollow=True),), (Turn(bearing),))
        yield Group("counts", "moving", tuple(self._counts()))

    def _counts(self) -> Iterator[Piece]:
        assert self.move is not None
        if self.move.disc_teeth:
            yield from sweep(ALONG_A, self.now.disc, self.after.disc)
        if self.move.magneto_teeth:
            start = _PAINT["disc"][0]
            line = np.array([polar(start, self.after.disc), polar(ALONG_B, self.after.disc)])
            yield Piece("", (line,), Style(line="planned", width_px=1.2, dash=(2.0, 3.0)), closed=False)
            yield from sweep(ALONG_B, self.after.disc, self.after.hub)

    # ------------------------------------------------------------------ words

    def words(self) -> Iterator[Word]:
        drive, magneto = self.coupling.drive_teeth, self.coupling.magneto_teeth
        yield self._pill(DRIVE_JOINT, drive, "drive_line")
        yield self._pill(MAGNETO_JOINT, magneto, "hub_line")
        if self.options.names:
            for radius, text, role in (
                (DRIVE_JOINT + 6.6, tr("drive flange"), "drive_line"),
                ((DRIVE_JOINT + MAGNETO_JOINT) / 2, tr("disc"), "disc_line"),
                (MAGNETO_JOINT - 7.0, tr("magneto flange"), "hub_line"),
            ):  # fmt: skip
                yield Word(text, (0.0, -radius), role, 0.92, layer="moving", room_mm=24.0)
        if self.move is not None:
            yield from self._counted("A", ALONG_A, self.now.disc, self.move.disc_teeth, self.coupling.drive_teeth)
            yield from self._counted(
                "B", ALONG_B, self.after.disc, self.move.magneto_teeth, self.coupling.magneto_teeth
            )

    def _pill(self, radius: float, teeth: int, role: str) -> Word:
        text = tr("{count} teeth", count=teeth)
        return Word(
            text, (0.0, -radius), role, 1.0, True, layer="moving", paper=True, room_mm=20.0, shorter=str(teeth)
        )

    def _counted(self, letter: str, radius: float, start_deg: float, teeth: int, whole: int) -> Iterator[Word]:
        """A letter where the count begins, and each tooth's number, or the last alone where they stand close."""
        if not teeth:
            return
        step = self.sense * math.copysign(360.0 / whole, teeth)
        yield Word(
            letter,
            _at(radius, start_deg - math.copysign(9.0, step)),
            "panel",
            1.0,
            True,
            disc="planned",
            layer="moving",
        )
        apart = radius * math.radians(abs(step))
        counted = range(1, abs(teeth) + 1) if apart > 5.0 else (abs(teeth),)
        back = 0.5 if radius > 25.0 else 0.72  # short of the arrow's head
        for tooth in counted:
            at = _at(radius, start_deg + (tooth - back) * step)
            yield Word(str(tooth), at, "planned", 0.92, True, disc="panel", layer="moving")

    def corners(self) -> Iterator[CornerWords]:
        clockwise = (self.sense > 0) != self.at_engine
        way = tr("turns clockwise") if clockwise else tr("turns anticlockwise")
        if self.at_engine:
            title, hint = tr("Engine side"), tr("as you face the engine")
        else:
            title, hint = tr("Drive end of the magneto"), tr("magneto in your hand")
        yield CornerWords("top-left", (
            CornerLine((title,), size=1.17, bold=True),
            CornerLine((tr("{hint} · {way}", hint=hint, way=way), way), "second_ink", 0.92),
        ))  # fmt: skip
        if self.move is not None:
            yield CornerWords("bottom-left", tuple(CornerLine(wordings, "ink") for wordings in self._steps()))

    def _steps(self) -> Iterator[tuple[str, ...]]:
        assert self.move is not None
        disc, magneto = self.move.disc_teeth, self.move.magneto_teeth
        if disc:
            yield (
                tr("A  disc {teeth} ({way}) on the drive flange", teeth=_counted_words(disc), way=self._way(disc)),
                tr("A  disc {teeth}", teeth=_counted_words(disc)),
            )
        if magneto:
            yield (
                tr("B  count {teeth} ({way}) from the disc's paint to the flange's",
                   teeth=_counted_words(magneto), way=self._way(magneto)),
                tr("B  count {teeth} from the disc's paint", teeth=_counted_words(magneto)),
            )  # fmt: skip
        if not self.options.numbers:
            return
        was = firing_btdc_deg(self.state, self.engaged.side, as_found=True)
        yield (
            tr("expect {after:.2f}° before TDC, was {before:.2f}°", after=self.move.result_btdc_deg, before=was),
            tr("expect {after:.2f}°", after=self.move.result_btdc_deg),
        )

    def _way(self, teeth: int) -> str:
        clockwise = ((self.sense > 0) == (teeth > 0)) != self.at_engine
        return tr("clockwise") if clockwise else tr("anticlockwise")

    def description(self) -> str:
        drive, magneto = self.coupling.drive_teeth, self.coupling.magneto_teeth
        where = tr("as one stands at the engine") if self.at_engine else tr("from the magneto's drive end")
        text = tr(
            "The coupling seen {where}: {drive} teeth between drive flange and disc, {magneto} between disc and "
            "magneto flange.",
            where=where, drive=drive, magneto=magneto,
        )  # fmt: skip
        steps = [wordings[0] for wordings in self._steps()] if self.move is not None else []
        return " ".join([text, *(f"{step}." for step in steps)])


def after_move(state: BenchState, engaged: Engaged, move: Move) -> DrivePose:
    """Where the three parts stand once a move, counted from as found, is made."""
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


def _counted_words(teeth: int) -> str:
    if teeth > 0:
        return tr("{count} with rotation", count=teeth)
    return tr("{count} against rotation", count=-teeth)


def _at(radius: float, bearing_deg: float) -> Point:
    x, y = polar(radius, bearing_deg).tolist()
    return x, y
