"""The map of backplate × contact screw: what every setting in the window would read, and the way to a wanted one.

The screw alone decides lift and gap; the plate only carries the openings along, opens = plate/c + function of the
screw (guide: theory-setting). So a map costs one reading for each screw angle and a sum for each pixel.
"""

from __future__ import annotations

from dataclasses import dataclass

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.cam.setting import Adjustment, InternalTiming
from magview.spec.language import tr

Array = NDArray[np.float64]
Flags = NDArray[np.bool_]


@dataclass(frozen=True)
class AdjustmentMap:
    """Readings of a grid of settings. Maps have shape (plates, screws); signs as in `Readings`."""

    backplate_deg: Array
    """(plates,)"""
    screw_deg: Array
    """(screws,)"""
    error_deg: Array
    """Lobe 1's opening against its E-gap [rotor deg], positive late; NaN where it never works the contacts."""
    gap_mm: Array
    """Lobe 1's largest gap [mm]; a read-only view, the same for every plate."""
    lobe_1_ok: Flags
    """Whether lobe 1, judged alone, is within gap limits and at the mark."""
    within_limits: Flags
    """`Readings.within_limits`, to the last bit."""
    e_gap_backplate_deg: Array
    """(screws,) Where the plate must stand for lobe 1 to open exactly at its E-gap [deg], be it in the slot or not;
    NaN where the screw lets it open nowhere."""


def adjustment_map(timing: InternalTiming, backplate_deg: ArrayLike, screw_deg: ArrayLike) -> AdjustmentMap:
    """Readings and verdicts over a grid of settings, worn or not.

    Parameters
    ----------
    timing : the magneto's internal timing.
    backplate_deg : plate from its middle [deg], shape (plates,), positive with cam rotation, in any order.
    screw_deg : contact screw from its middle [deg], shape (screws,), positive = contacts closer, in any order.

    Notes
    -----
    ValueError for an axis that is not one-dimensional or not finite. Settings outside slot or travel are computed
    all the same.
    """
    plate, screw = _axis("backplate_deg", backplate_deg), _axis("screw_deg", screw_deg)
    read = timing.readings(0.0, screw)
    error, shift = read.e_gap_error_deg, plate[:, None] / timing.ratio
    judged = error[:, :1] if timing.magneto.compensated else error
    return AdjustmentMap(
        backplate_deg=plate,
        screw_deg=screw,
        error_deg=error[:, 0] + shift,
        gap_mm=np.broadcast_to(read.max_gap_mm[:, 0], (len(plate), len(screw))),
        lobe_1_ok=_verdict(timing, plate, screw, error[:, :1], read.gap_ok[:, 0], alone=True),
        within_limits=_verdict(timing, plate, screw, judged, np.asarray(read.gap_ok.all(axis=-1)), alone=False),
        e_gap_backplate_deg=-error[:, 0] * timing.ratio,
    )


def way_deg(backplate_deg: float, screw_deg: float, adjustment: Adjustment) -> tuple[tuple[float, float], ...]:
    """Corners (plate, screw) [deg] of the way from a setting to an adjustment's: plate first, then screw.

    Parameters
    ----------
    backplate_deg, screw_deg : the present setting [deg].
    adjustment : where to. ValueError if it is out of reach.
    """
    if not adjustment.reachable:
        raise ValueError(tr("the adjustment is out of reach"))
    there = adjustment.backplate_deg
    return (backplate_deg, screw_deg), (there, screw_deg), (there, adjustment.screw_deg)


def _verdict(
    timing: InternalTiming, plate: Array, screw: Array, error_deg: Array, gap_ok: Flags, alone: bool
) -> Flags:
    """(plates, screws) whether gap and all judged openings pass.

    `error_deg` (screws, judged lobes) with the plate at 0; `gap_ok` (screws,); `alone`: lobe 1 only.
    """
    marks, shift = timing.magneto.marks, plate[:, None] / timing.ratio
    bound = np.degrees(np.arctan(marks.tolerance_mm / marks.radius_mm)) / timing.ratio
    # (screws,) NaN where a judged lobe never works the contacts: nothing passes there.
    low, high = -bound - error_deg.min(axis=-1), bound - error_deg.max(axis=-1)
    # Nearer to the bound than this, rounding may decide.
    turned = np.abs(plate).max(initial=360.0) + np.abs(timing.peaks_deg).max()
    hair = 1e-10 + 16 * np.finfo(float).eps * turned / timing.ratio
    passes = gap_ok & (shift > low + hair) & (shift < high - hair)
    near = gap_ok & (shift >= low - hair) & (shift <= high + hair) & ~passes
    if near.any():  # judged as a single setting is
        i, j = np.nonzero(near)
        read = timing.readings(plate[i], screw[j])
        passes[i, j] = read.timing_ok[:, 0] & read.gap_ok[:, 0] if alone else read.within_limits
    return np.asarray(passes)


def _axis(name: str, values: ArrayLike) -> Array:
    axis = np.array(values, dtype=float)
    if axis.ndim != 1:
        raise ValueError(
            tr("{name} has shape {shape}; an axis of a map is one-dimensional", name=name, shape=axis.shape)
        )
    if not np.isfinite(axis).all():
        raise ValueError(tr("{name} holds a value that is not finite", name=name))
    return axis
