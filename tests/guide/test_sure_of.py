"""The page of what is sure: every fact of the trade with its source and where the program shows it."""

from __future__ import annotations

import re

import pytest

from magview.guide.pages import pages

ROWS = [
    [cell.strip() for cell in line.strip("|").split("|")]
    for line in pages()["sure-of"].source.splitlines()
    if line.startswith("| ") and not line.startswith(("| Statement", "| ---"))
]


def test_every_fact_of_the_trade_has_its_row():
    assert len(ROWS) == 22


@pytest.mark.parametrize(("statement", "source", "where"), ROWS)
def test_a_row_is_whole(statement: str, source: str, where: str):
    assert statement.endswith(".")
    assert set(source.split(", ")) <= {"H", "A", "T", "P", "arithmetic", "computed here"}
    (page,) = re.findall(r"\]\(([\w-]+)\.md\)", where)
    # The page it sends to speaks of the matter: most of the statement's nouns and verbs stand there.
    words = {word for word in re.findall(r"[a-z]{5,}", statement.lower()) if word not in COMMON}
    text = pages()[page].source.lower()
    assert sum(word[:5] in text for word in words) >= 0.6 * len(words), sorted(w for w in words if w[:5] not in text)


COMMON = {"where", "other", "others", "there", "these", "those", "which", "whatever", "never", "unless", "elsewhere",
          "every", "again", "types", "before", "alone", "always", "generally"}  # fmt: skip
