"""The two hands: what each holds, and how the left one turns things, one step or until something is seen."""

from __future__ import annotations

from collections.abc import Callable
from typing import Literal

from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QApplication, QFrame, QGridLayout, QHBoxLayout, QLabel, QPushButton, QVBoxLayout

from magview.bench.actions import HoldRotor, LoadTrain, ViewSide
from magview.bench.easing import Eased
from magview.bench.state import Side
from magview.practice import actions as do
from magview.practice.screen_words import seen
from magview.practice.state import Practice
from magview.spec.language import marked, number, tr
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.pictures.picture_view import step_factor
from magview.ui.practice.controls import AmountSpin, PracticePanel
from magview.ui.practice.model import PracticeModel

Part = Literal["rotor", "propeller", "plate", "screw", "disc"]
Until = Literal["lamp", "mark", "widest", "stop"]

PARTS: dict[Part, str] = {
    "rotor": marked("Rotor"),
    "propeller": marked("Propeller"),
    "plate": marked("Backplate"),
    "screw": marked("Contact screw"),
    "disc": marked("Crank disc"),
}
"""Parts that the left hand can turn."""

STEPS: dict[Part, tuple[float, ...]] = {
    "rotor": (0.1, 1.0, 5.0, 10.0, 30.0, 90.0),
    "propeller": (0.05, 0.25, 1.0, 5.0, 10.0, 30.0, 120.0),
    "plate": (0.05, 0.25, 0.5, 1.0, 5.0),
    "screw": (0.5, 2.0, 10.0, 30.0, 90.0),
    "disc": (0.05, 0.25, 1.0, 5.0, 30.0),
}
"""Steps to choose from [deg]; a tenth of one with Shift, ten with Alt."""

_USUAL: dict[Part, float] = {"rotor": 5.0, "propeller": 5.0, "plate": 0.5, "screw": 2.0, "disc": 1.0}

UNTIL: dict[str, str] = {
    "lamp": marked("until the lamp changes"),
    "mark": marked("until the edge is in line"),
    "widest": marked("until widest open"),
    "stop": marked("until the piston stops"),
    "reading": marked("to a disc reading"),
}

WAYS: dict[Part, tuple[str, str]] = {
    "rotor": (marked("◀ &Against"), marked("&With ▶")),
    "propeller": (marked("◀ &Against"), marked("&With ▶")),
    "plate": (marked("◀ &Against"), marked("&With ▶")),
    "screw": (marked("◀ &Wider"), marked("C&loser ▶")),
    "disc": (marked("reads l&ater"), marked("reads &earlier")),
}
"""Words on the two buttons, for less and for more."""


class HandBox(QFrame):
    """One hand: which, what it holds, and the key that lets go."""

    def __init__(self, look: Look, which: str, key: str) -> None:
        super().__init__()
        self.look, self.full = look, False
        column = QVBoxLayout(self)
        column.setContentsMargins(8, 3, 8, 4)
        column.setSpacing(0)
        self.which, self.holds, self.key = QLabel(which), QLabel(), QLabel(key)
        font = QFont(self.holds.font())
        font.setBold(True)
        self.holds.setFont(font)
        for label in (self.which, self.holds, self.key):
            column.addWidget(label)
        self.setAccessibleName(which)
        look.changed.connect(self._colour)
        self._colour()

    def show_held(self, words: str, full: bool, key: str) -> None:
        """Show what it holds."""
        self.full = full
        self.holds.setText(words)
        self.key.setText(key)
        self.setAccessibleDescription(words)
        self._colour()

    def _colour(self) -> None:
        theme = self.look.theme
        for label in (self.which, self.key):
            tint(label, theme.faint)
        tint(self.holds, theme.text, bold=True)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """A full hand is outlined boldly."""
        theme, painter = self.look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(theme.hand if self.full else theme.hair), 2.0 if self.full else 1.0))
        painter.setBrush(QColor(theme.hand_fill if self.full else theme.base))
        painter.drawRoundedRect(self.rect().adjusted(1, 1, -2, -2), 4.0, 4.0)


class HandsPanel(PracticePanel):
    """Left hand, right hand, and a row that turns what the left hand has hold of."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        practice = model.practice
        self._engine = practice.bench.engaged is not None
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 0, 4, 0)
        column.setSpacing(4)
        boxes = QHBoxLayout()
        self.left = HandBox(look, tr("left hand"), tr("Space holds the rotor"))
        self.right = HandBox(look, tr("right hand"), "")
        boxes.addWidget(self.left, 1)
        boxes.addWidget(self.right, 1)
        column.addLayout(boxes)
        column.addLayout(self._build_turn(practice))
        column.addLayout(self._build_holds(practice))
        # Only now are they no windows of their own.
        self.amount.setVisible(self._engine and practice.exercise.tray.disc_step_deg is not None)
        self.show_right("")
        self._list_parts(practice)

    # -------------------------------------------------------------- building

    def _build_turn(self, practice: Practice) -> QGridLayout:
        grid = QGridLayout()
        grid.setSpacing(4)
        self.part, self.how = QuietCombo(), QuietCombo()
        self.part.setAccessibleName(tr("What the left hand turns"))
        self.how.setAccessibleName(tr("How far to turn"))
        self.how.setToolTip(tr("One step, with Shift a tenth of it, with Alt ten; or slowly until something is seen"))
        self.amount = AmountSpin(0.25, -180.0, 180.0)
        self.amount.setAccessibleName(tr("Reading to turn to, before the disc's zero"))
        self.against, self.with_ = QPushButton(), QPushButton()
        for button in (self.against, self.with_):
            button.setAutoDefault(False)
        self.part.currentIndexChanged.connect(self._part_chosen)
        self.how.currentIndexChanged.connect(self._how_chosen)
        self.against.clicked.connect(self._less)
        self.with_.clicked.connect(self._more)
        grid.addWidget(self.part, 0, 0)
        grid.addWidget(self.how, 0, 1)
        grid.addWidget(self.amount, 0, 2)
        ways = QHBoxLayout()
        ways.addWidget(self.against, 1)
        ways.addWidget(self.with_, 1)
        grid.addLayout(ways, 1, 0, 1, 3)
        grid.setColumnStretch(1, 1)
        return grid

    def _build_holds(self, practice: Practice) -> QHBoxLayout:
        row = QHBoxLayout()
        self.hold = self.check(tr("Hol&d the rotor"), _hold_act, lambda p: p.bench.held)
        row.addWidget(self.hold)
        self.load = QPushButton(tr("Load the train"))
        self.load.setToolTip(
            tr("Press the rotor against rotation, the propeller held: takes all play out of the drive")
        )
        self.load.setAutoDefault(False)
        self.load.clicked.connect(self._load)  # a lambda would keep the box: off the engine nobody owns the button
        self.at_propeller = QPushButton(tr("Hand on the &propeller"))
        self.at_propeller.setCheckable(True)
        self.at_propeller.setAutoDefault(False)
        self.at_propeller.clicked.connect(self.model.take_propeller)
        self.model.propeller.connect(self.at_propeller.setChecked)
        self.sides = QuietCombo()
        for widget in (self.at_propeller, self.load) if self._engine else ():
            row.addWidget(widget)
        if len(practice.sides) > 1:
            self.sides.setAccessibleName(tr("Magneto in view"))
            for side in practice.sides:
                self.sides.addItem(tr("Left") if side == "left" else tr("Right"), side)
            self.sides.activated.connect(self._side_chosen)
            row.addWidget(self.sides)
        row.addStretch(1)
        return row

    # -------------------------------------------------------------- showing

    def show_practice(self, practice: Practice) -> None:
        """Show a room."""
        super().show_practice(practice)
        if practice.mounted != (self.part.findData("rotor") < 0):
            self._list_parts(practice)
        self.hold.setVisible(not practice.mounted)
        self.load.setEnabled(practice.mounted)
        self.sides.setCurrentIndex(self.sides.findData(practice.side))
        now = seen(practice)
        held = practice.bench.held
        if practice.mounted:
            self.left.show_held(tr("the engine holds the rotor"), False, tr("turn by the propeller"))
        elif practice.seat.pinned:
            self.left.show_held(tr("a pin holds the rotor"), False, "")
        else:
            words = tr("rotor, held") if held else tr("nothing: the rotor is free")
            self.left.show_held(words, held, tr("Space lets go") if held else tr("Space holds the rotor"))
        turned = {"plate": now.plate, "screw": now.screw}.get(str(self.part.currentData()), "")
        self.part.setToolTip(turned)
        self.part.setAccessibleDescription(turned)

    def show_right(self, words: str) -> None:
        """Show the thing in the right hand; nothing if empty."""
        self.right.show_held(
            words or tr("nothing"), bool(words), tr("Esc puts it back") if words else tr("keys 1 to 8")
        )

    def _list_parts(self, practice: Practice) -> None:
        """By the propeller where the magneto is on its engine, by the rotor where it is off."""
        disc = self._engine and practice.exercise.tray.disc_step_deg is not None
        parts: list[Part] = [] if practice.mounted else ["rotor"]
        parts += ["propeller"] if self._engine else []
        parts += ["plate", "screw", *(["disc"] if disc else [])]  # type: ignore[list-item]
        kept = self.part.currentData()
        self.part.blockSignals(True)
        self.part.clear()
        for part in parts:
            self.part.addItem(tr(PARTS[part]), part)
        turns = kept in ("rotor", "propeller", None)
        self.part.setCurrentIndex(0 if turns else max(0, self.part.findData(kept)))
        self.part.blockSignals(False)
        self._part_chosen()

    def take(self, part: Part) -> bool:
        """Take a part in the left hand; False where it is not there."""
        index = self.part.findData(part)
        if index >= 0:
            self.part.setCurrentIndex(index)
        return index >= 0

    def _part_chosen(self) -> None:
        part: Part = self.part.currentData()
        tray = self.model.practice.exercise.tray
        there = {
            "lamp": tray.lamp and part != "disc",
            "mark": part in ("rotor", "propeller") and tray.straightedge is not None,
            "widest": part in ("rotor", "propeller"),
            "stop": part == "propeller" and tray.stop,
            "reading": part == "propeller" and tray.disc_step_deg is not None,
        }
        self.how.clear()
        for step in STEPS[part]:
            self.how.addItem(tr("{step}° a step", step=number(step)), step)
        for name, words in UNTIL.items():
            if there[name]:
                self.how.addItem(tr(words), name)
        self.how.setCurrentIndex(self.how.findData(_USUAL[part]))
        for button, words in zip((self.against, self.with_), WAYS[part], strict=True):
            button.setText(tr(words))
            plain = tr(words).replace("&", "").strip("◀▶ ")
            button.setAccessibleName(tr("{part}: {way}", part=tr(PARTS[part]), way=plain))
            button.setToolTip(
                tr("One step, with Shift a tenth of it, with Alt ten; or slowly until something is seen")
            )
        self.show_practice(self.model.practice)

    def _how_chosen(self) -> None:
        self.amount.setEnabled(self.how.currentData() == "reading")

    # -------------------------------------------------------------- turning

    def _less(self) -> None:
        with self.model.asked_by(self.against):
            self._turn(False)

    def _more(self) -> None:
        with self.model.asked_by(self.with_):
            self._turn(True)

    def _turn(self, forward: bool) -> None:
        part, how, model = self.part.currentData(), self.how.currentData(), self.model
        if isinstance(how, float):
            by = how * step_factor(QApplication.keyboardModifiers()) * (1.0 if forward else -1.0)
            turns: dict[str, Callable[[float], do.Act]] = {
                "rotor": do.TurnRotor, "propeller": do.TurnPropeller, "plate": do.TurnPlate,
                "screw": do.TurnScrew, "disc": do.TurnDisc,
            }  # fmt: skip
            model.do(turns[part](by))
        elif how == "reading":
            self.amount.interpretText()
            model.do(do.TurnToReading(self.amount.exact, forward))
        elif part in ("plate", "screw"):
            eased: Eased = part
            model.ease(eased, forward)
        else:
            until: Until = how
            model.do(do.TurnUntil(until, forward))

    def _side_chosen(self, index: int) -> None:
        side: Side = self.sides.itemData(index)
        self.model.do(ViewSide(side))
        self.show_practice(self.model.practice)

    def _load(self) -> None:
        with self.model.asked_by(self.load):
            self.model.do(LoadTrain())


def _hold_act(on: bool) -> do.Act:
    return HoldRotor() if on else do.LetGo()
