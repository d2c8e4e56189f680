"""Each thing that can count, judged: whether it is right, nearly right, and proved, with a sentence that says why."""

from __future__ import annotations

import math
from typing import NamedTuple

import numpy as np

from magview.bench.state import Side
from magview.drawing.breaker_glass import seen_past_mm
from magview.practice.closing import closed_up
from magview.practice.contacts import PIP_MM
from magview.practice.decisions import decided_rightly
from magview.practice.evidence import Evidence, Track
from magview.practice.exercise_parts import Goal
from magview.practice.instruments import DRAG_MM, SQUARE_EYE_DEG, edge_mm
from magview.practice.judged import Judged
from magview.practice.lead_proof import judge_lead
from magview.practice.readings import judge_reading
from magview.practice.state import Feel, Practice, true_firing_deg, true_readings, view
from magview.practice.words import side_words
from magview.spec.language import format_length, marked, tr
from magview.spec.units import MM_DIGITS, digits_beside, length_digits

NEAR_FACTOR = 2.0
"""Within so many times what is allowed is nearly right."""

DISC_TOLERANCE_DEG = 0.5
UPPER_BLADE_MM = 0.030
"""A blade this much thicker than the upper limit still says something of it."""


def judge(found: Evidence, left: Practice, goal: Goal, side: Side) -> Judged:
    """Judge one goal on one magneto: `left` is the state as left, after its first run."""
    room, track = view(left, side), found.tracks[side]
    match goal.goal:
        case "e-gap":
            return _e_gap(view(found.last, side))
        case "opening":
            return _opening(room, track, goal.every_lobe and room.exercise.rules >= 2)
        case "gap":
            return _gap(room, track, goal.every_lobe)
        case "contacts":
            return decided_rightly(found, room, track) if room.exercise.rules >= 2 else _contacts(room, track)
        case "disc-zero":
            return _disc(found, left)
        case "timing":
            return _timing(found, room, track)
        case "synchronised":
            return _synchronised(found, left)
        case "lead":
            return Judged(*judge_lead(found, room, track))
        case "marks":
            return _marks(room, track)
        case "secured":
            return _secured(found, view(found.last, side), track)
        case "reading":
            return Judged(*judge_reading(found, goal, side))


def _e_gap(room: Practice) -> Judged:
    seen, magneto = edge_mm(room), room.bench.magneto
    allowed = magneto.marks.tolerance_mm
    # The magnet's E-gap comes at even steps: a compensated cam's other lobes open where it is not.
    elsewhere = seen is not None and magneto.compensated and seen[1] != 1
    offset = math.inf if seen is None or elsewhere else abs(seen[0] - seen_past_mm(room.eye_deg))
    proved = room.edge_laid and abs(room.eye_deg) <= SQUARE_EYE_DEG
    right = offset <= allowed
    if seen is None:
        told = tr("the rotor stands near no mark")
    elif elsewhere:
        told = tr("the edge stands near mark {mark}; on this cam the E-gap is at mark 1", mark=seen[1])
    else:
        told = tr(
            "the edge stands {offset:.{digits}mm} from the mark, {allowed:.{digits}mm} are allowed",
            offset=offset,
            allowed=allowed,
            digits=digits_beside(offset, None, allowed, 2),
        )
    how = (
        tr("the straightedge lay on it, looked at square")
        if proved
        else tr("the straightedge was not looked at square there")
    )
    return Judged(
        tr("Rotor at the E-gap"), right, offset <= NEAR_FACTOR * allowed, proved, f"{_cap(told)}; {how}.", how=how
    )


def _opening(room: Practice, track: Track, every_lobe: bool) -> Judged:
    now, magneto = true_readings(room.bench), room.bench.magneto
    judged = now.e_gap_error_deg[:1] if magneto.compensated else now.e_gap_error_deg
    cam = np.radians(np.clip(judged * magneto.cam.turns_per_rotor_turn, -89.0, 89.0))
    offsets = magneto.marks.radius_mm * np.tan(cam)
    allowed = magneto.marks.tolerance_mm
    worst = float(np.max(np.abs(offsets))) if np.isfinite(offsets).all() else math.inf
    looks = [o for o in track.openings if o.forward and o.edge is not None and o.edge.value is not None]
    looks = [o for o in looks if o.lobe == 1 or not magneto.compensated]
    proved, how = _since(
        [o.index for o in looks if o.square],
        track.set_at,
        track.set_why,
        [o.index for o in looks],
        _Proof(
            marked("checked by lamp and straightedge, looked at square, after the last change"),
            marked("checked only with the eye to one side of the straightedge"),
            marked("never checked by lamp and straightedge, looked at square"),
        ),
    )
    unseen = set(range(1, len(now.opens_deg) + 1)) - {o.lobe for o in looks if o.square and o.index > track.set_at}
    if every_lobe and proved and unseen:
        proved, how = False, tr("not every lobe was seen to open after the last change")
    told = (
        tr(
            "opens {worst:.{digits}mm} from the mark, {allowed:.{digits}mm} are allowed",
            worst=worst,
            allowed=allowed,
            digits=digits_beside(worst, None, allowed, 2),
        )
        if worst < math.inf
        else tr("never opens")
    )
    return Judged(
        tr("{magneto}: contacts open at the mark", magneto=_cap(side_words(room, room.side))),
        worst <= allowed + 1e-9,
        worst <= NEAR_FACTOR * allowed,
        proved,
        f"{_cap(told)}; {how}.",
        how=how,
    )


_BLADES_TRIED = {
    (True, True, True): marked("blades on both sides of the limits were tried on every lobe after the last change"),
    (True, False, True): marked("blades on both sides of the limits were not tried on every lobe after {why}"),
    (True, False, False): marked("blades on both sides of the limits were not tried on every lobe"),
    (False, True, True): marked("blades on both sides of the limits were tried on a lobe after the last change"),
    (False, False, True): marked("blades on both sides of the limits were not tried on a lobe after {why}"),
    (False, False, False): marked("blades on both sides of the limits were not tried on a lobe"),
}
"""By every lobe asked for, enough tried, something changed before."""


def _gap(room: Practice, track: Track, every_lobe: bool) -> Judged:
    now, (low, high) = true_readings(room.bench), room.bench.magneto.gap_limits_mm
    gaps = now.max_gap_mm.tolist()
    beyond = max(max(low - g, g - high, 0.0) for g in gaps)
    lobes = range(1, len(gaps) + 1)
    counted = {lobe: _bracket(track, lobe, low, high) for lobe in lobes}
    tried = {lobe: index for lobe, index in counted.items() if index is not None}
    enough = len(tried) == len(gaps) if every_lobe else bool(tried)
    how = tr(_BLADES_TRIED[every_lobe, enough, enough or bool(track.gap_why)], why=track.gap_why)
    digits = max(length_digits(g, low, high, False) for g in gaps)
    return Judged(
        tr("{magneto}: largest gap within limits on every lobe", magneto=_cap(side_words(room, room.side)))
        if every_lobe
        else tr("{magneto}: largest gap within limits", magneto=_cap(side_words(room, room.side))),
        bool(now.gap_ok.all()),
        beyond <= (high - low) / 2,
        enough,
        tr(
            "The largest gap is {span}, limits {low:.{digits}mm} to {high:.{digits}mm}; {how}.",
            span=_span(gaps, digits),
            low=low,
            high=high,
            how=how,
            digits=digits,
        ),
        how=how,
    )


def _bracket(track: Track, lobe: int, low: float, high: float) -> int | None:
    """The step by which blades had been tried on both sides of what is allowed; None if they were not."""
    tried = [t for t in track.tried if t.lobe == lobe and t.index > track.gap_at]
    wide = [t.index for t in tried if t.feel is not Feel.NO_GO and t.thick_mm >= low - 1e-6]
    close = [t.index for t in tried if t.feel is Feel.NO_GO and t.thick_mm <= high + UPPER_BLADE_MM]
    close += [t.index for t in tried if t.feel is Feel.DRAG and t.thick_mm <= high - DRAG_MM]
    return max(min(wide), min(close)) if wide and close else None


def _span(gaps: list[float], digits: int) -> str:
    least, most = (format_length(gap, False, digits) for gap in (min(gaps), max(gaps)))
    if max(gaps) - min(gaps) < 5e-4 and digits == MM_DIGITS:
        return format_length(gaps[0], False)
    return least if least == most else tr("{low} to {high} over the lobes", low=least, high=most)


def _contacts(room: Practice, track: Track) -> Judged:
    pip = room.bench.magneto.condition.pip_height_mm
    proved = any(index >= track.set_at and "clean" in text for index, text in track.contacts) or (
        bool(track.contacts) and "clean" in track.contacts[-1][1]
    )
    told = tr("The contacts are clean") if pip <= PIP_MM else tr("A pip of {pip:mm} stands on the contacts", pip=pip)
    how = tr("they were looked at") if proved else tr("they were not looked at as they are now")
    return Judged(tr("Contacts clean and flat"), pip <= PIP_MM, False, proved, f"{told}; {how}.")


def _disc(found: Evidence, left: Practice) -> Judged:
    error = abs(left.disc_error_deg)
    proved = found.both_stops() or left.exercise.start.disc_at_zero
    how = tr("the piston met its stop from both sides") if proved else tr("the stop was not met from both sides")
    return Judged(
        tr("Crank disc at zero"),
        error <= DISC_TOLERANCE_DEG,
        error <= NEAR_FACTOR * DISC_TOLERANCE_DEG,
        proved,
        tr(
            "The disc reads {error:.{digits}deg} at top dead centre, {allowed}° are allowed; {how}.",
            error=error,
            digits=digits_beside(error, None, DISC_TOLERANCE_DEG, 2),
            allowed=DISC_TOLERANCE_DEG,
            how=how,
        ),
        how=how,
    )


def timing_error_deg(room: Practice) -> float:
    """Timing error of the magneto in view [crank deg], positive early; infinite if off."""
    engaged = room.bench.engaged
    if engaged is None or not engaged.mounted:
        return math.inf
    fires = true_firing_deg(room.bench)
    return fires - engaged.mounting.wanted_btdc_deg if math.isfinite(fires) else math.inf


_FIRES = {
    (True, False): marked("fires {error:.{digits}deg} of crank early, {allowed}° are allowed"),
    (True, True): marked("fires {error:.{digits}deg} of crank early, {allowed}° are allowed: on the wrong stroke"),
    (False, False): marked("fires {error:.{digits}deg} of crank late, {allowed}° are allowed"),
    (False, True): marked("fires {error:.{digits}deg} of crank late, {allowed}° are allowed: on the wrong stroke"),
}
"""By early, and on the wrong stroke."""


def _timing(found: Evidence, room: Practice, track: Track) -> Judged:
    engaged = room.bench.engaged
    assert engaged is not None
    error, allowed = timing_error_deg(room), engaged.installation.engine.timing_tolerance_deg
    proved, how = timing_proved(found, track)
    if not math.isfinite(error):
        told = tr("the magneto is off the engine, or never opens")
    else:
        words = _FIRES[error >= 0, abs(error) > 180.0]
        digits = digits_beside(abs(error), None, allowed, 2)
        told = tr(words, error=abs(error), digits=digits, allowed=allowed)
    return Judged(
        tr("{magneto}: timed to the engine", magneto=_cap(side_words(room, room.side))),
        abs(error) <= allowed + 1e-9,
        abs(error) <= NEAR_FACTOR * allowed,
        proved,
        f"{_cap(told)}; {how}.",
        how=how,
    )


def timing_proved(found: Evidence, track: Track) -> tuple[bool, str]:
    """Whether lamp and disc have shown the timing as it is now, and the words for it."""
    start = found.first.exercise.start
    if not (found.both_stops() or start.disc_at_zero):
        return False, tr("the disc's zero was never found by the stop from both sides")
    since = max(track.set_at, track.meshed_at)
    # Contacts set anew move the firing as much as teeth do: what the lamp read before is out of date.
    moved = tr("{why}, which moves the firing", why=track.set_why)
    why = moved if track.set_at > track.meshed_at else track.meshed_why
    looks = [o for o in track.openings if o.disc is not None and o.disc.value is not None and o.first_cylinder]
    return _since(
        [o.index for o in looks if o.forward],
        since,
        why,
        [o.index for o in looks],
        _Proof(
            marked("checked by lamp and disc, approached with rotation, after the last change"),
            marked("checked only approached against rotation, with the play on the wrong side"),
            marked("never checked by lamp and disc, approached with rotation"),
        ),
    )


def _synchronised(found: Evidence, left: Practice) -> Judged:
    engaged = left.bench.engaged
    assert engaged is not None
    errors = [timing_error_deg(view(left, side)) for side in left.sides]
    apart = abs(errors[0] - errors[1]) if all(math.isfinite(e) for e in errors) else math.inf
    allowed = engaged.installation.engine.synchronising_tolerance_deg
    proved = all(timing_proved(found, found.tracks[side])[0] for side in left.sides)
    how = (
        tr("both were read with lamp and disc after the last change")
        if proved
        else tr("not both were read after the last change")
    )
    told = (
        tr(
            "left and right are {apart:.{digits}deg} of crank apart, {allowed}° are allowed",
            apart=apart,
            digits=digits_beside(apart, None, allowed, 2),
            allowed=allowed,
        )
        if apart < math.inf
        else tr("one does not fire")
    )
    return Judged(
        tr("Left and right together"),
        apart <= allowed + 1e-9,
        apart <= NEAR_FACTOR * allowed,
        proved,
        f"{_cap(told)}; {how}.",
        how=how,
    )


def _marks(room: Practice, track: Track) -> Judged:
    what = tr("{magneto}: coupling marked before it was taken apart", magneto=_cap(side_words(room, room.side)))
    if track.disturbed_at is None:
        share = float(room.seat.marked)
        told = (
            tr("The coupling was not taken apart and is marked.")
            if room.seat.marked
            else tr("The coupling was not taken apart, and not marked either.")
        )
        return Judged(what, bool(share), False, True, told, share)
    share = float(track.marked_first)
    told = tr("Marks were painted first.") if share else tr("It was taken apart with no marks painted across it.")
    return Judged(what, bool(share), False, True, told, share)


def _secured(found: Evidence, room: Practice, track: Track) -> Judged:
    state = room.bench
    checks = {tr("lock screw tight"): state.lock_tight, tr("clamp screws tight"): state.clamps_tight}
    if state.lead.jumper:
        checks[tr("jumper off: with it on this magneto is dead")] = False
    if state.engaged is not None:
        checks |= {
            tr("magneto on the engine"): room.mounted,
            tr("nuts tight"): room.seat.nuts_tight,
            tr("pin out"): not room.seat.pinned,
            tr("paper out"): not state.lead.paper,
            tr("plug in"): state.lead.plug_in,
            tr("switch off"): not state.lead.switch_on,
            tr("piston stop out"): not room.stop_fitted,
        }
    if room.exercise.rules >= 2:
        checks |= {tr(words): done for words, done in closed_up(found, room, track)}
    missing = [name for name, done in checks.items() if not done]
    told = tr("Everything is closed up.") if not missing else tr("Not so: {missing}.", missing=", ".join(missing))
    what = tr("{magneto}: closed up", magneto=_cap(side_words(room, room.side)))
    return Judged(what, not missing, False, True, told, 1.0 - len(missing) / len(checks))


class _Proof(NamedTuple):
    """Sentences on the looks taken: good ones after the last change, only others, none at all."""

    good: str
    lacking: str
    never: str


def _since(good: list[int], since: int, why: str, others: list[int], proof: _Proof) -> tuple[bool, str]:
    """Whether a good look was taken after step `since`, and the words for it."""
    if any(i > since for i in good):
        return True, tr(proof.good)
    if any(i > since for i in others):
        return False, tr(proof.lacking)
    if good or others:
        return False, tr("not checked again after {why}", why=why)
    return False, tr(proof.never)


def _cap(text: str) -> str:
    return text[0].upper() + text[1:]
