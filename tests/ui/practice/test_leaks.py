"""Before the hand-in no true number is on screen, in a tip, a title, an accessible text or an exported picture."""

from __future__ import annotations

from itertools import product

import pytest
from PySide6.QtWidgets import QLabel, QTableWidget, QTableWidgetItem

from magview.bench.blades import BLADES
from magview.practice import actions as do
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.paper import paper_lines
from magview.ui.practice.hands import STEPS
from tests.counts import sampled
from tests.practice.trainee import Trainee
from tests.practice_windows import NUMBER, exported_by, leaks, said_by, true_numbers
from tests.secrets_of import secrets

MOMENTS = 5


def on_paper(exercise) -> set[str]:
    """What the data sheet and the blades say to everybody tells nothing of this magneto."""
    words = " ".join(f"{what} {told}" for what, told in paper_lines(exercise))
    steps = {f"{step:g}" for part in STEPS.values() for step in part}
    return (
        set(NUMBER.findall(words)) | steps | {f"{blade:g}" for kind in exercise.tray.blades for blade in BLADES[kind]}
    )


def some_secret(window) -> str:
    """A true number that stands nowhere by itself."""
    return max(true_numbers(window.model.practice), key=lambda n: (len(n), n))


@pytest.mark.parametrize(("name", "seed"), sampled(product(shipped_exercises(), (1, 7)), 3))
def test_nothing_true_is_anywhere_while_a_job_is_done(open_practice, tmp_path, name, seed):
    """The scripted trainee's whole job, looked at as found, at moments on the way, and just before the hand-in."""
    trainee = Trainee(find_exercise(name), seed)
    acts = [event.act for event in trainee.work().events]
    assert isinstance(acts.pop(), do.HandIn)
    window = open_practice(name, seed)
    window.model.take_propeller(True)
    harmless = on_paper(window.model.practice.exercise)
    looks = {round(i * len(acts) / MOMENTS) for i in range(MOMENTS + 1)}
    for i in range(len(acts) + 1):
        if i in looks:
            window.tabs.setCurrentIndex(i % window.tabs.count())
            window.grab()  # the feet of pictures become tool tips when they are painted
            own = {
                n for line in window.notebook.lines.findItems("", _contains()) for n in NUMBER.findall(line.text())
            }
            texts = said_by(window) + exported_by(window, tmp_path)
            assert len(texts) > 150, "hardly anything was searched"
            found = leaks(texts, window.model.practice, harmless | own)
            assert not found, [(n, who, t) for n, who in found for t in texts if n in NUMBER.findall(t)]
        if i < len(acts):
            assert window.model.do(acts[i]), acts[i]


def _contains():
    from PySide6.QtCore import Qt

    return Qt.MatchFlag.MatchContains


def plant_label(window, words):
    window.sight.said.setText(words)


def plant_new_label(window, words):
    QLabel(f"opens at {words}", window.work).hide()


def plant_tip(window, words):
    window.hands.part.setToolTip(words)


def plant_accessible(window, words):
    window.pictures.contact.setAccessibleDescription(f"Contacts open {words} mm.")


def plant_title(window, words):
    window.setWindowTitle(f"gap {words}")


def plant_status(window, words):
    window.say(f"it is {words}")


def plant_item(window, words):
    table = QTableWidget(1, 1, window.work)
    table.setItem(0, 0, QTableWidgetItem(words))


def plant_action(window, words):
    window.menus.save_action.setText(words)


def plant_spin(window, words):
    window.hands.amount.setSuffix(words)
    window.hands.amount.lineEdit().setText(words)


PLANTS = [
    plant_label, plant_new_label, plant_tip, plant_accessible, plant_title, plant_status, plant_item, plant_action,
    plant_spin,
]  # fmt: skip


@pytest.mark.parametrize("plant", sampled(PLANTS, 4))
def test_a_planted_number_is_found(open_practice, plant):
    window = open_practice("both-everything-wrong")
    secret = some_secret(window)
    harmless = on_paper(window.model.practice.exercise)
    assert not leaks(said_by(window), window.model.practice, harmless)
    plant(window, secret)
    assert {n for n, _ in leaks(said_by(window), window.model.practice, harmless)} == {secret}


def test_a_number_painted_on_a_picture_is_found_in_what_is_saved(open_practice, tmp_path):
    """The views' own normal looks, switched on in secret, are such leaks."""
    window = open_practice("both-everything-wrong")
    window.model.take_propeller(True)
    window.model.do(do.TurnUntil("widest"))
    harmless = on_paper(window.model.practice.exercise)
    assert not leaks(exported_by(window, tmp_path), window.model.practice, harmless)
    window.pictures.breaker.eyes = None  # to an eye's picture no number belongs
    for view in window.views():
        view.numbers = True
    window.model.do(do.TurnPropeller(0.01))
    found = {name.split(".")[1] for _, name in leaks(exported_by(window, tmp_path), window.model.practice, harmless)}
    assert {"gap_mm", "rotor_deg", "backplate_deg"} <= found


def test_what_is_searched_for_is_what_secrets_names(open_practice):
    window = open_practice("both-everything-wrong")
    names = set().union(*true_numbers(window.model.practice).values())
    assert names == {n for n, v in secrets(window.model.practice).items() if abs(v) >= 0.005}


def test_no_hand_finds_a_true_place_by_itself(open_practice):
    """At the bench Home puts a part where it belongs and a drag catches there; here neither does."""
    from PySide6.QtCore import QEvent, Qt
    from PySide6.QtTest import QTest

    from tests.hands import send_mouse

    window = open_practice("gap-wrong")
    breaker = window.pictures.breaker
    before = window.model.state
    middle = breaker.pixel(0.0, 0.0)
    radius = breaker.drawing.rim_mm * 0.5 * breaker.transform().m22()
    from PySide6.QtCore import QPointF

    for away in (QPointF(radius, 0.0), QPointF(0.0, 0.6 * radius)):
        send_mouse(breaker, QEvent.Type.MouseButtonDblClick, middle + away)
        QTest.keyClick(breaker, Qt.Key.Key_Home)
    assert window.model.state == before
    assert not breaker.snaps
    assert {
        "rotor scale",
        "plate scale",
        "rotor",
        "pole shoe",
        "straightedge",
        "painted mark",
    } == breaker.scene_of_parts.hidden


def test_paint_does_not_show_where_the_crank_stands(open_practice):
    """Were it put on at the top of the picture at dead centre, the picture would tell it."""
    from magview.bench import actions as bench
    from magview.bench.state import crank_deg

    bearings = set()
    for seed in (1, 2, 3):
        window = open_practice("a-step-or-two-out", seed)
        window.model.take_propeller(True)
        window.model.do(bench.PaintMarks())
        window.model.do(do.TurnPropeller(-crank_deg(window.model.state)))
        assert crank_deg(window.model.state) == pytest.approx(0.0, abs=1e-9)
        bearings.add(round(window.pictures.drive.scene_of_parts.turns(["flange"])[0] % 360.0, 3))
    assert len(bearings) == 3
    assert not bearings & {0.0}
