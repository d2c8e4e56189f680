"""Crank, pistons and coupling: when each cylinder fires, and which teeth to move.

Nothing here knows a cam. Begin reading in `coupling.py`.
"""
