"""A radial engine with link rods by its pins, as points of the complex plane."""

from __future__ import annotations

import cmath
import math

from scipy.optimize import brentq, minimize_scalar

from magview.spec.engine import Engine
from magview.spec.files import validate


def radial(cylinders: int = 7, timing: int = 4, master: int = 1, **changes) -> Engine:
    first, second = range(1, cylinders + 1, 2), range(2, cylinders + 1, 2)
    data = {
        "format": "magview-engine/1",
        "name": "Test radial",
        "cylinders": cylinders,
        "arrangement": "radial",
        "firing_order": (*first, *second),
        "firing_btdc_deg": {"left": 20.0, "right": 20.0},
        "timing_tolerance_deg": 1.0,
        "synchronising_tolerance_deg": 1.0,
        "stroke_mm": 140.0,
        "rod_mm": 260.0,
        "rotation": "clockwise",
        "timing_cylinder": timing,
        "articulation": {"master_cylinder": master, "knuckle_radius_mm": 56.0, "link_rod_mm": 204.0},
        **changes,
    }
    return validate(Engine, data, "test")


class Pins:
    """One cylinder of an articulated engine by its pins, cylinder 1's axis along the real axis."""

    def __init__(self, engine: Engine, cylinder: int) -> None:
        link = engine.articulation
        self.r, self.rod = engine.stroke_mm / 2, engine.rod_mm
        axis = lambda number: cmath.exp(2j * math.pi * (number - 1) / engine.cylinders)  # noqa: E731
        self.own, self.main = axis(cylinder), axis(link.master_cylinder)
        self.link = None
        if cylinder != link.master_cylinder:
            self.link, self.knuckle = link.link_rod_mm, link.knuckle_radius_mm * self.own / self.main

    def height(self, crank_deg: float) -> float:
        """Piston pin from the crank's axis."""
        crank = self.r * cmath.exp(1j * math.radians(crank_deg))
        reach = self._along(crank, self.main, self.rod)
        if self.link is None:
            return reach
        master_rod = (reach * self.main - crank) / self.rod
        return self._along(crank + self.knuckle * master_rod, self.own, self.link)

    @staticmethod
    def _along(pin: complex, axis: complex, rod: float) -> float:
        seen = pin / axis
        return seen.real + math.sqrt(rod**2 - seen.imag**2)

    def top(self) -> float:
        near = math.degrees(cmath.phase(self.own))
        found = minimize_scalar(lambda a: -self.height(a), bracket=(near - 20, near, near + 20), tol=1e-14)
        return float(found.x)

    def stops(self, drop_mm: float) -> tuple[float, float]:
        """Crank angles before and after the top at which the piston meets a stop that far below the top."""
        top = self.top()
        at = lambda a: self.height(top) - drop_mm - self.height(a)  # noqa: E731
        before = brentq(at, top - 100, top - 1e-3, xtol=1e-11)
        return float(before), float(brentq(at, top + 1e-3, top + 100, xtol=1e-11))
