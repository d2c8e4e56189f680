"""The magnet's pull against the FAA handbook's facts, an independent solver, and conservation of energy."""

from __future__ import annotations

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from scipy.integrate import solve_ivp

from magview.physics.electric.magnet import STEP_S, detent_torque_nm, rest_deg, swing
from magview.spec.library import find_magneto
from magview.spec.magneto import Detent

FREE = (-np.inf, np.inf)
DETENT = Detent(torque_nm=0.35, inertia_kg_m2=2e-4, damping_nms=1.6e-3)


def test_neutral_holds_and_full_register_does_not():
    """A rotor let go holds itself at neutral, 45° from full register with four poles (FAA-H-8083-32, ch. 4)."""
    assert detent_torque_nm(DETENT, 4, [0.0, 90.0, 180.0]) == pytest.approx([0, 0, 0], abs=1e-12)
    assert detent_torque_nm(DETENT, 4, 45.0) == pytest.approx(0.0, abs=1e-12)
    assert float(detent_torque_nm(DETENT, 4, 1.0)) < 0 < float(detent_torque_nm(DETENT, 4, -1.0))
    assert float(detent_torque_nm(DETENT, 4, 44.0)) < 0 < float(detent_torque_nm(DETENT, 4, 46.0))


@pytest.mark.parametrize("name", ["seven-radial", "nine-radial", "four-opposed"])
def test_let_go_at_the_e_gap_it_falls_back_to_neutral(name):
    """Common practice: that is why the rotor must be held while the contacts are set."""
    magneto = find_magneto(name)
    angle, speed = swing(magneto.detent, magneto.poles, magneto.e_gap_deg, 0.0, 20_000, FREE)
    assert angle == pytest.approx(0.0, abs=1e-3)
    assert speed == pytest.approx(0.0, abs=1e-2)
    assert rest_deg(magneto.poles, magneto.e_gap_deg, FREE) == 0.0


@given(
    st.floats(-200, 200).map(lambda x: round(x, 6)),
    st.floats(-2000, 2000).map(lambda x: round(x, 6)),
    st.sampled_from([2, 4, 6]),
)
def test_the_swing_against_an_independent_solver(start, speed, poles):
    def rate(_: float, y: np.ndarray) -> list[float]:
        pull = -DETENT.torque_nm * np.sin(poles * y[0]) - DETENT.damping_nms * y[1]
        return [y[1], pull / DETENT.inertia_kg_m2]

    steps = 60
    exact = solve_ivp(
        rate, (0.0, steps * STEP_S), np.radians([start, speed]), method="DOP853", rtol=1e-11, atol=1e-12
    )
    angle, after = swing(DETENT, poles, start, speed, steps, FREE)
    assert angle == pytest.approx(np.degrees(exact.y[0, -1]), abs=1e-4)
    assert after == pytest.approx(np.degrees(exact.y[1, -1]), abs=2e-2)


@given(st.floats(-44, 44))
def test_without_damping_energy_is_kept(start):
    free = Detent(torque_nm=0.35, inertia_kg_m2=2e-4, damping_nms=0.0)
    angle, speed = swing(free, 4, start, 0.0, 400, FREE)

    def energy(deg: float, deg_s: float) -> float:
        return free.inertia_kg_m2 * np.radians(deg_s) ** 2 / 2 - free.torque_nm / 4 * np.cos(4 * np.radians(deg))

    assert energy(angle, speed) == pytest.approx(energy(start, 0.0), abs=2e-6 * free.torque_nm)


@given(st.floats(-500, 500), st.sampled_from([2, 4, 6, 12]))
def test_where_it_rests_is_where_it_swings_to(start, poles):
    pitch = 360.0 / poles
    if abs((start % pitch) - pitch / 2) < 0.5:
        return  # near full register it depends on a breath
    heavy = Detent(torque_nm=0.35, inertia_kg_m2=2e-4, damping_nms=0.05)
    angle, _ = swing(heavy, poles, start, 0.0, 6000, FREE)
    assert angle == pytest.approx(rest_deg(poles, start, FREE), abs=0.05)


def test_the_coupling_stops_it():
    angle, speed = swing(DETENT, 4, 11.0, 0.0, 4000, (10.6, 11.0))
    assert (angle, speed) == (pytest.approx(10.6), 0.0)
    assert rest_deg(4, 11.0, (10.6, 11.0)) == 10.6


@pytest.mark.parametrize("damping", [0.0, 10.0])
@pytest.mark.parametrize("torque", [0.0, 100.0])
def test_absurd_magnets_do_not_overflow(damping, torque):
    wild = Detent(torque_nm=torque, inertia_kg_m2=1e-7, damping_nms=damping)
    angle, speed = swing(wild, 12, 10.0, 500.0, 5000, FREE)
    assert np.isfinite(angle)
    assert abs(speed) <= 1e6 + 1e-6
