"""Words through a translator, numbers with the language's sign, and English for files that machines read."""

from __future__ import annotations

import pytest

from magview.spec.language import (
    Message,
    alternatives,
    any_of,
    in_english,
    inside,
    lengths_in,
    marked,
    number,
    speak_through,
    together,
    tr,
    tr_n,
    unbroken,
    with_minus,
)

WORDS = {
    "{first} or {other}": "{first} oder {other}",
    "{others} or {last}": "{others} oder {last}",
    "{first} and {other}": "{first} und {other}",
    "open {name}": "{name} öffnen",
    "Gap": "Abstand",
    "{count} page": "{count} Seite",
    "{count} pages": "{count} Seiten",
    "{length} in": "{length} Zoll",
    "the gap is {gap:length}": "der Abstand ist {gap:length}",
}


@pytest.fixture
def german():
    speak_through(lambda text: WORDS.get(text, text), decimal_point=",")


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


@pytest.mark.parametrize(
    ("place", "value", "english"),
    [
        ("{x}", 0.5, "0.5"),
        ("{x}", 3, "3"),
        ("{x}", "0.5", "0.5"),
        ("{x:.3f}", 1, "1.000"),
        ("{x:+.1f}", -0.25, "-0.2"),
        ("{x:d}", 12, "12"),
        ("{x:mm}", 0.33, "0.330 mm"),
        ("{x:in}", 0.254, "0.0100 in"),
        ("{x:.{n}mm}", 0.33, "0.33000 mm"),
        ("{x:deg}", -1e-9, "0.00°"),
        ("{x:+deg}", 1.5, "+1.50°"),
        ("{x:.1deg}", 1.5, "1.5°"),
        ("{x:deg}", float("nan"), "–"),
    ],
)
def test_places_write_numbers_and_quantities(place, value, english):
    assert tr(place, x=value, n=5) == english


def test_places_write_the_languages_sign_and_units(german):
    assert (
        tr("{x:.2f} {y:mm} {z:in} {angle:+deg}", x=1, y=0.33, z=0.254, angle=2) == "1,00 0,330 mm 0,0100 Zoll +2,00°"
    )
    assert tr("{x}", x="1.5") == "1.5", "what is words already stays as it is"


def test_lengths_are_written_in_the_unit_in_force(german):
    told = Message("the gap is {gap:length}", {"gap": 0.254})
    assert str(told) == "der Abstand ist 0,254 mm"
    lengths_in("in")
    assert str(told) == "der Abstand ist 0,0100 Zoll", "a message is put into words when it is shown"
    with in_english():
        assert str(told) == "the gap is 0.254 mm"
    assert str(told) == "der Abstand ist 0,0100 Zoll"


def test_one_and_several_in_any_language(german):
    assert [tr_n("{count} page", "{count} pages", count=n) for n in (0, 1, 2)] == ["0 Seiten", "1 Seite", "2 Seiten"]
    with in_english():
        assert tr_n("{count} page", "{count} pages", count=1) == "1 page"


@pytest.mark.parametrize("value", [-0.04, -0.0, -1e-9, 0.0])
def test_what_is_written_as_nought_has_no_minus_sign(value):
    assert tr("{x:.1f}", x=value) == number(value, 1) == "0.0"
    assert tr("{x:+.1f}", x=value) == "+0.0"
    assert tr("{x:.1f}", x=-0.05000001) == "-0.1"


def test_no_line_ends_between_a_number_and_its_unit():
    assert unbroken("piston 9.475 mm down in 2 in") == "piston 9.475\u00a0mm down in 2\u00a0in"


@pytest.mark.parametrize(
    ("text", "painted"),
    [("-0.95°", "−0.95°"), ("core flux -86 %", "core flux −86 %"), ("2026-05-01", "2026-05-01"), ("1e-05", "1e-05"),
     ("cam, lobes 1-4", "cam, lobes 1-4"), ("from -2.50° to +0.00°", "from −2.50° to +0.00°"),
     ("half-speed", "half-speed")],
)  # fmt: skip
def test_negative_numbers_are_painted_with_a_minus_and_nothing_else_is_changed(text, painted):
    assert with_minus(text) == painted
