"""Two moments compared in words: hands first, then results, with the signs that the trade knows."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from magview.bench import actions as do
from magview.bench.actions import PlaceMagneto, TurnBackplate, TurnScrew
from magview.bench.apply import apply
from magview.bench.changes import changes
from magview.bench.placing import new_bench
from magview.spec.language import lengths_in
from magview.spec.library import find_magneto, shipped_names
from tests.magnetos import on_the_published_coupling
from tests.wording import says


@pytest.fixture
def bench():
    return new_bench(on_the_published_coupling())


def test_nothing_has_changed(bench):
    assert changes(bench, bench) == []


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_the_plate_with_rotation_opens_later_and_leaves_the_gap(name):
    """Common practice: the backplate shifts the opening alone, by its own angle over the cam's gearing."""
    before = new_bench(find_magneto(name))
    after = apply(before, TurnBackplate(before.backplate_deg + 0.5))
    hand, result = [c for c in changes(before, after) if "limits" not in c]
    assert hand == says("The backplate was turned {angle:deg} with rotation.", angle=0.5)
    found = re.fullmatch(r"The contacts open ([\d.]+)° of rotor later\.", result)
    assert found is not None
    assert float(found[1]) == pytest.approx(0.5 / before.magneto.cam.turns_per_rotor_turn, abs=0.006)


def test_the_screw_closer_opens_later_and_less_wide(bench):
    told = " ".join(changes(bench, apply(bench, TurnScrew(4.0))))
    assert "contacts closer" in told and "later" in told and "narrower" in told
    back = " ".join(changes(apply(bench, TurnScrew(4.0)), bench))
    assert "contacts wider" in back and "earlier" in back and "is 0." in back and "wider: " in back


def test_a_setting_out_of_its_limits_is_said_both_ways(bench):
    wrong = apply(bench, TurnBackplate(bench.backplate_deg + 3.0))
    assert says("It is out of its limits now.") in changes(bench, wrong)
    assert says("It is within its limits now.") in changes(wrong, bench)


def test_without_numbers_there_is_no_digit(bench):
    after = apply(apply(bench, TurnScrew(-6.0)), TurnBackplate(1.5))
    after = replace(
        after, rotor_deg=after.rotor_deg - 30.0, lock_tight=True, lead=replace(after.lead, switch_on=True)
    )
    told = changes(bench, after, numbers=False)
    assert len(told) >= 6 and not re.search(r"\d", " ".join(told))
    assert says("The rotor was turned against rotation.") in told and "The switch is on." in told


def test_lengths_in_inches(bench):
    lengths_in("in")
    (told,) = [c for c in changes(bench, apply(bench, TurnScrew(-6.0))) if "gap" in c]
    assert "mm" not in told and re.search(r"\d (?:in|thou)\b", told)


def test_another_magneto_is_all_there_is_to_say(bench):
    after = apply(bench, PlaceMagneto(find_magneto("traced-six")))
    assert changes(bench, after) == ["Another magneto is on the bench: " + after.magneto.name + "."]


def without_results(before, after):
    results = ("The contacts open", "The largest gap", "It is ")
    return [c for c in changes(before, after) if not c.startswith(results)]


DONE = [
    (do.LetGo(), says("The rotor was let go."), says("The rotor is held.")),
    (do.TightenClamps(True), says("The clamp screws are tight."), says("The clamp screws are slack.")),
    (do.SwitchIgnition(True), "The switch is on.", says("The switch is off.")),
    (do.PullPlug(True), says("The lead's plug is out."), says("The lead's plug is in.")),
    (do.FitJumper(True), "The jumper is on.", says("The jumper is off.")),
    (do.SwitchOther(True), says("The other magneto's switch is on."), says("The other magneto's switch is off.")),
    (
        do.SlipPaper(True),
        says("Paper lies under the grounding tab."),
        says("The paper is out from under the grounding tab."),
    ),
    *(
        (do.SetLeadFault(fault, True), *[says("The switch lead is in another condition.")] * 2)
        for fault in ("shorted", "chafed", "never-opens", "never-closes", "crossed")
    ),
    (do.SetLeadFault("broken", True), *[says("The switch lead is in another condition.")] * 2),
    (do.SetLeadFault("tab", True), *[says("The switch lead is in another condition.")] * 2),
    (do.GrowPip(0.05), *[says("Wear or pips of the magneto are others.")] * 2),
    (do.MountMagneto(False), says("The magneto is off the engine."), says("The magneto is on the engine.")),
    (do.ViewSide("right"), says("The right magneto is in view."), says("The left magneto is in view.")),
]


@pytest.mark.parametrize(("action", "there", "back"), DONE)
def test_each_thing_done_is_told_both_ways_and_nothing_else(bench, action, there, back):
    after = apply(bench, action)
    assert without_results(bench, after) == [there]
    assert without_results(after, bench) == [back]


def test_the_lock_screw_carries_the_contact_screw_along(bench):
    """The file's creep: −3°, contacts wider."""
    told = without_results(bench, apply(bench, do.TightenLock(True)))
    assert told == [
        says("The contact screw was turned {angle:deg}, contacts wider.", angle=3.0),
        says("The lock screw is tight."),
    ]


def test_teeth_moved_are_told_face_by_face(bench):
    flange, disc = apply(bench, do.MoveTeeth(1, 0)), apply(bench, do.MoveTeeth(0, -1))
    assert says("B, the magneto flange, stands in other teeth of the disc.") in changes(bench, flange)
    assert says("A, the disc, stands in other teeth of the drive flange.") not in changes(bench, flange)
    assert says("A, the disc, stands in other teeth of the drive flange.") in changes(bench, disc)
    # A tooth of 20 is 18° of rotor, and the crank stays where it is.
    assert says("The rotor was turned {angle:deg} against rotation.", angle=18.0) in changes(bench, disc)


def test_a_magneto_put_on_its_engine_is_told(bench):
    alone = new_bench(bench.magneto)
    assert without_results(alone, bench) == [says("The magneto is on an engine now.")]
    assert without_results(bench, alone) == [says("The magneto stands for itself now.")]


def test_contacts_that_open_no_more_are_told(bench):
    """0.5 mm off the heel is 0.81 mm at the contacts, more than the lobe lifts them."""
    worn = apply(bench, do.WearHeel(0.5))
    assert says("The contacts never open now.") in changes(bench, worn)
    assert says("The contacts open now.") in changes(worn, bench)
    assert not [c for c in changes(worn, apply(worn, TurnBackplate(2.0))) if c.startswith("The contacts")]
