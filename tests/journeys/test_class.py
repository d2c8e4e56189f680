"""A lesson in a room without a server: the instructor makes a set, a pupil does it in another process, the
instructor gathers, sees who needs help, and looks at the replay."""

from __future__ import annotations

import subprocess
import sys
from pathlib import Path

import pytest
from PySide6.QtTest import QTest

from magview.classroom.sets import set_of_code
from magview.ui.classroom.room import ClassRoom
from tests.classroom.attempts import done, handed
from tests.hands import click


@pytest.fixture
def instructor(open_window, tmp_path, qtbot):
    """The instructor's window; what it opens is closed again."""
    window = open_window()
    window.places._classes = ClassRoom(window.practice, tmp_path / "instructor")  # noqa: SLF001
    yield window
    for practice in list(window.practice.attempts):
        practice.discard()
    for opened in list(window.classes.pages.values()):
        opened.close()


def menu_entry(window, words: str):
    # The letter a menu answers to is not the same on every page.
    menu = next(a for a in window.menuBar().actions() if a.text().replace("&", "") == "Practice").menu()
    return next(a for a in menu.actions() if words in a.text())


@pytest.mark.process
def test_a_class_from_the_code_to_who_needs_help(instructor, tmp_path, qtbot):
    share = tmp_path / "share"
    share.mkdir()

    # The instructor picks an exercise, wants a fault for each, and has a list of two.
    menu_entry(instructor, "ake a class set").trigger()
    maker = instructor.classes.pages["make"]
    qtbot.waitUntil(maker.isActiveWindow)
    there = maker.fields.shipped
    row = next(i for i in range(there.count()) if "carries along" in there.item(i).text())
    there.setCurrentRow(row)
    click(maker.fields.add_button)
    settings = maker.fields.settings
    settings.give("seed", 11)
    settings.give("each_their_own", True)
    settings.edits["pupils"].insertPlainText("Zoë\nMax\nKim")  # QTest types ASCII only
    code = maker.code.text()
    of = set_of_code(code)
    assert of.each_their_own

    # The key says what is hidden for Zoë.
    maker.tabs.setCurrentIndex(1)
    qtbot.waitUntil(lambda: maker.key.rows.rowCount() > 0, timeout=20_000)
    told = [[str(maker.key.rows.index(y, x).data()) for x in (1, 4)] for y in range(maker.key.rows.rowCount())]
    assert {who for who, _ in told} == {"Zoë", "Max", "Kim"}

    # Zoë sits at another machine and types the code as she likes; Max hands in without having done anything.
    pupil = Path(__file__).with_name("class_pupil.py")
    words = [code.lower().replace("-", " "), "zoe", str(share), str(tmp_path / "pupil")]
    ran = subprocess.run(
        [sys.executable, str(pupil), *words], capture_output=True, text=True, timeout=300, check=False
    )
    assert ran.stdout.endswith("handed in\n"), ran.stdout + ran.stderr
    name, text = handed(of, 1, "Max", done(of, 1, "Max", "slack"))
    (share / name).write_text(text, encoding="utf-8")

    # The instructor gathers.
    menu_entry(instructor, "ather a class").trigger()
    gather = instructor.classes.pages["gather"]
    qtbot.waitUntil(gather.isActiveWindow)
    gather.folder.setFocus()
    QTest.keyClicks(gather.folder, str(share))
    click(gather.start)
    qtbot.waitUntil(lambda: gather.summary is not None, timeout=60_000)
    by_name = {p.key: p for p in gather.summary.pupils}
    assert by_name["zoe"].percent == 100.0
    assert by_name["zoe"].passed == 1
    assert by_name["max"].passed == 0
    assert by_name["max"].dangers > 0
    assert "Kim" in gather.message.text()
    assert all(not e.notes for e in gather.summary.entries), "Zoë's file does not fit the set"

    # A late file is seen without being asked for.
    name, text = handed(of, 1, "Kim", done(of, 1, "Kim", "idle"))
    (share / name).write_text(text, encoding="utf-8")
    qtbot.waitUntil(lambda: len(gather.summary.pupils) == 3, timeout=20_000)

    # And how Max did it.
    gather.tabs.setCurrentWidget(gather.attempts)
    gather.attempts.choose(next(e for e in gather.summary.entries if e.result.key == "max"))
    click(gather.replay)
    (replay,) = instructor.practice.attempts
    assert replay.debrief is not None
    assert replay.debrief.attempt.trainee in ("", "Max", "scripted trainee")
    assert "Not passed" in replay.debrief.verdict.accessibleDescription()
