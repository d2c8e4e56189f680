"""Moves at the coupling against their tolerance, engines that do not fit together, and dead centres, in words."""

from __future__ import annotations

from collections.abc import Sequence

from magview.physics.engine.coupling import Move, speed_mismatch, within_tolerance
from magview.physics.engine.crank import firing_order_mismatch, true_tdc_from_stops
from magview.physics.engine.dead_centre import has_link_rod, link_rod_correction_deg, tdc_from_stops
from magview.spec.engine import Engine, Installation
from magview.spec.language import marked, number, tr
from magview.spec.units import digits_beside

_NEAREST = {
    True: marked(
        "the nearest this coupling comes is {residual:.{digits}deg} of crank early, outside the tolerance of "
        "{tolerance}°"
    ),
    False: marked(
        "the nearest this coupling comes is {residual:.{digits}deg} of crank late, outside the tolerance of "
        "{tolerance}°"
    ),
}
_FIRES = {
    True: marked(
        "the magneto then fires {residual:.{digits}deg} of crank early, outside the tolerance of {tolerance}°"
    ),
    False: marked(
        "the magneto then fires {residual:.{digits}deg} of crank late, outside the tolerance of {tolerance}°"
    ),
}
"""By whether it fires early."""


def outside_words(moves: Sequence[Move], timing_tolerance_deg: float) -> str:
    """Warn that even the best of the planner's moves misses the tolerance [crank deg]; nothing if it meets it."""
    return _outside(moves[0], timing_tolerance_deg, _NEAREST)


def move_outside_words(move: Move, timing_tolerance_deg: float) -> str:
    """Warn that one move, be it the best or not, misses the tolerance [crank deg]; nothing if it meets it."""
    return _outside(move, timing_tolerance_deg, _FIRES)


def _outside(move: Move, tolerance_deg: float, words: dict[bool, str]) -> str:
    if within_tolerance(move, tolerance_deg):
        return ""
    away = abs(move.residual_deg)
    digits = digits_beside(away, None, tolerance_deg, 2)
    return tr(words[move.residual_deg > 0], residual=away, digits=digits, tolerance=tolerance_deg)


def speed_words(installation: Installation) -> str:
    """Warn that the speed ratio does not suit the cylinders and poles; nothing if it does."""
    found = speed_mismatch(installation)
    if found is None:
        return ""
    return tr(
        "rotor_turns_per_crank_turn is {given}; {cylinders} cylinders and {poles} poles need {cylinders}/{twice}, "
        "which is {needed:.6g}",
        given=found.given,
        cylinders=found.cylinders,
        poles=found.poles,
        twice=2 * found.poles,
        needed=float(found.needed),
    )


def firing_order_words(engine: Engine) -> str:
    """Warn of a firing order that does not suit an articulated engine of one row on one crank pin."""
    found = firing_order_mismatch(engine)
    if found is None:
        return ""
    return tr(
        "firing_order puts cylinder {cylinder} {away:.1deg} from where its piston is at the top; with all rods on "
        "one crank pin it cannot fire in that place",
        cylinder=found.cylinder,
        away=found.away_deg,
    )


def stop_words(engine: Engine | None, first_deg: float, second_deg: float) -> str:
    """True top dead centre from two readings of the disc at a stop [crank deg]. Raises ValueError for no pair."""
    middle = (
        true_tdc_from_stops(first_deg, second_deg)
        if engine is None
        else tdc_from_stops(engine, first_deg, second_deg)
    )
    if min(first_deg, second_deg) < 0 and middle > 180.0:  # numbered both ways from zero, before it negative
        middle -= 360.0
    return tr(
        "True top dead centre is at {middle:deg} on the disc; set the pointer to zero there. (Disc "
        "numbered 0 to 360°, or to both sides with what is before zero negative. If the stop was "
        "met about bottom dead centre, the top is at {opposite:deg}. {rod})",
        middle=middle,
        opposite=(middle + 180.0) % 360.0,
        rod=_rod_words(engine, first_deg, second_deg),
    )


def disc_words(after_deg: float, digits: int | str = "g") -> str:
    """Reading of a degree disc in words that no sign can be mistaken for [crank deg after its zero]."""
    shown = number(abs(after_deg), digits)
    if not after_deg:
        return tr("{angle}°, the disc's zero", angle=shown)
    if after_deg > 0.0:
        return tr("{angle}° after the disc's zero", angle=shown)
    return tr("{angle}° before the disc's zero", angle=shown)


def _rod_words(engine: Engine | None, first_deg: float, second_deg: float) -> str:
    if engine is None:
        return tr("Exact for a rod on the crank pin; a link rod needs a small correction.")
    cylinder = engine.timing_cylinder
    if has_link_rod(engine):
        return tr(
            "The stop belongs in No. {cylinder}, the timing cylinder: halfway, and {correction:+deg} for its "
            "link rod.",
            cylinder=cylinder,
            correction=link_rod_correction_deg(engine, first_deg, second_deg),
        )
    return tr(
        "The stop belongs in No. {cylinder}, the timing cylinder: there the middle is exact.", cylinder=cylinder
    )
