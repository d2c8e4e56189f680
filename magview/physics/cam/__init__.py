"""Cam, breaker arm and contacts: lift, opening angle, largest gap, and lifts traced from a real cam.

Nothing here knows a coupling, an engine or electricity. Begin reading in `setting.py`.
"""
