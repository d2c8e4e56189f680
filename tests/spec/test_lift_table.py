"""Lift tables as people write them: any usual separator, either decimal sign, and one sentence for the rest."""

import codecs
import re

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from magview.spec.base import SpecError
from magview.spec.lift_table import MAX_BYTES, MAX_ROWS, LiftTable, parse_lift_table, read_lift_table
from tests.counts import examples, sampled
from tests.wording import says

ROWS = [(-4.0, 0.0), (-2.5, 0.125), (0.0, 0.5), (2.5, 0.125), (4.0, 0.0)]
ANGLES, READINGS = tuple(a for a, _ in ROWS), tuple(s for _, s in ROWS)


def written(separator: str, decimal: str = ".", shape: str = "{:g}", rows=ROWS) -> str:
    def number(value: float) -> str:
        return shape.format(value).replace(".", decimal)

    return "".join(f"{number(a)}{separator}{number(s)}\n" for a, s in rows)


def refusal(text: str, **more) -> str:
    with pytest.raises(SpecError) as caught:
        parse_lift_table(text, **more)
    told = str(caught.value)
    assert told.isprintable() and len(told) <= 600 and "Error" not in told
    return told


def check(table: LiftTable) -> None:
    assert (table.angle, table.reading) == (ANGLES, READINGS)


# ---------------------------------------------------------------------- what is read


@pytest.mark.parametrize(
    ("separator", "decimal", "name"),
    [
        (";", ".", "semicolon"),
        (";", ",", "semicolon"),
        (" ; ", ",", "semicolon"),
        ("\t", ".", "tab"),
        ("\t", ",", "tab"),
        (" ", ".", "space"),
        ("    ", ".", "space"),
        (" ", ",", "space"),
        (",", ".", "comma"),
        (", ", ".", "comma"),
        (" , ", ".", "comma"),
        (", ", ",", "comma"),
    ],
)
@pytest.mark.parametrize("shape", ["{:g}", "{:.3f}", "{:+.3f}"])
def test_separators_and_decimal_signs_are_found_out(separator, decimal, name, shape):
    table = parse_lift_table(written(separator, decimal, shape))
    check(table)
    assert (table.separator, table.decimal, table.columns, table.heading) == (name, decimal, 2, ())
    check(parse_lift_table(written(separator, decimal, shape), decimal=decimal))


@pytest.mark.parametrize("end", ["\n", "\r\n", "\r", "\n\n", " \n"])
def test_line_ends_and_empty_lines_are_of_no_account(end):
    check(parse_lift_table(written(";").replace("\n", end)))


@pytest.mark.parametrize(
    ("heading", "lines"),
    [
        ("angle;lift\n", 1),
        ("Winkel (°);Hub in mm\n", 1),
        ("# made on the bench\nangle;lift\n", 1),
        ("sep=;\nangle;lift\ndeg;mm\n", 3),
        ("\ufeffangle;lift\n", 1),
        ('"angle";"lift"\n', 1),
    ],
)
def test_what_stands_above_the_rows_is_heading(heading, lines):
    table = parse_lift_table(heading + written(";"))
    check(table)
    assert len(table.heading) == lines
    assert table.lines[0] == heading.count("\n") + 1  # for what is said of a line later


def test_ornaments_of_numbers():
    check(parse_lift_table('"-4.0";"0"\n−2.5°;+.125\n0;5e-1\n2,5;1.25E-1\n4.;0.\n'.replace("2,5", "2.5")))


def test_other_columns_may_be_named():
    text = "".join(f"{i};{s};{a}\n" for i, (a, s) in enumerate(ROWS))
    table = parse_lift_table(text, columns=(2, 1))
    check(table)
    assert table.columns == 3


def test_whole_numbers_with_one_comma_are_two_columns():
    """A lone number tells no lift, so nothing else can be meant."""
    table = parse_lift_table("10,0\n12,5\n14,20\n16,5\n18,0\n")
    assert (table.angle, table.reading) == ((10, 12, 14, 16, 18), (0, 5, 20, 5, 0))


# ---------------------------------------------------------------------- what is asked and refused


def test_commas_that_may_be_either_are_asked_about():
    text = written(",", ",", "{:.3f}")  # -4,000,0,000
    assert "its commas may be decimal signs or stand between columns: say which" in refusal(text)
    assert parse_lift_table(text, decimal=".").columns == 4
    assert "is not a number" in refusal(text, decimal=",")


@pytest.mark.parametrize(
    ("text", "told"),
    [
        ("", "has 0 rows of numbers; it must have at least 5"),
        ("angle;lift\n", "has 0 rows"),
        ("1°; 0.1 mm\n" * 9, "“1°; 0.1 mm” cannot be read: write numbers alone, without their units"),
        ("1;2\n" * 4, "has 4 rows of numbers; it must have at least 5"),
        ("1;2\n" * 3 + "1;abc\n" + "1;2\n" * 9, "line 4: “1;abc” is not a row of numbers"),
        ("1;2\n" * 9 + "average;7\n", "line 10: “average;7” is not a row of numbers"),
        (
            "1;2\n" * 5 + "1;\n",
            says(
                "{where} has no reading in column {column} (columns separated by {separator})",
                where="line 6",
                column=2,
                separator="semicolon",
            ),
        ),
        (
            "1\n" * 6,
            says(
                "{where} has no reading in column {column} (columns separated by {separator})",
                where="line 1",
                column=2,
                separator="space",
            ),
        ),
        (";2\n" * 6, "line 1 has no angle in column 1"),
        ("1;2.3.4\n" * 6, "line 1: “2.3.4” is not a number"),
        ("1;2-3\n" * 6, "line 1: “2-3” is not a number"),
        ("1;1,5\n2;1.5\n" * 6, "both points and commas in its numbers: say which is the decimal sign"),
        ("1;1.234,5\n" * 6, "both points and commas"),
        ("1;1e999\n" * 6, "line 1: 1e999 is too large"),
        ("1;2000000\n" * 6, "too large; at most 1e+06"),
        ("1;2\n" * (MAX_ROWS + 1), "has more than 20000 rows"),
        ("x\n" * 200, "has no row of numbers in its first 100 lines"),
        ("1;2\n" * (MAX_BYTES // 4 + 1), "is longer than 2 million characters"),
    ],
)
def test_refusal_says_what_where_and_what_is_allowed(text, told):
    assert told in refusal(text)
    assert refusal(text, source="lift.csv").startswith("lift.csv: ")


def test_the_decimal_sign_as_told_is_kept_to():
    assert "is not a number" in refusal(written(";", "."), decimal=",")
    assert "is not a number" in refusal(written(";", ","), decimal=".")


@pytest.mark.parametrize("more", [{"decimal": ":"}, {"columns": (0, 0)}, {"columns": (-1, 1)}, {"columns": (0, 200)}])
def test_what_cannot_be_asked_for_is_refused(more):
    assert "must be" in refusal(written(";"), **more)


@pytest.mark.parametrize("filler", sampled(["1", " ", ",", ";", "\t", "1 ", "-", ".", "e", ", ", "°"], 4))
def test_long_rows_take_no_time(filler):
    """Whatever cost grows with the square of a row's length would run into the time-out here."""
    row = "1;2" + filler * (1_900_000 // len(filler))
    for text in (f"{row}\n" + "1;2\n" * 6, row.replace(";", " ") + "\n" + "1 2\n" * 6):
        told = ""
        try:
            assert len(parse_lift_table(text).angle) == 7
        except SpecError as error:
            told = str(error)
        assert len(told) <= 600


pieces = st.lists(
    st.one_of(
        st.sampled_from(
            ["1", "0", "-2.5", "3,5", "1e3", "°", "−", '"', "#", "nan", "inf", "x", "\ufeff", "\x00", "\ud800"]
        ),
        st.sampled_from([" ", "\t", ";", ",", ".", ", ", "\n", "\n", "\n", "\r\n", "\r", "\xa0", "\u2028"]),
        st.text(max_size=3),
        st.floats(-100, 100).map(lambda v: f"{v:.3f}"),
    ),
    max_size=80,
).map("".join)


@settings(max_examples=examples(400))
@given(pieces, st.sampled_from([None, ".", ","]))
def test_any_text_is_read_or_refused_in_one_sentence(text, decimal):
    table, told = None, "taken"
    try:
        table = parse_lift_table(text, decimal)
    except SpecError as error:
        told = str(error)
    assert told.isprintable() and 0 < len(told) <= 600
    if table is None:
        return
    assert all(line.isprintable() for line in table.heading)
    assert len(table.angle) == len(table.reading) == len(table.lines) >= 5
    assert all(abs(v) <= 1e6 for v in (*table.angle, *table.reading))
    assert list(table.lines) == sorted(set(table.lines))


@settings(max_examples=examples(200))
@given(
    st.lists(st.tuples(st.floats(-999, 999), st.floats(-99, 99)), min_size=5, max_size=12),
    st.sampled_from(
        [(";", "."), (";", ","), ("\t", ","), ("\t", "."), (" ", "."), (" ", ","), (",", "."), (", ", ",")]
    ),
    st.integers(1, 6),
)
def test_what_is_written_is_read(rows, style, digits):
    separator, decimal = style
    table = parse_lift_table(written(separator, decimal, f"{{:.{digits}f}}", rows))
    assert table.angle == tuple(float(f"{a:.{digits}f}") for a, _ in rows)
    assert table.reading == tuple(float(f"{s:.{digits}f}") for _, s in rows)


# ---------------------------------------------------------------------- files


@pytest.mark.parametrize(
    "encode",
    [
        lambda t: t.encode(),
        lambda t: codecs.BOM_UTF8 + t.encode(),
        lambda t: t.encode("utf-16"),
        lambda t: t.encode("latin-1"),
    ],
)
def test_files_in_the_usual_encodings(tmp_path, encode):
    path = tmp_path / "lift.csv"
    path.write_bytes(encode("Winkel (°);Hub\n" + written(";", ",")))
    table = read_lift_table(path)
    check(table)
    assert "°" in table.heading[0]


def test_files_that_cannot_be_read_are_refused(tmp_path):
    big = tmp_path / "big.csv"
    big.write_bytes(b"1;2\n" * (MAX_BYTES // 4 + 1))
    bad = tmp_path / "bad.csv"
    bad.write_bytes(b"\xff\xfe1")
    cases = [(tmp_path / "none.csv", "No such file"), (tmp_path, "it is not a file")]
    cases += [(big, "larger than 2 MB"), (bad, "rows of numbers")]
    for path, told in cases:
        with pytest.raises(SpecError, match=re.escape(told)) as caught:
            read_lift_table(path)
        assert str(caught.value).startswith(f"{path.name}: ")
