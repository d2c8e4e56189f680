"""Signs of a reading in words, beside its field, before it is written down."""

from __future__ import annotations

import pytest
from PySide6.QtTest import QTest

from tests.hands import show


@pytest.mark.parametrize(
    ("exercise", "kind", "typed", "says"),
    [
        ("true-dead-centre", "disc-zero", "2 before", "at top dead centre the disc reads 2° before its zero."),
        ("true-dead-centre", "disc-zero", "-2.5°", "at top dead centre the disc reads 2.5° before its zero."),
        ("true-dead-centre", "disc-zero", "+2", "at top dead centre the disc reads 2° after its zero."),
        ("several-teeth-out", "firing", "3 ATDC", "3° after top dead centre."),
        ("several-teeth-out", "firing", "25", "25° before top dead centre."),
        ("when-do-they-open", "opening", "0.8 mm short", "0.800 mm short of the mark, they open early."),
        ("when-do-they-open", "opening", "0.8 mm", "0.800 mm past the mark, they open late."),
    ],
)
def test_what_a_sign_means_is_said_while_it_is_typed(open_practice, exercise, kind, typed, says):
    page = open_practice(exercise)
    notebook = page.notebook
    show(page, notebook)
    notebook.kind.setCurrentIndex(notebook.kind.findData(kind))
    top = notebook.lines.y()
    assert notebook.says.text().strip() == ""
    QTest.keyClicks(notebook.value, typed)
    assert notebook.says.text() == f"It says: {says}"
    assert notebook.says.isVisible() and notebook.lines.y() == top, "nothing moves under the hand"
    QTest.keyClicks(notebook.value, " and more")
    assert notebook.says.text().strip() == ""
    page.kept_elsewhere()


@pytest.mark.parametrize(
    ("exercise", "kinds"),
    [
        ("find-the-e-gap", ["note"]),
        ("measure-the-gap", ["gap", "note"]),
        ("when-do-they-open", ["opening", "note"]),
        ("true-dead-centre", ["disc-zero", "note"]),
        ("switch-lead", ["firing", "lead", "note"]),
    ],
)
def test_the_notebook_offers_only_what_the_tray_can_read_or_the_task_asks(open_practice, exercise, kinds):
    page = open_practice(exercise)
    notebook = page.notebook
    show(page, notebook)
    assert [notebook.kind.itemData(i) for i in range(notebook.kind.count())] == kinds
    assert notebook.lobe.isVisible() == ("gap" in kinds), "a lobe is asked only where a gap is read"
    page.kept_elsewhere()
