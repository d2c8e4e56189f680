"""Timing of a magneto without a toothed disc, and an impulse coupling's danger, in words."""

from __future__ import annotations

from magview.spec.engine import Geared, Installation, SlottedFlange
from magview.spec.language import tr


def adjusted_words(installation: Installation) -> str:
    """Say in one sentence how timing is set where teeth of a disc do not apply; "" where they do."""
    how, ratio = installation.adjusted_by, installation.rotor_turns_per_crank_turn
    if isinstance(how, SlottedFlange):
        return tr(
            "Slotted flange: the magneto is swung in its slots, {travel:deg} in all, {crank:deg} of crank; "
            "teeth do not apply.",
            travel=how.travel_deg,
            crank=how.travel_deg / ratio,
        )
    if isinstance(how, Geared):
        return tr(
            "Geared drive: one of its {teeth} teeth is {rotor:deg} of rotor, {crank:deg} of crank; teeth of a "
            "disc do not apply.",
            teeth=how.teeth,
            rotor=360.0 / how.teeth,
            crank=360.0 / how.teeth / ratio,
        )
    return ""


def impulse_words(installation: Installation) -> str:
    """The danger of an impulse coupling, and what it does to a reading; nothing where there is none."""
    impulse = installation.impulse_coupling
    if impulse is None:
        return ""
    return tr(
        "⚠ Impulse coupling: turned by hand it holds the rotor back {lag:deg} and snaps it: it sparks at hand speed. "
        "A latched coupling spoils every reading: turn back past the latch, then lead in with rotation.",
        lag=impulse.lag_deg,
    )


def propeller_words(installation: Installation) -> str:
    """The warning that degrees at the propeller are not the crank's; nothing where the propeller is on the crank."""
    turns = installation.crank_turns_per_propeller_turn
    if turns == 1.0:
        return ""
    return tr(
        "⚠ Reduction gear: the crank makes {turns:.4g} turns a turn of the propeller, so a degree at the propeller "
        "is {turns:.4g}° of crank. Everything here is in degrees of crank.",
        turns=turns,
    )
