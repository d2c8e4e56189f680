"""A workbench for setting an aircraft magneto with breaker contacts, and timing it to the engine."""

__version__ = "0.1.0"

CAUTION = (
    "A training and planning aid: treat the propeller as live; the maker's current manual and local rules govern."
)
"""Below what a terminal is told."""
