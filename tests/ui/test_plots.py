"""The plots in the real window: the rotor and its cursor, clicks, sliders, files, looks, and what is not there."""

from __future__ import annotations

import csv
import gc
import io
import math
import weakref
from xml.etree import ElementTree

import numpy as np
import pyqtgraph as pg
import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, QSize, Qt
from PySide6.QtGui import QColor, QGuiApplication, QImage, QMouseEvent, QResizeEvent, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QSlider, QSpinBox

from magview.bench import actions as do
from magview.bench.apply import new_bench
from magview.bench.state import gap_now_mm, readings
from magview.physics.setting import internal_timing
from magview.spec.library import find_installation, shipped_names
from magview.ui.model import BenchModel
from magview.ui.plot_sheet import PlotSheet
from magview.ui.theme import THEMES
from magview.ui.window import MainWindow
from tests.hands import send_mouse
from tests.ui.test_readable import contrast

SHEETS = ("lift", "lobes", "window", "coil", "pull", "coupling")


@pytest.fixture
def open_plots(open_window, qtbot):
    """Open a window with one sheet of plots in front, laid out."""

    def open_on(sheet: str, name: str = "seven-radial-left", size: tuple[int, int] = (1280, 720)):
        window = open_window(name, size)
        window.show_plots(True)
        plots = window.plots.choose(sheet)
        settle(qtbot)
        return window, plots

    return open_on


def settle(qtbot) -> None:
    """A few turns of the event loop: sizes, ticks, then pictures."""
    qtbot.wait(30)


def pixel(plots, plot: int, x: float, y: float) -> QPointF:
    """Where a value of one of the plots stands on the canvas [px]."""
    scene = plots.plots[plot].getViewBox().mapViewToScene(QPointF(x, y))
    return QPointF(plots.canvas.viewportTransform().map(scene))


def middle(plots, plot: int) -> float:
    """Half-way up a plot."""
    low, high = plots.plots[plot].viewRange()[1]
    return (low + high) / 2


def click(plots, plot: int, x: float, y: float, double: bool = False) -> None:
    """Press and release; `double`: twice, as Qt tells it."""
    at = pixel(plots, plot, x, y)
    send_mouse(plots.canvas, QEvent.Type.MouseMove, at)
    kinds = [QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease]
    if double:
        kinds += [QEvent.Type.MouseButtonDblClick, QEvent.Type.MouseButtonRelease]
    for kind in kinds:
        send_mouse(plots.canvas, kind, at)
    QApplication.processEvents()


def move_held(plots, at: QPointF) -> None:
    """Move with the left button down; the library takes no more than a hundred moves a second."""
    QTest.qWait(12)
    port = plots.canvas.viewport()
    there = QPointF(port.mapToGlobal(at.toPoint()))
    left, none = Qt.MouseButton.LeftButton, Qt.MouseButton.NoButton
    event = QMouseEvent(QEvent.Type.MouseMove, at, there, none, left, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(port, event)


def drag(plots, plot: int, start: float, end: float) -> None:
    """Drag from one x to another, half-way up."""
    places = [pixel(plots, plot, x, middle(plots, plot)) for x in np.linspace(start, end, 11)]
    send_mouse(plots.canvas, QEvent.Type.MouseMove, places[0])
    send_mouse(plots.canvas, QEvent.Type.MouseButtonPress, places[0])
    for at in places:
        move_held(plots, at)
    send_mouse(plots.canvas, QEvent.Type.MouseButtonRelease, places[-1])
    QApplication.processEvents()


def steps_done(window) -> int:
    """Undo everything, count, and do it again."""
    count = 0
    while window.model.store.undo_name is not None:
        window.model.undo()
        count += 1
    for _ in range(count):
        window.model.redo()
    return count


# ---------------------------------------------------------------------- the rotor and its cursor


@pytest.mark.parametrize("sheet", ["lift", "coil", "pull"])
@pytest.mark.parametrize("name", ["seven-radial-left", "nine-radial-left"])
def test_turning_the_rotor_moves_the_cursor(open_plots, sheet, name):
    window, plots = open_plots(sheet, name)
    whole = 360.0 if sheet == "pull" else 360.0 / window.model.state.magneto.cam.turns_per_rotor_turn
    for angle in (33.0, 500.0, -10.0, 1234.5):
        window.model.send(do.TurnRotor(angle))
        assert [line.value() for line in plots.cursors] == [pytest.approx(angle % whole)] * len(plots.cursors)


def test_dragging_the_cursor_turns_the_rotor_in_one_step_that_can_be_undone(open_plots):
    window, plots = open_plots("lift")
    window.model.send(do.TurnRotor(380.0))  # the second turn: it must stay in it
    before = steps_done(window)
    drag(plots, 1, 20.0, 27.0)
    state = window.model.state
    assert state.rotor_deg == pytest.approx(387.0, abs=1.0)  # a pixel is about a degree here
    assert steps_done(window) == before + 1
    assert plots.cursors[0].value() == pytest.approx(state.rotor_deg - 360.0)
    # The curve under the cursor reads what the panel and the picture read.
    x, y = plots._gaps["present"].getData()  # noqa: SLF001
    under = float(np.interp(plots.cursors[1].value(), x, y))
    assert under == pytest.approx(gap_now_mm(state), abs=2e-3)
    assert under > 0.1
    assert f"open {gap_now_mm(state):.3f} mm" in window.breaker.accessibleDescription()
    window.model.undo()
    assert window.model.state.rotor_deg == 380.0


def test_a_cursor_in_the_hand_holds_the_rotor_against_the_magnet(open_plots):
    window, plots = open_plots("pull", "seven-radial")  # off the engine
    window.model.send(do.TurnRotor(30.0))
    at = pixel(plots, 0, 30.0, middle(plots, 0))
    send_mouse(plots.canvas, QEvent.Type.MouseMove, at)
    send_mouse(plots.canvas, QEvent.Type.MouseButtonPress, at)
    for x in (31.0, 33.0, 36.0):
        move_held(plots, pixel(plots, 0, x, middle(plots, 0)))
    held_at = window.model.state.rotor_deg
    window.model.send(do.LetGo())
    window.model.tick(0.1)
    assert window.model.state.rotor_deg == held_at
    send_mouse(plots.canvas, QEvent.Type.MouseButtonRelease, pixel(plots, 0, 36.0, middle(plots, 0)))
    window.model.tick(0.1)
    assert window.model.state.rotor_deg < held_at, "let go, it falls back"
    window.model.send(do.HoldRotor())


def test_a_drag_past_the_ends_stays_in_the_turn(open_plots):
    window, plots = open_plots("lift")
    window.model.send(do.TurnRotor(355.0))
    drag(plots, 0, 355.0, 420.0)
    assert 359.9 < window.model.state.rotor_deg < 360.0
    assert 359.9 < plots.cursors[0].value() < 360.0


def test_a_click_turns_the_rotor_there_and_keys_turn_it_on(open_plots):
    window, plots = open_plots("lift")
    click(plots, 0, 200.0, middle(plots, 0))
    there = window.model.state.rotor_deg
    assert there == pytest.approx(200.0, abs=1.0)  # a pixel is about a degree
    plots.canvas.setFocus()
    QTest.keyClick(plots.canvas, Qt.Key.Key_Right)
    assert window.model.state.rotor_deg == pytest.approx(there + 1.0)
    QTest.keyClick(plots.canvas, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert window.model.state.rotor_deg == pytest.approx(there + 0.9)


def test_a_click_on_a_lobe_turns_the_rotor_to_where_it_opens(open_plots):
    window, plots = open_plots("lobes")
    click(plots, 0, 3.0, middle(plots, 0))
    assert window.model.state.rotor_deg == pytest.approx(float(readings(window.model.state).opens_deg[2]) % 360.0)


def test_values_under_the_pointer_are_those_of_the_bench(open_plots):
    window, plots = open_plots("lift")
    at = pixel(plots, 1, 30.0, middle(plots, 1))
    send_mouse(plots.canvas, QEvent.Type.MouseMove, at)
    QApplication.processEvents()
    angle = float(plots.reading.text().split("rotor ")[1].split("°")[0])
    assert angle == pytest.approx(30.0, abs=1.0)
    window.model.send(do.TurnRotor(angle))
    assert f"gap {gap_now_mm(window.model.state):.3f} mm" in plots.reading.text()


# ---------------------------------------------------------------------- adjustment window


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
    paper = QColor(window.theme.paper)
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
    expected = before.max_gap_mm[0] - wear * arm.contact_arm_mm / arm.heel_arm_mm  # model.md §4
    assert now.max_gap_mm[0] == pytest.approx(max(expected, 0.0), abs=1e-9)
    if np.isfinite(now.opens_deg[0]):
        assert now.opens_deg[0] > before.opens_deg[0]
    assert not np.array_equal(plots._image.image, map_before)  # noqa: SLF001
    assert window.panel._values["gap"].text() == f"{now.max_gap_mm[0]:.3f} mm"  # noqa: SLF001
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
    view._picture.build(view.drawing.shapes, view.drawing.origins, window.theme)  # noqa: SLF001
    view._picture.colour(window.theme, view.hand)  # noqa: SLF001
    view._picture.turn(view.now.turns_deg)  # noqa: SLF001
    view.viewport().update()
    assert view.grab().toImage() == followed


def wheel(plots, at: QPointF, notches: int) -> None:
    """Turn the mouse wheel over a place."""
    port = plots.canvas.viewport()
    event = QWheelEvent(
        at, QPointF(port.mapToGlobal(at.toPoint())), QPoint(0, 0), QPoint(0, 120 * notches), Qt.MouseButton.NoButton,
        Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
    )  # fmt: skip
    QApplication.sendEvent(port, event)
    QApplication.processEvents()


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
    for move in timing_stop:  # s₀ = s_top − gap + throw·sin σ, model.md §4
        angle = math.degrees(math.asin(move / screw.throw_mm))
        expected += [a for a in (angle, 180.0 - angle) if low < a < high]
    assert sorted(set(np.round(y, 6))) == pytest.approx(sorted(expected), abs=0.5)


# ---------------------------------------------------------------------- coil, coupling


def test_the_speed_slider_changes_the_energy(open_plots):
    window, plots = open_plots("coil")
    slow, state = plots.summary(), window.model.state
    QTest.keyClick(plots.speed, Qt.Key.Key_PageUp)
    QTest.keyClick(plots.speed, Qt.Key.Key_PageUp)
    assert plots.rpm > 110.0
    assert plots.summary() != slow
    assert f"{plots.rpm:.0f} /min" == plots.speed_label.text()
    assert window.model.state is state, "a question of the plot alone"
    _, energy = plots._energy.getData()  # noqa: SLF001
    assert f"{plots._here.getData()[1][0]:.3g} mJ" in plots.summary()  # noqa: SLF001
    assert energy.max() >= plots._here.getData()[1][0]  # noqa: SLF001


def test_other_teeth_are_only_asked_about(open_plots):
    window, plots = open_plots("coupling")
    state, real = window.model.state, len(plots.table()[0][1])
    plots.teeth["magneto"].setValue(37)
    assert window.model.state is state
    assert len(plots.table()[0][1]) > real
    window.model.send(do.MoveTeeth(1, -1))
    assert plots.teeth["magneto"].value() == 37, "the question stands"
    window.place("nine-radial")
    coupling = window.model.state.engaged.installation.coupling
    assert plots.teeth["magneto"].value() == coupling.magneto_teeth
    assert plots.teeth["drive"].value() == coupling.drive_teeth
    window.plots.choose("lift")
    window.place("seven-radial")
    window.plots.choose("coupling")
    assert plots.teeth["magneto"].value() == window.model.state.engaged.installation.coupling.magneto_teeth


def test_the_square_stands_where_the_magneto_fires(open_plots):
    window, plots = open_plots("coupling")
    panel_before = plots._now.getData()[0][0]  # noqa: SLF001
    window.model.send(do.MoveTeeth(1, -1))
    moved = plots._now.getData()[0][0]  # noqa: SLF001
    engaged = window.model.state.engaged
    teeth = engaged.installation.coupling
    vernier = 360.0 * (1 / teeth.magneto_teeth - 1 / teeth.drive_teeth) / engaged.ratio  # model.md §6
    assert moved - panel_before == pytest.approx(vernier, abs=1e-9)


# ---------------------------------------------------------------------- taking away


@pytest.mark.parametrize("sheet", SHEETS)
def test_every_sheet_is_saved_and_copied(open_plots, sheet, tmp_path):
    window, plots = open_plots(sheet)
    for kind in ("svg", "png", "csv"):
        plots.save_to(tmp_path / f"plot.{kind}")
        assert window.statusBar().currentMessage() == f"Saved plot.{kind}."
    assert sorted(p.name for p in tmp_path.iterdir()) == ["plot.csv", "plot.png", "plot.svg"], "nothing beside them"
    space = "{http://www.w3.org/2000/svg}"
    svg = ElementTree.parse(tmp_path / "plot.svg").getroot()
    assert svg.tag == f"{space}svg"
    words = " ".join("".join(node.itertext()) for node in svg.iter(f"{space}text"))
    assert plots.plots[0].getAxis("bottom").labelText.split()[0] in words
    assert window.model.state.magneto.name in svg.find(f"{space}title").text
    pictures = list(svg.iter(f"{space}image"))
    assert len(pictures) == (1 if sheet == "window" else 0), "curves and signs are lines, not pixels"
    image = QImage(str(tmp_path / "plot.png"))
    assert (image.width(), image.height()) == (2 * plots.canvas.width(), 2 * plots.canvas.height())
    assert len({image.pixel(x, image.height() // 2) for x in range(image.width())}) > 3
    rows = list(csv.reader(io.StringIO((tmp_path / "plot.csv").read_bytes().decode(), newline="")))
    assert len(rows) > 2
    assert len({len(row) for row in rows}) == 1
    assert all(float(value) or True for value in rows[1] if value)
    QGuiApplication.clipboard().clear()
    plots.copy_button.click()
    assert QGuiApplication.clipboard().image().width() == image.width()


def test_taking_a_picture_leaves_the_screen_as_it_is(open_plots, tmp_path):
    _, plots = open_plots("lift")
    before = plots.canvas.grab().toImage()
    plots.copy()
    plots.save_to(tmp_path / "a.svg")
    assert plots.canvas.grab().toImage() == before


@pytest.mark.parametrize("name", ["plots.svg", "plots.png", "plots.csv", "plots.pdf"])
def test_what_cannot_be_saved_is_said_in_one_sentence(open_plots, tmp_path, name):
    window, plots = open_plots("lift")
    place = tmp_path / "nowhere" / name if not name.endswith("pdf") else tmp_path / name
    plots.save_to(place)
    said = window.statusBar().currentMessage()
    assert "lots" in said
    assert "\n" not in said
    assert list(tmp_path.iterdir()) == []


# ---------------------------------------------------------------------- looks


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda t: t.name)
@pytest.mark.parametrize("sheet", SHEETS)
def test_lines_and_words_stand_out_from_the_paper_in_every_theme(open_plots, sheet, theme):
    window, plots = open_plots(sheet)
    window.set_theme(theme)
    QApplication.processEvents()
    shown = plots.canvas.grab().toImage()
    assert shown.pixelColor(2, 2) == QColor(theme.paper)
    for plot in plots.plots:
        for side in ("left", "bottom"):
            assert contrast(plot.getAxis(side).textPen().color(), theme.paper) >= 4.5
        for item in plot.items:
            if isinstance(item, pg.TextItem):
                assert contrast(item.color, theme.paper) >= 4.5
            elif isinstance(item, pg.PlotCurveItem):
                assert contrast(pg.mkPen(item.opts["pen"]).color(), theme.paper) >= 3.0
            elif isinstance(item, pg.InfiniteLine):
                assert contrast(item.pen.color(), theme.paper) >= 3.0
    if sheet == "window":  # words and lines over the map's green, too
        shades = {tuple(int(v) for v in c) for c in plots._image.image.reshape(-1, 3)[::7]}  # noqa: SLF001
        assert len(shades) == 2
        for shade in shades:
            assert contrast(theme.text, QColor(*shade)) >= 4.5
            assert contrast(theme.good, QColor(*shade)) >= 3.0


@pytest.mark.parametrize("sheet", SHEETS)
def test_projector_inches_and_large_type(open_plots, qtbot, sheet):
    window, plots = open_plots(sheet, size=(1920, 1080))
    font = QApplication.font()
    try:
        thin = plots.cursors[0].pen.widthF() if plots.cursors else 1.0
        small = plots.plots[0].getAxis("bottom").height()
        window.project(True)
        window.set_text_size(200)
        window.set_inches(True)
        settle(qtbot)
        if plots.cursors:
            assert plots.cursors[0].pen.widthF() > 1.5 * thin
        assert plots.plots[0].getAxis("bottom").height() > 1.5 * small, "numbers grow with the type"
        titles = [plot.getAxis("left").labelText for plot in plots.plots]
        if sheet == "lift":
            assert titles == ["contact lift [in]", "gap [in]"]
        if sheet == "lobes":
            assert titles[1] == "largest gap [in]"
        lengths = [t for t in titles if "gap" in t or "lift" in t]
        assert all("[mm]" not in t for t in lengths)
        plots.canvas.grab()
        window.project(False)
        window.set_text_size(100)
        window.set_inches(False)
        settle(qtbot)
        assert plots.plots[0].getAxis("bottom").height() <= small + 3
        assert not any("[in]" in plot.getAxis("left").labelText for plot in plots.plots)
    finally:
        QApplication.setFont(font)


def test_inches_are_the_same_lengths(open_plots):
    window, plots = open_plots("lift")
    in_mm = plots._gaps["present"].getData()[1].copy()  # noqa: SLF001
    window.set_inches(True)
    in_inches = plots._gaps["present"].getData()[1]  # noqa: SLF001
    assert in_inches * 25.4 == pytest.approx(in_mm)
    assert " in" in plots.summary()


@pytest.mark.parametrize("size", [(1280, 720), (1920, 1080)])
@pytest.mark.parametrize("name", [n for n in shipped_names("installations") if not n.endswith("right")])
@pytest.mark.parametrize("sheet", SHEETS)
def test_axes_say_what_they_are_and_words_do_not_hide_each_other(open_plots, sheet, name, size):
    window, plots = open_plots(sheet, name, size)
    window.model.send(do.SetBoth(1.0, 2.0))
    plots.canvas.grab()
    for plot in plots.plots:
        words = [i for i in plot.items if isinstance(i, pg.TextItem) and i.isVisible() and i.toPlainText()]
        boxes = [(w.toPlainText(), w.mapRectToScene(w.boundingRect()).adjusted(3, 3, -3, -3)) for w in words]
        for n, (text, box) in enumerate(boxes):
            for other, there in boxes[n + 1 :]:
                assert not box.intersects(there), f"“{text.strip()}” and “{other.strip()}”"
        for side in ("left", "bottom"):
            axis = plot.getAxis(side)
            assert axis.labelText
            label = axis.label.mapRectToScene(axis.label.boundingRect())
            assert plots.canvas.sceneRect().adjusted(-6, -6, 6, 6).contains(label), axis.labelText


# ---------------------------------------------------------------------- what is not there


def test_a_magneto_without_coil_pull_engine_or_heel_arm(open_plots, tmp_path):
    window, _ = open_plots("coil", "traced-six")
    sheets = {name: window.plots.choose(name) for name in SHEETS}
    QApplication.processEvents()
    assert "no coil" in sheets["coil"].summary()
    assert not sheets["coil"].speed.isEnabled()
    assert "no pull" in sheets["pull"].summary()
    assert "No timing" in sheets["coupling"].summary()
    assert not any(spin.isEnabled() for spin in sheets["coupling"].teeth.values())
    assert not sheets["window"].wear.isEnabled()
    assert "no heel arm" in sheets["window"].worn.text()
    for name in ("coil", "pull", "coupling"):
        window.plots.choose(name)
        assert sheets[name].table() == []
        for plot in range(len(sheets[name].plots)):
            assert isinstance(sheets[name].words_at(plot, 0.3, 0.3), str)
        sheets[name].save_to(tmp_path / "never.csv")
        assert "no values" in window.statusBar().currentMessage()


@pytest.mark.parametrize("name", ["seven-radial-left", "nine-radial-left", "four-opposed-left"])
def test_contacts_that_never_open_and_ones_that_never_close(open_plots, name, tmp_path):
    window, plots = open_plots("lift", name)
    window.model.send(do.WearHeel(5.0))
    assert math.isnan(readings(window.model.state).opens_deg[0])
    for sheet in SHEETS:
        shown = window.plots.choose(sheet)
        QApplication.processEvents()
        assert shown.canvas.accessibleDescription()
        assert "nan" not in shown.canvas.accessibleDescription().lower()
        assert "–" not in shown.canvas.accessibleDescription()
        for plot in range(len(shown.plots)):
            x, y = (sum(r) / 2 for r in shown.plots[plot].viewRange())
            assert "nan" not in shown.words_at(plot, x, y).lower()
            click(shown, plot, x, y)
        shown.save_to(tmp_path / f"{sheet}.svg")
    window.model.send(do.WearHeel(0.0))
    magneto = window.model.state.magneto
    screw = magneto.contact_screw
    reach = {"throw_mm": 3.0} if screw.kind == "eccentric" else {"lead_mm": 3.0}
    wide = screw.model_copy(update=reach)
    window.model.send(do.PlaceMagneto(magneto.model_copy(update={"contact_screw": wide})))
    window.model.send(do.TurnScrew(magneto.contact_screw.range_deg[0]))
    for sheet in SHEETS:
        shown = window.plots.choose(sheet)
        QApplication.processEvents()
        assert "nan" not in shown.canvas.accessibleDescription().lower()
    assert plots.summary() == "The contacts never close."


def test_a_pull_of_nothing_is_no_pull(open_plots):
    window, plots = open_plots("pull")
    magneto = window.model.state.magneto
    limp = magneto.detent.model_copy(update={"torque_nm": 0.0})
    window.model.send(do.PlaceMagneto(magneto.model_copy(update={"detent": limp})))
    assert "no pull" in plots.summary()
    assert plots.table() == []


def test_placing_every_magneto_while_every_sheet_is_open(open_plots):
    window, _ = open_plots("lift")
    for name in (*shipped_names("magnetos"), "seven-radial"):
        window.place(name)
        for sheet in SHEETS:
            window.plots.choose(sheet)
            QApplication.processEvents()


# ---------------------------------------------------------------------- for everybody, and at no cost


@pytest.mark.parametrize("sheet", SHEETS)
def test_everything_has_a_name_and_the_picture_is_told(open_plots, sheet):
    _, plots = open_plots(sheet)
    assert plots.canvas.accessibleName() == plots.title
    assert len(plots.canvas.accessibleDescription()) > 20
    for widget in plots.findChildren(QSlider) + plots.findChildren(QSpinBox):
        assert widget.accessibleName()
        assert any(label.buddy() is widget for label in plots.findChildren(QLabel))
    assert all(button.text() and button.toolTip() for button in plots.findChildren(QPushButton))


def test_the_description_follows_the_bench(open_plots):
    window, plots = open_plots("lift")
    window.model.send(do.TurnBackplate(1.0))
    opens = float(readings(window.model.state).opens_deg[0])
    assert f"open at {opens:.2f}°" in plots.canvas.accessibleDescription()


def test_sheets_that_are_not_seen_do_no_work(open_plots, monkeypatch):
    window, _ = open_plots("lift")
    sheets = {name: window.plots.choose(name) for name in SHEETS}
    window.plots.choose("lift")
    QApplication.processEvents()
    calls: list[str] = []
    for name, sheet in sheets.items():
        monkeypatch.setattr(sheet, "refresh", lambda *_, name=name: calls.append(name))
    window.model.send(do.TurnRotor(40.0))
    window.model.send(do.TurnBackplate(1.0))
    assert calls == ["lift", "lift"]
    calls.clear()
    window.show_plots(False)
    window.model.send(do.TurnBackplate(2.0))
    assert calls == []
    window.show_plots(True)
    QApplication.processEvents()
    assert calls == ["lift"], "what was missed is caught up with once"
    calls.clear()
    window.plots.choose("pull")
    QApplication.processEvents()
    assert calls == ["pull"]


def test_before_is_of_the_same_magneto(open_plots):
    window, plots = open_plots("lift")
    assert plots.before() is None
    window.model.send(do.TurnBackplate(1.0))
    assert plots.before().backplate_deg == 0.0
    assert [name for name, _ in plots.table()][-1] == "gap before [mm]"
    window.place("four-opposed")
    assert plots.before() is None


def test_windows_with_plots_do_not_pile_up(qtbot):
    """Opened and closed, a window leaves none of its plots behind: neither whole ones nor one half built."""
    gone = []
    for front in ("coupling", "pull", "window"):
        window = MainWindow(BenchModel(new_bench(find_installation("seven-radial-left"))), THEMES["light"])
        window.furnish()
        window.plots.wait()
        window.show()
        window.show_plots(True)  # begins to build the first sheet
        gone.append(weakref.ref(window.plots.choose(front)))
        gone += [weakref.ref(sheet) for sheet in window.plots.findChildren(PlotSheet)]
        assert len(gone) == 3, "one of them begun and left"
        for _ in range(10):  # what Qt still owes a call keeps what it would call
            settle(qtbot)
        window.close()
        window.deleteLater()
        del window
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        QApplication.processEvents()
        gc.collect()
        assert [ref for ref in gone if ref() is not None] == []
        gone.clear()


def test_words_under_the_pointer_do_not_widen_the_window(open_plots):
    window, sheet = open_plots("window")
    before, canvas = sheet.minimumSizeHint(), sheet.canvas.size()
    sheet.reading.setText("opens-late-" * 40 + " and more words" * 20)
    QApplication.processEvents()
    assert sheet.minimumSizeHint() == before
    assert sheet.canvas.size() == canvas
    assert window.width() == 1280


def test_a_sheet_that_is_resized_half_built_waits(open_window, qtbot):
    window = open_window("seven-radial-left")
    window.show_plots(True)
    sheet = window.plots._begin("coil")  # noqa: SLF001
    QApplication.sendEvent(sheet, QResizeEvent(QSize(300, 200), QSize(100, 100)))
    qtbot.wait(20)  # the resizing has had its turn, and found nothing to fit
    assert window.plots.choose("coil").table()
