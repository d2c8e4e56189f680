"""Presenting the bench to a class.

Begin reading in `presenter.py`.
"""
