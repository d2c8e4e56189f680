"""Flux, current and energy about the lobe at work: against the coil's own kernels and limit cases."""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest

from magview.bench.placing import new_bench
from magview.bench.state import readings
from magview.curves.coil import energy_curve
from magview.curves.why_here import core_flux, why_here, working_lobe
from magview.physics.electric.coil import static_flux_wb
from magview.spec.library import find_magneto, shipped_names

NAMES = shipped_names("magnetos")
COILS = [name for name in NAMES if find_magneto(name).electrical is not None]


def bench(name: str, rotor_deg: float = 10.0):
    return replace(new_bench(find_magneto(name)), rotor_deg=rotor_deg)


@pytest.mark.parametrize("name", COILS)
def test_the_lobe_at_work_is_the_one_that_opens_nearest(name):
    state = bench(name)
    result = readings(state)
    turn = 360.0 / state.magneto.cam.turns_per_rotor_turn
    for index, opens in enumerate(result.opens_deg.tolist()):
        for turns in (-2, 0, 3):
            lobe = working_lobe(state.magneto, result, opens + turns * turn + 2.0)
            assert (lobe.index, lobe.opens_deg) == (index, pytest.approx(opens + turns * turn))
            # The E-gap belongs to the neutral: the opening lies within a quarter of a pole's pitch of it.
            assert abs(lobe.opens_deg - lobe.neutral_deg - state.magneto.e_gap_deg) <= 180.0 / state.magneto.poles


@pytest.mark.parametrize("name", COILS)
def test_the_energy_is_that_of_the_coils_own_curve_for_the_first_lobe(name):
    state = bench(name)
    state = replace(state, rotor_deg=float(readings(state).opens_deg[0]))
    strip, curve = why_here(state), energy_curve(state, why_here(state).speeds.starting_rpm)
    late = strip.opens_deg - state.magneto.e_gap_deg
    assert strip.broken_mj == pytest.approx(1e3 * curve.at_j(late), rel=1e-3)


@pytest.mark.parametrize("name", COILS)
def test_the_current_ends_and_the_flux_falls_to_the_magnets_where_the_contacts_part(name):
    state = bench(name)
    strip = why_here(state)
    opened = (strip.rotor_deg >= strip.opens_deg + 1e-6) & (strip.rotor_deg < strip.opens_deg + 3.0)
    assert opened.any()
    assert np.all(strip.current_a[opened] == 0.0)
    assert np.allclose(strip.flux[opened], strip.magnet_flux[opened])
    before = strip.rotor_deg < strip.opens_deg - 1e-6
    assert strip.current_a[before][-1] > 0.0
    assert abs(strip.flux[before][-1]) <= 1.0
    assert strip.sparks(strip.lobe.opens_deg + 0.01) and not strip.sparks(strip.lobe.opens_deg - 0.01)


@pytest.mark.parametrize("name", COILS)
def test_flux_never_exceeds_its_greatest_over_a_turn(name):
    sizes = [np.abs(core_flux(bench(name, float(rotor)))) for rotor in np.linspace(-360.0, 360.0, 145)]
    assert 0.95 < max(size.max() for size in sizes) <= 1.0 + 1e-6


def test_without_electrical_values_there_is_no_strip_and_a_plain_flux():
    plain = find_magneto(COILS[0]).model_copy(update={"electrical": None})
    state = replace(new_bench(plain), rotor_deg=7.0)
    assert why_here(state) is None
    assert core_flux(state)[0] == pytest.approx(-math.sin(math.radians(plain.poles / 2 * 7.0)))


@pytest.mark.parametrize("screw_deg", [-60.0, 60.0])
def test_contacts_that_never_open_or_never_close_have_no_strip(screw_deg):
    state = replace(bench("seven-radial"), screw_deg=screw_deg)
    assert np.isnan(readings(state).opens_deg).all()
    assert why_here(state) is None
    flux, magnet = core_flux(state)
    alone = float(static_flux_wb(state.magneto.electrical, state.magneto.poles, state.rotor_deg))
    assert math.copysign(1.0, magnet) == math.copysign(1.0, alone)
    stays_open = readings(state).max_gap_mm.max() > 0.0
    assert (flux == magnet) == stays_open, "open contacts leave the magnet's flux alone"
    if stays_open:  # the same as just after an opening, where the current is gone too: by the file's own flux
        assert magnet == pytest.approx(alone / state.magneto.electrical.peak_flux_wb, abs=0.25)
