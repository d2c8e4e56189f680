"""Propagation against a general-purpose GUM calculator (GTC, a metrology institute's library for Python)."""

from __future__ import annotations

import importlib.metadata
import math
from contextlib import suppress
from functools import cache

import numpy as np
import pytest

from magview.physics.cam.setting import internal_timing
from magview.physics.uncertainty.measurement import Measurement
from magview.physics.uncertainty.propagation import Input, propagate, propagate_each
from magview.physics.uncertainty.setting_uncertainty import InternalReadings, internal_measurement
from magview.spec.base import SpecError
from magview.spec.library import find_magneto, shipped_names
from magview.spec.magneto import Magneto
from tests.magnetos import from_mechanism, random_mechanism
from tests.second_opinions.versions import told

GTC = pytest.importorskip("GTC")
pytestmark = pytest.mark.reference


@pytest.fixture(autouse=True, scope="module")
def _version():
    told("gtc", importlib.metadata.version("gtc"))


@cache
def magnetos() -> list[Magneto]:
    """The shipped ones and fifty at random whose heel follows the cam."""
    rng, found = np.random.default_rng(106), [find_magneto(name) for name in shipped_names("magnetos")]
    while len(found) < 54:
        magneto = from_mechanism(random_mechanism(rng, "cycloidal", 1 if len(found) % 2 else -1))
        with suppress(SpecError):
            internal_timing(magneto)
            found.append(magneto)
    return found


def measured(magneto: Magneto) -> Measurement:
    gap = float(internal_timing(magneto).readings(magneto.designed_setting.backplate_deg, 0.0).max_gap_mm[0])
    return internal_measurement(magneto, InternalReadings(0.2, gap))


def slopes(measurement: Measurement) -> np.ndarray:
    """∂f/∂x by a five-point rule, shape (quantities, inputs): another rule than the program's."""
    x = np.array([i.estimate for i in measurement.inputs])
    found = []
    for k, item in enumerate(measurement.inputs):
        h = 0.01 * item.standard_uncertainty
        if h == 0.0:
            found.append(np.zeros(len(measurement.quantities)))
            continue
        points = np.tile(x, (4, 1))
        points[:, k] += h * np.array([-2.0, -1.0, 1.0, 2.0])
        y = measurement.model(points.T)
        found.append((y[:, 0] - 8 * y[:, 1] + 8 * y[:, 2] - y[:, 3]) / (12 * h))
    return np.array(found).T


@pytest.mark.parametrize("number", range(54))
def test_a_setting_s_combined_uncertainty(number: int) -> None:
    magneto = magnetos()[number]
    measurement = measured(magneto)
    ours = propagate_each(measurement.model, measurement.inputs)
    for linear, row in zip(ours, slopes(measurement), strict=True):
        theirs = sum(
            (
                float(c) * GTC.ureal(0.0, i.standard_uncertainty, math.inf if math.isinf(i.dof) else i.dof)
                for c, i in zip(row, measurement.inputs, strict=True)
            ),
            GTC.ureal(0.0, 0.0),
        )
        assert linear.standard_uncertainty == pytest.approx(theirs.u, rel=1e-4, abs=1e-9)


@pytest.mark.parametrize("seed", range(50))
def test_few_readings_and_correlated_ones(seed: int) -> None:
    """A product and a quotient of two correlated quantities from the same readings, and one of its own."""
    rng = np.random.default_rng(seed)
    means, spreads = rng.uniform(1.0, 9.0, 3), rng.uniform(0.01, 0.2, 3)
    dofs, r = (float(rng.integers(3, 30)), float(rng.integers(3, 30))), rng.uniform(-0.95, 0.95)
    inputs = [
        Input("a", means[0], spreads[0], dof=dofs[0]), Input("b", means[1], spreads[1], dof=dofs[0]),
        Input("c", means[2], spreads[2], dof=dofs[1]),
    ]  # fmt: skip
    matrix = [[1.0, r, 0.0], [r, 1.0, 0.0], [0.0, 0.0, 1.0]]
    ours = propagate(lambda x: x[0] * x[1] + x[0] / x[2], inputs, correlation=matrix)
    a, b = GTC.multiple_ureal(means[:2].tolist(), spreads[:2].tolist(), dofs[0])
    GTC.set_correlation(r, a, b)
    c = GTC.ureal(means[2], spreads[2], dofs[1])
    theirs = a * b + a / c
    assert ours.estimate == pytest.approx(theirs.x, rel=1e-12)
    assert ours.standard_uncertainty == pytest.approx(theirs.u, rel=1e-5)
    assert ours.dof == pytest.approx(theirs.df, rel=1e-4)
