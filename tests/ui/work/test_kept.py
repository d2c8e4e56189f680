"""The job sheet kept safely: full disks, other programs, a second writer, undo over sessions."""

from __future__ import annotations

import errno
import os

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QMessageBox

from magview.job.library import job_path, read_job
from magview.job.sheet import change_in, new_job
from magview.job.store import JobStore
from tests.hands import click
from tests.job_windows import form_of, front, press, value_in, write


def full_disk(*_args):
    raise OSError(errno.ENOSPC, os.strerror(errno.ENOSPC))


def test_a_full_disk_is_said_and_nothing_is_lost(open_job, monkeypatch):
    window = open_job()
    path = window.model.store.path
    write(window, "ground_run", "run_rpm", "1600")
    assert window.saved.text() == "✓ Saved in a-job.json" and not window.banner.isVisible()
    with monkeypatch.context() as broken:
        broken.setattr(os, "fsync", full_disk)
        write(window, "ground_run", "run_rpm", "1700")
        assert window.banner.isVisible()
        assert window.banner.words.text().startswith("✗ Not saved: a-job.json")
        assert os.strerror(errno.ENOSPC) in window.banner.words.text()
        assert window.saved.text() == "✗ Not saved"
        assert form_of(window, "ground_run").edits["run_rpm"].text() == "1700"
        press(window.banner.retry)
        assert window.banner.isVisible()
        # It cannot be closed by a click as if nothing were the matter.
        window.close()
        assert window.isVisible()
        box = window.findChild(QMessageBox)
        assert "Not saved" in box.text()
        click(next(b for b in box.buttons() if "Go on" in b.text()))
        assert value_in(path, "ground_run", "run_rpm") == 1600.0
    press(window.banner.retry)
    assert not window.banner.isVisible()
    assert value_in(path, "ground_run", "run_rpm") == 1700.0


def test_saved_elsewhere_while_the_disk_is_full(open_job, monkeypatch, tmp_path):
    window = open_job()
    with monkeypatch.context() as broken:
        broken.setattr(os, "fsync", full_disk)
        write(window, "ground_run", "run_rpm", "1700")
    other = tmp_path / "other-job.json"
    window.save_as(other)
    assert not window.banner.isVisible() and window.saved.text() == "✓ Saved in other-job.json"
    write(window, "ground_run", "drop_left_rpm", "60")
    assert (value_in(other, "ground_run", "run_rpm"), value_in(other, "ground_run", "drop_left_rpm")) == (
        1700.0,
        60.0,
    )


def test_a_file_changed_by_another_program_is_not_written_over(open_job):
    window = open_job()
    path = window.model.store.path
    write(window, "ground_run", "run_rpm", "1600")
    theirs = change_in(read_job(path), "ground_run", run_rpm=1500.0)
    path.write_text(path.read_text(encoding="utf-8").replace("1600.0", "1500.0"), encoding="utf-8")
    window.check_file()
    assert "was changed by another program" in window.banner.words.text() and window.banner.reload.isVisible()
    write(window, "ground_run", "run_rpm", "1700")
    assert "was changed by another program and is left as it is" in window.banner.words.text()
    assert value_in(path, "ground_run", "run_rpm") == theirs.ground_run.run_rpm == 1500.0
    press(window.banner.reload)
    box = window.findChild(QMessageBox)
    click(next(b for b in box.buttons() if "Reload" in b.text()))
    assert not window.banner.isVisible()
    assert form_of(window, "ground_run").edits["run_rpm"].text() == "1500"


def test_a_second_writer_only_reads_and_says_so(open_job, tmp_path):
    path = tmp_path / "held-job.json"
    other = JobStore.create(path, new_job("held"))
    window = open_job(path=path)
    assert "Read only: held-job.json is open in another window or program" in window.banner.words.text()
    assert window.saved.text() == "Read only: held-job.json"
    form = form_of(window, "ground_run")
    assert form.edits["run_rpm"].isReadOnly() and not form.edits["dead_cut_checked"].isEnabled()
    assert not window.menus.undo_action.isEnabled() and not window.bar.done.isEnabled()
    # What is changed there is seen here on coming back; once it is closed there, it can be changed here.
    other.commit(change_in(other.job, "ground_run", run_rpm=1650.0), "rpm")
    window.check_file()
    assert form.edits["run_rpm"].text() == "1650"
    assert window.model.store.read_only is not None
    other.close()
    press(window.banner.reload)
    assert not window.banner.isVisible()
    write(window, "ground_run", "run_rpm", "1700")
    assert value_in(path, "ground_run", "run_rpm") == 1700.0


def test_the_same_file_is_opened_once(open_job):
    window = open_job()
    main_room = window.model  # the same window comes to the front, no second one
    again = open_job(path=window.model.store.path)
    assert again is window and again.model is main_room


def test_undo_and_redo_by_keys_also_across_sessions(open_job, qtbot):
    window = open_job()
    path = window.model.store.path
    for text in ("1600", "1700"):
        write(window, "ground_run", "run_rpm", text)
    assert window.menus.undo_action.text() == "&Undo: Ground run: Engine speed"
    edit = form_of(window, "ground_run").edits["run_rpm"]
    edit.setFocus()
    # While something is being typed Ctrl+Z takes that back…
    QTest.keyClicks(edit, "9")
    QTest.keyClick(edit, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert edit.text() == "1700" and value_in(path, "ground_run", "run_rpm") == 1700.0
    QTest.keyClick(edit, Qt.Key.Key_Escape)
    window.close()
    # …and a step of the sheet otherwise, in another session, too.
    window = open_job(path=path)
    front(qtbot, window)
    edit = form_of(window, "ground_run").edits["run_rpm"]
    edit.setFocus()
    QTest.keyClick(edit, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert edit.text() == "1600" and value_in(path, "ground_run", "run_rpm") == 1600.0
    assert "Undone: Ground run: Engine speed" in window.bar.said.text()
    both = Qt.KeyboardModifier.ControlModifier | Qt.KeyboardModifier.ShiftModifier
    QTest.keyClick(edit, Qt.Key.Key_Z, both)
    assert edit.text() == "1700" and value_in(path, "ground_run", "run_rpm") == 1700.0
    for _ in range(2):
        QTest.keyClick(edit, Qt.Key.Key_Z, Qt.KeyboardModifier.ControlModifier)
    assert edit.text() == ""
    assert not window.menus.undo_action.isEnabled()


def test_the_shipped_sheet_is_looked_at_and_stays_as_it_is(open_window, tmp_path, qtbot):
    main = open_window("seven-radial-left")
    shipped = job_path("seven-radial-left")
    before, beside = shipped.read_bytes(), sorted(shipped.parent.iterdir())
    window = main.work.open_shipped()
    front(qtbot, window)
    assert "ships with the program" in window.banner.words.text() and not window.banner.reload.isVisible()
    window.model.reload()
    assert not window.model.writable
    window.save_as(tmp_path / "mine-job.json")
    assert window.model.writable and not window.banner.isVisible()
    write(window, "remarks", "note", "mine")
    assert read_job(tmp_path / "mine-job.json").remarks.note == "mine"
    assert shipped.read_bytes() == before and sorted(shipped.parent.iterdir()) == beside
    window.close()


def test_a_new_sheet_takes_no_file_that_is_there_already(open_window, tmp_path):
    main = open_window()
    path = tmp_path / "there-job.json"
    path.write_text("theirs", encoding="utf-8")
    assert main.work.new(path) is None
    assert "is there already" in main.findChild(QMessageBox).text()
    assert path.read_text(encoding="utf-8") == "theirs"
    assert main.work.open_path(path) is None  # and is no job sheet either
