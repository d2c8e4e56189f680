"""A magneto or an installation put on a new bench."""

from __future__ import annotations

import math
from dataclasses import replace

from magview.bench.state import BenchState, Engaged, Mounting, Side, crank_deg, opening_deg
from magview.physics.cam.setting import internal_timing
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.language import tr
from magview.spec.magneto import Magneto


def new_bench(item: Magneto | Installation) -> BenchState:
    """A bench with a magneto at its designed setting, rotor held at the E-gap; on its engine, timed as wanted.

    Raises SpecError where the cam cannot be followed (undercut); nothing is placed then.
    """
    magneto = item if isinstance(item, Magneto) else item.magneto
    internal_timing(magneto)
    state = BenchState(
        magneto=magneto, rotor_deg=magneto.e_gap_deg, backplate_deg=magneto.designed_setting.backplate_deg
    )
    if isinstance(item, Magneto):
        return state
    wanted, ratio = item.engine.firing_btdc_deg, item.rotor_turns_per_crank_turn
    opens = opening_deg(state)
    if math.isnan(opens):  # worn so far that it never opens as designed: timed as if it did at the E-gap
        opens = float(internal_timing(magneto).places_deg[0])
    left = Mounting(opens + ratio * wanted.left, wanted.left, wanted.left)
    right = Mounting(opens + ratio * wanted.right, wanted.right, wanted.right)
    side: Side = "right" if item.position == "right" else "left"
    return replace(state, engaged=Engaged(item, left, right, side))


def placed(item: Magneto | Installation) -> BenchState:
    """A new bench for hands to work on, timed to No. 1.

    Raises SpecError as `new_bench` does, and for an engine that is timed to another cylinder: crank, finger and lamp
    of the bench count from No. 1, and would be read wrongly.
    """
    if isinstance(item, Installation) and item.engine.timing_cylinder != 1:
        raise SpecError(
            tr(
                "{engine} is timed to No. {cylinder}, and the bench counts crank, finger and lamp from No. 1 alone: "
                "use practice or a job sheet for it, or put its magneto on the bench by itself",
                engine=item.engine.name,
                cylinder=item.engine.timing_cylinder,
            )
        )
    return new_bench(item)


def laid_out(item: Magneto | Installation) -> BenchState:
    """A bench as the program opens it: as `placed`, with the magneto off its engine, where the rotor can be let go.

    Raises SpecError as `placed` does.
    """
    state = placed(item)
    if state.engaged is None:
        return state
    return replace(state, engaged=replace(state.engaged, off_crank_deg=crank_deg(state)))
