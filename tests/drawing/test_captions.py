"""What is told of the parts: a sentence each, and of parts that the pictures have under that very name."""

from __future__ import annotations

import pytest

from magview.bench.placing import new_bench
from magview.drawing.breaker_end import breaker_end
from magview.drawing.captions import CAPTIONS, ENDS
from magview.drawing.crank_end import crank_end
from magview.drawing.drive_end import drive_end
from magview.drawing.lead_picture import lead_picture
from magview.spec.library import find_installation


def drawn(end):
    bench = new_bench(find_installation("seven-radial-left"))
    item = bench.engaged.installation
    match end:
        case "breaker":
            return {s.part for s in breaker_end(item.magneto).shapes}
        case "drive":
            return {s.part for s in drive_end(item.coupling)}
        case "crank":
            return {s.part for s in crank_end(item.engine).shapes}
    return {word for word, _ in lead_picture(bench).words} | {"switch"}


@pytest.mark.parametrize("end", ENDS)
def test_each_part_told_is_drawn_and_told_in_one_sentence(end):
    assert set(CAPTIONS) == set(ENDS)
    assert not set(CAPTIONS[end]) - drawn(end)
    for part, sentence in CAPTIONS[end].items():
        assert sentence[0].isupper() and sentence.endswith("."), part
        assert ". " not in sentence.replace("No. ", ""), f"{part}: more than one sentence"
        assert not sentence.lower().startswith(part), f"{part} is not explained by itself"
    assert len(set(CAPTIONS[end].values())) == len(CAPTIONS[end])
