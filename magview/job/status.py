"""Status of stages and of the sheet in words: a magneto that is live, readings that are out, a stage that is done."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from magview.bench.conditions import CONDITION_WORDS
from magview.bench.lamp_words import explanation_words
from magview.job import danger, judge
from magview.job.checklists import checks
from magview.job.danger import Danger, DangerKind, drop_is_too_small
from magview.job.derived import (
    LampDue,
    lamp_should_read_deg,
    opening_change_deg,
    side_of,
    sides,
    teeth_contradict,
)
from magview.job.parts import FIRING, MOVED
from magview.job.read_with import overdue
from magview.job.requirements import earlier_rules, missing
from magview.job.sheet import Job, stage_of, title_of
from magview.job.words import limits_words, shown
from magview.spec.language import format_angle, inside, marked, tr, tr_n

_STOP = marked("Stop. Keep clear of the propeller.")
_REPAIR = marked(
    "Repair its switch lead, or take the magneto out of use. Prove the lead again before anything is turned."
)
_DANGERS = {
    DangerKind.LIVE: marked("WARNING: THIS MAGNETO IS LIVE WITH THE SWITCH OFF. {stop} {repair}"),
    DangerKind.OTHER_LIVE: marked("WARNING: THE OTHER MAGNETO IS LIVE WITH THE SWITCH OFF. {stop} {repair}"),
    DangerKind.LIVE_LEAD_PULLED: marked(
        "WARNING: THIS MAGNETO IS LIVE WITH ITS SWITCH LEAD PULLED: nothing inside grounds it. {stop} Ground its "
        "primary by a jumper at the terminal before anything is turned."
    ),
    DangerKind.NO_DROP: marked(
        "WARNING: NO PROPER DROP WHEN RUNNING ON {side}: {drop} rpm. {stop} The {other} magneto is probably not "
        "grounded, or the {own} one fires far too early. Prove both switch leads again before anything is turned."
    ),
    DangerKind.SWITCH_DOES_NOT_STOP: marked(
        "WARNING: THE ENGINE FIRES ON WITH THE SWITCH OFF: a magneto is live. {stop} Prove both switch leads again "
        "before anything is turned."
    ),
    DangerKind.WRONG_STROKE: marked(
        "WARNING: THE TIMING CYLINDER IS NOT ON ITS COMPRESSION STROKE BEFORE IT FIRES. Stop. An engine timed so can "
        "kick back and hurt whoever starts it. Turn the crank to the compression stroke of the timing cylinder, and "
        "read again what was read."
    ),
    DangerKind.NOT_SAFE: marked(
        "WARNING: WORK STANDS ON THIS SHEET AND “{stage}” DOES NOT. Treat the propeller as live. {stop} Do “{stage}” "
        "before anything is turned."
    ),
}  # fmt: skip
_SIDES = {"left": marked("left"), "right": marked("right")}


def danger_words(found: Danger) -> str:
    """A danger as a warning: what it is, and what to do."""
    other = {"left": "right", "right": "left"}.get(found.side, "left")
    own = _SIDES.get(found.side, _SIDES["left"])
    return tr(
        _DANGERS[found.kind],
        stop=tr(_STOP),
        repair=tr(_REPAIR),
        side=tr(own).upper(),
        own=tr(own),
        other=tr(_SIDES[other]),
        drop=found.drop_rpm,
        stage=title_of(found.stage),
    )


def dangers(job: Job) -> tuple[str, ...]:
    """Dangers on a sheet: a warning each, equal ones once."""
    return tuple(dict.fromkeys(danger_words(found) for found in danger.dangers(job)))


def dangers_in(job: Job, name: str) -> tuple[str, ...]:
    """The warnings that one stage gives cause for."""
    return tuple(dict.fromkeys(danger_words(found) for found in danger.dangers(job) if found.stage == name))


def earlier(job: Job) -> tuple[str, ...]:
    """One sentence on a sheet that was signed under earlier rules and would not be signed so now; none of others."""
    told = earlier_rules(job)
    if not told:
        return ()
    return (tr("Signed under earlier rules: {what}. The signature stands.", what="; ".join(told)),)


@dataclass(frozen=True)
class Out:
    """Number of readings of a stage that are not as they should be."""

    left: int
    """Of the work as left: out of limits, or not as it must be."""
    found: int
    """Found out of limits, which is what the work is for."""


def out_in(job: Job, name: str) -> Out:
    """Number of readings of a stage that are out of limits."""
    # A check that is not confirmed is missing.
    unconfirmed = checks(stage_of(job, name)) if name in ("cautions", "closing") else ()
    bad = [v.as_left for v in judge.verdicts(job) if v.stage == name and not v.ok and v.field not in unconfirmed]
    return Out(sum(bad), len(bad) - sum(bad))


def is_well(job: Job, name: str) -> bool:
    """Whether nothing stands against a stage but what was found."""
    return not (missing(job, name) or out_in(job, name).left or doubts(job, name) or dangers_in(job, name))


def out_words(count: int) -> str:
    """So many readings of the work as left are out."""
    return tr_n(
        "{count} reading out of limits or not as it must be",
        "{count} readings out of limits or not as they must be",
        count=count,
    )


def found_words(count: int) -> str:
    """So many readings were found out of limits."""
    return tr_n("{count} reading found out of limits", "{count} readings found out of limits", count=count)


def doubts(job: Job, name: str) -> tuple[str, ...]:
    """Contradictions within a stage's entries, and instruments that were overdue: a sentence each."""
    told = []
    if name == "tooth_shift" and judge.wanted_outside(job):
        low, high = judge.firing_limits_deg(job, job.tooth_shift.side) or (None, None)
        told.append(
            tr(
                "The timing wanted, {wanted}, is outside this sheet's limits, {limits}; readings are judged by the "
                "limits.",
                wanted=shown(FIRING, job.tooth_shift.wanted_btdc_deg),
                limits=limits_words(FIRING, low, high),
            )
        )
    due = judge.stale_lamp(job) if name == "tooth_shift" else None
    if due is not None:
        told.append(_out_of_date(due))
    moved = teeth_contradict(job) if name == "tooth_shift" else None
    if moved is not None:
        shift = job.tooth_shift
        told.append(
            tr(
                "Teeth and readings contradict each other: A disc {disc} and B magneto flange {magneto} would bring "
                "it from {before} to {expected}, and it is said to fire {after}. Likeliest: {cause} Count the "
                "teeth, and read the lamp again.",
                magneto=shown(MOVED, shift.moved_magneto_teeth),
                disc=shown(MOVED, shift.moved_disc_teeth),
                before=shown(FIRING, shift.reads_btdc_deg),
                expected=shown(FIRING, moved.expected_btdc_deg),
                after=shown(FIRING, moved.fires_btdc_deg),
                cause=explanation_words(moved.likeliest),
            )
        )
    both = judge.last_reading_contradicts(job) if name == "synchronising" else None
    if both is not None:
        told.append(
            tr(
                "By the readings before, this magneto should read {should}; it is said to read {reads}. Find out "
                "what was moved since, or whether the disc slipped on the crank, and read the lamp again.",
                should=shown(FIRING, both.should_btdc_deg),
                reads=shown(FIRING, both.reads_btdc_deg),
            )
        )
    return (*told, *overdue(job, name))


def _out_of_date(due: LampDue) -> str:
    places = {
        "reads": shown(FIRING, due.reads_btdc_deg),
        "should": shown(FIRING, due.should_btdc_deg),
        "moved": format_angle(abs(due.opening_change_deg)),
    }
    if due.opening_change_deg > 0:
        return tr(
            "The reading {reads} is out of date or wrong. As left, the contacts open {moved} of rotor later than as "
            "found, so that the lamp should now read {should}. Read it again before any tooth is moved.",
            **places,
        )
    return tr(
        "The reading {reads} is out of date or wrong. As left, the contacts open {moved} of rotor earlier than as "
        "found, so that the lamp should now read {should}. Read it again before any tooth is moved.",
        **places,
    )


def points_to(job: Job) -> tuple[str, ...]:
    """Likely causes of the readings of the ground run, a sentence each (FAA-H-8083-32B, ch. 4; common practice)."""
    return tuple(sentence for side in sides(job) for sentence in _points_to(job, side)) if len(sides(job)) > 1 else ()


def _points_to(job: Job, side: str) -> tuple[str, ...]:
    drop, runs = getattr(job.ground_run, f"drop_{side}_rpm"), getattr(job.ground_run, f"runs_{side}")
    where = tr(_SIDES[side])
    if runs == "rough":
        return (tr("On {side} it runs rough: that points to a plug or its lead. Look there first.", side=where),)
    most = job.limits.drop_rpm
    if drop is None or drop_is_too_small(job, side) or most is None or drop <= most + 1e-9 or runs is None:
        return ()
    return (tr("On {side} the drop is large and smooth: that points to late timing.", side=where),)


def lamp_should_read(job: Job) -> tuple[str, ...]:
    """Expected reading of the lamp with the setting as left, where the setting moved it."""
    should, change = lamp_should_read_deg(job), opening_change_deg(job)
    if should is None or not change:
        return ()
    return (tr("With the setting as left the lamp should read {should}.", should=shown(FIRING, should)),)


def after_the_shift(job: Job) -> tuple[str, ...]:
    """Expected reading of the lamp, and each face of the coupling that was not moved as it was planned."""
    shift = job.tooth_shift
    faces = (
        (marked("A disc"), shift.planned_disc_teeth, shift.moved_disc_teeth),
        (marked("B magneto flange"), shift.planned_magneto_teeth, shift.moved_magneto_teeth),
    )
    told = tuple(
        tr(
            "Moved is not what was planned: {face} planned {planned}, moved {moved}. Count the teeth again, then "
            "read the lamp.",
            face=tr(face),
            planned=shown(MOVED, planned),
            moved=shown(MOVED, moved),
        )
        for face, planned, moved in faces
        if planned is not None and moved is not None and planned != moved
    )
    return (*lamp_should_read(job), *told)


def agree(job: Job) -> tuple[str, ...]:
    """The four things that agree when No. 1 fires, in one sentence; nothing before this magneto's firing was read."""
    if getattr(job.synchronising, f"{side_of(job)}_btdc_deg") is None:
        return ()
    marks = {True: "✓", False: "✗", None: "–"}
    told = "; ".join(
        f"{marks[holds]} {inside(tr(CONDITION_WORDS[what]))}" for what, holds in judge.conditions(job).items()
    )
    return (tr("When No. 1 fires: {conditions}.", conditions=told),)


def without_tab(job: Job) -> tuple[str, ...]:
    """A warning that pulling the lead makes the magneto live, unless its file says that a tab grounds it."""
    if job.described is not None and job.described.grounding_tab:
        return ()
    return (
        tr(
            "Pulling the switch lead makes this magneto live, unless its manual names a grounding tab. Fit a jumper "
            "from its terminal to the case first."
        ),
    )


_FOLLOWS: dict[str, Callable[[Job], tuple[str, ...]]] = {
    "switch_lead": without_tab,
    "synchronising": agree,
    "internal_timing": lamp_should_read,
    "tooth_shift": after_the_shift,
    "ground_run": points_to,
}


def follows(job: Job, name: str) -> tuple[str, ...]:
    """Conclusions from a stage's readings, a sentence each."""
    return _FOLLOWS[name](job) if name in _FOLLOWS else ()


def _doubt_words(count: int) -> str:
    return tr_n("{count} point to be cleared up", "{count} points to be cleared up", count=count)


def done_words(job: Job, name: str) -> str:
    """Objections to a stage that is marked as done; empty where there are none."""
    lacks, out, unclear = missing(job, name), out_in(job, name), doubts(job, name)
    told = []
    if lacks:
        told.append(tr("{count} missing", count=len(lacks)))
    if out.left:
        told.append(out_words(out.left))
    if unclear:
        told.append(_doubt_words(len(unclear)))
    if out.found:
        told.append(found_words(out.found))
    return "; ".join(told)


def state_of(job: Job, name: str) -> str:
    """The state of a stage for paper; a stage that is done is never said to be so without what is out."""
    stage = stage_of(job, name)
    if stage.state == "skipped":
        return tr("skipped")
    if stage.state == "open":
        return tr("open")
    against = done_words(job, name)
    return tr("done, with {what}", what=against) if against else tr("done")
