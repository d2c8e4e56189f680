"""Tables for other programs."""

from __future__ import annotations

import csv
import io
import math
from collections.abc import Iterable


def csv_text(rows: Iterable[Iterable[object]]) -> str:
    """Rows as comma-separated values (RFC 4180), numbers in full precision.

    What does not exist (None, NaN) is an empty field; text that a spreadsheet would run as a formula is quoted.
    """
    out = io.StringIO()
    csv.writer(out, lineterminator="\r\n").writerows([_field(cell) for cell in row] for row in rows)
    return out.getvalue()


def _field(cell: object) -> str:
    if cell is None or (isinstance(cell, float) and math.isnan(cell)):
        return ""
    if isinstance(cell, bool):
        return "true" if cell else "false"
    if isinstance(cell, str):
        return f"'{cell}" if cell[:1] in ("=", "@", "+", "\t") or _is_formula(cell) else cell
    return str(cell)


def _is_formula(text: str) -> bool:
    """Whether a text with a minus in front is anything but a number."""
    if text[:1] not in ("-", "\r"):
        return False
    try:
        float(text)
    except ValueError:
        return True
    return False
