"""Trials of plate and gap, the flank they tell of, and the plate position to try next.

Begin reading in `trial.py`.
"""
