"""A plain magneto that wears, and rates for it."""

from magview.physics.wear.prediction import WearRates
from tests.magnetos import build

RATES = WearRates(0.02, 0.015)
RATIO = 27.0 / 17.0
"""Contact arm over heel arm of the plain test magneto."""


def steady(**changes):
    """A plain magneto set to 0.25 mm, limits 0.2 mm to 0.3 mm, mark tolerance 0.8 mm at 36 mm."""
    return build(**({"gap_limits_mm": (0.2, 0.3)} | changes))
