"""One field as a form asks for it: the kind of entry follows from the type and its annotations in the model."""

from __future__ import annotations

import types
import typing
from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto
from functools import cache, cached_property
from typing import Any, Literal

from pydantic import BaseModel

from magview.spec.fields import About, Quantity, Ticked, about, parts_of
from magview.spec.language import marked, tr
from magview.spec.parse import parse_day

MAX_LINE = 200
"""Text that may be longer is given several lines."""


class Kind(Enum):
    """Kind of value that an entry takes."""

    LINE = auto()
    TEXT = auto()
    DAY = auto()
    NUMBER = auto()
    WHOLE = auto()
    NUMBERS = auto()
    WHOLES = auto()
    CHOICE = auto()
    TICK = auto()
    ROWS = auto()
    TEXTS = auto()
    CHOICES = auto()
    FILE = auto()
    TOLD = auto()


NUMERIC = (Kind.NUMBER, Kind.WHOLE, Kind.NUMBERS, Kind.WHOLES)
LISTS = (Kind.NUMBERS, Kind.WHOLES)

Value = float | int | bool | str | tuple[float, ...]
"""Value that a draft holds for an entry. Text where a number belongs could not be read; it is kept."""


@dataclass(frozen=True)
class Entry:
    """A field of a file as it is asked for."""

    path: str
    """Names in the file joined by points; "[0]" and "[1]" are the two ends of a range."""
    about: About
    optional: bool
    """Whether the file can do without it: by itself, or with the part that it belongs to."""
    only: tuple[str, tuple[Any, ...]] | None = None
    """Asked for only while another entry holds one of these."""

    @property
    def field(self) -> str:
        """The file's own field: both ends of a range are one."""
        return self.path.partition("[")[0]

    @property
    def name(self) -> str:
        """The last of its names."""
        return self.field.rpartition(".")[2]

    @property
    def end(self) -> int | None:
        """Return the end of a range it is; None where it is no range."""
        return int(self.path[-2]) if self.path.endswith("]") else None

    @property
    def label(self) -> str:
        """Name for people."""
        return tr(self.about.label or self.name)

    @property
    def meaning(self) -> str:
        """Meaning in one sentence; nothing where the label says it."""
        return tr(self.about.meaning) if self.about.meaning else ""

    @property
    def rule(self) -> str:
        """Limits and the reason for them, in one sentence."""
        return tr(self.about.rule) if self.about.rule else ""

    @property
    def quantity(self) -> Quantity:
        """Unit and sign."""
        return self.about.quantity

    @property
    def unit(self) -> str:
        """The unit alone, as it is printed."""
        return self.about.quantity.unit

    @property
    def is_length(self) -> bool:
        """Whether it is shown in inches where inches are wanted."""
        return self.unit == "mm"

    @property
    def is_angle(self) -> bool:
        """Whether its unit is the degree."""
        return self.unit == "°"

    @cached_property
    def kind(self) -> Kind:
        """Kind of value that it takes."""
        return _kind(self.about)

    @property
    def choices(self) -> tuple[tuple[Any, str], ...]:
        """Values to choose from and what they are called, marked for translation; nothing for what is no choice."""
        found = self.about.choices
        if not found and self.kind is Kind.CHOICE:
            found = ((True, marked("yes")), (False, marked("no")))
        return found

    @property
    def options(self) -> tuple[tuple[Any, str], ...]:
        """The choices in the present language; what may be left out begins with nothing."""
        told = any(value is None for value, _ in self.choices)
        none = ((None, tr("not read")),) if self.about.optional and not told else ()
        return (*none, *((value, tr(words)) for value, words in self.choices))

    @property
    def row(self) -> type[BaseModel] | None:
        """Model of one row of a table; None for what is no table."""
        return self.about.item if self.kind is Kind.ROWS else None


def _kind(field: About) -> Kind:
    base, item = field.base, field.item
    if item is not None:
        item = typing.get_args(item)[0] if typing.get_origin(item) is typing.Annotated else item
        plain = {float: Kind.NUMBERS, int: Kind.WHOLES, str: Kind.TEXTS}
        return Kind.CHOICES if field.choices else plain.get(item, Kind.ROWS)
    if typing.get_origin(base) in (typing.Union, types.UnionType):
        return Kind.TOLD
    if typing.get_origin(base) is Literal or field.choices:
        return Kind.CHOICE
    if base is bool:
        return Kind.CHOICE if field.optional and not field.has(Ticked) else Kind.TICK
    if issubclass(base, BaseModel):
        return Kind.FILE if "format" in base.model_fields else Kind.TOLD
    if base is str:
        if any(getattr(mark, "func", None) is parse_day for mark in field.marks):
            return Kind.DAY
        return Kind.TEXT if field.bounds.get("max_length", 0) > MAX_LINE else Kind.LINE
    return {float: Kind.NUMBER, int: Kind.WHOLE}[base]


def entry_of(model: type[BaseModel], name: str) -> Entry:
    """The entry of one field of a model, by its name."""
    field = about(model, name)
    return Entry(name, field, not field.required)


@cache
def entries_of(model: type[BaseModel]) -> dict[str, Entry]:
    """Every entry of a file's model by its path, in the file's order; parts are gone into, format and sources not."""
    return dict(_entries(model, "", False))


def _entries(model: type[BaseModel], above: str, optional: bool) -> Iterator[tuple[str, Entry]]:
    for name in model.model_fields:
        if name in ("format", "sources"):
            continue
        field, path = about(model, name), f"{above}{name}"
        parts = [part for part in parts_of(field.base) if "format" not in part.model_fields]
        may_miss = optional or not field.required
        if parts and field.item is None:
            yield from _of_parts(parts, path, may_miss)
        elif field.ends:
            for i, end in enumerate(field.ends):
                yield f"{path}[{i}]", Entry(f"{path}[{i}]", end, may_miss)
        else:
            yield path, Entry(path, field, may_miss)


def _of_parts(parts: list[type[BaseModel]], path: str, optional: bool) -> Iterator[tuple[str, Entry]]:
    """The entries of a part; where it is of several kinds, those of one kind are asked for only with that kind."""
    if len(parts) == 1:
        yield from _entries(parts[0], f"{path}.", optional)
        return
    kinds = {typing.get_args(about(part, "kind").base)[0]: part for part in parts}
    seen: dict[str, Entry] = {}
    for part in kinds.values():
        for inner, entry in _entries(part, f"{path}.", optional):
            name = entry.field.removeprefix(f"{path}.").partition(".")[0]
            with_it = tuple(other for other, has in kinds.items() if name in has.model_fields)
            only = (f"{path}.kind", with_it) if len(with_it) < len(kinds) else None
            if inner not in seen:
                seen[inner] = Entry(inner, entry.about, entry.optional, only)
    yield from seen.items()


def needed_with(model: type[BaseModel]) -> dict[str, tuple[str, ...]]:
    """Parts that a file may leave out as a whole, by their path: what such a part must have once it is begun."""
    found = {}
    for name in model.model_fields:
        field = about(model, name)
        for part in parts_of(field.base) if field.optional and field.item is None else ():
            found[name] = tuple(f"{name}.{n}" for n, info in part.model_fields.items() if info.is_required())
    return found
