"""Advice on the next trial, and what is odd about the trials, in words (guide: trials)."""

from __future__ import annotations

from math import isfinite

import numpy as np

from magview.physics.trials.advice import Advice, Outcome
from magview.physics.trials.flank_fit import FlankFit
from magview.physics.trials.trial import PlateScale, ScaleKind
from magview.spec.language import marked, tr


def advice_words(advice: Advice) -> str:
    """The next act and why, in one to four sentences."""
    words = {
        Outcome.DONE: _done,
        Outcome.START: _start,
        Outcome.MOVE: _move,
        Outcome.REPEAT: _repeat,
        Outcome.UNREACHABLE: _unreachable,
    }[advice.outcome](advice)
    if advice.outcome is not Outcome.DONE and advice.fit.contradictory and len(advice.fit.trials) > 1:
        return f"{tr('The trials contradict each other; clear that up before going on.')} {words}"
    return words


def disagreement_words(fit: FlankFit) -> tuple[str, ...]:
    """Warnings about the trials, a sentence or two each; empty when nothing is odd."""
    told = []
    for i in fit.outliers:
        words = (
            marked("Trial {trial} does not fit the others and hardly counts: its gap is too large; check it.")
            if fit.trials[i].middle_mm > float(fit.predict(fit.plates[i]).gap_mm)
            else marked("Trial {trial} does not fit the others and hardly counts: its gap is too small; check it.")
        )
        told.append(tr(words, trial=i + 1))
    if fit.contradictory and len(fit.trials) == 1:
        told.append(
            tr("Trial 1 is far from anything this file can give: check it, and that this is the file for this cam.")
        )
    elif fit.contradictory:
        first, second = sorted(np.argsort(fit.slip)[-2:].tolist())
        told.append(
            tr(
                "Trials {first} and {second} cannot both be right, if they were read as closely as you said. Check "
                "that the clamp screws hold, that lobe 1 was used, which blades were, and that this is the file "
                "for this cam. Then repeat one of the two.",
                first=first + 1,
                second=second + 1,
            )
        )
    return tuple(told)


def plate_words(scale: PlateScale, backplate_deg: float, signed: bool = True) -> str:
    """A plate, or a turn of it [deg], in the unit in which it is read."""
    value, sign = scale.from_deg(backplate_deg), "+" if signed else "-"
    match scale.kind:
        case ScaleKind.SLOT:
            return tr("{value:{sign}z.2f} mm along the slot", value=value, sign=sign)
        case ScaleKind.MARKS:
            return tr("{value:{sign}z.2f} marks", value=value, sign=sign)
    return tr("{value:{sign}z.2f}°", value=value, sign=sign)


def _at(advice: Advice, plate_deg: float | None = None) -> str:
    return plate_words(advice.scale, advice.backplate_deg if plate_deg is None else plate_deg)


def _done(advice: Advice) -> str:
    fit = advice.fit
    last = fit.trials[-1]
    words = tr("Done: the gap, {span}, is in limits.", span=_span(last.gap_low_mm, last.gap_high_mm))
    if len(fit.trials) - 1 in fit.outliers:
        return f"{words} {tr('It is not what the other trials lead to expect, so try the blades once more.')}"
    return words


def _start(advice: Advice) -> str:
    return tr(
        "Start with the plate at {plate} and the contacts set to open at the E-gap. By the file the gap should "
        "be {gap:mm} ({gap:in}); no trial has tested the file yet.",
        plate=_at(advice),
        gap=advice.gap_mm,
    )


def _move(advice: Advice) -> str:
    words = (
        marked("Turn the plate {turn} with cam rotation, to {plate}.")
        if advice.move_deg > 0
        else marked("Turn the plate {turn} against cam rotation, to {plate}.")
    )
    turn = plate_words(advice.scale, abs(advice.move_deg), signed=False)
    told = f"{tr(words, turn=turn, plate=_at(advice))} {_expected(advice)}"
    if advice.backplate_deg in advice.fit.magneto.backplate.range_deg:
        return f"{told} {tr('That is the end of the slot; the gap may just come into limits there.')}"
    return told


def _repeat(advice: Advice) -> str:
    last, plate, (low, high) = advice.fit.trials[-1], _at(advice), advice.limits_mm
    if abs(advice.move_deg) > 1e-9 + advice.scale.step_deg(advice.fit.errors) / 2:
        words = tr("Turn the plate back to {plate} and set the opening again, closer to the mark.", plate=plate)
    elif low + 1e-9 < last.gap_high_mm and last.gap_low_mm < high - 1e-9:
        words = tr(
            "The gap, {span}, may be in limits, but the blades cannot tell. Leave the plate at {plate}. Try "
            "finer blades, or set the opening again, closer to the mark.",
            span=_span(last.gap_low_mm, last.gap_high_mm),
            plate=plate,
        )
    else:
        words = tr("Leave the plate at {plate} and set the opening again, closer to the mark.", plate=plate)
    why = tr("An opening off the mark by no more than you said explains the gap found there.")
    return f"{words} {why} {_expected(advice)}"


def _unreachable(advice: Advice) -> str:
    slot = advice.fit.magneto.backplate.range_deg
    if advice.backplate_deg not in slot:
        return tr(
            "Plate, opening and blades are not read closely enough for these limits: at best the blades say “in "
            "limits” {chance:.0f} times in 100. Read the opening closer to the mark, or use finer blades.",
            chance=100 * advice.chance,
        )
    aim = advice.fit.plate_for_deg([advice.limits_mm[int(advice.backplate_deg == slot[0])]])[0]
    words = tr(
        "The gap cannot be brought into limits within the slot, {low} to {high}.",
        low=_at(advice, slot[0]),
        high=_at(advice, slot[1]),
    )
    if isfinite(aim) and not slot[0] <= aim <= slot[1]:
        words = f"{words} {tr('That would take about {aim}.', aim=_at(advice, aim))}"
    nearest = tr("The nearest is the end of the slot at {plate}.", plate=_at(advice))
    return f"{words} {nearest} {_expected(advice)}"


def _expected(advice: Advice) -> str:
    return tr(
        "The gap should be {gap:mm} ({gap:in}); {probability} times in 100 it will be {span}.",
        gap=advice.gap_mm,
        probability=100 * advice.probability,
        span=_span(advice.low_mm, advice.high_mm),
    )


def _span(low_mm: float, high_mm: float) -> str:
    if not isfinite(high_mm):
        return tr("above {gap:mm} ({gap:in})", gap=low_mm)
    if high_mm - low_mm < 5e-4:
        return tr("{gap:mm} ({gap:in})", gap=low_mm)
    return tr("{low:mm} to {high:mm} ({low:in} to {high:in})", low=low_mm, high=high_mm)
