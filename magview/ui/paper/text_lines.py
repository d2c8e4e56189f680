"""Words broken into lines for a page, with the looks of their runs."""

from __future__ import annotations

from PySide6.QtCore import QPointF, Qt
from PySide6.QtGui import QFont, QPagedPaintDevice, QTextCharFormat, QTextLayout, QTextOption

from magview.paper.blocks import Run, Words, letters, printable

Laid = tuple[QTextLayout, float]
"""Words broken into lines, and how high they are [dots]."""

_SHIFTS = {
    "sub": QTextCharFormat.VerticalAlignment.AlignSubScript,
    "sup": QTextCharFormat.VerticalAlignment.AlignSuperScript,
}


def font_of(points: float, bold: bool = False) -> QFont:
    """The type of all paper."""
    font = QFont("DejaVu Sans")
    font.setStyleHint(QFont.StyleHint.SansSerif)
    font.setPointSizeF(points)
    font.setBold(bold)
    return font


def broken(
    words: Words, width: float, font: QFont, device: QPagedPaintDevice, align: str = "l", *, within: bool = True
) -> Laid:
    """Words as lines of a width [dots]; `within`: a word that is wider than a line is broken, too."""
    layout = QTextLayout(printable(letters(words)).replace("\n", "\u2028"), font, device)
    option = QTextOption(Qt.AlignmentFlag.AlignRight if align == "r" else Qt.AlignmentFlag.AlignLeft)
    modes = QTextOption.WrapMode
    option.setWrapMode(modes.WrapAtWordBoundaryOrAnywhere if within else modes.WordWrap)
    layout.setTextOption(option)
    if not isinstance(words, str):
        layout.setFormats(_formats(words))
    layout.beginLayout()
    height = 0.0
    while (line := layout.createLine()).isValid():
        line.setLineWidth(width)
        line.setPosition(QPointF(0.0, height))
        height += line.height()
    layout.endLayout()
    return layout, height


def widest(layout: QTextLayout) -> float:
    """Width of the words of the widest line [dots]."""
    return max((layout.lineAt(i).naturalTextWidth() for i in range(layout.lineCount())), default=0.0)


def _formats(words: tuple[Run, ...]) -> list[QTextLayout.FormatRange]:
    """Formats of the letters of each run; Qt counts in units of UTF-16."""
    found, start = [], 0
    for run in words:
        form = QTextCharFormat()
        for style in run.styles:
            match style:
                case "strong":
                    form.setFontWeight(QFont.Weight.Bold)
                case "em" | "i":
                    form.setFontItalic(True)
                case "code":
                    form.setFontFamilies(["DejaVu Sans Mono"])
                case "sub" | "sup":
                    form.setVerticalAlignment(_SHIFTS[style])
        part = QTextLayout.FormatRange()
        part.start, part.length, part.format = start, len(run.text.encode("utf-16-le")) // 2, form
        found.append(part)
        start += part.length
    return found
