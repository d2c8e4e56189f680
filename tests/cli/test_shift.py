"""``magview shift``: couplings typed in, both magnetos, verdicts, and what goes to standard output."""

from __future__ import annotations

import io
import json
import subprocess
import sys
from types import SimpleNamespace

import pytest

from magview.physics.engine.coupling import synchronise
from magview.spec.library import find_installation, resources
from tests.cli.told import run
from tests.ui.paper.pdf_reader import Pdf, bare

TYPED = ["--magneto-teeth", "17", "--drive-teeth", "18", "--rotor-turns-per-crank-turn", "1"]
STEP = 360 / 306
"""Of 17 and 18 teeth at crank speed: 1/17 − 1/18 = 1/306 of a turn (plain arithmetic)."""

MOVE = ["magneto_teeth", "disc_teeth", "rotor_shift_deg", "crank_advance_deg", "result_btdc_deg", "residual_deg"]


def test_json_carries_inputs_limits_tolerance_and_verdict(capsys):
    code, out, err = run(capsys, "shift", "seven-radial-left", "--reads", "20", "--json")
    data, of = json.loads(out), find_installation("seven-radial-left")
    assert (code, err) == (0, "")
    assert list(data["moves"][0]) == MOVE
    assert {name: value for name, value in data.items() if name != "moves"} == {
        "name": of.magneto.name,
        "magneto_teeth": of.coupling.magneto_teeth,
        "drive_teeth": of.coupling.drive_teeth,
        "rotor_turns_per_crank_turn": of.rotor_turns_per_crank_turn,
        "rotation": of.magneto.rotation,
        "timing_tolerance_deg": of.engine.timing_tolerance_deg,
        "synchronising_tolerance_deg": of.engine.synchronising_tolerance_deg,
        "reads_btdc_deg": 20.0,
        "wanted_btdc_deg": of.engine.firing_btdc_deg.left,
        "move": 1,
        "within_tolerance": True,
    }


@pytest.mark.parametrize(("tolerance", "code", "verdict"), [("1", 0, True), ("0.2", 1, False), (None, 0, None)])
def test_a_typed_coupling_is_judged_by_a_typed_tolerance(capsys, tolerance, code, verdict):
    """2° late is nearest by two steps: 2·1.176° − 2° = 0.353° early."""
    given = [] if tolerance is None else ["--tolerance", tolerance]
    argv = ["shift", *TYPED, "--reads", "25", "--wanted", "27", *given]
    done, out, _ = run(capsys, *argv, "--json")
    data = json.loads(out)
    assert (done, data["within_tolerance"]) == (code, verdict)
    assert data["moves"][0]["residual_deg"] == pytest.approx(2 * STEP - 2)
    assert (data["rotation"], data["name"]) == (None, None)
    done, out, _ = run(capsys, *argv)
    assert done == code
    if verdict is False:
        assert "The nearest this coupling comes is 0.35° of crank early, outside the tolerance of 0.2°." in out
        assert f"Nearest on either side: {25 + 2 * STEP:.2f}° or {25 + STEP:.2f}°." in out


def test_a_typed_rotation_gives_the_viewpoint_and_a_name_is_said(capsys):
    _, out, _ = run(
        capsys, "shift", *TYPED, "--reads", "26", "--wanted", "27", "--rotation", "clockwise", "--name", "Left one"
    )
    assert out.startswith("Left one: fires at 26°, wanted 27°")
    first = next(line for line in out.splitlines() if line.startswith("   1 "))
    assert (
        "A 1 tooth against rotation (anticlockwise seen from the drive end); B 1 tooth with rotation (clockwise"
        in first
    )


def test_after_top_dead_centre_is_said_and_never_a_bare_minus(capsys):
    _, out, _ = run(capsys, "shift", *TYPED, "--reads=-3", "--wanted=-2")
    assert out.startswith("Fires at 3.00° after top dead centre, wanted 2.00° after top dead centre.")
    first = next(line for line in out.splitlines() if line.startswith("   1 "))
    assert first.split("   ")[2].endswith("° after TDC")
    assert "° after TDC" in first and "fires at" in out


@pytest.mark.parametrize(("move", "code"), [("1", 0), ("2", 0), ("3", 1)])
def test_a_move_asked_for_is_judged_by_itself(capsys, move, code):
    """Steps of 1.176°: from 25.1° to 25°, 1° allowed, the third best is 1.276° early."""
    argv = ["shift", *TYPED, "--reads", "25.1", "--wanted", "25", "--tolerance", "1.1", "--move", move]
    done, out, _ = run(capsys, *argv)
    assert done == code
    assert "the nearest this coupling comes" not in out
    said = "outside the tolerance of 1.1°" if code else "within the tolerance of 1.1° of crank"
    assert f"Move {move}: " in out and said in out
    assert json.loads(run(capsys, *argv, "--json")[1])["within_tolerance"] is (code == 0)


def test_both_magnetos_come_within_both_tolerances(capsys):
    of = find_installation("seven-radial-left")
    wanted, engine = of.engine.firing_btdc_deg, of.engine
    argv = ["shift", "seven-radial-left", f"--left-reads={wanted.left - 3.3}", f"--right-reads={wanted.right + 5.1}"]
    code, out, _ = run(capsys, *argv, "--json")
    data = json.loads(out)
    assert (code, data["within_tolerance"]) == (0, True)
    result = synchronise(
        data["left"]["move"]["result_btdc_deg"],
        data["right"]["move"]["result_btdc_deg"],
        wanted_left_deg=wanted.left,
        wanted_right_deg=wanted.right,
        timing_tolerance_deg=engine.timing_tolerance_deg,
        synchronising_tolerance_deg=engine.synchronising_tolerance_deg,
    )
    assert result.left_ok and result.right_ok and result.synchronised
    assert data["difference_deg"] == pytest.approx(result.difference_deg)
    _, text, _ = run(capsys, *argv)
    for side in ("left", "right"):
        assert f"then fires at {data[side]['move']['result_btdc_deg']:.2f}°" in text


def test_both_typed_in_and_no_pair_that_does(capsys):
    """Steps of 1.176°: 0.5° late and 0.5° early stay 1.0° or 0.176° apart."""
    both = [*TYPED, "--left-reads", "24.5", "--right-reads", "25.5", "--wanted", "25", "--tolerance", "0.6"]
    code, out, _ = run(capsys, "shift", *both, "--synchronising-tolerance", "1", "--json")
    data = json.loads(out)
    assert code == 0
    assert [data[side]["move"]["magneto_teeth"] for side in ("left", "right")] == [0, 0]
    code, out, _ = run(capsys, "shift", *both, "--synchronising-tolerance", "0.1")
    assert code == 1
    assert (
        "No pair of moves brings each within 0.6° of where it should fire and both within 0.1° of one another." in out
    )


@pytest.mark.parametrize(
    ("argv", "says"),
    [
        ([*TYPED, "--wanted", "25"], "--left-reads and --right-reads"),
        ([*TYPED, "--left-reads", "25", "--wanted", "25"], "both --left-reads and --right-reads"),
        ([*TYPED, "--left-reads", "25", "--right-reads", "25", "--wanted", "25"], "--synchronising-tolerance"),
        ([*TYPED, "--reads", "25"], "--wanted is needed"),
        ([*TYPED, "--reads", "25", "--wanted", "27", "--tolerance", "0"], "--tolerance is 0"),
        ([*TYPED, "--reads", "25", "--wanted", "27", "--tolerance", "31"], "at most 30"),
        ([*TYPED, "--reads", "25", "--wanted", "27", "--rotation", "left"], "invalid choice"),
        ([*TYPED, "--reads", "25", "--wanted", "27", "--move", "99"], "moves 1 to 20"),
        ([*TYPED, "--reads", "25", "--wanted", "27", "--pdf", "-", "--html", "-"], "one thing at a time"),
        ([*TYPED, "--reads", "25", "--wanted", "27", "--opening-change", "1", "--html", "-"], "read the lamp again"),
        (["seven-radial-left", "--reads", "25", "--tolerance", "1"], "not both"),
        (["seven-radial-left", "--reads", "25", "--name", "x"], "not both"),
        (["seven-radial-left", "--left-reads", "25", "--right-reads", "25", "--move", "2"], "for one magneto"),
        (["seven-radial-left", "--left-reads", "25", "--right-reads", "99"], "--right-reads is 99"),
        ([*TYPED, "--reads", "-65", "--wanted", "27"], "stroke, mark and finger first"),
        (["seven-radial-left", "--reads", "20", "--opening-change", "1", "--pdf", "x.pdf"], "read the lamp again"),
        (["seven-radial-left", "--left-reads", "25", "--right-reads", "25", "--opening-change", "1"], "one magneto"),
        (["traced-six-single", "--left-reads", "25", "--right-reads", "25"], "single magneto"),
        (["seven-radial-left", "--reads", "20", "--json", "--pdf", "-"], "one thing at a time"),
    ],
)
def test_bad_input_is_exit_2_and_one_sentence(capsys, argv, says):
    code, out, err = run(capsys, "shift", *argv)
    assert (code, out) == (2, "")
    assert says in err
    assert err.count("\n") == 1


def test_contacts_set_anew_put_the_reading_out_of_date(capsys):
    """1.5° of rotor later at one and a half times crank speed is 1° of crank less (plain gearing)."""
    typed = ["--magneto-teeth", "17", "--drive-teeth", "18", "--rotor-turns-per-crank-turn", "3/2", "--wanted", "20"]
    code, out, _ = run(capsys, "shift", *typed, "--reads", "21", "--tolerance", "1", "--opening-change", "1.5")
    assert code == 1
    assert "21° is out of date" in out and "should now read 20.00°" in out
    code, out, _ = run(capsys, "shift", *typed, "--reads", "21", "--opening-change", "1.5", "--json")
    data = json.loads(out)
    assert (data["reads_btdc_deg"], data["read_before_btdc_deg"], code) == (20.0, 21.0, 1)


def test_more_than_a_quarter_turn_is_planned_once_it_was_looked_at(capsys):
    code, out, _ = run(capsys, "shift", *TYPED, "--reads", "-65", "--wanted", "27", "--checked")
    assert code == 0 and "Check stroke, mark and finger first" in out
    assert "finger" not in run(capsys, "shift", *TYPED, "--reads", "22", "--wanted", "27")[1]


def test_teeth_and_ratio_are_enough_for_a_plan_as_html_and_on_paper(capsys, tmp_path, qapp):
    argv = ["shift", *TYPED, "--reads", "25", "--wanted", "27"]
    code, out, _ = run(capsys, *argv, "--html", "-")
    assert code == 0 and out.startswith("<!DOCTYPE html>") and "Rotation not given" in out
    assert run(capsys, *argv, "--rotation", "clockwise", "--pdf", str(tmp_path / "x.pdf"))[0] == 0
    assert (tmp_path / "x.pdf").read_bytes().startswith(b"%PDF-")


@pytest.mark.parametrize("paper", ["a4", "letter"])
@pytest.mark.parametrize(
    "of",
    [
        ["seven-radial-left"],
        [*TYPED, "--wanted", "27", "--tolerance", "1", "--synchronising-tolerance", "1", "--rotation", "clockwise"],
    ],
)
def test_both_magnetos_are_a_page_each(capsys, tmp_path, qapp, of, paper):
    out = tmp_path / "both.pdf"
    argv = ["shift", *of, "--left-reads", "23.7", "--right-reads", "30.3", "--pdf", str(out), "--paper", paper]
    code, words, _ = run(capsys, *argv)
    assert code == 0 and "Moved together" in words
    printed = Pdf(out.read_bytes())
    left, right = map(printed.text, range(len(printed.pages)))
    assert bare("left magneto") in left and bare("right magneto") not in left
    assert bare("right magneto") in right and bare("left magneto") not in right


def test_no_pair_that_does_has_no_plan(capsys, tmp_path):
    both = [*TYPED, "--left-reads", "24.5", "--right-reads", "25.5", "--wanted", "25", "--tolerance", "0.6"]
    out = tmp_path / "both.pdf"
    code, _, err = run(capsys, "shift", *both, "--synchronising-tolerance", "0.1", "--pdf", str(out))
    assert code == 2 and "no pair of moves" in err and not out.exists()


# ---------------------------------------------------------------------- standard input and output


def given_on_stdin(monkeypatch, data: bytes) -> None:
    monkeypatch.setattr(sys, "stdin", SimpleNamespace(buffer=io.BytesIO(data)))


def test_a_file_is_read_from_standard_input(capsys, monkeypatch):
    raw = (resources() / "magnetos" / "seven-radial.json").read_bytes()
    argv = ("readings", "--backplate-deg", "0", "--screw-deg", "0", "--json")
    named = run(capsys, *argv, "seven-radial")
    given_on_stdin(monkeypatch, raw)
    assert run(capsys, *argv, "-") == named
    given_on_stdin(monkeypatch, b"{}")
    code, out, err = run(capsys, *argv, "-")
    assert (code, out) == (2, "") and "standard input" in err
    given_on_stdin(monkeypatch, (resources() / "engines" / "seven-radial.json").read_bytes())
    assert run(capsys, "engine", "-", "--json") == run(capsys, "engine", "seven-radial", "--json")


def test_what_goes_to_standard_output_goes_there_alone(capsys):
    code, out, err = run(capsys, "sheet", "seven-radial-left", "--csv", "-")
    words = run(capsys, "sheet", "seven-radial-left")
    assert (code, err) == (words[0], words[1])
    assert out.count(",") > 50 and err not in out
    code, out, err = run(capsys, "sheet", "seven-radial-left", "--csv", "-", "--html", "-")
    assert (code, out) == (2, "") and "one thing at a time" in err


@pytest.mark.process
def test_a_plan_on_paper_goes_to_standard_output():
    words = ["shift", "seven-radial-left", "--reads", "22", "--pdf", "-"]
    done = subprocess.run([sys.executable, "-m", "magview", *words], capture_output=True, timeout=60, check=True)
    assert done.stdout.startswith(b"%PDF-") and done.stdout.rstrip().endswith(b"%%EOF")
    assert "Moves, best first" in done.stderr.decode()
