"""Heel and contacts over running hours: what a setting becomes.

Begin reading in `prediction.py`.
"""
