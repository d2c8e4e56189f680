"""Requirements of a stage before it is done, by the rules of the day it was signed."""

from __future__ import annotations

from collections.abc import Iterator
from typing import Any

from magview.job import checklists, parts, stages
from magview.job.derived import dead_centre_deg, lamp_out_of_date, side_of, sides
from magview.job.parts import FIRING
from magview.job.sheet import NEVER_SKIPPED, RULES, STAGES, Job, signature_holds, stage_of, title_of
from magview.job.words import shown
from magview.spec.base import SpecError
from magview.spec.language import inside, tr

ON_ENGINE = ("dead_centre", "marks", "tooth_shift", "synchronising", "closing", "ground_run")
"""Stages that a magneto on a bench has not."""

_AFTER_MARKS = ("internal_timing", "tooth_shift")
"""Stages that slacken something: what is to come together again is marked before."""

_NAMED = 2
"""So many entries that earlier rules did not ask for are named, more are counted."""

_Lack = tuple[str, int]
"""A missing entry in words, and the rules since which it is required."""


def missing(job: Job, name: str) -> tuple[str, ...]:
    """Entries that a stage still lacks to be done, in the words of its fields.

    What earlier rules did not ask for is not missing from a sheet that was signed under them and stands as signed.
    """
    rules = _rules(job) if stage_of(job, name).state == "done" else RULES
    return tuple(words for words, since in _lacks(job, name) if since <= rules)


def whole(job: Job, name: str) -> bool:
    """Whether a stage is marked as done and lacks nothing."""
    return stage_of(job, name).state == "done" and not missing(job, name)


def signed_earlier(job: Job) -> bool:
    """Whether the sheet stands as it was signed under rules that asked for less than the present ones."""
    return _rules(job) < RULES


def earlier_rules(job: Job) -> tuple[str, ...]:
    """Of a sheet signed under earlier rules, what the present ones would not take: a few words each."""
    if not signed_earlier(job) or job.signature is None:
        return ()
    told = []
    for name in STAGES:
        stage = stage_of(job, name)
        if stage.state == "skipped" and name in NEVER_SKIPPED:
            told.append(tr("{stage}: skipped", stage=inside(title_of(name))))
        elif stage.state == "skipped" and not reason_is_enough(stage.reason):
            told.append(tr("{stage}: skipped for too short a reason", stage=inside(title_of(name))))
        elif stage.state == "done":
            lacks = [words for words, since in _lacks(job, name) if since > job.signature.rules]
            if lacks:
                what = ", ".join(lacks) if len(lacks) <= _NAMED else tr("{count} entries", count=len(lacks))
                told.append(tr("{stage}: {lacks}", stage=inside(title_of(name)), lacks=what))
    refusal = check_refusal(job.signature)
    return (*told, refusal) if refusal else tuple(told)


def not_yet(job: Job, name: str) -> str:
    """Say why a stage cannot be marked as done yet, in one sentence; nothing where it can."""
    if name in ON_ENGINE and job.cautions.on_bench:
        return tr(
            "“{stage}” is for a magneto on its engine, and this sheet says that it is on a bench: change that at "
            "“{safe}”",
            stage=title_of(name),
            safe=title_of("cautions"),
        )
    first = NEVER_SKIPPED[: NEVER_SKIPPED.index(name)] if name in NEVER_SKIPPED else NEVER_SKIPPED
    waiting = [f"“{title_of(n)}”" for n in first if not whole(job, n)]
    if waiting:
        return tr(
            "“{stage}” comes after {others}: do that first; nothing takes its place",
            stage=title_of(name),
            others=tr(" and ").join(waiting),
        )
    if name in _AFTER_MARKS and not job.cautions.on_bench and job.marks.state == "open":
        return tr(
            "“{stage}” comes after “{marks}”: mark the parts before anything is slackened, or skip that for a reason",
            stage=title_of(name),
            marks=title_of("marks"),
        )
    lacks = missing(job, name)
    if lacks:
        return tr("“{stage}” is not done yet; missing: {lacks}", stage=title_of(name), lacks=", ".join(lacks))
    return ""


# ---------------------------------------------------------------------- reasons, signatures


_LETTERS, _WORDS = 6, 2


def reason_is_enough(reason: str) -> bool:
    """Whether a reason says something: at least two words and six different letters."""
    return len(reason.split()) >= _WORDS and len({c for c in reason.casefold() if c.isalpha()}) >= _LETTERS


def skip_refusal(job: Job, name: str, reason: str) -> str:
    """Say why a stage cannot be skipped for this reason, in one sentence; nothing where it can."""
    if name in NEVER_SKIPPED:
        return tr(
            "“{stage}” cannot be skipped: what is not made safe and proved can kill, whatever the reason. Do it, or "
            "say at “{safe}” that the magneto is on a bench",
            stage=title_of(name),
            safe=title_of("cautions"),
        )
    if not reason_is_enough(reason):
        return tr(
            "“{reason}” is too short a reason: write at least two words and six different letters, such as “the cam "
            "is out for repair”",
            reason=reason.strip()[:40],
        )
    return ""


def check_refusal(signature: parts.Signature) -> str:
    """Say why an independent check does not count, in a few words; nothing where it does, or none was made."""
    names, licences = (
        [" ".join(text.casefold().split()) for text in pair]
        for pair in (
            (signature.who, signature.checked_by),
            (signature.licence_no, signature.checked_licence_no),
        )
    )
    if not names[1] and not licences[1]:
        return ""
    if not names[1]:
        return tr("the independent check has a licence number and no name")
    if names[0] == names[1]:
        return tr("the independent check is by the person who signs, “{who}”", who=signature.checked_by)
    if not licences[1]:
        return tr("the independent check has no licence number")
    if licences[0] == licences[1]:
        return tr("the independent check has the licence number of the person who signs")
    return ""


def signing_refusal(job: Job, signature: parts.Signature) -> str:
    """Say why a sheet cannot be signed so, in one sentence; nothing where it can."""
    if not signature.who.strip() or not signature.day:
        return tr("a signature takes a name and a date")
    unsafe = [f"“{title_of(name)}”" for name in NEVER_SKIPPED if not whole(job, name)]
    if unsafe:
        return tr("the sheet cannot be signed before {stages}: that comes first", stages=tr(" and ").join(unsafe))
    refusal = check_refusal(signature)
    if refusal:
        return tr(
            "{refusal}: it takes another person, by name and licence number, such as “B. Person” and “X-0001”",
            refusal=refusal,
        )
    return ""


def refuse(sentence: str) -> None:
    """Raise SpecError with a sentence, if there is one."""
    if sentence:
        raise SpecError(sentence)


# ---------------------------------------------------------------------- what is lacking


def _rules(job: Job) -> int:
    """The rules that a sheet is held to: of its signature's day while it stands as signed, else the present ones."""
    # The digest takes a hundred times as long as looking at the number, which is mostly the present one.
    if job.signature is None or job.signature.rules >= RULES or not signature_holds(job):
        return RULES
    return job.signature.rules


_SINCE_2 = {
    "cautions": ("fuel_off", "mixture_cut_off", "throttle_closed", "hanging_leads_clear", "nobody_in_arc"),
    "dead_centre": ("disc_reset",),
    "as_found": ("left_btdc_deg", "right_btdc_deg"),
    "synchronising": ("finger_at_no_1",),
    "contacts": ("felt_oiled",),
    "closing": (
        "instruments_off", "plugs_refitted", "no_jumper_left", "lead_grounded_switch_off", "lead_grounded_switch_on",
        "other_lead_grounded_switch_off", "other_lead_grounded_switch_on", "chocks_decided",
    ),
    "ground_run": ("dead_cut_checked", "runs_left", "runs_right"),
}  # fmt: skip
"""Fields that sheets under the first rules were signed without."""


def _lacks(job: Job, name: str) -> Iterator[_Lack]:
    stage = stage_of(job, name)
    later = _SINCE_2.get(name, ())
    for field in _needed(job, name):
        value = getattr(stage, field)
        if value is None or (value is False and field in checklists.checks(stage)):
            yield _words(stage, field), 2 if field in later and value is None else 1
    if isinstance(stage, checklists.SwitchLead):
        yield from _proofs(job, stage)
    if isinstance(stage, stages.Lobes) and not stage.lobes:
        yield tr("the lobes"), 1
    due = lamp_out_of_date(job) if name == "tooth_shift" else None
    if due is not None:
        should = shown(FIRING, due.should_btdc_deg)
        yield tr("the lamp read again, which should now say {should}", should=should), 2


def _proofs(job: Job, lead: checklists.SwitchLead) -> Iterator[_Lack]:
    """Each lead is proved with the switch off and on, by meter or lamp. On a bench there is none."""
    if job.cautions.on_bench:
        return
    asked: list[tuple[str, dict[str, str], int]] = [
        ("", {"off": tr("meter or lamp, switch off"), "on": tr("meter or lamp, switch on")}, 1)
    ]
    if len(sides(job)) > 1:
        other = {
            "off": tr("other magneto: meter or lamp, switch off"),
            "on": tr("other magneto: meter or lamp, switch on"),
        }
        asked.append(("other_", other, 2))
    for prefix, words, since in asked:
        for way in ("off", "on"):
            read: list[Any] = [getattr(lead, f"{prefix}{by}_grounded_switch_{way}") for by in ("meter", "lamp")]
            if read == [None, None]:
                yield words[way], since


def _needed(job: Job, name: str) -> tuple[str, ...]:
    """The fields that a stage is not done without."""
    stage = stage_of(job, name)
    match name:
        case "cautions":
            return checklists.checks(stage)
        case "marks":
            return ("drive_flange_marked", "disc_marked", "magneto_flange_marked", "engine_marked")
        case "closing":
            own = ("lead_grounded_switch_off", "lead_grounded_switch_on")
            other = tuple(f"other_{field}" for field in own) if len(sides(job)) > 1 else ()
            return (*checklists.checks(stage), *own, *other)
        case "dead_centre":
            zero = dead_centre_deg(job)
            off = ("disc_reset",) if zero is not None and abs(zero) > 1e-9 else ()
            return ("first_stop_deg", "second_stop_deg", *off, "stroke")
        case "as_found" | "internal_timing":
            on_engine = name == "as_found" and job.installation is not None and not job.cautions.on_bench
            timing = (f"{side_of(job)}_btdc_deg",) if on_engine else ()
            again = ("read_after_tightening",) if name == "internal_timing" else ()
            return ("mark_offset_mm", "gap_mm", *timing, *again)
        case "contacts":
            return ("clean", "aligned", "felt_oiled")
        case "tooth_shift":
            return ("reads_btdc_deg", "wanted_btdc_deg", "moved_magneto_teeth", "moved_disc_teeth", "result_btdc_deg")
        case "synchronising":
            return (*(f"{s}_btdc_deg" for s in sides(job)), "finger_at_no_1")
        case "ground_run":
            two = sides(job) if len(sides(job)) > 1 else ()
            return (*(f for s in two for f in (f"drop_{s}_rpm", f"runs_{s}")), "dead_cut_checked")
    return ()


def _words(stage: checklists.Stage, field: str) -> str:
    return inside(parts.title_in(type(stage).model_fields[field], field))
