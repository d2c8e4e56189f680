"""``magview worksheet`` and ``magview handout``: what they write, and one sentence for bad input."""

from __future__ import annotations

import subprocess
import sys

import pytest

from magview.classroom.sets import ClassSet, code_of
from magview.cli.main import main
from magview.practice.library import find_exercise


def run(*argv: str) -> tuple[int, str, str]:
    done = subprocess.run([sys.executable, "-m", "magview", *argv], capture_output=True, text=True, timeout=60)
    return done.returncode, done.stdout, done.stderr


@pytest.mark.process
def test_a_worksheet_its_key_and_a_handout_are_written(tmp_path):
    out = tmp_path / "o.pdf"
    code, said, err = run("worksheet", "gap-wrong", "--seed", "17", "--pdf", str(out), "--paper", "Letter")
    assert (code, err) == (0, "") and said.startswith("Wrote o.pdf: ") and out.read_bytes().startswith(b"%PDF")
    of = ClassSet(seed=1, exercises=(find_exercise("gap-wrong"),))
    assert run("worksheet", "--set", code_of(of), "--key", "--pdf", str(out))[0] == 0
    code, said, _ = run("handout", "traced-six", "--labels", "none", "--picture", "breaker", "--pdf", str(out))
    assert (code, said) == (0, "Wrote o.pdf: 1 page.\n")


@pytest.mark.parametrize(
    ("argv", "words"),
    [
        (("worksheet",), "either an EXERCISE or --set"),
        (("worksheet", "gap-wrong", "--seed", "1,5"), "whole number"),
        (("worksheet", "nothing-such"), "nothing-such"),
        (("worksheet", "--set", "8K2M"), "code"),
        (("handout", "nothing-such"), "nothing-such"),
        (("handout", "traced-six", "--picture", "crank"), "not on an engine"),
    ],
)
def test_bad_input_is_exit_2_and_one_sentence(tmp_path, capsys, argv, words):
    code = main([*argv, "--pdf", str(tmp_path / "x.pdf")])
    out, err = capsys.readouterr()
    assert (code, out) == (2, "") and words in err and err.count("\n") == 1
    assert not (tmp_path / "x.pdf").exists()


@pytest.mark.process
def test_a_tooth_shift_is_printed_as_a_plan(tmp_path):
    out = tmp_path / "plan.pdf"
    shift = ("shift", "seven-radial-left", "--reads", "22", "--pdf", str(out))
    code, said, err = run(*shift, "--paper", "Letter", "--move", "2")
    assert (code, err) == (0, "") and out.read_bytes().startswith(b"%PDF") and "Moves, best first" in said
    out.unlink()
    for argv, words in (
        ((*shift, "--move", "21"), "1 to 20"),
        ((*shift[:3], "221", *shift[4:]), "±90°"),
    ):  # fmt: skip
        code, said, err = run(*argv)
        assert (code, said) == (2, "") and words in err and err.count("\n") == 1 and not out.exists()
