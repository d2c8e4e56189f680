"""The practice room: exercises with hidden faults, instruments with their limits, attempts, marking, lessons.

Here: `exercise` (the file), `draws` and `faults` (from a seed to the magneto as found), `state`, `actions`, `apply`
(the room, truth included), `instruments` and `seen` (what may be read and shown), `attempt` (events, replay, file),
`evidence`, `goals`, `marking`, `debrief`, and lessons. Not here: the job sheet, Qt. Begin reading in `attempt.py`.

A hidden number is a hash of seed, magneto and fault, never the next of a generator: a fault added to an exercise
leaves the others as they were, and every machine draws alike. Every move is by so much and every reading is an
instrument's: no act takes an angle that only the truth knows. Marking replays the events and asks what was looked
at since the last act that could have changed it. `attempt.RULES` is raised whenever an attempt could replay or be
marked otherwise; an attempt under earlier rules is shown and not marked again.
"""
