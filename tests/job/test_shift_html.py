"""The tooth-shift plan as one HTML file: whole without script or network."""

from __future__ import annotations

import re
from html.parser import HTMLParser
from xml.etree import ElementTree

import pytest

from magview.job.sheet import CAUTIONS
from magview.job.shift_html import shift_html, shift_steps
from magview.job.shift_plan import plan_typed
from magview.physics.engine.coupling import plan

VOID = {"meta"}


class Balanced(HTMLParser):
    """Fails where a tag is not closed in its order; collects what could be fetched."""

    def __init__(self) -> None:
        super().__init__()
        self.open: list[str] = []
        self.fetched: list[str] = []

    def handle_starttag(self, tag, attrs):
        self.fetched += [f"{tag} {name}" for name, _ in attrs if name in ("src", "href", "srcset", "action", "data")]
        if tag not in VOID:
            self.open.append(tag)

    def handle_startendtag(self, tag, attrs):
        self.handle_starttag(tag, attrs)
        if tag not in VOID:
            self.open.pop()

    def handle_endtag(self, tag):
        assert self.open.pop() == tag


def of(reads: float = 23.0, rotation="clockwise", name: str = "Left <b>"):
    move = plan(17, 18, 0.875, reads, 27.0)[0]
    return plan_typed(17, 18, 0.875, reads, 27.0, move, rotation=rotation, name=name)


@pytest.mark.parametrize("rotation", ["clockwise", "anticlockwise", None])
def test_it_is_whole_and_fetches_nothing(rotation):
    text = shift_html(of(rotation=rotation))
    reader = Balanced()
    reader.feed(text)
    assert reader.open == [] and reader.fetched == []
    assert not re.search(r"https?://(?!www\.w3\.org/2000/svg)|url\(|@import|fetch\(|XMLHttp|import\(", text)
    assert "<b>" not in text and "slot" not in text.casefold()
    for drawn in re.findall(r"<svg.*?</svg>", text, re.S):
        ElementTree.fromstring(drawn)


def test_the_cautions_come_first_then_a_then_b_and_all_stand_there_without_a_script():
    text = shift_html(of())
    without = text[: text.index("<script>")]
    order = [*CAUTIONS, "A disc", "Set the disc", "B magneto flange", "Count 3 teeth", "Check by the paint", "27.03°"]
    places = [without.index(words) for words in order]
    assert places == sorted(places)
    assert without.count("The large arrow: as you stand at the engine.") == 2
    assert "as you stand at the engine" not in shift_html(of(rotation=None)).split("Rotation not given")[0]
    assert "section { display: none" not in text.split(".stepped", 1)[0]
    assert text.count("<script>") == 1 and text.count("<section>") == len(list(shift_steps(of())))


def test_where_it_is_right_there_is_no_step_at_the_teeth():
    text = shift_html(of(27.0))
    assert "Leave the teeth alone." in text and "Set the disc" not in text
