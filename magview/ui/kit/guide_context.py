"""Choice of the guide's page about what has the keyboard, or is in front."""

from __future__ import annotations

from PySide6.QtWidgets import QScrollArea, QStackedWidget, QTabWidget, QWidget

from magview.guide.topics import TOPICS


def topic_of(owner: QWidget) -> str:
    """The page about the part of a page or window that has the keyboard, else about what is in front of it."""
    widget: QWidget | None = owner.focusWidget()
    while widget is not None and widget is not owner:
        found = _topic(widget)
        if found is not None:
            return found
        widget = widget.parentWidget()
    fronts = (_topic(tabs) for tabs in owner.findChildren(QTabWidget) if tabs.isVisible())
    return next((f for f in fronts if f is not None), TOPICS.get(type(owner).__name__, "first-minutes"))


def _topic(widget: QWidget) -> str | None:
    """Of a widget itself, or of what it has in front if it holds several."""
    front: QWidget | None = widget
    while isinstance(front, QTabWidget | QStackedWidget | QScrollArea):
        known = None if isinstance(front, QStackedWidget) else TOPICS.get(type(front).__name__)
        inner = front.widget() if isinstance(front, QScrollArea) else front.currentWidget()
        if inner is None:
            return known
        front = inner
    named = front and TOPICS.get(type(front).__name__)
    return named or TOPICS.get(type(widget).__name__)
