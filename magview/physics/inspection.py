"""What was read of a setting at an inspection. Apart from `wear`, so that the bench need not wait for its sums."""

from __future__ import annotations

from magview.spec.frozen import frozen

MOST_HOURS = 100_000.0
"""Since a setting: no engine runs longer between overhauls [h]."""


@frozen
class Inspection:
    """What was read at an inspection, the setting untouched since hours 0. Lobe 1."""

    hours: float
    """Since it was set."""
    gap_mm: float
    """Best estimate of the gap by blades, pips not allowed for."""
    gap_half_width_mm: float
    """How far that may be out: half a step of the blades."""
    opening_error_deg: float | None = None
    """Rotor degrees from the E-gap, positive late; None if it was not read."""
    opening_half_width_deg: float = 0.0

    def __post_init__(self) -> None:
        if not 0.0 <= self.hours <= MOST_HOURS:
            raise ValueError(f"an inspection at {self.hours:g} h; hours lie between 0 and {MOST_HOURS:g}")
        for what, value in (("gap", self.gap_mm), ("gap's half-width", self.gap_half_width_mm)):
            if not 0.0 <= value <= 100.0:
                raise ValueError(f"the {what} is {value:g} mm; it must lie between 0 and 100")
        for what, value in (("error", self.opening_error_deg or 0.0), ("half-width", self.opening_half_width_deg)):
            if not abs(value) <= 90.0:
                raise ValueError(f"the opening's {what} is {value:g}°; it must lie within 90°")
