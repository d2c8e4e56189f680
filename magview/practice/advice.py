"""Efficient path of an exercise: from the truth as found, the fewest acts that a careful hand needs.

The moves are the bench's own: plate and screw by the closed-form adjustment, teeth by the exhaustive planner.
"""

from __future__ import annotations

import math
from collections.abc import Callable
from dataclasses import dataclass

from magview.bench.advised import ORDERS
from magview.bench.state import BenchState, Engaged
from magview.bench.words import move_words, plate_move, screw_move
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.coupling import Move, plan
from magview.physics.engine.dead_centre import has_link_rod
from magview.practice.contacts import PIP_MM, best
from magview.practice.paper import link_rod_words
from magview.practice.state import SAFE_THINGS, Practice, first_spark_deg, true_readings, view
from magview.practice.words import side_words
from magview.spec.language import marked, tr


@dataclass(frozen=True)
class Wanted:
    """Angles at which plate and screw of a magneto belong, and what tightening will add."""

    backplate_deg: float
    screw_deg: float
    """To turn to before the lock screw is tightened: the creep is allowed for."""
    gap_mm: float


def setting_wanted(state: BenchState) -> Wanted | None:
    """The setting that puts all lobes in the middle of the limits and lobe 1 at the E-gap; None out of reach."""
    timing, (low, high) = internal_timing(state.magneto), state.magneto.gap_limits_mm
    gaps = true_readings(state).max_gap_mm
    middle = (low + high) / 2 + float(gaps[0]) - (float(gaps.max()) + float(gaps.min())) / 2
    answer = timing.adjust(max(middle, 0.0))
    if not answer.reachable:
        return None
    creep = state.magneto.condition.screw_creep_deg
    return Wanted(answer.backplate_deg, answer.screw_deg - creep, middle)


def teeth_wanted(state: BenchState) -> Move | None:
    """The best move of teeth once the contacts open at the E-gap.

    None where the magneto must come off: on the wrong stroke, or further out than teeth reach well.
    """
    engaged = state.engaged
    assert engaged is not None
    place = first_spark_deg(engaged.installation, internal_timing(state.magneto).places_deg)
    fires = (engaged.mounting.phase_deg - place) / engaged.ratio
    fires = (fires + 360.0) % 720.0 - 360.0
    if abs(fires - engaged.mounting.wanted_btdc_deg) > 90.0:
        return None
    return best_move(engaged, fires)


def best_move(engaged: Engaged, fires: float) -> Move:
    """The best move of teeth for a firing [crank deg BTDC]."""
    teeth, wanted = engaged.installation.disc, engaged.mounting.wanted_btdc_deg
    return plan(teeth.magneto_teeth, teeth.drive_teeth, engaged.ratio, round(fires, 9), wanted, most=1)[0]


@dataclass(frozen=True)
class Amounts:
    """Words for the acts that take an amount: by the truth, or by somebody's own readings."""

    setting: Callable[[Practice, str], list[str]]
    """Gap and opening of the magneto in view, which has this name."""
    disc: Callable[[Practice], list[str]]
    teeth: Callable[[Practice], list[str]]


def efficient_path(found: Practice, amounts: Amounts | None = None) -> list[str]:
    """The acts, in words, in the order of a careful hand. `found` is the practice room as it was found; without
    `amounts` they are the true ones."""
    amounts = amounts or Amounts(_setting, _disc, _teeth)
    goals: set[str] = {g.goal for g in found.exercise.goals}
    goals |= {g.reading for g in found.exercise.goals if g.reading is not None}
    path: list[str] = []
    if found.bench.engaged is not None:
        path += _safe(found)
    for side in found.sides:
        path += _inside(view(found, side), goals, amounts)
    if found.bench.engaged is not None and goals & {"timing", "disc-zero", "firing"}:
        path += amounts.disc(found)
    if "timing" in goals:
        for side in found.sides:
            path += amounts.teeth(view(found, side))
    if "e-gap" in goals:
        path.append(tr("Lay the straightedge on, look square over it, turn to the mark with rotation, and hold."))
    if "secured" in goals:
        path += _closing(found)
    return path


def _closing(found: Practice) -> list[str]:
    if found.exercise.rules < 2:
        return [tr("Close up: screws, nuts, plug in, switch off; and look once more at what tightening can shift.")]
    exercise = found.exercise
    path = []
    for side in found.sides:
        room = view(found, side)
        name = side_words(room, side)
        if exercise.felt_drops is not None and room.seat.felt_dry:
            path.append(
                tr("On {name}, the felt is dry: drops of oil as the manual says: {drops}.", name=name,
                   drops=exercise.felt_drops)
            )  # fmt: skip
        elif exercise.felt_drops is not None:
            path.append(tr("On {name}, press a thumbnail to the felt: oil shows, so it gets none.", name=name))
    path.append(tr("Close up: timing light and straightedge off, paper out, screws tight."))
    if found.bench.engaged is not None:
        path.append(
            tr(
                "On the engine: nuts tight, stop out, spark plugs in, their leads on; each switch lead proved again, "
                "its plug in, the switch off; chocks left in or taken away last, as you decide."
            )
        )
    return path


def _safe(found: Practice) -> list[str]:
    words = [
        *([tr("chocks")] if not found.chocked else []),
        *([tr("switch off")] if found.bench.lead.switch_on else []),
        *([tr("spark plugs out")] if not found.plugs_out else []),
    ]
    unseen = [thing for thing in SAFE_THINGS if thing not in found.seen_to]
    words = [*words[:1], *(tr(_SAFE[thing]) for thing in unseen), *words[1:]]
    if not all(view(found, side).seat.proved for side in found.sides):
        words.append(tr("each lead proved, or a jumper on its magneto"))
    return [tr("Make it safe: {words}.", words=", ".join(words))] if words else []


_SAFE = {
    "fuel": marked("fuel off"), "mixture": marked("mixture cut off"), "throttle": marked("throttle closed"),
    "leads": marked("hanging plug leads grounded"),
}  # fmt: skip
_RENEW = {
    "lead": marked("On {name}, renew the lead, and prove it again."),
    "insulation": marked("On {name}, renew the insulation, and prove it again."),
    "tab": marked("On {name}, renew the tab, and prove it again."),
    "switch": marked("Renew the switch, and prove {name} again."),
    "places": marked("Put both leads in their own places at the switch, and prove {name} again."),
}


_DECIDE = {
    "leave": marked("On {name}, look at the contacts and leave them as they are."),
    "dress": marked(
        "On {name}, look at the contacts, dress them as the manual says, look again; only then measure: the stone "
        "took metal off."
    ),
    "renew": marked(
        "On {name}, look at the contacts, renew them, look again, note them for after running in; then set "
        "everything anew."
    ),
}


def _inside(room: Practice, goals: set[str], amounts: Amounts) -> list[str]:
    name, state, path = side_words(room, room.side), room.bench, []
    if "lead" in goals:
        path.append(
            tr(
                "On {name}, prove the lead: plug pulled, meter with the switch on, then off; lamp for the tab; "
                "plug in, lamp for the coil, live for that reading alone.",
                name=name,
            )
            if state.magneto.grounding_tab is True
            else tr(
                "On {name}, prove the lead: jumper on, plug pulled, meter with the switch on, then off; plug in, "
                "jumper off, lamp for the coil, live for that reading alone.",
                name=name,
            )
        )
        faults = {
            "lead": state.lead.broken or state.lead.chafed,
            "insulation": state.lead.shorted,
            "tab": not state.lead.tab_touches,
            "switch": state.lead.switch != "sound",
            "places": state.lead.crossed,
        }
        path += [tr(_RENEW[part], name=name) for part, bad in faults.items() if bad]
    if room.exercise.rules < 2:
        if goals & {"contacts", "gap"} and state.magneto.condition.pip_height_mm > PIP_MM:
            path.append(tr("On {name}, dress the contacts before measuring.", name=name))
    elif "contacts" in goals:
        path.append(tr(_DECIDE[best(room.exercise, room.seat.faces)], name=name))
    if "opening" in goals or "gap" in goals:
        anew = room.exercise.rules >= 2 and "contacts" in goals and best(room.exercise, room.seat.faces) != "leave"
        # Nobody knows beforehand what the stone takes off and where a new pair comes to stand.
        path += [tr(ORDERS), tr(_ANEW, name=name)] if anew else amounts.setting(room, name)
    return path


_ANEW = marked(
    "On {name}, turn the contact screw until blades on both limits prove the gap, tighten its lock screw; turn the "
    "backplate until the contacts open at the mark, tighten its clamp screws; check both again."
)


def _setting(room: Practice, name: str) -> list[str]:
    state, wanted = room.bench, setting_wanted(room.bench)
    if wanted is None:
        return [tr("On {name}, no setting puts gap and opening right at once.", name=name)]
    creep, (low, high) = state.magneto.condition.screw_creep_deg, state.magneto.gap_limits_mm
    gaps = true_readings(state).max_gap_mm
    path = [tr(ORDERS)] if room.exercise.rules >= 2 else []
    if float(gaps.min()) < low or float(gaps.max()) > high or not state.lock_tight:
        turn = screw_move(state.magneto, wanted.screw_deg - state.screw_deg)
        if creep:
            path.append(
                tr(
                    "On {name}, slacken the lock screw, {turn}, tighten (tightening carries it {creep:.1deg} on); "
                    "blades on both limits.",
                    name=name,
                    turn=turn,
                    creep=abs(creep),
                )
            )
        else:
            path.append(
                tr("On {name}, slacken the lock screw, {turn}, tighten; blades on both limits.", name=name, turn=turn)
            )
        plate = wanted.backplate_deg - state.backplate_deg
    else:  # the gap may stay: the plate alone brings the opening to the mark
        error = float(true_readings(state).e_gap_error_deg[0])
        plate = -error * state.magneto.cam.turns_per_rotor_turn
    if math.isfinite(plate) and abs(plate) >= 0.05:
        move = plate_move(state.magneto, plate)
        path.append(
            tr("On {name}, slacken the clamp screws, {move}, tighten; lamp and straightedge.", name=name, move=move)
        )
    return path


def _disc(found: Practice) -> list[str]:
    if found.exercise.start.disc_at_zero or not found.exercise.tray.stop:
        return []
    error = found.disc_error_deg
    return [
        tr(
            "Stop in No. {cylinder}, met gently from both sides; half-way between the readings is top dead centre.",
            cylinder=found.timing_cylinder,
        ),
        *link_rod(found),
        tr("Turn the disc to read {error:deg} less: it then reads zero there. Stop out.", error=abs(error))
        if error >= 0
        else tr("Turn the disc to read {error:deg} more: it then reads zero there. Stop out.", error=abs(error)),
    ]


def link_rod(found: Practice) -> list[str]:
    """A sentence on the link rod of the timing cylinder, where it has one."""
    engaged = found.bench.engaged
    assert engaged is not None
    engine = engaged.installation.engine
    return [f"{link_rod_words(engine)}."] if has_link_rod(engine) else []


def _teeth(room: Practice) -> list[str]:
    name, engaged = side_words(room, room.side), room.bench.engaged
    assert engaged is not None
    move = teeth_wanted(room.bench)
    if move is None:
        return lifted_off(room, name)
    return moved_teeth(room, name, move)


def lifted_off(room: Practice, name: str) -> list[str]:
    """Steps where the magneto must come off and be meshed anew."""
    engaged = room.bench.engaged
    assert engaged is not None
    return [
        tr("On {name}: paint marks, plug out, nuts off, lift it off.", name=name)
        if room.bench.magneto.grounding_tab is True
        else tr("On {name}: paint marks, jumper on, plug out, nuts off, lift it off.", name=name),
        tr(
            "No. {cylinder} on compression at {wanted}° before top dead centre, the rotor held where "
            "the contacts open with the finger at No. {cylinder}; mesh to the nearest tooth, nuts on. Lamp "
            "and disc, approached with rotation.",
            cylinder=room.timing_cylinder,
            wanted=engaged.mounting.wanted_btdc_deg,
        ),
    ]


def moved_teeth(room: Practice, name: str, move: Move) -> list[str]:
    """Steps for a move of teeth, which may be none."""
    if not (move.magneto_teeth or move.disc_teeth):
        return [tr("On {name}, no tooth needs to move; lamp and disc with rotation say so.", name=name)]
    disc, flange = move_words(move, room.bench.magneto.rotation, "drive end")
    return [
        tr(
            "On {name}: paint marks, nuts off; A disc on the drive flange {disc}; B magneto flange on "
            "the disc {flange}; nuts on. {residual:deg} of crank remain. Lamp and disc, approached with rotation.",
            name=name,
            flange=flange,
            disc=disc,
            residual=abs(move.residual_deg),
        ),
    ]
