"""Earlier sheets of the same magneto, their drift, and the next check."""

from __future__ import annotations

import numpy as np
import pytest
from scipy import stats

from magview.job.drift_line import READINGS, half_width
from magview.job.history import drift_of, earlier_jobs, identity, reminder
from magview.job.sheet import change_in, new_job
from magview.spec.base import SpecError
from magview.spec.files import dump_json, write_model
from tests.job.sheets import demo, fires, of_magneto


def test_a_magneto_is_known_by_type_and_serial_however_they_are_written(tmp_path):
    job = of_magneto(100.0, 0.24, 0.25)
    same = change_in(job, "magneto", serial=" n  7 ", type="PRACTICE")
    assert identity(job) == identity(same)
    for name, other in (
        ("one-job.json", job), ("two-job.magview", same), ("three-job.json", change_in(job, "magneto", serial="N 8")),
        ("four-job.json", change_in(job, "magneto", type="Another")),
    ):  # fmt: skip
        write_model(tmp_path / name, other)
    (tmp_path / "bad-job.magview.json").write_text("{", encoding="utf-8")
    (tmp_path / "notes.json").write_text("{}", encoding="utf-8")
    (tmp_path / "deep-job.json").mkdir()
    found, refused = earlier_jobs(tmp_path, job, without=tmp_path / "one-job.json")
    assert [f.path.name for f in found] == ["two-job.magview"]
    assert len(refused) == 2 and any(r.startswith("bad-job.magview.json: line 1") for r in refused)


def test_without_a_serial_number_nothing_is_the_same(tmp_path):
    with pytest.raises(SpecError, match="no serial number"):
        earlier_jobs(tmp_path, new_job())
    with pytest.raises(SpecError, match="cannot be read"):
        earlier_jobs(tmp_path / "gone", of_magneto(1.0, None, 0.2))


def test_resettings_drop_out_of_the_drift():
    """The gap closes 0.02 mm in every 100 h and is set back each time: the course runs on at 0.02 in 100 h."""
    jobs = [of_magneto(0.0, None, 0.25), *(of_magneto(100.0 * n, 0.23, 0.25) for n in range(1, 5))]
    gap = drift_of(jobs[::-1]).gap
    assert gap is not None
    assert gap.hours_h == (0.0, 100.0, 200.0, 300.0, 400.0)
    assert gap.drift == pytest.approx((0.0, -0.02, -0.04, -0.06, -0.08))
    assert gap.fit.slope == pytest.approx(-0.0002)
    value, low, high = gap.predict(450.0)
    assert float(value) == pytest.approx(0.25 - 0.01)
    assert low < value < high


def test_the_line_is_the_general_least_squares_one_of_cumulated_differences():
    """A second method: differences between sheets share the readings between them (JCGM 100:2008, F.1.2.3), so that
    their covariance goes into the generalised least squares of any textbook (Aitken)."""
    rng = np.random.default_rng(5)
    hours = np.array([0.0, 90.0, 210.0, 300.0, 420.0, 500.0, 640.0])
    reset = [True, False, True, False, False, True, False]
    since = hours - np.array([0.0, 0.0, 0.0, 210.0, 210.0, 210.0, 500.0])
    found = 0.25 - 0.00015 * since + rng.normal(0.0, 0.004, 7)
    left = [0.25 + rng.normal(0.0, 0.004) if again else None for again in reset]
    jobs = []
    for h, f, after in zip(hours, found, left, strict=True):
        job = change_in(of_magneto(h, None if h == 0.0 else f, 0.0), "internal_timing", gap_mm=after)
        jobs.append(change_in(job, "reading_errors", gap_mm=0.01))
    gap = drift_of(jobs).gap
    assert gap is not None
    # Each difference is its sheet's reading as found less the one before as left, or as found where none was left.
    places, at = {}, 0
    for n, again in enumerate(reset):
        places[n, "found"] = at
        at += 1
        if again:
            places[n, "left"] = at
            at += 1
    readings = np.zeros(at)
    for n, again in enumerate(reset):
        readings[places[n, "found"]] = found[n]
        if again:
            readings[places[n, "left"]] = left[n]
    differences = np.zeros((6, at))
    for n in range(1, 7):
        differences[n - 1, places[n, "found"]] = 1.0
        differences[n - 1, places[n - 1, "left" if reset[n - 1] else "found"]] = -1.0
    u = 0.01 / 3**0.5
    inverse = np.linalg.inv(u**2 * differences @ differences.T)
    spans = np.diff(hours)
    information = spans @ inverse @ spans
    assert gap.fit.slope == pytest.approx(spans @ inverse @ differences @ readings / information, rel=1e-9)
    assert gap.fit.slope_u == pytest.approx(information**-0.5, rel=1e-9)
    assert gap.fit.scatter == 1.0 and gap.factor == pytest.approx(1.96, abs=1e-3)


def test_one_wrong_reading_is_told_and_widens_the_interval():
    hours = 100.0 * np.arange(7)
    found = 0.25 - 0.00015 * hours
    found[3] += 0.1
    jobs = [change_in(of_magneto(h, f, f), "internal_timing", gap_mm=None) for h, f in zip(hours, found, strict=True)]
    drift = drift_of(jobs)
    assert drift.gap is not None
    by_scipy = stats.linregress(hours, found)
    assert drift.gap.fit.slope == pytest.approx(by_scipy.slope)
    assert drift.gap.fit.slope_u == pytest.approx(by_scipy.stderr)
    assert drift.gap.factor == pytest.approx(stats.t.ppf(0.975, 5))
    assert any("scatter" in s and "as stated" in s for s in drift.sentences)


@pytest.mark.sweep
def test_the_prediction_interval_holds_the_next_reading_as_often_as_it_says():
    """Monte Carlo against the closed form: normal scatter, seven sheets, 95 in 100 (a robust line is a bit off)."""
    rng, inside, runs = np.random.default_rng(11), 0, 400
    hours = np.arange(7) * 100.0
    for _ in range(runs):
        readings = 0.6 - 0.0003 * hours + rng.normal(0.0, 0.02, 7)
        jobs = [
            change_in(of_magneto(h, float(g), 0.1), "internal_timing", gap_mm=None)
            for h, g in zip(hours, readings, strict=True)
        ]
        gap = drift_of(jobs).gap
        assert gap is not None
        _, low, high = gap.predict(700.0)
        inside += bool(low <= 0.6 - 0.21 + rng.normal(0.0, 0.02) <= high)
    assert 0.87 < inside / runs <= 1.0


@pytest.mark.parametrize("side", ["left", "right"])
def test_the_firing_drifts_too(side):
    """It comes 0.3° later in every 100 h and is put back to 25.2° each time, of 24° to 26° allowed."""
    jobs = [fires(of_magneto(100.0 * n, None, 0.23), 24.9 if n else None, 25.2, side) for n in range(9)]
    drift = drift_of(jobs)
    assert drift.gap is None and drift.firing is not None
    assert drift.firing.fit.slope == pytest.approx(-0.003)
    assert drift.firing.drift == pytest.approx([-0.3 * n for n in range(9)])
    # Disc to 1° and propeller turned by hand: 0.5° and 0.25° in square, and half as much again of their square for
    # the zero, the mean of two such readings. Eight spans of 100 h, set anew each time,
    # have a rate of their own each, √2·u over 100 h, and are as sure together as the mean of eight.
    u = (1.5 * (0.5**2 + 0.25**2)) ** 0.5 / 3**0.5
    assert drift.firing.fit.slope_u == pytest.approx(2**0.5 * u / 100.0 / 8**0.5)
    # From 25.2° at 800 h it is at 24° after 400 h for certain, sooner with the interval.
    assert drift.next_check_h is not None and 800.0 < drift.next_check_h <= 1200.0
    assert any("-0.30° of crank in 100 h" in s and "should read 24.90° before" in s for s in drift.sentences)
    assert any(s.startswith("The firing may leave its limits from") for s in drift.sentences)
    assert drift.table[1][-1][-2:] == ("24.90°", "25.20°")


def test_two_sheets_are_as_sure_as_the_blades():
    """Half a step of 0.001 in and twice 0.005 mm of drag, in square; a slope of two is √2·u over the hours."""
    gap = drift_of([of_magneto(0.0, None, 0.25), of_magneto(100.0, 0.23, 0.25)]).gap
    assert gap is not None
    half = (0.0127**2 + 2 * 0.005**2) ** 0.5
    assert gap.fit.slope_u == pytest.approx(2**0.5 * half / 3**0.5 / 100.0)
    assert gap.factor == pytest.approx(1.96, abs=1e-3)


def test_one_sheet_or_none_between_tells_nothing():
    assert drift_of([of_magneto(100.0, 0.2, 0.25)]).gap is None
    assert drift_of([]).sentences == ()
    without_hours = change_in(of_magneto(0.0, 0.2, 0.25), "magneto", hours_h=None)
    assert drift_of([of_magneto(0.0, None, 0.25), without_hours]).gap is None


def test_the_next_check_is_the_earliest_of_entered_and_foretold():
    # 0.02 mm in 100 h from 0.25: at 0.2 after 250 h for certain, sooner with the interval.
    jobs = [of_magneto(0.0, None, 0.25), *(of_magneto(100.0 * n, 0.23, 0.25) for n in range(1, 5))]
    jobs = [change_in(job, "reading_errors", gap_mm=0.005) for job in jobs]
    drift = drift_of(jobs)
    assert drift.next_check_h is not None and 400.0 < drift.next_check_h <= 650.0
    assert any("may leave its limits from" in s for s in drift.sentences)
    sooner = drift_of([*jobs[:-1], change_in(jobs[-1], "next_check", hours_h=420.0)])
    assert sooner.next_check_h == 420.0
    still = drift_of([of_magneto(0.0, None, 0.23), *(of_magneto(100.0 * n, 0.23, 0.23) for n in range(1, 9))])
    assert still.gap is not None and still.gap.fit.slope == pytest.approx(0.0, abs=1e-12)


def test_reminders():
    job = demo()  # 462 h or 2027-04-14, now at 412 h
    assert reminder(job, "2026-10-20") is None
    assert "due at 462 h of the magneto, in 7 h" in (reminder(job, "2026-10-20", 455.0) or "")
    assert "3 h ago" in (reminder(job, "2026-10-20", 465.0) or "")
    assert "due on 2027-04-14, in 14 days" in (reminder(job, "2027-03-31") or "")
    assert "1 day ago" in (reminder(job, "2027-04-15") or "")
    assert reminder(new_job(), "2026-10-20") is None


def test_side_by_side():
    head, lines = drift_of([of_magneto(200.0, 0.23, 0.25, day="2026-01-01"), of_magneto(100.0, None, 0.24)]).table
    assert all(len(line) == len(head) for line in lines)
    assert [line[1] for line in lines] == ["100", "200"]
    assert lines[0][2:4] == ("–", "0.240 mm") and lines[1][2:4] == ("0.230 mm", "0.250 mm")


def test_a_reading_too_near_a_limit_is_safe_for_no_hour():
    """0.25 mm of 0.26 allowed, read to ±0.0146 mm: nobody can say that it is within."""
    jobs = [of_magneto(0.0, None, 0.25), of_magneto(100.0, 0.23, 0.25)]
    drift = drift_of(jobs)
    assert drift.next_check_h == 100.0
    assert any(s.startswith("The gap may be out of its limits already at 100 h") for s in drift.sentences)
    finer = drift_of([change_in(job, "reading_errors", gap_mm=0.005) for job in jobs])
    assert finer.next_check_h is not None and finer.next_check_h > 100.0


def test_a_safe_hour_is_the_last_at_which_the_interval_of_the_line_keeps_the_limits():
    jobs = [of_magneto(0.0, None, 0.25), *(of_magneto(100.0 * n, 0.23, 0.25) for n in range(1, 5))]
    gap = drift_of([change_in(job, "reading_errors", gap_mm=0.005) for job in jobs]).gap
    assert gap is not None
    until = gap.safe_until_h(0.2, 0.26)
    low = gap.fit.value([until, until + 1.0]) - gap.factor * gap.fit.value_u([until, until + 1.0])
    assert low[0] >= 0.2 > low[1]
    assert gap.safe_until_h(-100.0, 100.0) == np.inf


def test_a_sheet_says_how_well_it_was_read_and_older_ones_say_nothing():
    job = of_magneto(100.0, 0.23, 0.25)
    assert half_width(job, READINGS["gap"]) == pytest.approx(0.0146, abs=1e-4)
    assert half_width(change_in(job, "reading_errors", gap_mm=0.005), READINGS["gap"]) == 0.005
    assert "reading_errors" not in dump_json(job)


def test_a_next_check_after_the_forecast_is_flagged():
    """0.01 mm in 100 h, read to 0.01 mm: the gap left at 0.24 reaches 0.20 after 400 h at the latest, at 700 h."""
    jobs = [
        of_magneto(hours, None if hours == 100 else 0.23, 0.24, day=day)
        for hours, day in ((100.0, "2026-01-01"), (200.0, "2026-03-01"), (300.0, "2026-05-01"))
    ]
    forecast = drift_of(jobs)
    assert forecast.late_check == "" and forecast.next_check_h < 700.0
    late = change_in(jobs[-1], "next_check", hours_h=700.0)
    assert "700 h" in drift_of([*jobs[:-1], late]).late_check
    soon = change_in(jobs[-1], "next_check", hours_h=forecast.next_check_h - 1.0)
    assert drift_of([*jobs[:-1], soon]).late_check == ""
    # 200 h in 120 days: two years on there are some 1,200 h more.
    by_day = change_in(jobs[-1], "next_check", day="2028-05-01")
    assert "2028-05-01" in drift_of([*jobs[:-1], by_day]).late_check
    assert drift_of([*jobs[:-1], change_in(jobs[-1], "next_check", day="2026-05-02")]).late_check == ""
