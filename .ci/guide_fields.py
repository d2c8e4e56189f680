"""The tables of fields in the guide's page of files, written from the models.

    python .ci/guide_fields.py        write them into resources/guide/files.md

A table stands below its heading and is known by its first line; everything else on the page is left as it is.
"""

from __future__ import annotations

import json
import re
from collections.abc import Iterator
from pathlib import Path

from pydantic import BaseModel

from magview.classroom.sets import ClassSet
from magview.forms.entry import Entry
from magview.forms.typed import allowed
from magview.practice.exercise import Exercise
from magview.spec.engine import Engine, Installation
from magview.spec.fields import About, about, parts_of
from magview.spec.json_schema import description_of
from magview.spec.limits import LimitsCard
from magview.spec.magneto import Magneto

PAGE = Path(__file__).resolve().parents[1] / "resources" / "guide" / "files.md"
TABLES: dict[str, type[BaseModel]] = {
    "Magneto": Magneto,
    "Engine": Engine,
    "Installation": Installation,
    "Limits card": LimitsCard,
    "Exercise": Exercise,
    "Class": ClassSet,
}
"""Headings of the page, and the model whose fields stand below each."""

HEAD = "| Field | What it is |\n| --- | --- |\n"


def table(model: type[BaseModel]) -> str:
    """The table of a model's fields, parts gone into; a part that is a file of its own is one field."""
    rows = [
        f"| `{path}` | {field.label}: {_told(field, optional)} |"
        for path, field, optional in _fields(model, "", False)
    ]
    return HEAD + "\n".join(dict.fromkeys(rows)) + "\n"


def _told(field: About, optional: bool) -> str:
    """Meaning, unit, what is allowed; and as the file writes them, the values that may be chosen."""
    values = [
        f"`{json.dumps(value)}`" for value, _ in field.choices if value is not None and not isinstance(value, bool)
    ]
    # A number that the screen shows in another unit has its limits in the model alone.
    limits = allowed(Entry(field.name, field, optional)) if field.quantity.scale == 1.0 else ""
    sentences = [description_of(field), limits]
    sentences += [f"One of {', '.join(values)}."] if values else []
    sentences += ["May be left out."] if optional and "eft out" not in sentences[0] else []
    return " ".join(sentence for sentence in sentences if sentence)


def _fields(model: type[BaseModel], above: str, optional: bool) -> Iterator[tuple[str, About, bool]]:
    for name in model.model_fields:
        if name in ("format", "sources"):
            continue
        field, path = about(model, name), f"{above}{name}"
        may_miss = optional or not field.required
        parts = [part for part in parts_of(field.base) if "format" not in part.model_fields]
        if not parts:
            yield path, field, may_miss
        for part in parts:
            # A list may be left out; what it holds may not.
            yield from _fields(
                part, f"{path}[]." if field.item is not None else f"{path}.", may_miss and field.item is None
            )


def page(text: str) -> str:
    """The page with its tables as they must be."""
    for heading, model in TABLES.items():
        before, found, rest = text.partition(f"## {heading}\n")
        if not found:
            raise SystemExit(f"{PAGE.name} has no heading {heading}")
        section, mark, after = rest.partition("\n## ")
        section = re.sub(re.escape(HEAD) + r"(?:\|.*\n)*", lambda _, m=model: table(m), section)
        text = before + found + section + mark + after
    return text


if __name__ == "__main__":
    PAGE.write_text(page(PAGE.read_text(encoding="utf-8")), encoding="utf-8")
