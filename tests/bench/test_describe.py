"""What the undo button says of each thing a hand can do: an order in the words of the trade, with its amount."""

from __future__ import annotations

import pytest

from magview.bench import actions as do
from magview.bench.describe import describe
from magview.bench.placing import new_bench
from magview.bench.store import Store
from magview.physics.trials.trial import HowRead, PlateScale, Trial
from magview.physics.wear.inspection import Inspection
from magview.spec.library import find_installation, find_magneto
from tests.magnetos import on_the_published_coupling


@pytest.fixture
def store():
    return Store(new_bench(on_the_published_coupling()))  # rotor at 11°, crank 25° before top dead centre


SAID = [
    ([do.PlaceMagneto(find_magneto("nine-radial"))], "Place the Nine-cylinder practice magneto"),
    ([do.TurnRotor(12.5)], "Turn the rotor 1.50° with rotation"),
    ([do.TurnRotor(10.0)], "Turn the rotor 1.00° against rotation"),
    ([do.LetGo()], "Let go of the rotor"),
    ([do.SettleRotor()], "Let go of the rotor"),
    ([do.LetGo(), do.HoldRotor()], "Hold the rotor"),
    ([do.TurnBackplate(-2.0)], "Turn the backplate 2.00° against rotation"),
    ([do.TurnScrew(3.0)], "Turn the contact screw 3.00° clockwise (contacts closer)"),
    ([do.SetBoth(1.0, 2.0)], "Set backplate and contact screw"),
    ([do.TightenLock(True)], "Tighten the lock screw"),
    ([do.TightenLock(True), do.TightenLock(False)], "Slacken the lock screw"),
    ([do.TightenClamps(True)], "Tighten the clamp screws"),
    ([do.TightenClamps(True), do.TightenClamps(False)], "Slacken the clamp screws"),
    ([do.PullPlug(True)], "Pull the switch lead's plug"),
    ([do.PullPlug(True), do.PullPlug(False)], "Push in the switch lead's plug"),
    ([do.SwitchIgnition(True)], "Switch on"),
    ([do.SwitchIgnition(True), do.SwitchIgnition(False)], "Switch off"),
    ([do.SetLeadFault("shorted", True)], "Put in a short inside the magneto"),
    ([do.SetLeadFault("tab", True), do.SetLeadFault("tab", False)], "Bend the grounding tab back to the case"),
    ([do.SetLeadFault("chafed", True)], "Chafe the switch lead through to ground"),
    ([do.SetLeadFault("crossed", True)], "Cross the switch leads of left and right"),
    ([do.FitJumper(True)], "Clip the jumper on"),
    ([do.FitJumper(True), do.FitJumper(False)], "Take the jumper off"),
    ([do.SlipPaper(True)], "Slip paper under the grounding tab"),
    ([do.SlipPaper(True), do.SlipPaper(False)], "Take the paper from the grounding tab"),
    ([do.SwitchOther(True)], "Switch the other magneto on"),
    ([do.SwitchOther(True), do.SwitchOther(False)], "Switch the other magneto off"),
    ([do.WearHeel(0.05)], "Wear the heel to 0.050 mm"),
    ([do.BurnFaces(0.01)], "Burn the faces by 0.010 mm"),
    ([do.GrowPip(0.02)], "Grow a pip of 0.020 mm"),
    ([do.NoteTrial(Trial.blades(-1.5, 0.2, 0.23))], "Note the trial at plate -1.50°"),
    ([do.NoteTrial(Trial.blades(1.5, 0.2, 0.23)), do.DropTrial(0)], "Strike out trial 1"),
    ([do.ReadTrials(HowRead(PlateScale.marks(0.5)))], "Say how trials are read"),
    ([do.NoteInspection(Inspection(25.0, 0.22, 0.01))], "Note the inspection at 25 h"),
    ([do.NoteInspection(Inspection(25.0, 0.22, 0.01)), do.DropInspection(0)], "Strike out inspection 1"),
    ([do.TurnCrank(-20.0)], "Turn the crank 5.00° with rotation"),
    ([do.TurnCrank(-30.0)], "Turn the crank 5.00° against rotation"),
    ([do.MountMagneto(False)], "Take the magneto off the engine"),
    ([do.MountMagneto(False), do.MountMagneto(True)], "Refit the magneto by its marks"),
    ([do.ReadLamp("left", 22.0)], "Read the lamp: left fires 22.00° before top dead centre"),
    ([do.ReadLamp("right", 22.0)], "Read the lamp: right fires 22.00° before top dead centre"),
    ([do.WantTiming("left", 28.0)], "Want left at 28.00° before top dead centre"),
    ([do.WantTiming("right", 28.0)], "Want right at 28.00° before top dead centre"),
    ([do.MoveTeeth(1, 0)], "Move B, the magneto flange, 1 tooth with rotation"),
    ([do.MoveTeeth(0, -2)], "Move A, the disc, 2 teeth against rotation"),
    ([do.MoveTeeth(1, 0), do.MoveTeeth(0, 1)],
     "Move A, the disc, 1 tooth with rotation and B, the magneto flange, 1 tooth against rotation"),
    ([do.MoveTeeth(1, 0), do.PaintMarks()], "Paint new marks on the coupling"),
    ([do.ViewSide("right")], "Look at the right magneto"),
    ([do.ViewSide("right"), do.ViewSide("left")], "Look at the left magneto"),
]  # fmt: skip


@pytest.mark.parametrize(("actions", "words"), SAID)
def test_the_last_thing_done_is_what_undo_offers(store, actions, words):
    for action in actions:
        store.send(action)
    assert store.undo_name == words
    store.undo()
    assert store.redo_name == words


def test_the_crank_and_the_coupling_of_another_engine_have_no_way_to_tell():
    """One gesture that begins without an engine: there was no crank before that anything was turned from."""
    store = Store(new_bench(find_magneto("four-opposed")))
    store.send(do.PlaceInstallation(find_installation("nine-radial-left")), "one hand")
    store.send(do.TurnCrank(0.0), "one hand")
    assert store.undo_name == "Turn the crank"
    store.send(do.MoveTeeth(1, 0), "one hand")
    assert store.undo_name == "Move teeth"


def test_teeth_that_went_there_and_back_in_a_gesture_of_more_are_not_counted(store):
    store.send(do.TurnCrank(-20.0), "one hand")
    store.send(do.MoveTeeth(1, 0), "one hand")
    store.send(do.MoveTeeth(0, 0), "one hand")
    assert store.undo_name == "Move the coupling"


def test_time_that_passes_has_its_word_in_the_record(store):
    store.send(do.LetGo())
    before = store.state
    store.send(do.Advance(10))
    assert store.undo_name == "Let go of the rotor", "no step of its own"
    assert describe(do.Advance(10), before, store.state) == "Wait"
