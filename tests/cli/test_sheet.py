"""``magview sheet`` and ``magview schema``: what they write, exit codes, one sentence for bad input."""

from __future__ import annotations

import json
import os
import subprocess
import sys
from pathlib import Path

import pytest

from magview.job.readings import csv_text
from magview.job.sheet import change_in
from magview.spec.files import write_model
from tests.cli.told import run
from tests.job.sheets import demo, html_text, of_magneto


def test_a_finished_job_in_limits_is_exit_0_and_says_its_stages_and_cautions(capsys):
    code, out, err = run(capsys, "sheet", "seven-radial-left")
    assert (code, err) == (0, "")
    assert "Finished; signed." in out and "Invented for demonstration" in out
    assert "propeller as live" in out and "6  Condition of the contacts    done" in out


def test_out_of_limits_and_unfinished_are_exit_1(capsys, tmp_path):
    path = tmp_path / "x-job.json"
    write_model(path, change_in(demo(), "internal_timing", gap_mm=0.4))
    code, out, _ = run(capsys, "sheet", str(path))
    assert code == 1 and "OUT OF LIMITS: Setting, as left, largest gap: 0.400 mm" in out
    assert "CHANGED SINCE IT WAS SIGNED" in out
    write_model(path, of_magneto(10.0, 0.23, 0.25))
    assert run(capsys, "sheet", str(path))[0] == 1


@pytest.mark.parametrize("name", ["nowhere", "gone.json"])
def test_no_job_is_exit_2(capsys, name):
    code, out, err = run(capsys, "sheet", name)
    assert (code, out) == (2, "") and err.startswith("magview: ") and err.count("\n") == 1


def test_all_that_can_be_written(capsys, tmp_path):
    html, table, data, pdf = (tmp_path / f"o.{kind}" for kind in ("html", "csv", "json", "pdf"))
    code, out, _ = run(
        capsys, "sheet", "seven-radial-left", "--html", str(html), "--csv", str(table), "--json-readings", str(data),
        "--json", "--paper", "letter",
    )  # fmt: skip
    assert code == 0 and not pdf.exists()
    assert html.read_text(encoding="utf-8") == html_text(demo(), "letter")
    assert table.read_bytes().decode() == csv_text(demo())
    assert json.loads(out) == json.loads(data.read_text(encoding="utf-8"))
    assert json.loads(out)["passed"] is True


def test_a_place_that_takes_no_file_is_exit_2(capsys, tmp_path):
    for kind in ("--html", "--csv", "--json-readings"):
        code, _, err = run(capsys, "sheet", "seven-radial-left", kind, str(tmp_path / "gone" / "x"))
        assert code == 2 and "cannot be written" in err


def test_earlier_sheets_of_a_folder(capsys, tmp_path):
    for n, hours in enumerate((100.0, 200.0, 300.0)):
        write_model(tmp_path / f"{n}-job.json", of_magneto(hours, 0.23 if n else None, 0.25, day=f"2026-0{n + 1}-01"))
    (tmp_path / "bad-job.json").write_text("{")
    code, out, err = run(capsys, "sheet", str(tmp_path / "2-job.json"), "--history", str(tmp_path))
    assert code == 1  # an unfinished sheet
    assert "The gap moved -0.020 mm in 100 h" in out and "passed over: bad-job.json" in err


@pytest.mark.parametrize("kind", ["magneto", "engine", "installation", "job"])
def test_schemas(capsys, kind):
    code, out, _ = run(capsys, "schema", kind)
    assert code == 0 and json.loads(out)["title"] == f"magview-{kind}/1"


def test_an_unknown_schema_is_exit_2(capsys):
    assert run(capsys, "schema", "propeller")[0] == 2


@pytest.mark.process
@pytest.mark.parametrize("paper", ["a4", "letter"])
def test_pdf_without_a_display(tmp_path, paper):
    """In a process of its own, as a script would: no display, and none of Qt's variables."""
    env = {k: v for k, v in os.environ.items() if k not in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM")}
    pdf = tmp_path / "o.pdf"
    done = subprocess.run(
        [sys.executable, "-m", "magview", "sheet", "seven-radial-left", "--pdf", str(pdf), "--paper", paper],
        capture_output=True, text=True, env=env, cwd=Path(__file__).parents[2], check=False, timeout=60,
    )  # fmt: skip
    assert (done.returncode, done.stderr) == (0, "")
    assert pdf.read_bytes().startswith(b"%PDF-")
    assert [p.name for p in tmp_path.iterdir()] == ["o.pdf"]


@pytest.mark.process
def test_where_qt_cannot_be_loaded_one_sentence_says_so(tmp_path):
    wall = (
        "import sys\n"
        "class Wall:\n"
        "    def find_spec(self, name, path=None, target=None):\n"
        "        if name.split('.')[0] == 'PySide6':\n"
        "            raise ImportError('libGL.so.1: cannot open shared object file: No such file or directory')\n"
        "sys.meta_path.insert(0, Wall())\n"
        "from magview.cli.main import main\n"
        f"sys.exit(main(['sheet', 'seven-radial-left', '--html', r'{tmp_path / 'o.html'}', '--pdf', 'x.pdf']))\n"
    )
    done = subprocess.run(
        [sys.executable, "-c", wall], capture_output=True, text=True, cwd=Path(__file__).parents[2], check=False
    )
    assert done.returncode == 2 and "Traceback" not in done.stderr
    assert "libgl1" in done.stderr and "--html" in done.stderr
    assert (tmp_path / "o.html").exists()


def test_a_blank_form_needs_no_sheet(qapp, capsys, tmp_path):
    out = tmp_path / "form.pdf"
    assert run(capsys, "sheet", "--blank", str(out)) == (0, "", "")
    assert out.read_bytes().startswith(b"%PDF")
    page = tmp_path / "form.html"
    assert run(capsys, "sheet", "--blank", str(page), "--paper", "letter") == (0, "", "")
    assert "size: letter" in page.read_text(encoding="utf-8")
    code, _, err = run(capsys, "sheet")
    assert code == 2 and "--blank form.pdf" in err
    assert run(capsys, "sheet", "--blank", str(tmp_path / "gone" / "x.pdf"))[0] == 2
