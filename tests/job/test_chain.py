"""From contacts to crank: a change of the setting moves the lamp's reading, and a disc's zero every reading.

The engine is turned in the test itself: contacts that part are looked for on the rotor's gap, and the crank is the
rotor's by gears and phase. None of the program's sums of openings and readings is used.
"""

from __future__ import annotations

import math

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from magview.bench.actions import ReadLamp, SetBoth
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.job import derived, from_bench, judge, status
from magview.job.document import document
from magview.job.readings import csv_text, rows
from magview.job.sheet import Job, change, change_in, new_job
from magview.paper.blocks import Paragraph
from magview.physics.cam.setting import internal_timing
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.library import find_installation, shipped_names
from tests.counts import examples
from tests.job.sheets import demo, marked, safe, signed, signed_earlier
from tests.magnetos import magnetos
from tests.wording import says

SHIPPED = tuple(shipped_names("installations"))
OPEN_MM = 1e-6


def parts_at_deg(state: BenchState) -> float:
    """Where lobe 1 parts the contacts [rotor deg], found by turning the rotor until there is a gap."""
    timing, e_gap = internal_timing(state.magneto), state.magneto.e_gap_deg

    def gap(rotor: float) -> float:
        return float(timing.gap_mm(rotor, state.backplate_deg, state.screw_deg))

    closed = next((e_gap - 0.25 * n for n in range(400) if gap(e_gap - 0.25 * n) <= OPEN_MM), math.nan)
    opened = next((closed + 0.25 * n for n in range(1, 400) if gap(closed + 0.25 * n) > OPEN_MM), math.nan)
    for _ in range(60):
        middle = (closed + opened) / 2
        closed, opened = (middle, opened) if gap(middle) <= OPEN_MM else (closed, middle)
    return opened


def job_of(installation: Installation, found: BenchState, left: BenchState, read: float) -> Job:
    """A sheet with the setting as found and as left, and the lamp read as found [crank deg BTDC]."""
    job = from_bench.take_bench(new_job(), new_bench(installation))
    job = from_bench.internal_timing(from_bench.as_found(job, found), left)
    return change_in(job, "as_found", **{f"{derived.side_of(job)}_btdc_deg": read})


def holds(installation: Installation, found: SetBoth, left: SetBoth, read: float, slack: float) -> None:
    """The engine turned by hand before and after the setting, against what the sheet says the lamp should read."""
    one, two = (apply(new_bench(installation), act) for act in (found, left))
    before, after = parts_at_deg(one), parts_at_deg(two)
    assert math.isfinite(before + after)
    ratio = installation.rotor_turns_per_crank_turn
    # With the rotor geared to the crank, rotor = phase + ratio · crank; the crank is −BTDC where the contacts part.
    phase = before + ratio * read
    fires_btdc = -(after - phase) / ratio
    told = derived.lamp_should_read_deg(job_of(installation, one, two, read))
    assert told == pytest.approx(fires_btdc, abs=slack)


@pytest.mark.parametrize("name", SHIPPED)
@pytest.mark.parametrize(("plate", "screw"), [(1.2, 0.0), (-0.8, 3.0), (0.5, -4.0)])
def test_the_lamp_of_every_shipped_installation_reads_what_the_sheet_says(name, plate, screw):
    item = find_installation(name)
    designed = item.magneto.designed_setting.backplate_deg
    holds(item, SetBoth(designed + plate, screw), SetBoth(designed, 0.0), 23.0, 2e-3)


@given(magnetos(worn=False), st.floats(0.5, 2.0), st.floats(-1.0, 1.0), st.floats(5.0, 40.0))
@settings(max_examples=examples(40), deadline=None)
def test_the_lamp_of_random_installations_reads_what_the_sheet_says(magneto, ratio, plate, read):
    item = find_installation("seven-radial-left").model_copy(
        update={"magneto": magneto, "rotor_turns_per_crank_turn": ratio}
    )
    low, high = magneto.backplate.range_deg
    designed = magneto.designed_setting.backplate_deg
    assume(low <= designed + plate <= high)
    # A flat foot of a lobe parts the contacts slowly: what a millionth of a millimetre is in degrees there.
    holds(item, SetBoth(designed + plate, 0.0), SetBoth(designed, 0.0), read, 2e-2)


def test_a_contact_that_opens_later_lets_the_lamp_read_less():
    """By hand: 2.40° of rotor earlier than before, at 7/8 turn to one of the crank, is 2.743° of crank earlier."""
    job = change_in(demo(), "as_found", opening_error_deg=2.40, left_btdc_deg=22.0)
    job = change_in(job, "internal_timing", opening_error_deg=0.0)
    assert job.installation is not None and job.installation.rotor_turns_per_crank_turn == 7 / 8
    assert derived.lamp_should_read_deg(job) == pytest.approx(22.0 + 2.742857, abs=1e-6)


def test_where_the_opening_was_not_read_the_straightedge_tells_it():
    """The edge 1.0 mm past its mark at the rim: atan(1.0 / radius), cam degrees."""
    job = change_in(demo(), "as_found", opening_error_deg=None, mark_offset_mm=1.0, left_btdc_deg=22.0)
    job = change_in(job, "internal_timing", opening_error_deg=None, mark_offset_mm=0.0)
    assert job.installation is not None
    late = math.degrees(math.atan(1.0 / job.installation.magneto.marks.radius_mm))
    assert derived.lamp_should_read_deg(job) == pytest.approx(22.0 + late / 0.875, abs=1e-9)


# ---------------------------------------------------------------------- a reading that is out of date


def stale() -> Job:
    """The shipped sheet, its first lamp reading of the tooth shift taken before the setting was changed."""
    job = change_in(demo(), "as_found", opening_error_deg=2.40)
    return change_in(job, "tooth_shift", state="open", reads_btdc_deg=job.as_found.left_btdc_deg)


def test_the_tooth_shift_refuses_to_judge_by_a_reading_of_before_and_says_what_it_should_be():
    job = stale()
    should = f"{derived.lamp_should_read_deg(job):.2f}° before top dead centre"
    with pytest.raises(SpecError, match="the lamp read again, which should now say " + should):
        judge.finish(job, "tooth_shift")
    (row,) = [r for r in rows(job) if (r.stage, r.field) == ("tooth_shift", "reads_btdc_deg")]
    assert row.verdict == says("OUT OF DATE, NOT JUDGED")
    assert not [v for v in judge.verdicts(job) if (v.stage, v.field) == ("tooth_shift", "reads_btdc_deg")]
    assert says("OUT OF DATE, NOT JUDGED") in csv_text(job)
    (told, *_) = status.doubts(job, "tooth_shift")
    assert should in told and "earlier than as found" in told and "before any tooth is moved" in told
    assert any(isinstance(b, Paragraph) and b.kind == "warning" and told in b.text for b in document(job).blocks)
    done = signed(change_in(job, "tooth_shift", state="done"))
    assert not judge.progress(done).passed and "tooth_shift" in judge.progress(done).doubtful
    # Read again, within what readings can be out by, it is judged.
    should_deg = derived.lamp_should_read_deg(job)
    again = change_in(job, "tooth_shift", reads_btdc_deg=round(2 * should_deg) / 2)
    assert status.doubts(again, "tooth_shift")[:1] != (told,)
    assert not judge.outdated(again)


def test_a_reading_that_was_only_copied_is_out_of_date_too():
    """0.6° of crank is within what readings by hand can be out; the very figure of before is no reading of now."""
    job = change_in(stale(), "as_found", opening_error_deg=0.6 * 0.875)
    job = change_in(job, "internal_timing", opening_error_deg=0.0)
    job = change_in(change_in(job, "internal_timing", uncertainty={}), "synchronising", uncertainty={})
    assert judge.outdated(job)
    nearly = change_in(job, "tooth_shift", reads_btdc_deg=job.as_found.left_btdc_deg + 0.25)
    assert not judge.outdated(nearly)


@pytest.mark.parametrize("unknown", ["opening", "left", "lamp", "engine", "side"])
def test_where_something_is_not_known_nothing_is_said(unknown):
    job = stale()
    match unknown:
        case "opening":
            job = change_in(job, "as_found", opening_error_deg=None, mark_offset_mm=None)
        case "left":
            job = change_in(job, "internal_timing", opening_error_deg=None, mark_offset_mm=None)
        case "lamp":
            job = change_in(job, "as_found", left_btdc_deg=None)
        case "engine":
            job = change(job, installation=None)
        case "side":
            job = change_in(job, "tooth_shift", side="right")
    assert not judge.outdated(job)


def test_the_last_reading_goes_with_those_before():
    job = demo()
    assert status.doubts(job, "synchronising") == ()
    result = job.tooth_shift.result_btdc_deg
    slipped = change_in(job, "synchronising", left_btdc_deg=result + 2.0)
    (told,) = status.doubts(slipped, "synchronising")
    assert f"should read {result:.2f}°" in told and "slipped" in told
    assert judge.progress(slipped).doubtful == ("synchronising",)
    # Without a tooth moved, what follows from the reading as found.
    left = judge.skip(change_in(stale(), "synchronising", left_btdc_deg=None), "tooth_shift", "it fires as it should")
    should = derived.lamp_should_read_deg(left)
    assert status.doubts(change_in(left, "synchronising", left_btdc_deg=should), "synchronising") == ()
    old = change_in(left, "synchronising", left_btdc_deg=left.as_found.left_btdc_deg)
    assert len(status.doubts(old, "synchronising")) == 1


def test_the_setting_as_left_says_what_the_lamp_should_read():
    (told,) = status.follows(demo(), "internal_timing")
    should = derived.lamp_should_read_deg(demo())
    assert told == f"With the setting as left the lamp should read {should:.2f}° before top dead centre."
    assert status.follows(new_job(), "internal_timing") == ()


def test_a_shift_that_was_not_made_as_planned_is_said_without_any_bench():
    job = demo()
    sentence = "Moved is not what was planned"
    assert not [told for told in status.follows(job, "tooth_shift") if sentence in told]
    made = change_in(job, "tooth_shift", planned_magneto_teeth=3, moved_magneto_teeth=2)
    (told,) = [told for told in status.follows(made, "tooth_shift") if sentence in told]
    assert "B magneto flange planned 3 teeth with rotation, moved 2 teeth with rotation" in told
    # Before it is moved, or where nothing was planned, there is nothing to compare.
    for values in ({"moved_magneto_teeth": None}, {"planned_magneto_teeth": None}):
        half = change_in(made, "tooth_shift", **values)
        assert not [told for told in status.follows(half, "tooth_shift") if sentence in told]
    other_way = change_in(job, "tooth_shift", planned_disc_teeth=3, moved_disc_teeth=-3)
    assert sum(sentence in told and "A disc" in told for told in status.follows(other_way, "tooth_shift")) == 1


def test_the_shipped_sheet_obeys_the_chain():
    job = demo()
    assert job.as_found.opening_error_deg != pytest.approx(job.internal_timing.opening_error_deg, abs=0.3)
    should = derived.lamp_should_read_deg(job)
    # The lamp is read to half a degree, twice.
    assert job.tooth_shift.reads_btdc_deg == pytest.approx(should, abs=0.5)
    assert all(status.doubts(job, name) == () for name in ("tooth_shift", "synchronising"))


# ---------------------------------------------------------------------- the disc's zero


def stopped(reset: bool | None) -> Job:
    """Stops met at 41.5° after and 38.5° before the disc's zero: at the true top it reads 1.5° (common practice)."""
    job = marked(safe(change_in(demo(), "dead_centre", state="open", disc_reset=reset)))
    return change_in(job, "limits", left_btdc_deg=25.0, timing_tolerance_deg=1.0)


def judged(job: Job, stage: str, field: str) -> judge.Verdict:
    return next(v for v in judge.verdicts(job) if (v.stage, v.field) == (stage, field))


@pytest.mark.parametrize(
    ("stage", "field"),
    [
        ("as_found", "left_btdc_deg"), ("synchronising", "left_btdc_deg"), ("tooth_shift", "result_btdc_deg"),
    ],
)  # fmt: skip
def test_a_disc_that_was_not_reset_has_every_later_reading_corrected(stage, field):
    """The disc says 22.6° before its zero, which is 1.5° after the true top: 24.1° before the true top."""
    off = change_in(stopped(False), stage, **{field: 22.6})
    assert judged(off, stage, field).value == pytest.approx(24.1) and judged(off, stage, field).ok
    (row,) = [r for r in rows(off) if (r.stage, r.field) == (stage, field)]
    assert (row.value, row.judged_value) == (22.6, pytest.approx(24.1))
    assert "22.60°" in row.shown and "24.10° before top dead centre by true top dead centre" in row.shown
    for reset in (True, None):  # set to zero; or not said, as on sheets of before
        same = change_in(stopped(reset), stage, **{field: 22.6})
        assert judged(same, stage, field).value == 22.6 and not judged(same, stage, field).ok


def test_the_dead_centre_is_not_done_before_the_discs_zero_is_settled():
    with pytest.raises(SpecError, match="missing: disc then set to zero at true top dead centre"):
        judge.finish(stopped(None), "dead_centre")
    for settled in (True, False):
        assert judge.finish(stopped(settled), "dead_centre").dead_centre.state == "done"
    right = change_in(stopped(None), "dead_centre", second_stop_deg=-41.5)
    assert judge.finish(right, "dead_centre").dead_centre.state == "done"


def test_a_bench_that_counts_from_the_true_top_gives_no_reading_of_a_disc_that_is_off():
    state = apply(new_bench(find_installation("seven-radial-left")), ReadLamp("left", 22.0))
    for feed in (from_bench.timing_found, from_bench.synchronising, lambda j, s: from_bench.tooth_plan(j, s, "left")):
        with pytest.raises(SpecError, match=r"adds \+1\.50° to every reading"):
            feed(stopped(False), state)
        feed(stopped(True), state)


def test_a_sheet_signed_under_earlier_rules_is_judged_as_it_was():
    job = change_in(stopped(None), "dead_centre", state="done")
    old = signed_earlier(change_in(stale(), "tooth_shift", state="done"))
    assert not judge.outdated(old) and judge.progress(old).doubtful == ()
    assert judge.progress(signed_earlier(job)).missing == ()
