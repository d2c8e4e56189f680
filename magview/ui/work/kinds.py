"""What kind of entry a field of the job sheet takes, read off the parts' declarations, so that none is forgotten."""

from __future__ import annotations

import types
import typing
from dataclasses import dataclass
from typing import Any, Literal

from pydantic.fields import FieldInfo

from magview.job.checklists import Stage, is_check
from magview.job.parts import Uncertainty
from magview.job.words import unit_of
from magview.spec.base import Model
from magview.spec.language import marked, tr

Kind = Literal["check", "flag", "choice", "number", "line", "text", "day", "rows", "sure"]

HEAD_FIELDS = ("title", "day", "invented")
"""Of the sheet itself."""

HEAD_PARTS = ("aircraft", "engine", "magneto", "limits")
"""Whose it is, and what readings are judged by."""

OF_A_STAGE = ("note", "by")
"""Of every stage, at its end; state and reason have buttons."""

_TITLES = {"title": marked("Title"), "note": marked("Note"), "by": marked("Done by")}
_CHOICES = {
    "left": marked("left"), "right": marked("right"), "single": marked("single"), "intake": marked("intake"),
    "compression": marked("compression"), "power": marked("power"), "exhaust": marked("exhaust"),
    "engine": marked("on its engine"), "bench": marked("on a bench, off its engine"),
    "smooth": marked("smooth"), "rough": marked("rough"),
}  # fmt: skip


@dataclass(frozen=True)
class Entry:
    """One field of one part."""

    part: str
    field: str
    kind: Kind
    title: str
    """In English, as declared."""
    low: float | None = None
    high: float | None = None
    choices: tuple[Any, ...] = ()
    row: type[Model] | None = None
    """What one row of a table is."""
    off: Any = False
    """What a tick taken away leaves: no, or nothing answered."""

    @property
    def words(self) -> str:
        """What the field is called."""
        return tr(self.title)

    @property
    def choice_words(self) -> tuple[tuple[Any, str], ...]:
        """The choices, and what each is called."""
        return tuple((value, choice_words(value)) for value in self.choices)


def choice_words(value: Any) -> str:
    """A choice for people."""
    if value is None:
        return tr("not read")
    if isinstance(value, bool):
        return tr("yes") if value else tr("no")
    return tr(_CHOICES.get(value, value))


def entries(part: str, model: type[Model]) -> tuple[Entry, ...]:
    """The fields of a part, in their own order; of a stage, what every stage has comes last."""
    if not issubclass(model, Stage):
        names = [n for n in model.model_fields if part or n in HEAD_FIELDS]
    else:
        own = [n for n in model.model_fields if n not in Stage.model_fields]
        names = [*own, *OF_A_STAGE]
    return tuple(entry_of(part, name, model.model_fields[name]) for name in names if name not in ("covers", "rules"))


def entry_of(part: str, name: str, info: FieldInfo) -> Entry:
    """One field. Raises TypeError for a declaration that no entry is known for: then one is to be written."""
    title = info.title or _TITLES.get(name, name)
    base, optional, metadata = _bare(info.annotation, tuple(info.metadata))
    if typing.get_origin(base) is tuple:
        return Entry(part, name, "rows", title, row=typing.get_args(base)[0])
    if base is Uncertainty:
        return Entry(part, name, "sure", title)
    if typing.get_origin(base) is Literal:
        values = typing.get_args(base)
        return Entry(part, name, "choice", title, choices=(None, *values) if optional else values)
    if base is bool:
        if is_check(info):
            return Entry(part, name, "check", title, off=None)
        if optional:
            return Entry(part, name, "flag", title, choices=(None, True, False))
        return Entry(part, name, "check", title)
    if base in (float, int):
        return Entry(part, name, "number", title, _limit(metadata, "ge"), _limit(metadata, "le"))
    if base is str:
        if name == "day":
            return Entry(part, name, "day", title)
        return Entry(part, name, "text" if (_limit(metadata, "max_length") or 0) > 200 else "line", title)
    raise TypeError(f"{part}.{name}: no entry for {info.annotation}")


def _bare(annotation: Any, metadata: tuple[Any, ...]) -> tuple[Any, bool, tuple[Any, ...]]:
    """A type without None and without its annotations, whether it had None, and the annotations."""
    optional = False
    while True:
        origin, args = typing.get_origin(annotation), typing.get_args(annotation)
        if origin in (typing.Union, types.UnionType):
            rest = [a for a in args if a is not type(None)]
            if len(rest) != 1:
                return annotation, optional, metadata
            annotation, optional = rest[0], True
        elif origin is typing.Annotated:
            for extra in args[1:]:
                metadata = (*metadata, *(extra.metadata if isinstance(extra, FieldInfo) else (extra,)))
            annotation = args[0]
        else:
            return annotation, optional, metadata


def _limit(metadata: tuple[Any, ...], what: str) -> Any:
    """A bound among the annotations (`ge`, `le`, `max_length`); None if there is none."""
    return next((found for m in metadata if (found := getattr(m, what, None)) is not None), None)


def unit_words(field: str, inches: bool) -> str:
    """The unit as it stands in a label, and which way is positive."""
    unit = unit_of(field)
    if unit == "mm":
        if field == "mark_offset_mm":
            return tr("in, + late") if inches else tr("mm, + late")
        return tr("in") if inches else tr("mm")
    if unit == "deg":
        if field.endswith("btdc_deg"):
            return tr("crank ° before top dead centre")
        if field.endswith("error_deg"):
            return tr("°, + late")
        if "backplate" in field:
            return tr("°, + with rotation")
        if "screw" in field:
            return tr("°, + closer")
        if "stop" in field:
            return tr("crank °, before the disc's zero negative")
        return tr("crank °") if "tolerance" in field else "°"
    if "_from_" in field:  # the title says which way is positive
        return tr("teeth")
    return {"rpm": tr("rpm"), "h": tr("h"), "teeth": tr("teeth, + with rotation"), "N": "N", "": ""}[unit]
