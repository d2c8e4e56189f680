"""The coupling's picture against the coupling's own arithmetic: paint before and after, counts, both views."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from magview.bench.actions import MoveTeeth, ReadLamp, TurnCrank
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.timing import timing_plan
from magview.drawing.coupling_scene import ALONG_A, ALONG_B, PAINT, after_move, coupling_scene, sweep
from magview.drawing.coupling_words import Told, corner_lines
from magview.drawing.drive_end import drive_pose
from magview.drawing.scene import Options, frame_of
from magview.spec.library import find_installation, find_magneto, shipped_names

INSTALLATIONS = shipped_names("installations")


def bench(name: str, crank_deg: float = 3.0):
    """An engine whose magneto was read some degrees away from where it is wanted."""
    state = new_bench(find_installation(name))
    engaged = state.engaged
    at = engaged.mounting
    read = replace(
        at, reads_btdc_deg=at.reads_btdc_deg - crank_deg, phase_deg=at.phase_deg - crank_deg * engaged.ratio
    )
    return replace(state, engaged=replace(engaged, **{engaged.side: replace(read, lamp_read=True)}))


def bearing(points: np.ndarray) -> float:
    x, y = points.mean(axis=0)
    return float(np.degrees(np.arctan2(x, y)))


def paint_of(scene, group: str) -> float:
    piece = next(p for p in scene.group(group).pieces if p.part == PAINT)
    return bearing(scene.group(group).put(piece.outlines[0]))


def apart(a: float, b: float) -> float:
    return abs((a - b + 180.0) % 360.0 - 180.0)


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_paint_stands_where_the_coupling_puts_it_before_and_after(name):
    state = bench(name)
    move = timing_plan(state, state.engaged.side)[0]
    scene = coupling_scene(state, move=move)
    now, after = drive_pose(state, state.engaged), after_move(state, state.engaged, move)
    for part, is_now, comes in (
        ("drive flange", now.flange, None), ("disc", now.disc, after.disc), ("magneto flange", now.hub, after.hub),
    ):  # fmt: skip
        assert apart(paint_of(scene, part), is_now) < 1e-6
        names = [group.name for group in scene.groups]
        moves = {"disc": move.disc_teeth, "magneto flange": move.disc_teeth or move.magneto_teeth}.get(part, 0)
        assert (f"{part}-after" in names) == (moves != 0)
        if moves:
            assert apart(paint_of(scene, f"{part}-after"), comes) < 1e-6


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_a_move_made_brings_the_paint_to_where_it_was_shown(name):
    """The bench's own act is the judge of the preview."""
    state = bench(name)
    move = timing_plan(state, state.engaged.side)[0]
    shown = coupling_scene(state, move=move)
    made = apply(state, MoveTeeth(move.magneto_teeth, move.disc_teeth))
    after = drive_pose(made, made.engaged)
    # Whether crank or rotor stays where it is, what counts is how the parts stand to one another.
    disc = paint_of(shown, "disc-after" if move.disc_teeth else "disc")
    flange = paint_of(shown, "drive flange")
    assert apart(after.disc - after.flange, disc - flange) < 1e-6
    assert apart(after.hub - after.flange, paint_of(shown, "magneto flange-after") - flange) < 1e-6


@pytest.mark.parametrize("name", INSTALLATIONS)
def test_each_counted_tooth_has_its_number_and_each_step_its_letter(name):
    state = bench(name)
    move = next(m for m in timing_plan(state, state.engaged.side) if m.disc_teeth and m.magneto_teeth)
    scene = coupling_scene(state, move=move)
    said = [word.text for word in scene.words if word.disc]
    assert {"A", "B"} <= set(said)
    assert str(abs(move.disc_teeth)) in said
    assert str(abs(move.magneto_teeth)) in said


@pytest.mark.parametrize(("start", "end"), [(10.0, 70.0), (10.0, -50.0), (170.0, 200.0)])
def test_an_arrow_ends_where_the_tooth_comes(start, end):
    for radius in (ALONG_A, ALONG_B):
        *_, head = sweep(radius, start, end)
        tip = head.outlines[0][0]
        assert apart(bearing(tip[None, :]), end) < 1e-6
        assert np.hypot(*tip) == pytest.approx(radius)


def test_the_engine_side_is_the_mirror_image_and_says_the_other_way_round():
    state = bench("seven-radial-left")
    move = timing_plan(state, "left")[0]
    hand, engine = coupling_scene(state, move=move), coupling_scene(state, move=move, at_engine=True)
    place = np.array([10.0, 5.0])
    one, other = frame_of(hand, 400, 400, 12).of(place), frame_of(engine, 400, 400, 12).of(place)
    assert one[0] - 200.0 == pytest.approx(200.0 - other[0])
    assert one[1] == pytest.approx(other[1])
    assert "anticlockwise" in hand.description
    assert "clockwise" in engine.description.replace("anticlockwise", "")
    turns = list(zip(hand.corners[-1].lines[:-1], engine.corners[-1].lines[:-1], strict=True))
    assert any("clockwise)" in a.wordings[0] for a, _ in turns)
    for a, b in turns:
        for one, other in (("(clockwise)", "(anticlockwise)"), ("(anticlockwise)", "(clockwise)")):
            assert (one in a.wordings[0]) == (other in b.wordings[0])


def test_at_the_engine_the_magnetos_flange_is_shown_only_where_it_will_come():
    state = bench("seven-radial-left")
    move = timing_plan(state, "left")[0]
    scene = coupling_scene(state, move=move, at_engine=True)
    assert not any(piece.part == PAINT for piece in scene.group("magneto flange").pieces)
    (turn,) = scene.group("magneto flange").turns
    assert apart(turn.bearing_deg, after_move(state, state.engaged, move).hub) < 1e-9


def test_practice_is_not_told_where_it_will_fire():
    state = bench("seven-radial-left")
    for numbers in (True, False):
        scene = coupling_scene(state, Options(numbers=numbers), timing_plan(state, "left")[0])
        told = [words for corner in scene.corners for line in corner.lines for words in line.wordings]
        assert any("TDC" in words for words in told) == numbers


def test_without_an_engine_the_picture_says_so():
    scene = coupling_scene(new_bench(find_magneto("seven-radial")))
    assert not scene.groups
    assert "not on an engine" in scene.description


@pytest.mark.parametrize("name", INSTALLATIONS)
@pytest.mark.parametrize("at_engine", [False, True])
def test_no_name_is_written_on_paint(name, at_engine):
    for crank in range(-180, 180, 15):
        state = apply(bench(name), TurnCrank(float(crank)))
        scene = coupling_scene(state, at_engine=at_engine)
        bars = [
            group.put(piece.outlines[0])
            for group in scene.groups
            for piece in group.pieces
            if "paint" in piece.part and piece.style.fill == "paint"
        ]
        names = [w for w in scene.words if w.role in ("drive_line", "disc_line", "hub_line") and not w.paper]
        assert bars and names
        for word in names:
            assert all(np.hypot(*(bar - word.at).T).min() > 1.0 for bar in bars), word.text


@pytest.mark.parametrize(
    ("reads", "expected"),
    [
        (-3.0, "2.31° after top dead centre, was 3.00° after top dead centre"),
        (22.0, "2.31° after top dead centre, was"),
    ],
)
def test_after_top_dead_centre_what_to_expect_says_so(reads, expected):
    state = apply(new_bench(find_installation("seven-radial-left")), ReadLamp("left", reads))
    move = replace(timing_plan(state, "left")[0], result_btdc_deg=-2.31)
    told = Told(state, state.engaged, False, move, 0, 0, False)
    said = [w for corner in corner_lines(told, True, False, 30.0) for line in corner.lines for w in line.wordings]
    assert any(words.startswith(f"expect {expected}") for words in said)
    assert not any("-2.3" in words or "-3" in words for words in said)
