"""Metadata of the models' fields: label, meaning, unit, sign, limits; read by forms, schemas and refusals."""

from __future__ import annotations

import types
import typing
from collections.abc import Iterator
from dataclasses import dataclass, field
from enum import Enum
from functools import cache
from typing import Any, Literal

from pydantic import BaseModel, Field
from pydantic.fields import FieldInfo

from magview.spec.language import marked, tr


class Sign(Enum):
    """Direction in which a number is positive, in words that follow it."""

    LATE = marked("positive = late")
    WITH_ROTATION = marked("positive = with rotation")
    CLOSER = marked("positive = contacts closer")
    BEFORE_TOP = marked("before top dead centre; after it negative")
    AFTER_ZERO = marked("positive = after the disc's zero")
    EITHER = marked("with its sign")
    PLAIN = ""


_UNITS = {
    "°": marked("degrees"),
    "mm": marked("millimetres"),
    "rpm": marked("turns per minute"),
    "/min": marked("turns per minute"),
    "h": marked("hours"),
    "teeth": marked("teeth"),
    "min": marked("minutes"),
    "%": marked("per cent"),
}
_DEGREES = {
    "rotor": marked("rotor degrees"),
    "crank": marked("crank degrees"),
    "cam": marked("cam degrees"),
    "plate": marked("degrees of the plate"),
    "screw": marked("degrees of the screw"),
}


@dataclass(frozen=True)
class Quantity:
    """The unit of a number, of what it is an angle, and which way is positive. Stands in a field's annotation."""

    unit: str = ""
    of: Literal["", "rotor", "crank", "cam", "plate", "screw"] = ""
    sign: Sign = Sign.PLAIN
    scale: float = 1.0
    """By how much a file's number is multiplied to be in this unit, where the file has no unit of its own."""

    @property
    def words(self) -> str:
        """Unit and sign for people: "crank degrees, positive = late"."""
        if self.scale != 1.0:
            return ""
        unit = tr(_DEGREES[self.of]) if self.of else tr(_UNITS.get(self.unit, self.unit))
        sign = tr(self.sign.value) if self.sign is not Sign.PLAIN else ""
        return ", ".join(part for part in (unit, sign) if part)


@dataclass(frozen=True)
class Choices:
    """Names of the values that a field may have. Stands in a field's annotation."""

    words: tuple[tuple[Any, str], ...]


class Ticked:
    """Stands in the annotation of yes, no or not answered: it is given by a tick, which taken away leaves nothing."""


@dataclass(frozen=True)
class Rule:
    """The values allowed, and the reason, in one sentence; bounds of the numbers themselves stand in the type."""

    text: str


def said(label: str, meaning: str = "", rule: str = "") -> FieldInfo:
    """Label and meaning of a field, and its limits beside its bounds: for a field's annotation.

    Words are marked for translation; whoever shows them passes them through `tr`.
    """
    info: FieldInfo = may_say(label, meaning, ...)
    if rule:
        info.metadata.append(Rule(rule))
    return info


def may_say(label: str, meaning: str = "", default: Any = None) -> Any:
    """A field that may be left out, with its label and meaning; stands in the place of its default."""
    # A description that is not given leaves that of the type.
    return Field(default, title=label, description=meaning) if meaning else Field(default, title=label)


@dataclass(frozen=True)
class About:
    """Everything that a model says of one of its fields, or of one end of a range."""

    name: str
    base: Any
    """The type, without None and without annotations."""
    label: str
    meaning: str = ""
    rule: str = ""
    optional: bool = False
    """Whether None is allowed, for nothing."""
    required: bool = True
    """Whether a file cannot leave it out."""
    default: Any = None
    quantity: Quantity = Quantity()
    choices: tuple[tuple[Any, str], ...] = ()
    bounds: dict[str, float] = field(default_factory=dict)
    """Any of ge, gt, le, lt, multiple_of, max_length, min_length; of each value where it is a list."""
    marks: tuple[Any, ...] = ()
    """Annotations of other rooms."""

    def has(self, kind: type) -> bool:
        """Whether an annotation of a kind stands in its type."""
        return any(isinstance(m, kind) for m in self.marks)

    @property
    def item(self) -> Any:
        """The type of one value of a list; None for what is no list."""
        return typing.get_args(self.base)[0] if typing.get_origin(self.base) is tuple else None

    @property
    def ends(self) -> tuple[About, ...]:
        """Both ends of a range, or nothing for what is none."""
        args = typing.get_args(self.base)
        if typing.get_origin(self.base) is not tuple or len(args) != 2 or args[1] is Ellipsis:
            return ()
        return tuple(_about(self.name, arg, (), self.required) for arg in args)


_BOUNDS = ("ge", "gt", "le", "lt", "multiple_of", "max_length", "min_length")


def about(model: type[BaseModel], name: str) -> About:
    """The metadata of a field."""
    return _abouts(model)[name]


@cache
def _abouts(model: type[BaseModel]) -> dict[str, About]:
    return {name: _of_info(name, info) for name, info in model.model_fields.items()}


def _of_info(name: str, info: FieldInfo) -> About:
    default = None if info.is_required() else info.get_default(call_default_factory=True, validated_data={})
    return _about(name, info.annotation, (info, *info.metadata), info.is_required(), default)


def parts_of(annotation: Any) -> list[type[BaseModel]]:
    """The models that a type is made of, lists gone into."""
    if isinstance(annotation, type) and issubclass(annotation, BaseModel):
        return [annotation]
    return [m for a in typing.get_args(annotation) for m in parts_of(a)]


def _about(name: str, annotation: Any, outer: tuple[Any, ...], required: bool, default: Any = None) -> About:
    base, optional, marks = _bare(annotation, tuple(_unpacked(outer)))
    inner = marks
    args = [a for a in typing.get_args(base) if a is not Ellipsis] if typing.get_origin(base) is tuple else []
    if len(args) == 1:  # what is said of its values is said of the list
        inner = (*_bare(args[0], ())[2], *marks)
    elif args:  # both ends of a range have a unit in common, and each a label and limits of its own
        inner = (*(m for m in _bare(args[0], ())[2] if isinstance(m, Quantity)), *marks)
    labels = [m.title for m in marks if isinstance(m, FieldInfo) and m.title]
    meanings = [m.description for m in marks if isinstance(m, FieldInfo) and m.description]
    rules = [m.text for m in marks if isinstance(m, Rule)]
    quantities = [m for m in inner if isinstance(m, Quantity)]
    choices = [m.words for m in inner if isinstance(m, Choices)]
    if not choices and typing.get_origin(base) is Literal:
        choices = [tuple((value, str(value)) for value in typing.get_args(base))]
    return About(
        name,
        base,
        label=labels[-1] if labels else "",
        meaning=meanings[-1] if meanings else "",
        rule=rules[-1] if rules else "",
        optional=optional,
        required=required,
        default=default,
        quantity=quantities[-1] if quantities else Quantity(),
        choices=choices[-1] if choices else (),
        bounds={b: getattr(m, b) for m in inner for b in _BOUNDS if getattr(m, b, None) is not None},
        marks=marks,
    )


def _bare(annotation: Any, marks: tuple[Any, ...]) -> tuple[Any, bool, tuple[Any, ...]]:
    """A type without None and annotations, whether it had None, and the annotations, outermost last."""
    optional = False
    while True:
        origin, args = typing.get_origin(annotation), typing.get_args(annotation)
        if origin in (typing.Union, types.UnionType):
            rest = [a for a in args if a is not type(None)]
            optional = optional or len(rest) < len(args)
            if len(rest) != 1:
                return annotation, optional, marks
            annotation = rest[0]
        elif origin is typing.Annotated:
            annotation, marks = args[0], (*_unpacked(args[1:]), *marks)
        else:
            return annotation, optional, marks


def _unpacked(marks: tuple[Any, ...]) -> Iterator[Any]:
    """Annotations, those within a pydantic Field beside it."""
    for mark in marks:
        yield mark
        if isinstance(mark, FieldInfo):
            yield from mark.metadata
