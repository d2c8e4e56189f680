"""Timing to the engine against outside sources; each is named beside its check."""

from __future__ import annotations

from fractions import Fraction

import numpy as np
import pytest

from magview.bench.words import move_words
from magview.physics.engine.coupling import crank_advance_deg, plan, rotor_shift, speed_mismatch, speed_ratio
from magview.physics.engine.crank import crank_slider_mm, firing_with_cam
from magview.spec.library import find_engine, find_installation, find_magneto, shipped_names


def test_vernier_of_19_and_20_teeth_steps_by_a_380th_of_a_turn() -> None:
    """A technical article on magneto couplings."""
    assert rotor_shift(19, 20, 1, -1) == Fraction(1, 380)
    assert rotor_shift(19, 20, -1, 1) == Fraction(-1, 380)


def test_to_advance_flange_goes_with_rotation_and_disc_against_it() -> None:
    """The same article: to advance, the magneto's flange with rotation, the disc on the drive against it."""
    assert crank_advance_deg(19, 20, 1, -1, Fraction(7, 8)) > 0
    late = plan(19, 20, 0.875, reads_btdc_deg=24.0, wanted_btdc_deg=25.0, most=1)[0]
    disc, flange = move_words(late, "clockwise", "drive end")
    assert flange.startswith("1 tooth with rotation")
    assert disc.startswith("1 tooth against rotation")
    early = plan(19, 20, 0.875, reads_btdc_deg=26.0, wanted_btdc_deg=25.0, most=1)[0]
    disc, flange = move_words(early, "clockwise", "drive end")
    assert flange.startswith("1 tooth against rotation")
    assert disc.startswith("1 tooth with rotation")


def test_one_tooth_is_about_a_degree() -> None:
    """Common practice: one tooth of a vernier coupling is about one degree of crank. The published coupling of 19
    and 20 teeth, on seven cylinders fired by four poles."""
    assert crank_advance_deg(19, 20, 1, -1, Fraction(7, 8)) == pytest.approx(1.0, abs=0.1)


def test_a_move_of_common_practice() -> None:
    """Common practice on one radial: it fires about 25° before top dead centre; found at 22°, three teeth mend it."""
    move = plan(19, 20, Fraction(7, 8), reads_btdc_deg=22.0, wanted_btdc_deg=25.0, most=1)[0]
    assert (move.magneto_teeth, move.disc_teeth) == (3, -3)
    assert move.result_btdc_deg == pytest.approx(25.0, abs=0.5)


@pytest.mark.parametrize("name", shipped_names("installations"))
def test_some_tooth_is_always_within_the_tolerance(name: str) -> None:
    installation = find_installation(name)
    coupling, k = installation.coupling, installation.rotor_turns_per_crank_turn
    step = crank_advance_deg(coupling.magneto_teeth, coupling.drive_teeth, 1, -1, k)
    assert abs(step) / 2 < installation.engine.timing_tolerance_deg


@pytest.mark.parametrize(
    ("cylinders", "poles", "ratio"),
    [
        # Six cylinders, two sparks a rotor turn: gear trains of six-cylinder aero engines, 1 : 1.5; a German
        # ignition textbook in the TIB digital collections, no. 1824170130, p. 30 (four: 1, six: 1.5, eight: 2).
        (4, 2, Fraction(1)),
        (6, 2, Fraction(3, 2)),
        (8, 2, Fraction(2)),
        # Nine cylinders, four poles: 1 1/8 (aircraft powerplant textbooks, from memory).
        (9, 4, Fraction(9, 8)),
    ],
)
def test_rotor_speed(cylinders: int, poles: int, ratio: Fraction) -> None:
    assert speed_ratio(cylinders, poles) == ratio


@pytest.mark.parametrize("name", shipped_names("installations"))
def test_shipped_installations_turn_at_that_speed(name: str) -> None:
    assert speed_mismatch(find_installation(name)) is None


def test_radial_firing_orders() -> None:
    """FAA-H-8083-32, ch. 1: 1-3-5-7-2-4-6 and 1-3-5-7-9-2-4-6-8."""
    assert find_engine("seven-radial").firing_order == (1, 3, 5, 7, 2, 4, 6)
    assert find_engine("nine-radial").firing_order == (1, 3, 5, 7, 9, 2, 4, 6, 8)


def test_compensated_cam_has_a_lobe_a_cylinder_at_half_crank_speed() -> None:
    """FAA-H-8083-32, ch. 4."""
    installation = find_installation("nine-radial-left")
    cam, k = installation.magneto.cam, installation.rotor_turns_per_crank_turn
    assert len(cam.lobe_peaks_deg) == installation.engine.cylinders
    assert cam.turns_per_rotor_turn * k == pytest.approx(0.5, abs=1e-12)
    assert installation.magneto.compensated
    assert not find_magneto("seven-radial").compensated


@pytest.mark.parametrize("name", ["nine-radial-left", "nine-radial-right"])
def test_compensated_cam_fires_all_at_one_piston_position(name: str) -> None:
    """FAA-H-8083-32, ch. 4: the spacing is corrected for each cylinder's piston position."""
    installation = find_installation(name)
    engine, magneto, k = installation.engine, installation.magneto, installation.rotor_turns_per_crank_turn
    fired = firing_with_cam(engine, magneto, k, engine.firing_btdc_deg.left)
    # Lobes to 0.01° of cam are within 0.01° of crank, where these pistons move about 0.7 mm a degree.
    assert np.ptp(fired.piston_drop_mm) < 0.02
    even = np.arange(9) * 40.0 / magneto.cam.turns_per_rotor_turn
    assert np.ptp(firing_with_cam(engine, magneto, k, engine.firing_btdc_deg.left, even).piston_drop_mm) > 1.0


@pytest.mark.parametrize("name", [n for n in shipped_names("installations") if not n.startswith("nine")])
def test_uncompensated_cams_are_on_engines_that_can_do_with_one(name: str) -> None:
    installation = find_installation(name)
    engine, btdc = installation.engine, installation.engine.firing_btdc_deg.left
    fired = firing_with_cam(engine, installation.magneto, installation.rotor_turns_per_crank_turn, btdc)
    # The seven-cylinder engine's knuckle pins, given to 0.1°, are placed for even spacing.
    assert np.abs(fired.btdc_deg - btdc).max() < 0.02


def test_crank_and_rod_series() -> None:
    """Heywood, ch. 2, against the standard series for long rods (mechanics textbooks):
    x ≈ r cos a + l (1 − λ²/2 sin² a − λ⁴/8 sin⁴ a), λ = r/l."""
    a, r, rod = np.radians(np.arange(0.0, 360.0, 15.0)), 50.0, 500.0
    s = (r / rod * np.sin(a)) ** 2
    series = r * np.cos(a) + rod * (1 - s / 2 - s**2 / 8)
    assert crank_slider_mm(np.degrees(a), r, rod) == pytest.approx(series, abs=rod * 1e-6 / 8)
