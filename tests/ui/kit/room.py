"""Texts and controls that have less room than they need, and texts of a made-up language that need more of it."""

from __future__ import annotations

import re
from itertools import combinations
from typing import Any

from PySide6.QtCore import QPoint, QRect, Qt
from PySide6.QtWidgets import (
    QAbstractButton,
    QComboBox,
    QGroupBox,
    QHeaderView,
    QLabel,
    QMenuBar,
    QPushButton,
    QStyle,
    QStyleOptionComboBox,
    QTabBar,
    QWidget,
)

_ACCENTS = str.maketrans("aceinouyACEINOUY", "âçéîñôüÿÂÇÉÎÑÔÜŸ")
_KEPT = re.compile(r"(\{(?:[^{}]|\{[^{}]*\})*\}|<[^<>]*>|&[a-z]+;|&\w|\n)")
_LONGER = 0.35


def pseudo(text: str) -> str:
    """A text of the made-up language: accents on its letters, 35 % longer; places, marks and Alt's letters stay."""
    if ";;" in text:
        return text
    grown = owed = 0.0
    parts = []
    for part in _KEPT.split(text):
        if _KEPT.fullmatch(part):
            parts.append(part)
            continue
        words = []
        for word in re.split(r"(\s+)", part):
            owed += _LONGER * len(word)
            more = int(owed - grown) if re.search(r"[^\W\d_]{2}", word) else 0
            grown += more
            words.append(word.translate(_ACCENTS) if not more else _stretched(word.translate(_ACCENTS), more))
        parts.append("".join(words))
    return "".join(parts)


def _stretched(word: str, more: int) -> str:
    last = max(i for i, letter in enumerate(word) if letter.isalpha())
    return word[: last + 1] + "ôéîâñ"[: more % 5] + "ôéîâñ" * (more // 5) + word[last + 1 :]


def _whole_as_tip(widget: Any) -> bool:
    """Whether a text may be cut short, since hovering shows it whole."""
    return bool(widget.toolTip()) and widget.toolTip() == getattr(widget, "text", str)()


def cut(window: Any) -> list[str]:
    """Texts that have less room than they need."""
    found = []
    for w in window.findChildren(QWidget):
        if not w.isVisible() or _whole_as_tip(w):
            continue
        if isinstance(w, QLabel | QAbstractButton):
            # A button's own wish has room to spare; its words and a frame are the least.
            bare = w.text().replace("&", "")
            need = w.fontMetrics().horizontalAdvance(bare) + 8 if isinstance(w, QPushButton) else 0
            need = need or (w.minimumSizeHint() if isinstance(w, QLabel) else w.sizeHint()).width()
            if bare and (w.width() < need or w.height() < w.minimumSizeHint().height()):
                found.append(f"{type(w).__name__} {w.text()!r}: {w.width()} of {need}")
        elif isinstance(w, QTabBar):
            there = [i for i in range(w.count()) if w.isTabVisible(i)]  # the others stand behind More
            small = [w.tabText(i) for i in there if w.tabRect(i).width() < w.tabSizeHint(i).width()]
            within = w.usesScrollButtons() or w.tabRect(there[-1]).right() <= w.width()
            found += small if within else [f"tabs {[w.tabText(i) for i in range(w.count())]}"]
        elif isinstance(w, QComboBox):
            option = QStyleOptionComboBox()
            w.initStyleOption(option)
            part = QStyle.SubControl.SC_ComboBoxEditField
            room = w.style().subControlRect(QStyle.ComplexControl.CC_ComboBox, option, part, w).width()
            found += [t for i in range(w.count()) if w.fontMetrics().horizontalAdvance(t := w.itemText(i)) > room]
        elif isinstance(w, QHeaderView) and w.orientation() == Qt.Orientation.Horizontal:
            heads = [w.model().headerData(i, w.orientation()) for i in range(w.count())]
            found += [f"column {t!r}" for i, t in enumerate(heads) if w.sectionSizeHint(i) > w.sectionSize(i)]
        elif isinstance(w, QGroupBox):
            if w.fontMetrics().horizontalAdvance(w.title()) + 16 > w.width():
                found.append(f"group {w.title()!r}")
        elif isinstance(w, QMenuBar):
            found += [a.text() for a in w.actions() if not w.actionGeometry(a).isValid()]
            if w.sizeHint().width() > w.width():
                found.append("menu bar")
    return found


def overlapping(window: QWidget) -> list[str]:
    """Pairs of neighbours with words of which one covers the other."""
    found = []
    for parent in (window, *window.findChildren(QWidget)):
        if not parent.isVisible():
            continue
        own = [
            w for w in parent.findChildren(QWidget, options=Qt.FindChildOption.FindDirectChildrenOnly)
            if w.isVisible() and isinstance(w, QLabel | QAbstractButton | QComboBox | QGroupBox) and name_of(w)
        ]  # fmt: skip
        for one, other in combinations(own, 2):
            common = one.geometry() & other.geometry()
            if common.width() > 2 and common.height() > 2:
                found.append(f"{name_of(one)!r} over {name_of(other)!r}: {common.width()}×{common.height()}")
    return found


def name_of(widget: QWidget) -> str:
    """The words that a control shows, or its name for a screen reader."""
    for words in ("text", "title", "currentText"):
        if hasattr(widget, words) and (found := getattr(widget, words)()):
            return str(found)
    return widget.accessibleName()


def outside(window: QWidget) -> list[str]:
    """Controls that stick out of the part of the window they stand in."""
    found = []
    for w in window.findChildren(QWidget):
        above = w.parentWidget()
        if not w.isVisible() or not isinstance(w, QLabel | QAbstractButton | QComboBox) or above is None:
            continue
        rect = QRect(QPoint(), above.size()).adjusted(-2, -2, 2, 2)
        if name_of(w) and not rect.contains(w.geometry()):
            found.append(f"{name_of(w)!r} sticks out: {w.geometry().getRect()} of {above.size().toTuple()}")
    return found
