"""Readings of a setting at an inspection. Apart from `prediction`, so that the bench need not wait for its sums."""

from __future__ import annotations

from dataclasses import dataclass

from magview.spec.language import marked, tr

MAX_HOURS = 100_000.0
"""Since a setting: no engine runs longer between overhauls [h]."""


@dataclass(frozen=True)
class Inspection:
    """Readings of lobe 1 at an inspection, the setting untouched since hours 0.

    Raises ValueError for values that no magneto has.
    """

    hours: float
    """Since it was set [h], 0…MAX_HOURS."""
    gap_mm: float
    """Best estimate of the gap by blades, pips not allowed for [mm]."""
    gap_half_width_mm: float
    """Half-width of that: half a step of the blades [mm]."""
    opening_error_deg: float | None = None
    """Rotor degrees from the E-gap, positive late; None if it was not read."""
    opening_half_width_deg: float = 0.0
    """Half-width of that [rotor deg]."""

    def __post_init__(self) -> None:
        if not 0.0 <= self.hours <= MAX_HOURS:
            raise ValueError(
                tr(
                    "an inspection at {hours} h; hours lie between 0 and {most}",
                    hours=self.hours,
                    most=MAX_HOURS,
                )
            )
        for words, value in (
            (marked("the gap is {value} mm; it must lie between 0 and 100"), self.gap_mm),
            (marked("the gap's half-width is {value} mm; it must lie between 0 and 100"), self.gap_half_width_mm),
        ):
            if not 0.0 <= value <= 100.0:
                raise ValueError(tr(words, value=value))
        for words, value in (
            (marked("the opening's error is {value}°; it must lie within 90°"), self.opening_error_deg or 0.0),
            (marked("the opening's half-width is {value}°; it must lie within 90°"), self.opening_half_width_deg),
        ):
            if not abs(value) <= 90.0:
                raise ValueError(tr(words, value=value))
