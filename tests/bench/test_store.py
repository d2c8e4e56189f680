"""History, replay and recovery: nothing is lost, and everything can be done again to the last bit."""

from __future__ import annotations

import dataclasses
import json
import os
import random
import subprocess
import sys

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from magview.bench import actions as do
from magview.bench import store as store_module
from magview.bench.apply import apply
from magview.bench.autosave import Autosave
from magview.bench.placing import new_bench
from magview.bench.saved import dump_state, load_state
from magview.bench.state import outdated_inspections
from magview.bench.store import Redo, Store, Undo
from magview.physics.trials.trial import HowRead, PlateScale, ReadingErrors, Trial
from magview.physics.wear.inspection import Inspection
from magview.spec import history
from magview.spec.base import SpecError
from magview.spec.library import find_installation, find_magneto, shipped_names
from tests.counts import examples
from tests.magnetos import in_thousandths, on_the_published_coupling
from tests.mutants import mutant

MAGNETOS = [find_magneto(n) for n in shipped_names("magnetos")]
INSTALLATIONS = [find_installation(n) for n in shipped_names("installations")]

angle = st.one_of(st.floats(-720, 720), st.floats())
side = st.sampled_from(["left", "right"])
ROUGH = ReadingErrors(0.5, 0.3, 0.01)
anything = st.one_of(
    st.builds(do.PlaceMagneto, st.sampled_from(MAGNETOS)),
    st.builds(do.PlaceInstallation, st.sampled_from(INSTALLATIONS)),
    st.builds(do.TurnRotor, angle),
    st.builds(do.HoldRotor),
    st.builds(do.LetGo),
    st.builds(do.Advance, st.integers(-5, 120)),
    st.builds(do.SettleRotor),
    st.builds(do.TurnBackplate, angle),
    st.builds(do.TurnScrew, angle),
    st.builds(do.SetBoth, angle, angle),
    st.builds(do.TightenLock, st.booleans()),
    st.builds(do.TightenClamps, st.booleans()),
    st.builds(do.PullPlug, st.booleans()),
    st.builds(do.SwitchIgnition, st.booleans()),
    st.builds(do.SwitchOther, st.booleans()),
    st.builds(do.FitJumper, st.booleans()),
    st.builds(do.SlipPaper, st.booleans()),
    st.builds(
        do.SetLeadFault,
        st.sampled_from(["shorted", "broken", "chafed", "tab", "never-opens", "never-closes", "crossed", "gremlin"]),
        st.booleans(),
    ),
    st.builds(do.TurnCrank, angle),
    st.builds(do.LoadTrain),
    st.builds(do.MountMagneto, st.booleans()),
    st.builds(do.ReadLamp, side, angle),
    st.builds(
        do.CheckFirst, side, st.sampled_from(["reading", "stroke", "mark", "finger", "weather"]), st.booleans()
    ),
    st.builds(do.WantTiming, side, angle),
    st.builds(do.MoveTeeth, st.integers(-25, 25), st.integers(-25, 25)),
    st.builds(do.PaintMarks),
    st.builds(do.WearHeel, st.floats()),
    st.builds(
        do.NoteTrial, st.builds(Trial.blades, st.floats(-6, 6), st.floats(0.1, 0.3), st.sampled_from([None, 0.4]))
    ),
    st.builds(do.DropTrial, st.integers(-1, 3)),
    st.builds(do.ReadTrials, st.builds(HowRead, st.builds(PlateScale.slot, st.floats(10, 50)), st.just(ROUGH))),
    st.builds(do.NoteInspection, st.builds(Inspection, st.floats(0, 1000), st.floats(0, 1), st.just(0.01))),
    st.builds(do.DropInspection, st.integers(-1, 3)),
    st.builds(do.GrowPip, st.floats(-1.0, 3.0)),
    st.builds(do.BurnFaces, st.floats(-1.0, 3.0)),
    st.builds(do.ViewSide, side),
)


def replay(first, journal) -> Store:
    """Do it all again from the first state; the same events give the same states to the last bit."""
    store = Store(first)
    for event, gesture in journal:
        match event:
            case Undo():
                store.undo()
            case Redo():
                store.redo()
            case _:
                store.send(event, gesture)
    return store


class Bench(RuleBasedStateMachine):
    """Anything a person can do, in any order."""

    def __init__(self) -> None:
        super().__init__()
        self.store = Store(new_bench(on_the_published_coupling()))
        self.heard = 0
        self.store.subscribe(self._hear)

    def _hear(self, new, old) -> None:
        assert new != old
        self.heard += 1

    @rule(action=anything, gesture=st.sampled_from([None, "drag", "run"]))
    def act(self, action, gesture) -> None:
        before = self.store.state
        try:
            self.store.send(action, gesture)
        except SpecError:
            assert self.store.state is before

    @rule()
    def undo(self) -> None:
        self.store.undo()

    @precondition(lambda self: self.store.redo_name is not None)
    @rule()
    def redo(self) -> None:
        self.store.redo()

    @invariant()
    def replay_is_equal_to_the_last_bit(self) -> None:
        again = replay(self.store.first, self.store.journal)
        assert dump_state(again.state) == dump_state(self.store.state)
        assert again.undo_name == self.store.undo_name

    @invariant()
    def within_reach(self) -> None:
        state = self.store.state
        low, high = state.magneto.backplate.range_deg
        assert low <= state.backplate_deg <= high
        if state.engaged is not None:
            assert 0.0 <= state.engaged.play_deg <= state.magneto.condition.coupling_backlash_deg

    def teardown(self) -> None:
        while self.store.undo_name is not None:
            self.store.undo()
        assert self.store.state == self.store.first
        assert dump_state(self.store.state) == dump_state(self.store.first)


TestBench = Bench.TestCase
TestBench.settings = settings(max_examples=examples(40), stateful_step_count=25, deadline=None)


def test_a_drag_is_one_step_with_the_whole_way_in_its_name():
    store = Store(new_bench(in_thousandths()))
    for i in range(1, 16):
        store.send(do.TurnBackplate(i / 10), gesture=1)
    assert store.undo_name == "Turn the backplate 1.50° with rotation"
    store.send(do.TurnBackplate(1.0), gesture=2)
    assert store.undo_name == "Turn the backplate 0.50° against rotation"
    store.undo()
    store.undo()
    assert store.state == store.first
    assert store.undo_name is None
    assert store.redo_name == "Turn the backplate 1.50° with rotation"
    store.redo()
    assert store.state.backplate_deg == 1.5


def test_a_drag_there_and_back_is_no_step():
    store = Store(new_bench(in_thousandths()))
    store.send(do.TurnRotor(50.0))
    for plate in (0.5, 1.0, 0.5, 0.0):
        store.send(do.TurnBackplate(plate), "drag")
    assert store.undo_name == "Turn the rotor 39.00° with rotation"
    store.undo()
    assert store.state == store.first


def test_time_that_passes_belongs_to_letting_go():
    store = Store(new_bench(in_thousandths()))
    store.send(do.LetGo())
    for _ in range(50):
        store.send(do.Advance(33))
    assert store.undo_name == "Let go of the rotor"
    assert store.state.rotor_deg != 11.0
    store.undo()
    assert store.state == store.first


def test_the_journal_holds_undoing_too():
    store = Store(new_bench(in_thousandths()))
    store.send(do.TurnRotor(3.0))
    store.undo()
    store.redo()
    assert [type(e) for e, _ in store.journal] == [do.TurnRotor, Undo, Redo]


def leave_behind(folder, state) -> None:
    """What a killed program leaves: its file, and a lock that nobody holds."""
    script = (
        "import os, sys\n"
        "from pathlib import Path\n"
        "from magview.bench.autosave import Autosave\n"
        "from magview.bench.saved import load_state\n"
        "Autosave(Path(sys.argv[1])).keep(load_state(Path(sys.argv[2])))\n"
        "os.kill(os.getpid(), 9)\n"
    )
    state_file = folder.parent / "state.json"
    state_file.write_text(dump_state(state), encoding="utf-8")
    subprocess.run([sys.executable, "-c", script, str(folder), str(state_file)], check=False, timeout=60)


def kept_files(folder) -> list:
    return sorted(folder.glob("bench-*.json"))


@pytest.mark.process
def test_a_killed_programs_bench_is_found_again_and_survives_a_second_kill(tmp_path):
    folder = tmp_path / "kept"
    state = apply(new_bench(find_installation("nine-radial-left")), do.ReadLamp("left", 1 / 3))
    leave_behind(folder, state)
    assert len(kept_files(folder)) == 1
    finder = Autosave(folder)
    found = finder.recover()
    assert found == state
    assert dump_state(found) == dump_state(state)
    assert len(kept_files(folder)) == 1, "it must not be lost before the next change"
    assert Autosave(folder).recover() is None, "it has an owner now"
    finder.forget()
    assert not list(folder.iterdir())


def test_a_running_programs_bench_is_left_alone(tmp_path):
    running = Autosave(tmp_path)
    running.keep(new_bench(MAGNETOS[0]))
    assert Autosave(tmp_path).recover() is None
    assert len(kept_files(tmp_path)) == 1
    running.forget()


@pytest.mark.process
@pytest.mark.parametrize(
    "text", ["", "{", "[]", '{"format": "magview-bench/1"}', '{"format": "magview-bench/2"}', "nan"]
)
def test_a_damaged_bench_is_passed_over(tmp_path, text):
    folder = tmp_path / "kept"
    good = new_bench(MAGNETOS[0])
    leave_behind(folder, good)
    damaged = folder / "bench-damaged.json"
    if text == "nan":
        text = dump_state(good).replace(f'"rotor_deg": {good.rotor_deg}', '"rotor_deg": NaN')
        assert "NaN" in text
    damaged.write_text(text)
    finder = Autosave(folder)
    assert finder.recover() == good
    assert damaged.exists()
    finder.forget()


def test_time_after_an_undo_neither_makes_steps_nor_takes_away_what_can_be_redone():
    store = Store(new_bench(in_thousandths()))
    store.send(do.LetGo())
    store.send(do.Advance(100))
    store.send(do.TurnBackplate(1.0))
    for _ in range(3):
        store.undo()
        store.send(do.Advance(30))
        if store.redo_name == "Let go of the rotor":
            break
    assert store.redo_name == "Let go of the rotor"
    assert store.undo_name is None
    assert store.state == store.first


def test_the_record_does_not_grow_without_end(monkeypatch):
    monkeypatch.setattr(store_module, "MAX_EVENTS", 50)
    monkeypatch.setattr(history, "MAX_STEPS", 10)
    store = Store(new_bench(in_thousandths()))
    for i in range(230):
        store.send(do.TurnRotor(float(i)))
        assert len(store.journal) <= 50
    again = replay(store.first, store.journal)
    assert dump_state(again.state) == dump_state(store.state)
    for _ in range(20):
        store.undo()
    assert store.state.rotor_deg == 219.0


def test_a_magneto_that_never_opens_as_designed_is_no_trap():
    worn = on_the_published_coupling()
    magneto = worn.magneto.model_copy(
        update={"condition": worn.magneto.condition.model_copy(update={"heel_wear_mm": 0.15})}
    )
    state = new_bench(worn.model_copy(update={"magneto": magneto}))
    turned = apply(state, do.TurnCrank(-10.0))
    assert "NaN" not in dump_state(turned)
    assert turned.rotor_deg != state.rotor_deg


def test_a_full_disk_leaves_the_last_good_bench(tmp_path, monkeypatch):
    keeper = Autosave(tmp_path)
    good = new_bench(MAGNETOS[0])
    keeper.keep(good)

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(SpecError, match="No space left"):
        keeper.keep(apply(good, do.TurnRotor(99.0)))
    monkeypatch.undo()
    (kept,) = kept_files(tmp_path)
    assert load_state(kept) == good
    keeper.forget()


def test_forgetting_leaves_nothing(tmp_path):
    keeper = Autosave(tmp_path)
    keeper.keep(new_bench(MAGNETOS[0]))
    keeper.forget()
    assert not list(tmp_path.iterdir())


def test_a_gesture_over_two_kinds_of_action_is_one_step_and_loses_none():
    store = Store(new_bench(find_magneto("four-opposed")))
    first = store.state
    store.send(do.TurnRotor(30.0))
    before = store.state
    store.send(do.PlaceInstallation(find_installation("nine-radial-left")), "one hand")
    store.send(do.TurnCrank(0.0), "one hand")
    store.undo()
    assert store.state == before
    store.undo()
    assert store.state == first


def test_a_magneto_may_be_called_what_numbers_may_not_be(tmp_path):
    magneto = in_thousandths().model_copy(update={"name": "Infinity NaN"})
    path = tmp_path / "bench.json"
    path.write_text(dump_state(new_bench(magneto)), encoding="utf-8")
    assert load_state(path).magneto.name == "Infinity NaN"


def test_a_bench_left_on_purpose_is_found_again(tmp_path):
    leaver, state = Autosave(tmp_path), apply(new_bench(MAGNETOS[0]), do.TurnBackplate(1.0))
    leaver.keep(state)
    leaver.leave()
    finder = Autosave(tmp_path)
    assert finder.recover() == state
    finder.forget()
    leaver.leave()  # a second time does no harm
    leaver.forget()
    assert not list(tmp_path.iterdir())


def test_forgetting_what_was_never_kept_is_nothing(tmp_path):
    Autosave(tmp_path / "absent").forget()
    assert not list(tmp_path.iterdir())


def test_a_folder_that_cannot_be_made_is_said_in_one_sentence(tmp_path):
    (tmp_path / "kept").write_text("a file where the folder should be")
    with pytest.raises(SpecError, match=r"^kept: cannot be used: "):
        Autosave(tmp_path / "kept").keep(new_bench(MAGNETOS[0]))


@pytest.mark.process
@pytest.mark.parametrize("broken", ["no lock", "no file"])
def test_what_cannot_be_opened_is_passed_over_for_what_can(tmp_path, broken):
    folder, good = tmp_path / "kept", new_bench(MAGNETOS[0])
    leave_behind(folder, good)
    strange = folder / "bench-strange.json"
    if broken == "no lock":  # a folder in the lock's place cannot be opened for writing
        strange.write_text(dump_state(apply(good, do.TurnRotor(77.0))), encoding="utf-8")
        strange.with_suffix(".lock").mkdir()
    else:
        strange.symlink_to(tmp_path / "gone.json")
    finder = Autosave(folder)
    assert finder.recover() == good
    finder.forget()


def test_a_trial_without_a_blade_too_thick_survives_and_a_strange_list_of_them_is_damage(tmp_path):
    """JSON has no infinity (RFC 8259 §6): the open end is kept as nothing."""
    state = apply(new_bench(MAGNETOS[0]), do.NoteTrial(Trial.blades(1.0, 0.3, None)))
    text, path = dump_state(state), tmp_path / "bench.json"
    assert "Infinity" not in text
    path.write_text(text, encoding="utf-8")
    assert load_state(path) == state
    for strange in ("[7]", '[{"gap_low_mm": null}]', '"x"', "3", "null", "true"):
        before, _, after = text.partition('"trials": ')
        path.write_text(before + f'"trials": {strange}' + after[after.index("]") + 1 :], encoding="utf-8")
        with pytest.raises(SpecError, match="damaged"):
            load_state(path)


def test_an_older_bench_has_its_inspections_noted_where_it_stands_and_half_a_list_is_damage(tmp_path):
    """Benches were kept without the settings of their inspections: none of them can be said to be outdated."""
    state = apply(new_bench(MAGNETOS[0]), do.TurnBackplate(1.5))
    for hours in (0.0, 50.0):
        state = apply(state, do.NoteInspection(Inspection(hours, 0.22, 0.01)))
    kept, path = json.loads(dump_state(state)), tmp_path / "bench.json"
    del kept["state"]["inspected_at"]
    path.write_text(json.dumps(kept), encoding="utf-8")
    assert load_state(path) == state
    assert outdated_inspections(load_state(path)) == (False, False)
    assert outdated_inspections(apply(load_state(path), do.TurnBackplate(2.0))) == (True, True)
    kept["state"]["inspected_at"] = [[1.5, 0.0]]
    path.write_text(json.dumps(kept), encoding="utf-8")
    with pytest.raises(SpecError, match="is damaged: an inspection lacks"):
        load_state(path)


def test_a_kept_bench_spoilt_anyhow_is_a_bench_or_one_sentence(tmp_path):
    state = new_bench(on_the_published_coupling())
    for action in (
        do.NoteTrial(Trial.blades(1.0, 0.3, None)),
        do.NoteInspection(Inspection(10.0, 0.22, 0.01)),
        do.MoveTeeth(1, 1),
    ):
        state = apply(state, action)
    data, path, whole = json.loads(dump_state(state)), tmp_path / "bench.json", 0
    for seed in range(200):
        path.write_bytes(mutant(data, random.Random(seed)))
        try:
            found = load_state(path)
        except SpecError:  # anything else would stop the start
            continue
        whole += 1
        path.write_text(dump_state(found), encoding="utf-8")
        assert load_state(path) == found
        assert len(outdated_inspections(found)) == len(found.inspections)
    assert 0 < whole < 200


def test_what_no_hand_can_do_is_refused_and_changes_nothing():
    state = new_bench(on_the_published_coupling())
    traced = new_bench(find_magneto("traced-six"))
    full = apply(state, do.NoteTrial(Trial.blades(0.0, 0.2, 0.23)))
    full = dataclasses.replace(full, trials=full.trials * 200, inspections=(Inspection(1.0, 0.2, 0.0),) * 200)
    for bench, action, told in (
        (state, do.WearHeel(float("nan")), "wear must be a finite number"),
        (state, do.BurnFaces(float("inf")), "wear must be a finite number"),
        (state, do.GrowPip(float("inf")), "wear must be a finite number"),
        (traced, do.WearHeel(0.01), "no heel arm"),
        (state, do.Advance(-1), "takes 0 to 20000 at a time"),
        (state, do.Advance(20_001), "takes 0 to 20000 at a time"),
        (state, do.SetLeadFault("gremlin", True), "“gremlin” is not a fault of the switch lead"),
        (state, do.MoveTeeth(19, 0), "a whole turn of teeth"),
        (state, do.MoveTeeth(0, -20), "a whole turn of teeth"),
        (state, do.DropTrial(0), "no trial 1; there are 0"),
        (state, do.DropInspection(-1), "no inspection 0; there are 0"),
        (full, do.NoteTrial(Trial.blades(0.0, 0.2, 0.23)), "200 trials already"),
        (full, do.NoteInspection(Inspection(1.0, 0.2, 0.0)), "200 inspections already"),
        (traced, do.TurnCrank(1.0), "not on an engine"),
        (apply(state, do.WearHeel(0.5)), do.ReadLamp("left", 25.0), "the lamp tells no timing"),
    ):
        before = dump_state(bench)
        with pytest.raises(SpecError, match=told):
            apply(bench, action)
        assert dump_state(bench) == before
    # One tooth less than a whole turn is a place like any other, and so is the last free line.
    assert apply(state, do.MoveTeeth(18, -19)).engaged.mounting.magneto_teeth == 18
    assert len(apply(full, do.DropTrial(199)).trials) == 199


def test_a_note_struck_out_is_the_one_named():
    state = new_bench(MAGNETOS[0])
    for plate in (1.0, 2.0, 3.0):
        state = apply(state, do.NoteTrial(Trial.blades(plate, 0.2, 0.23)))
    assert [t.backplate_deg for t in apply(state, do.DropTrial(1)).trials] == [1.0, 3.0]


def test_what_asks_for_what_is_already_so_is_no_step():
    """A tight screw does not refuse to stay where it is: a form that sets all anew must not fail for it."""
    store = Store(new_bench(on_the_published_coupling()))
    store.send(do.TightenClamps(True))
    store.send(do.TightenLock(True))
    name, state = store.undo_name, store.state
    for action in (
        do.SetBoth(state.backplate_deg, state.screw_deg),
        do.TurnBackplate(state.backplate_deg + 1e-9),
        do.TightenLock(True),
        do.MountMagneto(True),
        do.TurnRotor(state.rotor_deg),
        do.Advance(0),
    ):
        store.send(action)
        assert store.state == state and store.undo_name == name
    store.redo()
    assert store.state == state, "there is nothing to do again"


def test_a_rotor_that_no_magnet_pulls_stays_where_it_is_let_go():
    magneto = in_thousandths()
    weak = magneto.model_copy(update={"detent": magneto.detent.model_copy(update={"torque_nm": 0.0})})
    for loose in (weak, magneto.model_copy(update={"detent": None})):
        state = apply(new_bench(loose), do.SettleRotor())
        assert not state.held and state.rotor_deg == 11.0
