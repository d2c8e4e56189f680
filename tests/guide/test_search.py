"""Searching: what people would type is found, and first what they mean."""

from __future__ import annotations

import pytest

from magview.guide.pages import Section
from magview.guide.search import Index, guide_index, words_of


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
        ("greatest common divisor", "theory-coupling#what-can-be-reached-at-all"),
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
    assert words_of("The E-gap, d'après Birgé") == ["the", "e", "gap", "egap", "d", "apres", "dapres", "birge"]


def test_all_words_before_some():
    assert [h.section.page for h in SMALL.search("plum trees")] == ["c"]
    assert {h.section.page for h in SMALL.search("apples zebra")} == {"a"}


@pytest.mark.parametrize("typed", ["", "   ", "?!", "zzzz"])
def test_nothing_is_found_by_nothing(index, typed):
    assert index.search(typed) == []


def test_the_excerpt_shows_the_words_found(index):
    for hit in index.search("vernier step"):
        shown = [hit.excerpt[a:b].casefold() for a, b in hit.marks]
        assert all(s.startswith(("vernier", "step")) for s in shown)
        assert len(hit.excerpt) < 200
    assert index.search("vernier step")[0].marks
