"""The lamp's readings on a bench: which of them stand, what they should be by the acts since, what explains them."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import replace
from enum import Enum
from functools import lru_cache

import numpy as np

from magview.bench.state import BenchState, Check, Mounting, Side, firing_btdc_deg, mounting_of, opening_deg, readings
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.coupling import speed_mismatch
from magview.physics.engine.lamp import (
    ASK_FIRST_DEG,
    LOOK_FIRST_DEG,
    Cause,
    Elsewhere,
    Explanation,
    Foretold,
    explain,
)
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.language import tr

SHOWN_DEG = 0.005
"""Less than this is no change of a reading: it would be written 0.00°."""

_SAME_DEG = 1e-6
"""A reading goes through the rotor's angle and back; a millionth of a degree of rotor is no change of the opening."""

CHECKS: tuple[Check, ...] = ("reading", "stroke", "mark", "finger")
LOOK_FIRST_CHECKS: tuple[Check, ...] = ("stroke", "mark", "finger")
"""Checks before an error of more than a quarter turn of the crank is put down to teeth."""

_DISC_HALF_TURN_DEG = 180.0


class Standing(Enum):
    """The present worth of a magneto's lamp reading."""

    NEVER_OPENS = "never-opens"
    NOT_READ = "not-read"
    STANDS = "stands"
    OUT_OF_DATE = "out-of-date"
    """The contacts were set anew since."""
    TEETH_MOVED = "teeth-moved"
    """Teeth were moved since: moves are still counted from it, but it is not where the magneto fires."""
    CONTRADICTED = "contradicted"
    """It is not what the reading before and the acts since lead to."""


def standing(state: BenchState, side: Side) -> Standing:
    """The present worth of a magneto's lamp reading. Raises SpecError without an engine."""
    would = firing_btdc_deg(state, side, as_found=True)
    assert state.engaged is not None
    mounting = mounting_of(state.engaged, side)
    if math.isnan(would):
        return Standing.NEVER_OPENS
    if abs(would - mounting.reads_btdc_deg) > SHOWN_DEG:
        return Standing.OUT_OF_DATE
    should = mounting.foretold
    if mounting.lamp_read and should is not None and "reading" not in mounting.checked:
        apart = abs(mounting.reads_btdc_deg - should.btdc_deg)
        if apart > slack_deg(state.engaged.installation):
            return Standing.CONTRADICTED
    if abs(firing_btdc_deg(state, side) - would) > SHOWN_DEG:
        return Standing.TEETH_MOVED
    return Standing.STANDS if mounting.lamp_read else Standing.NOT_READ


def error_found_deg(state: BenchState, side: Side) -> float:
    """Timing error of a magneto with its teeth as found [crank deg], positive early; or NaN."""
    fires = firing_btdc_deg(state, side, as_found=True)
    assert state.engaged is not None
    return fires - mounting_of(state.engaged, side).wanted_btdc_deg


def look_first(state: BenchState, side: Side) -> bool:
    """Whether the error is so large that stroke, mark and finger are looked at before any tooth is moved."""
    return abs(error_found_deg(state, side)) > LOOK_FIRST_DEG + 1e-9


def questions(state: BenchState, side: Side) -> tuple[Check, ...]:
    """Checks still open before teeth are planned from so large an error; none for an error that teeth can make."""
    if not abs(error_found_deg(state, side)) > ASK_FIRST_DEG + 1e-9:
        return ()
    return LOOK_FIRST_CHECKS


def unanswered(state: BenchState, side: Side) -> tuple[Check, ...]:
    """The questions that still are to be answered."""
    asked = questions(state, side)
    assert state.engaged is not None
    return tuple(check for check in asked if check not in mounting_of(state.engaged, side).checked)


def may_plan(state: BenchState, side: Side) -> bool:
    """Whether teeth may be planned: from a reading that is worth it, with nothing left to be asked."""
    good = standing(state, side) in (Standing.STANDS, Standing.NOT_READ, Standing.TEETH_MOVED)
    return good and not unanswered(state, side)


def refuse_unasked(state: BenchState, side: Side) -> None:
    """Raises SpecError where the error is no matter of teeth until somebody has looked at more than the lamp."""
    if unanswered(state, side):
        raise SpecError(
            tr(
                "the timing is {error:deg} of crank out, more than {limit}°: look at stroke, mark and finger first, "
                "and tick them on the Engine page",
                error=abs(error_found_deg(state, side)),
                limit=ASK_FIRST_DEG,
            )
        )


@lru_cache(maxsize=32)
def slack_deg(installation: Installation) -> float:
    """Largest difference of two lamp readings of one magneto with nothing moved between them [crank deg].

    Expanded uncertainty of their difference with a disc to 1°, a timing lamp, and the propeller turned by hand, each
    reading led in with rotation (JCGM 100:2008). The disc's zero is common to both and drops out.
    """
    # Only what was read twice asks for it: the window need not wait for these modules to open.
    from magview.physics.uncertainty.measurement import judge_linear
    from magview.physics.uncertainty.setting_uncertainty import EngineReadings, engine_measurement

    wanted = installation.engine.firing_btdc_deg
    # Two magnetos read on one disc are as two readings of one magneto.
    read = EngineReadings((40.0, -40.0), wanted.left, wanted.right)
    difference = next(
        o for o in judge_linear(engine_measurement(installation, read)) if o.quantity.key == "difference"
    )
    return float(difference.linear.expanded_uncertainty)


# ---------------------------------------------------------------------- acts


def mounting_read(state: BenchState, side: Side, reads_btdc_deg: float) -> Mounting:
    """A mounting whose lamp is read to say this [crank deg BTDC]; its teeth count as found from here.

    Raises SpecError where the contacts never open and close.
    """
    assert state.engaged is not None
    was, ratio, opens = mounting_of(state.engaged, side), state.engaged.ratio, opening_deg(state)
    if math.isnan(opens):
        raise SpecError(tr("with this setting the contacts never open and close, so the lamp tells no timing"))
    return Mounting(
        phase_deg=opens + ratio * reads_btdc_deg,
        wanted_btdc_deg=was.wanted_btdc_deg,
        reads_btdc_deg=reads_btdc_deg,
        # The paint stays where it is on the metal; only the counting starts anew.
        painted_magneto_teeth=was.marks_apart[0],
        painted_disc_teeth=was.marks_apart[1],
        lamp_read=True,
        painted=was.painted,
        foretold=_foretold_by_acts(state, side),
    )


def _foretold_by_acts(state: BenchState, side: Side) -> Foretold | None:
    """Expected value of a reading entered now, by the reading before it; None where there was none."""
    assert state.engaged is not None
    was = mounting_of(state.engaged, side)
    if not was.lamp_read:
        return None
    acts = foretold(state, side)
    if acts.magneto_teeth or acts.disc_teeth or acts.opening_deg:
        return acts
    # Typed anew with nothing done in between: judged as the reading it replaces was, unless that was accepted.
    return None if "reading" in was.checked else was.foretold


def foretold(state: BenchState, side: Side) -> Foretold:
    """Expected reading of the lamp now, and the acts since it was read. NaN where the contacts never open."""
    fires = firing_btdc_deg(state, side)
    assert state.engaged is not None
    was = mounting_of(state.engaged, side)
    change = opening_deg(state) - was.read_opening_deg(state.engaged.ratio)
    return Foretold(fires, was.magneto_teeth, was.disc_teeth, change if abs(change) > _SAME_DEG else 0.0)


def checked(mounting: Mounting, what: Check, done: bool) -> Mounting:
    """A mounting for whose reading something was looked at, or not after all. Raises SpecError for no such thing."""
    if what not in CHECKS:
        raise SpecError(
            tr("“{what}” is nothing to look at first; it is {known}", what=str(what)[:40], known=", ".join(CHECKS))
        )
    held = {*mounting.checked, what} if done else {*mounting.checked} - {what}
    return replace(mounting, checked=tuple(check for check in CHECKS if check in held))


# ---------------------------------------------------------------------- what explains a reading


def explanations(state: BenchState, side: Side, reads_btdc_deg: float) -> list[Explanation]:
    """Causes of a reading of the lamp now [crank deg BTDC], best first; none where the contacts never open.

    A reading that was entered, and that the acts before it contradict, is explained by those acts.
    """
    fires = firing_btdc_deg(state, side)
    engaged = state.engaged
    if engaged is None or engaged.installation.coupling is None or math.isnan(fires):
        return []
    should = foretold(state, side)
    if standing(state, side) is Standing.CONTRADICTED and not (should.magneto_teeth or should.disc_teeth):
        should = mounting_of(engaged, side).foretold or should
    coupling = engaged.installation.coupling
    return explain(
        reads_btdc_deg,
        should,
        slack_deg(engaged.installation),
        coupling.magneto_teeth,
        coupling.drive_teeth,
        engaged.ratio,
        opening_room_deg=_opening_room_deg(state),
        play_deg=(engaged.train_play_deg + state.magneto.condition.coupling_backlash_deg) / engaged.ratio,
        elsewhere=tuple(_elsewhere(state, should.btdc_deg)),
    )


def _opening_room_deg(state: BenchState) -> tuple[float, float]:
    """Angles by which plate and screw can still make the opening earlier and later [rotor deg]."""
    magneto = state.magneto
    plate, screw = np.meshgrid(magneto.backplate.range_deg, (*magneto.contact_screw.range_deg, state.screw_deg))
    error, _ = internal_timing(magneto).opening_and_gap(plate, screw)
    now, _ = internal_timing(magneto).opening_and_gap(state.backplate_deg, state.screw_deg)
    # A screw at the end of its travel may keep the contacts open or closed for good.
    return min(float(np.nanmin(error - now)), 0.0), max(float(np.nanmax(error - now)), 0.0)


def _elsewhere(state: BenchState, expected_btdc_deg: float) -> Iterator[Elsewhere]:
    """Other openings near No. 1's two dead centres: of another lobe, for another cylinder, on the other stroke."""
    engaged = state.engaged
    assert engaged is not None
    if speed_mismatch(engaged.installation):
        return
    found, turn = readings(state), 360.0 / state.magneto.cam.turns_per_rotor_turn
    opens, first = found.opens_deg, float(found.opens_deg[0])
    if not state.magneto.compensated:
        for lobe, error in enumerate((found.e_gap_error_deg - found.e_gap_error_deg[0]).tolist()[1:], 2):
            if math.isfinite(error) and error:
                yield Elsewhere(Cause.OTHER_LOBE, expected_btdc_deg - error / engaged.ratio, lobe)
    turns = range(-math.ceil(720.0 * engaged.ratio / turn), math.ceil(720.0 * engaged.ratio / turn) + 1)
    for centre, cause in ((0.0, Cause.OTHER_CYLINDER), (360.0, Cause.OTHER_STROKE)):
        for lobe, angle in enumerate(opens.tolist(), 1):
            for whole in turns:
                rotor = angle + whole * turn - first
                btdc = centre + expected_btdc_deg - rotor / engaged.ratio
                if abs(btdc) <= _DISC_HALF_TURN_DEG and not (centre == 0.0 and rotor == 0.0):
                    yield Elsewhere(cause, btdc, lobe)
