"""Result for one thing that counts."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True)
class Judged:
    """One judgement: whether a thing is right, nearly right, and proved; and the sentence that says why."""

    what: str
    right: bool
    near: bool
    proved: bool
    evidence: str
    share: float | None = None
    """The part of the weight, where it is not by right and proved."""
    how: str = ""
    """The part of `evidence` that says how it was checked."""
