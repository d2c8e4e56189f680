"""The bench as a value, its actions and its store."""

from __future__ import annotations

import dataclasses

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.bench.actions import PlaceInstallation, PlaceMagneto, SetBoth, TurnBackplate, TurnRotor, TurnScrew
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.bench.store import Store
from magview.job.shift_plan import plan_from
from magview.physics.engine.coupling import plan
from magview.spec.base import SpecError
from magview.spec.library import find_installation, find_magneto, shipped_names

numbers = st.floats(allow_nan=True, allow_infinity=True)
actions = st.one_of(
    st.builds(TurnRotor, numbers),
    st.builds(TurnBackplate, numbers),
    st.builds(TurnScrew, numbers),
    st.builds(SetBoth, numbers, numbers),
    st.builds(PlaceMagneto, st.sampled_from([find_magneto(n) for n in shipped_names("magnetos")])),
)


@given(st.lists(actions, max_size=30))
def test_any_actions_leave_a_legal_state_or_are_refused(sequence):
    state = new_bench(find_magneto("seven-radial"))
    for action in sequence:
        before = state
        try:
            state = apply(state, action)
        except SpecError:
            assert state is before
        low, high = state.magneto.backplate.range_deg
        assert low <= state.backplate_deg <= high
        low, high = state.magneto.contact_screw.range_deg
        assert low <= state.screw_deg <= high
        assert abs(state.rotor_deg) <= 1e6


@pytest.mark.parametrize(
    ("action", "field", "hand"),
    [
        (TurnRotor(3.0), "rotor_deg", "crank"),
        (TurnBackplate(1.0), "backplate_deg", "setting"),
        (TurnScrew(2.0), "screw_deg", "setting"),
    ],
)
def test_a_new_value_tells_once_and_the_same_value_never(action, field, hand):
    store = Store(new_bench(find_magneto("seven-radial")))
    heard: list[tuple[BenchState, BenchState]] = []
    store.subscribe(lambda new, old: heard.append((new, old)))
    store.send(action)
    store.send(action)
    assert len(heard) == 1
    new, old = heard[0]
    assert new is store.state
    changed = [f.name for f in dataclasses.fields(new) if getattr(new, f.name) != getattr(old, f.name)]
    assert changed == [field, "touched"] and new.touched == {hand}


def test_a_state_cannot_be_changed_in_place():
    state = new_bench(find_magneto("seven-radial"))
    with pytest.raises(dataclasses.FrozenInstanceError):
        state.rotor_deg = 1.0


def test_an_engine_timed_to_another_cylinder_is_refused_at_the_bench_in_one_sentence():
    shipped = find_installation("seven-radial-left")
    other = shipped.model_copy(update={"engine": shipped.engine.model_copy(update={"timing_cylinder": 3})})
    before = new_bench(find_magneto("seven-radial"))
    with pytest.raises(SpecError, match=r"is timed to No. 3, and the bench counts .* from No. 1 alone") as refused:
        apply(before, PlaceInstallation(other))
    assert shipped.engine.name in str(refused.value)
    with pytest.raises(SpecError, match=r"timed to No\. 3"):
        plan_from(other, 23.0, 27.0, plan(17, 18, 0.875, 23.0, 27.0)[0])
    assert apply(before, PlaceInstallation(shipped)).engaged is not None
