"""How often is a setting within limits that is called good enough? Settings whose truth the program does not see.

Run with ``python -m tests.benchmarks.next_act [COUNT [KEY]]``; prints a table, fails for nothing. COUNT settings of
each kind (2,000 if left out), drawn evenly up to 0.03 mm beyond the gap's limits and 1.6 times the mark's tolerance.
"""

# ruff: noqa: T201 — it is there to print.

from __future__ import annotations

import sys
from collections import Counter
from math import atan, degrees, floor, radians, tan

import numpy as np

from magview.bench.next_act import Act, next_act
from magview.physics.cam.setting import internal_timing
from magview.physics.uncertainty.instruments import Instrument, instrument
from magview.physics.uncertainty.measurement import Measurement, judge_linear
from magview.physics.uncertainty.setting_uncertainty import InternalReadings, internal_measurement
from magview.spec.library import find_magneto
from magview.spec.magneto import Magneto

_HABITS = ("led-in", "after-tightening")
USUAL = ("rule-32nds", "straightedge-hand", "blades-thou", "drag-one-blade", "lamp", "rotor-hand", *_HABITS)
COARSE = ("rule-1mm", "straightedge-hand", "blades-0.05mm", "drag-one-blade", "meter", "rotor-hand", *_HABITS)
FINE = ("rule-64ths", "straightedge-clamped", "blades-half-thou", "drag-compared", "lamp", "rotor-bar", *_HABITS)


def read(rng: np.random.Generator, magneto: Magneto, keys: tuple[str, ...]) -> tuple[Measurement, bool]:
    """Readings of a setting drawn about the limits, each with its errors, and whether it is truly within them."""
    timing, radius = internal_timing(magneto), magneto.marks.radius_mm
    low, high = magneto.gap_limits_mm
    most = degrees(atan(magneto.marks.tolerance_mm / radius)) / timing.ratio
    gap, late = rng.uniform(low - 0.03, high + 0.03), rng.uniform(-1.6 * most, 1.6 * most)
    tool: dict[str, Instrument] = {instrument(key).role: instrument(key) for key in keys}

    def error(role: str) -> float:
        return float(rng.uniform(-1.0, 1.0)) * tool[role].half_width

    top = timing.curve.top_mm + timing.lift_errors_mm[0] - timing.wear_lift_mm
    parted = gap - tool["opening"].offset - error("opening")
    opens, shows = (
        float(timing.curve.before_top_deg(np.array(top - g + timing.wear_lift_mm))) for g in (gap, parted)
    )
    stands = late + (opens - shows) / timing.ratio + error("rotor turning")
    division, step = 2.0 * tool["rule"].half_width, 2.0 * tool["blade"].half_width
    edge = radius * tan(radians(stands * timing.ratio)) + error("straightedge")
    blade = step * floor((gap - tool["feel"].half_width) / step)
    while blade + step <= gap + error("feel"):
        blade += step
    found = InternalReadings(round(edge / division) * division, blade, instruments=tuple(tool.values()))
    return internal_measurement(magneto, found), abs(late) <= most and low <= gap <= high


def main(count: int = 2000, key: int = 5) -> None:
    """Print how often each act was named, and how often the setting was within limits then."""
    rng = np.random.default_rng(key)
    for name in ("seven-radial", "four-opposed"):
        for kind, keys in (("usual", USUAL), ("fine", FINE), ("coarse", COARSE)):
            told, within = Counter[Act](), Counter[Act]()
            for _ in range(count):
                try:
                    measurement, truth = read(rng, find_magneto(name), keys)
                except ValueError:  # a gap of nothing
                    continue
                act = next_act(measurement, judge_linear(measurement)).act
                told[act] += 1
                within[act] += truth
            cells = (f"{a.value} {told[a]}, within {100 * within[a] / told[a]:.1f} %" for a in Act if told[a])
            print(f"{name}, {kind}: {'; '.join(cells)}")


if __name__ == "__main__":
    main(*map(int, sys.argv[1:]))
