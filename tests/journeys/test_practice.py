"""Whole exercises solved at the real window by its instruments alone."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication

from tests.counts import sampled
from tests.journeys.window_trainee import WindowTrainee
from tests.wording import says


@pytest.mark.parametrize("name", sampled(["several-teeth-out", "creeping-screw"], 1))
def test_an_exercise_is_solved_to_full_marks_at_the_window(open_practice, name):
    window = open_practice(name, 11)
    WindowTrainee(window).work()
    QApplication.processEvents()
    told = window.debrief.told
    assert window.debrief.verdict.text() == says("{points:.0f} of 100: passed", points=100)
    assert all(row.full for row in told.marking.rows) and not told.marking.dangers
