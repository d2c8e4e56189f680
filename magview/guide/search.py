"""Searching the guide: plain full text, best sections first.

A word of the query finds every word that begins with it; accents and capitals do not matter, "egap", "e gap" and
"E-gap" are one. Sections that hold all words come before those that hold some; a word counts the more the fewer
sections hold it (inverse document frequency), and the more prominent the place it stands in.
"""

from __future__ import annotations

import math
import re
from collections import Counter
from collections.abc import Iterable
from dataclasses import dataclass

from magview.guide.pages import Section, folded, pages

_TITLE, _HEADING, _TEXT = 6.0, 12.0, 1.0
"""What a word is worth in the page's title, in the section's heading (the less, the longer they are), in the text."""

_WHOLE, _PREFIX = 1.0, 0.5
_SMALL = frozenset(
    ("a", "an", "and", "are", "at", "be", "by", "can", "do", "does", "for", "from", "how", "i", "in", "is", "it",
     "my", "of", "on", "or", "the", "to", "what", "when", "where", "with")
)  # fmt: skip
_ALIKE = {
    "tooth": "teeth", "teeth": "tooth", "center": "centre", "color": "colour", "colors": "colours",
    "counterclockwise": "anticlockwise", "synchronizing": "synchronising", "synchronize": "synchronis",
    "points": "contacts", "gage": "gauge", "backlash": "play", "shortcut": "key", "shortcuts": "keys",
}  # fmt: skip
"""Other spellings and other words of the trade, which find theirs besides their own."""

_ENDINGS = ("ings", "ing", "ies", "ed", "es", "s", "e", "y")
_WORD = re.compile(r"[^\W_]+(?:[-’'][^\W_]+)*")
_AROUND = 90
"""Signs of an excerpt on either side of what was found."""


@dataclass(frozen=True)
class Hit:
    """A section that was found."""

    section: Section
    score: float
    excerpt: str
    marks: tuple[tuple[int, int], ...]
    """Where in the excerpt the words of the query stand: first sign, and the one after the last."""


def words_of(text: str) -> list[str]:
    """The words of a text as they are compared; a hyphened one gives its parts and itself without hyphens.

    Examples
    --------
    >>> words_of("The E-gap, d'après Birgé")
    ['the', 'e', 'gap', 'egap', 'd', 'apres', 'dapres', 'birge']
    """
    out: list[str] = []
    for match in _WORD.finditer(folded(text)):
        parts = re.split(r"[-’']", match[0])
        out += parts
        if len(parts) > 1:
            out.append("".join(parts))
    return out


class Index:
    """The words of sections, made once and asked often."""

    def __init__(self, sections: Iterable[Section]) -> None:
        self._sections = tuple(sections)
        self._places: list[dict[str, float]] = []
        self._spread: Counter[str] = Counter()
        for section in self._sections:
            counts = Counter(words_of(section.text))
            place = {word: _TEXT * (1.0 + math.log(n)) for word, n in counts.items()}
            for worth, text in ((_HEADING, section.title), (_TITLE, section.page_title)):
                words = set(words_of(text))
                for word in words:
                    place[word] = place.get(word, 0.0) + worth / math.sqrt(len(words))
            self._places.append(place)
            self._spread.update(place.keys())

    def search(self, query: str, most: int = 40) -> list[Hit]:
        """The sections that answer a query, best first; none for a query without words."""
        asked = self._joined(words_of(query))
        wanted = [w for w in asked if w not in _SMALL and (len(w) > 1 or w.isdigit())] or asked
        found = {word: self._matching(word) for word in wanted}
        hits = []
        for section, place in zip(self._sections, self._places, strict=True):
            values = [self._worth(place, matches) for matches in found.values()]
            share = sum(v > 0.0 for v in values) / max(1, len(values))
            if share:
                hits.append((share, sum(values), section))
        hits.sort(key=lambda hit: (-hit[0], -hit[1]))
        if hits and hits[0][0] == 1.0:
            hits = [hit for hit in hits if hit[0] == 1.0]
        every = {word for matches in found.values() for word in matches}
        return [Hit(s, round(share * score, 6), *_excerpt(s.text, every)) for share, score, s in hits[:most]]

    def _joined(self, words: list[str]) -> list[str]:
        """Each word once; a letter that stands alone belongs to the next word where the guide has them together."""
        out: list[str] = []
        for word in words:
            if out and len(out[-1]) == 1 and self._beginning(out[-1] + word):
                out[-1] += word
            else:
                out.append(word)
        return list(dict.fromkeys(out))

    def _beginning(self, word: str, longest: int = 99) -> dict[str, float]:
        """The words of the guide that begin with a word, the whole word worth most."""
        return {
            w: _WHOLE if w == word else _PREFIX
            for w in self._spread
            if w.startswith(word) and len(w) - len(word) <= longest
        }

    def _matching(self, word: str) -> dict[str, float]:
        """The words of the guide that a word of the query finds, with what each is worth."""
        found: dict[str, float] = {}
        for ending in _ENDINGS:
            if word.endswith(ending) and len(word) - len(ending) >= 4:
                found |= {w: _PREFIX for w in self._beginning(word.removesuffix(ending), longest=3)}
        if word in _ALIKE:
            found |= self._beginning(_ALIKE[word])
        return found | self._beginning(word)

    def _worth(self, place: dict[str, float], matches: dict[str, float]) -> float:
        count = len(self._sections)
        return max(
            (place[w] * part * math.log(1.0 + count / self._spread[w]) for w, part in matches.items() if w in place),
            default=0.0,
        )


def guide_index() -> Index:
    """An index of the whole guide."""
    return Index(section for page in pages().values() for section in page.sections)


def _excerpt(text: str, found: set[str]) -> tuple[str, tuple[tuple[int, int], ...]]:
    text = re.sub(r"\s+", " ", text).strip()
    spots = [m.span() for m in _WORD.finditer(text) if found.intersection(words_of(m[0]))]
    # Where most of what was found stands close together.
    middle = max(spots, key=lambda s: sum(abs(o[0] - s[0]) < _AROUND for o in spots), default=(0, 0))[0]
    start, end = max(0, middle - _AROUND), min(len(text), middle + _AROUND)
    if start > 0:
        start = text.find(" ", start, middle) + 1 or start
    if end < len(text):
        end = max(text.rfind(" ", middle, end), middle) if " " in text[middle:end] else end
    head, tail = "… " if start > 0 else "", " …" if end < len(text) else ""
    shift = len(head) - start
    marks = tuple((a + shift, b + shift) for a, b in spots if a >= start and b <= end)
    return f"{head}{text[start:end]}{tail}", marks
