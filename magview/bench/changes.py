"""Differences between two states of the bench, in words: first the acts of hands, then their effects."""

from __future__ import annotations

import math
from collections.abc import Iterator

from magview.bench.state import BenchState, mounting_of, readings, same_but_worn
from magview.physics.electric.circuit import Lead
from magview.spec.language import tr

_ANGLE_DEG, _LENGTH_MM = 0.005, 0.0005
"""A smaller difference is not shown."""


def changes(before: BenchState, after: BenchState, *, numbers: bool = True) -> list[str]:
    """The changes, a sentence each; without `numbers` no sentence says an amount. Empty where nothing has changed."""
    if not same_but_worn(before.magneto, after.magneto):
        return [tr("Another magneto is on the bench: {magneto}.", magneto=after.magneto.name)]
    return [*_hands(before, after, numbers), *_results(before, after, numbers)]


def effects(before: BenchState, after: BenchState, *, numbers: bool = True) -> list[str]:
    """Say how opening, largest gap and limits changed, a sentence each."""
    if not same_but_worn(before.magneto, after.magneto):
        return changes(before, after, numbers=numbers)
    return list(_results(before, after, numbers))


def _hands(before: BenchState, after: BenchState, numbers: bool) -> Iterator[str]:
    turned = after.rotor_deg - before.rotor_deg
    if abs(turned) >= _ANGLE_DEG:
        yield _turned(turned, numbers, (
            tr("The rotor was turned {angle:deg} with rotation.", angle=abs(turned)),
            tr("The rotor was turned {angle:deg} against rotation.", angle=abs(turned)),
            tr("The rotor was turned with rotation."), tr("The rotor was turned against rotation."),
        ))  # fmt: skip
    plate = after.backplate_deg - before.backplate_deg
    if abs(plate) >= _ANGLE_DEG:
        yield _turned(plate, numbers, (
            tr("The backplate was turned {angle:deg} with rotation.", angle=abs(plate)),
            tr("The backplate was turned {angle:deg} against rotation.", angle=abs(plate)),
            tr("The backplate was turned with rotation."), tr("The backplate was turned against rotation."),
        ))  # fmt: skip
    screw = after.screw_deg - before.screw_deg
    if abs(screw) >= _ANGLE_DEG:
        yield _turned(screw, numbers, (
            tr("The contact screw was turned {angle:deg}, contacts closer.", angle=abs(screw)),
            tr("The contact screw was turned {angle:deg}, contacts wider.", angle=abs(screw)),
            tr("The contact screw was turned, contacts closer."), tr("The contact screw was turned, contacts wider."),
        ))  # fmt: skip
    yield from _screws_and_lead(before, after)
    if before.magneto.condition != after.magneto.condition:
        yield tr("Wear or pips of the magneto are others.")
    yield from _on_the_engine(before, after)


def _turned(by: float, numbers: bool, words: tuple[str, str, str, str]) -> str:
    return words[(0 if by > 0 else 1) + (0 if numbers else 2)]


def _screws_and_lead(before: BenchState, after: BenchState) -> Iterator[str]:
    pairs = (
        (before.held, after.held, tr("The rotor is held."), tr("The rotor was let go.")),
        (before.lock_tight, after.lock_tight, tr("The lock screw is tight."), tr("The lock screw is slack.")),
        (
            before.clamps_tight,
            after.clamps_tight,
            tr("The clamp screws are tight."),
            tr("The clamp screws are slack."),
        ),
        (before.lead.switch_on, after.lead.switch_on, tr("The switch is on."), tr("The switch is off.")),
        (before.lead.plug_in, after.lead.plug_in, tr("The lead's plug is in."), tr("The lead's plug is out.")),
        (
            before.lead.other_on,
            after.lead.other_on,
            tr("The other magneto's switch is on."),
            tr("The other magneto's switch is off."),
        ),
        (before.lead.jumper, after.lead.jumper, tr("The jumper is on."), tr("The jumper is off.")),
        (
            before.lead.paper,
            after.lead.paper,
            tr("Paper lies under the grounding tab."),
            tr("The paper is out from under the grounding tab."),
        ),
    )
    yield from (yes if now else no for was, now, yes, no in pairs if was != now)
    if _faults(before.lead) != _faults(after.lead):
        yield tr("The switch lead is in another condition.")


def _faults(lead: Lead) -> tuple[object, ...]:
    return lead.broken, lead.shorted, lead.chafed, lead.tab_touches, lead.switch, lead.crossed


def _on_the_engine(before: BenchState, after: BenchState) -> Iterator[str]:
    was, now = before.engaged, after.engaged
    if (was is None) != (now is None):
        yield tr("The magneto stands for itself now.") if now is None else tr("The magneto is on an engine now.")
    if was is None or now is None:
        return
    if was.mounted != now.mounted:
        yield tr("The magneto is on the engine.") if now.mounted else tr("The magneto is off the engine.")
    if was.side != now.side:
        yield tr("The left magneto is in view.") if now.side == "left" else tr("The right magneto is in view.")
    one, other = mounting_of(was, now.side), mounting_of(now, now.side)
    if one.disc_teeth != other.disc_teeth:
        yield tr("A, the disc, stands in other teeth of the drive flange.")
    if one.magneto_teeth != other.magneto_teeth:
        yield tr("B, the magneto flange, stands in other teeth of the disc.")


def _results(before: BenchState, after: BenchState, numbers: bool) -> Iterator[str]:
    was, now = readings(before), readings(after)
    one, other = float(was.e_gap_error_deg[0]), float(now.e_gap_error_deg[0])
    if math.isfinite(one) != math.isfinite(other):
        yield tr("The contacts open now.") if math.isfinite(other) else tr("The contacts never open now.")
    elif math.isfinite(one) and abs(other - one) >= _ANGLE_DEG:
        angle = abs(other - one)
        yield _turned(other - one, numbers, (
            tr("The contacts open {angle:deg} of rotor later.", angle=angle),
            tr("The contacts open {angle:deg} of rotor earlier.", angle=angle),
            tr("The contacts open later."), tr("The contacts open earlier."),
        ))  # fmt: skip
    wider = float(now.max_gap_mm[0] - was.max_gap_mm[0])
    if abs(wider) >= _LENGTH_MM:
        length, gap = abs(wider), float(now.max_gap_mm[0])
        yield _turned(wider, numbers, (
            tr("The largest gap is {length:length} wider: {gap:length}.", length=length, gap=gap),
            tr("The largest gap is {length:length} narrower: {gap:length}.", length=length, gap=gap),
            tr("The largest gap is wider."), tr("The largest gap is narrower."),
        ))  # fmt: skip
    if bool(was.within_limits) != bool(now.within_limits):
        yield tr("It is within its limits now.") if now.within_limits else tr("It is out of its limits now.")
