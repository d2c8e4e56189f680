"""The coupling on paper, seen from the drive end: parts named, paint, and which way it turns."""

from __future__ import annotations

import math

import numpy as np

from magview.bench.state import BenchState, Engaged, Mounting
from magview.bench.words import drive_end_sense
from magview.drawing.coupling_scene import PAINT, coupling_scene
from magview.drawing.drive_end import (
    DISC_IN_MM,
    DISC_OUT_MM,
    DRIVE_MM,
    EXTENT_MM,
    HUB_MM,
    NUMBER_RADII_MM,
    DrivePose,
    drive_pose,
)
from magview.drawing.scene import Frame, Options
from magview.drawing.scene_svg import disc, path, scene_body, stroked, words
from magview.drawing.shapes import arc, polar
from magview.drawing.svg import svg
from magview.spec.engine import Coupling
from magview.spec.language import marked, tr

_STRIP, _SIZE, _NUMBER = 14.0, 10.0, 8.0
"""Strips for names above and below the picture, and type of names and numbers [px]."""

_EVERY = (1, 2, 5, 10, 20, 50, 100)
"""Of how many slots one is numbered, where there is no room for more."""

_ARROW_MM = DRIVE_MM + 3.5

_NAMES = (
    (marked("disc"), (DISC_IN_MM + DISC_OUT_MM) / 2, 315.0),
    (marked("drive flange"), DRIVE_MM - 2.5, 225.0),
    (marked("magneto flange"), (HUB_MM + NUMBER_RADII_MM["hub"]) / 2, 135.0),
    (marked("direction of rotation"), _ARROW_MM, 42.0),
)
"""Parts named, and where each name points: radius [mm], bearing [deg]. Each name stands in the nearest corner."""


def coupling_svg(state: BenchState, engaged: Engaged, mounting: Mounting, title: str, width: int = 300) -> str:
    """The coupling from the drive end, its painted marks as a mounting has them, the drive flange's at the top."""
    turns = upright(state, engaged, mounting)
    height = width + 2 * _STRIP
    frame = Frame(width / (2 * EXTENT_MM), width / 2, height / 2)
    sense = drive_end_sense(state.magneto)
    body = coupling_body(state, turns, frame) + paint(turns, frame) + rotation_arrow(sense, frame)
    return svg(width, height, title, body + _names(frame, width, height))


def coupling_body(state: BenchState, turns_deg: dict[str, float], frame: Frame) -> str:
    """The three parts of the scene that the screen shows, turned to these angles; paint and words are added to it."""
    pose = DrivePose(turns_deg["flange"], turns_deg["disc"], turns_deg["hub"])
    scene = coupling_scene(state, Options(names=False, hidden=frozenset({PAINT})), seen=pose)
    return scene_body(scene, frame, _SIZE, lambda word: False)


def upright(state: BenchState, engaged: Engaged, mounting: Mounting | None = None) -> dict[str, float]:
    """Angles of the parts [deg] with the drive flange's mark at the top: what matters is how they stand
    to one another."""
    turns = drive_pose(state, engaged, mounting).turns_deg
    return {group: turn - turns["flange"] for group, turn in turns.items()}


def rotation_arrow(sense: int, frame: Frame) -> str:
    """An arrow round the outside at the upper right; `sense` +1 is clockwise."""
    start, end = (20.0, 66.0) if sense > 0 else (66.0, 20.0)
    shaft = arc(_ARROW_MM, start, end)
    tip, behind = polar(_ARROW_MM, end + 3.0 * sense), end - 2.0 * sense
    head = np.array([polar(_ARROW_MM - 1.4, behind), tip, polar(_ARROW_MM + 1.4, behind)])
    return stroked(path(frame.of(shaft), False), 1.6) + stroked(path(frame.of(head), True), 0.8, fill="#000000")


def paint(turns_deg: dict[str, float], frame: Frame) -> str:
    """The three painted marks once more, on white, or hatching would drown them."""
    text = ""
    for group, inner, outer in (
        ("flange", DISC_OUT_MM + 3.0, DRIVE_MM),
        ("disc", DISC_IN_MM + 2.6, DISC_OUT_MM - 2.6),
        ("hub", HUB_MM, DISC_IN_MM - 3.0),
    ):
        line = path(frame.of(np.array([polar(inner, turns_deg[group]), polar(outer, turns_deg[group])])), False)
        text += stroked(line, 7.0, colour="#ffffff") + stroked(line, 3.6)
    return text


def slot_numbers(coupling: Coupling, sense: int, turns_deg: dict[str, float], frame: Frame) -> str:
    """Slots and teeth numbered with rotation from the painted mark, which is number 1, as far as there is room."""
    text = ""
    for ring, group, teeth in (
        ("flange", "flange", coupling.drive_teeth),
        ("disc-out", "disc", coupling.drive_teeth),
        ("disc-in", "disc", coupling.magneto_teeth),
        ("hub", "hub", coupling.magneto_teeth),
    ):
        radius = NUMBER_RADII_MM[ring]
        pitch = 2 * math.pi * radius * frame.scale / teeth  # [px]
        if ring == "disc-in" and (NUMBER_RADII_MM["disc-out"] - radius) * frame.scale < _NUMBER:
            continue  # in a small picture the disc's two rings of numbers would run into one another
        room = 0.65 * _NUMBER * len(str(teeth)) + 2.0
        every = next((n for n in _EVERY if n * pitch >= room), teeth)
        for n in range(1, teeth):
            if (n + 1) % every:
                continue
            bearing = turns_deg[group] + sense * n * 360.0 / teeth
            x, y = frame.of(polar(radius, bearing)[None])[0].tolist()
            if group != "disc":  # hatched
                text += disc(x, y, room / 2, "#ffffff")
            text += words(x, y + 0.36 * _NUMBER, str(n + 1), "middle", _NUMBER)
    return text


def _names(frame: Frame, width: float, height: float) -> str:
    text = ""
    named = {bearing: tr(name) for name, _, bearing in _NAMES}
    longest = max(len(named[315.0] + named[42.0]), len(named[225.0] + named[135.0]))
    size = min(_SIZE, (width - 8.0) / (0.62 * longest))  # two names beside one another, also in a small picture
    for name, radius, bearing in _NAMES:
        x, y = frame.of(polar(radius, bearing)[None])[0].tolist()
        left, upper = x < width / 2, y < height / 2
        at_x, at_y = (8.0 if left else width - 8.0), (_STRIP if upper else height - _STRIP)
        line = f"M{at_x:.1f} {at_y:.1f}L{x:.1f} {y:.1f}"
        text += stroked(line, 2.6, colour="#ffffff") + stroked(line, 0.6) + disc(x, y, 1.8, "#000000", "#ffffff", 0.6)
        below = _STRIP - 4.0 if upper else height - 3.0
        text += words(2.0 if left else width - 2.0, below, tr(name), "start" if left else "end", size)
    return text
