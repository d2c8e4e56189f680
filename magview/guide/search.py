"""Full-text search of the guide, by SQLite's FTS5 on a table in memory.

A word of the query finds its other forms (Porter's stemmer) and every word that begins with it; accents and capitals
do not matter, and "egap", "e gap" and "E-gap" are one. Sections that hold all words are found before those that hold
some, ranked by BM25 with a match in a heading counting most. A Python whose SQLite has no FTS5 finds the sections
that hold every word as typed, in the guide's order; `Index.ranked` is then False.
"""

from __future__ import annotations

import re
import unicodedata
import weakref
from collections.abc import Iterable
from dataclasses import dataclass
from itertools import zip_longest
from typing import TYPE_CHECKING

from magview.guide.pages import Section, folded, pages

if TYPE_CHECKING:
    import sqlite3

_WEIGHTS = "6.0, 12.0, 1.0, 1.0"
"""Worth of a match by column: title of the page, heading of the section, text, words without their hyphens."""

_SMALL = frozenset(
    ("a", "an", "and", "are", "at", "be", "by", "can", "do", "does", "for", "from", "how", "i", "in", "is", "it",
     "my", "of", "on", "or", "the", "to", "what", "when", "where", "with")
)  # fmt: skip
"""Words of a query that are left out where it has others."""

_ALIKE = {
    "tooth": "teeth", "teeth": "tooth", "center": "centre", "color": "colour", "colors": "colours",
    "counterclockwise": "anticlockwise", "synchronizing": "synchronising", "synchronize": "synchronise",
    "points": "contacts", "gage": "gauge", "backlash": "play", "shortcut": "key", "shortcuts": "keys",
}  # fmt: skip
"""Other spellings and synonyms of the trade, searched for as well."""

_WORD = re.compile(r"[^\W_]+(?:[-’'][^\W_]+)*")
_MAX_WORDS = 32
"""Words of a query; the rest of a longer one is left out."""

_EXCERPT_WORDS = 24
_BEGIN, _END = "\x01", "\x02"
"""Marks of a match in an excerpt, as SQLite gives it."""


@dataclass(frozen=True)
class Hit:
    """A section that was found."""

    section: Section
    excerpt: str
    marks: tuple[tuple[int, int], ...]
    """Matches in the excerpt: index of the first character, and of the one after the last."""


class Index:
    """An index of sections, built once and searched often."""

    def __init__(self, sections: Iterable[Section]) -> None:
        self._sections = tuple(sections)
        self._table = _table_of(self._sections)
        if self._table is not None:
            weakref.finalize(self, self._table.close)

    @property
    def ranked(self) -> bool:
        """Whether hits are ranked and other forms of a word are found: False without FTS5."""
        return self._table is not None

    def search(self, query: str, most: int = 40) -> list[Hit]:
        """The sections that match a query, best first; none for a query without words."""
        words = _WORD.findall(unicodedata.normalize("NFC", query).lower())[:_MAX_WORDS]
        wanted = [word for word in words if word not in _SMALL] or words
        if self._table is None:
            return self._containing(wanted)[:most]
        terms = [_term(word, following) for word, following in zip_longest(wanted, wanted[1:], fillvalue="")]
        return self._matching(" AND ".join(terms), most) or self._matching(" OR ".join(terms), most)

    def _matching(self, expression: str, most: int) -> list[Hit]:
        if self._table is None or not expression:
            return []
        found = self._table.execute(
            f"SELECT rowid, snippet(guide, 2, ?, ?, ' … ', ?) FROM guide WHERE guide MATCH ? "
            f"ORDER BY bm25(guide, {_WEIGHTS}) LIMIT ?",
            (_BEGIN, _END, _EXCERPT_WORDS, expression, most),
        )
        return [Hit(self._sections[row], *_unmarked(excerpt)) for row, excerpt in found]

    def _containing(self, words: list[str]) -> list[Hit]:
        plain = [folded(word) for word in words]
        texts = (
            (section, folded(f"{section.page_title} {section.title} {section.text}")) for section in self._sections
        )
        return [Hit(s, s.text[:150], ()) for s, text in texts if plain and all(word in text for word in plain)]


def guide_index() -> Index:
    """An index of the whole guide."""
    return Index(section for page in pages().values() for section in page.sections)


def _table_of(sections: tuple[Section, ...]) -> sqlite3.Connection | None:
    """The sections as a table for full-text search; None where Python has no SQLite, or SQLite no FTS5."""
    try:
        import sqlite3
    except ImportError:
        return None
    table = sqlite3.connect(":memory:")
    try:
        table.execute(
            "CREATE VIRTUAL TABLE guide USING fts5(page, heading, text, joined, "
            "tokenize='porter unicode61 remove_diacritics 2')"
        )
    except sqlite3.OperationalError:
        table.close()
        return None
    table.executemany(
        "INSERT INTO guide(rowid, page, heading, text, joined) VALUES (?, ?, ?, ?, ?)",
        ((i, s.page_title, s.title, " ".join(s.text.split()), _joined(s)) for i, s in enumerate(sections)),
    )
    return table


def _joined(section: Section) -> str:
    """The hyphened words of a section without their hyphens."""
    words = _WORD.findall(f"{section.page_title} {section.title} {section.text}")
    return " ".join(re.sub(r"[-’']", "", word) for word in words if not word.isalnum())


def _term(word: str, following: str) -> str:
    """A word of a query as an expression of FTS5: quoted, so that no word is an operator.

    Examples
    --------
    >>> _term("p-lead", "")
    '("p lead"* OR "plead"*)'
    >>> _term("tooth", "shift")
    '("tooth"* OR "teeth"*)'
    """
    forms = [re.sub(r"[-’']", " ", word), re.sub(r"[-’']", "", word)]
    if len(word) == 1 and following:  # "e gap" is "e-gap"
        forms = [f"{word} {following}", word + following, following]
    forms += [_ALIKE[word]] if word in _ALIKE else []
    return "(" + " OR ".join(f'"{form}"*' for form in dict.fromkeys(forms)) + ")"


def _unmarked(marked: str) -> tuple[str, tuple[tuple[int, int], ...]]:
    """An excerpt without its marks, and where they were.

    Examples
    --------
    >>> _unmarked("the \\x01vernier\\x02 step")
    ('the vernier step', ((4, 11),))
    """
    text, marks = "", []
    for part in re.split(f"({_BEGIN}[^{_END}]*{_END})", marked):
        words = part.strip(_BEGIN + _END)
        if words != part:
            marks.append((len(text), len(text) + len(words)))
        text += words
    return text, tuple(marks)
