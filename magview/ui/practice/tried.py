"""Blades tried and things seen: the blades as a row, the sentence that follows, and a line for each instrument."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import QEvent, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFormLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from magview.practice.actions import Act
from magview.practice.screen_words import seen
from magview.practice.state import Practice
from magview.practice.tried import FEELS, Tried, follows, tried_in
from magview.spec.language import number, tr
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.practice.controls import PracticePanel, Reserved, wrapped
from magview.ui.practice.model import AttemptModel, PracticeModel

CELLS = 6
"""Blades shown in the row."""

_BESIDE = 9.0
"""Room beside a cell's words, with its frame [px]."""

_EMPTY = 0.3
"""Least width of a place without blades, as a share of an even one."""


@dataclass(frozen=True)
class Cell:
    """One blade, or a stack, and how it felt; nothing for one that is in hand."""

    blades: tuple[float, ...]
    words: str
    feel: str = ""
    in_hand: bool = False


def cells_of(tried: Tried, hand: tuple[float, ...], kind: str) -> list[Cell]:
    """The tries since anything moved and what is in hand, from thin to thick; the last where there are many."""
    cells = [Cell(t.blades, t.words, t.feel, t.blades == hand) for t in tried.now if t.kind == kind][-CELLS:]
    if hand and all(cell.blades != hand for cell in cells):
        cells = [*cells[-(CELLS - 1) :], Cell(hand, " + ".join(number(b) for b in hand), "", True)]
    return sorted(cells, key=lambda cell: sum(cell.blades))


class TriedRow(QWidget):
    """Six places for blades, each with what it did; a sign and a word beside the colour."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.look = look
        self.cells: list[Cell] = []
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        self.setAccessibleName(tr("Blades tried here"))
        look.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        """Two lines of type."""
        return QSize(CELLS * 8 * self.fontMetrics().averageCharWidth(), round(2.7 * self.fontMetrics().height()))

    def minimumSizeHint(self) -> QSize:
        """The same height, narrower."""
        return QSize(CELLS * 5 * self.fontMetrics().averageCharWidth(), self.sizeHint().height())

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self.updateGeometry()

    def show_cells(self, cells: Sequence[Cell]) -> None:
        """Show what was tried."""
        self.cells = list(cells)
        self.setAccessibleDescription("; ".join(f"{cell.words} {_told(cell)}" for cell in self.cells))
        self.update()

    def boxes(self) -> list[QRectF]:
        """The places from left to right, all of one width; a stack that needs more takes it from the others."""
        bold = QFont(self.font())
        bold.setBold(True)
        metrics, even = QFontMetricsF(bold), self.width() / CELLS
        needs = [metrics.horizontalAdvance(cell.words) + _BESIDE for cell in self.cells]
        wanted = [max(0.0, need - even) for need in needs] + [0.0] * (CELLS - len(needs))
        spare = [even - (needs[i] if i < len(needs) else _EMPTY * even) for i in range(CELLS)]
        given, asked = sum(max(0.0, room) for room in spare), sum(wanted)
        share = min(1.0, given / asked) if asked else 0.0
        boxes, left = [], 0.0
        for more, room in zip(wanted, spare, strict=True):
            wide = even + share * more - (max(0.0, room) * share * asked / given if given else 0.0)
            boxes.append(QRectF(left + 1.5, 1.5, wide - 3.0, self.height() - 3.0))
            left += wide
        return boxes

    def paintEvent(self, event: QPaintEvent) -> None:
        """The places."""
        theme, painter = self.look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        bold = QFont(self.font())
        bold.setBold(True)
        for i, box in enumerate(self.boxes()):
            cell = self.cells[i] if i < len(self.cells) else None
            fill, line = theme.base, theme.hair
            if cell is not None and cell.feel:
                fill, line = (theme.bad_fill, theme.bad) if cell.feel == "no-go" else (theme.good_fill, theme.good)
            in_hand = cell is not None and cell.in_hand
            if in_hand:
                line = theme.hand
            pen = QPen(QColor(line), 2.0 if in_hand else 1.0)
            pen.setStyle(Qt.PenStyle.DashLine if in_hand else Qt.PenStyle.SolidLine)
            painter.setPen(pen)
            painter.setBrush(QColor(fill))
            painter.drawRoundedRect(box, 3.0, 3.0)
            if cell is None:
                continue
            half = box.height() / 2
            painter.setFont(bold)
            painter.setPen(QColor(theme.text))
            words = painter.fontMetrics().elidedText(cell.words, Qt.TextElideMode.ElideMiddle, round(box.width()) - 4)
            painter.drawText(box.adjusted(0, 2, 0, -half), int(Qt.AlignmentFlag.AlignCenter), words)
            painter.setFont(self.font())
            painter.setPen(QColor(line if cell.feel or in_hand else theme.faint))
            painter.drawText(box.adjusted(0, half - 2, 0, 0), int(Qt.AlignmentFlag.AlignCenter), _told(cell))


def _told(cell: Cell) -> str:
    if cell.feel:
        return tr(FEELS[cell.feel])
    return tr("in hand")


class TriedPanel(PracticePanel):
    """The row, its sentence, and lamp, edge, disc and finger as they are seen now."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        tray, engine = model.practice.exercise.tray, model.practice.bench.engaged is not None
        self.tried = tried_in(model.session) if isinstance(model, AttemptModel) else Tried()
        self._hand: tuple[float, ...] = ()
        self._kind = str(tray.blades[0]) if tray.blades else ""
        column = QVBoxLayout(self)
        column.setContentsMargins(4, 0, 4, 0)
        column.setSpacing(3)
        self.title, self.row, self.sentence = QLabel(tr("What you tried")), TriedRow(look), Reserved(2)
        self.sentence.setAccessibleName(tr("What follows from it"))
        if tray.blades:
            for widget in (self.title, self.row, self.sentence):
                column.addWidget(widget)
        form = QFormLayout()
        form.setVerticalSpacing(2)
        form.setHorizontalSpacing(10)
        self.lamp_words = QLabel()
        self.edge, self.eye, self.said = Reserved(1), Reserved(1), Reserved(1)
        self.disc, self.finger = wrapped(), wrapped()
        if tray.lamp:
            form.addRow(tr("lamp"), self.lamp_words)
        if tray.straightedge is not None:
            form.addRow(tr("edge"), self.edge)
            form.addRow(tr("eye"), self.eye)
        if engine and tray.disc_step_deg is not None:
            form.addRow(tr("disc"), self.disc)
        if engine:
            form.addRow(tr("finger"), self.finger)
        form.addRow(tr("answer"), self.said)
        column.addLayout(form)
        self.show_practice(model.practice)
        self._show_row()

    def _acted(self, act: Act, new: Practice, old: Practice) -> None:
        self.tried = self.tried.after(act, new)
        super()._acted(act, new, old)
        self._show_row()

    def show_blades(self, blades: tuple[float, ...], kind: str) -> None:
        """Show what is in hand among what was tried."""
        self._hand, self._kind = blades, kind
        self._show_row()

    def _show_row(self) -> None:
        self.row.show_cells(cells_of(self.tried, self._hand, self._kind))
        self.sentence.setText(follows(self.tried.now))
        tint(self.title, self.look.theme.text, bold=True)
        tint(self.sentence, self.look.theme.text, bold=bool(self.tried.now))

    def show_practice(self, practice: Practice) -> None:
        """Show a room."""
        now = seen(practice)
        self.lamp_words.setText(now.lamp)
        tint(self.lamp_words, self.look.theme.text, bold=now.lamp == tr("lit"))
        self.edge.setText(now.straightedge)
        self.eye.setText(now.eye or "–")
        self.disc.setText(now.disc)
        self.finger.setText(now.finger)
        self.said.setText(now.said or "–")
        tint(self.said, self.look.theme.text, bold=bool(now.said))

    def keep_room(self, roomy: bool) -> None:
        """Two lines for those that may say so much, so that nothing below moves; a small window has not the room."""
        for label in (self.said, self.sentence):
            label.reserve(2 if roomy else 1)
