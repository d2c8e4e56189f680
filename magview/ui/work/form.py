"""A part of the job sheet as entries, each with its unit in its label and its verdict beside it."""

from __future__ import annotations

from functools import partial
from typing import Any

from PySide6.QtCore import Qt
from PySide6.QtGui import QShowEvent
from PySide6.QtWidgets import QGridLayout, QLabel, QPushButton, QSizePolicy, QWidget

from magview.bench.sureness import percent_words, value_words
from magview.forms.entry import NUMERIC, Entry, Kind, Value
from magview.forms.typed import outside, read, rounded, unit_words
from magview.job import status
from magview.job.entries import beside, entries_in
from magview.job.offered import KIND
from magview.job.parts import Sure, Uncertainty
from magview.job.readings import Judged, ReadingRow, rows
from magview.job.sheet import STAGES, Job
from magview.spec.base import SpecError
from magview.spec.fields import about
from magview.spec.language import tr
from magview.ui.kit.forms import CheckEdit, DayEdit, Edit, LineEdit, TextEdit, edit_of
from magview.ui.kit.look import Look
from magview.ui.kit.rows_edit import RowsEdit, RowWords
from magview.ui.kit.style import tint
from magview.ui.work.model import JobModel, part_of, plain
from magview.ui.work.offered import Offer

_LABEL = 38
"""Width of a label before it takes a second line [average letters]."""

_WIDE = 52
"""Width of an entry of text [average letters]; numbers take a third of it."""


def verdict_of(row: ReadingRow | None) -> str:
    """A verdict with its limits, the mark first; nothing where there is none."""
    if row is None or not row.verdict:
        return ""
    other = {Judged.FOUND_OUT_OF_LIMITS: "△", Judged.NO_LIMIT: "–"}
    mark = "✓" if row.verdict.good else other.get(row.verdict, "✗")
    if not row.limits_shown:
        return f"{mark} {tr(row.verdict)}"
    return tr("{mark} {verdict} ({limits})", mark=mark, verdict=tr(row.verdict), limits=row.limits_shown)


def sure_words(field: str, sure: Sure) -> str:
    """Say how sure a quantity is, in a sentence."""
    unit = about(Uncertainty, field).quantity.unit
    value, spread, low, high = (
        value_words(v, unit) for v in (sure.value, sure.expanded_uncertainty, sure.low, sure.high)
    )
    return tr(
        "{value} ± {spread} (k = {k:.2f}, {probability}); {odds} likely within {low} to {high}; "
        "what matters most: {most}",
        value=value, spread=spread, k=sure.coverage_factor,
        probability=percent_words(sure.coverage_probability),
        odds=percent_words(sure.probability_in_limits), low=low, high=high, most=sure.matters_most or "–",
    )  # fmt: skip


class Form(QWidget):
    """The entries of one part. It shows the sheet while it is seen, and catches up when it is seen again."""

    def __init__(self, model: JobModel, part: str, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.model, self.part, self.look, self._inches = model, part, look, look.inches
        self._stale = True
        self.entries = {e.name: e for e in entries_in(part, type(part_of(model.job, part)))}
        self.edits: dict[str, Edit | RowsEdit] = {}
        self.labels: dict[str, QLabel] = {}
        self.verdicts: dict[str, QLabel] = {}
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(0, 0, 0, 0)
        self._grid.setVerticalSpacing(5)
        self._grid.setHorizontalSpacing(10)
        self._grid.setColumnStretch(2, 1)
        self._told: list[QLabel] = []
        """Labels of what follows from readings, or was noted of their uncertainty."""
        self.strike = QPushButton(tr("Strike out the uncertainty"), self)
        self.strike.setAutoDefault(False)
        self.strike.clicked.connect(self._strike_out)
        for entry in self.entries.values():
            if entry.kind is not Kind.TOLD:
                self._add(entry)
        self._after = self._grid.rowCount()
        model.changed.connect(self._changed)
        look.changed.connect(self._look_changed)

    # -------------------------------------------------------------- building

    def _add(self, entry: Entry) -> None:
        edit = self.edits[entry.name] = self._edit(entry)
        row = self._grid.rowCount()
        verdict = self.verdicts[entry.name] = _wrapped()
        verdict.setAccessibleName(tr("Verdict: {field}", field=entry.label))
        if isinstance(edit, CheckEdit):
            self._grid.addWidget(edit, row, 0, 1, 2)
            self._grid.addWidget(verdict, row, 2)
            return
        label = self.labels[entry.name] = QLabel()
        label.setBuddy(edit)
        if isinstance(edit, RowsEdit | TextEdit):
            label.setAlignment(Qt.AlignmentFlag.AlignTop)
            self._grid.addWidget(label, row, 0)
            self._grid.addWidget(edit, row, 1, 1, 2)
            self._grid.addWidget(verdict, row + 1, 1, 1, 2)
        elif entry.kind is Kind.LINE:
            self._grid.addWidget(label, row, 0)
            self._grid.addWidget(edit, row, 1, 1, 2, Qt.AlignmentFlag.AlignLeft)
            self._grid.addWidget(verdict, row + 1, 1, 1, 2)
        else:
            self._grid.addWidget(label, row, 0)
            self._grid.addWidget(edit, row, 1, Qt.AlignmentFlag.AlignLeft)
            self._grid.addWidget(verdict, row, 2)
        self._label(entry)

    def _label(self, entry: Entry) -> None:
        unit = unit_words(entry, self._inches) if entry.kind in NUMERIC else ""
        text = tr("{field} [{unit}]", field=entry.label, unit=unit) if unit else entry.label
        if entry.name in self.labels:
            label, metrics = self.labels[entry.name], self.fontMetrics()
            label.setText(text)
            # On one line where that is short, else on two: entry and verdict need the room at large type.
            label.setWordWrap(True)
            most = _LABEL * metrics.averageCharWidth()
            label.setMinimumWidth(min(metrics.horizontalAdvance(text) + 2, most))
            self.edits[entry.name].setAccessibleName(text)

    def _edit(self, entry: Entry) -> Edit | RowsEdit:
        if entry.kind is Kind.ROWS:
            rows_edit = self._rows_edit(entry)
            rows_edit.entered.connect(partial(self._entered, entry))
            return rows_edit
        edit = edit_of(entry, partial(self._parse, entry), partial(self._words, entry))
        line = edit.line if isinstance(edit, DayEdit) else edit
        if isinstance(edit, TextEdit):
            edit.setFixedHeight(4 * self.fontMetrics().height())
        if entry.kind in NUMERIC:
            width = _WIDE // 3 * self.fontMetrics().averageCharWidth()
            edit.setFixedWidth(width)
        if isinstance(line, LineEdit):
            if entry.kind in NUMERIC:
                line.setPlaceholderText(tr("not read") if self.part != "limits" else tr("none given"))
            elif line is edit:
                line.letters = _WIDE
            if entry.name in KIND:
                Offer(line, entry.name, lambda: self.model.job)
            line.typing.connect(partial(self._typing, entry))
            line.wrong.connect(partial(self._wrong, entry))
        line.entered.connect(partial(self._entered, entry))
        return edit

    def _rows_edit(self, entry: Entry) -> RowsEdit:
        trials = entry.name == "trials"
        words = RowWords(
            tr("Trial") if trials else tr("Lobe"),
            tr("Add a trial") if trials else tr("Add a lobe"),
            tr("Strike out the chosen trial") if trials else tr("Strike out the chosen lobe"),
        )
        edit = RowsEdit(entry, self.look, words, None if trials else partial(self._row_verdict, entry))
        edit.waits.connect(partial(self._rows_wait, entry))
        return edit

    def _row_verdict(self, entry: Entry, row: int) -> str:
        """The worst verdict of a row's readings."""
        found = self.model.rows()
        assert entry.row is not None
        places = [(self.part, f"{entry.name}[{row}].{name}") for name in entry.row.model_fields]
        told = [reading for place in places if (reading := found.get(place)) is not None and reading.verdict]
        worst = next((reading for reading in told if not reading.verdict.good), None)
        return verdict_of(worst or (told[0] if told else None)).partition(" (")[0]

    def _rows_wait(self, entry: Entry, sentence: str) -> None:
        if sentence:
            self.model.hold(self.part, entry.name, entry.label)
        else:
            self.model.let_go(self.part, entry.name)

    def _parse(self, entry: Entry, text: str) -> Value | None:
        return read(entry, text, self._inches) if entry.kind in NUMERIC else text

    def _words(self, entry: Entry, value: Any) -> str:
        return rounded(entry, value, self._inches) if entry.kind in NUMERIC else value

    # -------------------------------------------------------------- entering

    def _entered(self, entry: Entry, value: Any) -> None:
        sentence = outside(entry, value, self._inches) or self.model.set_value(
            self.part, entry.name, value, entry.label
        )
        edit = self.edits[entry.name]
        if isinstance(edit, RowsEdit):
            edit.say(sentence)
            if not sentence:
                edit.taken(getattr(part_of(self.model.job, self.part), entry.name))
            return
        if sentence:
            self._wrong(entry, sentence)
            return
        self.model.let_go(self.part, entry.name)
        line = edit.line if isinstance(edit, DayEdit) else edit
        line.taken()
        line.show_value(getattr(part_of(self.model.job, self.part), entry.name))
        self._judge(entry)

    def _typing(self, entry: Entry, value: Any) -> None:
        """The verdict while it is typed: on a sheet that would have it, and is not kept."""
        edit = self.edits[entry.name]
        line = edit.line if isinstance(edit, DayEdit) else edit
        if isinstance(line, LineEdit) and not line.isModified():  # put back as it was
            self.model.let_go(self.part, entry.name)
        sentence = outside(entry, value, self._inches)
        try:
            job = self.model.with_value(self.part, entry.name, value)
        except SpecError as error:
            job, sentence = self.model.job, sentence or plain(error)
        if sentence:
            self._say(entry, f"✗ {sentence}", self.look.theme.bad)
            return
        found = {(row.stage, row.field): row for row in rows(job)}
        self._show_verdict(entry, found.get((self.part, entry.name)), value)

    def _wrong(self, entry: Entry, sentence: str) -> None:
        self._say(entry, f"✗ {sentence}", self.look.theme.bad)
        self.model.hold(self.part, entry.name, entry.label)
        self.model.refused.emit(tr("{field}: {sentence}", field=entry.label, sentence=sentence))

    def finish(self) -> None:
        """Take what is still being typed."""
        focus = self.focusWidget()
        if isinstance(focus, TextEdit):
            focus.finish()
        elif isinstance(focus, LineEdit):
            focus.editingFinished.emit()

    # -------------------------------------------------------------- showing

    def _changed(self, job: Job, old: Job) -> None:
        if self.isVisible():
            self.show_job()
        else:
            self._stale = True

    def showEvent(self, event: QShowEvent) -> None:
        """Catch up."""
        if self._stale:
            self.show_job()
        super().showEvent(event)

    def show_job(self) -> None:
        """Show the sheet as it is."""
        self._stale = False
        part = part_of(self.model.job, self.part)
        for field, edit in self.edits.items():
            line = edit.line if isinstance(edit, DayEdit) else edit
            writable = self.model.writable
            if isinstance(line, RowsEdit):
                line.set_writable(writable)
            line.show_value(getattr(part, field))
            if isinstance(line, TextEdit | LineEdit):
                line.setReadOnly(not writable)
            elif not isinstance(line, RowsEdit):
                edit.setEnabled(writable)
            if isinstance(edit, DayEdit):
                edit.today.setEnabled(writable)
            if not (isinstance(line, LineEdit) and line.isModified()):
                self._judge(self.entries[field])
                if isinstance(line, LineEdit):
                    self.model.let_go(self.part, field)
        self._show_told()

    def _judge(self, entry: Entry) -> None:
        value = getattr(part_of(self.model.job, self.part), entry.name)
        self._show_verdict(entry, self.model.rows().get((self.part, entry.name)), value)

    def _show_verdict(self, entry: Entry, row: ReadingRow | None, value: Any) -> None:
        words = beside(entry, value)
        if row is not None and row.judged_value is not None:
            words = row.shown
        verdict = verdict_of(row)
        by = tr("by {instrument}", instrument=row.read_by) if row is not None and row.read_by else ""
        text = " · ".join(t for t in (words, verdict, by) if t)
        bad = row is not None and row.verdict.bad
        good = row is not None and row.verdict.good
        self._say(entry, text, self.look.theme.bad if bad else self.look.theme.good if good else self.look.theme.text)

    def _say(self, entry: Entry, text: str, colour: str) -> None:
        label = self.verdicts[entry.name]
        if label.text() != text:
            label.setText(text)
        label.setVisible(bool(text) or entry.kind not in (Kind.ROWS, Kind.TEXT, Kind.LINE))
        tint(label, colour)

    def _show_told(self) -> None:
        """Rows that nobody enters: what follows from the readings, and how sure they are."""
        own = {e.name for e in self.entries.values() if e.kind is not Kind.TOLD}
        rows_told: list[tuple[str, str, ReadingRow | None]] = [
            (tr(row.label), row.shown, row) for row in self.model.rows().values()
            if row.stage == self.part and row.field not in own and "." not in row.field
        ]  # fmt: skip
        doubts = status.doubts(self.model.job, self.part) if self.part in STAGES else ()
        rows_told += [(tr("To be cleared up"), f"✗ {sentence}", None) for sentence in doubts]
        follows = status.follows(self.model.job, self.part) if self.part in STAGES else ()
        rows_told += [(tr("What follows"), sentence, None) for sentence in follows]
        sure = self._sure_rows()
        for label in self._told:
            self._grid.removeWidget(label)
            label.hide()
            label.deleteLater()
        self._told = []
        self._grid.removeWidget(self.strike)
        for at, (title, words, found) in enumerate((*rows_told, *sure), self._after):
            self._put(_wrapped(title), at, 0)
            verdict = verdict_of(found)
            self._put(_wrapped(" · ".join(t for t in (words, verdict) if t)), at, 1, 2)
            if words.startswith("✗"):
                tint(self._told[-1], self.look.theme.bad, bold=True)
            elif found is not None and verdict:
                theme, judged = self.look.theme, found.verdict
                plain = theme.text if judged is Judged.NO_LIMIT else theme.bad
                tint(self._told[-1], theme.good if judged.good else plain)
        self.strike.setVisible(bool(sure))
        if sure:
            self.strike.setEnabled(self.model.writable)
            at = self._after + len(rows_told) + len(sure)
            self._grid.addWidget(self.strike, at, 1, 1, 2, Qt.AlignmentFlag.AlignLeft)

    def _put(self, label: QLabel, row: int, column: int, wide: int = 1) -> None:
        self._grid.addWidget(label, row, column, 1, wide)
        self._told.append(label)

    def _sure_rows(self) -> list[tuple[str, str, None]]:
        """Say how sure each quantity is, in a sentence."""
        found = getattr(part_of(self.model.job, self.part), "uncertainty", None)
        if not isinstance(found, Uncertainty):
            return []
        told: list[tuple[str, str, None]] = []
        for field, info in type(found).model_fields.items():
            sure: Sure | None = getattr(found, field)
            if sure is not None:
                title = tr("How sure: {quantity}", quantity=tr(info.title or field))
                told.append((title, sure_words(field, sure), None))
        return told

    def _strike_out(self) -> None:
        sentence = self.model.set_value(self.part, "uncertainty", Uncertainty(), tr("Uncertainty"))
        if sentence:
            self.model.refused.emit(sentence)

    # -------------------------------------------------------------- looks

    def _look_changed(self) -> None:
        """Read what is being typed in the unit it was begun in."""
        if self.look.inches != self._inches:
            self.finish()
            self._inches = self.look.inches
            self._show_unit()
        self.show_job()

    def _show_unit(self) -> None:
        for entry in self.entries.values():
            self._label(entry)
            edit = self.edits.get(entry.name)
            if isinstance(edit, LineEdit) and not edit.isModified():
                edit.show_value(getattr(part_of(self.model.job, self.part), entry.name))


def _wrapped(text: str = "") -> QLabel:
    label = QLabel(text)
    label.setWordWrap(True)
    label.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Preferred)
    return label
