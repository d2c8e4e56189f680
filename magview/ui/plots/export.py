"""Plots as pictures: for the clipboard, for PNG, and for SVG with real lines and real text."""

from __future__ import annotations

import contextlib
from collections.abc import Iterator
from pathlib import Path

import pyqtgraph as pg
from PySide6.QtCore import QPointF, QRectF, QSizeF
from PySide6.QtGui import QColor, QImage, QPainter
from PySide6.QtWidgets import QGraphicsItem, QGraphicsView


def plot_image(canvas: QGraphicsView, paper: str, scale: float) -> QImage:
    """Return what a canvas shows, so many times finer than on the screen."""
    size = canvas.size()
    image = QImage(size * scale, QImage.Format.Format_RGB32)
    # Not a scaled painter: signs and legends keep their pixels under one, and would come out small.
    image.setDevicePixelRatio(scale)
    image.fill(QColor(paper))
    painter = QPainter(image)
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    with _drawn_anew(canvas):
        canvas.render(painter, QRectF(QPointF(0, 0), QSizeF(size)), canvas.viewport().rect())
    painter.end()
    return image


def write_plot_svg(canvas: QGraphicsView, path: Path, title: str) -> None:
    """Write what a canvas shows. pyqtgraph's own exporter fails with Qt 6.11 and later."""
    from PySide6.QtSvg import QSvgGenerator

    svg = QSvgGenerator()
    svg.setFileName(str(path))
    svg.setSize(canvas.size())
    svg.setViewBox(QRectF(QPointF(0, 0), QSizeF(canvas.size())))
    svg.setResolution(96)
    svg.setTitle(title)
    painter = QPainter(svg)
    with _drawn_anew(canvas):
        canvas.render(painter)
    painter.end()


@contextlib.contextmanager
def _drawn_anew(canvas: QGraphicsView) -> Iterator[None]:
    """Nothing kept as pixels of the screen goes into a picture: curves, axes and signs are drawn as such."""
    kept = QGraphicsItem.CacheMode.NoCache
    cached = [(item, item.cacheMode()) for item in canvas.scene().items() if item.cacheMode() != kept]
    signs = [item for item in canvas.scene().items() if isinstance(item, pg.ScatterPlotItem)]
    for item, _ in cached:
        item.setCacheMode(kept)
    for sign in signs:
        sign.opts["useCache"] = False
    try:
        yield
    finally:
        for sign in signs:
            sign.opts["useCache"] = True
        for item, mode in cached:
            item.setCacheMode(mode)
