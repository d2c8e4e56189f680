"""Make the shipped demonstration job again: resources/jobs/seven-radial-left-job.json.

    python .ci/demo_job.py [FOLDER]

A whole job, done on the bench by its own actions; every figure that the bench has comes from a feed. The engine is a
bench that nobody sees; the lamp is read of it to half a degree of the disc, and what is read goes to the sheet. So
the chain from contacts to crank holds on the sheet as it does on an engine. All names and numbers are invented.
"""

from __future__ import annotations

import sys
from dataclasses import replace
from pathlib import Path

ROOT = Path(__file__).resolve().parents[1]
sys.path.insert(0, str(ROOT))

from magview.bench import actions as do  # noqa: E402  (needs the path above)
from magview.bench.apply import apply  # noqa: E402
from magview.bench.placing import new_bench  # noqa: E402
from magview.bench.state import BenchState, firing_btdc_deg, lamp_reading_deg  # noqa: E402
from magview.bench.sureness import ENGINE_ROLES, INTERNAL_ROLES, read_engine, read_internal  # noqa: E402
from magview.bench.timing import timing_plan  # noqa: E402
from magview.job import from_bench, judge  # noqa: E402
from magview.job.checklists import checks  # noqa: E402
from magview.job.sheet import STAGES, Job, change, change_in, new_job  # noqa: E402
from magview.job.signing import sign  # noqa: E402
from magview.physics.cam.setting import internal_timing  # noqa: E402
from magview.physics.uncertainty.instruments import instrument, instruments  # noqa: E402
from magview.physics.uncertainty.measurement import judge_linear  # noqa: E402
from magview.physics.uncertainty.setting_uncertainty import engine_measurement, internal_measurement  # noqa: E402
from magview.spec.files import write_model  # noqa: E402
from magview.spec.library import find_installation  # noqa: E402

TOOLS = tuple(
    instrument(key)
    for key in (
        "magnifier", "straightedge-clamped", "blades-half-thou", "drag-compared", "lamp", "rotor-bar", "led-in",
        "after-tightening", "disc-half-deg", "crank-tapped",
    )
)  # fmt: skip
OPENS_LATE_DEG, GAP_OVER_MM, PIP_MM = 0.56, 0.005, 0.02
"""As found: how late the contacts open [rotor deg], how far the gap by blades is above its limit, and the pip."""
TEETH_LATE_DEG, RIGHT_LATE_DEG = 4.0, 0.5
"""How late the left magneto would fire with its setting right and its teeth as found, and the right one does [crank
deg]. Nothing is done to the right one."""


def main() -> None:
    """Write the job."""
    folder = Path(sys.argv[1]) if len(sys.argv) > 1 else ROOT / "resources" / "jobs"
    write_model(folder / "seven-radial-left-job.json", demo())


def demo() -> Job:
    """The finished job."""
    job = _heading(new_job("Left magneto: contacts and timing after 98 h", "2026-10-14"))
    engine = _as_found()
    bench = _lamp_read(engine)
    job = from_bench.take_bench(job, bench)
    job = change_in(job, "limits", drop_low_rpm=40.0, drop_rpm=120.0, drop_difference_rpm=40.0)
    job = _safe(job, bench)
    job = change_in(from_bench.dead_centre(job, 41.5, -38.5, "disc to 0.5°"), "dead_centre", disc_reset=True)
    job = from_bench.stroke(job, apply(bench, do.TurnCrank(-30.0)))
    job = change_in(from_bench.marks(job, apply(bench, do.PaintMarks())), "marks", engine_marked=True)
    job = change_in(from_bench.as_found(job, bench), "as_found", finger_at_no_1=True)
    job = from_bench.contacts(job, bench)
    job = change_in(job, "contacts", clean=True, aligned=True, felt_oiled=True, dressed=True, replaced=False)
    job, engine = _internal(job, engine)
    job = from_bench.lobes(job, engine)
    job = _teeth(job, engine)
    job = _closing(job)
    for name in STAGES:
        job = judge.finish(job, name)
    return sign(job, "A. Person (invented)", "X-0000", "2026-10-14", "B. Person (invented)", "X-0001")


def _heading(job: Job) -> Job:
    job = change(job, invented=True)
    job = change_in(job, "aircraft", registration="X-DEMO", type="Invented two-seater", hours_h=1840.0)
    job = change_in(job, "engine", type="Seven-cylinder practice engine", serial="INVENTED-E7", hours_h=412.0)
    return change_in(
        job, "magneto", type="Seven-cylinder practice magneto", serial="INVENTED-M1", position="left", hours_h=412.0
    )


def _as_found() -> BenchState:
    bench = new_bench(find_installation("seven-radial-left"))
    bench = apply(apply(bench, do.WearHeel(0.03)), do.GrowPip(PIP_MM))
    ratio, turns = bench.engaged.ratio, bench.magneto.cam.turns_per_rotor_turn  # type: ignore[union-attr]
    # The plate alone moves the opening and leaves the gap.
    set_right = internal_timing(bench.magneto).adjust(bench.magneto.gap_limits_mm[1] + GAP_OVER_MM + PIP_MM)
    late = OPENS_LATE_DEG * turns
    bench = apply(bench, do.SetBoth(set_right.backplate_deg + late, set_right.screw_deg))
    wanted = bench.engaged.left.wanted_btdc_deg  # type: ignore[union-attr]
    return apply(bench, do.ReadLamp("left", wanted - TEETH_LATE_DEG - OPENS_LATE_DEG / ratio))


def _lamp_read(engine: BenchState) -> BenchState:
    """The bench of whoever reads the lamp on this engine, to half a degree."""
    right = engine.engaged.right.wanted_btdc_deg - RIGHT_LATE_DEG  # type: ignore[union-attr]
    left = round(2.0 * firing_btdc_deg(engine, "left")) / 2.0
    return apply(apply(engine, do.ReadLamp("right", right)), do.ReadLamp("left", left))


def _safe(job: Job, bench: BenchState) -> Job:
    job = change_in(
        job, "cautions", place="engine", manual="Practice manual, revision 0 (invented)",
        **dict.fromkeys(checks(job.cautions), True),
    )  # fmt: skip
    # Contacts open, so that the lamp tells of the lead and not of them.
    open_wide = replace(bench, rotor_deg=bench.magneto.e_gap_deg + 15.0, engaged=None)
    job = from_bench.switch_lead(job, open_wide)
    for steps in ((do.PullPlug(True),), (do.PullPlug(True), do.SwitchIgnition(True))):
        state = open_wide
        for step in steps:
            state = apply(state, step)
        job = from_bench.switch_lead(job, state)
    # The right magneto's lead: the bench has one magneto, so that its meter is read and typed.
    return change_in(job, "switch_lead", other_meter_grounded_switch_off=True, other_meter_grounded_switch_on=False)


def _internal(job: Job, bench: BenchState) -> tuple[Job, BenchState]:
    bench = apply(bench, do.GrowPip(0.0))  # dressed
    timing = internal_timing(bench.magneto)
    blades = [round(0.0127 * n, 4) for n in range(12, 48)]  # steps of half a thousandth of an inch
    made = []
    for plate in (1.9, 1.1, 0.3):
        # At each place of the plate the screw is turned until it opens at the E-gap; then the gap is read.
        screw = _screw_at_e_gap(timing, plate)
        gap = float(timing.readings(plate, screw).max_gap_mm[0])
        made.append(from_bench.trial(plate, max(b for b in blades if b <= gap), min(b for b in blades if b > gap)))
    job = from_bench.trials(job, made)
    wanted = sum(bench.magneto.gap_limits_mm) / 2
    plan = timing.adjust(wanted)
    job = from_bench.planned_setting(job, plan, wanted)
    # Set a little wide of the plan, for tightening carries the screw along.
    creep = bench.magneto.condition.screw_creep_deg
    bench = apply(bench, do.SetBoth(round(plan.backplate_deg, 1), round(plan.screw_deg - creep, 1)))
    bench = apply(apply(bench, do.TightenLock(True)), do.TightenClamps(True))
    job = from_bench.internal_timing(job, bench)
    tools = tuple(tool for role in INTERNAL_ROLES for tool in TOOLS if tool.role == role)
    return from_bench.uncertainty(
        job, judge_linear(internal_measurement(bench.magneto, read_internal(bench, tools)))
    ), bench


def _screw_at_e_gap(timing: object, plate_deg: float) -> float:
    low, high = -40.0, 20.0  # the opening error rises with the screw: halve the span
    for _ in range(60):
        middle = (low + high) / 2
        error, _gap = timing.opening_and_gap(plate_deg, middle)  # type: ignore[attr-defined]
        low, high = (middle, high) if error < 0 else (low, middle)
    return middle


def _teeth(job: Job, engine: BenchState) -> Job:
    # The contacts were set anew: the lamp is read again before any tooth is moved.
    bench = _lamp_read(engine)
    job = from_bench.tooth_plan(job, bench, "left")
    move = timing_plan(bench, "left", most=1)[0]
    teeth = do.MoveTeeth(move.magneto_teeth, move.disc_teeth)
    job = from_bench.tooth_result(job, apply(bench, teeth), "left")
    # And read once more.
    bench = _lamp_read(apply(engine, teeth))
    job = change_in(job, "tooth_shift", result_btdc_deg=lamp_reading_deg(bench, "left"))
    job = change_in(from_bench.synchronising(job, bench), "synchronising", finger_at_no_1=True)
    installation = bench.engaged.installation if bench.engaged else find_installation("seven-radial-left")
    tools = tuple(tool for role in ENGINE_ROLES for tool in (*TOOLS, *instruments(role)) if tool.role == role)
    firsts = tuple({tool.role: tool for tool in reversed(tools)}.values())
    return from_bench.uncertainty(job, judge_linear(engine_measurement(installation, read_engine(bench, firsts))))


def _closing(job: Job) -> Job:
    proved = {"lead_grounded_switch_off": True, "lead_grounded_switch_on": False}
    other = {f"other_{field}": value for field, value in proved.items()}
    job = change_in(job, "closing", **dict.fromkeys(checks(job.closing), True), **proved, **other)
    job = change_in(
        job, "ground_run", run_rpm=1700.0, drop_left_rpm=60.0, drop_right_rpm=75.0, runs_left="smooth",
        runs_right="smooth", dead_cut_checked=True,
    )  # fmt: skip
    job = change_in(
        job, "remarks",
        text="Invented for demonstration: aircraft, engine, magneto, people and all figures. "
        "Contacts dressed; heel wear as it was. Look at the gap again at the next check.",
    )  # fmt: skip
    return change_in(job, "next_check", hours_h=462.0, day="2027-04-14")


if __name__ == "__main__":
    main()
