"""Menu entry, file types and icon, against the freedesktop.org specifications and their own validators."""

from __future__ import annotations

import configparser
import importlib.util
import json
import re
import shutil
import struct
import subprocess
import xml.etree.ElementTree as ET
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.cli.main import main
from magview.job.library import shipped_jobs
from magview.practice.attempt import Session, dump_attempt
from magview.practice.library import find_exercise
from magview.spec.base import SpecError
from magview.spec.files import dump_json
from magview.spec.formats import ENDING, ENDINGS, KINDS
from magview.spec.library import find_installation, find_magneto, resources
from magview.upkeep import desktop
from tests.cards import a_card
from tests.classroom.attempts import a_set

ROOT = Path(__file__).parents[2]
MIME = "{http://www.freedesktop.org/standards/shared-mime-info}"


def entry(text: str) -> dict[str, str]:
    parser = configparser.ConfigParser(interpolation=None, delimiters=("=",), strict=True)
    parser.optionxform = str  # type: ignore[assignment,method-assign]
    parser.read_string(text)
    assert parser.sections() == ["Desktop Entry"]
    return dict(parser["Desktop Entry"])


def arguments(value: str) -> list[str]:
    """Exec as a desktop takes it apart (Desktop Entry Specification 1.5, "The Exec key"): first the escapes of every
    string, then quotes, then field codes."""
    text = re.sub(r"\\([sntr\\])", lambda m: {"s": " ", "n": "\n", "t": "\t", "r": "\r", "\\": "\\"}[m[1]], value)
    words, i = [], 0
    while i < len(text):
        if text[i] == " ":
            i += 1
        elif text[i] == '"':
            i, word = i + 1, ""
            while text[i] != '"':
                if text[i] == "\\":
                    i += 1
                    assert text[i] in '"`$\\'
                else:
                    assert text[i] not in "`$"
                word += text[i]
                i += 1
            i += 1
            words.append(word)
        else:
            end = text.find(" ", i)
            end = len(text) if end < 0 else end
            words.append(text[i:end])
            # Reserved characters must be quoted.
            assert not set(words[-1]) & set(" \t\n\"'\\><~|&;$*?#()`")
            i = end
    return [word.replace("%%", "%") if word != "%f" else word for word in words]


def test_the_shipped_entry_has_the_keys_that_the_specification_requires():
    path = resources() / "desktop" / "magview.desktop"
    keys = entry(path.read_text(encoding="utf-8"))
    assert keys["Type"] == "Application"
    assert keys["Name"] and keys["Exec"] and keys["Icon"] == "magview"
    assert keys["Terminal"] == "false"
    assert arguments(keys["Exec"]) == ["magview-window", "%f"]
    for key in ("Categories", "MimeType", "Keywords"):
        assert keys[key].endswith(";"), key  # lists end in their separator
    types = set(keys["MimeType"].strip(";").split(";"))
    assert types == {f"application/x-magview-{kind}+json" for kind in KINDS}
    if shutil.which("desktop-file-validate"):
        done = subprocess.run(["desktop-file-validate", path], capture_output=True, text=True, check=False)
        assert (done.returncode, done.stdout) == (0, "")


def test_file_types_are_told_by_ending_and_first_line():
    root = ET.parse(resources() / "desktop" / "magview.xml").getroot()
    assert root.tag == f"{MIME}mime-info"
    found = {}
    for kind in root.findall(f"{MIME}mime-type"):
        globs = [g.get("pattern") for g in kind.findall(f"{MIME}glob")]
        assert globs == [f"*{ending}" for ending in ENDINGS]  # never *.json: that is everybody's
        match = kind.find(f"{MIME}magic/{MIME}match")
        assert match is not None and match.get("type") == "string" and match.get("offset") == "0:64"
        assert kind.find(f"{MIME}sub-class-of").get("type") == "application/json"
        assert kind.find(f"{MIME}comment").text
        found[kind.get("type")] = match.get("value")
    assert found == {f"application/x-magview-{kind}+json": f'"magview-{kind}/' for kind in KINDS}
    if shutil.which("xmllint"):
        for path in (resources() / "desktop").glob("*.xml"):
            subprocess.run(["xmllint", "--noout", path], check=True)


def written_files() -> dict[str, str]:
    """A file of each kind, as this program writes or ships it."""
    shipped = {
        "engine": "engines/nine-radial.json",
        "exercise": "exercises/gap-wrong.json",
        "lesson": "lessons/plate-and-screw.json",
        "job": f"jobs/{shipped_jobs()[0]}-job.json",
    }
    files = {kind: (resources() / name).read_text(encoding="utf-8") for kind, name in shipped.items()}
    files["magneto"] = dump_json(find_magneto("traced-six"))
    files["installation"] = dump_json(find_installation("nine-radial-left"))
    files["limits"] = dump_json(a_card())
    files["class"] = dump_json(a_set("gap-wrong"))
    files["attempt"] = dump_attempt(Session(find_exercise("gap-wrong"), 1).attempt)
    return files


def test_every_file_says_what_it_is_where_a_desktop_looks():
    files = written_files()
    assert set(files) == set(KINDS)
    for kind, text in files.items():
        # The magic string may begin at any of bytes 0 to 64.
        assert 0 <= text.encode().find(f'"magview-{kind}/'.encode()) <= 64, kind


@pytest.mark.process
@pytest.mark.skipif(
    not (shutil.which("gio") and shutil.which("update-mime-database")), reason="no desktop's tools here"
)
def test_a_desktop_tells_the_files_apart(tmp_path, monkeypatch):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "data"))
    assert main(["desktop"]) == 0
    path = tmp_path / f"anything{ENDING}"
    for kind, text in written_files().items():
        path.write_text(text, encoding="utf-8")
        said = subprocess.run(
            ["gio", "info", "-a", "standard::content-type", path], capture_output=True, text=True, check=True
        ).stdout
        assert f"application/x-magview-{kind}+json" in said


def test_put_on_a_desktop_and_taken_away_again(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "a folder"))
    home = tmp_path / "a folder"
    stranger = home / "applications" / "other.desktop"
    stranger.parent.mkdir(parents=True)
    stranger.write_text("[Desktop Entry]\n", encoding="utf-8")
    assert main(["desktop", "--json"]) == 0
    files = [Path(f) for f in json.loads(capsys.readouterr().out)["files"]]
    assert all(f.is_file() for f in files)
    # Where the Icon Theme and Shared MIME-info specifications have a person's own files.
    for place in (
        "applications/magview.desktop",
        "mime/packages/magview.xml",
        "icons/hicolor/48x48/apps/magview.png",
    ):
        assert home / place in files
    keys = entry((home / "applications" / "magview.desktop").read_text(encoding="utf-8"))
    program = arguments(keys["Exec"])[0]
    assert Path(program).is_absolute() and Path(program).exists()
    assert keys["TryExec"] == program
    assert main(["desktop"]) == 0  # again: replaced, not doubled
    assert capsys.readouterr().out.count("magview.desktop") == 1
    assert main(["desktop", "--remove"]) == 0
    assert not any(f.exists() for f in files)
    assert stranger.exists()
    capsys.readouterr()
    assert main(["desktop", "--remove"]) == 0
    assert "nothing to take away" in capsys.readouterr().out


def test_a_folder_that_cannot_be_used_is_one_sentence(tmp_path, monkeypatch, capsys):
    (tmp_path / "file").write_text("", encoding="utf-8")
    monkeypatch.setenv("XDG_DATA_HOME", str(tmp_path / "file"))
    assert main(["desktop"]) == 2
    assert capsys.readouterr().err.count("\n") == 1


def test_other_systems_are_told_what_to_do_instead(monkeypatch, capsys):
    monkeypatch.setattr("magview.cli.desktop.sys.platform", "win32")
    assert main(["desktop"]) == 1
    assert "Open with" in capsys.readouterr().out


def test_a_relative_data_folder_is_passed_over(monkeypatch, tmp_path):
    """XDG Base Directory Specification: "If an implementation encounters a relative path … it should … ignore it"."""
    monkeypatch.setenv("XDG_DATA_HOME", "somewhere")
    monkeypatch.setenv("HOME", str(tmp_path))
    assert desktop.data_home() == tmp_path / ".local" / "share"


@given(
    st.lists(
        st.text(
            st.characters(codec="utf-8", exclude_characters="\0\n\r\t", exclude_categories=["Cs", "Cc"]), min_size=1
        ),
        min_size=1,
    )
)
def test_any_command_comes_back_as_it_was(words):
    keys = desktop.entry_text("Exec=magview-window %f\nIcon=magview\n", words).splitlines()
    assert arguments(keys[0].removeprefix("Exec=")) == [*words, "%f"]


def test_without_an_installed_command_python_opens_the_file(monkeypatch, tmp_path):
    monkeypatch.setattr(desktop.sysconfig, "get_path", lambda _: str(tmp_path))
    monkeypatch.setattr(desktop.sys, "executable", str(tmp_path / "python3"))
    assert desktop.command() == [str(tmp_path / "python3"), "-m", "magview", "open", "--box"]


# ---------------------------------------------------------------------- the icon


def icon_script():
    spec = importlib.util.spec_from_file_location("icon_script", ROOT / ".ci" / "icon.py")
    assert spec is not None and spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


def png_size(data: bytes) -> tuple[int, int]:
    """Width and height from the IHDR chunk (PNG specification, 11.2.1)."""
    assert data[:8] == b"\x89PNG\r\n\x1a\n" and data[12:16] == b"IHDR"
    return struct.unpack(">II", data[16:24])


def test_the_icon_is_drawn_from_the_benchs_shapes():
    numbers = re.compile(r"-?\d+\.\d+")
    now, shipped = icon_script().svg_text(), (resources() / "icons" / "magview.svg").read_text(encoding="utf-8")
    assert numbers.sub("#", now) == numbers.sub("#", shipped)
    for ours, theirs in zip(numbers.findall(now), numbers.findall(shipped), strict=True):
        assert float(ours) == pytest.approx(float(theirs), abs=0.011)  # the last digit is a mathematics library's
    assert ET.fromstring(shipped).tag == "{http://www.w3.org/2000/svg}svg"


def test_every_size_of_the_icon_is_as_large_as_it_says(qapp):
    from PySide6.QtGui import QImage

    pictures = sorted((resources() / "icons").glob("magview-*.png"))
    assert len(pictures) >= 6
    for path in pictures:
        size = int(path.stem.removeprefix("magview-"))
        assert png_size(path.read_bytes()) == (size, size)
        image = QImage(str(path))
        assert image.pixelColor(0, 0).alpha() == 0  # a disc: its corners are clear,
        # its middle is not, and poles of both colours are there.
        assert image.pixelColor(size // 2, size // 2).alpha() == 255
        some = range(0, size, max(1, size // 32))
        colours = [image.pixelColor(x, y) for x in some for y in some]
        assert any(c.red() > c.blue() + 60 for c in colours) and any(c.blue() > c.red() + 60 for c in colours)


def test_the_windows_icon_is_a_table_of_pictures():
    """The layout of ICONDIR and ICONDIRENTRY as published for Windows: 6 bytes, then 16 for each picture."""
    data = (resources() / "icons" / "magview.ico").read_bytes()
    reserved, kind, count = struct.unpack_from("<HHH", data)
    assert (reserved, kind) == (0, 1) and count >= 4
    sizes = []
    for i in range(count):
        width, height, _, _, planes, bits, length, start = struct.unpack_from("<BBBBHHII", data, 6 + 16 * i)
        assert (planes, bits) == (1, 32) and width == height
        picture = data[start : start + length]
        sizes.append(width or 256)
        assert png_size(picture) == (sizes[-1], sizes[-1])
    assert {16, 32, 48, 256} <= set(sizes)


def test_a_wrong_folder_of_the_package_is_said(monkeypatch, tmp_path):
    monkeypatch.setattr(desktop, "resources", lambda: tmp_path)
    with pytest.raises(SpecError, match="cannot be changed"):
        desktop.put(tmp_path / "home")
