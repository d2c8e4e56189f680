"""Choices of a person, kept between sessions by QSettings; where nothing can be kept, it is asked for again."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QSettings

_FIRST = "first-place"
"""Name of the setting that says where the program opens."""

_LENGTHS = "lengths"
"""Name of the setting that says in which unit lengths are shown."""


def kept_text(name: str) -> str:
    """A text kept under a name; "" where there is none."""
    value = _settings().value(name, "")
    return value if isinstance(value, str) and value.isprintable() else ""


def kept_texts(name: str) -> list[str]:
    """A list of texts kept under a name, in their order; empty where there is none."""
    value = _settings().value(name)
    # An INI file does not tell a list of one text from the text.
    texts = value if isinstance(value, list) else [value]
    return [text for text in texts if isinstance(text, str) and text]


def keep(name: str, value: str | Sequence[str]) -> None:
    """Keep a text or a list of texts for the next session; an empty one is forgotten."""
    settings = _settings()
    if value:
        settings.setValue(name, value if isinstance(value, str) else list(value))
    else:
        settings.remove(name)
    settings.sync()


def kept_inches() -> bool:
    """Whether lengths were last shown in inches."""
    return kept_text(_LENGTHS) == "in"


def keep_inches(inches: bool) -> None:
    """Show lengths so from the next start, too."""
    if inches != kept_inches():
        keep(_LENGTHS, "in" if inches else "")


def start_put_away() -> bool:
    """Whether the program opens at the bench, and not at its start page."""
    return kept_text(_FIRST) == "bench"


def put_start_away(away: bool) -> None:
    """Open at the bench from now on, or at the start page again."""
    keep(_FIRST, "bench" if away else "")


def _settings() -> QSettings:
    return QSettings(QSettings.Format.IniFormat, QSettings.Scope.UserScope, "magview", "magview")
