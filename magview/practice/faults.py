"""From an exercise and a seed to the magneto as it is found: every hidden fault drawn and put in."""

from __future__ import annotations

from dataclasses import dataclass, replace

from magview.bench.apply_lead import with_fault
from magview.bench.reach_words import out_of_reach_words
from magview.bench.state import BenchState, Engaged, Mounting, Side
from magview.physics.cam.setting import internal_timing
from magview.physics.electric.circuit import Lead, circuit
from magview.physics.engine.coupling import finest_shift_deg, rotor_shift_deg
from magview.practice.contacts import faces_found
from magview.practice.draws import between, uniform, whole
from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import Fault
from magview.practice.state import SAFE_THINGS, Kept, Practice, Seat, first_spark_deg, view
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.spec.magneto import Condition, Magneto

MAX_SEED = 2**53
"""Seeds are whole numbers that every program that reads JSON keeps exactly."""

_UNKNOWN_RESIDUE = 0.4
"""Largest miss of a coupling well timed, in its finest steps: half would be a tie."""


@dataclass(frozen=True)
class Drawn:
    """The sizes drawn for one magneto, with their signs; 0 where a fault is not there."""

    opening: float = 0.0
    gap: float = 0.0
    plate: float = 0.0
    creep: float = 0.0
    lobe_low: float = 0.0
    lobe: int = 0
    pip: float = 0.0
    backlash: float = 0.0
    teeth: int = 0
    disc_teeth: int = 0
    vernier: int = 0
    disc_zero: float = 0.0
    wrong_stroke: bool = False
    rotor_at_neutral: bool = False
    lead: str = "sound"
    contacts: str = ""
    """Look of the contacts' faces; "" where nothing was drawn of them."""
    dry_felt: bool = False


def drawn(exercise: Exercise, seed: int, side: Side) -> Drawn:
    """Draw the faults of one magneto. Each hangs on the seed, the side and its own kind alone."""
    sizes: dict[str, object] = {}
    for fault in exercise.faults:
        if fault.side in (None, side) and uniform(seed, side, fault.kind, "chance") < fault.chance:
            sizes.update(_one(exercise, seed, side, fault))
    return Drawn(**sizes)  # type: ignore[arg-type]


def _one(exercise: Exercise, seed: int, side: Side, fault: Fault) -> dict[str, object]:
    kind = fault.kind
    back = fault.way == "minus" or (fault.way == "either" and uniform(seed, side, kind, "way") < 0.5)
    sign = -1 if back else 1
    match kind:
        case "lead":
            return {"lead": fault.among[whole(seed, 0, len(fault.among) - 1, side, kind, "among")]}
        case "wrong-stroke" | "rotor-at-neutral" | "dry-felt":
            return {kind.replace("-", "_"): True}
        case "contacts":
            grade = fault.among[whole(seed, 0, len(fault.among) - 1, side, kind, "among")]
            mound = {"pip": between(seed, *fault.size, side, kind, "size")} if grade == "mound" else {}
            return {"contacts": grade, **mound}
        case "teeth" | "disc-teeth" | "vernier":
            size = whole(seed, int(fault.size[0]), int(fault.size[1]), side, kind, "size")
            return {kind.replace("-", "_"): sign * size}
        case "lobe-low":
            lobes = len(exercise.unit.cam.lobe_peaks_deg)
            lobe = fault.lobe or whole(seed, 1, lobes, side, kind, "lobe")
            return {"lobe_low": between(seed, *fault.size, side, kind, "size"), "lobe": lobe}
        case _:
            return {kind.replace("-", "_"): sign * between(seed, *fault.size, side, kind, "size")}


def begin(exercise: Exercise, seed: int) -> Practice:
    """The practice room as the trainee finds it. Raises SpecError for a seed that is none, or faults the magneto
    cannot have."""
    if isinstance(seed, bool) or not isinstance(seed, int) or not 0 <= seed < MAX_SEED:
        raise SpecError(
            tr(
                "the seed is {seed}; it must be a whole number from 0 to {most}",
                seed=str(seed)[:40],
                most=MAX_SEED - 1,
            )
        )
    rooms = {side: _room(exercise, seed, side) for side in exercise.sides}
    first = rooms[exercise.sides[0]]
    if not exercise.both_sides:
        return first
    right = rooms["right"]
    assert first.bench.engaged is not None and right.bench.engaged is not None
    engaged = replace(first.bench.engaged, right=right.bench.engaged.right)
    kept = Kept(
        right.bench.magneto,
        right.bench.rotor_deg,
        right.bench.held,
        right.bench.backplate_deg,
        right.bench.screw_deg,
        right.bench.lock_tight,
        right.bench.clamps_tight,
        right.mounted,
        0.0,
        right.seat,
    )
    crossed = first.bench.lead.crossed or right.bench.lead.crossed
    bench = replace(
        first.bench,
        engaged=engaged,
        lead=replace(first.bench.lead, crossed=crossed),
        other_lead=replace(right.bench.lead, crossed=crossed),
    )
    both = replace(first, bench=bench, other=kept)
    return view(view(both, "right"), "left")


def _room(exercise: Exercise, seed: int, side: Side) -> Practice:
    """One magneto of the exercise by itself."""
    start, found = exercise.start, drawn(exercise, seed, side)
    # An exercise in which the tab may be bent says that there is one, also of a magneto whose file is silent.
    tab_told = any("tab" in fault.among for fault in exercise.faults)
    magneto = _worn(exercise.unit, found, tab_told)
    plate, screw = _setting(magneto, found)
    lead = Lead(switch_on=start.switch_on, other_on=start.switch_on)
    if found.lead != "sound":
        lead = with_fault(lead, found.lead, True)
    bench = BenchState(
        magneto,
        _rotor(exercise, seed, side),
        plate,
        screw,
        held=start.rotor != "neutral" or (exercise.installation is not None and start.mounted),
        lock_tight=not start.slack,
        clamps_tight=not start.slack,
        lead=lead,
        other_lead=replace(Lead(), switch_on=lead.other_on, other_on=lead.switch_on, crossed=lead.crossed),
    )
    off = replace(lead, plug_in=False, switch_on=False, other_on=False)
    proved = start.proved and circuit(off, contacts_closed=True, tab=False).meter_sees_ground
    seat = Seat(
        faces=faces_found(found.contacts, found.pip),
        felt_dry=found.dry_felt,
        marked=start.marked,
        proved=proved,
    )
    if exercise.installation is None:
        return Practice(exercise, seed, bench, seat)
    crank = between(seed, -180.0, 540.0, "crank")
    places = internal_timing(magneto).places_deg
    mounting = _mounting(exercise, seed, side, found, first_spark_deg(exercise.installation, places))
    ratio = exercise.installation.rotor_turns_per_crank_turn
    engaged = Engaged(exercise.installation, mounting, mounting, side, None if start.mounted else crank)
    if start.mounted:
        bench = replace(bench, rotor_deg=mounting.phase_deg + ratio * crank)
    bench = replace(bench, engaged=engaged)
    return Practice(
        exercise,
        seed,
        bench,
        replace(seat, nuts_tight=start.mounted),
        disc_error_deg=0.0 if start.disc_at_zero else found.disc_zero,
        stop_reach_deg=between(seed, 24.0, 40.0, "stop"),
        chocked=start.chocked,
        plugs_out=start.plugs_out,
        seen_to=frozenset(SAFE_THINGS) if start.made_safe else frozenset(),
    )


def _worn(magneto: Magneto, found: Drawn, tab_told: bool) -> Magneto:
    """The magneto with what the faults have done to it; its file's own creep and play are the exercise's to give."""
    low = [0.0] * len(magneto.cam.lobe_peaks_deg)
    if found.lobe:
        low[found.lobe - 1] = -found.lobe_low
    condition = Condition(
        heel_wear_mm=magneto.condition.heel_wear_mm,
        pip_height_mm=found.pip,
        face_burn_mm=magneto.condition.face_burn_mm,
        lobe_angle_error_deg=magneto.condition.lobe_angle_error_deg,
        lobe_lift_error_mm=tuple(low) if found.lobe else magneto.condition.lobe_lift_error_mm,
        screw_creep_deg=found.creep,
        coupling_backlash_deg=found.backlash,
    )
    if found.lobe and not magneto.top_lift_mm > found.lobe_low + 0.05:
        raise SpecError(
            tr(
                "lobe-low takes {lobe_low} mm off a lobe that lifts {top_lift:.3g} mm",
                lobe_low=found.lobe_low,
                top_lift=magneto.top_lift_mm,
            )
        )
    update: dict[str, object] = {"condition": condition}
    if tab_told and magneto.grounding_tab is None:
        update["grounding_tab"] = True
    return magneto.model_copy(update=update)


def _setting(magneto: Magneto, found: Drawn) -> tuple[float, float]:
    """Return where plate and screw are found [deg], at the end of their travel if need be.

    Rounded to a millionth of a degree: what the mathematics library of a machine does to the last bit must not
    make two attempts differ.
    """
    timing = internal_timing(magneto)
    wanted = max(magneto.designed_setting.gap_mm + found.gap, 0.0)
    answer = timing.adjust(wanted)
    if not answer.reachable:
        answer = timing.adjust(answer.nearest_gap_mm) if answer.nearest_gap_mm >= 0.0 else answer
    if not answer.reachable:
        raise SpecError(
            tr(
                "{name} cannot be set for a gap of {wanted:mm}: {reason}",
                name=magneto.name,
                wanted=wanted,
                reason=out_of_reach_words(answer),
            )
        )
    plate = answer.backplate_deg + timing.ratio * found.opening + found.plate
    low, high = magneto.backplate.range_deg
    low_screw, high_screw = magneto.contact_screw.range_deg
    screw = min(max(answer.screw_deg, low_screw), high_screw)
    return min(max(round(plate, 6), low), high), min(max(round(screw, 6), low_screw), high_screw)


def _rotor(exercise: Exercise, seed: int, side: Side) -> float:
    """Return where the rotor of a magneto off the engine is found [deg]."""
    poles, place = exercise.unit.poles, exercise.unit.e_gap_deg
    pitch = 360.0 / poles
    turns = whole(seed, 0, poles - 1, side, "rotor", "pole")
    match exercise.start.rotor:
        case "neutral":
            return turns * pitch
        case "e-gap":
            return place
        case "anywhere":
            return turns * pitch + between(seed, 0.0, pitch, side, "rotor", "angle")


def _mounting(exercise: Exercise, seed: int, side: Side, found: Drawn, place_deg: float) -> Mounting:
    """Mesh the magneto: timed as wanted within what the coupling can do, and then the faults."""
    installation = exercise.installation
    assert installation is not None
    teeth, ratio = installation.disc, installation.rotor_turns_per_crank_turn
    wanted = installation.engine.firing_btdc_deg.left if side == "left" else installation.engine.firing_btdc_deg.right
    residue = finest_shift_deg(teeth.magneto_teeth, teeth.drive_teeth) * _UNKNOWN_RESIDUE
    moved = rotor_shift_deg(
        teeth.magneto_teeth, teeth.drive_teeth, found.teeth + found.vernier, found.disc_teeth - found.vernier
    )
    phase = place_deg + ratio * wanted + between(seed, -residue, residue, side, "residue") + moved
    if found.rotor_at_neutral:
        phase -= exercise.unit.e_gap_deg
    if found.wrong_stroke:
        phase += 360.0 * ratio
    return Mounting(round(phase, 6), wanted, wanted)
