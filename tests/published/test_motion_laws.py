"""Motion laws against cam design handbooks and against integration of their verbal definitions.

Peak factors: R. L. Norton, *Cam Design and Manufacturing Handbook*, ch. 2 and 3 (remembered, the exact values
recomputed). The coefficients of the modified trapezoid are those printed in machine design texts (remembered).
"""

import numpy as np
import pytest

from magview.physics.cam.motion import motion
from tests.reference import LAWS, law

X = np.linspace(0.0, 1.0, 200_001)  # holds every corner of the laws: all lie at eighths

# Peak velocity and acceleration, and half a unit of the last digit that is printed.
HANDBOOK = {
    "harmonic": (np.pi / 2, np.pi**2 / 2, 1e-9),
    "cycloidal": (2.0, 2 * np.pi, 1e-9),
    "polynomial-345": (1.875, 5.7735, 5e-5),
    "polynomial-4567": (2.1875, 7.5132, 5e-5),
    "modified-trapezoid": (2.000, 4.888, 5e-4),
    "modified-sine": (1.760, 5.528, 5e-4),
}


@pytest.mark.parametrize("name", LAWS)
def test_peaks_are_those_of_the_handbooks(name):
    _, v, a = motion(name, X)
    speed, acceleration, tolerance = HANDBOOK[name]
    assert v.max() == pytest.approx(speed, abs=tolerance)
    assert np.abs(a).max() == pytest.approx(acceleration, abs=tolerance)


@pytest.mark.parametrize("name", LAWS)
def test_law_is_its_acceleration_integrated_twice(name):
    f, v, _ = motion(name, X)
    displacement, speed = law(name, X)
    np.testing.assert_allclose(f, displacement, atol=1e-13)
    np.testing.assert_allclose(v, speed, atol=1e-13)


@pytest.mark.parametrize("name", LAWS)
def test_each_derivative_is_the_slope_of_the_one_before(name):
    h = 1e-5
    inner = X[np.abs(X - 0.5) < 0.5 - h]
    smooth = inner[np.abs(inner * 8 - np.round(inner * 8)) > 1e-3]  # the acceleration has corners at eighths
    before, here, after = (motion(name, smooth + d) for d in (-h, 0.0, h))
    # Central differences: h²/6 times the next derivatives (below 2000 here), and rounding 1e-16/h.
    np.testing.assert_allclose((after[0] - before[0]) / (2 * h), here[1], atol=1e-7)
    np.testing.assert_allclose((after[1] - before[1]) / (2 * h), here[2], atol=1e-7)


@pytest.mark.parametrize("name", LAWS)
def test_law_runs_from_rest_at_0_to_rest_at_1_and_is_symmetric(name):
    f, v, a = motion(name, X)
    assert (f[0], f[-1], v[0], v[-1]) == pytest.approx((0, 1, 0, 0), abs=1e-15)
    assert np.all(np.diff(f) >= 0)
    np.testing.assert_allclose(f + f[::-1], 1.0, atol=1e-15)
    np.testing.assert_allclose(v, v[::-1], atol=1e-12)
    np.testing.assert_allclose(a, -a[::-1], atol=1e-9)
    held = motion(name, np.array([-3.0, 4.0]))
    assert held[0].tolist() == [0.0, 1.0]


def test_modified_trapezoid_has_the_printed_coefficients():
    x = np.linspace(0, 0.5, 1001)
    printed = np.select(
        [x <= 1 / 8, x <= 3 / 8],
        [
            0.38898448 * x - 0.0309544 * np.sin(4 * np.pi * x),
            2.44406184 * x**2 - 0.22203097 * x + 0.00723407,
        ],
        1.6110154 * x - 0.0309544 * np.sin(4 * np.pi * x - np.pi) - 0.3055077,
    )
    np.testing.assert_allclose(motion("modified-trapezoid", x)[0], printed, atol=1e-7)
