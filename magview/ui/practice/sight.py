"""Readings of eyes and hands, always in view: lamp, straightedge, disc, finger, the last answer; and turning."""

from __future__ import annotations

from typing import Literal, get_args

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QApplication,
    QFormLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.bench.actions import HoldRotor, LoadTrain, ViewSide
from magview.bench.lead_words import WORK_OFF_THE_ENGINE
from magview.bench.state import Side
from magview.practice import actions as do
from magview.practice.screen_words import live_words, seen
from magview.practice.state import Practice
from magview.spec.language import marked, tr
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.pictures.picture_view import step_factor
from magview.ui.practice.controls import AmountSpin, PracticePanel, Reserved, wrapped
from magview.ui.practice.model import PracticeModel

CAUTION = marked(
    "Treat the propeller as live: fuel off, mixture cut off, throttle closed, switch off and each lead proved, plugs "
    "out, hanging leads grounded, wheels chocked, nobody in its arc. Plugs out alone is not enough."
)

Until = Literal["lamp", "mark", "widest", "stop"]

_UNTIL = {
    "by": marked("by so much"),
    "lamp": marked("until lamp changes"),
    "mark": marked("until edge in line"),
    "widest": marked("until widest open"),
    "stop": marked("until piston stops"),
    "reading": marked("to a disc reading"),
    "propeller": marked("propeller by so much"),
}


class Lamp(QWidget):
    """The timing lamp: light has rays, dark is crossed, unconnected is dotted; the word stands beside it."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look, self.shows = look, tr("not connected")
        self._size_up()
        self.setAccessibleName(tr("Timing lamp"))
        look.changed.connect(self.update)

    def _size_up(self) -> None:
        size = round(1.7 * self.fontMetrics().height())
        self.setFixedSize(size, size)

    def changeEvent(self, event: QEvent) -> None:
        """It is as large as the words beside it."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._size_up()

    def show_words(self, words: str) -> None:
        """Show "light", "dark" or "not connected"."""
        self.shows = words
        self.setAccessibleDescription(words)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw it."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        size = float(min(self.width(), self.height()))
        middle, radius = QPointF(size / 2, size / 2), 0.27 * size
        pen = QPen(QColor(self.look.theme.text), 1.6)
        if self.shows == tr("not connected"):
            pen.setStyle(Qt.PenStyle.DotLine)
        painter.setPen(pen)
        if self.shows == tr("light"):
            painter.setBrush(QColor("#ffd83d"))
            for dx, dy in ((1, 0), (0, 1), (0.7, 0.7), (0.7, -0.7)):
                for way in (1.0, -1.0):
                    out = QPointF(dx, dy) * way
                    painter.drawLine(middle + out * (1.3 * radius), middle + out * (1.75 * radius))
        painter.drawEllipse(middle, radius, radius)
        if self.shows == tr("dark"):
            box = QRectF(middle.x() - 0.7 * radius, middle.y() - 0.7 * radius, 1.4 * radius, 1.4 * radius)
            painter.drawLine(box.topLeft(), box.bottomRight())
            painter.drawLine(box.topRight(), box.bottomLeft())
        painter.end()


class SightBox(PracticePanel):
    """Box that shows what is seen now, as `seen` says it."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        box = QGroupBox(tr("What you see"))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(box)
        form = QFormLayout(box)
        form.setVerticalSpacing(2)
        tray, engine = model.practice.exercise.tray, model.practice.bench.engaged is not None
        self.lamp, self.lamp_words = Lamp(look), QLabel()
        self.edge, self.said = Reserved(1), Reserved(1)
        self.disc, self.finger = wrapped(), wrapped()
        lamp = QHBoxLayout()
        lamp.setSpacing(8)
        lamp.addWidget(self.lamp)
        lamp.addWidget(self.lamp_words, 1)
        if tray.lamp:
            form.addRow(tr("Lamp"), lamp)
        if tray.straightedge is not None:
            form.addRow(tr("Straightedge"), self.edge)
        if engine and tray.disc_step_deg is not None:
            form.addRow(tr("Disc"), self.disc)
        if engine:
            form.addRow(tr("Finger"), self.finger)
        form.addRow(tr("Answer"), self.said)
        self.show_practice(model.practice)

    def show_practice(self, practice: Practice) -> None:
        """Show a room."""
        now = seen(practice)
        self.lamp.show_words(now.lamp)
        self.lamp_words.setText(now.lamp)
        tint(self.lamp_words, self.look.theme.text, bold=now.lamp == tr("light"))
        self.edge.setText(f"{now.straightedge}; {now.eye}" if now.eye else now.straightedge)
        self.disc.setText(now.disc)
        self.finger.setText(now.finger)
        self.said.setText(now.said or "–")
        tint(self.said, self.look.theme.text, bold=bool(now.said))

    def keep_room(self, roomy: bool) -> None:
        """Two lines for those that may say so much, so that nothing below moves; a small window has not the room."""
        for label in (self.edge, self.said):
            label.reserve(2 if roomy else 1)


class TurningBox(PracticePanel):
    """Rotor or propeller, by so much or until something happens; which magneto; and the hand on the propeller."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        self.box = QGroupBox(tr("Turning"))
        outer = QVBoxLayout(self)
        outer.setContentsMargins(0, 0, 0, 0)
        outer.addWidget(self.box)
        column = QVBoxLayout(self.box)
        column.setSpacing(3)
        practice = model.practice
        column.addLayout(self._build_turn(practice))
        hands = QHBoxLayout()
        self.hold = self.check(tr("Hol&d the rotor"), self._hold_act, lambda p: p.bench.held)
        hands.addWidget(self.hold)
        self.load = QPushButton(tr("Load the train"))
        self.load.setToolTip(
            tr("Press the rotor against rotation, the propeller held: takes all play out of the drive")
        )
        self.load.setAutoDefault(False)
        self.load.clicked.connect(self._load)  # a lambda would keep the box: off the engine nobody owns the button
        if practice.bench.engaged is not None:
            hands.addWidget(self.load)
        self.at_propeller = self._build_propeller()
        self.sides = QuietCombo()
        if practice.bench.engaged is not None:
            hands.addWidget(self.at_propeller)
        if len(practice.sides) > 1:
            self.sides.setAccessibleName(tr("Magneto in view"))
            for side in practice.sides:
                self.sides.addItem(tr("Left") if side == "left" else tr("Right"), side)
            self.sides.activated.connect(self._side_chosen)
            hands.addWidget(self.sides)
        hands.addStretch(1)
        column.addLayout(hands)
        on_engine = practice.bench.engaged is not None
        self.live = wrapped("")
        self.live.setMinimumHeight(self.fontMetrics().lineSpacing())
        column.addWidget(self.live)
        self.live.setVisible(on_engine)
        self.caution = wrapped(tr(CAUTION if on_engine else WORK_OFF_THE_ENGINE))
        column.addWidget(self.caution)
        self.show_practice(practice)

    def _build_turn(self, practice: Practice) -> QHBoxLayout:
        tray, engine = practice.exercise.tray, practice.bench.engaged is not None
        there = {
            "lamp": tray.lamp,
            "mark": tray.straightedge is not None,
            "stop": engine and tray.stop,
            "reading": engine and tray.disc_step_deg is not None,
            "propeller": engine,
        }
        row = QHBoxLayout()
        self.until = QuietCombo()
        self.until.setAccessibleName(tr("How far to turn"))
        for name, words in _UNTIL.items():
            if there.get(name, True):
                self.until.addItem(tr(words), name)
        self.until.currentIndexChanged.connect(self._until_chosen)
        self.amount = AmountSpin(1.0, -180.0, 3600.0)
        self.amount.show_value(5.0)
        self.amount.setAccessibleName(tr("By how many degrees, or to which reading before the disc's zero"))
        self.against, self.with_ = QPushButton(tr("◀ &Against")), QPushButton(tr("&With ▶"))
        for button, way in ((self.against, tr("Turn against rotation")), (self.with_, tr("Turn with rotation"))):
            button.setAutoDefault(False)
            button.setAccessibleName(way)
            button.setToolTip(tr("{way}; by so much: with Shift a tenth of it, with Alt ten times", way=way))
        self.against.clicked.connect(self._against)
        self.with_.clicked.connect(self._with)
        for widget, stretch in ((self.until, 1), (self.amount, 0), (self.against, 0), (self.with_, 0)):
            row.addWidget(widget, stretch)
        return row

    def _build_propeller(self) -> QPushButton:
        button = QPushButton(tr("Hand on the &propeller"))
        button.setCheckable(True)
        button.setAutoDefault(False)
        button.setToolTip(tr(CAUTION))
        button.clicked.connect(self.model.take_propeller)
        self.model.propeller.connect(button.setChecked)
        return button

    def show_practice(self, practice: Practice) -> None:
        """Show a room."""
        super().show_practice(practice)
        self.box.setTitle(tr("Turning the propeller") if practice.mounted else tr("Turning the rotor"))
        self.hold.setEnabled(not practice.mounted)
        self.load.setEnabled(practice.mounted)
        self.sides.setCurrentIndex(self.sides.findData(practice.side))
        live = live_words(practice)
        self.live.setText(f"⚠ {live}" if live else "")
        tint(self.live, self.look.theme.bad, bold=True)
        tint(self.caution, self.look.theme.bad, bold=False)

    def _until_chosen(self, index: int) -> None:
        self.amount.setEnabled(self.until.currentData() in ("by", "reading", "propeller"))

    def _side_chosen(self, index: int) -> None:
        side: Side = self.sides.itemData(index)
        self.model.do(ViewSide(side))
        self.show_practice(self.model.practice)

    def _load(self) -> None:
        self.model.do(LoadTrain())

    @staticmethod
    def _hold_act(on: bool) -> do.Act:
        return HoldRotor() if on else do.LetGo()

    def _against(self) -> None:
        with self.model.asked_by(self.against):
            self._turn(False)

    def _with(self) -> None:
        with self.model.asked_by(self.with_):
            self._turn(True)

    def _turn(self, forward: bool) -> None:
        self.amount.interpretText()
        what, amount = self.until.currentData(), self.amount.exact
        if what in ("by", "propeller"):
            by = abs(amount) * step_factor(QApplication.keyboardModifiers()) * (1.0 if forward else -1.0)
            crank = what == "propeller" or self.model.practice.mounted
            self.model.do(do.TurnPropeller(by) if crank else do.TurnRotor(by))
        elif what == "reading":
            self.model.do(do.TurnToReading(amount, forward))
        elif what in get_args(Until):
            self.model.do(do.TurnUntil(what, forward))
