"""Entry fields that take numbers as people write them."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import partial

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QGuiApplication, QValidator, QWheelEvent
from PySide6.QtWidgets import QAbstractSpinBox, QComboBox, QDoubleSpinBox, QWidget

from magview.spec.language import format_angle, format_length, number, tr
from magview.spec.parse import parse_angle_deg, parse_btdc_deg, parse_length_mm, parse_number
from magview.spec.units import MM_PER_INCH
from magview.ui.kit.look import Look


class QuietCombo(QComboBox):
    """A list of choices that the wheel passes over: nothing changes because a panel was scrolled."""

    def wheelEvent(self, event: QWheelEvent) -> None:
        """Not for this."""
        event.ignore()


class QuantitySpin(QDoubleSpinBox):
    """A spin box that reads its unit: "1,5", "1.5°", "13 thou". Steps are finer with Shift.

    It keeps the full value it was given and shows a rounded one; it never writes a rounding back.
    """

    entered = Signal(float)
    """A value the user gave, in degrees or millimetres; not emitted by `show_value`."""

    confirmed = Signal(float)
    """The value that was there already, typed by the user all the same; `entered` does not tell of it."""

    said = Signal(str)
    """One sentence about an entry that could not be taken as it was."""

    def __init__(self, parse: Callable[[str], float], step: float, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._parse = parse
        self._exact, self._shown, self._refuses = 0.0, False, False
        self.setDecimals(6)
        self.setSingleStep(step)
        self.setKeyboardTracking(False)
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setCorrectionMode(QAbstractSpinBox.CorrectionMode.CorrectToPreviousValue)
        self.valueChanged.connect(self._changed)
        self._typed = False
        self.lineEdit().textEdited.connect(self._begun)
        self.editingFinished.connect(self._finished)

    @property
    def exact(self) -> float:
        """The value shown, unrounded."""
        return self._exact

    def refuse_beyond(self) -> None:
        """Refuse what is out of range, naming the field, and keep the value there was: no end would be meant."""
        self._refuses = True

    def show_value(self, value: float) -> None:
        """Show a value without telling anybody; what is being typed is not wiped by it."""
        if value == self._exact and self._shown:
            return
        self._exact, self._shown = value, True
        if self.hasFocus() and self.lineEdit().isModified():
            return
        blocked = self.blockSignals(True)
        self.setValue(value)
        self.blockSignals(blocked)

    def _begun(self) -> None:
        self._typed = True

    def _finished(self) -> None:
        typed, self._typed = self._typed, False
        if typed:
            self.confirmed.emit(self._exact)

    def _changed(self, value: float) -> None:
        self._exact, self._typed = value, False
        self.entered.emit(value)

    def stepBy(self, steps: int) -> None:
        """Step from the exact value; a tenth of the step with Shift."""
        fine = QGuiApplication.keyboardModifiers() & Qt.KeyboardModifier.ShiftModifier
        value = self._exact + steps * self.singleStep() * (0.1 if fine else 1.0)
        self.setValue(min(max(value, self.minimum()), self.maximum()))

    def validate(self, text: str, position: int) -> tuple[QValidator.State, str, int]:
        """Half-written text may go on; a whole quantity within range is acceptable."""
        try:
            value = self._parse(text)
        except ValueError:
            return QValidator.State.Intermediate, text, position
        inside = self.minimum() - 1e-9 <= value <= self.maximum() + 1e-9
        return (QValidator.State.Acceptable if inside else QValidator.State.Intermediate), text, position

    def fixup(self, text: str) -> str:
        """A quantity out of range goes to the nearer end, unless it is refused; anything else back to what it was."""
        try:
            value = self._parse(text)
        except ValueError as error:
            self._typed = False
            self.said.emit(str(error))
            return self.textFromValue(self._exact)
        low, high = self.textFromValue(self.minimum()), self.textFromValue(self.maximum())
        if self._refuses:
            self._typed = False  # what is kept was not typed: it is no reading confirmed
            kept = self.textFromValue(self._exact)
            self.said.emit(
                tr(
                    "{field}: {text} is refused, it must be {low} to {high}; {kept} is kept",
                    field=self.accessibleName(),
                    text=text.strip(),
                    low=low,
                    high=high,
                    kept=kept,
                )
            )
            return kept
        held = min(max(value, self.minimum()), self.maximum())
        self.said.emit(
            tr(
                "{text} is outside {low} to {high}: {taken} is taken",
                text=text.strip(),
                low=low,
                high=high,
                taken=self.textFromValue(held),
            )
        )
        return self.textFromValue(held)

    def wheelEvent(self, event: QWheelEvent) -> None:
        """The wheel scrolls the panel; it turns the value only of the field that has the keyboard."""
        if self.hasFocus():
            super().wheelEvent(event)
        else:
            event.ignore()

    def valueFromText(self, text: str) -> float:
        """The value of a text that `validate` accepts; a text left as it was shown keeps the exact value."""
        if text == self.textFromValue(self._exact):
            return self._exact
        try:
            return self._parse(text)
        except ValueError:
            return self._exact


class NumberSpin(QuantitySpin):
    """A number, with a unit of its own or none. Qt's own field would read "1,5" as 15."""

    def __init__(
        self, step: float, low: float, high: float, unit: str = "", places: int = 2, parent: QWidget | None = None
    ) -> None:
        self._unit, self._places = unit, places
        super().__init__(partial(parse_number, unit=unit), step, parent)
        self.setRange(low, high)

    def textFromValue(self, value: float) -> str:
        """To so many places, without idle noughts."""
        return f"{number(round(value, self._places) + 0.0, '.10g')} {self._unit}".rstrip()


class AngleSpin(QuantitySpin):
    """Degrees."""

    def __init__(self, step: float, low: float, high: float, parent: QWidget | None = None) -> None:
        super().__init__(parse_angle_deg, step, parent)
        self.setRange(low, high)

    def textFromValue(self, value: float) -> str:
        """To a hundredth of a degree, with the sign."""
        return format_angle(value, signed=True)


class BtdcSpin(AngleSpin):
    """Crank degrees before top dead centre: "22 BTDC" is 22, and "3 ATDC" is −3."""

    def __init__(self, step: float, low: float, high: float, parent: QWidget | None = None) -> None:
        super().__init__(step, low, high, parent)
        self._parse = parse_btdc_deg


class CrankSpin(AngleSpin):
    """Crank degrees, shown before or after top dead centre as a lamp is read; a bare number is positive after it."""

    def __init__(self, step: float, low: float, high: float, parent: QWidget | None = None) -> None:
        super().__init__(step, low, high, parent)
        self._parse = self._read

    def _read(self, text: str) -> float:
        text = text.strip()
        for words, sign in ((tr("{angle} before TDC", angle="\0"), -1.0), (tr("{angle} after TDC", angle="\0"), 1.0)):
            start, end = words.split("\0")
            if text.startswith(start) and text.endswith(end):
                return sign * abs(parse_angle_deg(text.removeprefix(start).removesuffix(end)))
        try:
            return parse_angle_deg(text)
        except ValueError:
            return 0.0 - parse_btdc_deg(text)  # with its side named, as in the boxes of the lamp

    def textFromValue(self, value: float) -> str:
        """To a hundredth of a degree, with what the sign means."""
        angle = format_angle(abs(value))
        if round(value, 2) == 0:
            return angle
        return tr("{angle} before TDC", angle=angle) if value < 0 else tr("{angle} after TDC", angle=angle)


class LengthSpin(QuantitySpin):
    """Millimetres inside, millimetres or inches outside; a bare number is in the unit shown."""

    def __init__(self, step: float, low: float, high: float, look: Look, parent: QWidget | None = None) -> None:
        self._look, self._inches = look, look.inches
        super().__init__(self._read, 0.001 * MM_PER_INCH if look.inches else step, parent)
        self.setRange(low, high)
        look.changed.connect(self._look_changed)

    def _look_changed(self) -> None:
        """Another unit may be shown now; the value stays."""
        inches = self._look.inches
        if inches == self._inches:
            return
        exact, self._inches, self._shown = self._exact, inches, False
        self.setSingleStep(0.001 * MM_PER_INCH if inches else 0.01)
        self.show_value(exact)
        self.lineEdit().setText(self.textFromValue(exact))

    def _read(self, text: str) -> float:
        return parse_length_mm(text, "in" if self._inches else "mm")

    def textFromValue(self, value: float) -> str:
        """To a thousandth of a millimetre or a ten-thousandth of an inch."""
        if not math.isfinite(value):
            return ""
        # Signs of units are the same in every language, and are read back.
        return format_length(value, self._inches)
