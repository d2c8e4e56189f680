"""The coil against an ODE solver, phasors, quadrature and the limits where its answer is known."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from magview.physics.cam.setting import internal_timing
from magview.physics.electric.coil import (
    MAX_SPEED_RPM,
    ContactCycle,
    contact_cycle,
    opening_energy_j,
    primary_current_a,
    resultant_flux_wb,
    static_flux_wb,
)
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Electrical, Magneto
from tests.counts import examples
from tests.magnetos import build

WIRED = [name for name in shipped_names("magnetos") if find_magneto(name).electrical is not None]
COIL = {
    "coil_turns": 180.0,
    "inductance_h": 0.014,
    "resistance_ohm": 0.6,
    "peak_flux_wb": 3.5e-4,
    "third_harmonic": 0.08,
}
pole_counts = st.sampled_from([2, 4, 6, 8, 12])


def coil(**changes: float) -> Electrical:
    return Electrical(**{**COIL, **changes})


def flux(e: Electrical, poles: int, rotor_deg: np.ndarray) -> np.ndarray:
    """The core flux as guide: theory-coil writes it [Wb]."""
    angle = poles * np.radians(rotor_deg) / 2
    return -e.peak_flux_wb * (np.sin(angle) + e.third_harmonic * np.sin(3 * angle))


def emf(e: Electrical, poles: int, rpm: float, rotor_deg: np.ndarray) -> np.ndarray:
    """−N dΦs/dt [V]."""
    angle, rate = poles * np.radians(rotor_deg) / 2, poles / 2 * rpm * 2 * np.pi / 60
    return e.coil_turns * e.peak_flux_wb * rate * (np.cos(angle) + 3 * e.third_harmonic * np.cos(3 * angle))


def steady(e: Electrical, poles: int, rpm: float, rotor_deg: np.ndarray) -> np.ndarray:
    """Phasors: Re Σ E/(R + jnLΩ)."""
    angle, rate = poles * np.radians(rotor_deg) / 2, poles / 2 * rpm * 2 * np.pi / 60
    total = np.zeros_like(angle, dtype=complex)
    for n, share in ((1, 1.0), (3, e.third_harmonic)):
        volts = n * share * e.coil_turns * e.peak_flux_wb * rate
        total += volts * np.exp(1j * n * angle) / (e.resistance_ohm + 1j * n * rate * e.inductance_h)
    return total.real


@st.composite
def runs(draw: st.DrawFn) -> tuple[Electrical, int, float, float, float]:
    """Coil, poles, speed [1/min], closing angle and closed span [deg]: the transient e⁰ to e⁻²⁰⁰ gone."""
    poles, rpm = draw(pole_counts), 10 ** draw(st.floats(0.5, 4.0))
    closes, span = draw(st.floats(-400, 400)), draw(st.floats(1.0, 400.0))
    inductance = 10 ** draw(st.floats(-4, 0))
    decays = draw(st.one_of(st.just(0.0), st.floats(1e-3, 200.0)))
    resistance = decays * inductance * rpm * 6 / span
    assume(resistance <= 1e4)
    electrical = coil(
        coil_turns=draw(st.floats(20, 2000)),
        inductance_h=inductance,
        resistance_ohm=resistance,
        peak_flux_wb=10 ** draw(st.floats(-6, -2)),
        third_harmonic=draw(st.one_of(st.just(0.0), st.floats(-1, 1))),
    )
    return electrical, poles, rpm, closes, span


# ---------------------------------------------------------------------- closed contacts


@settings(max_examples=examples(150))
@given(runs())
def test_current_and_flux_against_an_ode_solver(run):
    """The flux linkage ψ = N·Φs + L·i alone is integrated, dψ/dt = −R·i: no derivative of the flux is needed."""
    e, poles, rpm, closes, span = run

    def current(time_s: np.ndarray | float, linkage: np.ndarray | float) -> np.ndarray:
        return (linkage - e.coil_turns * flux(e, poles, closes + 6 * rpm * time_s)) / e.inductance_h

    times, unit = np.linspace(0, span / (6 * rpm), 40), e.coil_turns * e.peak_flux_wb
    solved = solve_ivp(
        lambda t, y: -e.resistance_ohm * current(t, y),
        (0.0, times[-1]),
        [e.coil_turns * flux(e, poles, closes)],
        method="DOP853",
        t_eval=times,
        max_step=times[-1] / (3 + span * poles / 90),  # the solver's dense output is coarser than its steps
        rtol=1e-12,
        atol=1e-14 * unit,
    )
    expected, rotor = current(times, solved.y[0]), closes + 6 * rpm * times
    found = primary_current_a(e, poles, rpm, closes, rotor)
    assert found[0] == 0.0
    np.testing.assert_allclose(found, expected, rtol=1e-6, atol=1e-6 * np.abs(expected).max())
    held = resultant_flux_wb(e, poles, rpm, closes, closes + 2 * span, rotor)
    np.testing.assert_allclose(held, solved.y[0] / e.coil_turns, rtol=1e-6, atol=1e-9 * e.peak_flux_wb)


@given(runs())
def test_energy_is_what_the_emf_gave_less_what_the_winding_took(run):
    """½ L i² at opening = ∫ (e.m.f.·i − R i²) dt by Gauss–Legendre quadrature; lossless: the e.m.f.'s work alone."""
    e, poles, rpm, closes, span = run
    span = min(span, 90.0)

    # The transient may be over in a thousandth of the span.
    ends = closes + span * np.r_[0.0, np.geomspace(1e-4, 1.0, 14)]
    node, weight = np.polynomial.legendre.leggauss(48)
    rotor = ends[:-1, None] + np.diff(ends)[:, None] * (node + 1) / 2
    seconds = np.diff(ends)[:, None] * weight / 2 / (6 * rpm)
    i = primary_current_a(e, poles, rpm, closes, rotor)
    given_w = emf(e, poles, rpm, rotor) * i
    work, scale = ((seconds * w).sum() for w in (given_w - e.resistance_ohm * i * i, np.abs(given_w)))
    stored = float(opening_energy_j(e, poles, rpm, closes + span, span))
    assert stored == pytest.approx(work, abs=1e-9 * scale)


@given(runs())
def test_without_resistance_the_flux_linkage_is_kept(run):
    e, poles, rpm, closes, span = run
    e = e.model_copy(update={"resistance_ohm": 0.0})
    rotor = closes + np.linspace(0, span, 200)[:-1]
    kept = resultant_flux_wb(e, poles, rpm, closes, closes + span, rotor)
    np.testing.assert_allclose(kept, flux(e, poles, closes), rtol=0, atol=1e-13 * e.peak_flux_wb * (1 + span))


def test_a_vanishing_resistance_goes_over_into_none():
    """To first order the linkage sinks by R∫i dt: a tenth of the resistance, a tenth of the difference."""
    rotor = np.linspace(-30.0, 30.0, 50)
    none = primary_current_a(coil(resistance_ohm=0.0), 4, 1000.0, -40.0, rotor)
    loss = [primary_current_a(coil(resistance_ohm=r), 4, 1000.0, -40.0, rotor) - none for r in (1e-3, 1e-4)]
    np.testing.assert_allclose(loss[0], 10 * loss[1], rtol=1e-3)
    assert np.all(loss[1] < 0)
    np.testing.assert_array_equal(primary_current_a(coil(resistance_ohm=1e-300), 4, 1000.0, -40.0, rotor), none)


@given(pole_counts, st.floats(-1, 1), st.floats(-90, 90))
def test_turned_slowly_the_current_is_emf_over_resistance(poles, third, rotor):
    """κ = R/(LΩ) is above 10⁵: i = −N (dΦs/dt)/R, short by terms of 1/κ."""
    e, rpm = coil(third_harmonic=third, resistance_ohm=5.0), 1e-3
    full = e.coil_turns * e.peak_flux_wb * poles * np.pi * rpm / 60 / e.resistance_ohm
    found = float(primary_current_a(e, poles, rpm, rotor - 20.0, rotor))
    assert found == pytest.approx(emf(e, poles, rpm, rotor) / e.resistance_ohm, abs=1e-3 * full)
    for standing in (1e-30, 1e-200, 5e-324):
        assert abs(float(primary_current_a(e, poles, standing, rotor - 20.0, rotor))) <= 1e-25 * full / rpm


@given(pole_counts, st.floats(-1, 1), st.floats(0.01, 1e4), st.floats(1.0, MAX_SPEED_RPM))
def test_closed_for_very_long_the_transient_is_gone(poles, third, resistance, rpm):
    e, rotor = coil(third_harmonic=third, resistance_ohm=resistance), np.linspace(0, 720 / poles, 61)
    decay_deg = e.inductance_h / resistance * 6 * rpm
    found = primary_current_a(e, poles, rpm, -360.0 * np.ceil(40 * decay_deg / 360 + 1e4), rotor)
    expected = steady(e, poles, rpm, rotor)
    np.testing.assert_allclose(found, expected, rtol=0, atol=1e-7 * np.abs(expected).max())


def test_short_spans_keep_their_figures():
    """Just after closing i = e.m.f.·t/L, to a part in 10⁶ at 10⁻⁶ degrees: differences of sines would lose half."""
    e, rpm, span = coil(), 900.0, 1e-6
    found = primary_current_a(e, 4, rpm, 10.0, 10.0 + span)
    span = (10.0 + span) - 10.0  # as floating point has it
    assert found == pytest.approx(emf(e, 4, rpm, 10.0) * span / (6 * rpm) / e.inductance_h, rel=1e-6)


# ---------------------------------------------------------------------- flux and energy


@pytest.mark.parametrize(("poles", "register"), [(2, 90.0), (4, 45.0), (6, 30.0), (8, 22.5)])
def test_neutral_to_full_register(poles, register):
    """Four poles: 45° (FAA-H-8083-32, ch. 4); 360/(2·poles) in general. The flux is nought here, extreme there."""
    e, pitch = coil(third_harmonic=0.0), np.linspace(0.0, 2 * register, 3601)
    ahead, behind = static_flux_wb(e, poles, pitch), static_flux_wb(e, poles, -pitch)
    assert ahead[0] == behind[0] == 0
    assert pitch[ahead.argmin()] == pytest.approx(register, abs=1e-9)
    assert pitch[behind.argmax()] == pytest.approx(register, abs=1e-9)
    assert (ahead.min(), behind.max()) == pytest.approx((-e.peak_flux_wb, e.peak_flux_wb), rel=1e-12)


@given(pole_counts, st.floats(-1, 1), st.floats(-1000, 1000))
def test_flux_reverses_from_pole_to_pole(poles, third, rotor):
    e = coil(third_harmonic=third)
    here, there = static_flux_wb(e, poles, [rotor, rotor + 360.0 / poles])
    assert here == pytest.approx(flux(e, poles, rotor), abs=1e-12 * e.peak_flux_wb)
    assert there == pytest.approx(-here, abs=1e-11 * e.peak_flux_wb)


def test_closed_it_holds_the_flux_back_and_opening_lets_it_go():
    e, rotor = coil(), np.linspace(-60, 60, 1201)
    resultant = resultant_flux_wb(e, 4, 1500.0, -40.0, 12.0, rotor)
    static, closed = static_flux_wb(e, 4, rotor), (rotor >= -40) & (rotor < 12)
    np.testing.assert_array_equal(resultant[~closed], static[~closed])
    assert np.all(resultant[closed & (rotor > -39.95)] > static[closed & (rotor > -39.95)])
    # Without limits the contacts count as open.
    np.testing.assert_array_equal(resultant_flux_wb(e, 4, 1500.0, np.nan, 12.0, rotor), static)
    np.testing.assert_array_equal(resultant_flux_wb(e, 4, 1500.0, -40.0, np.nan, rotor), static)
    np.testing.assert_array_equal(primary_current_a(e, 4, 1500.0, -40.0, [-41.0, -400.0]), [0, 0])


@given(pole_counts, st.floats(0.05, 0.95), st.floats(-1, 1))
def test_lossless_energy_of_a_pure_sine(poles, share, turn):
    """L i = NΦm (sin e − sin(e − s)), so ½ L i² = (2 (NΦm)²/L) sin²(s/2) cos²(e − s/2): best opened half a span
    past neutral, where the closed span lies evenly about it."""
    e, span = coil(third_harmonic=0.0, resistance_ohm=0.0), share * 360.0 / poles
    best = 2 * (e.coil_turns * e.peak_flux_wb) ** 2 / e.inductance_h * np.sin(np.radians(poles * span / 4)) ** 2
    opens = span / 2 + turn * 180 / poles
    expected = best * np.cos(np.radians(turn * 90)) ** 2
    assert float(opening_energy_j(e, poles, 800.0, opens, span)) == pytest.approx(expected, abs=1e-12 * best)


def test_arrays_equal_a_loop_of_scalars():
    e, speeds, opens, spans = coil(), np.array([50.0, 3000.0]), np.linspace(-5, 40, 4), np.array([30.0, 60.0, np.nan])
    grid = opening_energy_j(e, 4, speeds[:, None, None], opens[:, None], spans)
    assert grid.shape == (2, 4, 3)
    assert np.isnan(grid[..., 2]).all()
    for i, j, k in np.ndindex(2, 4, 2):
        current = float(primary_current_a(e, 4, speeds[i], opens[j] - spans[k], opens[j]))
        assert grid[i, j, k] == pytest.approx(e.inductance_h * current**2 / 2, rel=1e-12)


@pytest.mark.parametrize("rpm", [0.0, -10.0, np.nan, np.inf, MAX_SPEED_RPM * 1.01])
def test_refuses_what_is_no_speed(rpm):
    with pytest.raises(ValueError, match=r"speed_rpm is .*; it must be above 0 and at most"):
        primary_current_a(coil(), 4, [100.0, rpm], 0.0, 1.0)


def test_refuses_what_is_no_angle_span_or_pole_count():
    with pytest.raises(ValueError, match="poles is 3; it must be an even number"):
        static_flux_wb(coil(), 3, 0.0)
    for bad in (0.0, np.inf), (-np.inf, 0.0):
        with pytest.raises(ValueError, match="an angle is infinite"):
            primary_current_a(coil(), 4, 100.0, *bad)
    with pytest.raises(ValueError, match="an angle is infinite"):
        static_flux_wb(coil(), 4, np.inf)
    with pytest.raises(ValueError, match="closed_deg is -1; it must be 0 or more"):
        opening_energy_j(coil(), 4, 100.0, 0.0, [5.0, -1.0])


# ---------------------------------------------------------------------- a whole turn


def cycle(magneto: Magneto, plate: float, screw: float, rpm: float, rotor: np.ndarray) -> ContactCycle:
    return contact_cycle(magneto, internal_timing(magneto).readings(plate, screw), rpm, rotor)


@pytest.mark.parametrize("name", WIRED)
@pytest.mark.parametrize("rpm", [60.0, 2000.0])
def test_a_cycle_follows_the_gap_between_the_contacts(name, rpm):
    """Contact state from the lift curve at every angle; each current restarted where that curve says they closed."""
    magneto = find_magneto(name)
    timing, e, poles = internal_timing(magneto), magneto.electrical, magneto.poles
    plate, turn = magneto.designed_setting.backplate_deg + 0.7, 360.0 / timing.ratio
    rotor = np.linspace(-1.3 * turn, 1.6 * turn, 1999)
    found = cycle(magneto, plate, 3.0, rpm, rotor)
    touching = timing.gap_mm(rotor, plate, 3.0) == 0
    np.testing.assert_array_equal(found.closed, touching)
    np.testing.assert_array_equal(found.static_flux_wb, static_flux_wb(e, poles, rotor))
    assert np.all(found.current_a[~touching] == 0)
    read = timing.readings(plate, 3.0)
    closings = np.sort(np.concatenate([read.closes_deg + k * turn for k in range(-3, 3)]))
    last = closings[np.searchsorted(closings, rotor[touching], side="right") - 1]
    expected = primary_current_a(e, poles, rpm, last, rotor[touching])
    np.testing.assert_allclose(found.current_a[touching], expected, rtol=0, atol=1e-9 * np.abs(expected).max())
    added = e.coil_turns * (found.flux_wb - found.static_flux_wb)
    np.testing.assert_allclose(added, e.inductance_h * found.current_a, rtol=0, atol=1e-12)


@pytest.mark.parametrize("name", WIRED)
def test_a_cycle_names_what_each_lobe_breaks_off(name):
    magneto = find_magneto(name)
    timing = internal_timing(magneto)
    read = timing.readings(magneto.designed_setting.backplate_deg, 0.0)
    hair = 1e-9
    found = contact_cycle(magneto, read, 1200.0, read.opens_deg - hair)
    np.testing.assert_allclose(found.opening_current_a, found.current_a, rtol=1e-6)
    energy = magneto.electrical.inductance_h * found.current_a**2 / 2
    np.testing.assert_allclose(found.opening_energy_j, energy, rtol=1e-6)
    # Every spark meets a flux reversed from the one before.
    assert np.all(np.sign(found.opening_current_a) == (-1.0) ** np.arange(timing.lobes))


def test_nine_sparks_a_cam_turn_leave_the_flux_reversed():
    magneto = find_magneto("nine-radial")
    assert len(magneto.cam.lobe_peaks_deg) == 9
    turn, rotor = 360.0 / magneto.cam.turns_per_rotor_turn, np.linspace(0, 700, 501)
    plate = magneto.designed_setting.backplate_deg
    first, second = (cycle(magneto, plate, 0.0, 1500.0, rotor + k * turn) for k in (0, 1))
    np.testing.assert_allclose(second.current_a, -first.current_a, atol=1e-9)
    np.testing.assert_allclose(second.flux_wb, -first.flux_wb, atol=1e-12)


def wired(**condition: tuple[float, ...]) -> Magneto:
    screw = {"kind": "threaded", "lead_mm": 1.0, "range_deg": (-720.0, 720.0), "positive_is_clockwise": True}
    return build(electrical=COIL, contact_screw=screw, condition=condition)


def test_lobes_that_never_open_leave_the_contacts_closed():
    """Only lobe 2 still opens: one current runs from its closing to its next opening, past all others."""
    magneto = wired(lobe_lift_error_mm=(0.0, 0.1, 0.0, 0.0))
    read = internal_timing(magneto).readings(0.0, 360.0 * 0.3)
    assert np.isfinite(read.opens_deg).tolist() == [False, True, False, False]
    rotor = np.linspace(read.closes_deg[1] + 1e-6, read.opens_deg[1] + 360 - 1e-6, 800)
    found = contact_cycle(magneto, read, 700.0, rotor)
    assert found.closed.all()
    expected = primary_current_a(magneto.electrical, 4, 700.0, read.closes_deg[1], rotor)
    np.testing.assert_allclose(found.current_a, expected, atol=1e-9)
    assert np.isnan(found.opening_energy_j).tolist() == [True, False, True, True]


def test_contacts_that_never_open_carry_the_steady_current_and_those_never_closed_none():
    magneto, rotor = wired(), np.linspace(-90, 400, 300).reshape(3, 100)
    shut = cycle(magneto, 0.0, 400.0, 1000.0, rotor)
    assert shut.closed.all() and np.isnan(shut.opening_current_a).all()
    np.testing.assert_allclose(shut.current_a, steady(magneto.electrical, 4, 1000.0, rotor), atol=1e-12)
    ajar = cycle(magneto, 0.0, -400.0, 1000.0, rotor)
    assert not ajar.closed.any() and np.all(ajar.current_a == 0) and np.isnan(ajar.opening_energy_j).all()
    np.testing.assert_array_equal(ajar.flux_wb, ajar.static_flux_wb)


@pytest.mark.parametrize("screw", [0.0, 400.0, -400.0])
def test_an_unknown_angle_has_an_unknown_current(screw):
    found = cycle(wired(), 0.0, screw, 1000.0, np.array([np.nan, 5.0]))
    assert np.isnan(found.current_a).tolist() == np.isnan(found.flux_wb).tolist() == [True, False]
    assert not found.closed[0]


def test_a_cycle_refuses_what_it_cannot_draw():
    magneto = wired()
    readings = internal_timing(magneto).readings
    with pytest.raises(ValueError, match="Test magneto has no electrical values"):
        contact_cycle(build(), readings(0.0, 0.0), 100.0, 0.0)
    with pytest.raises(ValueError, match=r"readings have shape \(2, 4\)"):
        contact_cycle(magneto, readings([0.0, 1.0], 0.0), 100.0, 0.0)
    with pytest.raises(ValueError, match="speed_rpm is 0"):
        contact_cycle(magneto, readings(0.0, 0.0), 0.0, 0.0)
