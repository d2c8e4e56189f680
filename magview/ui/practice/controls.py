"""The small controls of practice: each stands for one kind of act, and shows what the room says of it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent
from PySide6.QtWidgets import QApplication, QCheckBox, QHBoxLayout, QLabel, QPushButton, QWidget

from magview.practice.actions import Act
from magview.practice.state import Practice
from magview.spec.language import marked, number, tr
from magview.ui.kit.callout import Callout
from magview.ui.kit.inputs import AngleSpin
from magview.ui.kit.look import Look
from magview.ui.pictures.picture_view import step_factor
from magview.ui.practice.model import PracticeModel

TABS = {"work": marked("&2 Work"), "papers": marked("&3 Data sheet")}
"""Names of the tabs beside the pictures, but for the first."""


class PracticePanel(QWidget):
    """A panel that follows the room."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__()
        self.model, self.look = model, look
        self._checks: list[ActCheck] = []
        self.callout = Callout(self, model)
        model.acted.connect(self._acted)
        model.refused.connect(self._refused)
        look.changed.connect(self._look_changed)

    def check(self, text: str, act: Callable[[bool], Act], is_on: Callable[[Practice], bool]) -> ActCheck:
        """A check box of this panel."""
        check = ActCheck(text, self.model, act, is_on)
        self._checks.append(check)
        return check

    def button(self, text: str, act: Callable[[], Act]) -> QPushButton:
        """A button that does one act."""
        return ActButton(text, self.model, act)

    def show_practice(self, practice: Practice) -> None:
        """Show a room."""
        for check in self._checks:
            check.show_practice(practice)

    def _look_changed(self) -> None:
        self.show_practice(self.model.practice)

    def halt(self) -> None:
        """Nothing runs here."""

    def _acted(self, act: Act, new: Practice, old: Practice) -> None:
        self.show_practice(new)

    def _refused(self, sentence: str) -> None:
        self.show_practice(self.model.practice)  # a box that was ticked in vain goes back


class ActCheck(QCheckBox):
    """A thing that is so or not: ticking it does it, and it shows how it stands."""

    def __init__(
        self, text: str, model: PracticeModel, act: Callable[[bool], Act], is_on: Callable[[Practice], bool]
    ) -> None:
        super().__init__(text)
        self._model, self._act, self._is_on = model, act, is_on
        self.show_practice(model.practice)
        self.clicked.connect(self._clicked)

    def show_practice(self, practice: Practice) -> None:
        """Show how it stands."""
        self.setChecked(self._is_on(practice))

    def _clicked(self, on: bool) -> None:
        with self._model.asked_by(self):
            self._model.do(self._act(on))


class ActButton(QPushButton):
    """A button that does one act."""

    def __init__(self, text: str, model: PracticeModel, act: Callable[[], Act]) -> None:
        super().__init__(text)
        self._model, self._act = model, act
        self.setAutoDefault(False)
        self.clicked.connect(self._clicked)

    def _clicked(self) -> None:
        with self._model.asked_by(self):
            self._model.do(self._act())


class AmountSpin(AngleSpin):
    """An amount [deg], always positive: the way is on the buttons."""

    def textFromValue(self, value: float) -> str:
        """To a hundredth of a degree, without a sign."""
        return f"{number(round(value, 2) + 0.0)}°"


class ByRow(QWidget):
    """Turn something by so much, one way or the other: a tenth of it with Shift, ten times with Alt."""

    def __init__(
        self,
        name: str,
        amount_deg: float,
        most_deg: float,
        ways: tuple[str, str],
        turn: Callable[[float], None],
    ) -> None:
        """`ways`: what the buttons for less and for more say."""
        super().__init__()
        self._turn = turn
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        self.label = QLabel(name)
        self.amount = AmountSpin(amount_deg, 0.01, most_deg)
        self.amount.show_value(amount_deg)
        plain = name.replace("&", "")
        self.amount.setAccessibleName(tr("{part}: by how much", part=plain))
        self.label.setBuddy(self.amount)
        self.less, self.more = QPushButton(ways[0]), QPushButton(ways[1])
        for button, way in ((self.less, ways[0]), (self.more, ways[1])):
            button.setAutoDefault(False)
            button.setAccessibleName(f"{plain} {way.replace('&', '').strip('◀▶ ')}")
            button.setToolTip(tr("With Shift a tenth of the amount, with Alt ten times"))
        self.less.clicked.connect(self._less)
        self.more.clicked.connect(self._more)
        row.addWidget(self.label, 1)
        for widget in (self.amount, self.less, self.more):
            row.addWidget(widget)

    def _less(self) -> None:
        self._go(-1.0)

    def _more(self) -> None:
        self._go(1.0)

    def _go(self, way: float) -> None:
        self.amount.interpretText()
        self._turn(way * self.amount.exact * step_factor(QApplication.keyboardModifiers()))


class Reserved(QLabel):
    """A label of several lines that keeps the room for so many, whatever it says."""

    def __init__(self, lines: int) -> None:
        super().__init__()
        self._lines = lines
        self.setWordWrap(True)
        self._reserve()

    def reserve(self, lines: int) -> None:
        """Keep room for another number of lines."""
        self._lines = lines
        self._reserve()

    def _reserve(self) -> None:
        self.setMinimumHeight(max(self._lines * self.fontMetrics().lineSpacing(), self.fontMetrics().height()))

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._reserve()


def wrapped(text: str = "") -> QLabel:
    """A label of several lines."""
    label = QLabel(text)
    label.setWordWrap(True)
    return label
