"""Instruments of one's own: a list to edit, with a tick for those that a stage was read with."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QAbstractItemView,
    QDialog,
    QHBoxLayout,
    QHeaderView,
    QLabel,
    QPushButton,
    QTableWidget,
    QTableWidgetItem,
    QVBoxLayout,
    QWidget,
)

from magview.job.instruments import (
    InstrumentList,
    OwnInstrument,
    instrument_list,
    read_instruments,
    write_instruments,
)
from magview.spec.base import SpecError
from magview.spec.fields import about
from magview.spec.language import marked, tr
from magview.spec.parse import parse_day
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.settings import keep, kept_texts
from magview.ui.kit.style import tint

_LAST = "instruments-used"
"""Name of the setting that keeps which were used last."""

_HEADS = (marked("Name"), marked("Calibration no."), marked("Due"), marked("For"), marked("Today"))
_NAME, _NUMBER, _DUE, _USE, _TODAY = range(5)


class Shelf:
    """The list, in its file; without one it is kept as long as the program runs."""

    def __init__(self, path: Path | None) -> None:
        self._path = path
        self._kept: InstrumentList | None = None

    def read(self) -> InstrumentList:
        """The list as it is kept. Raises SpecError for a file that cannot be read."""
        if self._path is not None:
            return read_instruments(self._path)
        return self._kept or instrument_list(())

    def keep(self, found: InstrumentList) -> None:
        """Keep the list. Raises SpecError where it cannot be written."""
        if self._path is not None:
            write_instruments(self._path, found)
        self._kept = found


class InstrumentsDialog(QDialog):
    """Rows to type into. For a stage, those ticked are what it was read with."""

    chosen = Signal(object)
    """The instruments ticked; told after the list is kept."""

    def __init__(
        self, shelf: Shelf, look: Look, stage: str = "", ticked: Sequence[str] = (), parent: QWidget | None = None
    ) -> None:
        """`stage`: title of the stage that they are chosen for; without one the list is only edited."""
        super().__init__(parent)
        self._shelf, self.look, self._choosing = shelf, look, bool(stage)
        self.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        self.setWindowTitle(tr("Read with: {stage}", stage=stage) if stage else tr("Instruments of your own"))
        told = QLabel(
            tr("Tick what this stage was read with. The list is kept for the next sheet.")
            if stage
            else tr("Name, calibration number and due date of each instrument. Sheets choose from this list.")
        )
        told.setWordWrap(True)
        self.table = QTableWidget(0, len(_HEADS))
        self.table.setAccessibleName(tr("Instruments of your own"))
        self.table.setHorizontalHeaderLabels([tr(head) for head in _HEADS])
        self.table.setTabKeyNavigation(False)
        self.table.setSelectionMode(QAbstractItemView.SelectionMode.SingleSelection)
        header = self.table.horizontalHeader()
        header.setSectionResizeMode(QHeaderView.ResizeMode.Stretch)
        self.add, self.drop = QPushButton(tr("&Add an instrument")), QPushButton(tr("&Strike out the chosen one"))
        self.take = QPushButton(tr("&Use the ticked ones") if stage else tr("&Keep the list"))
        cancel = QPushButton(tr("&Cancel"))
        self.said = QLabel()
        self.said.setWordWrap(True)
        self.said.setAccessibleName(tr("What is wrong"))
        row = QHBoxLayout()
        for button, slot in (
            (self.add, self._add_row), (self.drop, self._drop_row), (self.take, self._take), (cancel, self.reject)
        ):  # fmt: skip
            button.setAutoDefault(False)
            button.clicked.connect(slot)
            row.addWidget(button)
        column = QVBoxLayout(self)
        for widget in (told, self.table, self.said):
            column.addWidget(widget)
        column.addLayout(row)
        letters = self.fontMetrics()
        self.resize(110 * letters.averageCharWidth(), 24 * letters.height())
        self._fill(ticked)
        self.table.itemChanged.connect(self._typed)

    def _fill(self, ticked: Sequence[str]) -> None:
        try:
            kept = self._shelf.read().instruments
        except SpecError as error:
            kept = ()
            self._say([str(error)])
            self.take.setEnabled(False)  # a list that cannot be read is not written over
        for instrument in kept:
            self._put(instrument, instrument.name in ticked)
        if not kept:
            self._put(None, self._choosing)

    def _put(self, instrument: OwnInstrument | None, ticked: bool) -> None:
        at = self.table.rowCount()
        blocked = self.table.blockSignals(True)
        self.table.insertRow(at)
        texts = (instrument.name, "", instrument.number, instrument.due) if instrument else ("", "", "", "")
        for column, text in zip((_NAME, _USE, _NUMBER, _DUE), texts, strict=True):
            self.table.setItem(at, column, QTableWidgetItem(text))
        if self._choosing:
            item = self._cell(at, _NAME)
            item.setFlags(item.flags() | Qt.ItemFlag.ItemIsUserCheckable)
            item.setCheckState(Qt.CheckState.Checked if ticked else Qt.CheckState.Unchecked)
        state = QTableWidgetItem()
        state.setFlags(Qt.ItemFlag.ItemIsEnabled)
        self.table.setItem(at, _TODAY, state)
        use = QuietCombo()
        use.setAccessibleName(tr("For"))
        for value, words in about(OwnInstrument, "use").choices:
            use.addItem(tr(words), value)
        use.setCurrentIndex(max(0, use.findData(instrument.use if instrument else "blades")))
        self.table.setCellWidget(at, _USE, use)
        self.table.blockSignals(blocked)
        self._judge(at)

    def _cell(self, row: int, column: int) -> QTableWidgetItem:
        item = self.table.item(row, column)
        assert item is not None
        return item

    def _judge(self, row: int) -> None:
        """Say whether the calibration is in date today."""
        text = self._cell(row, _DUE).text().strip()
        try:
            due = parse_day(text)
        except SpecError:
            due = ""
        late = bool(due) and due < datetime.date.today().isoformat()
        item = self._cell(row, _TODAY)
        blocked = self.table.blockSignals(True)
        item.setText(tr("⚠ overdue") if late else tr("✓ in date") if due else tr("– no date"))
        self.table.blockSignals(blocked)

    def _typed(self, item: QTableWidgetItem) -> None:
        self._judge(item.row())
        self._say([])

    def _add_row(self) -> None:
        self._put(None, self._choosing)
        self.table.setCurrentCell(self.table.rowCount() - 1, _NAME)
        self.table.setFocus()

    def _drop_row(self) -> None:
        if self.table.currentRow() >= 0:
            self.table.removeRow(self.table.currentRow())

    def _say(self, sentences: Sequence[str]) -> None:
        self.said.setText("\n".join(f"✗ {sentence}." for sentence in sentences))
        tint(self.said, self.look.theme.bad)

    # -------------------------------------------------------------- taking

    def _take(self) -> None:
        """Keep the list and tell what is ticked, or say all that is wrong."""
        rows, ticked, wrong = [], [], []
        for row in range(self.table.rowCount()):
            name, number, day = (self._cell(row, c).text().strip() for c in (_NAME, _NUMBER, _DUE))
            if not (name or number or day):
                continue
            combo = self.table.cellWidget(row, _USE)
            assert isinstance(combo, QuietCombo)
            try:
                due = parse_day(day)
            except SpecError as error:
                wrong.append(tr("row {row}: {sentence}", row=row + 1, sentence=error))
                continue
            if not name:
                wrong.append(tr("row {row}: an instrument has a name, such as Blades 17", row=row + 1))
            rows.append({"name": name, "use": combo.currentData(), "number": number, "due": due})
            if self._cell(row, _NAME).checkState() == Qt.CheckState.Checked:
                ticked.append(name)
        try:
            if not wrong:
                found = instrument_list(tuple(rows))
                self._shelf.keep(found)
        except (SpecError, OSError) as error:
            wrong.append(str(error))
        if wrong:
            self._say(wrong)
            return
        if self._choosing:
            keep(_LAST, ticked)
            self.chosen.emit(tuple(i for i in found.instruments if i.name in ticked))
        self.accept()


def used_last() -> list[str]:
    """Names of the instruments that were chosen last."""
    return kept_texts(_LAST)
