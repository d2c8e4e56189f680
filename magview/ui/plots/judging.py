"""The measurement that is looked at, and what is known of it: the panel and its plot share it."""

from __future__ import annotations

from PySide6.QtCore import QObject, Signal

from magview.physics.uncertainty.measurement import Judgement, Measurement, Outcome, judge_linear


class Judging(QObject):
    """A measurement judged by linear propagation at once, and by Monte Carlo when that is asked for."""

    changed = Signal()

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.measurement: Measurement | None = None
        self.outcomes: tuple[Outcome, ...] = ()
        self.judgement: Judgement | None = None
        self.why_not = ""
        """Reason why there is no measurement."""

    def set(self, measurement: Measurement | None, why_not: str = "") -> None:
        """Another measurement, or none and why."""
        self.measurement, self.judgement, self.why_not = measurement, None, why_not
        self.outcomes = judge_linear(measurement) if measurement is not None else ()
        self.changed.emit()

    def drawn(self, judgement: Judgement) -> None:
        """The Monte Carlo's answer."""
        self.judgement, self.outcomes = judgement, judgement.outcomes
        self.changed.emit()
