"""A picture as a file: SVG, PDF or PNG at its own size, with scale bar and caption; and the pages of any PDF."""

from __future__ import annotations

import contextlib
from collections.abc import Iterator
from pathlib import Path
from typing import Protocol

from PySide6.QtCore import QLineF, QMarginsF, QPointF, QRectF, QSize, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontDatabase,
    QFontMetricsF,
    QImage,
    QPageLayout,
    QPageSize,
    QPainter,
    QPdfWriter,
    QPen,
)

from magview.spec.base import SpecError
from magview.spec.language import number, tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured


class Drawn(Protocol):
    """A widget with a picture that can be drawn into a file."""

    look: Look
    numbers: bool
    to_scale: bool

    def font(self) -> QFont:
        """Type of its words."""

    def picture_size(self) -> QSize:
        """Size on the screen [px]."""

    def pixels_per_mm(self) -> float:
        """Scale, where a bar can say one."""

    def draw_lines(self, factor: float) -> None:
        """Draw lines this much thicker."""

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Paint it, with a ratio of 0 as lines."""

    def stand_in(self, model: Pictured) -> Pictured:
        """Show another model's state; returns the former model."""

    def accessibleDescription(self) -> str:
        """Its content in words."""


KINDS = (".svg", ".pdf", ".png")

_PAPERS = {"a4": QPageSize.PageSizeId.A4, "letter": QPageSize.PageSizeId.Letter}
_DPI = 96
_SHARPNESS = 3
"""Pixels of a PNG per pixel of the screen: enough for print."""


def export_picture(view: Drawn, path: Path, caption: str) -> None:
    """Write what a picture shows. Raises SpecError for an unknown kind or a file that cannot be written."""
    kind = path.suffix.lower()
    if kind not in KINDS:
        raise SpecError(tr("{name}: a picture's name must end in {kinds}", name=path.name, kinds=", ".join(KINDS)))
    size = whole_size(view, caption)
    with written_beside(path) as temporary:
        _write(view, temporary, kind, size, caption)


def whole_size(view: Drawn, caption: str) -> QSize:
    """Size of a picture with its caption [px]."""
    return view.picture_size() + QSize(0, round(_band_height(view, caption)))


def image_of(view: Drawn, caption: str, factor: float) -> QImage:
    """A picture with its caption, so many times finer than on the screen."""
    size = whole_size(view, caption)
    image = QImage((QSizeF(size) * factor).toSize(), QImage.Format.Format_ARGB32)
    image.setDevicePixelRatio(factor)
    painter = QPainter(image)
    _paint(painter, view, size, caption, line_factor=1.2 * factor)
    painter.end()
    return image


@contextlib.contextmanager
def written_beside(path: Path) -> Iterator[Path]:
    """A file to write in place of another, which is replaced once it is whole.

    Raises SpecError, in one sentence, where that fails; what stood there then stands.
    """
    temporary = path.with_name(f".{path.stem[:40]}.part{path.suffix.lower()}")
    try:
        temporary.touch()  # Qt's writers are silent about a place that cannot be written; this is not
        yield temporary
        temporary.replace(path)
    except OSError as error:
        raise SpecError(
            tr("{name}: cannot be written: {reason}", name=path.name, reason=error.strerror or error)
        ) from error
    finally:
        with contextlib.suppress(OSError):
            temporary.unlink(missing_ok=True)


def prepare(writer: QPdfWriter, paper: str, dpi: int) -> QSizeF:
    """Set a writer's resolution [dots/in] and paper, "a4" or "letter", upright and without margins.

    Returns the size of a page [dots]. Raises SpecError where there is no font.
    """
    if not QFontDatabase.families():
        raise SpecError(tr("there are no fonts to print with; on Debian or Ubuntu fonts-dejavu-core has some"))
    writer.setResolution(dpi)
    size = QPageSize(_PAPERS[paper])
    writer.setPageLayout(QPageLayout(size, QPageLayout.Orientation.Portrait, QMarginsF(0, 0, 0, 0)))
    return QSizeF(size.sizePixels(dpi))


def _write(view: Drawn, path: Path, kind: str, size: QSize, caption: str) -> None:
    if kind == ".png":
        image = image_of(view, caption, _SHARPNESS)
        if not image.save(str(path)):
            raise OSError(0, tr("the picture could not be saved"))
        return
    if kind == ".pdf":
        writer = QPdfWriter(str(path))
        writer.setResolution(_DPI)
        inches = QSizeF(size) * (1 / _DPI)
        writer.setPageSize(QPageSize(inches, QPageSize.Unit.Inch))
        writer.setPageMargins(QMarginsF(0, 0, 0, 0))
        writer.setTitle(caption)
        painter = QPainter(writer)
        _paint(painter, view, size, caption)
        painter.end()
        return
    from PySide6.QtSvg import QSvgGenerator  # only here, so that the window does not wait for it

    svg = QSvgGenerator()
    svg.setFileName(str(path))
    svg.setSize(size)
    svg.setViewBox(QRectF(QPointF(0, 0), QSizeF(size)))
    svg.setResolution(_DPI)
    svg.setTitle(caption)
    painter = QPainter(svg)
    _paint(painter, view, size, caption)
    painter.end()


def _paint(painter: QPainter, view: Drawn, size: QSize, caption: str, line_factor: float = 1.5) -> None:
    painter.fillRect(QRectF(QPointF(0, 0), QSizeF(size)), QColor(view.look.theme.paper))
    painter.setRenderHint(QPainter.RenderHint.Antialiasing)
    # Lines are one pixel of the device wide: what is finer than the screen needs wider ones to look alike.
    view.draw_lines(line_factor)
    view.paint_picture(painter, 0.0)
    view.draw_lines(1.0)
    painter.setFont(view.font())
    metrics = QFontMetricsF(view.font())
    top = float(view.picture_size().height())
    painter.setPen(QPen(QColor(view.look.theme.text), 1.4))
    y = top + metrics.height()
    if view.numbers and view.to_scale:  # a picture without numbers is not to be measured either
        length, pixels = scale_bar(view.pixels_per_mm(), view.picture_size().width() / 4)
        painter.drawLine(QLineF(10, y, 10 + pixels, y))
        for x in (10.0, 10.0 + pixels):
            painter.drawLine(QLineF(x, y - 4, x, y + 4))
        painter.drawText(QPointF(18 + pixels, y + metrics.ascent() / 2 - 2), f"{number(length)} mm")
    box = QRectF(10, y + 0.7 * metrics.height(), size.width() - 20, size.height())
    painter.drawText(box, int(Qt.TextFlag.TextWordWrap), caption)


def _band_height(view: Drawn, caption: str) -> float:
    """Room under the picture for the scale bar and the whole caption [px]."""
    metrics = QFontMetricsF(view.font())
    room = QRectF(0, 0, view.picture_size().width() - 20, 10_000)
    return 2.2 * metrics.height() + metrics.boundingRect(room, int(Qt.TextFlag.TextWordWrap), caption).height()


def scale_bar(pixels_per_mm: float, room: float) -> tuple[float, float]:
    """A round length [mm] and its pixels, as long as fits into the room [px]."""
    step = 0.001
    best = step
    while step < 1e4:
        for factor in (1, 2, 5):
            if factor * step * pixels_per_mm <= room:
                best = factor * step
        step *= 10.0
    return best, best * pixels_per_mm
