"""Section and cut on screen: where they stand, and the part that is pointed at."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QPointF, QRectF

from magview.bench.placing import new_bench
from magview.drawing.scene import frame_of
from magview.drawing.shaft_layout import DISC, PART_NAMES, ROTOR
from magview.spec.library import find_installation
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.theme import DARK, LIGHT
from magview.ui.pictures.shaft_view import ShaftView


@pytest.fixture
def shaft(qtbot):
    def made(size: tuple[int, int]) -> ShaftView:
        view = ShaftView(BenchModel(new_bench(find_installation("seven-radial-left"))), Look(LIGHT))
        qtbot.addWidget(view)
        view.resize(*size)
        view.show()
        qtbot.waitExposed(view)
        return view

    return made


@pytest.mark.parametrize("size", [(880, 230), (560, 230), (700, 600), (300, 400)])
def test_both_pictures_stand_side_by_side_or_one_above_the_other(shaft, size):
    view = shaft(size)
    section, cut = view.rooms()
    whole = QRectF(view.rect())
    assert whole.contains(section) and whole.contains(cut)
    assert not section.intersects(cut)
    assert (section.right() <= cut.left()) == (size[0] > 2 * size[1])


@pytest.mark.parametrize(("x", "part"), [(sum(DISC) / 2, "disc"), (sum(ROTOR) / 2, "rotor")])
def test_what_is_pointed_at_is_lit_and_named(shaft, qtbot, x, part):
    view = shaft((880, 230))
    section, _ = view.rooms()
    frame = frame_of(view.scenes()[0], section.width(), section.height(), view.fontInfo().pixelSize())
    at = QPointF(*frame.of(np.array([x, 0.0])).tolist())
    before = view.grab().toImage()
    with qtbot.waitSignal(view.pointed) as pointed:
        qtbot.mouseMove(view, at.toPoint())
    assert pointed.args == [part]
    assert view.part_at(at) == part
    assert view.toolTip() == part
    assert view.grab().toImage() != before, "its outline is lit"


def test_another_theme_repaints_it(shaft):
    view = shaft((560, 230))
    before = view.grab().toImage()
    view.look.theme = DARK
    assert view.grab().toImage() != before


@pytest.mark.parametrize("size", [(880, 230), (700, 600)])
def test_every_part_that_can_be_pointed_at_has_a_name(shaft, size):
    view = shaft(size)
    found, drawn = set(), set()
    for scene, room in zip(view.scenes(), view.rooms(), strict=True):
        frame = frame_of(scene, room.width(), room.height(), view.fontInfo().pixelSize())
        pieces = [(group, piece) for group in scene.groups for piece in group.pieces if piece.part and piece.closed]
        for group, piece in pieces:
            outline = group.put(piece.outlines[0])
            middle = outline.mean(axis=0)
            for place in (middle, *(0.9 * outline[:: max(1, len(outline) // 8)] + 0.1 * middle)):
                if piece.part not in found:
                    found.add(view.part_at(QPointF(*frame.of(place).tolist()) + room.topLeft()))
        drawn |= {piece.part for _, piece in pieces}
    assert {"rotor", "coil", "disc", "cam", "finger", "timing-window"} <= found <= drawn | {""}
    assert drawn <= set(PART_NAMES)


def test_a_part_pointed_at_lights_up_in_the_other_pictures(open_window):
    page = open_window("seven-radial-left")
    drive, shaft = page.drive, page.shaft
    drive.lit.emit("disc")
    assert {scene.lit for scene in shaft.scenes()} == {"disc"}
    page.breaker.lit.emit("rotor")
    assert {scene.lit for scene in shaft.scenes()} == {"rotor"}
    shaft.pointed.emit("magneto flange")
    assert drive.picture.lit == "magneto flange"
