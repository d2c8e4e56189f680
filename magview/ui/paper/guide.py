"""The guide as PDF: Qt's text on pages, as selectable as the job sheet's, with page numbers in its contents."""

from __future__ import annotations

from functools import partial
from html import escape
from itertools import pairwise
from pathlib import Path

from PySide6.QtCore import QBuffer, QIODevice, QPointF, QRectF, QSizeF, Qt, QUrl
from PySide6.QtGui import (
    QAbstractTextDocumentLayout,
    QColor,
    QFont,
    QImage,
    QPainter,
    QPalette,
    QPdfWriter,
    QTextBlock,
    QTextCursor,
    QTextDocument,
    QTextFormat,
)

from magview import __version__
from magview.guide.book import TITLE, Paper, book_anchor
from magview.guide.pages import chapters, guide_folder
from magview.guide.render import Way, page_html
from magview.spec.language import tr
from magview.ui.paper.pdf import application, save_pages
from magview.ui.pictures.export import prepare

_DPI = 300
_MM = _DPI / 25.4
_MARGIN_MM = 18.0
_POINTS, _SMALL = 9.5, 7.5
_ROUNDS = 30
"""More than any page of the guide has headings."""
_WIDEST_PX, _TALLEST_PX = 600, 430
"""Largest picture [1/96 in]."""

PRINT_STYLE = """
table { border-collapse: collapse; border: 0.5px solid #8a929b; margin-top: 4px; margin-bottom: 8px; }
th, td { padding: 3px; }
th { background-color: #eceef0; }
table.caution { border: 2px solid #000000; }
table.formula { border: none; }
table.formula td { background-color: #f1f2f4; }
table.contents { border: none; }
code, pre { font-family: "DejaVu Sans Mono"; white-space: pre-wrap; }
a { color: #16191d; text-decoration: none; }
"""


def print_guide(path: Path, paper: Paper = "a4") -> int:
    """Write the guide as PDF; returns the number of pages. Raises SpecError where it cannot be written."""
    return save_pages(path, guide_pdf_bytes(paper))


def guide_pdf_bytes(paper: Paper = "a4") -> tuple[bytes, int]:
    """The guide as the bytes of a PDF, and its number of pages. Raises SpecError where there is no font."""
    app = application()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    whole = prepare(writer, paper, _DPI)
    writer.setTitle(TITLE)
    writer.setCreator(f"magview {__version__}")
    margin = _MARGIN_MM * _MM
    body = QSizeF(whole.width() - 2 * margin, whole.height() - 2 * margin - 4 * _MM)
    # The numbers take the same room whatever they are, so that the second layout stands like the first.
    book = _document({}, writer, body)
    book = _document(_pages_of_anchors(book), writer, body)
    count = book.pageCount()
    painter = QPainter(writer)
    for number in range(count):
        if number:
            writer.newPage()
        _paint(painter, book, number, QRectF(QPointF(margin, margin), body))
        _foot(painter, tr("{title} · magview {version} · page {number} of {count}", title=TITLE,
                          version=__version__, number=number + 1, count=count), margin, whole)  # fmt: skip
    painter.end()
    buffer.close()
    del app
    return bytes(buffer.data().data()), count


def _document(numbers: dict[str, int], writer: QPdfWriter, body: QSizeF) -> QTextDocument:
    """The whole book laid out, with page numbers in its contents where they are known."""
    document = QTextDocument()
    document.documentLayout().setPaintDevice(writer)
    document.setDocumentMargin(0.0)
    font = QFont("DejaVu Sans")
    font.setStyleHint(QFont.StyleHint.SansSerif)
    font.setPointSizeF(_POINTS)
    document.setDefaultFont(font)
    document.setDefaultStyleSheet(PRINT_STYLE)
    parts = [_contents(numbers)]
    for chapter in chapters():
        for page in chapter.pages:
            way = Way(_no_link, partial(book_anchor, page.name), str, framed=True)
            parts.append(page_html(page, way))
    for picture in guide_folder().glob("pictures/*.png"):
        image = QImage(str(picture))
        document.addResource(QTextDocument.ResourceType.ImageResource, QUrl(f"pictures/{picture.name}"), image)
    document.setHtml("\n".join(parts))
    _fit_pictures(document)
    document.setPageSize(body)
    _break_pages(document)
    return document


def _no_link(target: str) -> str:
    return target


def _contents(numbers: dict[str, int]) -> str:
    rows = [f"<h1>{escape(TITLE)}</h1>"]
    for chapter in chapters():
        rows.append(f'<h2>{escape(chapter.title)}</h2><table class="contents" width="100%">')
        for page in chapter.pages:
            number = numbers.get(page.name, 0)
            rows.append(f"<tr><td>{escape(page.title)}</td><td align=right>{number}</td></tr>")
        rows.append("</table>")
    return "".join(rows)


def _blocks(document: QTextDocument) -> list[QTextBlock]:
    found, block = [], document.begin()
    while block.isValid():
        found.append(block)
        block = block.next()
    return found


def _fit_pictures(document: QTextDocument) -> None:
    for block in _blocks(document):
        it = block.begin()
        while not it.atEnd():
            fragment = it.fragment()
            form = fragment.charFormat().toImageFormat()
            if form.isValid():
                image = QImage(str(guide_folder() / form.name()))
                shape = image.width() / max(1, image.height())
                form.setWidth(min(_WIDEST_PX, image.width() * 0.8, _TALLEST_PX * shape))
                form.setHeight(form.width() / shape)
                cursor = QTextCursor(document)
                cursor.setPosition(fragment.position())
                cursor.setPosition(fragment.position() + fragment.length(), QTextCursor.MoveMode.KeepAnchor)
                cursor.setCharFormat(form)
            it += 1


def _break_pages(document: QTextDocument) -> None:
    """Every page of the guide begins on a new one, and no heading stays behind at the foot of one."""
    blocks = _blocks(document)
    for block in blocks[1:]:
        if block.blockFormat().headingLevel() == 1:
            _begin_page(block)
    for _ in range(_ROUNDS):
        # Qt's layout of a changed part leaves blocks without lines; laid out whole it does not.
        document.markContentsDirty(0, document.characterCount())
        stranded, settled = [], False
        for block, following in pairwise(blocks):
            level = block.blockFormat().headingLevel()
            settled = settled and level != 1
            if level > 1 and not settled and _page_of(document, following) > _page_of(document, block):
                # What comes after it, up to the next page of the guide, will stand elsewhere.
                stranded.append(block)
                settled = True
        for block in stranded:
            _begin_page(block)
        if not stranded:
            break


def _begin_page(block: QTextBlock) -> None:
    form = block.blockFormat()
    form.setPageBreakPolicy(QTextFormat.PageBreakFlag.PageBreak_AlwaysBefore)
    QTextCursor(block).setBlockFormat(form)


def _page_of(document: QTextDocument, block: QTextBlock) -> int:
    top = document.documentLayout().blockBoundingRect(block).top()
    if block.layout().lineCount():
        top += block.layout().lineAt(0).position().y()  # its first line may have gone over to the next page
    return int((top + 1.0) // document.pageSize().height())


def _pages_of_anchors(document: QTextDocument) -> dict[str, int]:
    """On which page, from 1, each anchor stands."""
    found: dict[str, int] = {}
    for block in _blocks(document):
        page = _page_of(document, block) + 1
        it = block.begin()
        while not it.atEnd():
            for name in it.fragment().charFormat().anchorNames():
                found.setdefault(name, page)
            it += 1
    return found


def _paint(painter: QPainter, document: QTextDocument, number: int, where: QRectF) -> None:
    context = QAbstractTextDocumentLayout.PaintContext()
    context.palette.setColor(QPalette.ColorRole.Text, QColor("#000000"))
    view = QRectF(0.0, number * where.height(), where.width(), where.height())
    # A line that begins the next page may, by rounding, begin a hair before its end.
    context.clip = view.adjusted(0.0, 2.0, 0.0, -2.0)
    painter.save()
    painter.translate(where.left(), where.top() - view.top())
    painter.setClipRect(view)
    document.documentLayout().draw(painter, context)
    painter.restore()


def _foot(painter: QPainter, text: str, margin: float, whole: QSizeF) -> None:
    font = QFont("DejaVu Sans")
    font.setPointSizeF(_SMALL)
    painter.setFont(font)
    painter.setPen(QColor("#000000"))
    room = QRectF(margin, whole.height() - margin, whole.width() - 2 * margin, 6 * _MM)
    painter.drawText(room, int(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignTop), text)
