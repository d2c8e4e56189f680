"""The fields of the job sheet that are asked for, part by part and in their order."""

from __future__ import annotations

from typing import Any

from magview.forms.entry import Entry, Kind, entry_of
from magview.job.checklists import Stage
from magview.job.words import shown
from magview.spec.base import Model
from magview.spec.fields import Sign

HEAD_FIELDS = ("title", "day", "invented")
"""Of the sheet itself."""

HEAD_PARTS = ("aircraft", "engine", "magneto", "limits")
"""Whose it is, and what readings are judged by."""

OF_A_STAGE = ("note", "by")
"""Of every stage, at its end; state and reason have buttons."""

_READ_LAST = ("backplate_deg", "screw_deg")
"""Scales that a hand can do without; gap and marks come first. Files keep their order: signatures cover it."""

_WRITTEN_BY_SIGNING = ("covers", "rules")


def entries_in(part: str, model: type[Model]) -> tuple[Entry, ...]:
    """The fields of a part as they are asked for; what every stage has comes last. "" is the sheet itself."""
    if not issubclass(model, Stage):
        names = [n for n in model.model_fields if part or n in HEAD_FIELDS]
    else:
        own = sorted((n for n in model.model_fields if n not in Stage.model_fields), key=_READ_LAST.__contains__)
        names = [*own, *OF_A_STAGE]
    return tuple(entry_of(model, name) for name in names if name not in _WRITTEN_BY_SIGNING)


def beside(entry: Entry, value: Any) -> str:
    """A reading in words that the bare number lacks: the other unit of length, early or late, the way round."""
    if value is None or entry.kind not in (Kind.NUMBER, Kind.WHOLE):
        return ""
    if entry.quantity.sign is Sign.BEFORE_TOP:
        return shown(entry.quantity, value) if value < 0 else ""  # the label says "before"
    worded = entry.is_angle and entry.quantity.sign in (Sign.LATE, Sign.AFTER_ZERO)
    if entry.is_length or entry.unit == "teeth" or worded:
        return shown(entry.quantity, value)
    return ""
