"""The PDF: pages of the right size, all words selectable, fonts embedded, nothing off the page."""

from __future__ import annotations

import re

import pytest

from magview.job.document import document
from magview.job.history import drift_of
from magview.job.readings import rows
from magview.job.sheet import CAUTIONS, change, change_in, new_job
from magview.spec.base import SpecError
from magview.ui.paper.pdf import pdf_bytes, print_pdf
from tests.job.sheets import demo, of_magneto
from tests.ui.paper.pdf_reader import Pdf, bare


@pytest.mark.parametrize(("paper", "size"), [("a4", (595, 842)), ("letter", (612, 792))])
def test_every_word_is_on_pages_of_the_right_size(qapp, paper, size):
    job = demo()
    data, pages = pdf_bytes(document(job, paper))
    pdf = Pdf(data)
    assert len(pdf.pages) == pages > 1
    boxes = re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]", data)
    assert len(boxes) == pages and all((round(float(w)), round(float(h))) == size for w, h in boxes)
    text = pdf.whole
    for row in rows(job):
        if not row.field.startswith("uncertainty."):
            assert bare(row.shown) in text, row
    for caution in CAUTIONS:
        assert bare(caution) in text
    for n in range(pages):
        assert bare(f"page {n + 1} of {pages}") in pdf.text(n)
        assert bare("treat the propeller as live") in pdf.text(n)


def test_fonts_are_in_the_file_and_drawings_are_lines(qapp):
    data, _ = pdf_bytes(document(demo()))
    assert data.count(b"/FontFile2") >= 1
    assert b"/Subtype /Image" not in data


def test_long_words_and_long_texts_go_on_over_pages(qapp):
    job = change(change_in(new_job(), "remarks", text="line\n" * 790, note="w" * 3900), title="t" * 120)
    pdf = Pdf(pdf_bytes(document(job))[0])
    assert pdf.whole.count("line") == 790
    assert pdf.whole.count("w") >= 3900
    assert pdf.whole.count("t" * 20) >= 5


def test_an_empty_sheet_and_one_with_history_are_printed(qapp):
    assert pdf_bytes(document(new_job()))[1] >= 1
    jobs = [of_magneto(100.0 * n, 0.23 if n else None, 0.25) for n in range(4)]
    text = Pdf(pdf_bytes(document(jobs[-1], "letter", drift_of(jobs)))[0]).whole
    assert bare("Earlier sheets of this magneto") in text and bare("Look again at") in text


def test_odd_characters_do_no_harm(qapp):
    job = change_in(demo(), "remarks", text="\x00\x1b \u202e ☠ 磁石 \U0001f600")
    assert pdf_bytes(document(job))[1] > 1


def test_a_place_that_cannot_be_written_is_a_sentence(qapp, tmp_path):
    with pytest.raises(SpecError, match="cannot be written"):
        print_pdf(tmp_path / "gone" / "x.pdf", document(new_job()))
    assert print_pdf(tmp_path / "x.pdf", document(new_job())) >= 1
    assert [p.name for p in tmp_path.iterdir()] == ["x.pdf"]
