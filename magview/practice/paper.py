"""Papers beside a job: the goals and the data sheet; alike whatever is hidden."""

from __future__ import annotations

from magview.bench.lead_words import LAMPS, tab_words
from magview.bench.state import Side
from magview.bench.words import breaker_end_sense, rotation_words
from magview.physics.engine.dead_centre import has_link_rod, stop_middle_deg
from magview.practice.contacts import manual_words
from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import Goal
from magview.practice.readings import UNITS
from magview.spec.breaker import EccentricScrew
from magview.spec.engine import Engine, Installation
from magview.spec.language import marked, number, tr
from magview.spec.magneto import Magneto
from magview.spec.units import MM_PER_INCH

_GOALS = {
    "e-gap": marked("the rotor is held at the E-gap, the straightedge on it and looked at square"),
    "opening": marked("the contacts open at the mark, seen by lamp and straightedge"),
    "gap": marked("the largest gap is within its limits, measured with blades"),
    "contacts": marked("the contacts are clean and flat, and were looked at"),
    "disc-zero": marked("the disc reads zero at No. 1's top dead centre, found from both sides"),
    "timing": marked("it fires where it should, read by lamp and disc with rotation"),
    "synchronised": marked("both magnetos fire together within what is allowed"),
    "lead": marked("the switch lead is sound and proved"),
    "marks": marked("the coupling was marked before it was taken apart"),
    "secured": marked("every screw and nut is tight, the plug in, the switch off, jumper and paper out"),
}
_BY_RULES_2 = {
    "contacts": marked("the contacts were looked at, and the right thing was decided of them"),
    "secured": marked(
        "it is closed up: every screw and nut tight, all that was clipped on or taken off as it was, the felt as "
        "the manual says, the lead proved again, the switch off, the chocks decided"
    ),
}
_CLOSED_ON_A_BENCH = marked(
    "it is closed up: timing light and straightedge off, paper out, every screw tight, the felt as the manual says"
)
_ON_EVERY_LOBE = {
    "e-gap": marked("the rotor is held at the E-gap, the straightedge on it and looked at square, on every lobe"),
    "opening": marked("the contacts open at the mark, seen by lamp and straightedge, on every lobe"),
    "gap": marked("the largest gap is within its limits, measured with blades, on every lobe"),
    "contacts": marked("the contacts are clean and flat, and were looked at, on every lobe"),
    "disc-zero": marked("the disc reads zero at No. 1's top dead centre, found from both sides, on every lobe"),
    "timing": marked("it fires where it should, read by lamp and disc with rotation, on every lobe"),
    "synchronised": marked("both magnetos fire together within what is allowed, on every lobe"),
    "lead": marked("the switch lead is sound and proved, on every lobe"),
    "marks": marked("the coupling was marked before it was taken apart, on every lobe"),
    "secured": marked(
        "every screw and nut is tight, the plug in, the switch off, jumper and paper out, on every lobe"
    ),
}
_READINGS = {
    "opening": marked("written down: how far past the mark the contacts open"),
    "gap": marked("written down: the largest gap"),
    "firing": marked("written down: where it fires before top dead centre"),
    "disc-zero": marked("written down: what the disc reads at top dead centre"),
    "lead": marked("written down: what the switch lead suffers from"),
}


def goal_words(exercise: Exercise) -> list[str]:
    """The goals, one line each, with their part of the marks."""
    whole = sum(goal.weight for goal in exercise.goals)
    return [
        tr("{goal} ({share:.0f} %)", goal=_goal(goal, exercise), share=100 * goal.weight / whole)
        for goal in exercise.goals
    ]


def _goal(goal: Goal, exercise: Exercise) -> str:
    if goal.reading is None and exercise.rules >= 2 and goal.goal == "secured" and exercise.installation is None:
        words = tr(_CLOSED_ON_A_BENCH)
    elif goal.reading is None and exercise.rules >= 2 and goal.goal in _BY_RULES_2:
        words = tr(_BY_RULES_2[goal.goal])
    elif goal.reading is None:
        words = tr(_ON_EVERY_LOBE[goal.goal] if goal.every_lobe else _GOALS[goal.goal])
    elif goal.within is None:
        words = tr(_READINGS[goal.reading])
    else:
        unit = UNITS[goal.reading]
        within = f"{number(goal.within)}{'' if unit == '°' else ' '}{unit}"
        words = tr("{reading}, within {within}", reading=tr(_READINGS[goal.reading]), within=within)
    if goal.side is None:
        return words
    return tr("{goal}, left magneto", goal=words) if goal.side == "left" else tr("{goal}, right magneto", goal=words)


def paper_lines(exercise: Exercise) -> list[tuple[str, str]]:
    """The data sheet of the magneto, and of the engine it is on: what, and how much."""
    lines = _of_magneto(exercise.unit)
    if any(goal.goal == "contacts" for goal in exercise.goals) and exercise.rules >= 2:
        lines.append((tr("Contacts"), manual_words(exercise)))
    if exercise.felt_drops is not None:
        lines.append((tr("Felt"), tr("oil only where it is dry; drops: {drops}", drops=exercise.felt_drops)))
    if exercise.tray.lamp:
        lines.append((tr("Timing light"), tr(LAMPS[exercise.tray.lamp_kind])))
    if exercise.installation is not None:
        lines += _of_engine(exercise.installation, exercise.sides)
    return lines


def limit_lines(exercise: Exercise) -> list[str]:
    """The limits that the task is about, a line each.

    Where only the rotor is to be held, or a thing written down, no gap and no opening is judged: naming their limits
    there would ask for measurements that the task does not want.
    """
    magneto, on = exercise.unit, exercise.installation
    low, high = magneto.gap_limits_mm
    judged = {goal.goal for goal in exercise.goals}
    if judged <= {"e-gap", "reading"}:
        tolerance = magneto.marks.tolerance_mm
        return [tr("edge within {tolerance:.3g} mm of its mark", tolerance=tolerance)] if "e-gap" in judged else []
    lines = [
        tr("largest gap {low} to {high} mm", low=low, high=high),
        tr("edge within {tolerance:.3g} mm of its mark as the contacts open", tolerance=magneto.marks.tolerance_mm),
    ]
    if on is not None:
        lines.append(tr("timing within {tolerance}° of crank", tolerance=on.engine.timing_tolerance_deg))
    return lines


_ECCENTRIC = {
    True: marked("eccentric, {size} mm throw; clockwise brings the contacts closer"),
    False: marked("eccentric, {size} mm throw; anticlockwise brings the contacts closer"),
}
_THREADED = {
    True: marked("threaded, {size} mm a turn; clockwise brings the contacts closer"),
    False: marked("threaded, {size} mm a turn; anticlockwise brings the contacts closer"),
}


def _fires(btdc_deg: float, side: Side | None) -> str:
    angle = number(btdc_deg)
    if side is None:
        return f"{angle}°"
    return tr("{angle}° (left)", angle=angle) if side == "left" else tr("{angle}° (right)", angle=angle)


def _of_magneto(magneto: Magneto) -> list[tuple[str, str]]:
    low, high = magneto.gap_limits_mm
    screw, marks = magneto.contact_screw, magneto.marks
    if isinstance(screw, EccentricScrew):
        words, size = _ECCENTRIC[screw.positive_is_clockwise], screw.throw_mm
    else:
        words, size = _THREADED[screw.positive_is_clockwise], screw.lead_mm
    lobes = len(magneto.cam.lobe_peaks_deg)
    return [
        (tr("Magneto"), magneto.name),
        (
            tr("Rotation"),
            tr("clockwise seen from the breaker end")
            if breaker_end_sense(magneto) > 0
            else tr("anticlockwise seen from the breaker end"),
        ),
        (tr("E-gap"), tr("{e_gap}° of rotor past neutral", e_gap=magneto.e_gap_deg)),
        (
            tr("Largest gap"),
            tr(
                "{low} to {high} mm ({low_in:.4f} to {high_in:.4f} in)",
                low=low,
                high=high,
                low_in=low / MM_PER_INCH,
                high_in=high / MM_PER_INCH,
            ),
        ),
        (
            tr("Rim marks"),
            tr(
                "one for each lobe; within {tolerance:.3g} mm, at {radius} mm radius",
                tolerance=marks.tolerance_mm,
                radius=marks.radius_mm,
            ),
        ),
        (tr("Contact screw"), tr(words, size=size)),
        (tr("Lobes"), tr("{lobes}, unequally spaced", lobes=lobes) if magneto.compensated else str(lobes)),
        (tr("Switch lead"), tab_words(magneto)),
    ]


def _of_engine(on: Installation, sides: tuple[Side, ...]) -> list[tuple[str, str]]:
    engine = on.engine
    btdc = {"left": engine.firing_btdc_deg.left, "right": engine.firing_btdc_deg.right}
    fires = ", ".join(_fires(btdc[side], side if len(sides) > 1 else None) for side in sides)
    lines = [
        (
            tr("Engine"),
            tr(
                "{name}; No. {cylinder} fires {fires} before top dead centre",
                name=engine.name,
                cylinder=engine.timing_cylinder,
                fires=fires,
            ),
        ),
        (tr("Crank"), rotation_words(engine)),
        (tr("Allowed"), tr("{tolerance}° of crank", tolerance=engine.timing_tolerance_deg)),
        (tr("Firing order"), "–".join(str(n) for n in engine.firing_order)),
        (
            tr("Coupling"),
            tr(
                "{magneto_teeth} teeth at the magneto, {drive_teeth} at the drive",
                magneto_teeth=on.disc.magneto_teeth,
                drive_teeth=on.disc.drive_teeth,
            ),
        ),
        (
            tr("Rotor"),
            tr(
                "{turns} turns a turn of the crank",
                turns=on.rotor_turns_per_crank_turn,
            ),
        ),
    ]
    if on.crank_turns_per_propeller_turn != 1.0:
        lines.append(
            (
                tr("Propeller"),
                tr(
                    "geared: 1° at the propeller is {turns}° of crank; timing is in crank degrees",
                    turns=on.crank_turns_per_propeller_turn,
                ),
            )
        )
    if has_link_rod(engine):
        lines.append((tr("Dead centre"), link_rod_words(engine)))
    if len(sides) > 1:
        lines.append(
            (
                tr("Together"),
                tr(
                    "within {tolerance}° of one another",
                    tolerance=engine.synchronising_tolerance_deg,
                ),
            )
        )
    return lines


_ARCS_DEG = (50.0, 60.0, 70.0, 80.0)
"""Usual distance between stop readings."""


def link_rod_words(engine: Engine) -> str:
    """Offset of the middle between two stop readings, where the timing cylinder has a link rod."""
    off = [(arc, stop_middle_deg(engine, arc)) for arc in _ARCS_DEG]
    amounts = ", ".join(
        tr("{off:deg} at {arc}°", off=abs(past), arc=arc) for arc, past in off
    )  # fmt: skip
    words = (
        marked(
            "No. {cylinder} has a link rod: the top lies before the middle of the stop readings, by {amounts} apart"
        )
        if off[0][1] > 0
        else marked(
            "No. {cylinder} has a link rod: the top lies after the middle of the stop readings, by {amounts} apart"
        )
    )
    return tr(words, cylinder=engine.timing_cylinder, amounts=amounts)
