"""The command ``magview check``: what this machine lacks for window, printing and files, and what to do about it."""

from __future__ import annotations

import json
import os
import shutil
import subprocess
import sys
import tempfile
from collections.abc import Callable
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Any

from magview.spec.language import tr

PASS, FAIL = 0, 1

ROOM_BYTES = 50_000_000
"""Free space below which work is in danger: a few hundred kept benches and printed sheets."""

_PATIENCE_S = 60.0
"""So long Qt may take to show that it works; on a cold disk it has taken 5."""


@dataclass(frozen=True)
class Finding:
    """One thing looked at: what, whether it is good (None: only told), and in words, with what to do about it."""

    name: str
    good: bool | None
    text: str


def run_check(as_json: bool) -> int:
    """Say what was found, a line each. Exit code 1 if anything is missing."""
    found = findings()
    good = all(f.good is not False for f in found)
    if as_json:
        sys.stdout.write(json.dumps({"good": good, "findings": [asdict(f) for f in found]}) + "\n")
        return PASS if good else FAIL
    signs = {True: tr("good"), False: tr("MISSING"), None: ""}
    width = max(len(sign) for sign in signs.values())
    for finding in found:
        sys.stdout.write(f"{signs[finding.good]:<{width}}  {finding.name}: {finding.text}\n")
    sys.stdout.write((tr("Nothing is missing.") if good else tr("Something is missing.")) + "\n")
    return PASS if good else FAIL


def findings() -> list[Finding]:
    """Look at everything."""
    parts = (
        (tr("versions"), _versions),
        (tr("shipped files"), _shipped),
        (tr("window"), _window),
        (tr("printing"), _printing),
        (tr("files"), _files),
        (tr("desktop"), _desktop),
    )
    return [finding for name, look in parts for finding in _safely(name, look)]


def _safely(name: str, look: Callable[[], list[Finding]]) -> list[Finding]:
    """The findings; a check that itself fails is a finding, too."""
    try:
        return look()
    except Exception as error:
        reason = " ".join(str(error).split()) or type(error).__name__
        return [Finding(name, False, tr("could not be looked at: {reason}", reason=reason))]


# ---------------------------------------------------------------------- parts


def _versions() -> list[Finding]:
    from magview.upkeep.reports import versions

    again = tr("not installed; install magview again")
    return [
        Finding(name, None if number != "-" else False, again if number == "-" else number)
        for name, number in versions()
    ]


def _shipped() -> list[Finding]:
    from magview.spec.library import find_installation, find_magneto, resources, shipped_names

    magnetos, installations = shipped_names("magnetos"), shipped_names("installations")
    for name in magnetos:
        find_magneto(name)
    for name in installations:
        find_installation(name)
    if not magnetos or not installations:
        text = tr("no magnetos in {folder}; install magview again", folder=resources())
        return [Finding(tr("shipped files"), False, text)]
    text = tr("{count} magnetos and {more} installations can be read", count=len(magnetos), more=len(installations))
    return [Finding(tr("shipped files"), True, text)]


def _window() -> list[Finding]:
    from magview.ui.kit.preflight import missing_libraries, why_no_window

    reason = why_no_window()
    if reason is None:
        shown, why = _tried("window")
        if shown is not None:
            return [Finding(tr("window"), True, _window_words(shown))]
        reason = why
    found = [Finding(tr("window"), False, reason)]
    for library, package in missing_libraries():
        text = tr("Qt needs it for a window; the package {package} of Debian and Ubuntu has it", package=package)
        found.append(Finding(library, False, text))
    return found


def _window_words(shown: dict[str, Any]) -> str:
    if shown["platform"] in ("offscreen", "minimal"):
        return tr("opens, but where nobody sees it: QT_QPA_PLATFORM is {platform}", platform=shown["platform"])
    return tr(
        "opens ({platform}, screen of {width} × {height})",
        platform=shown["platform"], width=shown["width"], height=shown["height"],
    )  # fmt: skip


def _printing() -> list[Finding]:
    found, why = _tried("printing", QT_QPA_PLATFORM="offscreen") if _headless() else _tried("printing")
    if found is None:
        return [Finding(tr("printing"), False, why)]
    if not found["pdf"] or not found["svg"]:
        return [Finding(tr("printing"), False, tr("Qt writes no PDF or reads no SVG; install magview again"))]
    if not found["fonts"]:
        text = tr(
            "there are no fonts, so words are boxes; the package fonts-dejavu-core of Debian and Ubuntu has some"
        )
        return [Finding(tr("printing"), False, text)]
    return [Finding(tr("printing"), True, tr("PDF is written, with {count} families of type", count=found["fonts"]))]


def _headless() -> bool:
    return sys.platform.startswith("linux")  # paper needs no display, even where there is one


def _tried(what: str, **environment: str) -> tuple[dict[str, Any] | None, str]:
    """Run Qt in a process of its own; one sentence if it does not run."""
    words = [sys.executable, "-m", "magview.ui.kit.trial_run", what]
    try:
        done = subprocess.run(
            words, capture_output=True, text=True, errors="replace", check=False, timeout=_PATIENCE_S,
            env={**os.environ, **environment},
        )  # fmt: skip
    except subprocess.TimeoutExpired:
        return None, tr("Qt did not answer within {seconds} s; try again", seconds=f"{_PATIENCE_S:g}")
    if done.returncode == 0:
        return json.loads(done.stdout.splitlines()[-1]), ""
    return None, _why(done.stderr)


def _why(said: str) -> str:
    lines = [line.strip() for line in said.splitlines() if line.strip()]
    plugin = next((line for line in lines if "platform plugin" in line), None)
    chosen = os.environ.get("QT_QPA_PLATFORM", "")
    if plugin is not None and chosen:
        known = next(
            (line.split(":", 1)[1].strip(" .") for line in lines if line.startswith("Available platform")), ""
        )
        return tr(
            "Qt has no working platform plugin “{chosen}”, which QT_QPA_PLATFORM asks for; unset it, or choose one "
            "of: {known}",
            chosen=chosen, known=known,
        )  # fmt: skip
    reason = plugin or (lines[-1] if lines else tr("it gave no reason"))
    return tr("Qt does not start: {reason}", reason=reason)


def _files() -> list[Finding]:
    from magview.upkeep.places import log_folder, report_folder, trouble_with, work_folder

    folders = {
        tr("folder of work under way"): work_folder(),
        tr("folder of the log"): log_folder(),
        tr("folder of fault reports"): report_folder(),
        tr("folder for the time being"): Path(tempfile.gettempdir()),
    }
    return [_folder(name, folder, trouble_with(folder)) for name, folder in folders.items()]


def _folder(name: str, folder: Path, trouble: str | None) -> Finding:
    if trouble is not None:
        text = tr(
            "{trouble}; make the folder writable, or set XDG_DATA_HOME and XDG_STATE_HOME to ones that are",
            trouble=trouble,
        )
        return Finding(name, False, text)
    free = shutil.disk_usage(folder).free
    if free < ROOM_BYTES:
        text = tr("{folder} has only {free} MB free; make room", folder=folder, free=f"{free / 1e6:.0f}")
        return Finding(name, False, text)
    return Finding(name, True, tr("{folder} can be written, {free} MB free", folder=folder, free=f"{free / 1e6:.0f}"))


def _desktop() -> list[Finding]:
    if sys.platform in ("win32", "darwin"):
        return []
    from magview.upkeep.desktop import ENTRY, data_home

    if (data_home() / ENTRY).exists():
        return [Finding(tr("desktop"), None, tr("in the menu; `magview desktop --remove` takes it away"))]
    return [Finding(tr("desktop"), None, tr("not in the menu; `magview desktop` puts it there"))]
