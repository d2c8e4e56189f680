"""After the hand-in: the truth, the readings against it, the time line, the replay, and a path that works."""

from __future__ import annotations

import re
from dataclasses import replace

import pytest

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice.advice import efficient_path, setting_wanted, teeth_wanted
from magview.practice.apply import apply
from magview.practice.attempt import Session
from magview.practice.contacts import best
from magview.practice.debrief import debrief, truths
from magview.practice.exercise_parts import Fault
from magview.practice.faults import begin
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.readings import lead_truth
from magview.practice.report import sections
from magview.practice.state import true_firing_deg, true_readings, view
from magview.spec.base import SpecError
from magview.spec.library import find_installation
from tests.practice.trainee import Trainee
from tests.wording import says


def test_until_it_is_handed_in_nothing_is_told():
    session = Session(find_exercise("gap-wrong"), 1)
    with pytest.raises(SpecError, match="not been handed in"):
        debrief(session.attempt)


def test_truths_readings_and_time_line():
    trainee = Trainee(find_exercise("several-teeth-out"), 4)
    attempt = trainee.work()
    told = debrief(attempt)
    assert told.marking.passed
    fires = next(t for t in told.truths if t.what.startswith("Fires"))
    first, last = attempt.states()[0].bench, attempt.states()[-1].bench
    assert fires.as_found == f"{true_firing_deg(first):.2f}°" and fires.as_left == f"{true_firing_deg(last):.2f}°"
    assert fires.wanted == "27° within 1°"
    reading = next(r for r in told.readings if r.note.kind == "firing")
    assert reading.error == pytest.approx(reading.note.value - true_firing_deg(first), abs=1e-9)
    assert abs(reading.error) < 0.5
    assert [line.at_s for line in told.timeline] == [event.at_s for event in attempt.events]
    assert told.timeline[0].words == "Chock the wheels" and told.timeline[-1].words == "Hand in"
    assert told.seconds == attempt.events[-1].at_s - attempt.events[0].at_s


def test_the_replay_can_be_scrubbed():
    attempt = Trainee(find_exercise("opens-early-or-late"), 4).work()
    replay, states = debrief(attempt).replay, attempt.states()
    assert replay.states == tuple(states)
    assert replay.at(-1.0) == replay.at(0.5) == states[0]
    assert replay.at(3.0) == replay.at(3.9) == states[3]
    assert replay.at(1e9) == states[-1]


def test_a_dangerous_act_stands_in_the_time_line_where_it_was_done():
    session = Session(find_exercise("a-step-or-two-out"), 4)
    session.send(bench.SwitchIgnition(True), 1.0)
    session.send(do.TurnPropeller(20.0), 2.0)
    session.send(do.HandIn(), 3.0)
    lines = debrief(session.attempt).timeline
    assert not lines[0].danger and ("live" in lines[1].danger or "chocks" in lines[1].danger)


# ---------------------------------------------------------------------- the path is one that works


@pytest.mark.parametrize("name", shipped_exercises())
def test_the_path_advised_puts_it_right_for_ten_seeds(name):
    """Whoever turns plate, screw and teeth as advised, creep and all, ends within limits."""
    exercise = find_exercise(name)
    goals = {g.goal for g in exercise.goals}
    for seed in range(10):
        room = begin(exercise, seed)
        path = efficient_path(room)
        assert all(line.endswith(".") for line in path) and len(path) <= 20
        for side in room.sides:
            here = view(room, side)
            for act in _decided(here, goals):
                here = apply(here, act)
            if goals & {"gap", "opening"}:
                here = _set_as_advised(here)
                now = true_readings(here.bench)
                assert bool(now.within_limits), (seed, side, now)
            if "timing" in goals:
                _teeth_as_advised(here)


def _decided(room, goals) -> list:
    if room.exercise.rules < 2:
        return [do.DressContacts()]
    decision = best(room.exercise, room.seat.faces) if "contacts" in goals else "leave"
    return {"leave": [], "dress": [do.DressContacts()], "renew": [do.RenewContacts()]}[decision]


def _set_as_advised(room):
    wanted = setting_wanted(room.bench)
    assert wanted is not None
    acts = [
        bench.TightenLock(False),
        bench.TightenClamps(False),
        do.TurnScrew(wanted.screw_deg - room.bench.screw_deg),
        bench.TightenLock(True),
        do.TurnPlate(wanted.backplate_deg - room.bench.backplate_deg),
        bench.TightenClamps(True),
    ]
    for act in acts:
        room = apply(room, act)
    return room


def _teeth_as_advised(room) -> None:
    move, engaged = teeth_wanted(room.bench), room.bench.engaged
    wrong = abs(true_firing_deg(room.bench) - engaged.mounting.wanted_btdc_deg) > 90.0
    assert (move is None) == wrong
    if move is None:
        return
    at = replace(engaged.mounting, magneto_teeth=move.magneto_teeth, disc_teeth=move.disc_teeth)
    moved = replace(engaged, left=at) if engaged.side == "left" else replace(engaged, right=at)
    fires = true_firing_deg(replace(room.bench, engaged=moved))
    assert abs(fires - at.wanted_btdc_deg) <= engaged.installation.engine.timing_tolerance_deg + 0.5


def test_the_path_names_what_is_wrong_and_only_that():
    for seed in range(10):
        room = begin(find_exercise("switch-lead"), seed)
        lead, path = room.bench.lead, " ".join(efficient_path(room))
        assert ("renew the lead" in path) == lead.broken and "jumper on, plug pulled" not in path
        assert ("renew the insulation" in path) == lead.shorted
        assert ("renew the tab" in path) == (not lead.tab_touches)


def test_the_path_of_a_magneto_without_a_tab_begins_with_the_jumper():
    found = set()
    for seed in range(30):
        room = begin(find_exercise("switch-lead-or-switch"), seed)
        lead, path = room.bench.lead, " ".join(efficient_path(room))
        assert "jumper on, plug pulled" in path and "fuel off" in path
        assert ("renew the lead" in path) == (lead.broken or lead.chafed)
        assert ("Renew the switch" in path) == (lead.switch != "sound")
        assert ("own places" in path) == lead.crossed
        found.add(lead_truth(room))
    assert found == {"sound", "broken", "chafed", "shorted", "never-opens", "never-closes", "crossed"}


def test_an_attempt_of_another_version_says_so():
    attempt = Trainee(find_exercise("find-the-e-gap"), 1).work()
    assert debrief(attempt).other_version == ""
    assert "0.0.9" in debrief(replace(attempt, version="0.0.9")).other_version


def test_a_gap_just_out_of_limits_does_not_read_as_the_limit():
    """A threaded screw moves the gap by its lead times the turn; 40 nm beyond 0.45 mm shows in the fifth digit."""
    session = Session(find_exercise("gap-wrong"), 1)
    state = session.practice.bench
    gap = float(true_readings(state).max_gap_mm[0])
    by = (gap - 0.45004) / state.magneto.contact_screw.lead_mm * 360.0 - state.magneto.condition.screw_creep_deg
    for at, act in enumerate((do.TurnScrew(by), bench.TightenLock(True), bench.TightenClamps(True), do.HandIn())):
        session.send(act, float(at))
    told = debrief(session.attempt)
    truth = next(t for t in told.truths if t.what.startswith("Largest gap"))
    assert truth.as_left == "0.45004 mm"
    assert truth.wanted == "0.35000 mm to 0.45000 mm"
    row = next(r for r in told.marking.rows if "largest gap" in r.what)
    assert "largest gap is 0.45004 mm, limits 0.35000 mm to 0.45000 mm" in row.evidence


def told_at_once(name: str) -> dict[str, tuple[str, str, str]]:
    session = Session(find_exercise(name), 1)
    session.send(do.HandIn(), 1.0)
    return {t.what: (t.as_found, t.as_left, t.wanted) for t in debrief(session.attempt).truths}


def test_which_magneto_is_said_only_where_there_are_two():
    one, two = told_at_once("gap-wrong"), told_at_once("both-everything-wrong")
    assert not any("magneto" in what for what in one)
    assert {"Largest gap", says("Opening from the mark"), "Switch lead"} <= set(one)
    assert {"Largest gap, the left magneto", "Largest gap, the right magneto"} <= set(two)


def test_what_does_not_creep_need_not_be_allowed_for():
    creeping = begin(find_exercise("creeping-screw"), 1).bench.magneto.condition.screw_creep_deg
    words = f"{abs(creeping):.1f}° {'closer' if creeping > 0 else 'wider'}"
    assert told_at_once("creeping-screw")["Lock screw carries the contact screw along"] == (
        words, words, "to be allowed for"
    )  # fmt: skip
    rooms = {name: begin(find_exercise(name), 1) for name in shipped_exercises()}
    still = next(n for n, room in rooms.items() if room.bench.magneto.condition.screw_creep_deg == 0.0)
    told = next(v for k, v in told_at_once(still).items() if k.startswith("Lock screw carries"))
    assert told == ("not at all", "not at all", "–")


def fired_by(lobe: int, lobes: int, order: tuple[int, ...]) -> list[int]:
    """Spark by spark over as many turns as it takes: lobe after lobe, cylinder after cylinder (plain arithmetic)."""
    sparks = range(lobes * len(order))
    return sorted({order[k % len(order)] for k in sparks if k % lobes == lobe - 1})


LOW = {"kind": "lobe-low", "size": (0.02, 0.02), "way": "plus"}


@pytest.mark.parametrize(
    ("installation", "lobe"),
    [("seven-radial-left", 3), ("four-opposed-left", 2), ("nine-radial-right", 4), ("traced-six-single", 2)],
)
def test_the_low_lobes_cylinders_are_told(installation, lobe):
    """In debrief and key alike, against counting the sparks out."""
    whole, item = find_exercise("several-teeth-out"), find_installation(installation)
    exercise = whole.model_copy(
        update={"installation": item, "faults": (Fault(**LOW, lobe=lobe),), "story_by_way": None}
    )
    room = begin(exercise, 1)
    (told,) = (t for t in truths(room, room) if t.what.startswith("Low lobe"))
    assert told.what == f"Low lobe {lobe} fires"
    order = item.engine.firing_order
    fired = fired_by(lobe, len(item.magneto.cam.lobe_peaks_deg), order)
    if len(fired) == len(order):
        assert told.as_found == says("every cylinder in turn")
    elif len(fired) == 1:
        assert told.as_found == f"cylinder {fired[0]} alone"
    else:
        assert sorted(map(int, re.findall(r"\d+", told.as_found))) == fired


def test_one_lobe_low_says_that_its_lobe_fires_every_cylinder():
    told = told_at_once("one-lobe-low")
    (what,) = (what for what in told if what.startswith("Low lobe"))
    assert told[what] == (says("every cylinder in turn"), says("every cylinder in turn"), "–")
    assert not any(what.startswith("Low lobe") for what in told_at_once("gap-wrong"))


def test_marks_are_told_to_a_hundredth():
    """Two things of seven left undone get 5/7 of the one mark there is for closing up: 0.71."""
    session = Session(find_exercise("pips"), 4711)
    session.send(bench.TightenLock(False), 1.0)
    session.send(do.OilFelt(1), 2.0)
    session.send(do.HandIn(), 3.0)
    marks = sections(session.attempt, debrief(session.attempt))[1][2]
    assert all(len(got.partition(".")[2]) <= 2 for _, _, got, _ in marks)
    assert any("." in got for _, _, got, _ in marks)
