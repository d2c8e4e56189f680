"""Refusals of a form's data: the fields are named as a person reads them, never as the file does."""

from __future__ import annotations

import pytest

from magview.classroom.sets import ClassSet
from magview.forms.draft import labelled, made
from magview.practice.exercise import Exercise
from magview.practice.library import find_exercise
from magview.spec.base import SpecError
from tests.wording import says


def data_of(**changes):
    exercise = find_exercise("gap-wrong")
    data = {name: getattr(exercise, name) for name in Exercise.model_fields}
    return data | changes


def test_a_whole_form_makes_its_model():
    assert made(Exercise, data_of()) == find_exercise("gap-wrong")


@pytest.mark.parametrize(
    ("changes", "told"),
    [
        ({"minutes": "soon"}, "“Minutes, a guide” is"),
        ({"name": ""}, "“Name” is"),
        ({"level": 9}, says("{field} is {found}; it must be at most {le:g}", field="“Level, 1 to 5”", found=9, le=5)),
        ({"goals": ()}, "“Goals” is"),
        ({"faults": ({"kind": "teeth", "size": (1.0, 2.0)},)}, "“Faults 1, Fault” is teeth, which needs"),
        ({"faults": ({"kind": "gap", "size": (0.1, 9.0)},)}, "“Faults 1”: “Size” of gap ends at 9"),
        ({"goals": ({"goal": "gap", "weight": -1.0},)}, "“Goals 1, Weight” is -1"),
        ({"tray": {"disc_step_deg": 9.0}}, "“On the tray, Crank disc, read to” is 9"),
    ],
)
def test_a_refusal_names_the_field_by_its_label(changes, told):
    with pytest.raises(SpecError) as caught:
        made(Exercise, data_of(**changes))
    assert str(caught.value).startswith(told)
    assert "_" not in str(caught.value)


def test_pupils_who_cannot_be_told_apart_are_refused_at_the_pupils():
    data = {"format": "magview-class/1", "seed": 1, "exercises": (find_exercise("pips"),), "pupils": ("Zoë", "zoe")}
    with pytest.raises(SpecError, match=r"^“Pupils, one name or number a line” has “Zoë” and “zoe”"):
        made(ClassSet, data)


def test_words_that_are_no_fields_stay():
    assert labelled(Exercise, "it must be a list of frosted, light") == "it must be a list of frosted, light"
    assert labelled(ClassSet, "any_thing is not there") == "any_thing is not there"
