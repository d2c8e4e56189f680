"""An attempt is its exercise, its seed and its events: it can be done again, written, read, and refused."""

from __future__ import annotations

import json
from dataclasses import replace

import pytest
from hypothesis import settings
from hypothesis import strategies as st
from hypothesis.stateful import RuleBasedStateMachine, invariant, rule

from magview.bench import actions as bench
from magview.bench.blades import BLADES
from magview.bench.saved import dump_state
from magview.practice import actions as do
from magview.practice.attempt import Attempt, Session, attempt_of, dump_attempt, name_of, read_attempt, write_attempt
from magview.practice.debrief import debrief
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.marking import mark
from magview.practice.screen_words import seen
from magview.spec.base import SpecError
from magview.spec.files import read_json
from tests.counts import THOROUGH
from tests.practice.trainee import Trainee
from tests.secrets_of import secrets

EXERCISES = [find_exercise(name) for name in shipped_exercises()]

angle = st.one_of(st.floats(-400, 400), st.floats())
flag = st.booleans()
anything = st.one_of(
    st.builds(do.TurnRotor, angle),
    st.builds(do.TurnPropeller, angle),
    st.builds(do.TurnUntil, st.sampled_from(["lamp", "mark", "widest", "stop"]), flag),
    st.builds(do.TurnToReading, angle, flag),
    st.builds(do.LetGo),
    st.builds(bench.HoldRotor),
    st.builds(do.TurnPlate, angle),
    st.builds(do.TurnScrew, angle),
    st.builds(bench.TightenLock, flag),
    st.builds(bench.TightenClamps, flag),
    st.builds(do.InspectContacts),
    st.builds(do.DressContacts),
    st.builds(do.LayStraightedge, flag),
    st.builds(do.Sight, angle),
    st.builds(do.ConnectLamp, flag),
    st.builds(do.TryBlades, st.lists(st.sampled_from(BLADES["inch"]), max_size=4).map(tuple)),
    st.builds(do.MeterLead),
    st.builds(do.FitStop, flag),
    st.builds(do.TurnDisc, angle),
    st.builds(do.FeelCompression),
    st.builds(bench.PullPlug, flag),
    st.builds(bench.SwitchIgnition, flag),
    st.builds(bench.SlipPaper, flag),
    st.builds(bench.FitJumper, flag),
    st.builds(bench.SwitchOther, flag),
    st.builds(do.MeterTerminal),
    st.builds(do.MeterSwitch),
    st.builds(do.MakeSafe, st.sampled_from(["fuel", "mixture", "throttle", "leads", "luck"]), flag),
    st.builds(do.Renew, st.sampled_from(["lead", "tab", "insulation", "switch", "places", "everything"])),
    st.builds(do.Chock, flag),
    st.builds(do.SparkPlugs, flag),
    st.builds(do.Nuts, flag),
    st.builds(do.Pin, flag),
    st.builds(do.Remove),
    st.builds(do.Refit, flag),
    st.builds(do.MoveTooth, st.sampled_from(["magneto", "disc"]), st.sampled_from([1, -1])),
    st.builds(bench.PaintMarks),
    st.builds(bench.ViewSide, st.sampled_from(["left", "right"])),
    st.builds(do.PointAt, st.text(max_size=20)),
    st.builds(
        do.WriteReading,
        st.sampled_from(["opening", "gap", "firing", "disc-zero", "lead", "note"]),
        st.one_of(st.none(), angle),
        st.sampled_from([None, "left", "right"]),
        st.sampled_from(["", "sound", "a note"]),
        st.integers(-1, 12),
    ),
)


class PracticeRoom(RuleBasedStateMachine):
    """Anything a trainee can do, in any order, in any exercise."""

    def __init__(self) -> None:
        super().__init__()
        self.session = Session(EXERCISES[0], 0)
        self.time = 0.0

    @rule(exercise=st.sampled_from(EXERCISES), seed=st.integers(0, 9))
    def begin_another(self, exercise, seed) -> None:
        self.session = Session(exercise, seed, "somebody")

    @rule(act=anything, seconds=st.floats(0, 5), gesture=st.sampled_from([None, None, "drag"]))
    def act(self, act, seconds, gesture) -> None:
        before = self.session.practice
        self.time += seconds
        try:
            self.session.send(act, self.time, gesture)
        except SpecError as refusal:
            words = str(refusal)
        else:
            words = ""
        assert words.isprintable() and len(words) < 300
        assert not words or self.session.practice is before
        practice = self.session.practice
        low, high = practice.bench.magneto.backplate.range_deg
        assert low <= practice.bench.backplate_deg <= high
        assert seen(practice) is not None and secrets(practice)

    @invariant()
    def written_read_and_done_again_it_is_the_same(self) -> None:
        attempt = self.session.attempt
        text = dump_attempt(attempt)
        again = attempt_of(_tuples(json.loads(text)), "attempt")
        assert again == attempt and dump_attempt(again) == text
        states = again.states()
        assert len(states) == len(self.session.states)
        assert dump_state(states[-1].bench) == dump_state(self.session.practice.bench)
        assert states[-1] == self.session.practice

    def teardown(self) -> None:
        assert mark(self.session.attempt) == mark(self.session.attempt, self.session.states)
        self.session.send(do.HandIn(), self.time)
        told = debrief(self.session.attempt)
        assert len(told.timeline) == len(self.session.attempt.events)
        assert all(line.words for line in told.timeline)


def _tuples(value):
    if isinstance(value, list):
        return tuple(_tuples(v) for v in value)
    return {k: _tuples(v) for k, v in value.items()} if isinstance(value, dict) else value


TestPracticeRoom = PracticeRoom.TestCase
TestPracticeRoom.settings = settings(max_examples=30 if THOROUGH else 4, stateful_step_count=20, deadline=None)


def test_every_kind_of_act_is_tried_above_and_has_a_name_of_its_own():
    assert len({name_of(kind) for kind in do.ACTS}) == len(do.ACTS)
    assert name_of(do.TurnUntil) == "turn-until"


def test_an_attempt_survives_its_file(tmp_path):
    attempt = Trainee(find_exercise("one-magneto-all-wrong"), 2).work()
    path = tmp_path / "attempt.json"
    write_attempt(path, attempt)
    again = read_attempt(path)
    assert again == attempt and again.handed_in
    assert mark(again) == mark(attempt)


def test_resumed_it_goes_on_where_it_was():
    session = Session(find_exercise("gap-wrong"), 3)
    session.send(do.TurnPlate(1.0), 1.0)
    resumed = Session.resume(session.attempt)
    for each in (session, resumed):
        each.send(do.TurnUntil("widest"), 2.0)
    assert resumed.practice == session.practice
    assert resumed.attempt == session.attempt


def test_a_drag_is_one_event_and_ends_where_the_hand_ended():
    session = Session(find_exercise("gap-wrong"), 3)
    found = session.practice.bench.backplate_deg
    for n in range(30):
        session.send(do.TurnPlate(0.1), n / 60, gesture=1)
    assert len(session.attempt.events) == 1
    assert session.practice.bench.backplate_deg == pytest.approx(found + 3.0, abs=1e-9)
    session.send(do.TurnPlate(-0.5), 1.0, gesture=1)  # back again: not the same move
    session.send(do.TurnPlate(-0.5), 2.0, gesture=2)
    assert len(session.attempt.events) == 3


def test_a_drag_past_the_opening_keeps_the_moment_at_which_the_lamp_lit():
    session = Session(find_exercise("opens-early-or-late"), 3)
    session.send(do.ConnectLamp(True), 0.0)
    for n in range(200):
        session.send(do.TurnRotor(0.5), n / 60, gesture="drag")
    turns = [e.act.by_deg for e in session.attempt.events[1:]]
    assert 0.5 in turns and 2 < len(turns) < 10
    assert sum(turns) == pytest.approx(100.0)


def test_listeners_hear_new_and_old_once_an_act():
    heard = []
    session = Session(find_exercise("find-the-e-gap"), 3)
    session.subscribe(lambda new, old: heard.append((new, old)))
    first = session.practice
    new = session.send(do.LayStraightedge(True), 1.0)
    with pytest.raises(SpecError):
        session.send(do.ConnectLamp(True), 2.0)
    assert heard == [(new, first)]


def test_time_never_runs_backwards():
    session = Session(find_exercise("find-the-e-gap"), 3)
    session.send(do.LayStraightedge(True), 5.0)
    session.send(do.Sight(0.0), 3.0)
    assert [e.at_s for e in session.attempt.events] == [5.0, 5.0]
    with pytest.raises(SpecError, match="time"):
        session.send(do.Sight(1.0), float("nan"))


# ---------------------------------------------------------------------- files that are no attempts


def damaged(tmp_path, **changes) -> str:
    session = Session(find_exercise("opens-early-or-late"), 1, "A. Trainee")
    session.send(do.ConnectLamp(True), 1.0)
    session.send(do.TurnUntil("lamp"), 2.0)
    data = json.loads(dump_attempt(session.attempt))
    for name, value in changes.items():
        if value is ...:
            del data[name]
        else:
            data[name] = value
    path = tmp_path / "a.json"
    path.write_text(json.dumps(data), encoding="utf-8")
    with pytest.raises(SpecError) as caught:
        read_attempt(path)
    text = str(caught.value)
    assert text.isprintable() and text.startswith("a.json: ") and "pydantic" not in text.lower()
    return text


LAMP = {"at_s": 1.0, "do": "connect-lamp", "on": True}


@pytest.mark.parametrize(
    ("changes", "says"),
    [
        ({"format": "magview-attempt/2"}, "a newer magview wrote it"),
        ({"format": "magview-bench/1"}, 'it must be "magview-attempt/1"'),
        ({"events": ...}, "events is missing"),
        ({"extra": 1}, "extra is not a known name"),
        ({"seed": -4}, "seed"),
        ({"seed": "four"}, "seed"),
        ({"trainee": 7}, "trainee"),
        ({"events": "none"}, "events must be a list"),
        ({"events": [{**LAMP, "do": "fly"}]}, 'events[0].do is "fly"'),
        ({"events": [{**LAMP, "on": "yes"}]}, "it must be true or false"),
        ({"events": [{"at_s": 1.0, "do": "connect-lamp"}]}, "events[0].on is missing"),
        ({"events": [{**LAMP, "speed": 3}]}, "events[0].speed is not a known name of connect-lamp"),
        ({"events": [{**LAMP, "at_s": "soon"}]}, "number of seconds"),
        ({"events": [LAMP, {**LAMP, "at_s": 0.5}]}, "time does not run backwards"),
        ({"events": [{"at_s": 1.0, "do": "turn-until", "what": "lunch"}]}, 'be "lamp" or "mark"'),
        ({"events": [{"at_s": 1.0, "do": "turn-plate", "by_deg": 1.0}]}, "events[0]: the clamp screws are tight"),
        (
            {"events": [{"at_s": 1.0, "do": "hand-in"}, {**LAMP, "at_s": 2.0}]},
            "events[1]: the attempt has been handed",
        ),
        ({"exercise": {"format": "magview-exercise/1"}}, "exercise: name is missing"),
    ],
)
def test_what_is_no_attempt_is_refused_in_one_sentence(tmp_path, changes, says):
    assert says in damaged(tmp_path, **changes)


def test_a_file_of_rubbish_is_refused(tmp_path):
    path = tmp_path / "a.json"
    path.write_text("[1, 2]", encoding="utf-8")
    with pytest.raises(SpecError, match="no attempt"):
        read_attempt(path)
    with pytest.raises(SpecError):
        attempt_of(read_json(path), "x")


def test_a_record_ends_and_can_still_be_handed_in(monkeypatch):
    monkeypatch.setattr("magview.practice.attempt.MAX_EVENTS", 5)
    session = Session(find_exercise("find-the-e-gap"), 3)
    for n in range(4):
        session.send(do.Sight(float(n)), float(n))
    with pytest.raises(SpecError, match="hand in"):
        session.send(do.Sight(9.0), 9.0)
    session.send(do.HandIn(), 10.0)
    assert session.attempt.handed_in


def test_names_are_one_line_and_events_are_values():
    session = Session(find_exercise("find-the-e-gap"), 3, "A\nB\x00")
    assert session.attempt.trainee == "A B"
    for act in (do.PointAt("a\nb"), do.WriteReading("note", text="x" * 401), do.WriteReading("note", 1.0)):
        with pytest.raises(SpecError):
            session.send(act, 1.0)
    session.send(do.WriteReading("note", text="\N{DEGREE SIGN} and × are plain text"), 1.0)
    assert replace(session.attempt) == session.attempt != Attempt(session.attempt.exercise, 4)
