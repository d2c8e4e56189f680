"""Searching: what people would type is found, and first what they mean."""

from __future__ import annotations

import sqlite3
import sys

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.guide.pages import Section
from magview.guide.search import Index, guide_index


@pytest.fixture(scope="module")
def index() -> Index:
    return guide_index()


@pytest.mark.parametrize(
    ("typed", "wanted"),
    [
        ("e-gap", "glossary#e-gap"),
        ("egap", "glossary#e-gap"),
        ("E gap", "glossary#e-gap"),
        ("p-lead", "glossary#p-lead"),
        ("plead", "glossary#p-lead"),
        ("vernier", "theory-coupling#the-vernier-step"),
        ("greatest common divisor", "theory-coupling#the-shifts-that-can-be-reached"),
        ("how do i print the job sheet", "job-sheet#sign-and-print"),
        ("monte carlo", "theory-uncertainty#monte-carlo"),
        ("GUM", "theory-uncertainty"),
        ("keyboard shortcuts", "keys"),
        ("projector", "instructor#show-it"),
        ("feeler gauge", "glossary#feeler-blade"),
        ("points", "glossary#contacts"),
        ("tooth shift", "mechanic"),
        ("top dead center", "glossary#top-dead-centre"),
        ("two stops", "engine-timing#true-top-dead-centre-from-two-stop-readings"),
        ("switch lead broken", "switch-lead"),
        ("gap cannot be had", "troubleshooting#the-wanted-gap-cannot-be-had"),
        ("file refused", "troubleshooting#a-file-is-refused"),
        ("link rod", "theory-engine#articulated-rods"),
        ("heel wear", "theory-trials#wear-of-the-heel"),
        ("same code for the class", "instructor#one-code-for-all"),
        ("import measured lift", "own-magneto#from-a-table-of-measured-lift"),
        ("html", "commands#this-guide"),
        ("undo", "keys#everywhere-in-the-main-window"),
    ],
)
def test_what_people_type_finds_what_they_mean_among_the_first_six(index, typed, wanted):
    assert wanted in [hit.section.address for hit in index.search(typed)[:6]]


def section(name: str, title: str, text: str) -> Section:
    return Section(name, f"Page {name}", title, title, text)


SMALL = Index(
    [
        section("a", "Apples", "Pears and plums; a crème brûlée."),
        section("b", "Pears", "Nothing of the kind."),
        section("c", "Stones", "Plum stones, plum trees, pear trees."),
    ]
)


def test_a_heading_counts_more_than_the_text():
    assert [h.section.page for h in SMALL.search("pears")][:2] == ["b", "a"]


def test_a_word_finds_what_begins_with_it_and_a_longer_form_its_stem():
    assert {h.section.page for h in SMALL.search("pear")} == {"a", "b", "c"}
    assert SMALL.search("planting") == []
    assert [h.section.page for h in SMALL.search("stoned")] == ["c"]


def test_accents_and_capitals_do_not_matter():
    assert [h.section.page for h in SMALL.search("CREME brulee")] == ["a"]


def test_all_words_before_some():
    assert [h.section.page for h in SMALL.search("plum trees")] == ["c"]
    assert {h.section.page for h in SMALL.search("apples zebra")} == {"a"}


@pytest.mark.parametrize("typed", ["", "   ", "?!", "zzzz", '"', "*", "''", "^", "-", "\x00", "\ud800"])
def test_nothing_is_found_by_nothing(index, typed):
    assert index.search(typed) == []


AWKWARD = [
    '"gap"',
    "gap*",
    "NEAR(gap)",
    "(gap",
    "gap)",
    "gap:",
    "{gap}",
    "+gap",
    "-gap",
    "^gap",
    "text:gap",
    "gap'",
    "'gap'",
    "%gap_",
    "gap\x00",
]


@pytest.mark.parametrize(
    "typed", [*AWKWARD, "gap AND", "NOT gap", "gap OR", "gap; DROP TABLE guide", "gap \ud800", "gap " * 500]
)
def test_signs_of_the_query_language_are_plain_signs(index, typed):
    assert any("gap" in hit.excerpt.casefold() for hit in index.search(typed))


@given(st.text())
def test_any_text_is_searched_for(index, typed):
    for hit in index.search(typed):
        assert all(0 <= a < b <= len(hit.excerpt) for a, b in hit.marks)
        assert hit.excerpt.isprintable()


@pytest.mark.parametrize("typed", ["Größe", "grosse", "GRÖSSE", "gro\u0308ße", "größ"])
def test_umlauts_are_found(typed):
    stones = Index([section("a", "Maß", "Die Größe der Steine."), section("b", "Große Grosse", "")])
    assert stones.search(typed)


class WithoutFullText(sqlite3.Connection):
    """What an SQLite that was built without FTS5 answers."""

    def execute(self, *_: object) -> sqlite3.Cursor:
        raise sqlite3.OperationalError("no such module: fts5")


@pytest.fixture(params=["no FTS5", "no sqlite3"])
def plain_index(request, monkeypatch):
    if request.param == "no FTS5":
        monkeypatch.setattr(sqlite3, "connect", WithoutFullText)
    else:
        monkeypatch.setitem(sys.modules, "sqlite3", None)
    return guide_index()


def test_without_full_text_search_words_are_found_as_typed(plain_index, index):
    assert index.ranked and not plain_index.ranked
    found = plain_index.search("Vernier step")
    assert found and all("vernier" in f"{h.section.title} {h.section.text}".casefold() for h in found)
    assert plain_index.search("zzzz") == plain_index.search("") == plain_index.search('"') == []


def test_the_excerpt_shows_the_words_found(index):
    for hit in index.search("vernier step"):
        shown = [hit.excerpt[a:b].casefold() for a, b in hit.marks]
        assert all(s.startswith(("vernier", "step")) for s in shown)
        assert len(hit.excerpt) < 200
    assert index.search("vernier step")[0].marks
