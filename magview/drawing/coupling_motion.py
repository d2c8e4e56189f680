"""A move of the coupling as one sees it made: the disc tooth by tooth, its flange carried along, then the flange."""

from __future__ import annotations

import math
from dataclasses import dataclass

from magview.drawing.drive_end import DrivePose
from magview.spec.engine import Coupling

TOOTH_MS = 250.0
"""A tooth takes so long, …"""
MOST_MS = 2000.0
"""… and all teeth of one part not longer than this."""


@dataclass(frozen=True)
class TeethMotion:
    """From how the parts stand to how they come to stand, the drive flange still: A, the disc; then B, the flange."""

    coupling: Coupling
    start: DrivePose
    end: DrivePose

    @property
    def spans_ms(self) -> tuple[float, float]:
        """Durations of A and of B."""
        return tuple(min(TOOTH_MS * math.ceil(abs(teeth) - 1e-6), MOST_MS) for teeth in self._teeth)  # type: ignore[return-value]

    @property
    def total_ms(self) -> float:
        """Duration of the whole."""
        return sum(self.spans_ms)

    def at(self, ms: float) -> DrivePose:
        """Places of the parts after so long."""
        first, second = self.spans_ms
        a, b = self._teeth
        disc = self._disc_from_flange(self.start) + self._turned(a, ms, first, self.coupling.drive_teeth)
        hub = self.start.hub - self.start.disc + self._turned(b, ms - first, second, self.coupling.magneto_teeth)
        return DrivePose(self.end.flange, self.end.flange + disc, self.end.flange + disc + hub)

    @staticmethod
    def _disc_from_flange(pose: DrivePose) -> float:
        return pose.disc - pose.flange

    @property
    def _teeth(self) -> tuple[float, float]:
        """Teeth to go on either face, clockwise seen from the drive end; broken off half-way, part of one."""
        disc = self._disc_from_flange(self.end) - self._disc_from_flange(self.start)
        hub = (self.end.hub - self.end.disc) - (self.start.hub - self.start.disc)
        return disc * self.coupling.drive_teeth / 360.0, hub * self.coupling.magneto_teeth / 360.0

    @staticmethod
    def _turned(teeth: float, ms: float, span_ms: float, on: int) -> float:
        """Degrees gone so far: each tooth sets off and comes to rest by itself."""
        if not span_ms:
            return teeth * 360.0 / on
        steps = math.ceil(abs(teeth) - 1e-6)
        gone = min(max(ms / span_ms, 0.0), 1.0) * steps
        whole = math.floor(gone)
        part = gone - whole
        return (whole + part * part * (3.0 - 2.0 * part)) * teeth / steps * 360.0 / on
