"""Signing a sheet, under the present rules."""

from __future__ import annotations

from magview.job.parts import Signature
from magview.job.requirements import refuse, signing_refusal
from magview.job.sheet import RULES, Job, change, digest


def sign(job: Job, who: str, licence_no: str, day: str, checked_by: str = "", checked_licence_no: str = "") -> Job:
    """Sign the sheet as it stands.

    Raises SpecError without a name and a date, before the aircraft was made safe and both leads were proved, and for
    an independent check that is not by another name and another licence.
    """
    signature = {
        "who": who, "licence_no": licence_no, "day": day, "checked_by": checked_by,
        "checked_licence_no": checked_licence_no, "covers": digest(job), "rules": RULES,
    }  # fmt: skip
    signed = change(job, signature=signature)
    assert isinstance(signed.signature, Signature)
    refuse(signing_refusal(job, signed.signature))
    return signed
