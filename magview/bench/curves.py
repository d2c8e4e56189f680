"""What the plots show, as arrays: computed here, drawn in ``ui``. Every plot can be written as a table."""

from __future__ import annotations

import csv
import io
import math
from collections.abc import Sequence

import numpy as np
from numpy.typing import NDArray

from magview.bench.state import BenchState, readings
from magview.physics.adjustment_map import AdjustmentMap, adjustment_map
from magview.physics.advice import Advice
from magview.physics.coil import ContactCycle, contact_cycle, opening_energy_j
from magview.physics.coupling import Move, plan
from magview.physics.flank_fit import fit_flank
from magview.physics.magnet import detent_torque_nm, rest_deg
from magview.physics.measurement import Outcome
from magview.physics.setting import InternalTiming, internal_timing
from magview.physics.wear import Course, WearRates, course
from magview.spec.frozen import frozen
from magview.spec.language import marked
from magview.spec.magneto import Condition, Magneto

Array = NDArray[np.float64]
Table = Sequence[tuple[str, Array | NDArray[np.str_]]]
"""Columns of one length, each with its header: the quantity and, in brackets, its unit."""

_STEP_DEG = 0.25
"""Between points of a curve over a turn [rotor deg]: finer than a pixel on any screen."""

_MOST_POINTS = 8_000
"""On a cam so slow that its turn takes many turns of the rotor, no screen shows more."""


@frozen
class Setting:
    """A magneto with backplate and contact screw: what a lift or gap curve belongs to."""

    magneto: Magneto
    backplate_deg: float
    screw_deg: float

    @property
    def timing(self) -> InternalTiming:
        """The internal timing of the magneto."""
        return internal_timing(self.magneto)

    @property
    def stop_mm(self) -> float:
        """Contact lift at which the contacts just touch [mm]."""
        return float(self.timing.stop_mm(self.screw_deg))


def setting_of(state: BenchState) -> Setting:
    """The present setting."""
    return Setting(state.magneto, state.backplate_deg, state.screw_deg)


def designed_setting(magneto: Magneto) -> Setting:
    """As the maker meant it: nothing worn, the plate where the file says, the screw at 0."""
    new = magneto.model_copy(update={"condition": Condition()})
    return Setting(new, magneto.designed_setting.backplate_deg, 0.0)


def cycle_deg(magneto: Magneto) -> float:
    """Rotor angle after which the contacts' play begins anew: a turn of the cam [deg]."""
    return 360.0 / magneto.cam.turns_per_rotor_turn


def turn_deg(magneto: Magneto) -> Array:
    """Rotor angles (n,) [deg] over one turn of the cam, ends included."""
    whole = cycle_deg(magneto)
    return np.linspace(0.0, whole, min(round(whole / _STEP_DEG), _MOST_POINTS) + 1)


# ---------------------------------------------------------------------- lift and gap


@frozen
class LiftCurves:
    """Contact lift and gap over a turn of the cam; arrays (n,)."""

    rotor_deg: Array
    lift_mm: Array
    gap_mm: Array


def lift_curves(setting: Setting) -> LiftCurves:
    """Lift and gap of a setting at every rotor angle of a cam turn."""
    angles = turn_deg(setting.magneto)
    lift = setting.timing.lift_mm(angles, setting.backplate_deg)
    return LiftCurves(angles, lift, np.maximum(lift - setting.stop_mm, 0.0))


def open_spans_deg(state: BenchState) -> list[tuple[float, float]]:
    """Rotor angles within one cam turn between which the contacts stand open, cut at its ends [deg]."""
    result, whole, timing = readings(state), cycle_deg(state.magneto), internal_timing(state.magneto)
    if timing.stop_mm(state.screw_deg) + timing.wear_lift_mm < 0.0:
        return [(0.0, whole)]  # held apart even where the heel hangs over the base circle
    spans: list[tuple[float, float]] = []
    for opens, closes in zip(result.opens_deg, result.closes_deg, strict=True):
        if not (math.isfinite(opens) and math.isfinite(closes)):
            continue
        start = opens % whole
        end = start + closes - opens
        spans.append((start, min(end, whole)))
        if end > whole:
            spans.append((0.0, end - whole))
    return sorted(spans)


def lift_table(present: Setting, before: Setting | None) -> Table:
    """The curves as columns."""
    now, designed = lift_curves(present), lift_curves(designed_setting(present.magneto))
    columns = [
        ("rotor angle past neutral [deg]", now.rotor_deg),
        ("contact lift [mm]", now.lift_mm),
        ("gap [mm]", now.gap_mm),
        ("gap as designed [mm]", designed.gap_mm),
    ]
    if before is not None:
        columns.append(("gap before [mm]", lift_curves(before).gap_mm))
    return columns


# ---------------------------------------------------------------------- lobes


def lobe_table(state: BenchState) -> Table:
    """Opening error, offset at the rim and largest gap of every lobe, in firing order."""
    result = readings(state)
    return [
        ("lobe in firing order", np.arange(1, len(result.opens_deg) + 1, dtype=float)),
        ("opens [rotor deg]", result.opens_deg),
        ("opening error, positive late [rotor deg]", result.e_gap_error_deg),
        ("largest gap [mm]", result.max_gap_mm),
        ("thickest blade that passes [mm]", result.blade_gap_mm),
        ("dwell [rotor deg]", result.dwell_deg),
    ]


def opening_limit_deg(magneto: Magneto) -> float:
    """Opening error at which the straightedge stands at its tolerance from the mark [rotor deg]."""
    marks = magneto.marks
    return math.degrees(math.atan(marks.tolerance_mm / marks.radius_mm)) / magneto.cam.turns_per_rotor_turn


# ---------------------------------------------------------------------- adjustment window


def crossings(x: Array, values: Array, level: float) -> Array:
    """Where (m,) a curve through x and values (n,) passes a level, in the unit of x: twice if an eccentric is turned
    past its dead point."""
    above = values > level
    at = np.flatnonzero(above[1:] != above[:-1])
    return np.asarray(x[at] + (level - values[at]) / (values[at + 1] - values[at]) * (x[at + 1] - x[at]))


def window_map(
    state: BenchState,
    plates: int,
    screws: int,
    plate_span: tuple[float, float] | None = None,
    screw_span: tuple[float, float] | None = None,
) -> AdjustmentMap:
    """Readings over a part of slot and travel [deg], all of them unless told, one for each pixel."""
    return adjustment_map(
        internal_timing(state.magneto),
        np.linspace(*(plate_span or state.magneto.backplate.range_deg), plates),
        np.linspace(*(screw_span or state.magneto.contact_screw.range_deg), screws),
    )


def telling_screw_span(state: BenchState) -> tuple[float, float]:
    """The part of the screw's travel in which the gap is near its limits: up to twice as far from their middle as
    either is wide [deg]. The present and the designed place are in it too."""
    low, high = state.magneto.contact_screw.range_deg
    screws = np.linspace(low, high, 721)
    _, gaps = internal_timing(state.magneto).opening_and_gap(0.0, screws)
    least, most = state.magneto.gap_limits_mm
    room = 2.0 * (most - least)
    near = screws[(gaps >= least - room) & (gaps <= most + room)]
    ends = np.array([*(near if near.size else screws), 0.0, state.screw_deg])
    margin = 0.05 * (ends.max() - ends.min())
    return max(low, float(ends.min() - margin)), min(high, float(ends.max() + margin))


def window_table(state: BenchState, points: int = 61) -> Table:
    """A coarse map as columns, one row a setting."""
    found = window_map(state, points, points)
    plate, screw = np.meshgrid(found.backplate_deg, found.screw_deg, indexing="ij")
    return [
        ("backplate, positive with rotation [deg]", plate.ravel()),
        ("contact screw, positive closer [deg]", screw.ravel()),
        ("opening error, positive late [rotor deg]", found.error_deg.ravel()),
        ("largest gap [mm]", np.asarray(found.gap_mm).ravel()),
        ("within limits", found.within_limits.ravel().astype(float)),
    ]


def round_levels(low: float, high: float, most: int = 7) -> Array:
    """Round numbers (n,) between two values, in their unit: what contours are drawn at.

    Not more than `most` steps, each 1, 2 or 5 times a power of ten; none unless both are finite and `high` is above.
    """
    if not (math.isfinite(low) and math.isfinite(high) and high > low):
        return np.empty(0)
    rough = (high - low) / most
    power = 10.0 ** math.floor(math.log10(rough))
    step = next(f * power for f in (1.0, 2.0, 5.0, 10.0) if f * power >= rough * (1 - 1e-9))
    return np.asarray(step * np.arange(math.ceil(low / step - 1e-9), math.floor(high / step + 1e-9) + 1))


# ---------------------------------------------------------------------- coil and magnet

COIL_ASSUMPTIONS = marked(
    "Assumed: constant speed, linear core without losses, contacts that make and break at once, no load on the "
    "secondary while they are closed; illustrative unless the file's values are measured. At running speed this "
    "model's best opening lies past the E-gap: the maker's E-gap governs."
)


def coil_cycle(state: BenchState, speed_rpm: float) -> ContactCycle:
    """Flux and current over a cam turn at a rotor speed [1/min]. ValueError without electrical values."""
    return contact_cycle(state.magneto, readings(state), speed_rpm, turn_deg(state.magneto))


def energy_curve(state: BenchState, speed_rpm: float) -> tuple[Array, Array]:
    """Opening error (n,) [rotor deg] and energy left in the coil then (n,) [J], with lobe 1's present dwell.

    The plate carries opening and closing together, so the dwell stays what it is. Empty where it never works.
    """
    magneto, result = state.magneto, readings(state)
    dwell = float(result.dwell_deg[0])
    if magneto.electrical is None or not math.isfinite(dwell):
        return np.empty(0), np.empty(0)
    half = 90.0 / magneto.poles
    errors = np.linspace(-half, half, 361)
    energy = opening_energy_j(magneto.electrical, magneto.poles, speed_rpm, magneto.e_gap_deg + errors, dwell)
    return errors, energy


def coil_table(state: BenchState, speed_rpm: float) -> Table:
    """Flux and current over a cam turn at a rotor speed [1/min], as columns. ValueError without electrical values."""
    cycle = coil_cycle(state, speed_rpm)
    return [
        ("rotor angle past neutral [deg]", cycle.rotor_deg),
        ("static flux [Wb]", cycle.static_flux_wb),
        ("resultant flux [Wb]", cycle.flux_wb),
        ("primary current [A]", cycle.current_a),
        ("contacts closed", cycle.closed.astype(float)),
    ]


def pulls(magneto: Magneto) -> bool:
    """Whether the file gives a magnet that pulls on the rotor."""
    return magneto.detent is not None and magneto.detent.torque_nm > 0.0


def detent_table(magneto: Magneto) -> Table:
    """The magnet's pull on the rotor over a turn, as columns. Empty without one."""
    if magneto.detent is None or not pulls(magneto):
        return []
    angles = np.linspace(0.0, 360.0, 1441)
    return [
        ("rotor angle past neutral [deg]", angles),
        (
            "torque of the magnet, positive with rotation [N m]",
            detent_torque_nm(magneto.detent, magneto.poles, angles),
        ),
    ]


def resting_places_deg(state: BenchState) -> tuple[float, float]:
    """The neutrals on either side of the full register nearest to the rotor [deg]: where it can come to rest."""
    pitch = 360.0 / state.magneto.poles
    below = pitch * math.floor(state.rotor_deg / pitch)
    return below, below + pitch


def falls_to_deg(state: BenchState) -> float:
    """Where the rotor would come to rest if it were let go now, off the engine [deg]."""
    return rest_deg(state.magneto.poles, state.rotor_deg, (-math.inf, math.inf))


# ---------------------------------------------------------------------- coupling


def shifts_near(
    magneto_teeth: int, drive_teeth: int, rotor_turns: float, reads_btdc: float, wanted_btdc: float, within: float
) -> list[Move]:
    """Every timing within reach of the wanted one, earliest last, each by the fewest teeth.

    `rotor_turns`: of the rotor per crank turn [-]; `reads_btdc`, `wanted_btdc` [crank deg before top dead centre];
    `within`: how far from the wanted one [crank deg]. Raises ValueError for tooth counts that no coupling has.
    """
    moves = plan(magneto_teeth, drive_teeth, rotor_turns, reads_btdc, wanted_btdc, most=20_000)
    best: dict[float, Move] = {}
    for move in moves:
        if abs(move.residual_deg) > within:
            continue
        key = round(move.result_btdc_deg, 9)
        kept = best.get(key)
        if kept is None or teeth_moved(move) < teeth_moved(kept):
            best[key] = move
    return [best[key] for key in sorted(best)]


def teeth_moved(move: Move) -> int:
    """Teeth on both faces together [-]."""
    return abs(move.magneto_teeth) + abs(move.disc_teeth)


def shift_table(moves: Sequence[Move]) -> Table:
    """Reachable timings as columns."""
    return [
        ("fires [crank deg BTDC]", np.array([m.result_btdc_deg for m in moves])),
        ("from wanted, positive early [crank deg]", np.array([m.residual_deg for m in moves])),
        ("magneto flange on the disc, with rotation [teeth]", np.array([float(m.magneto_teeth) for m in moves])),
        ("disc on the drive flange, with rotation [teeth]", np.array([float(m.disc_teeth) for m in moves])),
    ]


# ---------------------------------------------------------------------- trials


@frozen
class TrialsCurve:
    """Largest gap against the plate, set to open at the E-gap each time; arrays (n,)."""

    backplate_deg: Array
    file_mm: Array
    """As the file has it; NaN where it never works."""
    gap_mm: Array
    """As the trials tell."""
    low_mm: Array
    high_mm: Array
    """It lies between these 19 times in 20, errors of setting included."""


def trials_curve(advice: Advice) -> TrialsCurve:
    """The curves of some trials over the slot, and as far as was tried."""
    fit = advice.fit
    low, high = fit.magneto.backplate.range_deg
    tried = fit.tried_deg or (low, high)
    plates = np.linspace(min(low, *tried), max(high, *tried), 241)
    there = fit.predict(plates, as_set=True)
    as_filed = fit_flank(fit.magneto, ())
    return TrialsCurve(plates, as_filed.predict(plates).gap_mm, there.gap_mm, there.low_mm, there.high_mm)


def trials_table(found: TrialsCurve) -> Table:
    """The curves as columns."""
    return [
        ("backplate, positive with rotation [deg]", found.backplate_deg),
        ("largest gap as the file has it [mm]", found.file_mm),
        ("largest gap through the trials [mm]", found.gap_mm),
        ("19 times in 20, low [mm]", found.low_mm),
        ("19 times in 20, high [mm]", found.high_mm),
    ]


# ---------------------------------------------------------------------- uncertainty and wear


def density_curve(outcome: Outcome) -> tuple[Array, Array]:
    """The normal density of the linear result over ±4 standard uncertainties: values (n,) in the quantity's unit and
    density (n,) per unit. Both empty where nothing is unsure."""
    u, middle = outcome.linear.standard_uncertainty, outcome.linear.estimate
    if not u > 0.0:
        return np.empty(0), np.empty(0)
    x = np.linspace(-4.0, 4.0, 201)
    return middle + u * x, np.exp(-(x**2) / 2) / (u * math.sqrt(2 * math.pi))


def budget_table(outcome: Outcome) -> Table:
    """The budget in the order of the inputs."""
    lines, unit = outcome.linear.budget, outcome.quantity.unit
    return [
        ("input", np.array([line.input.name for line in lines])),
        ("unit of the input", np.array([line.input.unit for line in lines])),
        ("estimate [its unit]", np.array([line.input.estimate for line in lines])),
        ("standard uncertainty [its unit]", np.array([line.input.standard_uncertainty for line in lines])),
        (f"sensitivity [{unit} per unit]", np.array([line.sensitivity for line in lines])),
        (f"contribution [{unit}]", np.array([line.uncertainty for line in lines])),
        ("share of the variance [1]", np.array([line.share for line in lines])),
    ]


def wear_course(state: BenchState, rates: WearRates, until_h: float) -> Course:
    """The present setting over running hours from now to `until_h` [h]. Raises ValueError as `wear.course` does."""
    hours = np.linspace(0.0, until_h, 201)
    return course(state.magneto, state.backplate_deg, state.screw_deg, rates, hours)


def wear_table(found: Course) -> Table:
    """Lobe 1 over the hours."""
    return [
        ("running hours [h]", found.hours),
        ("opening error, positive late [rotor deg]", found.opening_error_deg[:, 0]),
        ("largest gap [mm]", found.gap_mm[:, 0]),
        ("thickest blade that passes [mm]", found.blade_gap_mm[:, 0]),
        ("within limits", found.within_limits.astype(float)),
    ]


# ---------------------------------------------------------------------- tables


def csv_text(table: Table) -> str:
    """A table as CSV (RFC 4180): comma, decimal point, one header line with units, full precision.

    What does not exist (NaN) is an empty field.
    """
    out = io.StringIO()
    writer = csv.writer(out, lineterminator="\r\n")
    writer.writerow([header for header, _ in table])
    for row in zip(*(values.tolist() for _, values in table), strict=True):
        writer.writerow([v if isinstance(v, str) else "" if math.isnan(v) else repr(v) for v in row])
    return out.getvalue()
