"""Limits cards kept, printed, and carried onto a sheet without replacing what is there."""

from __future__ import annotations

import json
import re

import pytest

from magview.cli.main import main
from magview.job.limits_cards import FIELDS, CardShelf, card_document, card_text, plan_of_card, take_card
from magview.job.sheet import change_in, new_job
from magview.job.shift_plan import shift_documents
from magview.paper.text import plain_text
from magview.spec.base import SpecError
from magview.spec.files import write_model
from tests.cards import a_card
from tests.wording import says


def test_a_sheet_takes_what_it_has_not_and_keeps_what_was_entered():
    job = take_card(new_job(), a_card(right_btdc_deg=25.0))
    limits = job.limits
    assert (limits.gap_low_mm, limits.gap_high_mm, limits.mark_tolerance_mm) == (0.3, 0.4, 0.8)
    assert (limits.left_btdc_deg, limits.right_btdc_deg) == (23.0, 25.0)
    assert (limits.timing_tolerance_deg, limits.synchronising_tolerance_deg) == (1.0, 0.5)
    assert limits.source == "Ignition manual, page 12, revision C" and job.aircraft.registration == "X-ABC"
    assert limits.drop_rpm is None, "no card speaks of the ground run"
    typed = change_in(new_job(), "limits", left_btdc_deg=21.0, source="by hand")
    kept = take_card(change_in(typed, "aircraft", registration="Y-1"), a_card())
    assert (kept.limits.left_btdc_deg, kept.limits.source, kept.aircraft.registration) == (21.0, "by hand", "Y-1")
    assert kept.limits.right_btdc_deg == 23.0
    single = change_in(new_job(), "magneto", position="single")
    assert take_card(single, a_card()).limits.right_btdc_deg is None


def test_cards_are_kept_by_registration_and_a_file_that_cannot_be_read_is_left(tmp_path):
    shelf = CardShelf(tmp_path / "cards")
    assert shelf.cards() == []
    for registration in ("b-1", "A/1", "A-1"):  # two of them would have one name of a file
        shelf.keep(a_card(registration=registration))
    shelf.keep(a_card(registration="B-1", cylinders=4, rotor_turns_per_crank_turn=1.0))
    assert [card.registration for card in shelf.cards()] == ["A-1", "A/1", "B-1"]
    assert shelf.named(" b-1 ").cylinders == 4
    broken = tmp_path / "cards" / "C-1.magview.json"
    broken.write_text("{", encoding="utf-8")
    shelf.keep(a_card(registration="C-1"))
    assert broken.read_text(encoding="utf-8") == "{" and shelf.named("C-1") is not None
    assert len(shelf.refused) == 1 and "C-1" in shelf.refused[0]


def test_a_card_without_a_folder_is_kept_while_the_program_runs():
    shelf = CardShelf(None)
    shelf.keep(a_card())
    assert shelf.cards() == [a_card()]


def test_the_printed_card_has_every_figure_of_the_card_and_none_that_is_assumed():
    told = plain_text(card_document(a_card()))
    for words in ("X-ABC", "page 12, revision C", "9.5°", "0.8 mm", "0.300 mm", "11", "12", "23°", "0.5°", "1.5"):
        assert words in told
    # Rim, stroke and rod of the file that a card becomes, and the ends of its plate.
    assert not re.search(r"(?<![\d.])(40|100|200|10)(?![\d.])", told)
    assert len(card_text(a_card()).splitlines()) == len(FIELDS)


def test_figures_are_printed_as_they_were_given():
    told = card_text(a_card(timing_tolerance_deg=0.125, left_btdc_deg=-2.25))
    assert "0.125° of crank" in told and "2.25° after top dead centre" in told


def test_a_card_plans_teeth_without_any_cam_and_a_far_error_is_looked_at_first():
    found = plan_of_card(a_card(right_btdc_deg=25.0), "right", 20.0)
    step = 360.0 * (1 / 11 - 1 / 12) / 1.5  # one tooth with and one against, at the crank
    assert found.wanted_btdc_deg == 25.0 and found.position == "right"
    assert abs(found.move.result_btdc_deg - (20.0 + 3 * step)) < 1e-9
    told = plain_text(next(iter(shift_documents(found))))
    assert "X-ABC" in told and says("Tooth-shift plan: right magneto") in told
    with pytest.raises(SpecError, match="stroke, mark and finger"):
        plan_of_card(a_card(), "left", -80.0)
    assert plan_of_card(a_card(), "left", -80.0, checked=True).far_off
    with pytest.raises(SpecError, match="such as 22"):
        plan_of_card(a_card(), "left", 5000.0)


def test_commands_read_a_card(tmp_path, capsys):
    path = tmp_path / "card.magview.json"
    write_model(path, a_card())
    assert main(["limits", str(path), "--json"]) == 0
    assert json.loads(capsys.readouterr().out)["e_gap_deg"] == 9.5
    assert main(["limits", str(path)]) == 0 and "X-ABC" in capsys.readouterr().out
    assert main(["shift", str(path), "--reads", "20", "--json"]) == 0
    found = json.loads(capsys.readouterr().out)
    # One tooth with and one against: (1/11 − 1/12) of a turn at the rotor, over 1.5 at the crank.
    step = 360.0 * (1 / 11 - 1 / 12) / 1.5
    assert abs(found["moves"][0]["result_btdc_deg"] - (20.0 + 2 * step)) < 1e-9
    assert main(["limits", str(tmp_path / "none.json")]) == 2
