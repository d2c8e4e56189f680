"""Primary coil: core flux, the current it drives through closed contacts, and what is broken off at opening.

Guide: theory-coil. Electrical angle e = poles·θ/2 [rad], θ from neutral; static core flux
Φs = −Φm (sin e + h₃ sin 3e).
Contacts closed: L di/dt + R i = −N dΦs/dt with i = 0 at closing; flux linkage N·Φ = N·Φs + L·i. Contacts open:
Φ = Φs. A positive current holds back the fall of the flux past neutral.

Assumed, and to be said beside every plot: constant rotor speed, linear core, contacts that make and break at once,
no current in the secondary while they are closed. Illustrative unless the file's values are measured.

References
----------
R-L circuit under a sinusoidal e.m.f. from rest: steady term and decaying transient, any circuits text.
Neutral to full register 360/(2·poles): FAA-H-8083-32, ch. 4.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from math import pi

import numpy as np
from numpy.typing import ArrayLike, NDArray

from magview.physics.cam.setting import Readings
from magview.spec.language import tr
from magview.spec.magneto import Electrical, Magneto

Array = NDArray[np.float64]
Flags = NDArray[np.bool_]

MAX_SPEED_RPM = 20_000.0
"""Faster than any rotor turns [1/min]."""


@dataclass(frozen=True)
class ContactCycle:
    """Flux and current over rotor angles; per-angle arrays have the angles' shape, per-lobe ones (lobes,)."""

    rotor_deg: Array
    closed: Flags
    """Whether the contacts touch: from closing up to, not at, opening."""
    static_flux_wb: Array
    """Φs: what the magnet alone drives through the core [Wb]."""
    flux_wb: Array
    """Φ: with the primary current's share [Wb]; it falls to Φs at every opening."""
    current_a: Array
    opening_current_a: Array
    """Per lobe, as the contacts part at `Readings.opens_deg` [A]; NaN for a lobe that never works them."""
    opening_energy_j: Array
    """Per lobe, ½ L i² then [J]."""


def static_flux_wb(electrical: Electrical, poles: int, rotor_deg: ArrayLike) -> Array:
    """Core flux of the magnet alone [Wb]: Φs = −Φm (sin e + h₃ sin 3e), falling past neutral.

    Parameters
    ----------
    electrical : coil and magnet.
    poles : number of poles [-], even.
    rotor_deg : rotor angle from neutral [deg], any shape, positive with rotation; NaN stays NaN.

    Notes
    -----
    ValueError for an odd number of poles or an infinite angle, here and in all functions below.

    Examples
    --------
    >>> coil = Electrical(
    ...     coil_turns=180, inductance_h=0.014, resistance_ohm=0.6, peak_flux_wb=0.0003, third_harmonic=0.0
    ... )
    >>> static_flux_wb(coil, 4, [-45.0, 0.0, 45.0]).tolist()
    [0.0003, -0.0, -0.0003]
    """
    e = _electrical_rad(poles, rotor_deg)
    return np.asarray(-electrical.peak_flux_wb * (np.sin(e) + electrical.third_harmonic * np.sin(3 * e)))


def primary_current_a(
    electrical: Electrical, poles: int, speed_rpm: ArrayLike, closes_deg: ArrayLike, rotor_deg: ArrayLike
) -> Array:
    """Primary current [A] with the contacts closed from `closes_deg` on; 0 before. Shapes broadcast.

    Parameters
    ----------
    electrical, poles : coil and magnet, as in `static_flux_wb`.
    speed_rpm : constant speed of the rotor with rotation [1/min], 0 < speed ≤ MAX_SPEED_RPM, or ValueError.
    closes_deg : rotor angle at which the contacts close [deg].
    rotor_deg : rotor angle [deg].

    Notes
    -----
    i = Σ aₙ [cos(ne − δₙ) − cos(ne₀ − δₙ) exp(−κ(e − e₀))] over n = 1, 3, with e₀ at closing, Ω = de/dt,
    aₙ = n hₙ N Φm Ω/|R + jnLΩ|, tan δₙ = nLΩ/R, κ = R/(LΩ). Sound for R = 0 (N·Φ then stays what it was at
    closing), at any low speed (i → −N (dΦs/dt)/R) and for any closed span (the transient is gone).
    """
    start, theta = np.asarray(closes_deg, dtype=float), np.asarray(rotor_deg, dtype=float)
    _refuse_infinite(start, theta)
    return _current(electrical, poles, speed_rpm, start, theta - start)


def resultant_flux_wb(
    electrical: Electrical,
    poles: int,
    speed_rpm: ArrayLike,
    closes_deg: ArrayLike,
    opens_deg: ArrayLike,
    rotor_deg: ArrayLike,
) -> Array:
    """Core flux [Wb]: Φs + L i/N while closes ≤ rotor < opens, Φs otherwise. Shapes broadcast.

    Parameters
    ----------
    electrical, poles, speed_rpm, closes_deg : as in `primary_current_a`.
    opens_deg : rotor angle at which the contacts open again [deg].
    rotor_deg : rotor angle [deg].

    Notes
    -----
    With a NaN for closing or opening the contacts count as open.
    """
    theta = np.asarray(rotor_deg, dtype=float)
    current = primary_current_a(electrical, poles, speed_rpm, closes_deg, theta)
    closed = (theta >= np.asarray(closes_deg, dtype=float)) & (theta < np.asarray(opens_deg, dtype=float))
    return _flux_wb(electrical, static_flux_wb(electrical, poles, theta), np.where(closed, current, 0.0))


def opening_energy_j(
    electrical: Electrical, poles: int, speed_rpm: ArrayLike, opens_deg: ArrayLike, closed_deg: ArrayLike
) -> Array:
    """Energy in the coil as the contacts part [J]: ½ L i². Shapes broadcast.

    Parameters
    ----------
    electrical, poles, speed_rpm : as in `primary_current_a`.
    opens_deg : rotor angle at which the contacts open [deg].
    closed_deg : rotor degrees they had been closed [deg], 0 or more, or ValueError. The backplate carries opening
        and closing together, so this stays the same while it turns.
    """
    opens, span = np.asarray(opens_deg, dtype=float), np.asarray(closed_deg, dtype=float)
    _refuse_infinite(opens, span)
    if np.any(span < 0):
        raise ValueError(tr("closed_deg is {closed}; it must be 0 or more", closed=span.min()))
    return _energy_j(electrical, _current(electrical, poles, speed_rpm, opens - span, span))


def contact_cycle(magneto: Magneto, readings: Readings, speed_rpm: float, rotor_deg: ArrayLike) -> ContactCycle:
    """Flux and current at rotor angles, through every closing and opening of a setting.

    Parameters
    ----------
    magneto : with its `electrical` part, or ValueError.
    readings : of one setting, arrays (lobes,), or ValueError. Lobes that never open (NaN) leave the contacts closed.
    speed_rpm : as in `primary_current_a`.
    rotor_deg : rotor angles [deg], any shape, over any number of turns in any order; NaN stays NaN.

    Notes
    -----
    Contacts that never open carry the steady current, whose mean is 0; contacts that never close carry none. The
    flux need not repeat with the cam: an odd number of sparks to a cam turn leaves it reversed.
    """
    electrical, poles = magneto.electrical, magneto.poles
    if electrical is None:
        raise ValueError(tr("{name} has no electrical values", name=magneto.name))
    if readings.opens_deg.ndim != 1:
        raise ValueError(
            tr("readings have shape {shape}; those of one setting are needed", shape=readings.opens_deg.shape)
        )
    theta = np.asarray(rotor_deg, dtype=float)
    static = static_flux_wb(electrical, poles, theta)
    works = np.isfinite(readings.opens_deg)
    if works.any():
        opens, span = readings.opens_deg[works], readings.dwell_deg[works]
        since = np.mod(theta[..., None] - (opens - span), 360.0 / magneto.cam.turns_per_rotor_turn)
        inside = since < span
        closed = inside.any(axis=-1)
        # The rotor's own angle is kept and the closing found back from it: see Notes.
        held = np.take_along_axis(since, inside.argmax(axis=-1)[..., None], axis=-1)[..., 0]
        current = np.where(closed, _current(electrical, poles, speed_rpm, theta - held, held), 0.0)
    else:
        # Never closed, every lobe's gap is its whole lift or more; never open, it is 0 but for the last bit.
        closed = np.full(theta.shape, readings.max_gap_mm.max() < 1e-9) & np.isfinite(theta)
        current = np.where(closed, _steady_current(electrical, poles, speed_rpm, theta), 0.0)
    current = np.where(np.isnan(theta), np.nan, current)
    broken = _current(electrical, poles, speed_rpm, readings.opens_deg - readings.dwell_deg, readings.dwell_deg)
    return ContactCycle(
        rotor_deg=theta,
        closed=np.asarray(closed),
        static_flux_wb=static,
        flux_wb=_flux_wb(electrical, static, current),
        current_a=current,
        opening_current_a=broken,
        opening_energy_j=_energy_j(electrical, broken),
    )


def _current(electrical: Electrical, poles: int, speed_rpm: ArrayLike, closes_deg: Array, closed_deg: Array) -> Array:
    """Current [A] after the contacts, closed at `closes_deg`, have been so for `closed_deg`; 0 for less than 0."""
    rate = _rate_rad_s(poles, speed_rpm)
    e, span = _electrical_rad(poles, closes_deg), _electrical_rad(poles, np.maximum(closed_deg, 0.0))
    decayed = np.expm1(-electrical.resistance_ohm / (electrical.inductance_h * rate) * span)
    total = np.zeros(())
    for n, amplitude, lag in _harmonics(electrical, rate):
        # The difference of the two cosines as a product: nothing cancels in short spans, and it begins at 0.
        start = n * e - lag
        change = -2.0 * np.sin(start + n * span / 2) * np.sin(n * span / 2)
        total = total + amplitude * (change - np.cos(start) * decayed)
    return np.asarray(total)


def _steady_current(electrical: Electrical, poles: int, speed_rpm: ArrayLike, rotor_deg: Array) -> Array:
    rate, e = _rate_rad_s(poles, speed_rpm), _electrical_rad(poles, rotor_deg)
    return np.asarray(sum(a * np.cos(n * e - lag) for n, a, lag in _harmonics(electrical, rate)))


def _harmonics(electrical: Electrical, rate_rad_s: Array) -> Iterator[tuple[int, Array, Array]]:
    """Order, amplitude [A] and lag [rad] of the steady current's parts: e.m.f. over impedance."""
    resistance, linkage = electrical.resistance_ohm, electrical.coil_turns * electrical.peak_flux_wb
    for n, share in ((1, 1.0), (3, electrical.third_harmonic)):
        reactance = n * electrical.inductance_h * rate_rad_s
        yield n, n * share * linkage * rate_rad_s / np.hypot(resistance, reactance), np.arctan2(reactance, resistance)


def _flux_wb(electrical: Electrical, static_wb: Array, current_a: Array) -> Array:
    return np.asarray(static_wb + electrical.inductance_h / electrical.coil_turns * current_a)


def _energy_j(electrical: Electrical, current_a: Array) -> Array:
    return np.asarray(electrical.inductance_h / 2 * current_a**2)


def _electrical_rad(poles: int, rotor_deg: ArrayLike) -> Array:
    if poles < 2 or poles % 2:
        raise ValueError(tr("poles is {poles}; it must be an even number from 2 on", poles=poles))
    theta = np.asarray(rotor_deg, dtype=float)
    _refuse_infinite(theta)
    return np.asarray(np.radians(theta * (poles / 2)))


def _rate_rad_s(poles: int, speed_rpm: ArrayLike) -> Array:
    """Ω = de/dt [rad/s]."""
    speed = np.asarray(speed_rpm, dtype=float)
    bad = ~((speed > 0) & (speed <= MAX_SPEED_RPM))
    if bad.any():
        raise ValueError(
            tr(
                "speed_rpm is {speed}; it must be above 0 and at most {most}",
                speed=speed[bad].flat[0],
                most=MAX_SPEED_RPM,
            )
        )
    # Kept from underflow; with any resistance nothing flows at such a speed, and with none it does not matter.
    return np.asarray(np.maximum(speed * (poles * pi / 60.0), 1e-150))


def _refuse_infinite(*angles_deg: Array) -> None:
    if any(np.isinf(angle).any() for angle in angles_deg):
        raise ValueError(tr("an angle is infinite"))
