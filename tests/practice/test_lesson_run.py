"""How a lesson's step is judged: when the hand lets go, in neutral words on the way, and never marked."""

from __future__ import annotations

import pytest

from magview.bench import actions as bench
from magview.practice import actions as do
from magview.practice.attempt import dump_act, read_act
from magview.practice.lesson_run import Stand, act, answer, back, go_on, judge, resume, start_lesson, take, undo
from magview.practice.lesson_words import stand_words
from magview.practice.library import find_lesson, shipped_lessons
from magview.practice.progress import LessonMark, ProgressBook
from magview.practice.state import SAFE_THINGS, true_readings
from tests.lesson_ways import guessed, played


def test_a_step_is_judged_when_the_hand_lets_go_and_not_in_passing():
    run = start_lesson(find_lesson("neutral-and-e-gap"))
    for _ in range(6):  # 0 to 60 degrees, through full register at 45, in one movement
        run = act(run, do.TurnRotor(10.0), same=True)
        assert run.stand is Stand.WAITING
    run = judge(run)
    assert run.stand is Stand.PART_WAY
    assert stand_words(run)[0] == "The rotor stands 15° past full register."
    run = judge(act(run, do.TurnRotor(-15.0)))
    assert run.step_done
    assert stand_words(run)[0] == "Step 1 done."


def test_an_act_part_way_is_neutral_and_says_how_far():
    run = guessed(played("plate-and-screw", 2))
    run = take(run, do.TurnScrew(2.0))
    assert run.stand is Stand.PART_WAY
    assert stand_words(run)[0] == "2.0 of 4° so far. Turn 2.0° more, closer."
    run = take(run, do.TurnScrew(6.0))
    assert stand_words(run)[0] == "8.0° of 4°: too far. Turn 4.0° wider."
    assert run.stand is Stand.PART_WAY


def test_a_wrong_act_is_named_and_can_be_taken_back():
    run = guessed(played("plate-and-screw", 2))
    way = take(run, do.TurnScrew(-2.0))
    assert way.stand is Stand.WRONG
    assert stand_words(way)[0] == "That was the wrong way."
    other = take(run, bench.TightenClamps(False))
    assert stand_words(other)[0].startswith("Not asked for: ") and "clamp screws" in stand_words(other)[0]
    assert "Undo act takes it back" in stand_words(other)[1]
    assert undo(other).practice == run.practice and undo(other).answered
    part = take(start_lesson(find_lesson("what-the-parts-are")), do.PointAt("cam"))
    assert part.stand is Stand.WRONG and stand_words(part)[0] == "You clicked the cam."
    aside = take(run, do.PointAt("lock screw"))
    assert aside.stand is Stand.PART_WAY, "a click on a part is no mistake where none is asked for"


def test_the_bench_itself_knows_the_answer_to_a_guess():
    """Screw 4 degrees closer: gap smaller, opening later. Plate 2 degrees against rotation: gap the same, opening
    earlier (common practice; `tests/physics` holds the numbers)."""
    run = take(guessed(played("plate-and-screw", 2), 1), do.TurnScrew(4.0))
    assert run.rights[2] == (0, 2)
    assert stand_words(run)[0] == (
        "Step 3 done. Gap: not as you said, 0.365 mm became 0.330 mm. Opening: not as you said, 0.9° of rotor later."
    )
    plate = take(answer(answer(played("plate-and-screw", 5), 0, 1), 1, 0), do.TurnPlate(-2.0))
    assert plate.rights[5] == (1, 0)
    assert "Gap: as you said" in stand_words(plate)[0] and "Opening: as you said" in stand_words(plate)[0]


def test_going_back_finds_the_room_as_the_step_found_it():
    run = played("plate-and-screw", 2)
    turned = take(guessed(run), do.TurnScrew(4.0))
    again = back(turned)
    assert again.at == 2 and again.practice == run.practice and not again.answered
    before = back(again)
    assert before.at == 1 and before.practice == played("plate-and-screw", 1).practice
    assert not before.step_done


@pytest.mark.parametrize("choice", [0, 1, 2])
def test_a_guess_can_be_changed_until_the_act_and_is_scored_apart(choice):
    run = played("neutral-and-e-gap", 1)
    run = answer(answer(run, 0, 0), 0, choice)
    run = take(run, do.LetGo())
    assert run.step_done
    assert answer(run, 0, 1).answers == run.answers
    assert run.foretold == (int(choice == 1), 1)
    assert go_on(run).at == 2


def test_the_list_of_making_safe_is_gone_through_thing_by_thing():
    run = played("live-or-safe", 1)
    for thing in SAFE_THINGS:
        assert not run.step_done
        run = take(run, do.MakeSafe(thing, True))
    assert run.step_done


def test_turning_right_round_by_hand_counts_as_watching_the_lamp():
    run = guessed(played("contacts-and-lamp", 1))
    for _ in range(8):
        run = act(run, do.TurnRotor(40.0), same=True)
    assert not judge(run).step_done
    run = judge(act(run, do.TurnRotor(45.0), same=True))
    assert run.step_done


def test_a_step_that_is_so_already_says_so_and_waits_for_next():
    run = played("contacts-and-lamp", 5)
    run = go_on(take(run, do.LayStraightedge(True)))
    run = go_on(take(run, do.Sight(0.0)))
    lesson = run.lesson.model_copy(update={"steps": (run.lesson.steps[0], *run.lesson.steps[:1])})
    again = go_on(take(start_lesson(lesson), do.ConnectLamp(True)))
    assert again.step_done and again.already
    assert stand_words(again)[0] == "Step 2 is so already."


def test_live_or_safe_shows_a_magneto_without_a_tab_and_then_one_with():
    run = played("live-or-safe", 9)
    assert run.step.title == "With a tab"
    assert run.practice.bench.magneto.grounding_tab is True and run.practice.bench.lead.plug_in
    assert run.previous.practice.bench.magneto.grounding_tab is False
    run = take(guessed(run), bench.PullPlug(True))
    assert run.step_done
    run = take(go_on(run), do.MeterTerminal())
    assert run.practice.said.text.startswith("ground"), "the tab grounds what the other magneto would leave live"
    assert back(back(back(run))).practice.bench.magneto.grounding_tab is False


def test_what_the_lock_screw_carries_along_is_allowed_for():
    gaps = [
        float(true_readings(played("lock-and-clamp-screws", at).practice.bench).max_gap_mm[0]) for at in (1, 3, 6)
    ]
    assert gaps[0] - gaps[1] > 0.01, "the lock screw carries the contact screw closer"
    assert gaps[2] == pytest.approx(gaps[0], abs=0.001), "at the end the gap is what it was at first"


@pytest.mark.parametrize("name", shipped_lessons())
def test_a_lesson_left_in_the_middle_goes_on_where_it_was_left(name, tmp_path):
    file = tmp_path / "progress.json"
    for at in range(len(find_lesson(name).steps)):
        left = played(name, at)
        deeds = tuple(tuple(dump_act(deed) for deed in done) for done in left.deeds[:-1])
        mark = LessonMark(deeds=deeds, answers=left.answers[:at])
        ProgressBook(file).note_lesson(name, at, len(left.lesson.steps), mark)
        kept = ProgressBook(file).read().lesson(name)
        again = resume(left.lesson, [[read_act(deed) for deed in done] for done in kept.deeds], kept.answers)
        assert (again.at, again.practice, again.answers, again.rights) == (
            at, left.practice, left.answers, left.rights,
        )  # fmt: skip
