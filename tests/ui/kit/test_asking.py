"""Questions with a button for each answer: each does what it says, and Return loses nothing."""

from __future__ import annotations

from functools import partial

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QWidget

from magview.ui.kit.asking import ACCEPT, DESTROY, REJECT, ask
from tests.hands import click


@pytest.fixture
def parent(qtbot):
    window = QWidget()
    qtbot.addWidget(window)
    window.show()
    return window


@pytest.mark.parametrize(("words", "done"), [("Save", ["saved"]), ("Drop it", ["dropped"]), ("Go on", [])])
def test_each_answer_does_what_it_says(parent, words, done):
    did: list[str] = []
    box = ask(
        parent,
        "What now?",
        ("Save", ACCEPT, partial(did.append, "saved")),
        ("Drop it", DESTROY, partial(did.append, "dropped")),
        ("Go on", REJECT, None),
        more="It is in no file.",
    )
    assert (box.text(), box.informativeText(), box.isVisible()) == ("What now?", "It is in no file.", True)
    click(next(b for b in box.buttons() if b.text() == words))
    assert did == done and not box.isVisible()


@pytest.mark.parametrize("key", [Qt.Key.Key_Return, Qt.Key.Key_Escape])
def test_where_nothing_accepts_return_and_escape_leave_all_as_it_is(parent, key):
    did: list[str] = []
    box = ask(parent, "Replace it?", ("Replace", DESTROY, partial(did.append, "gone")), ("Leave", REJECT, None))
    QTest.keyClick(box, key)
    assert did == [] and not box.isVisible()
