"""Looks of the magneto without an instrument: an eye's picture of it, in which no true place can be measured.

A picture to scale would be an instrument that no trade has: a rule on the screen, or a program that counts pixels,
would read gap and opening to hundredths of a millimetre. So the rotor is drawn a little ahead of its place or
behind it, and the fixed contact a little nearer, by amounts that are hidden like every other and change smoothly
as rotor and screw are turned. Open and closed are drawn as they are: light between the contacts is seen by anybody.
"""

from __future__ import annotations

import math

from magview.drawing.breaker_end import ByEye
from magview.practice.draws import between
from magview.practice.state import Practice, true_gap_mm

EDGE_MM = 0.32
"""Distance that the edge may seem past its place or short of it [mm at the rim]."""

NEARER_MM = 0.08
"""Distance that the fixed contact may seem nearer than it is [mm], at most."""

_WAVES_DEG = (41.0, 67.0)
"""Over how many degrees of the rotor what an eye makes of its place comes and goes."""

_SCREW_WAVE_DEG = 400.0
"""The same of the contact screw: fine turns are seen to do what they do."""


def by_eye(practice: Practice) -> ByEye:
    """Return the picture that an eye has of the magneto in view."""
    bench = practice.bench
    marks, ratio = bench.magneto.marks, bench.magneto.cam.turns_per_rotor_turn

    def phase(name: str) -> float:
        return between(practice.seed, 0.0, 2.0 * math.pi, practice.side, "by-eye", name)

    waves = [
        math.sin(2.0 * math.pi * bench.rotor_deg / wave + phase(f"rotor-{n}")) for n, wave in enumerate(_WAVES_DEG)
    ]
    # The larger wave rules; the smaller keeps one known place from telling another.
    seen = math.sin(0.5 * math.pi * max(-1.0, min(1.0, 0.85 * waves[1] + 0.35 * waves[0])))
    nearer = math.sin(2.0 * math.pi * bench.screw_deg / _SCREW_WAVE_DEG + phase("screw"))
    return ByEye(
        math.degrees(EDGE_MM * seen / marks.radius_mm) / ratio,
        NEARER_MM * (0.5 + 0.5 * nearer),
        true_gap_mm(bench) > 0.0,
    )
