"""The language words are shown in: English in the source, anything else through whoever translates.

Everything people read goes through `tr`, from here upwards; only the window knows Qt, so it brings the translator.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from contextlib import contextmanager
from typing import TypeVar

T = TypeVar("T", bound=str)

_translate: Callable[[str], str] | None = None
_decimal_point = "."


def tr(text: str, /, **values: object) -> str:
    """The text in the present language, its `{name}` places filled with the values.

    Written as one literal of whole words, so that it can be collected for translators; parts of a sentence glued
    together cannot be put in another order.
    """
    if _translate is not None:
        text = _translate(text)
    return text.format(**values) if values else text


def marked(text: T, /) -> T:
    """The text as it stands, collected for translators: for tables made at import, which `tr` reads out later."""
    return text


def number(value: float, digits: int | str = "g") -> str:
    """A number for reading, with the language's decimal sign; what machines read is never written with it.

    `digits` are those after the decimal sign, or a format such as "+.2f" or ".4g".
    """
    text = format(value, f".{digits}f" if isinstance(digits, int) else digits)
    return text if _decimal_point == "." else text.replace(".", _decimal_point)


def alternatives(items: Sequence[str]) -> str:
    """At least one thing, the last after an "or": "a, b or c"."""
    *others, last = items
    return tr("{others} or {last}", others=", ".join(others), last=last) if others else last


def any_of(items: Sequence[str]) -> str:
    """At least one thing, with "or" between: "a or b or c"."""
    first, *others = items
    for other in others:
        first = tr("{first} or {other}", first=first, other=other)
    return first


def together(items: Sequence[str]) -> str:
    """At least one thing, with "and" between: "a and b and c"."""
    first, *others = items
    for other in others:
        first = tr("{first} and {other}", first=first, other=other)
    return first


def speak_through(translate: Callable[[str], str] | None, decimal_point: str = ".") -> None:
    """Take the translator of the window's language and its decimal sign; None is English."""
    global _translate, _decimal_point
    _translate = translate
    _decimal_point = decimal_point


@contextmanager
def in_english() -> Iterator[None]:
    """English and its decimal point for a while: for files that machines read."""
    was = _translate, _decimal_point
    speak_through(None)
    try:
        yield
    finally:
        speak_through(*was)


def inside(title: str) -> str:
    """A title within a sentence: English begins it small; other languages have it as it stands."""
    return title if _translate is not None else title[:1].lower() + title[1:]
