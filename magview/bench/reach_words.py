"""Reasons why a gap cannot be set, in words."""

from __future__ import annotations

from math import ceil, floor, isnan

from magview.physics.cam.setting import Adjustment, Obstacle, ObstacleKind
from magview.spec.language import marked, tr

_WORDS = {
    ObstacleKind.NEVER_OPENS: marked("with a gap of 0 the contacts only touch at the top of lobe 1 and never open"),
    ObstacleKind.NEVER_CLOSES: marked("lobe 1 lifts the contacts {both} in all, so they would never close"),
    ObstacleKind.THROW: marked("the contact screw's eccentric does not reach that far"),
    ObstacleKind.PLATE: marked(
        "the backplate would stand at {value:deg}, {beyond:deg} beyond the end of its slot ({low}° to {high}°)"
    ),
    ObstacleKind.SCREW: marked(
        "the contact screw would stand at {value:deg}, {beyond:deg} beyond the end of its travel ({low}° to {high}°)"
    ),
    ObstacleKind.CREEP: marked(
        "tightening the lock screw carries the contact screw along; it would first have to stand at {value:deg}, "
        "{beyond:deg} beyond the end of its travel ({low}° to {high}°)"
    ),
}

_NEAREST = {
    ObstacleKind.PLATE: marked("the nearest gap that can be had is {gap}, with the backplate at the end of its slot"),
    ObstacleKind.SCREW: marked(
        "the nearest gap that can be had is {gap}, with the contact screw at the end of its travel"
    ),
    None: marked("the nearest gap that can be had is {gap}"),
}


def out_of_reach_words(adjustment: Adjustment) -> str:
    """Say what keeps the gap out of reach and which is the nearest that can be had; nothing where it is within."""
    if adjustment.reachable:
        return ""
    said = [_obstacle_words(obstacle) for obstacle in adjustment.obstacles]
    if isnan(adjustment.nearest_gap_mm):
        said.append(tr("no gap within reach opens at the E-gap"))
    else:
        said.append(tr(_NEAREST[adjustment.nearest_at], gap=_both(_inwards(adjustment))))
    return "; ".join(said)


def _obstacle_words(obstacle: Obstacle) -> str:
    value, (low, high) = obstacle.value, obstacle.limits_deg
    beyond = value - high if value > high else low - value
    return tr(_WORDS[obstacle.kind], value=value, beyond=beyond, low=low, high=high, both=_both(value))


def _inwards(adjustment: Adjustment) -> float:
    """Rounded as it is written, to the side that can be had: what is said must not be refused."""
    tenth_micron = adjustment.nearest_gap_mm * 1e4
    wider = adjustment.nearest_gap_mm < adjustment.gap_mm
    return (floor(tenth_micron + 1e-6) if wider else ceil(tenth_micron - 1e-6)) / 1e4


def _both(mm: float) -> str:
    return tr("{gap:.4mm} ({gap:.5in})", gap=mm)
