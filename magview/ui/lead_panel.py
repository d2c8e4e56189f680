"""The switch lead: plug, switch and faults, with lamp and meter reading the circuit that results."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QFontMetricsF, QPainter, QPaintEvent, QPen, QPolygonF
from PySide6.QtWidgets import QCheckBox, QGroupBox, QLabel, QVBoxLayout, QWidget

from magview.bench.actions import PullPlug, SetLeadFault, SwitchIgnition
from magview.bench.lead_picture import HEIGHT, WIDTH, lead_picture, lead_words, meter_words
from magview.bench.state import BenchState
from magview.spec.language import marked, tr
from magview.ui.model import BenchModel
from magview.ui.style import tint
from magview.ui.theme import Theme

PROVING = marked(
    "Prove the lead before touching the propeller: plug out, meter from the lead's plug to the case: ground with the "
    "switch off, none with it on. A lead that shows no ground with the switch off leaves the magneto live. Treat the "
    "propeller as live all the same."
)

_KINDS = {"wire": 1.4, "part": 2.2, "fault": 2.6, "ground": 1.6}


class LeadDiagram(QWidget):
    """The diagram, drawn anew for each state."""

    def __init__(self, model: BenchModel, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self._theme = model, theme
        self.setMinimumHeight(round(16 * self.fontMetrics().height()))
        self.setAccessibleName(tr("Switch lead, drawn as a circuit"))
        self.show_state(model.state)
        model.changed.connect(self.show_state)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state."""
        self.setAccessibleDescription(lead_words(state)[0])
        self.update()

    def set_theme(self, theme: Theme) -> None:
        """Change colours."""
        self._theme = theme
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Draw lines, words, lamp and meter."""
        picture = lead_picture(self._model.state)
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.fillRect(self.rect(), QColor(self._theme.paper))
        metrics = QFontMetricsF(self.font())
        foot = 2.2 * metrics.height()
        scale = min(self.width() / WIDTH, (self.height() - foot) / HEIGHT)
        left = (self.width() - scale * WIDTH) / 2

        def at(x: float, y: float) -> QPointF:
            return QPointF(left + scale * x, scale * (HEIGHT - y))

        for stroke in picture.strokes:
            colour = self._theme.bad if stroke.kind == "fault" else self._theme.text
            painter.setPen(QPen(QColor(colour), _KINDS[stroke.kind]))
            painter.drawPolyline(QPolygonF([at(x, y) for x, y in stroke.points.tolist()]))
        painter.setPen(QColor(self._theme.text))
        for text, (x, y) in picture.words:
            painter.drawText(at(x, y), tr(text))
        self._instruments(painter, picture.lamp_lit, metrics)
        painter.end()

    def _instruments(self, painter: QPainter, lit: bool, metrics: QFontMetricsF) -> None:
        size, y = metrics.height(), self.height() - 1.1 * metrics.height()
        lamp = QRectF(10, y - size / 2, size, size)
        painter.setBrush(QColor("#ffd83d") if lit else Qt.BrushStyle.NoBrush)
        painter.drawEllipse(lamp)
        if not lit:  # a dark lamp is crossed: light is told without colour too
            painter.drawLine(lamp.topLeft(), lamp.bottomRight())
        says = tr("Lamp: open") if lit else tr("Lamp: closed")
        painter.drawText(QPointF(16 + size, y + metrics.ascent() / 2 - 1), says)
        meter = meter_words(self._model.state)
        x = self.width() - metrics.horizontalAdvance(meter) - 10
        painter.drawText(QPointF(x, y + metrics.ascent() / 2 - 1), meter)


class LeadPanel(QWidget):
    """Switch, plug and faults to set, and what comes of it."""

    def __init__(self, model: BenchModel, theme: Theme, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self._theme = model, theme
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        self.diagram = LeadDiagram(model, theme)
        layout.addWidget(self.diagram)
        self.says = QLabel()
        self.says.setWordWrap(True)
        self.says.setMinimumHeight(3 * self.fontMetrics().height())
        layout.addWidget(self.says)
        hands, faults = QGroupBox(tr("Hands on")), QGroupBox(tr("Faults to try"))
        self.switch = QCheckBox(tr("Ignition switch &on"))
        self.plug = QCheckBox(tr("Plug o&ut of the magneto"))
        self.broken = QCheckBox(tr("Lead &broken inside"))
        self.short = QCheckBox(tr("&Short inside the magneto"))
        self.tab = QCheckBox(tr("Spring tab bent clear of the c&ase"))
        for box, checks in ((hands, (self.switch, self.plug)), (faults, (self.broken, self.short, self.tab))):
            column = QVBoxLayout(box)
            for check in checks:
                column.addWidget(check)
            layout.addWidget(box)
        self.switch.clicked.connect(self._switched)
        self.plug.clicked.connect(self._pulled)
        self.broken.clicked.connect(self._broke)
        self.short.clicked.connect(self._shorted)
        self.tab.clicked.connect(self._bent)
        proving = QLabel(tr(PROVING))
        proving.setWordWrap(True)
        layout.addWidget(proving)
        layout.addStretch(1)
        self.show_state(model.state)
        model.changed.connect(self.show_state)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state."""
        lead = state.lead
        for check, value in (
            (self.switch, lead.switch_on), (self.plug, not lead.plug_in), (self.broken, lead.broken),
            (self.short, lead.shorted), (self.tab, not lead.tab_touches),
        ):  # fmt: skip
            check.setChecked(value)
        words, dangerous = lead_words(state)
        self.says.setText(f"{'⚠ ' if dangerous else ''}{words}")
        colour = self._theme.bad if dangerous else self._theme.good
        tint(self.says, colour, bold=True)

    def halt(self) -> None:
        """Nothing runs here."""

    def set_inches(self, inches: bool) -> None:
        """There are no lengths here."""

    def set_theme(self, theme: Theme) -> None:
        """Change colours."""
        self._theme = theme
        self.diagram.set_theme(theme)
        self.show_state(self._model.state)

    def _switched(self, on: bool) -> None:
        self._model.send(SwitchIgnition(on))

    def _pulled(self, out: bool) -> None:
        self._model.send(PullPlug(out))

    def _broke(self, present: bool) -> None:
        self._model.send(SetLeadFault("broken", present))

    def _shorted(self, present: bool) -> None:
        self._model.send(SetLeadFault("shorted", present))

    def _bent(self, present: bool) -> None:
        self._model.send(SetLeadFault("tab", present))
