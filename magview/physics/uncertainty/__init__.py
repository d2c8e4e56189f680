"""Uncertainty by the GUM: linear propagation, Monte Carlo, and readings with real instruments.

Begin reading in `propagation.py`.
"""
