"""The stages of a job sheet that hold readings, one class each (``magview-job/1``); their order is `sheet.STAGES`."""

from __future__ import annotations

from typing import Annotated, Any, Literal, Self

from pydantic import Field, model_validator

from magview.job.checklists import Check, Stage
from magview.job.parts import (
    DiscDeg,
    FiringDeg,
    LateMm,
    Line,
    OpeningDeg,
    PlateDeg,
    RotorDeg,
    ScrewDeg,
    Side,
    Size,
    SizeMm,
    Speed,
    Teeth,
    TeethMoved,
    Uncertainty,
)
from magview.spec.base import Model, Text
from magview.spec.fields import Choices, Quantity, may_say
from magview.spec.language import marked, tr

Stroke = Annotated[
    Literal["intake", "compression", "power", "exhaust"],
    Choices(
        (
            ("intake", marked("intake")),
            ("compression", marked("compression")),
            ("power", marked("power")),
            ("exhaust", marked("exhaust")),
        )
    ),
]
Run = Annotated[Literal["smooth", "rough"], Choices((("smooth", marked("smooth")), ("rough", marked("rough"))))]


def _read_with() -> Any:
    return may_say(marked("Read with"), marked("Blades, lamp, straightedge and disc that were used."), "")


class DeadCentre(Stage):
    """True top dead centre from a positive stop, and the stroke. The disc reads positive after its zero."""

    first_stop_deg: DiscDeg | None = may_say(
        marked("Disc at the stop, one way"), marked("Reading of the disc with the piston against the positive stop.")
    )
    second_stop_deg: DiscDeg | None = may_say(
        marked("Disc at the stop, the other way"),
        marked(
            "Reading with the piston against the stop from the other side; the middle of both is top dead centre."
        ),
    )
    disc_reset: bool | None = may_say(
        marked("Disc then set to zero at true top dead centre"),
        marked("If not, every later reading of the disc is corrected."),
    )
    stroke: Stroke | None = may_say(
        marked("Stroke of the timing cylinder before it fires"),
        marked("A magneto fires at the end of the compression stroke."),
    )
    disc: Line = may_say(marked("Disc"), marked("Which degree disc was used."), "")


class Setting(Stage):
    """Setting of the breaker, and what it gives on lobe 1. Positive opening errors and offsets are late."""

    backplate_deg: PlateDeg | None = may_say(marked("Backplate"), marked("Reading of the scale on the backplate."))
    screw_deg: ScrewDeg | None = may_say(
        marked("Contact screw"), marked("Where the contact screw stands, from its middle.")
    )
    opening_error_deg: OpeningDeg | None = may_say(
        marked("Opening from the E-gap, rotor"), marked("Where the contacts open, from the E-gap.")
    )
    mark_offset_mm: LateMm | None = may_say(
        marked("Straightedge from the rim mark"),
        marked("How far beside the rim mark the straightedge points as the contacts open."),
    )
    gap_mm: SizeMm | None = may_say(
        marked("Largest gap"), marked("Gap between the contacts at the top of lobe 1, by blades.")
    )
    pip_height_mm: SizeMm | None = may_say(
        marked("Pip on the contacts"), marked("How high metal has built up on one contact.")
    )
    heel_wear_mm: SizeMm | None = may_say(
        marked("Wear of the heel"), marked("How much of the rubbing face has gone since new.")
    )
    instruments: Line = _read_with()


class BothFire(Stage):
    """Firing of both magnetos on the engine, and the finger of this one."""

    left_btdc_deg: FiringDeg | None = may_say(
        marked("Left fires"), marked("Where the left magneto fires, by lamp and disc.")
    )
    right_btdc_deg: FiringDeg | None = may_say(
        marked("Right fires"), marked("Where the right magneto fires, by lamp and disc.")
    )
    finger_at_no_1: bool | None = may_say(
        marked("Finger at the timing cylinder there, its mark in the window"),
        marked("Whether the finger points to the timing cylinder as it fires."),
    )
    instruments: Line = _read_with()


class AsFound(BothFire, Setting):
    """As found: before anything is touched."""


class Contacts(Stage):
    """Condition of the contacts."""

    pip_height_mm: SizeMm | None = may_say(
        marked("Pip on the contacts"), marked("How high metal has built up on one contact.")
    )
    heel_wear_mm: SizeMm | None = may_say(
        marked("Wear of the heel"), marked("How much of the rubbing face has gone since new.")
    )
    clean: bool | None = may_say(marked("Clean and dry"), marked("No oil, no dirt between the faces."))
    aligned: bool | None = may_say(marked("Faces meet squarely"), marked("The faces meet over their whole width."))
    felt_oiled: bool | None = may_say(
        marked("Cam felt oiled as the manual says"),
        marked("The felt that wipes the cam, with as much oil as the manual says."),
    )
    dressed: bool | None = may_say(marked("Faces dressed"), marked("Whether the faces were dressed in this work."))
    replaced: bool | None = may_say(
        marked("Contacts replaced"), marked("Whether the contacts were replaced in this work.")
    )
    spring_n: Annotated[Size, Quantity("N")] | None = may_say(
        marked("Spring, at the contacts"), marked("Pull that just parts the contacts.")
    )
    instruments: Line = _read_with()


class TrialRecord(Model):
    """One trial: the plate, the blades, and where it opened. A gap without an upper end: no blade was refused."""

    backplate_deg: PlateDeg = Field(
        title=marked("Backplate"), description=marked("Reading of the scale on the backplate.")
    )
    gap_low_mm: SizeMm = Field(title=marked("Gap at least"), description=marked("The thickest blade that passes."))
    gap_high_mm: SizeMm | None = may_say(
        marked("Gap at most"), marked("The thinnest blade that does not pass; left out: no blade was refused.")
    )
    opening_error_deg: OpeningDeg = may_say(
        marked("Opening from the E-gap, rotor"), marked("Where the contacts open, from the E-gap."), 0.0
    )

    @model_validator(mode="after")
    def _order(self) -> Self:
        if self.gap_high_mm is not None and not self.gap_low_mm <= self.gap_high_mm:
            raise ValueError(
                tr(
                    "the blade that passes is {low} mm; it must not be thicker than the one that does not, {high} mm",
                    low=self.gap_low_mm,
                    high=self.gap_high_mm,
                )
            )
        return self


class InternalTiming(Setting):
    """Internal timing as left, read again after tightening, with the trials that led there."""

    trials: tuple[TrialRecord, ...] = Field(
        default=(),
        max_length=200,
        title=marked("Trials"),
        description=marked("Plate, blades and opening of each trial that led to the setting."),
    )
    planned_backplate_deg: PlateDeg | None = may_say(
        marked("Backplate planned"), marked("Where the plan puts the backplate.")
    )
    planned_screw_deg: ScrewDeg | None = may_say(
        marked("Contact screw planned"), marked("Where the plan puts the contact screw.")
    )
    planned_gap_mm: SizeMm | None = may_say(marked("Gap planned"), marked("The largest gap that the plan expects."))
    read_after_tightening: Check = may_say(marked("Read again after tightening"))
    uncertainty: Uncertainty = Field(
        default_factory=Uncertainty.model_construct,
        title=marked("Uncertainty"),
        description=marked("How sure the readings of this stage are."),
    )


class LobeReading(Model):
    """One lobe of the cam, by firing order."""

    opening_error_deg: OpeningDeg | None = may_say(
        marked("Opening from its place, rotor"), marked("Where the contacts open for this lobe, from its place.")
    )
    gap_mm: SizeMm | None = may_say(
        marked("Largest gap"), marked("Gap between the contacts at the top of this lobe, by blades.")
    )
    dwell_deg: RotorDeg | None = may_say(
        marked("Contacts closed, rotor"), marked("How long the contacts stay closed for this lobe.")
    )


class Lobes(Stage):
    """Every lobe of the cam."""

    lobes: tuple[LobeReading, ...] = Field(
        default=(), max_length=36, title=marked("Lobes"), description=marked("A row for each lobe, by firing order.")
    )
    instruments: Line = _read_with()


class Marks(Stage):
    """Marks before the magneto or its coupling is taken apart."""

    drive_flange_marked: Check = may_say(marked("Drive flange marked"))
    disc_marked: Check = may_say(marked("Disc marked"))
    magneto_flange_marked: Check = may_say(marked("Magneto flange marked"))
    engine_marked: Check = may_say(marked("Magneto marked on the engine's pad"))
    magneto_from_disc_teeth: Teeth | None = may_say(
        marked("Magneto flange's mark from the disc's, with rotation"),
        marked("How far the magneto flange's paint mark stands from the disc's."),
    )
    disc_from_drive_teeth: Teeth | None = may_say(
        marked("Disc's mark from the drive flange's, with rotation"),
        marked("How far the disc's paint mark stands from the drive flange's."),
    )


class ToothShift(Stage):
    """Timing to the engine at the toothed coupling: read, planned, moved, read again. Teeth: with rotation."""

    side: Side = may_say(marked("Magneto"), marked("The magneto that is moved."), "left")
    reads_btdc_deg: FiringDeg | None = may_say(
        marked("Fires, as read"), marked("Where it fires before anything is moved.")
    )
    wanted_btdc_deg: FiringDeg | None = may_say(marked("Wanted"), marked("Where the manual has it fire."))
    planned_magneto_teeth: TeethMoved | None = may_say(
        marked("Planned: B magneto flange on the disc"), marked("Teeth the plan moves the magneto flange by.")
    )
    planned_disc_teeth: TeethMoved | None = may_say(
        marked("Planned: A disc on the drive flange"), marked("Teeth the plan moves the disc by.")
    )
    planned_btdc_deg: FiringDeg | None = may_say(
        marked("Planned: fires"), marked("Where the plan has it fire afterwards.")
    )
    moved_magneto_teeth: TeethMoved | None = may_say(
        marked("Moved: B magneto flange on the disc"), marked("Teeth the magneto flange was moved by.")
    )
    moved_disc_teeth: TeethMoved | None = may_say(
        marked("Moved: A disc on the drive flange"), marked("Teeth the disc was moved by.")
    )
    result_btdc_deg: FiringDeg | None = may_say(
        marked("Fires, afterwards"), marked("Where it fires after the move, by lamp and disc.")
    )
    instruments: Line = _read_with()


class Synchronising(BothFire):
    """Both magnetos on the engine, and the finger of this one."""

    uncertainty: Uncertainty = Field(
        default_factory=Uncertainty.model_construct,
        title=marked("Uncertainty"),
        description=marked("How sure the readings of this stage are."),
    )


class GroundRun(Stage):
    """Ground run after the work. A single magneto has no drop: there is no other to run on.

    Sudden and rough points to a plug or its lead, slow and smooth to the timing (FAA-H-8083-32B, ch. 4; common
    practice).
    """

    run_rpm: Speed | None = may_say(marked("Engine speed"), marked("Engine speed at which the drops were read."))
    drop_left_rpm: Speed | None = may_say(
        marked("Drop, running on left"), marked("Loss of engine speed on the left magneto alone.")
    )
    runs_left: Run | None = may_say(
        marked("On left it runs"),
        marked("Sudden and rough points to a plug or its lead, slow and smooth to the timing."),
    )
    drop_right_rpm: Speed | None = may_say(
        marked("Drop, running on right"), marked("Loss of engine speed on the right magneto alone.")
    )
    runs_right: Run | None = may_say(
        marked("On right it runs"),
        marked("Sudden and rough points to a plug or its lead, slow and smooth to the timing."),
    )
    dead_cut_checked: bool | None = may_say(
        marked("Stops firing with the switch off, at idle"),
        marked("Whether the engine stops firing for a moment with the switch off."),
    )
    instruments: Line = _read_with()


class Remarks(Stage):
    """Remarks and what is left to do."""

    text: Text = may_say(marked("Remarks"), marked("Remarks, and what is left to do."), "")
