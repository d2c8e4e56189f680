"""``magview check`` names what is missing, with what to do about it, and never falls over itself."""

from __future__ import annotations

import json
import subprocess
import sys

import pytest

from magview.cli import check as cli_check
from magview.cli.main import main
from magview.ui.kit import preflight


@pytest.fixture(autouse=True)
def own_folders(tmp_path, monkeypatch):
    monkeypatch.setenv("HOME", str(tmp_path))
    for name in ("DATA", "STATE", "CACHE", "CONFIG"):
        monkeypatch.setenv(f"XDG_{name}_HOME", str(tmp_path / name))
    return tmp_path


@pytest.fixture
def no_qt(monkeypatch):
    """Qt is tried out elsewhere; these tests are of everything else."""
    good = {
        "window": {"platform": "xcb", "width": 1920, "height": 1080},
        "printing": {"fonts": 9, "pdf": True, "svg": True},
    }
    monkeypatch.setattr(cli_check, "_tried", lambda what, **_: (good[what], ""))
    return good


def check(capsys) -> tuple[int, dict[str, tuple[bool | None, str]]]:
    code = main(["check", "--json"])
    out, err = capsys.readouterr()
    assert err == ""
    found = json.loads(out)
    assert found["good"] == (code == 0)
    return code, {f["name"]: (f["good"], f["text"]) for f in found["findings"]}


def test_where_everything_is_there_it_says_so(capsys):
    code, found = check(capsys)
    assert code == 0
    assert found["window"][0] is True and "offscreen" in found["window"][1]  # seen by nobody, and told so
    assert found["printing"][0] is True
    assert found["Python"] == (None, sys.version.split()[0])
    assert main(["check"]) == 0
    lines = capsys.readouterr().out.splitlines()
    assert len(lines) == len(found) + 1 and lines[-1] == "Nothing is missing."


def test_no_display_is_named_with_what_opens_a_window(capsys, monkeypatch):
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(preflight.sys, "platform", "linux")
    code, found = check(capsys)
    assert code == 1
    assert found["window"][0] is False and "xvfb-run" in found["window"][1]
    assert found["printing"][0] is True  # paper needs no display
    assert main(["check"]) == 1
    assert any(line.startswith("MISSING  window: ") for line in capsys.readouterr().out.splitlines())


@pytest.mark.parametrize(
    ("library", "package"),
    [("libGL.so.1", "libgl1"), ("libEGL.so.1", "libegl1"), ("libxcb-cursor.so.0", "libxcb-cursor0")],
)
def test_missing_libraries_are_named_with_their_packages(capsys, monkeypatch, no_qt, library, package):
    monkeypatch.setattr(preflight.sys, "platform", "linux")
    monkeypatch.delenv("QT_QPA_PLATFORM", raising=False)
    monkeypatch.setenv("DISPLAY", ":0")
    monkeypatch.delenv("WAYLAND_DISPLAY", raising=False)
    monkeypatch.setattr(preflight, "loads", lambda name: name != library)
    monkeypatch.setattr(preflight, "_import_problem", lambda: preflight._missing(f"{library}: cannot open"))  # noqa: SLF001
    code, found = check(capsys)
    assert code == 1
    assert library in found["window"][1]
    assert found[library][0] is False and package in found[library][1]
    assert [name for name, (good, _) in found.items() if good is False] == ["window", library]


def test_a_platform_plugin_that_is_not_there_is_named_with_those_that_are(capsys, monkeypatch):
    monkeypatch.setenv("QT_QPA_PLATFORM", "teapot")
    code, found = check(capsys)
    assert code == 1
    good, text = found["window"]
    assert good is False
    assert "teapot" in text and "QT_QPA_PLATFORM" in text and "offscreen" in text and "\n" not in text


@pytest.mark.parametrize(
    ("change", "says"),
    [({"fonts": 0}, "fonts-dejavu-core"), ({"pdf": False}, "no PDF"), ({"svg": False}, "SVG")],
)
def test_what_printing_lacks_is_named(capsys, no_qt, change, says):
    no_qt["printing"] |= change
    code, found = check(capsys)
    assert code == 1
    assert found["printing"][0] is False and says in found["printing"][1]


def test_qt_that_hangs_or_dies_is_a_sentence(monkeypatch):
    monkeypatch.setattr(cli_check, "_PATIENCE_S", 0.01)
    found, why = cli_check._tried("window")  # noqa: SLF001
    assert found is None and "did not answer" in why
    monkeypatch.setattr(cli_check, "_PATIENCE_S", 60.0)
    found, why = cli_check._tried("teapot")  # noqa: SLF001
    assert found is None and "\n" not in why


def test_folders_that_take_nothing_are_named(capsys, monkeypatch, no_qt, own_folders):
    (own_folders / "file").write_text("", encoding="utf-8")
    monkeypatch.setenv("XDG_STATE_HOME", str(own_folders / "file"))
    code, found = check(capsys)
    assert code == 1
    bad = {name: text for name, (good, text) in found.items() if good is False}
    assert set(bad) == {"folder of the log", "folder of fault reports"}
    assert all(str(own_folders / "file") in text and "XDG_STATE_HOME" in text for text in bad.values())


def test_a_disk_almost_full_is_named(capsys, monkeypatch, no_qt):
    usage = type("Usage", (), {"free": 3_000_000})()
    monkeypatch.setattr(cli_check.shutil, "disk_usage", lambda _: usage)
    code, found = check(capsys)
    assert code == 1
    assert "3 MB free; make room" in found["folder of work under way"][1]


def test_a_package_that_is_missing_is_named(capsys, monkeypatch, no_qt):
    import importlib.metadata

    real = importlib.metadata.version

    def without(name: str) -> str:
        if name == "scipy":
            raise importlib.metadata.PackageNotFoundError(name)
        return real(name)

    monkeypatch.setattr(importlib.metadata, "version", without)
    code, found = check(capsys)
    assert code == 1
    assert found["scipy"][0] is False and "install magview again" in found["scipy"][1]


def test_shipped_files_that_are_gone_or_damaged_are_named(capsys, monkeypatch, no_qt, tmp_path):
    from magview.spec import library

    monkeypatch.setattr(library, "resources", lambda: tmp_path / "nothing")
    code, found = check(capsys)
    assert code == 1 and found["shipped files"][0] is False
    (tmp_path / "nothing" / "magnetos").mkdir(parents=True)
    (tmp_path / "nothing" / "magnetos" / "a.json").write_text("{", encoding="utf-8")
    code, found = check(capsys)
    assert code == 1 and "a.json" in found["shipped files"][1]


def test_a_look_that_goes_wrong_itself_is_a_finding_and_no_traceback(capsys, monkeypatch, no_qt):
    def broken() -> None:
        raise RuntimeError("the\nfloor gave way")

    monkeypatch.setattr(preflight, "why_no_window", broken)
    code, found = check(capsys)
    assert code == 1
    assert found["window"] == (False, "could not be looked at: the floor gave way")


@pytest.mark.process
@pytest.mark.parametrize("words", [["readings", "seven-radial", "--backplate-deg", "0", "--screw-deg", "0"], []])
def test_an_installation_in_pieces_is_one_sentence(words):
    """No numpy: nothing can be computed; whoever starts it is told what to do."""
    code = (
        "import sys\n"
        "class Wall:\n"
        "    def find_spec(self, name, path=None, target=None):\n"
        "        if name.split('.')[0] == 'numpy':\n"
        "            raise ModuleNotFoundError(f'No module named {name!r}', name=name)\n"
        "sys.meta_path.insert(0, Wall())\n"
        "from magview.__main__ import main\n"
        f"sys.argv = ['magview', *{words!r}]\n"
        "raise SystemExit(main())\n"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 2
    assert done.stderr.count("\n") == 1 and "numpy" in done.stderr and "install magview again" in done.stderr
