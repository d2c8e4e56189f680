"""Uncertainty of a setting: internal timing and timing to the engine from readings with real instruments.

Internal timing, lobe 1. The rotor is turned with rotation until an opening indicator answers; a straightedge along
the cam's step is then read against the rim mark, and blades are tried in the widest gap:

    gap      = blade + step + drag + pip − creep
    opening  = arctan((offset + placing)/radius)/c + turning + play + (r(s + parting) − r(s + creep))/c

with s the stop level that the gap read stands for, r(s) the cam degrees before the top at which the contacts lift s
(guide: theory-setting), `parting` the gap at which the indicator answers, always late, `creep` what tightening moves
the stop [mm] after the reading. Play not taken up lets the rotor lag behind the cam it drives: in service it
opens later.

Timing to the engine. The disc is read where the indicator answers; its zero is halfway between the readings
at a positive stop on either side of top dead centre, and `link` past it where a link rod's piston meets the stop:

    fires    = disc − (stop + stop)/2 − link + turning + (r(s) − r(s + parting))/(c·k) − play/k

`link` follows from the rods and from how far apart the stops were read. It counts as exact: a stop misread by 1°
changes it by one to three hundredths of a degree on the rods tried.

Play not taken up lets the rotor run ahead of the drive: in service it fires later. Both magnetos share the zero, so
that it drops out of their difference.
"""

from __future__ import annotations

from dataclasses import dataclass
from math import atan, degrees

import numpy as np

from magview.physics.cam.setting import InternalTiming, internal_timing
from magview.physics.engine.dead_centre import disc_zero_error_deg
from magview.physics.uncertainty.instruments import Instrument, instrument
from magview.physics.uncertainty.measurement import Measurement, Quantity, Reading, take_reading
from magview.physics.uncertainty.propagation import Array, Input
from magview.spec.engine import Installation
from magview.spec.language import marked, tr
from magview.spec.magneto import Magneto

_INTERNAL = ("rule-32nds", "straightedge-hand", "blades-thou", "drag-one-blade", "lamp", "rotor-hand", "led-in")
_ENGINE = ("disc-1deg", "lamp", "crank-hand", "led-in")


_AT_SIDE = {
    "left": (
        marked("disc, left magneto"),
        marked("turning the crank, left"),
        marked("gap when it shows, left"),
        marked("play not taken up, left"),
        marked("left magneto fires"),
    ),
    "right": (
        marked("disc, right magneto"),
        marked("turning the crank, right"),
        marked("gap when it shows, right"),
        marked("play not taken up, right"),
        marked("right magneto fires"),
    ),
}


@dataclass(frozen=True)
class InternalReadings:
    """Readings of internal timing, lobe 1.

    Parameters
    ----------
    mark_offset_mm : straightedge from the rim mark [mm], positive = past it, the contacts open late.
    blade_mm : the thickest blade that passes the widest gap [mm].
    screw_deg : where the contact screw stands [deg]; an eccentric's creep depends on it.
    pip_mm : what the blade misses between pipped contacts [mm]; left out: the file's.
    pip_half_width_mm : how far that may be out [mm].
    instruments : one for each role: rule, straightedge, blade, feel, opening, rotor turning, lead-in, tightening.
    """

    mark_offset_mm: float
    blade_mm: float
    screw_deg: float = 0.0
    pip_mm: float | None = None
    pip_half_width_mm: float = 0.0
    instruments: tuple[Instrument, ...] = tuple(instrument(key) for key in (*_INTERNAL, "after-tightening"))


@dataclass(frozen=True)
class EngineReadings:
    """Readings of the timing to the engine, all on one disc, positive before top dead centre.

    Parameters
    ----------
    stop_deg : the disc at a positive stop, on either side of top dead centre [crank deg].
    left_deg, right_deg : the disc where each magneto's contacts open [crank deg]; None for one that was not read.
    gap_mm : widest gap of the contacts [mm]; left out: the designed one. It fixes the flank's slope only.
    instruments : one for each role: disc, opening, crank turning, lead-in.
    """

    stop_deg: tuple[float, float]
    left_deg: float | None
    right_deg: float | None = None
    gap_mm: float | None = None
    instruments: tuple[Instrument, ...] = tuple(instrument(key) for key in _ENGINE)


def internal_measurement(magneto: Magneto, readings: InternalReadings) -> Measurement:
    """Opening error at the E-gap [rotor deg, positive late] and widest gap [mm] of lobe 1, from readings.

    Raises ValueError for readings that cannot be (a blade thicker than the lobe lifts) or a role without instrument.
    """
    timing, tools = internal_timing(magneto), readings.instruments
    condition, radius, ratio = magneto.condition, magneto.marks.radius_mm, timing.ratio
    pip = condition.pip_height_mm if readings.pip_mm is None else readings.pip_mm
    half = readings.pip_half_width_mm
    rows = (
        take_reading(tools, "rule", tr("straightedge from the mark"), readings.mark_offset_mm),
        take_reading(tools, "straightedge", tr("straightedge along the step")),
        take_reading(tools, "blade", tr("blade"), readings.blade_mm),
        take_reading(tools, "feel", tr("drag of the blade")),
        Reading(Input.between(tr("pip on the contacts"), pip - half, pip + half, "mm", tr("as given")), None, 1.0),
        take_reading(tools, "opening", tr("gap when it shows")),
        take_reading(tools, "rotor turning", tr("turning the rotor")),
        take_reading(tools, "lead-in", tr("play not taken up"), size=condition.coupling_backlash_deg),
        take_reading(tools, "tightening", tr("creep of the screw"), size=condition.screw_creep_deg),
    )
    stand = timing.stop_mm(readings.screw_deg)
    top = _closed_stop_mm(timing)

    def model(x: Array) -> Array:
        offset, placing, blade, drag, pip, parting, turning, play, creep = x
        gap = blade + drag + pip
        stop, moved = top - gap, timing.stop_mm(readings.screw_deg + creep) - stand
        late = (_before_top_deg(timing, stop + parting) - _before_top_deg(timing, stop + moved)) / ratio
        read = np.degrees(np.arctan((offset + placing) / radius)) / ratio
        return np.stack([read + turning + play + late, gap - moved])

    gap, parting = sum(row.input.estimate for row in rows[2:5]), rows[5].input.estimate
    if not parting < gap < top + timing.wear_lift_mm:
        raise ValueError(
            tr(
                "a gap of {gap:.4g} mm cannot be: lobe 1 lifts the contacts {top:.4g} mm, and below {parting} mm "
                "nothing would show that they part",
                gap=gap,
                top=top + timing.wear_lift_mm,
                parting=parting,
            )
        )
    late = degrees(atan(magneto.marks.tolerance_mm / radius)) / ratio
    low, high = magneto.gap_limits_mm
    return Measurement(
        readings=rows,
        quantities=(
            Quantity("opening_error", tr("opening from the E-gap"), "deg", -late, late),
            Quantity("gap", tr("largest gap"), "mm", low, high),
        ),
        model=model,
    )


def engine_measurement(installation: Installation, readings: EngineReadings) -> Measurement:
    """Return where each magneto fires [crank deg BTDC] and the difference of their errors [crank deg], from readings.

    The difference, left error less right error, is there when both were read. Raises ValueError for no reading,
    stop readings without a middle, a gap the lobe does not lift, or a role without instrument.
    """
    magneto, engine, tools = installation.magneto, installation.engine, readings.instruments
    timing, speed = internal_timing(magneto), installation.rotor_turns_per_crank_turn
    gap = magneto.designed_setting.gap_mm if readings.gap_mm is None else readings.gap_mm
    stop = _closed_stop_mm(timing) - gap
    before = float(_before_top_deg(timing, np.array(stop)))
    wanted = engine.firing_btdc_deg
    if np.isnan(before):
        raise ValueError(
            tr(
                "a gap of {gap} mm cannot be: lobe 1 lifts the contacts {top:.4g} mm",
                gap=gap,
                top=timing.curve.top_mm,
            )
        )
    sides = [
        (side, deg, want)
        for side, deg, want in (("left", readings.left_deg, wanted.left), ("right", readings.right_deg, wanted.right))
        if deg is not None
    ]
    if not sides:
        raise ValueError(tr("neither magneto was read; at least one must be"))
    first, second = readings.stop_deg
    zero = disc_zero_error_deg(engine, first, second, counts="before")
    rows = [
        take_reading(tools, "disc", tr("disc at the first stop"), first),
        take_reading(tools, "disc", tr("disc at the second stop"), second),
    ]
    play = magneto.condition.coupling_backlash_deg + installation.drive_play_deg * speed
    for side, deg, want in sides:
        # The disc may have any zero: its turns are counted so that the timing comes nearest to the wanted one.
        deg -= 360.0 * round((deg - zero - want) / 360.0)
        rows += [
            take_reading(tools, "disc", tr(_AT_SIDE[side][0]), deg),
            take_reading(tools, "crank turning", tr(_AT_SIDE[side][1])),
            take_reading(tools, "opening", tr(_AT_SIDE[side][2])),
            take_reading(tools, "lead-in", tr(_AT_SIDE[side][3]), size=play),
        ]

    def model(x: Array) -> Array:
        # About the readings, which may straddle the disc's own zero.
        middle = zero + ((x[0] - first) + (x[1] - second)) / 2
        fires = []
        for start in range(2, len(x), 4):
            disc, turning, parting, ahead = x[start : start + 4]
            early = (before - _before_top_deg(timing, stop + parting)) / timing.ratio
            fires.append(disc - middle + turning + (early - ahead) / speed)
        if len(fires) == 2:
            fires.append(fires[0] - fires[1] - (wanted.left - wanted.right))
        return np.stack(fires)

    within, apart = engine.timing_tolerance_deg, engine.synchronising_tolerance_deg
    quantities = [
        Quantity(side, tr(_AT_SIDE[side][4]), "deg", want - within, want + within) for side, _, want in sides
    ]
    if len(sides) == 2:
        apart_by_design = wanted.left - wanted.right
        name = (
            tr("left less right, beyond the {design}° wanted", design=apart_by_design)
            if apart_by_design
            else tr("left less right")
        )
        quantities.append(Quantity("difference", name, "deg", -apart, apart))
    return Measurement(tuple(rows), tuple(quantities), model)


def _closed_stop_mm(timing: InternalTiming) -> float:
    """The stop level at which lobe 1 just does not open the contacts [mm]."""
    return float(timing.curve.top_mm + timing.lift_errors_mm[0] - timing.wear_lift_mm)


def _before_top_deg(timing: InternalTiming, stop_mm: Array) -> Array:
    """Cam degrees before the top at which lobe 1, as worn, opens contacts with this stop; NaN if never."""
    level = (stop_mm + timing.wear_lift_mm) / timing.scale[0]
    return timing.curve.before_top_deg(np.where(level > 0, level, np.nan))
