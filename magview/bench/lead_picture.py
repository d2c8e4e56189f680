"""The switch lead as a drawing: coil, contacts, plug with its spring tab, lead, switch; lamp and meter.

A circuit diagram with the parts where a mechanic meets them, in plain units; y up.
"""

from __future__ import annotations

from dataclasses import replace

import numpy as np

from magview.bench.shapes import Array, Point, circle
from magview.bench.state import BenchState, circuit_now, gap_now_mm
from magview.physics.circuit import circuit
from magview.spec.frozen import frozen
from magview.spec.language import marked, tr

WIDTH, HEIGHT = 118.0, 58.0


@frozen
class Stroke:
    """One line of the diagram."""

    points: Array
    """Shape (n, 2), in the diagram's own units: WIDTH by HEIGHT."""
    kind: str
    """"wire", "part", "fault" or "ground": how it is drawn."""


@frozen
class LeadPicture:
    """The diagram of a state: lines, words with their places, and the lamp."""

    strokes: tuple[Stroke, ...]
    words: tuple[tuple[str, Point], ...]
    lamp_lit: bool


def lead_picture(state: BenchState) -> LeadPicture:
    """Draw the switch lead as it is now."""
    lead, now = state.lead, circuit_now(state)
    open_now = gap_now_mm(state) > 0.0
    strokes = [
        _wire((12, 40), (12, 46), (40, 46)),  # coil to the hot side
        _part(*_coil()),
        _wire((12, 20), (12, 10)),
        *_ground((12, 10)),
        # contacts: a fixed and a moving one
        _wire((26, 46), (26, 34)),
        _part((22, 34), (30, 34)),
        _part((22, 29 if open_now else 33), (30, 29 if open_now else 33)),
        _wire((26, 29 if open_now else 33), (26, 10)),
        *_ground((26, 10)),
        # case wall with the socket
        Stroke(np.array([(40.0, 52.0), (40.0, 40.0)]), "part"),
    ]
    plug = 40.0 if lead.plug_in else 50.0
    strokes += [
        _part((plug, 48.5), (plug + 8, 48.5), (plug + 8, 43.5), (plug, 43.5), (plug, 48.5)),
        _wire((plug + 8, 46), (84, 46)) if not lead.broken else _wire((plug + 8, 46), (66, 46)),
        _wire((84, 46), (84, 38)),
    ]
    if lead.broken:
        strokes += [_wire((70, 46), (84, 46)), Stroke(np.array([(65.5, 49.0), (70.5, 43.0)]), "fault")]
    # The tab springs from the socket to the case when the plug is out.
    grounded_tab = not lead.plug_in and lead.tab_touches
    strokes.append(_part((40, 44), (45, 38), (40, 36)) if grounded_tab else _part((40, 44), (46, 40)))
    if lead.shorted:
        strokes += [Stroke(np.array([(33.0, 46.0), (35.0, 40.0), (32.0, 36.0), (34.0, 30.0)]), "fault")]
        strokes += _ground((34, 30))
    # switch: closed to ground when off
    tip = (92.0, 28.0) if lead.switch_on else (84.0, 26.0)
    strokes += [
        _part(*[(float(x), float(y)) for x, y in circle((84.0, 38.0), 1.0, 16)]),
        _part((84, 37), tip),
        _wire((84, 25), (84, 10)),
        *_ground((84, 10)),
    ]
    words = [
        (tr("coil"), (2.0, 44.0)),
        (tr("contacts"), (29.0, 20.0) if not lead.shorted else (16.0, 21.0)),
        (tr("plug"), (plug + 1, 51.0)),
        (tr("lead"), (72.0, 48.5)),
        (tr("switch on") if lead.switch_on else tr("switch off"), (94.0, 30.0)),
        (tr("spring tab"), (43.0, 31.0)),
    ]
    if lead.broken:
        words.append((tr("broken inside"), (56.0, 38.0)))
    if lead.shorted:
        words.append((tr("short"), (38.0, 24.0)))
    return LeadPicture(tuple(strokes), tuple(words), lamp_lit=not now.lamp_sees_closed)


def lead_words(state: BenchState) -> tuple[str, bool]:
    """What the circuit does now, in one or two sentences, and whether that is dangerous."""
    lead, now = state.lead, circuit_now(state)
    sound = circuit(replace(lead, shorted=False), contacts_closed=True)
    if lead.shorted and sound.live:
        return (
            tr(
                "Grounded only by a short inside the magneto, not by the switch: no spark now, but "
                "DANGER: without the short it would be live."
            ),
            True,
        )
    if now.live_though_off:
        if lead.plug_in:
            return tr("DANGER: live with the switch off: the lead is broken inside. Any turn can fire a plug."), True
        return tr("DANGER: live with the plug out: its tab does not touch the case. Any turn can fire a plug."), True
    if now.live:
        return tr("Live: the switch is on. A turn of the propeller can fire a plug."), True
    return tr(_GROUNDED[lead.plug_in, lead.shorted]), False


_GROUNDED = {
    (True, False): marked(
        "Grounded by the switch, through its lead. No spark; the lamp sees “closed” whatever the contacts do."
    ),
    (True, True): marked(
        "Grounded by the switch, through its lead. A short inside the magneto grounds it too. No spark; the lamp "
        "sees “closed” whatever the contacts do."
    ),
    (False, False): marked(
        "Grounded by the spring tab: the plug is out. No spark; the lamp sees “closed” whatever the contacts do."
    ),
    (False, True): marked(
        "Grounded by the spring tab: the plug is out. A short inside the magneto grounds it too. No spark; the lamp "
        "sees “closed” whatever the contacts do."
    ),
}
"""By plug in, and a short inside."""


def meter_words(state: BenchState) -> str:
    """What a meter at the lead's plug end shows: only with the plug out does it see the lead alone."""
    if state.lead.plug_in:
        return tr("Meter: pull the plug to read the lead")
    if circuit_now(state).meter_sees_ground:
        return tr("Meter on the lead: ground")
    return tr("Meter on the lead: no ground")


def _wire(*points: Point) -> Stroke:
    return Stroke(np.array(points, dtype=float), "wire")


def _part(*points: Point) -> Stroke:
    return Stroke(np.array(points, dtype=float), "part")


def _ground(at: Point) -> list[Stroke]:
    x, y = at
    return [
        Stroke(np.array([(x - w, y - d), (x + w, y - d)], dtype=float), "ground")
        for w, d in ((4.0, 0.0), (2.5, 1.6), (1.0, 3.2))
    ]


def _coil() -> list[Point]:
    t = np.linspace(0.0, 1.0, 121)
    x, y = 12.0 + 3.0 * np.sin(12 * np.pi * t), 40.0 - 20.0 * t
    return [(float(a), float(b)) for a, b in zip(x, y, strict=True)]
