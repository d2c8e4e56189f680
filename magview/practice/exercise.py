"""Model of an exercise: the ``magview-exercise/1`` file.

A magneto, alone or on its engine; hidden faults given as ranges from which a seed draws; the instruments on the
tray; what counts as done, with weights; hints; a guide to the time it takes.
"""

from __future__ import annotations

from collections import Counter
from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from magview.bench.state import Side
from magview.practice.exercise_parts import GOALS_OF_ENGINE, NEED_ENGINE, Fault, Goal, Start, StoryByWay, Tray
from magview.spec.base import Model, Name, Text
from magview.spec.engine import Installation
from magview.spec.fields import Choices, Quantity, said
from magview.spec.language import marked, tr
from magview.spec.magneto import Magneto


# fmt: off
class Exercise(Model):
    """An exercise as its file describes it."""

    format: Literal["magview-exercise/1"]
    rules: Annotated[Literal[1, 2], said(
        marked("Rules"),
        marked("By which rules it is drawn and marked. 2: contacts are graded and the right decision counts, "
               "dressing takes metal off, plugs taken out leave their leads hanging. Closed up means all that was "
               "opened or clipped on."))] = 1
    name: Annotated[Name, said(marked("Name"), marked("Name of the exercise."))]
    level: Annotated[int, Field(ge=1, le=5), said(
        marked("Level, 1 to 5"), marked("How hard it is; 1 is the easiest."))]
    story: Annotated[Text, said(
        marked("Story: what is told of the case"), marked("The case, as the trainee is told it."))]
    story_by_way: Annotated[StoryByWay | None, said(
        marked("Story by way"),
        marked("Words told after it, by the way of the drawn fault (on the first magneto that has it)."))] = None
    task: Annotated[Text, said(
        marked("Task: what is to be done"), marked("The task, for the trainee."))]
    hints: Annotated[tuple[Text, ...], Field(max_length=12), said(
        marked("Hints, one a line"), marked("Given one by one when they are asked for."))] = ()
    minutes: Annotated[float, Field(gt=0.0, le=600.0), Quantity("min"), said(
        marked("Minutes, a guide"), marked("A guide; time is not marked."))]
    magneto: Annotated[Magneto | None, said(
        marked("Magneto"), marked("The magneto alone; left out where there is an installation."))] = None
    installation: Annotated[Installation | None, said(
        marked("Installation"), marked("The magneto on its engine; left out where it stands alone."))] = None
    both_sides: Annotated[bool, said(
        marked("Both magnetos of the engine"), marked("Both of an engine, alike but for their faults."))] = False
    start: Annotated[Start, said(marked("As it is found"), marked("How the trainee finds things."))] = Start()
    tray: Annotated[Tray, said(marked("On the tray"), marked("The instruments that lie ready."))]
    faults: Annotated[tuple[Fault, ...], Field(max_length=40), said(
        marked("Faults"), marked("Faults, drawn from the seed."))] = ()
    goals: Annotated[tuple[Goal, ...], Field(min_length=1, max_length=30), said(
        marked("Goals"), marked("Goals, each with its weight."))]
    pass_percent: Annotated[float, Field(ge=1.0, le=100.0), Quantity("%"), said(
        marked("Marks needed"), marked("Of all marks, to pass."))] = 80.0
    dressing_allowed: Annotated[
        tuple[Literal["light", "mound"], ...], Field(max_length=2),
        Choices((("light", marked("light marks may be dressed")), ("mound", marked("a mound may be dressed")))), said(
            marked("Dressing"),
            marked("What this manual gives a procedure and limits to dress; left out: nothing is dressed."))] = ()
    felt_drops: Annotated[Annotated[int, Field(ge=1, le=20)] | None, said(
        marked("Drops of oil for a dry felt"),
        marked("How much oil this manual gives a dry felt; left out: the felt is not asked for."))] = None
    # fmt: on

    @property
    def sides(self) -> tuple[Side, ...]:
        """The magnetos to work on; ("left",) for one that stands for itself."""
        if self.both_sides:
            return ("left", "right")
        return ("right",) if self.installation is not None and self.installation.position == "right" else ("left",)

    @property
    def unit(self) -> Magneto:
        """The magneto, as its own file has it."""
        if self.installation is not None:
            return self.installation.magneto
        assert self.magneto is not None  # the validator saw to it
        return self.magneto

    @model_validator(mode="after")
    def _fits_together(self) -> Self:
        if (self.magneto is None) == (self.installation is None):
            raise ValueError(tr("magneto or installation: an exercise has one of the two"))
        if self.both_sides and (self.installation is None or self.installation.position == "single"):
            raise ValueError(tr("both_sides needs an installation with two magnetos"))
        if self.unit.assumed:
            raise ValueError(tr("magneto: an exercise needs cam, arm and screw; this one has its manual only"))
        if self.installation is not None and not self.installation.toothed:
            raise ValueError(tr("installation: an exercise is timed by a toothed disc, and this one has none"))
        if self.installation is None:
            for i, fault in enumerate(self.faults):
                if fault.kind in NEED_ENGINE:
                    raise ValueError(
                        tr("faults[{i}].kind is {kind}, which needs an installation", i=i, kind=fault.kind)
                    )
            for i, goal in enumerate(self.goals):
                if goal.goal in GOALS_OF_ENGINE or goal.reading in ("firing", "disc-zero"):
                    raise ValueError(
                        tr("goals[{i}] is {goal} of an engine, which needs an installation", i=i, goal=goal.goal)
                    )
        self._check_sides()
        self._check_rules()
        self._check_lead()
        return self

    def _check_rules(self) -> None:
        kinds = {fault.kind for fault in self.faults}
        if {"pip", "contacts"} <= kinds:
            raise ValueError(tr("faults has both pip and contacts; contacts draws a mound of its own"))
        if "dry-felt" in kinds and self.felt_drops is None:
            raise ValueError(
                tr("faults has dry-felt, which needs felt_drops: how much oil the manual gives a dry felt")
            )
        if self.rules < 2:
            return
        for i, goal in enumerate(self.goals):
            taken = goal.goal == "gap" or (goal.goal == "opening" and not self.unit.compensated)
            if goal.every_lobe and not taken:
                raise ValueError(
                    tr(
                        "goals[{i}].every_lobe is true for {goal}; it is for gap, and for opening where the cam is "
                        "not compensated",
                        i=i,
                        goal=goal.goal,
                    )
                )

    def _check_lead(self) -> None:
        for i, fault in enumerate(self.faults):
            if "tab" in fault.among and self.unit.grounding_tab is False:
                raise ValueError(tr("faults[{i}].among has tab, and this magneto has no grounding tab", i=i))
            alone = self.installation is None or self.installation.position == "single"
            if "crossed" in fault.among and alone:
                raise ValueError(tr("faults[{i}].among has crossed, which needs an engine with two magnetos", i=i))

    def _check_sides(self) -> None:
        given = [(tr("faults[{i}]", i=i), f.side) for i, f in enumerate(self.faults)]
        given += [(tr("goals[{i}]", i=i), g.side) for i, g in enumerate(self.goals)]
        for what, side in given:
            if side is not None and side not in self.sides:
                raise ValueError(
                    tr("{what}.side is {side}, a magneto this exercise does not have", what=what, side=side)
                )
        lobes = len(self.unit.cam.lobe_peaks_deg)
        for i, fault in enumerate(self.faults):
            if fault.lobe is not None and fault.lobe > lobes:
                raise ValueError(
                    tr("faults[{i}].lobe is {lobe}; the cam has {lobes}", i=i, lobe=fault.lobe, lobes=lobes)
                )
        if any(g.goal == "synchronised" for g in self.goals) and not self.both_sides:
            raise ValueError(tr("goals: synchronised needs both_sides"))
        # One draw for each kind and magneto: a second of the same name would be drawn alike.
        drawn = Counter((f.kind, side) for f in self.faults for side in self.sides if f.side in (None, side))
        twice = next((f"{kind} ({side})" for (kind, side), n in drawn.items() if n > 1), None)
        if twice is not None:
            raise ValueError(tr("faults has {twice} twice; give each kind once for a magneto", twice=twice))
