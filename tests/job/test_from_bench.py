"""What the bench hands to the sheet is what the bench says, and nothing is typed twice."""

from __future__ import annotations

import importlib.util
from dataclasses import replace
from pathlib import Path

import pytest

from magview.bench.actions import (
    GrowPip,
    MoveTeeth,
    PullPlug,
    ReadLamp,
    SetBoth,
    SetLeadFault,
    SwitchIgnition,
    TightenClamps,
    TightenLock,
    TurnCrank,
    WearHeel,
)
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import firing_btdc_deg, readings
from magview.bench.sureness import INTERNAL_ROLES, read_internal, tool_for
from magview.bench.verdict import blade_words
from magview.job import from_bench
from magview.job.judge import verdicts
from magview.job.sheet import as_data, new_job
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.coupling import plan
from magview.physics.uncertainty.instruments import instrument
from magview.physics.uncertainty.measurement import judge_linear
from magview.physics.uncertainty.setting_uncertainty import internal_measurement
from magview.spec.base import SpecError
from magview.spec.library import find_installation, find_magneto
from tests.job.sheets import demo
from tests.magnetos import on_the_published_coupling


def bench(*actions):
    state = new_bench(on_the_published_coupling())
    for action in actions:
        state = apply(state, action)
    return state


def test_limits_come_from_the_files_and_typed_ones_stay():
    job = from_bench.take_bench(from_bench.change_in(new_job(), "limits", drop_rpm=120.0), bench())
    limits = job.limits
    # As the magneto of common practice has them: 0.008 to 0.010 in, 1/32 in, 25° ± 1°.
    assert (limits.gap_low_mm, limits.gap_high_mm) == pytest.approx((0.008 * 25.4, 0.010 * 25.4))
    assert limits.mark_tolerance_mm == pytest.approx(25.4 / 32)
    assert (limits.left_btdc_deg, limits.right_btdc_deg, limits.timing_tolerance_deg) == (25.0, 25.0, 1.0)
    assert limits.drop_rpm == 120.0
    assert job.installation == on_the_published_coupling()
    assert job.magneto.position == "left"


def test_a_magneto_off_the_engine_brings_its_own_limits_only():
    job = from_bench.take_bench(new_job(), new_bench(find_magneto("nine-radial")))
    assert job.installation is None and job.described == find_magneto("nine-radial")
    assert job.limits.timing_tolerance_deg is None
    for feed in (from_bench.marks, from_bench.stroke, from_bench.synchronising):
        with pytest.raises(SpecError):
            feed(job, new_bench(find_magneto("nine-radial")))


def test_the_plate_alone_moves_the_opening_by_as_much_and_leaves_the_gap():
    """Guide, theory-setting: the plate alone moves the opening, never the largest gap (cam on the rotor: 1 to 1)."""
    job = from_bench.as_found(new_job(), bench(SetBoth(1.5, 0.0)))
    assert job.as_found.opening_error_deg == pytest.approx(1.5, abs=1e-9)
    assert job.as_found.gap_mm == pytest.approx(0.009 * 25.4, abs=1e-12)
    assert job.as_found.backplate_deg == 1.5
    # Straightedge at the 36 mm rim: 36·tan 1.5°.
    assert job.as_found.mark_offset_mm == pytest.approx(0.94270, abs=1e-4)
    # 1.5° of rotor late is 1.5/0.875° of crank late with the teeth as they were: the bench says so,
    # and the sheet does not, for nobody has read it.
    assert firing_btdc_deg(bench(SetBoth(1.5, 0.0)), "left") == pytest.approx(25.0 - 1.5 / 0.875, abs=1e-9)
    assert job.as_found.left_btdc_deg is None


def test_wear_and_pips_are_readings_not_the_magneto():
    state = bench(WearHeel(0.05), GrowPip(0.02))
    job = from_bench.as_found(from_bench.take_bench(new_job(), state), state)
    assert (job.as_found.heel_wear_mm, job.as_found.pip_height_mm) == (0.05, 0.02)
    assert job.described is not None and job.described.condition.heel_wear_mm == 0.0
    # Wear lowers the lift by w·K/A (guide: theory-setting): 0.05·27.5/17. A blade rides on the pip besides.
    assert job.as_found.gap_mm == pytest.approx(0.2286 - 0.05 * 27.5 / 17.0 - 0.02, abs=1e-9)


def test_a_pip_makes_the_sheet_s_gap_what_a_blade_reads():
    """By hand: 0.330 mm of true gap less a pip of 0.050 mm is 0.280 mm by blades, for the setting and every lobe."""
    state = apply(new_bench(find_magneto("seven-radial")), GrowPip(0.05))
    job = from_bench.lobes(from_bench.internal_timing(from_bench.take_bench(new_job(), state), state), state)
    assert job.internal_timing.gap_mm == pytest.approx(0.28, abs=1e-9)
    assert [lobe.gap_mm for lobe in job.lobes.lobes] == pytest.approx([0.28] * len(job.lobes.lobes), abs=1e-9)
    judged = {v.field: v.ok for v in verdicts(job) if v.stage == "internal_timing"}
    assert judged["gap_mm"] is False
    assert "By blades the gap of lobe" in blade_words(state.magneto, readings(state))


def test_with_instruments_the_sheet_has_what_they_would_read():
    state = bench(SetBoth(1.5, 0.0))
    tools = (instrument("rule-1mm"), instrument("blades-0.05mm"))
    job = from_bench.as_found(new_job(), state, tools)
    # 0.943 mm on a rule to 1 mm; the thickest of blades in steps of 0.05 mm in 0.2286 mm.
    assert job.as_found.mark_offset_mm == pytest.approx(1.0)
    assert job.as_found.gap_mm == pytest.approx(0.20)
    assert "rule to 1 mm" in job.as_found.instruments


def test_contacts_that_never_open_leave_readings_out():
    job = from_bench.as_found(new_job(), bench(SetBoth(0.0, 60.0)))
    assert job.as_found.opening_error_deg is None and job.as_found.left_btdc_deg is None
    assert job.as_found.gap_mm == 0.0


def test_the_setting_counts_as_read_after_tightening_only_when_all_is_tight():
    state = bench()
    assert not from_bench.internal_timing(new_job(), state).internal_timing.read_after_tightening
    tight = apply(apply(state, TightenLock(True)), TightenClamps(True))
    job = from_bench.internal_timing(new_job(), tight)
    assert job.internal_timing.read_after_tightening
    # Tightening carried the screw along by the file's creep.
    assert job.internal_timing.screw_deg == pytest.approx(-3.0)


def test_an_adjustment_is_noted_and_an_impossible_one_refused():
    timing = internal_timing(find_magneto("seven-radial"))
    job = from_bench.planned_setting(new_job(), timing.adjust(0.24), 0.24)
    planned = job.internal_timing
    error, gap = timing.opening_and_gap(planned.planned_backplate_deg, planned.planned_screw_deg)
    assert float(error) == pytest.approx(0.0, abs=1e-6) and float(gap) == pytest.approx(0.24, abs=1e-6)
    with pytest.raises(SpecError, match="cannot be set"):
        from_bench.planned_setting(new_job(), timing.adjust(5.0), 5.0)


def test_every_lobe_is_on_the_sheet():
    lobes = from_bench.lobes(new_job(), bench(SetBoth(-1.0, 0.0))).lobes.lobes
    assert [lobe.opening_error_deg for lobe in lobes] == pytest.approx([-1.0] * 4, abs=1e-9)
    # Open and closed make up the 90° from one lobe to the next.
    timing = internal_timing(on_the_published_coupling().magneto).readings(-1.0, 0.0)
    opens = timing.closes_deg[0] - timing.opens_deg[0]
    assert [lobe.dwell_deg for lobe in lobes] == pytest.approx([90.0 - opens] * 4, abs=1e-9)


# ---------------------------------------------------------------------- switch lead


def lead(*actions, open_contacts=True):
    state = bench()
    if open_contacts:
        state = replace(state, rotor_deg=25.0, engaged=None)
    else:
        state = replace(state, rotor_deg=-20.0, engaged=None)
    for action in actions:
        state = apply(state, action)
    return from_bench.switch_lead(new_job(), state).switch_lead


def test_a_sound_lead_is_grounded_off_and_not_on():
    assert lead().lamp_grounded_switch_off is True
    assert lead(SwitchIgnition(True)).lamp_grounded_switch_on is False
    out = lead(PullPlug(True))
    assert (out.meter_grounded_switch_off, out.lamp_grounded_plug_out) == (True, True)
    assert lead(PullPlug(True), SwitchIgnition(True)).meter_grounded_switch_on is False


def test_a_broken_lead_and_a_bent_tab_are_found_out():
    assert lead(SetLeadFault("broken", True)).lamp_grounded_switch_off is False
    assert lead(SetLeadFault("broken", True), PullPlug(True)).meter_grounded_switch_off is False
    assert lead(SetLeadFault("tab", True), PullPlug(True)).lamp_grounded_plug_out is False


def test_a_lamp_on_closed_contacts_tells_nothing_of_the_lead():
    with pytest.raises(SpecError, match="open the contacts"):
        lead(open_contacts=False)
    noted = lead(PullPlug(True), open_contacts=False)
    assert noted.meter_grounded_switch_off is True and noted.lamp_grounded_plug_out is None


# ---------------------------------------------------------------------- engine


def test_the_stroke_before_it_fires_is_compression():
    assert from_bench.stroke(new_job(), bench(TurnCrank(-30.0))).dead_centre.stroke == "compression"
    assert from_bench.stroke(new_job(), bench(TurnCrank(300.0))).dead_centre.stroke == "exhaust"


def test_teeth_planned_moved_and_read_again():
    state = bench(ReadLamp("left", 22.0))
    job = from_bench.tooth_plan(new_job(), state, "left")
    best = plan(19, 20, 7 / 8, 22.0, 25.0)[0]
    shift = job.tooth_shift
    assert (shift.reads_btdc_deg, shift.wanted_btdc_deg) == (22.0, 25.0)
    assert (shift.planned_magneto_teeth, shift.planned_disc_teeth) == (best.magneto_teeth, best.disc_teeth)
    # One vernier step, 360/380° of the rotor, is 360/380/0.875° of the crank: three of them.
    moved = apply(state, MoveTeeth(3, -3))
    job = from_bench.tooth_result(job, moved, "left")
    assert firing_btdc_deg(moved, "left") == pytest.approx(22.0 + 3 * 360 / 380 / 0.875, abs=1e-8)
    assert job.tooth_shift.result_btdc_deg is None, "that is for the lamp to say"
    assert (job.tooth_shift.moved_magneto_teeth, job.tooth_shift.moved_disc_teeth) == (3, -3)


def test_a_move_other_than_the_first_can_be_planned():
    state = bench(ReadLamp("left", 22.0))
    other = plan(19, 20, 7 / 8, 22.0, 25.0)[4]
    shift = from_bench.tooth_plan(new_job(), state, "left", other).tooth_shift
    assert shift.planned_btdc_deg == other.result_btdc_deg


def test_both_magnetos_are_read_and_a_single_one_alone():
    both = from_bench.synchronising(new_job(), bench(ReadLamp("left", 24.0), ReadLamp("right", 26.5))).synchronising
    assert (both.left_btdc_deg, both.right_btdc_deg) == pytest.approx((24.0, 26.5), abs=1e-8)
    single = apply(new_bench(find_installation("traced-six-single")), ReadLamp("left", 22.0))
    alone = from_bench.synchronising(new_job(), single).synchronising
    assert alone.right_btdc_deg is None and alone.left_btdc_deg is not None


# ---------------------------------------------------------------------- trials and uncertainty


def test_trials_come_as_they_were_made():
    made = (
        from_bench.trial(1.0, 0.2, 0.25),
        from_bench.trial(0.0, 0.3, float("inf"), 0.5),
        from_bench.trial(-1.0, 0.1, None),
    )
    job = from_bench.trials(new_job(), made)
    assert [(t.backplate_deg, t.gap_low_mm, t.gap_high_mm) for t in job.internal_timing.trials] == [
        (1.0, 0.2, 0.25), (0.0, 0.3, None), (-1.0, 0.1, None),
    ]  # fmt: skip
    assert job.internal_timing.trials[1].opening_error_deg == 0.5


def test_uncertainty_is_what_propagation_gives():
    state = bench()
    tools = tuple(tool_for(role, ()) for role in INTERNAL_ROLES)
    outcomes = judge_linear(internal_measurement(state.magneto, read_internal(state, tools)))
    found = from_bench.uncertainty(new_job(), outcomes).internal_timing.uncertainty
    gap = found.gap_mm
    assert gap is not None and found.left_btdc_deg is None
    # GUM 5.1.2 by hand, coarsest tools: blades ± 0.025, drag ± 0.005; the screw's creep, either way 3°, is
    # 0.5·sin 3° at most; k = 1.96 at 95 %. Rectangular: half-width/√3.
    by_hand = 1.95996 * ((0.025**2 + 0.005**2 + (0.5 * 0.052336) ** 2) / 3) ** 0.5
    assert gap.expanded_uncertainty == pytest.approx(by_hand, rel=2e-3)
    assert (gap.low, gap.high) == pytest.approx((0.2032, 0.254))


# ---------------------------------------------------------------------- drawings, demo


def test_the_bench_comes_back_as_it_was_read():
    state = bench(WearHeel(0.03), SetBoth(2.0, -6.0))
    job = from_bench.as_found(from_bench.take_bench(new_job(), state), state)
    again = from_bench.bench_as(job, "as_found")
    assert again is not None
    assert (again.backplate_deg, again.screw_deg) == (2.0, -6.0)
    assert from_bench.as_found(new_job(), again).as_found.gap_mm == job.as_found.gap_mm
    # The rotor stands where the contacts just open.
    assert again.rotor_deg - 11.0 == pytest.approx(job.as_found.opening_error_deg, abs=1e-9)
    assert from_bench.bench_as(new_job(), "as_found") is None


def test_the_shipped_job_is_what_its_own_making_gives():
    path = Path(__file__).parents[2] / ".ci" / "demo_job.py"
    spec = importlib.util.spec_from_file_location("demo_job", path)
    assert spec is not None and spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    made, shipped = as_data(module.demo()), as_data(demo())
    made.pop("signature"), shipped.pop("signature")

    def flat(value, place=""):
        if isinstance(value, dict):
            return {k: v for key, inner in value.items() for k, v in flat(inner, f"{place}.{key}").items()}
        if isinstance(value, list):
            return {k: v for i, inner in enumerate(value) for k, v in flat(inner, f"{place}[{i}]").items()}
        return {place: value}

    one, two = flat(made), flat(shipped)
    assert one.keys() == two.keys()
    for place, value in one.items():
        expected = pytest.approx(two[place], abs=1e-9) if isinstance(value, float) else two[place]
        assert value == expected, place
