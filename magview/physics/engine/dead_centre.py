"""True top dead centre by a positive stop in the timing cylinder, whatever rod that cylinder has.

Halfway between the two readings is the top only where the piston rises and falls alike, as it does on the master
rod. A link rod's piston does not: the correction follows from the rods and from how far apart the readings lie.
"""

from __future__ import annotations

from functools import lru_cache
from typing import Literal

from magview.physics.engine.crank import piston_drop_mm, top_dead_centre_deg, true_tdc_from_stops
from magview.spec.engine import Engine
from magview.spec.language import tr

Counts = Literal["before", "after"]
"""Direction in which a disc counts up: degrees before top dead centre, or after it (with rotation)."""

_HALVINGS = 60
"""Of an arc of at most half a turn: to the last bit."""


def timing_centre_deg(engine: Engine) -> float:
    """The timing cylinder's own firing top dead centre [crank deg from cylinder 1's], 0 ≤ a < 720."""
    return float(top_dead_centre_deg(engine)[engine.timing_cylinder - 1])


def has_link_rod(engine: Engine) -> bool:
    """Whether the timing cylinder's rod is a link rod, so that the middle between two stops is not the top."""
    link = engine.articulation
    return link is not None and link.knuckle_radius_mm > 0 and link.master_cylinder != engine.timing_cylinder


@lru_cache(maxsize=256)
def stop_middle_deg(engine: Engine, arc_deg: float) -> float:
    """Return where the middle between two stop positions lies past the timing cylinder's true top [crank deg].

    Positive with rotation. `arc_deg` is the crank's turn between the two positions, over the top, 0 < arc < 180.
    Both are at one depth of the piston: the position after the top is sought by halving the arc, in which the
    piston's depth on one side rises against that on the other.

    Raises
    ------
    ValueError : an arc outside 0 to 180.
    """
    if not 0.0 < arc_deg < 180.0:
        raise ValueError(tr("the stops are {arc}° apart; it must be more than 0° and less than 180°", arc=arc_deg))
    if not has_link_rod(engine):
        return 0.0
    top, cylinder = timing_centre_deg(engine), engine.timing_cylinder
    low, high = 0.0, arc_deg
    for _ in range(_HALVINGS):
        after = (low + high) / 2
        depth = piston_drop_mm(engine, (top + after, top + after - arc_deg), cylinder)
        if float(depth[0]) < float(depth[1]):
            low = after
        else:
            high = after
    return (low + high) / 2 - arc_deg / 2


def stop_reach_deg(engine: Engine, reach_deg: float) -> tuple[float, float]:
    """Return where the piston of the timing cylinder meets a stop after and before its top [crank deg], both above 0.

    `reach_deg`: how far after the top it is to meet it, 0 < reach < 90; the other is at the same depth.
    """
    top, cylinder = timing_centre_deg(engine), engine.timing_cylinder
    depth = float(piston_drop_mm(engine, top + reach_deg, cylinder))
    low, high = 0.0, 180.0
    for _ in range(_HALVINGS):
        before = (low + high) / 2
        if float(piston_drop_mm(engine, top - before, cylinder)) < depth:
            low = before
        else:
            high = before
    return reach_deg, (low + high) / 2


def tdc_from_stops(engine: Engine, first_deg: float, second_deg: float, counts: Counts = "after") -> float:
    """The disc's reading at the timing cylinder's true top dead centre, its link rod allowed for.

    Parameters
    ----------
    engine : the engine.
    first_deg, second_deg : the two readings [deg], in either order; they may straddle 0/360.
    counts : which way the disc counts up.

    Returns
    -------
    The reading at true top dead centre [deg], 0 ≤ a < 360.

    Raises
    ------
    ValueError : as `true_tdc_from_stops`.
    """
    middle = true_tdc_from_stops(first_deg, second_deg)
    arc = abs((second_deg - first_deg + 180.0) % 360.0 - 180.0)
    past = stop_middle_deg(engine, arc)
    top = (middle + (past if counts == "before" else -past)) % 360.0
    return 0.0 if top >= 360.0 else top


def link_rod_correction_deg(engine: Engine, first_deg: float, second_deg: float, counts: Counts = "after") -> float:
    """Correction by the link rod of the timing cylinder to the middle of two stop readings [deg]; 0 for another rod.

    Takes the readings [deg] and raises ValueError, both as `tdc_from_stops` does.
    """
    found = tdc_from_stops(engine, first_deg, second_deg, counts) - true_tdc_from_stops(first_deg, second_deg)
    return (found + 180.0) % 360.0 - 180.0


def disc_zero_error_deg(
    engine: Engine | None, first_deg: float, second_deg: float, counts: Counts = "after"
) -> float:
    """Reading of the disc at true top dead centre [deg], −180 ≤ e < 180: subtract it from every reading.

    Takes the two stop readings [deg] and raises ValueError, both as `tdc_from_stops` does. Without an engine the top
    is taken to be halfway, as it is for a rod on the crank pin.
    """
    if engine is None:
        top = true_tdc_from_stops(first_deg, second_deg)
    else:
        top = tdc_from_stops(engine, first_deg, second_deg, counts)
    return (top + 180.0) % 360.0 - 180.0
