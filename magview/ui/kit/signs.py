"""Signs that stand beside colours: whoever sees no colour reads them all the same."""

from __future__ import annotations

from enum import Enum

from magview.spec.language import marked, tr
from magview.ui.kit.theme import Theme


class Sign(Enum):
    """Judgement of a value or an act: its sign, the role of its colour, and its words."""

    IN = "✓", "good", marked("in")
    OUT = "✗", "bad", marked("out")
    FOUND_OUT = "△", "warn", marked("out when found")
    UNKNOWN = "?", "warn", marked("not known")
    NONE = "–", "faint", marked("not judged")

    def __init__(self, mark: str, role: str, words: str) -> None:
        self.mark, self._role, self._words = mark, role, words

    @property
    def words(self) -> str:
        """The sign in words."""
        return tr(self._words)

    def colour(self, theme: Theme) -> str:
        """The sign's colour."""
        colour: str = getattr(theme, self._role)
        return colour
