"""The switch lead's circuit as one drawing: everything of the diagram, and the instruments that are at it."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from magview.bench.actions import ChooseLamp, PullPlug, TurnRotor
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.drawing.lead_picture import lead_picture
from magview.drawing.lead_scene import lead_scene
from magview.physics.electric.circuit import Lead
from magview.spec.library import find_installation

BENCH = new_bench(find_installation("seven-radial-left"))
LIVE = replace(apply(BENCH, TurnRotor(15.0)), lead=Lead(switch_on=True))
"""Contacts open and nothing grounding the primary."""


def pieces(state, part, **given):
    return [p for g in lead_scene(state, **given).groups for p in g.pieces if p.part == part]


@pytest.mark.parametrize("lead", [Lead(), Lead(plug_in=False), Lead(jumper=True, chafed=True), Lead(broken=True)])
def test_every_line_and_word_of_the_diagram_is_in_the_scene(lead):
    state = replace(BENCH, lead=lead)
    picture, scene = lead_picture(state), lead_scene(state)
    drawn = [p.outlines[0] for g in scene.groups for p in g.pieces]
    for stroke in picture.strokes:
        assert any(len(line) == len(stroke.points) and np.array_equal(line, stroke.points) for line in drawn)
    assert {word for word, _ in picture.words} <= {word.text for word in scene.words}
    faults = pieces(state, "fault")
    assert len(faults) == lead.chafed + lead.broken and all(p.style.line == "bad" for p in faults)


def test_the_lamp_is_filled_while_it_burns_and_the_words_say_so():
    for state, burns in ((LIVE, True), (apply(LIVE, ChooseLamp("closed")), False)):
        bulb, cross = pieces(state, "lamp")
        assert (bulb.style.fill == "paint") is burns and len(cross.outlines) == 2
        (told,) = [corner.lines[0].wordings[0] for corner in lead_scene(state).corners]
        assert ("dark" in told) is not burns
    assert len(pieces(apply(LIVE, ChooseLamp("buzzer")), "lamp")) == 1, "a buzzer has no cross"


def test_a_meter_is_drawn_only_at_a_lead_that_is_pulled():
    assert not pieces(LIVE, "meter") and "Ω" not in {word.text for word in lead_scene(LIVE).words}
    pulled = apply(LIVE, PullPlug(True))
    assert len(pieces(pulled, "meter")) == 1 and "Ω" in {word.text for word in lead_scene(pulled).words}


def test_on_paper_no_instrument_is_clipped_on():
    for part in ("lamp", "meter", "clip"):
        assert not pieces(apply(LIVE, PullPlug(True)), part, instruments=False)
