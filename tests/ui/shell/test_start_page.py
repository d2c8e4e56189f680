"""The doors of Start: what they say at first, after work, with a danger and with damaged files; by mouse and keys."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton

from magview.bench.autosave import Autosave
from magview.bench.placing import laid_out
from magview.job.library import job_path, read_job, shipped_jobs
from magview.job.sheet import change_in, new_job
from magview.job.store import JobStore
from magview.practice import shelf
from magview.practice.actions import HandIn
from magview.practice.library import find_lesson
from magview.spec.files import dump_json
from magview.spec.library import find_installation
from magview.ui.kit.settings import keep, start_put_away
from magview.ui.start.door import Link
from magview.ui.start.doors import Segment
from tests.hands import click, what_is_due
from tests.windows import main_window


@pytest.fixture
def start(qtbot, tmp_path, monkeypatch):
    """Open a window at Start, as the program does, over a folder of its own; closed in the end."""
    opened = []
    keep("recent-jobs", [])
    keep("first-place", "")

    def open_at(size=(1280, 660)):
        state = laid_out(find_installation("seven-radial-left"))
        window = main_window(state, autosave=Autosave(tmp_path / "bench"), first="start")
        window.resize(*size)
        window.show()
        qtbot.waitUntil(window.isVisible)
        window.activateWindow()
        qtbot.waitUntil(window.isActiveWindow)
        window.furnish()
        what_is_due()
        opened.append(window)
        return window

    yield open_at
    for window in opened:
        for page in window.places.open_pages:
            page.discard()
        window.close()
        window.deleteLater()
    keep("recent-jobs", [])
    keep("first-place", "")


def press(window, key, modifiers=Qt.KeyboardModifier.NoModifier) -> None:
    QTest.keyClick(window.places.front.focusWidget() or window, key, modifiers)


def filled(page) -> list[str]:
    return [frame.door.letter for frame in page.doors if frame.button.filled]


def test_the_first_time_three_doors_one_of_them_to_begin_with_and_no_bench_behind(start, qtbot):
    window = start()
    page = window.places.front
    learn, practise, _ = page.doors
    assert [frame.told.kicker for frame in page.doors] == ["Begin here", "The easiest", "No job yet"]
    assert learn.thing.text().endswith(shelf.lessons()[0].name) and learn.button.text() == "Start lesson 1"
    assert practise.thing.text() == shelf.exercises()[0].name and practise.count.text().startswith("0 of ")
    assert len(learn.bar.pieces) == len(shelf.lessons()) and learn.bar.pieces[0] is Segment.NOW
    assert filled(page) == ["L"] and page.focusWidget() is learn.button
    assert "nothing yet" in [label.text() for label in page.findChildren(QLabel)]
    qtbot.waitUntil(lambda: all(frame.picture.drawn for frame in page.doors))
    assert not window.places.has("bench"), "what nobody has gone to is not built"
    assert not any(window.places.has(name) for name in ("learn", "practise", "work"))


def test_doors_are_as_wide_as_one_another_and_a_long_title_widens_none(start):
    window = start()
    page = window.places.front
    em = page.fontInfo().pixelSize()
    page.doors[2].tell(page.doors[2].told.__class__("Open job", 90 * "long ", "", "Open"), False)
    QApplication.processEvents()
    for frame in page.doors:
        assert frame.width() == pytest.approx((page.width() - 6.8 * em) / 3, abs=2)
    assert page.doors[2].thing.toolTip() == 90 * "long "
    assert len({frame.picture.height() for frame in page.doors}) == 1


@pytest.mark.parametrize(("key", "place"), [(Qt.Key.Key_L, "learn"), (Qt.Key.Key_P, "practise")])
def test_a_letter_opens_its_door_and_the_way_back_goes_on(start, key, place):
    window = start()
    press(window, key)
    assert window.places.name == place
    under_way = window.places.front
    window.places.go("start")
    page = window.places.front
    door = page.doors[0 if place == "learn" else 1]
    assert door.told.kicker == "Under way" and "o on" in door.button.text()
    click(door.button)
    assert window.places.front is under_way and len(window.places.open_pages) == 1


def test_work_asks_where_a_new_sheet_is_kept_and_its_links_lead_to_plan_and_own_magneto(start, monkeypatch):
    window = start()
    asked = []
    monkeypatch.setattr("magview.ui.work.place.ask_save", lambda *a, **k: asked.append(a))
    press(window, Qt.Key.Key_W)
    assert asked and window.places.name == "work"
    window.places.go("start")
    plan = window.places.front.doors[2].links[0]
    click(plan)
    assert window.places.name == "bench" and window.bench_page.tabs.currentIndex() == 1
    assert not window.model.state.engaged.mounted


def test_a_click_anywhere_on_a_door_opens_it(start):
    window = start()
    click(window.places.front.doors[0].picture)
    assert window.places.name == "learn"


def test_tab_goes_door_by_door_then_to_what_is_below(start):
    window = start()
    page = window.places.front
    order = [page.doors[0].button, page.doors[1].button, page.doors[2].button, *page.doors[2].links, *page.lists]
    for widget in order:
        assert page.focusWidget() is widget
        QTest.keyClick(page.focusWidget(), Qt.Key.Key_Tab)
    assert page.focusWidget() is page.away


def test_a_finished_lesson_is_not_gone_on_with_and_is_ticked_by_its_id(start):
    window = start()
    first, second = shelf.lessons()[:2]
    window.progress.note_lesson(first.id, first.steps, first.steps)
    page = window.places.front
    page.tell()
    assert page.doors[0].told.kicker == "Next lesson" and page.doors[0].thing.text().endswith(second.name)
    assert page.doors[0].bar.pieces[0] is Segment.DONE and page.doors[0].count.text().startswith("1 of ")
    (item,) = [widget for widget in page.recent if isinstance(widget, Link)]
    assert item.text() == first.name
    window.close()
    again = start().places.front
    assert again.doors[0].thing.text().endswith(second.name), "another day it is known again"


def test_an_exercise_handed_in_undone_is_worth_another_go_and_is_where_one_stopped(start):
    window = start()
    press(window, Qt.Key.Key_P)
    page = window.places.front
    page.model.do(HandIn())
    page.kept_elsewhere()
    window.places.go("start")
    doors = window.places.front.doors
    assert doors[1].told.kicker == "Worth another go" and doors[1].thing.text() == shelf.exercises()[0].name
    assert doors[1].line.text().startswith("Last time ") and filled(window.places.front) == ["P"]
    mark = window.progress.read().exercise(shelf.exercises()[0].id)
    assert mark.tries == 1 and not mark.passed


def job_on(tmp_path, name="mine", **changed):
    path = tmp_path / f"{name}-job.magview.json"
    job = new_job("Trainer, both magnetos", "2026-01-02")
    for part, values in changed.items():
        job = change_in(job, part, **values)
    JobStore.create(path, job).close()
    keep("recent-jobs", [str(path)])
    return path


def test_a_job_under_way_shows_its_stage_and_opens_at_it(start, tmp_path):
    path = job_on(tmp_path)
    window = start()
    door = window.places.front.doors[2]
    assert door.thing.text() == "Trainer, both magnetos" and door.button.text() == "Open stage 1"
    assert door.bar.pieces[0] is Segment.NOW and not door.told.warns
    press(window, Qt.Key.Key_W)
    (sheet,) = window.work.sheets
    assert sheet.model.store.path == path.resolve()


def test_a_danger_on_a_sheet_is_an_amber_piece_with_words(start, tmp_path):
    job = read_job(job_path(shipped_jobs()[0]))
    path = tmp_path / "run-job.magview.json"
    ran = change_in(job.model_copy(update={"signature": None}), "ground_run", drop_left_rpm=0.0)
    path.write_text(dump_json(ran), encoding="utf-8")
    keep("recent-jobs", [str(path)])
    window = start()
    door = window.places.front.doors[2]
    assert Segment.DANGER in door.bar.pieces and "danger" in door.bar.accessibleName()
    assert door.line.text().startswith("△ Danger at stage") and "drop" in door.line.text()
    assert "WARNING" in door.line.toolTip()
    theme = window.look.theme
    assert door.line.palette().color(door.line.foregroundRole()).name() == theme.warn


def test_a_damaged_sheet_is_named_and_its_copy_opens(start, tmp_path):
    path = job_on(tmp_path, "broken")
    copy = tmp_path / "bench" / "not-saved" / path.name
    copy.parent.mkdir(parents=True)
    copy.write_text(path.read_text(encoding="utf-8"), encoding="utf-8")
    path.write_text("{", encoding="utf-8")
    window = start()
    page = window.places.front
    links = [widget for widget in page.recent if isinstance(widget, Link)]
    assert [link.text() for link in links] == [f"△ {path.name}", "open the copy"]
    assert page.doors[2].told.kicker == "No job yet"
    click(links[1])
    (sheet,) = window.work.sheets
    assert sheet.model.store.path == copy.resolve()


def test_damaged_progress_is_said_and_begins_anew(start, tmp_path):
    (tmp_path / "progress.json").write_text("{", encoding="utf-8")
    page = start().places.front
    assert any("progress" in label.text() and label.text().startswith("△") for label in page.findChildren(QLabel))
    assert page.doors[0].told.kicker == "Begin here"


def test_put_away_and_taken_back(start):
    window = start()
    box = window.places.front.away
    click(box)
    assert start_put_away()
    action = window.common.away_action
    window.common.fill_places()
    assert action.isChecked()
    action.trigger()
    assert not start_put_away()
    window.places.go("bench")
    window.places.go("start")
    assert not box.isChecked()


def test_the_bench_gone_to_later_is_whole_and_the_lesson_is_kept(start, qtbot):
    window = start()
    window.learn.begin(find_lesson(shelf.lessons()[0].id))
    press(window, Qt.Key.Key_5, Qt.KeyboardModifier.ControlModifier)
    qtbot.waitUntil(lambda: not window.furnishing)
    assert window.places.name == "bench" and window.bench_page.tabs.count() == 6
    assert "Bench" in [action.text().replace("&", "") for action in window.menuBar().actions()]


@pytest.mark.parametrize("size", [(1280, 660), (853, 440)])
def test_every_target_is_large_enough_for_a_hand_and_the_page_fits(start, size):
    window = start(size)
    page = window.places.front
    targets = [frame.button for frame in page.doors] + page.findChildren(Link) + [page.away]
    for widget in targets:
        assert (widget.isVisible() and min(widget.width(), widget.height()) >= 24) or widget is page.away
    assert window.size().toTuple() == size


def test_recent_things_are_told_whole_and_the_keyboard_follows_the_button_to_press(start, tmp_path):
    path = job_on(tmp_path, "a-job-of-the-left-magneto")
    window = start()
    page = window.places.front
    assert filled(page) == ["W"] and page.focusWidget() is page.doors[2].button
    (name,) = [widget for widget in page.recent if isinstance(widget, Link)]
    assert name.text() == "a-job-of-the-left-magneto-job" and name.width() >= name.sizeHint().width()
    for found in shelf.lessons()[:3]:
        window.progress.note_lesson(found.id, found.steps, found.steps)
    page.tell()
    QApplication.processEvents()
    assert all(w.width() >= w.sizeHint().width() for w in page.recent if isinstance(w, Link)), path


def test_a_blank_form_is_printed_from_work_and_a_folder_that_is_gone_is_refused(start, monkeypatch, tmp_path):
    window = start()
    window.places.go("work")
    refused = []
    monkeypatch.setattr("magview.ui.work.place.refuse", lambda _, sentence: refused.append(sentence))
    button = next(b for b in window.places.front.findChildren(QPushButton) if "A4" in b.text())
    for path in (tmp_path / "form.pdf", tmp_path / "gone" / "form.pdf"):
        monkeypatch.setattr("magview.ui.work.place.ask_save", lambda *a, to=path, **k: to)
        click(button)
    assert (tmp_path / "form.pdf").read_bytes().startswith(b"%PDF")
    assert len(refused) == 1 and "cannot be written" in refused[0]
