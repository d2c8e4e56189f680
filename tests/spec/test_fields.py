"""What the models say of their fields: every one has a label and a meaning; units, signs and ends are told."""

from __future__ import annotations

import importlib.util
import json
import re
from pathlib import Path

import pytest

from magview.classroom import schema as of_class
from magview.forms.entry import entries_of
from magview.job import schema as of_job
from magview.job.checklists import Cautions
from magview.job.stages import Setting, ToothShift
from magview.practice.exercise_parts import FAULTS
from magview.spec.engine import Engine
from magview.spec.fields import Sign, about
from magview.spec.magneto import Magneto
from tests.wording import says

SCHEMAS = {kind: of_job.schema(kind) for kind in of_job.MODELS} | {
    kind: of_class.schema(kind) for kind in of_class.MODELS
}


@pytest.mark.parametrize("kind", SCHEMAS)
def test_every_property_of_a_schema_has_a_title_and_a_description(kind):
    schema = SCHEMAS[kind]
    for place, part in {kind: schema, **schema.get("$defs", {})}.items():
        for name, told in part["properties"].items():
            assert told.get("title"), f"{place}.{name} has no label"
            assert told.get("description", "").endswith("."), f"{place}.{name} has no meaning"


def test_unit_and_sign_stand_in_the_description():
    told = SCHEMAS["job"]["$defs"]["AsFound"]["properties"]
    assert "Rotor degrees, positive = late." in told["opening_error_deg"]["description"]
    assert "Millimetres." in told["gap_mm"]["description"]


def test_a_field_says_its_unit_sign_bounds_and_whether_it_may_be_left_out():
    plate = about(Setting, "backplate_deg")
    assert (plate.quantity.unit, plate.quantity.of, plate.quantity.sign) == ("°", "plate", Sign.WITH_ROTATION)
    assert plate.optional and plate.bounds == {"ge": -3600.0, "le": 3600.0}
    assert about(ToothShift, "moved_disc_teeth").quantity.unit == "teeth"
    assert about(Cautions, "place").choices == (
        ("engine", "on its engine"), ("bench", says("on a bench, off its engine")))  # fmt: skip


def test_both_ends_of_a_range_have_labels_of_their_own():
    low, high = about(Magneto, "gap_limits_mm").ends
    assert (low.label, high.label) == ("Smallest gap allowed", "Largest gap allowed")
    assert entries_of(Engine)["drop_rpm[1]"].label == says("Largest drop on one magneto")
    assert entries_of(Magneto)["contact_screw.lead_mm"].label == says("Lead of the thread")


def test_the_outermost_annotation_counts():
    assert about(Magneto, "cam").label == "Cam"
    assert entries_of(Magneto)["cam.profile.angle_deg"].quantity.of == "cam"


def guide_fields():
    """The program that writes the guide's tables of fields."""
    path = Path(__file__).parents[2] / ".ci" / "guide_fields.py"
    spec = importlib.util.spec_from_file_location("guide_fields", path)
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def test_the_guides_tables_of_fields_are_the_models_own():
    tables = guide_fields()
    text = tables.PAGE.read_text(encoding="utf-8")
    assert tables.page(text) == text, "run `python .ci/guide_fields.py`"
    assert text.count(tables.HEAD) == len(tables.TABLES)


def test_a_field_left_out_of_the_guides_table_is_found():
    tables = guide_fields()
    text = tables.PAGE.read_text(encoding="utf-8")
    line = next(line for line in text.splitlines() if "`e_gap_deg`" in line)
    assert tables.page(text.replace(f"{line}\n", "")) == text


def test_the_guide_names_every_kind_of_fault():
    section = guide_fields().PAGE.read_text(encoding="utf-8").partition("## Exercise\n")[2].partition("\n## ")[0]
    listed = section.partition("Kinds of fault: ")[2].partition("\n")[0]
    assert set(re.findall(r"`([\w-]+)`", listed)) == set(FAULTS)


def test_symbols_of_units_keep_their_letters():
    """A megajoule is a thousand million millijoules."""
    text = json.dumps(SCHEMAS, ensure_ascii=False)
    assert "mJ." in text and "µF." in text
    assert not re.search(r"\b(MJ|ΜF|MF|Kg)\b", text)


def test_the_end_that_a_rotation_left_out_is_seen_from_is_said():
    default = Engine.model_fields["rotation_seen_from"].default
    assert default == "propeller"
    assert f"Left out: the {default} end." in about(Engine, "rotation_seen_from").meaning
