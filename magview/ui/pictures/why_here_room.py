"""The room of the strip's curves: where each value stands."""

from __future__ import annotations

from dataclasses import dataclass
from functools import cached_property
from typing import TypeVar

from PySide6.QtCore import QRectF

from magview.curves.why_here import WhyHere
from magview.drawing.shapes import Array
from magview.spec.language import marked

LANES = (
    (marked("core flux"), marked("dashed: the magnet alone"), "flux", 0.30),
    (marked("primary current"), marked("contacts closed: shaded"), "opening", 0.30),
    (marked("energy at break"), marked("if the contacts opened there"), "lift", 0.40),
)
"""Words, hint, colour's role and share of the height of each curve, from the top down."""

_FULL_SPARK_SHARE = 2.4
"""The spark has its full length at so many times the energy that a spark needs."""

Value = TypeVar("Value", float, Array)
"""One value or all of a curve's: a curve has well over a thousand, drawn anew at each step of a drag."""


@dataclass(frozen=True)
class WhyHereRoom:
    """Curves in a picture of this size [px]; `em` is the height of a letter."""

    strip: WhyHere
    width: int
    height: int
    em: float

    @property
    def wide(self) -> bool:
        """Whether there is room for whole words."""
        return self.width > 42 * self.em

    @cached_property
    def area(self) -> QRectF:
        """The area of all curves."""
        em = self.em
        left, right = (9.0, 8.6) if self.wide else (6.4, 6.6)
        return QRectF(left * em, 2.3 * em, self.width - (left + right) * em, self.height - 4.2 * em)

    def lane(self, index: int) -> QRectF:
        """The room of one curve."""
        area = self.area
        top = area.top() + sum(share for *_, share in LANES[:index]) * area.height()
        return QRectF(area.left(), top + 3.0, area.width(), LANES[index][3] * area.height() - 6.0)

    def x_of(self, angle_deg: Value) -> Value:
        """Return where an angle from the neutral stands, or where many do."""
        area, strip = self.area, self.strip
        low, high = float(strip.rotor_deg[0]), float(strip.rotor_deg[-1])
        return area.left() + (angle_deg - low) / (high - low) * area.width()

    def angle_at(self, x: float) -> float:
        """The angle from the neutral at a place."""
        area, strip = self.area, self.strip
        low, high = float(strip.rotor_deg[0]), float(strip.rotor_deg[-1])
        return low + (x - area.left()) / area.width() * (high - low)

    @property
    def top_mj(self) -> float:
        """The energy at the top of its lane."""
        strip = self.strip
        return max(1.18 * float(strip.energy_mj.max()), 1.2 * (strip.needed_mj or 0.0)) or 1.0

    def flux_y(self, share: Value) -> Value:
        """Return where a share of the greatest flux stands."""
        lane = self.lane(0)
        return lane.bottom() - (share / 1.02 + 1.0) / 2.0 * lane.height()

    def current_y(self, current_a: Value) -> Value:
        """Return where a current stands."""
        lane, strip = self.lane(1), self.strip
        return lane.bottom() - current_a / (1.12 * float(strip.current_a.max()) or 1.0) * lane.height()

    def energy_y(self, energy_mj: Value) -> Value:
        """Return where an energy stands."""
        lane = self.lane(2)
        return lane.bottom() - energy_mj / self.top_mj * lane.height()

    @property
    def spark_length(self) -> float:
        """Length of the spark as drawn: in proportion to the energy, up to its room [px]."""
        strip = self.strip
        full = self.width - self.area.right() - 2.2 * self.em
        whole = _FULL_SPARK_SHARE * strip.needed_mj if strip.needed_mj else self.top_mj
        return full * min(1.0, strip.broken_mj / whole)
