"""A table of lift as people type or paste it: each cell read by itself, with all that is wrong told at once."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Literal

from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.spec.lift_table import MAX_ROWS, Decimal, LiftTable, column_style, lift_lines
from magview.spec.parse import parse_angle_deg, parse_length_mm

Unit = Literal["mm", "in", "thou"]
Row = tuple[str, str]
"""Angle and reading of a row, as written."""

_LARGEST = 1e6
_UNIT_APART = re.compile(r"(?i)(?<=[\d.,])\s+(mm|in|thou|µm|μm|um|deg|°)(?![a-z])")
_UNITS = re.compile(r"(?i)(?<=[\d.,])(mm|in|thou|µm|μm|um|deg|°|\")(?![a-z])")
_NUMBERS = re.compile(r"[-+−\d.,;\seE/]+")
_LACKS = (
    marked("the angle is missing: type it, or empty the row"),
    marked("the reading is missing: type it, or empty the row"),
)
_SIGNS = {".": marked("point"), ",": marked("comma")}


@dataclass(frozen=True)
class BadCell:
    """A cell that cannot be read: its row and column, the first being 0, and one sentence."""

    row: int
    column: int
    sentence: str


def cut(text: str, decimal: Decimal | None, source: str) -> tuple[tuple[str, ...], ...]:
    """Cells of a pasted or opened text, row by row; lines above the first row of numbers are left away.

    Parameters
    ----------
    text : rows separated by line ends, columns by tabs, semicolons, commas or spaces. Units may stand behind numbers.
    decimal : the decimal sign; None = found out.
    source : named in errors.

    Raises
    ------
    SpecError : one sentence where no row holds a number, there are too many, or commas could mean either.
    """
    lines = [_UNIT_APART.sub(r"\1", row) for _, row in lift_lines(text)]
    bare = [_UNITS.sub("", row).replace('"', "") for row in lines]
    numbered = [i for i, row in enumerate(bare) if _NUMBERS.fullmatch(row) and re.search(r"\d", row)]
    if not numbered:
        raise SpecError(tr("{source}: has no row of numbers: write an angle and a reading, such as 12.5; 0.25",
                           source=source))  # fmt: skip
    if len(lines) - numbered[0] > MAX_ROWS:
        raise SpecError(
            tr("{source}: has more than {most} rows, the most that are read", source=source, most=MAX_ROWS)
        )
    style = column_style([bare[i] for i in numbered], decimal, source)
    if decimal is None and style.separator == "comma" and not any(re.search(r"[.\s]", bare[i]) for i in numbered):
        raise SpecError(
            tr(
                "{source}: its commas may be decimal signs or stand between columns: choose the decimal sign",
                source=source,
            )
        )
    return tuple(tuple(_unquoted(cell.strip()) for cell in style.split(row)) for row in lines[numbered[0] :])


def _unquoted(cell: str) -> str:
    """Cell without the quotation marks around it; a single one behind a number is an inch."""
    return cell[1:-1].strip() if len(cell) > 1 and cell[0] == cell[-1] == '"' else cell


def read_cells(
    rows: Sequence[Row], unit: Unit, decimal: Decimal | None = None
) -> tuple[LiftTable, tuple[BadCell, ...]]:
    """Angles [deg] and readings [mm] of the rows that can be read, and every cell that cannot.

    Parameters
    ----------
    rows : angle and reading as written; rows with neither are passed over.
    unit : the unit of a reading that names none.
    decimal : the decimal sign; None takes point and comma alike.
    """
    angle, reading, lines, bad = [], [], [], []
    for i, row in enumerate(rows):
        if not any(cell.strip() for cell in row):
            continue
        values: list[float] = []
        for column, cell in enumerate(row):
            try:
                values.append(_value(cell, column, unit, decimal))
            except ValueError as error:
                bad.append(BadCell(i, column, str(error)))
        if len(values) == len(row):
            angle.append(values[0])
            reading.append(values[1])
            lines.append(i + 1)
    return LiftTable(tuple(angle), tuple(reading), tuple(lines), (), 2, "tab", decimal or "."), tuple(bad)


def _value(cell: str, column: int, unit: Unit, decimal: Decimal | None) -> float:
    cell = cell.strip()
    if not cell:
        raise SpecError(tr(_LACKS[column]))
    other = {".": ",", ",": "."}.get(decimal or "")
    if other is not None and other in cell:
        raise SpecError(
            tr("“{text}” has a {found}; the decimal sign chosen is the {sign}: write {example}",
               text=cell[:40], found=tr(_SIGNS[other]), sign=tr(_SIGNS[decimal or "."]),
               example=f"0{decimal}25")
        )  # fmt: skip
    value = parse_length_mm(cell, unit) if column else parse_angle_deg(cell)
    if abs(value) > _LARGEST:
        raise SpecError(tr("“{text}” is too large", text=cell[:40]))
    return value
