"""The practice window: every control does its act, and shows how things stand."""

from __future__ import annotations

from functools import partial

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice.library import find_exercise
from magview.practice.screen_words import seen
from magview.practice.state import SAFE_THINGS
from magview.practice.words import act_words
from magview.ui.kit.look import PROJECTED
from tests.counts import sampled
from tests.hands import click, last_act, show

ALL = "both-everything-wrong"


@pytest.fixture
def window(open_practice):
    window = open_practice(ALL)
    window.model.take_propeller(True)
    return window


# ---------------------------------------------------------------------- widget → act, state → widget


def tray_boxes(w):
    return [
        (w.tray, w.tray.edge, do.LayStraightedge), (w.tray, w.tray.lamp, do.ConnectLamp),
        (w.work, w.work.lock, bench.TightenLock), (w.work, w.work.clamps, bench.TightenClamps),
        (w.work, w.work.switch, bench.SwitchIgnition), (w.work, w.work.plug, bench.PullPlug),
        (w.work, w.work.paper, bench.SlipPaper), (w.work, w.work.chocks, do.Chock),
        (w.work, w.work.plugs, do.SparkPlugs), (w.work, w.work.nuts, do.Nuts), (w.work, w.work.pin, do.Pin),
        (w.work, w.work.jumper, bench.FitJumper), (w.work, w.work.other, bench.SwitchOther),
        *((w.work, w.work.safe[thing], partial(do.MakeSafe, thing)) for thing in SAFE_THINGS),
    ]  # fmt: skip


def test_a_box_does_its_act_both_ways_and_follows_the_room(window):
    for panel, box, kind in tray_boxes(window):
        show(window, panel)
        before = box.isChecked()
        click(box)
        assert last_act(window) == kind(not before) and box.isChecked() is not before
        assert window.model.do(kind(before))
        assert box.isChecked() is before, "what was done elsewhere is shown"


def test_the_stop_goes_in_and_out_once_the_plugs_are_out(window):
    show(window, window.tray)
    click(window.tray.stop)
    assert not window.tray.stop.isChecked(), "refused, the box goes back"
    assert "spark plugs out first" in window.window().statusBar().currentMessage()
    window.model.do(do.SparkPlugs(True))
    click(window.tray.stop)
    if not window.tray.stop.isChecked():  # the piston stood too high
        window.model.do(do.TurnPropeller(150.0))
        click(window.tray.stop)
    assert window.model.practice.stop_fitted and window.tray.stop.isChecked()


def buttons(w):
    return [
        (w.work, w.work.inspect, do.InspectContacts()), (w.work, w.work.dress, do.DressContacts()),
        (w.work, w.work.renew["lead"], do.Renew("lead")), (w.work, w.work.renew["tab"], do.Renew("tab")),
        (w.work, w.work.renew["insulation"], do.Renew("insulation")),
        (w.work, w.work.renew["switch"], do.Renew("switch")), (w.work, w.work.renew["places"], do.Renew("places")),
        (w.tray, w.tray.meter_terminal, do.MeterTerminal()), (w.tray, w.tray.meter_switch, do.MeterSwitch()),
        (w.work, w.work.paint, bench.PaintMarks()), (w.tray, w.tray.square, do.Sight(0.0)),
        (w.tray, w.tray.meter, do.MeterLead()), (w.tray, w.tray.thumb, do.FeelCompression()),
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
    assert window.turning.box.title() == "Turning the rotor"
    click(window.work.by_marks)
    assert last_act(window) == do.Refit(by_marks=True) and window.model.practice.mounted
    assert window.turning.box.title() == "Turning the propeller"
    window.model.do(do.Remove())
    click(window.work.as_stands)
    assert last_act(window) == do.Refit(by_marks=False)


@pytest.mark.parametrize(
    ("keys", "part"), [(Qt.KeyboardModifier.NoModifier, 1.0), (Qt.KeyboardModifier.ShiftModifier, 0.1)]
)
def test_screws_plate_and_disc_turn_by_so_much(window, monkeypatch, keys, part):
    # Offscreen a click does not carry its keys to the application's own record of them.
    monkeypatch.setattr(QApplication, "keyboardModifiers", lambda: keys)
    window.model.do(bench.TightenLock(False))
    window.model.do(bench.TightenClamps(False))
    work, tray = window.work, window.tray
    for panel, row, kind, amount in (
        (work, work.screw, do.TurnScrew, 3.0), (work, work.plate, do.TurnPlate, 0.5),
        (tray, tray.disc, do.TurnDisc, 2.0),
    ):  # fmt: skip
        show(window, panel)
        row.amount.setFocus()
        row.amount.selectAll()
        QTest.keyClicks(row.amount, str(amount))
        for button, way in ((row.more, 1.0), (row.less, -1.0)):
            click(button)
            assert last_act(window) == kind(pytest.approx(way * amount * part))
    assert seen(window.model.practice).screw in work.turned.text()


def test_the_eye_goes_where_the_slider_is_put_and_the_slider_where_the_eye_is(window):
    show(window, window.tray)
    assert not window.tray.eye.isEnabled()
    window.model.do(do.LayStraightedge(True))
    ahead = "ahead with rotation" in window.sight.edge.text()
    assert window.tray.eye.value() == (1 if ahead else -1) * round(abs(window.model.practice.eye_deg)) != 0
    window.tray.eye.setFocus()
    for key, words in ((Qt.Key.Key_Home, "from 40° behind against"), (Qt.Key.Key_End, "from 40° ahead with")):
        QTest.keyClick(window.tray.eye, key)
        assert words in window.sight.edge.text()
        assert words in act_words(last_act(window), window.model.practice, window.model.practice)
        assert window.tray.eye.value() == (-40 if key == Qt.Key.Key_Home else 40)
    click(window.tray.square)
    assert last_act(window) == do.Sight(0.0) and window.tray.eye.value() == 0


def test_blades_are_picked_held_together_and_tried(window):
    show(window, window.tray)
    box = window.tray.blades
    assert not box.try_them.isEnabled()
    for blade in (12.0, 1.5, 5.0):
        click(box.blades[blade])
    assert box.held.text() == "In hand: 1.5 + 5 + 12 thou"
    assert not box.blades[3.0].isEnabled(), "three are as many as can be held"
    click(box.try_them)
    assert last_act(window) == do.TryBlades((1.5, 5.0, 12.0), "inch")
    assert window.sight.said.text() == seen(window.model.practice).said == "blades: no-go"
    click(box.put_back)
    assert box.picked == ()
    box.sets.setCurrentIndex(1)
    click(box.blades[0.25])
    click(box.try_them)
    assert last_act(window) == do.TryBlades((0.25,), "metric")


def test_turning_by_so_much_until_and_to_a_reading(window):
    turning = window.turning
    window.model.do(do.ConnectLamp(True))
    for name, forward, act in (
        ("by", True, do.TurnPropeller(5.0)), ("by", False, do.TurnPropeller(-5.0)),
        ("propeller", True, do.TurnPropeller(5.0)), ("lamp", True, do.TurnUntil("lamp", True)),
        ("widest", False, do.TurnUntil("widest", False)), ("reading", True, do.TurnToReading(5.0, True)),
    ):  # fmt: skip
        turning.until.setCurrentIndex(turning.until.findData(name))
        click(turning.with_ if forward else turning.against)
        assert last_act(window) == act


def test_the_propeller_turns_only_with_a_hand_on_it(window):
    click(window.turning.at_propeller)
    assert not window.model.at_propeller
    before = len(window.attempt.events)
    click(window.turning.with_)
    assert len(window.attempt.events) == before
    assert "treat it as live" in window.window().statusBar().currentMessage()
    click(window.turning.at_propeller)
    click(window.turning.with_)
    assert len(window.attempt.events) == before + 1


def test_the_other_magneto_is_gone_to(window):
    first = window.model.practice.side
    other = "right" if first == "left" else "left"
    sides = window.turning.sides
    sides.setFocus()
    QTest.keyClick(sides, Qt.Key.Key_Down if other == "right" else Qt.Key.Key_Up)
    assert window.model.practice.side == other
    window.model.do(bench.ViewSide(first))
    assert sides.currentData() == first


def test_the_lamp_is_told_by_word_and_shape(open_practice):
    window = open_practice("gap-wrong")
    assert window.sight.lamp.shows == window.sight.lamp_words.text() == "not connected"
    window.model.do(do.ConnectLamp(True))
    pictures = set()
    for _ in range(2):
        window.model.do(do.TurnUntil("lamp"))
        assert window.sight.lamp.shows == seen(window.model.practice).lamp
        pictures.add((window.sight.lamp.shows, window.sight.lamp.grab().toImage().convertToFormat(
            window.sight.lamp.grab().toImage().Format.Format_Mono).bits().tobytes()))  # fmt: skip
    assert {shows for shows, _ in pictures} == {"light", "dark"}
    assert len({bits for _, bits in pictures}) == 2, "in black and white they differ too"


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


def test_a_drag_in_the_picture_is_one_act_of_a_hand(open_practice):
    from PySide6.QtCore import QEvent, QPointF

    from tests.hands import send_mouse

    window = open_practice("gap-wrong")
    breaker = window.pictures.breaker
    group, point = breaker.drawing.anchors["rotor"]
    start = breaker.viewportTransform().map(breaker.scene_of_parts.to_scene(group, point))
    send_mouse(breaker, QEvent.Type.MouseButtonPress, start)
    for x in range(2, 40, 2):
        send_mouse(breaker, QEvent.Type.MouseMove, start + QPointF(float(x), 0.0))
    send_mouse(breaker, QEvent.Type.MouseButtonRelease, start + QPointF(38.0, 0.0))
    assert [type(e.act) for e in window.attempt.events] == [do.TurnRotor]


def test_hints_come_one_at_a_time(window):
    task, hints = window.task, window.model.practice.exercise.hints
    for told in range(1, len(hints) + 1):
        click(task.hint)
        assert task.hints.text().count("\n") == told - 1 and hints[told - 1] in task.hints.text()
    assert not task.hint.isEnabled()


def test_what_is_not_on_the_tray_is_not_offered(open_practice):
    window = open_practice("measure-the-gap")
    shown = {window.turning.until.itemData(i) for i in range(window.turning.until.count())}
    assert shown == {"by", "widest"}
    assert not hasattr(window.tray, "lamp") and window.tray.blades is not None
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
    edge, places, wraps = window.sight.edge, set(), set()
    window.model.do(do.LayStraightedge(True))
    for eye in (0.0, -27.0, 13.0):
        window.model.do(do.Sight(eye))
        for _ in range(8):
            window.model.do(do.TurnRotor(11.0))
            QApplication.processEvents()
            places.add(window.turning.mapTo(window, QPoint()).y())
            wraps.add(edge.fontMetrics().horizontalAdvance(edge.text()) > edge.width())
    assert len(wraps) == 2, "it says things of one line and of two"
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


def test_in_practice_a_refusal_stands_beside_its_control(open_practice):
    window = open_practice("opens-early-or-late")
    work = window.work
    show(window, work)
    click(work.screw.more)
    assert work.callout.isVisible()
    assert "lock screw is tight" in work.callout.text()
    assert work.rect().contains(work.callout.geometry())
    assert not window.tray.callout.isVisible()
    click(work.lock)
    assert not work.callout.isVisible()


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
