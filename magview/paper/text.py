"""A document as plain text: for files, and for those who have it read to them."""

from __future__ import annotations

from collections.abc import Iterator

from magview.paper import blocks
from magview.paper.blocks import BOX, Block, Document, letters
from magview.spec.language import tr


def plain_text(document: Document, underline: str = "") -> str:
    """The words of a document, line by line; `underline` is a sign to rule headings with."""
    return "\n".join(line for block in document.blocks for line in _lines(block, underline)) + "\n"


def _lines(block: Block, underline: str) -> Iterator[str]:
    match block:
        case blocks.Heading():
            words = letters(block.text) + (f" – {block.mark}" if block.mark else "")
            if block.level == 1:
                yield from (words, "")
            else:
                yield from ("", words, *([underline * len(words)] if underline else ()))
        case blocks.Paragraph():
            yield letters(block.text)
        case blocks.Items():
            for i, item in enumerate(block.items, 1):
                yield f"{ {'bullet': '•', 'number': f'{i}.', 'tick': f'{BOX} {i}.'}[block.kind] } {letters(item)}"
        case blocks.Table():
            yield from _table(block)
        case blocks.Pictures():
            yield from (picture.caption or picture.told for picture in block.pictures)
        case blocks.SignatureLines():
            yield from (f"{what}: {filled}" for what, filled in block.lines)
        case blocks.Contents():
            yield from (words for words, _ in block.entries)
        case blocks.WriteLines() | blocks.NewPage():
            pass


def _table(table: blocks.Table) -> Iterator[str]:
    """Rows with the head before each cell; without a head, cells in columns."""
    rows = [[tr("not asked") if cell == blocks.HATCHED else letters(cell) for cell in row] for row in table.rows]
    if not rows:
        yield tr("none")
    if table.head:
        heads = [letters(head) for head in table.head]
        for row in rows:
            yield "; ".join(f"{h}: {cell}" if h else f"{cell}." for h, cell in zip(heads, row, strict=True))
        return
    widths = [max(map(len, column)) for column in zip(*rows, strict=True)]
    for row in rows:
        yield "  ".join(f"{cell:<{width}}" for cell, width in zip(row, widths, strict=True)).rstrip()
