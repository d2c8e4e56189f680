"""Class paper as PDF: sizes, fonts, greys, what can be selected; and the dialog that asks for it."""

from __future__ import annotations

import re
import shutil
import subprocess
from dataclasses import replace

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest

from magview.bench.placing import new_bench
from magview.classroom.worksheet import answer_key, answers, handout, parts_sheet, worksheet
from magview.drawing.captions import CAPTIONS
from magview.practice.library import find_exercise
from magview.spec.library import find_installation
from magview.ui.paper.pdf import pdf_bytes, print_pdf
from tests.classroom.answers import telling
from tests.counts import swept
from tests.ui.paper.pdf_reader import Pdf, bare

EXERCISES = ("gap-wrong", "both-everything-wrong")


@pytest.mark.parametrize("name", EXERCISES)
@pytest.mark.parametrize(("size", "points"), [("a4", (595, 842)), swept(("letter", (612, 792)))])
def test_worksheet_and_key_are_of_their_size_and_selectable(qapp, name, size, points):
    exercise = find_exercise(name)
    data, pages = pdf_bytes(replace(worksheet(exercise, 17), size=size))
    boxes = re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]", data)
    assert len(boxes) == pages and {(round(float(w)), round(float(h))) for w, h in boxes} == {points}
    sheet, key = Pdf(data), Pdf(pdf_bytes(replace(answer_key(exercise, 17), size=size))[0])
    assert bare(exercise.story) in sheet.whole and bare("Name the parts") in sheet.whole
    for answer in answers(exercise, 17):
        assert bare(answer) in key.whole
        assert not telling(answer) or bare(answer) not in sheet.whole
    for n in range(pages):
        assert bare(f"page {n + 1} of {pages}") in sheet.text(n) and bare("treat the propeller") in sheet.text(n)
    assert data.count(b"/FontFile2") >= 1 and b"/Subtype /Image" not in data
    everything = b"\n".join(sheet.stream(n) for n, body in sheet.objects.items() if b"stream\n" in body)
    for answer in (a for a in answers(exercise, 17) if telling(a)):
        assert answer.encode() not in everything + data and answer.encode("utf-16-be") not in everything + data


def test_parts_are_blank_on_the_sheet_and_named_on_the_key(qapp):
    state = new_bench(find_installation("seven-radial-left"))
    sheet, key = (Pdf(pdf_bytes(parts_sheet(state, key=k))[0]).whole for k in (False, True))
    captions = ("thecoupling", "timingdisc", "piston")  # in the titles of the pictures
    for parts in CAPTIONS.values():
        for part in parts:
            assert bare(part) in key
            if part in ("heel", "spring", "backplate", "lock screw", "clamp screw", "pivot", "connecting rod"):
                assert bare(part) not in sheet, captions


def test_no_colour_is_written_at_all(qapp):
    pdf = Pdf(pdf_bytes(handout(new_bench(find_installation("seven-radial-left")), ("breaker", "drive"), "names"))[0])
    for page in pdf.pages:
        (content,) = re.findall(rb"/Contents (\d+) 0 R", page)
        drawn = pdf.stream(int(content))
        # Grey has one number: "0 g", "/CSpg cs 0 scn"; colour would have three.
        assert not re.search(rb"[\d.]+ [\d.]+ [\d.]+ (?:rg|RG|scn|SCN|sc|SC)\b", drawn)
        assert re.search(rb"\b(?:g|G|scn|SCN)\b", drawn)


@pytest.mark.process
@pytest.mark.skipif(shutil.which("pdftoppm") is None, reason="poppler is not installed")
def test_another_reader_sees_the_same(qapp, tmp_path):
    """A second reader, poppler: words selectable in order, fonts embedded, every pixel grey."""
    exercise = find_exercise("gap-wrong")
    paths = tmp_path / "sheet.pdf", tmp_path / "key.pdf"
    for path, make in zip(paths, (worksheet, answer_key), strict=True):
        print_pdf(path, replace(make(exercise, 17), size="letter"))
    sheet, key = (subprocess.run(["pdftotext", p, "-"], capture_output=True, text=True).stdout for p in paths)
    for answer in answers(exercise, 17):
        assert bare(answer) in bare(key)
        assert not telling(answer) or bare(answer) not in bare(sheet)
    fonts = subprocess.run(["pdffonts", paths[0]], capture_output=True, text=True).stdout.splitlines()[2:]
    assert fonts and all(re.search(r"\byes (?:yes|no)\s+yes\b", line) for line in fonts)
    assert "612 x 792 pts (letter)" in subprocess.run(["pdfinfo", paths[0]], capture_output=True, text=True).stdout
    subprocess.run(["pdftoppm", "-r", "40", paths[1], tmp_path / "page"], check=True)
    for picture in tmp_path.glob("page*.ppm"):
        raw = picture.read_bytes().split(b"\n", 3)[3]
        assert raw[0::3] == raw[1::3] == raw[2::3] and min(raw) < 60


# ---------------------------------------------------------------------- the dialog


def test_the_dialog_prints_what_was_chosen(open_window, qtbot, tmp_path):
    window = open_window("seven-radial-left")
    dialog = window.class_paper()
    qtbot.waitUntil(dialog.isVisible)
    assert dialog.exercise.isVisible() and not dialog.labels.isVisible()
    dialog.code.setFocus()
    dialog.code.selectAll()
    QTest.keyClicks(dialog.code, "one, please")
    QTest.mouseClick(dialog.save, Qt.MouseButton.LeftButton)
    assert "whole number" in dialog.problem.text() and dialog.problem.isVisible()
    dialog.code.selectAll()
    QTest.keyClicks(dialog.code, "17")
    for kind in ("worksheet", "key", "parts", "parts-key", "handout"):
        dialog.kind.setCurrentIndex(dialog.kind.findData(kind))
        assert dialog.labels.isVisible() == (kind == "handout")
        assert dialog.save_as(tmp_path / f"{kind}.pdf"), kind
        assert f"Saved {kind}.pdf" in dialog.problem.text()
        assert Pdf((tmp_path / f"{kind}.pdf").read_bytes()).pages
    for check in dialog.pictures.values():
        check.setChecked(False)
    assert not dialog.save_as(tmp_path / "none.pdf") and "at least one picture" in dialog.problem.text()
    assert not (tmp_path / "none.pdf").exists()
    dialog.close()


def test_a_bad_exercise_file_is_one_sentence(open_window, qtbot, tmp_path):
    window = open_window("traced-six")
    dialog = window.class_paper()
    assert set(dialog.pictures) == {"breaker", "lead"}
    (tmp_path / "x.json").write_text("{}", encoding="utf-8")
    count = dialog.exercise.count()
    dialog.add_file(tmp_path / "x.json")
    assert "x.json" in dialog.problem.text() and dialog.exercise.count() == count
    dialog.close()
