"""Section and cut on screen: where they stand, and the part that is pointed at."""

from __future__ import annotations

import numpy as np
import pytest
from PySide6.QtCore import QPointF, QRectF

from magview.bench.placing import new_bench
from magview.drawing.scene import frame_of
from magview.drawing.shaft_layout import DISC, ROTOR
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
    from magview.drawing.shaft_layout import PART_NAMES

    view = shaft(size)
    places = ((x, y) for x in range(2, size[0], 7) for y in range(2, size[1], 7))
    found = {view.part_at(QPointF(x, y)) for x, y in places} - {""}
    assert {"rotor", "coil", "disc", "cam", "finger", "timing-window"} <= found
    assert found <= set(PART_NAMES)
