"""The time line folded by act, the gauges of the goals, the way on the window, and the line for next time."""

from __future__ import annotations

import math
import re

import pytest

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice import shelf
from magview.practice.attempt import Attempt, Session, attempt_of, dump_attempt
from magview.practice.debrief import Debrief, debrief
from magview.practice.folded import Kind, Outcome
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.marking import UNPROVED
from magview.practice.next_time import lesson_for
from magview.practice.state import Feel, true_readings
from magview.practice.told_goals import bracket
from magview.practice.way import FiringSteps
from magview.spec.files import parse_json
from tests.practice.trainee import Trainee
from tests.wording import says


def done(name: str, *acts: do.Act, seed: int = 4, known: bool = False) -> Attempt:
    """An attempt, an act each ten seconds, handed in."""
    session = Session(find_exercise(name), seed, "", known)
    for i, act in enumerate((*acts, do.HandIn())):
        session.send(act, 10.0 * i)
    return session.attempt


NUDGES = (
    bench.TightenClamps(False), do.TurnPlate(0.5), do.TurnRotor(5.0), do.TurnPlate(0.5), do.TurnPlate(-0.2),
    bench.TightenClamps(True),
)  # fmt: skip


def test_nudges_and_the_turning_between_them_are_one_card():
    cards = debrief(
        done("gap-wrong", do.ConnectLamp(True), bench.TightenLock(False), do.TurnScrew(5.0), *NUDGES)
    ).cards
    assert [card.kind for card in cards] == [Kind.LOOK, Kind.SCREW, Kind.PLATE, Kind.TIGHTEN, Kind.HAND_IN]
    assert [card.number for card in cards] == [0, 1, 2, 0, 0]
    assert cards[2].words == says("{turn:.1deg} with rotation", turn=0.8)
    assert cards[2].count_words == says("{count} turns in 1", count=3)


def test_a_card_of_looking_names_the_turning_that_it_holds():
    turned = debrief(done("gap-wrong", do.ConnectLamp(True), do.TurnRotor(5.0))).cards
    still = debrief(done("gap-wrong", do.ConnectLamp(True))).cards
    assert [card.title for card in turned] == [says("Turn and look"), says("Hand in")]
    assert still[0].title == says("Look")


@pytest.mark.parametrize("name", ["gap-wrong", "both-everything-wrong"])
def test_every_act_stands_in_one_card_and_in_its_order(name):
    told = debrief(Trainee(find_exercise(name), 3).work())
    indices = [step.index for card in told.cards for step in card.steps]
    assert indices == [line.index for line in told.timeline] == list(range(1, len(indices) + 1))
    numbers = [card.number for card in told.cards if card.number]
    assert numbers == list(range(1, len(numbers) + 1))


def test_a_lock_screw_that_carries_the_setting_out_is_told_on_its_card():
    """From inside the limits, tightening alone leaves them: the truth before and after is asked of the physics."""
    session = Session(find_exercise("creeping-screw"), 4)
    session.send(bench.TightenLock(False), 0.0)
    low, high = session.practice.bench.magneto.gap_limits_mm
    creep = session.practice.bench.magneto.condition.screw_creep_deg
    towards = -1.0 if creep > 0 else 1.0
    ends = [
        by for by in (towards * n * 0.5 for n in range(-80, 80))
        if _gap_after(session, by, 0.0, low, high) and not _gap_after(session, by, creep, low, high)
    ]  # fmt: skip
    session.send(do.TurnScrew(ends[0]), 1.0)
    session.send(bench.TightenLock(True), 2.0)
    session.send(do.HandIn(), 3.0)
    card = next(card for card in debrief(session.attempt).cards if card.kind is Kind.TIGHTEN)
    assert card.outcome is Outcome.MOVED
    assert f"{abs(creep):.1f}°" in card.words


def _gap_after(session: Session, by: float, creep: float, low: float, high: float) -> bool:
    from dataclasses import replace

    state = session.practice.bench
    gaps = true_readings(replace(state, screw_deg=state.screw_deg + by + creep)).max_gap_mm
    return bool(low <= gaps.min() and gaps.max() <= high)


# ---------------------------------------------------------------------- gauges


def goal_of(told: Debrief, kind: str) -> object:
    return next(goal for goal in told.goals if goal.row.goal.goal == kind)


def test_own_readings_stand_in_the_gauges_and_hold_the_truth():
    told = debrief(Trainee(find_exercise("gap-wrong"), 4).work())
    for kind in ("gap", "opening"):
        gauge = goal_of(told, kind).gauge
        assert gauge.low <= gauge.own[0] <= gauge.value <= gauge.own[1] <= gauge.high
    assert sum(goal.of for goal in told.goals) == pytest.approx(100.0)


def test_what_was_not_measured_has_no_bracket_and_says_so():
    told = debrief(done("gap-wrong"))
    assert told.nothing_done and not told.marking.passed
    for kind in ("gap", "opening"):
        gauge = goal_of(told, kind).gauge
        assert gauge.own is None and gauge.own_words == says("you did not measure it")
    assert all(row.got <= UNPROVED * row.weight for row in told.marking.rows if row.judged.share is None)


def test_blades_leave_a_bracket_only_from_both_sides():
    from magview.practice.evidence import Tried

    goes, stops = Tried(1, 1, 0.30, Feel.GO), Tried(2, 1, 0.36, Feel.NO_GO)
    assert bracket([goes, stops])[0] == (0.30, 0.36)
    assert bracket([goes])[0] is None and bracket([stops])[0] is None
    drags = Tried(3, 1, 0.33, Feel.DRAG)
    assert bracket([goes, drags, stops])[0] == pytest.approx((0.33, 0.34))  # dragging is at most 0.01 mm of play


def test_blades_beyond_the_limits_are_named_in_words_and_marked_as_ever():
    attempt = Trainee(find_exercise("gap-wrong"), 4).work()
    told = debrief(attempt)
    low, high = attempt.exercise.unit.gap_limits_mm
    events = list(attempt.events)
    tries = [i for i, e in enumerate(events) if isinstance(e.act, do.TryBlades)]
    # The last two are on the limits: 0.45 that stops becomes 0.46, and what dragged before is taken away.
    from dataclasses import replace

    last = [i for i in tries if attempt.states()[i + 1].said.plain == Feel.NO_GO and i > len(events) // 2]
    changed = [
        replace(e, act=do.TryBlades((0.06, 0.4), "metric")) if i == last[-1] else e
        for i, e in enumerate(events)
        if not (i in tries and i != last[-1] and attempt.states()[i + 1].said.plain != Feel.GO)
    ]
    wide = debrief(replace(attempt, events=tuple(changed)))
    row, as_ever = goal_of(wide, "gap").row, goal_of(told, "gap").row
    assert row.judged.proved and row.got == as_ever.got
    assert "do not prove it" in goal_of(wide, "gap").cause
    assert "do not prove it" not in goal_of(told, "gap").cause
    assert f"{low:.3f}" in goal_of(wide, "gap").cause and f"{high:.3f}" in goal_of(wide, "gap").cause


def test_where_the_rotor_stood_is_told_in_find_the_e_gap():
    gauge = debrief(Trainee(find_exercise("find-the-e-gap"), 3).work()).goals[0].gauge
    assert gauge.low <= gauge.value <= gauge.high and gauge.own is not None


# ---------------------------------------------------------------------- the way


def test_the_way_begins_as_found_and_ends_as_left_in_legs_that_join():
    attempt = done("gap-wrong", bench.TightenLock(False), do.TurnScrew(-40.0), *NUDGES, bench.TightenLock(True))
    told = debrief(attempt)
    way, states = told.replay.way(told.cards, "left"), attempt.states()
    first, last = states[0].bench, states[-1].bench
    assert way.legs[0].start == way.found == (first.backplate_deg, first.screw_deg)
    assert way.legs[-1].end == way.left == (last.backplate_deg, last.screw_deg)
    assert all(a.end == b.start for a, b in zip(way.legs, way.legs[1:], strict=False))
    assert {leg.number for leg in way.legs if leg.number} == {card.number for card in told.cards if card.number}


def test_the_outline_bounds_what_the_readings_call_within_limits():
    """Just inside its corners a setting is within limits, just outside it is not (the readings judge)."""
    told = debrief(done("gap-wrong"))
    way = told.replay.way(told.cards, "left")
    timing_of = told.replay.states[0].bench
    from dataclasses import replace

    middle = way.within.mean(axis=0)
    for corner in way.within[:: max(1, len(way.within) // 6)]:
        for share, inside in ((0.97, True), (1.08, False)):
            plate, screw = (middle + share * (corner - middle)).tolist()
            state = replace(timing_of, backplate_deg=plate, screw_deg=screw)
            assert bool(true_readings(state).within_limits) == inside


def test_an_engine_exercise_tells_the_firing_after_each_move():
    told = debrief(Trainee(find_exercise("several-teeth-out"), 5).work())
    way = told.replay.way(told.cards, "left")
    assert isinstance(way, FiringSteps)
    assert abs(way.errors_deg[0]) > way.allowed_deg >= abs(way.errors_deg[-1])
    assert way.numbers == (0, *(card.number for card in told.cards if card.number))


# ---------------------------------------------------------------------- next time


@pytest.mark.parametrize("name", shipped_exercises())
def test_a_lesson_ships_for_whatever_loses_most(name):
    told = debrief(done(name))
    assert lesson_for(told.marking).id in {lesson.id for lesson in shelf.lessons()}
    assert told.next_time


def test_no_lesson_is_offered_where_nothing_was_lost():
    assert lesson_for(debrief(Trainee(find_exercise("gap-wrong"), 4).work()).marking) is None


def test_an_attempt_whose_truth_was_known_keeps_that_in_its_file_and_an_old_file_says_nothing():
    known, plain = done("gap-wrong", known=True), done("gap-wrong")
    assert debrief(attempt_of(parse_json(dump_attempt(known).encode(), "a"), "a")).truth_known
    assert "truth_known" not in dump_attempt(plain)
    assert not attempt_of(parse_json(dump_attempt(plain).encode(), "a"), "a").truth_known


# ---------------------------------------------------------------------- the method


@pytest.mark.parametrize("name", ["gap-wrong", "creeping-screw", "several-teeth-out"])
def test_the_method_tells_what_was_read_and_no_amount_that_nobody_read(name):
    """Without a reading no step has an angle for screw, plate, disc or teeth; with readings it is the trainee's."""
    blind = " ".join(debrief(done(name)).path)
    assert not re.search(r"\d°? (with|against|closer|wider|later|earlier)|\d teeth", blind)
    told = debrief(Trainee(find_exercise(name), 4).work())
    assert "you read" in " ".join(told.path)


def test_the_plate_turns_by_as_much_as_the_edge_was_off():
    """The straightedge at an arc's length from the mark: the plate goes back by the angle of that arc."""
    attempt = Trainee(find_exercise("gap-wrong"), 4).work()
    (step,) = (line for line in debrief(attempt).path if "you read" in line)
    radius = attempt.exercise.unit.marks.radius_mm
    assert f"{math.degrees(math.atan(0.5 / radius)):.2f}°" in step and "0.500 mm" in step
