"""Typed, pasted and opened cells of a table of lift: what is read, and all that is refused at once."""

from __future__ import annotations

import pytest

from magview.spec.base import SpecError
from magview.spec.lift_cells import cut, read_cells
from tests.wording import says

ROWS = (("-4", "0,25"), ("−2.5°", "13 thou"), ("0", "0.5 mm"), ("", ""), ("2", "1/64 in"))
MM = (0.25, 13 * 0.0254, 0.5, 25.4 / 64)
"""An inch is 25.4 mm (BIPM, SI Brochure), a thou a thousandth of it."""


def test_cells_are_read_each_in_the_unit_it_names():
    table, bad = read_cells(ROWS, "mm")
    assert bad == ()
    assert table.angle == (-4.0, -2.5, 0.0, 2.0) and table.lines == (1, 2, 3, 5)
    assert table.reading == pytest.approx(MM)


def test_a_bare_reading_is_in_the_unit_chosen():
    assert read_cells([("0", "13"), ("1", "0.5 mm")], "thou")[0].reading == pytest.approx((0.3302, 0.5))


def test_all_that_is_wrong_is_told_at_once():
    rows = [("0", "x"), ("", "1"), ("2", ""), ("three", "1.5 ells"), ("5", "9e9"), ("6", "0.6")]
    table, bad = read_cells(rows, "mm")
    assert [(cell.row, cell.column) for cell in bad] == [(0, 1), (1, 0), (2, 1), (3, 0), (3, 1), (4, 1)]
    assert table.angle == (6.0,)
    assert bad[1].sentence == says("the angle is missing: type it, or empty the row")
    assert bad[2].sentence == says("the reading is missing: type it, or empty the row")


@pytest.mark.parametrize(("decimal", "wrong"), [(".", "0,3"), (",", "0.3")])
def test_the_other_decimal_sign_is_refused_where_one_is_chosen(decimal, wrong):
    _, bad = read_cells([("1", wrong), ("2", f"0{decimal}3")], "mm", decimal)
    assert [(cell.row, cell.column) for cell in bad] == [(0, 1)]


@pytest.mark.parametrize(
    ("text", "cells"),
    [
        ("1\t0,25\n2\t0,5", (("1", "0,25"), ("2", "0,5"))),
        ("angle;lift\n1°;0,25 mm\nnot read;\n2;0,5", (("1°", "0,25mm"), ("not read", ""), ("2", "0,5"))),
        ("1 0.25 mm\n2 0.5 mm", (("1", "0.25mm"), ("2", "0.5mm"))),
        ('"1";"0.25"\n2;0.5"', (("1", "0.25"), ("2", '0.5"'))),
        ("0.1\n0.2", (("0.1",), ("0.2",))),
    ],
)
def test_a_text_is_cut_into_its_columns(text, cells):
    assert cut(text, None, "lobe.csv") == cells


def test_commas_that_could_be_either_are_asked_about():
    with pytest.raises(SpecError) as refused:
        cut("0,25\n0,30", None, "lobe.csv")
    assert str(refused.value) == says(
        "{source}: its commas may be decimal signs or stand between columns: choose the decimal sign",
        source="lobe.csv",
    )
    assert cut("0,25\n0,30", ",", "lobe.csv") == (("0,25",), ("0,30",))
    assert cut("0,25\n0,30", ".", "lobe.csv") == (("0", "25"), ("0", "30"))


def test_a_text_without_numbers_is_refused():
    with pytest.raises(SpecError, match=r"^words\.csv: has no row of numbers"):
        cut("nothing but words\n", None, "words.csv")
