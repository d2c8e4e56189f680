"""To be read by everybody: contrast, large type, projector, the switch lead in words."""

from __future__ import annotations

from itertools import product

import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLabel, QPushButton, QWidget

from magview.ui.kit.theme import THEMES
from tests.counts import sampled
from tests.ui.kit.contrast import contrast


def test_the_contrast_formula():
    assert contrast("#ffffff", "#000000") == pytest.approx(21.0)
    assert contrast("#777777", "#ffffff") == pytest.approx(4.48, abs=0.01)  # the well-known near miss


GROUNDS = ("window", "paper", "base")
WORDS = (
    *((ink, ground) for ink in ("text", "faint", "good", "bad", "warn", "hand") for ground in GROUNDS),
    ("text", "button"), ("text", "good_fill"), ("text", "bad_fill"), ("text", "hand_fill"), ("good", "good_fill"),
    ("bad", "bad_fill"), ("hand", "hand_fill"), ("on_hand", "hand"), ("paper", "text"),
)  # fmt: skip
"""Words by role, and what they stand on."""
SHAPES = tuple((line, ground) for line in ("hair", "line") for ground in GROUNDS)
STROKES = ("index", "spring", "mark", "scale", "pointer", "slot")
"""Materials that are of one colour all over, on parts lighter or darker than they are."""


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda t: t.name)
def test_words_have_the_contrast_that_wcag_2_2_aa_asks_for(theme):
    for words, ground in WORDS:
        assert contrast(getattr(theme, words), getattr(theme, ground)) >= 4.5, f"{words} on {ground}"
    for idea in ("lift", "current", "flux"):
        for ground in GROUNDS:
            assert contrast(theme.material(idea)[1], getattr(theme, ground)) >= 4.5, f"{idea} on {ground}"
    for part in ("north", "south", "drive-flange", "disc", "magneto-flange", "coil", "core", "screw", "boss"):
        fill, line = theme.material(part)
        assert contrast(line, fill) >= 4.5, f"letters on {part}"
    for part in ("north", "south", "drive-flange", "disc", "magneto-flange"):
        assert contrast(theme.text, theme.material(part)[0]) >= 4.5, f"numbers on {part}"


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda t: t.name)
def test_shapes_have_the_contrast_that_wcag_2_2_aa_asks_for(theme):
    for line, ground in SHAPES:
        assert contrast(getattr(theme, line), getattr(theme, ground)) >= 3.0, f"{line} on {ground}"
    for name in theme.materials:
        fill, line = theme.material(name)
        if name not in STROKES:
            assert contrast(line, fill) >= 3.0, name
    for name in ("index", "spring", "mark", "scale", "straightedge", "pointer"):
        assert contrast(theme.material(name)[1], theme.paper) >= 3.0, name
    for ground in ("plate", "housing", "north", "south"):
        assert contrast(theme.material("mark")[1], theme.material(ground)[0]) >= 3.0, f"a mark on {ground}"
    assert contrast(theme.material("slot")[1], theme.material("screw")[0]) >= 3.0
    for ground in ("disc", "drive-flange", "magneto-flange"):
        seen = max(contrast(colour, theme.material(ground)[0]) for colour in theme.material("paint"))
        assert seen >= 3.0, f"paint on {ground}: the paint itself or its edge"
    for ground in ("disc", "magneto-flange", "timing-disc"):
        assert contrast(theme.hand, theme.material(ground)[0]) >= 3.0, f"a planned place on {ground}"


def test_every_theme_has_the_same_materials_and_tells_the_ideas_apart():
    for theme in THEMES.values():
        assert set(theme.materials) == set(THEMES["light"].materials)
        ideas = [theme.materials[idea][1] for idea in ("lift", "current", "flux")]
        ideas += [theme.hand, theme.good, theme.bad]
        assert len(set(ideas)) == len(ideas)


@pytest.mark.parametrize(("name", "tab"), sampled(product(["seven-radial-left", "nine-radial-left"], [0, 1, 2]), 2))
def test_at_200_percent_type_nothing_is_cut_off(open_window, qtbot, name, tab):
    window = open_window(name, (1920, 1080))
    before = QApplication.font()
    try:
        window.menus.text_actions.actions()[-1].trigger()
        window.tabs.setCurrentIndex(tab)
        qtbot.waitUntil(lambda: window.panel.rotor.font().pointSizeF() == pytest.approx(2 * before.pointSizeF()))

        def cut() -> list[str]:
            return [
                w.text()
                for w in window.tabs.currentWidget().findChildren(QWidget)
                if isinstance(w, QLabel | QPushButton)
                and w.isVisible()
                and (w.width() < w.minimumSizeHint().width() or w.height() < w.minimumSizeHint().height())
            ]

        qtbot.waitUntil(lambda: not cut())  # the layout settles over a few events
        assert window.width() <= 1921
    finally:
        QApplication.setFont(before)


def test_projector_mode_gives_the_pictures_the_room_and_comes_back(open_window, qtbot):
    window = open_window("seven-radial-left")
    before = QApplication.font()
    try:
        pictures = (window.breaker, window.contact, window.drive)
        stood = [picture.geometry() for picture in pictures]
        QTest.keyClick(window, Qt.Key.Key_F11)
        qtbot.waitUntil(lambda: window.breaker.width() > 1.3 * stood[0].width())
        assert not window.tabs.isVisible()
        assert window.breaker.font().pointSizeF() > 1.5 * before.pointSizeF()
        QTest.keyClick(window, Qt.Key.Key_F11)
        QApplication.processEvents()
        assert window.tabs.isVisible()
        assert window.breaker.font().pointSizeF() == pytest.approx(before.pointSizeF())
        assert window.breaker.hasFocus(), "no other field may have the keyboard now"
        qtbot.waitUntil(lambda: [picture.geometry() for picture in pictures] == stood)
    finally:
        QApplication.setFont(before)


def test_the_switch_lead_in_the_hand(open_window):
    window = open_window("seven-radial-left")
    window.tabs.setCurrentIndex(2)
    lead = window.lead
    assert "Grounded by the switch" in lead.says.text()
    for check in (lead.broken,):
        QTest.mouseClick(check, Qt.MouseButton.LeftButton, pos=QPoint(8, check.height() // 2))
    assert "DANGER: live with the switch off" in lead.says.text()
    assert lead.diagram.accessibleDescription().startswith("DANGER")
    QTest.mouseClick(lead.plug, Qt.MouseButton.LeftButton, pos=QPoint(8, lead.plug.height() // 2))
    assert "grounding tab" in lead.says.text()
    QTest.mouseClick(lead.tab, Qt.MouseButton.LeftButton, pos=QPoint(8, lead.tab.height() // 2))
    assert "DANGER: live with the plug out" in lead.says.text()
    QTest.mouseClick(lead.short, Qt.MouseButton.LeftButton, pos=QPoint(8, lead.short.height() // 2))
    assert "Grounded only by a short" in lead.says.text()
    assert "DANGER" in lead.says.text()


def test_the_timing_light_is_chosen_by_what_it_does(open_window, qtbot):
    window = open_window("seven-radial-left")
    window.tabs.setCurrentIndex(2)
    combo = window.lead.lamp
    assert (combo.currentData(), combo.count()) == ("open", 4)
    combo.setFocus()
    QTest.keyClick(combo, Qt.Key.Key_Down)
    assert window.model.state.lamp_kind == "closed"
    assert combo.currentText() == "Lights when closed"
    window.model.undo()
    assert combo.currentData() == window.model.state.lamp_kind == "open"
