"""Beside a lesson's pictures: gauges before the act and now, and what eyes and instruments say."""

from __future__ import annotations

from math import isfinite

from PySide6.QtWidgets import QGridLayout, QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from magview.bench.verdict import never_words
from magview.curves.lift import opening_limit_deg
from magview.practice.goals import timing_error_deg
from magview.practice.screen_words import seen
from magview.practice.state import Practice, true_readings
from magview.spec.language import format_angle, format_length, tr
from magview.spec.units import length_digits
from magview.ui.kit.gauge import Gauge, Measured
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.kit.style import tint
from magview.ui.learn.model import LessonModel
from magview.ui.learn.strip_parts import em_of
from magview.ui.practice.sight import Lamp


class LessonReadings(QWidget):
    """Gauges at the left, eyes and instruments at the right; each keeps its room."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        super().__init__()
        self.model, self.look = model, look
        practice = model.practice
        goals = {goal.goal for goal in practice.exercise.goals}
        engine = practice.bench.engaged is not None
        self.gauges: dict[str, Gauge] = {}
        if goals & {"gap", "opening"}:  # where the rotor or the lead is the matter, they would tell of another thing
            self.gauges["gap"] = Gauge(tr("Largest gap, lobe 1"), look)
            self.gauges["opening"] = Gauge(tr("Contacts open, lobe 1"), look)
        if engine and "timing" in goals:
            self.gauges["firing"] = Gauge(tr("Fires"), look)
        row = QHBoxLayout(self)
        row.setContentsMargins(8, 2, 8, 2)
        row.setSpacing(12)
        column = QVBoxLayout()
        column.setSpacing(0)
        for gauge in self.gauges.values():
            column.addWidget(gauge)
        column.addStretch(1)
        if self.gauges:
            row.addLayout(column, 5)
        self.lamp, self.lines = Lamp(look), {name: QLabel() for name in ("lamp", "edge", "disc", "finger", "said")}
        self._build_sight(row, engine)
        self.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Fixed)
        self._size_up()
        model.judged.connect(self.show_now)
        model.moved.connect(self.show_room)
        model.acted.connect(self._acted)
        look.changed.connect(self.show_now)
        self.show_now()

    def _build_sight(self, row: QHBoxLayout, engine: bool) -> None:
        tray = self.model.practice.exercise.tray
        names = {
            "lamp": (tr("Lamp"), tray.lamp), "edge": (tr("Straightedge"), tray.straightedge is not None),
            "disc": (tr("Disc"), engine and tray.disc_step_deg is not None), "finger": (tr("Finger"), engine),
            "said": (tr("Answer"), True),
        }  # fmt: skip
        self._shown = sum(there for _, there in names.values())
        grid = QGridLayout()
        grid.setVerticalSpacing(1)
        grid.setColumnStretch(2, 1)
        for line, (name, (words, there)) in enumerate(names.items()):
            label = self.lines[name]
            label.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
            label.setWordWrap(name in ("edge", "said"))  # from where it is looked at, and a whole answer
            label.setAccessibleName(words)
            if not there:
                continue
            title = QLabel(words)
            grid.addWidget(title, line, 0)
            if name == "said":
                self._answer = title
                title.setMinimumWidth(title.sizeHint().width())
            if name == "lamp":
                grid.addWidget(self.lamp, line, 1)
            grid.addWidget(label, line, 2)
        row.addLayout(grid, 4)

    def _size_up(self) -> None:
        # Without gauges the lines have the whole width, and an answer may wrap: the rest is the picture's.
        high = 8.4 if self.gauges else min(8.4, 1.6 * max(3, self._shown + 1) + 0.6)
        self.setFixedHeight(round(high * em_of(self)))

    def settle(self) -> None:
        """Type of another size."""
        self._size_up()

    def _acted(self, act: object, new: Practice, old: Practice) -> None:
        self.show_room(new)

    def show_now(self) -> None:
        """Show the room as it is."""
        self.show_room(self.model.practice)

    def show_room(self, practice: Practice) -> None:
        """Show a room, and where the values stood when the step began."""
        began = self.model.run.began
        if "gap" in self.gauges:
            self._show_setting(practice, began)
        if "firing" in self.gauges:
            self._show_firing(practice, began)
        now = seen(practice)
        self.lamp.show_words(now.lamp)
        edge = f"{now.straightedge}; {now.eye}" if now.eye else now.straightedge
        # An answer belongs to its step; a part that is clicked on is named in the strip.
        said = practice.said
        answer = now.said if said is not None and said is not began.said and said.instrument != "hand" else ""
        words = {"lamp": now.lamp, "edge": edge, "disc": now.disc, "finger": now.finger, "said": answer}
        for name, label in self.lines.items():
            label.setText(words[name])
            label.setToolTip(words[name])
            tint(label, self.look.theme.text, bold=name == "said")
        self._answer.setText(tr("Answer") if answer else "")

    def _show_setting(self, practice: Practice, began: Practice) -> None:
        now, was, magneto = true_readings(practice.bench), true_readings(began.bench), practice.bench.magneto
        gap, before, limits = float(now.max_gap_mm[0]), float(was.max_gap_mm[0]), magneto.gap_limits_mm
        digits = length_digits(gap, *limits, self.look.inches)
        ends = (format_length(limits[0], digits=digits), format_length(limits[1], digits=digits))
        sign = Sign.IN if now.gap_ok[0] else Sign.OUT
        moved = before if abs(gap - before) > 1e-4 else None
        self.gauges["gap"].show_value(
            Measured(gap, *limits, format_length(gap, digits=digits), ends, sign, before=moved)
        )
        error, early = float(now.e_gap_error_deg[0]), float(was.e_gap_error_deg[0])
        allowed = opening_limit_deg(magneto)
        words = never_words(now) or _late(error)
        moved = early if abs(error - early) > 1e-3 else None
        sign = Sign.IN if now.timing_ok[0] else Sign.OUT
        self.gauges["opening"].show_value(
            Measured(
                error, -allowed, allowed, words, (format_angle(-allowed, True), format_angle(allowed, True)), sign,
                before=moved,
            )
        )  # fmt: skip

    def _show_firing(self, practice: Practice, began: Practice) -> None:
        engaged = practice.bench.engaged
        assert engaged is not None
        error, before = timing_error_deg(practice), timing_error_deg(began)
        allowed = engaged.installation.engine.timing_tolerance_deg
        size = abs(error)
        words = (
            tr("off the engine") if not isfinite(error)
            else tr("as wanted") if size < 0.05
            else tr("{size:.1f}° of crank early", size=size) if error > 0
            else tr("{size:.1f}° of crank late", size=size)
        )  # fmt: skip
        sign = Sign.IN if size <= allowed else Sign.OUT
        self.gauges["firing"].show_value(
            Measured(
                error if isfinite(error) else None, -allowed, allowed, words,
                (format_angle(-allowed, True), format_angle(allowed, True)), sign,
                before=before if isfinite(before) and abs(before - error) > 0.01 else None,
            )
        )  # fmt: skip


def _late(error_deg: float) -> str:
    size = abs(error_deg)
    if size < 0.05:
        return tr("at the E-gap")
    return (
        tr("{size:.1f}° of rotor late", size=size) if error_deg > 0 else tr("{size:.1f}° of rotor early", size=size)
    )
