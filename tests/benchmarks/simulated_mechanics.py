"""Simulated mechanics: how many trials until the gap is in limits, with advice and without, and are intervals honest?

Run with ``python -m tests.benchmarks.simulated_mechanics [COUNT [SEED]]``; prints figures, fails for nothing. Every
mechanic has a magneto whose file is wrong: lift and rise by up to a fifth, index by up to 2°, evenly spread. They
begin at the file's designed plate, set the contacts to open within so much of the rim mark (evenly spread), and try
blades in steps of a thousandth of an inch.
"""

# ruff: noqa: T201 — it is there to print.

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from dataclasses import dataclass, field

import numpy as np
from pydantic import ValidationError

from magview.physics.advice import advise
from magview.physics.setting import InternalTiming
from magview.physics.trials import Budget, Trial
from magview.spec.base import SpecError
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Cam, Magneto

THOU = 0.0254
MOST = 40
"""Trials after which a mechanic gives up."""
PLATE_DEG = 0.1
"""How closely the plate is put where it was meant to be."""


@dataclass
class Mechanic:
    """One magneto as it is, the file that is believed, and the hands that set it."""

    file: Magneto
    true: InternalTiming
    mark_mm: float
    rng: np.random.Generator

    def gap_mm(self, plate: float, late_cam_deg: float = 0.0) -> float:
        """The largest gap with the plate there and lobe 1 opening so late [cam deg]: guide: theory-setting forwards."""
        before = self.true.first_peak_deg + plate - self.true.ratio * self.file.e_gap_deg - late_cam_deg
        return self.true.curve.top_mm - float(self.true.curve.lift_mm(-max(before, 0.0)))

    def attempt(self, plate: float) -> tuple[Trial, float]:
        """The trial as it goes into the book, and the true gap."""
        radius = self.file.marks.radius_mm
        late = np.degrees(np.arctan(self.rng.uniform(-self.mark_mm, self.mark_mm) / radius))
        gap = self.gap_mm(plate + self.rng.uniform(-PLATE_DEG, PLATE_DEG), late)
        passes = int(gap / THOU)
        return Trial.blades(plate, passes * THOU if passes else None, (passes + 1) * THOU), gap

    @property
    def reachable(self) -> bool:
        """Whether some plate in the slot gives a gap that the blades can call in limits."""
        low, high = (self.gap_mm(b) for b in self.file.backplate.range_deg)
        first, last = blade_limits(self.file)
        return low < last - 0.2 * THOU and high > first + 0.2 * THOU


def blade_limits(file: Magneto) -> tuple[float, float]:
    """The part of the limits between whole thousandths [mm]."""
    low, high = file.gap_limits_mm
    return np.ceil(low / THOU - 1e-6) * THOU, np.floor(high / THOU + 1e-6) * THOU


def in_limits(trial: Trial, file: Magneto) -> bool:
    low, high = file.gap_limits_mm
    return low - 1e-9 <= trial.gap_low_mm and trial.gap_high_mm <= high + 1e-9


def mechanic(rng: np.random.Generator, name: str, mark_mm: float, wrong: float = 1.0) -> Mechanic:
    """A mechanic with a true magneto drawn at random about a shipped file; `wrong` scales the file's errors."""
    file = find_magneto(name)
    profile = file.cam.profile
    while True:
        lift, rise = rng.uniform(1 - 0.2 * wrong, 1 + 0.2 * wrong, 2)
        plate = file.designed_setting.backplate_deg + rng.uniform(-2.0, 2.0) * wrong
        if profile.kind == "law":
            changed = {"lift_mm": profile.lift_mm * lift, "rise_deg": profile.rise_deg * rise}
        else:
            changed = {
                "contact_lift_mm": tuple(s * lift for s in profile.contact_lift_mm),
                "angle_deg": tuple(a * rise if a < 0 else a for a in profile.angle_deg),
            }
        try:
            cam = Cam.model_validate(
                {**dict(file.cam), "profile": type(profile).model_validate({**dict(profile), **changed})}
            )
            designed = {"backplate_deg": plate, "gap_mm": file.designed_setting.gap_mm}
            true = InternalTiming(Magneto.model_validate({**dict(file), "cam": cam, "designed_setting": designed}))
        except (ValidationError, SpecError):
            continue
        return Mechanic(file, true, mark_mm, rng)


# ---------------------------------------------------------------------- ways to the gap

Way = Callable[[Mechanic, list[Trial]], float]


def too_small(trial: Trial, file: Magneto) -> bool:
    return trial.middle_mm < sum(file.gap_limits_mm) / 2


def fixed_step(m: Mechanic, trials: list[Trial], step: float = 1.0) -> float:
    """Turn it a little and see."""
    low, high = m.file.backplate.range_deg
    move = step if too_small(trials[-1], m.file) else -step
    return min(max(trials[-1].backplate_deg + move, low), high)


def bisection(m: Mechanic, trials: list[Trial]) -> float:
    """Halve the slot; where errors have led the halves astray, open them again by a degree."""
    low, high = m.file.backplate.range_deg
    for trial in trials:
        if too_small(trial, m.file):
            low = max(low, trial.backplate_deg)
        else:
            high = min(high, trial.backplate_deg)
        if high - low < 0.2:
            low, high = low - 1.0, high + 1.0
    slot = m.file.backplate.range_deg
    return min(max((low + high) / 2, slot[0]), slot[1])


def advised(m: Mechanic, trials: list[Trial]) -> float:
    return advise(m.file, trials, budget=Budget(m.mark_mm, PLATE_DEG)).backplate_deg


WAYS: dict[str, Way] = {"advice": advised, "bisection": bisection, "1° steps": fixed_step}


def count(m: Mechanic, way: Way) -> int:
    """Trials until the blades say that the gap is in limits."""
    trials = [m.attempt(m.file.designed_setting.backplate_deg)[0]]
    while not in_limits(trials[-1], m.file) and len(trials) < MOST:
        trials.append(m.attempt(way(m, trials))[0])
    return len(trials)


@dataclass
class Coverage:
    """How often the stated intervals held what they were stated for, by what, probability and trials so far."""

    held: dict[tuple[str, float, int], list[bool]] = field(default_factory=dict)

    def watch(self, m: Mechanic, most: int = 4) -> None:
        """Follow the advice for some trials, in limits or not, a little off it, and judge every interval."""
        trials = [m.attempt(m.file.designed_setting.backplate_deg)[0]]
        for n in range(1, most + 1):
            advice = advise(m.file, trials, budget=Budget(m.mark_mm, PLATE_DEG))
            plate = float(np.clip(advice.backplate_deg + m.rng.uniform(-1, 1), *m.file.backplate.range_deg))
            trial, gap = m.attempt(plate)
            trials.append(trial)
            for what, truth in (("curve", m.gap_mm(plate)), ("next trial", gap)):
                for probability in (0.95, 0.68):
                    there = advice.fit.predict(plate, probability, as_set=what == "next trial")
                    holds = bool(there.low_mm <= truth <= there.high_mm)
                    self.held.setdefault((what, probability, n), []).append(holds)

    def share(self, what: str, probability: float) -> float:
        """Of all intervals of a kind, whatever the number of trials [-]."""
        return float(
            np.mean([h for (w, p, _), held in self.held.items() if (w, p) == (what, probability) for h in held])
        )


def drawn(mechanics: int, seed: int, mark_mm: float, wrong: float = 1.0) -> list[Mechanic]:
    """Mechanics on the shipped files in turn, each with a gap in limits somewhere in the slot."""
    names, rng = shipped_names("magnetos"), np.random.default_rng(seed)
    hands: list[Mechanic] = []
    while len(hands) < mechanics:
        m = mechanic(rng, names[len(hands) % len(names)], mark_mm, wrong)
        if m.reachable:
            hands.append(m)
    return hands


def counts(hands: list[Mechanic], way: Way, seed: int) -> np.ndarray:
    """Trials that each mechanic needs; the errors of their hands are drawn anew from the seed."""
    found = []
    for i, m in enumerate(hands):
        m.rng = np.random.default_rng([seed, i])
        found.append(count(m, way))
    return np.array(found)


def main(mechanics: int = 500, seed: int = 1) -> None:
    for mark_mm, wrong, title in (
        (25.4 / 32, 1.0, "opening set within 1/32 in of the mark"),
        (25.4 / 64, 1.0, "opening set within 1/64 in of the mark"),
        (25.4 / 64, 1.75, "within 1/64 in, files wrong by 1.75 times as much"),
    ):
        began = time.perf_counter()
        print(f"\n{mechanics} mechanics, {title}")
        hands = drawn(mechanics, seed, mark_mm, wrong)
        for name, way in WAYS.items():
            c = counts(hands, way, seed)
            print(
                f"  {name:10} median {np.median(c):.0f}, 95th percentile {np.percentile(c, 95):.0f}, "
                f"mean {c.mean():.2f} ± {c.std() / np.sqrt(len(c)):.2f}, gave up {np.mean(c >= MOST):.1%}",
                flush=True,
            )
        coverage = Coverage()
        for i, m in enumerate(hands):
            m.rng = np.random.default_rng([seed + 1, i])
            coverage.watch(m)
        for (what, probability, n), held in sorted(coverage.held.items()):
            print(f"  {probability:.0%} interval of the {what} after {n}: holds it {np.mean(held):.1%} of the time")
        print(f"  {time.perf_counter() - began:.0f} s", flush=True)


if __name__ == "__main__":
    main(*(int(a) for a in sys.argv[1:3]))
