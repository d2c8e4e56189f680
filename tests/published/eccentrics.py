"""Circular eccentrics under the arm: four-bar linkages."""

from __future__ import annotations

import numpy as np

from magview.physics.cam.breaker import Linkage


def eccentric(offset: float, disc: float, beta):
    """Polar radius and slope of a disc whose centre lies `offset` from the cam's, towards β = 0."""
    root = np.sqrt(disc**2 - (offset * np.sin(beta)) ** 2)
    radius = offset * np.cos(beta) + root
    return radius, -offset * np.sin(beta) * radius / root


def linkages(count: int):
    rng = np.random.default_rng(1954)
    while count:
        disc, heel = rng.uniform(3, 12), rng.uniform(0.5, 4)
        offset = rng.uniform(0.02, 0.4) * disc
        ground = disc + offset + rng.uniform(0.5, 15)
        rocker = ground * rng.uniform(0.4, 1.4)
        near, far = disc + heel - offset, disc + heel + offset
        # A crank that turns right round, with some degrees left to the arm's dead centres.
        if abs(ground - rocker) < 0.97 * near and 1.03 * far < ground + rocker:
            sense = 1 if count % 2 else -1
            yield offset, disc, Linkage(ground, rocker, 1.5 * rocker, heel, disc + heel, sense)
            count -= 1
