"""What paper costs: the shipped job's report, as ratios against Qt's own printing of the same words.

    pytest tests/benchmarks/test_paper.py --benchmark-only -o addopts=

Baseline: a QTextDocument that is given the report's HTML and printed by QPdfWriter on the same paper. It breaks
tables anywhere and keeps no drawing sharp; it is what one gets without laying pages out.
"""

from __future__ import annotations

import statistics
import time
from collections.abc import Callable

from PySide6.QtCore import QBuffer, QIODevice
from PySide6.QtGui import QPageSize, QPdfWriter, QTextDocument

from magview.job.document import document
from magview.job.library import read_job
from magview.paper.html import document_html
from magview.spec.library import resources
from magview.ui.paper.pdf import pdf_bytes

ROUNDS = 9


def median_ms(work: Callable[[], object]) -> float:
    times = []
    for _ in range(ROUNDS):
        start = time.perf_counter()
        work()
        times.append(1000 * (time.perf_counter() - start))
    return statistics.median(times)


def test_a_report_against_qts_own_printing(qapp, benchmark):
    job = read_job(next((resources() / "jobs").glob("*.json")))

    def as_html() -> str:
        return document_html(document(job))

    def as_pdf() -> tuple[bytes, int]:
        return pdf_bytes(document(job))

    html = as_html()

    def plain() -> int:
        buffer = QBuffer()
        buffer.open(QIODevice.OpenModeFlag.WriteOnly)
        writer = QPdfWriter(buffer)
        writer.setPageSize(QPageSize(QPageSize.PageSizeId.A4))
        text = QTextDocument()
        text.setHtml(html)
        text.print_(writer)
        return buffer.size()

    _, pages = benchmark.pedantic(as_pdf, rounds=ROUNDS, warmup_rounds=1)
    assert plain() > 10_000
    ours, qts, html_ms = (
        median_ms(as_pdf),
        median_ms(plain),
        median_ms(as_html),
    )
    benchmark.extra_info.update(pages=pages, pdf_ms=ours, html_ms=html_ms, qt_ms=qts, ratio=ours / qts)
