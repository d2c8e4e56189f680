"""The arm on a circular eccentric against a linkage library (pylinkage): crank, coupler and rocker of a four-bar."""

from __future__ import annotations

import importlib.metadata

import numpy as np
import pytest

from magview.physics.cam.breaker import Linkage, pitch_contact
from tests.published.eccentrics import eccentric, linkages
from tests.second_opinions.versions import told

pylinkage = pytest.importorskip("pylinkage")
pytestmark = pytest.mark.reference
STEPS = 180


@pytest.fixture(autouse=True, scope="module")
def _version():
    told("pylinkage", importlib.metadata.version("pylinkage"))


def rocker_pins(offset: float, disc: float, arms: Linkage) -> tuple[np.ndarray, np.ndarray]:
    """Crank angle from the pivot's direction [rad] and the heel's centre (complex), step by step."""
    cam, pivot = pylinkage.Ground(0.0, 0.0), pylinkage.Ground(arms.pivot_distance_mm, 0.0)
    crank = pylinkage.Crank(cam, radius=offset, angular_velocity=2 * np.pi / STEPS)
    heel = pylinkage.RRRDyad(crank.output, pivot, distance1=disc + arms.heel_radius_mm, distance2=arms.heel_arm_mm)
    linkage = pylinkage.Linkage([cam, pivot, crank, heel])
    places = [positions for positions in linkage.step(STEPS)]
    crank_at = np.array([complex(*p[2]) for p in places])
    return np.angle(crank_at), np.array([complex(*p[3]) for p in places])


@pytest.mark.parametrize("number", range(50))
def test_the_arm_stands_where_the_four_bar_s_rocker_does(number: int) -> None:
    offset, disc, arms = list(linkages(50))[number]
    crank_rad, pins = rocker_pins(offset, disc, arms)
    beta = np.linspace(-np.pi, np.pi, 7201)
    cam, pitch, _ = pitch_contact(arms, beta, *eccentric(offset, disc, beta))
    gamma = np.angle(-(pins - arms.pivot_distance_mm))  # from the line back to the cam
    theirs_sense = np.sign(np.median(np.sin(gamma)))
    # The library picks one of two mirror images; the other turns the other way.
    turned = crank_rad if theirs_sense == -arms.sense else -crank_rad
    order = np.argsort(np.mod(cam, 2 * np.pi))
    ours = np.interp(
        np.mod(turned, 2 * np.pi), np.mod(cam, 2 * np.pi)[order], arms.arm_angle_rad(pitch)[order], period=2 * np.pi
    )
    assert np.abs(ours - np.abs(gamma)).max() < 5e-5
