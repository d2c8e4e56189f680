"""The breaker end in words: for who cannot see it, and what is to be known of how it is drawn."""

from __future__ import annotations

from magview.bench.state import BenchState
from magview.bench.words import direction_word
from magview.spec.language import format_angle, tr
from magview.spec.magneto import Magneto


def description(state: BenchState, gap_mm: float | None, part: str, mirrored: bool) -> str:
    """From where it is seen, how everything stands, and the part in hand; no numbers without a gap [mm]."""
    way = direction_word(1, state.magneto.rotation, "drive end" if mirrored else "breaker end")
    seen = (
        tr("Seen from the drive end, through the magneto, rotation {way}.", way=way)
        if mirrored
        else tr("Seen from the breaker end, rotation {way}.", way=way)
    )
    in_hand = tr("In hand: {part}.", part=part)
    if gap_mm is None:
        return f"{seen} {tr('Rotor held.') if state.held else tr('Rotor let go.')} {in_hand}"
    places = {
        "rotor": format_angle(state.rotor_deg),
        "backplate": format_angle(state.backplate_deg, True),
        "screw": format_angle(state.screw_deg, True),
        "contacts": tr("contacts closed") if gap_mm <= 0 else tr("contacts open {gap:length}", gap=gap_mm),
    }
    stands = (
        tr(
            "Rotor {rotor} past neutral, held; backplate {backplate}, contact screw {screw}; {contacts}.",
            **places,
        )
        if state.held
        else tr(
            "Rotor {rotor} past neutral, let go; backplate {backplate}, contact screw {screw}; {contacts}.",
            **places,
        )
    )
    return f"{seen} {stands} {in_hand}"


def remark(state: BenchState) -> str:
    """Remark that no part shows: that no hand is on the rotor."""
    if state.held:
        return ""
    driven = state.engaged is not None and state.engaged.mounted
    return tr("rotor let go, but the engine holds it") if driven else tr("rotor free")


def to_scale(magneto: Magneto, exaggeration: float, plain: bool) -> str:
    """Say what is drawn true and what is not."""
    if exaggeration != 1.0:
        return tr(
            "The gap is drawn {factor} times its size, the arm lifted with it off the cam.", factor=exaggeration
        )
    if plain:
        return tr("Arm and heel in plain proportions: this magneto's file gives only the measured lift.")
    ratio = magneto.cam.turns_per_rotor_turn
    if magneto.cam.turns_against_rotor:
        return tr(
            "Cam on the distributor shaft, {ratio:.4g} turn a rotor turn against the rotor; drawn on the "
            "rotor's axis.",
            ratio=ratio,
        )
    if ratio != 1.0:
        return tr(
            "Cam on the distributor shaft, {ratio:.4g} turn a rotor turn; drawn on the rotor's axis.", ratio=ratio
        )
    return tr("Rotor and pole shoes are diagrammatic; cam, arm, contacts and marks are to scale.")
