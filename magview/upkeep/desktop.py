"""The program's place on a freedesktop.org desktop: menu entry, icon and file types, put in a person's own folders.

Sources: Desktop Entry Specification 1.5 (quoting of Exec), Shared MIME-info Database 0.21 and Icon Theme
Specification 0.13 (where files go), XDG Base Directory Specification 0.8.
"""

from __future__ import annotations

import contextlib
import os
import re
import shutil
import subprocess
import sys
import sysconfig
from collections.abc import Sequence
from pathlib import Path

from magview.spec.base import SpecError
from magview.spec.files import write_text
from magview.spec.language import tr
from magview.spec.library import resources

ENTRY = "applications/magview.desktop"
TYPES = "mime/packages/magview.xml"
METAINFO = "metainfo/magview.metainfo.xml"


def data_home() -> Path:
    """Folder of a person's own desktop files: XDG_DATA_HOME, or ~/.local/share where it is unset or not absolute."""
    chosen = os.environ.get("XDG_DATA_HOME", "")
    return Path(chosen) if os.path.isabs(chosen) else Path.home() / ".local" / "share"


def shipped() -> dict[str, Path]:
    """Files to install: place in the data folder → shipped file."""
    files = resources()
    found = {
        ENTRY: files / "desktop" / "magview.desktop",
        TYPES: files / "desktop" / "magview.xml",
        METAINFO: files / "desktop" / "magview.metainfo.xml",
        "icons/hicolor/scalable/apps/magview.svg": files / "icons" / "magview.svg",
    }
    for picture in sorted((files / "icons").glob("magview-*.png")):
        size = picture.stem.removeprefix("magview-")
        found[f"icons/hicolor/{size}x{size}/apps/magview.png"] = picture
    return found


def put(home: Path) -> list[Path]:
    """Put everything into a data folder; returns the files. Raises SpecError where that fails."""
    written = []
    for place, source in shipped().items():
        target = home / place
        try:
            target.parent.mkdir(parents=True, exist_ok=True)
            if place == ENTRY:
                write_text(target, entry_text(source.read_text(encoding="utf-8"), command()))
            else:
                shutil.copyfile(source, target)
        except OSError as error:
            raise SpecError(_cannot(target, error)) from error
        written.append(target)
    _tell_desktop(home)
    return written


def take_away(home: Path) -> list[Path]:
    """Take away what `put` put there; returns the files that were there. Raises SpecError where that fails."""
    gone = []
    for place in shipped():
        target = home / place
        try:
            target.unlink()
        except FileNotFoundError:
            continue
        except OSError as error:
            raise SpecError(_cannot(target, error)) from error
        gone.append(target)
    if gone:
        _tell_desktop(home)
    return gone


def command() -> list[str]:
    """The command that opens the window of this very installation."""
    ending = ".exe" if sys.platform == "win32" else ""
    for folder in (sysconfig.get_path("scripts"), str(Path(sys.executable).parent)):
        program = Path(folder) / f"magview-window{ending}"
        if program.is_file():
            return [str(program)]
    return [sys.executable, "-m", "magview", "open", "--box"]


def entry_text(text: str, words: Sequence[str]) -> str:
    """A desktop entry that calls a command of this machine."""
    call = " ".join(quoted(word) for word in words)
    text = re.sub(r"(?m)^Exec=.*$", lambda _: f"Exec={call} %f", text)
    first = words[0].replace("\\", "\\\\")
    return re.sub(r"(?m)^Icon=", lambda _: f"TryExec={first}\nIcon=", text)


def quoted(word: str) -> str:
    """An argument as the Exec key takes it: in quotes, with \\ before what they do not protect, every \\ written
    twice as in all strings of the file, and %% for %."""
    word = word.replace("%", "%%")
    if re.fullmatch(r"[\w@%+=:,./-]+", word, re.ASCII):
        return word
    inside = re.sub(r'(["`$\\])', r"\\\1", word)
    return f'"{inside}"'.replace("\\", "\\\\")


def _cannot(target: Path, error: OSError) -> str:
    return tr("{file}: cannot be changed: {reason}", file=target, reason=error.strerror or error)


def _tell_desktop(home: Path) -> None:
    """Let the desktop's own lists know; where these programs are missing, it finds out at the next login."""
    for words in (["update-mime-database", home / "mime"], ["update-desktop-database", home / "applications"]):
        program = shutil.which(str(words[0]))
        if program is not None:
            with contextlib.suppress(OSError, subprocess.TimeoutExpired):
                subprocess.run([program, str(words[1])], check=False, capture_output=True, timeout=60)
    with contextlib.suppress(OSError):
        os.utime(home / "icons" / "hicolor")  # a changed folder is what desktops look for icons anew by
