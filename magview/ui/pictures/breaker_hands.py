"""Handles at the breaker end, and how hands turn them."""

from __future__ import annotations

from dataclasses import dataclass

from magview.bench import actions as do
from magview.bench.state import BenchState
from magview.drawing.scene import Value
from magview.spec.language import marked
from magview.ui.pictures.about_axis import AboutAxis

HANDS = {"rotor": marked("rotor"), "plate": marked("backplate"), "screw": marked("contact screw")}
"""Parts that can be taken in hand, with their names."""

HANDS_OF_VALUES: dict[Value, str] = {"rotor_deg": "rotor", "backplate_deg": "plate", "screw_deg": "screw"}
"""Names of what is in hand, by the part of the bench it turns."""

PARTS_IN_HAND = {"rotor": "rotor", "plate": "backplate", "screw": "contact screw"}
"""The part that is lit up while it is in hand."""

LENS_FACTOR = 10.0
"""Magnification of the lens, and how many times finer hands are under it."""

STEPS = {"rotor": 1.0, "plate": 0.25, "screw": 1.0}
"""Arrow-key and wheel steps [deg]; finer with Shift, coarser with Alt."""

STILL_PX = 4.0
"""A pointer that moves less between press and release has pointed, not dragged."""

SNAP_DEG = 0.8
"""Distance [rotor deg] within which a dragged rotor catches; Alt, or the menu, lets it pass."""


@dataclass
class Drag:
    """A part held by the pointer."""

    hand: str
    round: AboutAxis
    value: float
    """Angle of the dragged part without its stops [deg]; the pointer may run past them and back."""
    per_bearing: float
    gesture: int
    at_stop: bool = False
    """Whether it was said that the part is at its stop."""


def value_of(state: BenchState, hand: str) -> float:
    """Return where a part stands [deg]."""
    return {"rotor": state.rotor_deg, "plate": state.backplate_deg, "screw": state.screw_deg}[hand]


def range_of(state: BenchState, hand: str) -> tuple[float, float] | None:
    """Return the stops of a part [deg]; None for one that turns freely."""
    magneto = state.magneto
    return {"plate": magneto.backplate.range_deg, "screw": magneto.contact_screw.range_deg}.get(hand)


def turning(hand: str, value: float) -> do.Action:
    """The action that turns a part to a place [deg]."""
    if hand == "rotor":
        return do.TurnRotor(value)
    return do.TurnBackplate(value) if hand == "plate" else do.TurnScrew(value)
