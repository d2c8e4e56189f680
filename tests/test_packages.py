"""Wheel and sdist hold all that is in the checkout, and the wheel, put anywhere, opens the bench."""

from __future__ import annotations

import hashlib
import os
import subprocess
import sys
import tarfile
import tomllib
import zipfile
from pathlib import Path

import pytest

from magview.upkeep.desktop import ENTRY, METAINFO, TYPES

pytest.importorskip("hatchling", reason="comes with the extra `test`")

ROOT = Path(__file__).parents[1]
_NOT_OURS = {"__pycache__"}


def files_under(folder: Path) -> dict[str, str]:
    """Each file's path from a folder, with a digest of what it holds."""
    return {
        path.relative_to(folder).as_posix(): hashlib.sha256(path.read_bytes()).hexdigest()
        for path in folder.rglob("*")
        if path.is_file() and not _NOT_OURS & set(path.parts)
    }


def build(source: Path, target: Path, kind: str) -> Path:
    done = subprocess.run(
        [sys.executable, "-m", "hatchling", "build", "-t", kind, "-d", str(target)],
        cwd=source, capture_output=True, text=True, check=False, timeout=120,
    )  # fmt: skip
    assert done.returncode == 0, done.stderr
    (found,) = target.iterdir()
    return found


@pytest.fixture(scope="module")
def wheel(tmp_path_factory) -> Path:
    return build(ROOT, tmp_path_factory.mktemp("wheel"), "wheel")


@pytest.fixture(scope="module")
def sdist(tmp_path_factory) -> Path:
    target = tmp_path_factory.mktemp("unpacked")
    with tarfile.open(build(ROOT, tmp_path_factory.mktemp("sdist"), "sdist")) as archive:
        # Python 3.11.2, which Debian 12 has, knows no filters yet.
        archive.extractall(target, **({"filter": "data"} if hasattr(tarfile, "data_filter") else {}))
    (folder,) = target.iterdir()
    return folder


def unpacked(wheel: Path, target: Path) -> dict[str, str]:
    with zipfile.ZipFile(wheel) as archive:
        archive.extractall(target)
    return files_under(target)


@pytest.mark.process
def test_every_module_and_every_resource_is_in_the_wheel(wheel, tmp_path):
    inside = unpacked(wheel, tmp_path)
    for folder, place in (("magview", "magview"), ("resources", "magview/resources")):
        for name, digest in files_under(ROOT / folder).items():
            assert inside.get(f"{place}/{name}") == digest, name
    code = [name for name in inside if name.startswith("magview/") and not name.startswith("magview/resources/")]
    assert {n.removeprefix("magview/") for n in code} == set(files_under(ROOT / "magview"))
    assert any(name.endswith("licenses/resources/LICENSE.txt") for name in inside)


@pytest.mark.process
def test_the_wheel_brings_menu_entry_types_and_icon_to_where_a_desktop_looks(wheel, tmp_path):
    inside = unpacked(wheel, tmp_path)
    shared = {n.split(".data/data/share/")[1]: d for n, d in inside.items() if ".data/data/share/" in n}
    resources = files_under(ROOT / "resources")
    assert shared[ENTRY] == resources["desktop/magview.desktop"]
    assert shared[TYPES] == resources["desktop/magview.xml"]
    assert shared[METAINFO] == resources["desktop/magview.metainfo.xml"]
    assert shared["icons/hicolor/scalable/apps/magview.svg"] == resources["icons/magview.svg"]
    assert shared["icons/hicolor/48x48/apps/magview.png"] == resources["icons/magview-48.png"]


@pytest.mark.process
def test_both_commands_are_installed_one_without_a_console(wheel, tmp_path):
    unpacked(wheel, tmp_path)
    text = next(tmp_path.glob("*.dist-info/entry_points.txt")).read_text(encoding="utf-8")
    # Entry points specification: a group of its own is what tells Windows to open no console.
    console, windowed = text.split("[gui_scripts]")
    assert "magview = magview.__main__:main" in console
    assert "magview-window = magview.__main__:window" in windowed


@pytest.mark.process
def test_the_sdist_holds_the_checkout(sdist):
    inside = files_under(sdist)
    for folder in ("magview", "resources", "tests"):
        for name, digest in files_under(ROOT / folder).items():
            assert inside.get(f"{folder}/{name}") == digest, name
    for name in ("README.md", "DEVELOPERS.md", "pyproject.toml"):
        assert name in inside
    assert "PKG-INFO" in inside


@pytest.mark.process
def test_the_sdist_builds_the_same_wheel(wheel, sdist, tmp_path):
    again = build(sdist, tmp_path / "built", "wheel")
    ours, theirs = unpacked(wheel, tmp_path / "ours"), unpacked(again, tmp_path / "theirs")
    assert again.name == wheel.name
    assert {n: d for n, d in ours.items() if not n.endswith("/RECORD")} == {
        n: d for n, d in theirs.items() if not n.endswith("/RECORD")
    }


@pytest.mark.process
def test_the_wheel_put_anywhere_opens_the_bench(wheel, tmp_path):
    """pip as a stranger uses it, without the network; what the program stands on is lent by these tests."""
    there = tmp_path / "there"
    subprocess.run(
        [sys.executable, "-m", "pip", "install", "--quiet", "--no-deps", "--no-index", "--target", there, wheel],
        check=True, timeout=120,
    )  # fmt: skip
    environment = {
        **os.environ, "PYTHONPATH": str(there), "HOME": str(tmp_path), "XDG_DATA_HOME": str(tmp_path / "data"),
        "XDG_STATE_HOME": str(tmp_path / "state"), "QT_QPA_PLATFORM": "offscreen", "MAGVIEW_QUIT_AFTER_MS": "400",
    }  # fmt: skip
    where = "import magview, sys; sys.stdout.write(magview.__file__)"
    found = subprocess.run(
        [sys.executable, "-c", where], cwd=tmp_path, env=environment, capture_output=True, text=True, check=True
    )
    assert Path(found.stdout).is_relative_to(there)
    opened = subprocess.run(
        [sys.executable, "-m", "magview"], cwd=tmp_path, env=environment, capture_output=True, text=True, timeout=60,
        check=False,
    )  # fmt: skip
    assert (opened.returncode, opened.stdout) == (0, "")
    shown = subprocess.run(
        [sys.executable, "-m", "magview", "readings", "nine-radial", "--backplate-deg", "0", "--screw-deg", "0"],
        cwd=tmp_path, env=environment, capture_output=True, text=True, timeout=60, check=False,
    )  # fmt: skip
    assert shown.returncode == 0 and "WITHIN LIMITS" in shown.stdout


def test_the_version_is_the_same_everywhere():
    from magview import __version__

    project = tomllib.loads((ROOT / "pyproject.toml").read_text(encoding="utf-8"))["project"]
    assert project["version"] == __version__
