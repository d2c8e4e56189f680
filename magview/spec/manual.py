"""A magneto known by its manual only: what no manual gives is put in plain proportions, for pictures alone.

The file leaves these parts out, and they are not written back. Whatever reckons with them must refuse instead.
"""

from __future__ import annotations

import math
from itertools import pairwise
from typing import Any

from magview.spec.language import tr

LEFT_OUT = ("cam.profile", "breaker", "contact_screw", "designed_setting")
"""Parts that a magneto known by its manual has none of."""

_POINTS = 24


def with_plain_parts(data: dict[str, Any]) -> dict[str, Any]:
    """The file's data with the parts that it leaves out. Raises ValueError for one that is given."""
    cam = data.get("cam")
    if not isinstance(cam, dict):
        return data
    for path in LEFT_OUT:
        part, _, inner = path.partition(".")
        if (inner in cam) if inner else (part in data):
            raise ValueError(
                tr("{field} stands beside known “manual”; leave it out, or say known “drawing”", field=path)
            )
    gaps, tops = _numbers(data.get("gap_limits_mm"), (0.2, 0.3)), _numbers(cam.get("lobe_peaks_deg"), (0.0,))
    marks = data.get("marks")
    rim = _numbers((marks.get("radius_mm"),), (40.0,))[0] if isinstance(marks, dict) else 40.0
    gap = sum(gaps[:2]) / len(gaps[:2])
    plate = data.get("backplate")
    low, high = _numbers(plate.get("range_deg"), (0.0, 0.0))[:2] if isinstance(plate, dict) else (0.0, 0.0)
    narrowest = min((b - a for a, b in pairwise((*tops, tops[0] + 360.0))), default=360.0)
    return {
        **data,
        "cam": {**cam, "profile": _hump(max(min(0.42 * narrowest, 40.0), 1.0), 2.0 * gap)},
        "breaker": {"contact_arm_mm": 0.67 * rim},
        "contact_screw": {
            "kind": "eccentric",
            "throw_mm": gap,
            "range_deg": (-60.0, 60.0),
            "positive_is_clockwise": True,
        },
        "designed_setting": {"backplate_deg": min(max(0.0, low), high), "gap_mm": gap},
    }


def as_tuples(value: Any) -> Any:
    """Parsed JSON with its lists as tuples."""
    if isinstance(value, dict):
        return {name: as_tuples(inner) for name, inner in value.items()}
    return tuple(as_tuples(inner) for inner in value) if isinstance(value, list) else value


def without_plain_parts(data: dict[str, Any]) -> dict[str, Any]:
    """The file's data as it is written."""
    cam = {name: value for name, value in data.get("cam", {}).items() if name != "profile"}
    return {name: value for name, value in data.items() if name not in LEFT_OUT} | {"cam": cam}


def _hump(half_deg: float, top_mm: float) -> dict[str, Any]:
    """A lobe without a corner."""
    shares = [i / _POINTS - 1.0 for i in range(2 * _POINTS + 1)]
    lifts = [top_mm * (1.0 + math.cos(math.pi * share)) / 2.0 for share in shares]
    lifts[0] = lifts[-1] = 0.0
    return {
        "kind": "measured",
        "angle_deg": tuple(half_deg * share for share in shares),
        "contact_lift_mm": tuple(lifts),
    }


def _numbers(values: Any, otherwise: tuple[float, ...]) -> tuple[float, ...]:
    """Numbers of a file; others where there are none, as what is amiss is refused at its own field."""
    if not isinstance(values, tuple) or not values or len(values) < len(otherwise):
        return otherwise
    fine = all(isinstance(v, int | float) and math.isfinite(v) and 0 <= abs(v) < 3600 for v in values)
    return tuple(map(float, values)) if fine else otherwise
