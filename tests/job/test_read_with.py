"""Instruments of one's own on a sheet: chosen by stage, named beside readings, overdue ones said."""

from __future__ import annotations

import pytest

from magview.job import judge, status
from magview.job.instruments import OwnInstrument, instrument_list, read_instruments, write_instruments
from magview.job.read_with import last_used, names_in, read_by, used_in, with_instruments
from magview.job.readings import rows
from magview.job.sheet import change_in, digest, new_job
from magview.spec.base import SpecError
from tests.job.sheets import demo, html_text
from tests.wording import says

BLADES = OwnInstrument(name="Blades 17", use="blades", number="K-12", due="2026-06-30")
LAMP = OwnInstrument(name="Lamp 3", use="lamp", number="K-40", due="2027-01-31")


def sheet(day="2026-11-25"):
    job = change_in(new_job("x", day), "as_found", gap_mm=0.31, left_btdc_deg=25.0)
    return with_instruments(job, "as_found", (BLADES, LAMP))


def test_each_reading_names_the_instrument_made_for_it():
    job = sheet()
    assert names_in(job, "as_found") == ("Blades 17", "Lamp 3")
    assert read_by(job, "as_found", "gap_mm") == "Blades 17"
    assert read_by(job, "as_found", "left_btdc_deg") == "Lamp 3"
    assert {row.field: row.read_by for row in rows(job)}["gap_mm"] == "Blades 17"
    assert read_by(job, "internal_timing", "gap_mm") == ""


def test_the_next_stage_is_offered_the_same_and_what_nobody_names_goes():
    job = sheet()
    assert last_used(job, "internal_timing") == (BLADES, LAMP) and last_used(job, "marks") == ()
    again = with_instruments(job, "internal_timing", (BLADES,))
    assert used_in(again, "internal_timing") == (BLADES,) and again.instruments == (BLADES, LAMP)
    assert with_instruments(again, "as_found", ()).instruments == (BLADES,)
    disc = OwnInstrument(name="Disc 2", use="disc")
    centre = with_instruments(change_in(new_job("x"), "dead_centre", first_stop_deg=40.0), "dead_centre", (disc,))
    assert centre.dead_centre.disc == "Disc 2" == read_by(centre, "dead_centre", "first_stop_deg")
    assert last_used(centre, "as_found") == ()


@pytest.mark.parametrize(("day", "late"), [("2026-06-29", False), ("2026-06-30", False), ("2026-07-01", True)])
def test_overdue_is_by_the_sheets_own_day(day, late):
    """Due on a day is in date on that day."""
    job = sheet(day)
    told = says(
        "{name}: calibration overdue since {due}. Read again with one that is in date.",
        name="Blades 17", due="2026-06-30",
    )  # fmt: skip
    assert (told in status.doubts(job, "as_found")) is late
    assert judge.doubtful(job, "as_found") is late
    assert ("OVERDUE" in html_text(job)) is late
    assert "K-12" in html_text(job)


def test_without_a_date_it_is_said_that_nothing_is_known():
    assert len(status.doubts(sheet(""), "as_found")) == 2


def test_the_list_is_kept_and_each_name_stands_once(tmp_path):
    path = tmp_path / "kept" / "instruments.json"
    assert read_instruments(path).instruments == ()
    rows_given = tuple(instrument.model_dump() for instrument in (BLADES, LAMP))
    write_instruments(path, instrument_list(rows_given))
    assert read_instruments(path).instruments == (BLADES, LAMP)
    with pytest.raises(SpecError, match="there twice"):
        instrument_list((rows_given[0], rows_given[0] | {"name": "blades 17"}))
    with pytest.raises(SpecError, match="semicolon"):
        instrument_list(({"name": "a; b"},))


def test_a_sheet_without_instruments_is_what_it_was():
    """A signature of before covers the sheet still: nothing is written that nobody gave."""
    job = demo()
    assert job.instruments == () and job.signature is not None and job.signature.covers == digest(job)
