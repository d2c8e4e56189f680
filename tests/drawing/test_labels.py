"""Names round a picture never lie on one another."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import given
from hypothesis import strategies as st

from magview.drawing.labels import arrange

points = st.tuples(st.floats(0, 800), st.floats(0, 600))


@given(st.dictionaries(st.text(min_size=1, max_size=8), points, max_size=20))
def test_names_keep_their_distance_and_their_order(tips):
    labels = arrange(tips, 100.0, 700.0, 20.0, 580.0, 20.0)
    assert sorted(label.text for label in labels) == sorted(tips)
    for left in (True, False):
        column = sorted((label.y, label.tip_y) for label in labels if label.left == left)
        heights = [y for y, _ in column]
        assert all(b - a >= 20.0 - 1e-9 for a, b in pairwise(heights))
        assert all(20.0 - 1e-9 <= y <= 580.0 + 1e-9 for y in heights)
        assert [t for _, t in column] == sorted(t for _, t in column)
