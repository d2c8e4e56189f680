"""Dangers on a sheet, as kinds; `status` has the words."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum

from magview.job.derived import sides
from magview.job.requirements import signed_earlier, whole
from magview.job.sheet import NEVER_SKIPPED, STAGES, Job, stage_of


class DangerKind(Enum):
    """Danger that cautions and stages are sorted by."""

    LIVE = "live"
    OTHER_LIVE = "other-live"
    LIVE_LEAD_PULLED = "live-lead-pulled"
    NO_DROP = "no-drop"
    SWITCH_DOES_NOT_STOP = "switch-does-not-stop"
    WRONG_STROKE = "wrong-stroke"
    NOT_SAFE = "not-safe"


@dataclass(frozen=True)
class Danger:
    """One danger, the stage that shows it, and what its words need."""

    kind: DangerKind
    stage: str
    side: str = ""
    drop_rpm: float = 0.0


def dangers(job: Job) -> tuple[Danger, ...]:
    """Dangers that the readings of a sheet show, in the order of its stages, each once.

    A reading warns for as long as it stands on the sheet, whatever was done or skipped since.
    """
    return tuple(dict.fromkeys(_dangers(job)))


def drop_is_too_small(job: Job, side: str) -> bool:
    """Whether the drop on "left" or "right" is none at all, or below the low side where one is given.

    No drop means that the other magneto is probably not grounded, or that this one fires far too early
    (FAA-H-8083-32B, ch. 4; common practice). A single magneto has no drop.
    """
    drop, low = getattr(job.ground_run, f"drop_{side}_rpm"), job.limits.drop_low_rpm
    return side in _two(job) and drop is not None and (drop <= 0.0 or (low is not None and drop < low - 1e-9))


def _two(job: Job) -> tuple[str, ...]:
    return sides(job) if len(sides(job)) > 1 else ()


def _dangers(job: Job) -> Iterator[Danger]:
    yield from _not_safe(job)
    lead, closing, run = job.switch_lead, job.closing, job.ground_run
    for kind, prefix in ((DangerKind.LIVE, ""), (DangerKind.OTHER_LIVE, "other_")):
        if False in (getattr(lead, f"{prefix}{by}_grounded_switch_off") for by in ("meter", "lamp")):
            yield Danger(kind, "switch_lead")
    if lead.lamp_grounded_plug_out is False and not lead.jumper_fitted:
        yield Danger(DangerKind.LIVE_LEAD_PULLED, "switch_lead")
    if job.dead_centre.stroke not in (None, "compression"):
        yield Danger(DangerKind.WRONG_STROKE, "dead_centre")
    for kind, prefix in ((DangerKind.LIVE, ""), (DangerKind.OTHER_LIVE, "other_")):
        if getattr(closing, f"{prefix}lead_grounded_switch_off") is False:
            yield Danger(kind, "closing")
    for side in ("left", "right"):
        if drop_is_too_small(job, side):
            yield Danger(DangerKind.NO_DROP, "ground_run", side, getattr(run, f"drop_{side}_rpm"))
    if run.dead_cut_checked is False:
        yield Danger(DangerKind.SWITCH_DOES_NOT_STOP, "ground_run")


def _not_safe(job: Job) -> Iterator[Danger]:
    """Stages done although what makes them safe is not done, or no longer whole."""
    if signed_earlier(job):  # said as such, and not anew
        return
    worked = any(stage_of(job, name).state == "done" for name in STAGES if name not in NEVER_SKIPPED)
    for name in NEVER_SKIPPED:
        if not whole(job, name) and (worked or stage_of(job, name).state == "skipped"):
            yield Danger(DangerKind.NOT_SAFE, name)
