"""Rotor angles worth stopping at: contacts just open, top of lobe, E-gap, neutral."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from magview.bench.state import BenchState, readings
from magview.physics.cam.setting import internal_timing
from magview.spec.language import marked, tr

KINDS = (
    marked("contacts just open"),
    marked("contacts just close"),
    marked("top of lobe"),
    marked("E-gap"),
    marked("neutral"),
)

_HAIR_DEG = 1e-6
"""An event this near counts as passed, or a run would stop where it starts."""


def events_deg(state: BenchState, kind: str) -> tuple[NDArray[np.float64], float]:
    """Rotor angles (n,) of one kind [deg] and the period in which they come again [rotor deg].

    Raises ValueError for a kind that is not in KINDS.
    """
    timing, poles = internal_timing(state.magneto), state.magneto.poles
    turn = 360.0 / timing.ratio
    match kind:
        case "contacts just open":
            return _known(readings(state).opens_deg), turn
        case "contacts just close":
            return _known(readings(state).closes_deg), turn
        case "top of lobe":
            return (timing.peaks_deg + state.backplate_deg) / timing.ratio, turn
        case "E-gap":
            return timing.places_deg, turn
        case "neutral":
            return np.zeros(1), 360.0 / poles
    raise ValueError(tr("“{kind}” is not something to stop at; there are {known}", kind=kind, known=", ".join(KINDS)))


def next_event(state: BenchState, kind: str, forward: bool = True) -> float | None:
    """The next rotor angle of a kind in the direction of turning [deg]; None if there is none."""
    angles, period = events_deg(state, kind)
    if not angles.size:
        return None
    way = 1.0 if forward else -1.0
    ahead = np.mod(way * (angles - state.rotor_deg) - _HAIR_DEG, period) + _HAIR_DEG
    return float(state.rotor_deg + way * ahead.min())


def nearest_event(state: BenchState, rotor_deg: float, reach_deg: float) -> tuple[float, str] | None:
    """The event nearest to a rotor angle within reach [deg], with its kind; None if there is none."""
    best: tuple[float, str] | None = None
    for kind in KINDS:
        angles, period = events_deg(state, kind)
        if not angles.size:
            continue
        away = np.mod(angles - rotor_deg + period / 2, period) - period / 2
        nearest = float(away[np.argmin(np.abs(away))])
        if abs(nearest) <= reach_deg and (best is None or abs(nearest) < abs(best[0] - rotor_deg)):
            best = rotor_deg + nearest, kind
    return best


def run_step(state: BenchState, move_deg: float, kind: str | None) -> tuple[float, bool]:
    """Return where a run brings the rotor with its next move [deg], and whether it has reached what it runs to."""
    goal = next_event(state, kind, forward=move_deg >= 0) if kind is not None else None
    if goal is not None and abs(goal - state.rotor_deg) <= abs(move_deg):
        return goal, True
    return state.rotor_deg + move_deg, False


def _known(angles: NDArray[np.float64]) -> NDArray[np.float64]:
    return angles[np.isfinite(angles)]
