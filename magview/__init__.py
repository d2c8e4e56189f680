"""A workbench for setting an aircraft magneto with breaker contacts, and timing it to the engine."""

__version__ = "0.1.0"
