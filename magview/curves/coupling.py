"""Data of the plot of the coupling: the timings that can be reached."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np

from magview.curves.lift import Table
from magview.physics.engine.coupling import Move, finest_shift_deg, plan


def shifts_near(
    magneto_teeth: int, drive_teeth: int, rotor_turns: float, reads_btdc: float, wanted_btdc: float, within: float
) -> list[Move]:
    """Every timing within reach of the wanted one, earliest last, each by the fewest teeth.

    `rotor_turns`: of the rotor per crank turn [-]; `reads_btdc`, `wanted_btdc` [crank deg before top dead centre];
    `within`: how far from the wanted one [crank deg]. Raises ValueError for tooth counts that no coupling has.
    """
    step = finest_shift_deg(magneto_teeth, drive_teeth) / rotor_turns
    most = int(2 * within / step) + 2
    moves = plan(magneto_teeth, drive_teeth, rotor_turns, reads_btdc, wanted_btdc, most=most)
    near = (move for move in moves if abs(move.residual_deg) <= within)
    return sorted(near, key=lambda move: move.result_btdc_deg)


def shift_table(moves: Sequence[Move]) -> Table:
    """Reachable timings as columns."""
    return [
        ("fires [crank deg BTDC]", np.array([m.result_btdc_deg for m in moves])),
        ("from wanted, positive early [crank deg]", np.array([m.residual_deg for m in moves])),
        ("magneto flange on the disc, with rotation [teeth]", np.array([float(m.magneto_teeth) for m in moves])),
        ("disc on the drive flange, with rotation [teeth]", np.array([float(m.disc_teeth) for m in moves])),
    ]
