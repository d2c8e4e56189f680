"""History, replay and recovery: nothing is lost, and everything can be done again to the last bit."""

from __future__ import annotations

import os

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, precondition, rule

from magview.bench import actions as do
from magview.bench.autosave import Autosave, dump_state, load_state
from magview.bench.store import Redo, Store, Undo, replay
from magview.spec.base import SpecError
from magview.spec.library import find_installation, find_magneto, shipped_names

MAGNETOS = [find_magneto(n) for n in shipped_names("magnetos")]
INSTALLATIONS = [find_installation(n) for n in shipped_names("installations")]

angle = st.one_of(st.floats(-720, 720), st.floats())
side = st.sampled_from(["left", "right"])
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
    st.builds(do.SetLeadFault, st.sampled_from(["shorted", "broken", "tab", "gremlin"]), st.booleans()),
    st.builds(do.TurnCrank, angle),
    st.builds(do.MountMagneto, st.booleans()),
    st.builds(do.ReadLamp, side, angle),
    st.builds(do.WantTiming, side, angle),
    st.builds(do.MoveTeeth, st.integers(-25, 25), st.integers(-25, 25)),
    st.builds(do.PaintMarks),
    st.builds(do.ViewSide, side),
)


class Bench(RuleBasedStateMachine):
    """Anything a person can do, in any order."""

    def __init__(self) -> None:
        super().__init__()
        self.store = Store(do.new_bench(find_installation("seven-radial-left")))
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
TestBench.settings = settings(max_examples=40, stateful_step_count=25, deadline=None)


def test_a_drag_is_one_step_with_the_whole_way_in_its_name():
    store = Store(do.new_bench(find_magneto("seven-radial")))
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


def test_time_that_passes_belongs_to_letting_go():
    store = Store(do.new_bench(find_magneto("seven-radial")))
    store.send(do.LetGo())
    for _ in range(50):
        store.send(do.Advance(33))
    assert store.undo_name == "Let go of the rotor"
    assert store.state.rotor_deg != 11.0
    store.undo()
    assert store.state == store.first


def test_the_journal_holds_undoing_too():
    store = Store(do.new_bench(find_magneto("seven-radial")))
    store.send(do.TurnRotor(3.0))
    store.undo()
    store.redo()
    assert [type(e) for e, _ in store.journal] == [do.TurnRotor, Undo, Redo]


def test_a_killed_programs_bench_is_found_again(tmp_path):
    state = do.apply(do.new_bench(find_installation("nine-radial-left")), do.ReadLamp("left", 1 / 3))
    gone = 2**22 + 7  # no such process: above the kernel's highest number
    Autosave(tmp_path, gone).keep(state)
    found = Autosave(tmp_path).recover()
    assert found == state
    assert dump_state(found) == dump_state(state)
    assert Autosave(tmp_path).recover() is None, "it is found once"


def test_a_running_programs_bench_is_left_alone(tmp_path):
    Autosave(tmp_path, os.getppid()).keep(do.new_bench(MAGNETOS[0]))
    assert Autosave(tmp_path).recover() is None
    assert len(list(tmp_path.iterdir())) == 1


@pytest.mark.parametrize("text", ["", "{", "[]", '{"format": "magview-bench/1"}', '{"format": "magview-bench/2"}'])
def test_a_damaged_bench_is_passed_over(tmp_path, text):
    good = do.new_bench(MAGNETOS[0])
    Autosave(tmp_path, 2**22 + 7).keep(good)
    damaged = tmp_path / f"bench-{2**22 + 8}.json"
    damaged.write_text(text)
    assert Autosave(tmp_path).recover() == good
    assert damaged.exists()


def test_a_full_disk_leaves_the_last_good_bench(tmp_path, monkeypatch):
    keeper = Autosave(tmp_path, 2**22 + 7)
    good = do.new_bench(MAGNETOS[0])
    keeper.keep(good)

    def full(*_: object) -> None:
        raise OSError(28, "No space left on device")

    monkeypatch.setattr(os, "fsync", full)
    with pytest.raises(SpecError, match="No space left"):
        keeper.keep(do.apply(good, do.TurnRotor(99.0)))
    monkeypatch.undo()
    assert [p.name for p in tmp_path.iterdir()] == [f"bench-{2**22 + 7}.json"]
    assert load_state(next(tmp_path.iterdir())) == good


def test_forgetting_leaves_nothing(tmp_path):
    keeper = Autosave(tmp_path)
    keeper.keep(do.new_bench(MAGNETOS[0]))
    keeper.forget()
    assert not list(tmp_path.iterdir())
