"""Sentences that tests expect are the program's own literals."""

from __future__ import annotations

import ast
from collections.abc import Iterator
from difflib import get_close_matches
from pathlib import Path

import pytest

from tests.source_words import name_of, spoken_calls, texts_of, trees

TESTS = Path(__file__).parent


def spoken() -> set[str]:
    """Every literal that people read."""
    texts = (text for tree in trees().values() for call in spoken_calls(tree) for text in texts_of(call))
    return {text.value for text in texts if isinstance(text, ast.Constant)}


def expected(source: str) -> Iterator[str]:
    """The literals that a file of tests gives to `says`."""
    for call in ast.walk(ast.parse(source)):
        if isinstance(call, ast.Call) and name_of(call) == "says":
            (literal,) = call.args
            assert isinstance(literal, ast.Constant), "typed whole"
            yield literal.value


def missing(source: str, known: set[str]) -> dict[str, list[str]]:
    """Literals that the program does not have, each with the nearest that it has."""
    return {text: get_close_matches(text, known, 1) for text in expected(source) if text not in known}


def test_every_sentence_expected_is_one_of_the_programs():
    known = spoken()
    found = {path.name: missing(path.read_text(encoding="utf-8"), known) for path in TESTS.rglob("test_*.py")}
    assert not {name: gone for name, gone in found.items() if gone}


@pytest.mark.parametrize("typed", ["The switch is on!", "The switch is  on."])
def test_a_sentence_that_is_no_more_is_named_with_the_nearest(typed):
    known = spoken()
    assert missing(f"assert told == says({typed!r})", known) == {typed: ["The switch is on."]}
    assert not missing('assert told == says("The switch is on.")', known)
