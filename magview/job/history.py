"""Earlier sheets of the same magneto: side by side, how gap and timing drift over its hours, and when to look again.

What a job left and what the next one found frame hours in which nobody touched the setting. These spans, laid end to
end, make one course of drift: re-settings drop out.
"""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from math import inf, isfinite, sqrt
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from magview.job import svg
from magview.job.judge import opening_limit_deg
from magview.job.library import read_job
from magview.job.sheet import Job
from magview.physics.uncertainty import coverage_factor
from magview.spec.base import SpecError
from magview.spec.frozen import frozen
from magview.spec.language import marked, number, tr
from magview.spec.units import format_angle, format_length

Array = NDArray[np.float64]

MOST_FILES = 500
_HORIZON_H = 5_000
"""Nobody plans further ahead."""

GAP_HALF_WIDTH_MM = 0.0127
"""Of one gap reading: half of a step of 0.001 in blades."""

OPENING_HALF_WIDTH_DEG = 0.5
"""Of one opening reading: rule and straightedge by hand (common practice)."""


@frozen
class Found:
    """An earlier sheet and its file."""

    path: Path
    job: Job


@frozen
class Line:
    """A robust straight line through the course of drift, and what it says of later hours.

    Slope: median of the slopes of all pairs (Theil 1950, Sen 1968). Spread of a reading: 1.4826 × the median
    deviation from the line, for the two constants fitted, but no less than the half-width of the instrument allows.
    """

    hours_h: tuple[float, ...]
    drift: tuple[float, ...]
    """Away from the first as-left reading, re-settings taken off [mm or deg]."""
    slope_per_h: float
    slope_uncertainty_per_h: float
    reading_uncertainty: float
    factor: float
    """Coverage factor of the intervals (t distribution)."""
    last_h: float
    last_left: float
    """The reading as last left [mm or deg]: what is predicted starts here."""

    def predict(self, hours_h: float | Array) -> tuple[Array, Array, Array]:
        """Value and prediction interval (low, high) of a reading taken at magneto hours ≥ the last [h], any shape."""
        ahead = np.asarray(hours_h, dtype=float) - self.last_h
        value = self.last_left + self.slope_per_h * ahead
        # Of the value as left, of the line, and of the reading to come.
        away = self.factor * np.sqrt(2 * self.reading_uncertainty**2 + (ahead * self.slope_uncertainty_per_h) ** 2)
        return value, value - away, value + away

    def leaves_at_h(self, low: float, high: float) -> float:
        """Magneto hours [h, whole] from which a reading may be outside limits, by the interval; infinity if never.

        The limits are those of the value without the interval's share at the start: a reading that is unsure from the
        first hour on tells nothing of drift, so only what drift adds is counted.
        """
        hours = self.last_h + np.arange(_HORIZON_H + 1.0)
        value, down, up = self.predict(hours)
        start = up[0] - value[0]
        out = (down + start < low) | (up - start > high)
        return float(hours[int(np.argmax(out))]) if out.any() else inf


@frozen
class Drift:
    """Sheets of one magneto side by side, their drift, and the next check."""

    jobs: tuple[Job, ...]
    """By hours, oldest first."""
    gap: Line | None
    opening: Line | None
    next_check_h: float | None
    """The earliest of: as entered, and where gap or opening may leave its limits."""
    sentences: tuple[str, ...]

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

    def gap_figure(self) -> tuple[str, str] | None:
        """The gap over hours as a drawing with its caption."""
        return _figure(self.jobs, self.gap, "gap_mm", tr("Largest gap [mm]"), self._gap_limits())

    def timing_figure(self) -> tuple[str, str] | None:
        """The opening over hours as a drawing with its caption."""
        late = opening_limit_deg(self.jobs[-1])
        limits = None if late is None else (-late, late)
        return _figure(self.jobs, self.opening, "opening_error_deg", tr("Opening from the E-gap [rotor °]"), limits)

    def _gap_limits(self) -> tuple[float, float] | None:
        low, high = self.jobs[-1].limits.gap_low_mm, self.jobs[-1].limits.gap_high_mm
        return None if low is None or high is None else (low, high)


def identity(job: Job) -> tuple[str, str] | None:
    """Type and serial number of the magneto, as they compare; None without a serial number."""
    kind, serial = (" ".join(t.casefold().split()) for t in (job.magneto.type, job.magneto.serial))
    return (kind, serial) if serial else None


def earlier_jobs(folder: Path, job: Job, without: Path | None = None) -> tuple[list[Found], list[str]]:
    """Sheets of the same magneto in a folder, and a sentence for every file that could not be read.

    `without` is the sheet's own file. At most MOST_FILES files are looked at. Raises SpecError where the folder
    cannot be read, or the sheet has no serial number to go by.
    """
    wanted = identity(job)
    if wanted is None:
        raise SpecError(
            tr("the magneto has no serial number on this sheet, so that no earlier one can be told to be its own")
        )
    try:
        paths = sorted(p for p in folder.iterdir() if p.suffix == ".json" and not p.name.startswith("."))
    except OSError as error:
        raise SpecError(
            tr("{name}: cannot be read: {reason}", name=folder.name, reason=error.strerror or error)
        ) from error
    found, refused = [], []
    if len(paths) > MOST_FILES:
        refused.append(
            tr(
                "{name}: holds {count} files; only the first {most} were looked at",
                name=folder.name,
                count=len(paths),
                most=MOST_FILES,
            )
        )
    own = None if without is None else without.resolve()
    for path in paths[:MOST_FILES]:
        if path.resolve() == own:
            continue
        try:
            other = read_job(path)
        except SpecError as error:
            if path.name.endswith("-job.json"):  # other files of ours may lie beside
                refused.append(str(error))
            continue
        if identity(other) == wanted:
            found.append(Found(path, other))
    return found, refused


def drift_of(jobs: Sequence[Job], probability: float = 0.95) -> Drift:
    """Sheets of one magneto, in any order, as one course. Those without the magneto's hours are only listed."""
    ordered = tuple(sorted(jobs, key=lambda j: (j.magneto.hours_h if j.magneto.hours_h is not None else -1.0, j.day)))
    gap = _line(ordered, "gap_mm", GAP_HALF_WIDTH_MM, probability)
    opening = _line(ordered, "opening_error_deg", OPENING_HALF_WIDTH_DEG, probability)
    when, sentences = _next_check(ordered, gap, opening)
    return Drift(ordered, gap, opening, when, sentences)


def _line(jobs: Sequence[Job], field: str, half_width: float, probability: float) -> Line | None:
    """The course of one reading; None without two sheets that frame a span of hours."""
    hours: list[float] = []
    drift: list[float] = []
    left: tuple[float, float] | None = None  # hours and reading as the last job left it
    for job in jobs:
        at, found, after = job.magneto.hours_h, getattr(job.as_found, field), getattr(job.internal_timing, field)
        if at is None:
            continue
        if left is not None and found is not None and at > left[0]:
            if not hours:
                hours, drift = [left[0]], [0.0]
            drift.append(drift[-1] + found - left[1])
            hours.append(at)
        # An untouched setting goes on as it was found.
        now = after if after is not None else found
        if now is not None:
            left = (at, float(now))
    if len(hours) < 2 or left is None:
        return None
    h, y = np.array(hours), np.array(drift)
    i, j = np.triu_indices(len(h), 1)
    slope = float(np.median((y[j] - y[i])[h[j] > h[i]] / (h[j] - h[i])[h[j] > h[i]]))
    rest = y - slope * h
    reading = half_width / sqrt(3.0)
    if len(h) > 2:
        spread = 1.4826 * float(np.median(np.abs(rest - np.median(rest)))) * sqrt(len(h) / (len(h) - 2))
        reading = max(reading, spread)
    across = sqrt(float(((h - h.mean()) ** 2).sum()))
    # With two points all that is known of the spread is the instrument's half-width.
    factor = coverage_factor(probability, len(h) - 2 if len(h) > 2 else inf)
    return Line(tuple(hours), tuple(drift), slope, reading / across, reading, factor, left[0], left[1])


_GAP_WORDS = (
    marked(
        "The gap moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, between "
        "{low} and {high} 95 times in 100."
    ),
    marked("The gap may leave its limits from {hours} h on."),
)
_OPENING_WORDS = (
    marked(
        "The opening moved {change} in 100 h (± {spread}); after 100 h more, at {at} h, it should read {value}, "
        "between {low} and {high} 95 times in 100."
    ),
    marked("The opening may leave its limits from {hours} h on."),
)


def _as_entered(hours_h: float | None, day: str) -> str:
    if hours_h is None:
        return tr("Next check as entered: {day}.", day=day)
    if not day:
        return tr("Next check as entered: at {hours} h.", hours=number(hours_h))
    return tr("Next check as entered: at {hours} h or {day}.", hours=number(hours_h), day=day)


def _next_check(jobs: Sequence[Job], gap: Line | None, opening: Line | None) -> tuple[float | None, tuple[str, ...]]:
    if not jobs:
        return None, ()
    last, sentences = jobs[-1], []
    times = [] if last.next_check.hours_h is None else [last.next_check.hours_h]
    if last.next_check.hours_h is not None or last.next_check.day:
        sentences.append(_as_entered(last.next_check.hours_h, last.next_check.day))
    late, limits = opening_limit_deg(last), last.limits
    for line, low, high, (moved, may_leave), words in (
        (gap, limits.gap_low_mm, limits.gap_high_mm, _GAP_WORDS, _length),
        (opening, None if late is None else -late, late, _OPENING_WORDS, _angle),
    ):
        if line is None:
            continue
        at = line.last_h + 100.0
        value, down, up = (float(v) for v in line.predict(at))
        change = words(100 * line.slope_per_h)
        spread = words(100 * line.factor * line.slope_uncertainty_per_h).lstrip("+")
        sentences.append(
            tr(
                moved,
                change=change,
                spread=spread,
                at=number(at),
                value=words(value),
                low=words(down),
                high=words(up),
            )
        )
        if low is not None and high is not None:
            leaves = line.leaves_at_h(low, high)
            if isfinite(leaves):
                times.append(leaves)
                sentences.append(tr(may_leave, hours=number(leaves)))
    when = min(times) if times else None
    if when is not None:
        sentences.append(
            tr("Look again at {when} h of the magneto, or sooner as the manual says.", when=number(when, "g"))
        )
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
        places = {"name": name, "at": number(at), "hours": number(abs(now - at))}
        if now > at:
            return tr("Next check of {name}: due at {at} h of the magneto, {hours} h ago.", **places)
        return tr("Next check of {name}: due at {at} h of the magneto, in {hours} h.", **places)
    if job.next_check.day:
        left = (date.fromisoformat(job.next_check.day) - date.fromisoformat(today)).days
        if left <= _SOON_DAYS:
            places = {"name": name, "day": job.next_check.day, "days": str(abs(left))}
            if left < 0:
                return tr("Next check of {name}: due on {day}, {days} days ago.", **places)
            return tr("Next check of {name}: due on {day}, in {days} days.", **places)
    return None


def _length(mm: float | None) -> str:
    return "–" if mm is None else format_length(mm, False)


def _angle(deg: float | None) -> str:
    return "–" if deg is None else format_angle(deg, True)


def _cells(job: Job) -> tuple[str, ...]:
    hours = "–" if job.magneto.hours_h is None else number(job.magneto.hours_h)
    side = "right" if job.magneto.position == "right" else "left"
    fires = (getattr(stage, f"{side}_btdc_deg") for stage in (job.as_found, job.synchronising))
    found, left = job.as_found, job.internal_timing
    return (
        job.day or "–", hours, _length(found.gap_mm), _length(left.gap_mm), _angle(found.opening_error_deg),
        _angle(left.opening_error_deg), *(_angle(f) for f in fires),
    )  # fmt: skip


# ---------------------------------------------------------------------- drawing


def _figure(
    jobs: Sequence[Job], line: Line | None, field: str, title: str, limits: tuple[float, float] | None
) -> tuple[str, str] | None:
    points: list[tuple[float, float, bool]] = []
    for job in jobs:
        for stage, left in ((job.as_found, False), (job.internal_timing, True)):
            value = getattr(stage, field)
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
