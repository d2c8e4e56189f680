"""What the straightedge says against what the pictures show: every shipped magneto, every lobe, both rotations."""

from __future__ import annotations

import math
import re
from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.classroom.blanks import offset_words
from magview.classroom.drawings import drawing, mark_svg
from magview.curves.lift import opening_limit_deg
from magview.drawing.breaker_end import PARENTS, breaker_end, pose
from magview.drawing.svg import breaker_svg
from magview.practice import actions as do
from magview.practice import instruments
from magview.practice.apply import apply
from magview.practice.faults import begin
from magview.practice.goals import judge
from magview.practice.library import find_exercise
from magview.practice.screen_words import seen
from magview.practice.state import Practice
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Magneto
from tests.wording import says

DIVISION_MM = 0.5
EDGE_ABOVE_RIM_MM = 2.0

MAGNETOS = [
    pytest.param(find_magneto(name).model_copy(update={"rotation": way}), id=f"{name}-{way}")
    for name in shipped_names("magnetos")
    for way in ("clockwise", "anticlockwise")
]


def laid_on(magneto: Magneto, rotor_deg: float = 0.0, eye_deg: float = 0.0) -> Practice:
    """A room with the straightedge, in divisions of 0.5 mm, laid on this magneto."""
    bench = replace(new_bench(magneto), rotor_deg=rotor_deg)
    return replace(begin(find_exercise("find-the-e-gap"), 1), bench=bench, edge_laid=True, eye_deg=eye_deg)


def openings_deg(magneto: Magneto) -> list[float]:
    """Where each lobe should open [rotor deg]: at every pole, or, compensated, as far on as its top."""
    if magneto.compensated:
        return [magneto.e_gap_deg + p / magneto.cam.turns_per_rotor_turn for p in magneto.cam.lobe_peaks_deg]
    return [magneto.e_gap_deg + i * 360.0 / magneto.poles for i in range(len(magneto.cam.lobe_peaks_deg))]


def with_rotation(magneto: Magneto) -> int:
    """+1 where bearings grow with the cam's rotation: clockwise at the drive end is anticlockwise at the breaker end,
    and a pair of outer gears reverses it."""
    rotor = -1 if magneto.rotation == "clockwise" else 1
    return -rotor if magneto.name.startswith("Nine") else rotor


def bearings(points: np.ndarray) -> np.ndarray:
    """Of points (n, 2), clockwise from the top [deg]."""
    return np.degrees(np.arctan2(points[:, 0], points[:, 1]))


def off(angle: np.ndarray | float) -> np.ndarray:
    return (np.asarray(angle) + 180.0) % 360.0 - 180.0


def drawn_marks(magneto: Magneto) -> tuple[np.ndarray, np.ndarray]:
    """Bearings of the rim marks as drawn [deg], and the number that stands nearest to each."""
    shown = breaker_end(magneto)
    (shape,) = (s for s in shown.shapes if s.part == "rim mark")
    assert PARENTS[shape.group] is None and shape.group == "case", "marks stand on the housing"
    marks = bearings(np.array([line[-1] for line in shape.outlines]))
    numbers = bearings(np.array(shown.mark_numbers))
    nearest = np.abs(off(numbers - marks[:, None])).argmin(axis=1)
    return marks, nearest + 1


def drawn_edge(state: BenchState) -> float:
    """Bearing of the straightedge's reading end as drawn [deg]: of its two ends the one at the rim."""
    shown, now = breaker_end(state.magneto), pose(state)
    (shape,) = (s for s in shown.shapes if s.part == "straightedge")
    ends = shape.outlines[0]
    reading, far = sorted(ends, key=lambda end: -np.hypot(*end))
    assert np.hypot(*reading) == pytest.approx(state.magneto.marks.radius_mm)
    assert np.hypot(*far) < 0.7 * np.hypot(*reading), "one end alone reaches the rim"
    return float(bearings(reading[None])[0] + now.turns_deg[shape.group])


@pytest.mark.parametrize("magneto", MAGNETOS)
def test_each_lobe_has_its_mark_and_its_number(magneto):
    """Drawn as far apart as the cam turns from one opening to the next; no number at another's mark."""
    marks, numbers = drawn_marks(magneto)
    lobes = len(magneto.cam.lobe_peaks_deg)
    assert sorted(numbers) == list(range(1, lobes + 1))
    ratio, places = magneto.cam.turns_per_rotor_turn, np.array(openings_deg(magneto))
    apart = off(with_rotation(magneto) * (marks - marks[0])) - off(ratio * (places - places[0]))
    np.testing.assert_allclose(off(apart), 0.0, atol=1e-9)
    stands = np.array([np.hypot(*point) for point in breaker_end(magneto).mark_numbers])
    assert np.all(np.abs(stands / magneto.marks.radius_mm - 1.0) < 0.1)


@pytest.mark.parametrize("magneto", MAGNETOS)
@pytest.mark.parametrize("cam_deg", [-4.1, -1.9, 0.0, 2.2, 3.7])
def test_the_words_name_the_mark_and_the_side_that_the_picture_shows(magneto, cam_deg):
    marks, numbers = drawn_marks(magneto)
    for lobe, place in enumerate(openings_deg(magneto), 1):
        room = laid_on(magneto, place + cam_deg / magneto.cam.turns_per_rotor_turn)
        said = instruments.straightedge(room)
        away = off(drawn_edge(room.bench) - marks)
        nearest = int(np.abs(away).argmin())
        assert f"(mark {numbers[nearest]})" in said.text
        assert numbers[nearest] == lobe
        past_mm = magneto.marks.radius_mm * math.tan(math.radians(with_rotation(magneto) * away[nearest]))
        written = re.match(r"(?:([\d.]+) mm (past|short)|in line)", said.text)
        assert written is not None
        told_mm = float(written[1] or 0) * (-1 if written[2] == "short" else 1)
        assert abs(told_mm - past_mm) <= DIVISION_MM / 2 + 1e-9


@given(st.sampled_from([m.values[0] for m in MAGNETOS]), st.floats(-40.0, 40.0), st.floats(-3.0, 3.0))
def test_an_eye_ahead_reads_short(magneto, eye_deg, cam_deg):
    """The edge lies above the rim. The line of sight goes from the eye through the edge to the rim: rays in a plane,
    x with rotation, the rim at height 0. What the screen calls "ahead" is on the side to which the rotor turns."""
    ratio = magneto.cam.turns_per_rotor_turn
    room = apply(laid_on(magneto, magneto.e_gap_deg + cam_deg / ratio), do.Sight(eye_deg))
    where = seen(room).eye
    far = re.match(r"from (\d+)° (ahead with|behind against) rotation", where)
    assert (far is None) == (abs(eye_deg) <= 5.0)
    ahead = 0.0 if far is None else math.copysign(abs(eye_deg), 1 if far[2] == "ahead with" else -1)
    if far is None:
        assert where == says("square over the edge")
        return
    edge = np.array([magneto.marks.radius_mm * math.tan(math.radians(cam_deg)), EDGE_ABOVE_RIM_MM])
    eye = edge + 250.0 * np.array([math.sin(math.radians(ahead)), math.cos(math.radians(ahead))])
    meets = eye + (edge - eye) * eye[1] / (eye[1] - edge[1])
    assert meets[1] == pytest.approx(0.0, abs=1e-9)
    assert (meets[0] < edge[0]) == (ahead > 0), "seen from ahead it stands short"
    told = instruments.straightedge(room)
    assert abs(told.value * DIVISION_MM - meets[0]) <= DIVISION_MM / 2 + 1e-9


@pytest.mark.parametrize("magneto", MAGNETOS)
def test_turned_until_the_edge_is_in_line_it_stands_at_the_next_mark(magneto):
    """Each mark in turn, once round the cam, looked at square: found by eye to a quarter of a division."""
    room, places = laid_on(magneto, magneto.e_gap_deg - 5.0), openings_deg(magneto)
    for lobe, place in enumerate(places, 1):
        room = apply(room, do.TurnUntil("mark"))
        assert instruments.straightedge(room).text == f"in line with the mark (mark {lobe})"
        off_mm = magneto.marks.radius_mm * math.radians(
            (room.bench.rotor_deg - place) * magneto.cam.turns_per_rotor_turn
        )
        assert abs(off_mm) <= DIVISION_MM / 4 + 1e-3


@pytest.mark.parametrize("magneto", MAGNETOS)
@pytest.mark.parametrize("ratio_by", [1.0, 0.5])
def test_limits_in_rotor_degrees_put_the_drawn_edge_at_the_tolerance(magneto, ratio_by):
    """The rim's tolerance over the cam's turns a rotor turn: a cam at half the speed allows twice the angle."""
    ratio = magneto.cam.turns_per_rotor_turn * ratio_by
    magneto = magneto.model_copy(update={"cam": magneto.cam.model_copy(update={"turns_per_rotor_turn": ratio})})
    marks, _ = drawn_marks(magneto)
    for limit in (opening_limit_deg(magneto), -opening_limit_deg(magneto)):
        away = off(drawn_edge(laid_on(magneto, magneto.e_gap_deg + limit).bench) - marks[0])
        past_mm = with_rotation(magneto) * magneto.marks.radius_mm * math.tan(math.radians(away))
        assert past_mm == pytest.approx(math.copysign(magneto.marks.tolerance_mm, limit), rel=1e-9)


def test_a_compensated_cam_has_the_e_gap_at_its_first_mark():
    """The magnet's E-gap comes at even steps, the other lobes open a little beside it: judged on No. 1."""
    magneto = find_magneto("nine-radial")
    (goal,) = find_exercise("find-the-e-gap").goals
    for lobe, place in enumerate(openings_deg(magneto), 1):
        room = laid_on(magneto, place)
        judged = _e_gap(room, goal)
        assert judged.right == (lobe == 1)
        if lobe > 1:
            assert f"near mark {lobe}; on this cam the E-gap is at mark 1" in judged.evidence


def _e_gap(room: Practice, goal):
    from magview.practice.evidence import Evidence, EvidenceStep, Track

    step = EvidenceStep(1, 0.0, do.LayStraightedge(True), room, room)
    return judge(Evidence([step], {room.side: Track()}), room, goal, room.side)


# ---------------------------------------------------------------------- on paper


@pytest.mark.parametrize("magneto", MAGNETOS)
@pytest.mark.parametrize("mm", [0.43, -0.43, 0.06, -0.06, 0.002, -0.002, math.nan])
def test_on_paper_the_edge_stands_on_the_side_that_the_words_say(magneto, mm):
    picture = mark_svg(new_bench(magneto), mm, offset_words(mm))
    mark = re.search(r'd="M([\d.]+) 14L\1 44"', picture)
    edges = re.findall(r'd="M([\d.]+) 20L[^"]+"[^>]*stroke-dasharray', picture)
    assert mark is not None
    if math.isnan(mm):
        assert not edges and "never opens" in picture
        return
    (edge,) = edges
    # The rim is drawn at the top, where what turns clockwise goes to the right.
    past = with_rotation(magneto) * (float(edge) - float(mark[1]))
    words = "past" if past > 0 else "short" if past < 0 else "in line"
    assert f"{words}</text>" in picture
    turns = "clockwise" if with_rotation(magneto) > 0 else "anticlockwise"
    assert f"turns {turns}<" in picture


def test_on_the_worksheet_it_is_left_to_be_drawn():
    picture = mark_svg(new_bench(find_magneto("seven-radial")), None, "")
    assert "stroke-dasharray" not in picture
    assert not {"past", "short", "in line"} & set(re.findall(r"[a-z ]+", picture))


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_marks_are_numbered_on_paper_too(name):
    state = new_bench(find_magneto(name))
    lobes = len(state.magneto.cam.lobe_peaks_deg)
    for picture in (breaker_svg(state, "x"), drawing(state, "breaker", "names").svg):
        written = [int(n) for n in re.findall(r"<text[^>]*>(\d+)</text>", picture)]
        marks, others = written[:lobes], written[lobes:]
        assert marks == list(range(1, lobes + 1))
        # The lobes on the cam, and again the mark that the edge is read against, in its disc.
        assert sorted(others) == sorted([*marks, others[0]])
    blank = drawing(state, "breaker", "blanks")
    numbers = [int(n) for n in re.findall(r"<text[^>]*>(\d+)</text>", blank.svg)]
    assert sorted(numbers) == list(range(1, len(blank.parts) + 1)), "a part's number is not taken for a mark's"
