"""A limits card: what it refuses, and the magneto on its engine that it becomes."""

from __future__ import annotations

import pytest

from magview.spec.base import SpecError
from magview.spec.files import dump_json, write_model
from magview.spec.formats import kind_of
from magview.spec.library import find_installation_or_card
from magview.spec.limits import LimitsCard, file_stem, installation_of, read_limits
from magview.spec.sources import leaf_paths
from tests.cards import CARD, a_card

GIVEN = {
    "magneto": {"rotation", "e_gap_deg", "gap_limits_mm", "marks.tolerance_mm"},
    "engine": {"cylinders", "firing_btdc_deg", "timing_tolerance_deg", "synchronising_tolerance_deg"},
}
"""Fields of the files that a card speaks of."""


def test_a_card_asks_for_no_more_than_fourteen_entries():
    assert len(LimitsCard.model_fields) - 1 <= 14


@pytest.mark.parametrize(
    ("changed", "told"),
    [
        ({"gap_limits_mm": (0.4, 0.3)}, "smaller one comes first"),
        ({"gap_limits_mm": (0.4,)}, "at least 2"),
        ({"rotor_turns_per_crank_turn": 1.3}, "cylinders over twice the poles"),
        ({"rotor_turns_per_crank_turn": 1.0}, "cylinders over twice the poles"),  # three poles
        ({"e_gap_deg": 89.9, "rotor_turns_per_crank_turn": 0.75}, "below 45"),
        ({"timing_tolerance_deg": 0.0}, "above 0"),
        ({"manual": ""}, "manual"),
    ],
)
def test_what_cannot_be_is_refused_in_one_sentence(changed, told):
    with pytest.raises(SpecError, match=told) as error:
        a_card(**changed)
    assert "\n" not in str(error.value)


@pytest.mark.parametrize(("cylinders", "ratio", "poles"), [(6, 1.5, 2), (4, 1.0, 2), (7, 0.875, 4), (9, 1.125, 4)])
def test_poles_follow_from_a_spark_at_each(cylinders, ratio, poles):
    """Common practice: sparks in a crank turn, half the cylinders, over sparks in a rotor turn, the poles."""
    assert a_card(cylinders=cylinders, rotor_turns_per_crank_turn=ratio).poles == poles


@pytest.mark.parametrize("position", ["left", "right", "single"])
def test_a_card_becomes_an_installation_whose_every_other_field_is_noted_as_assumed(position):
    found = installation_of(a_card(right_btdc_deg=25.0), position)
    assert found.position == position and found.magneto.known == "manual"
    assert (found.engine.firing_btdc_deg.left, found.engine.firing_btdc_deg.right) == (23.0, 25.0)
    assert (found.disc.magneto_teeth, found.disc.drive_teeth, found.rotor_turns_per_crank_turn) == (11, 12, 1.5)
    for kind, part in (("magneto", found.magneto), ("engine", found.engine)):
        origins = {source.field: source.origin for source in part.sources}
        assert {name for name, origin in origins.items() if origin == "manual"} == GIVEN[kind]
        data = part.model_dump(exclude_none=True, exclude_defaults=True)
        for path in leaf_paths(type(part)):
            at = data
            for name in path.split("."):
                at = at.get(name) if isinstance(at, dict) else None
            if at is None or path in ("name", "known"):
                continue
            assert any(path == name or path.startswith(f"{name}.") for name in origins), path


def test_the_right_one_fires_as_the_left_where_the_card_is_silent():
    assert installation_of(a_card(), "right").engine.firing_btdc_deg.right == 23.0


def test_a_file_is_read_back_as_it_was_written_and_known_for_what_it_is(tmp_path):
    path = tmp_path / "card.magview.json"
    write_model(path, a_card())
    assert kind_of(path) == "limits" and read_limits(path) == a_card()
    assert find_installation_or_card(str(path)) == installation_of(a_card())
    assert "right_btdc_deg" not in dump_json(a_card())


@pytest.mark.parametrize(("registration", "stem"), [("X-ABC", "X-ABC"), ("../../x", "x"), ("  /", "card")])
def test_a_registration_becomes_a_harmless_name_of_a_file(registration, stem):
    assert file_stem(a_card(registration=registration)) == stem


def test_a_newer_card_is_left_as_it_is(tmp_path):
    (tmp_path / "x.json").write_text('{"format": "magview-limits/2"}', encoding="utf-8")
    with pytest.raises(SpecError, match="newer magview"):
        read_limits(tmp_path / "x.json")
    assert CARD["format"] == "magview-limits/1"
