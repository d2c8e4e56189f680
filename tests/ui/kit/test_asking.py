"""Questions with a button for each answer, and where files are: nothing is lost by Return or by an ending."""

from __future__ import annotations

from functools import partial
from pathlib import Path

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QFileDialog, QMessageBox, QWidget

from magview.ui.kit.asking import ACCEPT, DESTROY, REJECT, ask, ask_open, ask_save
from tests.hands import click
from tests.wording import says


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


KINDS = "SVG (*.svg);;PNG (*.png)"


@pytest.fixture
def asked(monkeypatch):
    """What file dialogs were asked, and what they answer: a path, and a kind."""

    class Asked:
        path, kind = "", ""
        start = options = None

        def save(self, _parent, _title, start, _kinds, _kind, options):
            self.start, self.options = start, options
            return self.path, self.kind

        def open(self, _parent, _title, start, _kinds):
            self.start = start
            return self.path, ""

    answers = Asked()
    monkeypatch.setattr(QFileDialog, "getSaveFileName", answers.save)
    monkeypatch.setattr(QFileDialog, "getOpenFileName", answers.open)
    yield answers
    QApplication.instance().setProperty("last_folder", None)


@pytest.mark.parametrize(
    ("typed", "kind", "saved"),
    [
        ("plot", "PNG (*.png)", "plot.png"),
        ("plot", "", "plot.svg"),
        ("plot.svg", "PNG (*.png)", "plot.svg"),
        ("plot 1", "All files (*)", "plot 1.svg"),
        ("plot", "Plots (*.magview.svg *.svg)", "plot.magview.svg"),
    ],
)
def test_a_name_without_an_ending_gets_that_of_the_kind(parent, asked, tmp_path, typed, kind, saved):
    asked.path, asked.kind = str(tmp_path / typed), kind
    assert ask_save(parent, "Save", "first.svg", KINDS) == tmp_path / saved


@pytest.mark.parametrize("yes", [True, False])
def test_a_file_that_the_ending_leads_to_is_never_replaced_unasked(parent, asked, tmp_path, monkeypatch, yes):
    (tmp_path / "plot.svg").write_text("dear")
    asked.path, asked.kind, questions = str(tmp_path / "plot"), "SVG (*.svg)", []

    def question(*words):
        questions.append(words[2])
        return QMessageBox.StandardButton.Yes if yes else QMessageBox.StandardButton.No

    monkeypatch.setattr(QMessageBox, "question", question)
    assert ask_save(parent, "Save", "first.svg", KINDS) == (tmp_path / "plot.svg" if yes else None)
    assert questions == [says("{name} is there already. Replace it?", name="plot.svg")]
    assert ask_save(parent, "Save", "first.svg", KINDS, asks_itself=True) == tmp_path / "plot.svg"
    assert len(questions) == 1, "what saves asks by itself"
    assert asked.options == QFileDialog.Option.DontConfirmOverwrite


def test_the_next_dialog_opens_where_a_file_was_last_chosen(parent, asked, tmp_path):
    assert ask_open(parent, "Open", KINDS) is None and asked.start == ""
    asked.path = str(tmp_path / "a.svg")
    assert ask_open(parent, "Open", KINDS) == tmp_path / "a.svg"
    ask_open(parent, "Open", KINDS)
    assert Path(asked.start) == tmp_path
    ask_save(parent, "Save", "b.svg", KINDS)
    assert Path(asked.start) == tmp_path / "b.svg"
    ask_save(parent, "Save", Path("/elsewhere/b.svg"), KINDS)
    assert Path(asked.start) == Path("/elsewhere/b.svg"), "a place that is meant stays"
