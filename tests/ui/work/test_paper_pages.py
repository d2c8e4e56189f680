"""Tables of the printed sheet stay whole where a page has room for them."""

from __future__ import annotations

from magview.paper.blocks import Heading, Table
from magview.ui.paper.pdf import Layout, application
from magview.ui.pictures.export import prepare


def laid(rows: int, above: int):
    """Pages with so many lines, a heading and a table of so many rows: the page each of its rows stands on."""
    from PySide6.QtCore import QBuffer, QIODevice
    from PySide6.QtGui import QPdfWriter

    application()
    buffer = QBuffer()
    buffer.open(QIODevice.OpenModeFlag.WriteOnly)
    writer = QPdfWriter(buffer)
    size = prepare(writer, "a4", 600)
    layout = Layout(writer, size)
    layout.add(Table((), tuple((f"above {i}",) for i in range(above)), (1.0,)))
    pages = []
    row = layout._row  # noqa: SLF001

    def noted(cells, *args, **kwargs):
        row(cells, *args, **kwargs)
        if cells[0].startswith("row"):
            pages.append(len(layout.pages))

    layout._row = noted  # noqa: SLF001
    heading = Heading("1. Stage")
    table = Table(("Reading", "Value"), tuple((f"row {i}", "x") for i in range(rows)), (1.0, 1.0))
    layout.add(heading, table)
    layout.add(table)
    return pages


def test_a_table_that_a_page_holds_is_not_split(qapp):
    for above in (0, 20, 40, 45, 48, 50):
        assert len(set(laid(8, above))) == 1, above
    # One longer than a page goes over several, and is begun where there is room.
    long = laid(90, 10)
    assert long[0] == 1 and len(set(long)) > 1 and len(long) == 90
