"""How tests assert wording: by the program's own literals, filled as the program fills them.

    assert told == says("The rotor was turned {angle:deg} with rotation.", angle=1.0)

Each is typed whole, with its places, as it stands in the program. `tests/test_wording.py` holds that it does stand
there: where a sentence is rewritten, one test names the literals that are no more, instead of a hundred fragments.
"""

from __future__ import annotations

from magview.spec.language import tr


def says(literal: str, /, **values: object) -> str:
    """A sentence of the program, in the language and unit in force."""
    return tr(literal, **values)
