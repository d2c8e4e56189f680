"""The four things that agree when No. 1 fires, each with its verdict."""

from __future__ import annotations

from PySide6.QtWidgets import QGridLayout, QGroupBox, QLabel

from magview.bench.conditions import CONDITION_WORDS, Condition, conditions_at_opening, verdict_words
from magview.bench.lamp_words import NOT_READ
from magview.bench.state import BenchState, Engaged, mounting_of
from magview.spec.language import tr
from magview.ui.kit.style import tint
from magview.ui.kit.theme import Theme


class ConditionsBox(QGroupBox):
    """A row for each condition, of the magneto in view, at the instant at which its contacts open for No. 1."""

    def __init__(self) -> None:
        super().__init__(tr("Four at one instant: when the contacts open for No. 1"))
        grid = QGridLayout(self)
        grid.setColumnStretch(1, 1)
        self.names: dict[Condition, QLabel] = {}
        self.verdicts: dict[Condition, QLabel] = {}
        for row, condition in enumerate(Condition):
            name, verdict = QLabel(tr(CONDITION_WORDS[condition])), QLabel()
            verdict.setAccessibleName(tr(CONDITION_WORDS[condition]))
            verdict.setWordWrap(True)
            grid.addWidget(name, row, 0)
            grid.addWidget(verdict, row, 1)
            self.names[condition], self.verdicts[condition] = name, verdict
        self.look = QLabel()
        self.look.setWordWrap(True)
        grid.addWidget(self.look, len(Condition), 0, 1, 2)

    def show_conditions(self, state: BenchState, engaged: Engaged, theme: Theme) -> None:
        """Show the verdicts for a state."""
        read = mounting_of(engaged, engaged.side).lamp_read
        by = tr("By the readings entered.") if read else tr(NOT_READ)
        self.look.setText(f"{by} {tr('At the engine look at each of the four yourself.')}")
        found = conditions_at_opening(state, engaged.side)
        for place, (_, label) in enumerate(self.verdicts.items()):
            if found is None:
                label.setText(tr("✗ the contacts never open and close"))
                tint(label, theme.bad)
                continue
            mark, colour = ("✓", theme.good) if found[place].met else ("✗", theme.bad)
            label.setText(f"{mark} {verdict_words(found[place])}")
            tint(label, colour, bold=not found[place].met)
