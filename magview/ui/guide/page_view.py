"""One page of the guide: its words in the window's colours, its pictures at the width there is."""

from __future__ import annotations

from functools import partial
from typing import Any

from PySide6.QtCore import Qt, QTimer, QUrl
from PySide6.QtGui import QHideEvent, QImage, QResizeEvent, QTextCursor, QTextDocument
from PySide6.QtWidgets import QTextBrowser

from magview.guide.page_blocks import page_blocks
from magview.guide.pages import Page, guide_folder
from magview.paper.html import blocks_html
from magview.spec.language import tr

_FIT_MS = 60
_MARGIN = 16
_LINE = 120
"""Longest line, in letters: longer ones are hard to read."""


class PageView(QTextBrowser):
    """One page. It reads pages and pictures of the guide and nothing else; no link leads out of it."""

    def __init__(self) -> None:
        super().__init__()
        self.setOpenLinks(False)
        self.setAccessibleName(tr("Page of the guide"))
        self.document().setDocumentMargin(_MARGIN)
        self.setLineWrapMode(QTextBrowser.LineWrapMode.FixedPixelWidth)
        self.zoom = 100
        self._anchor = ""
        self.verticalScrollBar().actionTriggered.connect(self._scrolled)
        self._fit_soon = QTimer(self)
        self._fit_soon.setSingleShot(True)
        self._fit_soon.setInterval(_FIT_MS)
        self._fit_soon.timeout.connect(self.fit_pictures)

    def show_page(self, page: Page, style: str) -> None:
        """Show a page from its top."""
        self._anchor = ""
        self.document().setDefaultStyleSheet(style)
        self.setHtml(blocks_html(page_blocks(page, partial(_full, page.name), str), qt=True))
        self.fit_pictures()

    def go_to(self, anchor: str) -> None:
        """Show a section from its heading, or the page from its top.

        What is above it may still change its height, as the window is shown or the pictures get their sizes; until
        somebody scrolls, the heading stays where it is asked for.
        """
        self._anchor = anchor
        self._stay()
        if not anchor:
            self.verticalScrollBar().setValue(0)

    def scroll_to(self, value: int) -> None:
        """Show the page as far down as it was [px]."""
        self._anchor = ""
        self.verticalScrollBar().setValue(value)

    def _stay(self) -> None:
        if not self._anchor:
            return
        top = self._top_of(self._anchor)
        frame = self.document().rootFrame()
        form = frame.frameFormat()
        # The last sections of a page come to the top too: there is blank paper below them.
        short = top - (self.document().size().height() - form.bottomMargin() + _MARGIN - self.viewport().height())
        below = _MARGIN + max(0.0, short)
        if abs(below - form.bottomMargin()) >= 1.0:
            form.setBottomMargin(below)
            frame.setFrameFormat(form)
        self.scrollToAnchor(self._anchor)

    def _top_of(self, anchor: str) -> float:
        """Return the height of a heading from the top [px]; 0 if there is none."""
        block = self.document().begin()
        while block.isValid():
            it = block.begin()
            while not it.atEnd():
                if anchor in it.fragment().charFormat().anchorNames():
                    return self.document().documentLayout().blockBoundingRect(block).top()
                it += 1
            block = block.next()
        return 0.0

    def _scrolled(self, action: int) -> None:
        self._anchor = ""

    def loadResource(self, kind: int, name: QUrl | str) -> Any:
        """Pictures of the guide, ``name?width`` made that wide [px]; anything else is not there."""
        path, _, wide = (name.toString() if isinstance(name, QUrl) else name).partition("?")
        if kind != QTextDocument.ResourceType.ImageResource.value or not path.startswith("pictures/") or ".." in path:
            return None
        image = QImage(str(guide_folder() / path))
        if not wide:
            return image
        # Qt's text would drop lines where it draws a picture smaller than it is.
        sharp = self.devicePixelRatioF()
        image = image.scaledToWidth(round(int(wide) * sharp), Qt.TransformationMode.SmoothTransformation)
        image.setDevicePixelRatio(sharp)
        return image

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Pictures are never wider than the page."""
        super().resizeEvent(event)
        self.fit_lines()
        self._fit_soon.start()

    def hideEvent(self, event: QHideEvent) -> None:
        """Nothing runs on behind what is in front: pictures still to be fitted are fitted now."""
        super().hideEvent(event)
        if self._fit_soon.isActive():
            self._fit_soon.stop()
            self.fit_pictures()

    def fit_lines(self) -> None:
        """Lines as long as there is room, but not longer than can be read."""
        longest = _LINE * self.fontMetrics().averageCharWidth() + 2 * _MARGIN
        self.setLineWrapColumnOrWidth(min(self.viewport().width(), longest))
        self._stay()

    def fit_pictures(self) -> None:
        """Give pictures their size at this zoom, or the width there is."""
        room = max(80, self.lineWrapColumnOrWidth() - 2 * _MARGIN)
        document = self.document()
        block = document.begin()
        while block.isValid():
            it = block.begin()
            while not it.atEnd():
                fragment = it.fragment()
                form = fragment.charFormat().toImageFormat()
                if form.isValid():
                    name = form.name().partition("?")[0]
                    image = QImage(str(guide_folder() / name))
                    width = round(min(room, image.width() * self.zoom / 100.0))
                    if abs(width - form.width()) >= 1.0:
                        form.setName(f"{name}?{width}")
                        form.setWidth(width)
                        form.setHeight(width * image.height() / max(1, image.width()))
                        cursor = QTextCursor(document)
                        cursor.setPosition(fragment.position())
                        cursor.setPosition(fragment.position() + fragment.length(), QTextCursor.MoveMode.KeepAnchor)
                        cursor.setCharFormat(form)
                it += 1
            block = block.next()
        self._stay()


def _full(here: str, target: str) -> str:
    """A link of a page as an address: its own page's name where it has none."""
    if "://" in target:
        return target
    name, sign, anchor = target.partition("#")
    return f"{name.removesuffix('.md') or here}{sign}{anchor}"
