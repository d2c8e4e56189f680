"""Progress kept by id in one small file, and the next thing that follows from it."""

from __future__ import annotations

import datetime
import json

import pytest

from magview.practice import shelf
from magview.practice.library import find_exercise, find_lesson, shipped_exercises, shipped_lessons
from magview.practice.progress import DAMAGED, FILE, ProgressBook


class Clock:
    """A second later each time."""

    def __init__(self) -> None:
        self.second = 0

    def __call__(self) -> str:
        self.second += 1
        return f"2026-01-01T00:00:{self.second:02d}+00:00"


@pytest.fixture
def book(tmp_path):
    return ProgressBook(tmp_path / "kept" / FILE, Clock())


def test_the_shelf_has_what_the_files_say_in_the_order_of_the_library():
    assert [found.id for found in shelf.lessons()] == shipped_lessons()
    assert [found.id for found in shelf.exercises()] == shipped_exercises()
    for found in shelf.lessons():
        lesson = find_lesson(found.id)
        assert (found.name, found.number, found.steps) == (lesson.name, lesson.number, len(lesson.steps))
    first = find_exercise(shelf.exercises()[0].id)
    assert shelf.shipped_id(first) == shelf.exercises()[0].id
    assert shelf.shipped_id(first.model_copy(update={"story": "Another."})) == ""


def test_the_next_lesson_is_the_one_left_in_the_middle_last_and_a_finished_one_is_not_gone_on_with(book):
    first, second, third = (found.id for found in shelf.lessons()[:3])
    assert book.read().next_lesson(shelf.lessons()).id == first
    book.note_lesson(first, 5, 5)
    assert book.read().next_lesson(shelf.lessons()).id == second
    book.note_lesson(third, 2, 7)
    assert book.read().next_lesson(shelf.lessons()).id == third
    book.note_lesson(third, 7, 7)
    assert book.read().lesson(third).done and book.read().lesson(third).at == 0
    book.note_lesson(third, 1, 7)
    assert book.read().lesson(third).done, "looked at again it stays done"
    assert book.read().next_lesson(shelf.lessons()).id == second
    for found in shelf.lessons():
        book.note_lesson(found.id, found.steps, found.steps)
    assert book.read().next_lesson(shelf.lessons()) is None


def test_what_failed_comes_back_after_a_day_then_later_each_time_and_at_last_no_more(tmp_path):
    """Spaced repetition (common practice): each pass when it came back puts the next one further off."""
    now = ["2026-01-01T08:00:00+00:00"]
    book = ProgressBook(tmp_path / FILE, lambda: now[0])
    names = shelf.exercises()
    failed, passed = names[0].id, names[1].id
    book.note_exercise(passed, 100.0, True)
    book.note_exercise(failed, 40.0, False, "gap")
    book.note_exercise(failed, 100.0, True)
    waits = []
    for day in range(1, 61):
        now[0] = (datetime.datetime(2026, 1, 1, 9, tzinfo=datetime.UTC) + datetime.timedelta(days=day)).isoformat()
        back = book.read().due(names, now[0])
        assert back is None or back.id == failed, "what never failed does not come back"
        if back is not None:
            assert book.read().next_exercise(names, now[0]) == back
            waits.append(day)
            book.note_exercise(failed, 100.0, True)
            book.note_exercise(failed, 100.0, True)  # again on the same day: no further step
    assert waits == [1, 4, 11, 32]


def test_a_code_whose_truth_was_shown_is_known_from_then_on(book):
    exercise = find_exercise("gap-wrong")
    book.note_shown(exercise, 7)
    again = ProgressBook(book.path)
    assert again.truth_shown(exercise, 7)
    assert not again.truth_shown(exercise, 8)
    assert not again.truth_shown(exercise.model_copy(update={"task": "Another."}), 7)


def test_what_went_wrong_last_comes_again_and_then_what_is_new(book):
    easy, other, new = (found.id for found in shelf.exercises()[:3])
    book.note_exercise(easy, 100.0, True)
    book.note_exercise(other, 40.0, False, "gap")
    assert book.read().next_exercise(shelf.exercises()).id == other
    book.note_exercise(other, 90.0, True)
    assert book.read().next_exercise(shelf.exercises(), "2026-01-01T01:00:00+00:00").id == new, "not on the same day"
    book.note_exercise(easy, 60.0, False, "danger")
    mark = book.read().exercise(easy)
    assert (mark.tries, mark.best, mark.last, mark.passed, mark.lost) == (2, 100.0, 60.0, True, "danger")
    assert book.read().next_exercise(shelf.exercises()).id == easy


def test_another_program_finds_it_again_by_ids_and_an_unknown_id_stays(book):
    book.note_lesson("gone-from-the-shelf", 1, 2)
    book.note_exercise("", 10.0, False)
    again = ProgressBook(book.path)
    assert again.read() == book.read() and list(again.read().exercises) == []
    assert json.loads(book.path.read_text(encoding="utf-8"))["format"] == "magview-progress/1"
    again.note_lesson("gone-from-the-shelf", 2, 2)
    assert book.read().lesson("gone-from-the-shelf").done


def test_a_damaged_file_is_put_aside_and_named(book):
    book.note_lesson("what-the-parts-are", 1, 12)
    book.path.write_text("{", encoding="utf-8")
    assert book.read().lessons == {} and book.damaged == book.path.with_name(DAMAGED)
    assert book.damaged.read_text(encoding="utf-8") == "{"
    book.note_lesson("what-the-parts-are", 2, 12)
    assert book.read().lesson("what-the-parts-are").at == 2


def test_a_folder_that_takes_no_file_is_said_and_the_progress_lasts_as_long_as_the_program(tmp_path):
    (tmp_path / "kept").write_text("a file where a folder should be", encoding="utf-8")
    book = ProgressBook(tmp_path / "kept" / FILE)
    book.note_lesson("what-the-parts-are", 3, 12)
    assert "cannot be kept" in book.trouble
    assert book.read().lesson("what-the-parts-are").at == 3
