"""The strip of flux, current and energy: what it draws against its curves, and what hands do with it."""

from __future__ import annotations

from dataclasses import replace
from itertools import pairwise

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QColor

from magview.bench.actions import TurnRotor, TurnScrew
from magview.bench.placing import new_bench
from magview.bench.state import readings
from magview.curves.why_here import why_here
from magview.drawing.rotor_cut import flux_words
from magview.spec.library import find_installation, find_magneto
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.theme import LIGHT, THEMES
from magview.ui.pictures.scene_colours import scene_colours
from magview.ui.pictures.why_here_view import WhyHereView


@pytest.fixture
def strip(qtbot):
    def made(item=None, size=(880, 260)) -> WhyHereView:
        view = WhyHereView(BenchModel(new_bench(item or find_installation("seven-radial-left"))), Look(LIGHT))
        qtbot.addWidget(view)
        view.resize(*size)
        view.show()
        qtbot.waitExposed(view)
        return view

    return made


def test_the_cursor_goes_where_it_is_dragged_in_one_step_of_the_history(strip, qtbot):
    view = strip()
    model = view.model
    start = view.room.x_of(view.strip.cursor_deg(model.state.rotor_deg))
    wanted = view.room.x_of(20.0)
    middle = round(view.room.area.center().y())
    qtbot.mousePress(view, Qt.MouseButton.LeftButton, pos=QPoint(round(start), middle))
    for share in (0.3, 0.7, 1.0):
        qtbot.mouseMove(view, QPoint(round(start + share * (wanted - start)), middle))
    qtbot.mouseRelease(view, Qt.MouseButton.LeftButton, pos=QPoint(round(wanted), middle))
    pixel = abs(view.room.angle_at(1.0) - view.room.angle_at(0.0))
    assert view.strip.cursor_deg(model.state.rotor_deg) == pytest.approx(20.0, abs=pixel)
    model.undo()
    assert view.room.x_of(view.strip.cursor_deg(model.state.rotor_deg)) == pytest.approx(start), "one step"


def test_the_arrow_keys_turn_the_rotor_finer_with_shift(strip, qtbot):
    view = strip()
    before = view.model.state.rotor_deg
    qtbot.keyClick(view, Qt.Key.Key_Right)
    assert view.model.state.rotor_deg == pytest.approx(before + 1.0)
    qtbot.keyClick(view, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert view.model.state.rotor_deg == pytest.approx(before + 0.9)


def test_curves_stand_at_their_values(strip):
    view = strip()
    lanes = [view.room.lane(i) for i in range(3)]
    assert all(a.bottom() < b.top() for a, b in pairwise(lanes))
    assert view.room.flux_y(0.0) == pytest.approx(lanes[0].center().y())
    assert view.room.current_y(0.0) == pytest.approx(lanes[1].bottom())
    for y_of, values, lane in (
        (view.room.flux_y, view.strip.flux, lanes[0]),
        (view.room.current_y, view.strip.current_a, lanes[1]),
        (view.room.energy_y, view.strip.energy_mj, lanes[2]),
    ):
        drawn = np.array([y_of(v) for v in values.tolist()])
        assert drawn.min() >= lane.top() - 1e-6
        assert drawn.max() <= lane.bottom() + 1e-6
        upwards = (drawn - y_of(0.0)) / -lane.height()
        assert upwards == pytest.approx(values * (y_of(0.0) - y_of(1.0)) / lane.height(), abs=1e-9)
        assert upwards.max() > 0.4, "it fills its lane"


def test_the_curves_are_painted_where_their_values_stand(strip):
    view = strip()
    picture, colours = view.grab().toImage(), scene_colours(LIGHT)
    for y_of, values, role in (
        (view.room.flux_y, view.strip.flux, "flux"),
        (view.room.current_y, view.strip.current_a, "opening"),
    ):
        wanted = QColor(colours[role])
        for share in (0.1, 0.25, 0.9):
            at = int(share * len(values))
            x, y = view.room.x_of(float(view.strip.rotor_deg[at])), y_of(float(values[at]))
            near = [picture.pixelColor(round(x), round(y) + step) for step in (-1, 0, 1)]
            assert any(_unlike(colour, wanted) < 60 for colour in near), f"{role} at {share}"


def _unlike(one: QColor, other: QColor) -> int:
    return sum(abs(a - b) for a, b in zip(one.getRgb()[:3], other.getRgb()[:3], strict=True))


def test_the_spark_is_as_long_as_its_energy(strip):
    view = strip()
    half = replace(view.room, strip=replace(view.strip, energy_mj=view.strip.energy_mj / 2))
    assert half.spark_length == pytest.approx(view.room.spark_length / 2)


def test_without_electrical_values_it_says_what_is_missing(strip):
    view = strip(find_magneto("seven-radial").model_copy(update={"electrical": None}))
    assert "no electrical values" in view.accessibleDescription()
    assert not view.grab().isNull()


@pytest.mark.parametrize("theme", THEMES.values(), ids=THEMES.keys())
@pytest.mark.parametrize("size", [(260, 120), (440, 200), (1200, 300)])
def test_it_is_painted_at_every_size_in_every_theme(strip, theme, size):
    view = strip(size=size)
    before = view.grab().toImage()
    view.look.theme = theme
    after = view.grab().toImage()
    assert (before == after) == (theme == LIGHT)


@pytest.mark.parametrize(
    ("screw_deg", "wrong", "right"), [(-60.0, "stay open", "closer"), (60.0, "stay closed", "wider")]
)
def test_contacts_that_never_work_are_told_apart(strip, screw_deg, wrong, right):
    view = strip(find_magneto("seven-radial"))
    view.model.send(TurnScrew(screw_deg))
    assert wrong in view.accessibleDescription()
    assert right in view.accessibleDescription()


def test_both_speeds_are_told_and_what_is_assumed(strip):
    view = strip()
    speeds = view.strip.speeds
    for speed in (speeds.starting_rpm, speeds.running_rpm):
        assert f"{speed:.0f}" in view.accessibleDescription()
        assert f"{speed:.0f}" in view.toolTip()
    assert "assumed" not in view.accessibleDescription()
    magneto = find_magneto("seven-radial")
    silent = magneto.electrical.model_copy(update={"starting_rpm": None, "running_rpm": None})
    view = strip(magneto.model_copy(update={"electrical": silent}))
    assert "assumed" in view.accessibleDescription()
    assert "assumed" in view.toolTip()


def test_while_the_contacts_just_touch_the_current_is_still_there(strip):
    view = strip()
    opens = float(readings(view.model.state).opens_deg[0])
    at, before, after = (view.strip.now(opens + by) for by in (0.0, -0.3, 0.3))
    assert at[2] == pytest.approx(before[2], rel=0.02) and at[2] > 1.0
    assert at[0] == pytest.approx(before[0], abs=0.02) and after[2] == 0.0


def test_every_thing_in_the_strip_is_named_where_it_is_pointed_at(strip, qtbot):
    view = strip(size=(317, 200))
    view.model.send(TurnRotor(-20.0))  # away from the opening
    room = view.room
    low = room.x_of(view.strip.best_span_deg[0])
    cursor = room.x_of(view.strip.cursor_deg(view.model.state.rotor_deg))
    middle = room.lane(1).top() + 2
    for x, y, named in (
        (cursor, middle, "Rotor now"),
        (room.x_of(view.strip.opens_deg), middle, "open here"),
        (low, room.lane(2).top(), "within a tenth of the most"),
        (room.area.left() + 10, room.lane(1).bottom() - 8, "contacts are closed"),
        (room.x_of(35.0), room.flux_y(float(np.interp(35.0, view.strip.rotor_deg, view.strip.magnet_flux))), "alone"),
        (room.x_of(-30.0), room.energy_y(view.strip.needed_mj), "a spark needs"),
    ):
        qtbot.mouseMove(view, QPoint(round(x), round(y)))
        assert named in view.toolTip()


@pytest.mark.parametrize("lobe", [0, 1])
def test_cut_and_strip_give_the_flux_the_same_sign(lobe):
    state = new_bench(find_installation("seven-radial-left"))
    state = replace(state, rotor_deg=float(readings(state).opens_deg[0]) + 25.0 + 90.0 * lobe)
    share = 100.0 * why_here(state).now(state.rotor_deg)[0]
    assert (share < 0.0) == (lobe == 0) and flux_words(share / 100.0) == f"core flux {share:+.0f} %"
