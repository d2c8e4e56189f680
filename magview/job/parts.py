"""What a job sheet is made of: identities, limits, readings, and the stages of the trade (``magview-job/1``).

Every reading carries its unit in its name; left out (None) means that it was not read. Titles are what reports,
tables and forms call a field. What follows from readings (differences, verdicts) is never stored.
"""

from __future__ import annotations

from typing import Annotated, Any, Literal, Self

from pydantic import AfterValidator, Field, model_validator
from pydantic.fields import FieldInfo

from magview.spec.base import Model, Text
from magview.spec.language import marked, number, tr
from magview.spec.parse import parse_day

Line = Annotated[str, Field(max_length=120, pattern=r"^[^\p{Cc}]*$")]
Day = Annotated[str, Field(max_length=20), AfterValidator(parse_day)]
"""A calendar day as ISO 8601 writes it, or nothing."""

Deg = Annotated[float, Field(ge=-3600.0, le=3600.0)]
Offset = Annotated[float, Field(ge=-1000.0, le=1000.0)]
Size = Annotated[float, Field(ge=0.0, le=1000.0)]
Hours = Annotated[float, Field(ge=0.0, le=1e6)]
Speed = Annotated[float, Field(ge=0.0, le=20_000.0)]
Teeth = Annotated[int, Field(ge=-400, le=400)]
State = Literal["open", "done", "skipped"]


class _ToBeConfirmed:
    """Marks a check: confirmed, denied, or – None – not answered yet."""


Check = Annotated[bool | None, _ToBeConfirmed()]


def is_check(info: FieldInfo) -> bool:
    """Whether a field is a check, to be confirmed by a tick."""
    return any(isinstance(extra, _ToBeConfirmed) for extra in info.metadata)


def _f(title: str, default: Any = None) -> Any:
    return Field(default=default, title=title)


def title_in(info: FieldInfo, name: str) -> str:
    """What a field is called, in the present language; its name where it has no title."""
    return tr(info.title) if info.title else name


# ---------------------------------------------------------------------- whose it is


class Aircraft(Model):
    """The aircraft; free text."""

    registration: Line = _f(marked("Registration"), "")
    type: Line = _f(marked("Type"), "")
    hours_h: Hours | None = _f(marked("Hours"))


class EngineIdentity(Model):
    """The engine; free text."""

    type: Line = _f(marked("Type"), "")
    serial: Line = _f(marked("Serial no."), "")
    hours_h: Hours | None = _f(marked("Hours since overhaul"))


class MagnetoIdentity(Model):
    """The magneto; type and serial number tell it from every other (`history`)."""

    type: Line = _f(marked("Type"), "")
    serial: Line = _f(marked("Serial no."), "")
    position: Literal["left", "right", "single"] = _f(marked("Position"), "left")
    hours_h: Hours | None = _f(marked("Hours since overhaul"))


class Limits(Model):
    """What readings are judged by: from the files the bench works with, or entered from the maker's manual."""

    gap_low_mm: Size | None = _f(marked("Smallest gap allowed"))
    gap_high_mm: Size | None = _f(marked("Largest gap allowed"))
    mark_tolerance_mm: Size | None = _f(marked("Straightedge from the rim mark, either way"))
    left_btdc_deg: Deg | None = _f(marked("Left should fire"))
    right_btdc_deg: Deg | None = _f(marked("Right should fire"))
    timing_tolerance_deg: Size | None = _f(marked("Timing to the engine, either way"))
    synchronising_tolerance_deg: Size | None = _f(marked("Left against right, either way"))
    drop_low_rpm: Speed | None = _f(marked("Smallest drop on one magneto"))
    drop_rpm: Speed | None = _f(marked("Largest drop on one magneto"))
    drop_difference_rpm: Speed | None = _f(marked("Largest difference of the drops"))
    source: Line = _f(marked("Taken from"), "")

    @model_validator(mode="after")
    def _order(self) -> Self:
        gaps, drops = (self.gap_low_mm, self.gap_high_mm), (self.drop_low_rpm, self.drop_rpm)
        for words, (low, high) in (
            (marked("the smallest gap is {low} mm; it must not be above the largest, {high} mm"), gaps),
            (marked("the smallest drop is {low} rpm; it must not be above the largest, {high} rpm"), drops),
        ):
            if low is not None and high is not None and not low <= high:
                raise ValueError(tr(words, low=number(low, "g"), high=number(high, "g")))
        return self


class NextCheck(Model):
    """When the magneto is to be looked at again."""

    hours_h: Hours | None = _f(marked("At magneto hours"))
    day: Day = _f(marked("Or on"), "")


class ReadingErrors(Model):
    """How far one reading may be out to either side, by whoever takes it. Left out: see `drift_line.half_width`."""

    gap_mm: Annotated[float, Field(gt=0.0, le=10.0)] | None = _f(marked("Gap by blades, either way"))
    opening_deg: Annotated[float, Field(gt=0.0, le=45.0)] | None = _f(marked("Opening at the mark, either way"))
    firing_deg: Annotated[float, Field(gt=0.0, le=45.0)] | None = _f(marked("Firing by lamp and disc, either way"))


class Signature(Model):
    """Who answers for the work.

    `covers` is a digest of what was signed: a later change shows. `rules` counts the rules of signing up: a sheet of
    fewer than the present ones keeps its signature, and says so.
    """

    who: Line = _f(marked("Name"), "")
    licence_no: Line = _f(marked("Licence no."), "")
    day: Day = _f(marked("Date"), "")
    checked_by: Line = _f(marked("Independent check by"), "")
    checked_licence_no: Line = _f(marked("Licence no."), "")
    covers: Annotated[str, Field(max_length=64)] = ""
    rules: Annotated[int, Field(ge=1, le=1000)] = 1


# ---------------------------------------------------------------------- how sure


class Sure(Model):
    """One quantity's uncertainty, in the unit of the field it stands in (JCGM 100:2008)."""

    value: Offset
    expanded_uncertainty: Size
    coverage_factor: Annotated[float, Field(ge=0.0, le=1000.0)]
    coverage_probability: Annotated[float, Field(gt=0.0, lt=1.0)]
    low: Offset
    high: Offset
    probability_in_limits: Annotated[float, Field(ge=0.0, le=1.0)]
    matters_most: Line = ""


class Uncertainty(Model):
    """How sure the readings of a stage are."""

    opening_error_deg: Sure | None = _f(marked("Opening from the E-gap"))
    gap_mm: Sure | None = _f(marked("Largest gap"))
    left_btdc_deg: Sure | None = _f(marked("Left fires"))
    right_btdc_deg: Sure | None = _f(marked("Right fires"))
    difference_deg: Sure | None = _f(marked("Left error less right error"))


# ---------------------------------------------------------------------- stages


class Stage(Model):
    """One stage of the work: open, done, or skipped with a reason."""

    state: State = "open"
    reason: Text = ""
    """Why it was skipped."""
    note: Text = ""
    by: Line = ""

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

    place: Literal["engine", "bench"] | None = _f(marked("The magneto is"))
    """Not answered counts as on the engine."""
    propeller_treated_as_live: Check = _f(marked("Propeller treated as live; its arc kept clear"))
    fuel_off: Check = _f(marked("Fuel off"))
    mixture_cut_off: Check = _f(marked("Mixture cut off"))
    throttle_closed: Check = _f(marked("Throttle closed"))
    switch_off: Check = _f(marked("Ignition switch off, key out"))
    lead_grounded: Check = _f(marked("Switch leads on, to be proved at the next stage"))
    plugs_out: Check = _f(marked("Spark plugs out: at least one from every cylinder"))
    hanging_leads_clear: Check = _f(marked("Other spark plugs and hanging plug leads grounded, or kept clear"))
    wheels_chocked: Check = _f(marked("Wheels chocked, or aircraft tied down"))
    nobody_in_arc: Check = _f(marked("Nobody in the propeller's arc"))
    outlets_grounded: Check = _f(marked("On a bench: outlets covered, or secondary grounded through a test gap"))
    no_vapour: Check = _f(marked("On a bench: no solvent or fuel vapour near"))
    manual_at_hand: Check = _f(marked("The current manual and local rules at hand"))
    manual: Line = _f(marked("Manual and revision"), "")

    @property
    def on_bench(self) -> bool:
        """Whether the magneto is off its engine: then there is no propeller that it could move."""
        return self.place == "bench"


_ON_BENCH = ("outlets_grounded", "no_vapour")
"""What is confirmed of a magneto on a bench, besides the manual; everything else of one on its engine."""


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

    meter_grounded_switch_off: bool | None = _f(marked("Meter on the lead, switch off: grounded"))
    meter_grounded_switch_on: bool | None = _f(marked("Meter on the lead, switch on: grounded"))
    lamp_grounded_switch_off: bool | None = _f(marked("Lamp, lead on, switch off: grounded"))
    lamp_grounded_switch_on: bool | None = _f(marked("Lamp, lead on, switch on: grounded"))
    lamp_grounded_plug_out: bool | None = _f(marked("Lamp, lead pulled: grounded by the tab"))
    jumper_fitted: bool | None = _f(marked("Primary grounded by a jumper before the lead was pulled"))
    other_meter_grounded_switch_off: bool | None = _f(marked("Other magneto, meter, switch off: grounded"))
    other_meter_grounded_switch_on: bool | None = _f(marked("Other magneto, meter, switch on: grounded"))
    other_lamp_grounded_switch_off: bool | None = _f(marked("Other magneto, lamp, switch off: grounded"))
    other_lamp_grounded_switch_on: bool | None = _f(marked("Other magneto, lamp, switch on: grounded"))


class DeadCentre(Stage):
    """True top dead centre from a positive stop, and the stroke. What the disc says before its zero is negative."""

    first_stop_deg: Deg | None = _f(marked("Disc at the stop, one way"))
    second_stop_deg: Deg | None = _f(marked("Disc at the stop, the other way"))
    disc_reset: bool | None = _f(marked("Disc then set to zero at true top dead centre"))
    """If not, every later reading of the disc is corrected."""
    stroke: Literal["intake", "compression", "power", "exhaust"] | None = _f(
        marked("Stroke of the timing cylinder before it fires")
    )
    disc: Line = _f(marked("Disc"), "")


class Setting(Stage):
    """Where the breaker is set, and what that gives on lobe 1. Positive opening errors and offsets are late."""

    backplate_deg: Deg | None = _f(marked("Backplate"))
    screw_deg: Deg | None = _f(marked("Contact screw"))
    opening_error_deg: Deg | None = _f(marked("Opening from the E-gap, rotor"))
    mark_offset_mm: Offset | None = _f(marked("Straightedge from the rim mark"))
    gap_mm: Size | None = _f(marked("Largest gap"))
    pip_height_mm: Size | None = _f(marked("Pip on the contacts"))
    heel_wear_mm: Size | None = _f(marked("Wear of the heel"))
    instruments: Line = _f(marked("Read with"), "")


class AsFound(Setting):
    """As found: before anything is touched."""

    left_btdc_deg: Deg | None = _f(marked("Left fires"))
    right_btdc_deg: Deg | None = _f(marked("Right fires"))
    finger_at_no_1: bool | None = _f(marked("Finger at the timing cylinder there, its mark in the window"))


class Contacts(Stage):
    """Condition of the contacts."""

    pip_height_mm: Size | None = _f(marked("Pip on the contacts"))
    heel_wear_mm: Size | None = _f(marked("Wear of the heel"))
    clean: bool | None = _f(marked("Clean and dry"))
    aligned: bool | None = _f(marked("Faces meet squarely"))
    felt_oiled: bool | None = _f(marked("Cam felt oiled as the manual says"))
    dressed: bool | None = _f(marked("Faces dressed"))
    replaced: bool | None = _f(marked("Contacts replaced"))
    spring_n: Annotated[float, Field(ge=0.0, le=1000.0)] | None = _f(marked("Spring, at the contacts"))


class TrialRecord(Model):
    """One trial: the plate, the blades, and where it opened. A gap without an upper end: no blade was refused."""

    backplate_deg: Deg = Field(title=marked("Backplate"))
    gap_low_mm: Size = Field(title=marked("Gap at least"))
    gap_high_mm: Size | None = _f(marked("Gap at most"))
    opening_error_deg: Deg = _f(marked("Opening from the E-gap, rotor"), 0.0)

    @model_validator(mode="after")
    def _order(self) -> Self:
        if self.gap_high_mm is not None and not self.gap_low_mm <= self.gap_high_mm:
            raise ValueError(
                tr(
                    "the blade that passes is {low} mm; it must not be thicker than the one that does not, {high} mm",
                    low=number(self.gap_low_mm, "g"),
                    high=number(self.gap_high_mm, "g"),
                )
            )
        return self


class InternalTiming(Setting):
    """Internal timing as left, read again after tightening, with the trials that led there."""

    trials: tuple[TrialRecord, ...] = Field(default=(), max_length=200, title=marked("Trials"))
    planned_backplate_deg: Deg | None = _f(marked("Backplate planned"))
    planned_screw_deg: Deg | None = _f(marked("Contact screw planned"))
    planned_gap_mm: Size | None = _f(marked("Gap planned"))
    read_after_tightening: Check = _f(marked("Read again after tightening"))
    uncertainty: Uncertainty = Field(default_factory=Uncertainty.model_construct, title=marked("Uncertainty"))


class LobeReading(Model):
    """One lobe of the cam, by firing order."""

    opening_error_deg: Deg | None = _f(marked("Opening from its place, rotor"))
    gap_mm: Size | None = _f(marked("Largest gap"))
    dwell_deg: Deg | None = _f(marked("Contacts closed, rotor"))


class Lobes(Stage):
    """Every lobe of the cam."""

    lobes: tuple[LobeReading, ...] = Field(default=(), max_length=36, title=marked("Lobes"))


class Marks(Stage):
    """Marks before the magneto or its coupling is taken apart."""

    drive_flange_marked: Check = _f(marked("Drive flange marked"))
    disc_marked: Check = _f(marked("Disc marked"))
    magneto_flange_marked: Check = _f(marked("Magneto flange marked"))
    engine_marked: Check = _f(marked("Magneto marked on the engine's pad"))
    magneto_from_disc_teeth: Teeth | None = _f(marked("Magneto flange's mark from the disc's, with rotation"))
    disc_from_drive_teeth: Teeth | None = _f(marked("Disc's mark from the drive flange's, with rotation"))


class ToothShift(Stage):
    """Timing to the engine at the toothed coupling: read, planned, moved, read again. Teeth: with rotation."""

    side: Literal["left", "right"] = _f(marked("Magneto"), "left")
    reads_btdc_deg: Deg | None = _f(marked("Fires, as read"))
    wanted_btdc_deg: Deg | None = _f(marked("Wanted"))
    planned_magneto_teeth: Teeth | None = _f(marked("Planned: magneto flange on the disc"))
    planned_disc_teeth: Teeth | None = _f(marked("Planned: disc on the drive flange"))
    planned_btdc_deg: Deg | None = _f(marked("Planned: fires"))
    moved_magneto_teeth: Teeth | None = _f(marked("Moved: magneto flange on the disc"))
    moved_disc_teeth: Teeth | None = _f(marked("Moved: disc on the drive flange"))
    result_btdc_deg: Deg | None = _f(marked("Fires, afterwards"))


class Synchronising(Stage):
    """Both magnetos on the engine, and the finger of this one."""

    left_btdc_deg: Deg | None = _f(marked("Left fires"))
    right_btdc_deg: Deg | None = _f(marked("Right fires"))
    finger_at_no_1: bool | None = _f(marked("Finger at the timing cylinder there, its mark in the window"))
    uncertainty: Uncertainty = Field(default_factory=Uncertainty.model_construct, title=marked("Uncertainty"))


class Closing(Stage):
    """Closing checks. Each is to be confirmed."""

    instruments_off: Check = _f(marked("Timing light and straightedge off, no paper between the contacts"))
    lock_screws_tight: Check = _f(marked("Lock screw and clamp screws tight"))
    pins_fitted: Check = _f(marked("Coupling pins and split pins fitted"))
    nuts_torqued: Check = _f(marked("Nuts torqued as the manual says"))
    safety_wired: Check = _f(marked("Safety wire fitted"))
    plugs_refitted: Check = _f(marked("Spark plugs refitted and torqued as the manual says"))
    leads_connected: Check = _f(marked("Plug leads connected, each to its cylinder"))
    switch_lead_connected: Check = _f(marked("Switch leads connected"))
    no_jumper_left: Check = _f(marked("No jumper left on: with one the magneto is dead"))
    lead_grounded_switch_off: bool | None = _f(marked("Lead proved again, switch off: grounded"))
    lead_grounded_switch_on: bool | None = _f(marked("Lead proved again, switch on: grounded"))
    other_lead_grounded_switch_off: bool | None = _f(marked("Other magneto's lead again, switch off: grounded"))
    other_lead_grounded_switch_on: bool | None = _f(marked("Other magneto's lead again, switch on: grounded"))
    tools_counted: Check = _f(marked("Tools, timing pins and stop counted back"))
    chocks_decided: Check = _f(marked("Chocks left in place for the ground run, or taken away on purpose"))


class GroundRun(Stage):
    """Ground run after the work. A single magneto has no drop: there is no other to run on.

    Sudden and rough points to a plug or its lead, slow and smooth to the timing (FAA-H-8083-32B, ch. 4; common
    practice).
    """

    run_rpm: Speed | None = _f(marked("Engine speed"))
    drop_left_rpm: Speed | None = _f(marked("Drop, running on left"))
    runs_left: Literal["smooth", "rough"] | None = _f(marked("On left it runs"))
    drop_right_rpm: Speed | None = _f(marked("Drop, running on right"))
    runs_right: Literal["smooth", "rough"] | None = _f(marked("On right it runs"))
    dead_cut_checked: bool | None = _f(marked("Stops firing with the switch off, at idle"))


class Remarks(Stage):
    """Remarks and what is left to do."""

    text: Text = _f(marked("Remarks"), "")
