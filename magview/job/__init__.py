"""The job sheet of a real magneto on a real engine: from cautions to signature, kept, printed, compared.

Here: `parts` and `stages` (readings, each with its unit in its name), `sheet` and `signing`, `requirements` and
`derived`, `danger`, `judge`, `status`, `feeds` (from the bench), `store`, `document`, `shift_plan`, `history`. Not
here: practice, Qt. Begin reading in `sheet.py`, then `judge.py`.

What follows from readings is not stored: verdicts, differences and "finished" are derived each time, and a
signature is a digest of what was signed, so that a later change shows. History stands in the sheet's own file, so
that one atomic replacement commits both; a step that cannot be written stays in the store and is tried again; what
another program wrote is never written over unasked.
"""
