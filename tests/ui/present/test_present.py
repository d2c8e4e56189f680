"""Presenting: keys of a remote, spotlight, frozen picture, no numbers, before and after – with real events."""

from __future__ import annotations

import re
import subprocess
import sys

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QImage
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import TurnBackplate, TurnRotor, TurnScrew
from magview.drawing.captions import CAPTIONS
from magview.ui.kit.theme import DARK
from magview.ui.pictures.scene_words import SceneWords
from tests.wording import says

Key = Qt.Key


@pytest.fixture
def present(open_window, qtbot):
    """A window that presents; afterwards the type is as it was."""
    before = QApplication.font()
    opened = []

    def begin(name: str = "seven-radial-left", size: tuple[int, int] = (1280, 720)):
        window = open_window(name, size)
        opened.append(window)
        key(window, Key.Key_F5)
        qtbot.waitUntil(lambda: window.presenter is not None and window.presenter.bar.isVisible())
        QApplication.processEvents()
        return window, window.presenter

    yield begin
    for window in opened:
        window.presenter.show(False)
    QApplication.setFont(before)


def key(window, which: Qt.Key) -> None:
    QTest.keyClick(window, which)
    QApplication.processEvents()


def pixels(widget) -> np.ndarray:
    image = widget.grab().toImage().convertToFormat(QImage.Format.Format_RGB32)
    data = np.frombuffer(image.constBits(), np.uint8).reshape(image.height(), image.bytesPerLine())
    return data[:, : 4 * image.width()].reshape(image.height(), image.width(), 4)[..., :3].astype(int)


def test_f5_presents_and_escape_leaves_everything_as_it_was(open_window, qtbot):
    window = open_window("seven-radial-left")
    before = QApplication.font()
    try:
        assert window.presenter is None
        key(window, Key.Key_F5)
        assert window.menus.projector_action.isChecked() and window.menus.present_action.isChecked()
        assert window.presenter.bar.isVisible() and not window.tabs.isVisible()
        for which in (Key.Key_PageDown, Key.Key_S, Key.Key_F, Key.Key_Period, Key.Key_K, Key.Key_A):
            key(window, which)
        for _ in range(4):  # before and after, frozen, spotlight, and the end
            assert window.presenter.on
            key(window, Key.Key_Escape)
        assert not window.presenter.on and not window.presenter.bar.isVisible()
        assert not window.menus.projector_action.isChecked() and window.tabs.isVisible()
        assert all(v.over is None and v.numbers for v in (window.breaker, window.drive, window.crank, window.contact))
        assert window.pictures.isEnabled() and window.menus.plots_action.isEnabled()
        assert window.breaker.hasFocus()
    finally:
        QApplication.setFont(before)


def test_a_remote_names_the_parts_in_order_and_turns_nothing(present):
    window, presenter = present()
    state = window.model.state
    order = [part for end in ("breaker", "drive", "crank") for part in CAPTIONS[end]]
    assert presenter.named == ""
    key(window, Key.Key_PageUp)
    assert presenter.named == ""
    for part in order:
        key(window, Key.Key_PageDown)
        assert presenter.named == part
        assert part in presenter.where.accessibleName()
    key(window, Key.Key_PageDown)
    assert presenter.named == order[-1]
    key(window, Key.Key_PageUp)
    assert presenter.named == order[-2]
    assert window.model.state is state, "the keys belong to the presenter now"
    window.presenter.show(False)
    key(window.breaker, Key.Key_PageUp)
    assert window.model.state.rotor_deg == pytest.approx(state.rotor_deg + 10.0)


def test_every_part_told_has_a_place_in_its_picture(present):
    window, presenter = present("nine-radial-left", (1920, 1080))
    window.show_plots(False)  # the crank's picture has no room beside them
    QApplication.processEvents()
    for end in ("breaker", "drive", "crank"):
        view = {"breaker": window.breaker, "drive": window.drive, "crank": window.crank}[end]
        for part in CAPTIONS[end]:
            key(window, Key.Key_PageDown)
            tip = presenter.lights[end].tip()
            assert presenter.named == part and tip is not None
            assert view.viewport().rect().contains(tip.toPoint()), part


def test_a_click_names_a_part(present):
    window, presenter = present()
    group, point = window.breaker.drawing.anchors["cam"]
    scene = window.breaker.scene_of_parts
    at = window.breaker.viewportTransform().map(scene.to_scene(group, point)).toPoint()
    QTest.mouseClick(window.breaker.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert presenter.named == "cam"
    key(window, Key.Key_PageDown)
    assert presenter.named == "heel", "and goes on from there"


def test_only_what_was_told_is_named(present, monkeypatch):
    window, _ = present("seven-radial-left", (1920, 1080))
    written: list[str] = []
    original = SceneWords.name
    monkeypatch.setattr(
        SceneWords,
        "name",
        lambda self, text, *how, **more: (written.append(text), original(self, text, *how, **more)),
    )
    window.breaker.grab()
    assert not set(CAPTIONS["breaker"]) & set(written)
    for _ in range(3):
        key(window, Key.Key_PageDown)
    written.clear()
    window.breaker.grab()
    assert set(CAPTIONS["breaker"]) & set(written) == {"rotor", "pole shoe"}


def test_the_spotlight_dims_all_but_one_part(present):
    window, presenter = present()
    for _ in range(TOLD_AT["backplate"]):
        key(window, Key.Key_PageDown)
    bright = pixels(window.breaker)
    key(window, Key.Key_S)
    dimmed = pixels(window.breaker)
    tip = presenter.lights["breaker"].tip()
    assert tip is not None
    inside = (round(tip.y()), round(tip.x()))
    assert (dimmed[inside] == bright[inside]).all(), "the part itself keeps its colour"
    paper = dimmed[2 * dimmed.shape[0] // 3, 5]
    rotor = window.breaker.viewportTransform().map(
        window.breaker.scene_of_parts.to_scene(*window.breaker.drawing.anchors["pole shoe"])
    )
    elsewhere = (round(rotor.y()) + 8, round(rotor.x()))
    assert abs(dimmed[elsewhere] - paper).sum() < 0.35 * abs(bright[elsewhere] - paper).sum()
    # Not by colour alone: an outline stands round it, and its name beside it.
    assert presenter.lights["breaker"].name == "backplate"
    key(window, Key.Key_S)
    assert (pixels(window.breaker) == bright).all()


TOLD_AT = {part: n for n, part in enumerate(CAPTIONS["breaker"], 1)}


def test_a_frozen_picture_stands_while_the_bench_moves_on(present):
    window, presenter = present()
    key(window, Key.Key_F)
    frozen = presenter.frozen
    assert frozen is not None and frozen.words == says("FROZEN · as on the bench")
    assert frozen.size() == window.pictures.size()
    before = pixels(frozen)
    rotor = window.model.state.rotor_deg
    key(window.breaker, Key.Key_Up)  # hands reach through
    assert window.model.state.rotor_deg == pytest.approx(rotor + 1.0)
    window.model.send(TurnBackplate(2.0))
    QApplication.processEvents()
    assert frozen.words == says("FROZEN · the bench has moved on") and frozen.accessibleName() == frozen.words
    after = pixels(frozen)
    band = frozen.fontMetrics().height() + 28
    assert (before[:-band] == after[:-band]).all() and (before[-band:] != after[-band:]).any()
    window.resize(window.width() - 100, window.height())
    QApplication.processEvents()
    assert frozen.size() == window.pictures.size()
    key(window, Key.Key_F)
    assert presenter.frozen is None


def test_the_mouse_reaches_through_the_frozen_picture(present):
    window, _ = present()
    key(window, Key.Key_F)
    centre = window.breaker.mapTo(window, window.breaker.rect().center())
    assert window.childAt(centre) is window.breaker.viewport()


def test_numbers_stay_away_until_they_are_asked_for(present, qtbot):
    window, presenter = present()
    key(window, Key.Key_Period)
    for view in (window.breaker, window.contact, window.crank):
        assert not re.search(r"\d\.\d", view.accessibleDescription()), view
    key(window, Key.Key_F11)  # out of projector mode: the calculators would come back
    qtbot.waitUntil(lambda: not window.tabs.isVisible())
    key(window, Key.Key_F11)
    assert not window.plots.isVisible() and not window.menus.plots_action.isEnabled()
    key(window, Key.Key_Period)
    assert "mm" in window.contact.accessibleDescription() or "closed" in window.contact.accessibleDescription()
    assert re.search(r"\d\.\d", window.breaker.accessibleDescription())
    assert not presenter.hide.isChecked()


def test_before_and_after_stand_side_by_side(present):
    window, presenter = present()
    assert not presenter.compare.isEnabled()
    key(window, Key.Key_K)
    kept = window.model.state
    window.model.send(TurnScrew(-6.0))
    key(window, Key.Key_A)
    compared = presenter.compared
    assert compared is not None and compared.size() == window.pictures.size()
    assert abs(compared.before.width() - compared.after.width()) <= 1
    assert "contacts wider" in compared.words.text() and "mm wider" in compared.words.text()
    # The kept moment does not move, neither by itself nor by hand; the bench does, by key and by drag.
    QTest.keyClick(compared.before, Key.Key_Up)
    assert compared.kept.state is kept and "does not move" in window.statusBar().currentMessage()
    rotor = window.model.state.rotor_deg
    QTest.keyClick(compared.after, Key.Key_Up)
    assert window.model.state.rotor_deg == pytest.approx(rotor + 1.0)
    assert says("The rotor was turned {angle:deg} with rotation.", angle=1.0) in compared.words.text()
    assert compared.before.now.turns_deg["rotor"] != compared.after.now.turns_deg["rotor"]
    key(window, Key.Key_Period)
    assert not re.search(r"\d", compared.words.text())
    key(window, Key.Key_A)
    assert presenter.compared is None and window.pictures.isEnabled()
    key(window, Key.Key_K)
    assert presenter.kept is None and not presenter.compare.isEnabled(), "one moment, kept and forgotten by one key"


def test_theme_and_units_reach_what_is_shown(present):
    window, presenter = present()
    key(window, Key.Key_K)
    window.model.send(TurnScrew(-6.0))
    window.look.inches = True
    key(window, Key.Key_A)
    assert presenter.compared is not None and " in" in presenter.compared.words.text().split("gap")[1]
    key(window, Key.Key_F)
    window.look.theme = DARK
    assert presenter.frozen is not None and presenter.frozen.look.theme is DARK
    assert presenter.lights["breaker"].look.theme is DARK
    QApplication.processEvents()


def test_a_magneto_without_engine_has_its_own_parts_alone(present):
    window, presenter = present("traced-six")
    for _ in range(40):
        key(window, Key.Key_PageDown)
    assert presenter.named == list(CAPTIONS["breaker"])[-1]
    window.place("seven-radial")
    QApplication.processEvents()
    assert presenter.named == list(CAPTIONS["breaker"])[-1], "what is named stays named"
    key(window, Key.Key_PageDown)
    assert presenter.named == next(iter(CAPTIONS["drive"]))
    window.model.send(TurnRotor(5.0))


def test_keys_typed_into_a_field_are_the_field_s(present):
    window, presenter = present()
    key(window, Key.Key_F11)  # the calculators are back
    field = window.panel.rotor
    field.setFocus()
    field.selectAll()
    QTest.keyClicks(field, "1.5")
    assert not presenter.hide.isChecked() and "1.5" in field.text()


@pytest.mark.process
def test_nothing_of_it_is_loaded_before_it_is_asked_for():
    done = subprocess.run(
        [sys.executable, "-c",
         "import os, sys\n"
         "os.environ['QT_QPA_PLATFORM'] = 'offscreen'\n"
         "from PySide6.QtWidgets import QApplication\n"
         "from magview.bench.placing import new_bench\n"
         "from magview.spec.library import find_installation\n"
         "from magview.ui.kit.bench_model import BenchModel\n"
         "from magview.ui.shell.window import MainWindow\n"
         "app = QApplication([])\n"
         "window = MainWindow(BenchModel(new_bench(find_installation('seven-radial-left'))))\n"
         "window.furnish(); window.show(); app.processEvents()\n"
         "late = 'magview.ui.present.', 'magview.classroom', 'magview.job', 'magview.ui.paper.pdf'\n"
         "early = [m for m in sys.modules if m.startswith(late)]\n"
         "assert not early, early\n"],
        capture_output=True, text=True, timeout=60,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr


def test_the_bar_fits_a_small_projector(present):
    window, presenter = present("seven-radial-left", (1280, 720))
    assert window.width() <= 1281
    for action in presenter.actions:
        button = presenter.bar.widgetForAction(action)
        assert button.isVisible() and button.width() >= button.minimumSizeHint().width()
        assert window.rect().contains(button.mapTo(window, QPoint(button.width() - 1, button.height() - 1)))
