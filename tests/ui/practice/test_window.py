"""The practice window: every control does its act, and shows how things stand."""

from __future__ import annotations

from functools import partial

import pytest
from PySide6.QtCore import QEvent, QPoint, QPointF, Qt
from PySide6.QtGui import QFont, QFontMetricsF
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench import actions as bench
from magview.bench.easing import STEPS_DEG
from magview.bench.tray import NUMBERS, RightHand, Thing
from magview.drawing.things import Laid, laid_scene
from magview.practice import actions as do
from magview.practice.apply import apply
from magview.practice.instruments import light
from magview.practice.library import find_exercise
from magview.practice.screen_words import seen
from magview.practice.state import SAFE_THINGS
from magview.practice.tried import follows
from magview.ui.kit.look import PROJECTED
from magview.ui.practice.tried import Cell
from tests.counts import sampled
from tests.hands import click, drag, last_act, move_mouse, send_mouse, show

ALL = "both-everything-wrong"


@pytest.fixture
def window(open_practice):
    window = open_practice(ALL)
    window.model.take_propeller(True)
    return window


# ---------------------------------------------------------------------- widget → act, state → widget


def boxes(w):
    return [
        (w.work, w.work.switch, bench.SwitchIgnition), (w.work, w.work.plug, bench.PullPlug),
        (w.work, w.work.paper, bench.SlipPaper), (w.work, w.work.chocks, do.Chock),
        (w.work, w.work.plugs, do.SparkPlugs), (w.work, w.work.nuts, do.Nuts), (w.work, w.work.pin, do.Pin),
        (w.work, w.work.other, bench.SwitchOther),
        *((w.work, w.work.safe[thing], partial(do.MakeSafe, thing)) for thing in SAFE_THINGS),
    ]  # fmt: skip


def test_a_box_does_its_act_both_ways_and_follows_the_room(window):
    for panel, box, kind in boxes(window):
        show(window, panel)
        before = box.isChecked()
        click(box)
        assert last_act(window) == kind(not before) and box.isChecked() is not before
        assert window.model.do(kind(before))
        assert box.isChecked() is before, "what was done elsewhere is shown"


def in_focus():
    """Where keys go: the window itself where no widget has them."""
    return QApplication.focusWidget() or QApplication.activeWindow()


def key(digit: int) -> None:
    QTest.keyClick(in_focus(), str(digit))


def enter() -> None:
    QTest.keyClick(in_focus(), Qt.Key.Key_Return)


@pytest.mark.parametrize(
    ("thing", "kind"),
    [(Thing.STRAIGHTEDGE, do.LayStraightedge), (Thing.LAMP, do.ConnectLamp), (Thing.JUMPER, bench.FitJumper)],
)
def test_a_thing_is_dragged_on_or_put_by_its_keys_and_comes_back_by_a_click(window, thing, kind):
    card = window.tray.things[thing]
    drag(card, lambda: window.right_hand.spots[0])
    assert last_act(window) == kind(True)
    assert "magneto" in card.item.on
    click(card)
    assert last_act(window) == kind(False)
    assert card.item.on == ""
    window.pictures.breaker.setFocus()
    key(NUMBERS[thing])
    assert window.hands.right.holds.text() == card.item.name.lower()
    enter()
    assert last_act(window) == kind(True)
    assert window.hands.right.holds.text() == "nothing"


def test_what_is_let_go_over_the_tray_lies_there_again(window):
    tray, before = window.tray, len(window.attempt.events)
    drag(tray.things[Thing.LAMP], lambda: tray.things[Thing.METER])
    assert window.right_hand.hand == RightHand()
    key(2)
    QTest.keyClick(in_focus(), Qt.Key.Key_Escape)
    assert window.right_hand.hand == RightHand()
    assert window.right_hand.spots == []
    assert len(window.attempt.events) == before


def test_the_stop_goes_in_and_out_once_the_plugs_are_out(window):
    window.pictures.breaker.setFocus()
    key(7)
    enter()
    assert not window.model.practice.stop_fitted
    assert "spark plugs out first" in window.window().statusBar().currentMessage()
    assert window.refusal.isVisible(), "the sentence stands at the lit place"
    window.model.do(do.SparkPlugs(True))
    enter()
    if not window.model.practice.stop_fitted:  # the piston stood too high
        window.model.do(do.TurnPropeller(150.0))
        enter()
    assert window.model.practice.stop_fitted
    key(7)
    assert last_act(window) == do.FitStop(False)


@pytest.mark.parametrize(
    ("digit", "place", "act"),
    [(4, 0, do.MeterLead()), (4, 1, do.MeterTerminal()), (4, 2, do.MeterSwitch()),
     (6, 0, bench.TightenLock(False)), (6, 1, bench.TightenClamps(False))],
)  # fmt: skip
def test_meter_and_screwdriver_are_put_at_one_of_their_places(window, digit, place, act):
    window.model.do(bench.PullPlug(True))
    window.pictures.breaker.setFocus()
    key(digit)
    for _ in range(place):
        QTest.keyClick(in_focus(), Qt.Key.Key_Right)
    enter()
    assert last_act(window) == act
    assert window.right_hand.hand.thing is not None, "a tool stays in hand"


def test_what_does_not_belong_says_why(open_practice):
    window = open_practice("gap-wrong")
    window.pictures.breaker.setFocus()
    key(8)
    assert window.tray_refusal.text() == "✗ Crank disc: no engine."
    assert window.tray_refusal.isVisible()
    assert window.right_hand.hand == RightHand()


def test_every_target_is_large_enough_for_a_hand(open_practice):
    window = open_practice("gap-wrong", size=(1280, 660))
    for digit in (1, 2, 3, 6):
        window.right_hand.press(digit)
        for widget in (*window.right_hand.spots, *window.tray.leaves.values(), *window.tray.things.values()):
            assert min(widget.width(), widget.height()) >= 24, widget.accessibleName()
            assert widget.parentWidget().rect().contains(widget.geometry())


def buttons(w):
    return [
        (w.work, w.work.inspect, do.InspectContacts()), (w.work, w.work.dress, do.DressContacts()),
        (w.work, w.work.renew["lead"], do.Renew("lead")), (w.work, w.work.renew["tab"], do.Renew("tab")),
        (w.work, w.work.renew["insulation"], do.Renew("insulation")),
        (w.work, w.work.renew["switch"], do.Renew("switch")), (w.work, w.work.renew["places"], do.Renew("places")),
        (w.work, w.work.paint, bench.PaintMarks()), (w.work, w.work.thumb, do.FeelCompression()),
        (w.work, w.work.tooth["magneto", 1], do.MoveTooth("magneto", 1)),
        (w.work, w.work.tooth["magneto", -1], do.MoveTooth("magneto", -1)),
        (w.work, w.work.tooth["disc", 1], do.MoveTooth("disc", 1)),
        (w.work, w.work.tooth["disc", -1], do.MoveTooth("disc", -1)),
        (w.work, w.work.remove, do.Remove()), (w.work, w.work.leave, do.LeaveAsIs("contacts")),
        (w.work, w.work.fit_new, do.RenewContacts()), (w.work, w.work.felt, do.PressFelt()),
        (w.work, w.work.oil, do.OilFelt(1)), (w.work, w.work.stay, do.LeaveAsIs("chocks")),
    ]  # fmt: skip


def test_a_button_does_its_act(window):
    for act in (do.LayStraightedge(True), do.SparkPlugs(True), bench.PullPlug(True), do.Nuts(False)):
        window.model.do(act)
    for panel, button, act in buttons(window):
        show(window, panel)
        done = len(window.attempt.events)
        click(button)
        assert len(window.attempt.events) == done + 1
        assert last_act(window) == act


def test_the_magneto_goes_back_by_its_marks_or_as_its_rotor_stands(window):
    for act in (bench.PaintMarks(), bench.PullPlug(True), do.Nuts(False), do.Remove()):
        assert window.model.do(act)
    show(window, window.work)
    assert window.hands.part.currentData() == "rotor"
    click(window.work.by_marks)
    assert last_act(window) == do.Refit(by_marks=True) and window.model.practice.mounted
    assert window.hands.part.currentData() == "propeller"
    window.model.do(do.Remove())
    click(window.work.as_stands)
    assert last_act(window) == do.Refit(by_marks=False)


@pytest.mark.parametrize(
    ("keys", "part"), [(Qt.KeyboardModifier.NoModifier, 1.0), (Qt.KeyboardModifier.ShiftModifier, 0.1)]
)
def test_screws_plate_and_disc_turn_by_steps(window, monkeypatch, keys, part):
    # Offscreen a click does not carry its keys to the application's own record of them.
    monkeypatch.setattr(QApplication, "keyboardModifiers", lambda: keys)
    window.model.do(bench.TightenLock(False))
    window.model.do(bench.TightenClamps(False))
    hands = window.hands
    for name, kind, step in (("screw", do.TurnScrew, 2.0), ("plate", do.TurnPlate, 0.5), ("disc", do.TurnDisc, 1.0)):
        hands.take(name)
        hands.how.setCurrentIndex(hands.how.findData(step))
        for button, way in ((hands.with_, 1.0), (hands.against, -1.0)):
            click(button)
            assert last_act(window) == kind(pytest.approx(way * step * part))
    assert seen(window.model.practice).screw in window.work.turned.text()


@pytest.mark.parametrize("part", ["plate", "screw"])
def test_plate_and_screw_are_eased_until_the_lamp_changes(open_practice, part):
    window = open_practice("gap-wrong")
    for act in (bench.TightenLock(False), bench.TightenClamps(False), do.ConnectLamp(True), do.TurnUntil("lamp")):
        assert window.model.do(act)
    hands, before = window.hands, window.sight.lamp_words.text()
    hands.take(part)
    hands.how.setCurrentIndex(hands.how.findData("lamp"))
    # The contacts have just parted or met: one of the two ways takes that back within a few degrees.
    click(hands.with_)
    if window.sight.lamp_words.text() == before:
        click(hands.against)
    act = last_act(window)
    assert isinstance(act, do.TurnPlate if part == "plate" else do.TurnScrew)
    assert window.sight.lamp_words.text() != before
    was, kind = window.model.session.states[-2], type(act)
    last = STEPS_DEG[part] * 1.7  # its last step, and what a hand goes on at most
    short = act.by_deg - (last if act.by_deg > 0 else -last)
    assert light(apply(was, kind(short))) == light(was), "it stopped where the lamp changed"


def test_easing_without_a_lamp_or_with_the_screws_tight_is_refused(open_practice):
    window = open_practice("gap-wrong")
    window.model.do(bench.TightenClamps(True))
    hands = window.hands
    hands.take("plate")
    hands.how.setCurrentIndex(hands.how.findData("lamp"))
    for act, words in ((None, "Clip the lamp"), (do.ConnectLamp(True), "clamp screws")):
        if act is not None:
            window.model.do(act)
        click(hands.with_)
        assert words in window.window().statusBar().currentMessage()


def test_the_eye_is_dragged_along_the_rim_or_moved_by_keys(window):
    eye = window.pictures.eye
    assert not eye.isVisible()
    window.model.do(do.LayStraightedge(True))
    assert eye.isVisible()
    assert abs(window.model.practice.eye_deg) == pytest.approx(eye.deg if eye.deg > 0 else -eye.deg)
    eye.setFocus()
    QTest.keyClick(eye, Qt.Key.Key_Home)
    assert last_act(window) == do.Sight(0.0)
    assert window.sight.eye.text() == "square over the edge"
    square = eye.pos()
    for _ in range(2):
        QTest.keyClick(eye, Qt.Key.Key_Left)
    assert last_act(window) == do.Sight(10.0)
    assert "from 10° behind" in window.sight.eye.text()
    away = eye.pos() - square
    QTest.mousePress(eye, Qt.MouseButton.LeftButton)
    move_mouse(eye, eye.rect().center() + away * 3)
    QTest.mouseRelease(eye, Qt.MouseButton.LeftButton)
    assert isinstance(last_act(window), do.Sight)
    assert last_act(window).eye_deg > 10.0


def test_blades_are_picked_held_together_and_tried(window):
    tray, right = window.tray, window.hands.right
    click(tray.leaves[12.0])
    assert right.holds.text() == "blade 12 thou"
    click(tray.leaves[5.0])
    assert right.holds.text() == "blade 5 thou", "a second blade replaces the first"
    for blade in (1.5, 12.0, 3.0):
        QTest.mouseClick(tray.leaves[blade], Qt.MouseButton.LeftButton, Qt.KeyboardModifier.ShiftModifier)
    assert right.holds.text() == "stack 1.5 + 5 + 12 thou", "three are as many as can be held"
    enter()
    assert last_act(window) == do.TryBlades((1.5, 5.0, 12.0), "inch")
    assert window.sight.said.text() == seen(window.model.practice).said == "blades: no-go"
    assert window.sight.sentence.text() == "1.5 + 5 + 12 thou does not go: the gap is smaller. Try a thinner blade."
    tray.sets.setCurrentIndex(1)
    assert right.holds.text() == "nothing"
    drag(tray.leaves[0.25], lambda: window.right_hand.spots[0])
    assert last_act(window) == do.TryBlades((0.25,), "metric")


def test_what_was_tried_stands_in_a_row_until_the_rotor_turns(open_practice):
    window = open_practice("gap-wrong")
    window.model.do(do.TurnUntil("widest"))
    window.pictures.breaker.setFocus()
    key(3)
    felt = set()
    for way in (Qt.Key.Key_Left, Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Right, Qt.Key.Key_Right):
        QTest.keyClick(in_focus(), way)
        enter()
        felt.add(last_act(window).blades)
    cells = window.sight.row.cells
    assert {cell.blades for cell in cells} == felt
    assert [sum(cell.blades) for cell in cells] == sorted(sum(cell.blades) for cell in cells)
    assert follows(window.sight.tried.now) == window.sight.sentence.text()
    row = window.sight.row
    even = row.boxes()
    row.show_cells([Cell((0.1, 0.35), "0.1 + 0.35", "go"), *(Cell((0.3,), "0.3", "go") for _ in range(3))])
    boxes, bold = row.boxes(), QFont(row.font())
    bold.setBold(True)
    assert boxes[0].width() - 4 >= QFontMetricsF(bold).horizontalAdvance("0.1 + 0.35"), "a stack stands whole"
    assert all(box.width() - 4 >= QFontMetricsF(bold).horizontalAdvance("0.3") for box in boxes[1:4])
    assert boxes[-1].right() == pytest.approx(even[-1].right(), abs=0.01)
    window.model.do(do.TurnRotor(10.0))
    assert window.sight.sentence.text() == "Nothing tried yet."
    assert window.notebook.lines.item(0).text().startswith("Tried: ")


def test_turning_until_and_to_a_reading(window):
    hands = window.hands
    window.model.do(do.ConnectLamp(True))
    for name, forward, act in (
        (5.0, True, do.TurnPropeller(5.0)), (5.0, False, do.TurnPropeller(-5.0)),
        ("lamp", True, do.TurnUntil("lamp", True)),
        ("widest", False, do.TurnUntil("widest", False)), ("reading", True, do.TurnToReading(0.0, True)),
    ):  # fmt: skip
        hands.how.setCurrentIndex(hands.how.findData(name))
        click(hands.with_ if forward else hands.against)
        assert last_act(window) == act


def test_the_propeller_turns_only_with_a_hand_on_it(window):
    click(window.hands.at_propeller)
    assert not window.model.at_propeller
    before = len(window.attempt.events)
    click(window.hands.with_)
    assert len(window.attempt.events) == before
    assert "treat it as live" in window.window().statusBar().currentMessage()
    click(window.hands.at_propeller)
    click(window.hands.with_)
    assert len(window.attempt.events) == before + 1


def test_the_other_magneto_is_gone_to(window):
    first = window.model.practice.side
    other = "right" if first == "left" else "left"
    sides = window.hands.sides
    sides.setFocus()
    QTest.keyClick(sides, Qt.Key.Key_Down if other == "right" else Qt.Key.Key_Up)
    assert window.model.practice.side == other
    window.model.do(bench.ViewSide(first))
    assert sides.currentData() == first


def test_the_lamp_is_told_by_word_and_shape(open_practice):
    window = open_practice("gap-wrong")
    assert window.sight.lamp_words.text() == "not connected"
    window.model.do(do.ConnectLamp(True))
    shows = {}
    for _ in range(2):
        window.model.do(do.TurnUntil("lamp"))
        shows[window.sight.lamp_words.text()] = window.pictures.breaker.laid().lamp
    assert shows == {"lit": "light", "dark": "dark"}
    rays = [len(laid_scene(Laid(lamp), (0, 0), (0, 0), (400, 400), 12).groups[0].pieces) for lamp in shows.values()]
    assert len(set(rays)) == 2, "in black and white they differ too"


@pytest.mark.parametrize(
    ("kind", "entry", "value"),
    sampled([("gap", "9 thou", 0.2286), ("gap", "0,23 mm", 0.23), ("opening", "-0.8 mm", -0.8),
             ("firing", "25.5", 25.5), ("disc-zero", "3.25° after", -3.25)], 2),
)  # fmt: skip
def test_readings_are_written_with_their_units(window, kind, entry, value):
    show(window, window.notebook)
    book = window.notebook
    book.kind.setCurrentIndex(book.kind.findData(kind))
    book.value.setFocus()
    QTest.keyClicks(book.value, entry)
    QTest.keyClick(book.value, Qt.Key.Key_Return)
    act = last_act(window)
    assert (act.kind, act.value) == (kind, pytest.approx(value))
    assert book.lines.count() == 1 and book.value.text() == ""


def test_a_reading_without_its_unit_is_not_guessed(window):
    show(window, window.notebook)
    book = window.notebook
    book.kind.setCurrentIndex(book.kind.findData("gap"))
    book.value.setText("0.23")
    click(book.write)
    assert window.attempt.events == () and "has no unit" in book.unread.text() and book.unread.isVisible()


def test_findings_and_remarks_are_written_in_words(window):
    show(window, window.notebook)
    book = window.notebook
    book.kind.setCurrentIndex(book.kind.findData("lead"))
    book.lead.setCurrentIndex(book.lead.findData("broken"))
    click(book.write)
    assert last_act(window) == do.WriteReading("lead", side=book.side.currentData(), text="broken")
    book.kind.setCurrentIndex(book.kind.findData("note"))
    book.value.setText("arm is stiff")
    click(book.write)
    assert "arm is stiff" in book.lines.item(1).text()


def turn_cam(window, pixels: int) -> None:
    breaker = window.pictures.breaker
    start = breaker.place_of("cam")
    send_mouse(breaker, QEvent.Type.MouseButtonPress, start)
    for x in range(2, pixels, 2):
        send_mouse(breaker, QEvent.Type.MouseMove, start + QPointF(float(x), 0.0))
    send_mouse(breaker, QEvent.Type.MouseButtonRelease, start + QPointF(float(pixels - 2), 0.0))


def test_a_drag_in_the_picture_is_one_act_of_a_hand(open_practice):
    window = open_practice("gap-wrong")
    window.model.do(bench.HoldRotor())
    turn_cam(window, 40)
    assert [type(e.act) for e in window.attempt.events] == [bench.HoldRotor, do.TurnRotor]
    assert window.model.state.held


def test_letting_go_of_the_mouse_lets_go_of_a_rotor_that_was_not_held(open_practice):
    window = open_practice("gap-wrong")
    window.model.do(do.LetGo())
    turn_cam(window, 40)
    assert [type(e.act) for e in window.attempt.events] == [do.LetGo, do.TurnRotor, do.LetGo]
    assert not window.model.state.held
    assert window.hands.left.holds.text() == "nothing: the rotor is free"


def test_hints_come_one_at_a_time(window):
    task, hints = window.task, window.model.practice.exercise.hints
    for told in range(1, len(hints) + 1):
        click(task.hint)
        assert task.hints.text().count("\n") == told - 1 and hints[told - 1] in task.hints.text()
    assert not task.hint.isEnabled()


def test_what_is_not_on_the_tray_is_not_offered(open_practice):
    window = open_practice("measure-the-gap")
    how = window.hands.how
    assert {h for i in range(how.count()) if isinstance(h := how.itemData(i), str)} == {"widest"}
    assert window.tray.things[Thing.LAMP].item.why_not == "not given here"
    assert window.tray.leaves
    assert len(window.views()) == 2 and not window.pictures.drive.isVisible()


def test_after_the_projector_the_pictures_have_their_room_again(open_window, qtbot):
    window = open_window("seven-radial-left")
    page = window.practice.begin(find_exercise("find-the-e-gap"), 3)
    window.places.go("practise")
    qtbot.waitUntil(page.isVisible)
    before = QApplication.font()
    try:
        QApplication.processEvents()
        width = page.pictures.breaker.width()
        for _ in range(2):
            QTest.keyClick(window, Qt.Key.Key_F11)
            QApplication.processEvents()
        # Tabs that were never seen have told their width meanwhile.
        qtbot.waitUntil(lambda: abs(page.pictures.breaker.width() - width) < 40)
    finally:
        QApplication.setFont(before)
        page.discard()


def test_the_projector_is_asked_for_by_its_key(window, qtbot):
    with qtbot.waitSignal(window.look.changed):
        QTest.keyClick(window, Qt.Key.Key_F11)
    assert window.look.line_factor == PROJECTED and not window.tabs.isVisible()


# ---------------------------------------------------------------------- nothing moves under the hand


@pytest.mark.parametrize("size", [(1280, 720), (1600, 900)])
def test_what_the_straightedge_says_moves_nothing_below_it(open_practice, size):
    window = open_practice("opens-early-or-late", size=size)
    edge, places, said = window.sight.edge, set(), set()
    window.model.do(do.LayStraightedge(True))
    for eye in (0.0, -27.0, 13.0):
        window.model.do(do.Sight(eye))
        for _ in range(8):
            window.model.do(do.TurnRotor(11.0))
            QApplication.processEvents()
            places.add(window.tabs.mapTo(window, QPoint()).y())
            said.add(edge.text())
            assert edge.fontMetrics().horizontalAdvance(edge.text()) <= edge.width()
    assert len(said) > 3
    assert len(places) == 1


def test_the_notebook_keeps_its_rows_in_place(open_practice):
    window = open_practice("gap-wrong")
    book = window.notebook
    show(window, book)
    places, enabled = set(), {}
    for i in range(book.kind.count()):
        book.kind.setCurrentIndex(i)
        QApplication.processEvents()
        line = book.lead if book.kind.currentData() == "lead" else book.value
        places.add((line.mapTo(window, QPoint()).y(), book.write.mapTo(window, QPoint()).y()))
        enabled[book.kind.currentData()] = book.lobe.isEnabled()
    assert len(places) == 1
    assert {kind for kind, on in enabled.items() if on} == {"gap"}


def test_a_reading_typed_where_the_lobe_goes_is_refused_in_a_sentence(open_practice):
    window = open_practice("gap-wrong")
    book = window.notebook
    show(window, book)
    book.kind.setCurrentIndex(book.kind.findData("gap"))
    book.lobe.setFocus()
    book.lobe.selectAll()
    QTest.keyClicks(book.lobe, "0,37mm")
    QTest.keyClick(book.lobe, Qt.Key.Key_Return)
    assert book.unread.isVisible()
    assert "“0,37mm” is not a lobe: write a whole number from 1 to" in book.unread.text()
    assert book.lobe.text() == "1"
    book.lobe.selectAll()
    QTest.keyClicks(book.lobe, "2")
    book.value.setText("0.37 mm")
    click(book.write)
    assert (last_act(window).lobe, last_act(window).value) == (2, pytest.approx(0.37))


def test_in_practice_a_refusal_stands_at_the_thing(open_practice):
    window = open_practice("opens-early-or-late")
    view = window.pictures.breaker
    at = view.place_of("contact screw")
    send_mouse(view, QEvent.Type.MouseButtonPress, at + QPointF(8.0, 0.0))
    send_mouse(view, QEvent.Type.MouseMove, at + QPointF(0.0, 30.0))
    slip = window.refusal
    assert slip.isVisible()
    assert "lock screw is tight" in slip.text()
    assert view.viewport().rect().contains(slip.geometry())
    assert slip.height() < 3.6 * slip.fontMetrics().height(), "two lines"
    send_mouse(view, QEvent.Type.MouseButtonRelease, at)
    window.right_hand.press(6)
    enter()
    assert not window.model.state.lock_tight
    assert not slip.isVisible()


def test_after_the_last_hint_the_keyboard_is_at_the_hints_not_at_handing_in(open_practice):
    window = open_practice("gap-wrong")
    task = window.task
    show(window, task)
    task.hint.setFocus()
    for _ in window.model.practice.exercise.hints:
        assert task.hint.hasFocus()
        QTest.keyClick(task.hint, Qt.Key.Key_Space)
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Space)
    assert task.hints.hasFocus()
    assert not window.hand_in.hasFocus()


@pytest.mark.parametrize(
    ("act", "told"),
    [(do.DressContacts(), "Dress the contacts."), (do.RenewContacts(), "Fit a new pair of contacts."),
     (do.LeaveAsIs("contacts"), "Leave the contacts as they are."), (do.Renew("lead"), None)],
)  # fmt: skip
def test_an_act_that_no_picture_shows_is_told_of(open_practice, act, told):
    window = open_practice("pips")
    window.model.do(act)
    said = window.window().statusBar().currentMessage()
    assert said == told if told else said
