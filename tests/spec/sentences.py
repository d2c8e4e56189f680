"""A refusal read as a person reads it."""

from __future__ import annotations


def check_sentence(text: str) -> None:
    """One line of plain words that any screen and any terminal can show."""
    assert text.isprintable() and len(text) <= 600
    assert text.encode("utf-8")
    lower = text.lower()
    for clutter in ("pydantic", "traceback", "input should", "validation", "errno", "sys.", "function-", "type="):
        assert clutter not in lower
    for tag in (".law.", ".measured.", ".eccentric.", ".threaded.", "LawProfile", "EccentricScrew"):
        assert tag not in text
