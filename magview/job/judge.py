"""Judgement of a sheet: verdicts, missing entries, progress. Derived each time, never stored."""

from __future__ import annotations

from dataclasses import dataclass

from magview.bench.conditions import Condition
from magview.job.checklists import checks
from magview.job.danger import Danger, dangers, drop_is_too_small
from magview.job.derived import (
    LampDue,
    both_contradict,
    drop_difference_rpm,
    lamp_out_of_date,
    opening_limit_deg,
    side_of,
    sides,
    teeth_contradict,
    timing_difference_deg,
    true_btdc_deg,
)
from magview.job.read_with import overdue
from magview.job.requirements import missing, not_yet, refuse, signed_earlier, skip_refusal
from magview.job.sheet import NEVER_SKIPPED, STAGES, Job, change_in, signature_holds, stage_of, title_of
from magview.spec.language import tr

_HAIR = 1e-9
"""A reading at the very limit must not fail for the last bit."""


@dataclass(frozen=True)
class Verdict:
    """One reading against its limits."""

    stage: str
    field: str
    """Its place in the stage, such as "gap_mm" or "lobes[0].gap_mm"."""
    value: float | bool | str
    """As judged: a reading of the disc counted from the true top dead centre."""
    low: float | None
    high: float | None
    wanted: bool | str | None
    """Value that a reading other than a number must have."""
    ok: bool
    as_left: bool
    """Whether the work is judged by it; what was found is shown, and need not be in limits."""


@dataclass(frozen=True)
class Progress:
    """Progress of a sheet through its stages."""

    open: tuple[str, ...]
    """Stages neither done nor skipped."""
    out: tuple[Verdict, ...]
    """Readings of the work as left that are out of limits, or checks that failed."""
    missing: tuple[str, ...]
    """Gaps in stages marked as done, one sentence each."""
    doubtful: tuple[str, ...]
    """Stages done whose own entries do not go together."""
    signature: bool | None
    """Whether the signature holds; None without one."""
    dangers: tuple[Danger, ...]
    """Dangers on the sheet."""

    @property
    def finished(self) -> bool:
        """Nothing open, nothing missing, signed, and unchanged since."""
        return not self.open and not self.missing and self.signature is True

    @property
    def passed(self) -> bool:
        """Finished, as left within all limits given, nothing dangerous, and nothing on it contradicts itself."""
        return self.finished and not self.out and not self.doubtful and not self.dangers


def progress(job: Job) -> Progress:
    """Progress of a sheet through its stages."""
    done = [name for name in STAGES if stage_of(job, name).state == "done"]
    lacking = {name: missing(job, name) for name in done}
    if not signed_earlier(job):
        skipped = (name for name in NEVER_SKIPPED if stage_of(job, name).state == "skipped")
        lacking |= {name: (tr("it was skipped, which is not allowed"),) for name in skipped}
    return Progress(
        open=tuple(name for name in STAGES if stage_of(job, name).state == "open"),
        out=tuple(v for v in verdicts(job) if v.as_left and not v.ok and stage_of(job, v.stage).state != "skipped"),
        missing=tuple(f"{title_of(name)}: {', '.join(lacks)}" for name, lacks in lacking.items() if lacks),
        doubtful=tuple(name for name in done if doubtful(job, name)),
        signature=signature_holds(job),
        dangers=dangers(job),
    )


def finish(job: Job, name: str) -> Job:
    """Mark a stage as done. Raises SpecError, in one sentence, while something is missing or safety comes first."""
    stage_of(job, name)
    refuse(not_yet(job, name))
    return change_in(job, name, state="done", reason="")


def skip(job: Job, name: str, reason: str) -> Job:
    """Skip a stage for a reason. Raises SpecError for one that says nothing, and for what makes the work safe."""
    stage_of(job, name)
    refuse(skip_refusal(job, name, reason))
    return change_in(job, name, state="skipped", reason=reason)


# ---------------------------------------------------------------------- verdicts


def verdicts(job: Job) -> tuple[Verdict, ...]:
    """Every reading that has a limit, judged. Readings not taken and limits not given bring no verdict."""
    found = [
        *_checks(job, "cautions"),
        *_lead(job),
        *_yes("dead_centre", "stroke", job.dead_centre.stroke, "compression"),
        *_setting(job, "as_found", as_left=False),
        *_engine(job, "as_found", as_left=False),
        *_yes("as_found", "finger_at_no_1", job.as_found.finger_at_no_1, True, as_left=False),
        *_setting(job, "internal_timing", as_left=True),
        *_lobes(job),
        *_teeth(job),
        *_engine(job, "synchronising", as_left=True),
        *_between(
            "synchronising",
            "difference_deg",
            timing_difference_deg(job),
            *_about(0.0, job.limits.synchronising_tolerance_deg),
        ),
        *_yes("synchronising", "finger_at_no_1", job.synchronising.finger_at_no_1, True),
        *_checks(job, "closing"),
        *_closing(job),
        *_run(job),
    ]
    return tuple(found)


_LIMITED = {
    "as_found": ("mark_offset_mm", "gap_mm", "left_btdc_deg", "right_btdc_deg"),
    "internal_timing": ("mark_offset_mm", "gap_mm"),
    "tooth_shift": ("reads_btdc_deg", "result_btdc_deg"),
    "synchronising": ("left_btdc_deg", "right_btdc_deg", "difference_deg"),
    "ground_run": ("drop_left_rpm", "drop_right_rpm", "drop_difference_rpm"),
}
"""Readings that have a limit wherever somebody gave one."""


def outdated(job: Job) -> tuple[tuple[str, str], ...]:
    """Readings that are not judged because they are out of date: stage and field."""
    return (("tooth_shift", "reads_btdc_deg"),) if stale_lamp(job) is not None else ()


def unjudged(job: Job) -> tuple[tuple[str, str], ...]:
    """Readings taken that a limit would judge, where none was given: stage and field."""
    judged = {(v.stage, v.field) for v in verdicts(job)} | set(outdated(job))
    derived = {
        "difference_deg": timing_difference_deg(job),
        "drop_difference_rpm": drop_difference_rpm(job),
    }
    return tuple(
        (name, field)
        for name, fields in _LIMITED.items()
        for field in fields
        if (name, field) not in judged
        and (derived[field] if field in derived else getattr(stage_of(job, name), field)) is not None
    )


def _between(
    stage: str, field: str, value: float | None, low: float | None, high: float | None, as_left: bool = True
) -> list[Verdict]:
    if value is None or (low is None and high is None):
        return []
    ok = (low is None or value >= low - _HAIR) and (high is None or value <= high + _HAIR)
    return [Verdict(stage, field, value, low, high, None, ok, as_left)]


def _about(middle: float | None, tolerance: float | None) -> tuple[float | None, float | None]:
    return (None, None) if middle is None or tolerance is None else (middle - tolerance, middle + tolerance)


def _yes(stage: str, field: str, value: bool | str | None, wanted: bool | str, as_left: bool = True) -> list[Verdict]:
    return [] if value is None else [Verdict(stage, field, value, None, None, wanted, value == wanted, as_left)]


def _checks(job: Job, name: str) -> list[Verdict]:
    stage = stage_of(job, name)
    if stage.state == "open":  # not yet confirmed is not failed
        return []
    return [v for f in checks(stage) for v in _yes(name, f, getattr(stage, f), True)]


def _lead(job: Job) -> list[Verdict]:
    lead, wanted = job.switch_lead, {"off": True, "on": False}
    found = [
        verdict
        for prefix in ("", "other_")
        for by in ("meter", "lamp")
        for way, want in wanted.items()
        for field in (f"{prefix}{by}_grounded_switch_{way}",)
        for verdict in _yes("switch_lead", field, getattr(lead, field), want)
    ]
    # Without a tab a pulled lead grounds nothing: then a jumper must have been on.
    if not lead.jumper_fitted:
        found += _yes("switch_lead", "lamp_grounded_plug_out", lead.lamp_grounded_plug_out, True)
    return found


def _closing(job: Job) -> list[Verdict]:
    return [
        verdict
        for prefix in ("", "other_")
        for way, want in (("off", True), ("on", False))
        for field in (f"{prefix}lead_grounded_switch_{way}",)
        for verdict in _yes("closing", field, getattr(job.closing, field), want)
    ]


def _setting(job: Job, name: str, as_left: bool) -> list[Verdict]:
    stage, limits = getattr(job, name), job.limits
    mark = _about(0.0, limits.mark_tolerance_mm)
    return [
        *_between(name, "mark_offset_mm", stage.mark_offset_mm, *mark, as_left),
        *_between(name, "gap_mm", stage.gap_mm, limits.gap_low_mm, limits.gap_high_mm, as_left),
    ]


def _engine(job: Job, name: str, as_left: bool) -> list[Verdict]:
    return [
        verdict
        for side in ("left", "right")
        for verdict in _between(
            name, f"{side}_btdc_deg", true_btdc_deg(job, name, f"{side}_btdc_deg"), *_firing(job, side), as_left,
        )
    ]  # fmt: skip


def _lobes(job: Job) -> list[Verdict]:
    limits, magneto = job.limits, job.described
    found = []
    for i, lobe in enumerate(job.lobes.lobes):
        place = f"lobes[{i}]."
        found += _between("lobes", f"{place}gap_mm", lobe.gap_mm, limits.gap_low_mm, limits.gap_high_mm)
        # A compensated cam's opening is judged on lobe 1 (guide: theory-setting).
        if magneto is not None and (i == 0 or not magneto.compensated) and limits.mark_tolerance_mm is not None:
            late = opening_limit_deg(job)
            found += _between("lobes", f"{place}opening_error_deg", lobe.opening_error_deg, *_about(0.0, late))
    return found


def firing_limits_deg(job: Job, side: str) -> tuple[float, float] | None:
    """Between what the "left" or "right" magneto should fire [crank deg before TDC]; None if not given."""
    low, high = _about(getattr(job.limits, f"{side}_btdc_deg"), job.limits.timing_tolerance_deg)
    return None if low is None or high is None else (low, high)


def _firing(job: Job, side: str) -> tuple[float | None, float | None]:
    return firing_limits_deg(job, side) or (None, None)


def wanted_outside(job: Job) -> bool:
    """Whether the tooth shift aims outside the sheet's limits."""
    wanted, limits = job.tooth_shift.wanted_btdc_deg, firing_limits_deg(job, job.tooth_shift.side)
    return wanted is not None and limits is not None and not limits[0] - _HAIR <= wanted <= limits[1] + _HAIR


def conditions(job: Job) -> dict[Condition, bool | None]:
    """Whether each condition holds as left, by the sheet's readings of this magneto; None where it was not read.

    The straightedge at its mark tells of the magnet as the contacts open; the opening, read as such, of the contacts.
    """
    ok = {(v.stage, v.field): v.ok for v in verdicts(job)}
    fires, stroke = ok.get(("synchronising", f"{side_of(job)}_btdc_deg")), ok.get(("dead_centre", "stroke"))
    late, opens = opening_limit_deg(job), job.internal_timing.opening_error_deg
    return {
        Condition.PISTON: False if False in (fires, stroke) else None if None in (fires, stroke) else True,
        Condition.MAGNET: ok.get(("internal_timing", "mark_offset_mm")),
        Condition.CONTACTS: None if late is None or opens is None else abs(opens) <= late + _HAIR,
        Condition.FINGER: ok.get(("synchronising", "finger_at_no_1")),
    }


def stale_lamp(job: Job) -> LampDue | None:
    """The reading that a tooth shift must not be judged by; a sheet signed under earlier rules stands as it is."""
    return None if signed_earlier(job) else lamp_out_of_date(job)


def last_reading_contradicts(job: Job) -> LampDue | None:
    """The last reading of the lamp where it contradicts those before; not of a sheet signed under earlier rules."""
    return None if signed_earlier(job) else both_contradict(job)


def doubtful(job: Job, name: str) -> bool:
    """Whether a stage's own entries contradict each other or those before, or an instrument was overdue."""
    if overdue(job, name):
        return True
    if name == "tooth_shift":
        return wanted_outside(job) or teeth_contradict(job) is not None or stale_lamp(job) is not None
    return name == "synchronising" and last_reading_contradicts(job) is not None


def _teeth(job: Job) -> list[Verdict]:
    # By the limits, and not by what somebody wanted: that may be a slip of the pen. A reading of before the setting
    # was changed is not judged at all.
    within = _firing(job, job.tooth_shift.side)
    return [
        verdict
        for field, as_left in (("reads_btdc_deg", False), ("result_btdc_deg", True))
        if ("tooth_shift", field) not in outdated(job)
        for verdict in _between("tooth_shift", field, true_btdc_deg(job, "tooth_shift", field), *within, as_left)
    ]


def drops(job: Job) -> tuple[str, ...]:
    """The drops that were read, by field, of an engine that has two magnetos."""
    fields = tuple(f"drop_{side}_rpm" for side in sides(job)) if len(sides(job)) > 1 else ()
    return tuple(field for field in fields if getattr(job.ground_run, field) is not None)


def _run(job: Job) -> list[Verdict]:
    run, limits = job.ground_run, job.limits
    found = []
    two = len(sides(job)) > 1
    for side in ("left", "right") if two else ():
        field, drop = f"drop_{side}_rpm", getattr(run, f"drop_{side}_rpm")
        if drop_is_too_small(job, side):
            found.append(Verdict("ground_run", field, drop, limits.drop_low_rpm, limits.drop_rpm, None, False, True))
        else:
            found += _between("ground_run", field, drop, limits.drop_low_rpm, limits.drop_rpm)
        found += _yes("ground_run", f"runs_{side}", getattr(run, f"runs_{side}"), "smooth")
    difference = drop_difference_rpm(job) if two else None
    found += _between("ground_run", "drop_difference_rpm", difference, None, limits.drop_difference_rpm)
    return found + _yes("ground_run", "dead_cut_checked", run.dead_cut_checked, True)
