"""Words through a translator, numbers with the language's sign, and English for files that machines read."""

from __future__ import annotations

import pytest

from magview.spec.language import (
    alternatives,
    any_of,
    in_english,
    inside,
    marked,
    number,
    speak_through,
    together,
    tr,
)

WORDS = {
    "{first} or {other}": "{first} oder {other}",
    "{others} or {last}": "{others} oder {last}",
    "{first} and {other}": "{first} und {other}",
    "open {name}": "{name} öffnen",
    "Gap": "Abstand",
}


@pytest.fixture
def german():
    speak_through(lambda text: WORDS.get(text, text), decimal_point=",")
    yield
    speak_through(None)


def test_lists_in_english():
    assert [alternatives(x) for x in (["a"], ["a", "b"], ["a", "b", "c"])] == ["a", "a or b", "a, b or c"]
    assert [any_of(x) for x in (["a"], ["a", "b"], ["a", "b", "c"])] == ["a", "a or b", "a or b or c"]
    assert [together(x) for x in (["a"], ["a", "b"], ["a", "b", "c"])] == ["a", "a and b", "a and b and c"]


def test_lists_and_places_in_another_language(german):
    assert alternatives(["a", "b", "c"]) == "a, b oder c"
    assert any_of(["a", "b", "c"]) == "a oder b oder c"
    assert together(["a", "b", "c"]) == "a und b und c"
    assert tr("open {name}", name="x.json") == "x.json öffnen", "a translation may put the places in its own order"
    assert tr("not translated {n}", n=1) == "not translated 1", "English where there is nothing else"


def test_braces_in_what_is_shown_are_no_places(german):
    """A file's name may hold anything; only the sentence's own places are filled."""
    assert tr("open {name}", name="{x}.json") == "{x}.json öffnen"
    assert tr("Gap") == "Abstand" and tr(marked("Gap")) == "Abstand"
    assert marked("Gap") == "Gap", "a table made at import stays English"


def test_numbers_have_the_languages_decimal_sign(german):
    assert (number(1.5, 2), number(-0.25, "+.2f"), number(1234.5, "g")) == ("1,50", "-0,25", "1234,5")
    with in_english():
        assert (number(1.5, 2), tr("Gap")) == ("1.50", "Gap")
    assert (number(1.5, 2), tr("Gap")) == ("1,50", "Abstand")


def test_english_ends_where_it_was_asked_for_even_if_that_fails(german):
    with pytest.raises(KeyError), in_english():
        raise KeyError
    assert (number(1.5, 2), tr("Gap")) == ("1,50", "Abstand")


def test_a_title_within_a_sentence_is_small_in_english_only(german):
    assert inside("Gap") == "Gap", "German nouns are written large wherever they stand"
    with in_english():
        assert (inside("Gap"), inside("")) == ("gap", "")
