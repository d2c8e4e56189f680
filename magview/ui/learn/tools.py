"""The controls of a lesson: those that its steps need, the same and in the same places from first step to last."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Literal

from PySide6.QtGui import QColor, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import (
    QApplication,
    QCheckBox,
    QGridLayout,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QWidget,
)

from magview.bench import actions as bench
from magview.bench.blades import BLADES
from magview.drawing.breaker_end import breaker_end
from magview.practice import actions as do
from magview.practice.lesson import Lesson
from magview.practice.lesson_acts import TOOLS, tools_in
from magview.practice.state import Practice, ReadingKind
from magview.spec.language import marked, number, tr
from magview.ui.kit.inputs import NumberSpin, QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.settings import keep, kept_text
from magview.ui.learn.model import SPEEDS, LessonModel
from magview.ui.pictures.picture_view import step_factor
from magview.ui.practice.controls import AmountSpin, ByRow, PracticePanel

_COLUMNS = 12
_SPEED, _TONE = "lesson/speed", "lesson/tone"

_CHECKS: dict[str, tuple[Callable[[bool], do.Act], Callable[[Practice], bool]]] = {
    "hold": (lambda on: bench.HoldRotor() if on else do.LetGo(), lambda p: p.bench.held),
    "lamp": (do.ConnectLamp, lambda p: p.lamp_on),
    "edge": (do.LayStraightedge, lambda p: p.edge_laid),
    "lock": (bench.TightenLock, lambda p: p.bench.lock_tight),
    "clamps": (bench.TightenClamps, lambda p: p.bench.clamps_tight),
    "switch": (bench.SwitchIgnition, lambda p: p.bench.lead.switch_on),
    "plug": (lambda on: bench.PullPlug(not on), lambda p: p.bench.lead.plug_in),
    "jumper": (bench.FitJumper, lambda p: p.bench.lead.jumper),
    "chocks": (do.Chock, lambda p: p.chocked),
    "fuel": (lambda on: do.MakeSafe("fuel", on), lambda p: "fuel" in p.seen_to),
    "mixture": (lambda on: do.MakeSafe("mixture", on), lambda p: "mixture" in p.seen_to),
    "throttle": (lambda on: do.MakeSafe("throttle", on), lambda p: "throttle" in p.seen_to),
    "leads": (lambda on: do.MakeSafe("leads", on), lambda p: "leads" in p.seen_to),
    "plugs": (do.SparkPlugs, lambda p: p.plugs_out),
    "plug-leads": (do.PlugLeads, lambda p: not p.leads_hang),
    "stop": (do.FitStop, lambda p: p.stop_fitted),
    "nuts": (do.Nuts, lambda p: p.seat.nuts_tight),
}
"""Things that are so or not: the act that makes them so, and how they stand."""

_BUTTONS: dict[str, Callable[[], do.Act]] = {
    "square": lambda: do.Sight(0.0),
    "look": do.InspectContacts,
    "dress": do.DressContacts,
    "meter": do.MeterLead,
    "terminal": do.MeterTerminal,
    "new-lead": lambda: do.Renew("lead"),
    "thumb": do.FeelCompression,
    "marks": bench.PaintMarks,
    "refit": lambda: do.Refit(by_marks=False),
    "lift": do.Remove,
    "leave-chocks": lambda: do.LeaveAsIs("chocks"),
}
"""Things that are done."""

_UNTIL: dict[str, str] = {
    "by": marked("by"),
    "lamp": marked("until the lamp changes"),
    "widest": marked("until widest open"),
    "mark": marked("until edge in line"),
    "stop": marked("until the piston stops"),
    "reading": marked("to a disc reading"),
}
_BY_DISC = {"crank-near", "disc-near", "wrote"}
"""Conditions that are met by turning to a reading of the disc."""
_SPEED_WORDS = {"slow": marked("slow"), "medium": marked("medium"), "fast": marked("fast")}

_WIDTHS = {
    "turn": 12,
    "screw": 6,
    "plate": 6,
    "blades": 6,
    "disc": 6,
    "note": 12,
    "magneto-flange": 6,
    "toothed-disc": 6,
    "parts": 6,
}
"""Columns of twelve that a control takes, where it is not three."""

_NOTES: dict[ReadingKind, str] = {
    "gap": marked("largest gap, mm"),
    "firing": marked("firing, ° before top dead centre"),
    "disc-zero": marked("disc at top dead centre, ° after its zero"),
    "opening": marked("opening, mm past the mark"),
}
"""Readings that a lesson can have written down, with their unit."""


class LessonTools(PracticePanel):
    """Every control of the lesson, in rows."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        super().__init__(model, look)
        self._lesson = model
        self.controls: dict[str, QWidget] = {}
        """By the name in `TOOLS`: a check box, a button, or the row of a control that turns something."""
        self.needed: tuple[str, ...] = ()
        """Names of the controls with a ring round them."""
        self._grid = QGridLayout(self)
        self._grid.setContentsMargins(8, 5, 8, 5)
        self._grid.setHorizontalSpacing(8)
        self._grid.setVerticalSpacing(5)
        for column in range(_COLUMNS):
            self._grid.setColumnStretch(column, 1)
            self._grid.setColumnMinimumWidth(column, 1)
        names = tools_in(model.run.lesson)
        for name in names:
            self.controls[name] = self._build(name, model.run.lesson)
        self._place()
        self.show_practice(model.practice)

    def _build(self, name: str, lesson: Lesson) -> QWidget:
        words = tr(TOOLS[name])
        if name in _CHECKS:
            act, is_on = _CHECKS[name]
            return self.check(words, act, is_on)
        if name in _BUTTONS:
            return self.button(words, _BUTTONS[name])
        match name:
            case "screw":
                return ByRow(words, 1.0, 90.0, (tr("wider"), tr("closer")), self._turned_screw)
            case "plate":
                return ByRow(words, 1.0, 30.0, (tr("against"), tr("with")), self._turned_plate)
            case "disc":
                return ByRow(words, 1.0, 90.0, (tr("less"), tr("more")), self._turned_disc)
            case "magneto-flange" | "toothed-disc":
                face: Literal["magneto", "disc"] = "magneto" if name == "magneto-flange" else "disc"
                return ToothRow(words, self._lesson, face)
            case "blades":
                return BladeRow(self._lesson)
            case "parts":
                return PartRow(self._lesson)
            case "note":
                return NoteRow(self._lesson, lesson)
        self.turn = TurnRow(self._lesson)
        return self.turn

    def _place(self) -> None:
        row, column = 0, 0
        for name, control in self.controls.items():
            wide = _WIDTHS.get(name, 3)
            if column + wide > _COLUMNS:
                row, column = row + 1, 0
            self._grid.addWidget(control, row, column, 1, wide)
            column += wide
        self._grid.setRowStretch(row + 1, 1)  # what room is left over lies below

    def point_out(self, names: tuple[str, ...]) -> None:
        """Put a ring round the controls that the step in hand needs."""
        self.needed = names
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The rings, in the room between the controls."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(self.look.theme.hand), 2.0))
        for name in self.needed:
            if name in self.controls:
                painter.drawRoundedRect(self.controls[name].geometry().adjusted(-3, -2, 3, 2), 3.0, 3.0)

    def _turned_screw(self, by_deg: float) -> None:
        with self.model.asked_by(self.controls["screw"]):
            self.model.do(do.TurnScrew(by_deg))

    def _turned_plate(self, by_deg: float) -> None:
        with self.model.asked_by(self.controls["plate"]):
            self.model.do(do.TurnPlate(by_deg))

    def _turned_disc(self, by_deg: float) -> None:
        self.model.do(do.TurnDisc(by_deg))


class TurnRow(QWidget):
    """Turn rotor or propeller: by so much, or until something happens, which is then seen turning."""

    def __init__(self, model: LessonModel) -> None:
        super().__init__()
        self._model = model
        practice = model.practice
        lesson, tray = model.run.lesson, practice.exercise.tray
        tools, engine = tools_in(lesson), practice.bench.engaged is not None
        waits = {(until.that, until.what) for step in lesson.steps for until in step.until}
        there = {  # nothing that this lesson does not ask for
            "lamp": tray.lamp and "lamp" in tools,
            "widest": ("rotor-near", "widest") in waits or "blades" in tools,
            "mark": tray.straightedge is not None and "edge" in tools,
            "stop": engine and tray.stop and "stop" in tools,
            "reading": engine and tray.disc_step_deg is not None and bool(_BY_DISC & {that for that, _ in waits}),
        }
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        self.label = QLabel(tr("Turn the propeller") if practice.mounted else tr("Turn the rotor"))
        self.until, self.amount, self.speed = QuietCombo(), AmountSpin(1.0, -180.0, 720.0), QuietCombo()
        _narrow(self.until)
        self.until.setAccessibleName(tr("How far to turn"))
        for name, words in _UNTIL.items():
            if there.get(name, True):
                self.until.addItem(tr(words), name)
        self.amount.show_value(5.0)
        self.amount.setAccessibleName(tr("By how many degrees, or to which reading before the disc's zero"))
        self.until.currentIndexChanged.connect(self._until_chosen)
        self.against, self.with_ = QPushButton(tr("◀ Against")), QPushButton(tr("With ▶"))
        for button, way in ((self.against, tr("Turn against rotation")), (self.with_, tr("Turn with rotation"))):
            button.setAutoDefault(False)
            button.setAccessibleName(way)
            button.setToolTip(tr("{way}, by the amount set: with Shift a tenth of it, with Alt ten times", way=way))
        self.against.clicked.connect(partial(self._turn, False))
        self.with_.clicked.connect(partial(self._turn, True))
        self.speed.setAccessibleName(tr("How fast it turns until something happens"))
        for name in SPEEDS:
            self.speed.addItem(tr(_SPEED_WORDS[name]), name)
        kept = kept_text(_SPEED)
        model.speed = kept if kept in SPEEDS else "medium"
        self.speed.setCurrentIndex(self.speed.findData(model.speed))
        self.speed.activated.connect(self._speed_chosen)
        self.tone = QCheckBox(tr("Tone"))
        self.tone.setToolTip(tr("Sound when the lamp shows the contacts opening"))
        self.tone.setChecked(kept_text(_TONE) != "off")
        self.tone.clicked.connect(self._tone_clicked)
        model.opened.connect(self._sound)
        for widget in (self.label, self.until, self.amount, self.against, self.with_, self.speed, self.tone):
            row.addWidget(widget, 1 if widget is self.until else 0)

    def _until_chosen(self, index: int) -> None:
        self.amount.setEnabled(self.until.currentData() in ("by", "reading"))

    def _speed_chosen(self, index: int) -> None:
        self._model.speed = self.speed.itemData(index)
        keep(_SPEED, self._model.speed)

    def _tone_clicked(self, on: bool) -> None:
        keep(_TONE, "on" if on else "off")

    def _sound(self) -> None:
        if self.tone.isChecked():
            QApplication.beep()

    def _turn(self, forward: bool, _: bool = False) -> None:
        self.amount.interpretText()
        what, amount = self.until.currentData(), self.amount.exact
        with self._model.asked_by(self.with_ if forward else self.against):
            if what == "by":
                by = abs(amount) * step_factor(QApplication.keyboardModifiers()) * (1.0 if forward else -1.0)
                self._model.do(do.TurnPropeller(by) if self._model.practice.mounted else do.TurnRotor(by))
            elif what == "reading":
                self._model.do(do.TurnToReading(amount, forward))
            else:
                self._model.do(do.TurnUntil(what, forward))


def _narrow(combo: QuietCombo) -> None:
    """Let a list of long choices be as narrow as its row needs; the list itself shows them whole."""
    combo.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
    combo.setMinimumContentsLength(10)


class ToothRow(QWidget):
    """One tooth of the coupling, either way."""

    def __init__(self, name: str, model: LessonModel, face: Literal["magneto", "disc"]) -> None:
        super().__init__()
        self._model, self._face = model, face
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.addWidget(QLabel(name), 1)
        self.against, self.with_ = QPushButton(tr("against")), QPushButton(tr("with"))
        ways: tuple[tuple[QPushButton, Literal[1, -1]], ...] = ((self.against, -1), (self.with_, 1))
        for button, way in ways:
            button.setAutoDefault(False)
            button.setAccessibleName(f"{name} {button.text()}")
            button.clicked.connect(partial(self._move, way))
            row.addWidget(button)

    def _move(self, way: Literal[1, -1], _: bool = False) -> None:
        with self._model.asked_by(self.with_ if way > 0 else self.against):
            self._model.do(do.MoveTooth(self._face, way))


class PartRow(QWidget):
    """A part by its name, for who does not point with a mouse."""

    def __init__(self, model: LessonModel) -> None:
        super().__init__()
        self._model = model
        self.part = QuietCombo()
        self.part.setAccessibleName(tr("Part"))
        for name in sorted(breaker_end(model.state.magneto).anchors):
            self.part.addItem(tr(name), name)
        self.point = QPushButton(tr("Point at it"))
        self.point.setAutoDefault(False)
        self.point.clicked.connect(self._point)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        row.addWidget(QLabel(tr("Part")))
        row.addWidget(self.part, 1)
        row.addWidget(self.point)

    def _point(self, _: bool = False) -> None:
        self._model.do(do.PointAt(self.part.currentData()))


class BladeRow(QWidget):
    """One feeler blade, or two held together, and what was tried."""

    def __init__(self, model: LessonModel) -> None:
        super().__init__()
        self._model = model
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        sets = model.practice.exercise.tray.blades
        self._kind: Literal["inch", "metric"] = "metric" if "metric" in sets else "inch"
        unit = tr("mm") if self._kind == "metric" else tr("thou")
        self.one, self.two = QuietCombo(), QuietCombo()
        self.two.addItem(tr("alone"), 0.0)
        for blade in BLADES[self._kind]:
            marked_so = number(blade, 2) if self._kind == "metric" else number(blade)
            self.one.addItem(f"{marked_so} {unit}", float(blade))
            self.two.addItem(f"+ {marked_so}", float(blade))
        self.one.setAccessibleName(tr("Feeler blade"))
        self.two.setAccessibleName(tr("Second blade held with it"))
        self.try_it = QPushButton(tr("Try it"))
        self.try_it.setAutoDefault(False)
        self.try_it.clicked.connect(self._try)
        row.addWidget(QLabel(tr("Blade")))
        for widget in (self.one, self.two, self.try_it):
            row.addWidget(widget, 1)

    def _try(self, _: bool = False) -> None:
        one, two = self.one.currentData(), self.two.currentData()
        with self._model.asked_by(self.try_it):
            self._model.do(do.TryBlades((one, two) if two else (one,), self._kind))


class NoteRow(QWidget):
    """One reading to be written down."""

    def __init__(self, model: LessonModel, lesson: Lesson) -> None:
        super().__init__()
        self._model = model
        kinds = [u.what for step in lesson.steps for u in step.until if u.that == "wrote"]
        self.kind = QuietCombo()
        for kind, words in _NOTES.items():
            if kind in kinds:
                self.kind.addItem(tr(words), kind)
        _narrow(self.kind)
        self.kind.setAccessibleName(tr("Reading to write down"))
        self.value = NumberSpin(0.01, -360.0, 360.0, places=3)
        self.value.show_value(0.0)
        self.value.setAccessibleName(tr("Its number"))
        self.write = QPushButton(tr("Write down"))
        self.write.setAutoDefault(False)
        self.write.clicked.connect(self._write)
        row = QHBoxLayout(self)
        row.setContentsMargins(0, 0, 0, 0)
        row.setSpacing(4)
        row.addWidget(self.kind, 1)
        row.addWidget(self.value)
        row.addWidget(self.write)

    def _write(self, _: bool = False) -> None:
        self.value.interpretText()
        with self._model.asked_by(self.write):
            kind, value = self.kind.currentData(), self.value.exact
            # A disc's reading is typed positive after its zero and kept as what is before it.
            self._model.do(do.WriteReading(kind, 0.0 - value if kind == "disc-zero" else value))
