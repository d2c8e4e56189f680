"""Acts of an attempt as cards: folded by act, opened by Enter; the replay starts from any of them."""

from __future__ import annotations

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import QWidget

from magview.practice.debrief import Debrief
from magview.practice.evidence import EvidenceStep
from magview.practice.folded import Folded, Outcome
from magview.practice.report import clock_words
from magview.practice.words import act_words
from magview.spec.language import tr, tr_n
from magview.ui.kit.cards import Card, Cards
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign

_SIGNS = {
    Outcome.BETTER: Sign.IN,
    Outcome.WORSE: Sign.OUT,
    Outcome.MOVED: Sign.FOUND_OUT,
    Outcome.SAME: Sign.NONE,
}


class ActCards(Cards):
    """A card for each fold; an open one is followed by a card for each of its acts."""

    moment_chosen = Signal(int)
    """By hand: the state after an act, by its place in the replay."""
    play_wanted = Signal(int)

    def __init__(self, told: Debrief, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(tr("What you did"), look, parent)
        self.told = told
        self._open: set[int] = set()
        self._rows: list[tuple[int, EvidenceStep | None]] = []
        self.setToolTip(tr("Choose a card to see that moment; Enter opens it, Space plays on from there"))
        self._deal()
        self.card_chosen.connect(self._chosen)
        self.opened.connect(self._opened)

    @property
    def summary(self) -> str:
        """Counts of acts and of cards, in words."""
        acts = sum(len(card.steps) for card in self.told.cards)
        return tr_n(
            "{count} act in {cards}; Enter opens a card, Space plays from it",
            "{count} acts in {cards}; Enter opens a card, Space plays from it",
            count=acts,
            cards=len(self.told.cards),
        )

    def show_moment(self, index: int) -> None:
        """Choose the card that holds a moment of the replay; nobody is told."""
        chosen = self.chosen_card()
        if chosen >= 0 and self._steps(chosen)[0].index <= index <= self._steps(chosen)[-1].index:
            return
        place = -1
        for row in range(len(self._rows)):
            steps = self._steps(row)
            if steps[0].index <= index <= steps[-1].index:
                place = row
        self.choose_card(place)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Space plays on from the card chosen."""
        if event.key() == Qt.Key.Key_Space and self.chosen_card() >= 0:
            self.play_wanted.emit(self._first(self.chosen_card()))
            return
        super().keyPressEvent(event)

    def _deal(self) -> None:
        self._rows = []
        for n, card in enumerate(self.told.cards):
            self._rows.append((n, None))
            if n in self._open:
                self._rows += [(n, step) for step in card.steps]
        self.show_cards([
            _folded(self.told.cards[n], n in self._open) if step is None else self._single(step)
            for n, step in self._rows
        ])  # fmt: skip

    def _single(self, step: EvidenceStep) -> Card:
        line = next((line for line in self.told.timeline if line.index == step.index), None)
        danger = line.danger if line is not None else ""
        words = act_words(step.act, step.before, step.after)
        sign = Sign.OUT if danger else Sign.NONE
        return Card(tr("Act {number}", number=step.index), clock_words(step.at_s), words, danger, sign)

    def _chosen(self, place: int) -> None:
        if 0 <= place < len(self._rows):
            self.moment_chosen.emit(self._steps(place)[-1].index)

    def _steps(self, place: int) -> tuple[EvidenceStep, ...]:
        n, step = self._rows[place]
        return self.told.cards[n].steps if step is None else (step,)

    def _first(self, place: int) -> int:
        return self._steps(place)[0].index

    def _opened(self, place: int) -> None:
        n, step = self._rows[place]
        if step is not None or len(self.told.cards[n].steps) == 1:
            self.play_wanted.emit(self._first(place))
            return
        self._open ^= {n}
        self._deal()
        self.choose_card(place)


def _folded(card: Folded, is_open: bool) -> Card:
    sign = Sign.OUT if card.danger else _SIGNS[card.outcome]
    foot = tr("open: {acts}", acts=card.count_words) if is_open else card.count_words
    words = card.danger or card.words
    return Card(card.title, clock_words(card.steps[0].at_s), words, foot, sign, card.number)
