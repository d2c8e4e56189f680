"""Readings taken over from the bench to the sheet: one function for one action, so that no figure is typed twice.

Each takes a sheet and gives a sheet; readings of the stage that the bench does not have stay as they were.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import replace
from typing import Any

from magview.bench.lamp import refuse_unasked
from magview.bench.placing import new_bench
from magview.bench.reach_words import out_of_reach_words
from magview.bench.state import (
    BenchState,
    Side,
    circuit_now,
    crank_deg,
    gap_now_mm,
    lamp_reading_deg,
    mounting_of,
    opening_deg,
    readings,
)
from magview.bench.sureness import read_internal
from magview.bench.timing import timing_plan
from magview.job.derived import disc_zero_deg
from magview.job.parts import Sure, Uncertainty
from magview.job.sheet import Job, change, change_in, title_of
from magview.job.stages import LobeReading, TrialRecord
from magview.physics.cam.setting import Adjustment
from magview.physics.engine.coupling import Move
from magview.physics.engine.crank import strokes
from magview.physics.engine.timing_light import lamp_tells
from magview.physics.uncertainty.instruments import Instrument
from magview.physics.uncertainty.measurement import Outcome
from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.spec.magneto import Condition, Magneto


def take_bench(job: Job, state: BenchState) -> Job:
    """Take over what the bench works with: magneto or installation, and the limits of their files.

    Limits that no file gives (drops at the ground run) stay as entered.
    """
    magneto, engaged = _as_new(state.magneto), state.engaged
    installation = None if engaged is None else engaged.installation.model_copy(update={"magneto": magneto})
    low, high = magneto.gap_limits_mm
    limits: dict[str, Any] = {
        "gap_low_mm": low,
        "gap_high_mm": high,
        "mark_tolerance_mm": magneto.marks.tolerance_mm,
        "source": tr("file of the {name}", name=magneto.name)[:120],
    }
    job = change(job, installation=installation, magneto_file=magneto if installation is None else None)
    if engaged is not None:
        engine = engaged.installation.engine
        limits |= {
            "left_btdc_deg": engaged.left.wanted_btdc_deg,
            "right_btdc_deg": engaged.right.wanted_btdc_deg,
            "timing_tolerance_deg": engine.timing_tolerance_deg,
            "synchronising_tolerance_deg": engine.synchronising_tolerance_deg,
        }
        if engine.drop_rpm is not None:
            limits["drop_low_rpm"], limits["drop_rpm"] = engine.drop_rpm
        if engine.drop_difference_rpm is not None:
            limits["drop_difference_rpm"] = engine.drop_difference_rpm
        if engaged.installation.position == "single":
            limits["right_btdc_deg"] = None
        job = change_in(job, "magneto", position=engaged.installation.position)
    return change_in(job, "limits", **limits)


def _as_new(magneto: Magneto) -> Magneto:
    # Wear and pips are readings of a stage, not what the magneto is.
    wear = {"heel_wear_mm": 0.0, "pip_height_mm": 0.0}
    return magneto.model_copy(update={"condition": magneto.condition.model_copy(update=wear)})


# ---------------------------------------------------------------------- readings


def switch_lead(job: Job, state: BenchState) -> Job:
    """Note what meter and lamp say as plug and switch stand now. Raises SpecError where they can tell nothing."""
    way, now = "on" if state.lead.switch_on else "off", circuit_now(state)
    # The lamp tells of the lead only while the contacts do not ground the primary themselves.
    told = gap_now_mm(state) > 0.0 and lamp_tells(state.lamp_kind, coil_connected=True)
    lamp = now.lamp_sees_closed if told else None
    if state.lead.plug_in:
        if lamp is None:
            raise SpecError(
                tr("with the plug in and the contacts closed nothing tells of the lead: open the contacts")
            )
        return change_in(job, "switch_lead", **{f"lamp_grounded_switch_{way}": lamp})
    noted = {f"meter_grounded_switch_{way}": now.meter_sees_ground}
    if lamp is not None:
        noted["lamp_grounded_plug_out"] = lamp
    return change_in(job, "switch_lead", **noted)


def dead_centre(job: Job, first_stop_deg: float, second_stop_deg: float, disc: str = "") -> Job:
    """Note the disc's two readings at a positive stop [crank deg]."""
    return change_in(
        job, "dead_centre", first_stop_deg=float(first_stop_deg), second_stop_deg=float(second_stop_deg), disc=disc
    )


def stroke(job: Job, state: BenchState) -> Job:
    """Note No. 1's stroke where the crank stands. Raises SpecError without an engine."""
    crank = crank_deg(state)
    assert state.engaged is not None
    return change_in(job, "dead_centre", stroke=str(strokes(state.engaged.installation.engine, crank)))


def as_found(job: Job, state: BenchState, tools: Sequence[Instrument] = ()) -> Job:
    """Note the bench's setting as found, with `tools` as these would read it; the timing where the lamp was read."""
    job = change_in(job, "as_found", **_setting(state, tools))
    if state.engaged is None or not _lamp(state):
        return job
    return timing_found(job, state)


def timing_found(job: Job, state: BenchState) -> Job:
    """Note the timing alone as found. Raises SpecError without an engine or a lamp reading that stands."""
    read = _lamp(state)
    if not read:
        raise SpecError(tr(_NOT_READ))
    _same_zero(job)
    return change_in(job, "as_found", **read)


def contacts(job: Job, state: BenchState) -> Job:
    """Note wear and pips that were entered. Raises SpecError where none were."""
    noted = {name: value for name, value in _worn(state).items() if value is not None}
    if not noted:
        raise SpecError(tr("neither wear nor a pip has been set on the bench yet"))
    return change_in(job, "contacts", **noted)


def internal_timing(job: Job, state: BenchState, tools: Sequence[Instrument] = ()) -> Job:
    """Note the setting as left. It counts as read after tightening when lock screw and clamps are tight."""
    tight = state.lock_tight and state.clamps_tight
    return change_in(job, "internal_timing", **_setting(state, tools), read_after_tightening=tight)


def planned_setting(job: Job, plan: Adjustment, gap_mm: float) -> Job:
    """Note where an adjustment puts backplate and screw for a gap [mm]. Raises SpecError where it has no answer."""
    if not plan.reachable:
        raise SpecError(tr("this gap cannot be set: {reason}", reason=out_of_reach_words(plan)))
    return change_in(
        job,
        "internal_timing",
        planned_backplate_deg=_tidy(plan.backplate_deg),
        planned_screw_deg=_tidy(plan.screw_deg),
        planned_gap_mm=gap_mm,
    )


def lobes(job: Job, state: BenchState) -> Job:
    """Note every lobe."""
    found = readings(state)
    rows = zip(found.e_gap_error_deg, found.blade_gap_mm, found.dwell_deg, strict=True)
    return change_in(
        job, "lobes",
        lobes=tuple(
            LobeReading(opening_error_deg=_known(error), gap_mm=_known(gap), dwell_deg=_known(dwell))
            for error, gap, dwell in rows
        ),
    )  # fmt: skip


def marks(job: Job, state: BenchState) -> Job:
    """Note the coupling's marks as painted and how they stand apart.

    Raises SpecError without an engine, and where no marks were painted.
    """
    if state.engaged is None:
        raise SpecError(tr("this magneto is not on an engine: there is no coupling to mark"))
    if not state.engaged.mounting.painted:
        raise SpecError(tr("no marks were painted on the bench yet; that is done on its Engine page"))
    magneto, disc = state.engaged.mounting.marks_apart
    return change_in(
        job, "marks", drive_flange_marked=True, disc_marked=True, magneto_flange_marked=True,
        magneto_from_disc_teeth=magneto, disc_from_drive_teeth=disc,
    )  # fmt: skip


# ---------------------------------------------------------------------- trials, planner, timing


def trial(
    backplate_deg: float, gap_low_mm: float, gap_high_mm: float | None, opening_error_deg: float = 0.0
) -> TrialRecord:
    """One trial; an upper end of None or infinity means that no blade was refused."""
    high = None if gap_high_mm is None or math.isinf(gap_high_mm) else float(gap_high_mm)
    values = {
        "backplate_deg": float(backplate_deg),
        "gap_low_mm": float(gap_low_mm),
        "gap_high_mm": high,
        "opening_error_deg": float(opening_error_deg),
    }
    return TrialRecord.model_validate(values)


def trials(job: Job, made: Iterable[TrialRecord]) -> Job:
    """Note all trials made, in place of those noted before."""
    return change_in(job, "internal_timing", trials=tuple(made))


def tooth_plan(job: Job, state: BenchState, side: Side, move: Move | None = None) -> Job:
    """Note the reading as found, what is wanted, and the planned move: the planner's first unless another is given.

    Raises SpecError without an engine, a lamp reading that stands, or a plan.
    """
    reads = lamp_reading_deg(state, side, as_found=True)
    if state.engaged is not None:
        refuse_unasked(state, side)
    chosen = move or next(iter(timing_plan(state, side, most=1)), None)
    if chosen is None or state.engaged is None:
        raise SpecError(tr("with this setting the contacts never open and close, so there is nothing to plan"))
    if reads is None:
        raise SpecError(tr(_NOT_READ))
    _same_zero(job)
    wanted = state.engaged.left if side == "left" else state.engaged.right
    return change_in(
        job, "tooth_shift", side=side, reads_btdc_deg=_tidy(reads), wanted_btdc_deg=wanted.wanted_btdc_deg,
        planned_magneto_teeth=chosen.magneto_teeth, planned_disc_teeth=chosen.disc_teeth,
        planned_btdc_deg=chosen.result_btdc_deg,
    )  # fmt: skip


def tooth_result(job: Job, state: BenchState, side: Side) -> Job:
    """Note the teeth moved. Where it fires afterwards is for the lamp to say, not for the bench to reckon.

    Raises SpecError without an engine, and where no tooth was moved.
    """
    if state.engaged is None:
        raise SpecError(tr("this magneto is not on an engine"))
    mounting = mounting_of(state.engaged, side)
    if not (mounting.magneto_teeth or mounting.disc_teeth):
        raise SpecError(tr("no tooth has been moved on the bench since the lamp was read"))
    return change_in(
        job,
        "tooth_shift",
        side=side,
        moved_magneto_teeth=mounting.magneto_teeth,
        moved_disc_teeth=mounting.disc_teeth,
    )


def synchronising(job: Job, state: BenchState) -> Job:
    """Note where the lamp says that both fire. Raises SpecError without an engine or a reading that stands."""
    read = _lamp(state)
    if not read:
        raise SpecError(tr(_NOT_READ))
    _same_zero(job)
    return change_in(job, "synchronising", **read)


# ---------------------------------------------------------------------- how sure


def sure(outcome: Outcome) -> Sure:
    """One quantity's uncertainty as the sheet keeps it."""
    linear, quantity = outcome.linear, outcome.quantity
    return Sure.model_validate(
        {
            "value": float(linear.estimate),
            "expanded_uncertainty": float(linear.expanded_uncertainty),
            "coverage_factor": float(linear.coverage_factor),
            "coverage_probability": float(linear.probability),
            "low": float(quantity.low),
            "high": float(quantity.high),
            # Sums of probabilities may pass 1 by a last bit.
            "probability_in_limits": min(max(float(outcome.probability_in_limits), 0.0), 1.0),
            "matters_most": outcome.matters_most.input.name[:120],
        }
    )


_FIELD = {
    "opening_error": "opening_error_deg",
    "gap": "gap_mm",
    "left": "left_btdc_deg",
    "right": "right_btdc_deg",
    "difference": "difference_deg",
}


def uncertainty(job: Job, outcomes: Sequence[Outcome]) -> Job:
    """Note what `judge` or `judge_linear` found: of the setting to internal timing, of firing to synchronising."""
    found = {_FIELD[outcome.quantity.key]: sure(outcome) for outcome in outcomes}
    stage = "internal_timing" if "gap_mm" in found else "synchronising"
    return change_in(job, stage, uncertainty=Uncertainty.model_validate(found))


def of_readings(state: BenchState, outcomes: Sequence[Outcome]) -> tuple[Outcome, ...]:
    """Those of timing to the engine whose magneto's lamp reading stands. Raises SpecError where none does."""
    read = {side for side in ("left", "right") if f"{side}_btdc_deg" in _lamp(state)}
    needs = {"left": {"left"}, "right": {"right"}, "difference": {"left", "right"}}
    kept = tuple(outcome for outcome in outcomes if needs[outcome.quantity.key] <= read)
    if not kept:
        raise SpecError(tr(_NOT_READ))
    return kept


# ---------------------------------------------------------------------- the bench again, for the drawings


def bench_as(job: Job, stage: str) -> BenchState | None:
    """The bench as it was when a setting was read ("as_found" or "internal_timing"), rotor where it opens.

    None where the sheet does not say what the bench worked with, or how it was set.
    """
    setting, magneto = getattr(job, stage), job.described
    if magneto is None or magneto.assumed or setting.backplate_deg is None or setting.screw_deg is None:
        return None
    state = new_bench(job.installation if job.installation is not None else magneto)
    wear = {"heel_wear_mm": setting.heel_wear_mm or 0.0, "pip_height_mm": setting.pip_height_mm or 0.0}
    condition: Condition = magneto.condition.model_copy(update=wear)
    state = replace(
        state,
        magneto=magneto.model_copy(update={"condition": condition}),
        backplate_deg=setting.backplate_deg,
        screw_deg=setting.screw_deg,
    )
    opens = opening_deg(state)
    return replace(state, rotor_deg=opens if math.isfinite(opens) else magneto.e_gap_deg)


def _setting(state: BenchState, tools: Sequence[Instrument]) -> dict[str, Any]:
    found = readings(state)
    values: dict[str, Any] = {
        "backplate_deg": _tidy(state.backplate_deg),
        "screw_deg": _tidy(state.screw_deg),
        "opening_error_deg": _known(found.e_gap_error_deg[0]),
        "mark_offset_mm": _known(found.mark_offset_mm),
        # The sheet's gap is by blades, and a blade rides on the pip.
        "gap_mm": _known(found.blade_gap_mm[0]),
        **_worn(state),
        "instruments": tr("the bench"),
    }
    if tools:
        read = read_internal(state, tools)
        values |= {"mark_offset_mm": read.mark_offset_mm, "gap_mm": read.blade_mm, "opening_error_deg": None}
        values["instruments"] = ", ".join(tool.name for tool in tools if tool.role in ("rule", "blade", "opening"))[
            :120
        ]
    return values


def _worn(state: BenchState) -> dict[str, float | None]:
    """Pip and wear: what was entered, or stands in the magneto's file; None for the nought a bench begins with."""
    condition, touched = state.magneto.condition, state.touched
    return {
        "pip_height_mm": condition.pip_height_mm if "pip" in touched or condition.pip_height_mm else None,
        "heel_wear_mm": condition.heel_wear_mm if "wear" in touched or condition.heel_wear_mm else None,
    }


def _same_zero(job: Job) -> None:
    """The bench counts from the true top: what it has is no reading of a disc whose zero is elsewhere."""
    zero = disc_zero_deg(job)
    if zero:
        raise SpecError(
            tr(
                "the bench counts from the true top dead centre; this sheet adds {zero:+deg} to every "
                "reading, as its disc was not set to zero there: set the disc to zero and say so at "
                "“{stage}”, or type "
                "what it reads",
                zero=zero,
                stage=title_of("dead_centre"),
            )
        )


_NOT_READ = marked(
    "no reading of the lamp stands on the bench: enter on its Engine page what the lamp says now, after contacts and "
    "teeth were last moved"
)


def _lamp(state: BenchState) -> dict[str, float]:
    """Reading of the lamp for each magneto, while it stands; none for a magneto that was not read."""
    if state.engaged is None:
        raise SpecError(tr("this magneto is not on an engine"))
    sides: tuple[Side, ...] = ("left",) if state.engaged.installation.position == "single" else ("left", "right")
    read = {f"{side}_btdc_deg": lamp_reading_deg(state, side) for side in sides}
    return {field: _tidy(value) for field, value in read.items() if value is not None}


def _known(value: Any) -> float | None:
    """A reading; None for what does not exist."""
    number = float(value)
    return number if math.isfinite(number) else None


def _tidy(degrees: float) -> float:
    # A reading goes through the rotor's angle and back; a billionth of a degree is no reading, and −0 is 0.
    return round(degrees, 9) + 0.0
