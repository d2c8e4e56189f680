"""Worksheets have blanks where the key has answers, and nothing of the answers anywhere."""

from __future__ import annotations

import re

import pytest

from magview.bench.placing import new_bench
from magview.classroom.blanks import Cell, blanks
from magview.classroom.drawings import drawing, has
from magview.classroom.set_papers import set_key, set_worksheets
from magview.classroom.sets import ClassSet, code_of
from magview.classroom.worksheet import (
    Whose,
    answer_key,
    answers,
    handout,
    parts_sheet,
    worksheet,
)
from magview.drawing.breaker_end import breaker_end
from magview.drawing.captions import CAPTIONS, ENDS
from magview.paper.blocks import Document, Heading, Pictures, Table
from magview.practice.faults import begin, drawn
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.state import true_firing_deg, true_readings
from magview.spec.base import SpecError
from magview.spec.library import find_installation, find_magneto, shipped_names
from tests.classroom.answers import telling
from tests.counts import THOROUGH
from tests.paper.words import texts_of


def text_of(paper: Document) -> str:
    """All words of a paper, and all that its pictures hold."""
    drawn = [p.svg for block in paper.blocks if isinstance(block, Pictures) for p in block.pictures]
    return "\n".join([*texts_of(paper), *drawn])


def words_in(svg: str) -> list[str]:
    return re.findall(r"<text[^>]*>([^<]*)</text>", svg)


@pytest.mark.parametrize("name", shipped_exercises())
def test_no_answer_is_on_a_worksheet_and_every_one_on_its_key(name):
    exercise = find_exercise(name)
    for seed in (0, 17, 4711) if THOROUGH else (17,):
        sheet, key = text_of(worksheet(exercise, seed, hints=True)), text_of(answer_key(exercise, seed))
        found = answers(exercise, seed)
        assert found or exercise.goals[0].goal == "e-gap"
        for answer in found:
            assert answer in key
            assert not telling(answer) or answer not in sheet, (seed, answer)


@pytest.mark.parametrize("name", ["gap-wrong", "both-everything-wrong", "wrong-stroke", "switch-lead"])
def test_a_worksheet_is_alike_whatever_is_hidden_but_for_its_code(name):
    exercise = find_exercise(name)
    one, other = (text_of(worksheet(exercise, seed, Whose("", "CODE"))) for seed in (17, 4711))
    assert one == other
    assert text_of(answer_key(exercise, 17)) != text_of(answer_key(exercise, 4711))


def test_blanks_are_empty_cells_and_the_key_fills_each():
    exercise = find_exercise("gap-wrong")
    (sheet, key) = (
        [b for b in make(exercise, 17).blocks if isinstance(b, Table) and b.to_fill]
        for make in (worksheet, answer_key)
    )
    for one, other in zip(sheet, key, strict=True):
        assert one.head == other.head
        for a, b in zip(one.rows, other.rows, strict=True):
            assert a[0] == b[0] and set(a[1:]) == {""} and all(b[1:])


def test_the_key_is_true():
    """The readings on the key are those of the magneto as drawn."""
    exercise = find_exercise("gap-wrong")
    room = begin(exercise, 17)
    gaps = true_readings(room.bench).max_gap_mm
    table = blanks(exercise, 17)[-1]
    for row, gap in zip(table.rows, gaps, strict=True):
        cell = row[2]
        assert isinstance(cell, Cell)
        millimetres, inches = re.findall(r"[\d.]+", cell.answer)
        assert float(millimetres) == pytest.approx(gap, abs=0.0005)
        assert float(inches) * 25.4 == pytest.approx(gap, abs=0.0013)
    # What is drawn is a gap out of its limits: the designed gap and the fault together.
    found = drawn(exercise, 17, "left").gap
    assert gaps[0] == pytest.approx(exercise.unit.designed_setting.gap_mm + found, abs=0.002)


def test_the_stop_reads_as_far_on_either_side_of_true_dead_centre():
    exercise = find_exercise("true-dead-centre")
    cells = [row[1].answer for row in blanks(exercise, 5)[0].rows if isinstance(row[1], Cell)]
    one, other, middle = (float(c.split("°")[0]) * (1 if "before" in c else -1) for c in cells)
    assert (one + other) / 2 == pytest.approx(middle, abs=0.011)
    assert middle == pytest.approx(drawn(exercise, 5, "left").disc_zero, abs=0.006)


def test_firing_on_the_wrong_stroke_reads_as_the_disc_does():
    exercise = find_exercise("wrong-stroke")
    fires = true_firing_deg(begin(exercise, 3).bench)
    (cell,) = [row[1] for table in blanks(exercise, 3) for row in table.rows if "Fires" in str(row[0])]
    assert isinstance(cell, Cell) and "wrong stroke" in cell.answer
    reads = float(cell.answer.split("°")[0])
    assert (reads - fires + 180.0) % 360.0 - 180.0 == pytest.approx(0.0, abs=0.01) and abs(reads - 25.0) < 30.0


# ---------------------------------------------------------------------- parts


@pytest.mark.parametrize("name", [*shipped_names("magnetos"), *shipped_names("installations")])
def test_every_part_is_numbered_and_none_named_on_the_sheet(name):
    item = find_installation(name) if name in shipped_names("installations") else find_magneto(name)
    state = new_bench(item)
    for end in ENDS:
        if not has(state, end):
            continue
        blank, key = drawing(state, end, "blanks"), drawing(state, end, "answers")
        told = set(CAPTIONS[end]) - ({"grounding tab"} if state.magneto.grounding_tab is not True else set())
        assert set(blank.parts) == told, "each part told has its place in the picture"
        written = words_in(blank.svg)
        assert {w for w in written if w.isdigit()} == {str(n + 1) for n in range(len(blank.parts))}
        assert not set(CAPTIONS[end]) & set(written)
        # Number and name are written one after the other on the key.
        on_key = words_in(key.svg)
        for number, part in enumerate(key.parts, 1):
            assert on_key[on_key.index(str(number)) + 1] == part
        # Without names the rim marks keep the numbers that are stamped beside them.
        marks = {str(n + 1) for n in range(len(state.magneto.cam.lobe_peaks_deg))} if end == "breaker" else set()
        assert set(words_in(drawing(state, end, "none").svg)) <= {"N", "S"} | marks
    sheet = text_of(parts_sheet(state))
    assert "contact screw" not in sheet and "contact screw" in text_of(parts_sheet(state, key=True))


def test_what_is_told_is_what_is_drawn():
    anchors = breaker_end(find_magneto("seven-radial")).anchors
    assert set(CAPTIONS["breaker"]) == set(anchors)


def test_the_pictures_are_of_the_magneto_as_designed():
    """A creeping, worn or wrongly set magneto must not be measured off the worksheet."""
    exercise = find_exercise("one-lobe-low")
    pictures = [b for b in worksheet(exercise, 1).blocks if isinstance(b, Pictures)]
    again = [b for b in worksheet(exercise, 2).blocks if isinstance(b, Pictures)]
    assert pictures == again


def test_a_picture_that_is_not_there_is_a_sentence():
    with pytest.raises(SpecError, match="not on an engine"):
        handout(new_bench(find_magneto("traced-six")), ("drive",), "names")


def test_a_handout_tells_what_each_part_does():
    paper = handout(new_bench(find_magneto("seven-radial")), ("breaker",), "names", told=True)
    (table,) = [b for b in paper.blocks if isinstance(b, Table)]
    assert [row[0] for row in table.rows] == list(CAPTIONS["breaker"])
    assert "propeller as live" in text_of(paper)


# ---------------------------------------------------------------------- a whole set


def a_set(own: bool, pupils: tuple[str, ...] = ()) -> ClassSet:
    names = ("gap-wrong", "when-do-they-open", "switch-lead")
    return ClassSet(
        seed=99, each_their_own=own, title="Tuesday", exercises=tuple(map(find_exercise, names)), pupils=pupils
    )


def test_one_copy_where_all_have_the_same():
    of = a_set(False)
    sheet = set_worksheets(of, code_of(of))
    heads = [b.text for b in sheet.blocks if isinstance(b, Heading) and b.level == 1]
    assert heads == ["1. The gap is wrong", *heads[1:]] and len(heads) == 3
    assert code_of(of) in text_of(sheet)
    key = text_of(set_key(of, code_of(of)))
    for number in (1, 2, 3):
        for answer in answers(of.exercise(number), of.seed_of(number)):
            assert answer in key
            assert not telling(answer) or answer not in text_of(sheet)


def test_one_for_each_pupil_where_each_has_their_own():
    of = a_set(True, ("Ada", "Béla"))
    sheet, key = text_of(set_worksheets(of)), text_of(set_key(of))
    assert sheet.count("Ada") == sheet.count("Béla") == 3
    gaps = {f"{true_readings(begin(of.exercise(1), of.seed_of(1, n)).bench).max_gap_mm[0]:.3f} mm" for n in of.pupils}
    assert len(gaps) == 2 and all(gap in key and gap not in sheet for gap in gaps)
    with pytest.raises(SpecError, match="name the pupils"):
        set_worksheets(a_set(True))


def test_parts_are_named_once_for_each_magneto_of_a_set():
    of = a_set(False)
    pictures = [b.text for b in set_worksheets(of).blocks if isinstance(b, Heading) and "Name the parts" in b.text]
    # gap-wrong and when-do-they-open share their magneto; switch-lead is on an engine.
    assert sum("Breaker end" in p for p in pictures) == 2
