"""Readings against limits, as gauges, and the verdict on all of them."""

from __future__ import annotations

from collections.abc import Iterable

from PySide6.QtCore import QEvent, Qt
from PySide6.QtWidgets import QLabel

from magview.bench.advised import slack_words
from magview.bench.state import BenchState
from magview.bench.verdict import blade_words, faults, judged_words, late_words, mark_words, never_words
from magview.curves.lift import opening_limit_deg
from magview.physics.cam.setting import Readings
from magview.spec.language import format_angle, format_length, tr
from magview.spec.units import length_digits
from magview.ui.kit.gauge import Gauge, Measured
from magview.ui.kit.look import Look
from magview.ui.kit.section import Section
from magview.ui.kit.signs import Sign
from magview.ui.kit.style import tint


class ReadingsBox(Section):
    """Lobe 1 against its limits."""

    def __init__(self, look: Look) -> None:
        super().__init__(tr("Readings against limits"), look)
        self.note.setText(tr("of the setting, lobe 1"))
        column = self.body
        self.gauges = {
            "error": Gauge(tr("Opening"), look),
            "gap": Gauge(tr("Largest gap"), look),
            "mark": Gauge(tr("Off mark at opening"), look),
        }
        for gauge in self.gauges.values():
            column.addWidget(gauge)
        self.angles = QLabel()
        self.angles.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        self.angles.setWordWrap(True)
        column.addWidget(self.angles)
        self.overall = QLabel()
        self.overall.setWordWrap(True)
        self.overall.setAlignment(Qt.AlignmentFlag.AlignTop)
        column.addWidget(self.overall)
        self.fit_rows()

    def show_readings(self, state: BenchState, result: Readings) -> None:
        """Show the readings of a state."""
        marks, limits, inches = state.magneto.marks, state.magneto.gap_limits_mm, self._look.inches
        error, gap, off = (float(v) for v in (result.e_gap_error_deg[0], result.max_gap_mm[0], result.mark_offset_mm))
        never = never_words(result)
        timed = Sign.IN if result.timing_ok[0] else Sign.OUT
        allowed = opening_limit_deg(state.magneto)
        ends = format_angle(-allowed, True), format_angle(allowed, True)
        self.gauges["error"].show_value(Measured(error, -allowed, allowed, late_words(result), ends, timed))

        digits = length_digits(gap, *limits, inches)
        blade = float(result.blade_gap_mm[0])
        words = format_length(gap, digits=digits)
        if blade < gap:
            words = tr("{gap} (blade {blade:length})", gap=words, blade=blade)
        ends = _ends(format_length(v, digits=digits) for v in limits)
        sign = Sign.IN if result.gap_ok[0] else Sign.OUT
        self.gauges["gap"].show_value(Measured(gap, *limits, words, ends, sign))

        allowed, digits = marks.tolerance_mm, length_digits(abs(off), None, marks.tolerance_mm, inches)
        words = mark_words(format_length(abs(off), digits=digits), off)
        ends = _ends(f"{sign}{format_length(allowed, digits=digits)}" for sign in "-+")
        marked_by = Sign.NONE if never else timed  # there is nothing to hold the straightedge against
        self.gauges["mark"].show_value(Measured(off, -allowed, allowed, words, ends, marked_by))

        dwell = result.dwell_deg[0]
        words = tr(
            "Contacts open at {opens:deg} of rotor, closed for {dwell:deg}", opens=result.opens_deg[0], dwell=dwell
        )
        self.angles.setText(tr("Contacts open {never}", never=never) if never else words)
        self._show_overall(state, result)

    def _show_overall(self, state: BenchState, result: Readings) -> None:
        found, judged = faults(state.magneto, result), judged_words(state.magneto)
        slack = slack_words(state)
        if found:
            text, colour = tr("✗ Out of limits: {faults}", faults="; ".join(found)), self._look.theme.bad
        elif slack:
            text, colour = f"✓ {slack}", self._look.theme.good
        else:
            text, colour = tr("✓ Within limits"), self._look.theme.good
        if short := blade_words(state.magneto, result):
            text, colour = f"{text}. {short}" if found else short, self._look.theme.bad
        text += f" ({judged})" if judged else ""
        self.overall.setText(text)
        tint(self.overall, colour, bold=True)

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and hasattr(self, "overall"):
            self.fit_rows()

    def fit_rows(self) -> None:
        """Nothing below the verdict jumps while a part is dragged."""
        self.overall.setMinimumHeight(3 * self.fontMetrics().height() + 2)


def _ends(limits: Iterable[str]) -> tuple[str, str]:
    """Two limits without their unit, which stands once, behind the value."""
    low, high = (words.split()[0] for words in limits)
    return low, high
