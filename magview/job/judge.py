"""What a sheet says of itself: verdicts, what is missing, how far it has come. Derived each time, never stored."""

from __future__ import annotations

from math import atan2, degrees

from magview.job import parts
from magview.job.sheet import STAGES, Job, change_in, signature_holds, stage_of, title_of
from magview.physics.coupling import finest_shift_deg, rotor_shift_deg
from magview.physics.engine import disc_zero_error_deg
from magview.spec.base import SpecError
from magview.spec.frozen import frozen
from magview.spec.language import inside, together, tr

_HAIR = 1e-9
"""A reading at the very limit must not fail for the last bit."""


@frozen
class Verdict:
    """One reading against its limits."""

    stage: str
    field: str
    """Its place in the stage, such as "gap_mm" or "lobes[0].gap_mm"."""
    value: float | bool
    low: float | None
    high: float | None
    wanted: bool | None
    """What a yes-or-no reading must be."""
    ok: bool
    as_left: bool
    """Whether the work is judged by it; what was found is shown, and need not be in limits."""


@frozen
class Progress:
    """How far a sheet has come."""

    open: tuple[str, ...]
    """Stages neither done nor skipped."""
    out: tuple[Verdict, ...]
    """Readings of the work as left that are out of limits, or checks that failed."""
    missing: tuple[str, ...]
    """What stages marked as done still lack, one sentence each."""
    doubtful: tuple[str, ...]
    """Stages done whose own entries do not go together."""
    signature: bool | None
    """Whether the signature holds; None without one."""

    @property
    def finished(self) -> bool:
        """Nothing open, nothing missing, signed, and unchanged since."""
        return not self.open and not self.missing and self.signature is True

    @property
    def passed(self) -> bool:
        """Finished, as left within all limits given, and nothing on it contradicts itself."""
        return self.finished and not self.out and not self.doubtful


def progress(job: Job) -> Progress:
    """How far a sheet has come."""
    done = [name for name in STAGES if stage_of(job, name).state == "done"]
    return Progress(
        open=tuple(name for name in STAGES if stage_of(job, name).state == "open"),
        out=tuple(v for v in verdicts(job) if v.as_left and not v.ok and stage_of(job, v.stage).state != "skipped"),
        missing=tuple(f"{title_of(name)}: {', '.join(lacks)}" for name in done if (lacks := missing(job, name))),
        doubtful=tuple(name for name in done if doubtful(job, name)),
        signature=signature_holds(job),
    )


def finish(job: Job, name: str) -> Job:
    """Mark a stage as done. Raises SpecError, in one sentence, while something is missing or safety comes first."""
    stage_of(job, name)
    if name != "cautions":
        first = ("cautions",) if name == "switch_lead" else ("cautions", "switch_lead")
        waiting = [inside(title_of(n)) for n in first if stage_of(job, n).state == "open"]
        if waiting:
            raise SpecError(
                tr(
                    "{stage} comes after {others}: do that first, or skip it with a reason",
                    stage=title_of(name),
                    others=together(waiting),
                )
            )
    lacks = missing(job, name)
    if lacks:
        raise SpecError(tr("{stage} is not done yet; missing: {lacks}", stage=title_of(name), lacks=", ".join(lacks)))
    return change_in(job, name, state="done", reason="")


# ---------------------------------------------------------------------- what is missing


def missing(job: Job, name: str) -> tuple[str, ...]:
    """What a stage still lacks to be done, in the words of its fields.

    What earlier programs did not ask for is not missing from a sheet that was signed without it and stands as signed.
    """
    stage = stage_of(job, name)
    later = tuple(f for f in _ASKED_LATER.get(name, ()) if getattr(stage, f) is None)
    if later and stage.state == "done" and signature_holds(job):
        return tuple(words for words in _missing(job, name) if words not in {_words(stage, f) for f in later})
    return _missing(job, name)


_ASKED_LATER = {
    "as_found": ("left_btdc_deg", "right_btdc_deg"),
    "closing": ("plugs_refitted",),
    "ground_run": ("dead_cut_checked",),
}
"""Fields that sheets of earlier programs were finished without."""


def _missing(job: Job, name: str) -> tuple[str, ...]:
    stage = stage_of(job, name)
    if isinstance(stage, parts.Cautions | parts.Closing):
        return tuple(_words(stage, f) for f in checks(stage) if not getattr(stage, f))
    if isinstance(stage, parts.SwitchLead):
        return tuple(
            tr("meter or lamp, switch off") if way == "off" else tr("meter or lamp, switch on")
            for way in ("off", "on")
            if getattr(stage, f"meter_grounded_switch_{way}") is None
            and getattr(stage, f"lamp_grounded_switch_{way}") is None
        )
    if isinstance(stage, parts.Lobes):
        return () if stage.lobes else (tr("the lobes"),)
    if isinstance(stage, parts.Marks):
        fields = ("drive_flange_marked", "disc_marked", "magneto_flange_marked", "engine_marked")
        return tuple(_words(stage, f) for f in fields if not getattr(stage, f))
    if isinstance(stage, parts.Remarks):
        return ()
    lacking = [_words(stage, f) for f in _needed(job, name) if getattr(stage, f) is None]
    if isinstance(stage, parts.InternalTiming) and not stage.read_after_tightening:
        lacking.append(_words(stage, "read_after_tightening"))
    return tuple(lacking)


def _needed(job: Job, name: str) -> tuple[str, ...]:
    match name:
        case "dead_centre":
            return ("first_stop_deg", "second_stop_deg", "stroke")
        case "as_found" | "internal_timing":
            on_engine = name == "as_found" and job.installation is not None
            own = "right" if job.magneto.position == "right" else "left"
            return ("mark_offset_mm", "gap_mm", *((f"{own}_btdc_deg",) if on_engine else ()))
        case "contacts":
            return ("clean", "aligned")
        case "tooth_shift":
            return ("reads_btdc_deg", "wanted_btdc_deg", "moved_magneto_teeth", "moved_disc_teeth", "result_btdc_deg")
        case "synchronising":
            return tuple(f"{s}_btdc_deg" for s in sides(job))
        case "ground_run":
            return (*(f"drop_{s}_rpm" for s in sides(job)), "dead_cut_checked")
    return ()


def sides(job: Job) -> tuple[str, ...]:
    """The magnetos the engine has: both, or the left one's place for a single."""
    return ("left",) if job.magneto.position == "single" else ("left", "right")


def _words(stage: parts.Stage, field: str) -> str:
    return inside(parts.title_in(type(stage).model_fields[field], field))


# ---------------------------------------------------------------------- derived readings


def dead_centre_deg(job: Job) -> float | None:
    """What the disc reads at true top dead centre [deg]: halfway between the stops; None if that cannot be told."""
    first, second = job.dead_centre.first_stop_deg, job.dead_centre.second_stop_deg
    if first is None or second is None:
        return None
    try:
        return disc_zero_error_deg(first, second)
    except ValueError:
        return None


def timing_difference_deg(job: Job) -> float | None:
    """Left error less right error [crank deg], a wanted stagger taken off; None unless both were read."""
    stage, limits = job.synchronising, job.limits
    if stage.left_btdc_deg is None or stage.right_btdc_deg is None:
        return None
    stagger = 0.0
    if limits.left_btdc_deg is not None and limits.right_btdc_deg is not None:
        stagger = limits.left_btdc_deg - limits.right_btdc_deg
    return stage.left_btdc_deg - stage.right_btdc_deg - stagger


def drop_difference_rpm(job: Job) -> float | None:
    """How far the two drops differ [rpm], ≥ 0; None unless both were read."""
    left, right = job.ground_run.drop_left_rpm, job.ground_run.drop_right_rpm
    return None if left is None or right is None else abs(left - right)


# ---------------------------------------------------------------------- verdicts


def verdicts(job: Job) -> tuple[Verdict, ...]:
    """Every reading that has a limit, judged. Readings not taken and limits not given bring no verdict."""
    found = [
        *_checks(job, "cautions"),
        *_lead(job),
        *_setting(job, "as_found", as_left=False),
        *_engine(job, "as_found", as_left=False),
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
        *_checks(job, "closing"),
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


def unjudged(job: Job) -> tuple[tuple[str, str], ...]:
    """Readings taken that a limit would judge, where none was given: stage and field."""
    judged = {(v.stage, v.field) for v in verdicts(job)}
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


def _yes(stage: str, field: str, value: bool | None, wanted: bool) -> list[Verdict]:
    return [] if value is None else [Verdict(stage, field, value, None, None, wanted, value is wanted, True)]


def _checks(job: Job, name: str) -> list[Verdict]:
    stage = stage_of(job, name)
    if stage.state == "open":  # not yet confirmed is not failed
        return []
    return [v for f in checks(stage) for v in _yes(name, f, getattr(stage, f), True)]


def checks(stage: parts.Stage) -> tuple[str, ...]:
    """The fields of a stage that are to be confirmed by a tick."""
    return tuple(f for f, info in type(stage).model_fields.items() if parts.is_check(info))


def _lead(job: Job) -> list[Verdict]:
    lead = job.switch_lead
    wanted = {
        "meter_grounded_switch_off": True,
        "meter_grounded_switch_on": False,
        "lamp_grounded_switch_off": True,
        "lamp_grounded_switch_on": False,
        "lamp_grounded_plug_out": True,
    }
    return [v for f, want in wanted.items() for v in _yes("switch_lead", f, getattr(lead, f), want)]


def _setting(job: Job, name: str, as_left: bool) -> list[Verdict]:
    stage, limits = getattr(job, name), job.limits
    mark = _about(0.0, limits.mark_tolerance_mm)
    return [
        *_between(name, "mark_offset_mm", stage.mark_offset_mm, *mark, as_left),
        *_between(name, "gap_mm", stage.gap_mm, limits.gap_low_mm, limits.gap_high_mm, as_left),
    ]


def _engine(job: Job, name: str, as_left: bool) -> list[Verdict]:
    stage = getattr(job, name)
    return [
        verdict
        for side in ("left", "right")
        for verdict in _between(
            name, f"{side}_btdc_deg", getattr(stage, f"{side}_btdc_deg"), *_firing(job, side), as_left,
        )
    ]  # fmt: skip


def _lobes(job: Job) -> list[Verdict]:
    limits, magneto = job.limits, job.described
    found = []
    for i, lobe in enumerate(job.lobes.lobes):
        place = f"lobes[{i}]."
        found += _between("lobes", f"{place}gap_mm", lobe.gap_mm, limits.gap_low_mm, limits.gap_high_mm)
        # A compensated cam's opening is judged on lobe 1 (``model.md`` §4).
        if magneto is not None and (i == 0 or not magneto.compensated) and limits.mark_tolerance_mm is not None:
            late = opening_limit_deg(job)
            found += _between("lobes", f"{place}opening_error_deg", lobe.opening_error_deg, *_about(0.0, late))
    return found


def opening_limit_deg(job: Job) -> float | None:
    """How far an opening may be from its place [rotor deg]: the tolerance at the rim, at the marks' radius."""
    magneto, tolerance = job.described, job.limits.mark_tolerance_mm
    if magneto is None or tolerance is None:
        return None
    return degrees(atan2(tolerance, magneto.marks.radius_mm)) / magneto.cam.turns_per_rotor_turn


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


@frozen
class TeethMoved:
    """What the teeth moved should have done, and what the lamp says they did [crank deg BTDC]."""

    expected_btdc_deg: float
    fires_btdc_deg: float


def teeth_contradict(job: Job) -> TeethMoved | None:
    """Teeth moved that do not account for the readings before and after; None where they do, or it is not known.

    What a reading may be off by is the timing's tolerance; the teeth themselves, by one step of the coupling.
    """
    shift, installation = job.tooth_shift, job.installation
    before, after = shift.reads_btdc_deg, shift.result_btdc_deg
    i, j = shift.moved_magneto_teeth, shift.moved_disc_teeth
    if installation is None or before is None or after is None or i is None or j is None:
        return None
    teeth, ratio = installation.coupling, installation.rotor_turns_per_crank_turn
    expected = before + rotor_shift_deg(teeth.magneto_teeth, teeth.drive_teeth, i, j) / ratio
    step = finest_shift_deg(teeth.magneto_teeth, teeth.drive_teeth) / ratio
    off = abs(after - expected) - (job.limits.timing_tolerance_deg or 0.0) - step
    return TeethMoved(expected, after) if off > _HAIR else None


def doubtful(job: Job, name: str) -> bool:
    """Whether a stage's own entries do not go together."""
    return name == "tooth_shift" and (wanted_outside(job) or teeth_contradict(job) is not None)


def _teeth(job: Job) -> list[Verdict]:
    # By the limits, and not by what somebody wanted: that may be a slip of the pen.
    shift = job.tooth_shift
    within = _firing(job, shift.side)
    found = _between("tooth_shift", "reads_btdc_deg", shift.reads_btdc_deg, *within, as_left=False)
    return found + _between("tooth_shift", "result_btdc_deg", shift.result_btdc_deg, *within)


def _run(job: Job) -> list[Verdict]:
    run, limits = job.ground_run, job.limits
    found = [
        verdict
        for side in ("left", "right")
        for verdict in _between(
            "ground_run",
            f"drop_{side}_rpm",
            getattr(run, f"drop_{side}_rpm"),
            None,
            limits.drop_rpm,
        )
    ]
    found += _between("ground_run", "drop_difference_rpm", drop_difference_rpm(job), None, limits.drop_difference_rpm)
    return found + _yes("ground_run", "dead_cut_checked", run.dead_cut_checked, True)
