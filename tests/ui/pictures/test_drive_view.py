"""The coupling and the crank under the hand."""

from __future__ import annotations

import math
from dataclasses import replace
from itertools import combinations, product

import pytest
from PySide6.QtCore import QPointF, QRectF, Qt
from PySide6.QtGui import QFont
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QPushButton

from magview.bench.actions import MoveTeeth, PlaceMagneto, ReadLamp, TurnCrank, TurnRotor
from magview.bench.placing import new_bench
from magview.bench.state import crank_deg, firing_btdc_deg
from magview.bench.timing import timing_plan
from magview.drawing.coupling_scene import coupling_scene
from magview.drawing.drive_end import DRIVE_MM, drive_pose
from magview.spec.language import speak_through
from magview.spec.library import find_installation, find_magneto, shipped_names
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.signs import Sign
from magview.ui.pictures.drive_view import DriveView
from tests.counts import sampled, swept
from tests.hands import on_picture
from tests.magnetos import on_the_published_coupling
from tests.ui.pictures.written import corner_boxes, word_boxes
from tests.wording import says


def drag_round(view, radius: float, start: float, turn: float) -> None:
    port = view.viewport()
    QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=on_picture(view, radius, start).toPoint())
    for i in range(1, 25):
        QTest.mouseMove(port, on_picture(view, radius, start + turn * i / 24).toPoint())
    QTest.mouseRelease(port, Qt.MouseButton.LeftButton, pos=on_picture(view, radius, start + turn).toPoint())


@pytest.mark.parametrize(("name", "teeth"), sampled(product(["seven-radial-left", "nine-radial-left"], [1, -2]), 2))
def test_dragging_disc_and_flange_moves_whole_teeth(open_window, name, teeth):
    window = open_window(name)
    window.tabs.setCurrentIndex(1)
    view, model = window.drive, window.model
    coupling = model.state.engaged.installation.coupling
    sense = 1 if model.state.magneto.rotation == "clockwise" else -1
    # The disc between its two rings of teeth, then the hub, each turned by a little more than whole teeth.
    drag_round(view, 27.0, 100.0, sense * teeth * 360 / coupling.drive_teeth * 1.1)
    assert model.state.engaged.mounting.disc_teeth == teeth
    drag_round(view, 12.0, 200.0, -sense * teeth * 360 / coupling.magneto_teeth * 1.1)
    assert model.state.engaged.mounting.magneto_teeth == -teeth
    # What the picture shows: the marks stand apart by those teeth.
    pose = drive_pose(model.state, model.state.engaged)
    assert sense * (pose.disc - pose.flange) == pytest.approx(teeth * 360 / coupling.drive_teeth)


def test_dragging_the_drive_flange_turns_the_crank(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    before = crank_deg(window.model.state)
    drag_round(window.drive, (DRIVE_MM + 36.0) / 2, 90.0, -21.0)  # anticlockwise: with this one's rotation
    assert crank_deg(window.model.state) - before == pytest.approx(21.0 / 0.875, abs=0.8)


def test_dragging_the_timing_disc_turns_the_crank_and_the_rotor(open_window):
    window = open_window("four-opposed-left", size=(1600, 900))
    window.tabs.setCurrentIndex(1)
    view, model = window.crank, window.model
    before, rotor = crank_deg(model.state), model.state.rotor_deg
    sense = 1 if model.state.engaged.installation.engine.rotation == "clockwise" else -1
    disc = model.state.engaged.installation.engine.stroke_mm / 2 * 1.2
    drag_round(view, disc, 200.0, sense * 30.0)
    assert crank_deg(model.state) - before == pytest.approx(30.0, abs=2.0)
    assert model.state.rotor_deg - rotor == pytest.approx(crank_deg(model.state) - before)


def test_arrow_keys_move_teeth_and_page_keys_the_crank(open_window):
    window = open_window(on_the_published_coupling())
    view, model = window.drive, window.model
    view.setFocus()
    QTest.keyClick(view, Qt.Key.Key_Right)
    QTest.keyClick(view, Qt.Key.Key_Down)
    mounting = model.state.engaged.mounting
    assert (mounting.magneto_teeth, mounting.disc_teeth) == (1, -1)
    before = crank_deg(model.state)
    QTest.keyClick(view, Qt.Key.Key_PageUp)
    assert crank_deg(model.state) == pytest.approx(before + 1.0)
    window.crank.setFocus()
    QTest.keyClick(window.crank, Qt.Key.Key_Left, Qt.KeyboardModifier.ShiftModifier)
    assert crank_deg(model.state) == pytest.approx(before + 0.9)


def test_what_the_pictures_say_aloud(open_window):
    window = open_window(on_the_published_coupling())
    window.model.send(TurnCrank(-25.0))
    assert "compression stroke, 25.0° before top dead centre" in window.crank.accessibleDescription()
    assert "20 teeth at the drive, 19 at the magneto" in window.drive.accessibleDescription()
    assert "drive end" in window.drive.accessibleDescription()


@pytest.mark.parametrize("size", [(1280, 720), (1600, 900), (853, 480)])
def test_play_not_taken_up_is_warned_of_on_the_picture_itself(open_window, size):
    """Coming back to the E-gap from beyond it leaves the seven-cylinder coupling's play of 0.4° untaken."""
    window = open_window(on_the_published_coupling(), size)
    window.model.send(TurnRotor(27.15))
    assert "rotation" not in window.crank.shown_foot()
    next(b for b in window.panel.findChildren(QPushButton) if b.text() == "To the E-gap").click()
    QApplication.processEvents()
    view = window.crank
    shown = view.shown_foot()
    assert shown.lower().partition(":")[0].partition(",")[0].endswith("against rotation"), "the warning stands first"
    image = view.grab().toImage()
    foot = range(int(image.height() - view.foot_height(shown)), image.height() - 3)
    inked = [y for y in foot if any(image.pixelColor(x, y).lightness() < 90 for x in range(8, view.width() - 8))]
    assert len(inked) > 6, "and it is written there"
    assert "play of 0.40° of rotor not taken up" in view.viewport().toolTip()
    assert "piston" in view.viewport().toolTip()


@pytest.mark.parametrize("size", [(853, 480), swept(((1280, 720),))])
def test_the_caption_of_the_crank_follows_a_change_of_magneto_and_undo(open_window, size):
    """Which stands where with its crank is worked out here from the slider-crank, not asked of the picture."""
    window = open_window("seven-radial-left", size)
    view, model = window.crank, window.model

    def says_where_it_stands() -> None:
        QApplication.processEvents()
        view.grab()
        engine, crank = model.state.engaged.installation.engine, crank_deg(model.state)
        before = 360.0 - (crank + 360.0) % 720.0
        where = f"{abs(before):.1f}° {'BTDC' if before >= 0 else 'ATDC'}"
        r, rod, a = engine.stroke_mm / 2, engine.rod_mm, math.radians(crank)
        drop = r + rod - r * math.cos(a) - math.sqrt(rod**2 - (r * math.sin(a)) ** 2)
        whole = view.viewport().toolTip()
        assert where in whole
        assert where in view.shown_foot() or view.shown_foot().endswith(" …"), "cut short where there is no room"
        assert engine.articulation is None or engine.articulation.master_cylinder == 1, "its rod is on the pin"
        assert f"piston {drop:.3f} mm down" in whole
        assert f"{abs(before):.1f}°" in view.accessibleDescription()

    says_where_it_stands()
    for name in ("nine-radial", "four-opposed", "seven-radial"):
        window.place(name)
        model.send(TurnRotor(model.state.rotor_deg + 17.3))
        window.place("traced-six")
        says_where_it_stands()
        window.place(name)
        says_where_it_stands()
    for _ in range(9):
        model.undo()
        says_where_it_stands()
    for _ in range(9):
        model.redo()
        says_where_it_stands()


def test_without_an_engine_the_bench_says_so(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    window.model.send(PlaceMagneto(find_magneto("four-opposed")))
    assert window.timing.none.isVisible()
    assert not window.timing.plan.isVisible()
    QTest.keyClick(window.drive, Qt.Key.Key_Right)
    drag_round(window.drive, 27.0, 100.0, 40.0)
    assert window.model.state.engaged is None
    window.grab()


def test_readings_and_picture_follow_every_control(open_window):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    panel, model = window.timing, window.model
    panel.lamp.reads["left"].setValue(22.0)
    assert firing_btdc_deg(model.state, "left") == pytest.approx(22.0)
    assert "3.00° of crank late" in panel.lamp.error.text()
    QTest.mouseClick(panel.teeth.step_buttons["magneto", 1], Qt.MouseButton.LeftButton)
    QTest.mouseClick(panel.teeth.step_buttons["disc", -1], Qt.MouseButton.LeftButton)
    assert panel.lamp.now["left"].shown.value == pytest.approx(23.08, abs=0.005)
    panel.lamp.wanted["left"].setValue(23.0)
    assert panel.lamp.now["left"].shown.sign is Sign.IN
    QTest.mouseClick(panel.lamp.radio["right"], Qt.MouseButton.LeftButton)
    assert model.state.engaged.side == "right"
    panel.crank.crank.setValue(-40.0)
    assert crank_deg(model.state) == pytest.approx(-40.0)
    panel.stop.stops[0].setValue(350.0)
    panel.stop.stops[1].setValue(14.0)
    assert "at 2.00° on the disc" in panel.stop.tdc.text()
    panel.stop.stops[1].setValue(170.0)
    assert "180° apart" in panel.stop.tdc.text()


def test_nothing_within_tolerance_is_said_with_the_nearest_two(open_window):
    from magview.bench.actions import PlaceInstallation

    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    installation = window.model.state.engaged.installation
    coarse = installation.model_copy(
        update={"coupling": installation.coupling.model_copy(update={"magneto_teeth": 10, "drive_teeth": 10})}
    )
    window.model.send(PlaceInstallation(coarse))
    window.timing.lamp.reads["left"].setValue(22.0)
    text = window.timing.plan.verdict.text()
    assert "No move comes within the tolerance" in text and "swing it or set it" in text
    # Ten teeth on both faces: 36° of rotor a tooth, so the nearest is to leave it, the next a tooth away.
    assert "22.00° or" in text


# ---------------------------------------------------------------------- both sides, and a planned move


@pytest.fixture
def drive_view(qtbot):
    """A view alone, of a magneto whose lamp told three degrees of crank late."""

    def show(name="seven-radial-left", size=(400, 400), numbers=True):
        model = BenchModel(new_bench(find_installation(name)), None)
        side = model.state.engaged.side
        model.send(ReadLamp(side, model.state.engaged.mounting.wanted_btdc_deg - 3.0))
        view = DriveView(model, Look(), numbers=numbers)
        qtbot.addWidget(view)
        view.resize(*size)
        view.show()
        return view, model

    return show


def lines_of(scene) -> str:
    return "\n".join(line.wordings[0] for corner in scene.corners for line in corner.lines)


def test_a_preview_shows_the_steps_and_what_to_expect(drive_view):
    view, model = drive_view()
    move = next(m for m in timing_plan(model.state, "left") if m.disc_teeth and m.magneto_teeth)
    plain = view.grab().toImage()
    view.preview(move)
    assert view.previewed == (move.magneto_teeth, move.disc_teeth)
    discs = [word.text for word in view.picture.words if word.disc]
    assert {"A", "B", str(abs(move.disc_teeth)), str(abs(move.magneto_teeth))} <= set(discs)
    assert f"expect {move.result_btdc_deg:.2f}°" in lines_of(view.picture)
    assert f"B  count {abs(move.magneto_teeth)}" in view.accessibleDescription()
    assert view.grab().toImage() != plain
    view.preview(None)
    assert view.previewed is None
    assert view.grab().toImage() == plain


def test_teeth_already_moved_are_counted_no_more(drive_view):
    view, model = drive_view()
    move = next(m for m in timing_plan(model.state, "left") if m.disc_teeth <= -2 and m.magneto_teeth >= 2)
    view.preview(move)
    model.send(MoveTeeth(0, -1))
    text = lines_of(view.picture)
    left = abs(move.disc_teeth) - 1
    assert f"A  disc {left} against rotation" in text
    assert f"B  count {move.magneto_teeth} with rotation" in text, "from the disc's paint, wherever that is"


def test_no_slot_is_numbered_where_nothing_is_counted(drive_view):
    view, model = drive_view("nine-radial-left", (700, 640))
    coupling = model.state.engaged.installation.coupling
    said = {word.text for word in view.picture.words}
    assert said == {
        "drive flange", "disc", "magneto flange", f"{coupling.drive_teeth} teeth", f"{coupling.magneto_teeth} teeth",
    }  # fmt: skip


def test_what_has_moved_is_shown_as_found_but_not_in_practice(drive_view):
    for numbers in (True, False):
        view, model = drive_view(numbers=numbers)
        model.send(MoveTeeth(1, -2))
        groups = {group.name for group in view.picture.groups}
        assert ({"disc-found", "magneto flange-found"} <= groups) == numbers
        assert ("as found" in lines_of(view.picture)) == numbers


@pytest.mark.parametrize("by", ["key", "button"])
def test_the_view_can_be_turned_round_and_says_so(drive_view, by):
    view, model = drive_view()
    sense = 1 if model.state.magneto.rotation == "clockwise" else -1
    seen = {True: "turns clockwise", False: "turns anticlockwise"}
    assert "drive end" in lines_of(view.picture)
    assert seen[sense > 0] in lines_of(view.picture)
    before = on_picture(view, 27.0, 90.0)
    if by == "key":
        view.setFocus()
        QTest.keyClick(view, Qt.Key.Key_E)
    else:
        QTest.mouseClick(view.turn_round_button, Qt.MouseButton.LeftButton)
    assert view.at_engine
    assert "engine side" in lines_of(view.picture)
    assert seen[sense < 0] in lines_of(view.picture)
    assert says("as one stands at the engine") in view.accessibleDescription()
    assert on_picture(view, 27.0, 90.0).x() + before.x() == pytest.approx(view.viewport().width(), abs=2.0)
    # The disc follows the pointer there too: a tooth on with rotation is one back as one sees it.
    drag_round(view, 27.0, 100.0, sense * 360 / model.state.engaged.installation.coupling.drive_teeth * 1.1)
    assert model.state.engaged.mounting.disc_teeth == 1


def test_a_wide_picture_shows_both_sides_and_both_can_be_dragged(drive_view):
    view, model = drive_view(size=(900, 400))
    one, other = view.panes()
    assert (one.scene.mirrored, other.scene.mirrored) == (False, True)
    assert not view.turn_round_button.isVisible()
    coupling = model.state.engaged.installation.coupling
    sense = 1 if model.state.magneto.rotation == "clockwise" else -1
    for pane, teeth in ((one, 1), (other, 2)):
        turn = sense * 1.1 * 360.0 / coupling.drive_teeth

        def place(bearing, pane=pane):
            b = math.radians(bearing)
            x, y = pane.frame.at((27.0 * math.sin(b), 27.0 * math.cos(b)))
            return QPointF(x + pane.room.left(), y).toPoint()

        port = view.viewport()
        QTest.mousePress(port, Qt.MouseButton.LeftButton, pos=place(100.0))
        for i in range(1, 13):
            QTest.mouseMove(port, place(100.0 + turn * i / 12))
        QTest.mouseRelease(port, Qt.MouseButton.LeftButton, pos=place(100.0 + turn))
        assert model.state.engaged.mounting.disc_teeth == teeth
    view.zoom_by(3.0)
    assert not view.shows_both and len(list(view.panes())) == 1
    view.whole()
    assert view.shows_both


def test_the_lens_is_held_with_a_key_and_not_where_numbers_are_hidden(drive_view):
    for numbers in (True, False):
        view, _ = drive_view(numbers=numbers)
        plain = view.grab().toImage()
        view.hold_lens(QPointF(200.0, 120.0))
        assert (view.grab().toImage() != plain) == numbers
        QTest.keyRelease(view, Qt.Key.Key_L)
        assert view.grab().toImage() == plain


def test_a_part_pointed_at_is_named_and_lit_up(drive_view):
    view, _ = drive_view()
    for radius, part in ((40.0, "drive flange"), (27.0, "disc"), (12.0, "magneto flange")):
        QTest.mouseMove(view.viewport(), on_picture(view, radius, 250.0).toPoint())
        assert view.viewport().toolTip().split(":")[0] == part == view.picture.lit
        assert view.viewport().cursor().shape() == Qt.CursorShape.OpenHandCursor
    QTest.mouseMove(view.viewport(), QPointF(4.0, 396.0).toPoint())
    assert view.picture.lit == ""
    assert view.viewport().cursor().shape() == Qt.CursorShape.ArrowCursor


# ---------------------------------------------------------------------- words meet nothing


def boxes_of(scene, size: tuple[int, int]) -> list[tuple[str, QRectF]]:
    """Where every word stands that is written [px]."""
    font = QFont("DejaVu Sans")
    font.setPixelSize(12)
    return corner_boxes(scene, size, font) + word_boxes(scene, size, font)


@pytest.fixture(params=["English", "longer words"])
def speech(request):
    """English, and words a third longer, as other languages have them."""
    if request.param != "English":
        speak_through(lambda text: text + "x" * round(0.35 * sum(c.isalpha() for c in text)))
    yield
    speak_through(None)


@pytest.mark.parametrize(
    ("name", "size"),
    sampled(product(shipped_names("installations"), [(380, 270), (190, 190), (500, 640), (260, 250)]), 9),
)
def test_words_meet_no_other_word(qapp, name, size, speech):
    state = new_bench(find_installation(name))
    engaged = state.engaged
    read = replace(engaged.mounting, reads_btdc_deg=engaged.mounting.reads_btdc_deg - 3.0, lamp_read=True)
    state = replace(state, engaged=replace(engaged, **{engaged.side: read}))
    whole = QRectF(0.0, 0.0, *size)
    for move in (None, *timing_plan(state, engaged.side)[:4]):
        for at_engine in (False, True):
            for aside in (0.0, 75.0, 150.0, 240.0, 310.0):
                room = size[0] / 12, size[1] / 12
                scene = coupling_scene(state, move=move, at_engine=at_engine, room_em=room, aside_deg=aside)
                boxes = boxes_of(scene, size)
                said, round_ones = [text for text, _ in boxes], {word.text for word in scene.words if word.disc}
                for letter, teeth in (("A", move.disc_teeth), ("B", move.magneto_teeth)) if move else ():
                    assert (letter in said) == (teeth != 0)
                    assert any(text.startswith(f"{letter}  ") for text in said) == (teeth != 0)
                assert move is None or any("expect" in text for text in said)
                for text, box in boxes:
                    assert whole.contains(box), text
                for (a, one), (b, other) in combinations(boxes, 2):
                    if round_ones >= {a, b}:
                        away = one.center() - other.center()
                        meet = math.hypot(away.x(), away.y()) < (one.width() + other.width()) / 2
                    else:
                        meet = one.intersects(other)
                    assert not meet, (a, b, move, at_engine, aside)
