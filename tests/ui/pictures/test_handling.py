"""Under the hand: snapping, locks, the magnet's pull, undo, zoom, mirror, runs; and what is saved of it."""

from __future__ import annotations

import math
from itertools import product

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, QRect, QSize, Qt
from PySide6.QtGui import QImage, QMouseEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QCheckBox, QMessageBox

from magview.bench.actions import (
    HoldRotor,
    LetGo,
    PlaceInstallation,
    TightenClamps,
    TightenLock,
    TurnBackplate,
    TurnCrank,
    TurnRotor,
    TurnScrew,
)
from magview.bench.autosave import Autosave
from magview.bench.events import KINDS, nearest_event, next_event
from magview.bench.state import readings
from magview.drawing.breaker_end import pose
from magview.spec.library import find_installation
from magview.ui.kit.panes import first_size
from magview.ui.pictures.export import scale_bar
from tests.counts import sampled
from tests.hands import drag_rotor, on_picture, send_mouse
from tests.magnetos import on_the_published_coupling
from tests.windows import workbench


def in_corners(view) -> list[str]:
    """The words in the corners of a breaker end, in all their wordings."""
    return [text for corner in view.picture.corners for line in corner.lines for text in line.wordings]


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
    radius = view.drawing.rim_mm * 1.065
    drag_rotor(view, 15.0, 77.0, release=False)
    scene = view.scene_of_parts
    held = view.viewportTransform().map(scene.to_scene("rotor", (0.0, radius)))
    # The rotor's mark stood at 11° when it was gripped at 15°: it must still be 4° behind the pointer.
    expected = on_picture(view, radius, 73.0)
    assert math.hypot(held.x() - expected.x(), held.y() - expected.y()) < 0.5
    send_mouse(view, QEvent.Type.MouseButtonRelease, expected)


def test_seen_from_the_other_end_the_drag_still_follows_the_pointer(open_window):
    window = open_window("seven-radial")
    window.breaker.set_mirrored(True)
    before = window.model.state.rotor_deg
    assert "turns anticlockwise" in in_corners(window.breaker)
    drag_rotor(window.breaker, 10.0, 40.0)
    assert window.model.state.rotor_deg - before == pytest.approx(30.0, abs=0.9)
    # In the mirrored picture the drag went anticlockwise: to the left of the top.
    assert on_picture(window.breaker, 30.0, 40.0).x() < on_picture(window.breaker, 30.0, 10.0).x()


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


def test_the_show_needs_only_the_screw_that_has_to_turn(open_window):
    from magview.bench.actions import TightenClamps

    window = open_window("seven-radial")
    window.model.reduced_motion = True
    window.model.send(TurnScrew(9.0))
    window.model.send(TightenClamps(True))
    QTest.mouseClick(window.panel.do_it, Qt.MouseButton.LeftButton)
    assert window.model.state.lock_tight and window.model.state.screw_deg == pytest.approx(0.0, abs=1e-9)
    window.model.send(TightenLock(False))
    window.model.send(TurnScrew(9.0))
    window.model.send(TightenLock(True))
    assert window.panel.advice.text().startswith("Slacken the lock screw.")


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
    window.menus.name_steps()
    assert window.menus.undo_action.text() == "&Undo: Hold the rotor"


def test_the_menu_loads_the_drive_train_of_a_magneto_on_its_engine(open_window):
    window, item = open_window("seven-radial"), find_installation("seven-radial-left")
    assert not window.menus.load_action.isEnabled(), "off the engine there is none"
    window.model.send(PlaceInstallation(item.model_copy(update={"drive_play_deg": 2.0})))
    for to in (-20.0, -30.0):
        window.model.send(TurnCrank(to))
    play = 2.0 * 7 / 8 + item.magneto.condition.coupling_backlash_deg
    assert window.model.state.engaged.play.deg == pytest.approx(play)
    window.tabs.setCurrentIndex(1)
    QApplication.processEvents()
    assert f"play of {play:.2f}°" in window.crank.shown_foot()
    window.menus.load_action.trigger()
    assert window.model.state.engaged.play.deg == 0.0
    window.menus.name_steps()
    assert window.menus.undo_action.text() == "&Undo: Load the drive train against rotation"


def test_while_it_is_dragged_the_magnet_waits(open_window):
    window = open_window("seven-radial")
    window.model.send(LetGo())
    drag_rotor(window.breaker, 11.0, 30.0, release=False)
    held = window.model.state.rotor_deg
    window.model.tick(0.05)
    assert window.model.state.rotor_deg == held
    send_mouse(window.breaker, QEvent.Type.MouseButtonRelease, on_picture(window.breaker, 40.0, 30.0))
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


@pytest.mark.parametrize(("kind", "speed"), sampled(product(KINDS, (37.0, -37.0)), 3))
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
    from magview.bench.placing import new_bench
    from magview.spec.library import find_magneto

    state = new_bench(find_magneto("nine-radial"))
    opens = readings(state).opens_deg
    assert next_event(state, "contacts just open") == pytest.approx(opens[1])
    assert next_event(state, "contacts just open", forward=False) == pytest.approx(opens[8] - 810.0)
    assert nearest_event(state, 8.3, 0.5) == (pytest.approx(8.0), "contacts just open")
    assert nearest_event(state, 20.0, 0.5) is None


def test_home_puts_the_part_in_hand_back(open_window):
    """By a key, because a double click fills the window with the picture."""
    window = open_window("seven-radial")
    view = window.breaker
    window.model.send(TurnBackplate(4.0))
    window.model.send(TurnScrew(20.0))
    window.model.send(TurnRotor(50.0))
    for hand in (Qt.Key.Key_3, Qt.Key.Key_2, Qt.Key.Key_1):
        QTest.keyClick(view, hand)
        QTest.keyClick(view, Qt.Key.Key_Home)
    state = window.model.state
    assert (state.screw_deg, state.backplate_deg, state.rotor_deg) == (0.0, 0.0, 11.0)


def test_undo_and_redo_by_key_name_the_step(open_window):
    window = open_window("seven-radial")
    window.model.send(TurnBackplate(1.5))
    window.menus.name_steps()
    assert window.menus.undo_action.text() == "&Undo: Turn the backplate 1.50° with rotation"
    QTest.keyClick(window, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert window.model.state.backplate_deg == 0.0
    assert not window.menus.undo_action.isEnabled()
    window.menus.name_steps()
    assert window.menus.redo_action.text() == "&Redo: Turn the backplate 1.50° with rotation"
    window.menus.redo_action.trigger()
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
    next(a for a in window.findChildren(type(window.menus.undo_action)) if "5×" in a.text()).trigger()
    groups = [window.breaker.picture.group(name) for name in ("stop", "arm")]
    fixed, moving = (g.put(next(p for p in g.pieces if p.part == "contacts").outlines[0]) for g in groups)
    drawn = math.dist(fixed[2:].mean(axis=0), moving[:2].mean(axis=0))
    assert drawn == pytest.approx(5 * pose(window.model.state).gap_mm, rel=1e-3)
    assert "gap drawn 5×" in in_corners(window.breaker)


def test_the_lens_is_held_by_a_key_and_makes_hands_ten_times_finer(open_window):
    window = open_window("seven-radial")
    view, model = window.breaker, window.model
    view.snaps = False
    view.setFocus()
    plain = view.grab().toImage()
    QTest.keyPress(view, Qt.Key.Key_L)
    view.hold_lens(on_picture(view, 25.0, 140.0))
    assert view.grab().toImage() != plain
    before = model.state.rotor_deg
    drag_rotor(view, 15.0, 35.0)
    assert model.state.rotor_deg - before == pytest.approx(2.0, abs=0.01)
    QTest.keyRelease(view, Qt.Key.Key_L)
    before = model.state.rotor_deg
    drag_rotor(view, 15.0, 35.0)
    assert model.state.rotor_deg - before == pytest.approx(20.0, abs=0.01)


def test_the_wheel_tries_feeler_blades_until_one_goes(open_window):
    window = open_window("seven-radial")
    window.model.send(TurnRotor(28.0))
    view, gap = window.contact, pose(window.model.state).gap_mm
    tried = []
    for _ in range(12):
        QTest.wheelEvent(window.windowHandle(), QPointF(view.mapTo(window, QPoint(60, 60))), QPoint(0, -120))
        (word,) = (w for w in view.picture.words if w.role == "planned")
        tried.append((view.blade_mm, word.text))
    assert [blade for blade, _ in tried] == pytest.approx([0.36 - 0.01 * n for n in range(1, 13)])
    assert all(text.endswith("goes") == (blade <= gap) for blade, text in tried)
    assert {text.split()[-1] for _, text in tried} == {"goes", "stops"}


def test_what_the_pointer_is_over_is_lit_up_and_named(open_window):
    window = open_window("seven-radial")
    view = window.breaker
    screw = QPointF(view.mapFromScene(view.scene_of_parts.to_scene(*view.drawing.anchors["lock screw"])))
    none = Qt.MouseButton.NoButton
    move = QMouseEvent(QEvent.Type.MouseMove, screw, screw, none, none, Qt.KeyboardModifier.NoModifier)
    QApplication.sendEvent(view.viewport(), move)
    assert view.picture.lit == "lock screw"
    view.leaveEvent(QEvent(QEvent.Type.Leave))
    assert view.picture.lit == ""


# ---------------------------------------------------------------------- saved pictures, kept bench


@pytest.mark.parametrize(("kind", "which"), sampled(product(["svg", "pdf", "png"], ["breaker", "drive", "crank"]), 4))
def test_a_picture_is_saved_with_caption_and_scale(open_window, tmp_path, kind, which):
    window = open_window(on_the_published_coupling())
    path = tmp_path / f"picture.{kind}"
    window.export(getattr(window, which), path)
    data = path.read_bytes()
    if kind == "svg":
        text = data.decode()
        assert "Seven-cylinder practice magneto" in text
        # The coupling is a diagram: teeth and angles are true, lengths are not.
        assert (" mm</text>" in text) == (which != "drive")
        assert "font-family" in text
        assert "manual" in text.replace("\n", " "), "the whole caption must be there"
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
    window = open_window(on_the_published_coupling())
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
    from magview.bench.placing import new_bench
    from magview.spec.library import find_magneto
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.kit.look import Look
    from magview.ui.kit.theme import LIGHT

    window = workbench()(BenchModel(new_bench(find_magneto("four-opposed"))), Look(LIGHT), Autosave(tmp_path))
    qtbot.addWidget(window)
    window.show()
    window.model.send(TurnBackplate(2.0))
    qtbot.waitUntil(lambda: bool(list(tmp_path.iterdir())), timeout=4000)
    window.close()
    assert not list(tmp_path.iterdir())


# ---------------------------------------------------------------------- hand, run and typing do not fight


def test_a_hand_on_the_rotor_ends_a_run(open_window):
    window = open_window(on_the_published_coupling())
    window.model.run(20.0, None)
    window.model.tick(0.016)
    window.panel.setting.to_e_gap.click()
    assert not window.model.running
    assert window.model.state.rotor_deg == 11.0
    window.model.run(20.0, None)
    window.place("four-opposed")
    assert not window.model.running


def test_a_run_to_what_never_comes_is_refused_in_words(open_window):
    window = open_window(on_the_published_coupling())
    window.model.send(TurnScrew(60.0))  # past the gap: the contacts never open
    window.model.run(20.0, "contacts just open")
    assert not window.model.running
    assert "no “contacts just open” to run to" in window.statusBar().currentMessage()


def test_what_is_being_typed_survives_a_run(open_window):
    window = open_window(on_the_published_coupling())
    plate = window.panel.plate
    window.model.run(20.0, None)
    plate.setFocus()
    plate.selectAll()
    QTest.keyClicks(plate.lineEdit(), "1.2")
    window.model.tick(0.016)
    QTest.keyClicks(plate.lineEdit(), "5")
    QTest.keyClick(plate.lineEdit(), Qt.Key.Key_Return)
    window.model.stop()
    assert window.model.state.backplate_deg == 1.25


def test_enter_on_an_untouched_box_keeps_the_exact_value(open_window):
    window = open_window(on_the_published_coupling())
    window.model.send(TurnBackplate(1.23456))
    window.panel.plate.setFocus()
    QTest.keyClick(window.panel.plate.lineEdit(), Qt.Key.Key_Return)
    assert window.model.state.backplate_deg == 1.23456


def test_the_crank_box_goes_on_from_where_the_crank_is(open_window):
    from magview.bench.actions import TurnCrank
    from magview.bench.state import crank_deg

    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    window.model.send(TurnCrank(710.0))
    assert window.timing.crank.crank.text() == "10.00° before TDC"
    window.timing.crank.crank.stepUp()
    assert crank_deg(window.model.state) == pytest.approx(711.0)


def test_to_firing_approaches_with_rotation(open_window):
    from magview.bench.actions import TurnCrank
    from magview.bench.state import crank_deg

    window = open_window(on_the_published_coupling())  # 0.4° of play at the coupling
    window.tabs.setCurrentIndex(1)
    window.model.send(TurnCrank(0.0))
    window.timing.crank._to_firing()  # noqa: SLF001
    state = window.model.state
    assert state.engaged.play_deg == 0.0
    assert crank_deg(state) == pytest.approx(-25.0)
    assert state.rotor_deg == pytest.approx(11.0), "the contacts must just open there"


def test_a_magnet_without_pull_leaves_the_rotor_and_the_clock_alone(open_window):
    from magview.bench.actions import PlaceMagneto, SettleRotor

    window = open_window("seven-radial")
    magneto = window.model.state.magneto
    weak = magneto.model_copy(update={"detent": magneto.detent.model_copy(update={"torque_nm": 0.0})})
    window.model.send(PlaceMagneto(weak))
    window.model.send(LetGo())
    window.model.tick(0.016)
    window.model.send(SettleRotor())
    assert window.model.state.rotor_deg == 11.0


def test_a_refusal_stands_beside_the_control_too(open_window):
    """Below it or above it and not over it, within the panel, until something is done."""
    window = open_window("seven-radial")
    panel, model = window.panel, window.model
    model.send(TightenClamps(True))
    model.send(TightenLock(True))
    model.send(TurnRotor(20.0))
    callout = panel.callout
    assert not callout.isVisible()
    for control, words in ((panel.plate, "clamp screws are tight"), (panel.screw, "lock screw is tight")):
        control.setFocus()
        control.stepUp()
        assert callout.isVisible()
        assert words in callout.text()
        assert words in window.statusBar().currentMessage()
        box = QRect(control.mapTo(panel, QPoint()), control.size())
        assert panel.rect().contains(callout.geometry())
        assert not callout.geometry().intersects(box)
        assert callout.geometry().intersects(box.adjusted(0, -6, 0, 6)), "they all but touch"
        model.send(TurnRotor(model.state.rotor_deg + 1.0))
        assert not callout.isVisible(), "the next thing that is done takes it away"
    model.send(TurnScrew(3.0))
    assert not callout.isVisible(), "what no control asked for is told in the status bar alone"


def test_what_is_tight_is_called_by_its_name(open_window):
    panel = open_window("seven-radial").panel
    assert (panel.clamps.text(), panel.lock.text()) == ("clamp screws", "lock screw")
    said = [box.text() for box in panel.findChildren(QCheckBox) if box.isVisible()]
    assert len(said) == len(set(said)), "no two boxes say the same"


@pytest.mark.parametrize("aside", [-8.0, 0.0, 8.0])
def test_dragging_at_a_clamp_screws_head_turns_the_plate(open_window, aside):
    window = open_window("seven-radial", (1600, 900))
    view, model = window.breaker, window.model
    group, point = view.drawing.anchors["clamp screw"]
    start = view.viewportTransform().map(view.scene_of_parts.to_scene(group, point)) + QPointF(0.0, aside)
    middle = view.pixel(0.0, 0.0)
    arm = start - middle
    send_mouse(view, QEvent.Type.MouseButtonPress, start)
    for degrees in (1.0, 2.0, 3.0):
        turn = math.radians(degrees)
        round_ = QPointF(
            arm.x() * math.cos(turn) - arm.y() * math.sin(turn), arm.x() * math.sin(turn) + arm.y() * math.cos(turn)
        )
        send_mouse(view, QEvent.Type.MouseMove, middle + round_)
    send_mouse(view, QEvent.Type.MouseButtonRelease, middle + round_)
    assert abs(model.state.backplate_deg) == pytest.approx(3.0, abs=0.05)


def test_dragging_what_stays_says_so_once(open_window):
    window = open_window("seven-radial", (1600, 900))
    view, said = window.breaker, []
    window.model.refused.connect(said.append)
    group, point = view.drawing.anchors["pole shoe"]
    start = view.viewportTransform().map(view.scene_of_parts.to_scene(group, point))
    before = window.model.state
    send_mouse(view, QEvent.Type.MouseButtonPress, start)
    for step in range(1, 6):
        send_mouse(view, QEvent.Type.MouseMove, start + QPointF(3.0 * step, 0.0))
    send_mouse(view, QEvent.Type.MouseButtonRelease, start)
    assert said == ["what is there (pole shoe) stays: drag the rotor, the backplate or the contact screw"]
    assert window.model.state == before
    assert "What is there (pole shoe) stays" in window.statusBar().currentMessage()


def test_what_was_said_of_an_entry_goes_with_the_next_one(open_window, qtbot):
    """The gap wanted changes nothing on the bench, so no change of the bench takes the sentence away."""
    panel = open_window("seven-radial").panel
    wanted = panel.wanted
    wanted.setFocus()
    wanted.selectAll()
    qtbot.keyClicks(wanted, "9")
    qtbot.keyClick(wanted, Qt.Key.Key_Return)
    assert panel.callout.isVisible()
    assert "9 is outside" in panel.callout.text()
    wanted.selectAll()
    qtbot.keyClicks(wanted, "0,33")
    qtbot.keyClick(wanted, Qt.Key.Key_Return)
    assert wanted.exact == 0.33
    assert not panel.callout.isVisible()


def test_a_window_and_its_frame_fit_a_small_screen():
    """1280 × 720 less a desktop's title bar, 20 to 40 px high (common practice); a large screen changes nothing."""
    size = first_size(QSize(1280, 720))
    assert size.width() <= 1280 - 2 * 5
    assert size.height() <= 720 - 40 - 5
    assert first_size(QSize(1920, 1080)) == QSize(1280, 720)
