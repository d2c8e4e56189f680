"""Scenes painted: colours that can be told apart, words that meet nothing, still parts that are kept."""

from __future__ import annotations

import math
from itertools import combinations

import numpy as np
import pytest
import shapely
from PySide6.QtCore import QPointF, QRectF, QSize, QSizeF
from PySide6.QtGui import QColor, QFont, QImage, QPainter, QPdfWriter
from PySide6.QtSvg import QSvgGenerator

from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.contacts_closeup import closeup_scene
from magview.drawing.scene import Options, Scene, frame_of, glass_radius
from magview.spec.language import speak_through
from magview.spec.library import find_magneto, shipped_names
from magview.ui.kit.theme import THEMES
from magview.ui.pictures.scene_colours import scene_colours
from magview.ui.pictures.scene_painter import ScenePainter
from magview.ui.pictures.scene_words import SceneWords
from tests.ui.kit.contrast import contrast
from tests.ui.pictures.written import corner_boxes, words_in

MAGNETOS = [find_magneto(name) for name in shipped_names("magnetos")]
SIZES = [(504, 447), (455, 400), (900, 800)]


@pytest.fixture
def font(qapp) -> QFont:
    font = QFont("DejaVu Sans")
    font.setPixelSize(12)
    return font


@pytest.fixture
def longer_words():
    """Words a third longer than English ones, as other languages have them; numbers stay as they are."""

    def stretched(text: str) -> str:
        more = round(0.35 * sum(c.isalpha() for c in text))
        cut = len(text) - len(text.lstrip())
        return text[:cut] + "x" * more + text[cut:] if "{" not in text[:1] else text + "x" * more

    speak_through(stretched)
    yield
    speak_through(None)


def image_of(scene: Scene, size: tuple[int, int], font: QFont, theme=THEMES["light"], painter=None) -> QImage:
    image = QImage(*size, QImage.Format.Format_RGB32)
    painting = QPainter(image)
    (painter or ScenePainter(theme)).paint(painting, scene, QSizeF(*size), font)
    painting.end()
    return image


# ---------------------------------------------------------------------- colours

LINES = {
    "plate": "plate_line", "steel_high": "steel_line", "steel": "steel_line", "steel_low": "steel_line",
    "fibre": "fibre_line", "bracket": "bracket_line", "contact": "contact_line", "north": "north_line",
    "south": "south_line", "shoe": "case_line", "shoe_b": "case_line", "planned_fill": "planned",
}  # fmt: skip
"""Fills with the lines round them."""

WORDS = {
    "paper": ("ink", "second_ink", "lift", "opening", "planned", "good", "bad"),
    "plate": ("ink", "second_ink", "lift"), "plate_shade": ("ink", "second_ink", "lift"),
    "rim": ("ink",), "steel_high": ("steel_line",), "steel": ("steel_line",), "north": ("north_line",),
    "south": ("south_line",), "planned_fill": ("planned",), "panel": ("ink", "second_ink", "lift", "opening"),
    "ink": ("paper",),
}  # fmt: skip
"""Words by what they are written on."""


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda t: t.name)
def test_words_and_shapes_have_the_contrast_that_wcag_2_2_aa_asks_for(theme):
    colours = scene_colours(theme)
    for ground, words in WORDS.items():
        for word in words:
            assert contrast(colours[word], colours[ground]) >= 4.5, f"{word} on {ground}"
    for fill, line in LINES.items():
        assert contrast(colours[line], colours[fill]) >= 3.0, f"{line} round {fill}"
    for line in ("case_line", "steel_line", "lift", "opening", "planned", "north_line", "south_line"):
        assert contrast(colours[line], colours["paper"]) >= 3.0, f"{line} on paper"


@pytest.mark.parametrize("theme", THEMES.values(), ids=lambda t: t.name)
def test_every_role_has_a_colour_in_every_look(theme, font):
    colours, used = scene_colours(theme), set()
    for magneto in MAGNETOS:
        for scene in (breaker_scene(Shown(magneto, 30.0)), closeup_scene(Shown(magneto, 30.0), grade="pit")):
            for one in (scene, *(glass.scene for glass in scene.glasses)):
                for piece in (p for group in one.groups for p in group.pieces):
                    stops = piece.style.gradient.stops if piece.style.gradient else ()
                    used |= {piece.style.fill, piece.style.line, *(role for _, role in stops)}
                used |= {word.role for word in one.words} | {word.disc for word in one.words}
    assert used - {""} <= set(colours)
    assert len(used) > 20


# ---------------------------------------------------------------------- words


def check_corners(magneto, size, font):
    for scene in (breaker_scene(Shown(magneto, 20.0)), closeup_scene(Shown(magneto, 20.0))):
        frame, boxes = frame_of(scene, *size, 12.0), corner_boxes(scene, size, font)
        round_middle = shapely.Point(frame.left, frame.top).buffer(scene.round_mm * frame.scale, 64)
        assert len(boxes) >= (5 if scene.round_mm else 2)
        for text, box in boxes:
            assert QRectF(0, 0, *size).contains(box), text
            outline = shapely.box(box.left(), box.top(), box.right(), box.bottom())
            assert not (scene.round_mm and round_middle.intersects(outline)), text
            for glass in scene.glasses:
                radius = glass_radius(glass, *size)
                away = math.hypot(box.right() - (size[0] - radius - 10), box.center().y() - (size[1] - radius - 10))
                assert away > radius
        for (a, one), (b, other) in combinations(boxes, 2):
            assert not one.intersects(other), (a, b)


@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_words_in_the_corners_meet_nothing(magneto, size, font):
    check_corners(magneto, size, font)


@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_longer_words_in_the_corners_meet_nothing(magneto, size, font, longer_words):
    check_corners(magneto, size, font)


@pytest.mark.parametrize("size", [(220, 345), (260, 300), (300, 280)], ids=str)
@pytest.mark.parametrize("rotor_deg", [11.0, 29.2])
@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_no_reading_runs_into_the_glass_of_a_small_picture(magneto, rotor_deg, size, font):
    """Such as 150 % leaves on a small screen."""
    scene = breaker_scene(Shown(magneto, rotor_deg))
    (glass,) = scene.glasses
    radius = glass_radius(glass, *size)
    middle = shapely.Point(size[0] - radius - 10, size[1] - radius - 10).buffer(radius, 64)
    for text, box in corner_boxes(scene, size, font):
        assert not middle.intersects(shapely.box(box.left(), box.top(), box.right(), box.bottom())), text


@pytest.mark.parametrize("width", [130, 190, 220])
@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_where_the_sum_has_no_room_what_it_comes_to_is_written(magneto, width, font):
    terms = closeup_scene(Shown(magneto, 25.0)).total
    with words_in((width, 300), font) as words:
        _, pieces = words.total_pieces(terms, width - 30.0)
    assert sum(wide for *_, wide in pieces) <= width - 30.0 + 1e-6
    assert terms[-1].text in [text for text, *_ in pieces]


@pytest.mark.parametrize("width", [300, 460, 700, 1100])
@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_the_sum_fits_and_tells_most_where_there_is_room(magneto, width, font, longer_words):
    scene = closeup_scene(Shown(magneto, 25.0))
    with words_in((width, 300), font) as words:
        share, pieces = words.total_pieces(scene.total, width - 30.0)
    assert sum(wide for *_, wide in pieces) <= width - 30.0 + 1e-6
    meanings = [meaning for meaning, *_ in pieces]
    if width > 300:  # smaller type only where the words go with it
        assert share == 1.0 or scene.total[-1].meanings[-1] in meanings
    assert (scene.total[-1].meanings[0] in meanings) == (width == 1100)


@pytest.mark.parametrize("percent", [100, 150, 200])
@pytest.mark.parametrize("size", [(504, 447), (460, 300), (300, 280)], ids=str)
@pytest.mark.parametrize("magneto", MAGNETOS, ids=lambda m: m.name)
def test_no_word_leaves_the_picture_in_large_type(magneto, size, percent, font, longer_words, monkeypatch):
    font.setPixelSize(12 * percent // 100)
    written: list[tuple[str, float, float]] = []
    real = SceneWords._write  # noqa: SLF001

    def noted(self, text, at, px, role, bold=False, align="middle", paper=False):
        where = self._painter.worldTransform()
        if not where.isRotating():
            left = where.map(at).x() - {"left": 0.0, "middle": 0.5, "right": 1.0}[align] * self.width(text, px, bold)
            written.append((text, left, left + self.width(text, px, bold)))
        real(self, text, at, px, role, bold, align, paper)

    monkeypatch.setattr(SceneWords, "_write", noted)
    for scene in (breaker_scene(Shown(magneto, 20.0)), closeup_scene(Shown(magneto, 20.0))):
        image_of(scene, size, font)
        assert written
        for text, left, right in written:
            assert left >= -0.5, text
            assert right <= size[0] + 0.5, text
        written.clear()


# ---------------------------------------------------------------------- kept, larger, on paper


def changed(one: QImage, other: QImage) -> int:
    places = ((x, y) for x in range(0, one.width(), 3) for y in range(0, one.height(), 3))
    return sum(one.pixel(x, y) != other.pixel(x, y) for x, y in places)


def test_a_kept_layer_looks_as_if_it_were_drawn_anew(font):
    """Frames of one painter, whose still parts are kept, against painters that have painted nothing before."""
    magneto, kept = MAGNETOS[2], ScenePainter(THEMES["dark"])
    for shown in (
        Shown(magneto, 3.0),
        Shown(magneto, 40.0),
        Shown(magneto, 40.0, 2.0),
        Shown(magneto, 40.0, 2.0, 20.0),
    ):
        scene = breaker_scene(shown)
        before = image_of(scene, (504, 447), font, painter=kept)
        assert before == image_of(scene, (504, 447), font, THEMES["dark"])


def test_turning_the_plate_renews_its_layer_and_not_the_ground(font, monkeypatch):
    magneto, painter, painted = MAGNETOS[2], ScenePainter(THEMES["light"]), []
    real = ScenePainter._paint_layer  # noqa: SLF001

    def noted(self, painting, words, scene, layer, frame):
        painted.append(layer)
        real(self, painting, words, scene, layer, frame)

    monkeypatch.setattr(ScenePainter, "_paint_layer", noted)
    frames = [Shown(magneto, 3.0), Shown(magneto, 9.0), Shown(magneto, 9.0, 1.5), Shown(magneto, 9.0, 1.5, 10.0)]
    layers = []
    for shown in frames:
        image_of(breaker_scene(shown), (504, 447), font, painter=painter)
        layers.append(tuple(painted))
        painted.clear()
    assert layers == [("ground", "plate", "moving"), ("moving",), ("plate", "moving"), ("plate", "moving")]


@pytest.mark.parametrize("part", ["heel", "contact screw", "clamp screw", "cam"])
def test_a_part_pointed_at_is_lit_up(part, font):
    shown = Shown(MAGNETOS[2], 20.0)
    plain, lit = (image_of(breaker_scene(shown, Options(hovering=h)), (504, 447), font) for h in ("", part))
    assert changed(plain, lit) > 3
    planned = QColor(scene_colours(THEMES["light"])["planned"])
    rows = lit.convertToFormat(QImage.Format.Format_RGB32)
    blue, _, red = np.frombuffer(rows.constBits(), np.uint8).reshape(447, 504, 4).astype(int)[..., :3].T
    assert np.sum(abs(blue - planned.blue()) + abs(red - planned.red()) < 12) > 10


def test_under_the_lens_a_gap_is_ten_times_as_wide(font):
    """Between the drawn faces along the contacts' line, in the light of the plate between them."""
    magneto = find_magneto("seven-radial")
    scene, size = breaker_scene(Shown(magneto, 28.0)), QSizeF(504, 447)
    painter, image = ScenePainter(THEMES["light"]), QImage(504, 447, QImage.Format.Format_RGB32)
    frame = frame_of(scene, 504, 447, 12.0)
    fixed = scene.group("stop").put(scene.group("stop").pieces[-1].outlines[0])[2:].mean(axis=0)
    moving = scene.group("arm").put(scene.group("arm").pieces[-1].outlines[0])[:2].mean(axis=0)
    at = frame.of((fixed + moving) / 2)
    painting = QPainter(image)
    painter.paint(painting, scene, size, font)
    painter.lens(painting, scene, size, font, QPointF(*at), 10.0, 60.0)
    painting.end()
    across = (moving - fixed) / math.dist(moving, fixed)
    steps = [i / 4 for i in range(-120, 121)]
    plate = QColor(scene_colours(THEMES["light"])["plate"])

    def is_plate(step: float) -> bool:
        colour = image.pixelColor(round(at[0] + step * across[0]), round(at[1] - step * across[1]))
        return abs(colour.red() - plate.red()) < 14 and abs(colour.blue() - plate.blue()) < 24

    seen = sum(is_plate(step) for step in steps) / 4
    lines = 2.0  # half of each face's outline lies in the gap, and spreads over a pixel
    assert seen + lines == pytest.approx(10 * math.dist(moving, fixed) * frame.scale, abs=1.5)


@pytest.mark.parametrize("kind", ["svg", "pdf", "png"])
def test_a_scene_on_paper(kind, font, tmp_path):
    path, scene, size = tmp_path / f"picture.{kind}", breaker_scene(Shown(MAGNETOS[2], 30.0)), QSize(504, 447)
    if kind == "png":
        image_of(scene, (504, 447), font).save(str(path))
        assert QImage(str(path)).size() == size
        return
    device = QSvgGenerator() if kind == "svg" else QPdfWriter(str(path))
    if kind == "svg":
        device.setFileName(str(path))
        device.setSize(size)
        device.setViewBox(QRectF(0, 0, 504, 447))
    device.setResolution(96)
    painting = QPainter(device)
    ScenePainter(THEMES["light"]).paint(painting, scene, QSizeF(size), font, ratio=0.0)
    painting.end()
    data = path.read_bytes()
    if kind == "svg":
        text = data.decode()
        assert "contact screw" in text
        assert "<image" not in text, "drawn as lines, not as pixels"
    else:
        assert data.startswith(b"%PDF")
        assert b"/FontFile" in data


def test_lines_grow_for_the_back_row(font):
    shown, wide = breaker_scene(Shown(MAGNETOS[2], 20.0)), ScenePainter(THEMES["light"])
    wide.line_factor = 2.0
    assert changed(image_of(shown, (504, 447), font), image_of(shown, (504, 447), font, painter=wide)) > 500
