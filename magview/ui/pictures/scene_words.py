"""The words of a scene in pixels: on parts, beside them, in the corners, and the sum along the lower edge."""

from __future__ import annotations

import math
from collections.abc import Callable
from functools import lru_cache

from PySide6.QtCore import QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import QBrush, QColor, QFont, QFontInfo, QFontMetricsF, QPainter, QPen

from magview.drawing.scene import EDGE_PX, CornerWords, Frame, Scene, Term, Word, glass_radius
from magview.spec.language import with_minus

_ACROSS = {
    "top-left": "top-right",
    "top-right": "top-left",
    "bottom-left": "bottom-right",
    "bottom-right": "bottom-left",
}

_BEFORE = {"left": 0.0, "middle": 0.5, "right": 1.0}
"""Share of a text's width that stands before its place, by how it is aligned."""

# Kept by name: to look one up in an enum of PySide takes as long as to set it.
_NO_PEN, _NO_BRUSH, _SOLID = Qt.PenStyle.NoPen, Qt.BrushStyle.NoBrush, Qt.BrushStyle.SolidPattern

LEAST_PX = 10.0
"""Smaller type is read by nobody."""


@lru_cache(maxsize=64)
def _sized(family: str, px: float, bold: bool) -> tuple[QFont, QFontMetricsF]:
    font = QFont(family)
    font.setPixelSize(max(1, round(px)))
    font.setBold(bold)
    return font, QFontMetricsF(font)


@lru_cache(maxsize=2000)
def _width(text: str, family: str, px: float, bold: bool) -> float:
    return _sized(family, px, bold)[1].horizontalAdvance(text)


class SceneWords:
    """Writes with one painter in one font, whose height is the picture's em."""

    def __init__(self, painter: QPainter, font: QFont, colour: Callable[..., QColor], size: QSizeF) -> None:
        self._painter, self._colour, self._size = painter, colour, size
        self._family = font.family()
        self.em = float(font.pixelSize()) if font.pixelSize() > 0 else float(QFontInfo(font).pixelSize())

    def width(self, text: str, px: float, bold: bool = False) -> float:
        """Width of words [px]."""
        return _width(with_minus(text), self._family, max(px, LEAST_PX), bold)

    def _write(
        self, text: str, at: QPointF, px: float, role: str, bold: bool = False, align: str = "middle",
        paper: bool = False,
    ) -> None:  # fmt: skip
        """Words about a point of their middle height."""
        px = max(px, LEAST_PX)
        font, metrics = _sized(self._family, px, bold)
        text = with_minus(text)
        width, height = _width(text, self._family, px, bold), metrics.capHeight()
        x = at.x() - _BEFORE[align] * width
        painter = self._painter
        if paper:
            painter.setPen(_NO_PEN)
            painter.setBrush(QBrush(self._colour("paper", 0.88), _SOLID))
            painter.drawRoundedRect(QRectF(x - 3.0, at.y() - height / 2 - 3.5, width + 6.0, height + 7.0), 3.0, 3.0)
            painter.setBrush(_NO_BRUSH)
        painter.setFont(font)
        painter.setPen(self._colour(role))
        painter.drawText(QPointF(x, at.y() + height / 2), text)

    # ------------------------------------------------------------------ on parts

    def word(self, word: Word, frame: Frame) -> None:
        """A word at its place, unless it is longer than its room."""
        px = max(min(word.size * self.em, word.height_mm * frame.scale), LEAST_PX)
        room = word.room_mm * frame.scale
        text = next((t for t in (word.text, word.shorter) if self.width(t, px, word.bold) <= room), "")
        if not text:
            return
        x, y = frame.at(word.at)
        at, painter = QPointF(x, y), self._painter
        if word.margin:
            self._beside(word, at, px)
            return
        align = word.align
        if frame.mirrored and align != "middle":
            align = "right" if align == "left" else "left"
        if word.leads_to is not None:
            tip = QPointF(*frame.at(word.leads_to))
            off = QPointF(0.0, 0.75 * px if tip.y() < y else -0.75 * px) if align == "middle" else QPointF(4.0, 0.0)
            painter.setPen(QPen(self._colour("hair"), 1.0))
            painter.drawLine(at - off, tip)
        if word.disc:
            painter.setPen(_NO_PEN)
            painter.setBrush(QBrush(self._colour(word.disc), _SOLID))
            radius = max(0.82 * px, 0.5 * self.width(word.text, px, word.bold) + 2.0)
            painter.drawEllipse(at, radius, radius)
            painter.setBrush(_NO_BRUSH)
        if word.bearing_deg:
            painter.save()
            painter.translate(at)
            painter.rotate(-word.bearing_deg if frame.mirrored else word.bearing_deg)
            self._write(text, QPointF(0.0, 0.0), px, word.role, word.bold, align, word.paper)
            painter.restore()
            return
        self._write(text, at, px, word.role, word.bold, align, word.paper)

    def _beside(self, word: Word, tip: QPointF, px: float) -> None:
        """A word at a side of the picture, with a leader to its place."""
        left = word.margin == "left"
        x, y = EDGE_PX if left else self._size.width() - EDGE_PX, self._size.height() - word.up_em * self.em
        width = self.width(word.text, px, word.bold) + 4.0
        if width + 8.0 > (tip.x() - x if left else x - tip.x()):
            return  # it would stand on what it names
        painter = self._painter
        pen = QPen(self._colour(word.role), 1.0)
        pen.setCapStyle(Qt.PenCapStyle.FlatCap)
        painter.setPen(pen)
        painter.drawLine(QPointF(x + width if left else x - width, y), tip)
        painter.setPen(_NO_PEN)
        painter.setBrush(QBrush(self._colour(word.role), _SOLID))
        painter.drawEllipse(tip, 2.2, 2.2)
        painter.setBrush(_NO_BRUSH)
        self._write(word.text, QPointF(x, y), px, word.role, word.bold, word.margin)

    def name(self, text: str, at: QPointF, role: str, bold: bool, paper: bool) -> None:
        """A part's name or reading, in its place."""
        self._write(text, at, self.em + 1.0 if bold else self.em, role, bold, paper=paper)

    def on_paper(self, wordings: tuple[str, ...], at: QPointF, role: str, align: str = "middle") -> None:
        """The words of a measure over its line: the first wording that fits the picture, or none."""
        at = at + QPointF({"left": 4.0, "middle": 0.0, "right": -4.0}[align], 0.0)
        for text in wordings:
            width = self.width(text, self.em, True)
            left = at.x() - _BEFORE[align] * width
            if left >= 2.0 and left + width <= self._size.width() - 2.0:
                self._write(text, at, self.em, role, True, align, paper=True)
                return

    def small(self, text: str, at: QPointF, role: str, at_most_px: float) -> None:
        """A small remark."""
        self._write(text, at, min(self.em - 2.0, at_most_px), role)

    def beside(self, text: str, at: QPointF) -> None:
        """A remark that must be read over whatever lies there."""
        self._write(text, at, self.em, "ink", True, paper=True)

    # ------------------------------------------------------------------ round the picture

    def corners(self, scene: Scene, size: QSizeF, frame: Frame, paper: bool = False) -> None:
        """Words in the corners, clear of the picture's round middle; `paper`: whatever may lie behind them."""
        for words in scene.corners:
            for text, at, px, role, bold in self.corner_lines(words, scene, size, frame):
                align = "left" if "left" in words.corner else "right"
                self._write(text, at, px, role, bold, align, paper)

    def corner_lines(
        self, words: CornerWords, scene: Scene, size: QSizeF, frame: Frame
    ) -> list[tuple[str, QPointF, float, str, bool]]:
        """Each line that is written, with the middle of its outer end, its size, role and weight."""
        top = "top" in words.corner
        heights = [max(line.size * self.em, LEAST_PX) * 1.42 for line in words.lines]
        y = EDGE_PX - 2.0 if top else size.height() - EDGE_PX + 4.0 - sum(heights)
        x = EDGE_PX if "left" in words.corner else size.width() - EDGE_PX
        across = max((self._shortest(w) for w in scene.corners if w.corner == _ACROSS[words.corner]), default=0.0)
        written = []
        for line, height in zip(words.lines, heights, strict=True):
            px = max(line.size * self.em, LEAST_PX)
            middle = y + height / 2
            room = self._room(scene, size, frame, middle, 0.5 * px, across, "left" in words.corner)
            text = next((t for t in line.wordings if self.width(t, px, line.bold) <= room), None)
            while text is None and px > LEAST_PX:  # rather small than not at all
                px = max(px - 1.0, LEAST_PX)
                text = next((t for t in line.wordings if self.width(t, px, line.bold) <= room), None)
            if text:
                written.append((text, QPointF(x, middle), px, line.role, line.bold))
            y += height
        return written

    def _shortest(self, words: CornerWords) -> float:
        """Width of a corner's lines in their first wordings, at the left, or at their shortest [px]."""
        which = 0 if "left" in words.corner else -1
        sizes = [(line.wordings[which], max(line.size * self.em, LEAST_PX), line.bold) for line in words.lines]
        return max(self.width(*line) for line in sizes)

    @staticmethod
    def _room(scene: Scene, size: QSizeF, frame: Frame, y: float, half: float, across: float, left: bool) -> float:
        """Greatest length of a corner line at a height [px]: up to the round middle, or to the words across."""
        whole = size.width() - 2 * EDGE_PX - 12.0 - across
        for glass in scene.glasses if left else ():
            radius = glass_radius(glass, size.width(), size.height())
            aside = abs(y - (size.height() - radius - 10.0)) - half
            if "right" in glass.corner and "bottom" in glass.corner and aside < radius:
                edge = size.width() - radius - 10.0 - math.sqrt(radius * radius - max(aside, 0.0) ** 2)
                whole = min(whole, edge - EDGE_PX - 4.0)
        radius = scene.round_mm * frame.scale
        if not radius:
            return whole
        near = min(abs(y - half - frame.top), abs(y + half - frame.top))
        if y - half < frame.top < y + half:
            near = 0.0
        if near >= radius:
            return whole
        beside = frame.left if left else size.width() - frame.left
        return min(whole, beside - math.sqrt(radius * radius - near * near) - EDGE_PX - 4.0)

    def total(self, terms: tuple[Term, ...], size: QSizeF) -> None:
        """The sum along the lower edge, with the longest meanings for which there is room."""
        if not terms:
            return
        px, y = self.em, size.height() - 6.0 - self.em
        share, pieces = self.total_pieces(terms, size.width() - 30.0)
        width = sum(w for *_, w in pieces)
        x = size.width() / 2 - width / 2
        painter = self._painter
        painter.setPen(_NO_PEN)
        painter.setBrush(QBrush(self._colour("panel", 0.92), _SOLID))
        painter.drawRoundedRect(QRectF(x - 10.0, y - 0.95 * px, width + 20.0, 1.9 * px), 4.0, 4.0)
        painter.setBrush(_NO_BRUSH)
        for text, role, large, bold, wide in pieces:
            self._write(text, QPointF(x, y), share * (px + large), role, bold, "left")
            x += wide

    def total_pieces(
        self, terms: tuple[Term, ...], room: float
    ) -> tuple[float, list[tuple[str, str, float, bool, float]]]:
        """The sum as pieces in a row, each with its role, extra size, weight and the width that it takes; and the
        share of the usual size that it is written in, less than 1 only where there is no room without meanings."""
        pieces: list[tuple[str, str, float, bool, float]] = []
        for level in range(len(terms[0].meanings) + 1):
            pieces = []
            for i, term in enumerate(terms):
                meaning = term.meanings[level] if level < len(term.meanings) else ""
                gap = 0.8 * self.em if i < len(terms) - 1 else 0.0
                if term.sign:
                    pieces.append((term.sign, "ink", 1.0, False, self.width(f"{term.sign} ", self.em + 1.0)))
                after = gap if not meaning else self.width(" ", self.em)
                pieces.append((term.text, term.role, 1.0, True, self.width(term.text, self.em + 1.0, True) + after))
                if meaning:
                    pieces.append((meaning, "second_ink", 0.0, False, self.width(meaning, self.em) + gap))
            whole = sum(w for *_, w in pieces)
            if whole <= room:
                return 1.0, pieces
            if level == len(terms[0].meanings) - 1 and whole * LEAST_PX <= room * self.em:
                share = room / whole  # rather small than without its meanings
                return share, [(text, role, more, bold, share * wide) for text, role, more, bold, wide in pieces]
        share = max(room / sum(w for *_, w in pieces), LEAST_PX / self.em)
        if share * sum(w for *_, w in pieces) > room:  # not even that small: then what it comes to, and no more
            sign, result = pieces[-2:]
            share, pieces = 1.0, [sign, result]
        return share, [(text, role, more, bold, share * wide) for text, role, more, bold, wide in pieces]

    def across(self, text: str, size: QSizeF) -> None:
        """A word across the whole picture."""
        px = min(0.16 * size.width() * 5 / max(len(text), 5), 0.3 * size.height())
        font, metrics = _sized(self._family, px, True)
        painter = self._painter
        painter.save()
        painter.translate(size.width() / 2, size.height() / 2)
        painter.rotate(-20.0)
        painter.setFont(font)
        painter.setPen(self._colour("bad", 0.28))
        painter.drawText(QPointF(-metrics.horizontalAdvance(text) / 2, metrics.capHeight() / 2), text)
        painter.restore()
