"""Simulated mechanics: trials to get the gap in limits, by advice and by a proportional rule; do intervals hold?

Run with ``python -m tests.benchmarks.simulated_mechanics [COUNT [SEED [SCENARIO]]]``; prints figures, fails for
nothing. Every
mechanic has a magneto whose file is wrong: lift and rise by up to a fifth, index by up to 2° or 4°, evenly spread;
the program sees the file, the readings and how well the mechanic reads, never the truth. They begin at the file's
designed plate; plate, mark and blade are off by as much as `ReadingErrors` says at most, evenly spread.
"""

# ruff: noqa: T201 — it is there to print.

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterable
from dataclasses import dataclass, field
from functools import lru_cache

import numpy as np
from pydantic import ValidationError

from magview.physics.cam.setting import InternalTiming
from magview.physics.trials.advice import Advice, Outcome, advise
from magview.physics.trials.flank import Flank
from magview.physics.trials.trial import ReadingErrors, Trial
from magview.spec.base import SpecError
from magview.spec.cam import Cam
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Magneto

THOU = 0.0254
MOST = 40
"""Trials after which a mechanic gives up."""


@dataclass
class Mechanic:
    """One magneto as it is, the file that is believed, and the hands and blades that set it."""

    file: Magneto
    true: InternalTiming
    errors: ReadingErrors
    blade_mm: float
    rng: np.random.Generator

    def gap_mm(self, plate: float, late_cam_deg: float = 0.0) -> float:
        """The largest gap with the plate there and lobe 1 opening so late [cam deg] (guide: theory-setting)."""
        before = self.true.first_peak_deg + plate - self.true.ratio * self.file.e_gap_deg - late_cam_deg
        return self.true.curve.top_mm - float(self.true.curve.lift_mm(-max(before, 0.0)))

    def attempt(self, plate: float) -> tuple[Trial, float]:
        """The trial as it goes into the book, and the true gap."""
        mark, off, feel = self.rng.uniform(-1.0, 1.0, 3)
        late = np.degrees(np.arctan(mark * self.errors.mark_mm / self.file.marks.radius_mm))
        gap = self.gap_mm(plate + off * self.errors.plate_deg, late)
        passes = max(int((gap + feel * self.errors.blade_mm) / self.blade_mm + 1e-9), 0)
        return Trial.blades(plate, passes * self.blade_mm if passes else None, (passes + 1) * self.blade_mm), gap

    @property
    def within_mm(self) -> float:
        """How far inside the limits, as blades can tell them, the slot's best plate is [mm]; negative for outside."""
        low, high = (self.gap_mm(b) for b in self.file.backplate.range_deg)
        first, last = blade_limits(self.file, self.blade_mm)
        return min(last - low, high - first)

    @property
    def reachable(self) -> bool:
        """Whether some plate in the slot gives a gap that the blades can call in limits, with something to spare."""
        return self.within_mm > 0.2 * THOU


def blade_limits(file: Magneto, blade_mm: float) -> tuple[float, float]:
    """The part of the limits between whole blades [mm]."""
    low, high = file.gap_limits_mm
    return float(np.ceil(low / blade_mm - 1e-6) * blade_mm), float(np.floor(high / blade_mm + 1e-6) * blade_mm)


def in_limits(trial: Trial, file: Magneto) -> bool:
    low, high = file.gap_limits_mm
    return low - 1e-9 <= trial.gap_low_mm and trial.gap_high_mm <= high + 1e-9


def mechanic(
    rng: np.random.Generator, name: str, errors: ReadingErrors, blade_mm: float = THOU, index_deg: float = 2.0
) -> Mechanic:
    """A mechanic with a true magneto drawn at random about a shipped file."""
    file = find_magneto(name)
    profile = file.cam.profile
    while True:
        lift, rise = rng.uniform(0.8, 1.2, 2)
        plate = file.designed_setting.backplate_deg + rng.uniform(-index_deg, index_deg)
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
            slot = {"range_deg": (-60.0, 60.0)}  # the truth does not mind where the slot ends
            parts = {"cam": cam, "designed_setting": designed, "backplate": slot}
            true = InternalTiming(Magneto.model_validate({**dict(file), **parts}))
        except (ValidationError, SpecError):
            continue
        return Mechanic(file, true, errors, blade_mm, rng)


def drawn(count: int, seed: int, errors: ReadingErrors, blade_mm: float = THOU, index_deg: float = 2.0,
          reachable: bool = True) -> list[Mechanic]:  # fmt: skip
    """Mechanics on the shipped files in turn, each with a gap in limits somewhere in the slot, or clearly none."""
    names, rng = shipped_names("magnetos"), np.random.default_rng(seed)
    hands: list[Mechanic] = []
    while len(hands) < count:
        m = mechanic(rng, names[len(hands) % len(names)], errors, blade_mm, index_deg)
        if m.reachable if reachable else m.within_mm < 0.0:
            hands.append(m)
    return hands


# ---------------------------------------------------------------------- ways to the gap

Way = Callable[[Mechanic, list[Trial]], float]


@lru_cache(maxsize=8)
def file_slope(file: Magneto) -> float:
    """How much the gap grows with the plate by the file, at its designed setting [mm/deg]."""
    flank, plate = Flank(file), file.designed_setting.backplate_deg
    return float(flank.gap_mm(plate + 0.05) - flank.gap_mm(plate - 0.05)) / 0.1


def proportional(m: Mechanic, trials: list[Trial]) -> float:
    """The one-line rule: what the gap lacks over the file's slope, within the slot."""
    lacks = sum(m.file.gap_limits_mm) / 2 - trials[-1].middle_mm
    return float(np.clip(trials[-1].backplate_deg + lacks / file_slope(m.file), *m.file.backplate.range_deg))


def advised(m: Mechanic, trials: list[Trial]) -> float:
    return advise(m.file, trials, errors=m.errors).backplate_deg


def count(m: Mechanic, way: Way) -> int:
    """Trials until the blades say that the gap is in limits."""
    trials = [m.attempt(m.file.designed_setting.backplate_deg)[0]]
    while not in_limits(trials[-1], m.file) and len(trials) < MOST:
        trials.append(m.attempt(way(m, trials))[0])
    return len(trials)


def counts(hands: Iterable[Mechanic], way: Way, seed: int) -> np.ndarray:
    """Trials that each mechanic needs; the errors of their hands are drawn anew from the seed, alike for each way."""
    found = []
    for i, m in enumerate(hands):
        m.rng = np.random.default_rng([seed, i])
        found.append(count(m, way))
    return np.array(found)


def followed(m: Mechanic, most: int = MOST) -> list[Advice]:
    """The advice after each trial of a mechanic who does as told, to the end."""
    trials = [m.attempt(m.file.designed_setting.backplate_deg)[0]]
    advices = [advise(m.file, trials, errors=m.errors)]
    while advices[-1].outcome in (Outcome.MOVE, Outcome.REPEAT) and len(trials) < most:
        trials.append(m.attempt(advices[-1].backplate_deg)[0])
        advices.append(advise(m.file, trials, errors=m.errors))
    return advices


def repeated(advices: list[Advice], same_deg: float = 1e-6) -> bool:
    """Whether an act came twice: the same outcome at the same plate, or back to a plate that was tried."""
    acts = [(a.outcome, a.backplate_deg) for a in advices if a.outcome in (Outcome.MOVE, Outcome.REPEAT)]
    for i, (outcome, plate) in enumerate(acts):
        tried = [p for o, p in acts[:i] if o is outcome]
        if outcome is Outcome.MOVE:
            tried += [t.backplate_deg for t in advices[i].fit.trials]
        if any(abs(plate - p) <= same_deg for p in tried):
            return True
    return False


# ---------------------------------------------------------------------- do intervals hold


@dataclass
class Coverage:
    """How often the stated intervals held what they were stated for, by what, probability and trials so far."""

    held: dict[tuple[str, float, int], list[bool]] = field(default_factory=dict)
    widths: dict[tuple[str, float, int], list[float]] = field(default_factory=dict)

    def watch(self, m: Mechanic, most: int = 4) -> None:
        """Follow the advice for some trials, in limits or not, a little off it, and judge every interval."""
        trials = [m.attempt(m.file.designed_setting.backplate_deg)[0]]
        for n in range(1, most + 1):
            advice = advise(m.file, trials, errors=m.errors)
            plate = float(np.clip(advice.backplate_deg + m.rng.uniform(-1, 1), *m.file.backplate.range_deg))
            trial, gap = m.attempt(plate)
            for what, truth in (("curve", m.gap_mm(plate)), ("next trial", gap)):
                for probability in (0.95, 0.68):
                    there = advice.fit.predict(plate, probability, as_set=what == "next trial")
                    key = what, probability, n
                    self.held.setdefault(key, []).append(bool(there.low_mm <= truth <= there.high_mm))
                    self.widths.setdefault(key, []).append(float(there.high_mm - there.low_mm))
            trials.append(trial)

    def share(self, what: str, probability: float) -> float:
        """Of all intervals of a kind, whatever the number of trials [-]."""
        return float(
            np.mean([h for (w, p, _), held in self.held.items() if (w, p) == (what, probability) for h in held])
        )


def covered(hands: Iterable[Mechanic], seed: int, most: int = 4) -> Coverage:
    """The coverage over some mechanics."""
    coverage = Coverage()
    for i, m in enumerate(hands):
        m.rng = np.random.default_rng([seed, i])
        coverage.watch(m, most)
    return coverage


FAR_DEG = 12.0
"""Index errors among which magnetos out of reach are looked for [deg]: the slots reach 4° to 9°."""

CAREFUL = ReadingErrors(mark_mm=0.1, plate_deg=0.1, blade_mm=0.0025)
"""A straightedge clamped to the cam; a plate read to a tenth of a degree; drag compared with the next blade's."""

SCENARIOS = (
    ("blades of 0.01 mm, index within ±2°", 0.01, 2.0),
    ("blades of 0.001 in, index within ±2°", THOU, 2.0),
    ("blades of 0.001 in, index within ±4°", THOU, 4.0),
)


def summary(c: np.ndarray) -> str:
    return (
        f"median {np.median(c):.0f}, mean {c.mean():.2f}, 95th percentile {np.percentile(c, 95):.0f}, most {c.max()}"
    )


def main(mechanics: int = 500, seed: int = 1, only: int | None = None) -> None:
    errors = CAREFUL
    print(f"{mechanics} mechanics, seed {seed}: {errors}")
    for title, blade_mm, index_deg in SCENARIOS if only is None else SCENARIOS[only - 1 : only]:
        began = time.perf_counter()
        print(f"\n{title}")
        hands = drawn(mechanics, seed, errors, blade_mm, index_deg)
        by_advice, by_rule = counts(hands, advised, seed), counts(hands, proportional, seed)
        print(f"  advice            {summary(by_advice)}")
        print(f"  proportional rule {summary(by_rule)}")
        more = by_advice - by_rule
        reach = 1.96 * more.std(ddof=1) / np.sqrt(len(more))
        print(f"  difference        {more.mean():+.3f} trials, 95 % from {more.mean() - reach:+.3f} to "
              f"{more.mean() + reach:+.3f}")  # fmt: skip
        said, again, wide = [], 0, 0
        for i, m in enumerate(hands):
            m.rng = np.random.default_rng([seed, i])
            advices = followed(m)
            said.append(advices[-1].outcome)
            again += repeated(advices)
            wide += any(wider_than_bracket(a) for a in advices)
        print(f"  acts repeated by {again}, wider than bracketed for {wide}; told in vain that it is out of reach: "
              f"{said.count(Outcome.UNREACHABLE)} of {len(said)}")  # fmt: skip
        lost = drawn(max(mechanics // 5, 1), seed + 7, errors, blade_mm, FAR_DEG, reachable=False)
        soon, lucky = 0, 0
        for i, m in enumerate(lost):
            m.rng = np.random.default_rng([seed + 7, i])
            advices = followed(m, most=3)
            soon += advices[-1].outcome is Outcome.UNREACHABLE
            lucky += advices[-1].outcome is Outcome.DONE
            again += repeated(advices)
        print(f"  out of reach, so said within 3 trials: {soon} of {len(lost) - lucky} ({lucky} more came in "
              f"limits by their errors)")  # fmt: skip
        coverage = covered(hands, seed + 1)
        for (what, probability, n), held in sorted(coverage.held.items()):
            wide_mm, share = np.mean(coverage.widths[what, probability, n]), np.mean(held)
            print(f"  {probability:.0%} interval of the {what} after {n}: holds {share:.1%}, {wide_mm:.3f} mm wide")
        for what in ("curve", "next trial"):
            print(f"  all of the {what}: {coverage.share(what, 0.95):.1%} and {coverage.share(what, 0.68):.1%}")
        print(f"  {time.perf_counter() - began:.0f} s", flush=True)


def wider_than_bracket(advice: Advice) -> bool:
    """Whether the gap foretold between two trials on both sides of a limit may lie outside what they bracket."""
    trials, plate = advice.fit.trials, advice.backplate_deg
    bracketed = [
        high.gap_high_mm - low.gap_low_mm
        for low in trials
        for high in trials
        if low.backplate_deg < plate < high.backplate_deg
        and any(low.gap_high_mm <= limit <= high.gap_low_mm for limit in advice.fit.magneto.gap_limits_mm)
    ]
    return advice.high_mm - advice.low_mm > min(bracketed, default=np.inf) + 1e-9


if __name__ == "__main__":
    main(*(int(a) for a in sys.argv[1:4]))
