"""What is not known is a picture too: each says its word, tells no figure that it has not, and nothing overlaps."""

from __future__ import annotations

import re
from dataclasses import replace
from itertools import combinations

import numpy as np
import pytest
from PySide6.QtGui import QFont

from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.contacts_closeup import closeup_scene
from magview.drawing.coupling_scene import coupling_scene
from magview.drawing.rotor_cut import rotor_cut_scene
from magview.drawing.scene import Options, Scene
from magview.drawing.shaft_section import shaft_scene
from magview.spec.engine import Geared, SlottedFlange
from magview.spec.library import find_installation, find_magneto, shipped_names
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.pictures.why_here_view import WhyHereView
from tests.magnetos import by_manual
from tests.ui.pictures.written import corner_boxes, word_boxes

SLOTS = SlottedFlange(kind="slotted_flange", travel_deg=24.0)
GEAR = Geared(kind="geared", teeth=24)
SIZES = {
    "breaker": ((455, 400), (760, 660)),
    "coupling": ((300, 230), (620, 420)),
    "shaft": ((560, 230), (1000, 330)),
}


def manual(name: str = "seven-radial") -> BenchState:
    return BenchState(by_manual(find_magneto(name)), 8.0)


def timed_by(how) -> BenchState:
    found = find_installation("seven-radial-left")
    return new_bench(found.model_copy(update={"coupling": None, "adjusted_by": how}))


def without_electrics() -> BenchState:
    state = new_bench(find_installation("seven-radial-left"))
    return replace(state, magneto=state.magneto.model_copy(update={"electrical": None}))


def said(scene: Scene) -> str:
    lines = [words for corner in scene.corners for line in corner.lines for words in line.wordings]
    return "\n".join([*lines, *(w.text for w in scene.words), scene.assumed, scene.description])


def alone() -> BenchState:
    return new_bench(find_magneto("seven-radial"))


ABSENT = {
    "no profile: breaker end": ("breaker", lambda o: breaker_scene(Shown.of(manual()), o), "assumed"),
    "no profile: contacts": ("breaker", lambda o: closeup_scene(Shown.of(manual()), o), "assumed"),
    "no profile: shaft": ("shaft", lambda o: shaft_scene(manual("nine-radial"), o), "cam assumed"),
    "no profile: cut": ("breaker", lambda o: rotor_cut_scene(manual(), o), "assumed"),
    "no engine: shaft": ("shaft", lambda o: shaft_scene(alone(), o), "without an engine"),
    "no engine: coupling": ("coupling", lambda o: coupling_scene(alone(), o), "not on an engine"),
    "no electrics: cut": ("breaker", lambda o: rotor_cut_scene(without_electrics(), o), "assumed"),
    "slots": ("coupling", lambda o: coupling_scene(timed_by(SLOTS), o), "swung in its slots"),
    "slots, at the engine": (
        "coupling", lambda o: coupling_scene(timed_by(SLOTS), o, at_engine=True), "swung in its slots",
    ),
    "slots: shaft": ("shaft", lambda o: shaft_scene(timed_by(SLOTS), o), "swung in its slots"),
    "gear": ("coupling", lambda o: coupling_scene(timed_by(GEAR), o), "one tooth is a fixed angle"),
    "gear: shaft": ("shaft", lambda o: shaft_scene(timed_by(GEAR), o), "Geared drive"),
}  # fmt: skip


@pytest.mark.parametrize("absence", ABSENT)
@pytest.mark.parametrize("larger", [0, 1])
def test_an_absence_says_so_and_its_words_stand_apart(qapp, absence, larger):
    kind, draw, word = ABSENT[absence]
    size, font = SIZES[kind][larger], QFont()
    font.setPixelSize((12, 15)[larger])
    scene = draw(Options())
    assert word in said(scene)
    boxes = corner_boxes(scene, size, font) + word_boxes(scene, size, font)
    for (one, box), (other, at) in combinations(boxes, 2):
        assert one == other or not box.intersects(at), (one, other)  # the mark that is read is written over itself


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_by_its_manual_alone_a_magneto_shows_directions_and_no_gap(name):
    state = manual(name)
    for rotor in (0.0, 8.0, 30.0):
        for draw in (breaker_scene, closeup_scene):
            scene = draw(Shown.of(replace(state, rotor_deg=rotor)))
            told = said(scene)
            assert "assumed" in scene.assumed
            assert not scene.measures and not scene.total
            assert not re.search(r"gap \d|open \d|0\.\d+ ?mm\b.*gap", told)
    assert re.search("clockwise", breaker_scene(Shown.of(state)).description)


@pytest.mark.parametrize(
    ("state", "word"), [(manual(), "manual only"), (without_electrics(), "no electrical values")]
)
def test_the_strip_says_why_it_is_empty(qtbot, state, word):
    view = WhyHereView(BenchModel(state), Look())
    qtbot.addWidget(view)
    assert view.strip is None
    assert word in view.accessibleDescription()


@pytest.mark.parametrize("at_engine", [False, True])
def test_the_slots_are_as_long_as_their_travel_and_say_which_way_is_earlier(at_engine):
    """Swung against rotation the contacts meet the cam sooner: earlier (common practice)."""
    scene = coupling_scene(timed_by(SLOTS), at_engine=at_engine)
    assert "against rotation: fires earlier" in said(scene)
    (flange,) = (p for p in scene.group("flange").pieces if p.part == "magneto flange")
    slot = flange.outlines[2]
    middle = slot[np.abs(np.hypot(*slot.T) - 31.0) < 2.7]
    spread = np.ptp(np.degrees(np.arctan2(middle[:, 0], middle[:, 1])))
    ends = np.degrees(2 * 2.6 / 31.0)  # round ends reach half a width further on
    assert SLOTS.travel_deg <= spread <= SLOTS.travel_deg + ends + 0.5
    plus = next(word for word in scene.words if word.text == "+")
    sense = 1 if timed_by(SLOTS).magneto.rotation == "clockwise" else -1  # seen from the drive end
    assert sense * (np.degrees(np.arctan2(*plus.at)) - 90.0) > 0.0
