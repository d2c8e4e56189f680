"""Blocks put onto pages: what is drawn where, so that the number of pages is known when the first is drawn."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from PySide6.QtCore import QLineF, QPointF, QRectF, QSizeF, Qt
from PySide6.QtGui import (
    QColor,
    QPagedPaintDevice,
    QPainter,
    QPen,
    QTextLayout,
)

from magview.paper import blocks
from magview.paper.blocks import Block, Document, Run, Words, letters, printable
from magview.spec.language import tr
from magview.ui.paper.placed import Placed, placed
from magview.ui.paper.text_lines import Laid, broken, font_of, widest

DPI = 600
_MM = DPI / 25.4
_INK, _GROUND = "#000000", "#ececec"
_LINE_MM = 9.0
"""A line to write on."""


@dataclass(frozen=True)
class _Setting:
    body: float
    """Type [points]."""
    small: float
    margin_mm: float
    after_mm: float
    """Room below a paragraph."""

    def heading(self, level: int) -> float:
        return self.body * {1: 1.76, 2: 1.3}.get(level, 1.12)


_SETTINGS = {"form": _Setting(8.5, 7.5, 15.0, 1.2), "book": _Setting(9.5, 7.5, 18.0, 1.9)}
_FRAMES = {"note": 0.2, "caution": 0.4, "warning": 0.9, "formula": 0.0, "code": 0.0}
"""Paragraphs in a frame, with how thick it is [mm]; those without stand on a ground."""
_INDENTS_MM = {"bullet": 5.0, "number": 7.0, "tick": 12.0}

_WIDEST = 1e6
"""More than any line takes [dots]."""

_Draw = Callable[[QPainter], None]


class Layout:
    """A document's pages."""

    def __init__(self, device: QPagedPaintDevice, size: QSizeF, document: Document) -> None:
        self._device, self._size, self._foot = device, size, printable(document.foot)
        self._set = _SETTINGS[document.setting]
        self._left = self._top = self._set.margin_mm * _MM
        self._width = size.width() - 2 * self._left
        self._bottom = size.height() - (self._set.margin_mm + 5.0) * _MM
        self.pages: list[list[_Draw]] = [[]]
        self.anchors: dict[str, int] = {}
        """On which page each named heading stands."""
        self._y = self._top
        for i, block in enumerate(document.blocks):
            self._add(block, document.blocks[i + 1 : i + 4])

    def paint(self, painter: QPainter, number: int) -> None:
        """Draw one page, the first being 1."""
        for draw in self.pages[number - 1]:
            draw(painter)
        page = tr("page {page} of {pages}", page=number, pages=len(self.pages))
        layout, _ = self._lines(f"{self._foot} · {page}", self._width, self._set.small)
        y = self._size.height() - (self._set.margin_mm + 2.0) * _MM
        painter.setPen(QPen(QColor(_INK), 0.1 * _MM))
        painter.drawLine(QPointF(self._left, y), QPointF(self._left + self._width, y))
        for i in range(layout.lineCount()):
            layout.lineAt(i).draw(painter, QPointF(self._left, y + 1.0 * _MM))

    def _add(self, block: Block, following: Sequence[Block]) -> None:
        """Put a block below what is there already; a heading stays with what follows it."""
        match block:
            case blocks.Heading():
                self._heading(block, self._kept(following))
            case blocks.Paragraph():
                self._paragraph(block)
            case blocks.Items():
                self._items(block)
            case blocks.Table():
                self._table(block)
            case blocks.Pictures():
                self._pictures(block)
            case blocks.SignatureLines():
                self._signature(block)
            case blocks.WriteLines():
                self._write_lines(block)
            case blocks.Contents():
                self._contents(block)
            case blocks.NewPage():
                if self._y > self._top:
                    self._page()

    def _kept(self, following: Sequence[Block]) -> float:
        """Height kept on one page with a heading: a drawing; a table, where a page holds both; a few lines."""
        match following:
            case [blocks.Pictures() as pictures, *_]:
                return self._tall(self._rows_of(pictures)[0])
            case [blocks.Table(to_fill=False) as table, *_]:
                whole = self._whole(table)
                return whole if whole < self._bottom - self._top - 15 * _MM else 18 * _MM
            case [blocks.Paragraph(kind="small"), blocks.Table(), *_]:
                return 30 * _MM
            case [blocks.Paragraph(kind="plain") as paragraph, *_]:
                return min(18 * _MM, self._lines(paragraph.text, self._width, self._set.body)[1])
            case [blocks.SignatureLines() as lines, *rest]:
                further = self._kept(rest) if rest and isinstance(rest[0], blocks.SignatureLines) else 0.0
                return self._signature_tall(lines) + 6 * _MM + further
            case [blocks.Heading() as heading, *rest]:
                return self._lines(heading.text, self._width, self._set.heading(heading.level))[1] + self._kept(rest)
        return 18 * _MM

    # -------------------------------------------------------------- places

    def _page(self) -> None:
        self.pages.append([])
        self._y = self._top

    def _room(self, height: float) -> None:
        """A new page unless so much fits on this one."""
        if self._y + height > self._bottom and self._y > self._top:
            self._page()

    def _later(self, draw: _Draw) -> None:
        self.pages[-1].append(draw)

    # -------------------------------------------------------------- text

    def _lines(self, words: Words, width: float, points: float, bold: bool = False, align: str = "l") -> Laid:
        return broken(words, width, font_of(points, bold), self._device, align)

    def _text(self, layout: QTextLayout, x: float, y: float, first: int = 0, last: int | None = None) -> None:
        """Draw the lines of a layout from its `first` to before its `last`, the first at (x, y)."""
        last = layout.lineCount() if last is None else last
        above = layout.lineAt(first).position().y() if first < last else 0.0

        def draw(painter: QPainter) -> None:
            painter.setPen(QColor(_INK))
            for i in range(first, last):
                layout.lineAt(i).draw(painter, QPointF(x, y - above))

        self._later(draw)

    def _fitting(self, layout: QTextLayout, start: int) -> tuple[int, float]:
        """Before which line of a layout the page is full, and how high the lines from `start` to there are."""
        end, used = start, 0.0
        while end < layout.lineCount() and self._y + used + layout.lineAt(end).height() <= self._bottom:
            used += layout.lineAt(end).height()
            end += 1
        return end, used

    def _flow(self, columns: Sequence[tuple[QTextLayout, float]]) -> None:
        """Layouts beside one another, each at its x, that go on over the pages."""
        starts = [0] * len(columns)
        while True:
            highest = 0.0
            for i, (layout, x) in enumerate(columns):
                end, used = self._fitting(layout, starts[i])
                self._text(layout, x, self._y, starts[i], end)
                starts[i], highest = end, max(highest, used)
            self._y += highest
            if all(start == layout.lineCount() for start, (layout, _) in zip(starts, columns, strict=True)):
                return
            self._page()

    # -------------------------------------------------------------- blocks of words

    def _heading(self, heading: blocks.Heading, with_it: float) -> None:
        above = {1: 2.0, 2: 4.0}.get(heading.level, 2.0) * self._set.after_mm / 1.2
        self._y += above * _MM if self._y > self._top else 0.0
        # A state may take several words: it has the right half, on as many lines as it needs.
        mark, marked = self._lines(heading.mark, self._width * 0.45, self._set.body)
        wide = widest(mark) if heading.mark else 0.0
        own = min(self._width * 0.8, self._width - wide - 3 * _MM)
        layout, height = self._lines(heading.text, own, self._set.heading(heading.level), True)
        height = max(height, marked) if heading.mark else height
        self._room(height + 1.0 * _MM + with_it)
        if heading.anchor:
            self.anchors[heading.anchor] = len(self.pages)
        self._text(layout, self._left, self._y)
        if heading.mark:
            self._text(mark, self._left + self._width - wide, self._y)
        self._y += height
        if heading.level == 2:
            self._rule(self._left, self._y, self._width, 0.4)
        self._y += 1.0 * _MM

    def _paragraph(self, paragraph: blocks.Paragraph) -> None:
        frame = _FRAMES.get(paragraph.kind)
        inset = 0.0 if frame is None else 2.0 * _MM
        size = self._set.small if paragraph.kind == "small" else self._set.body
        text = ((Run(letters(paragraph.text), ("code",)),)) if paragraph.kind == "code" else paragraph.text
        layout, height = self._lines(text, self._width - 2 * inset, size, paragraph.kind == "warning")
        if frame is None or height + 2 * inset >= self._bottom - self._top:
            self._flow([(layout, self._left + inset)])
            self._y += self._set.after_mm * _MM
            return
        self._room(height + 2 * inset)
        where = QRectF(self._left, self._y, self._width, height + 2 * inset)
        if frame:
            self._box(where, frame)
        else:
            self._ground(where)
        self._text(layout, self._left + inset, self._y + inset)
        self._y += height + 2 * inset + (0.3 + self._set.after_mm) * _MM

    def _items(self, items: blocks.Items) -> None:
        indent, side = _INDENTS_MM[items.kind] * _MM, 3.2 * _MM
        for number, item in enumerate(items.items, 1):
            words, tall = self._lines(item, self._width - indent - 1.0 * _MM, self._set.body)
            self._room(tall + 1.5 * _MM)
            mark, _ = self._lines("•" if items.kind == "bullet" else f"{number}.", 8 * _MM, self._set.body)
            x = self._left + indent - (3.5 if items.kind == "bullet" else 7.0) * _MM
            if items.kind == "tick":
                self._box(QRectF(self._left, self._y + 0.3 * _MM, side, side), 0.25)
                tall = max(tall, side)
            self._text(mark, max(x, self._left), self._y)
            self._text(words, self._left + indent, self._y)
            self._y += tall + self._set.after_mm * 0.6 * _MM
        self._y += 1.0 * _MM

    def _contents(self, contents: blocks.Contents) -> None:
        for words, anchor in contents.entries:
            layout, height = self._lines(words, self._width - 15 * _MM, self._set.body)
            self._room(height)
            self._text(layout, self._left, self._y)
            self._later(self._page_number(anchor, self._y))
            self._y += height + 0.8 * _MM
        self._y += self._set.after_mm * _MM

    def _page_number(self, anchor: str, y: float) -> _Draw:
        """Draws the page of a heading, which is not known before all are laid out."""

        def draw(painter: QPainter) -> None:
            layout, _ = self._lines(str(self.anchors[anchor]), self._width, self._set.body, align="r")
            layout.lineAt(0).draw(painter, QPointF(self._left, y))

        return draw

    # -------------------------------------------------------------- tables

    def _table(self, table: blocks.Table) -> None:
        widths = self._widths(table)
        head = self._row(table, table.head, widths, bold=True) if table.head else None
        rows = [self._row(table, cells, widths, i in table.bad) for i, cells in enumerate(table.rows)]
        if head is not None:
            self._room(head.height + (rows[0].height if rows else 0.0))
            self._draw_row(table, head, widths, heading=True)
        for i, row in enumerate(rows):
            if row.height > self._bottom - self._top - 30 * _MM:
                starts = (self._left + sum(widths[:k]) + 0.6 * _MM for k in range(len(widths)))
                self._flow([(layout, x) for (layout, _), x in zip(row.cells, starts, strict=True)])
                continue
            if self._y + row.height > self._bottom and self._y > self._top:
                self._page()
                if head is not None:
                    self._draw_row(table, head, widths, heading=True)
            if i in table.bad:
                self._ground(QRectF(self._left, self._y, sum(widths), row.height))
            self._draw_row(table, row, widths)
        self._y += (2.5 if table.to_fill else 0.3 + self._set.after_mm) * _MM

    def _whole(self, table: blocks.Table) -> float:
        """Height of a table that is not split."""
        widths = self._widths(table)
        head = self._row(table, table.head, widths, bold=True).height if table.head else 0.0
        return head + sum(self._row(table, c, widths, i in table.bad).height for i, c in enumerate(table.rows))

    def _widths(self, table: blocks.Table) -> list[float]:
        if table.weights:
            return [self._width * weight / sum(table.weights) for weight in table.weights]
        # As wide as the words, or, where they need more than there is, each between its longest word and all of it.
        columns = list(zip(*((table.head,) if table.head else ()), *table.rows, strict=True))
        least = [max(self._needed(cell, 1.0) for cell in column) for column in columns]
        most = [max(self._needed(cell, _WIDEST) for cell in column) for column in columns]
        spare, missing = self._width - sum(least), sum(most) - sum(least)
        if spare < 0:
            return [self._width * width / sum(least) for width in least]
        share = min(1.0, spare / missing) if missing > 0 else 1.0
        return [low + share * (high - low) for low, high in zip(least, most, strict=True)]

    def _needed(self, cell: Words, width: float) -> float:
        """Width of a cell for the words that stand on one line of a width."""
        font = font_of(self._set.body, bold=True)
        return widest(broken(cell, width, font, self._device, within=False)[0]) + 3 * _MM

    def _row(self, table: blocks.Table, cells: Sequence[Words], widths: list[float], bold: bool) -> _Row:
        inset = 3 * _MM if table.to_fill else 2 * _MM
        ways = table.align or "l" * len(cells)
        laid = [
            self._lines("" if cell == blocks.HATCHED else cell, width - inset, self._set.body, bold, way)
            for cell, width, way in zip(cells, widths, ways, strict=True)
        ]
        tallest = max(height for _, height in laid) + (1.5 if table.to_fill else 1.0) * _MM
        hatched = frozenset(i for i, cell in enumerate(cells) if cell == blocks.HATCHED)
        return _Row(laid, tallest if bold or not table.to_fill else max(tallest, table.row_mm * _MM), hatched)

    def _draw_row(self, table: blocks.Table, row: _Row, widths: list[float], heading: bool = False) -> None:
        x = self._left
        for i, ((layout, tall), width) in enumerate(zip(row.cells, widths, strict=True)):
            if i in row.hatched:
                self._hatch(QRectF(x, self._y, width, row.height))
            if table.to_fill:
                self._box(QRectF(x, self._y, width, row.height), 0.35 if heading else 0.2)
                self._text(layout, x + 1.5 * _MM, self._y + (row.height - tall) / 2)
            else:
                self._text(layout, x + 0.6 * _MM, self._y + 0.5 * _MM)
            x += width
        self._y += row.height
        if not table.to_fill:
            self._rule(self._left, self._y, sum(widths), 0.3 if heading else 0.1)

    # -------------------------------------------------------------- pictures

    def _pictures(self, pictures: blocks.Pictures) -> None:
        for row in self._rows_of(pictures):
            tallest, gap = max(p.height for p in row), (self._width - sum(p.width for p in row)) / len(row)
            self._room(self._tall(row))
            x = self._left + gap / 2
            for picture in row:
                self._later(picture.draw_at(x, self._y))
                if picture.caption:
                    self._text(self._caption(picture)[0], x, self._y + tallest + 1.0 * _MM)
                x += picture.width + gap
            self._y += self._tall(row)

    def _rows_of(self, pictures: blocks.Pictures) -> list[list[Placed]]:
        """Pictures as many beside one another as there is room for."""
        rows: list[list[Placed]] = [[]]
        for picture in pictures.pictures:
            width = min(self._width, picture.width_mm * _MM)
            if rows[-1] and sum(p.width for p in rows[-1]) + width > self._width:
                rows.append([])
            rows[-1].append(placed(picture, width))
        return rows

    def _caption(self, picture: Placed) -> Laid:
        return self._lines(picture.caption, picture.width, self._set.small)

    def _tall(self, row: list[Placed]) -> float:
        """Height of a row of pictures with its captions."""
        captions = (self._caption(p)[1] if p.caption else 0.0 for p in row)
        return max(p.height for p in row) + max(captions) + 2.5 * _MM

    # -------------------------------------------------------------- lines

    def _signature(self, signature: blocks.SignatureLines) -> None:
        gap = 4.0 * _MM
        count = len(signature.lines)
        width = (self._width - gap * (count - 1)) / count
        filled = [self._lines(text, width, self._set.body, True) for _, text in signature.lines]
        tall = self._signature_tall(signature)
        self._room(tall + 6 * _MM)
        line = self._y + tall
        for i, (what, _) in enumerate(signature.lines):
            x = self._left + i * (width + gap)
            self._text(filled[i][0], x, line - filled[i][1] - 0.5 * _MM)
            self._rule(x, line, width, 0.25)
            self._text(self._lines(what, width, self._set.small)[0], x, line + 0.5 * _MM)
        self._y = line + 5 * _MM

    def _signature_tall(self, signature: blocks.SignatureLines) -> float:
        """Height above the lines to sign on: a hand's, or that of the words that are filled in."""
        count = len(signature.lines)
        width = (self._width - 4.0 * _MM * (count - 1)) / count
        filled = (self._lines(text, width, self._set.body, True)[1] for _, text in signature.lines)
        return max(9.0 * _MM, max(filled) + 3 * _MM)

    def _write_lines(self, lines: blocks.WriteLines) -> None:
        for _ in range(lines.count):
            self._room(_LINE_MM * _MM)
            self._y += _LINE_MM * _MM
            self._rule(self._left, self._y, self._width, 0.2)
        self._y += 3 * _MM

    def _rule(self, x: float, y: float, width: float, mm: float) -> None:
        def draw(painter: QPainter) -> None:
            painter.setPen(QPen(QColor(_INK), mm * _MM))
            painter.drawLine(QPointF(x, y), QPointF(x + width, y))

        self._later(draw)

    def _box(self, where: QRectF, mm: float) -> None:
        def draw(painter: QPainter) -> None:
            painter.setPen(QPen(QColor(_INK), mm * _MM))
            painter.setBrush(Qt.BrushStyle.NoBrush)
            painter.drawPolygon([where.topLeft(), where.topRight(), where.bottomRight(), where.bottomLeft()])

        self._later(draw)

    def _hatch(self, where: QRectF) -> None:
        """Strokes as lines: the pattern of a brush is as fine as the printer's dots."""
        step, lines = 1.5 * _MM, list[QLineF]()
        for n in range(1, int((where.width() + where.height()) / step) + 1):
            # All points of a stroke are as far along the two edges together.
            low, high = max(0.0, n * step - where.width()), min(n * step, where.height())
            x, y = where.left() + n * step, where.top()
            lines.append(QLineF(x - low, y + low, x - high, y + high))

        def draw(painter: QPainter) -> None:
            painter.setPen(QPen(QColor(_INK), 0.08 * _MM))
            painter.drawLines(lines)

        self._later(draw)

    def _ground(self, where: QRectF) -> None:
        self._later(lambda painter: painter.fillRect(where, QColor(_GROUND)))


@dataclass(frozen=True)
class _Row:
    cells: list[Laid]
    height: float
    hatched: frozenset[int] = frozenset()
