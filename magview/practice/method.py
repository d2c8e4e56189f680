"""The method for an attempt: the shorter way with the trainee's own readings, and no value that nobody could know."""

from __future__ import annotations

import math

from magview.bench.advised import ORDERS
from magview.bench.state import Side
from magview.bench.words import plate_move
from magview.practice import actions as do
from magview.practice import instruments
from magview.practice.advice import (
    Amounts,
    best_move,
    efficient_path,
    lifted_off,
    link_rod,
    moved_teeth,
    teeth_wanted,
)
from magview.practice.evidence import Evidence
from magview.practice.state import Practice, true_readings
from magview.practice.told_goals import bracket
from magview.practice.words import side_words
from magview.spec.language import format_angle, format_length, marked, tr

_LEAST_DEG = 0.05
"""A plate nearer than this is not turned."""


def method(found: Evidence) -> list[str]:
    """The acts in words, in the order of a careful hand; amounts follow from what was read, or are to be read."""

    def setting(room: Practice, name: str) -> list[str]:
        return [*_orders(room), *_gap(found, room, name), *_plate(found, room, name)]

    def teeth(room: Practice) -> list[str]:
        return _teeth(found, room)

    return efficient_path(found.first, Amounts(setting, _disc, teeth))


def _orders(room: Practice) -> list[str]:
    return [tr(ORDERS)] if room.exercise.rules >= 2 else []


def _gap(found: Evidence, room: Practice, name: str) -> list[str]:
    low, high = room.bench.magneto.gap_limits_mm
    gaps = true_readings(room.bench).max_gap_mm
    if float(gaps.min()) >= low and float(gaps.max()) <= high and room.bench.lock_tight:
        return []
    # Before the first turn of the screw: as found.
    turned = next(
        (s.index for s in found.steps if isinstance(s.act, do.TurnScrew) and s.before.side == room.side), None
    )
    tried = [t for t in found.tracks[room.side].tried if turned is None or t.index < turned]
    _own, words = bracket(tried)
    limits = {"low": format_length(low), "high": format_length(high), "name": name}
    creeps = room.bench.magneto.condition.screw_creep_deg != 0.0
    step = (
        marked(
            "On {name}, with the contacts widest open, slacken the lock screw, turn the contact screw until "
            "{low} goes and {high} does not, tighten: tightening carries the screw along, so try the blades again "
            "and allow for it."
        )
        if creeps
        else marked(
            "On {name}, with the contacts widest open, slacken the lock screw, turn the contact screw until "
            "{low} goes and {high} does not, tighten; try both blades again."
        )
    )
    read = [tr("As found, your blades said: {reading}.", reading=words)] if words else []
    return [" ".join([*read, tr(step, **limits)])]


def _plate(found: Evidence, room: Practice, name: str) -> list[str]:
    read = _opening_read(found, room)
    if read is None:
        words = marked(
            "On {name}, read by lamp and straightedge where the contacts open; slacken the clamp screws, turn the "
            "backplate by as much, tighten, and read again."
        )
        return [tr(words, name=name)]
    magneto = room.bench.magneto
    plate = -math.degrees(math.atan(read / magneto.marks.radius_mm))
    if abs(plate) < _LEAST_DEG:
        return [tr("On {name}, you read the edge in line: leave the backplate.", name=name)]
    offset = format_length(abs(read), None)
    told = marked("you read {offset} past the mark") if read > 0 else marked("you read {offset} short of the mark")
    return [
        tr(
            "On {name}, {reading}: slacken the clamp screws, {move}, tighten; lamp and straightedge again.",
            name=name,
            reading=tr(told, offset=offset),
            move=plate_move(magneto, plate),
        )
    ]


def _opening_read(found: Evidence, room: Practice) -> float | None:
    """Own reading of the opening before the plate was turned, once the gap was as it stayed [mm past the mark]."""
    track, side, marks = found.tracks[room.side], room.side, room.exercise.tray.straightedge
    turned = _first(found, side, do.TurnPlate, track.gap_at)
    looks = [
        look.edge.value
        for look in track.openings
        if look.edge is not None
        and look.edge.value is not None
        and look.square
        and track.gap_at < look.index < turned
    ]
    if not looks or marks is None:
        return None
    return looks[-1] * instruments.DIVISIONS_MM[marks]


def _first(found: Evidence, side: Side, kind: type, since: int = 0) -> float:
    """Index of the first act of a kind on a magneto after a step; infinite where there is none."""
    steps = (s.index for s in found.steps if s.index > since and s.before.side == side and isinstance(s.act, kind))
    return next(steps, math.inf)


def _disc(room: Practice) -> list[str]:
    if room.exercise.start.disc_at_zero or not room.exercise.tray.stop:
        return []
    return [
        tr(
            "Stop in No. {cylinder}, met gently from both sides; half-way between the readings is top dead centre.",
            cylinder=room.timing_cylinder,
        ),
        *link_rod(room),
        tr("Turn the disc until it reads zero there. Stop out."),
    ]


def _teeth(found: Evidence, room: Practice) -> list[str]:
    name, side, engaged = side_words(room, room.side), room.side, room.bench.engaged
    assert engaged is not None
    if teeth_wanted(room.bench) is None:
        return lifted_off(room, name)
    track = found.tracks[side]
    moved = _first(found, side, do.MoveTooth)
    set_last = max((i for i in track.changed if i < moved), default=0)
    discs = [o.disc for o in track.openings if o.forward and o.first_cylinder and set_last < o.index < moved]
    looks = [disc.value for disc in discs if disc is not None and disc.value is not None]
    if not looks:
        words = marked(
            "On {name}, read lamp and disc with rotation, and move the teeth that the plan gives for that reading."
        )
        return [tr(words, name=name)]
    read = tr("On {name}, you read {angle}.", name=name, angle=format_angle(looks[-1]))
    return [" ".join([read, *moved_teeth(room, name, best_move(engaged, looks[-1]))])]
