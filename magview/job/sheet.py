"""The job sheet as a value: one magneto, one aircraft, from cautions to signature (``magview-job/1``)."""

from __future__ import annotations

import hashlib
from typing import Annotated, Any, Literal, Self

from pydantic import Field, model_validator

from magview.job import checklists, parts, stages
from magview.job.checklists import Stage
from magview.job.instruments import OwnInstrument
from magview.job.parts import Line
from magview.job.photographs import MAX_PHOTOGRAPHS, Photograph
from magview.spec.base import Model, SpecError
from magview.spec.engine import Installation
from magview.spec.fields import may_say
from magview.spec.files import dump_json, validate
from magview.spec.history import History, Step
from magview.spec.language import marked, tr
from magview.spec.magneto import Magneto

CAUTIONS = (
    marked("Treat the propeller as live at all times, by either magneto: nobody in its arc."),
    marked("Fuel off, mixture cut off, throttle closed, switch off, wheels chocked."),
    marked("Both switch leads proved. Without a grounding tab a pulled lead is live: fit a jumper first."),
    marked("Plugs out: at least one from every cylinder. The spark stays: hanging leads grounded, or kept clear."),
    marked("The manufacturer's current manual and local rules govern, not this sheet."),
    marked("Work on a certified aircraft is done or released by a licensed person."),
    marked("magview is a training and planning aid; the magnetos it ships are invented."),
)
"""On every sheet, first."""


Parts = dict[str, Any]
"""Some parts of the sheet as plain JSON values, by name."""


class SavedStep(Model):
    """One step of the saved history: the parts of the sheet that it changed, before and after."""

    name: Line = Field(title=marked("Name"), description=marked("The work done, in words."))
    at: Annotated[str, Field(max_length=40)] = may_say(marked("At"), marked("When it was done."), "")
    before: Parts = Field(title=marked("Before"), description=marked("The changed parts as they were."))
    after: Parts = Field(title=marked("After"), description=marked("The changed parts as they became."))


class SavedHistory(Model):
    """Steps that can be undone, and done again: the first `done` of them are in the sheet."""

    steps: Annotated[tuple[SavedStep, ...], Field(max_length=5000)] = may_say(
        marked("Steps"), marked("The oldest first."), ()
    )
    done: Annotated[int, Field(ge=0)] = may_say(
        marked("Done"), marked("How many of the steps are in the sheet; those after them can be done again."), 0
    )

    @model_validator(mode="after")
    def _within(self) -> Self:
        if not self.done <= len(self.steps):
            raise ValueError(
                tr(
                    "done is {done}; it must be at most the number of steps, {count}",
                    done=self.done,
                    count=len(self.steps),
                )
            )
        return self


class Job(Model):
    """A job sheet. Stages stand in the trade's order."""

    format: Literal["magview-job/1"]
    title: Line = may_say(marked("Title"), marked("Name of the sheet."), "")
    day: parts.Day = may_say(marked("Date"), marked("Day on which the work began."), "")
    invented: bool = may_say(
        marked("Invented for demonstration"), marked("Whether it ships with the program, of no real magneto."), False
    )
    aircraft: parts.Aircraft = Field(default_factory=parts.Aircraft.model_construct, title=marked("Aircraft"))
    engine: parts.EngineIdentity = Field(default_factory=parts.EngineIdentity.model_construct, title=marked("Engine"))
    magneto: parts.MagnetoIdentity = Field(
        default_factory=parts.MagnetoIdentity.model_construct, title=marked("Magneto")
    )
    installation: Installation | None = may_say(
        marked("Installation"), marked("What the bench worked with: magneto, engine and coupling.")
    )
    magneto_file: Magneto | None = may_say(
        marked("Magneto's file"), marked("The magneto of the bench, where it was a magneto alone.")
    )
    limits: parts.Limits = Field(default_factory=parts.Limits.model_construct, title=marked("Limits"))

    cautions: checklists.Cautions = Field(
        default_factory=checklists.Cautions.model_construct, title=marked("Make safe")
    )
    switch_lead: checklists.SwitchLead = Field(
        default_factory=checklists.SwitchLead.model_construct, title=marked("Prove both switch leads")
    )
    dead_centre: stages.DeadCentre = Field(
        default_factory=stages.DeadCentre.model_construct, title=marked("Top dead centre, stroke")
    )
    as_found: stages.AsFound = Field(default_factory=stages.AsFound.model_construct, title=marked("As found"))
    contacts: stages.Contacts = Field(
        default_factory=stages.Contacts.model_construct, title=marked("Condition of the contacts")
    )
    internal_timing: stages.InternalTiming = Field(
        default_factory=stages.InternalTiming.model_construct, title=marked("Setting, as left")
    )
    lobes: stages.Lobes = Field(default_factory=stages.Lobes.model_construct, title=marked("Every lobe"))
    marks: stages.Marks = Field(default_factory=stages.Marks.model_construct, title=marked("Paint marks"))
    tooth_shift: stages.ToothShift = Field(
        default_factory=stages.ToothShift.model_construct, title=marked("Tooth shift, lamp again")
    )
    synchronising: stages.Synchronising = Field(
        default_factory=stages.Synchronising.model_construct, title=marked("Both together")
    )
    closing: checklists.Closing = Field(
        default_factory=checklists.Closing.model_construct, title=marked("Close, prove leads again")
    )
    ground_run: stages.GroundRun = Field(default_factory=stages.GroundRun.model_construct, title=marked("Ground run"))
    remarks: stages.Remarks = Field(default_factory=stages.Remarks.model_construct, title=marked("Remarks"))

    instruments: Annotated[tuple[OwnInstrument, ...], Field(max_length=200)] = may_say(
        marked("Instruments"),
        marked("Instruments of one's own that readings were taken with, as they were then."),
        (),
    )

    photographs: Annotated[tuple[Photograph, ...], Field(max_length=MAX_PHOTOGRAPHS)] = may_say(
        marked("Photographs"), marked("Photographs of the paint marks, in files beside the sheet."), ()
    )

    signature: parts.Signature | None = Field(default=None, title=marked("Signature"))
    next_check: parts.NextCheck = Field(default_factory=parts.NextCheck.model_construct, title=marked("Next check"))
    reading_errors: parts.ReadingErrors = Field(
        default_factory=parts.ReadingErrors.model_construct, title=marked("How well it is read")
    )
    history: SavedHistory | None = may_say(
        marked("History"), marked("Every step that was taken, so that it can be undone.")
    )

    @model_validator(mode="after")
    def _one_description(self) -> Self:
        if self.installation is not None and self.magneto_file is not None:
            raise ValueError(
                tr("magneto_file and installation are both given; the installation has a magneto of its own")
            )
        return self

    @property
    def described(self) -> Magneto | None:
        """The magneto that the bench worked with; None if there was none."""
        return self.installation.magneto if self.installation is not None else self.magneto_file


STAGES: tuple[str, ...] = (
    "cautions", "switch_lead", "dead_centre", "marks", "as_found", "contacts", "internal_timing", "lobes",
    "tooth_shift", "synchronising", "closing", "ground_run", "remarks",
)  # fmt: skip
"""Names of the stages, in the order of the work: marks are painted before anything is slackened."""

RULES = 2
"""The rules that a sheet is signed under now; sheets of the first ones were signed with less asked for."""

NEVER_SKIPPED = ("cautions", "switch_lead")
"""Stages that no reason takes the place of."""


def title_of(name: str) -> str:
    """The title of a stage or of another part of the sheet."""
    return parts.title_in(Job.model_fields[name], name)


def stage_of(job: Job, name: str) -> Stage:
    """A stage by its name. Raises SpecError for one that is not there."""
    if name not in STAGES:
        raise SpecError(
            tr("“{name}” is no stage of a job; stages are {known}", name=name[:40], known=", ".join(STAGES))
        )
    stage: Stage = getattr(job, name)
    return stage


def new_job(title: str = "", day: str = "") -> Job:
    """An empty sheet."""
    return change(Job(format="magview-job/1"), title=title, day=day)


def change(job: Job, **values: Any) -> Job:
    """A sheet with some of its own parts replaced, checked as a file is. Raises SpecError."""
    return validate(Job, _fields(job) | values, tr("this sheet"))


def change_in(job: Job, part: str, **values: Any) -> Job:
    """A sheet with fields of one part replaced: ``change_in(job, "ground_run", drop_left_rpm=60.0)``.

    Raises SpecError for a field that is not there or a value it does not take.
    """
    model = getattr(job, part, None)
    if not isinstance(model, Model):
        raise SpecError(tr("“{part}” is not in a job", part=part[:40]))
    return change(job, **{part: _fields(model) | values})


def _fields(model: Model) -> dict[str, Any]:
    return {name: getattr(model, name) for name in type(model).model_fields}


# ---------------------------------------------------------------------- states of a stage


def open_again(job: Job, name: str) -> Job:
    """Open a stage that was done or skipped; its readings stay."""
    stage_of(job, name)
    return change_in(job, name, state="open", reason="")


def without_history(job: Job) -> Job:
    """The sheet itself."""
    return job if job.history is None else job.model_copy(update={"history": None})


def steps_of(job: Job) -> History[Parts]:
    """The history that a sheet's file holds."""
    if job.history is None:
        return History()
    steps = tuple(Step(step.name, step.before, step.after, step.at) for step in job.history.steps)
    return History(steps, job.history.done)


def with_steps(job: Job, history: History[Parts]) -> Job:
    """A sheet with its history, as it stands in the file."""
    saved = SavedHistory.model_construct(
        steps=tuple(
            SavedStep.model_construct(name=step.name, at=step.at, before=step.before, after=step.after)
            for step in history.steps
        ),
        done=history.done,
    )
    return job.model_copy(update={"history": saved if history.steps else None})


# ---------------------------------------------------------------------- signature


_digested: tuple[Job, str] | None = None
"""The sheet that was digested last, which cannot change, and its digest: it is asked for many times over."""


def digest(job: Job) -> str:
    """Digest that a signature covers: SHA-256 of everything on the sheet but the signature itself and the history."""
    global _digested
    known = _digested
    if known is None or known[0] is not job:
        bare = job.model_copy(update={"history": None, "signature": None})
        known = _digested = (job, hashlib.sha256(dump_json(bare).encode("utf-8")).hexdigest())
    return known[1]


def signature_holds(job: Job) -> bool | None:
    """Whether the sheet is still as it was signed; None if it is not signed."""
    return None if job.signature is None else job.signature.covers == digest(job)


def as_data(job: Job) -> Parts:
    """Every part of the sheet as plain JSON values, empty parts included: what steps of the history compare."""
    return without_history(job).model_dump(mode="json", exclude_none=True, exclude_defaults=True)
