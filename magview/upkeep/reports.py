"""Reports of the program's own faults: what, where, which versions, what was done last. Kept on this computer only.

A report holds no names, no typed words and no paths of the person's own: of what was done, kinds of act and numbers;
of messages, what is left when file names, folders and quoted words are taken out.
"""

from __future__ import annotations

import contextlib
import dataclasses
import getpass
import platform
import re
import sys
import time
import traceback
from collections.abc import Iterable
from pathlib import Path

from magview import __version__
from magview.spec.base import SpecError
from magview.spec.files import write_text
from magview.spec.language import tr

MAX_KEPT = 20
"""Reports that are kept; the oldest go."""

MAX_ACTS = 20
"""Acts that a report tells, the last ones."""

_NEW, _OFFERED, _TRACE = "report-*.txt", "offered-*.txt", "trace-*.txt"
_PACKAGE = Path(__file__).resolve().parents[1]
_LEFT_S = 30 * 86_400.0
"""Age at which an empty trace can no longer be a living program's [s]."""


def fault_text(error: BaseException, acts: Iterable[object] = ()) -> str:
    """A whole report of an exception and of the acts (frozen dataclasses, oldest first) that came before it."""
    return _text(trace_text(error), _acts_text(acts))


def end_text(trace: str) -> str:
    """A whole report of a program that the system ended, from what faulthandler wrote."""
    return _text(scrubbed(trace), tr("not known: the system ended the program at once"))


def _text(what: str, acts: str) -> str:
    return "\n".join([
        tr("magview: report of a fault"),
        tr("Kept on this computer; nothing is sent anywhere by itself."),
        "",
        tr("When: {when}", when=time.strftime("%Y-%m-%d %H:%M")),
        tr("Versions:"),
        *(f"  {name} {number}" for name, number in versions()),
        "",
        tr("What and where:"),
        what.rstrip(),
        "",
        tr("What was done last:"),
        acts.rstrip(),
        "",
    ])  # fmt: skip


def versions() -> list[tuple[str, str]]:
    """Names and versions of the program and of all it stands on; "-" for what is not installed."""
    from importlib.metadata import PackageNotFoundError, version

    found = [("magview", __version__), ("Python", platform.python_version())]
    for name in ("PySide6-Essentials", "pyqtgraph", "numpy", "scipy", "pydantic", "platformdirs"):
        try:
            found.append((name, version(name)))
        except PackageNotFoundError:
            found.append((name, "-"))
    return [*found, (platform.system() or sys.platform, platform.release() or "-")]


# ---------------------------------------------------------------------- in words without persons


def trace_text(error: BaseException) -> str:
    """Return where an exception came from, its causes included, without anything of the person's own."""
    summary = traceback.TracebackException.from_exception(error, limit=-30)
    return scrubbed("".join(summary.format()))


def scrubbed(text: str) -> str:
    """The text without what tells who or where somebody is: folders, file names, quoted words, the login name."""
    return "\n".join(_scrubbed_line(line) for line in text.splitlines())


def _scrubbed_line(line: str) -> str:
    place = re.match(r'(\s*File )"([^"]*)"(,? line \d+.*)$', line)
    if place is not None:
        return f'{place[1]}"{_short(place[2])}"{place[3]}'
    if line.startswith("    "):  # a line of a program's text, as it stands in the package
        return line
    line = re.sub(r"'[^']*'|\"[^\"]*\"|“[^”]*”", "“…”", line)
    line = re.sub(r"(?:[A-Za-z]:)?[\\/][^:\"“”]*", "…", line)
    line = re.sub(r"(?:(?<=: )|^)[^:\n]*\.[A-Za-z]\w{1,7}(?=: )", _name_of_file, line)
    for word in _persons():
        line = re.sub(rf"(?<!\w){re.escape(word)}(?!\w)", "…", line)
    return line


def _name_of_file(found: re.Match[str]) -> str:
    # Classes are named alike: "package.module.Trouble: why"; those stay.
    return found[0] if re.fullmatch(r"[\w.]+(Error|Exception|Warning|Exit|Interrupt)", found[0]) else "…"


def _persons() -> list[str]:
    words = {Path.home().name, platform.node()}
    with contextlib.suppress(Exception):  # no such user, no such variable: then there is no name to hide
        words.add(getpass.getuser())
    return sorted((w for w in words if len(w) > 2 and w != "root"), key=len, reverse=True)


def _short(path: str) -> str:
    """A program file's path from its package on."""
    place = Path(path)
    with contextlib.suppress(ValueError):
        return f"magview/{place.relative_to(_PACKAGE).as_posix()}"
    parts = place.parts
    if "site-packages" in parts:
        return "/".join(parts[len(parts) - parts[::-1].index("site-packages") :])
    return place.name


def _acts_text(acts: Iterable[object]) -> str:
    lines: list[str] = []
    last, times = "", 0
    for act in [*acts]:
        kind = re.sub(r"(?<=[a-z])(?=[A-Z])", " ", type(act).__name__).capitalize()
        times = times + 1 if kind == last else 1
        if kind == last:
            lines.pop()
        last = kind
        lines.append(_line(kind, times, act))
    return "\n".join(lines[-MAX_ACTS:]) or tr("nothing")


def _line(kind: str, times: int, act: object) -> str:
    values = []
    for field in dataclasses.fields(act) if dataclasses.is_dataclass(act) else ():
        value = getattr(act, field.name)
        if isinstance(value, bool | int | float):  # words may be a person's, and a model is a whole file
            values.append(f"{field.name} {value:g}" if isinstance(value, float) else f"{field.name} {value}")
    again = f" × {times}" if times > 1 else ""
    return f"  {kind}{again}{': ' if values else ''}{', '.join(values)}"


# ---------------------------------------------------------------------- on disk


def keep(folder: Path, text: str) -> Path:
    """Keep a report; returns its file. Raises SpecError where the disk does not take it."""
    try:
        folder.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise SpecError(
            tr("nothing can be kept in {folder}: {reason}", folder=folder, reason=error.strerror or error)
        ) from error
    # One look at the clock: two, with the turn of a second between them, would put the newest before others.
    seconds, rest_ns = divmod(time.time_ns(), 1_000_000_000)
    path = folder / f"report-{time.strftime('%Y%m%d-%H%M%S', time.localtime(seconds))}-{rest_ns:09d}.txt"
    write_text(path, text)
    for old in kept(folder)[MAX_KEPT:]:
        with contextlib.suppress(OSError):
            old.unlink()
    return path


def kept(folder: Path) -> list[Path]:
    """All reports, the newest first."""
    found = [*_in(folder, _NEW), *_in(folder, _OFFERED)]
    return sorted(found, key=lambda p: p.name.split("-", 1)[1], reverse=True)


def not_offered(folder: Path) -> list[Path]:
    """Reports that nobody has been shown yet, the newest first."""
    return sorted(_in(folder, _NEW), reverse=True)


def offered(path: Path) -> Path:
    """Note that a report has been shown; returns its file."""
    if not path.name.startswith("report-"):
        return path
    to = path.with_name(path.name.replace("report-", "offered-", 1))
    with contextlib.suppress(OSError):
        path.rename(to)
        return to
    return path


def _in(folder: Path, pattern: str) -> list[Path]:
    try:
        return list(folder.glob(pattern))
    except OSError:
        return []


# ---------------------------------------------------------------------- ended by the system


def gather_traces(folder: Path) -> None:
    """Make reports of the traces of ended programs. An empty file may be a running program's and is left alone."""
    for path in _in(folder, _TRACE):
        try:
            if path.stat().st_size == 0:
                if time.time() - path.stat().st_mtime > _LEFT_S:
                    path.unlink()
                continue
            taken = path.with_suffix(".taken")
            path.rename(taken)  # first, or two benches that start together would each make a report of it
            try:
                keep(folder, end_text(taken.read_text(encoding="utf-8", errors="replace")[:100_000]))
            except SpecError:
                taken.rename(path)
            else:
                taken.unlink()
        except OSError:
            continue
