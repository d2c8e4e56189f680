"""Our file formats as JSON Schema (draft 2020-12), for editors and other programs.

A schema says what fields there are and what each may hold; what fields must be to one another (lobes that do not
overlap, a heel that reaches the cam) is checked when a file is read.
"""

from __future__ import annotations

import json
from typing import Any, Literal

from magview.job.instruments import InstrumentList
from magview.job.sheet import Job
from magview.spec.base import Model
from magview.spec.engine import Engine, Installation
from magview.spec.json_schema import schema_of
from magview.spec.limits import LimitsCard
from magview.spec.magneto import Magneto

Kind = Literal["magneto", "engine", "installation", "job", "instruments", "limits"]
MODELS: dict[Kind, type[Model]] = {
    "magneto": Magneto,
    "engine": Engine,
    "installation": Installation,
    "job": Job,
    "instruments": InstrumentList,
    "limits": LimitsCard,
}


def schema(kind: Kind) -> dict[str, Any]:
    """The schema of a file format."""
    data = schema_of(MODELS[kind])
    if kind == "installation":
        for part in ("magneto", "engine"):
            path = {"type": "string", "description": f"path of the {part}'s file, from this file's folder"}
            told = data["properties"][part]
            words = {key: told.pop(key) for key in ("title", "description")}
            data["properties"][part] = {**words, "anyOf": [told, path]}
    return data


def schema_text(kind: Kind) -> str:
    """The schema as a file's text."""
    return json.dumps(schema(kind), indent=2, ensure_ascii=False) + "\n"
