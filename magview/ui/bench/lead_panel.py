"""The switch lead: plug, switch, jumper and faults, with light and meter reading the circuit that results."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial

from PySide6.QtCore import QSize, QSizeF
from PySide6.QtGui import QPainter, QPaintEvent
from PySide6.QtWidgets import QCheckBox, QFormLayout, QGridLayout, QGroupBox, QLabel, QVBoxLayout, QWidget

from magview.bench.actions import (
    Action,
    ChooseLamp,
    FitJumper,
    PullPlug,
    SetLeadFault,
    SlipPaper,
    SwitchIgnition,
    SwitchOther,
)
from magview.bench.lead_words import (
    CANNOT_TELL,
    LAMPS,
    MAKING_SAFE,
    WORK_OFF_THE_ENGINE,
    lead_words,
    other_words,
    tab_words,
)
from magview.bench.state import BenchState
from magview.drawing.lead_picture import shows_other
from magview.drawing.lead_scene import lead_scene
from magview.spec.language import marked, tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.kit.style import tint
from magview.ui.pictures.scene_painter import ScenePainter
from magview.ui.pictures.scheme_view import SchemeView

PROVING = marked(
    "Prove each lead before touching the propeller: jumper on where there is no tab, plug out, meter from the lead's "
    "plug to the case: ground with the switch off, none with it on. A lead that shows no ground with the switch off "
    "leaves the magneto live. Prove it again after closing."
)


class LeadDiagram(SchemeView):
    """The diagram, drawn anew for each state."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(model, look, parent)
        self._painters = (ScenePainter(look.theme),)
        self.setMinimumHeight(round(19 * self.fontMetrics().height()))
        self.setAccessibleName(tr("Switch lead, drawn as a circuit"))
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        look.changed.connect(self._look_changed)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Follow the bench to its new state."""
        self.picture = lead_scene(state)
        self.setAccessibleDescription(self.picture.description)
        self.update()

    def _look_changed(self) -> None:
        self._painters[0].set_theme(self.look.theme)
        self.draw_lines(1.0)
        self.update()

    def picture_size(self) -> QSize:
        """Size of the picture [px], or while its page has not been seen, the size it would have alone."""
        if self.height() >= self.minimumHeight():
            return self.size()
        return QSize(2 * self.minimumHeight(), self.minimumHeight())

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw the circuit."""
        painter = QPainter(self)
        self.paint_picture(painter, self.devicePixelRatioF())
        painter.end()

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Draw the circuit, with so many pixels of the device for each of ours; 0 on paper: only lines."""
        self._painters[0].paint(painter, self.picture, QSizeF(self.picture_size()), self.font(), None, ratio)


class LeadPanel(QWidget):
    """Switch, plug, jumper and faults to set, and what comes of it."""

    def __init__(self, model: BenchModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look = model, look
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        self.diagram = LeadDiagram(model, look)
        layout.addWidget(self.diagram)
        self.says = _wrapped()
        self.says.setMinimumHeight(3 * self.fontMetrics().height())
        layout.addWidget(self.says)
        self.tab_is = _wrapped()
        layout.addWidget(self.tab_is)
        self.switch = self._check(tr("Ignition switch &on"), SwitchIgnition)
        self.other = self._check(tr("Switch of the other &magneto on"), SwitchOther)
        self.plug = self._check(tr("Plug o&ut of the magneto"), PullPlug)
        self.jumper = self._check(tr("Jumper on the terminal"), FitJumper)
        self.paper = self._check(tr("Paper under the grounding tab"), SlipPaper)
        self.lamp = QuietCombo()
        self.lamp.setAccessibleName(tr("Timing light"))
        self.lamp.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        for kind, words in LAMPS.items():
            self.lamp.addItem(f"{tr(words)[:1].upper()}{tr(words)[1:]}", kind)
        self.lamp.activated.connect(lambda _: self._model.send(ChooseLamp(self.lamp.currentData())))
        self.broken = self._fault(tr("Lead &broken inside"), "broken")
        self.chafed = self._fault(tr("Lead chafed through to ground"), "chafed")
        self.short = self._fault(tr("&Short inside the magneto"), "shorted")
        self.tab = self._fault(tr("Grounding tab bent clear of the c&ase"), "tab")
        self.never_opens = self._fault(tr("Switch that &never opens"), "never-opens")
        self.never_closes = self._fault(tr("Switch that never closes"), "never-closes")
        self.crossed = self._fault(tr("Leads of left and right crossed"), "crossed")
        for title, checks in (
            (tr("Hands on"), (self.switch, self.other, self.plug, self.jumper, self.paper)),
            (
                tr("Faults to try"),
                (
                    self.broken, self.chafed, self.short, self.tab, self.never_opens, self.never_closes, self.crossed,
                ),
            ),
        ):  # fmt: skip
            box = QGroupBox(title)
            grid = QGridLayout(box)
            for i, check in enumerate(checks):
                grid.addWidget(check, i, 0)  # one below the other: two wide, they push the window off a small screen
            layout.addWidget(box)
        light = QFormLayout()
        light.addRow(tr("Timing light"), self.lamp)
        layout.addLayout(light)
        for words in (PROVING, CANNOT_TELL):
            layout.addWidget(_wrapped(tr(words)))
        self.warning = _wrapped()
        layout.addWidget(self.warning)
        layout.addStretch(1)
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        look.changed.connect(self._show_again)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Follow the bench to its new state."""
        lead, has_tab = state.lead, state.magneto.grounding_tab is True
        for check, value in (
            (self.switch, lead.switch_on), (self.other, lead.other_on), (self.plug, not lead.plug_in),
            (self.jumper, lead.jumper), (self.paper, lead.paper), (self.broken, lead.broken),
            (self.chafed, lead.chafed), (self.short, lead.shorted), (self.tab, not lead.tab_touches),
            (self.never_opens, lead.switch == "never-opens"), (self.never_closes, lead.switch == "never-closes"),
            (self.crossed, lead.crossed),
        ):  # fmt: skip
            check.setChecked(value)
        self.lamp.setCurrentIndex(self.lamp.findData(state.lamp_kind))
        for check in (self.paper, self.tab):
            check.setEnabled(has_tab)
        self.other.setEnabled(shows_other(state))
        self.tab_is.setText(" ".join(w for w in (tab_words(state.magneto), other_words(state)) if w))
        off_engine = state.engaged is None or not state.engaged.mounted
        self.warning.setText(tr(WORK_OFF_THE_ENGINE if off_engine else MAKING_SAFE))
        words, dangerous = lead_words(state)
        self.says.setText(f"{'⚠ ' if dangerous else ''}{words}")
        colour = self.look.theme.bad if dangerous else self.look.theme.good
        tint(self.says, colour, bold=True)

    def _show_again(self) -> None:
        self.show_state(self._model.state)

    def halt(self) -> None:
        """Nothing runs here."""

    def _check(self, text: str, action: Callable[[bool], Action]) -> QCheckBox:
        check = QCheckBox(text)
        check.clicked.connect(lambda on: self._model.send(action(on)))
        return check

    def _fault(self, text: str, fault: str) -> QCheckBox:
        return self._check(text, partial(SetLeadFault, fault))


def _wrapped(text: str = "") -> QLabel:
    label = QLabel(text)
    label.setWordWrap(True)
    return label
