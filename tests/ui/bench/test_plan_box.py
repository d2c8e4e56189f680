"""The planner's moves under the hand: what is previewed, and what stays in its place."""

from __future__ import annotations

from itertools import product

import pytest
from PySide6.QtCore import QPoint, QPointF, Qt
from PySide6.QtGui import QCursor, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import MoveTeeth, ReadLamp, WantTiming
from tests.counts import sampled
from tests.magnetos import on_the_published_coupling


@pytest.fixture
def planned(open_window):
    """A window whose lamp has told 22° where 25° is wanted: three steps on either face are the first move."""
    font = QApplication.font()
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    window.model.send(ReadLamp("left", 22.0))
    QApplication.processEvents()
    yield window
    QApplication.setFont(font)


def told(window) -> list:
    """Every move that was to be previewed, as teeth, from now on."""
    heard: list = []
    window.timing.previewed.connect(lambda move: heard.append(move and (move.magneto_teeth, move.disc_teeth)))
    return heard


def row_of(plan, row: int) -> QPoint:
    return plan.table.visualRect(plan.table.model().index(row, 0)).center()


def teeth_of(plan, row: int) -> tuple[int, int]:
    """As the table writes them: "3 with" is +3, "3 against" −3."""

    def signed(text: str) -> int:
        count, _, way = text.partition(" ")
        return -int(count) if way == "against" else int(count)

    return signed(plan.table.words(row, 1)), signed(plan.table.words(row, 0))  # A is the disc


def move_to(widget, where: QPoint) -> None:
    """The pointer itself goes there, also from where an earlier test left it."""
    for there in (where + QPoint(3, 0), where):
        QTest.mouseMove(widget, there)
        QApplication.processEvents()


def wheel_down(window, notches: int) -> None:
    """The wheel under a resting pointer, each notch to what then lies there."""
    for _ in range(notches):
        where = QCursor.pos()
        under = window.childAt(window.mapFromGlobal(where))
        event = QWheelEvent(
            QPointF(under.mapFromGlobal(where)), QPointF(where), QPoint(), QPoint(0, -120), Qt.MouseButton.NoButton,
            Qt.KeyboardModifier.NoModifier, Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        while under is not None and not (QApplication.sendEvent(under, event) and event.isAccepted()):
            under = under.parentWidget()
        QApplication.processEvents()


def test_moves_that_slide_under_a_resting_pointer_are_not_previewed(planned):
    plan, page = planned.timing.plan, planned.tabs.currentWidget()
    page.ensureWidgetVisible(plan.table)
    QTest.mouseClick(plan.table.viewport(), Qt.MouseButton.LeftButton, pos=row_of(plan, 0))
    chosen = teeth_of(plan, 0)
    page.verticalScrollBar().setValue(0)
    QApplication.processEvents()
    move_to(plan.verdict, QPoint(30, 5))  # above the table
    heard = told(planned)
    wheel_down(planned, 25)
    assert page.verticalScrollBar().value() == page.verticalScrollBar().maximum()
    assert plan.table.verticalScrollBar().value() > 0, "the list was never under the pointer"
    assert set(heard) <= {chosen}
    assert planned.drive.previewed == chosen


def test_a_row_is_previewed_while_the_pointer_is_on_it(planned):
    plan, page = planned.timing.plan, planned.tabs.currentWidget()
    page.ensureWidgetVisible(plan.table)
    port = plan.table.viewport()
    move_to(port, row_of(plan, 2))
    assert planned.drive.previewed == teeth_of(plan, 2)
    move_to(port, row_of(plan, 1))
    assert planned.drive.previewed == teeth_of(plan, 1)
    QTest.mouseClick(port, Qt.MouseButton.LeftButton, pos=row_of(plan, 0))
    assert planned.drive.previewed == teeth_of(plan, 0), "what is chosen stands before what is under the pointer"
    move_to(port, row_of(plan, 2))
    assert planned.drive.previewed == teeth_of(plan, 2)
    move_to(plan.verdict, QPoint(30, 5))
    assert planned.drive.previewed == teeth_of(plan, 0)


@pytest.mark.parametrize("how", ["page", "list", "wheel", "another tab"])
def test_a_row_that_moves_away_from_the_pointer_is_previewed_no_more(planned, how):
    plan, page = planned.timing.plan, planned.tabs.currentWidget()
    page.ensureWidgetVisible(plan.table)
    move_to(plan.table.viewport(), row_of(plan, 2))
    assert planned.drive.previewed is not None
    if how == "page":
        page.verticalScrollBar().setValue(page.verticalScrollBar().value() + 30)
    elif how == "list":
        plan.table.verticalScrollBar().setValue(1)
    elif how == "wheel":
        wheel_down(planned, 1)
    else:
        planned.tabs.setCurrentIndex(2)
    QApplication.processEvents()
    assert planned.drive.previewed is None


def test_no_step_nor_another_reading_leaves_a_stale_mark(planned):
    plan, page = planned.timing.plan, planned.tabs.currentWidget()
    page.ensureWidgetVisible(plan.table)
    port = plan.table.viewport()
    QTest.mouseClick(port, Qt.MouseButton.LeftButton, pos=row_of(plan, 0))
    chosen = teeth_of(plan, 0)
    move_to(port, row_of(plan, 3))
    steps = 0
    while plan.next.isEnabled():
        QTest.mouseClick(plan.next, Qt.MouseButton.LeftButton)
        steps += 1
        assert planned.drive.previewed == (chosen if plan.next.isEnabled() else None)
    assert steps == abs(chosen[0]) + abs(chosen[1])
    planned.model.undo()
    assert planned.drive.previewed == chosen
    planned.tabs.setCurrentIndex(2)  # the plan does not follow what happens now
    planned.model.send(WantTiming("left", 20.0))
    assert planned.drive.previewed is None
    planned.tabs.setCurrentIndex(1)
    assert planned.drive.previewed is None


@pytest.mark.parametrize(("row", "percent"), sampled(product(range(4), [100, 125]), 3))
def test_the_button_for_the_next_tooth_stays_under_the_pointer(planned, row, percent):
    planned.look.text_percent = percent
    for _ in range(3):  # words, then panes, then the window take their new sizes
        QApplication.processEvents()
    plan, page = planned.timing.plan, planned.tabs.currentWidget()
    page.ensureWidgetVisible(plan.table)
    QTest.mouseClick(plan.table.viewport(), Qt.MouseButton.LeftButton, pos=row_of(plan, row))
    page.verticalScrollBar().setValue(page.verticalScrollBar().value() + 200)
    page.ensureWidgetVisible(plan.next)
    QApplication.processEvents()
    stands = plan.next.mapTo(planned, QPoint(0, 0))
    middle = plan.next.rect().center() + stands
    while plan.next.isEnabled():
        assert planned.childAt(middle) is plan.next
        QTest.mouseClick(plan.next, Qt.MouseButton.LeftButton)
        QApplication.processEvents()
        assert plan.next.mapTo(planned, QPoint(0, 0)) == stands
    mounting = planned.model.state.engaged.mounting
    assert (mounting.magneto_teeth, mounting.disc_teeth) == teeth_of(plan, row), "a click was lost"


def test_from_the_reading_to_the_next_tooth_nothing_needs_the_wheel(planned):
    page, plan = planned.tabs.currentWidget(), planned.timing.plan
    assert planned.height() == 720 and page.verticalScrollBar().value() == 0
    for widget in (planned.timing.lamp.reads["left"], plan.table, plan.words, plan.next):
        assert (
            page.viewport().rect().contains(widget.rect().translated(widget.mapTo(page.viewport(), QPoint(0, 0))))
        ), widget


def test_a_label_with_room_keeps_it_at_any_width(qtbot):
    from magview.ui.kit.steady_label import SteadyLabel

    long = "disc 10 teeth against rotation from the mark " * 4
    label, plain = SteadyLabel(), SteadyLabel()
    for one in (label, plain):
        qtbot.addWidget(one)
    label.keep_room_for([long, "short"])
    label.setText("short")
    plain.setText(long)
    for width in (120, 260, 700):
        assert label.heightForWidth(width) == plain.heightForWidth(width)


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Tab])
@pytest.mark.parametrize("what", ["reads", "wanted"])
def test_a_reading_no_engine_has_is_refused_and_nothing_is_planned_from_it(planned, what, key):
    lamp, model = planned.timing.lamp, planned.model
    model.send(MoveTeeth(2, -1))  # a reading taken now would be the new as found
    spin = getattr(lamp, what)["left"]
    before, moves, said = model.state, teeth_of(planned.timing.plan, 0), []
    model.refused.connect(said.append)
    spin.setFocus()
    spin.selectAll()
    QTest.keyClicks(spin.lineEdit(), "221")
    QTest.keyClick(spin.lineEdit(), key)
    assert model.state is before and before.engaged.mounting.magneto_teeth == 2
    assert spin.text() == ("+22.00°" if what == "reads" else "+25.00°")
    assert teeth_of(planned.timing.plan, 0) == moves
    assert len(said) == 1
    # A disc reads to half a turn on either side; no engine is timed beyond a quarter.
    limit, name = ("180", "lamp reads") if what == "reads" else ("90", "wanted")
    for words in ("left magneto", name, "221", f"-{limit}.00°", f"+{limit}.00°"):
        assert words in said[0]
    assert said[0][1:] in planned.statusBar().currentMessage()
    if key == Qt.Key.Key_Return:
        assert planned.timing.callout.isVisible() and said[0][1:] in planned.timing.callout.text()
