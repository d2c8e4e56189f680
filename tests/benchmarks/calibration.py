"""How often do stated intervals hold? Histories whose truth the program does not see, drawn and counted.

Run with ``python -m tests.benchmarks.calibration [COUNT [KEY]]``; prints tables, fails for nothing. COUNT histories
of each kind (2,000 if left out), reproducible by KEY. What is stated at 95 % should hold 93 to 98 %; a safe date
should be no later than the truth at least 95 times in 100.

Errors of a reading, as stated to the program: "rectangular", anywhere within the half-width; "normal", of the same
standard deviation; "blades", a gap as the thickest blade that passes tells it, drag judged by hand, in steps of
0.001 in. "Spread unknown": errors a thousand times those stated, so that the readings' own scatter tells. "Half as
sure" tells what an unfounded statement costs: the true errors are twice those stated. "Uneven by half": every span
wears at a rate of its own, up to half more or less than the magneto's.
"""

# ruff: noqa: T201 — it is there to print.

from __future__ import annotations

import sys
from collections.abc import Callable
from dataclasses import dataclass
from math import floor, hypot, inf, sqrt
from types import SimpleNamespace
from typing import Any

import numpy as np

from magview.job.drift_line import READINGS, line_of
from magview.physics.cam.setting import InternalTiming
from magview.physics.wear.inspection import Inspection
from magview.physics.wear.prediction import WearRates, worn
from magview.physics.wear.rates import estimate_rates
from magview.spec.library import find_magneto

THOU, DRAG = 0.0254, 0.005
SPREAD = 1000.0
Draw = Callable[[np.random.Generator, float, float], float]
"""What is read of a true value, with a half-width."""


def rectangular(rng: np.random.Generator, true: float, half: float) -> float:
    """Anywhere within the half-width."""
    return true + rng.uniform(-half, half)


def normal(rng: np.random.Generator, true: float, half: float) -> float:
    """Of the rectangular one's standard deviation."""
    return true + rng.normal(0.0, half / sqrt(3.0))


def blades(rng: np.random.Generator, true: float, half: float) -> float:
    """The thickest blade in steps of 0.001 in that passes by feel, each judged anew, and half a step."""
    blade = floor((true - DRAG) / THOU)
    while (blade + 1) * THOU <= true + rng.uniform(-DRAG, DRAG):
        blade += 1
    return blade * THOU + THOU / 2


def unknown(rng: np.random.Generator, true: float, half: float) -> float:
    """Errors that have nothing to do with what was stated."""
    return normal(rng, true, SPREAD * half)


def twice_as_far(rng: np.random.Generator, true: float, half: float) -> float:
    """Errors twice as large as was stated."""
    return rectangular(rng, true, 2.0 * half)


# ---------------------------------------------------------------------- drift over job sheets


@dataclass(frozen=True)
class Course:
    """What is drawn for one kind of reading."""

    limits: tuple[float, float]
    half_width: float
    most_per_100h: float
    """True rates lie evenly between this and its negative."""
    of_sheet: float = 0.0
    """Share of the variance that all readings of one sheet have in common: the disc's zero, found anew each time."""


COURSES = {
    "gap": Course((0.30, 0.36), hypot(THOU / 2, DRAG, DRAG), 0.012),
    "opening": Course((-1.2, 1.2), 0.4, 0.4),
    "firing": Course((24.0, 27.0), 0.685, 0.4, 1 / 3),
}


def drift_history(
    rng: np.random.Generator, kind: str, sheets: int, draw: Draw, uneven: float = 0.0
) -> dict[str, bool]:
    """One magneto over its sheets: whether slope, next reading and safe date held. Seven in ten sheets re-set it.

    `uneven` [-] lets the rate of every span differ by up to such a share of it.
    """
    course = COURSES[kind]
    half = course.half_width / (SPREAD if draw is unknown else 1.0)
    # Limits lie anywhere between two blades.
    low, high = np.array(course.limits) + rng.uniform(0.0, 2.0 * course.half_width)
    rate = rng.uniform(-1.0, 1.0) * course.most_per_100h / 100.0
    hours, jobs, value = 0.0, [], 0.0
    own, shared = half * sqrt(1.0 - course.of_sheet), half * sqrt(course.of_sheet)
    for n in range(sheets):
        found, zero = None, draw(rng, 0.0, shared) if shared else 0.0
        if n:
            span = rng.uniform(25.0, 150.0)
            hours, value = hours + span, value + rate * span * (1.0 + rng.uniform(-uneven, uneven))
            found = zero + draw(rng, value, own)
        left = None
        if n == 0 or rng.random() < 0.7:
            value = low + (high - low) * rng.uniform(1 / 3, 2 / 3)
            left = zero + draw(rng, value, own)
        jobs.append(_sheet(kind, hours, found, left, half))
    line = line_of(jobs, READINGS[kind], 0.95)
    assert line is not None
    slope, u = _slope(line)
    ahead = hours + rng.uniform(25.0, 150.0)
    _, down, up = line.predict(ahead)
    zero = draw(rng, 0.0, shared) if shared else 0.0
    next_reading = zero + draw(rng, value + rate * (ahead - hours), own)
    if not low <= value <= high:
        leaves = hours
    elif rate == 0.0:
        leaves = inf
    else:
        leaves = hours + ((high if rate > 0 else low) - value) / rate
    safe = _safe(line, low, high)
    return {
        "slope": bool(abs(slope - rate) <= line.factor * u),
        "next reading": bool(down <= next_reading <= up),
        "safe date": bool(safe <= max(leaves, hours) or leaves > hours + 5000.0),
    }


def _slope(line: Any) -> tuple[float, float]:
    return line.fit.slope, line.fit.slope_u


def _safe(line: Any, low: float, high: float) -> float:
    return line.safe_until_h(low, high)


def _sheet(kind: str, hours: float, found: float | None, left: float | None, half: float) -> Any:
    """As much of a job sheet as a line through one reading looks at; thousands of whole ones would take minutes."""
    names = {"gap": "gap_mm", "opening": "opening_error_deg", "firing": "left_btdc_deg"}
    as_left = SimpleNamespace(**{names[kind]: left})
    return SimpleNamespace(
        magneto=SimpleNamespace(hours_h=hours, position="left"),
        as_found=SimpleNamespace(**{names[kind]: found}),
        internal_timing=as_left,
        synchronising=as_left,
        dead_centre=SimpleNamespace(disc_reset=None),
        reading_errors=SimpleNamespace(**{f"{kind}_{'mm' if kind == 'gap' else 'deg'}": half}),
    )


def drift_coverage(count: int, key: int, kind: str, sheets: int, draw: Draw, uneven: float = 0.0) -> dict[str, float]:
    """Share of `count` histories in which each statement held."""
    rng = np.random.default_rng([key, sheets, *kind.encode()])
    held = [drift_history(rng, kind, sheets, draw, uneven) for _ in range(count)]
    return {what: float(np.mean([h[what] for h in held])) for what in held[0]}


# ---------------------------------------------------------------------- wear of one setting


def wear_history(rng: np.random.Generator, inspections: int, gap_draw: Draw, opening_draw: Draw) -> dict[str, bool]:
    """One setting of a shipped magneto, inspected while heel and pip wear: whether each rate's interval held."""
    magneto = find_magneto(("seven-radial", "four-opposed")[int(rng.integers(2))])
    rates = WearRates(rng.uniform(0.0, 0.01), rng.uniform(0.0, 0.01))
    gap_half, opening_half = hypot(THOU / 2, DRAG, DRAG), 0.5
    if gap_draw is unknown:
        gap_half, opening_half = gap_half / SPREAD, opening_half / SPREAD
    plate, seen, hours = magneto.designed_setting.backplate_deg, [], 0.0
    for _ in range(inspections):
        read = InternalTiming(worn(magneto, rates, hours)).readings(plate, 0.0)
        gap = gap_draw(rng, float(read.blade_gap_mm[0]), gap_half)
        error = opening_draw(rng, float(read.e_gap_error_deg[0]), opening_half)
        seen.append(Inspection(hours, max(gap, 0.0), gap_half, error, opening_half))
        hours += rng.uniform(50.0, 150.0)
    found = estimate_rates(magneto, plate, seen)
    arm = magneto.breaker.contact_arm_mm / magneto.breaker.heel_arm_mm
    lost = rates.heel_mm_per_100h * arm
    truths = {"closing": (found.closing, lost + rates.pip_mm_per_100h), "pip": (found.pip, rates.pip_mm_per_100h)}
    truths["heel"] = (found.heel, rates.heel_mm_per_100h)
    return {what: bool(rate.low <= true <= rate.high) for what, (rate, true) in truths.items()}


def wear_coverage(count: int, key: int, inspections: int, gap_draw: Draw, opening_draw: Draw) -> dict[str, float]:
    """Share of `count` histories in which each rate's interval held."""
    rng = np.random.default_rng([key, inspections])
    held = [wear_history(rng, inspections, gap_draw, opening_draw) for _ in range(count)]
    return {what: float(np.mean([h[what] for h in held])) for what in held[0]}


# ---------------------------------------------------------------------- tables


def main() -> None:
    """Print the tables."""
    count = int(sys.argv[1]) if len(sys.argv) > 1 else 2000
    key = int(sys.argv[2]) if len(sys.argv) > 2 else 1
    print(f"drift, {count} histories each, stated at 95 %: held in %")
    cases: list[tuple[str, str, Draw, float]] = [
        (kind, draw.__name__, draw, 0.0) for kind in COURSES for draw in (rectangular, normal)
    ]
    cases += [("gap", "blades", blades, 0.0), ("gap", "uneven by half", rectangular, 0.5)]
    cases += [("gap", "spread unknown", unknown, 0.0), ("gap", "half as sure", twice_as_far, 0.0)]
    for kind, name, draw, uneven in cases:
        for sheets in (2, 3, 4, 6, 10)[draw is unknown :]:
            row = drift_coverage(count, key, kind, sheets, draw, uneven)
            print(f"{kind:8} {name:14} {sheets:3} sheets", *(f"{w} {100 * v:5.1f}" for w, v in row.items()), sep="  ")
    print(f"wear, {count} histories each, stated at 95 %: held in %")
    for name, gap_draw, draw in (
        ("rectangular", rectangular, rectangular),
        ("normal", normal, normal),
        ("blades", blades, rectangular),
        ("spread unknown", unknown, unknown),
        ("half as sure", twice_as_far, twice_as_far),
    ):
        for inspections in (2, 3, 4, 6, 10)[draw is unknown :]:
            row = wear_coverage(count, key, inspections, gap_draw, draw)
            print(
                f"{name:14} {inspections:3} inspections", *(f"{w} {100 * v:5.1f}" for w, v in row.items()), sep="  "
            )


if __name__ == "__main__":
    main()
