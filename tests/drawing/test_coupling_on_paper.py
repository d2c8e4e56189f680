"""The coupling on paper: which way it turns, its numbers and its paint, measured in the SVG."""

from __future__ import annotations

import math
import re

import pytest

from magview.bench.placing import new_bench
from magview.bench.state import Mounting
from magview.classroom.drawings import drawing
from magview.drawing.coupling_on_paper import coupling_svg, slot_numbers
from magview.drawing.drive_end import EXTENT_MM
from magview.drawing.scene import Frame
from magview.drawing.svg import svg as whole_svg
from magview.job.document import document
from magview.job.readings import rows
from magview.job.sheet import change, change_in
from magview.paper.blocks import Paragraph, Pictures
from tests.job.sheets import demo, html_text
from tests.magnetos import on_the_published_coupling

WIDTH = 300


def turning(rotation: str):
    installation = on_the_published_coupling()
    magneto = installation.magneto.model_copy(update={"rotation": rotation})
    return new_bench(installation.model_copy(update={"magneto": magneto}))


def picture(rotation: str, magneto: int = 0, disc: int = 0) -> str:
    state = turning(rotation)
    return coupling_svg(state, state.engaged, Mounting(0.0, 0.0, 0.0, magneto, disc), "t", WIDTH)


def bearing(svg: str, x: float, y: float) -> float:
    """Clockwise from the top, about the middle of the picture [deg]."""
    height = float(re.search(r'height="(\d+)"', svg).group(1))
    return math.degrees(math.atan2(x - WIDTH / 2, height / 2 - y)) % 360.0


def radius(svg: str, x: float, y: float) -> float:
    height = float(re.search(r'height="(\d+)"', svg).group(1))
    return math.hypot(x - WIDTH / 2, height / 2 - y)


def numbers(svg: str) -> list[tuple[int, float, float]]:
    """Every number with its bearing [deg] and its distance from the middle [px], outermost ring first."""
    found = re.findall(r'<text x="([\d.]+)" y="([\d.]+)"[^>]*>(\d+)</text>', svg)
    return [
        (int(n), bearing(svg, float(x), float(y) - 2.9), radius(svg, float(x), float(y) - 2.9)) for x, y, n in found
    ]


def drawn_numbers(coupling, sense: int) -> str:
    """A class's numbers alone, as large as the picture, the marks in line."""
    frame = Frame(WIDTH / (2 * EXTENT_MM), WIDTH / 2, WIDTH / 2)
    turns = dict.fromkeys(("flange", "disc", "hub"), 0.0)
    return whole_svg(WIDTH, WIDTH, "t", slot_numbers(coupling, sense, turns, frame))


def marks(svg: str) -> list[float]:
    """Bearings of the painted marks: drive flange, disc, magneto flange [deg]."""
    lines = re.findall(
        r'd="M([\d.]+) ([\d.]+)L([\d.]+) ([\d.]+)" fill="none" stroke="#000000" stroke-width="3.6"', svg
    )
    return [bearing(svg, float(line[2]), float(line[3])) for line in lines]


@pytest.mark.parametrize(("rotation", "sense"), [("clockwise", 1), ("anticlockwise", -1)])
def test_slots_are_numbered_the_way_the_arrow_points(rotation, sense):
    svg = picture(rotation)
    assert numbers(svg) == [], "no part carries a number, so a sheet has none"
    numbered = drawn_numbers(turning(rotation).engaged.installation.coupling, sense)
    flange = [found for found in numbers(numbered) if found[2] > 105]
    assert sorted(n for n, _, _ in flange) == list(range(2, 21))
    for n, at, _ in flange:  # twenty slots are 18° apart
        assert (sense * at - (n - 1) * 18.0 + 180.0) % 360.0 == pytest.approx(180.0, abs=0.3)
    hub = [found for found in numbers(numbered) if found[2] < 55]
    assert sorted(n for n, _, _ in hub) == list(range(2, 20))
    for n, at, _ in hub:  # nineteen are 360/19
        assert (sense * at - (n - 1) * 360.0 / 19 + 180.0) % 360.0 == pytest.approx(180.0, abs=0.6)
    # The head of the arrow is the black triangle outside the drive flange; its tip is its middle corner.
    (head,) = re.findall(r'd="M([^Z"]+)Z" fill="#000000" stroke="#000000"', svg)
    corners = [(float(x), float(y)) for x, y in re.findall(r"([\d.]+) ([\d.]+)", head)]
    back, tip, _ = (bearing(svg, *corner) for corner in corners)
    assert (tip - back) * sense > 0
    assert "direction of rotation" in svg


@pytest.mark.parametrize(("rotation", "sense"), [("clockwise", 1), ("anticlockwise", -1)])
def test_paint_stands_where_the_teeth_put_it(rotation, sense):
    flange, disc, hub = marks(picture(rotation, 3, -3))
    assert flange == pytest.approx(0.0, abs=0.1)
    assert (sense * disc + 3 * 18.0 + 180.0) % 360.0 == pytest.approx(180.0, abs=0.3)
    assert (sense * hub + 3 * 18.0 - 3 * 360.0 / 19 + 180.0) % 360.0 == pytest.approx(180.0, abs=0.5)


def test_parts_are_named_and_many_teeth_numbered_in_steps():
    svg = picture("clockwise")
    for part in ("drive flange", "disc", "magneto flange"):
        assert f">{part}</text>" in svg
    state = turning("clockwise")
    fine = state.engaged.installation.coupling.model_copy(update={"magneto_teeth": 180, "drive_teeth": 200})
    found = numbers(drawn_numbers(fine, 1))
    outer = sorted((n, at) for n, at, r in found if r > 105)
    assert 10 <= len(outer) < 60 and all(n % 5 == 0 for n, _ in outer)
    assert all(at == pytest.approx((n - 1) * 1.8, abs=0.3) for n, at in outer)


@pytest.mark.parametrize(
    ("rotation", "way_on", "way_back"),
    [("clockwise", "clockwise", "anticlockwise"), ("anticlockwise", "anticlockwise", "clockwise")],
)
def test_every_tooth_on_the_sheet_says_which_way_it_goes(rotation, way_on, way_back):
    job = change(demo(), installation=turning(rotation).engaged.installation)
    job = change_in(
        job, "tooth_shift", planned_magneto_teeth=3, planned_disc_teeth=-3, moved_magneto_teeth=3, moved_disc_teeth=-3
    )
    job = change_in(job, "marks", magneto_from_disc_teeth=-1, disc_from_drive_teeth=0)
    shown = {r.field: r.shown for r in rows(job) if r.field.endswith("_teeth")}
    for face in ("planned", "moved"):
        assert shown[f"{face}_magneto_teeth"] == f"3 teeth with rotation ({way_on} seen from the drive end)"
        assert shown[f"{face}_disc_teeth"] == f"3 teeth against rotation ({way_back} seen from the drive end)"
    assert shown["magneto_from_disc_teeth"] == f"1 tooth against rotation ({way_back} seen from the drive end)"
    assert shown["disc_from_drive_teeth"] == "in line"
    page = html_text(job)
    assert "rotation (" in page
    assert re.search(r"(tooth|teeth) (with|against) rotation \(", page)
    assert not re.search(r"(tooth|teeth) (with|against) rotation(?! \()", page)
    pictures = [p for b in document(job).blocks if isinstance(b, Pictures) for p in b.pictures]
    captions = [p.caption for p in pictures if "magneto flange" in p.caption]
    assert len(captions) == 2
    said = [b.text for b in document(job).blocks if isinstance(b, Paragraph)]
    assert len([text for text in said if f"Seen from the drive end, rotation {rotation}." in text]) == 1
    assert f"3 teeth with rotation ({way_on} seen from the drive end)" in captions[1]


@pytest.mark.parametrize("labels", ["names", "blanks", "answers", "none"])
def test_the_class_sees_which_way_it_turns_too(labels):
    svg = drawing(turning("anticlockwise"), "drive", labels).svg
    assert len(re.findall(r'd="M[^Z"]+Z" fill="#000000" stroke="#000000"', svg)) == 1, "one head of an arrow"
    assert (">20</text>" in svg) == (labels == "names"), "slots are numbered where names are not"
