"""Glossaries of the translations: the same terms in each language, and one word for one thing."""

from __future__ import annotations

import csv
import re
from collections import Counter

import pytest

from magview.spec.library import resources

FOLDER = resources() / "translations"
LANGUAGES = ("de", "es", "fr", "pt")
SAME_AS = {
    "advance and retard": "advance",
    "btdc": "before top dead centre",
    "lobes and cylinders": "cam lobe",
    "master rod and link rods": "master rod",
    "p-lead": "switch lead",
    "primary": "primary winding",
    "synchronising": "synchronise",
    "timing disc": "degree disc",
    "finger": "distributor finger",
}
"""Headings of the guide's glossary page, by the term that the translators' glossary has for them."""


def terms(code: str) -> dict[str, str]:
    """The translations of one language by their English term."""
    with (FOLDER / f"glossary_{code}.csv").open(encoding="utf-8", newline="") as lines:
        rows = list(csv.DictReader(lines))
    assert all(row["english"] and row["translation"] and row["source"] for row in rows)
    assert len({row["english"] for row in rows}) == len(rows)
    return {row["english"]: row["translation"] for row in rows}


@pytest.mark.parametrize("code", LANGUAGES)
def test_one_word_means_one_thing(code):
    """Two English terms never share a translation: opening and gap, lobe and cam, tooth and slot are two things."""
    times = Counter(word.casefold() for word in terms(code).values())
    assert [word for word, count in times.items() if count > 1] == []


def test_every_language_has_the_same_terms():
    first, *others = (set(terms(code)) for code in LANGUAGES)
    assert all(other == first for other in others)


def test_every_word_that_the_guide_explains_has_its_term():
    page = (resources() / "guide" / "glossary.md").read_text(encoding="utf-8")
    headings = {heading.casefold() for heading in re.findall(r"^## (.+)$", page, re.MULTILINE)}
    assert headings
    known = {term.casefold() for term in terms("de")}
    assert {heading for heading in headings if SAME_AS.get(heading, heading) not in known} == set()
