"""Fields for typing: what is typed stays until it is a value; a rounding is never written back."""

from __future__ import annotations

from functools import partial

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from magview.forms.entry import entry_of
from magview.forms.typed import read, written
from magview.practice.exercise_parts import Fault, Goal
from magview.spec.magneto import Marks
from magview.ui.kit.forms import LineEdit, TextEdit, TicksEdit
from magview.ui.kit.model_form import ModelForm

RADIUS = entry_of(Marks, "radius_mm")


@pytest.fixture(params=[LineEdit, TextEdit])
def field(request, qtbot):
    edit = request.param(partial(read, RADIUS, inches=True), partial(written, RADIUS, inches=True))
    qtbot.addWidget(edit)
    edit.told, edit.refusals = [], []
    edit.entered.connect(edit.told.append)
    edit.wrong.connect(edit.refusals.append)
    edit.show_value(36.0)
    return edit


def type_over(edit, text: str) -> None:
    edit.selectAll()
    QTest.keyClicks(edit, text)
    edit.finish()


@pytest.mark.parametrize(("text", "told"), [(" 1.41732 in ", []), ("1.4173 in", [1.4173 * 25.4]), ("1,5", [38.1])])
def test_a_rounding_is_not_written_back(field, text, told):
    # 36 mm is shown as 1.41732 in, which is 35.9999 mm.
    type_over(field, text)
    assert field.told == pytest.approx(told) and field.refusals == []


def test_what_is_no_value_stays_and_is_refused(field):
    type_over(field, "wide")
    assert field.text() == "wide" and field.told == [] and "“wide” is not a length" in field.refusals[0]
    field.show_value(36.0)  # shown anew, as after another field's change: what is being typed is not wiped
    assert field.text() == "wide"
    type_over(field, "1 in")
    assert field.told == [25.4]


def test_nothing_is_not_read(field):
    field.selectAll()
    QTest.keyClick(field, Qt.Key.Key_Delete)
    field.finish()
    assert field.told == [None]


def test_ticks_keep_a_files_order(qtbot):
    ticks = TicksEdit((("a", "A"), ("b", "B"), ("c", "C")))
    qtbot.addWidget(ticks)
    told = []
    ticks.entered.connect(told.append)
    ticks.show_value(("c", "a"))
    ticks.boxes["b"].click()
    ticks.boxes["c"].click()
    assert told == [("c", "a", "b"), ("a", "b")]


@pytest.mark.parametrize(
    "item",
    [Fault(kind="gap", size=(0.05, 0.2), way="minus", chance=0.35), Goal(goal="gap", weight=2.5, every_lobe=True)],
)
def test_a_form_holds_what_it_was_shown(item, qtbot):
    form = ModelForm(type(item))
    qtbot.addWidget(form)
    form.show_value(item)
    assert type(item).model_validate(form.data()) == item


def test_a_hidden_field_counts_as_left_out_and_is_there_again(qtbot):
    form = ModelForm(Fault)
    qtbot.addWidget(form)
    form.show_value(Fault(kind="gap", size=(0.1, 0.2)))
    form.show_only(("kind", "side", "chance"))
    assert form.data()["size"] == (0.0, 0.0)
    form.show_only(("kind", "size"))
    assert form.data()["size"] == (0.1, 0.2)


def test_typing_counts_at_every_key_and_is_refused_beside_the_field_when_it_is_left(qtbot):
    form = ModelForm(Goal)
    qtbot.addWidget(form)
    form.show_value(Goal(goal="gap", weight=2.0))
    weight, changes = form.edits["weight"], []
    form.changed.connect(lambda: changes.append(form.data()["weight"]))
    weight.selectAll()
    QTest.keyClicks(weight, "2,5")
    assert changes[-1] == 2.5
    type_over(weight, "heavy")
    assert form.data()["weight"] == "heavy" and "is not a number" in form.refusals["weight"].text()
    type_over(weight, "400")
    # 0 to 100: the bounds of the weight in the guide's table of an exercise's fields.
    assert "400 is outside 0 to 100" in form.refusals["weight"].text() and weight.text() == "400"
    type_over(weight, "3")
    assert form.data()["weight"] == 3.0 and form.refusals["weight"].text() == ""
