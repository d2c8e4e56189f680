"""The virtual bench: one frozen state, the actions a person can take, and what the pictures show.

Here: `state` (what is), `actions` (the closed list) and `apply` (what each does), `store` (history, journal,
replay), `autosave`; results in words (`words`, `verdict`, `describe`, `advised`); pictures and plots as data
(`breaker_end`, `drive_end`, `crank_end`, `lead_picture`, `shapes`, `curves…`); drafts of files of one's own
(`own…`). Not here: Qt, files of jobs or exercises. Begin reading in `state.py`, then `apply.py`.

The drawing is the computation: the cam's outline is made from the lift curve and the arm stands where the linkage
puts it, so the gap on screen is the gap in the table; a test measures it in pixels. A lamp reading fixes the
rotor's angle at top dead centre (`Mounting.phase_deg`); crank, rotor, teeth, play and setting then move together as
on the aircraft, and the firing shown is derived, never stored. A sign becomes "clockwise" in `words` and nowhere
else. A draft keeps what was typed: text that is no number stays in it and is refused at its field.
"""
