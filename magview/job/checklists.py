"""The base of every stage of a job sheet, and the stages that are lists of checks (``magview-job/1``)."""

from __future__ import annotations

from typing import Annotated, Literal, Self

from pydantic import Field, model_validator
from pydantic.fields import FieldInfo

from magview.job.parts import Line
from magview.spec.base import Model, Text
from magview.spec.fields import Choices, Ticked, may_say
from magview.spec.language import marked, tr

State = Annotated[
    Literal["open", "done", "skipped"],
    Choices((("open", marked("open")), ("done", marked("done")), ("skipped", marked("skipped")))),
]
Place = Annotated[
    Literal["engine", "bench"],
    Choices((("engine", marked("on its engine")), ("bench", marked("on a bench, off its engine")))),
]


Check = Annotated[
    bool | None,
    Ticked(),
    Field(description=marked("To be confirmed. Left out: not answered yet, which counts as not done.")),
]


def is_check(info: FieldInfo) -> bool:
    """Whether a field is a check, to be confirmed by a tick."""
    return any(isinstance(extra, Ticked) for extra in info.metadata)


class Stage(Model):
    """One stage of the work: open, done, or skipped with a reason."""

    state: State = may_say(marked("State"), marked("Open, done, or skipped with a reason."), "open")
    reason: Text = may_say(marked("Reason"), marked("Why it was skipped."), "")
    note: Text = may_say(marked("Note"), marked("Whatever the next person should know of this stage."), "")
    by: Line = may_say(marked("Done by"), marked("Who did this stage."), "")

    @model_validator(mode="after")
    def _skipped_for_a_reason(self) -> Self:
        if self.state == "skipped" and not self.reason.strip():
            raise ValueError(tr("reason is missing; a stage can be skipped only with a reason"))
        if self.state != "skipped" and self.reason:
            raise ValueError(tr("reason is given, but the stage is not skipped; write it as a note"))
        return self


class Cautions(Stage):
    """Making safe, a list: each is to be confirmed, and the stage cannot be skipped.

    A plug out of each cylinder takes away compression, not the spark (common practice); the rest is of
    FAA-H-8083-32B, ch. 4, and common practice.
    """

    place: Place | None = may_say(marked("The magneto is"), marked("Not answered counts as on the engine."))
    propeller_treated_as_live: Check = may_say(marked("Propeller treated as live; its arc kept clear"))
    fuel_off: Check = may_say(marked("Fuel off"))
    mixture_cut_off: Check = may_say(marked("Mixture cut off"))
    throttle_closed: Check = may_say(marked("Throttle closed"))
    switch_off: Check = may_say(marked("Ignition switch off, key out"))
    lead_grounded: Check = may_say(marked("Switch leads on, to be proved at the next stage"))
    plugs_out: Check = may_say(marked("Spark plugs out: at least one from every cylinder"))
    hanging_leads_clear: Check = may_say(marked("Other spark plugs and hanging plug leads grounded, or kept clear"))
    wheels_chocked: Check = may_say(marked("Wheels chocked, or aircraft tied down"))
    nobody_in_arc: Check = may_say(marked("Nobody in the propeller's arc"))
    outlets_grounded: Check = may_say(marked("On a bench: outlets covered, or secondary grounded through a test gap"))
    no_vapour: Check = may_say(marked("On a bench: no solvent or fuel vapour near"))
    manual_at_hand: Check = may_say(marked("The current manual and local rules at hand"))
    manual: Line = may_say(
        marked("Manual and revision"), marked("The current manual that governs, with its revision."), ""
    )

    @property
    def on_bench(self) -> bool:
        """Whether the magneto is off its engine: then there is no propeller that it could move."""
        return self.place == "bench"


_ON_BENCH = ("outlets_grounded", "no_vapour")
"""Cautions for a magneto on a bench, besides the manual; all others are for one on its engine."""


def checks(stage: Stage) -> tuple[str, ...]:
    """The fields of a stage that are to be confirmed by a tick."""
    fields = tuple(f for f, info in type(stage).model_fields.items() if is_check(info))
    if not isinstance(stage, Cautions):
        return fields
    if stage.on_bench:
        return (*_ON_BENCH, "manual_at_hand")
    return tuple(f for f in fields if f not in _ON_BENCH)


class SwitchLead(Stage):
    """Proof of the switch leads: what meter and lamp said. The lamp tells something only while the contacts are open.

    Either magneto makes the propeller live, so that the other one's lead is proved, too (trade: common practice).
    """

    meter_grounded_switch_off: bool | None = may_say(
        marked("Meter on the lead, switch off: grounded"), marked("A sound lead reads grounded.")
    )
    meter_grounded_switch_on: bool | None = may_say(
        marked("Meter on the lead, switch on: grounded"), marked("A sound lead reads open.")
    )
    lamp_grounded_switch_off: bool | None = may_say(
        marked("Lamp, lead on, switch off: grounded"),
        marked("A sound lead reads grounded. The lamp tells something only while the contacts are open."),
    )
    lamp_grounded_switch_on: bool | None = may_say(
        marked("Lamp, lead on, switch on: grounded"),
        marked("A sound lead reads open. The lamp tells something only while the contacts are open."),
    )
    lamp_grounded_plug_out: bool | None = may_say(
        marked("Lamp, lead pulled: grounded by the tab"), marked("Yes only where a tab inside grounds the primary.")
    )
    jumper_fitted: bool | None = may_say(
        marked("Primary grounded by a jumper before the lead was pulled"),
        marked("A pulled lead without a grounding tab makes the magneto live: a jumper first."),
    )
    other_meter_grounded_switch_off: bool | None = may_say(
        marked("Other magneto, meter, switch off: grounded"),
        marked("The other magneto makes the propeller live, too."),
    )
    other_meter_grounded_switch_on: bool | None = may_say(
        marked("Other magneto, meter, switch on: grounded"),
        marked("The other magneto makes the propeller live, too."),
    )
    other_lamp_grounded_switch_off: bool | None = may_say(
        marked("Other magneto, lamp, switch off: grounded"),
        marked("The other magneto makes the propeller live, too."),
    )
    other_lamp_grounded_switch_on: bool | None = may_say(
        marked("Other magneto, lamp, switch on: grounded"), marked("The other magneto makes the propeller live, too.")
    )


class Closing(Stage):
    """Closing checks. Each is to be confirmed."""

    instruments_off: Check = may_say(marked("Timing light and straightedge off, no paper between the contacts"))
    lock_screws_tight: Check = may_say(marked("Lock screw and clamp screws tight"))
    pins_fitted: Check = may_say(marked("Coupling pins and split pins fitted"))
    nuts_torqued: Check = may_say(marked("Nuts torqued as the manual says"))
    safety_wired: Check = may_say(marked("Safety wire fitted"))
    plugs_refitted: Check = may_say(marked("Spark plugs refitted and torqued as the manual says"))
    leads_connected: Check = may_say(marked("Plug leads connected, each to its cylinder"))
    switch_lead_connected: Check = may_say(marked("Switch leads connected"))
    no_jumper_left: Check = may_say(marked("No jumper left on: with one the magneto is dead"))
    lead_grounded_switch_off: bool | None = may_say(
        marked("Lead proved again, switch off: grounded"), marked("A sound lead reads grounded.")
    )
    lead_grounded_switch_on: bool | None = may_say(
        marked("Lead proved again, switch on: grounded"), marked("A sound lead reads open.")
    )
    other_lead_grounded_switch_off: bool | None = may_say(
        marked("Other magneto's lead again, switch off: grounded"), marked("A sound lead reads grounded.")
    )
    other_lead_grounded_switch_on: bool | None = may_say(
        marked("Other magneto's lead again, switch on: grounded"), marked("A sound lead reads open.")
    )
    tools_counted: Check = may_say(marked("Tools, timing pins and stop counted back"))
    chocks_decided: Check = may_say(marked("Chocks left in place for the ground run, or taken away on purpose"))
