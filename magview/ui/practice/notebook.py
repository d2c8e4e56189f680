"""The trainee's own notebook: readings with their units, findings, remarks."""

from __future__ import annotations

from typing import get_args

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QFormLayout,
    QHBoxLayout,
    QLabel,
    QLineEdit,
    QListWidget,
    QPushButton,
    QVBoxLayout,
)

from magview.practice import actions as do
from magview.practice.exercise_parts import LeadFault
from magview.practice.screen_words import seen
from magview.practice.state import Practice
from magview.practice.tried import FEELS, UNITS, Try
from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.spec.parse import late_or_early, parse_btdc_deg, parse_disc_deg, parse_length_mm, parse_sided
from magview.ui.kit.inputs import QuantitySpin, QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.style import LEAST_TARGET_PX, tint
from magview.ui.practice.controls import PracticePanel
from magview.ui.practice.model import PracticeModel

_KINDS = {
    "opening": marked("Straightedge past the mark"),
    "gap": marked("Largest gap"),
    "firing": marked("Fires before top dead centre"),
    "disc-zero": marked("Disc reads at top dead centre"),
    "lead": marked("Switch lead"),
    "note": marked("Remark"),
    "running-in": marked("Look again after running in"),
}
_LEADS = {
    "sound": marked("sound"),
    "broken": marked("broken inside"),
    "shorted": marked("short inside the magneto"),
    "tab": marked("grounding tab does not touch"),
    "chafed": marked("lead chafed through to ground"),
    "never-opens": marked("switch never opens"),
    "never-closes": marked("switch never closes"),
    "crossed": marked("crossed with the other magneto's"),
}
_HINTS = {
    "opening": marked("such as 0.8 mm or 30 thou short"),
    "gap": marked("such as 0.33 mm or 13 thou"),
    "firing": marked("such as 25.5°"),
    "disc-zero": marked("such as 3.25 before or 2 after; + is after the zero"),
    "note": marked("one line"),
}
_SAYS = {
    ("opening", True): marked("It says: {amount} past the mark, they open late."),
    ("opening", False): marked("It says: {amount} short of the mark, they open early."),
    ("firing", True): marked("It says: {amount} before top dead centre."),
    ("firing", False): marked("It says: {amount} after top dead centre."),
    ("disc-zero", True): marked("It says: at top dead centre the disc reads {amount} before its zero."),
    ("disc-zero", False): marked("It says: at top dead centre the disc reads {amount} after its zero."),
}
"""Entries that have a sign, in words, by whether what is kept is positive."""


def kinds_for(practice: Practice) -> set[str]:
    """Kinds of entry that the tray can read or a goal asks for; a remark always. No hidden fault changes them."""
    tray, goals = practice.exercise.tray, practice.exercise.goals
    engine, asked = practice.bench.engaged is not None, {goal.goal for goal in goals}
    can = {
        "opening": tray.straightedge is not None and (tray.lamp or bool(tray.blades)),
        "gap": bool(tray.blades),
        "firing": engine and tray.lamp,
        "disc-zero": engine and tray.disc_step_deg is not None,
        "lead": tray.meter or "lead" in asked,
        "note": True,
        "running-in": "contacts" in asked,
    }
    return {kind for kind, there in can.items() if there} | {goal.reading for goal in goals if goal.reading}


class LobeSpin(QuantitySpin):
    """A lobe by its number. What is none is refused in a sentence; Qt's own field would swallow its letters."""

    def __init__(self, lobes: int) -> None:
        self._lobes = lobes
        super().__init__(self._read, 1.0)
        self.setRange(1.0, lobes)
        self.show_value(1.0)

    def _read(self, text: str) -> float:
        if not (text.strip().isdecimal() and 1 <= int(text) <= self._lobes):
            raise SpecError(
                tr(
                    "“{text}” is not a lobe: write a whole number from 1 to {lobes} here, and the reading below",
                    text=text.strip()[:40],
                    lobes=self._lobes,
                )
            )
        return float(int(text))

    def textFromValue(self, value: float) -> str:
        """A whole number."""
        return f"{value:.0f}"


class NotebookPanel(PracticePanel):
    """A line to write, and what has been written."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        self._rows: tuple[str, ...] = ()
        layout = QVBoxLayout(self)
        layout.setContentsMargins(4, 2, 4, 2)
        self.title = QLabel(tr("Notebook"))
        layout.addWidget(self.title)
        form = QFormLayout()
        form.setVerticalSpacing(3)
        layout.addLayout(form)  # before any row is shown: until then a field would be a window of its own
        self.kind, self.side, self.lead = QuietCombo(), QuietCombo(), QuietCombo()
        offered = kinds_for(model.practice)
        for kind, words in _KINDS.items():
            if kind in offered:
                self.kind.addItem(tr(words), kind)
        self.kind.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.kind.setMinimumContentsLength(16)
        for side in model.practice.sides:
            self.side.addItem(tr("Left magneto") if side == "left" else tr("Right magneto"), side)
        for fault in get_args(LeadFault):
            self.lead.addItem(tr(_LEADS[fault]), fault)
        self.lobe = LobeSpin(len(model.practice.bench.magneto.cam.lobe_peaks_deg))
        self.lobe.said.connect(self._refuse)
        self.value = QLineEdit()
        self.value.setMaxLength(400)
        self.value.returnPressed.connect(self._write)
        self.says = QLabel()
        self.says.setWordWrap(True)
        self.says.setAccessibleName(tr("Meaning of the entry"))
        self.value.textChanged.connect(self._tell_sign)
        self.unread = QLabel()
        self.unread.setWordWrap(True)
        self.unread.setAccessibleName(tr("What is wrong with the entry"))
        self.write = QPushButton(tr("Writ&e"))
        self.write.setAutoDefault(False)
        self.write.clicked.connect(self._write)
        what = QHBoxLayout()
        what.setSpacing(6)
        what.addWidget(self.kind, 1)
        of_lobe = QLabel(tr("lo&be"))
        of_lobe.setBuddy(self.lobe)
        what.addWidget(of_lobe)
        what.addWidget(self.lobe)
        which = QLabel(tr("Wha&t"))
        which.setBuddy(self.kind)
        form.addRow(which, what)
        of_lobe.setVisible("gap" in offered)
        self.lobe.setVisible("gap" in offered)
        form.addRow(tr("Ma&gneto"), self.side)
        told = QHBoxLayout()
        self.value.setMinimumHeight(LEAST_TARGET_PX)  # as tall as the list that takes its place
        told.addWidget(self.value, 1)
        told.addWidget(self.lead, 1)
        told.addWidget(self.write)
        beside = QLabel(tr("Wo&rds"))
        beside.setBuddy(self.value)
        form.addRow(beside, told)
        form.addRow(self.says)
        form.addRow(self.unread)
        form.setRowVisible(self.side, len(model.practice.sides) > 1)
        form.setRowVisible(self.unread, False)
        self._form = form
        self.lines = QListWidget()
        self.lines.setAccessibleName(tr("Notebook"))
        self.lines.setWordWrap(True)
        self.lines.setMinimumHeight(5 * self.fontMetrics().height())
        self.lines.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        layout.addWidget(self.lines, 1)
        self.kind.currentIndexChanged.connect(self._kind_chosen)
        self._kind_chosen(0)
        self.show_practice(model.practice)

    def show_rows(self, rows: tuple[tuple[Try, ...], ...]) -> None:
        """Show what was tried at places that the rotor has left since."""
        self._rows = tuple(
            tr("Tried: {row}", row="; ".join(f"{t.words} {UNITS[t.kind]} {tr(FEELS[t.feel])}" for t in row))
            for row in rows
        )
        self.show_practice(self.model.practice)

    def show_practice(self, practice: Practice) -> None:
        """Show a room."""
        tint(self.title, self.look.theme.text, bold=True)
        written = list(seen(practice).notebook)
        if len(practice.sides) > 1:
            sides = [note.side for note in practice.notebook]
            written = [
                tr("Left: {line}", line=line) if side == "left" else tr("Right: {line}", line=line)
                for side, line in zip(sides, written, strict=True)
            ]
        lines = [*self._rows, *written]
        if lines != [self.lines.item(i).text() for i in range(self.lines.count())]:
            self.lines.clear()
            self.lines.addItems(lines)
            self.lines.scrollToBottom()
        if practice.side != self.side.currentData() and not self.value.isModified():
            self.side.setCurrentIndex(self.side.findData(practice.side))

    def _kind_chosen(self, index: int) -> None:
        kind = self.kind.currentData()
        self.lobe.setEnabled(kind == "gap")  # its row stays, so that nothing moves under the hand
        self.lead.setVisible(kind == "lead")
        self.value.setVisible(kind != "lead")
        self.value.setEnabled(kind != "running-in")
        self.value.setPlaceholderText(tr(_HINTS[kind]) if kind in _HINTS else "")
        self._tell_sign()
        self._say("")

    def _tell_sign(self) -> None:
        """Say in words what is typed, before it is written down."""
        kind, words = self.kind.currentData(), ""
        if (kind, True) in _SAYS:
            try:
                value = self._act(kind, self.value.text().strip()).value
            except ValueError:
                value = None
            if value:
                amount = abs(value)
                shown = tr("{amount:length}", amount=amount) if kind == "opening" else tr("{amount}°", amount=amount)
                words = tr(_SAYS[kind, value > 0.0], amount=shown)
        self.says.setText(words or " ")

    def _write(self) -> None:
        kind, side, text = self.kind.currentData(), self.side.currentData(), self.value.text().strip()
        try:
            act = self._act(kind, text)
        except SpecError as error:
            self._refuse(str(error))
            return
        if self.model.do(do.WriteReading(act.kind, act.value, side, act.text, act.lobe)):
            self._say("")
            self.value.clear()
            self.value.setModified(False)

    def _act(self, kind: str, text: str) -> do.WriteReading:
        match kind:
            case "lead":
                return do.WriteReading("lead", text=self.lead.currentData())
            case "running-in":
                return do.WriteReading("running-in")
            case "note":
                if not text:
                    raise SpecError(tr("there is nothing to write down yet"))
                return do.WriteReading("note", text=text)
            case "opening":
                return do.WriteReading("opening", parse_sided(text, parse_length_mm, *late_or_early()))
            case "gap":
                return do.WriteReading("gap", parse_length_mm(text), lobe=round(self.lobe.exact))
            case "firing":
                return do.WriteReading("firing", parse_btdc_deg(text))
        return do.WriteReading("disc-zero", 0.0 - parse_disc_deg(text))  # kept as what is before the zero

    def _refuse(self, sentence: str) -> None:
        self._say(f"{sentence[0].upper()}{sentence[1:]}.")

    def _say(self, sentence: str) -> None:
        self.unread.setText(sentence)
        self._form.setRowVisible(self.unread, bool(sentence))
