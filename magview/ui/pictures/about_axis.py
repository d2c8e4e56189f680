"""A pointer going round an axis: one degree of it is one degree of what it holds, at any distance."""

from __future__ import annotations

import math

from PySide6.QtCore import QPointF

NO_BEARING_PX = 4.0
"""Within so many pixels of an axis a pointer has no bearing; what it holds waits until it comes out again."""


def bearing_about(centre: QPointF, point: QPointF) -> float:
    """Bearing of a scene point about another [deg clockwise from the top]."""
    return math.degrees(math.atan2(point.x() - centre.x(), centre.y() - point.y()))


class AboutAxis:
    """Follows a pointer about an axis of the scene."""

    def __init__(self, centre: QPointF, start: QPointF, pixels_per_unit: float) -> None:
        """`start` is the scene point at which hold was taken."""
        self._centre = centre
        self._bearing = self._bearing_of(start, pixels_per_unit)

    def moved(self, point: QPointF, pixels_per_unit: float) -> float:
        """Return the angle that the pointer has gone round since it was last asked [deg clockwise]."""
        before, now = self._bearing, self._bearing_of(point, pixels_per_unit)
        self._bearing = now
        if before is None or now is None:
            return 0.0
        return (now - before + 180.0) % 360.0 - 180.0

    def _bearing_of(self, point: QPointF, pixels_per_unit: float) -> float | None:
        out = point - self._centre
        if math.hypot(out.x(), out.y()) * abs(pixels_per_unit) < NO_BEARING_PX:
            return None
        return bearing_about(self._centre, point)
