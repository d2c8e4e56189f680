"""The command line as a contract: names, exit codes, one sentence for bad input."""

from __future__ import annotations

import json
import math
import os
import subprocess
import sys
from pathlib import Path

import pytest

from magview.bench.actions import TightenLock, TurnScrew
from magview.bench.advised import advised, advised_words
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.bench.state import readings
from magview.spec.library import find_engine, find_magneto
from tests.cli.told import run
from tests.wording import says


def test_readings_as_json_has_the_contracts_names_and_full_precision(capsys):
    code, out, err = run(capsys, "readings", "seven-radial", "--backplate-deg", "0", "--screw-deg", "0", "--json")
    assert (code, err) == (0, "")
    data = json.loads(out)
    assert list(data) == [
        "opens_deg", "closes_deg", "max_gap_mm", "e_gap_error_deg", "mark_offset_mm", "dwell_deg", "within_limits",
    ]  # fmt: skip
    # The shipped file's designed setting: opens at its E-gap, 11°, with its gap.
    assert data["opens_deg"] == pytest.approx([11.0, 101.0, 191.0, 281.0], abs=1e-9)
    assert data["max_gap_mm"] == pytest.approx([0.33] * 4, abs=1e-12)
    assert data["within_limits"] is True


def test_out_of_limits_is_exit_1_and_what_never_opens_is_null(capsys):
    code, out, _ = run(capsys, "readings", "four-opposed", "--backplate-deg=-3", "--screw-deg=150", "--json")
    assert code == 1
    assert json.loads(out)["within_limits"] is False
    path_args = ("readings", "seven-radial", "--backplate-deg", "0", "--screw-deg", "60")
    code, out, _ = run(capsys, *path_args, "--json")
    data = json.loads(out)
    assert code == 1
    # 0.5 mm of throw at 60° brings the stop 0.433 mm up, past the 0.33 mm gap: the contacts never open.
    assert data["opens_deg"] == [None] * 4
    assert data["max_gap_mm"] == [0.0] * 4
    code, text, _ = run(capsys, *path_args)
    assert "OUT OF LIMITS" in text
    assert text.count("(never: they stay closed)") == 4
    # 0.5 mm of throw brings the stop down instead, and the heel never lets the contacts meet: they stay open.
    _, text, _ = run(capsys, "readings", "seven-radial", "--backplate-deg", "0", "--screw-deg=-60")
    assert text.count("(never: they stay open)") == 4


def test_negative_angles_are_taken_as_they_are_written(capsys):
    for written in ("-1.5", "-1,5", "-1.5°", "−1.5"):
        code, out, _ = run(
            capsys, "readings", "seven-radial", "--backplate-deg", written, "--screw-deg", "0", "--json"
        )
        assert json.loads(out)["opens_deg"][0] == pytest.approx(11.0 - 1.5), written
        assert code == 1


def test_adjust_then_readings(capsys):
    code, out, _ = run(capsys, "adjust", "nine-radial", "--gap", "11.5thou", "--json")
    setting = json.loads(out)
    assert code == 0
    assert setting["reachable"] is True
    code, out, _ = run(
        capsys, "readings", "nine-radial", "--json",
        f"--backplate-deg={setting['backplate_deg']!r}", f"--screw-deg={setting['screw_deg']!r}",
    )  # fmt: skip
    data = json.loads(out)
    assert code == 0
    assert data["max_gap_mm"][0] == pytest.approx(11.5 * 0.0254, abs=1e-9)
    assert data["e_gap_error_deg"][0] == pytest.approx(0.0, abs=1e-6)


def test_adjust_out_of_reach_is_exit_1_and_says_why(capsys):
    code, out, _ = run(capsys, "adjust", "seven-radial", "--gap", "0.6mm", "--json")
    assert code == 1
    data = json.loads(out)
    assert data["reachable"] is False
    assert data["backplate_deg"] is None
    assert "nearest gap" in data["reason"]


def test_a_gap_outside_the_limits_is_answered_and_said_to_be_outside(capsys):
    magneto = find_magneto("seven-radial")
    low, high = magneto.gap_limits_mm
    for gap, code in ((high + 0.05, 1), (high, 0), ((low + high) / 2, 0)):
        done, out, _ = run(capsys, "adjust", "seven-radial", "--gap", f"{gap!r}mm", "--json")
        data = json.loads(out)
        assert (done, data["reachable"], data["within_limits"]) == (code, True, code == 0)
        assert data["gap_limits_mm"] == [low, high] and data["gap_mm"] == pytest.approx(gap)
        assert data["name"] == magneto.name
        done, out, _ = run(capsys, "adjust", "seven-radial", "--gap", f"{gap!r}mm")
        assert done == code
        assert ("OUT OF LIMITS: gap of every lobe" if code else "WITHIN LIMITS") in out


def test_the_orders_of_adjust_allow_for_the_screw_s_creep_as_the_window_s_do(capsys):
    """Set, then tightened on the bench: where it then stands gives the gap asked for."""
    magneto = find_magneto("seven-radial")
    gap, creep = magneto.designed_setting.gap_mm, magneto.condition.screw_creep_deg
    assert creep != 0
    _, out, _ = run(capsys, "adjust", "seven-radial", "--gap", f"{gap!r}mm", "--json")
    data = json.loads(out)
    assert data["set_screw_deg"] + creep == pytest.approx(data["screw_deg"], abs=1e-9)
    state = new_bench(magneto)
    for act in (TurnScrew(data["set_screw_deg"]), TightenLock(True)):
        state = apply(state, act)
    assert float(readings(state).max_gap_mm[0]) == pytest.approx(gap, abs=1e-9)
    set_to = f"{data['set_screw_deg']:+.2f}°"
    assert f"set to {set_to}, tightening" in run(capsys, "adjust", "seven-radial", "--gap", f"{gap!r}mm")[1]
    assert f"that brings the contact screw from {set_to} to" in advised_words(
        new_bench(magneto), advised(new_bench(magneto), gap)
    )


def test_shift_by_hand_and_by_installation_agree(capsys):
    by_hand = ["--magneto-teeth", "17", "--drive-teeth", "18", "--rotor-turns-per-crank-turn", "7/8"]
    code, out, _ = run(capsys, "shift", *by_hand, "--reads", "23", "--wanted", "27", "--json")
    assert code == 0
    moves = json.loads(out)["moves"]
    assert list(moves[0]) == [
        "magneto_teeth", "disc_teeth", "rotor_shift_deg", "crank_advance_deg", "result_btdc_deg", "residual_deg",
    ]  # fmt: skip
    # 4° of crank is 3.5° of rotor; a vernier step is 360/306 = 1.176°: three steps come nearest.
    assert (moves[0]["magneto_teeth"], moves[0]["disc_teeth"]) == (3, -3)
    assert moves[0]["rotor_shift_deg"] == pytest.approx(3 * 360 / 306)
    code, out, _ = run(capsys, "shift", "seven-radial-left", "--reads", "23", "--wanted", "27", "--json")
    assert code == 0
    assert json.loads(out)["moves"] == moves
    code, text, _ = run(capsys, "shift", "seven-radial-left", "--reads", "23")
    assert says("{move} (anticlockwise seen from the drive end)", move="3 teeth with rotation") in text
    for rotor in (
        360 / 17,
        360 / 18,
        360 / 306,
    ):  # a tooth of each face, and one of both; 7/8 rotor turns a crank turn
        assert f"{rotor:.3f}° of rotor = {rotor * 8 / 7:.3f}° of crank" in text
    assert "one tooth at a time" in text


def test_shift_that_nothing_reaches_is_exit_1(capsys, tmp_path):
    from magview.spec.files import write_model
    from magview.spec.library import find_installation

    installation = find_installation("seven-radial-left")
    coarse = installation.coupling.model_copy(update={"magneto_teeth": 4, "drive_teeth": 4})
    write_model(tmp_path / "coarse.json", installation.model_copy(update={"coupling": coarse}))
    code, text, _ = run(capsys, "shift", str(tmp_path / "coarse.json"), "--reads", "22", "--wanted", "25")
    assert code == 1
    assert "outside the tolerance" in text


def test_engine_as_json(capsys):
    code, out, _ = run(capsys, "engine", "four-opposed", "--json")
    data = json.loads(out)
    assert code == 0
    assert list(data) == ["top_dead_centre_deg", "firing_deg", "firing_btdc_deg"]
    wanted = find_engine("four-opposed").firing_btdc_deg
    assert data["firing_btdc_deg"]["left"] == pytest.approx([wanted.left] * 4)
    assert data["firing_btdc_deg"]["right"] == pytest.approx([wanted.right] * 4)
    assert sorted(data["top_dead_centre_deg"]) == [0.0, 180.0, 360.0, 540.0]  # four cylinders, evenly
    assert len(data["firing_deg"]["left"]) == len(data["firing_deg"]["right"]) == 4
    code, out, _ = run(capsys, "engine", "four-opposed")
    assert code == 0
    assert out.count(f"{wanted.left:.2f}° before top") == 4


@pytest.mark.parametrize(
    ("argv", "says"),
    [
        (["shift", "--reads", "22", "--wanted", "25"], "without an INSTALLATION"),
        (["shift", "seven-radial-left", "--magneto-teeth", "3", "--reads", "22"], "not both"),
        (
            [
                "shift",
                "--magneto-teeth",
                "0",
                "--drive-teeth",
                "2",
                "--rotor-turns-per-crank-turn",
                "1",
                "--reads",
                "1",
                "--wanted",
                "1",
            ],
            "0 teeth",
        ),
        (["shift", "--magneto-teeth", "x", "--reads", "1"], "whole number"),
        (["shift", "--rotor-turns-per-crank-turn", "1/0", "--reads", "1"], "not a number or a fraction"),
        (["engine", "nowhere"], "neither a file nor one of the shipped"),
        (["adjust", "seven-radial", "--gap", "0.23"], "no unit"),
        (["adjust", "seven-radial", "--gap", "0.23furlong"], "not a unit"),
        (["adjust", "seven-radial", "--gap=-1mm"], "0 or more"),
        (["adjust", "seven-radial", "--gap", "-1mm"], "0 or more"),
        (["shift", "--rotor-turns-per-crank-turn", "1e999999999", "--reads", "1"], "not a number or a fraction"),
        (["readings", "seven-radial", "--backplate-deg", "9", "--screw-deg", "0"], "--backplate-deg is 9"),
        (["readings", "seven-radial", "--backplate-deg", "nan", "--screw-deg", "0"], "--backplate-deg"),
        (
            ["readings", "no-such", "--backplate-deg", "0", "--screw-deg", "0"],
            "neither a file nor one of the shipped",
        ),
        (["readings", "/dev/zero", "--backplate-deg", "0", "--screw-deg", "0"], "not a file"),
        (["frobnicate"], "frobnicate"),
    ],
)
def test_bad_input_is_exit_2_and_one_sentence(capsys, argv, says):
    code, out, err = run(capsys, *argv)
    assert code == 2
    assert out == ""
    assert says in err
    assert err.count("\n") == 1


def process(*argv: str, **environment: str) -> subprocess.CompletedProcess[str]:
    clean = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
    return subprocess.run(
        [sys.executable, *argv], capture_output=True, text=True, env={**clean, **environment}, timeout=60, check=False
    )


@pytest.mark.process
def test_without_a_display_it_says_so_shows_the_readings_and_exits_0():
    done = process("-m", "magview")
    assert done.returncode == 0
    first = done.stdout.splitlines()[0]
    assert "no display" in first
    assert "xvfb-run magview" in first
    assert "WITHIN LIMITS" in done.stdout
    assert done.stderr == ""


@pytest.mark.process
def test_a_display_that_does_not_answer_is_said():
    sockets = Path("/tmp/.X11-unix")
    free = next(f":{n}" for n in range(50, 500) if not (sockets / f"X{n}").exists())
    done = process("-m", "magview", DISPLAY=free)
    assert done.returncode == 0
    assert f"display {free} does not answer" in done.stdout or "system library" in done.stdout
    assert "Traceback" not in done.stderr


@pytest.mark.process
def test_the_window_opens_and_closes_offscreen():
    done = process("-m", "magview", QT_QPA_PLATFORM="offscreen", MAGVIEW_QUIT_AFTER_MS="200")
    assert (done.returncode, done.stdout) == (0, "")


@pytest.mark.process
def test_a_terminal_that_knows_no_degree_sign_gets_no_traceback():
    done = process("-m", "magview", PYTHONIOENCODING="ascii")
    assert done.returncode == 0
    assert "Traceback" not in done.stderr


def test_a_gap_just_out_of_limits_does_not_read_as_the_limit(capsys):
    """The eccentric moves the contact by throw·sin σ, so a gap of 0.36012 mm needs the σ of that sine."""
    magneto = find_magneto("seven-radial")
    screw = math.degrees(math.asin((magneto.designed_setting.gap_mm - 0.36012) / magneto.contact_screw.throw_mm))
    code, out, _ = run(capsys, "readings", "seven-radial", "--backplate-deg", "0", "--screw-deg", f"{screw:.9f}")
    assert code == 1
    assert "0.3601 mm = 0.01418 in" in out
    assert "0.3000 mm to 0.3600 mm = 0.01181 in to 0.01417 in" in out
