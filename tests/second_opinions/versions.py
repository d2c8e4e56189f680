"""Which reference programs were asked, printed once each."""

from __future__ import annotations

import sys

_TOLD: set[str] = set()


def told(name: str, version: str) -> None:
    """Print a program's version to the terminal, past pytest's capture."""
    if name not in _TOLD:
        _TOLD.add(name)
        sys.__stderr__.write(f"\nreference: {name} {version}\n")
