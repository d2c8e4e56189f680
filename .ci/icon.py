"""The program's icon from the bench's own shapes: `python .ci/icon.py` writes resources/icons anew.

magview.svg is the drawing; the PNG sizes and magview.ico (for Windows) are made from it. Needs the window's Qt only.
"""

from __future__ import annotations

import os
import struct
import sys
from pathlib import Path

import numpy as np

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from magview.drawing.breaker_end import BreakerEnd, breaker_end  # noqa: E402
from magview.drawing.shapes import Array, Point, band, rotate  # noqa: E402
from magview.spec.library import find_magneto  # noqa: E402

ICONS = ROOT / "resources" / "icons"
SIZES = (16, 24, 32, 48, 64, 128, 256, 512)
IN_ICO = (16, 24, 32, 48, 64, 256)

SIDE = 128.0
"""Of the drawing's square [-]."""

ROTOR_DEG = 24.0
"""Poles off the axes: it looks as if it turned."""

COLOURS = {
    "north": "#c4453a",
    "south": "#3867b0",
    "ground": "#f6f3ea",
    "ring": "#3a4148",
    "cam": "#8a949f",
    "arm": "#5d6771",
    "fibre": "#a8743c",
    "contact": "#e0a800",
}
_PARTS = ("cam", "fibre", "arm", "contact")
"""Materials of the breaker end that are in the icon, the last on top: few and strong, to be told at 16 pixels."""

OPEN_DEG = 6.0
"""So far the arm is lifted: enough to see the gap."""


def svg_text() -> str:
    """The drawing: a rotor's poles round the cam, arm and contacts of the shipped magneto."""
    magneto = find_magneto("seven-radial")
    pitch = 360.0 / magneto.poles
    half = 0.41 * pitch
    side = f"{SIDE:g}"
    lines = [
        f'<svg xmlns="http://www.w3.org/2000/svg" width="{side}" height="{side}" viewBox="0 0 {side} {side}">',
        "<title>magview</title>",
        _disc((0.0, 0.0), 61.0, "ring"),
    ]
    for i in range(magneto.poles):
        middle = ROTOR_DEG + i * pitch
        lines.append(_path((band(45.0, 59.0, middle - half, middle + half),), "south" if i % 2 else "north"))
    return "\n".join([*lines, _disc((0.0, 0.0), 43.0, "ground"), *_mechanism(breaker_end(magneto)), "</svg>", ""])


def _mechanism(drawing: BreakerEnd) -> list[str]:
    pivot = drawing.origins["arm"]
    pieces = [
        (s.material, tuple(rotate(o, OPEN_DEG, pivot) if s.group == "arm" else o for o in s.outlines))
        for material in _PARTS for s in drawing.shapes if s.material == material and s.filled
    ]  # fmt: skip
    points = np.concatenate([outline for _, outlines in pieces for outline in outlines])
    middle = (points.max(axis=0) + points.min(axis=0)) / 2.0
    scale = 40.0 / float(np.hypot(*(points - middle).T).max())
    lines = [_path(tuple((o - middle) * scale for o in outlines), material) for material, outlines in pieces]
    for centre, radius in ((np.array(pivot), 3.4), (np.zeros(2), 5.0)):
        lines.append(_disc((centre - middle) * scale, radius, "ground"))
    return lines


def _path(outlines: tuple[Array, ...], colour: str) -> str:
    half = SIDE / 2.0
    pieces = []
    for outline in outlines:
        points = [f"{half + x:.2f} {half - y:.2f}" for x, y in outline.tolist()]
        pieces.append(f"M{'L'.join(points)}Z")
    return f'<path fill="{COLOURS[colour]}" fill-rule="evenodd" d="{"".join(pieces)}"/>'


def _disc(centre: Point | Array, radius: float, colour: str) -> str:
    half = SIDE / 2.0
    return (
        f'<circle cx="{half + centre[0]:.2f}" cy="{half - centre[1]:.2f}" r="{radius:.2f}" fill="{COLOURS[colour]}"/>'
    )


def ico_bytes(pictures: dict[int, bytes]) -> bytes:
    """An .ico of PNG pictures by their size: a table of sixteen bytes each, then the pictures (Windows Vista on)."""
    head, body = struct.pack("<HHH", 0, 1, len(pictures)), b""
    start = len(head) + 16 * len(pictures)
    for size, picture in pictures.items():
        head += struct.pack("<BBBBHHII", size % 256, size % 256, 0, 0, 1, 32, len(picture), start + len(body))
        body += picture
    return head + body


def main() -> None:
    """Write the drawing and all that is made from it."""
    os.environ.setdefault("QT_QPA_PLATFORM", "offscreen")
    from PySide6.QtCore import Qt
    from PySide6.QtGui import QGuiApplication, QImage, QPainter
    from PySide6.QtSvg import QSvgRenderer

    app = QGuiApplication([])
    ICONS.mkdir(exist_ok=True)
    text = svg_text()
    (ICONS / "magview.svg").write_text(text, encoding="utf-8")
    drawing = QSvgRenderer(text.encode())
    for size in SIZES:
        image = QImage(size, size, QImage.Format.Format_ARGB32)
        image.fill(Qt.GlobalColor.transparent)
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        drawing.render(painter)
        painter.end()
        image.save(str(ICONS / f"magview-{size}.png"))
    pictures = {size: (ICONS / f"magview-{size}.png").read_bytes() for size in IN_ICO}
    (ICONS / "magview.ico").write_bytes(ico_bytes(pictures))
    del app


if __name__ == "__main__":
    main()
