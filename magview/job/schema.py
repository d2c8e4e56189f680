"""Our file formats as JSON Schema (draft 2020-12), for editors and other programs.

A schema says what fields there are and what each may hold; what fields must be to one another (lobes that do not
overlap, a heel that reaches the cam) is checked when a file is read.
"""

from __future__ import annotations

import json
from typing import Any, Literal

from magview.job.sheet import Job
from magview.spec.base import Model
from magview.spec.engine import Engine, Installation
from magview.spec.files import format_of
from magview.spec.magneto import Magneto

Kind = Literal["magneto", "engine", "installation", "job"]
MODELS: dict[Kind, type[Model]] = {"magneto": Magneto, "engine": Engine, "installation": Installation, "job": Job}

_ONE_LINE = "^[^\\u0000-\\u001f\\u007f-\\u009f]*$"


def schema(kind: Kind) -> dict[str, Any]:
    """The schema of a file format."""
    model = MODELS[kind]
    data = model.model_json_schema()
    _plain_patterns(data)
    if kind == "installation":
        for part in ("magneto", "engine"):
            path = {"type": "string", "description": f"path of the {part}'s file, from this file's folder"}
            data["properties"][part] = {"anyOf": [data["properties"][part], path]}
    return {
        "$schema": "https://json-schema.org/draft/2020-12/schema",
        "$comment": "Fields are checked against one another when the file is read.",
        **data,
        "title": format_of(model),
    }


def schema_text(kind: Kind) -> str:
    """The schema as a file's text."""
    return json.dumps(schema(kind), indent=2, ensure_ascii=False) + "\n"


def _plain_patterns(part: Any) -> None:
    """Write "no control characters" as every dialect of regular expressions reads it."""
    if isinstance(part, dict):
        if isinstance(part.get("pattern"), str):
            part["pattern"] = _ONE_LINE
        for value in part.values():
            _plain_patterns(value)
    elif isinstance(part, list):
        for value in part:
            _plain_patterns(value)
