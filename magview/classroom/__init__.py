"""The class: sets of exercises, one code for everyone, and who needs help; without accounts or servers.

Here: `code` (characters with a check), `sets` (a set as code and as file), `names`, `key`, `desk`, `handed`,
`outbox`, `results`, `gather`, `summary`; worksheets, keys and handouts as documents. Not here: Qt. Begin reading in
`sets.py`.

A code draws what it drew when it was made: exercises that were changed since stand in ``resources/exercises/old``,
an edition a folder, and are used by their codes only.
"""
