"""The tooth-shift plan on paper: one page, its words read back, its arithmetic done again with fractions."""

from __future__ import annotations

import re
from dataclasses import replace
from fractions import Fraction

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog

from magview.bench.actions import MoveTeeth, PaintMarks, PlaceMagneto, ReadLamp, ViewSide
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.shift_plan import ShiftPlan
from magview.drawing.shift_boxes import DIGIT_MM, LEAST_PT, POINT_PX, PX_A_MM, boxes_svg
from magview.job.sheet import CAUTIONS
from magview.job.shift_plan import after_each, plan_from, plan_of, plan_typed, shift_documents
from magview.paper.blocks import Block, Heading, Paragraph
from magview.paper.sizes import PaperSize
from magview.physics.engine.coupling import plan
from magview.spec.base import SpecError
from magview.spec.library import find_installation, find_magneto
from magview.ui.bench.shift_screen import ShiftScreen
from magview.ui.kit import translation
from magview.ui.paper.pdf import pdf_bytes, print_pdf
from tests.counts import sampled
from tests.magnetos import on_the_published_coupling
from tests.ui.paper.pdf_reader import Pdf, bare

PUBLISHED = "19/20"


def shift_document(of: ShiftPlan) -> tuple[Block, ...]:
    """The page where there is room."""
    return next(shift_documents(of)).blocks


def shift_pdf(of: ShiftPlan, size: PaperSize = "a4") -> tuple[bytes, int]:
    return pdf_bytes(*shift_documents(of, size))


def planned(name: str, reads: float, wanted: float):
    installation = on_the_published_coupling() if name == PUBLISHED else find_installation(name)
    coupling, ratio = installation.coupling, installation.rotor_turns_per_crank_turn
    moves = plan(coupling.magneto_teeth, coupling.drive_teeth, ratio, reads, wanted)
    return plan_from(installation, reads, wanted, moves[0]), installation


def typed(reads: float = 23.0, rotation=None) -> ShiftPlan:
    move = plan(17, 18, Fraction(7, 8), reads, 27.0)[0]
    return plan_typed(17, 18, Fraction(7, 8), reads, 27.0, move, tolerance_deg=1.0, rotation=rotation)


@pytest.mark.parametrize(
    ("name", "reads", "wanted"),
    [
        (PUBLISHED, 22.0, 25.0), (PUBLISHED, 15.0, 25.0), (PUBLISHED, 36.0, 25.0),
        ("nine-radial-left", 31.0, 25.0), ("four-opposed-left", 3.0, 25.0),
    ],
)  # fmt: skip
def test_the_teeth_lead_one_by_one_to_the_reading_expected(name, reads, wanted):
    of, installation = planned(name, reads, wanted)
    ratio = Fraction(installation.rotor_turns_per_crank_turn).limit_denominator(24)
    at, told = Fraction(str(reads)), after_each(of)
    for face, teeth, pitch in (
        ("A", of.move.disc_teeth, Fraction(360, installation.coupling.drive_teeth)),
        ("B", of.move.magneto_teeth, Fraction(360, installation.coupling.magneto_teeth)),
    ):
        assert len(told[face]) == abs(teeth)
        for angle in told[face]:
            at += (1 if teeth > 0 else -1) * pitch / ratio
            assert angle == pytest.approx(float(at))
    assert float(at) == pytest.approx(of.move.result_btdc_deg)
    text = " ".join(b.text for b in shift_document(of) if isinstance(b, Heading))
    assert f"{float(at):.2f}° before top dead centre" in text


@pytest.mark.parametrize(("paper", "size"), [("a4", (595, 842)), ("letter", (612, 792))])
@pytest.mark.parametrize("reads", [22.0, 15.0, 35.0])
def test_one_page_with_every_word_of_it(qapp, paper, size, reads):
    of, installation = planned(PUBLISHED, reads, 25.0)
    data, pages = shift_pdf(of, paper)
    pdf = Pdf(data)
    assert pages == len(pdf.pages) == 1
    (box,) = re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]", data)
    assert tuple(round(float(n)) for n in box) == size
    text = pdf.whole
    for words in (
        "Tooth-shift plan: left magneto", installation.magneto.name, installation.engine.name,
        "ENGINE SIDE", "MAGNETO SIDE", "face with 20 teeth", "face with 19 teeth", "±1°", "Registration", "Hours",
        "Engine, serial", "Magneto, serial", "Manual, page", "Date", "Name", "Second move", "The manual governs.",
        "as you stand at the engine", "drive end towards you", "The crank stays", "holds the rotor",
        "the magneto flange goes with the disc", "All paint stood in line before.", "WARNING", *CAUTIONS,
    ):  # fmt: skip
        assert bare(words) in text, words
    for word in ("drive flange", "magneto flange"):
        assert bare(word) in text
    # The four that agree when No. 1 fires (FAA-H-8083-32B, ch. 4).
    assert bare("as found: ✗ Piston ✓ Magnet ✓ Contacts ✓ Finger. Afterwards") in text
    assert b"/Subtype /Image" not in data


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_every_warning_at_once_is_still_one_page_with_all_its_words(qapp, paper):
    move = plan(17, 18, Fraction(7, 8), 15.0, 27.0, most=3)[2]
    warnings = (
        "The internal timing is out of limits: put that right first, no tooth makes up for it.",
        "The installation does not fit together: the rotor turns 0.875 times, 7 cylinders and 4 poles need more.",
        "22.4° is out of date: the contacts were set anew. Expect 23.0°. Read it again before any tooth is moved.",
    )
    of = plan_typed(17, 18, Fraction(7, 8), 15.0, 27.0, move, tolerance_deg=0.1, rotation="clockwise", name="Left")
    of = replace(of, warnings=warnings, flange_from_disc=-3, disc_from_drive=5)
    data, pages = shift_pdf(of, paper)
    text = Pdf(data).whole
    assert pages == 1
    for words in (*warnings, *CAUTIONS, "This move does not reach it", "Check stroke, mark and finger first", "Name"):
        assert bare(words) in text, words


@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_no_part_carries_a_slot_number_and_none_is_printed(qapp, paper):
    for reads in (22.0, 15.0):
        assert "slot" not in Pdf(shift_pdf(planned(PUBLISHED, reads, 25.0)[0], paper)[0]).whole.casefold()


def test_the_two_numbers_are_read_at_arms_length():
    """Digits of DejaVu Sans are 0.729 em high (its own table)."""
    for of in (typed(rotation="clockwise"), planned(PUBLISHED, 15.0, 25.0)[0]):
        drawn = re.findall(r'font-size="([\d.]+)"[^>]*>([^<]*)<', boxes_svg(of))
        sizes = [(float(size) / POINT_PX, words) for size, words in drawn]
        numbers = [size for size, words in sizes if words.isdigit()]
        assert len(numbers) == 2
        assert all(size * 25.4 / 72 * 0.729 == pytest.approx(DIGIT_MM, abs=0.1) for size in numbers)
        small = [words for size, words in sizes if size < LEAST_PT - 1e-6]
        assert len(small) <= 1 and all("drive end towards you" in words for words in small)
    assert pytest.approx(POINT_PX) == PX_A_MM * 25.4 / 72


def test_a_plan_needs_teeth_and_ratio_alone(qapp):
    of = typed()
    data, pages = shift_pdf(of)
    text = Pdf(data).whole
    assert pages == 1 and bare("Rotation not given, so no arrows") in text
    assert bare("Both large arrows") not in text and "↻" not in boxes_svg(of)
    # −3·20° + 3·(360/17)° = 3.53° of rotor, ÷ 7/8 = 4.03° of crank (plain arithmetic)
    assert bare("27.03° before top dead centre") in text and bare("3.53° of rotor past") in text


def test_paint_that_did_not_stand_in_line_is_counted_from_where_it_stood(qapp):
    of = replace(typed(rotation="clockwise"), flange_from_disc=2, disc_from_drive=-1)
    text = Pdf(shift_pdf(of)[0]).whole
    for words in (
        "disc's paint 1 tooth against rotation from the drive flange's",
        "magneto flange's paint 2 teeth with rotation from the disc's",
        "Count 5 teeth with rotation from the paint on the disc",
        "From the drive flange's paint to the disc's: 4 teeth against rotation.",
    ):
        assert bare(words) in text, words


def test_the_jumper_comes_off_again_and_the_leads_are_proved_again(qapp):
    """Common practice: a jumper left on makes a dead magneto, a lead not proved again may leave a live one."""
    of, _ = planned(PUBLISHED, 22.0, 25.0)
    text = Pdf(shift_pdf(of)[0]).whole
    order = [
        text.index(bare(words))
        for words in (
            "jumper off for the reading alone", "Lamp read again", "Jumper on again", "jumper off for good",
            "each switch lead proved again", "Lamp reads afterwards",
        )
    ]  # fmt: skip
    assert order == sorted(order)


def test_where_it_is_right_the_teeth_are_left_alone(qapp):
    text = Pdf(shift_pdf(typed(27.0, "clockwise"))[0]).whole
    assert bare("Leave the teeth alone.") in text and bare("ENGINE SIDE") not in text


def test_a_bench_plans_from_as_found_however_far_it_has_been_stepped():
    state = apply(new_bench(on_the_published_coupling()), ReadLamp("left", 22.0))
    stepped = apply(state, MoveTeeth(2, -1))
    assert shift_document(plan_of(stepped, "left")) == shift_document(plan_of(state, "left"))
    # New paint is new marks: as found they then stand apart by what had been moved, the other way.
    painted = plan_of(apply(stepped, PaintMarks()), "left")
    assert (painted.flange_from_disc, painted.disc_from_drive) == (-2, 1)


def test_what_cannot_be_planned_is_said():
    with pytest.raises(SpecError, match="not on an engine"):
        plan_of(new_bench(find_magneto("four-opposed")), "left")
    of, installation = planned(PUBLISHED, 22.0, 25.0)
    coarse = installation.model_copy(
        update={"coupling": installation.coupling.model_copy(update={"magneto_teeth": 10, "drive_teeth": 10})}
    )
    far = plan(10, 10, 0.875, 22.0, 25.0)[0]
    blocks = shift_document(plan_from(coarse, 22.0, 25.0, far))
    words = " ".join(str(b.text) for b in blocks if isinstance(b, Paragraph))
    assert "This move does not reach it" in words and "outside the tolerance" in words
    assert isinstance(shift_document(of)[0], Heading)


def test_a_place_that_cannot_be_written_is_a_sentence(qapp, tmp_path):
    of, _ = planned(PUBLISHED, 22.0, 25.0)
    with pytest.raises(SpecError, match="cannot be written"):
        print_pdf(tmp_path / "gone" / "x.pdf", *shift_documents(of))
    assert print_pdf(tmp_path / "x.pdf", *shift_documents(of)) == 1


# ---------------------------------------------------------------------- from the window


@pytest.mark.parametrize("way", ["button", "menu"])
def test_the_chosen_move_is_printed_from_the_window(open_window, monkeypatch, tmp_path, way):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    window.model.send(ReadLamp("left", 22.0))
    box = window.timing.plan
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a: (str(tmp_path / "shift"), ""))
    box.table.selectRow(1)
    move = box.chosen
    assert move is not None
    if way == "button":
        QTest.keyClick(box.print.menu(), Qt.Key.Key_Down)
        box.print.menu().actions()[1].trigger()
    else:
        window.tabs.setCurrentIndex(0)
        (files, *_) = [a.menu() for a in window.menuBar().actions()]
        (shift,) = [a.menu() for a in files.actions() if a.menu() is not None and "tooth" in a.text()]
        shift.actions()[0].trigger()
    text = Pdf((tmp_path / "shift.pdf").read_bytes()).whole
    assert bare(f"B magneto flange: {move.magneto_teeth} WITH rotation") in text
    assert bare(f"{move.result_btdc_deg:.2f}° before top dead centre") in text
    assert "1 page" in window.statusBar().currentMessage()


def test_a_choice_from_another_reading_is_not_printed(open_window, monkeypatch, tmp_path):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    window.model.send(ReadLamp("left", 22.0))
    window.timing.plan.table.selectRow(1)
    window.tabs.setCurrentIndex(0)
    window.model.send(ReadLamp("left", 27.0))
    window.model.send(ViewSide("left"))
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a: (str(tmp_path / "p.pdf"), ""))
    window.print_shift_plan("a4")
    best = plan(19, 20, 0.875, 27.0, 25.0)[0]
    assert bare(f"{best.result_btdc_deg:.2f}°") in Pdf((tmp_path / "p.pdf").read_bytes()).whole
    window.model.send(PlaceMagneto(find_magneto("four-opposed")))
    (tmp_path / "p.pdf").unlink()
    window.print_shift_plan("a4")
    assert "not on an engine" in window.statusBar().currentMessage() and not (tmp_path / "p.pdf").exists()


@pytest.mark.parametrize(
    ("code", "paper"), sampled(((c, p) for c in translation.LANGUAGES for p in ("a4", "letter")), 3)
)
def test_eighteen_steps_are_one_page_in_every_language(qapp, code, paper):
    translation.speak(code)
    try:
        of, _ = planned(PUBLISHED, 15.0, 25.0)
        assert abs(of.move.magneto_teeth) + abs(of.move.disc_teeth) == 18
        assert shift_pdf(of, paper)[1] == 1
    finally:
        translation.speak("en")


def test_the_large_screen_goes_step_by_step_and_a_tablet_gets_one_file(open_window, monkeypatch, tmp_path):
    window = open_window(on_the_published_coupling())
    window.tabs.setCurrentIndex(1)
    window.model.send(ReadLamp("left", 22.0))
    paper = window.timing.plan.print.menu().actions()
    paper[2].trigger()
    (screen,) = window.findChildren(ShiftScreen)
    assert screen.isFullScreen()
    screen.setWindowState(Qt.WindowState.WindowNoState)
    screen.resize(1280, 660)
    screen.layout().activate()
    seen = []
    for _ in range(6):
        seen.append(screen.view.accessibleName())
        size, title, picture, words = screen.view.fitted()
        assert words.bottom() <= screen.view.height() and not picture.intersects(words)
        assert size >= 20 and title.bottom() < picture.top() + 20
        if len(seen) < 6:
            QTest.mouseClick(screen.forward, Qt.MouseButton.LeftButton)
    assert seen[1:] == ["Before", "A disc", "B magneto flange", "Check by the paint", "Then the lamp"]
    QTest.keyClick(screen, Qt.Key.Key_Left)
    assert screen.view.accessibleName() == "Check by the paint"
    QTest.keyClick(screen, Qt.Key.Key_Right)
    QTest.mouseClick(screen.forward, Qt.MouseButton.LeftButton)
    assert not screen.isVisible()
    monkeypatch.setattr(QFileDialog, "getSaveFileName", lambda *a: (str(tmp_path / "plan.html"), ""))
    paper[3].trigger()
    assert "B magneto flange" in (tmp_path / "plan.html").read_text(encoding="utf-8")
