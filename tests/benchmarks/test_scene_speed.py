"""How fast scenes are made and painted, as ratios against a bare painter on the same paths in the same run.

pytest tests/benchmarks/test_scene_speed.py --benchmark-only -o addopts=
"""

from __future__ import annotations

import statistics
import time

import pytest
from PySide6.QtCore import QSizeF
from PySide6.QtGui import QFont, QImage, QPainter

from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.contacts_closeup import closeup_scene
from magview.drawing.scene import frame_of
from magview.spec.library import find_magneto
from magview.ui.kit.theme import THEMES
from magview.ui.pictures.scene_painter import ScenePainter, base_of

SIZES = {"1280x720": (504, 447, 12), "1920x1080": (790, 700, 15), "1000x800": (1000, 800, 13)}
SCENES = {"breaker": breaker_scene, "closeup": closeup_scene}


def medians_in_turns(actions, rounds: int) -> list[list[float]]:
    """Times [ms] of each, one after the other in every round, so that a slow minute falls on all of them."""
    times = [[] for _ in actions]
    for i in range(rounds):
        for kept, action in zip(times, actions, strict=True):
            start = time.perf_counter()
            action(i)
            kept.append(1000 * (time.perf_counter() - start))
    return times


@pytest.mark.parametrize("at", SIZES)
@pytest.mark.parametrize("picture", SCENES)
def test_a_frame_against_a_bare_painter_on_the_same_paths(picture, at, benchmark, qapp):
    width, height, em = SIZES[at]
    magneto, make = find_magneto("seven-radial"), SCENES[picture]
    font = QFont("DejaVu Sans")
    font.setPixelSize(em)
    ours, image = ScenePainter(THEMES["light"]), QImage(width, height, QImage.Format.Format_ARGB32_Premultiplied)

    def frame(i: int) -> None:
        painter = QPainter(image)
        ours.paint(painter, make(Shown(magneto, i * 1.7)), QSizeF(width, height), font)
        painter.end()

    frame(0)
    scene = make(Shown(magneto, 20.0))
    base = base_of(frame_of(scene, width, height, em))
    paths = [
        (ours.path_of(piece), *ours.tools_of(piece.style), group) for group in scene.groups for piece in group.pieces
    ]

    def bare(_: int) -> None:
        image.fill(0xFFFFFF)
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setTransform(base)
        for path, pen, brush, _ in paths:
            painter.setPen(pen)
            painter.setBrush(brush)
            painter.drawPath(path)
        painter.end()

    def plate(i: int) -> None:
        painter = QPainter(image)
        ours.paint(painter, make(Shown(magneto, 20.0, (i % 40) / 10 - 2.0)), QSizeF(width, height), font)
        painter.end()

    benchmark.pedantic(lambda: frame(int(time.perf_counter() * 60)), rounds=60, warmup_rounds=5)
    ours_ms, bare_ms = medians_in_turns([frame, bare], 80)
    (plate_ms,) = medians_in_turns([plate], 80)
    made = medians_in_turns([lambda i: make(Shown(magneto, i * 1.7))], 80)[0]
    benchmark.extra_info.update(
        frame_ms=statistics.median(ours_ms), frame_p95_ms=statistics.quantiles(ours_ms, n=20)[-1],
        bare_painter_ms=statistics.median(bare_ms), ratio=statistics.median(ours_ms) / statistics.median(bare_ms),
        scene_ms=statistics.median(made), turning_the_plate_ms=statistics.median(plate_ms),
        turning_the_plate_p95_ms=statistics.quantiles(plate_ms, n=20)[-1],
    )  # fmt: skip
