"""The debrief as a page: asked and got, gauges, the path, folded cards, the replay, and four ways to go on."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice import shelf
from magview.practice.attempt import Attempt, Session
from magview.practice.library import find_exercise
from magview.ui.kit.signs import Sign
from tests.hands import click, what_is_due
from tests.practice.trainee import Trainee
from tests.wording import says


def careless(name: str = "gap-wrong", seed: int = 4) -> Attempt:
    """Fourteen nudges and a look from the side, then handed in with the lamp on."""
    session = Session(find_exercise(name), seed)
    acts = [do.ConnectLamp(True), bench.SwitchIgnition(True), do.LayStraightedge(True), do.Sight(-25.0)]
    acts += [do.TurnUntil("lamp"), bench.TightenClamps(False), *[do.TurnPlate(0.2)] * 14]
    acts += [bench.TightenLock(True), bench.TightenClamps(True)]
    for i, act in enumerate((*acts, do.HandIn())):
        session.send(act, 5.0 * i)
    return session.attempt


@pytest.fixture
def told(open_window):
    """A debrief in front of the window, its page and its view."""

    def show(attempt: Attempt, size=(1280, 660)):
        pages = []
        window = open_window(size=size, first=lambda main: pages.append(main.practice.go_on(attempt)))
        what_is_due(2)
        return window, pages[0].debrief

    return show


def test_a_failed_attempt_says_what_was_asked_what_was_got_why_and_what_next(told):
    window, view = told(careless())
    assert view.task.text() == find_exercise("gap-wrong").task
    marking = view.told.marking
    assert view.verdict.text() == says("{points:.0f} of 100: not yet", points=marking.percent)
    assert [row.goal.row for row in view.goals] == list(marking.rows)
    assert all(row.sign is (Sign.IN if row.goal.full else Sign.OUT) for row in view.goals)
    opening = view.goals[0]
    assert opening.goal.cause in opening.accessibleName() and opening.own.text() in opening.accessibleName()
    assert "14" in view.cards.card(3).foot and view.cards.card(3).badge == 1
    assert "\n" not in view.next_time.text() and view.told.next_time in view.next_time.text()
    assert [button.filled for button in view.buttons] == [False, False, True, False], "one blue: the lesson"
    cards_end = view.cards.mapTo(window, QPoint(0, view.cards.height())).y()
    buttons_top = view.again_button.mapTo(window, QPoint(0, 0)).y()
    assert cards_end <= buttons_top < window.height(), "nothing has to be scrolled to"
    assert view.pages.height() >= 18 * view.fontMetrics().height()
    for row in view.goals:
        assert row.width() >= row.minimumSizeHint().width()


def test_the_keyboard_goes_from_goal_to_goal_then_plot_then_cards_and_a_card_opens_by_enter(told):
    _, view = told(careless())
    assert view.goals[0].hasFocus()
    for row in view.goals[1:]:
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
        assert row.hasFocus()
    QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    assert view.path.hasFocus() and view.path.accessibleDescription()
    while QApplication.focusWidget() is not view.cards:
        QTest.keyClick(QApplication.focusWidget(), Qt.Key.Key_Tab)
    cards, nudges = view.cards, view.told.cards[3]
    folded = cards.card_count()
    QTest.keyClick(cards, Qt.Key.Key_Home)
    for _ in range(3):
        QTest.keyClick(cards, Qt.Key.Key_Right)
    assert view.replay.slider.value() == nudges.steps[-1].index
    QTest.keyClick(cards, Qt.Key.Key_Return)
    assert cards.card_count() == folded + len(nudges.steps) and cards.chosen_card() == 3
    QTest.keyClick(cards, Qt.Key.Key_Right)
    assert view.replay.slider.value() == nudges.steps[0].index, "one act of them"
    QTest.keyClick(cards, Qt.Key.Key_Left)
    QTest.keyClick(cards, Qt.Key.Key_Return)
    assert cards.card_count() == folded
    QTest.keyClick(cards, Qt.Key.Key_Space)
    assert view.replay.isVisible() and view.replay.playing
    assert view.replay.slider.value() == nudges.steps[0].index, "the replay starts from the card"
    view.replay.pause()


def test_the_replay_shows_each_moment_with_its_numbers_and_cannot_be_touched(told, qtbot):
    _, view = told(Trainee(find_exercise("several-teeth-out"), 5).work())
    states, replay = view.told.replay.states, view.replay
    click(view.views.button(1))
    assert replay.isVisible()
    QTest.keyClick(replay.slider, Qt.Key.Key_Home)
    assert replay.moment.text().startswith("0:00 – As found") and replay.model.state == states[0].bench
    for _ in range(7):
        QTest.keyClick(replay.slider, Qt.Key.Key_Right)
    assert replay.model.state == states[7].bench
    assert view.told.timeline[6].words in replay.moment.text()
    chosen = view.told.cards[view.cards.chosen_card()]
    assert chosen.steps[0].index <= 7 <= chosen.steps[-1].index
    assert "past neutral" in view.pictures.breaker.accessibleDescription()
    before = replay.model.state
    view.pictures.crank.turn(5.0)
    assert replay.model.state == before
    replay.slider.setValue(replay.slider.maximum() - 1)
    click(replay.play)
    qtbot.waitUntil(lambda: not replay.playing, timeout=5000)
    assert replay.slider.value() == replay.slider.maximum()
    click(view.views.button(2))
    for title, count in (("True values", len(view.told.truths)), ("Own readings", len(view.told.readings))):
        assert view.sheets[title].row_count() == count > 0
    assert view.verdict.text() == says("{points:.0f} of 100: passed", points=100)
    assert [button.filled for button in view.buttons] == [False, False, False, True]


def test_the_same_code_again_counts_as_practice_and_its_file_says_so(told):
    window, _ = told(careless())
    book = window.places.progress
    place = window.practice
    session_page = place.begin(find_exercise("opens-early-or-late"), 9)
    session_page.model.do(do.HandIn())
    what_is_due(2)
    name = "opens-early-or-late"
    first = book.read().exercise(name)
    assert first.tries == 1 and not session_page.debrief.told.truth_known
    assert session_page.debrief.notes.isVisible(), "nothing was done, and that is said"
    window.activateWindow()  # offscreen, a window whose focused part is deleted is active no more
    what_is_due()
    assert session_page.debrief.goals[0].hasFocus()
    QTest.keyClick(session_page.debrief, Qt.Key.Key_A)
    again = place.front
    assert again is not session_page and (again.attempt.seed, again.attempt.truth_known) == (9, True)
    again.model.do(do.HandIn())
    what_is_due(2)
    assert again.debrief.told.truth_known and book.read().exercise(name) == first
    assert (
        says("Not the first time with this code: its truth had been shown. This counts as practice.")
        in again.debrief.notes.text()
    )
    # A file saved before the hand-in and opened after it is no way round.
    unfinished = Attempt(session_page.attempt.exercise, 9)
    assert place.go_on(unfinished).attempt.truth_known


def test_another_the_lesson_and_the_next_are_a_key_away(told):
    window, view = told(careless())
    page = window.practice.front
    QTest.keyClick(view, Qt.Key.Key_O)
    other = window.practice.front.attempt
    assert other.exercise == page.attempt.exercise and other.seed != page.attempt.seed
    assert not other.truth_known
    window.practice.show_page(page)
    what_is_due()
    view.goals[0].setFocus()
    QTest.keyClick(view.goals[0], Qt.Key.Key_Return)
    following = window.places.progress.read().next_exercise(shelf.exercises())
    assert window.practice.front.attempt.exercise == find_exercise(following.id)
    window.practice.show_page(page)
    what_is_due()
    QTest.keyClick(view, Qt.Key.Key_L)
    assert window.places.name == "learn"


@pytest.mark.parametrize("name", ["find-the-e-gap", "both-everything-wrong"])
def test_every_exercise_has_its_debrief_also_on_a_narrow_screen(told, name):
    """853 × 440 is what 1280 × 660 leaves at 150 %."""
    window, view = told(Trainee(find_exercise(name), 3).work(), size=(853, 440))
    assert window.size().toTuple() == (853, 440)
    assert view.split.orientation() == Qt.Orientation.Vertical
    assert len(view.goals) == len(view.told.marking.rows)
    assert all(button.isVisible() == (button is not view.lesson_button) for button in view.buttons)
