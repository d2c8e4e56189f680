"""A file's model as JSON Schema (draft 2020-12)."""

from __future__ import annotations

from typing import Any

from magview.spec.base import Model
from magview.spec.files import format_of

_ONE_LINE = "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"
_NO_CONTROLS = r"^[^\p{Cc}]*$"


def schema_of(model: type[Model]) -> dict[str, Any]:
    """The schema of a file format; `model` names it in its field ``format``."""
    data = model.model_json_schema()
    _plain_patterns(data)
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$comment": "Fields are checked against one another when the file is read.",
        **data,
        "title": format_of(model),
    }


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
