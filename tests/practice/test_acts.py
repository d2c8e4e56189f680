"""What acts do, and what follows from how they are done."""

from __future__ import annotations

from dataclasses import replace

import pytest

from magview.bench import actions as bench
from magview.bench.state import crank_deg
from magview.practice import actions as do
from magview.practice.apply import apply
from magview.practice.faults import begin
from magview.practice.instruments import compression, disc, light
from magview.practice.library import find_exercise
from magview.practice.state import Practice, true_firing_deg, true_readings, view
from magview.practice.words import act_words
from magview.spec.base import SpecError


def acted(practice: Practice, *acts: do.Act) -> Practice:
    for act in acts:
        practice = apply(practice, act)
    return practice


def engine(name: str = "several-teeth-out", seed: int = 1) -> Practice:
    """An engine made safe, with its lamp on."""
    made = [do.Chock(True), do.SparkPlugs(True), do.ConnectLamp(True), bench.SwitchIgnition(True)]
    return acted(begin(find_exercise(name), seed), *made)


def refused(practice: Practice, act: do.Act) -> str:
    with pytest.raises(SpecError) as caught:
        apply(practice, act)
    return str(caught.value)


# ---------------------------------------------------------------------- turning


@pytest.mark.parametrize("seed", range(10))
def test_the_lamp_changes_where_the_contacts_do_and_the_hand_overshoots_a_little(seed):
    practice = engine(seed=seed)
    opens = true_readings(practice.bench).opens_deg
    for _ in range(6):
        before = practice
        practice = acted(practice, do.TurnUntil("lamp"))
        assert light(practice) != light(before)
        if light(practice):
            past = min((practice.bench.rotor_deg - o) % 360.0 for o in opens.tolist())
            assert 0.0 < past < 0.3


def test_the_play_lies_on_the_other_side_when_turned_back():
    """The same contact place, met from both sides: the crank differs by play ÷ speed ratio."""
    practice = engine()
    while not light(practice):
        practice = acted(practice, do.TurnUntil("lamp"))
    forward = crank_deg(practice.bench)
    play = practice.bench.magneto.condition.coupling_backlash_deg
    back = acted(practice, do.TurnUntil("lamp", forward=False))
    ratio = practice.bench.engaged.ratio
    # Overshoots of up to 0.15° of rotor on both sides.
    assert forward - crank_deg(back.bench) == pytest.approx(play / ratio, abs=0.35 / ratio)
    assert play > 1.0


def test_loading_the_train_takes_the_play_out_as_coming_with_rotation_does():
    """TM 1-1500-204-23-1, General Aircraft Maintenance Manual, power plant (from memory)."""
    practice = acted(engine(), do.TurnPropeller(20.0))
    here, rotor = crank_deg(practice.bench), practice.bench.rotor_deg
    back = acted(practice, do.TurnPropeller(20.0), do.TurnPropeller(-20.0))
    assert crank_deg(back.bench) == pytest.approx(here)
    play = practice.bench.magneto.condition.coupling_backlash_deg
    assert back.bench.rotor_deg - rotor == pytest.approx(play) and play > 1.0
    loaded = acted(back, bench.LoadTrain())
    assert loaded.bench.rotor_deg == pytest.approx(rotor) and crank_deg(loaded.bench) == pytest.approx(here)
    assert "Load the drive train" in act_words(bench.LoadTrain(), back, loaded)


def test_what_holds_the_rotor_holds_the_propeller():
    practice = engine()
    assert "pin" in refused(acted(practice, do.Pin(True)), do.TurnPropeller(10.0))
    assert "drawn back" in refused(acted(practice, do.Nuts(False)), do.TurnPropeller(10.0))
    assert "on the engine" in refused(practice, do.TurnRotor(10.0))
    assert "finite" in refused(practice, do.TurnPropeller(float("nan"))) or "±" in refused(
        practice, do.TurnPropeller(float("nan"))
    )


# ---------------------------------------------------------------------- screws


@pytest.mark.parametrize("seed", range(6))
def test_tightening_the_lock_screw_carries_the_contact_screw_along(seed):
    practice = acted(begin(find_exercise("creeping-screw"), seed), bench.TightenLock(False))
    creep = practice.bench.magneto.condition.screw_creep_deg
    assert 2.5 <= abs(creep) <= 5.0
    tight = acted(practice, bench.TightenLock(True))
    assert tight.bench.screw_deg - practice.bench.screw_deg == pytest.approx(creep, abs=1e-12)


def test_tight_screws_do_not_turn_and_slots_end():
    practice = begin(find_exercise("opens-early-or-late"), 1)
    assert "clamp screws are tight" in refused(practice, do.TurnPlate(1.0))
    assert "lock screw is tight" in refused(practice, do.TurnScrew(1.0))
    slack = acted(practice, bench.TightenClamps(False), do.TurnPlate(40.0))
    assert slack.bench.backplate_deg == slack.bench.magneto.backplate.range_deg[1]
    assert slack.said is not None and "end of its slot" in slack.said.text


# ---------------------------------------------------------------------- off and on again


def test_off_the_engine_the_rotor_falls_to_neutral_unless_it_is_pinned():
    ready = acted(engine(), bench.PaintMarks(), bench.PullPlug(True), do.Nuts(False))
    loose = acted(ready, do.Remove())
    assert loose.bench.rotor_deg % 90.0 == pytest.approx(0.0, abs=1e-9)  # four poles: a neutral every 90°
    pinned = acted(ready, do.Pin(True), do.Remove())
    assert pinned.bench.rotor_deg == ready.bench.rotor_deg


def test_refitted_by_its_marks_it_is_timed_as_before():
    practice = acted(engine(), bench.PaintMarks(), bench.PullPlug(True), do.Nuts(False))
    off = acted(practice, do.Remove(), do.TurnPropeller(77.0))
    on = acted(off, do.Refit(by_marks=True), do.Nuts(True))
    assert true_firing_deg(on.bench) == pytest.approx(true_firing_deg(practice.bench), abs=1e-9)


def test_without_marks_it_only_goes_on_as_it_stands():
    off = acted(engine(), bench.PullPlug(True), do.Nuts(False), do.Remove())
    assert "marks" in refused(off, do.Refit(by_marks=True))
    fine = 360.0 / 306  # 17 and 18 teeth
    stands = acted(off, do.TurnRotor(3.3))
    on = acted(stands, do.Refit(by_marks=False))
    assert abs(on.bench.rotor_deg - stands.bench.rotor_deg) <= fine / 2 + 1e-9
    was, now = off.bench.engaged.mounting.phase_deg, on.bench.engaged.mounting.phase_deg
    assert ((now - was) / fine) % 1.0 == pytest.approx(0.0, abs=1e-6) or ((now - was) / fine) % 1.0 == pytest.approx(
        1.0, abs=1e-6
    )


def test_what_must_come_off_first():
    practice = engine()
    assert "nuts" in refused(practice, do.Remove())
    assert "plug" in refused(acted(practice, do.Nuts(False)), do.Remove())
    assert "closed" in refused(practice, do.MoveTooth("disc", 1))


def test_a_marked_tooth_moves_alone_and_an_unmarked_one_may_take_another_along():
    """17 and 18 teeth: one at the magneto is 360/17° of rotor, and 360/17/0.875 of crank."""
    for seed in range(12):
        drawn_back = acted(engine(seed=seed), do.Nuts(False))
        marked = acted(engine(seed=seed), bench.PaintMarks(), do.Nuts(False))
        before = true_firing_deg(marked.bench)
        moved = true_firing_deg(acted(marked, do.MoveTooth("magneto", 1)).bench) - before
        assert (moved + 360.0) % 720.0 - 360.0 == pytest.approx(360.0 / 17 / 0.875, abs=1e-9)
        blind = acted(drawn_back, do.MoveTooth("magneto", 1)).bench.engaged.mounting
        assert blind.magneto_teeth == 1 and blind.disc_teeth in (-1, 0, 1)
    slips = {
        acted(engine(seed=s), do.Nuts(False), do.MoveTooth("magneto", 1)).bench.engaged.mounting.disc_teeth
        for s in range(12)
    }
    assert len(slips) > 1


# ---------------------------------------------------------------------- two magnetos


def test_each_magneto_keeps_its_own_setting_and_both_turn_with_the_crank():
    practice = acted(begin(find_exercise("both-everything-wrong"), 4), do.Chock(True), do.SparkPlugs(True))
    left, right = view(practice, "left"), view(practice, "right")
    assert left.bench.screw_deg != right.bench.screw_deg
    assert view(right, "left") == left
    turned = acted(practice, do.TurnPropeller(40.0))
    for side in ("left", "right"):
        was, now = view(practice, side).bench, view(turned, side).bench
        # The right one's play is taken up by the same turn.
        assert now.rotor_deg - was.rotor_deg == pytest.approx(40.0 * 0.875, abs=1.1)
        assert crank_deg(now) - crank_deg(was) == pytest.approx(40.0, abs=1e-9)
        assert true_firing_deg(now) == pytest.approx(true_firing_deg(was), abs=1e-9)
    changed = acted(turned, bench.ViewSide("right"), bench.TightenLock(False), do.TurnScrew(1.0))
    assert view(changed, "left").bench.screw_deg == left.bench.screw_deg
    assert changed.bench.screw_deg == right.bench.screw_deg + 1.0
    assert not changed.lamp_on


def test_the_magneto_not_in_view_has_its_play_taken_up_too():
    """Turned with rotation all play lies behind, turned back it lies ahead, in both couplings."""
    practice = acted(begin(find_exercise("both-everything-wrong"), 4), do.Chock(True), do.SparkPlugs(True))
    for by, ahead in ((30.0, 0.0), (-30.0, 1.0)):
        practice = acted(practice, do.TurnPropeller(by))
        for side in ("left", "right"):
            state = view(practice, side).bench
            play = state.magneto.condition.coupling_backlash_deg
            assert state.engaged.play_deg == pytest.approx(ahead * play, abs=1e-12) and play > 0.3


# ---------------------------------------------------------------------- safety and the rest


def test_the_stop_needs_a_plug_hole_and_room_above_the_piston():
    practice = begin(find_exercise("true-dead-centre"), 3)
    assert "plugs out" in refused(practice, do.FitStop(True))
    top = acted(practice, do.SparkPlugs(True), do.TurnPropeller(-crank_deg(practice.bench)))
    assert "too high" in refused(top, do.FitStop(True))
    fitted = acted(top, do.TurnPropeller(90.0), do.FitStop(True))
    assert "stop is in" in refused(fitted, do.SparkPlugs(False))


def test_what_is_not_on_the_tray_cannot_be_used():
    practice = begin(find_exercise("find-the-e-gap"), 1)
    for act in (do.ConnectLamp(True), do.TryBlades((9,)), do.MeterLead()):
        assert "tray" in refused(practice, act)
    assert "no engine" in refused(practice, do.Chock(True))
    assert "handed in" in refused(acted(practice, do.HandIn()), do.LetGo())


def test_a_new_lead_has_to_be_proved_again():
    practice = begin(find_exercise("switch-lead"), 0)
    practice = acted(practice, bench.PullPlug(True), do.Renew("lead"), do.MeterLead())
    assert practice.seat.proved
    assert not acted(practice, do.Renew("lead")).seat.proved


def test_the_acts_of_the_benchs_pictures_become_acts_of_the_hand():
    off = begin(find_exercise("gap-wrong"), 1)
    assert do.from_bench(off, bench.TurnRotor(off.bench.rotor_deg + 5.0)) == do.TurnRotor(5.0)
    assert do.from_bench(off, bench.TurnBackplate(off.bench.backplate_deg)) == do.TurnPlate(0.0)
    assert do.from_bench(off, bench.SettleRotor()) == do.LetGo()
    assert do.from_bench(off, bench.Advance(3)) is None
    on = engine()
    turn = do.from_bench(on, bench.TurnRotor(on.bench.rotor_deg + 8.75))
    assert isinstance(turn, do.TurnPropeller) and turn.by_deg == pytest.approx(10.0)
    assert do.from_bench(on, bench.MoveTeeth(0, 1)) == do.MoveTooth("disc", 1)
    assert do.from_bench(on, bench.MoveTeeth(0, 0)) is None
    assert do.from_bench(on, bench.MountMagneto(False)) == do.Remove()
    for action in (
        bench.SetBoth(0.0, 0.0),
        bench.ReadLamp("left", 25.0),
        bench.SetLeadFault("broken", False),
        bench.MoveTeeth(2, 0),
        bench.PlaceMagneto(on.bench.magneto),
    ):
        with pytest.raises(SpecError):
            do.from_bench(on, action)


def test_a_state_is_left_as_it_was():
    practice = engine()
    copy = replace(practice)
    acted(practice, do.TurnPropeller(30.0), do.WriteReading("note", text="so far"))
    assert practice == copy


def test_turning_to_a_reading_once_more_goes_right_round():
    """The disc turns with the crank: the same reading comes a turn later, and the stroke changes."""
    practice = engine()
    first = acted(practice, do.TurnToReading(60.0))
    again = acted(first, do.TurnToReading(60.0))
    for room in (first, again):
        assert abs(disc(room).value - 60.0) <= 0.25
    assert crank_deg(again.bench) - crank_deg(first.bench) == pytest.approx(360.0, abs=0.25)
    assert compression(first).value != compression(again).value
