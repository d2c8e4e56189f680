"""What is decided of contacts, played through the practice acts.

FAA AC 43.13-1B, ch. 8 sect. 1, par. 8-19 (magneto inspection), g and h: points with deep pits or excessively burned
are discarded; a dull grey, sandblasted or frosted face is what is wanted; minor irregularities are not harmful,
neither are small pits or mounds that are not too pronounced (figures: normal contact, minor irregularities, well-
defined mound); in general no attempt is made to dress points, but procedures and limits of the manufacturer's manual
may be followed where it gives them. FAA-H-8083-32B, ch. 4: a thumbnail pressed to the felt shows whether it has oil;
oil is given only where it shows none.
"""

from __future__ import annotations

import pytest

from magview.practice import actions as do
from magview.practice.marking import mark
from tests.practice.graded import LEAVE, LOOK, done, exercise, with_grade

LEFT = (LOOK, LEAVE)
DRESSED = (LOOK, do.DressContacts(), LOOK)
RENEWED = (LOOK, do.RenewContacts(), do.WriteReading("running-in"), LOOK)

CIRCULAR = [
    # As found, manual gives a procedure for, decision, whether the circular has it so.
    ("frosted", (), LEFT, True),
    ("frosted", (), DRESSED, False),
    ("frosted", (), RENEWED, False),
    ("frosted", ("light", "mound"), DRESSED, False),
    ("light", (), LEFT, True),
    ("light", (), DRESSED, False),
    ("light", ("light",), DRESSED, True),
    ("light", ("light",), LEFT, True),
    ("mound", (), LEFT, False),
    ("mound", (), DRESSED, False),
    ("mound", (), RENEWED, True),
    ("mound", ("mound",), DRESSED, True),
    ("mound", ("mound",), RENEWED, True),
    ("mound", ("light",), DRESSED, False),
    ("pit", (), LEFT, False),
    ("pit", (), DRESSED, False),
    ("pit", ("light", "mound"), DRESSED, False),
    ("pit", (), RENEWED, True),
]


@pytest.mark.parametrize(("grade", "manual", "acts", "right"), CIRCULAR)
def test_a_decision_is_judged_as_the_circular_has_it(grade, manual, acts, right):
    marking = mark(done(with_grade(grade, *manual), *acts))
    assert (marking.percent == 100.0) is right, marking.rows[0].evidence
    assert marking.passed is right


@pytest.mark.parametrize(
    ("dry", "drops", "right"), [(True, 2, True), (True, 0, False), (False, 0, True), (False, 2, False)]
)
def test_a_felt_gets_oil_only_where_it_is_dry(dry, drops, right):
    on = exercise(
        faults=({"kind": "dry-felt"},) if dry else (), felt_drops=2, goals=({"goal": "secured", "weight": 1.0},)
    )
    given = [do.OilFelt(drops)] if drops else []
    assert (mark(done(on, do.PressFelt(), *given)).percent == 100.0) is right
