"""Pupils' names and numbers, and the seed each draws from.

A name is typed by its owner, on whatever keyboard: "  Zoë  ÅNGSTRÖM" and "zoe angstrom" are one pupil, and so are
"07" and "7". The seed is `draws.whole` of the set's seed and the names ``class``, the exercise's number (from 1) and
the name so normalised, from 0 to 999,999,999: a pure function, alike on every machine.
"""

from __future__ import annotations

import unicodedata

from magview.practice.draws import whole
from magview.spec.base import SpecError
from magview.spec.language import tr

MAX_SEED = 999_999_999

_PLAIN = str.maketrans({"ø": "o", "ł": "l", "đ": "d", "ð": "d", "ħ": "h", "ŧ": "t", "æ": "ae", "œ": "oe", "þ": "th",
                        "ı": "i"})  # fmt: skip
"""Letters with a stroke, and pairs, that Unicode does not take apart."""

_DROPPED = "'`´’‘ʼ"


def normal(name: str) -> str:
    """A name without regard to case, accents, spaces, hyphens and apostrophes; a number without leading noughts.

    Caseless matching as in The Unicode Standard, §3.13 (compatibility), then without marks.
    """
    folded = unicodedata.normalize("NFKD", unicodedata.normalize("NFKD", name).casefold())
    letters = "".join(c for c in folded if not unicodedata.combining(c) and c not in _DROPPED).translate(_PLAIN)
    words = "".join(c if c.isalnum() else " " for c in letters).split()
    return " ".join(str(int(w)) if w.isascii() and w.isdigit() and len(w) < 20 else w for w in words)


def pupil_key(name: str) -> str:
    """The normalised name of a pupil. Raises SpecError where nothing is left of it."""
    key = normal(name)
    if not key:
        raise SpecError(tr("A name or a number is needed: each pupil's fault is drawn from it"))
    return key


def seed_for(set_seed: int, number: int, key: str) -> int:
    """The seed of a set's exercise `number` (from 1); `key`: the pupil's normalised name, "" for everyone alike."""
    return whole(set_seed, 0, MAX_SEED, "class", str(number), key)
