"""A file that is named or double-clicked: opened by what it says it is, or refused in one sentence."""

from __future__ import annotations

import shutil

import pytest
from PySide6.QtWidgets import QMessageBox

from magview.cli import main as cli
from magview.practice.attempt import Session, dump_attempt
from magview.practice.library import find_exercise
from magview.spec.files import dump_json, write_text
from magview.spec.formats import KINDS
from magview.spec.library import find_installation, find_magneto, resources
from magview.ui.practice.choice import Choice
from magview.ui.shell import opening
from tests.classroom.attempts import a_set


@pytest.fixture
def file(tmp_path):
    def copy(name: str, text: str | None = None):
        target = tmp_path / "given.json"
        if text is None:
            shutil.copyfile(resources() / name, target)
        else:
            target.write_text(text, encoding="utf-8")
        return target

    return copy


def refusals(window) -> list[str]:
    return [box.text() for box in window.findChildren(QMessageBox)]


def close_boxes(window) -> None:
    for box in window.findChildren(QMessageBox):
        box.close()


def test_every_kind_of_file_is_opened_or_told_why_not():
    known = set(opening.OPENERS) | set(opening._REFUSED)  # noqa: SLF001
    assert known >= {*KINDS, "bench"}
    assert not set(opening.OPENERS) & set(opening._REFUSED)  # noqa: SLF001


def test_a_magneto_and_an_installation_come_on_the_bench(open_window, file):
    window = open_window("four-opposed")
    opening.open_in(window, file("magnetos/nine-radial.json"))
    assert window.model.state.magneto == find_magneto("nine-radial")
    installation = find_installation("seven-radial-right")
    opening.open_in(window, file("", dump_json(installation)))
    assert window.model.state.magneto == installation.magneto
    assert refusals(window) == []


def test_an_exercise_is_offered_with_its_code_and_a_lesson_begins(open_window, file):
    window = open_window()
    opening.open_in(window, file("exercises/gap-wrong.json"))
    (choice,) = window.findChildren(Choice)
    assert choice.list.currentItem().text().endswith(find_exercise("gap-wrong").name)
    assert choice.list.currentRow() == choice.list.count() - 1
    choice.close()
    opening.open_in(window, file("lessons/what-the-parts-are.json"))
    (room,) = window.learn.open_pages
    assert window.places.front is room
    assert room.strip is not None
    room.discard()


def test_an_attempt_goes_on(open_window, tmp_path):
    window = open_window()
    path = tmp_path / "a.json"
    write_text(path, dump_attempt(Session(find_exercise("gap-wrong"), 4, "a trainee").attempt))
    opening.open_in(window, path)
    (room,) = window.practice.attempts
    assert room.model.session.attempt.seed == 4
    room.discard()


def test_a_job_sheet_and_a_class_set_open_in_the_places_they_belong_to(open_window, file, tmp_path, monkeypatch):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    window = open_window()
    job = file("jobs/seven-radial-left-job.json")
    opening.open_in(window, job)
    (sheet,) = window.work.sheets
    assert sheet.model.store.path == job.resolve() and window.places.front is sheet
    sheet.close()
    path = tmp_path / "set.json"
    write_text(path, dump_json(a_set("gap-wrong", "pips")))
    opening.open_in(window, path)
    desk = window.classes.pages["join"]
    assert desk.exercises.row_count() == 2 and window.places.front is desk
    desk.close()
    assert refusals(window) == []


@pytest.mark.parametrize(
    ("name", "text", "says"),
    [
        ("engines/nine-radial.json", None, "magview engine given.json"),
        ("", '{"format": "magview-bench/1"}', "finds again after a crash"),
        ("", '{"format": "magview-teapot/1"}', "not a file of this program"),
        ("", '{"format": "magview-magneto/9"}', "a newer magview wrote it"),
        ("", '{"format": "magview-lesson/1"}', "missing"),
        ("", "not json", "not JSON"),
    ],
)
def test_what_cannot_be_opened_is_told_in_one_sentence(open_window, file, name, text, says):
    window = open_window()
    before = window.model.state
    opening.open_in(window, file(name, text))
    (sentence,) = refusals(window)
    assert says in sentence and "given.json" in sentence
    assert window.model.state == before
    close_boxes(window)


# ---------------------------------------------------------------------- on the command line


@pytest.fixture
def shown(monkeypatch):
    calls: list[tuple[object, bool, object, str]] = []
    monkeypatch.setattr(
        "magview.ui.shell.app.run",
        lambda item, recover, then=None, first="bench": calls.append((item, recover, then, first)) or 0,
    )
    monkeypatch.setattr("magview.ui.kit.preflight.why_no_window", lambda: None)
    return calls


def test_a_file_named_on_the_command_line_is_on_the_bench(shown, file):
    assert cli.main([str(file("magnetos/traced-six.json"))]) == 0
    assert shown == [(find_magneto("traced-six"), False, None, "bench")]


def test_other_kinds_are_opened_once_the_window_is_complete(shown, file, open_window):
    path = file("lessons/what-the-parts-are.json")
    assert cli.main(["open", str(path)]) == 0
    ((item, recover, then, first),) = shown
    assert (item, recover, first) == (None, False, "start")
    window = open_window()
    then(window)
    (room,) = window.learn.open_pages
    room.discard()


def test_a_bad_file_is_refused_on_the_terminal_and_in_the_window_where_there_is_none(
    shown, file, capsys, monkeypatch, open_window
):
    path = file("", "not json")
    assert cli.main([str(path)]) == 2
    assert capsys.readouterr().err.count("\n") == 1
    assert shown == []
    monkeypatch.setattr(cli.sys, "argv", ["magview-window", str(path)])
    assert cli.window() == 0
    window = open_window()
    shown[0][2](window)
    assert "not JSON" in refusals(window)[0]
    close_boxes(window)


def test_the_window_without_a_file_opens_at_start_and_finds_again_what_was_left(shown, monkeypatch):
    monkeypatch.setattr(cli.sys, "argv", ["magview-window"])
    assert cli.window() == 0
    assert cli.main([]) == 0
    assert shown == 2 * [(None, True, None, "start")]


def test_the_command_bench_and_a_magneto_by_its_name_open_at_the_bench(shown):
    assert cli.main(["bench"]) == 0
    assert cli.main(["--magneto", "nine-radial"]) == 0
    assert [call[3] for call in shown] == ["bench", "bench"]


def test_without_a_window_the_magneto_is_told_as_text_and_the_rest_named(monkeypatch, capsys, file):
    monkeypatch.setattr("magview.ui.kit.preflight.why_no_window", lambda: "there is no display")
    assert cli.main([str(file("magnetos/nine-radial.json"))]) == 0
    assert find_magneto("nine-radial").name in capsys.readouterr().out
    assert cli.main([str(file("lessons/what-the-parts-are.json"))]) == 1
    assert capsys.readouterr().out.strip() == "No window: there is no display"


def test_a_command_wins_over_a_file_of_its_name(tmp_path, monkeypatch, capsys, shown):
    monkeypatch.chdir(tmp_path)
    (tmp_path / "schema").write_text("{}", encoding="utf-8")
    assert cli.main(["schema", "magneto"]) == 0
    assert shown == []
