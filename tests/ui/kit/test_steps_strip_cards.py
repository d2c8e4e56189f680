"""Numbered steps, the strip that cannot be closed, the foot line, and the row of cards."""

from __future__ import annotations

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAccessible, QColor
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QLabel
from pytestqt.qtbot import QtBot

from magview.ui.kit.cards import Card, Cards
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.kit.steps import Steps
from magview.ui.kit.strip import Foot, Strip
from magview.ui.kit.theme import DARK, LIGHT

ACTS = ("Slacken the lock screw.", "Turn the contact screw 3° clockwise.")


# ---------------------------------------------------------------------- steps


@pytest.fixture
def steps(qtbot: QtBot) -> Steps:
    shown = Steps(Look(LIGHT), "Show me")
    qtbot.addWidget(shown)
    shown.resize(360, 200)
    shown.show_steps(ACTS)
    shown.show()
    return shown


def spoken(steps: Steps) -> list[str]:
    """What a screen reader says of the labels that are seen, from above."""
    labels = [label for label in steps.findChildren(QLabel) if label.isVisible()]
    labels.sort(key=lambda label: label.y())
    return [QAccessible.queryAccessibleInterface(label).text(QAccessible.Text.Name) for label in labels]


def test_steps_are_numbered_from_above(steps: Steps) -> None:
    assert spoken(steps) == [f"Step 1: {ACTS[0]}", f"Step 2: {ACTS[1]}"]
    discs = steps.grab().toImage()
    seen = [y for y in range(discs.height()) if discs.pixelColor(3 + 6, y) == QColor(LIGHT.hand)]
    assert seen, "the numbers stand in discs of the hand's colour"
    steps.show_steps(ACTS[1:])
    assert spoken(steps) == [f"Step 1: {ACTS[1]}"] and steps.text() == ACTS[1]
    steps.show_steps(ACTS)
    assert spoken(steps) == [f"Step 1: {ACTS[0]}", f"Step 2: {ACTS[1]}"]


def test_one_button_wants_to_be_shown_how(steps: Steps, qtbot: QtBot) -> None:
    assert min(steps.button.height(), steps.button.width()) >= 24
    steps.button.setFocus()
    with qtbot.waitSignal(steps.show_me):
        QTest.keyClick(steps.button, Qt.Key.Key_Space)


def test_without_steps_it_says_why_and_offers_nothing(steps: Steps) -> None:
    steps.show_steps((), "Nothing to turn.")
    assert steps.text() == "Nothing to turn." and spoken(steps) == ["Nothing to turn."]
    assert not steps.button.isVisible()


# ---------------------------------------------------------------------- strip and foot


@pytest.fixture
def strip(qtbot: QtBot) -> Strip:
    shown = Strip(Look(LIGHT))
    qtbot.addWidget(shown)
    return shown


def test_the_strip_comes_and_goes_with_its_cause_and_cannot_be_closed(strip: Strip) -> None:
    assert strip.isHidden()
    strip.show_causes(("The propeller is live: the right lead is off.",))
    strip.resize(500, strip.sizeHint().height())
    strip.show()
    assert strip.words.text() == "⚠ The propeller is live: the right lead is off."
    assert not strip.findChildren(QAbstractButton), "nothing on it takes it away"
    QTest.keyClick(strip, Qt.Key.Key_Escape)
    QTest.mouseClick(strip, Qt.MouseButton.LeftButton, pos=QPoint(4, 4))
    assert strip.isVisible()
    strip.show_causes(())
    assert strip.isHidden()


def test_the_strip_is_red_over_its_whole_width_and_a_note_is_not(strip: Strip) -> None:
    strip.show_causes(("Live.",))
    strip.resize(500, 60)
    strip.show()
    picture = strip.grab().toImage()
    assert {picture.pixelColor(x, 1).name() for x in (0, 250, 499)} == {LIGHT.bad, LIGHT.bad_fill}
    strip.show_causes((), ("Signed under earlier rules.",))
    picture = strip.grab().toImage()
    assert QColor(LIGHT.bad_fill) != picture.pixelColor(250, 1) and strip.notes.isVisible()


def test_the_strip_and_its_words_follow_the_theme(strip: Strip) -> None:
    strip.show_causes(("Live.",))
    strip._look.theme = DARK  # noqa: SLF001
    assert strip.words.palette().color(strip.words.foregroundRole()).name() == DARK.bad


def test_the_foot_says_the_standing_warning_under_a_line(qtbot: QtBot) -> None:
    foot = Foot(Look(LIGHT))
    qtbot.addWidget(foot)
    foot.resize(400, foot.heightForWidth(400))
    foot.show()
    assert "Treat the propeller as live" in foot.text() and foot.wordWrap()
    picture = foot.grab().toImage()
    assert picture.pixelColor(200, 0) == QColor(LIGHT.hair)


# ---------------------------------------------------------------------- cards

DECK = (
    Card("look", "0:00", "lamp, edge, blades", "5 readings", Sign.IN),
    Card("close", "2:22", "lock carried the screw 3° wider", "3 screws", Sign.FOUND_OUT),
    Card("plate", "3:05", "1.8° with, not needed", "5 nudges", Sign.OUT),
)


@pytest.fixture
def cards(qtbot: QtBot) -> Cards:
    shown = Cards("What you did", Look(LIGHT))
    qtbot.addWidget(shown)
    shown.show_cards(DECK)
    shown.resize(900, shown.height())
    shown.show()
    return shown


def test_arrows_go_along_and_return_opens(cards: Cards, qtbot: QtBot) -> None:
    chosen: list[int] = []
    opened: list[int] = []
    cards.card_chosen.connect(chosen.append)
    cards.opened.connect(opened.append)
    with qtbot.waitActive(cards):
        cards.activateWindow()
    cards.setFocus()
    cards.choose_card(0)
    assert chosen == [], "chosen by the program, nobody is told"
    QTest.keyClick(cards, Qt.Key.Key_Right)
    QTest.keyClick(cards, Qt.Key.Key_Right)
    QTest.keyClick(cards, Qt.Key.Key_Return)
    assert chosen == [1, 2] and opened == [2] and cards.chosen_card() == 2
    cards.choose_card(-1)
    assert cards.chosen_card() == -1


def test_a_screen_reader_hears_a_whole_card(cards: Cards) -> None:
    seen = QAccessible.queryAccessibleInterface(cards)
    assert seen is not None and seen.text(QAccessible.Text.Name) == "What you did"
    model = cards.model()
    assert [model.index(n, 0).data(Qt.ItemDataRole.AccessibleTextRole) for n in range(3)] == [
        "look, 0:00, lamp, edge, blades, 5 readings, in",
        "close, 2:22, lock carried the screw 3° wider, 3 screws, out when found",
        "plate, 3:05, 1.8° with, not needed, 5 nudges, out",
    ]


def test_cards_stand_in_one_row_painted_by_their_signs(cards: Cards) -> None:
    boxes = [cards.visualRect(cards.model().index(n, 0)) for n in range(3)]
    assert len({box.y() for box in boxes}) == 1 and boxes[0].right() < boxes[1].x() < boxes[2].x()
    assert min(boxes[0].height(), boxes[0].width()) >= 24
    picture = cards.viewport().grab().toImage()

    def ground(place: int) -> str:
        box = boxes[place]
        return picture.pixelColor(box.center().x(), box.bottom() - 5).name()

    assert [ground(n) for n in range(3)] == [LIGHT.paper, LIGHT.paper, LIGHT.bad_fill]
    cards.choose_card(0)
    picture = cards.viewport().grab().toImage()
    assert ground(0) == LIGHT.hand_fill


def test_cards_grow_with_the_type(cards: Cards) -> None:
    before = cards.height()
    font = cards.font()
    font.setPointSizeF(1.5 * font.pointSizeF())
    cards.setFont(font)
    assert cards.height() > 1.3 * before
