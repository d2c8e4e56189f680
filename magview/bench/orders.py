"""The two orders in which gap and opening are set, and why: told alike wherever it is told."""

from __future__ import annotations

from magview.spec.language import marked

ORDER = marked(
    "Gap by the contact screw first, then the opening by the backplate: the plate never changes the gap, so one pass "
    "does. The other order, opening by the screw and gap by the plate, moves both each time and is repeated."
)
"""Plate never changes the gap; screw changes gap and opening (common practice)."""
