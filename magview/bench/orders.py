"""The two orders in which gap and opening are set, and why: told alike wherever it is told."""

from __future__ import annotations

from magview.spec.language import marked

ORDERS = marked(
    "Gap by the contact screw first, then opening by the backplate ends in one pass: the plate never changes the "
    "gap. Opening by the screw, then gap by the plate repeats: the screw changes both. Both orders are used."
)
"""Plate never changes the gap; screw changes gap and opening (common practice)."""
