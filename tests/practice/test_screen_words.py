"""Before the hand-in no text of the practice room holds a true number."""

from __future__ import annotations

import re
from dataclasses import astuple

import pytest

from magview.bench import actions as bench
from magview.bench.state import crank_deg
from magview.drawing.breaker_end import breaker_end
from magview.drawing.crank_end import disc_point
from magview.drawing.drive_end import drive_end
from magview.practice import actions as do
from magview.practice.apply import apply
from magview.practice.faults import begin
from magview.practice.instruments import true_disc_deg
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.screen_words import hidden_parts, seen
from magview.practice.words import act_words
from tests.practice.trainee import Trainee
from tests.secrets_of import secrets
from tests.wording import says

NUMBER = re.compile(r"\d+(?:\.\d+)?")


def texts(practice) -> list[str]:
    parts: list[str] = []
    for part in astuple(seen(practice)):
        parts += [part] if isinstance(part, str) else list(part)
    return parts


@pytest.mark.parametrize("name", shipped_exercises())
def test_no_text_holds_a_true_number(name):
    """Written to hundredths and finer, as true values would be; the trainee's own notes are the trainee's."""
    trainee = Trainee(find_exercise(name), 3)
    trainee.work()
    states = trainee.hands.session.states
    for practice in states[:: max(1, len(states) // 25)]:
        hidden = {
            f"{abs(v):.{d}f}" for v in secrets(practice).values() for d in (2, 3, 4) if v == v and abs(v) > 0.005
        }
        shown = seen(practice)
        words = " ".join(t for t in texts(practice) if t not in shown.notebook)
        numbers = {n for n in NUMBER.findall(words) if len(n.partition(".")[2]) >= 2}
        # The disc reads quarters of a degree and may stand on one by itself.
        assert not {n for n in numbers & hidden if float(n) * 4 % 1}, (numbers & hidden, words)


@pytest.mark.parametrize("name", shipped_exercises())
def test_what_is_seen_at_first_is_alike_for_all_settings(name):
    """As found, plate and screw tell nothing: they stand where one finds them."""
    for seed in range(5):
        first = seen(begin(find_exercise(name), seed))
        assert first.plate == "turned +0.0° since you came"
        assert first.screw == "turned +0° since you came"
        assert first.lamp == "not connected" and first.straightedge == "not laid on"


def test_the_record_in_words_holds_only_what_hands_know():
    """Of turning until something happens, the words say what happened and not how far it was."""
    trainee = Trainee(find_exercise("when-do-they-open"), 3)
    trainee.work()
    session = trainee.hands.session
    for event, before, after in zip(session.attempt.events, session.states, session.states[1:], strict=False):
        words = act_words(event.act, before, after)
        if type(event.act).__name__ == "TurnUntil":
            assert not NUMBER.search(words), words


def test_the_secrets_are_there_to_be_searched_for():
    """The names of what is hidden, of both magnetos; a search for none of them would prove nothing."""
    hidden = secrets(begin(find_exercise("both-everything-wrong"), 1))
    for side in ("left", "right"):
        for name in ("rotor_deg", "backplate_deg", "screw_deg", "opens_deg[0]", "max_gap_mm[3]", "firing_deg"):
            assert f"{side}.{name}" in hidden
    assert hidden["left.disc_error_deg"] == hidden["right.disc_error_deg"] != 0.0


def test_what_tightening_carries_along_and_what_slips_unseen_is_not_told():
    practice = apply(begin(find_exercise("creeping-screw"), 1), bench.TightenLock(False))
    told = seen(apply(apply(practice, do.TurnScrew(2.0)), bench.TightenLock(True)))
    assert told.screw == "turned +2° since you came (closer)"
    back = apply(begin(find_exercise("a-step-or-two-out"), 1), do.Nuts(False))
    assert seen(apply(back, do.MoveTooth("magneto", 1))).teeth == says("no marks to count by")
    marked = apply(apply(back, bench.PaintMarks()), do.MoveTooth("magneto", 1))
    assert seen(marked).teeth == says("by the marks: A disc {j:+d}, B magneto flange {i:+d} teeth", i=1, j=0)


def test_the_picture_hides_the_scales_and_what_is_not_there():
    practice = begin(find_exercise("wrong-stroke"), 1)
    always = {"rotor scale", "plate scale"}
    assert hidden_parts(practice) == {*always, "straightedge", "painted mark"}
    marked = apply(apply(practice, do.LayStraightedge(True)), bench.PaintMarks())
    assert hidden_parts(marked) == always
    drawn = {s.part for s in breaker_end(practice.bench.magneto).shapes}
    drawn |= {s.part for s in drive_end(practice.exercise.installation.coupling)}
    assert hidden_parts(practice) <= drawn


def test_the_disc_is_drawn_with_what_it_reads_under_the_pointer():
    """The pointer stands at the right, bearing 90° clockwise from the top: there x is the radius and y is 0."""
    for seed in range(5):
        practice = begin(find_exercise("true-dead-centre"), seed)
        engine = practice.exercise.installation.engine
        # Drawn as far aside as it is put on wrong.
        drawn = crank_deg(practice.bench) - practice.disc_error_deg
        point = disc_point(engine, 50.0, true_disc_deg(practice), drawn)
        assert tuple(point) == pytest.approx((50.0, 0.0), abs=1e-9)


def test_the_sign_of_what_was_turned_is_told_in_words():
    """Positive is closer for the screw and with rotation for the plate, as everywhere."""
    room = begin(find_exercise("gap-wrong"), 1)
    for act in (do.TurnScrew(-42.0), do.TurnPlate(1.5)):
        room = apply(room, act)
    assert seen(room).screw == "turned -42° since you came (wider)"
    assert seen(room).plate == "turned +1.5° since you came (with rotation)"
    assert seen(apply(room, do.TurnPlate(-2.0))).plate == "turned -0.5° since you came (against rotation)"
