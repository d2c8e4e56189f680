"""Whatever is printed: a reader of PDF that is not ours finds every word of the document on its pages."""

from __future__ import annotations

import io
from collections.abc import Callable
from dataclasses import replace

import pytest
from pypdf import PdfReader

from magview.bench.placing import new_bench
from magview.classroom.worksheet import answer_key, handout, worksheet
from magview.guide.book import book
from magview.job.blank_form import blank_form
from magview.job.document import document
from magview.job.history import drift_of
from magview.job.shift_plan import plan_from, shift_documents
from magview.paper.blocks import Document, NewPage, Paragraph, Pictures
from magview.physics.engine.coupling import plan
from magview.practice.debrief import debrief
from magview.practice.library import find_exercise
from magview.practice.report import debrief_document
from magview.spec.library import find_installation
from magview.ui.paper.pdf import pdf_bytes
from tests.counts import sampled, swept
from tests.job.sheets import demo, of_magneto
from tests.paper.words import texts_of
from tests.practice.trainee import Trainee
from tests.ui.paper.pdf_reader import bare


def of_a_debrief() -> Document:
    attempt = Trainee(find_exercise("gap-wrong"), 4).work()
    return debrief_document(attempt, debrief(attempt))


def of_earlier_sheets() -> Document:
    jobs = [of_magneto(100.0 * n, 0.23 if n else None, 0.25) for n in range(4)]
    return document(jobs[-1], drift=drift_of(jobs))


def of_pictures() -> Document:
    return handout(new_bench(find_installation("seven-radial-left")), ("breaker", "drive"), "names", told=True)


def of_a_shift() -> Document:
    installation = find_installation("seven-radial-left")
    coupling = installation.coupling
    moves = plan(coupling.magneto_teeth, coupling.drive_teeth, installation.rotor_turns_per_crank_turn, 23.0, 27.0)
    return next(shift_documents(plan_from(installation, 23.0, 27.0, moves[0])))


KINDS: dict[str, Callable[[], Document]] = {
    "job sheet": lambda: document(demo()),
    "earlier sheets": of_earlier_sheets,
    "blank form": blank_form,
    "shift plan": of_a_shift,
    "worksheet": lambda: worksheet(find_exercise("both-everything-wrong"), 17, hints=True),
    "key": lambda: answer_key(find_exercise("both-everything-wrong"), 17),
    "handout": of_pictures,
    "debrief": of_a_debrief,
    "guide": book,
}  # fmt: skip
SHORT = [kind for kind in KINDS if kind != "guide"]
"""A reader in Python takes long over the guide."""


@pytest.mark.parametrize(
    ("kind", "size"),
    [*sampled(((kind, ("a4", "letter")[i % 2]) for i, kind in enumerate(SHORT)), 3), swept(("guide", "letter"))],
)
def test_every_word_is_there_and_pictures_are_lines(qapp, kind, size):
    made = replace(KINDS[kind](), size=size)
    data, pages = pdf_bytes(made)
    reader = PdfReader(io.BytesIO(data))
    assert len(reader.pages) == pages and reader.metadata is not None and reader.metadata.title == made.title
    texts = [bare(page.extract_text()) for page in reader.pages]
    whole = "".join(texts)
    for n, text in enumerate(texts, 1):
        assert bare(f"{made.foot} · page {n} of {pages}") in text
        whole = whole.replace(bare(f"{made.foot} · page {n} of {pages}"), "")
    told = {p.told for block in made.blocks if isinstance(block, Pictures) for p in block.pictures}
    assert not [text for text in texts_of(made)[2:] if bare(text) not in whole and text not in told]
    images = [image for page in reader.pages for image in page.images]
    assert bool(images) == (kind == "guide"), "only the guide's pictures of windows are made of dots"


def test_a_document_that_ends_with_a_new_page_has_no_empty_one(qapp):
    assert pdf_bytes(Document("t", "f", (NewPage(), Paragraph("x"), NewPage(), NewPage(), Paragraph("y"))))[1] == 2
