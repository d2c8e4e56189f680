"""A row of cards to look along: arrows go from one to the next, Return opens one."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from PySide6.QtCore import (
    QAbstractListModel,
    QEvent,
    QModelIndex,
    QPersistentModelIndex,
    QPointF,
    QRect,
    QRectF,
    QSize,
    Qt,
    Signal,
)
from PySide6.QtGui import QColor, QFont, QFontInfo, QPainter, QPen
from PySide6.QtWidgets import QListView, QStyle, QStyledItemDelegate, QStyleOptionViewItem, QWidget

from magview.ui.kit.badge import paint_badge
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign

_AnyIndex = QModelIndex | QPersistentModelIndex
_NOWHERE = QModelIndex()
_DISPLAY = Qt.ItemDataRole.DisplayRole
_CARD = Qt.ItemDataRole.UserRole
_WIDTH, _HEIGHT = 14.4, 7.4
"""Of a card [em]."""


@dataclass(frozen=True)
class Card:
    """A title and a word at the right of it, a sentence, and a sign with what it is about."""

    title: str
    aside: str
    words: str
    foot: str = ""
    sign: Sign = Sign.NONE
    badge: int = 0
    """A number in a disc before the title; 0 for none."""


class _Deck(QAbstractListModel):
    def __init__(self, parent: QWidget) -> None:
        super().__init__(parent)
        self.cards: tuple[Card, ...] = ()

    def deal(self, cards: Sequence[Card]) -> None:
        """Show other cards."""
        self.beginResetModel()
        self.cards = tuple(cards)
        self.endResetModel()

    def rowCount(self, parent: _AnyIndex = _NOWHERE) -> int:
        """Cards."""
        return 0 if parent.isValid() else len(self.cards)

    def data(self, index: _AnyIndex, role: int = _DISPLAY) -> object:
        """A card, in words or as itself."""
        if not index.isValid():
            return None
        card = self.cards[index.row()]
        if role == _CARD:
            return card
        if role in (_DISPLAY, Qt.ItemDataRole.AccessibleTextRole, Qt.ItemDataRole.ToolTipRole):
            told = [str(card.badge) if card.badge else "", card.title, card.aside, card.words, card.foot]
            if card.sign is not Sign.NONE:
                told.append(card.sign.words)
            return ", ".join(words for words in told if words)
        return None


class _Painter(QStyledItemDelegate):
    def __init__(self, look: Look, parent: QWidget) -> None:
        super().__init__(parent)
        self._look = look

    def sizeHint(self, option: QStyleOptionViewItem, index: _AnyIndex) -> QSize:
        """The same for every card."""
        em = QFontInfo(option.font).pixelSize()
        return QSize(round(_WIDTH * em), round(_HEIGHT * em))

    def paint(self, painter: QPainter, option: QStyleOptionViewItem, index: _AnyIndex) -> None:
        """The card, outlined in its sign's colour; the chosen one heavier, in the hand's."""
        card, theme, em = index.data(_CARD), self._look.theme, QFontInfo(option.font).pixelSize()
        chosen = bool(option.state & QStyle.StateFlag.State_Selected)
        bad, warns = card.sign is Sign.OUT, card.sign is Sign.FOUND_OUT
        box = QRectF(option.rect).adjusted(2, 2, -2, -2)
        painter.save()
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        edge = theme.hand if chosen else card.sign.colour(theme) if bad or warns else theme.hair
        painter.setPen(QPen(QColor(edge), 2.0 if chosen else 1.2))
        painter.setBrush(QColor(theme.bad_fill if bad else theme.hand_fill if chosen else theme.paper))
        painter.drawRoundedRect(box, 4.0, 4.0)
        inside = box.adjusted(0.7 * em, 0.4 * em, -0.7 * em, -0.4 * em).toRect()
        line = round(1.5 * em)
        head = QRect(inside.left(), inside.top(), inside.width(), line)
        foot = QRect(inside.left(), inside.bottom() - line, inside.width(), line)
        bold = QFont(option.font)
        bold.setBold(True)
        small = QFont(option.font)
        small.setPointSizeF(0.92 * small.pointSizeF())
        flags = Qt.AlignmentFlag
        painter.setFont(small)
        painter.setPen(QColor(theme.text if bad or chosen else theme.faint))
        painter.drawText(head, flags.AlignRight | flags.AlignVCenter, card.aside)
        painter.drawText(foot, flags.AlignLeft | flags.AlignVCenter, card.foot)
        aside = painter.fontMetrics().horizontalAdvance(card.aside)
        painter.setFont(bold)
        painter.setPen(QColor(theme.text))
        begin = round(1.9 * em) if card.badge else 0
        if card.badge:
            paint_badge(painter, QPointF(head.left() + 0.75 * em, head.center().y() + 0.5), card.badge, theme, em)
            painter.setPen(QColor(theme.text))
        title = painter.fontMetrics().elidedText(
            card.title, Qt.TextElideMode.ElideRight, head.width() - begin - aside - round(0.5 * em)
        )
        painter.drawText(head.adjusted(begin, 0, 0, 0), flags.AlignLeft | flags.AlignVCenter, title)
        if card.sign is not Sign.NONE:
            painter.setPen(QColor(card.sign.colour(theme)))
            painter.drawText(foot, flags.AlignRight | flags.AlignVCenter, card.sign.mark)
        painter.setFont(option.font)
        painter.setPen(QColor(theme.text))
        bottom = foot.top() if card.foot or card.sign is not Sign.NONE else inside.bottom()
        spacing = painter.fontMetrics().lineSpacing()
        whole = (bottom - head.bottom()) // spacing * spacing  # no half a line at the foot
        words = QRect(inside.left(), head.bottom(), inside.width(), whole)
        painter.drawText(words, int(flags.AlignLeft | flags.AlignTop | Qt.TextFlag.TextWordWrap), card.words)
        painter.restore()


class Cards(QListView):
    """One row of cards, as wide as there is room, the rest by scrolling sideways."""

    opened = Signal(int)
    """Return, or a double click."""
    card_chosen = Signal(int)
    """By hand; −1 for none."""

    def __init__(self, name: str, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setAccessibleName(name)
        self._deck = _Deck(self)
        self.setModel(self._deck)
        self.setItemDelegate(_Painter(look, self))
        self.setFlow(QListView.Flow.LeftToRight)
        self.setWrapping(False)
        self.setUniformItemSizes(True)
        self.setHorizontalScrollMode(QListView.ScrollMode.ScrollPerPixel)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setEditTriggers(QListView.EditTrigger.NoEditTriggers)
        self.setTabKeyNavigation(False)
        self.activated.connect(self._activated)
        self.selectionModel().currentChanged.connect(self._current)
        look.changed.connect(self.viewport().update)
        self._fit()

    def show_cards(self, cards: Sequence[Card]) -> None:
        """Show other cards; none is chosen."""
        self._deck.deal(cards)

    def card_count(self) -> int:
        """Number of cards."""
        return self._deck.rowCount()

    def card(self, place: int) -> Card:
        """A card by its place."""
        return self._deck.cards[place]

    def chosen_card(self) -> int:
        """The place of the card chosen; −1 if none."""
        return self.currentIndex().row()

    def choose_card(self, place: int) -> None:
        """Choose a card and bring it into sight, or none by −1; nobody is told."""
        blocked = self.blockSignals(True)
        if place < 0:
            self.setCurrentIndex(QModelIndex())
        else:
            self.setCurrentIndex(self._deck.index(place))
        self.blockSignals(blocked)

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit()

    def _fit(self) -> None:
        em = QFontInfo(self.font()).pixelSize()
        bar = self.horizontalScrollBar().sizeHint().height()
        self.setFixedHeight(round(_HEIGHT * em) + bar + 2 * self.frameWidth() + 2)
        self.scheduleDelayedItemsLayout()

    def _activated(self, index: QModelIndex) -> None:
        self.opened.emit(index.row())

    def _current(self, now: QModelIndex, before: QModelIndex) -> None:
        self.card_chosen.emit(now.row())
