"""Moves of the coupling on screen: shown tooth by tooth, by hand and as planned; at once where motion is reduced."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPointF, Qt
from PySide6.QtTest import QTest

from magview.bench.actions import ReadLamp
from magview.bench.placing import new_bench
from magview.bench.timing import timing_plan
from magview.drawing.coupling_motion import TOOTH_MS
from magview.drawing.coupling_scene import after_move
from magview.drawing.drive_end import drive_pose
from magview.spec.engine import SlottedFlange
from magview.spec.library import find_installation
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.pictures.drive_motion import HOLD_MS
from magview.ui.pictures.drive_view import DriveView


@pytest.fixture
def shown(qtbot):
    def show(size=(400, 400), reduced=False, item=None):
        model = BenchModel(new_bench(item or find_installation("seven-radial-left")), None)
        model.send(ReadLamp("left", 22.0))
        model.reduced_motion = reduced
        view = DriveView(model, Look())
        qtbot.addWidget(view)
        view.resize(*size)
        view.show()
        return view, model

    return show


def pose_of(model):
    return drive_pose(model.state, model.state.engaged)


def drawn(view) -> dict[str, float]:
    return {g.name: g.turns[0].bearing_deg for g in view.picture.groups if g.turns and "-" not in g.name}


def test_a_tooth_moved_by_a_key_is_seen_going(shown):
    view, model = shown()
    before = pose_of(model)
    QTest.keyClick(view.viewport(), Qt.Key.Key_Up)
    after = pose_of(model)
    assert after.disc != before.disc
    assert view.motion.running
    assert view.motion.clock.duration() == TOOTH_MS
    assert drawn(view)["disc"] == pytest.approx(before.disc)
    view.motion.clock.setCurrentTime(round(TOOTH_MS / 2))
    assert drawn(view)["disc"] == pytest.approx((before.disc + after.disc) / 2, abs=1.0)
    assert drawn(view)["magneto flange"] == pytest.approx((before.hub + after.hub) / 2, abs=1.0), "carried along"
    view.motion.clock.setCurrentTime(round(TOOTH_MS))
    assert not view.motion.running
    assert drawn(view)["disc"] == pytest.approx(after.disc)


def test_a_second_tooth_begins_where_the_first_is_seen(shown):
    view, _ = shown()
    QTest.keyClick(view.viewport(), Qt.Key.Key_Right)
    view.motion.clock.setCurrentTime(round(TOOTH_MS / 2))
    seen = drawn(view)["magneto flange"]
    QTest.keyClick(view.viewport(), Qt.Key.Key_Right)
    assert drawn(view)["magneto flange"] == pytest.approx(seen, abs=1e-6)


def test_with_reduced_motion_only_the_end_is_shown(shown):
    view, model = shown(reduced=True)
    QTest.keyClick(view.viewport(), Qt.Key.Key_Up)
    assert not view.motion.running
    assert drawn(view)["disc"] == pytest.approx(pose_of(model).disc)


def test_the_planned_move_is_shown_and_nothing_is_moved(shown):
    view, model = shown()
    assert not view.play_button.isVisible()
    before = model.state
    move = timing_plan(before, "left")[0]
    view.preview(move)
    assert view.play_button.isVisible()
    QTest.mouseClick(view.play_button, Qt.MouseButton.LeftButton)
    assert view.motion.running
    end, still = after_move(before, before.engaged, move), pose_of(model)
    view.motion.clock.setCurrentTime(view.motion.clock.duration() - round(HOLD_MS / 2))
    assert (drawn(view)["disc"], drawn(view)["magneto flange"]) == pytest.approx((end.disc, end.hub))
    view.motion.clock.setCurrentTime(view.motion.clock.duration())
    assert drawn(view)["disc"] == pytest.approx(still.disc)
    assert model.state is before


def test_with_reduced_motion_the_space_bar_shows_how_it_ends_and_again_how_it_is(shown):
    view, model = shown(reduced=True)
    move = timing_plan(model.state, "left")[0]
    view.preview(move)
    end = after_move(model.state, model.state.engaged, move)
    for hub in (end.hub, pose_of(model).hub):
        QTest.keyClick(view.viewport(), Qt.Key.Key_Space)
        assert not view.motion.running
        assert drawn(view)["magneto flange"] == pytest.approx(hub)
    QTest.keyClick(view.viewport(), Qt.Key.Key_Space)
    view.preview(None)
    assert drawn(view)["magneto flange"] == pytest.approx(pose_of(model).hub)


def test_the_pointer_draws_no_coupling_again(shown):
    view, _ = shown((900, 400))
    view.grab()
    built = view.scenes_built
    for x in range(150, 750, 10):
        QTest.mouseMove(view.viewport(), QPointF(x, 200).toPoint())
        view.viewport().grab()
    assert view.scenes_built == built
    assert view.shows_both


def test_slots_have_no_teeth_to_move(shown):
    slots = SlottedFlange(kind="slotted_flange", travel_deg=20.0)
    item = find_installation("seven-radial-left").model_copy(update={"coupling": None, "adjusted_by": slots})
    view, model = shown(item=item)
    before = model.state
    QTest.keyClick(view.viewport(), Qt.Key.Key_Up)
    QTest.mousePress(view.viewport(), Qt.MouseButton.LeftButton, pos=QPointF(250, 200).toPoint())
    QTest.mouseMove(view.viewport(), QPointF(250, 260).toPoint())
    QTest.mouseRelease(view.viewport(), Qt.MouseButton.LeftButton)
    assert model.state is before
    assert "swung in its slots" in view.accessibleDescription()
    view.grab()
