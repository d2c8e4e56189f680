"""Items of a list that are written with bold words and several lines, in the list's own colours."""

from __future__ import annotations

from PySide6.QtCore import QModelIndex, QPersistentModelIndex, QRectF, QSize
from PySide6.QtGui import QAbstractTextDocumentLayout, QPainter, QPalette, QTextDocument
from PySide6.QtWidgets import QApplication, QListWidget, QStyle, QStyledItemDelegate, QStyleOptionViewItem

_MARGIN = 5.0


class RichItems(QStyledItemDelegate):
    """Draws an item's words as rich text, as wide as the list."""

    def __init__(self, view: QListWidget) -> None:
        super().__init__(view)
        self._view = view

    def _document(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QTextDocument:
        document = QTextDocument()
        document.setDocumentMargin(_MARGIN)
        document.setDefaultFont(option.font)
        document.setHtml(index.data())
        document.setTextWidth(max(80.0, self._view.viewport().width()))
        return document

    def paint(
        self, painter: QPainter, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex
    ) -> None:
        """The item's ground and focus by the style, its words over them."""
        plain = QStyleOptionViewItem(option)
        self.initStyleOption(plain, index)
        document = self._document(plain, index)
        plain.text = ""
        QApplication.style().drawControl(QStyle.ControlElement.CE_ItemViewItem, plain, painter, self._view)
        chosen = bool(plain.state & QStyle.StateFlag.State_Selected)
        role = QPalette.ColorRole.HighlightedText if chosen else QPalette.ColorRole.Text
        context = QAbstractTextDocumentLayout.PaintContext()
        context.palette.setColor(QPalette.ColorRole.Text, plain.palette.color(role))
        painter.save()
        painter.translate(plain.rect.topLeft())
        painter.setClipRect(QRectF(0.0, 0.0, plain.rect.width(), plain.rect.height()))
        document.documentLayout().draw(painter, context)
        painter.restore()

    def sizeHint(self, option: QStyleOptionViewItem, index: QModelIndex | QPersistentModelIndex) -> QSize:
        """As high as its words need."""
        plain = QStyleOptionViewItem(option)
        self.initStyleOption(plain, index)
        size = self._document(plain, index).size()
        return QSize(round(size.width()), round(size.height()))
