"""Trying out Qt in a process of its own, which may die of it: ``python -m magview.ui.kit.trial_run window|printing``.

Prints one JSON object. Used by ``magview check``, which says in words what came of it.
"""

from __future__ import annotations

import json
import sys


def window() -> dict[str, object]:
    """Show a real, empty window; returns the platform it is on and whether that is a screen anybody sees."""
    from PySide6.QtWidgets import QApplication, QWidget

    app = QApplication([])
    widget = QWidget()
    widget.resize(10, 10)
    widget.show()
    app.processEvents()
    screen = widget.screen()
    size = screen.geometry()
    return {"platform": app.platformName(), "width": size.width(), "height": size.height()}


def printing() -> dict[str, object]:
    """Write a page of PDF and read a drawing, into memory; returns what there is to do it with."""
    from PySide6.QtCore import QBuffer, QByteArray, QIODevice
    from PySide6.QtGui import QFontDatabase, QGuiApplication, QPainter, QPdfWriter
    from PySide6.QtSvg import QSvgRenderer

    app = QGuiApplication([])
    data = QByteArray()
    buffer = QBuffer(data)
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    painter = QPainter(writer)
    painter.drawText(100, 100, "0.33 mm, 12°")
    painter.end()
    buffer.close()
    svg = QSvgRenderer(b'<svg xmlns="http://www.w3.org/2000/svg" width="1" height="1"/>').isValid()
    found: dict[str, object] = {
        "fonts": len(QFontDatabase.families()),
        "pdf": bytes(data.data()[:4]) == b"%PDF",
        "svg": svg,
    }
    del app
    return found


if __name__ == "__main__":
    sys.stdout.write(json.dumps({"window": window, "printing": printing}[sys.argv[1]]()) + "\n")
