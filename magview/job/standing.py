"""How a stage and the sheet stand, in words: a magneto that is live, readings that are out, a stage that is done."""

from __future__ import annotations

from magview.job import judge
from magview.job.sheet import Job, stage_of
from magview.job.words import limits_words, shown
from magview.spec.frozen import frozen
from magview.spec.language import marked, tr

_LIVE_OFF = marked(
    "DANGER: THE MAGNETO IS LIVE WITH THE SWITCH OFF. Stop. Keep clear of the propeller. Repair the switch lead, or "
    "take the magneto out of use, and prove the lead again before anything is turned."
)
_LIVE_OUT = marked(
    "DANGER: THE MAGNETO IS LIVE WITH ITS PLUG OUT: the tab does not ground it. Stop. Keep clear of the propeller; "
    "ground the magneto before anything is turned."
)
_LIVE = {
    "meter_grounded_switch_off": _LIVE_OFF,
    "lamp_grounded_switch_off": _LIVE_OFF,
    "lamp_grounded_plug_out": _LIVE_OUT,
}


def dangers(job: Job) -> tuple[str, ...]:
    """What readings of the switch lead say of the magneto, if they say that it can fire: a warning each.

    A reading warns for as long as it stands on the sheet, whatever was done or skipped since.
    """
    bad = [v.field for v in judge.verdicts(job) if v.stage == "switch_lead" and not v.ok]
    return tuple(dict.fromkeys(tr(_LIVE[field]) for field in bad if field in _LIVE))


@frozen
class Out:
    """How many readings of a stage are not as they should be."""

    left: int
    """Of the work as left: out of limits, or not as it must be."""
    found: int
    """Found out of limits, which is what the work is for."""


def out_in(job: Job, name: str) -> Out:
    """How many readings of a stage are out."""
    if name in ("cautions", "closing"):  # a check that is not confirmed is missing
        return Out(0, 0)
    bad = [v.as_left for v in judge.verdicts(job) if v.stage == name and not v.ok]
    return Out(sum(bad), len(bad) - sum(bad))


def is_well(job: Job, name: str) -> bool:
    """Whether nothing stands against a stage but what was found."""
    return not (judge.missing(job, name) or out_in(job, name).left or doubts(job, name))


def out_words(count: int) -> str:
    """So many readings of the work as left are out."""
    return (
        tr("1 reading out of limits or not as it must be")
        if count == 1
        else tr("{count} readings out of limits or not as they must be", count=count)
    )


def found_words(count: int) -> str:
    """So many readings were found out of limits."""
    return (
        tr("1 reading found out of limits") if count == 1 else tr("{count} readings found out of limits", count=count)
    )


def doubts(job: Job, name: str) -> tuple[str, ...]:
    """What of a stage's own entries does not go together, a sentence each."""
    told = []
    if name == "tooth_shift" and judge.wanted_outside(job):
        low, high = judge.firing_limits_deg(job, job.tooth_shift.side) or (None, None)
        told.append(
            tr(
                "The timing wanted, {wanted}, is outside this sheet's limits, {limits}; readings are judged by the "
                "limits.",
                wanted=shown("wanted_btdc_deg", job.tooth_shift.wanted_btdc_deg),
                limits=limits_words("wanted_btdc_deg", low, high),
            )
        )
    moved = judge.teeth_contradict(job) if name == "tooth_shift" else None
    if moved is not None:
        shift = job.tooth_shift
        told.append(
            tr(
                "Teeth and readings contradict each other: magneto flange {magneto} and disc {disc} would bring it "
                "from {before} to {expected}, and it is said to fire {after}; count the teeth, and read the lamp "
                "again.",
                magneto=shown("_teeth", shift.moved_magneto_teeth),
                disc=shown("_teeth", shift.moved_disc_teeth),
                before=shown("reads_btdc_deg", shift.reads_btdc_deg),
                expected=shown("result_btdc_deg", moved.expected_btdc_deg),
                after=shown("result_btdc_deg", moved.fires_btdc_deg),
            )
        )
    return tuple(told)


def _doubt_words(count: int) -> str:
    return tr("1 point to be cleared up") if count == 1 else tr("{count} points to be cleared up", count=count)


def done_words(job: Job, name: str) -> str:
    """What stands against a stage that is marked as done; nothing where nothing does."""
    lacks, out, unclear = judge.missing(job, name), out_in(job, name), doubts(job, name)
    told = []
    if lacks:
        told.append(tr("1 missing") if len(lacks) == 1 else tr("{count} missing", count=len(lacks)))
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
