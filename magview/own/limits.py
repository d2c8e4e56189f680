"""What numbers a field may hold, read off the file's own model, in words."""

from __future__ import annotations

import types
import typing
from collections.abc import Iterator
from typing import Annotated, Any, Union

from pydantic.fields import FieldInfo

from magview.own.entry import Entry
from magview.own.fields import MODELS, Kind
from magview.spec.language import tr
from magview.spec.sources import leaf_paths
from magview.spec.units import MM_PER_INCH


def bounds(kind: Kind, entry: Entry) -> dict[str, float]:
    """The bounds of an entry's numbers in the file's unit: any of "ge", "gt", "le", "lt"; of each value where it is a
    list."""
    return dict(_bounds(leaf_paths(MODELS[kind])[entry.field]))


def _bounds(annotation: Any) -> Iterator[tuple[str, float]]:
    origin, inside = typing.get_origin(annotation), typing.get_args(annotation)
    if origin is Annotated:
        metadata = [m for part in inside[1:] for m in (part.metadata if isinstance(part, FieldInfo) else [part])]
        for name in ("ge", "gt", "le", "lt"):
            for part in metadata:
                if getattr(part, name, None) is not None:
                    yield name, float(getattr(part, name))
        yield from _bounds(inside[0])
    elif origin in (tuple, Union, types.UnionType):
        for part in inside:
            yield from _bounds(part)


def allowed_words(kind: Kind, entry: Entry, inches: bool = False) -> str:
    """The bounds as a sentence; nothing for what has none."""
    found = bounds(kind, entry)
    low, high = found.get("ge", found.get("gt")), found.get("le", found.get("lt"))
    if low is None or high is None or (entry.form in ("angle", "angles") and high >= 3600.0):
        return ""  # ten turns either way is no limit that anybody meets
    a, b = _written(entry, low, inches), _written(entry, high, inches)
    if "gt" in found and "lt" in found:
        return tr("Allowed: between {low} and {high}, neither included.", low=a, high=b)
    if "gt" in found:
        return tr("Allowed: above {low}, up to {high}.", low=a, high=b)
    if "lt" in found:
        return tr("Allowed: {low} and more, below {high}.", low=a, high=b)
    return tr("Allowed: {low} to {high}.", low=a, high=b)


def _written(entry: Entry, value: float, inches: bool) -> str:
    if entry.form in ("length", "lengths"):
        return f"{value / MM_PER_INCH:.4g} in" if inches else f"{value:g} mm"
    if entry.form in ("angle", "angles"):
        return f"{value:g}°"
    plain = f"{value:.10f}".rstrip("0").rstrip(".")  # a millionth as people write it
    return f"{plain} {entry.unit}".strip()
