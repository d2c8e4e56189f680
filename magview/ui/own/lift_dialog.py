"""Lift from measurements: angles and readings, typed, pasted or opened, become the lobes of a magneto."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path
from typing import Literal

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import PlaceInstallation, PlaceMagneto
from magview.physics.cam.setting import internal_timing
from magview.physics.cam.traced_lift import MeasuredLift, Measuring, measured_lift, with_measured_lift
from magview.spec.base import SpecError
from magview.spec.files import write_model
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import marked, tr
from magview.spec.lift_cells import BadCell, Row, cut, read_cells
from magview.spec.lift_table import LiftTable, lift_text
from magview.spec.magneto import Magneto
from magview.ui.kit.asking import ask_open, ask_save
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import LengthSpin, NumberSpin, QuietCombo
from magview.ui.kit.look import Look
from magview.ui.own.lift_grid import LiftGrid

_READINGS: tuple[tuple[str, Literal["contact-lift", "gap", "heel-dial"]], ...] = (
    (marked("Lift of the contacts"), "contact-lift"),
    (marked("Gap between the contacts"), "gap"),
    (marked("Dial at the heel"), "heel-dial"),
)
_UNITS: tuple[Literal["mm", "in", "thou"], ...] = ("mm", "in", "thou")
_DECIMALS: tuple[tuple[str, Literal[".", ","] | None], ...] = (
    (marked("found out"), None), (marked("point: 0.25"), "."), (marked("comma: 0,25"), ",")
)  # fmt: skip

TABLES = marked("Tables (*.csv *.tsv *.txt);;All files (*)")
_MOST_SAID = 200
"""Cells said at most: who opens the wrong file need not read thousands."""


def _cell(row: tuple[str, ...], column: int) -> str:
    return row[column] if column < len(row) else ""


class LiftDialog(QDialog):
    """Dialog to type, paste or open angles and readings in; it shows at once what comes of them."""

    said = Signal(str)
    """One sentence about what was done."""
    left = Signal(object)
    """Rows that stand in the grid as the dialog closes; none where their lift was taken."""

    def __init__(
        self,
        model: BenchModel,
        look: Look,
        path: Path | None,
        parent: QWidget | None = None,
        rows: Sequence[Row] = (),
    ) -> None:
        """`path`: a table to begin with; `rows`: cells to begin with where there is none."""
        super().__init__(parent)
        self._model, self.look, self.path = model, look, path
        self.lift: MeasuredLift | None = None
        self.magneto: Magneto | None = None
        self._text = self._why_not = ""
        self._filled: tuple[Row, ...] = ()
        letters, room = self.fontMetrics(), self.screen().availableGeometry()
        self.resize(min(170 * letters.averageCharWidth(), room.width()), min(37 * letters.height(), room.height()))
        self.grid = LiftGrid(look)
        self.answer = QLabel()
        self.answer.setWordWrap(True)
        self.answer.setAccessibleName(tr("What comes of the table"))
        self.bad = QListWidget()
        self.bad.setAccessibleName(tr("Cells that cannot be read"))
        self.bad.setWordWrap(True)
        self.bad.setMaximumHeight(9 * letters.height())
        self.open_button = QPushButton(tr("&Open a table…"))
        self.place_button, self.save_button = (
            QPushButton(tr("Put on the &bench")),
            QPushButton(tr("&Save as magneto…")),
        )
        close = QPushButton(tr("&Close"))
        self.open_button.clicked.connect(self.ask_table)
        self.place_button.clicked.connect(self.place)
        self.save_button.clicked.connect(self.save)
        close.clicked.connect(self.reject)
        left, middle, right = QVBoxLayout(), QVBoxLayout(), QVBoxLayout()
        left.addLayout(self._build_form())
        left.addStretch(1)
        for button in (self.open_button, self.place_button, self.save_button, close):
            button.setAutoDefault(False)  # Return ends the typing of a number, and nothing more
        for button in (self.place_button, self.save_button, close):
            left.addWidget(button)
        middle.addWidget(self.grid, 1)
        middle.addWidget(self.open_button)
        right.addWidget(self._build_plot(), 1)
        right.addWidget(self.answer)
        right.addWidget(self.bad)
        row = QHBoxLayout(self)
        for column, share in ((left, 0), (middle, 2), (right, 3)):
            row.addLayout(column, share)
        self.grid.edited.connect(self.read)
        self.grid.pasted.connect(self.paste)
        self.bad.itemActivated.connect(self._go_to)
        self.bad.itemClicked.connect(self._go_to)
        if path is not None:
            self.open_table(path)
        else:
            self.setWindowTitle(tr("Lift from measurements"))
            self.unit.setCurrentIndex(_UNITS.index("in" if look.inches else "mm") + 1)
            self.grid.fill(rows)
        self.grid.setFocus()
        self.read()

    def _build_form(self) -> QFormLayout:
        form = QFormLayout()
        self.angle_of = QuietCombo()
        self.angle_of.addItems([tr("Cam"), tr("Rotor")])
        self.with_rotation = QCheckBox(tr("grow with rotation"))
        self.with_rotation.setChecked(True)
        self.reading, self.unit, self.decimal = QuietCombo(), QuietCombo(), QuietCombo()
        self.reading.addItems([tr(text) for text, _ in _READINGS])
        self.unit.addItems([tr("choose…"), *_UNITS])  # asked, not guessed
        self.decimal.addItems([tr(text) for text, _ in _DECIMALS])
        self.falls = QCheckBox(tr("falls as the contacts lift"))
        self.stop = LengthSpin(0.01, 0.0, 10.0, self.look)
        self.stop.setToolTip(tr("Contact lift at which the contacts just touch: needed where gaps were read"))
        self.ratio = NumberSpin(0.01, 0.05, 20.0, places=4)
        self.ratio.setToolTip(tr("Contact arm over heel arm: what the contacts lift for a millimetre at the heel"))
        breaker = self._model.state.magneto.breaker
        self.ratio.show_value(breaker.contact_arm_mm / (breaker.heel_arm_mm or breaker.contact_arm_mm))
        timing = internal_timing(self._model.state.magneto)
        self.stop.show_value(float(timing.stop_mm(self._model.state.screw_deg)))
        self.angle_column, self.reading_column = QSpinBox(), QSpinBox()
        for spin, value in ((self.angle_column, 1), (self.reading_column, 2)):
            spin.setRange(1, 100)
            spin.setValue(value)
        for name, widget in (
            (tr("Angles of the"), self.angle_of), ("", self.with_rotation), (tr("Readings are"), self.reading),
            (tr("Their &unit"), self.unit), ("", self.falls), (tr("Contacts touch at"), self.stop),
            (tr("Contact arm / heel arm"), self.ratio), (tr("Decimal sign"), self.decimal),
            (tr("Column of angles"), self.angle_column), (tr("Column of readings"), self.reading_column),
        ):  # fmt: skip
            form.addRow(name, widget)
        for combo in (self.angle_of, self.reading, self.unit):
            combo.currentIndexChanged.connect(self.read)
        for box in (self.with_rotation, self.falls):
            box.toggled.connect(self.read)
        self.decimal.currentIndexChanged.connect(self._cut_anew)
        for column in (self.angle_column, self.reading_column):
            column.setToolTip(tr("Which column of an opened or pasted table, the first being 1"))
            column.valueChanged.connect(self._cut_anew)
        for field in (self.stop, self.ratio):
            field.entered.connect(self.read)
            field.said.connect(self.said)
        return form

    def _build_plot(self) -> QWidget:
        theme = self.look.theme
        plot = self.plot = pg.PlotWidget(background=theme.paper)
        plot.setAccessibleName(tr("Readings and the smooth lift through them"))
        plot.setMenuEnabled(False)
        plot.setMinimumWidth(38 * self.fontMetrics().averageCharWidth())
        plot.hideButtons()
        for side in ("bottom", "left"):
            axis = plot.getAxis(side)
            axis.setPen(pg.mkPen(theme.line))
            axis.setTextPen(pg.mkPen(theme.text))
            axis.enableAutoSIPrefix(False)
        self._raw = pg.ScatterPlotItem(size=6, pen=pg.mkPen(theme.line), brush=pg.mkBrush(theme.hand))
        self._left_out = pg.ScatterPlotItem(size=9, symbol="x", pen=pg.mkPen(theme.bad), brush=pg.mkBrush(theme.bad))
        self._smooth = pg.PlotCurveItem(pen=pg.mkPen(theme.line))
        for item in (self._smooth, self._raw, self._left_out):
            plot.addItem(item)
        assert isinstance(plot, QWidget)
        return plot

    # -------------------------------------------------------------- tables

    def ask_table(self) -> None:
        """Ask for a table, and show it in the grid."""
        path = ask_open(self, tr("Open a table of the lift"), tr(TABLES))
        if path is not None:
            self.open_table(path)

    def open_table(self, path: Path) -> None:
        """Show a file's table in the grid; one that has none is said, and the grid stays as it is."""
        self.path = path
        self.setWindowTitle(tr("Lift from {name}", name=path.name))
        self._text = self._why_not = ""
        try:
            self._text = lift_text(path)
            self._take(cut(self._text, self._decimal(), path.name))
        except SpecError as error:
            self._why_not = str(error)
            self.read()
            self.say(self._why_not)

    def paste(self, text: str) -> None:
        """Put columns of a table into the grid, from its current cell on; a single column goes where that stands."""
        try:
            found = cut(text, self._decimal(), tr("what was pasted"))
        except SpecError as error:
            self.say(str(error))
            return
        at = self.grid.currentIndex()
        if max(map(len, found)) == 1:
            self.grid.put(max(0, at.row()), max(0, at.column()), found)
        elif not self.grid.rows():
            self._text = text
            self._take(found)
        else:
            self.grid.put(max(0, at.row()), 0, self._columns(found))

    def _take(self, found: tuple[tuple[str, ...], ...]) -> None:
        self._filled = self._columns(found)
        self.grid.fill(self._filled)
        self._filled = self.grid.rows()

    def _columns(self, found: tuple[tuple[str, ...], ...]) -> tuple[Row, ...]:
        angle, reading = self.angle_column.value() - 1, self.reading_column.value() - 1
        return tuple((_cell(row, angle), _cell(row, reading)) for row in found)

    def _cut_anew(self, _: object = None) -> None:
        """Take other columns, or another decimal sign, of the table last opened, unless it was changed by hand."""
        if self._text and self.grid.rows() == self._filled:
            try:
                self._take(cut(self._text, self._decimal(), self.path.name if self.path else tr("what was pasted")))
            except SpecError as error:
                self.say(str(error))
                return
        self.read()

    def _decimal(self) -> Literal[".", ","] | None:
        return _DECIMALS[self.decimal.currentIndex()][1]

    def say(self, sentence: str) -> None:
        """Say why nothing comes of it; a file's name stays as it is written."""
        whole = (
            sentence if self.path and sentence.startswith(self.path.name) else f"{sentence[0].upper()}{sentence[1:]}"
        )
        self.answer.setText(whole if whole.endswith("?") else f"{whole}.")

    # -------------------------------------------------------------- reading

    def read(self, _: object = None) -> None:
        """Read the grid as the fields say, and show what comes of it, or all that is in the way."""
        gap, dial = self.reading.currentIndex() == 1, self.reading.currentIndex() == 2
        self.stop.setEnabled(gap)
        self.ratio.setEnabled(dial)
        self.lift = self.magneto = None
        chosen = self.unit.currentIndex() - 1
        unit = _UNITS[max(0, chosen)]
        unit_words = unit if chosen >= 0 else tr("unit?")
        self.grid.cells.name_columns((tr("Angle [°]"), tr("Reading [{unit}]", unit=unit_words)))
        table, bad = read_cells(self.grid.rows(), unit, self._decimal())
        self._show_bad(bad)
        try:
            if not self.grid.rows():
                asked = tr("type an angle and its reading in each row, or paste both columns of a table")
                raise SpecError(self._why_not or asked)
            if chosen < 0:
                raise SpecError(tr("say in which unit the readings are"))
            waits = tr("mend the cells below, or empty their rows, and the lift can be used")
            if not table.lines:
                raise SpecError(waits)
            self.lift = measured_lift(table, self._measuring())
            if bad:
                raise SpecError(waits)
            self.magneto = with_measured_lift(self._model.state.magneto, self.lift)
            self.answer.setText(self._words(self.lift))
        except ValueError as error:
            self.say(str(error))
        self._draw(table)
        for button in (self.place_button, self.save_button):
            button.setEnabled(self.magneto is not None)

    def _show_bad(self, bad: Sequence[BadCell]) -> None:
        self.grid.cells.mark(bad)
        self.bad.clear()
        for cell in bad[:_MOST_SAID]:
            item = QListWidgetItem(tr("✗ Row {row}: {sentence}", row=cell.row + 1, sentence=cell.sentence))
            item.setData(Qt.ItemDataRole.UserRole, (cell.row, cell.column))
            self.bad.addItem(item)
        if len(bad) > _MOST_SAID:
            self.bad.addItem(tr("and {count} more", count=len(bad) - _MOST_SAID))
        self.bad.setVisible(bool(bad))

    def _go_to(self, item: QListWidgetItem) -> None:
        place = item.data(Qt.ItemDataRole.UserRole)
        if place is not None:
            self.grid.go_to(*place)

    def _measuring(self) -> Measuring:
        return Measuring(
            angle="rotor" if self.angle_of.currentIndex() else "cam",
            turns_per_rotor_turn=self._model.state.magneto.cam.turns_per_rotor_turn,
            with_rotation=self.with_rotation.isChecked(),
            unit="mm",  # as the cells are read
            reading=_READINGS[self.reading.currentIndex()][1],
            falls=self.falls.isChecked(),
            stop_mm=self.stop.exact,
            contact_per_heel=self.ratio.exact,
        )

    @staticmethod
    def _words(lift: MeasuredLift) -> str:
        top = max(lift.profile.contact_lift_mm)
        told = [
            tr(
                "{readings} readings; the contacts lift {top:mm}; scatter {noise:.4mm}.",
                readings=len(lift.raw_angle_deg),
                top=top,
                noise=lift.noise_mm,
            ),
            *(f"⚠ {warning}" for warning in lift.warnings),
        ]
        return "\n".join(told)

    def _draw(self, table: LiftTable) -> None:
        """The lobe with its readings; while none comes of them, the readings as they were typed."""
        colour, found = self.look.theme.text, self.lift
        if found is None:
            self._raw.setData(table.angle, table.reading)
            self._left_out.setData([], [])
            self._smooth.setData([], [])
        else:
            kept = np.asarray(found.kept)
            self._raw.setData(found.raw_angle_deg[kept], found.raw_lift_mm[kept])
            self._left_out.setData(found.raw_angle_deg[~kept], found.raw_lift_mm[~kept])
            self._smooth.setData(found.smooth_angle_deg, found.smooth_lift_mm)
        across = tr("angle as read [deg]") if found is None else tr("cam past the top [deg]")
        up = tr("reading [mm]") if found is None else tr("contact lift [mm]")
        self.plot.setLabel("bottom", across, color=colour)
        self.plot.setLabel("left", up, color=colour)

    # -------------------------------------------------------------- doing

    def place(self) -> None:
        """Put the magneto with the measured lift on the bench, on the engine that the magneto there is on."""
        if self.magneto is None:
            return
        engaged = self._model.state.engaged
        if engaged is None:
            done = self._model.send(PlaceMagneto(self.magneto))
            told = tr("The magneto with the measured lift is on the bench.")
        else:
            whole = engaged.installation.model_copy(update={"magneto": self.magneto})
            done = self._model.send(PlaceInstallation(whole))
            told = tr("The magneto with the measured lift is on the bench, with its engine and coupling.")
        if done:
            self.said.emit(told)
            self.accept()

    def done(self, result: int) -> None:
        """Close; rows that were not taken are told, so that they are there again."""
        self.left.emit(() if result == QDialog.DialogCode.Accepted else self.grid.rows())
        super().done(result)

    def save(self) -> None:
        """Ask where, and write the magneto with the measured lift."""
        path = ask_save(self, tr("Save the magneto"), f"my-magneto{ENDING}", file_filter(tr("Magneto")))
        if path is not None:
            self.save_to(path)

    def save_to(self, path: Path) -> None:
        """Write the magneto with the measured lift; a failure is one sentence."""
        if self.magneto is None:
            return
        try:
            write_model(path, self.magneto)
        except SpecError as error:
            self.answer.setText(f"{error}.")
            return
        self.said.emit(tr("Saved {name}.", name=path.name))
