"""Bench pictures for paper: parts named, numbered with a line to write on, or bare; black, white and hatching."""

from __future__ import annotations

import math
from collections.abc import Callable, Mapping
from dataclasses import dataclass
from functools import partial
from typing import Literal

import numpy as np

from magview.bench.state import BenchState, crank_deg
from magview.bench.words import cam_sense, direction_word, drive_end_sense
from magview.classroom.blanks import offset_side
from magview.drawing.captions import CAPTIONS, ENDS, End
from magview.drawing.coupling_on_paper import coupling_body, paint, rotation_arrow, slot_numbers, upright
from magview.drawing.crank_end import crank_end, crank_pose
from magview.drawing.crank_scene import crank_scene
from magview.drawing.drive_end import DISC_IN_MM, DISC_OUT_MM, DRIVE_MM, EXTENT_MM
from magview.drawing.drive_end import PARENTS as DRIVE_PARENTS
from magview.drawing.labels import arrange
from magview.drawing.lead_picture import HEIGHT, WIDTH, lead_picture
from magview.drawing.lead_scene import lead_scene
from magview.drawing.scene import Frame
from magview.drawing.scene_svg import disc, scene_body, stroked, words
from magview.drawing.shapes import Array, Point, polar_point
from magview.drawing.svg import Places, breaker_body, leader, svg
from magview.spec.base import SpecError
from magview.spec.engine import Engine
from magview.spec.language import tr

Labels = Literal["names", "blanks", "answers", "none"]
"""Labels beside a picture: names; numbers with a line to write on; the same filled in; nothing."""

_WIDTH, _MARGIN, _SIZE = 700.0, 148.0, 11.5
"""Of a picture over the page's whole width, of each column of names, and of type [px]."""

_LINE = 122.0
"""A line to write a name on: a good three centimetres on paper [px]."""

Tips = dict[str, tuple[float, float]]


@dataclass(frozen=True)
class Drawn:
    """A picture as SVG with its caption, and the parts in it in their order."""

    svg: str
    caption: str
    parts: tuple[str, ...]


def has(state: BenchState, end: End) -> bool:
    """Whether a bench has a picture: drive end and crank need an engine."""
    return end in ("breaker", "lead") or state.engaged is not None


def drawing(state: BenchState, end: End, labels: Labels = "names") -> Drawn:
    """A picture of a bench. Raises SpecError for one that this bench has not."""
    if not has(state, end):
        raise SpecError(tr("This magneto is not on an engine: there is no such picture of it"))
    makers: dict[End, Callable[[BenchState], tuple[float, str, Tips]]] = {
        "breaker": partial(_breaker, labels=labels),
        "drive": partial(_drive, labels=labels),
        "crank": partial(_crank, labels=labels),
        "lead": _lead,
    }
    height, body, tips = makers[end](state)
    parts = tuple(name for name in CAPTIONS[end] if name in tips)
    if labels != "none":
        body += _labels({name: tips[name] for name in parts}, labels, height)
    return Drawn(svg(_WIDTH, height, tr(ENDS[end]), body), _caption(state, end), parts)


def _caption(state: BenchState, end: End) -> str:
    name, rotation = state.magneto.name, state.magneto.rotation
    match end:
        case "breaker":
            return tr(
                "{magneto}, seen from the breaker end; the rotor turns {way}. Rotor and pole shoes are diagrammatic; "
                "cam, arm, contacts and marks are to scale.",
                magneto=name, way=tr(direction_word(1, rotation, "breaker end")),
            )  # fmt: skip
        case "drive":
            return tr(
                "{magneto}, seen from the drive end; the rotor turns {way}. Both faces of the disc are drawn, "
                "the drive face outside, the magneto face inside.",
                magneto=name, way=tr(direction_word(1, rotation, "drive end")),
            )  # fmt: skip
        case "crank":
            assert state.engaged is not None
            engine = state.engaged.installation.engine
            way = tr("clockwise") if engine.rotation_from("propeller") == "clockwise" else tr("anticlockwise")
            return tr("{engine}, seen from the propeller end; it turns {way}.", engine=engine.name, way=way)
        case "lead":
            if state.lead.switch_on:
                return tr("The primary circuit with its switch lead; the switch is on, so it is open.")
            return tr("The primary circuit with its switch lead; the switch is off, so it is closed to ground.")


# ---------------------------------------------------------------------- pictures: height, body, where names point


def _breaker(state: BenchState, labels: Labels) -> tuple[float, str, Tips]:
    side = _WIDTH - 2 * _MARGIN
    height = side + 12.0
    wanted = {
        "names": lambda word: True,
        "none": lambda word: len(word.text) == 1,
        # Numbers of marks and lobes beside numbered parts would be taken for theirs.
        "blanks": lambda word: word.text in ("N", "S"),
        "answers": lambda word: word.text in ("N", "S"),
    }[labels]
    body, tips = breaker_body(state, side, (_WIDTH / 2, height / 2), _SIZE, wanted)
    return height, body, tips


def _drive(state: BenchState, labels: Labels) -> tuple[float, str, Tips]:
    assert state.engaged is not None
    turns, coupling = upright(state, state.engaged), state.engaged.installation.disc
    places = Places(DRIVE_PARENTS, dict.fromkeys(DRIVE_PARENTS, (0.0, 0.0)), turns)
    side = _WIDTH - 2 * _MARGIN - 40.0
    frame = Frame(side / (2 * EXTENT_MM), _WIDTH / 2, side / 2)
    body = coupling_body(state, turns, frame)
    if labels == "names":  # as of the marks above
        body += slot_numbers(coupling, drive_end_sense(state.magneto), turns, frame)
    body += paint(turns, frame) + rotation_arrow(drive_end_sense(state.magneto), frame)
    return side, body, _tips(drive_anchors(), places, frame)


def _crank(state: BenchState, labels: Labels) -> tuple[float, str, Tips]:
    assert state.engaged is not None
    engine, at = state.engaged.installation.engine, crank_deg(state)
    scene = crank_scene(engine, at)
    left, bottom, right, top = scene.box
    scale = (_WIDTH - 2 * _MARGIN) / (right - left)
    frame = Frame(scale, _MARGIN - scale * left, scale * top + 8.0)
    # Readings beside numbered parts would be taken for their numbers.
    body = scene_body(scene, frame, _SIZE, lambda word: labels == "names")
    tips = {
        name: _pair(frame.of(scene.group(group).put(np.array([place]))))
        for name, (group, place) in crank_anchors(engine, at).items()
    }
    return scale * (top - bottom) + 16.0, body, tips


def drive_anchors() -> dict[str, tuple[str, Point]]:
    """Return where the names of the coupling's parts point: part → (group, point [mm])."""
    return {
        "drive flange": ("flange", polar_point((DISC_OUT_MM + DRIVE_MM) / 2 + 1.0, 290.0)),
        "disc": ("disc", polar_point((DISC_IN_MM + DISC_OUT_MM) / 2, 70.0)),
        "magneto flange": ("hub", polar_point(DISC_IN_MM - 7.0, 235.0)),
        "painted mark": ("flange", polar_point(DRIVE_MM - 2.0, 0.0)),
    }


def crank_anchors(engine: Engine, crank_at_deg: float) -> dict[str, tuple[str, Point]]:
    """Points of the names of the crank's parts, the crank at an angle [crank deg]: part → (group, point [mm])."""
    shown, now = crank_end(engine), crank_pose(engine, crank_at_deg)
    unit, right = shown.unit_mm, shown.box[2]
    return {
        "crank": ("case", (now.pin[0] / 2, now.pin[1] / 2)),
        "connecting rod": ("rod", (0.55 * engine.rod_mm, 0.0)),
        "piston pin": ("piston", (0.0, 0.0)),
        "piston": ("piston", (-0.3 * unit, 0.5 * unit)),
        "cylinder": ("case", (right - 1.2 * unit, -0.84 * unit)),
        "timing disc": ("case", (-0.9 * unit, 0.9 * unit)),
        "pointer": ("front", (shown.disc_mm * 1.1, 0.0)),
    }


def _lead(state: BenchState) -> tuple[float, str, Tips]:
    shown = lead_picture(state)
    scale = (_WIDTH - 2 * _MARGIN) / WIDTH
    height = scale * HEIGHT
    frame = Frame(scale, _MARGIN, height)
    body = scene_body(lead_scene(state, instruments=False), frame, _SIZE, lambda word: False)
    return height, body, {name: _pair(frame.of(np.array([point]))) for name, point in shown.anchors.items()}


def _pair(points: Array) -> tuple[float, float]:
    x, y = points[0].tolist()
    return x, y


def _tips(anchors: Mapping[str, tuple[str, Point]], places: Places, frame: Frame) -> Tips:
    return {n: _pair(frame.of(places.put(group, np.array([point])))) for n, (group, point) in anchors.items()}


# ---------------------------------------------------------------------- names and blanks


def _labels(tips: Tips, labels: Labels, height: float) -> str:
    numbers = {name: number for number, name in enumerate(tips, 1)}
    text = ""
    for label in arrange(tips, _MARGIN, _WIDTH - _MARGIN, 22.0, height - 8.0, 30.0 if labels != "names" else 20.0):
        text += leader(label, 0.7)
        name = tr(label.text)
        if labels == "names":
            anchor, x = ("end", label.x - 4) if label.left else ("start", label.x + 4)
            text += words(x, label.y + 4.0, name, anchor, _SIZE)
            continue
        text += _numbered(numbers[label.text], name if labels == "answers" else "", label.x, label.y, label.left)
    return text


def _numbered(number: int, answer: str, x: float, y: float, left: bool) -> str:
    """A number in a circle, and a line beside it with the answer on it, or nothing."""
    at = x - 10 if left else x + 10
    start = at - 10 - _LINE if left else at + 10
    text = disc(at, y, 9, "#ffffff", "#000000", 1.0) + words(at, y + 4.0, str(number), "middle", _SIZE)
    text += stroked(f"M{start:.1f} {y + 6:.1f}L{start + _LINE:.1f} {y + 6:.1f}", 0.8)
    return text + (words(start + 3, y + 3.0, answer, "start", _SIZE) if answer else "")


# ---------------------------------------------------------------------- readings to write into a picture


def gap_svg(answer: str) -> str:
    """Two contacts and the gap between them, with a line for its measure; not to scale."""
    body = ""
    for y in (20.0, 96.0):
        body += stroked(f"M40 {y:g}L150 {y:g}L150 {y + 34:g}L40 {y + 34:g}Z", 1.2, fill="#ffffff")
        for x in range(46, 150, 9):
            low, high = (x, min(x + 17, 150))
            body += stroked(f"M{low} {y + 34:g}L{high} {y + 34 - 2 * (high - low):g}", 0.5)
    body += _arrow(175.0, 54.0, 96.0)
    for y in (54.0, 96.0):
        body += stroked(f"M150 {y:g}L185 {y:g}", 0.8)
    return svg(340.0, 150.0, tr("Largest gap"), body + _blank(196.0, 80.0, answer, 84.0, tr("mm")))


def mark_svg(state: BenchState, offset_mm: float | None, answer: str) -> str:
    """Rim and mark, with a line for the straightedge's distance; not to scale.

    With an offset [mm], positive past the mark, the straightedge stands on its side; with None it is left to draw.
    """
    sense = cam_sense(state.magneto)
    rim = "".join(stroked(f"M20 {y + 26}Q170 {y - 26} 320 {y + 26}", 1.2) for y in (40, 70))
    rim += stroked("M170 14L170 44", 3.0)
    if offset_mm is not None and math.isfinite(offset_mm):
        side = sense * offset_side(offset_mm)
        edge = 170 + side * 62
        rim += stroked(f"M{edge} 20L{170 + side * 22} 150", 1.6, dash="8 5")
        if side:
            rim += _across(18.0, 170.0 + 2.0 * side, edge)
    way = tr("turns clockwise") if sense > 0 else tr("turns anticlockwise")
    start, end = (28.0, 78.0) if sense > 0 else (78.0, 28.0)
    rim += _across(124.0, start, end) + words(53.0, 142.0, way, "middle", 10.0)
    return svg(340.0, 150.0, tr("Straightedge and rim mark"), rim + _blank(222.0, 112.0, answer, 76.0, tr("mm")))


def _arrow(x: float, top: float, bottom: float) -> str:
    return stroked(
        f"M{x:g} {top:g}L{x:g} {bottom:g}M{x - 4:g} {top + 8:g}L{x:g} {top:g}L{x + 4:g} {top + 8:g}"
        f"M{x - 4:g} {bottom - 8:g}L{x:g} {bottom:g}L{x + 4:g} {bottom - 8:g}", 1.0
    )  # fmt: skip


def _across(y: float, start: float, end: float) -> str:
    back = -7.0 if end > start else 7.0
    head = f"M{end + back:g} {y - 4:g}L{end:g} {y:g}L{end + back:g} {y + 4:g}"
    return stroked(f"M{start:g} {y:g}L{end:g} {y:g}{head}", 1.0)


def _blank(x: float, y: float, answer: str, width: float, unit: str) -> str:
    """A line to write on, the answer on it or nothing, the unit behind an empty one."""
    line = stroked(f"M{x:g} {y + 3:g}L{x + width:g} {y + 3:g}", 0.8)
    if answer:
        return line + words(x + 3, y, answer, "start", _SIZE)
    return line + words(x + width + 4, y, unit, "start", _SIZE)
