"""Lobes and cylinders by arithmetic, and timing lights by Ohm's law.

4 lobes and 7 cylinders: a lobe fires the 1st, 5th, 2nd, 6th … in the firing order (plain arithmetic). A cam's lobe
belongs to one cylinder only where there is one lobe for each: the compensated cam (FAA-H-8083-32B, ch. 4).
"""

from __future__ import annotations

from itertools import cycle, islice, product
from math import gcd

import pytest

from magview.physics.cam.lobes import cylinders_of_lobe, places_of_lobe
from magview.physics.engine.timing_light import lamp_burns, lamp_tells


def test_four_lobes_and_seven_cylinders():
    assert places_of_lobe(4, 7)[:4] == (1, 5, 2, 6)
    assert sorted(places_of_lobe(4, 7)) == [1, 2, 3, 4, 5, 6, 7]
    # FAA-H-8083-32B, ch. 1: the firing order of a seven-cylinder radial.
    assert cylinders_of_lobe(4, (1, 3, 5, 7, 2, 4, 6)) == (1, 2, 3, 4, 5, 6, 7)


@pytest.mark.parametrize(("lobes", "cylinders"), list(product(range(1, 13), range(1, 19))))
def test_sparks_counted_one_after_another(lobes, cylinders):
    """Both are counted off spark by spark until the pattern comes again."""
    sparks = list(
        islice(zip(cycle(range(1, lobes + 1)), cycle(range(1, cylinders + 1)), strict=False), 2 * lobes * cylinders)
    )
    for lobe in range(1, lobes + 1):
        visited = list(dict.fromkeys(place for own, place in sparks if own == lobe))
        assert list(places_of_lobe(lobes, cylinders, lobe)) == visited
    reaches_all = len(places_of_lobe(lobes, cylinders)) == cylinders
    assert reaches_all == (gcd(lobes, cylinders) == 1)


def test_a_compensated_cams_lobe_fires_one_cylinder():
    assert [places_of_lobe(9, 9, lobe) for lobe in range(1, 10)] == [(n,) for n in range(1, 10)]


def test_no_such_lobe_is_refused():
    with pytest.raises(ValueError, match="no lobe 5 of 4"):
        places_of_lobe(4, 7, 5)


@pytest.mark.parametrize("kind", ["open", "closed", "buzzer", "plain"])
def test_lights_against_the_currents_that_flow(kind):
    """A plain lamp burns where current flows through 12 V, a lamp of 12 Ω and what lies across its leads: contacts
    that touch, or about an ohm of primary winding (common practice), or nothing. A trade light tells those apart."""
    for closed, coil in product((False, True), repeat=2):
        ohms = 0.0 if closed else 1.0 if coil else float("inf")
        if kind == "plain":
            bright = 12.0 / (12.0 + ohms) > 0.5  # of an ampere: an eye sees no difference at 0.92 A
            assert lamp_burns(kind, closed, coil) == bright
        else:
            assert lamp_burns(kind, closed, coil) == (closed if kind == "closed" else not closed)
    seen = {closed: lamp_burns(kind, closed, True) for closed in (False, True)}
    assert lamp_tells(kind, True) == (seen[False] != seen[True])
    assert lamp_tells(kind, False)
