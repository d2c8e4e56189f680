"""All that people read goes through `tr`: searched for in the source."""

from __future__ import annotations

import ast
import string
from pathlib import Path

import pytest

from magview.bench.words import PARTS
from magview.drawing.breaker_end import breaker_end
from magview.drawing.crank_end import crank_end
from magview.drawing.drive_end import drive_end
from magview.spec.library import find_installation, shipped_names
from tests.source_words import PACKAGE, ROOMS, glued, name_of, said, spoken_calls, texts_of, trees, unspoken


def trees_of(room: str) -> list[tuple[Path, ast.AST]]:
    """The sources of a room."""
    return [(path, tree) for path, tree in trees().items() if path.relative_to(PACKAGE).parts[0] == room]


@pytest.mark.parametrize("room", ROOMS)
def test_all_words_of_the_source_are_seen_by_translators(room: str) -> None:
    assert {str(path): words for path, tree in trees_of(room) if (words := unspoken(tree))} == {}


@pytest.mark.parametrize(
    "planted",
    [
        'raise SpecError(f"the gap is {gap} mm wide")',
        'raise SpecError("the lamp is dark")',
        'return "Sideways"',
        'head = ("Date:", x)',
        "words = tr('Turn it') + (' and hold' if hold else '')",
        "tr('Turn it {way}', way='with rotation' if on else 'against rotation')",
        'page = f"<p>Read on</p>"',
        'TABLE = {"gap": "largest gap there is"}',
        "def told() -> str:\n    return f'{count} teeth left'",
    ],
)
def test_planted_words_are_found(planted: str) -> None:
    tree = ast.parse(planted)
    found = unspoken(tree)
    if "way=" in planted:  # words given to a place of a template
        assert glued(tree)
    else:
        assert found


@pytest.mark.parametrize(
    "harmless",
    ['"""Documentation of it."""', 'kind = "law"', 'x = f"{side}_btdc_deg"', 'x: Literal["drive end"] = "drive end"',
     'tr("Turn it {way}", way=way)', 're.compile(r"not a date")', 'x = f"{number(a, 2)} mm"',
     "x = f'<col style=\"width:{w}%\">'"],
)  # fmt: skip
def test_what_is_no_word_is_not_found(harmless: str) -> None:
    tree = ast.parse(harmless)
    assert unspoken(tree, said(tree)) == [] and glued(tree) == []


@pytest.mark.parametrize("room", ROOMS)
def test_texts_are_whole_literals_and_their_places_are_filled(room: str) -> None:
    assert {str(path): calls for path, tree in trees_of(room) if (calls := glued(tree))} == {}
    for path, call in ((path, call) for path, tree in trees_of(room) for call in spoken_calls(tree)):
        texts = [text.value for text in texts_of(call) if isinstance(text, ast.Constant)]
        if texts and name_of(call) in ("tr", "tr_n") and all(k.arg for k in call.keywords):
            places = set().union(*map(places_of, texts)) if call.keywords else set()
            if name_of(call) == "tr_n":
                places.add("count")  # it says which text, whether or not it stands there
            assert places == {k.arg for k in call.keywords}, f"{path.name}, line {call.lineno}"


def places_of(text: str) -> set[str]:
    """The names of a text's places, those within formats included."""
    found = set()
    for _, name, form, _ in string.Formatter().parse(text):
        if name:
            found |= {name} | places_of(form or "")
    return found


def test_every_drawn_part_has_its_words() -> None:
    drawn = set()
    for name in shipped_names("installations"):
        item = find_installation(name)
        picture = breaker_end(item.magneto)
        shapes = (*picture.shapes, *drive_end(item.coupling), *crank_end(item.engine).shapes)
        drawn |= {shape.part for shape in shapes} | set(picture.anchors)
    assert drawn and drawn <= set(PARTS)
