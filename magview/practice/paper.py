"""What lies on paper beside a job: what counts as done, and the data sheet; alike whatever is hidden."""

from __future__ import annotations

from magview.bench.state import Side
from magview.bench.words import direction_word
from magview.practice.exercise import Exercise, Goal
from magview.practice.readings import UNITS
from magview.spec.engine import Installation
from magview.spec.magneto import EccentricScrew, Magneto
from magview.spec.units import MM_PER_INCH

_GOALS = {
    "e-gap": "the rotor is held at the E-gap, the straightedge on it and looked at square",
    "opening": "the contacts open at the mark, seen by lamp and straightedge",
    "gap": "the largest gap is within its limits, measured with blades",
    "contacts": "the contacts are clean and flat, and were looked at",
    "disc-zero": "the disc reads zero at No. 1's top dead centre, found from both sides",
    "timing": "it fires where it should, read by lamp and disc with rotation",
    "synchronised": "both magnetos fire together within what is allowed",
    "lead": "the switch lead is sound and proved",
    "marks": "the coupling was marked before it was taken apart",
    "secured": "every screw and nut is tight, the plug in, the switch off",
}
_READINGS = {
    "opening": "how far past the mark the contacts open",
    "gap": "the largest gap",
    "firing": "where it fires before top dead centre",
    "disc-zero": "what the disc reads at top dead centre",
    "lead": "what the switch lead suffers from",
}


def goal_words(exercise: Exercise) -> list[str]:
    """What counts as done, one line a goal, with its part of the marks."""
    whole = sum(goal.weight for goal in exercise.goals)
    return [f"{_goal(goal)} ({100 * goal.weight / whole:.0f} %)" for goal in exercise.goals]


def _goal(goal: Goal) -> str:
    side = f", {goal.side} magneto" if goal.side is not None else ""
    if goal.reading is None:
        every = ", on every lobe" if goal.every_lobe else ""
        return f"{_GOALS[goal.goal]}{every}{side}"
    within = f", within {goal.within:g} {UNITS[goal.reading]}".replace(" °", "°") if goal.within is not None else ""
    return f"written down: {_READINGS[goal.reading]}{within}{side}"


def paper_lines(exercise: Exercise) -> list[tuple[str, str]]:
    """The data sheet of the magneto, and of the engine it is on: what, and how much."""
    lines = _of_magneto(exercise.unit)
    if exercise.installation is not None:
        lines += _of_engine(exercise.installation, exercise.sides)
    return lines


def _of_magneto(magneto: Magneto) -> list[tuple[str, str]]:
    low, high = magneto.gap_limits_mm
    screw, marks = magneto.contact_screw, magneto.marks
    closer = "clockwise" if screw.positive_is_clockwise else "anticlockwise"
    travel = (
        f"eccentric, {screw.throw_mm:g} mm throw"
        if isinstance(screw, EccentricScrew)
        else f"threaded, {screw.lead_mm:g} mm a turn"
    )
    return [
        ("Magneto", magneto.name),
        ("Rotation", f"{direction_word(1, magneto.rotation, 'breaker end')} seen from the breaker end"),
        ("E-gap", f"{magneto.e_gap_deg:g}° of rotor past neutral"),
        ("Largest gap", f"{low:g} to {high:g} mm ({low / MM_PER_INCH:.4f} to {high / MM_PER_INCH:.4f} in)"),
        ("Rim mark", f"within {marks.tolerance_mm:.3g} mm, at {marks.radius_mm:g} mm radius"),
        ("Contact screw", f"{travel}; {closer} brings the contacts closer"),
        ("Lobes", f"{len(magneto.cam.lobe_peaks_deg)}{', unequally spaced' if magneto.compensated else ''}"),
    ]


def _of_engine(on: Installation, sides: tuple[Side, ...]) -> list[tuple[str, str]]:
    engine = on.engine
    btdc = {"left": engine.firing_btdc_deg.left, "right": engine.firing_btdc_deg.right}
    fires = ", ".join(f"{btdc[side]:g}°{f' ({side})' if len(sides) > 1 else ''}" for side in sides)
    lines = [
        ("Engine", f"{engine.name}; No. 1 fires {fires} before top dead centre"),
        ("Allowed", f"{engine.timing_tolerance_deg:g}° of crank"),
        ("Firing order", "–".join(str(n) for n in engine.firing_order)),
        ("Coupling", f"{on.coupling.magneto_teeth} teeth at the magneto, {on.coupling.drive_teeth} at the drive"),
        ("Rotor", f"{on.rotor_turns_per_crank_turn:g} turns a turn of the crank"),
    ]
    if len(sides) > 1:
        lines.append(("Together", f"within {engine.synchronising_tolerance_deg:g}° of one another"))
    return lines
