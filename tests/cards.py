"""A limits card for tests, of an aircraft that does not exist."""

from __future__ import annotations

from typing import Any

from magview.spec.files import validate
from magview.spec.limits import LimitsCard

CARD: dict[str, Any] = {
    "format": "magview-limits/1",
    "registration": "X-ABC",
    "manual": "Ignition manual, page 12, revision C",
    "rotation": "clockwise",
    "cylinders": 6,
    "rotor_turns_per_crank_turn": 1.5,
    "e_gap_deg": 9.5,
    "mark_tolerance_mm": 0.8,
    "gap_limits_mm": (0.3, 0.4),
    "magneto_teeth": 11,
    "drive_teeth": 12,
    "left_btdc_deg": 23.0,
    "timing_tolerance_deg": 1.0,
    "synchronising_tolerance_deg": 0.5,
}
TYPED = ("X-ABC", "Ignition manual, page 12, revision C", None, "6", "1.5", "9.5", "0.8", "0.3 0.4", "11", "12", "23",
         "", "1", "0.5")  # fmt: skip
"""The same as it is typed, in the order of the page; the rotation is chosen with one key."""


def a_card(**changed: object) -> LimitsCard:
    """The card with some of its fields changed."""
    return validate(LimitsCard, {**CARD, **changed}, "the card")
