"""A file's model as JSON Schema (draft 2020-12), with title and description of every property."""

from __future__ import annotations

from typing import Any

from pydantic import BaseModel

from magview.spec.base import Model
from magview.spec.fields import About, about, parts_of
from magview.spec.files import format_of
from magview.spec.language import in_english, marked
from magview.spec.manual import LEFT_OUT

_ONE_LINE = "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"
_NO_CONTROLS = r"^[^\p{Cc}]*$"


def schema_of(model: type[Model]) -> dict[str, Any]:
    """The schema of a file format; `model` names it in its field ``format``."""
    data = model.model_json_schema()
    _plain_patterns(data)
    _may_miss(data)
    models = _models_of(model)
    with in_english():
        _describe(data, model)
        for name, part in data.get("$defs", {}).items():
            _describe(part, models[name])
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$comment": "Fields are checked against one another when the file is read.",
        **data,
        "title": format_of(model),
    }


def _models_of(model: type[BaseModel]) -> dict[str, type[BaseModel]]:
    """Every model that a schema may define, by its short name and by its name with its module's."""
    found: dict[str, type[BaseModel]] = {}
    wanted = [model]
    while wanted:
        part = wanted.pop()
        full = f"{part.__module__}.{part.__qualname__}".replace(".", "__")
        if full not in found:
            found |= {part.__name__: part, full: part}
            wanted += [m for info in part.model_fields.values() for m in parts_of(info.annotation)]
    return found


def _describe(part: dict[str, Any], model: type[BaseModel]) -> None:
    """Give each property of a model its description with unit, sign and what is allowed."""
    for name, told in part["properties"].items():
        if name == "format":
            told |= {"title": marked("Format"), "description": "Kind and version of the file; stands first in it."}
            continue
        field = about(model, name)
        told |= {"title": field.label, "description": description_of(field)}


def description_of(field: About) -> str:
    """A field in sentences: its meaning, its unit and sign, and what is allowed."""
    meaning = field.meaning
    if not meaning and isinstance(field.base, type) and issubclass(field.base, BaseModel):
        meaning = " ".join((field.base.__doc__ or "").partition("\n\n")[0].split())
    words = field.quantity.words
    # A symbol of a unit keeps its letters (mJ is no MJ); words begin a sentence.
    symbol = field.quantity.unit and words.startswith(field.quantity.unit)
    unit = f"{words if symbol else words[:1].upper() + words[1:]}." if words else ""
    return " ".join(part for part in (meaning, unit, field.rule) if part)


def _may_miss(data: dict[str, Any]) -> None:
    """Take from the required fields those that a magneto known by its manual leaves out."""
    parts = data.get("$defs", {})
    magneto, cam = parts.get("Magneto", data), parts.get("Cam", {})
    if "known" in magneto["properties"]:
        magneto["required"] = [name for name in magneto["required"] if name not in LEFT_OUT]
        cam["required"] = [name for name in cam["required"] if f"cam.{name}" not in LEFT_OUT]


def _plain_patterns(part: Any) -> None:
    """Write "no control characters" as every dialect of regular expressions reads it."""
    if isinstance(part, dict):
        if part.get("pattern") == _NO_CONTROLS:
            part["pattern"] = _ONE_LINE
        for value in part.values():
            _plain_patterns(value)
    elif isinstance(part, list):
        for value in part:
            _plain_patterns(value)
