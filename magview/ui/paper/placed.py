"""A picture with its size on a page."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from PySide6.QtCore import QByteArray, QRectF
from PySide6.QtGui import QImage, QPainter
from PySide6.QtSvg import QSvgRenderer

from magview.paper.blocks import Picture


@dataclass(frozen=True)
class Placed:
    """A picture, as a vector where it is one, so wide and so high [dots]."""

    source: QSvgRenderer | QImage
    width: float
    height: float
    caption: str

    def draw_at(self, x: float, y: float) -> Callable[[QPainter], None]:
        """Return the function that draws it at a place."""
        where, source = QRectF(x, y, self.width, self.height), self.source
        if isinstance(source, QImage):
            return lambda painter: painter.drawImage(where, source)
        return lambda painter: source.render(painter, where)


def placed(picture: Picture, width: float) -> Placed:
    """A picture at a width."""
    source: QSvgRenderer | QImage
    if picture.jpeg:
        source = QImage.fromData(picture.jpeg, "JPG")  # type: ignore[arg-type]  # the stub asks for bytes, the call for text
        size = source.size()
    elif picture.png is None:
        source = QSvgRenderer(QByteArray(picture.svg.encode("utf-8")))
        size = source.defaultSize()
    else:
        source = QImage(str(picture.png))
        size = source.size()
    return Placed(source, width, width * size.height() / max(1, size.width()), picture.caption)
