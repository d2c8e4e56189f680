"""The primary circuit in words, with the readings of light and meter."""

from __future__ import annotations

import math

from magview.bench.state import BenchState, circuit_now, lamp_burns_now, other_circuit
from magview.physics.electric.circuit import SWITCH_POSITIONS, Circuit, Lead, TerminalSays, Way
from magview.physics.engine.timing_light import LampKind
from magview.spec.language import marked, tr
from magview.spec.magneto import Magneto

WORK_OFF_THE_ENGINE = marked(
    "WARNING: a rotor snapped past the E-gap with the primary open makes kilovolts at the outlets, on the bench too. "
    "Ground the secondary through a test gap or cover the outlets, keep fingers off outlets and distributor finger, "
    "and keep fuel and solvent vapour away. An open secondary can puncture its own insulation."
)
MAKING_SAFE = marked(
    "WARNING: making safe is a list: fuel off, mixture cut off, throttle closed, switch off and each lead proved, "
    "plugs out, hanging plug leads grounded or kept clear, wheels chocked or tied down, nobody in the propeller's "
    "arc. Plugs out takes away compression, not the spark. Treat the propeller as live all the same."
)
CANNOT_TELL = marked(
    "An ordinary ohmmeter or a lamp with a battery across the contacts sees the primary winding beside them, about "
    "an ohm: it cannot tell open from closed. Use a light made for magnetos, or disconnect the coil."
)


def tab_words(magneto: Magneto) -> str:
    """Effect of pulling the switch lead of a magneto, by its file."""
    return tr(_TAB[magneto.grounding_tab])


_TAB = {
    True: marked("A grounding tab inside grounds the primary when the switch lead is pulled, if the tab touches."),
    False: marked("No grounding tab: pulling the switch lead makes it LIVE. Put a jumper on its terminal first."),
    None: marked(
        "The file does not say whether it has a grounding tab: pulling the switch lead counts as making it LIVE. Put "
        "a jumper on its terminal first."
    ),
}
"""By the file's `grounding_tab`."""


def lead_words(state: BenchState) -> tuple[str, bool]:
    """State of the circuit in a few sentences, and whether it is dangerous: live, or grounded by a fault
    alone."""
    lead, now = state.lead, circuit_now(state)
    if now.live:
        return _live_words(lead, state.magneto), True
    meant = relied_on(lead, now)
    if not meant:
        return _by_fault_alone(lead, now), True
    way = next(w for w in (Way.JUMPER, Way.TAB, Way.SWITCH) if w in meant)
    also = [tr(words) for fault, words in _ALSO.items() if fault in now.grounded_by]
    return " ".join([tr(_GROUNDED[way]), *also]), False


def other_words(state: BenchState) -> str:
    """A warning that the engine's other magneto is live, or what it needs; "" where there is no other."""
    now = other_circuit(state)
    if now is None:
        return ""
    if now.live:
        return tr("The other magneto is LIVE: either of the two makes the propeller live.")
    return tr("The other magneto is grounded. Prove each lead by itself: either makes the propeller live.")


def relied_on(lead: Lead, now: Circuit) -> set[Way]:
    """Intended grounds of the primary: jumper, tab, or a switch that is off and is this magneto's own."""
    meant: set[Way] = {Way.JUMPER, Way.TAB}
    if not lead.switch_on and not lead.crossed:
        meant.add(Way.SWITCH)
    return meant & now.grounded_by


def _live_words(lead: Lead, magneto: Magneto) -> str:
    if not lead.plug_in:
        if not magneto.grounding_tab:
            return tr(_NO_TAB[magneto.grounding_tab])
        return tr(_PAPER) if lead.paper else tr(_BENT)
    if lead.switch_on:
        return tr("Live: the switch is on. A turn of the propeller can fire a plug.")
    if lead.broken:
        return tr(
            "DANGER: live with the switch off: the lead is broken inside. Any turn can fire a plug. "
            "Put the jumper on."
        )
    if lead.switch == "never-closes":
        return tr(
            "DANGER: live with the switch off: the switch never closes. Any turn can fire a plug. Put the jumper on."
        )
    return tr(
        "DANGER: live with its own switch off: the leads are crossed, and the other magneto's switch is on. Any turn "
        "can fire a plug. Put the jumper on."
    )


_NO_TAB = {
    False: marked(
        "DANGER: live with the plug out: this magneto has no grounding tab. Any turn can fire a plug. Put the jumper "
        "on."
    ),
    None: marked(
        "DANGER: live with the plug out, as far as is known: the file does not say that there is a grounding tab. "
        "Any turn can fire a plug. Put the jumper on."
    ),
}
_PAPER = marked(
    "DANGER: live while the paper lies under the grounding tab. Any turn can fire a plug. "
    "Take the paper out after the reading."
)
_BENT = marked(
    "DANGER: live with the plug out: its tab does not touch the case. Any turn can fire a plug. Put the jumper on."
)
_GROUNDED = {
    Way.JUMPER: marked(
        "Grounded by the jumper. No spark; the lamp sees “closed” whatever the contacts do. Take the jumper off for "
        "the reading alone, and for good when closing up: with it on, the magneto is dead."
    ),
    Way.TAB: marked(
        "Grounded by the grounding tab: the plug is out. No spark; the lamp sees “closed” whatever the contacts do."
    ),
    Way.SWITCH: marked(
        "Grounded by the switch, through its lead. No spark; the lamp sees “closed” whatever the contacts do."
    ),
}
_ALSO: dict[Way, str] = {
    Way.CHAFE: marked("The chafed lead grounds it too."),
    Way.SHORT: marked("A short inside the magneto grounds it too."),
}


def _by_fault_alone(lead: Lead, now: Circuit) -> str:
    if Way.SWITCH in now.grounded_by and lead.crossed and lead.switch == "sound":
        return tr(
            "Grounded only by the other magneto's switch: the leads are crossed. No spark now, but DANGER: it is "
            "live as soon as that switch is on."
        )
    if Way.SWITCH in now.grounded_by:
        return tr(
            "Grounded only by a switch that never opens. No spark now, but DANGER: a switch that sticks cannot be "
            "relied on, and without it the magneto would be live."
        )
    if Way.CHAFE in now.grounded_by:
        return tr(
            "Grounded only by a lead that is chafed through, not by the switch: no spark now, but DANGER: as the "
            "lead moves it can be live."
        )
    return tr(
        "Grounded only by a short inside the magneto, not by the switch: no spark now, but DANGER: without the short "
        "it would be live."
    )


def lead_meter_words(state: BenchState) -> str:
    """Reading of a meter from the lead's plug end to the case: only with the plug out does it see the lead alone."""
    if state.lead.plug_in:
        return tr("Meter on the lead: pull the plug to read it")
    ohm = circuit_now(state).lead_ohm
    if math.isfinite(ohm):
        return tr("Meter on the lead: {ohm:.1f} Ω, ground", ohm=ohm)
    return tr("Meter on the lead: no ground")


def terminal_meter_words(state: BenchState) -> str:
    """Reading of a meter from the magneto's terminal to the case."""
    now = circuit_now(state)
    return tr(_AT_TERMINAL[now.terminal_says], ohm=now.terminal_ohm)


def meter_shows(state: BenchState, spot: str) -> str:
    """Display of a meter at the plug of the lead ("lead") or the terminal, in a word or two."""
    if spot == "lead" and state.lead.plug_in:
        return tr("plug is in")
    now = circuit_now(state)
    ohm = now.lead_ohm if spot == "lead" else now.terminal_ohm
    return tr("{ohm:.1f} Ω", ohm=ohm) if math.isfinite(ohm) else tr("no ground")


_AT_TERMINAL: dict[TerminalSays, str] = {
    TerminalSays.WINDING: marked("Meter at the terminal: {ohm:.1f} Ω, the winding alone"),
    TerminalSays.GROUND: marked("Meter at the terminal: {ohm:.1f} Ω, ground"),
    TerminalSays.CANNOT_TELL: marked("Meter at the terminal: {ohm:.1f} Ω, winding or ground: it cannot tell"),
}


LAMPS: dict[LampKind, str] = {
    "open": marked("lights when open"),
    "closed": marked("lights when closed"),
    "buzzer": marked("buzzes, high when open"),
    "plain": marked("a plain battery lamp: cannot tell"),
}
"""Behaviour of each kind of timing light."""

BURNS = {
    False: (marked("dark"), "light"),
    True: (marked("buzzes low"), marked("buzzes high")),
}
"""By buzzer: what it does, not burning and burning."""

_LAMP_SAYS: dict[tuple[LampKind, bool], str] = {
    ("open", True): marked("Lamp: light, so open"),
    ("open", False): marked("Lamp: dark, so closed"),
    ("closed", True): marked("Lamp: light, so closed"),
    ("closed", False): marked("Lamp: dark, so open"),
    ("buzzer", True): marked("Buzzer: high, so open"),
    ("buzzer", False): marked("Buzzer: low, so closed"),
    ("plain", True): marked("Lamp: light, open or closed: it cannot tell"),
}
"""By kind and whether it burns, the coil connected: a plain lamp then always does."""


def lamp_words(state: BenchState) -> str:
    """State of the timing light across the contacts, and its meaning."""
    return tr(_LAMP_SAYS[state.lamp_kind, lamp_burns_now(state)])


def position_word(state: BenchState) -> str:
    """Return where the ignition switch stands: a position for an engine of two magnetos, else on or off."""
    engaged = state.engaged
    if engaged is None or engaged.installation.position == "single":
        return tr("switch on") if state.lead.switch_on else tr("switch off")
    sides = (state.lead.switch_on, state.lead.other_on)
    left_right = sides if engaged.side == "left" else sides[::-1]
    return tr(_POSITIONS[next(name for name, on in SWITCH_POSITIONS.items() if on == left_right)])


_POSITIONS = {
    "off": marked("switch at OFF"), "right": marked("switch at RIGHT"),
    "left": marked("switch at LEFT"), "both": marked("switch at BOTH"),
}  # fmt: skip
