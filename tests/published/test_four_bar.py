"""A circular eccentric under the arm is exactly a four-bar linkage, whose closed form is Freudenstein's equation.

F. Freudenstein, "An analytical approach to the design of four-link mechanisms", Trans. ASME 76 (1954) 483–492.
Crank = eccentricity, coupler = disc radius + heel radius, rocker = heel arm, ground = pivot distance.
"""

import numpy as np
import pytest
from scipy.optimize import brentq

from magview.physics.cam.breaker import Linkage, pitch_contact
from tests.published.eccentrics import eccentric, linkages

BETA = np.linspace(-np.pi, np.pi, 721)


def rocker_angle(crank_rad, crank, coupler, rocker, ground):
    """Freudenstein: R₁ cos θ₂ − R₂ cos θ₄ + R₃ = cos(θ₂ − θ₄), solved with t = tan(θ₄/2).

    Angles from the ground line, crank pivot to rocker pivot; both solutions, stacked.
    """
    r1, r2 = ground / rocker, ground / crank
    r3 = (crank**2 - coupler**2 + rocker**2 + ground**2) / (2 * crank * rocker)
    a = np.cos(crank_rad) - r2 - r1 * np.cos(crank_rad) + r3
    b = -2 * np.sin(crank_rad)
    c = r2 - (r1 + 1) * np.cos(crank_rad) + r3
    # Vieta's second root, so that neither loses digits.
    q = -(b + np.copysign(np.sqrt(b**2 - 4 * a * c), b)) / 2
    return np.stack([2 * np.arctan2(q, a), 2 * np.arctan2(c, q)])


@pytest.mark.parametrize(("offset", "disc", "arms"), list(linkages(24)))
def test_eccentric_follows_freudenstein_to_1e_9_rad(offset, disc, arms):
    cam, pitch, _ = pitch_contact(arms, BETA, *eccentric(offset, disc, BETA))
    rocker = np.pi - arms.arm_angle_rad(pitch) * arms.sense
    sizes = offset, disc + arms.heel_radius_mm, arms.heel_arm_mm, arms.pivot_distance_mm
    apart = np.abs(np.exp(1j * rocker_angle(cam, *sizes)) - np.exp(1j * rocker)).min(axis=0)
    assert apart.max() < 1e-9


@pytest.mark.parametrize(("offset", "disc", "arms"), list(linkages(4)))
def test_rate_is_the_slope_of_the_heel_s_path(offset, disc, arms):
    h = 1e-5
    _, _, rate = pitch_contact(arms, BETA, *eccentric(offset, disc, BETA))
    ahead, behind = (pitch_contact(arms, BETA + d, *eccentric(offset, disc, BETA + d)) for d in (h, -h))
    np.testing.assert_allclose((ahead[1] - behind[1]) / (ahead[0] - behind[0]), rate, atol=1e-8 * disc)


def test_the_closed_form_itself_closes_the_four_bar():
    """Both solutions keep the coupler's length, so the yardstick of this file is straight."""
    crank, coupler, rocker, ground = 1.0, 9.0, 14.0, 17.0
    turn = np.linspace(-3, 3, 101)
    for angle in rocker_angle(turn, crank, coupler, rocker, ground):
        pins = ground + rocker * np.exp(1j * angle) - crank * np.exp(1j * turn)
        np.testing.assert_allclose(abs(pins), coupler, atol=1e-12)


def test_eccentric_has_its_highest_lift_where_the_four_bar_has():
    """Limit case: the coupler and the crank in line give the heel's greatest distance, offset + disc + heel."""
    arms = Linkage(20.0, 17.0, 27.0, 1.8, 10.8, 1)
    radius, slope = eccentric(0.5, 9.0, np.array([0.0, np.pi]))
    _, pitch, rate = pitch_contact(arms, [0.0, np.pi], radius, slope)
    assert pitch == pytest.approx([9.0 + 1.8 + 0.5, 9.0 + 1.8 - 0.5], abs=1e-14)
    assert rate == pytest.approx([0, 0], abs=1e-14)


def test_cam_angle_is_that_of_the_contact_seen_from_the_pivot():
    """Eccentric turned 0.7 rad past the pivot's direction; the triangle is closed numerically."""
    arms = Linkage(20.0, 17.0, 27.0, 1.8, 10.8, 1)

    def missing(gamma: float) -> float:
        heel = 20.0 - 17.0 * np.exp(-1j * gamma)
        return float(abs(heel - 0.5 * np.exp(1j * 0.7)) - 10.8)

    gamma = brentq(missing, 0.3, 1.2, xtol=1e-14)
    heel = 20.0 - 17.0 * np.exp(-1j * gamma)
    beta = np.angle(heel - 0.5 * np.exp(1j * 0.7)) - 0.7  # of the touching point, seen from the disc's centre
    point = 0.5 + 9.0 * np.exp(1j * beta)
    radius, slope = eccentric(0.5, 9.0, np.array([np.angle(point)]))
    cam, pitch, _ = pitch_contact(arms, [np.angle(point)], radius, slope)
    assert cam[0] == pytest.approx(0.7, abs=1e-12)
    assert arms.arm_angle_rad(pitch)[0] == pytest.approx(gamma, abs=1e-12)
