"""Presenting to a class.

Begin reading in `presenter.py`.
"""
