"""What hands have done on a bench, and what it only begins with; which lamp readings stand."""

from __future__ import annotations

from dataclasses import replace
from functools import partial

import pytest

from magview.bench.actions import (
    BurnFaces,
    FitJumper,
    GrowPip,
    MoveTeeth,
    PaintMarks,
    PlaceInstallation,
    PullPlug,
    ReadLamp,
    SetBoth,
    SetLeadFault,
    SlipPaper,
    SwitchIgnition,
    SwitchOther,
    TightenClamps,
    TurnCrank,
    ViewSide,
    WantTiming,
    WearHeel,
)
from magview.bench.apply import apply
from magview.bench.saved import dump_state, load_state
from magview.bench.state import lamp_reading_deg
from magview.bench.store import Store
from magview.spec.library import find_installation
from tests.magnetos import bench_after

FILE = find_installation("seven-radial-left")


bench = partial(bench_after, FILE)


@pytest.mark.parametrize(
    ("action", "hand"),
    [
        (SetBoth(1.0, 0.0), {"setting"}),
        (TightenClamps(True), {"setting"}),
        (WearHeel(0.01), {"wear"}),
        (GrowPip(0.01), {"pip"}),
        (BurnFaces(0.01), {"wear"}),
        (PullPlug(True), {"lead"}),
        (SwitchIgnition(True), {"lead"}),
        (SwitchOther(True), {"lead"}),
        (FitJumper(True), {"lead"}),
        (SlipPaper(True), {"lead"}),
        (TurnCrank(-20.0), {"crank"}),
        # What is only supposed, or looked at, is no reading of anything.
        (SetLeadFault("broken", True), set()),
        (ViewSide("right"), set()),
        (WantTiming("left", 24.0), set()),
        # Set to what it was: said by somebody, all the same.
        (SetBoth(0.0, 0.0), {"setting"}),
    ],
)
def test_what_hands_set_is_known_and_stays_known(action, hand, tmp_path):
    state = bench(action)
    assert state.touched == hand
    back = apply(apply(state, SetBoth(2.0, 0.0)), SetBoth(0.0, 0.0)) if not state.clamps_tight else state
    assert hand <= back.touched
    assert apply(back, PlaceInstallation(FILE)).touched == frozenset()
    path = tmp_path / "bench.json"
    path.write_text(dump_state(back), encoding="utf-8")
    assert load_state(path) == back


def test_a_bench_kept_by_an_earlier_program_was_read_by_nobody(tmp_path):
    path = tmp_path / "bench.json"
    text = dump_state(bench())
    for name in (', "lamp_read": false', ', "painted": false'):
        text = text.replace(name, "")
    assert "touched" not in text and "lamp_read" not in text
    path.write_text(text, encoding="utf-8")
    assert load_state(path) == bench() and load_state(path).touched == frozenset()


def test_a_lamp_reading_stands_until_what_it_depends_on_is_moved():
    assert lamp_reading_deg(bench(), "left") is None and lamp_reading_deg(bench(), "right") is None
    read = bench(ReadLamp("left", 22.0))
    assert lamp_reading_deg(read, "left") == 22.0 and lamp_reading_deg(read, "right") is None
    assert lamp_reading_deg(bench(ReadLamp("right", 25.0)), "right") == 25.0, "just as wanted is a reading, too"
    for action in (TurnCrank(-30.0), PaintMarks(), WantTiming("left", 20.0)):
        assert lamp_reading_deg(apply(read, action), "left") == 22.0
    moved = apply(read, MoveTeeth(1, -1))
    assert lamp_reading_deg(moved, "left") is None and lamp_reading_deg(moved, "left", as_found=True) == 22.0
    assert lamp_reading_deg(apply(moved, MoveTeeth(0, 0)), "left") == 22.0
    reset = apply(read, SetBoth(0.5, 0.0))
    assert lamp_reading_deg(reset, "left") is None and lamp_reading_deg(reset, "left", as_found=True) is None
    # With the contacts shut for good there is no timing at all.
    assert lamp_reading_deg(replace(read, screw_deg=60.0), "left") is None


def test_marks_are_painted_only_by_painting():
    assert not bench(ReadLamp("left", 22.0)).engaged.left.painted
    painted = bench(ReadLamp("left", 22.0), PaintMarks())
    assert painted.engaged.left.painted and not painted.engaged.right.painted
    assert apply(painted, ReadLamp("left", 23.0)).engaged.left.painted, "paint stays on the metal"


def test_what_is_set_to_what_it_was_is_no_step_and_yet_known():
    store = Store(bench())
    store.send(SetBoth(0.0, 0.0))
    assert store.undo_name is None and store.state == bench() and store.state.touched == {"setting"}


def test_a_bench_found_again_was_set_where_it_is_not_as_new(tmp_path):
    path = tmp_path / "bench.json"
    for actions, hand in (((SetBoth(1.0, 0.0), PullPlug(True)), {"setting", "lead"}), ((TurnCrank(-20.0),), set())):
        path.write_text(dump_state(bench(*actions)), encoding="utf-8")
        assert load_state(path).touched == hand
