"""Parts of a job sheet beside its stages: identities, limits, signature, and the uncertainty of a reading.

Every reading carries its unit in its name; left out (None) means that it was not read. Labels are what reports,
tables and forms call a field. What follows from readings (differences, verdicts) is never stored.
"""

from __future__ import annotations

from typing import Annotated, Literal, Self

from pydantic import AfterValidator, Field, model_validator
from pydantic.fields import FieldInfo

from magview.spec.base import Model
from magview.spec.fields import Choices, Quantity, Sign, may_say
from magview.spec.language import marked, tr
from magview.spec.parse import parse_day

Line = Annotated[str, Field(max_length=120, pattern=r"^[^\p{Cc}]*$")]
Day = Annotated[str, Field(max_length=20), AfterValidator(parse_day)]
"""A calendar day as ISO 8601 writes it, or nothing."""

_Deg = Annotated[float, Field(ge=-3600.0, le=3600.0)]
PLATE = Quantity("°", "plate", Sign.WITH_ROTATION)
OPENING = Quantity("°", "rotor", Sign.LATE)
FIRING = Quantity("°", "crank", Sign.BEFORE_TOP)
MARK = Quantity("mm", "", Sign.LATE)
LENGTH = Quantity("mm")
SPEED = Quantity("rpm")
MOVED = Quantity("teeth", "", Sign.WITH_ROTATION)

PlateDeg = Annotated[_Deg, PLATE]
ScrewDeg = Annotated[_Deg, Quantity("°", "screw", Sign.CLOSER)]
OpeningDeg = Annotated[_Deg, OPENING]
RotorDeg = Annotated[_Deg, Quantity("°", "rotor")]
FiringDeg = Annotated[_Deg, FIRING]
DiscDeg = Annotated[_Deg, Quantity("°", "crank", Sign.AFTER_ZERO)]
CrankTolerance = Annotated[float, Field(ge=0.0, le=1000.0), Quantity("°", "crank")]
Offset = Annotated[float, Field(ge=-1000.0, le=1000.0)]
LateMm = Annotated[Offset, MARK]
Size = Annotated[float, Field(ge=0.0, le=1000.0)]
SizeMm = Annotated[Size, LENGTH]
Hours = Annotated[float, Field(ge=0.0, le=1e6), Quantity("h")]
Speed = Annotated[float, Field(ge=0.0, le=20_000.0), SPEED]
Teeth = Annotated[int, Field(ge=-400, le=400), Quantity("teeth")]
TeethMoved = Annotated[Teeth, MOVED]
Side = Annotated[Literal["left", "right"], Choices((("left", marked("left")), ("right", marked("right"))))]


def title_in(info: FieldInfo, name: str) -> str:
    """The title of a field in the present language; its name where it has none."""
    return tr(info.title) if info.title else name


# ---------------------------------------------------------------------- whose it is


class Aircraft(Model):
    """The aircraft; free text."""

    registration: Line = may_say(marked("Registration"), marked("The aircraft's registration."), "")
    type: Line = may_say(marked("Type"), marked("The aircraft's type."), "")
    hours_h: Hours | None = may_say(marked("Hours"), marked("Flying hours of the aircraft."))


class EngineIdentity(Model):
    """The engine; free text."""

    type: Line = may_say(marked("Type"), marked("The engine's type, from its data plate."), "")
    serial: Line = may_say(marked("Serial no."), marked("The engine's serial number, from its data plate."), "")
    hours_h: Hours | None = may_say(marked("Hours since overhaul"), marked("Of the engine."))


class MagnetoIdentity(Model):
    """The magneto; type and serial number tell it from every other (`history`)."""

    type: Line = may_say(marked("Type"), marked("The magneto's type, from its data plate."), "")
    serial: Line = may_say(marked("Serial no."), marked("The magneto's serial number, from its data plate."), "")
    position: Annotated[
        Literal["left", "right", "single"],
        Choices((("left", marked("left")), ("right", marked("right")), ("single", marked("single")))),
    ] = may_say(marked("Position"), marked("Which of the engine's magnetos it is."), "left")
    hours_h: Hours | None = may_say(marked("Hours since overhaul"), marked("Of the magneto."))


class Limits(Model):
    """Limits for readings: from the files the bench works with, or entered from the maker's manual."""

    gap_low_mm: SizeMm | None = may_say(marked("Smallest gap allowed"), marked("Lower limit of the largest gap."))
    gap_high_mm: SizeMm | None = may_say(marked("Largest gap allowed"), marked("Upper limit of the largest gap."))
    mark_tolerance_mm: SizeMm | None = may_say(
        marked("Straightedge from the rim mark, either way"),
        marked("How far beside the mark the straightedge may point as the contacts open."),
    )
    left_btdc_deg: FiringDeg | None = may_say(
        marked("Left should fire"), marked("Where the manual has the left magneto fire.")
    )
    right_btdc_deg: FiringDeg | None = may_say(
        marked("Right should fire"), marked("Where the manual has the right magneto fire.")
    )
    timing_tolerance_deg: CrankTolerance | None = may_say(
        marked("Timing to the engine, either way"), marked("How far off its timing either magneto may fire.")
    )
    synchronising_tolerance_deg: CrankTolerance | None = may_say(
        marked("Left against right, either way"), marked("How far apart the two magnetos may fire.")
    )
    drop_low_rpm: Speed | None = may_say(
        marked("Smallest drop on one magneto"), marked("Smallest drop allowed on one magneto.")
    )
    drop_rpm: Speed | None = may_say(
        marked("Largest drop on one magneto"), marked("Largest drop allowed on one magneto.")
    )
    drop_difference_rpm: Speed | None = may_say(
        marked("Largest difference of the drops"), marked("How far the drops on left and right may differ.")
    )
    source: Line = may_say(marked("Taken from"), marked("Manual and page, or the file the limits come from."), "")

    @model_validator(mode="after")
    def _order(self) -> Self:
        gaps, drops = (self.gap_low_mm, self.gap_high_mm), (self.drop_low_rpm, self.drop_rpm)
        for words, (low, high) in (
            (marked("the smallest gap is {low} mm; it must not be above the largest, {high} mm"), gaps),
            (marked("the smallest drop is {low} rpm; it must not be above the largest, {high} rpm"), drops),
        ):
            if low is not None and high is not None and not low <= high:
                raise ValueError(tr(words, low=low, high=high))
        return self


class NextCheck(Model):
    """Time at which the magneto is to be looked at again."""

    hours_h: Hours | None = may_say(marked("At magneto hours"), marked("Hours of the magneto at the next check."))
    day: Day = may_say(marked("Or on"), marked("Day of the next check."), "")


class ReadingErrors(Model):
    """Half-widths of readings, by whoever takes them. Left out: see `drift_line.half_width`."""

    gap_mm: Annotated[float, Field(gt=0.0, le=10.0), Quantity("mm")] | None = may_say(
        marked("Gap by blades, either way"), marked("How far a gap read by blades may be out.")
    )
    opening_deg: Annotated[float, Field(gt=0.0, le=45.0), Quantity("°", "rotor")] | None = may_say(
        marked("Opening at the mark, either way"), marked("How far an opening read at the mark may be out.")
    )
    firing_deg: Annotated[float, Field(gt=0.0, le=45.0), Quantity("°", "crank")] | None = may_say(
        marked("Firing by lamp and disc, either way"), marked("How far a firing read by lamp and disc may be out.")
    )


class Signature(Model):
    """Signature: the person who answers for the work.

    `covers` is a digest of what was signed: a later change shows. `rules` counts the rules of signing up: a sheet of
    fewer than the present ones keeps its signature, and says so.
    """

    who: Line = may_say(marked("Name"), marked("Who answers for the work."), "")
    licence_no: Line = may_say(marked("Licence no."), marked("Of the person who signs."), "")
    day: Day = may_say(marked("Date"), marked("Day of the signature."), "")
    checked_by: Line = may_say(marked("Independent check by"), marked("A second person who looked at the work."), "")
    checked_licence_no: Line = may_say(marked("Licence no."), marked("Of the person who checked."), "")
    covers: Annotated[str, Field(max_length=64)] = may_say(
        marked("Covers"), marked("Digest of the sheet as it was signed: a later change shows."), ""
    )
    rules: Annotated[int, Field(ge=1, le=1000)] = may_say(
        marked("Rules"), marked("The rules of signing it was signed under, counted up."), 1
    )


# ---------------------------------------------------------------------- how sure


class Sure(Model):
    """One quantity's uncertainty, in the unit of the field it stands in (JCGM 100:2008)."""

    value: Offset = Field(title=marked("Value"), description=marked("Best estimate."))
    expanded_uncertainty: Size = Field(
        title=marked("Expanded uncertainty"), description=marked("Standard uncertainty times the coverage factor.")
    )
    coverage_factor: Annotated[float, Field(ge=0.0, le=1000.0)] = Field(
        title=marked("Coverage factor"), description=marked("By which the standard uncertainty was multiplied.")
    )
    coverage_probability: Annotated[float, Field(gt=0.0, lt=1.0)] = Field(
        title=marked("Coverage probability"), description=marked("How likely the interval holds the true value.")
    )
    low: Offset = Field(title=marked("Lower end"), description=marked("Lower end of the interval."))
    high: Offset = Field(title=marked("Upper end"), description=marked("Upper end of the interval."))
    probability_in_limits: Annotated[float, Field(ge=0.0, le=1.0)] = Field(
        title=marked("Chance of being in limits"), description=marked("Between 0 and 1, by JCGM 106:2012.")
    )
    matters_most: Line = may_say(marked("Matters most"), marked("The input that adds most to the uncertainty."), "")


class Uncertainty(Model):
    """Uncertainty of the readings of a stage."""

    opening_error_deg: Annotated[Sure | None, Quantity("°", "rotor", Sign.LATE)] = may_say(
        marked("Opening from the E-gap"), marked("How sure the opening error is.")
    )
    gap_mm: Annotated[Sure | None, Quantity("mm")] = may_say(
        marked("Largest gap"), marked("How sure the largest gap is.")
    )
    left_btdc_deg: Annotated[Sure | None, Quantity("°", "crank", Sign.BEFORE_TOP)] = may_say(
        marked("Left fires"), marked("How sure the left magneto's firing is.")
    )
    right_btdc_deg: Annotated[Sure | None, Quantity("°", "crank", Sign.BEFORE_TOP)] = may_say(
        marked("Right fires"), marked("How sure the right magneto's firing is.")
    )
    difference_deg: Annotated[Sure | None, Quantity("°", "crank")] = may_say(
        marked("Left error less right error"), marked("How sure the difference of the two magnetos is.")
    )
