"""Entries given once and offered where they are asked for again: who did it, the manual that governs."""

from __future__ import annotations

from magview.job.sheet import STAGES, Job, stage_of

BY, MANUAL = "by", "manual"
"""Kinds of entries that are kept for the next sheet, too."""

KIND = {"by": BY, "manual": MANUAL, "source": MANUAL, "who": BY, "checked_by": BY}
"""Kind of entry by the name of its field."""


def as_before(job: Job, stage: str) -> str:
    """Name at the nearest stage before this one, or else after it; "" where this one has a name, or none has."""
    if stage_of(job, stage).by:
        return ""
    at = STAGES.index(stage)
    nearest = (*reversed(STAGES[:at]), *STAGES[at + 1 :])
    return next((stage_of(job, name).by for name in nearest if stage_of(job, name).by), "")


def offers(job: Job, field: str) -> tuple[str, ...]:
    """Entries of the sheet that a field could repeat, each once."""
    if KIND.get(field) == BY:
        found = [stage_of(job, name).by for name in STAGES]
        found += [job.signature.who] if job.signature is not None else []
    elif KIND.get(field) == MANUAL:
        found = [job.cautions.manual, job.limits.source]
    else:
        found = []
    return tuple(dict.fromkeys(text for text in found if text))
