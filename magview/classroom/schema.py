"""The class's file formats, and the exercise's, as JSON Schema (draft 2020-12), for editors and other programs."""

from __future__ import annotations

import json
from typing import Any, Literal

from magview.classroom.handed import HandedIn
from magview.classroom.sets import ClassSet
from magview.practice.exercise import Exercise
from magview.practice.lesson import Lesson
from magview.spec.base import Model
from magview.spec.json_schema import schema_of

Kind = Literal["class", "exercise", "handed-in", "lesson"]
MODELS: dict[Kind, type[Model]] = {
    "class": ClassSet,
    "exercise": Exercise,
    "handed-in": HandedIn,
    "lesson": Lesson,
}


def schema(kind: Kind) -> dict[str, Any]:
    """The schema of a file format. In a set an exercise may be named instead, in an exercise its magneto."""
    data = schema_of(MODELS[kind])
    data["required"] = sorted({*data["required"], "format"})
    if kind == "class":
        items = data["properties"]["exercises"]["items"]
        named = {"description": "short name of a shipped exercise, or path of its file, from this file's folder"}
        data["properties"]["exercises"]["items"] = {"anyOf": [items, {"type": "string", **named}]}
    exercise = data if kind == "exercise" else data.get("$defs", {}).get("Exercise")
    if exercise is not None:
        for part in ("magneto", "installation"):
            named = {"description": f"short name of a shipped {part}, or path of its file, from this file's folder"}
            exercise["properties"][part]["anyOf"].append({"type": "string", **named})
    return data


def schema_text(kind: Kind) -> str:
    """The schema as a file's text."""
    return json.dumps(schema(kind), indent=2, ensure_ascii=False) + "\n"
