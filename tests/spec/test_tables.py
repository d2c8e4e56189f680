"""Tables for other programs: read back by another reader, and harmless to a spreadsheet."""

from __future__ import annotations

import csv
import io

from magview.spec.tables import csv_text


def test_numbers_read_back_to_the_last_bit_and_what_is_not_there_is_empty():
    rows = [["a", 0.1 + 0.2, 7, True, False, None, float("nan"), "x, y", 'in "quotes"', "two\nlines"]]
    (read,) = csv.reader(io.StringIO(csv_text(rows), newline=""))
    assert float(read[1]) == 0.1 + 0.2 and read[2:7] == ["7", "true", "false", "", ""]
    assert read[7:] == ["x, y", 'in "quotes"', "two\nlines"]
    assert csv_text([["a"], ["b"]]) == "a\r\nb\r\n"


def test_no_cell_is_run_by_a_spreadsheet():
    cells = ["=1+1", "@x", "+5°", "\tx", "-2+3", "-2.5", -2.5, "Zoë", None]
    (read,) = csv.reader(io.StringIO(csv_text([cells]), newline=""))
    assert read == ["'=1+1", "'@x", "'+5°", "'\tx", "'-2+3", "-2.5", "-2.5", "Zoë", ""]
