"""The virtual bench: one frozen state, the actions a person can take, and results in words.

One store takes actions; `apply` says what each does; words are made of results here. Not here: pictures, plots, Qt,
files of jobs or exercises. Begin reading in `state.py`, then `apply.py`.

A lamp reading fixes the rotor's angle at top dead centre (`Mounting.phase_deg`); crank, rotor, teeth, play and
setting then move together as on the aircraft, and the firing shown is derived, never stored. A sign becomes
"clockwise" in `words` and nowhere else.
"""
