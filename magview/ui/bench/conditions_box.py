"""The four things that agree when No. 1 fires, as four boxes."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtWidgets import QLabel

from magview.bench.conditions import Condition
from magview.bench.four_conditions import Judged, Told
from magview.bench.lamp_words import play_words
from magview.bench.state import BenchState
from magview.spec.language import tr
from magview.ui.kit.judged_boxes import Boxed, JudgedBox, JudgedBoxes
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section
from magview.ui.kit.signs import Sign
from magview.ui.kit.style import tint

_SIGNS = {
    Judged.RIGHT: Sign.IN,
    Judged.WRONG: Sign.OUT,
    Judged.UNKNOWN: Sign.UNKNOWN,
    Judged.ELSEWHERE: Sign.NONE,
}


class ConditionsBox(Section):
    """A box for each condition, with its sign and its figure; below them what is to be known of the crank."""

    def __init__(self, look: Look, note: str) -> None:
        """`note`: the instant at which they are judged."""
        super().__init__(tr("Four at one instant"), look)
        self.note.setText(note)
        self.four = JudgedBoxes(look)
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.body.addWidget(self.four)
        self.body.addWidget(self.words)

    def box(self, condition: Condition) -> JudgedBox:
        """The box of a condition."""
        return self.four.boxes[list(Condition).index(condition)]

    def show_four(self, state: BenchState, told: Sequence[Told], words: str = "") -> None:
        """Show them, and one sentence more; play that is not taken up makes every angle of the crank doubtful."""
        self.four.show_values([Boxed(one.name, one.figure, _SIGNS[one.judged], one.words) for one in told])
        play = play_words(state)
        self.words.setText(f"⚠ {play}." if play else words)
        self.words.setVisible(bool(play or words))
        theme = self._look.theme
        tint(self.words, theme.warn if play else theme.text, bold=bool(play))
