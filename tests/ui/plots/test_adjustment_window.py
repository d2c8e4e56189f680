"""The adjustment window: clicks that set plate and screw, the map, wear, the wheel."""

from __future__ import annotations

import math

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QColor
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench import actions as do
from magview.bench.state import readings
from magview.physics.cam.setting import internal_timing
from tests.hands import send_mouse
from tests.plot_hands import click, pixel, steps_done, wheel


def test_a_click_in_the_adjustment_window_sets_plate_and_screw(open_plots):
    window, plots = open_plots("window")
    (left, right), (low, high) = plots.plots[0].viewRange()
    box = plots.plots[0].getViewBox()
    for across, up in ((0.3, 0.7), (0.8, 0.2)):
        # From the frame of the plot alone: so far across is so far along its axis.
        frame = box.mapRectToScene(box.rect())
        at = QPointF(frame.left() + across * frame.width(), frame.bottom() - up * frame.height())
        for kind in (QEvent.Type.MouseMove, QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease):
            send_mouse(plots.canvas, kind, at)
        QApplication.processEvents()
        state = window.model.state
        assert state.backplate_deg == pytest.approx(left + across * (right - left), abs=0.005 * (right - left))
        assert state.screw_deg == pytest.approx(low + up * (high - low), abs=0.01 * (high - low))
        assert window.panel.plate.value() == pytest.approx(state.backplate_deg, abs=0.01)
    assert steps_done(window) == 2
    # What is tight says so and stays.
    window.model.send(do.TightenLock(True))
    stays = window.model.state
    click(plots, 0, 0.0, 0.0)
    assert window.model.state == stays
    assert "slacken" in window.statusBar().currentMessage()


def test_the_map_is_green_where_a_setting_is_in_limits_and_only_there(open_plots):
    window, plots = open_plots("window")
    plots._image.setZValue(100)  # above lines and words  # noqa: SLF001
    plots.canvas.scene().update()
    QApplication.processEvents()
    picture = plots.canvas.grab().toImage()
    (left, right), (low, high) = plots.plots[0].viewRange()
    paper = QColor(window.look.theme.paper)
    timing, rng = internal_timing(window.model.state.magneto), np.random.default_rng(5)
    seen = set()
    for plate, screw in zip(rng.uniform(left, right, 300), rng.uniform(low, high, 300), strict=True):
        near = [(plate + i * (right - left) / 200, screw + j * (high - low) / 80) for i in (-1, 1) for j in (-1, 1)]
        verdicts = {bool(timing.readings(b, s).within_limits) for b, s in near}
        if len(verdicts) > 1:
            continue  # too near to the edge for a pixel to tell
        shown = picture.pixelColor(pixel(plots, 0, plate, screw).toPoint())
        green = shown.green() - shown.red() > 10 + paper.green() - paper.red()
        inside = verdicts.pop()
        assert green == inside, f"plate {plate}, screw {screw}"
        seen.add(inside)
    assert seen == {True, False}


def test_the_wear_slider_wears_the_heel_and_everything_follows(open_plots):
    window, plots = open_plots("window")
    before, map_before = readings(window.model.state), plots._image.image.copy()  # noqa: SLF001
    plots.wear.setFocus()
    rect = plots.wear.rect()
    QTest.mousePress(plots.wear, Qt.MouseButton.LeftButton, pos=QPoint(6, rect.center().y()))
    for x in range(6, rect.width() // 2, 6):
        QTest.mouseMove(plots.wear, QPoint(x, rect.center().y()))
        QApplication.processEvents()
    QTest.mouseRelease(plots.wear, Qt.MouseButton.LeftButton, pos=QPoint(rect.width() // 2, rect.center().y()))
    state = window.model.state
    wear = state.magneto.condition.heel_wear_mm
    assert wear > 0.05
    assert plots.worn.text() == f"{wear:.3f} mm"
    assert steps_done(window) == 1, "one drag is one step"
    assert str(window.model.store.undo_name).startswith("Wear the heel")
    now = readings(state)
    arm = state.magneto.breaker
    expected = before.max_gap_mm[0] - wear * arm.contact_arm_mm / arm.heel_arm_mm  # guide: theory-setting
    assert now.max_gap_mm[0] == pytest.approx(max(expected, 0.0), abs=1e-9)
    if np.isfinite(now.opens_deg[0]):
        assert now.opens_deg[0] > before.opens_deg[0]
    assert not np.array_equal(plots._image.image, map_before)  # noqa: SLF001
    assert window.panel.gauges["gap"].shown.words == f"{now.max_gap_mm[0]:.3f} mm"
    window.model.undo()
    assert plots.wear.value() == 0
    assert np.array_equal(plots._image.image, map_before)  # noqa: SLF001


def test_the_worn_heel_is_drawn_and_drawn_new_again(open_plots):
    window, _ = open_plots("window")
    view = window.breaker
    new = view.grab().toImage()
    window.model.send(do.WearHeel(0.3))
    worn = view.grab().toImage()
    assert worn != new
    window.model.undo()
    assert view.grab().toImage() == new
    # Built at once for a worn magneto it is the same picture as one that wore while it was looked at.
    window.model.send(do.WearHeel(0.3))
    followed = view.grab().toImage()
    view._picture.build(view.drawing.shapes, view.drawing.origins, window.look.theme)  # noqa: SLF001
    view._picture.colour(window.look.theme, view.hand)  # noqa: SLF001
    view._picture.turn(view.now.turns_deg)  # noqa: SLF001
    view.viewport().update()
    assert view.grab().toImage() == followed


def test_the_wheel_zooms_and_a_double_click_shows_the_whole_without_setting_anything(open_plots):
    window, plots = open_plots("window")
    window.model.send(do.SetBoth(1.0, 2.0))
    before, whole, steps = window.model.state, plots.plots[0].viewRange(), steps_done(window)
    before_map = plots._image.image.copy()  # noqa: SLF001
    wheel(plots, pixel(plots, 0, 0.0, 0.0), 3)
    (left, right), (low, high) = plots.plots[0].viewRange()
    assert right - left < 0.8 * (whole[0][1] - whole[0][0])
    assert not np.array_equal(plots._image.image, before_map), "the map is worked out anew"  # noqa: SLF001
    rect = plots._image.mapRectToParent(plots._image.boundingRect())  # noqa: SLF001
    assert (rect.left(), rect.right()) == pytest.approx((left, right))
    assert (rect.top(), rect.bottom()) == pytest.approx((low, high))
    click(plots, 0, 0.5, 1.0, double=True)
    assert plots.plots[0].viewRange()[0] == pytest.approx(whole[0])
    assert plots.plots[0].viewRange()[1] == pytest.approx(whole[1])
    assert window.model.state == before
    assert steps_done(window) == steps
    wheel(plots, pixel(plots, 0, 0.0, 0.0), -40)
    (left, right), (low, high) = plots.plots[0].viewRange()
    state = window.model.state
    assert (left, right) == pytest.approx(state.magneto.backplate.range_deg), "no farther than the slot"
    assert low >= state.magneto.contact_screw.range_deg[0] - 1e-6
    assert high <= state.magneto.contact_screw.range_deg[1] + 1e-6


def test_where_you_are_is_never_out_of_sight(open_plots):
    window, plots = open_plots("window")
    low, high = plots.plots[0].viewRange()[1]
    far = window.model.state.magneto.contact_screw.range_deg[1]
    assert far > high, "a part of the travel is not shown"
    window.model.send(do.TurnScrew(far))
    low, high = plots.plots[0].viewRange()[1]
    assert low <= far <= high


def test_an_eccentric_past_its_dead_point_has_two_lines_for_a_gap(open_plots):
    window, plots = open_plots("window")
    magneto = window.model.state.magneto
    screw = magneto.contact_screw.model_copy(update={"range_deg": (-60.0, 170.0)})
    window.model.send(do.PlaceMagneto(magneto.model_copy(update={"contact_screw": screw})))
    wheel(plots, pixel(plots, 0, 0.0, 0.0), -60)
    low, high = plots.plots[0].viewRange()[1]
    assert high > 150.0
    _, y = plots._gap_edges.getData()  # noqa: SLF001
    timing_stop = [magneto.designed_setting.gap_mm - g for g in magneto.gap_limits_mm]
    expected = []
    for move in timing_stop:  # s₀ = s_top − gap + throw·sin σ, guide: theory-setting
        angle = math.degrees(math.asin(move / screw.throw_mm))
        expected += [a for a in (angle, 180.0 - angle) if low < a < high]
    assert sorted(set(np.round(y, 6))) == pytest.approx(sorted(expected), abs=0.5)
