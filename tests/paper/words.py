"""The words of documents, for the tests."""

from __future__ import annotations

from magview.paper.blocks import (
    HATCHED,
    Contents,
    Document,
    Heading,
    Items,
    NewPage,
    Paragraph,
    Pictures,
    SignatureLines,
    Table,
    WriteLines,
    letters,
)


def texts_of(document: Document) -> list[str]:
    """All texts of a document, those beside its pictures too."""
    out = [document.title, document.foot]
    for block in document.blocks:
        match block:
            case Heading():
                out += [letters(block.text), block.mark]
            case Paragraph():
                out.append(letters(block.text))
            case Table():
                out += [letters(cell) for row in (block.head, *block.rows) for cell in row]
            case Pictures():
                out += [text for picture in block.pictures for text in (picture.caption, picture.told)]
            case Items():
                out += map(letters, block.items)
            case SignatureLines():
                out += [text for line in block.lines for text in line]
            case Contents():
                out += [words for words, _ in block.entries]
            case WriteLines() | NewPage():
                pass
    return [text for text in out if text and text != HATCHED]
