"""Earlier sheets of the same magneto: side by side, how gap and timing drift over its hours, and when to look again.

What a job left and what the next one found frame hours in which nobody touched the setting. These spans, laid end to
end, make one course of drift: re-settings drop out.
"""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from math import isfinite
from pathlib import Path

import numpy as np

from magview.drawing import svg
from magview.job.drift_line import READINGS, DriftLine, DriftReading, line_of
from magview.job.library import read_job
from magview.job.sheet import Job
from magview.spec.base import SpecError
from magview.spec.formats import is_ours, stem_of
from magview.spec.language import marked, number, tr, tr_n

MAX_FILES = 500


@dataclass(frozen=True)
class Found:
    """An earlier sheet and its file."""

    path: Path
    job: Job


@dataclass(frozen=True)
class Drift:
    """Sheets of one magneto side by side, their drift, and the next check."""

    jobs: tuple[Job, ...]
    """By hours, oldest first."""
    gap: DriftLine | None
    opening: DriftLine | None
    firing: DriftLine | None
    next_check_h: float | None
    """The earliest of: as entered, and where gap, opening or firing may leave its limits [magneto h]."""
    sentences: tuple[str, ...]
    late_check: str = ""
    """Sentence where the next check entered comes after the earliest hours at which a limit may be left."""

    @property
    def table(self) -> tuple[tuple[str, ...], tuple[tuple[str, ...], ...]]:
        """Head and rows: one row a sheet."""
        head = (
            tr("Date"),
            tr("Hours"),
            tr("Gap found"),
            tr("Gap left"),
            tr("Opens found"),
            tr("Opens left"),
            tr("Fires found"),
            tr("Fires left"),
        )
        return head, tuple(_cells(job) for job in self.jobs)

    def figures(self) -> tuple[tuple[str, str], ...]:
        """Gap, opening and firing over hours, each a drawing with its caption; none of what was read only once."""
        drawn = (_figure(self.jobs, getattr(self, name), reading) for name, reading in READINGS.items())
        return tuple(figure for figure in drawn if figure is not None)


def identity(job: Job) -> tuple[str, str] | None:
    """Type and serial number of the magneto, as they compare; None without a serial number."""
    kind, serial = (" ".join(t.casefold().split()) for t in (job.magneto.type, job.magneto.serial))
    return (kind, serial) if serial else None


def earlier_jobs(folder: Path, job: Job, without: Path | None = None) -> tuple[list[Found], list[str]]:
    """Sheets of the same magneto in a folder, and a sentence for every file that could not be read.

    `without` is the sheet's own file. At most MAX_FILES files are looked at. Raises SpecError where the folder
    cannot be read, or the sheet has no serial number to go by.
    """
    wanted = identity(job)
    if wanted is None:
        raise SpecError(
            tr("the magneto has no serial number on this sheet, so that no earlier one can be told to be its own")
        )
    try:
        paths = sorted(p for p in folder.iterdir() if is_ours(p.name) and not p.name.startswith("."))
    except OSError as error:
        raise SpecError(
            tr("{name}: cannot be read: {reason}", name=folder.name, reason=error.strerror or error)
        ) from error
    found, refused = [], []
    if len(paths) > MAX_FILES:
        refused.append(
            tr(
                "{name}: holds {count} files; only the first {most} were looked at",
                name=folder.name,
                count=len(paths),
                most=MAX_FILES,
            )
        )
    own = None if without is None else without.resolve()
    for path in paths[:MAX_FILES]:
        if path.resolve() == own:
            continue
        try:
            other = read_job(path)
        except SpecError as error:
            if stem_of(path).endswith("-job"):  # other files of ours may lie beside
                refused.append(str(error))
            continue
        if identity(other) == wanted:
            found.append(Found(path, other))
    return found, refused


def drift_of(jobs: Sequence[Job], probability: float = 0.95) -> Drift:
    """Sheets of one magneto, in any order, as one course. Those without the magneto's hours are only listed."""
    ordered = tuple(sorted(jobs, key=lambda j: (j.magneto.hours_h if j.magneto.hours_h is not None else -1.0, j.day)))
    lines = {name: line_of(ordered, reading, probability) for name, reading in READINGS.items()}
    when, sentences = _next_check(ordered, lines)
    late = _late_check(ordered, lines)
    return Drift(ordered, lines["gap"], lines["opening"], lines["firing"], when, sentences, late)


def _late_check(jobs: Sequence[Job], lines: Mapping[str, DriftLine | None]) -> str:
    """Sentence where the next check entered is later than the forecast; a day counts by the pace of the sheets."""
    if not jobs:
        return ""
    last, until = jobs[-1], []
    for name, line in lines.items():
        limits = READINGS[name].limits(last)
        if line is not None and limits is not None:
            until.append(line.safe_until_h(*limits))
    safe = min((hours for hours in until if isfinite(hours)), default=None)
    if safe is None:
        return ""
    if last.next_check.hours_h is not None and last.next_check.hours_h > safe:
        return tr(
            "The next check entered, at {entered} h, comes after {safe} h, from when a limit may be left: enter "
            "{safe} h or sooner.",
            entered=last.next_check.hours_h,
            safe=safe,
        )
    then = _hours_on(jobs, last.next_check.day) if last.next_check.day else None
    if then is not None and then > safe:
        return tr(
            "The next check entered, on {day}, comes at about {then} h at the pace of these sheets. From {safe} h on "
            "a limit may be left: enter {safe} h, or an earlier day.",
            day=last.next_check.day,
            then=round(then),
            safe=safe,
        )
    return ""


def _hours_on(jobs: Sequence[Job], day: str) -> float | None:
    """The magneto's hours on a day [h], at the pace from its first sheet to its last; None where none is known."""
    known = [(date.fromisoformat(j.day), j.magneto.hours_h) for j in jobs if j.day and j.magneto.hours_h is not None]
    if len(known) < 2 or known[-1][0] <= known[0][0]:
        return None
    (first, begun), (last, hours) = known[0], known[-1]
    assert begun is not None and hours is not None
    return hours + (hours - begun) * (date.fromisoformat(day) - last).days / (last - first).days


_SCATTERS = marked(
    "{reading}: the readings scatter {times:.1f} times as far as stated. The intervals are as wide as this scatter; "
    "look for a slip, for another magneto's sheet, or for readings that are less sure than stated."
)


def _as_entered(hours_h: float | None, day: str) -> str:
    if hours_h is None:
        return tr("Next check as entered: {day}.", day=day)
    if not day:
        return tr("Next check as entered: at {hours} h.", hours=hours_h)
    return tr("Next check as entered: at {hours} h or {day}.", hours=hours_h, day=day)


def _next_check(jobs: Sequence[Job], lines: Mapping[str, DriftLine | None]) -> tuple[float | None, tuple[str, ...]]:
    if not jobs:
        return None, ()
    last, sentences = jobs[-1], []
    times = [] if last.next_check.hours_h is None else [last.next_check.hours_h]
    if last.next_check.hours_h is not None or last.next_check.day:
        sentences.append(_as_entered(last.next_check.hours_h, last.next_check.day))
    for name, line in lines.items():
        if line is None:
            continue
        of = READINGS[name]
        at = line.last_h + 100.0
        value, low, high = (of.words(float(v)) for v in line.predict(at))
        sentences.append(
            tr(
                of.moved,
                change=of.change_words(100 * line.fit.slope),
                spread=of.words(100 * line.factor * line.fit.slope_u).lstrip("+"),
                at=at,
                value=value,
                low=low,
                high=high,
            )
        )
        limits = of.limits(last)
        if limits is not None:
            until = line.safe_until_h(*limits)
            if isfinite(until):
                times.append(until)
                words = of.may_leave if until > line.last_h else of.may_have_left
                sentences.append(tr(words, hours=until))
        if line.fit.scatter > 1.0:
            sentences.append(tr(_SCATTERS, times=line.fit.scatter, reading=tr(of.title)))
    when = min(times) if times else None
    if when is not None:
        sentences.append(tr("Look again at {when} h of the magneto, or sooner as the manual says.", when=when))
    return when, tuple(sentences)


_SOON_H, _SOON_DAYS = 10.0, 30


def reminder(job: Job, today: str, hours_h: float | None = None, drift: Drift | None = None) -> str | None:
    """One sentence once the next check is due, or nearly; None before.

    Parameters
    ----------
    job : the last sheet of the magneto.
    today : the day, as 2026-11-25.
    hours_h : the magneto's hours now [h]; left out: as on the sheet.
    drift : its sheets together, where they are at hand: what they foretell may come before what was entered.
    """
    now = job.magneto.hours_h if hours_h is None else hours_h
    at = job.next_check.hours_h if drift is None else drift.next_check_h
    name = " ".join(t for t in (job.magneto.type, job.magneto.serial) if t) or tr("this magneto")
    if now is not None and at is not None and now >= at - _SOON_H:
        words = (
            marked("Next check of {name}: due at {at} h of the magneto, {hours} h ago.")
            if now > at
            else marked("Next check of {name}: due at {at} h of the magneto, in {hours} h.")
        )
        return tr(words, name=name, at=at, hours=abs(now - at))
    if job.next_check.day:
        left = (date.fromisoformat(job.next_check.day) - date.fromisoformat(today)).days
        if left <= _SOON_DAYS:
            if left < 0:
                return tr_n(
                    "Next check of {name}: due on {day}, {count} day ago.",
                    "Next check of {name}: due on {day}, {count} days ago.",
                    name=name,
                    day=job.next_check.day,
                    count=-left,
                )
            return tr_n(
                "Next check of {name}: due on {day}, in {count} day.",
                "Next check of {name}: due on {day}, in {count} days.",
                name=name,
                day=job.next_check.day,
                count=left,
            )
    return None


def _cells(job: Job) -> tuple[str, ...]:
    hours = "–" if job.magneto.hours_h is None else number(job.magneto.hours_h)
    read = (reading.words(value(job)) for reading in READINGS.values() for value in (reading.found, reading.left))
    return job.day or "–", hours, *read


# ---------------------------------------------------------------------- drawing


def _figure(jobs: Sequence[Job], line: DriftLine | None, of: DriftReading) -> tuple[str, str] | None:
    title, limits = tr(of.title), of.limits(jobs[-1])
    points: list[tuple[float, float, bool]] = []
    for job in jobs:
        for value, left in ((of.found(job), False), (of.left(job), True)):
            if job.magneto.hours_h is not None and value is not None:
                points.append((job.magneto.hours_h, value, left))
    if len(points) < 2:
        return None
    end = max(h for h, _, _ in points)
    ahead = np.linspace(end, end + max(50.0, 0.4 * (end - min(h for h, _, _ in points))), 30)
    bands = None if line is None or ahead[0] < line.last_h else line.predict(ahead)
    plot = svg.Plot(title, tr("magneto hours [h]"), points, limits, None if bands is None else (ahead, *bands))
    caption = (
        tr(
            "{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits.",
            title=title,
        )
        if bands is None
        else tr(
            "{title} over the magneto's hours. Open: as found; filled: as left; dashed: limits; grey: where the next "
            "reading should lie, 95 times in 100.",
            title=title,
        )
    )
    return svg.plot_svg(plot), caption
