"""Sources of fields' values, noted in the file beside the values; a file may do without."""

from __future__ import annotations

import types
import typing
from functools import cache
from typing import Annotated, Any, Literal, Union

from pydantic import Field

from magview.spec.base import Model
from magview.spec.fields import Choices, said
from magview.spec.language import marked, tr

Origin = Literal["manual", "measured", "worked-out", "assumed", "shipped"]
"""Maker's manual; measured on the magneto or engine itself; worked out from other fields; assumed; another's file."""

ORIGINS: tuple[tuple[Origin, str], ...] = (
    ("manual", marked("maker's manual")),
    ("measured", marked("measured")),
    ("worked-out", marked("worked out")),
    ("assumed", marked("assumed")),
    ("shipped", marked("from a shipped file")),
)

MAX_SOURCES = 200


class Source(Model):
    """Source of one field's value: the field by its names in the file, such as ``cam.profile.lift_mm``."""

    field: Annotated[
        str,
        Field(min_length=1, max_length=80),
        said(marked("Field"), marked("Names in the file joined by points, such as cam.profile.lift_mm.")),
    ]
    origin: Annotated[Origin, Choices(ORIGINS), said(marked("Source"), marked("Where the value comes from."))]
    note: Annotated[
        str,
        Field(max_length=200, pattern=r"^[^\p{Cc}]*$"),
        said(marked("Note"), marked("Page, instrument, name of the file: whatever lets somebody else look it up.")),
    ] = ""


Sources = Annotated[
    tuple[Source, ...],
    Field(max_length=MAX_SOURCES),
    said(marked("Sources"), marked("Where the values come from, each field once at most. May be left out.")),
]


@cache
def leaf_paths(model: type[Model]) -> dict[str, Any]:
    """Every field of a file's model that holds a value, with its annotation; parts are gone into, lists are not.

    A part that is a file of its own (an installation's magneto) is one field. Keys are the names in the file, joined
    by points, in the file's order; `format` and `sources` are not among them.
    """
    found: dict[str, Any] = {}
    for name, field in model.model_fields.items():
        if name in ("format", "sources"):
            continue
        parts = [m for m in _models(field.annotation) if "format" not in m.model_fields]
        if not parts:
            found[name] = Annotated[field.annotation, *field.metadata] if field.metadata else field.annotation
        for part in parts:
            for path, annotation in leaf_paths(part).items():
                found.setdefault(f"{name}.{path}", annotation)
    return found


@cache
def _known(model: type[Model]) -> frozenset[str]:
    """Leaves, and the parts they stand in."""
    leaves = leaf_paths(model)
    return frozenset(".".join(p.split(".")[: i + 1]) for p in leaves for i in range(p.count(".") + 1))


def check_sources(model: type[Model], sources: tuple[Source, ...]) -> None:
    """Raise ValueError for a source of a field the file cannot have, and for a field given two of them."""
    seen = set()
    for i, source in enumerate(sources):
        if source.field not in _known(model):
            raise ValueError(
                tr(
                    "sources[{i}].field is “{field}”; it must be the name of a field of this file, such as “{such}”",
                    i=i,
                    field=source.field,
                    such=next(iter(leaf_paths(model))),
                )
            )
        if source.field in seen:
            raise ValueError(
                tr(
                    "sources[{i}].field is “{field}”, which has a source already; give it one",
                    i=i,
                    field=source.field,
                )
            )
        seen.add(source.field)


def noted(sources: tuple[Source, ...], fields: tuple[str, ...], origin: Origin, note: str) -> tuple[Source, ...]:
    """The sources with these fields', and those of what lies within them, replaced: their values are new."""
    kept = tuple(s for s in sources if not any(s.field == f or s.field.startswith(f"{f}.") for f in fields))
    return (*kept, *(Source(field=f, origin=origin, note=note[:200]) for f in fields))


def _models(annotation: Any) -> list[type[Model]]:
    if isinstance(annotation, type) and issubclass(annotation, Model):
        return [annotation]
    if typing.get_origin(annotation) in (Annotated, Union, types.UnionType):
        return [m for a in typing.get_args(annotation) for m in _models(a)]
    return []
