"""Reading a table of angle and lift as people keep it: text with any usual separator and either decimal sign."""

from __future__ import annotations

import math
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from operator import methodcaller
from pathlib import Path
from typing import Literal

from magview.spec.base import SpecError
from magview.spec.files import MAX_BYTES, read_bytes
from magview.spec.language import marked, tr

MAX_ROWS = 20_000

MIN_ROWS = 5

Decimal = Literal[".", ","]

_NUMBER = re.compile(r"[-+−]?(?:\d+(?:[.,]\d*)?|[.,]\d+)(?:[eE][-+]?\d{1,4})?")
_IN_ROW = re.compile(r"[-+−\d.,;\seE°]+")
"""A row of numbers, if it holds a digit; any other line above the first of them is heading."""

_LARGEST = 1e6

_NO_ANGLE = marked("{where} has no angle in column {column} (columns separated by {separator})")
_NO_READING = marked("{where} has no reading in column {column} (columns separated by {separator})")
_SEPARATORS = {
    "tab": marked("tab"),
    "semicolon": marked("semicolon"),
    "comma": marked("comma"),
    "space": marked("space"),
}


@dataclass(frozen=True)
class LiftTable:
    """Two columns of a table, as written: no unit is known yet. All tuples are as long as there are rows."""

    angle: tuple[float, ...]
    reading: tuple[float, ...]
    lines: tuple[int, ...]
    """Line of each row, the first being 1."""
    heading: tuple[str, ...]
    """Lines above the first row."""
    columns: int
    """The number of columns."""
    separator: str
    """The separator found between columns: "tab", "semicolon", "comma" or "space"."""
    decimal: Decimal


@dataclass(frozen=True)
class ColumnStyle:
    separator: str
    split: Callable[[str], list[str]]
    decimal: Decimal


_TAB, _SEMICOLON, _COMMA, _COMMA_AND_SPACE, _SPACE = (
    methodcaller("split", "\t"),
    methodcaller("split", ";"),
    methodcaller("split", ","),
    re.compile(r",\s").split,
    str.split,
)


def read_lift_table(path: Path, decimal: Decimal | None = None, columns: tuple[int, int] = (0, 1)) -> LiftTable:
    """Read a table from a file; parameters and errors as for `parse_lift_table`. UTF-8, UTF-16 or Latin-1."""
    return parse_lift_table(lift_text(path), decimal, columns, path.name)


def lift_text(path: Path) -> str:
    """Text of a table's file: UTF-8, UTF-16 or Latin-1. Raises SpecError for a file that cannot be read."""
    raw = read_bytes(path)
    try:
        return raw.decode("utf-16" if raw[:2] in (b"\xff\xfe", b"\xfe\xff") else "utf-8-sig")
    except UnicodeDecodeError:
        return raw.decode("latin-1")  # a degree sign in the heading of an old spreadsheet; numbers are the same


def parse_lift_table(
    text: str, decimal: Decimal | None = None, columns: tuple[int, int] = (0, 1), source: str | None = None
) -> LiftTable:
    """Take an angle and a reading from every row of a text.

    Parameters
    ----------
    text : rows of numbers separated by tabs, semicolons, commas or spaces; lines above the first row are heading,
        empty lines and lines beginning with # are passed over.
    decimal : the decimal sign; None = found out, and asked for where it cannot be.
    columns : which columns hold the angle and the reading, the first is 0.
    source : named in errors; None = "the table".

    Raises
    ------
    SpecError : one sentence: what is wrong, on which line, what is allowed.
    """
    source = tr("the table") if source is None else source
    if len(text) > MAX_BYTES:
        raise SpecError(
            tr(
                "{source}: is longer than {most:g} million characters, the most that is read",
                source=source,
                most=MAX_BYTES / 1000000.0,
            )
        )
    if decimal not in (None, ".", ",") or columns[0] == columns[1] or not all(0 <= c < 100 for c in columns):
        raise SpecError(
            tr(
                "{source}: the decimal sign must be a point or a comma, the columns two of the first hundred",
                source=source,
            )
        )
    heading, rows = _rows(text, source)
    style = column_style([row for _, row in rows], decimal, source)
    angle, reading, most = [], [], 0
    for line, row in rows:
        fields = style.split(row)
        most = max(most, len(fields))
        angle.append(
            _number(fields, columns[0], style, tr("{source}: line {line}", source=source, line=line), _NO_ANGLE)
        )
        reading.append(
            _number(fields, columns[1], style, tr("{source}: line {line}", source=source, line=line), _NO_READING)
        )
    lines = tuple(line for line, _ in rows)
    return LiftTable(tuple(angle), tuple(reading), lines, tuple(heading), most, style.separator, style.decimal)


def lift_lines(text: str) -> Iterator[tuple[int, str]]:
    """Lines that hold something, with their numbers, the first being 1."""
    for line, written in enumerate(re.split(r"\r\n|\n|\r", text), start=1):
        row = written.replace("\ufeff", "").strip(" \xa0").replace("\xa0", " ")
        if row.replace('"', "").strip() and not row.startswith("#"):
            yield line, row


def _rows(text: str, source: str) -> tuple[list[str], list[tuple[int, str]]]:
    """The heading, and the rows with their line numbers."""
    heading: list[str] = []
    rows: list[tuple[int, str]] = []
    for line, row in lift_lines(text):
        row = row.replace('"', "")
        if _IN_ROW.fullmatch(row) and re.search(r"\d", row):
            rows.append((line, row))
        elif rows:
            raise SpecError(
                tr(
                    "{source}: line {line}: “{row}” is not a row of numbers",
                    source=source,
                    line=line,
                    row=row.strip()[:40],
                )
            )
        else:
            heading.append("".join(c if c.isprintable() else " " for c in row[:200]))
        if len(rows) > MAX_ROWS:
            raise SpecError(
                tr(
                    "{source}: has more than {most} rows, the most that are read",
                    source=source,
                    most=MAX_ROWS,
                )
            )
        if len(heading) > 100:
            raise SpecError(tr("{source}: has no row of numbers in its first 100 lines", source=source))
    if len(rows) < MIN_ROWS:
        numbered = next((row for row in heading if re.search(r"\d", row)), None)
        places = {"source": source, "count": len(rows), "least": MIN_ROWS}
        if numbered is None:
            raise SpecError(tr("{source}: has {count} rows of numbers; it must have at least {least}", **places))
        raise SpecError(
            tr(
                "{source}: has {count} rows of numbers; it must have at least {least} (“{numbered}” cannot"
                " be read: write numbers alone, without their units)",
                numbered=numbered[:40],
                **places,
            )
        )
    return heading, rows


def column_style(rows: list[str], decimal: Decimal | None, source: str) -> ColumnStyle:
    """The column separator and the decimal sign."""
    commas, points = any("," in row for row in rows), any("." in row for row in rows)
    for name, sign, split in (("tab", "\t", _TAB), ("semicolon", ";", _SEMICOLON)):
        if any(sign in row.strip(" ") for row in rows):
            if commas and points and decimal is None:
                raise SpecError(
                    tr(
                        "{source}: has both points and commas in its numbers: say which is the decimal sign",
                        source=source,
                    )
                )
            return ColumnStyle(name, split, decimal or ("," if commas else "."))
    if not commas or (decimal == "," and not any(re.search(r",\s", row) for row in rows)):
        return ColumnStyle("space", _SPACE, decimal or ".")
    if points or decimal == ".":
        return ColumnStyle("comma", _COMMA, ".")
    # Commas alone: one with a space after it separates, one within a number is the decimal sign.
    followed = [bool(re.fullmatch(r"\s", after)) for row in rows for after in re.findall(r",(.)", row)]
    if all(followed):
        return ColumnStyle("comma", _COMMA, ".")
    if any(followed):
        return ColumnStyle("comma", _COMMA_AND_SPACE, ",")
    if all(len(row.split()) > 1 for row in rows):
        return ColumnStyle("space", _SPACE, ",")
    if all(row.count(",") == 1 for row in rows):
        return ColumnStyle("comma", _COMMA, ".")
    raise SpecError(
        tr(
            "{source}: its commas may be decimal signs or stand between columns: say which, or save it "
            "with semicolons between columns",
            source=source,
        )
    )


def _number(fields: list[str], column: int, style: ColumnStyle, where: str, missing: str) -> float:
    if column >= len(fields) or not fields[column].strip("° \t"):
        raise SpecError(
            tr(missing, where=where, column=column + 1, separator=tr(_SEPARATORS[style.separator])),
        )
    field = fields[column].strip("° \t")
    wrong = "," if style.decimal == "." else "."
    if not _NUMBER.fullmatch(field) or wrong in field:
        raise SpecError(
            tr(
                "{where}: “{field}” is not a number (columns separated by {separator}, decimal sign “{decimal}”)",
                where=where,
                field=field[:40],
                separator=tr(_SEPARATORS[style.separator]),
                decimal=style.decimal,
            )
        )
    value = float(field.replace(",", ".").replace("−", "-"))
    if not (math.isfinite(value) and abs(value) <= _LARGEST):
        raise SpecError(
            tr(
                "{where}: {field} is too large; at most {most:g} is read",
                where=where,
                field=field[:40],
                most=_LARGEST,
            )
        )
    return value
