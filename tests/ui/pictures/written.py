"""Where the words of a scene are written [px], for tests that none meets another."""

from __future__ import annotations

from collections.abc import Iterator
from contextlib import contextmanager

from PySide6.QtCore import QRectF, QSizeF
from PySide6.QtGui import QFont, QImage, QPainter

from magview.drawing.scene import Scene, frame_of
from magview.ui.kit.theme import THEMES
from magview.ui.pictures.scene_painter import ScenePainter
from magview.ui.pictures.scene_words import SceneWords

Boxes = list[tuple[str, QRectF]]


@contextmanager
def words_in(size: tuple[int, int], font: QFont) -> Iterator[SceneWords]:
    """The writer of a picture of some size."""
    image = QImage(*size, QImage.Format.Format_RGB32)
    painter = QPainter(image)
    try:
        yield SceneWords(painter, font, ScenePainter(THEMES["light"]).colour, QSizeF(*size))
    finally:
        painter.end()


def corner_boxes(scene: Scene, size: tuple[int, int], font: QFont) -> Boxes:
    """Where the words in the corners stand."""
    boxes: Boxes = []
    with words_in(size, font) as words:
        frame = frame_of(scene, *size, words.em)
        for corner in scene.corners:
            for text, at, px, _, bold in words.corner_lines(corner, scene, QSizeF(*size), frame):
                wide = words.width(text, px, bold)
                left = at.x() if "left" in corner.corner else at.x() - wide
                boxes.append((text, QRectF(left, at.y() - 0.45 * px, wide, 0.9 * px)))
    return boxes


def word_boxes(scene: Scene, size: tuple[int, int], font: QFont) -> Boxes:
    """Where the words within the picture stand, those left out that have no room."""
    boxes: Boxes = []
    with words_in(size, font) as words:
        frame = frame_of(scene, *size, words.em)
        for word in scene.words:
            px, (x, y) = max(word.size * words.em, 10.0), frame.at(word.at)
            wide, high = words.width(word.text, px, word.bold), 0.9 * px
            if word.disc:
                wide = high = 2 * max(0.82 * px, 0.5 * wide + 2.0) - 2.0
            if wide <= word.room_mm * frame.scale or word.disc:
                left = {"left": x, "right": x - wide}.get(word.align, x - wide / 2)
                boxes.append((word.text, QRectF(left, y - high / 2, wide, high)))
    return boxes
