"""Under the hand: snapping, locks, the magnet's pull, undo, zoom, mirror, runs; and what is saved of it."""

from __future__ import annotations

import math

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QColor, QImage, QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QMessageBox, QPushButton, QWidget

from magview.bench.actions import HoldRotor, LetGo, TightenLock, TurnBackplate, TurnRotor, TurnScrew
from magview.bench.autosave import Autosave
from magview.bench.breaker_end import pose
from magview.bench.events import KINDS, nearest_event, next_event
from magview.bench.state import readings
from magview.ui.export import scale_bar
from magview.ui.theme import THEMES


def at(view, radius: float, bearing: float) -> QPointF:
    b = math.radians(bearing)
    return view.pixel(radius * math.sin(b), radius * math.cos(b))


def send_mouse(view, kind: QEvent.Type, where: QPointF, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    """A mouse event with the position not rounded to whole pixels, as a real pointer's on a fine screen."""
    moving = kind == QEvent.Type.MouseMove
    button = Qt.MouseButton.NoButton if moving else Qt.MouseButton.LeftButton
    held = Qt.MouseButton.NoButton if kind == QEvent.Type.MouseButtonRelease else Qt.MouseButton.LeftButton
    port = view.viewport()
    event = QMouseEvent(kind, where, QPointF(port.mapToGlobal(where.toPoint())), button, held, modifiers)
    QApplication.sendEvent(port, event)


def drag_rotor(view, start: float, end: float, modifiers=Qt.KeyboardModifier.NoModifier, release=True) -> None:
    radius = view.drawing.extent_mm / 1.56 * 1.1
    send_mouse(view, QEvent.Type.MouseButtonPress, at(view, radius, start), modifiers)
    for i in range(1, 11):
        send_mouse(view, QEvent.Type.MouseMove, at(view, radius, start + (end - start) * i / 10), modifiers)
    if release:
        send_mouse(view, QEvent.Type.MouseButtonRelease, at(view, radius, end), modifiers)


def test_a_dragged_rotor_catches_at_the_e_gap_and_alt_lets_it_pass(open_window):
    window = open_window("seven-radial")
    view, model = window.breaker, window.model
    model.send(TurnRotor(0.0))
    drag_rotor(view, 0.0, 10.6)  # clockwise, with this one's rotation
    assert model.state.rotor_deg == 11.0
    model.send(TurnRotor(0.0))
    drag_rotor(view, 0.0, 10.6, Qt.KeyboardModifier.AltModifier)
    assert model.state.rotor_deg == pytest.approx(10.6, abs=0.01)
    view.snaps = False
    model.send(TurnRotor(0.0))
    drag_rotor(view, 0.0, 10.6)
    assert model.state.rotor_deg == pytest.approx(10.6, abs=0.01)


def test_the_drag_point_stays_under_the_pointer(open_window):
    window = open_window("seven-radial")
    view = window.breaker
    view.snaps = False
    radius = view.drawing.extent_mm / 1.56 * 1.1
    drag_rotor(view, 15.0, 77.0, release=False)
    scene = view.scene_of_parts
    held = view.viewportTransform().map(scene.to_scene("rotor", (0.0, radius)))
    # The rotor's mark stood at 11° when it was gripped at 15°: it must still be 4° behind the pointer.
    expected = at(view, radius, 73.0)
    assert math.hypot(held.x() - expected.x(), held.y() - expected.y()) < 0.5
    send_mouse(view, QEvent.Type.MouseButtonRelease, expected)


def test_seen_from_the_other_end_the_drag_still_follows_the_pointer(open_window):
    window = open_window("seven-radial")
    window.breaker.set_mirrored(True)
    before = window.model.state.rotor_deg
    assert "turns anticlockwise" in window.breaker._head()  # noqa: SLF001
    drag_rotor(window.breaker, 10.0, 40.0)
    assert window.model.state.rotor_deg - before == pytest.approx(30.0, abs=0.9)
    # In the mirrored picture the drag went anticlockwise: to the left of the top.
    assert at(window.breaker, 30.0, 40.0).x() < at(window.breaker, 30.0, 10.0).x()


def test_a_tight_lock_screw_is_explained_and_nothing_moves(open_window):
    window = open_window("seven-radial")
    window.model.send(TightenLock(True))
    before = window.model.state.screw_deg
    assert before == -3.0
    window.panel.screw.setValue(12.0)
    assert window.model.state.screw_deg == before
    assert "lock screw is tight: slacken it" in window.statusBar().currentMessage()
    assert window.panel.screw.text() == "-3.00°"
    QTest.mouseClick(window.panel.lock, Qt.MouseButton.LeftButton, pos=QPoint(8, window.panel.lock.height() // 2))
    assert not window.model.state.lock_tight


def test_let_go_it_swings_to_neutral_and_a_hand_stops_it(open_window):
    window = open_window("seven-radial")
    model = window.model
    model.send(LetGo())
    angles = []
    for _ in range(12):
        model.tick(0.016)
        angles.append(model.state.rotor_deg)
    assert min(angles) < -2.0, "it must swing through"
    model.send(HoldRotor())
    caught = model.state.rotor_deg
    model.tick(0.016)
    assert model.state.rotor_deg == caught
    assert window.undo_action.text() == "&Undo: Hold the rotor"


def test_while_it_is_dragged_the_magnet_waits(open_window):
    window = open_window("seven-radial")
    window.model.send(LetGo())
    drag_rotor(window.breaker, 11.0, 30.0, release=False)
    held = window.model.state.rotor_deg
    window.model.tick(0.05)
    assert window.model.state.rotor_deg == held
    send_mouse(window.breaker, QEvent.Type.MouseButtonRelease, at(window.breaker, 40.0, 30.0))
    window.model.tick(0.05)
    assert window.model.state.rotor_deg != held
    window.model.send(HoldRotor())


def test_reduced_motion_shows_the_end_at_once(open_window):
    window = open_window("seven-radial")
    window.model.reduced_motion = True
    window.model.send(LetGo())
    assert window.model.state.rotor_deg == 0.0
    window.model.send(TurnRotor(20.0))
    window.model.run(20.0, "E-gap")
    assert window.model.state.rotor_deg == pytest.approx(101.0)
    assert not window.model.running
    window.model.send(HoldRotor())


@pytest.mark.parametrize("kind", KINDS)
@pytest.mark.parametrize("speed", [37.0, -37.0])
def test_a_run_stops_exactly_at_what_it_runs_to(open_window, kind, speed):
    window = open_window("seven-radial")
    model = window.model
    model.send(TurnRotor(3.0))
    goal = next_event(model.state, kind, forward=speed > 0)
    ended: list[str] = []
    model.ran.connect(ended.append)
    model.run(speed, kind)
    for _ in range(2000):
        if not model.running:
            break
        model.tick(0.016)
    assert ended == [kind]
    assert model.state.rotor_deg == pytest.approx(goal, abs=1e-9)
    assert (goal > 3.0) == (speed > 0)
    # Again, it goes on to the next one.
    model.run(speed, kind)
    while model.running:
        model.tick(0.016)
    assert abs(model.state.rotor_deg - goal) > 1.0
    model.undo()
    assert model.state.rotor_deg == pytest.approx(goal), "a run is one step of the history"


def test_events_are_where_the_readings_say():
    from magview.bench.actions import new_bench
    from magview.spec.library import find_magneto

    state = new_bench(find_magneto("nine-radial"))
    opens = readings(state).opens_deg
    assert next_event(state, "contacts just open") == pytest.approx(opens[1])
    assert next_event(state, "contacts just open", forward=False) == pytest.approx(opens[8] - 810.0)
    assert nearest_event(state, 8.3, 0.5) == (pytest.approx(8.0), "contacts just open")
    assert nearest_event(state, 20.0, 0.5) is None


def test_double_click_puts_a_part_back(open_window):
    window = open_window("seven-radial")
    view = window.breaker
    window.model.send(TurnBackplate(4.0))
    window.model.send(TurnScrew(20.0))
    window.model.send(TurnRotor(50.0))
    screw = view.viewportTransform().map(view.scene_of_parts.to_scene("screw", view.drawing.origins["screw"]))
    for where in (screw, at(view, 20.0, 140.0), at(view, view.drawing.extent_mm / 1.56 * 1.1, 45.0)):
        QTest.mouseDClick(view.viewport(), Qt.MouseButton.LeftButton, pos=where.toPoint())
    state = window.model.state
    assert (state.screw_deg, state.backplate_deg, state.rotor_deg) == (0.0, 0.0, 11.0)


def test_undo_and_redo_by_key_name_the_step(open_window):
    window = open_window("seven-radial")
    window.model.send(TurnBackplate(1.5))
    assert window.undo_action.text() == "&Undo: Turn the backplate 1.50° with rotation"
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.model.state.backplate_deg == 0.0
    assert not window.undo_action.isEnabled()
    assert window.redo_action.text() == "&Redo: Turn the backplate 1.50° with rotation"
    window.redo_action.trigger()
    assert window.model.state.backplate_deg == 1.5


def test_zoom_keeps_the_point_under_the_pointer_and_whole_comes_back(open_window):
    window = open_window("seven-radial")
    view = window.breaker
    where = QPointF(200.0, 180.0)
    inverse, _ = view.viewportTransform().inverted()
    before, scale = inverse.map(where), view.transform().m22()
    view.zoom_by(6.0, where)
    inverse, _ = view.viewportTransform().inverted()
    after = inverse.map(where)
    assert math.hypot(after.x() - before.x(), after.y() - before.y()) < 0.3
    assert view.transform().m22() == pytest.approx(6 * scale)
    QTest.keyClick(window, Qt.Key.Key_0, Qt.KeyboardModifier.ControlModifier)
    assert view.transform().m22() == pytest.approx(scale)
    QTest.wheelEvent(
        window.windowHandle(), QPointF(view.mapTo(window, QPoint(200, 180))), QPoint(0, 120),
        QPoint(), Qt.KeyboardModifier.ControlModifier,
    )  # fmt: skip
    assert view.zoom == pytest.approx(1.25)


def test_following_the_contacts_keeps_them_in_the_middle(open_window):
    window = open_window("seven-radial")
    view = window.breaker
    view.follows_contacts = True
    view.zoom_by(8.0)
    window.model.send(TurnBackplate(5.0))
    contact = view.viewportTransform().map(view.scene_of_parts.to_scene("stop", view.drawing.contact))
    middle = view.viewport().rect().center()
    assert math.hypot(contact.x() - middle.x(), contact.y() - middle.y()) < 3.0


def test_the_exaggerated_gap_is_five_times_the_true_one_and_says_so(open_window):
    window = open_window("seven-radial")
    window.model.send(TurnRotor(30.0))
    next(a for a in window.findChildren(type(window.undo_action)) if "5×" in a.text()).trigger()
    fixed, moving = window.contact.faces()
    drawn = math.hypot(fixed.x() - moving.x(), fixed.y() - moving.y()) / window.contact.pixels_per_mm()
    assert drawn == pytest.approx(5 * pose(window.model.state).gap_mm, rel=1e-3)
    assert "gap drawn 5×" in window.breaker._head()  # noqa: SLF001
    height = window.contact.viewport().height()
    assert 0 < moving.y() < height
    assert 0 < fixed.y() < height


# ---------------------------------------------------------------------- saved pictures, kept bench


@pytest.mark.parametrize("kind", ["svg", "pdf", "png"])
@pytest.mark.parametrize("which", ["breaker", "drive", "crank"])
def test_a_picture_is_saved_with_caption_and_scale(open_window, tmp_path, kind, which):
    window = open_window("seven-radial-left")
    path = tmp_path / f"picture.{kind}"
    window.export(getattr(window, which), path)
    data = path.read_bytes()
    if kind == "svg":
        text = data.decode()
        assert "Seven-cylinder practice magneto" in text
        assert " mm</text>" in text
        assert "font-family" in text
    elif kind == "pdf":
        assert data.startswith(b"%PDF")
        assert b"/FontFile" in data, "the fonts must be in the file"
    else:
        image = QImage(str(path))
        assert image.width() == 3 * getattr(window, which).viewport().width()
        colours = {
            image.pixelColor(x, y).name() for x in range(0, image.width(), 37) for y in range(0, image.height(), 41)
        }
        assert len(colours) > 4
    assert [p.name for p in tmp_path.iterdir()] == [path.name]


def test_a_picture_that_cannot_be_saved_is_refused_in_one_sentence(open_window, tmp_path):
    window = open_window("seven-radial-left")
    for path in (tmp_path / "no" / "such.svg", tmp_path / "picture.bmp"):
        window.export(window.breaker, path)
        box = window.findChildren(QMessageBox)[-1]
        assert path.name in box.text()
        assert "\n" not in box.text()
        box.close()


def test_the_scale_bar_is_a_round_length_that_fits():
    for scale in (0.3, 3.9, 77.0, 1234.0):
        length, pixels = scale_bar(scale, 150.0)
        assert pixels == pytest.approx(length * scale)
        assert 150 / 2.6 < pixels <= 150.0
        assert f"{length:g}"[0] in "125" or f"{length:g}".lstrip("0.")[0] in "125"


def test_the_bench_is_kept_and_forgotten_at_an_orderly_end(open_window, tmp_path, qtbot):
    from magview.bench.actions import new_bench
    from magview.spec.library import find_magneto
    from magview.ui.model import BenchModel
    from magview.ui.theme import LIGHT
    from magview.ui.window import MainWindow

    window = MainWindow(BenchModel(new_bench(find_magneto("four-opposed"))), LIGHT, Autosave(tmp_path))
    qtbot.addWidget(window)
    window.show()
    window.model.send(TurnBackplate(2.0))
    qtbot.waitUntil(lambda: bool(list(tmp_path.iterdir())), timeout=4000)
    window.close()
    assert not list(tmp_path.iterdir())


# ---------------------------------------------------------------------- to be read by everybody


def luminance(colour: QColor) -> float:
    """Relative luminance, WCAG 2.2."""

    def linear(c: float) -> float:
        return c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4

    return 0.2126 * linear(colour.redF()) + 0.7152 * linear(colour.greenF()) + 0.0722 * linear(colour.blueF())


def contrast(a: str | QColor, b: str | QColor) -> float:
    """Contrast ratio, WCAG 2.2."""
    bright, dark = sorted((luminance(QColor(a)), luminance(QColor(b))), reverse=True)
    return (bright + 0.05) / (dark + 0.05)


def test_the_contrast_formula():
    assert contrast("#ffffff", "#000000") == pytest.approx(21.0)
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)  # the well-known near miss


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda t: t.name)
def test_words_and_lines_have_the_contrast_that_wcag_2_2_aa_asks_for(theme):
    grounds = (theme.window, theme.base, theme.paper)
    for ground in grounds:
        for words in (theme.text, theme.faint, theme.good, theme.bad, theme.hand):
            assert contrast(words, ground) >= 4.5, f"{words} on {ground}"
    assert contrast(theme.text, theme.button) >= 4.5
    assert contrast(theme.highlight_text, theme.highlight) >= 4.5
    strokes = ("index", "spring", "mark", "scale", "straightedge", "paint")
    for name in theme.materials:
        fill, line = theme.material(name)
        if name in strokes:
            assert contrast(line, theme.paper) >= 3.0, name
        elif name not in ("slot", "pointer"):  # of one colour all over, on parts lighter or darker than they are
            assert contrast(line, fill) >= 3.0, name
    for ground in ("plate", "housing", "north", "south", "disc", "drive-flange", "magneto-flange", "screw"):
        ink = "slot" if ground == "screw" else "paint" if "flange" in ground or ground == "disc" else "mark"
        assert contrast(theme.material(ink)[1], theme.material(ground)[0]) >= 3.0, f"{ink} on {ground}"
    for letter in ("north", "south", "drive-flange", "disc", "magneto-flange"):
        assert contrast(theme.text, theme.material(letter)[0]) >= 4.5, f"numbers on {letter}"


@pytest.mark.parametrize("tab", [0, 1, 2])
@pytest.mark.parametrize("name", ["seven-radial-left", "nine-radial-left"])
def test_at_200_percent_type_nothing_is_cut_off(open_window, qtbot, name, tab):
    window = open_window(name, (1920, 1080))
    before = QApplication.font()
    try:
        window.text_actions.actions()[-1].trigger()
        window.tabs.setCurrentIndex(tab)
        qtbot.waitUntil(lambda: window.panel.rotor.font().pointSizeF() == pytest.approx(2 * before.pointSizeF()))

        def cut() -> list[str]:
            return [
                w.text()
                for w in window.tabs.currentWidget().findChildren(QWidget)
                if isinstance(w, QLabel | QPushButton)
                and w.isVisible()
                and (w.width() < w.minimumSizeHint().width() or w.height() < w.minimumSizeHint().height())
            ]

        qtbot.waitUntil(lambda: not cut())  # the layout settles over a few events
        assert window.width() <= 1921
    finally:
        QApplication.setFont(before)


def test_projector_mode_gives_the_pictures_the_room_and_comes_back(open_window):
    window = open_window("seven-radial-left")
    before = QApplication.font()
    try:
        width = window.breaker.width()
        QTest.keyClick(window, Qt.Key.Key_F11)
        QApplication.processEvents()
        assert not window.tabs.isVisible()
        assert window.breaker.width() > 1.3 * width
        assert window.breaker.font().pointSizeF() > 1.5 * before.pointSizeF()
        QTest.keyClick(window, Qt.Key.Key_F11)
        QApplication.processEvents()
        assert window.tabs.isVisible()
        assert window.breaker.font().pointSizeF() == pytest.approx(before.pointSizeF())
    finally:
        QApplication.setFont(before)


def test_the_switch_lead_in_the_hand(open_window):
    window = open_window("seven-radial-left")
    window.tabs.setCurrentIndex(2)
    lead = window.lead
    assert "Grounded by the switch" in lead.says.text()
    for check in (lead.broken,):
        QTest.mouseClick(check, Qt.MouseButton.LeftButton, pos=QPoint(8, check.height() // 2))
    assert "DANGER: live with the switch off" in lead.says.text()
    assert lead.diagram.accessibleDescription().startswith("DANGER")
    QTest.mouseClick(lead.plug, Qt.MouseButton.LeftButton, pos=QPoint(8, lead.plug.height() // 2))
    assert "spring tab" in lead.says.text()
    QTest.mouseClick(lead.tab, Qt.MouseButton.LeftButton, pos=QPoint(8, lead.tab.height() // 2))
    assert "the plug is out and its tab" in lead.says.text()
    QTest.mouseClick(lead.short, Qt.MouseButton.LeftButton, pos=QPoint(8, lead.short.height() // 2))
    assert "Grounded by a short" in lead.says.text()
