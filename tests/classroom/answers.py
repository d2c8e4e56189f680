"""Answers that give themselves away."""

from __future__ import annotations


def telling(answer: str) -> bool:
    """Whether an answer is one that no other sentence has: "ground" and "clean and flat" are in the goals, too."""
    return any(c.isdigit() for c in answer) or len(answer) > 18
