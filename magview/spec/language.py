"""The language words are shown in: English in the source, anything else through whoever translates.

Everything people read goes through `tr`, from here upwards; only the window knows Qt, so it brings the translator.
"""

from __future__ import annotations

from collections.abc import Callable

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


def marked(text: str, /) -> str:
    """The text as it stands, collected for translators: for tables made at import, which `tr` reads out later."""
    return text


def number(value: float, digits: int | str = "g") -> str:
    """A number for reading, with the language's decimal sign; what machines read is never written with it.

    `digits` are those after the decimal sign, or a format such as "+.2f" or ".4g".
    """
    text = format(value, f".{digits}f" if isinstance(digits, int) else digits)
    return text if _decimal_point == "." else text.replace(".", _decimal_point)


def speak_through(translate: Callable[[str], str] | None, decimal_point: str = ".") -> None:
    """Take the translator of the window's language and its decimal sign; None is English."""
    global _translate, _decimal_point
    _translate = translate
    _decimal_point = decimal_point
