"""Instruments of a sheet's readings: chosen stage by stage, named beside each reading, overdue ones said."""

from __future__ import annotations

from collections.abc import Sequence

from magview.job.instruments import SEPARATOR, OwnInstrument
from magview.job.sheet import STAGES, Job, change, change_in, stage_of
from magview.spec.language import tr


def field_of(stage: str) -> str:
    """Name of the field of a stage that names its instruments."""
    return "disc" if stage == "dead_centre" else "instruments"


_USES = {
    "first_stop_deg": ("disc",),
    "second_stop_deg": ("disc",),
    "gap_mm": ("blades",),
    "mark_offset_mm": ("straightedge", "lamp"),
    "opening_error_deg": ("straightedge", "lamp"),
    "dwell_deg": ("lamp", "disc"),
    "left_btdc_deg": ("lamp", "disc"),
    "right_btdc_deg": ("lamp", "disc"),
    "reads_btdc_deg": ("lamp", "disc"),
    "result_btdc_deg": ("lamp", "disc"),
    "spring_n": ("spring balance",),
    "run_rpm": ("tachometer",),
    "drop_left_rpm": ("tachometer",),
    "drop_right_rpm": ("tachometer",),
}
"""Uses of instruments that a reading needs."""


def names_in(job: Job, stage: str) -> tuple[str, ...]:
    """Names that a stage was read with; none where it has no such field."""
    told = str(getattr(stage_of(job, stage), field_of(stage), ""))
    return tuple(name.strip() for name in told.split(SEPARATOR.strip()) if name.strip())


def used_in(job: Job, stage: str) -> tuple[OwnInstrument, ...]:
    """Instruments of the sheet that a stage was read with."""
    names = names_in(job, stage)
    return tuple(instrument for instrument in job.instruments if instrument.name in names)


def read_by(job: Job, stage: str, field: str) -> str:
    """Names of the instruments that a reading was taken with; "" where none is known."""
    uses = _USES.get(field.rpartition(".")[2], ())
    return ", ".join(instrument.name for instrument in used_in(job, stage) if instrument.use in uses)


def last_used(job: Job, stage: str) -> tuple[OwnInstrument, ...]:
    """Instruments of the nearest stage before this one that names some; the disc at dead centre is one alone."""
    for name in reversed(STAGES[: STAGES.index(stage)]):
        if name != "dead_centre" and (found := used_in(job, name)):
            return found
    return ()


def with_instruments(job: Job, stage: str, chosen: Sequence[OwnInstrument]) -> Job:
    """The sheet with a stage read with these. What no stage names any more goes from the sheet.

    Raises SpecError where the names are too long together.
    """
    job = change_in(job, stage, **{field_of(stage): SEPARATOR.join(instrument.name for instrument in chosen)})
    named = {name for other in STAGES for name in names_in(job, other)}
    known = {instrument.name: instrument for instrument in (*job.instruments, *chosen)}
    return change(job, instruments=tuple(known[name] for name in known if name in named))


def overdue(job: Job, stage: str) -> tuple[str, ...]:
    """Instruments of a stage whose calibration was due before the sheet's day, a sentence each.

    Where the sheet has no day it is not known whether they were: that is said, too.
    """
    told = []
    for instrument in used_in(job, stage):
        if not instrument.due:
            continue
        if not job.day:
            told.append(tr("{name}: calibration due {due}; the sheet has no date to compare it with.",
                           name=instrument.name, due=instrument.due))  # fmt: skip
        elif instrument.due < job.day:
            told.append(tr("{name}: calibration overdue since {due}. Read again with one that is in date.",
                           name=instrument.name, due=instrument.due))  # fmt: skip
    return tuple(told)


def stages_of(job: Job, instrument: OwnInstrument) -> tuple[str, ...]:
    """Stages that were read with an instrument."""
    return tuple(stage for stage in STAGES if instrument.name in names_in(job, stage))
