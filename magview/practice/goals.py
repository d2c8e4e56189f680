"""Each thing that can count, judged: whether it is right, nearly right, and proved, with a sentence that says why."""

from __future__ import annotations

import math

import numpy as np

from magview.bench.state import Side
from magview.practice.evidence import Evidence, Track
from magview.practice.exercise import Goal
from magview.practice.instruments import DRAG_MM, SQUARE_EYE_DEG, edge_mm, parallax_mm
from magview.practice.readings import judge_reading
from magview.practice.state import Practice, true_firing_deg, true_readings, view
from magview.practice.words import side_words
from magview.spec.frozen import frozen
from magview.spec.units import format_length

NEAR_FACTOR = 2.0
"""Within so many times what is allowed is nearly right."""

DISC_TOLERANCE_DEG = 0.5
PIP_MM = 0.004
UPPER_BLADE_MM = 0.030
"""A blade this much thicker than the upper limit still says something of it."""


@frozen
class Judged:
    """How one thing that counts was found."""

    what: str
    right: bool
    near: bool
    proved: bool
    evidence: str
    share: float | None = None
    """The part of the weight, where it is not by right and proved."""


def judge(found: Evidence, left: Practice, goal: Goal, side: Side) -> Judged:
    """Judge one goal on one magneto: `left` is the state as left, after its first run."""
    room, track = view(left, side), found.tracks[side]
    match goal.goal:
        case "e-gap":
            return _e_gap(view(found.last, side))
        case "opening":
            return _opening(room, track)
        case "gap":
            return _gap(room, track, goal.every_lobe)
        case "contacts":
            return _contacts(room, track)
        case "disc-zero":
            return _disc(found, left)
        case "timing":
            return _timing(found, room, track)
        case "synchronised":
            return _synchronised(found, left)
        case "lead":
            return _lead(found, room, track)
        case "marks":
            return _marks(room, track)
        case "secured":
            return _secured(view(found.last, side))
        case "reading":
            return Judged(*judge_reading(found, goal, side))


def _e_gap(room: Practice) -> Judged:
    seen, allowed = edge_mm(room), room.bench.magneto.marks.tolerance_mm
    offset = math.inf if seen is None else abs(seen[0] - parallax_mm(room))
    proved = room.edge_laid and abs(room.eye_deg) <= SQUARE_EYE_DEG
    right = offset <= allowed
    told = (
        f"the edge stands {offset:.2f} mm from the mark, {allowed:.2f} mm are allowed"
        if seen is not None
        else "the rotor stands near no mark"
    )
    how = (
        "the straightedge lay on it, looked at square"
        if proved
        else "the straightedge was not looked at square there"
    )
    return Judged("Rotor at the E-gap", right, offset <= NEAR_FACTOR * allowed, proved, f"{_cap(told)}; {how}.")


def _opening(room: Practice, track: Track) -> Judged:
    now, magneto = true_readings(room.bench), room.bench.magneto
    judged = now.e_gap_error_deg[:1] if magneto.compensated else now.e_gap_error_deg
    cam = np.radians(np.clip(judged * magneto.cam.turns_per_rotor_turn, -89.0, 89.0))
    offsets = magneto.marks.radius_mm * np.tan(cam)
    allowed = magneto.marks.tolerance_mm
    worst = float(np.max(np.abs(offsets))) if np.isfinite(offsets).all() else math.inf
    looks = [o for o in track.openings if o.forward and o.edge is not None and o.edge.value is not None]
    proved, how = _since(
        [o.index for o in looks if o.square],
        track.set_at,
        track.set_why,
        "lamp and straightedge, looked at square",
        [o.index for o in looks],
        "only with the eye to one side of the straightedge",
    )
    told = f"opens {worst:.2f} mm from the mark, {allowed:.2f} mm are allowed" if worst < math.inf else "never opens"
    return Judged(
        f"{_cap(side_words(room, room.side))}: contacts open at the mark",
        worst <= allowed + 1e-9,
        worst <= NEAR_FACTOR * allowed,
        proved,
        f"{_cap(told)}; {how}.",
    )


def _gap(room: Practice, track: Track, every_lobe: bool) -> Judged:
    now, (low, high) = true_readings(room.bench), room.bench.magneto.gap_limits_mm
    gaps = now.max_gap_mm.tolist()
    beyond = max(max(low - g, g - high, 0.0) for g in gaps)
    lobes = range(1, len(gaps) + 1)
    counted = {lobe: _bracket(track, lobe, low, high) for lobe in lobes}
    tried = {lobe: index for lobe, index in counted.items() if index is not None}
    enough = len(tried) == len(gaps) if every_lobe else bool(tried)
    where = "every lobe" if every_lobe else "a lobe"
    how = f"blades on both sides of the limits were tried on {where} after the last change"
    if not enough:
        why = f" after {track.gap_why}" if track.gap_why else ""
        how = f"blades on both sides of the limits were not tried on {where}{why}"
    span = _span(gaps)
    return Judged(
        f"{_cap(side_words(room, room.side))}: largest gap within limits" + (" on every lobe" if every_lobe else ""),
        bool(now.gap_ok.all()),
        beyond <= (high - low) / 2,
        enough,
        f"The largest gap is {span}, limits {format_length(low, False)} to {format_length(high, False)}; {how}.",
    )


def _bracket(track: Track, lobe: int, low: float, high: float) -> int | None:
    """The step by which blades had been tried on both sides of what is allowed; None if they were not."""
    tried = [t for t in track.tried if t.lobe == lobe and t.index > track.gap_at]
    wide = [t.index for t in tried if t.says != "no-go" and t.thick_mm >= low - 1e-6]
    close = [t.index for t in tried if t.says == "no-go" and t.thick_mm <= high + UPPER_BLADE_MM]
    close += [t.index for t in tried if t.says == "drag" and t.thick_mm <= high - DRAG_MM]
    return max(min(wide), min(close)) if wide and close else None


def _span(gaps: list[float]) -> str:
    if max(gaps) - min(gaps) < 5e-4:
        return format_length(gaps[0], False)
    return f"{format_length(min(gaps), False)} to {format_length(max(gaps), False)} over the lobes"


def _contacts(room: Practice, track: Track) -> Judged:
    pip = room.bench.magneto.condition.pip_height_mm
    proved = any(index >= track.set_at and "clean" in text for index, text in track.contacts) or (
        bool(track.contacts) and "clean" in track.contacts[-1][1]
    )
    told = (
        "The contacts are clean" if pip <= PIP_MM else f"A pip of {format_length(pip, False)} stands on the contacts"
    )
    how = "they were looked at" if proved else "they were not looked at as they are now"
    return Judged("Contacts clean and flat", pip <= PIP_MM, False, proved, f"{told}; {how}.")


def _disc(found: Evidence, left: Practice) -> Judged:
    error = abs(left.disc_error_deg)
    proved = found.both_stops() or left.exercise.start.disc_at_zero
    how = "the piston met its stop from both sides" if proved else "the stop was not met from both sides"
    return Judged(
        "Crank disc at zero",
        error <= DISC_TOLERANCE_DEG,
        error <= NEAR_FACTOR * DISC_TOLERANCE_DEG,
        proved,
        f"The disc reads {error:.2f}° at top dead centre, {DISC_TOLERANCE_DEG:g}° are allowed; {how}.",
    )


def timing_error_deg(room: Practice) -> float:
    """How far the magneto in view fires from where it is wanted [crank deg], positive early; infinite if off."""
    engaged = room.bench.engaged
    if engaged is None or not engaged.mounted:
        return math.inf
    fires = true_firing_deg(room.bench)
    return fires - engaged.mounting.wanted_btdc_deg if math.isfinite(fires) else math.inf


def _timing(found: Evidence, room: Practice, track: Track) -> Judged:
    engaged = room.bench.engaged
    assert engaged is not None
    error, allowed = timing_error_deg(room), engaged.installation.engine.timing_tolerance_deg
    proved, how = timing_proved(found, track)
    if not math.isfinite(error):
        told = "the magneto is off the engine, or never opens"
    else:
        side = "early" if error >= 0 else "late"
        told = f"fires {abs(error):.2f}° of crank {side}, {allowed:g}° are allowed"
        if abs(error) > 180.0:
            told += ": on the wrong stroke"
    return Judged(
        f"{_cap(side_words(room, room.side))}: timed to the engine",
        abs(error) <= allowed + 1e-9,
        abs(error) <= NEAR_FACTOR * allowed,
        proved,
        f"{_cap(told)}; {how}.",
    )


def timing_proved(found: Evidence, track: Track) -> tuple[bool, str]:
    """Whether lamp and disc have shown the timing as it is now, and the words for it."""
    start = found.first.exercise.start
    if not (found.both_stops() or start.disc_at_zero):
        return False, "the disc's zero was never found by the stop from both sides"
    since = max(track.set_at, track.meshed_at)
    why = track.set_why if track.set_at > track.meshed_at else track.meshed_why
    looks = [o for o in track.openings if o.disc is not None and o.disc.value is not None and o.first_cylinder]
    return _since(
        [o.index for o in looks if o.forward],
        since,
        why,
        "lamp and disc, approached with rotation",
        [o.index for o in looks],
        "only approached against rotation, with the play on the wrong side",
    )


def _synchronised(found: Evidence, left: Practice) -> Judged:
    engaged = left.bench.engaged
    assert engaged is not None
    errors = [timing_error_deg(view(left, side)) for side in left.sides]
    apart = abs(errors[0] - errors[1]) if all(math.isfinite(e) for e in errors) else math.inf
    allowed = engaged.installation.engine.synchronising_tolerance_deg
    proved = all(timing_proved(found, found.tracks[side])[0] for side in left.sides)
    how = (
        "both were read with lamp and disc after the last change"
        if proved
        else "not both were read after the last change"
    )
    told = (
        f"left and right are {apart:.2f}° apart, {allowed:g}° are allowed"
        if apart < math.inf
        else "one does not fire"
    )
    return Judged(
        "Left and right together",
        apart <= allowed + 1e-9,
        apart <= NEAR_FACTOR * allowed,
        proved,
        f"{_cap(told)}; {how}.",
    )


def _lead(found: Evidence, room: Practice, track: Track) -> Judged:
    lead, seat, was = room.bench.lead, room.seat, view(found.first, room.side).bench.lead
    wrong = [
        *(["the lead is broken inside"] if lead.broken else []),
        *(["the primary is shorted inside"] if lead.shorted else []),
        *(["the spring tab does not touch the case"] if not seat.tab_sound else []),
    ]
    lead_at, tab_at, inside_at = (track.renewed.get(part, 0) for part in ("lead", "tab", "insulation"))
    off = any(i > lead_at and not on and said == "ground" for i, on, said in track.meter)
    on = any(i > lead_at and on and said == "no ground" for i, on, said in track.meter)
    checks = {"the meter with the switch off and on": off and on}
    if was.shorted:
        checks["the lamp lighting"] = any(o.index > inside_at for o in track.openings)
    if not view(found.first, room.side).seat.tab_sound:
        checks["the lamp staying dark with the plug out"] = any(
            i > tab_at and not plug_in and shown == "dark" for i, plug_in, shown in track.steady
        )
    proved = all(checks.values())
    missing = [name for name, done in checks.items() if not done]
    how = f"proved by {' and '.join(checks)}" if proved else f"not proved by {' and '.join(missing)}"
    told = "The switch lead is sound" if not wrong else _cap(" and ".join(wrong))
    return Judged(
        f"{_cap(side_words(room, room.side))}: switch lead sound", not wrong, False, proved, f"{told}; {how}."
    )


def _marks(room: Practice, track: Track) -> Judged:
    what = f"{_cap(side_words(room, room.side))}: coupling marked before it was taken apart"
    if track.disturbed_at is None:
        share, told = float(room.seat.marked), "The coupling was not taken apart"
        told += " and is marked." if room.seat.marked else ", and not marked either."
        return Judged(what, bool(share), False, True, told, share)
    share = float(track.marked_first)
    told = "Marks were painted first." if share else "It was taken apart with no marks painted across it."
    return Judged(what, bool(share), False, True, told, share)


def _secured(room: Practice) -> Judged:
    state = room.bench
    checks = {"lock screw tight": state.lock_tight, "clamp screws tight": state.clamps_tight}
    if state.engaged is not None:
        checks |= {
            "magneto on the engine": room.mounted,
            "nuts tight": room.seat.nuts_tight,
            "pin out": not room.seat.pinned,
            "paper out": not room.seat.paper,
            "plug in": state.lead.plug_in,
            "switch off": not state.lead.switch_on,
            "piston stop out": not room.stop_fitted,
        }
    missing = [name for name, done in checks.items() if not done]
    told = "Everything is closed up." if not missing else f"Not so: {', '.join(missing)}."
    what = f"{_cap(side_words(room, room.side))}: closed up"
    return Judged(what, not missing, False, True, told, 1.0 - len(missing) / len(checks))


def _since(
    good: list[int], since: int, why: str, how: str, others: list[int], lacking: str
) -> tuple[bool, str]:  # fmt: skip
    """Whether a good look was taken after step `since`, and the words for it."""
    if any(i > since for i in good):
        return True, f"checked by {how}, after the last change"
    if any(i > since for i in others):
        return False, f"checked {lacking}"
    if good or others:
        return False, f"not checked again after {why}"
    return False, f"never checked by {how}"


def _cap(text: str) -> str:
    return text[0].upper() + text[1:]
