"""Readings of instruments and eyes, with a real instrument's limits: pure functions of the state.

Everything a trainee may read is here, rounded to the instrument's own divisions; no function here lets a true
number through.
"""

from __future__ import annotations

import math

from magview.bench.blades import thickness_mm
from magview.bench.lead_words import BURNS
from magview.bench.state import crank_deg
from magview.drawing.breaker_glass import seen_past_mm
from magview.physics.cam.setting import internal_timing
from magview.physics.electric.circuit import TerminalSays
from magview.physics.engine.crank import strokes
from magview.physics.engine.dead_centre import timing_centre_deg
from magview.physics.engine.timing_light import lamp_burns, lamp_tells
from magview.practice.state import Feel, Practice, Said, true_circuit, true_gap_mm
from magview.spec.base import SpecError
from magview.spec.language import marked, tr
from magview.spec.units import MM_PER_INCH

MAX_EYE_DEG = 40.0
SQUARE_EYE_DEG = 5.0
"""Nearer than this is looking square on: the parallax left is a fifth of a millimetre at most."""

IN_SIGHT_DEG = 60.0
"""Further than this from every mark [cam deg] the edge points at nothing."""

DRAG_MM = 0.010
"""A blade this much thinner than the gap, or less, is felt to drag."""

DIVISIONS_MM = {"1/32 in": MM_PER_INCH / 32.0, "1/64 in": MM_PER_INCH / 64.0, "0.5 mm": 0.5}


def light(practice: Practice) -> bool | None:
    """Whether the timing light burns (a buzzer: buzzes high), by its kind. None where it is not connected."""
    if not practice.lamp_on:
        return None
    closed = true_circuit(practice.bench).lamp_sees_closed
    return lamp_burns(practice.exercise.tray.lamp_kind, closed, not practice.seat.coil_off)


def shows_open(practice: Practice) -> bool | None:
    """Whether the timing light says that the contacts are open and nothing grounds the primary.

    None where it is not connected, and for a plain lamp with the coil on, which burns either way.
    """
    if not practice.lamp_on or not lamp_tells(practice.exercise.tray.lamp_kind, not practice.seat.coil_off):
        return None
    return not true_circuit(practice.bench).lamp_sees_closed


STEADY = {
    "dark": marked("dark all the way round"),
    "light": marked("light all the way round"),
    "buzzes low": marked("buzzes low all the way round"),
    "buzzes high": marked("buzzes high all the way round"),
}


def lamp(practice: Practice) -> Said:
    """The timing light: "light", "dark", or how it buzzes; "not connected"."""
    burns = light(practice)
    if burns is None:
        return Said("lamp", marked("not connected"))
    return Said("lamp", BURNS[practice.exercise.tray.lamp_kind == "buzzer"][burns])


def felt(practice: Practice) -> Said:
    """A thumbnail pressed to the felt (FAA-H-8083-32B, ch. 4): oil shows on it, or the felt is dry."""
    dry = practice.seat.felt_dry and not practice.seat.oil_drops
    return Said("felt", marked("no oil shows: it is dry") if dry else marked("oil shows on the thumbnail"))


def edge_mm(practice: Practice) -> tuple[float, int] | None:
    """Seeming place of the edge, unread: past the nearest mark [mm], and that mark's number. None out of sight.

    Each lobe has its mark, where it should open: evenly spaced, or on a compensated cam each at its own place. For
    marking and for the instrument below; no screen shows it.
    """
    timing, here = internal_timing(practice.bench.magneto), practice.bench.rotor_deg
    turn = 360.0 / timing.ratio
    away = [(here - place + turn / 2) % turn - turn / 2 for place in timing.places_deg.tolist()]
    nearest = min(range(timing.lobes), key=lambda lobe: abs(away[lobe]))
    cam = timing.ratio * away[nearest]
    if abs(cam) > IN_SIGHT_DEG:
        return None
    radius = timing.magneto.marks.radius_mm
    return radius * math.tan(math.radians(cam)) + seen_past_mm(practice.eye_deg), nearest + 1


def straightedge(practice: Practice) -> Said:
    """The straightedge along the cam's step against the rim marks, to the nearest division.

    `value`: divisions past the mark (negative: short of it); None out of sight or not laid on.
    """
    marks = practice.exercise.tray.straightedge
    if not practice.edge_laid or marks is None:
        return Said("straightedge", marked("not laid on"))
    seen = edge_mm(practice)
    if seen is None:
        return Said("straightedge", marked("no mark near the edge"))
    divisions = math.floor(seen[0] / DIVISIONS_MM[marks] + 0.5)
    mark: tuple[tuple[str, str | float], ...] = (("mark", seen[1]),)
    if divisions == 0:
        return Said("straightedge", marked("in line with the mark (mark {mark})"), 0.0, mark)
    size: tuple[tuple[str, str | float], ...] = (
        (("size", f"{abs(divisions)}/{marks.removeprefix('1/').removesuffix(' in')}"), ("unit", "in"))
        if marks != "0.5 mm"
        else (("size", abs(divisions) * 0.5), ("unit", "mm"))
    )
    past = marked("{size} {unit} past the mark (mark {mark})")
    words = past if divisions > 0 else marked("{size} {unit} short of the mark (mark {mark})")
    return Said("straightedge", words, float(divisions), size + mark)


def blades(practice: Practice, kind: str, stack: tuple[float, ...]) -> Said:
    """Try blades between the contacts as the rotor stands: how they feel. A pip is in their way."""
    thick = thickness_mm(kind, stack)
    room = true_gap_mm(practice.bench) - practice.bench.magneto.condition.pip_height_mm
    if thick > room + 1e-9:
        return Said("blades", Feel.NO_GO)
    return Said("blades", Feel.DRAG if room - thick <= DRAG_MM else Feel.GO)


def true_disc_deg(practice: Practice) -> float:
    """True place of the pointer on the crank disc [crank deg BTDC], −180…180."""
    engaged = practice.bench.engaged
    top = timing_centre_deg(engaged.installation.engine) if engaged is not None else 0.0
    return (practice.disc_error_deg - crank_deg(practice.bench) + top + 180.0) % 360.0 - 180.0


def disc(practice: Practice) -> Said:
    """The crank disc under its pointer, degrees before top dead centre as the disc is set, as finely as it reads."""
    step = practice.exercise.tray.disc_step_deg
    if step is None or practice.bench.engaged is None:
        return Said("disc", marked("no disc on the crank"))
    value = round(math.floor(true_disc_deg(practice) / step + 0.5) * step, 6) + 0.0
    words = marked("{angle}° after the disc's zero") if value < 0 else marked("{angle}° before the disc's zero")
    return Said("disc", words, value, (("angle", abs(value)),))


def meter(practice: Practice) -> Said:
    """The meter from the lead's plug to the case: with the plug pulled it sees lead and switch alone."""
    if practice.bench.lead.plug_in:
        raise SpecError(tr("with the plug in, the meter sees lead and coil at once: pull the plug first"))
    return Said("meter", marked("ground") if true_circuit(practice.bench).meter_sees_ground else marked("no ground"))


def terminal_meter(practice: Practice) -> Said:
    """The meter from the magneto's terminal to the case, to a tenth of an ohm: it always sees the winding."""
    now = true_circuit(practice.bench)
    ohm = round(now.terminal_ohm, 1)
    return Said("meter", _AT_TERMINAL[now.terminal_says], ohm, (("ohm", ohm),))


_AT_TERMINAL = {
    TerminalSays.GROUND: marked("ground, {ohm} Ω"),
    TerminalSays.WINDING: marked("the winding alone, {ohm} Ω"),
    TerminalSays.CANNOT_TELL: marked("{ohm} Ω, which may be the winding or ground"),
}


def switch_meter(practice: Practice) -> Said:
    """The meter at this magneto's pole of the switch, the lead taken off it for the reading."""
    if practice.bench.lead.plug_in:
        raise SpecError(tr("with the lead off the switch nothing there grounds the magneto: pull the plug first"))
    return Said("meter", marked("ground") if practice.bench.lead.own_pole_closed else marked("no ground"))


def finger(practice: Practice) -> Said:
    """The cylinder whose electrode the distributor finger is nearest to; `value` is the cylinder."""
    engaged = practice.bench.engaged
    if engaged is None:
        return Said("finger", marked("no distributor on the bench"))
    order = engaged.installation.engine.firing_order
    # The finger turns at half crank speed and stands at No. 1 when lobe 1 opens at the E-gap.
    turned = (practice.bench.rotor_deg - practice.bench.magneto.e_gap_deg) / (720.0 * engaged.ratio)
    cylinder = order[math.floor(turned * len(order) + 0.5) % len(order)]
    return Said("finger", marked("nearest to No. {cylinder}"), float(cylinder), (("cylinder", float(cylinder)),))


def compression(practice: Practice) -> Said:
    """A thumb over the timing cylinder's plug hole while the crank is rocked."""
    engaged = practice.bench.engaged
    if engaged is None:
        raise SpecError(tr("there is no engine here"))
    if not practice.plugs_out:
        raise SpecError(tr("the spark plug is in its hole: take the plugs out first"))
    cylinder = practice.timing_cylinder
    rising = str(strokes(engaged.installation.engine, crank_deg(practice.bench), cylinder)) == "compression"
    if not rising:
        return Said("thumb", marked("no pressure"), 0.0)
    words = marked("pressure: No. {cylinder} is on compression")
    return Said("thumb", words, 1.0, (("cylinder", float(cylinder)),))
