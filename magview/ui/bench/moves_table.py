"""The planner's moves as rows: A and B, an arrow from the reading to the result on one scale, and the result."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QLineF, QModelIndex, QPersistentModelIndex, QPointF, QRectF, Qt
from PySide6.QtGui import QColor, QKeyEvent, QPainter, QPalette, QPen, QPolygonF
from PySide6.QtWidgets import QApplication, QStyle, QStyledItemDelegate, QStyleOptionViewItem

from magview.bench.lamp_words import btdc_words
from magview.bench.planned import Planned
from magview.bench.words import short_words
from magview.physics.engine.coupling import Move
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.kit.table import Table

_SCALE, _EXPECT = 2, 3
_ROWS = 4
"""Moves that the scale has room for."""
_SEEN = 3
"""Rows that are seen at once, so that the next act stays in view."""
_TALL = 2.3
"""Height of a row [lines of type]."""


class MovesTable(Table):
    """Up and Down go from one move to the next. All arrows are on one scale."""

    def __init__(self, look: Look) -> None:
        heads = (tr("A disc"), tr("B magneto flange"), "", tr("expect"))
        super().__init__(tr("Moves of the coupling, best first"), heads, wide=(_SCALE,), tall=_TALL)
        self.verticalHeader().show()
        self.show_at_most(_SEEN)
        self.setShowGrid(False)
        self.rows.numbers = (_EXPECT,)
        self._look = look
        self.setItemDelegate(_Row(look, self))
        self.arrows = _Arrows(look, self)
        look.changed.connect(self._colour)
        self._colour()
        self.setItemDelegateForColumn(_SCALE, self.arrows)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Up and Down choose a move, the best one first where none is chosen."""
        if self.chosen_row() < 0 and event.key() in (Qt.Key.Key_Up, Qt.Key.Key_Down) and self.row_count():
            self.choose_row(0)
            event.accept()
            return
        super().keyPressEvent(event)

    def _colour(self) -> None:
        """A row that is chosen keeps its own colours, between two lines."""
        palette = self.palette()
        palette.setColor(QPalette.ColorRole.Highlight, QColor(self._look.theme.hand_fill))
        palette.setColor(QPalette.ColorRole.HighlightedText, QColor(self._look.theme.text))
        self.setPalette(palette)

    def show_moves(self, plan: Planned, reads_deg: float, wanted_deg: float, tips: Sequence[str]) -> None:
        """Show the moves of a plan for a reading [crank deg BTDC]."""
        low, high = wanted_deg - plan.tolerance_deg, wanted_deg + plan.tolerance_deg
        self.arrows.set_scale(plan, reads_deg, low, high)
        self.set_heads((
            tr("A disc"), tr("B magneto flange"),
            tr("{low}° to {high}°", low=low, high=high), tr("expect"),
        ))  # fmt: skip
        was = btdc_words(reads_deg)
        self.fill(
            [
                (
                    short_words(move.disc_teeth),
                    short_words(move.magneto_teeth),
                    f"{was} → {btdc_words(move.result_btdc_deg)}",
                    f"{btdc_words(move.result_btdc_deg)} {(Sign.IN if plan.good(move) else Sign.OUT).mark}",
                )
                for move in plan.moves
            ],
            behind=plan.moves,
            tips=tips,
        )


class _Row(QStyledItemDelegate):
    """Paints a cell; of the row that is chosen with a line above and below."""

    def __init__(self, look: Look, parent: MovesTable) -> None:
        super().__init__(parent)
        self._look, self._table = look, parent

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """The cell, and the lines."""
        super().paint(painter, option, index)
        if option.state & QStyle.StateFlag.State_Selected:
            self._outline(painter, QRectF(option.rect))

    def _outline(self, painter: QPainter, rect: QRectF) -> None:
        painter.save()
        painter.setPen(QPen(QColor(self._look.theme.hand), 2.0))
        for y in (rect.top() + 1.0, rect.bottom() - 1.0):
            painter.drawLine(QLineF(rect.left(), y, rect.right(), y))
        painter.restore()


class _Arrows(_Row):
    """Paints an arrow in place of the words that say the same."""

    def __init__(self, look: Look, parent: MovesTable) -> None:
        super().__init__(look, parent)
        self._plan: Planned | None = None
        self._reads, self._limits, self._ends = 0.0, (0.0, 0.0), (0.0, 1.0)

    def set_scale(self, plan: Planned, reads_deg: float, low: float, high: float) -> None:
        """Set the scale of all rows by the reading, the limits and the first moves."""
        told = [reads_deg, low, high, *(move.result_btdc_deg for move in plan.moves[:_ROWS])]
        room = 0.04 * (max(told) - min(told))
        self._plan, self._reads, self._limits = plan, reads_deg, (low, high)
        self._ends = min(told) - room, max(told) + room

    def x_of(self, btdc_deg: float, rect: QRectF) -> float:
        """The place of a firing along a row [px]; beyond the scale it is the scale's end."""
        low, high = self._ends
        share = (btdc_deg - low) / (high - low) if high > low else 0.5
        return rect.left() + min(max(share, 0.0), 1.0) * rect.width()

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """Background, limits as a band, arrow."""
        self.initStyleOption(option, index)
        option.text = ""
        style = option.widget.style() if option.widget is not None else QApplication.style()
        style.drawControl(QStyle.ControlElement.CE_ItemViewItem, option, painter, option.widget)
        move = self._table.rows.behind(index.row())
        if not isinstance(move, Move) or self._plan is None:
            return
        theme, rect = self._look.theme, QRectF(option.rect).adjusted(6, 0, -6, 0)
        good = self._plan.good(move)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        left, right = (self.x_of(limit, rect) for limit in self._limits)
        painter.setPen(Qt.PenStyle.NoPen)
        painter.setBrush(QColor(theme.good_fill))
        painter.drawRect(QRectF(left, rect.top(), right - left, rect.height()))
        painter.setPen(QPen(QColor(theme.good), 1.2))
        for x in (left, right):
            painter.drawLine(QLineF(x, rect.top(), x, rect.bottom()))
        start, end, y = self.x_of(self._reads, rect), self.x_of(move.result_btdc_deg, rect), rect.center().y()
        greyed = not option.state & QStyle.StateFlag.State_Enabled
        ink = QColor(theme.faint if greyed else theme.text if good else theme.bad)
        painter.setPen(QPen(ink, 2.0))
        painter.drawLine(QLineF(start, y, end, y))
        painter.setBrush(ink)
        way = 6.0 if end >= start else -6.0
        painter.drawPolygon(QPolygonF([QPointF(end, y), QPointF(end - way, y - 3.5), QPointF(end - way, y + 3.5)]))
        painter.setBrush(QColor(theme.base))
        painter.drawEllipse(QPointF(start, y), 3.2, 3.2)
        painter.restore()
        if option.state & QStyle.StateFlag.State_Selected:
            self._outline(painter, QRectF(option.rect))
