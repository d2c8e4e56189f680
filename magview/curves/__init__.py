"""Plots as data: arrays and tables, used alike by screen, paper and class.

No Qt. Begin reading in `lift.py`.
"""
