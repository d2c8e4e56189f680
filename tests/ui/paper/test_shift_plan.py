"""The tooth-shift plan on paper: one page, its words read back, its arithmetic done again with fractions."""

from __future__ import annotations

import re
from fractions import Fraction

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QFileDialog

from magview.bench.actions import MoveTeeth, PaintMarks, PlaceMagneto, ReadLamp, ViewSide
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.job.sheet import CAUTIONS
from magview.job.shift_plan import ShiftPlan, plan_from, plan_of, shift_documents
from magview.paper.blocks import BOX, Block, Heading, Pictures, Table
from magview.paper.sizes import PaperSize
from magview.physics.engine.coupling import plan
from magview.spec.base import SpecError
from magview.spec.library import find_installation, find_magneto
from magview.ui.kit import translation
from magview.ui.paper.pdf import pdf_bytes, print_pdf
from tests.counts import sampled
from tests.magnetos import on_the_published_coupling
from tests.ui.paper.pdf_reader import Pdf, bare
from tests.wording import says

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


def steps(document) -> list[tuple[str, str, str, str, str]]:
    """(face, number, words, slot, box) of every step, in the order of their numbers; "0" is as found."""
    (table,) = (b for b in document if isinstance(b, Table) and "Magneto slot" in b.head)
    found = []
    for row in table.rows:
        for face, half in (("disc", row[:4]), ("magneto flange", row[4:])):
            box, number, words, slot = half
            if box:
                found.append((face, number.rstrip(".") or "0", words, slot, box))
    return sorted(found, key=lambda step: int(step[1]))


def slots(i: int, j: int, magneto: int, drive: int) -> tuple[str, str]:
    """Which slot the disc's marked tooth is opposite: bearings in fractions of a turn, drive flange's mark at 0."""
    disc = Fraction(j, drive)
    hub = disc + Fraction(i, magneto)
    (at_hub,) = (n for n in range(magneto) if (hub + Fraction(n, magneto) - disc) % 1 == 0)
    (at_drive,) = (n for n in range(drive) if (Fraction(n, drive) - disc) % 1 == 0)
    return f"{at_hub + 1} of {magneto}", f"{at_drive + 1} of {drive}"


@pytest.mark.parametrize(
    ("name", "reads", "wanted"),
    [
        (PUBLISHED, 22.0, 25.0), (PUBLISHED, 15.0, 25.0), (PUBLISHED, 36.0, 25.0),
        ("nine-radial-left", 31.0, 25.0), ("four-opposed-left", 3.0, 25.0),
    ],
)  # fmt: skip
def test_the_steps_lead_tooth_by_tooth_to_the_reading_expected(name, reads, wanted):
    of, installation = planned(name, reads, wanted)
    magneto, drive = installation.coupling.magneto_teeth, installation.coupling.drive_teeth
    rotation = installation.magneto.rotation
    against = "anticlockwise" if rotation == "clockwise" else "clockwise"
    document = shift_document(of)
    (heads,) = (b.head for b in document if isinstance(b, Table) and "Magneto slot" in b.head)
    assert any("seen from the drive end" in b.text for b in document if isinstance(b, Heading) and b.level == 3)
    i = j = 0
    shift = Fraction(0)
    found, *rest = (s for s in steps(document) if s[1] != "0" or s[0] == "magneto flange")
    assert found[3] == slots(0, 0, magneto, drive)[0]
    for place, (face, number, words, slot, box) in enumerate(rest, 1):
        assert (number, box) == (str(place), BOX)
        way = 1 if "with rotation" in words else -1
        assert words == f"1 tooth {'with' if way > 0 else 'against'} rotation"
        seen = f"{words} ({rotation if way > 0 else against})"
        assert (
            f"{'A disc on the drive flange' if face == 'disc' else 'B magneto flange on the disc'}: {seen}" in heads
        )
        if face == "disc":
            j += way
            shift += way * Fraction(360, drive)
        else:
            i += way
            shift += way * Fraction(360, magneto)
        assert slot == slots(i, j, magneto, drive)[face == "disc"]
    assert (i, j) == (of.move.magneto_teeth, of.move.disc_teeth)
    ratio = Fraction(installation.rotor_turns_per_crank_turn).limit_denominator(24)
    expected = Fraction(str(reads)) + shift / ratio
    words = [cell for b in document if isinstance(b, Table) for row in b.rows for cell in row]
    assert f"{float(expected):.2f}° before top dead centre" in words
    assert f"{float(expected) - wanted:+.2f}°" in words
    for teeth in (magneto, drive):
        rotor = Fraction(360, teeth)
        assert f"360°/{teeth} = {float(rotor):.3f}".rstrip("0").rstrip(".") in " ".join(words)
        assert any(f"{float(rotor / ratio):.3f}".rstrip("0").rstrip(".") in cell for cell in words)
    captions = [p.caption for b in document if isinstance(b, Pictures) for p in b.pictures]
    for caption, (a, b) in zip(captions, ((0, 0), (i, j)), strict=True):
        for slot in slots(a, b, magneto, drive):
            assert slot in caption


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
        "Tooth-shift plan", installation.magneto.name, installation.engine.name, "left",
        says("{way} seen from the drive end", way="anticlockwise"), f"{reads:.2f}° before top dead centre",
        says("{angle:deg} before top dead centre", angle=25.0),
        "±1°", "Lamp reads afterwards", "Name", "Date",
        *(f"{float(Fraction(360, n)):.3f}°" for n in (19, 20)),
        *(f"{float(Fraction(360 * 8, 7 * n)):.3f}°" for n in (19, 20)),
        *CAUTIONS,
    ):  # fmt: skip
        assert bare(words) in text, words
    for word in ("drive flange", "disc", "magneto flange", "direction of rotation"):
        assert text.count(bare(word)) >= 2, f"{word} is named in both pictures"
    # Two as found, six for afterwards, and the four that agree when No. 1 fires (FAA-H-8083-32B, ch. 4).
    assert text.count(BOX) == abs(of.move.magneto_teeth) + abs(of.move.disc_teeth) + 2 + 6 + 4
    assert bare("as found: ✗ Piston ✓ Magnet ✓ Contacts ✓ Finger. Afterwards") in text
    assert b"/Subtype /Image" not in data


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


def test_both_directions_of_a_move_are_in_words(qapp):
    of, _ = planned(PUBLISHED, 22.0, 25.0)
    text = Pdf(shift_pdf(of)[0]).whole
    assert bare("3 teeth with rotation (anticlockwise seen from the drive end)") in text
    assert bare("3 teeth against rotation (clockwise seen from the drive end)") in text


def test_a_bench_plans_from_as_found_however_far_it_has_been_stepped():
    state = apply(new_bench(on_the_published_coupling()), ReadLamp("left", 22.0))
    stepped = apply(state, MoveTeeth(2, -1))
    assert shift_document(plan_of(stepped, "left")) == shift_document(plan_of(state, "left"))
    # New paint is new marks: as found they then stand apart by what had been moved, the other way.
    painted = steps(shift_document(plan_of(apply(stepped, PaintMarks()), "left")))
    assert [s[3] for s in painted if s[1] == "0"] == list(reversed(slots(-2, 1, 19, 20)))


def test_what_cannot_be_planned_is_said():
    with pytest.raises(SpecError, match="not on an engine"):
        plan_of(new_bench(find_magneto("four-opposed")), "left")
    of, installation = planned(PUBLISHED, 22.0, 25.0)
    coarse = installation.model_copy(
        update={"coupling": installation.coupling.model_copy(update={"magneto_teeth": 10, "drive_teeth": 10})}
    )
    far = plan(10, 10, 0.875, 22.0, 25.0)[0]
    words = " ".join(getattr(b, "text", "") for b in shift_document(plan_from(coarse, 22.0, 25.0, far)))
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
    assert bare(f"{move.magneto_teeth} teeth with rotation (anticlockwise") in text
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
