"""The one look: each value changes what it should, and tells of it once."""

from __future__ import annotations

import pytest
from PySide6.QtWidgets import QApplication

from magview.ui.kit.look import Look
from magview.ui.kit.theme import DARK, LIGHT


@pytest.fixture
def look(qapp: QApplication) -> Look:
    return Look(LIGHT)


@pytest.mark.parametrize(
    ("name", "value"), [("theme", DARK), ("inches", True), ("text_percent", 150), ("line_factor", 1.6)]
)
def test_a_new_value_is_told_once_and_the_same_value_never(look: Look, name: str, value: object) -> None:
    told: list[object] = []
    look.changed.connect(lambda: told.append(getattr(look, name)))
    setattr(look, name, getattr(look, name))
    assert told == []
    setattr(look, name, value)
    setattr(look, name, value)
    assert told == [value]


def test_type_grows_with_its_own_share_and_with_the_lines(look: Look) -> None:
    assert look.text_factor == 1.0
    look.text_percent, look.line_factor = 150, 1.6
    assert look.text_factor == pytest.approx(2.4)
