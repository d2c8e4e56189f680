"""Small things on paper that must not mislead."""

from __future__ import annotations

import math
import re

import pytest

from magview.bench.actions import SetBoth
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import readings
from magview.drawing import svg
from magview.job import from_bench
from magview.job.document import document
from magview.job.sheet import change_in, new_job
from magview.paper.blocks import Heading, Pictures
from magview.spec.library import find_installation, find_magneto, shipped_names
from tests.wording import says


def set_sheet(*stages):
    state = apply(new_bench(find_installation("seven-radial-left")), SetBoth(1.0, 0.0))
    job = from_bench.take_bench(new_job("paper"), state)
    for stage in stages:
        job = from_bench.as_found(job, state) if stage == "as_found" else from_bench.internal_timing(job, state)
    return job, state


@pytest.mark.parametrize(
    ("stages", "words"),
    [
        (("as_found",), says("As found: breaker end, contacts just opening")),
        (("internal_timing",), says("As left: breaker end, contacts just opening")),
        (("as_found", "internal_timing"), says("As found and as left: breaker end, contacts just opening")),
    ],
)
def test_the_heading_names_the_drawings_there_are(stages, words):
    blocks = document(set_sheet(*stages)[0]).blocks
    place = next(i for i, b in enumerate(blocks) if isinstance(b, Heading) and "breaker end" in b.text)
    assert blocks[place].text == words
    figures = blocks[place + 1]
    assert isinstance(figures, Pictures) and len(figures.pictures) == len(stages)


def test_the_caption_says_which_gap_is_drawn_where_it_is_not_the_one_read():
    job, state = set_sheet("as_found")

    def caption(sheet) -> str:
        return next(b for b in document(sheet).blocks if isinstance(b, Pictures)).pictures[0].caption

    drawn = f"{readings(state).max_gap_mm[0]:.3f} mm"
    assert "drawn is" not in caption(job) and drawn in caption(job)
    told = caption(change_in(job, "as_found", gap_mm=0.3))
    assert "largest gap 0.300 mm" in told and f"drawn is the gap that plate and screw give, {drawn}" in told
    assert "drawn is" not in caption(change_in(job, "as_found", gap_mm=None))


@pytest.mark.parametrize(("read_mm", "side"), [(0.45, "past"), (-0.45, "short"), (2.0, "past")])
def test_the_caption_says_so_where_the_edge_drawn_stands_elsewhere_than_it_was_read(read_mm, side):
    """Drawn is where plate and screw put it; read was what somebody saw. The picture never silently contradicts."""
    job, state = set_sheet("as_found")

    def caption(sheet) -> str:
        return next(b for b in document(sheet).blocks if isinstance(b, Pictures)).pictures[0].caption

    drawn_mm = float(readings(state).mark_offset_mm)
    told = caption(change_in(job, "as_found", mark_offset_mm=read_mm))
    other_side = drawn_mm * read_mm < 0
    apart = abs(drawn_mm - read_mm)
    assert ("straightedge " in told) == (other_side or apart >= 0.3)
    if "straightedge " in told:
        read, drawn = told.split("; drawn is the opening that plate and screw give, ")
        assert read.endswith(side) and ("past" if drawn_mm > 0 else "short") in drawn
    assert "straightedge " not in caption(change_in(job, "as_found", mark_offset_mm=round(drawn_mm, 2)))


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_both_ticks_over_the_breaker_end_are_named_at_their_places(name):
    magneto = find_magneto(name)
    drawn = svg.breaker_svg(new_bench(magneto), "check")
    text = re.compile(r'<text x="([\d.]+)" y="([\d.]+)"[^>]*text-anchor="(\w+)"[^>]*>([^<]+)<')
    at = {
        word: (float(x), float(y), anchor)
        for x, y, anchor, word in text.findall(drawn)
        if word in ("neutral", "E-gap")
    }
    assert set(at) == {"neutral", "E-gap"}
    # From the breaker end the rotation is seen mirrored: "rotation" in the file is from the drive end.
    sense = -1 if magneto.rotation == "clockwise" else 1
    # The tick itself stands over the middle, and the word a little beside it, between the pole shoes.
    assert 0 < (372 / 2 - at["neutral"][0]) * sense < 5
    for word, anchor in (("neutral", -sense), ("E-gap", sense)):
        assert at[word][2] == ("start" if anchor > 0 else "end"), "each leans away from the other"
    radius = (372 - 2 * 77.0) / 2 * 0.985 * 1.16 / 1.195
    egap = 372 / 2 + sense * radius * math.sin(math.radians(magneto.e_gap_deg))
    assert 0 < (at["E-gap"][0] - egap) * sense < 5
    assert all(y > 5 for _, y, _ in at.values()), "within the picture"
