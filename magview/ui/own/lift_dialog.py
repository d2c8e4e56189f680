"""Lift from measurements: a table of angles and readings becomes the lobes of a magneto."""

from __future__ import annotations

from pathlib import Path
from typing import Literal

import numpy as np
import pyqtgraph as pg
from PySide6.QtCore import Signal
from PySide6.QtWidgets import (
    QCheckBox,
    QDialog,
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import PlaceMagneto
from magview.physics.cam.setting import internal_timing
from magview.physics.cam.traced_lift import MeasuredLift, Measuring, measured_lift, with_measured_lift
from magview.spec.base import SpecError
from magview.spec.files import write_model
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import marked, tr
from magview.spec.lift_table import read_lift_table
from magview.spec.magneto import Magneto
from magview.ui.kit.asking import ask_save
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import LengthSpin, NumberSpin, QuietCombo
from magview.ui.kit.look import Look

_READINGS: tuple[tuple[str, Literal["contact-lift", "gap", "heel-dial"]], ...] = (
    (marked("Lift of the contacts"), "contact-lift"),
    (marked("Gap between the contacts"), "gap"),
    (marked("Dial at the heel"), "heel-dial"),
)
_UNITS: tuple[Literal["mm", "in", "thou"], ...] = ("mm", "in", "thou")
_DECIMALS: tuple[tuple[str, Literal[".", ","] | None], ...] = (
    (marked("found out"), None), (marked("point: 0.25"), "."), (marked("comma: 0,25"), ",")
)  # fmt: skip


class LiftDialog(QDialog):
    """Dialog that asks what the columns are and shows the result before anything is done with it."""

    said = Signal(str)
    """One sentence about what was done."""

    def __init__(self, model: BenchModel, look: Look, path: Path, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look, self.path = model, look, path
        self.lift: MeasuredLift | None = None
        self.magneto: Magneto | None = None
        self.setWindowTitle(tr("Lift from {name}", name=path.name))
        letters, room = self.fontMetrics(), self.screen().availableGeometry()
        self.resize(min(137 * letters.averageCharWidth(), room.width()), min(37 * letters.height(), room.height()))
        row = QHBoxLayout(self)
        left = QVBoxLayout()
        left.addLayout(self._build_form())
        self.answer = QLabel()
        self.answer.setWordWrap(True)
        self.answer.setAccessibleName(tr("What comes of the table"))
        left.addWidget(self.answer, 1)
        self.place_button, self.save_button = (
            QPushButton(tr("Put on the &bench")),
            QPushButton(tr("&Save as magneto…")),
        )
        close = QPushButton(tr("&Close"))
        self.place_button.clicked.connect(self.place)
        self.save_button.clicked.connect(self.save)
        close.clicked.connect(self.reject)
        for button in (self.place_button, self.save_button, close):
            button.setAutoDefault(False)  # Return ends the typing of a number, and nothing more
            left.addWidget(button)
        row.addLayout(left)
        row.addWidget(self._build_plot(), 1)
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
        for combo in (self.angle_of, self.reading, self.unit, self.decimal):
            combo.currentIndexChanged.connect(self.read)
        for box in (self.with_rotation, self.falls):
            box.toggled.connect(self.read)
        for column in (self.angle_column, self.reading_column):
            column.valueChanged.connect(self.read)
        for field in (self.stop, self.ratio):
            field.entered.connect(self.read)
            field.said.connect(self.said)
        return form

    def _build_plot(self) -> QWidget:
        theme = self.look.theme
        plot = self.plot = pg.PlotWidget(background=theme.paper)
        plot.setAccessibleName(tr("Readings and the smooth lift through them"))
        plot.setMenuEnabled(False)
        plot.setMinimumWidth(45 * self.fontMetrics().averageCharWidth())
        plot.hideButtons()
        for side, title in (("bottom", tr("cam past the top [deg]")), ("left", tr("contact lift [mm]"))):
            axis = plot.getAxis(side)
            axis.setPen(pg.mkPen(theme.line))
            axis.setTextPen(pg.mkPen(theme.text))
            axis.enableAutoSIPrefix(False)
            plot.setLabel(side, title, color=theme.text)
        self._raw = pg.ScatterPlotItem(size=6, pen=pg.mkPen(theme.line), brush=pg.mkBrush(theme.hand))
        self._left_out = pg.ScatterPlotItem(size=9, symbol="x", pen=pg.mkPen(theme.bad), brush=pg.mkBrush(theme.bad))
        self._smooth = pg.PlotCurveItem(pen=pg.mkPen(theme.line))
        for item in (self._smooth, self._raw, self._left_out):
            plot.addItem(item)
        assert isinstance(plot, QWidget)
        return plot

    # -------------------------------------------------------------- reading

    def read(self, _: object = None) -> None:
        """Read the table as the fields say, and show what comes of it or why nothing does."""
        gap, dial = self.reading.currentIndex() == 1, self.reading.currentIndex() == 2
        self.stop.setEnabled(gap)
        self.ratio.setEnabled(dial)
        self.lift = self.magneto = None
        try:
            if self.unit.currentIndex() == 0:
                raise SpecError(tr("say in which unit the readings are"))
            columns = (self.angle_column.value() - 1, self.reading_column.value() - 1)
            table = read_lift_table(self.path, _DECIMALS[self.decimal.currentIndex()][1], columns)
            self.lift = measured_lift(table, self._measuring())
            self.magneto = with_measured_lift(self._model.state.magneto, self.lift)
            self.answer.setText(self._words(self.lift))
        except ValueError as error:
            text = str(error)
            # A file's name stays as it is written.
            self.answer.setText(f"{text}." if text.startswith(self.path.name) else f"{text[0].upper()}{text[1:]}.")
        self._draw()
        for button in (self.place_button, self.save_button):
            button.setEnabled(self.magneto is not None)

    def _measuring(self) -> Measuring:
        return Measuring(
            angle="rotor" if self.angle_of.currentIndex() else "cam",
            turns_per_rotor_turn=self._model.state.magneto.cam.turns_per_rotor_turn,
            with_rotation=self.with_rotation.isChecked(),
            unit=_UNITS[self.unit.currentIndex() - 1],
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

    def _draw(self) -> None:
        if self.lift is None:
            for item in (self._raw, self._left_out, self._smooth):
                item.setData([], [])
            return
        kept = np.asarray(self.lift.kept)
        self._raw.setData(self.lift.raw_angle_deg[kept], self.lift.raw_lift_mm[kept])
        self._left_out.setData(self.lift.raw_angle_deg[~kept], self.lift.raw_lift_mm[~kept])
        self._smooth.setData(self.lift.smooth_angle_deg, self.lift.smooth_lift_mm)

    # -------------------------------------------------------------- doing

    def place(self) -> None:
        """Put the magneto with the measured lift on the bench."""
        if self.magneto is not None and self._model.send(PlaceMagneto(self.magneto)):
            self.said.emit(tr("The magneto with the measured lift is on the bench."))
            self.accept()

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
