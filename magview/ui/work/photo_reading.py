"""A person's photograph made small enough to be kept: bounded before anything of it is decoded."""

from __future__ import annotations

from pathlib import Path

from PySide6.QtCore import QBuffer, QByteArray, QIODevice, QSize, Qt
from PySide6.QtGui import QImage, QImageReader, QImageWriter, QPainter

from magview.job.photographs import MAX_KEPT_BYTES
from magview.spec.base import SpecError
from magview.spec.language import tr

MAX_FILE_BYTES = 40_000_000
MAX_DOTS = 60_000_000
_LONG_SIDE = 1600
"""Dots of the longer side of what is kept: enough for a paint mark on paper."""
_MEMORY_MB = 256
_QUALITIES = (85, 70, 50)


def reduced(path: Path) -> bytes:
    """A photograph as a small JPEG without its notes of place and time.

    Raises SpecError, in one sentence, for what is no photograph, is cut short, or is too large to be read.
    """
    image = _read(_bytes_of(path), path.name)
    for quality in _QUALITIES:
        kept = QByteArray()
        buffer = QBuffer(kept)
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        writer = QImageWriter(buffer, b"jpeg")
        writer.setQuality(quality)
        writer.write(image)
        if 0 < kept.size() <= MAX_KEPT_BYTES:
            return bytes(kept.data())
    raise SpecError(tr("{file}: cannot be made small enough; take a picture with less in it", file=path.name))


def _bytes_of(path: Path) -> bytes:
    try:
        if not path.is_file():
            raise SpecError(tr("{file}: is no file; choose a photograph, such as marks.jpg", file=path.name))
        with path.open("rb") as file:
            data = file.read(MAX_FILE_BYTES + 1)
    except OSError as error:
        raise SpecError(
            tr("{file}: cannot be read: {reason}", file=path.name, reason=error.strerror or error)
        ) from error
    if len(data) > MAX_FILE_BYTES:
        raise SpecError(
            tr(
                "{file}: is larger than {most} MB, the most that is read",
                file=path.name,
                most=MAX_FILE_BYTES // 10**6,
            )
        )
    return data


def _read(data: bytes, name: str) -> QImage:
    held = QByteArray(data)
    buffer = QBuffer(held)
    buffer.open(QIODevice.OpenModeFlag.ReadOnly)
    kind = _kind(data)
    # No other decoder sees it: those of drawings open further files.
    reader = QImageReader(buffer, kind)
    reader.setAutoDetectImageFormat(False)
    reader.setAutoTransform(True)
    if not kind or not reader.canRead():
        raise SpecError(tr("{file}: is no photograph that can be read; JPEG, PNG and WebP are taken", file=name))
    size = reader.size()
    if not size.isValid() or size.isEmpty() or size.width() * size.height() > MAX_DOTS:
        raise SpecError(
            tr("{file}: is {width} × {height} dots, and at most {most} million are read; take it with fewer, such as "
               "4000 × 3000", file=name, width=size.width(), height=size.height(), most=MAX_DOTS // 10**6)
        )  # fmt: skip
    cut_short = tr("{file}: is damaged or cut short; copy it from the camera again", file=name)
    if not _whole(data, kind):
        raise SpecError(cut_short)
    if max(size.width(), size.height()) > _LONG_SIDE:
        small = size.scaled(QSize(_LONG_SIDE, _LONG_SIDE), Qt.AspectRatioMode.KeepAspectRatio)
        reader.setScaledSize(small.expandedTo(QSize(1, 1)))
    before = QImageReader.allocationLimit()
    QImageReader.setAllocationLimit(_MEMORY_MB)
    try:
        image = reader.read()
    finally:
        QImageReader.setAllocationLimit(before)
    if image.isNull():
        raise SpecError(cut_short)
    plain = QImage(image.size(), QImage.Format.Format_RGB32)
    plain.fill(Qt.GlobalColor.white)

    painter = QPainter(plain)
    painter.drawImage(0, 0, image)
    painter.end()
    return plain


def _kind(data: bytes) -> bytes:
    """Kind of picture by its first bytes; nothing for any other file."""
    if data[:3] == b"\xff\xd8\xff":
        return b"jpeg"
    if data[:8] == b"\x89PNG\r\n\x1a\n":
        return b"png"
    return b"webp" if data[:4] == b"RIFF" and data[8:12] == b"WEBP" else b""


def _whole(data: bytes, kind: bytes) -> bool:
    """Whether a file has its own end: decoders show half of a picture without a word."""
    if kind == b"jpeg":
        return data.rfind(b"\xff\xd9") > data.rfind(b"\xff\xda")
    if kind == b"png":
        return data.rfind(b"IEND") > 0
    return len(data) >= 8 + int.from_bytes(data[4:8], "little")
