"""What guide, lessons and plot say of the coil, computed over speeds of 20 to 2000 rotor turns a minute on every
shipped magneto that has one: each sentence beside the check that would show it false.

The sentences themselves are common practice, and currents of a few amperes and energies of tens of millijoules an
order of magnitude from memory; what is checked here is that the model does not contradict them at some speed.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import cache

import numpy as np
import pytest

from magview.curves.coil import COIL_ASSUMPTIONS, COIL_WHY
from magview.guide.pages import pages
from magview.physics.cam.setting import Readings, internal_timing
from magview.physics.electric.coil import opening_energy_j, primary_current_a, resultant_flux_wb, static_flux_wb
from magview.practice.library import find_lesson
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Magneto

WIRED = [name for name in shipped_names("magnetos") if find_magneto(name).electrical is not None]
RPM = np.geomspace(20.0, 2000.0, 41)

Check = Callable[[Magneto], bool]


@cache
def designed(magneto: Magneto) -> Readings:
    return internal_timing(magneto).readings(magneto.designed_setting.backplate_deg, 0.0)


def energy_mj(magneto: Magneto, rpm: float | np.ndarray, error_deg: float | np.ndarray = 0.0) -> np.ndarray:
    """In the coil as lobe 1 opens so far past the E-gap, its dwell as designed [mJ]."""
    opens, dwell = magneto.e_gap_deg + np.asarray(error_deg), float(designed(magneto).dwell_deg[0])
    return 1e3 * opening_energy_j(magneto.electrical, magneto.poles, rpm, opens, dwell)


def best_deg(magneto: Magneto, rpm: float) -> float:
    """The opening that leaves most, from the E-gap [rotor deg], between neutral and full register either way."""
    errors = np.linspace(-90.0 / magneto.poles, 90.0 / magneto.poles, 3601)
    return float(errors[int(energy_mj(magneto, rpm, errors).argmax())])


def speeds(magneto: Magneto) -> tuple[float, float]:
    return magneto.electrical.starting_rpm, magneto.electrical.running_rpm


# ---------------------------------------------------------------------- what the sentences claim


def best_at_starting(m: Magneto) -> bool:
    """About here: the top is flat."""
    start, _ = speeds(m)
    errors = np.linspace(-90.0 / m.poles, 90.0 / m.poles, 721)
    return abs(best_deg(m, start)) < 1.0 and energy_mj(m, start) > 0.995 * energy_mj(m, start, errors).max()


def scarce_at_starting(m: Magneto) -> bool:
    """On every lobe enough for a spark, but less than twice what it needs; and the slower, the less."""
    start, _ = speeds(m)
    read, need = designed(m), m.electrical.spark_energy_mj
    each = 1e3 * opening_energy_j(m.electrical, m.poles, start, read.opens_deg, read.dwell_deg)
    slower = energy_mj(m, RPM[start > RPM])
    return bool(np.all((need < each) & (each < 2 * need)) and np.all(slower < energy_mj(m, start)))


def later_when_faster(m: Magneto) -> bool:
    best = [best_deg(m, rpm) for rpm in RPM]
    return bool(np.all(np.diff(best) > 0) and best_deg(m, speeds(m)[1]) > best_deg(m, speeds(m)[0]) + 5.0)


def energy_to_spare_when_running(m: Magneto) -> bool:
    """Five times what a spark needs, also 10° of rotor early or late; on every lobe at its own opening ten times."""
    _, run = speeds(m)
    read, need = designed(m), m.electrical.spark_energy_mj
    each = 1e3 * opening_energy_j(m.electrical, m.poles, run, read.opens_deg, read.dwell_deg)
    near = energy_mj(m, run, np.linspace(-10.0, 10.0, 41))
    return bool(np.all(near > 5 * need) and np.all(each > 10 * need))


def late_costs_no_energy_when_running(m: Magneto) -> bool:
    """Up to 10° of rotor late there is more energy, not less: what a late opening costs is the timing."""
    return bool(np.all(np.diff(energy_mj(m, speeds(m)[1], np.linspace(0.0, 10.0, 41))) > 0))


def lags_when_faster(m: Magneto) -> bool:
    """The steady current's peak, by its lag atan(LΩ/R) behind the e.m.f., which is strongest at neutral."""
    e = m.electrical
    lag = np.degrees(np.arctan(e.inductance_h * RPM * m.poles * np.pi / 60 / e.resistance_ohm)) * 2 / m.poles
    return bool(np.all(np.diff(lag) > 0) and lag[0] < 0.25 * 180 / m.poles)


def strongest_near_neutral_when_slow(m: Magneto) -> bool:
    """The contacts held closed, the slowest of these speeds, and ten times slower still: nearer to neutral."""
    theta = np.linspace(-45.0, 45.0, 3601) * 2 / (m.poles / 2)
    peaks = []
    for rpm in (RPM[0], RPM[0] / 10):
        current = primary_current_a(m.electrical, m.poles, rpm, theta - 360.0, theta)
        peaks.append(float(theta[int(current.argmax())]))
    return 0.0 < peaks[1] < peaks[0] < 0.25 * 180.0 / m.poles


def the_cores_flux_falls(m: Magneto) -> bool:
    """At each speed and lobe: just before opening the core's flux is held up, after it, it is the magnet's alone, and
    the leap goes the way the magnet was driving it."""
    read = designed(m)
    for rpm in RPM:
        for opens, dwell in zip(read.opens_deg.tolist(), read.dwell_deg.tolist(), strict=True):
            before, after = opens - 1e-6, opens + 1e-6
            flux = resultant_flux_wb(m.electrical, m.poles, rpm, opens - dwell, opens, np.array([before, after]))
            alone = static_flux_wb(m.electrical, m.poles, np.array([before, after]))
            falling = np.sign(np.diff(static_flux_wb(m.electrical, m.poles, np.array([opens - 1.0, opens]))))[0]
            if not (flux[1] == alone[1] and falling * (flux[1] - flux[0]) > 0):
                return False
    return True


def far_off_fails_at_starting(m: Magneto) -> bool:
    """Somewhere between neutral and register, early and late, less than a spark needs."""
    start, reach = speeds(m)[0], np.linspace(0.0, 90.0 / m.poles, 91)
    need = m.electrical.spark_energy_mj
    return bool(energy_mj(m, start, -reach).min() < need and energy_mj(m, start, reach).min() < need)


def flat_top(m: Magneto) -> bool:
    """At starting 5° early or late cost less than a tenth."""
    start, _ = speeds(m)
    return bool(energy_mj(m, start, np.array([-5.0, 5.0])).min() > 0.9 * energy_mj(m, start))


def usual_order_of_magnitude(m: Magneto) -> bool:
    """Opened at the E-gap: 1 to 5 A, 5 to 110 mJ, at both speeds."""
    for rpm in speeds(m):
        current = np.sqrt(2e-3 * energy_mj(m, rpm) / m.electrical.inductance_h)
        if not (1.0 < current < 5.0 and 5.0 < energy_mj(m, rpm) < 110.0):
            return False
    return True


def nothing_at_neutral_most_at_register(m: Magneto) -> bool:
    angles = np.linspace(0.0, 360.0 / m.poles, 3601)
    alone = np.abs(static_flux_wb(m.electrical, m.poles, angles))
    return alone[0] < 1e-18 and abs(angles[int(alone.argmax())] - 180.0 / m.poles) < 0.05


def by_rotor_speed(m: Magneto) -> bool:
    return 20.0 <= speeds(m)[0] < speeds(m)[1] <= 2000.0


# ---------------------------------------------------------------------- who says it

CLAIMS: list[tuple[str, str, tuple[Check, ...]]] = [
    (
        "theory-coil",
        "The E-gap is the best opening where the spark is scarce: at the speed of starting.",
        (by_rotor_speed, best_at_starting, scarce_at_starting),
    ),
    (
        "theory-coil",
        "At running speed the best moment comes later, but there is energy to spare, and a late opening only fires "
        "the engine late.",
        (later_when_faster, energy_to_spare_when_running, late_costs_no_energy_when_running),
    ),
    (
        "theory-coil",
        "Turned slowly, it is strongest near neutral. The faster the rotor turns, the later it is strongest, and the "
        "later the opening that breaks off the most.",
        (strongest_near_neutral_when_slow, lags_when_faster, later_when_faster),
    ),
    (
        "theory-coil",
        "At the E-gap the flux of the core falls: the current has held it up, and at the opening it drops to where "
        "the magnet alone would have it.",
        (the_cores_flux_falls,),
    ),
    ("theory-coil", "at starting 5° early or late cost less than a tenth", (flat_top,)),
    (
        "theory-coil",
        "Currents of a few amperes and energies of tens of millijoules are the usual order of magnitude, from memory",
        (usual_order_of_magnitude,),
    ),
    (
        "theory-setting",
        "There, at the speed of starting, where the spark is scarce, the opening breaks off about the most energy: "
        "the current has held up the flux of the core, and at the opening that flux falls.",
        (best_at_starting, scarce_at_starting, the_cores_flux_falls),
    ),
    (
        "plots",
        "At starting that is near the E-gap, and there it matters; at running speed it comes later, and there is "
        "energy to spare.",
        (best_at_starting, far_off_fails_at_starting, later_when_faster, energy_to_spare_when_running),
    ),
    ("glossary", "about where most energy is broken off at the speed of starting", (best_at_starting,)),
    ("glossary", "the magnet's flux is largest", (nothing_at_neutral_most_at_register,)),
    ("glossary", "the magnet alone drives no flux through the coil", (nothing_at_neutral_most_at_register,)),
    (
        "instructor",
        "at the speed of starting an opening far from the E-gap leaves less than a spark needs; when running there "
        "is energy to spare",
        (far_off_fails_at_starting, energy_to_spare_when_running),
    ),
    (
        "the plot",
        "The E-gap is the best opening where the spark is scarce: at the speed of starting. At running "
        "speed the current lags and the best moment comes later. But there is energy to spare, and a late "
        "opening only fires the engine late.",
        (
            best_at_starting,
            scarce_at_starting,
            lags_when_faster,
            later_when_faster,
            energy_to_spare_when_running,
            late_costs_no_energy_when_running,
        ),
    ),
    (
        "lesson neutral-and-e-gap",
        "So the E-gap is best where the spark is scarce: at the speed of starting.",
        (best_at_starting, scarce_at_starting),
    ),
]


def texts() -> dict[str, str]:
    """Everything that speaks of the coil, without its marks of emphasis."""
    found = {name: re.sub(r"\*", "", page.source) for name, page in pages().items()}
    found["the plot"] = f"{COIL_WHY} {COIL_ASSUMPTIONS}"
    for lesson in ("neutral-and-e-gap", "what-the-parts-are"):
        whole = find_lesson(lesson)
        found[f"lesson {lesson}"] = " ".join([whole.text, *(f"{s.text} {s.done}" for s in whole.steps)])
    return found


@pytest.mark.parametrize(("where", "sentence", "checks"), CLAIMS, ids=lambda v: v if isinstance(v, str) else "")
def test_what_is_said_of_the_coil_holds_on_every_shipped_magneto(where, sentence, checks):
    assert sentence in texts()[where], "a sentence that was changed is checked anew"
    for name in WIRED:
        for check in checks:
            assert check(find_magneto(name)), f"{name}: {check.__name__}"


def test_nothing_else_speaks_of_the_strongest_current_or_the_best_spark():
    """Sentences that the model contradicts at some speed were said once; none comes back unchecked."""
    claimed = " ".join(sentence for _, sentence, _ in CLAIMS)
    about = re.compile(r"[^.\n]*\b(strongest|best spark|most energy|best opening|best moment|scarce)\b[^.\n]*\.")
    elsewhere = ("about where most energy is left", "The most is to be had about")
    for where, text in texts().items():
        for found in about.finditer(text):
            sentence = found[0].strip(" |-")
            known = any(part in claimed for part in (sentence, sentence.rstrip("."))) or any(
                said in sentence for _, said, _ in CLAIMS
            )
            assert known or any(e in sentence for e in elsewhere), f"{where}: {sentence}"


@pytest.mark.parametrize("name", WIRED)
def test_the_checks_can_fail(name):
    """Three times the flux, a third of it, a quick start, a slow run: each contradicts what it should."""
    magneto = find_magneto(name)
    e = magneto.electrical
    strong = e.model_copy(update={"peak_flux_wb": 3 * e.peak_flux_wb})
    assert not usual_order_of_magnitude(magneto.model_copy(update={"electrical": strong}))
    assert not scarce_at_starting(magneto.model_copy(update={"electrical": strong}))
    quick = e.model_copy(update={"starting_rpm": 4 * e.starting_rpm})
    assert not best_at_starting(magneto.model_copy(update={"electrical": quick}))
    weak = e.model_copy(update={"peak_flux_wb": e.peak_flux_wb / 3})
    assert not energy_to_spare_when_running(magneto.model_copy(update={"electrical": weak}))
    slow = e.model_copy(update={"running_rpm": e.starting_rpm * 1.01})
    assert not late_costs_no_energy_when_running(magneto.model_copy(update={"electrical": slow}))
