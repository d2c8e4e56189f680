"""Primary circuit, coil and magnet: what grounds it, what it breaks, and how the magnet pulls.

Begin reading in `circuit.py`.
"""
