"""The choice of the E-gap: flux, current and energy about the lobe at work, and where the rotor stands.

Everything is over rotor degrees from the neutral before the E-gap of the lobe at work, at the speed of starting.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from functools import lru_cache

import numpy as np
from numpy.typing import NDArray

from magview.bench.state import BenchState, readings
from magview.curves.coil import Speeds, speeds_of
from magview.curves.lift import Array
from magview.physics.cam.setting import Readings, internal_timing
from magview.physics.electric.coil import contact_cycle, opening_energy_j
from magview.spec.magneto import Magneto

BEFORE_DEG, AFTER_DEG = -46.0, 44.0
"""Ends of the strip, for a magneto whose poles are 90° apart; others in proportion."""

_TOUCH_DEG = 0.02
"""So near to its opening the contacts just touch, and the current is still there [rotor deg]."""

_HELD_DEG = 8.0
"""So long after an opening the lobe that opened is still the one at work [rotor deg]."""


@dataclass(frozen=True)
class WorkingLobe:
    """The lobe whose opening the rotor is nearest to."""

    index: int
    opens_deg: float
    """Angle at which it opens the contacts, at the turn of the rotor that is shown [rotor deg]."""
    dwell_deg: float
    neutral_deg: float
    """The neutral before its E-gap [rotor deg]."""


def working_lobe(magneto: Magneto, result: Readings, rotor_deg: float) -> WorkingLobe | None:
    """The lobe at work with the rotor at an angle [deg]; None where no lobe opens the contacts."""
    if not np.isfinite(result.opens_deg).any():
        return None
    turn, pitch = 360.0 / magneto.cam.turns_per_rotor_turn, 360.0 / magneto.poles
    past = np.mod(rotor_deg - _HELD_DEG - result.opens_deg + turn / 2, turn) - turn / 2
    index = int(np.nanargmin(np.abs(past)))
    first = float(result.opens_deg[index])
    turns = round((rotor_deg - _HELD_DEG - float(past[index]) - first) / turn)
    opens = first + turns * turn
    neutral = pitch * round((opens - magneto.e_gap_deg) / pitch)
    return WorkingLobe(index, opens, float(result.dwell_deg[index]), neutral)


@dataclass(frozen=True, eq=False)
class WhyHere:
    """Curves about the lobe at work. Flux is a share of its greatest over a cam turn; the first arrays are (n,)."""

    lobe: WorkingLobe
    speeds: Speeds
    rotor_deg: Array
    """From the neutral [rotor deg]."""
    magnet_flux: Array
    """Flux that the magnet alone drives through the core."""
    flux: Array
    """With the current's share."""
    current_a: Array
    """Its size."""
    closed_spans_deg: tuple[tuple[float, float], ...]
    """Angle at which the contacts touch, from the neutral [rotor deg]."""
    break_deg: Array
    """Openings (m,) for which the energy is given, from the neutral [rotor deg]."""
    energy_mj: Array
    """Energy in the coil as they part there, with the present dwell (m,) [mJ]."""
    running_mj: Array
    """The same at running speed."""
    needed_mj: float | None
    """Energy that a spark needs by the magneto's file; None where it does not say."""

    @property
    def opens_deg(self) -> float:
        """Return where the lobe at work opens, from the neutral [rotor deg]."""
        return self.lobe.opens_deg - self.lobe.neutral_deg

    @property
    def broken_mj(self) -> float:
        """Energy as the contacts part where they do now [mJ]."""
        return float(np.interp(self.opens_deg, self.break_deg, self.energy_mj))

    @property
    def broken_running_mj(self) -> float:
        """The same at running speed [mJ]."""
        return float(np.interp(self.opens_deg, self.break_deg, self.running_mj))

    @property
    def enough(self) -> bool | None:
        """Whether that is enough for a spark; None where the file does not say what one needs."""
        return None if self.needed_mj is None else self.broken_mj >= self.needed_mj

    @property
    def best_span_deg(self) -> tuple[float, float]:
        """Openings that lose less than a tenth of the most energy, from the neutral [rotor deg]: the top is flat."""
        good = self.break_deg[self.energy_mj >= 0.9 * self.energy_mj.max()]
        return float(good[0]), float(good[-1])

    def cursor_deg(self, rotor_deg: float) -> float:
        """Return where a rotor angle stands in the strip, from the neutral [rotor deg]."""
        return rotor_deg - self.lobe.neutral_deg

    def now(self, rotor_deg: float) -> tuple[float, float, float]:
        """Flux, the magnet's own flux, and the size of the current [A] with the rotor at an angle [deg]."""
        at = self.cursor_deg(rotor_deg)
        # Beside the opening the resultant jumps: the nearest sample on the same side is taken, never one between.
        index = int(np.searchsorted(self.rotor_deg, at, side="right")) - 1
        if self.breaks(rotor_deg):
            index = int(np.searchsorted(self.rotor_deg, self.opens_deg)) - 1
        index = min(max(index, 0), len(self.rotor_deg) - 1)
        return float(self.flux[index]), float(self.magnet_flux[index]), float(self.current_a[index])

    def breaks(self, rotor_deg: float) -> bool:
        """Whether the contacts just touch: the current is broken here, and has not been yet."""
        return abs(self.cursor_deg(rotor_deg) - self.opens_deg) <= _TOUCH_DEG

    def sparks(self, rotor_deg: float) -> bool:
        """Whether the contacts have just parted, so that the spark is to be seen."""
        return 0.0 <= self.cursor_deg(rotor_deg) - self.opens_deg < _HELD_DEG


def why_here(state: BenchState) -> WhyHere | None:
    """The strip of a bench; None without electrical values or cam, or where no lobe opens the contacts."""
    if state.magneto.assumed:
        return None
    lobe = working_lobe(state.magneto, readings(state), state.rotor_deg)
    if state.magneto.electrical is None or lobe is None:
        return None
    return _curves(state.magneto, state.backplate_deg, state.screw_deg, lobe)


@lru_cache(maxsize=8)  # asked for at every frame while the rotor turns under one lobe
def _curves(magneto: Magneto, backplate_deg: float, screw_deg: float, lobe: WorkingLobe) -> WhyHere:
    electrical = magneto.electrical
    assert electrical is not None
    result = internal_timing(magneto).readings(backplate_deg, screw_deg)
    speeds = speeds_of(magneto)
    scale = 4.0 / magneto.poles
    angles = np.linspace(BEFORE_DEG * scale, AFTER_DEG * scale, 1441)
    cycle = contact_cycle(magneto, result, speeds.starting_rpm, angles + lobe.neutral_deg)
    greatest = _greatest_flux_wb(magneto, result, speeds.starting_rpm)
    half = 90.0 / magneto.poles
    breaks = np.linspace(magneto.e_gap_deg - half, magneto.e_gap_deg + half, 241)
    at = breaks + lobe.neutral_deg
    slow, fast = (
        np.asarray(1e3 * opening_energy_j(electrical, magneto.poles, rpm, at, lobe.dwell_deg))
        for rpm in (speeds.starting_rpm, speeds.running_rpm)
    )
    return WhyHere(
        lobe=lobe,
        speeds=speeds,
        rotor_deg=angles,
        magnet_flux=cycle.static_flux_wb / greatest,
        flux=cycle.flux_wb / greatest,
        current_a=np.abs(cycle.current_a),
        closed_spans_deg=_spans(angles, cycle.closed),
        break_deg=breaks,
        energy_mj=slow,
        running_mj=fast,
        needed_mj=electrical.spark_energy_mj,
    )


def _spans(angles: Array, closed: NDArray[np.bool_]) -> tuple[tuple[float, float], ...]:
    edges = np.diff(np.concatenate([[0], closed.astype(int), [0]]))
    last = len(angles) - 1
    return tuple(
        (float(angles[a]), float(angles[min(b, last)]))
        for a, b in zip(np.flatnonzero(edges == 1).tolist(), np.flatnonzero(edges == -1).tolist(), strict=True)
    )


def core_flux(state: BenchState) -> tuple[float, float]:
    """Resultant and the magnet's own core flux as the rotor stands, as shares of the greatest, from −1 to 1.

    Without electrical values both are a plain sine. The spot shown and the strip divide by the same greatest value.
    """
    magneto = state.magneto
    if magneto.electrical is None or magneto.assumed:
        plain = -math.sin(math.radians(magneto.poles / 2 * state.rotor_deg))
        return plain, plain
    strip = why_here(state)
    if strip is None:  # contacts that stay open or closed: the coil's own answer, over no lobe
        result, speed = readings(state), speeds_of(magneto).starting_rpm
        now = contact_cycle(magneto, result, speed, state.rotor_deg)
        greatest = _greatest_flux_wb(magneto, result, speed)
        return float(now.flux_wb) / greatest, float(now.static_flux_wb) / greatest
    flux, magnet, _ = strip.now(state.rotor_deg)
    return flux, magnet


def _greatest_flux_wb(magneto: Magneto, result: Readings, speed_rpm: float) -> float:
    """Over a turn of the cam, with the current's share or without it [Wb]; 1 where there is none."""
    turn = np.linspace(0.0, 360.0 / magneto.cam.turns_per_rotor_turn, 1441)
    whole = contact_cycle(magneto, result, speed_rpm, turn)
    return float(max(np.abs(whole.flux_wb).max(), np.abs(whole.static_flux_wb).max())) or 1.0
