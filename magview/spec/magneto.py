"""Model of a magneto: the ``magview-magneto/1`` file."""

import math
from typing import Annotated, Any, Literal, Self

from pydantic import Field, SerializerFunctionWrapHandler, model_serializer, model_validator

from magview.spec.base import Length, Model, Name, Text
from magview.spec.breaker import Backplate, Breaker, DesignedSetting, EccentricScrew, ThreadedScrew
from magview.spec.cam import Cam, MeasuredProfile, lobe_overlap
from magview.spec.fields import Choices, Quantity, Sign, said
from magview.spec.language import marked, tr
from magview.spec.manual import as_tuples, with_plain_parts, without_plain_parts
from magview.spec.sources import Sources, check_sources

# fmt: off
Rotation = Literal["clockwise", "anticlockwise"]
Known = Literal["drawing", "manual"]
WAYS_ROUND = Choices((("clockwise", marked("clockwise")), ("anticlockwise", marked("anticlockwise"))))
Worn = Annotated[float, Field(ge=0.0, le=10.0), Quantity("mm")]
Torque = Annotated[float, Field(ge=0.0, le=100.0), Quantity("N·m")]
RotorSpeed = Annotated[float, Field(gt=0.0, le=20_000.0), Quantity("/min")]


class Marks(Model):
    """Straightedge along the cam's step against the marks on the housing's rim."""

    radius_mm: Annotated[Length, said(
        marked("Radius of the rim marks"),
        marked("From the cam's centre to the marks that the straightedge is laid against."),
        marked("Above 0: it turns degrees into what is seen at the rim."))]
    tolerance_mm: Annotated[Length, said(
        marked("Tolerance at the marks"),
        marked("How far beside the mark the straightedge may point when the contacts open."),
        marked("Above 0: the maker's figure, or the width of the mark."))]


class DistributorMarks(Model):
    """Marks by which the distributor's gears are meshed and No. 1 is seen."""

    gear_marks: Annotated[Name | None, said(
        marked("Marks of the gears"),
        marked("How the gears are marked for this rotation, as the manual has it."),
        marked("One line of up to 120 characters."))] = None
    window_mark: Annotated[Name | None, said(
        marked("Mark in the window"),
        marked("Mark in the timing window when No. 1 fires, as the manual has it."),
        marked("One line of up to 120 characters."))] = None


class Detent(Model):
    """The pull of the magnet on the rotor."""

    torque_nm: Annotated[Torque, said(
        marked("Greatest pull"),
        marked("Torque needed to turn the rotor out of neutral at its worst place."),
        marked("0 or more: force times arm."))]
    inertia_kg_m2: Annotated[float, Field(ge=1e-7, le=1.0), Quantity("kg·m²"), said(
        marked("Inertia of the rotor"),
        marked("How sluggish the rotor is, with what hangs on its shaft."),
        marked("Above 0, or it would swing without end of speed."))]
    damping_nms: Annotated[float, Field(ge=0.0, le=10.0), Quantity("N·m·s"), said(
        marked("Damping"),
        marked("Friction that grows with speed: what brings the swing to rest."),
        marked("0 or more; only the swing on the screen needs it."))]
    friction_nm: Annotated[Torque, said(
        marked("Dry friction"),
        marked("Torque that just moves the rotor at neutral: less pull than this moves nothing."),
        marked("0 or more. Not known? Leave it empty: the magnet is then taken to move it."))] = 0.0


class Electrical(Model):
    """Coil and magnet; illustrative unless measured. Each of the last three may be left out: nothing is made up."""

    coil_turns: Annotated[float, Field(ge=1.0, le=1e5), said(
        marked("Turns of the primary"),
        marked("How many turns of thick wire the primary winding has."),
        marked("1 or more."))]
    inductance_h: Annotated[float, Field(ge=1e-6, le=10.0), Quantity("H"), said(
        marked("Inductance of the primary"),
        marked("Read with a bridge, the rotor at neutral and the contacts held open."),
        marked("Above 0."))]
    resistance_ohm: Annotated[float, Field(ge=0.0, le=1e4), Quantity("Ω"), said(
        marked("Resistance of the primary"),
        marked("Read with an ohmmeter that resolves hundredths, leads taken off the reading."),
        marked("0 or more."))]
    peak_flux_wb: Annotated[float, Field(ge=0.0, le=1.0), Quantity("Wb"), said(
        marked("Greatest flux"),
        marked("Flux through the core at full register."),
        marked("0 or more; illustrative unless it was measured."))]
    third_harmonic: Annotated[float, Field(ge=-1.0, le=1.0), said(
        marked("Third harmonic of the flux"),
        marked("How far the flux departs from a plain sine: 0 is a plain one."),
        marked("Between −1 and 1; illustrative unless it was measured."))]
    spark_energy_mj: Annotated[Annotated[float, Field(gt=0.0, le=10_000.0), Quantity("mJ")] | None, said(
        marked("Energy a spark needs"),
        marked("Energy in the coil as the contacts part, for a spark that is sure."),
        marked("Above 0; drawn as a line over the energy the coil has."))] = None
    starting_rpm: Annotated[RotorSpeed | None, said(
        marked("Rotor speed at starting"),
        marked("Turns a minute of the rotor while the engine is being started."),
        marked("Above 0 and below the running speed."))] = None
    running_rpm: Annotated[RotorSpeed | None, said(
        marked("Rotor speed at full power"),
        marked("Turns a minute of the rotor while the engine runs at full power."),
        marked("Above the starting speed, at most 20000."))] = None
    # fmt: on

    @model_validator(mode="after")
    def _starts_slower(self) -> Self:
        start, run = self.starting_rpm, self.running_rpm
        if start is not None and run is not None and not start < run:
            raise ValueError(
                tr(
                    "starting_rpm is {start:g}; it must be below running_rpm, {run:g}, such as 100 and 2000",
                    start=start,
                    run=run,
                )
            )
        return self


# fmt: off
class Condition(Model):
    """Condition: the effects of wear and handling. Lobe lists are empty or have one value per lobe."""

    heel_wear_mm: Annotated[Worn, said(
        marked("Heel worn by"),
        marked("How much of the rubbing face has gone since new."),
        marked("0 or more; needs the length from pivot to heel, to know what wear does."))] = 0.0
    pip_height_mm: Annotated[Worn, said(
        marked("Pip on the contacts"),
        marked("How high metal has built up on one contact: a blade feels so much less gap."),
        marked("0 or more."))] = 0.0
    face_burn_mm: Annotated[Worn, said(
        marked("Contact faces burnt by"),
        marked("How much both faces have lost together: the gap is wider, and they open earlier."),
        marked("0 or more."))] = 0.0
    lobe_angle_error_deg: Annotated[
        tuple[Annotated[float, Field(ge=-30.0, le=30.0), Quantity("°", "cam", Sign.LATE)], ...], said(
            marked("Lobes late by"),
            marked("How far each lobe stands from its place, in cam degrees, late above 0."),
            marked("As many values as there are lobes, or none; lobes must not overlap."))] = ()
    lobe_lift_error_mm: Annotated[tuple[Annotated[float, Field(ge=-10.0, le=10.0), Quantity("mm")], ...], said(
        marked("Lobes high by"),
        marked("How much more than lobe 1 as new each lobe lifts the contacts."),
        marked("As many values as there are lobes, or none; some lift must be left."))] = ()
    screw_creep_deg: Annotated[float, Field(ge=-90.0, le=90.0), Quantity("°", "screw", Sign.CLOSER), said(
        marked("Screw creeps by"),
        marked("How far tightening the lock screw carries the contact screw along, closer above 0."),
        marked("Small: a quarter turn would be a broken screw."))] = 0.0
    coupling_backlash_deg: Annotated[float, Field(ge=0.0, le=30.0), Quantity("°", "rotor"), said(
        marked("Play of the coupling"),
        marked("How far the rotor can be rocked with the drive held still."),
        marked("0 or more."))] = 0.0


class Magneto(Model):
    """A magneto as its file describes it. Angles in degrees, lengths in millimetres."""

    format: Literal["magview-magneto/1"]
    name: Annotated[Name, said(
        marked("Name"),
        marked("What you call this magneto: type, number, aircraft."),
        marked("One line of up to 120 characters, so that it fits on sheets and titles."))]
    notes: Annotated[Text, said(
        marked("Notes"),
        marked("Anything that the next person should know."),
        marked("Up to 4000 characters."))] = ""
    known: Annotated[Known, Choices((
        ("manual", marked("the manual only: no cam, arm or screw")),
        ("drawing", marked("cam, arm and screw measured, or from a drawing")))), said(
            marked("Known by"),
            marked("Whether cam profile, breaker arm and contact screw are known, or only what a manual gives."),
            marked("With the manual only, leave those parts and the designed setting out; left out: by drawing."))
    ] = "drawing"
    rotation: Annotated[Rotation, WAYS_ROUND, said(
        marked("Rotation"),
        marked("Which way the rotor turns in service, seen from the drive end."),
        marked("Clockwise or anticlockwise; the breaker end sees the mirror image."))]
    poles: Annotated[int, Field(ge=2, le=12, multiple_of=2), said(
        marked("Poles of the rotor"),
        marked("How many magnet poles the rotor has: the magnet's pull holds it at as many places a turn."),
        marked("An even number, as north and south poles take turns."))]
    e_gap_deg: Annotated[float, Field(gt=0.0, lt=90.0), Quantity("°", "rotor"), said(
        marked("E-gap"),
        marked("Rotor degrees past neutral at which the contacts should open."),
        marked("Above 0 and short of full register, half of the way to the next neutral."))]
    gap_limits_mm: Annotated[
        tuple[
            Annotated[Length, said(
                marked("Smallest gap allowed"),
                marked("The maker's lower limit of the largest gap."),
                marked("Below the upper limit."))],
            Annotated[Length, said(
                marked("Largest gap allowed"),
                marked("The maker's upper limit of the largest gap."),
                marked("Above the lower limit."))],
        ],
        said(marked("Limits of the gap"), marked("Between which the largest gap must lie, by the manual.")),
    ]
    marks: Annotated[Marks, said(
        marked("Rim marks"), marked("The marks on the housing's rim that the straightedge is laid against."))]
    cam: Annotated[Cam, said(marked("Cam"), marked("The breaker cam: its lobes, and the profile of one."))]
    breaker: Annotated[Breaker, said(
        marked("Breaker arm"),
        marked("The arm that carries the moving contact, with the heel that rides on the cam."))]
    contact_screw: Annotated[EccentricScrew | ThreadedScrew, Field(discriminator="kind"), said(
        marked("Contact screw"), marked("The screw that moves the fixed contact, an eccentric or a thread."))]
    backplate: Annotated[Backplate, said(
        marked("Backplate"), marked("The plate that carries the breaker, turned in its slots to set the opening."))]
    designed_setting: Annotated[DesignedSetting, said(
        marked("Designed setting"),
        marked("Plate and gap, with the contact screw at 0, at which the contacts open exactly at the E-gap."))]
    detent: Annotated[Detent | None, said(
        marked("Pull of the magnet"), marked("How the magnet holds the rotor at neutral. May be left out."))] = None
    electrical: Annotated[Electrical | None, said(
        marked("Coil"), marked("Primary coil and magnet. May be left out."))] = None
    grounding_tab: Annotated[
        Annotated[bool, Choices((
            (True, marked("yes: the pulled lead leaves it grounded")),
            (False, marked("no: the pulled lead leaves it live"))))] | None,
        said(
            marked("Grounding tab"),
            marked("Whether a tab inside grounds the primary when the switch lead is pulled."),
            marked("Left empty: the program takes it that pulling the lead makes the magneto live."))] = None
    lead_terminal: Annotated[Name | None, said(
        marked("Terminal of the lead"),
        marked("Where the switch lead is joined on; a jumper to ground goes there."),
        marked("One line of up to 120 characters."))] = None
    capacitor_uf: Annotated[Annotated[float, Field(ge=0.001, le=10.0), Quantity("µF")] | None, said(
        marked("Capacitor"),
        marked("Capacitance across the contacts."),
        marked("Read with a capacitance meter, one end taken off."))] = None
    distributor: Annotated[DistributorMarks | None, said(
        marked("Distributor's marks"), marked("How its gears and window are marked. May be left out."))] = None
    # As new. Not validated, which would build the validator of a part before that of the whole.
    condition: Annotated[Condition, said(
        marked("Condition"), marked("Wear and damage; left out: as new."))] = Field(
            default_factory=Condition.model_construct)
    sources: Sources = ()
    # fmt: on

    @property
    def assumed(self) -> bool:
        """Whether cam, arm and screw are no more than plain proportions, for pictures alone."""
        return self.known == "manual"

    @model_validator(mode="before")
    @classmethod
    def _plain_parts(cls, data: Any) -> Any:
        if not isinstance(data, dict):
            return data
        data = as_tuples(data)  # JSON's lists, which here have lost their leave to stand for tuples
        return with_plain_parts(data) if data.get("known") == "manual" else data

    @model_serializer(mode="wrap")
    def _as_written(self, handler: SerializerFunctionWrapHandler) -> dict[str, Any]:
        data: dict[str, Any] = handler(self)
        return without_plain_parts(data) if self.assumed else data

    @model_validator(mode="after")
    def _sources_known(self) -> Self:
        check_sources(Magneto, self.sources)
        return self

    @model_validator(mode="after")
    def _ranges(self) -> Self:
        if not self.gap_limits_mm[0] < self.gap_limits_mm[1]:
            raise ValueError(_range_text("gap_limits_mm", self.gap_limits_mm))
        if not self.e_gap_deg < 180.0 / self.poles:
            raise ValueError(
                tr(
                    "e_gap_deg is {e_gap:g}; with {poles} poles it must be below {most:g}, where full register lies",
                    e_gap=self.e_gap_deg,
                    poles=self.poles,
                    most=180.0 / self.poles,
                )
            )
        for field, (low, high) in (
            ("contact_screw.range_deg", self.contact_screw.range_deg),
            ("backplate.range_deg", self.backplate.range_deg),
        ):
            if not low < high:
                raise ValueError(_range_text(field, (low, high)))
        low, high = self.contact_screw.range_deg
        if not low <= 0.0 <= high:
            raise ValueError(
                tr("contact_screw.range_deg is [{low:g}, {high:g}]; it must contain 0", low=low, high=high)
            )
        low, high = self.backplate.range_deg
        if not low <= self.designed_setting.backplate_deg <= high:
            raise ValueError(
                tr(
                    "designed_setting.backplate_deg is {backplate:g}; it must lie in "
                    "backplate.range_deg, [{low:g}, {high:g}]",
                    backplate=self.designed_setting.backplate_deg,
                    low=low,
                    high=high,
                )
            )
        return self

    @model_validator(mode="after")
    def _arm_reaches_cam(self) -> Self:
        profile, breaker = self.cam.profile, self.breaker
        if isinstance(profile, MeasuredProfile):
            if self.condition.heel_wear_mm and breaker.heel_arm_mm is None:
                raise ValueError(tr("condition.heel_wear_mm needs breaker.heel_arm_mm, to know what wear does"))
            return self
        for field in ("pivot", "pivot_distance_mm", "heel_arm_mm", "heel_radius_mm", "pivot_bearing_deg"):
            if getattr(breaker, field) is None:
                raise ValueError(
                    tr("breaker.{field} is missing; only a measured profile can do without it", field=field)
                )
        assert breaker.pivot_distance_mm and breaker.heel_arm_mm and breaker.heel_radius_mm
        top = profile.base_radius_mm + profile.lift_mm
        if not breaker.pivot_distance_mm > top:
            raise ValueError(
                tr(
                    "breaker.pivot_distance_mm is {distance:g}; the pivot must stand outside the "
                    "lobe's top, {top:g} mm from the cam's centre",
                    distance=breaker.pivot_distance_mm,
                    top=top,
                )
            )
        near = abs(breaker.pivot_distance_mm - breaker.heel_arm_mm)
        far = breaker.pivot_distance_mm + breaker.heel_arm_mm
        for radius in (profile.base_radius_mm + breaker.heel_radius_mm, top + breaker.heel_radius_mm):
            # With a hair to spare, so that no rounding takes an arc cosine beyond its range.
            if not near * (1 + 1e-9) < radius < far * (1 - 1e-9):
                raise ValueError(
                    tr(
                        "breaker.heel_arm_mm is {arm:g}; with it the heel reaches from {near:g} to "
                        "{far:g} mm of the cam's centre, and must reach {radius:g} mm",
                        arm=breaker.heel_arm_mm,
                        near=near,
                        far=far,
                        radius=radius,
                    )
                )
        return self

    @model_validator(mode="after")
    def _setting_fits_lift(self) -> Self:
        if not self.designed_setting.gap_mm < self.top_lift_mm:
            raise ValueError(
                tr(
                    "designed_setting.gap_mm is {gap:g}; it must be below the contact lift at the top of "
                    "the lobe, {top_lift:.4g} mm",
                    gap=self.designed_setting.gap_mm,
                    top_lift=self.top_lift_mm,
                )
            )
        return self

    @model_validator(mode="after")
    def _condition_fits_cam(self) -> Self:
        lobes = len(self.cam.lobe_peaks_deg)
        for field in ("lobe_angle_error_deg", "lobe_lift_error_mm"):
            values = getattr(self.condition, field)
            if len(values) not in (0, lobes):
                raise ValueError(
                    tr(
                        "condition.{field} has {count} values; it must have one for each of the {lobes} lobes",
                        field=field,
                        count=len(values),
                        lobes=lobes,
                    )
                )
        for i, error in enumerate(self.condition.lobe_lift_error_mm):
            if not self.top_lift_mm + error > 0.001:
                raise ValueError(
                    tr(
                        "condition.lobe_lift_error_mm takes {error:g} mm off lobe {lobe}, which has only "
                        "{top_lift:.4g} mm of contact lift",
                        error=error,
                        lobe=i + 1,
                        top_lift=self.top_lift_mm,
                    )
                )
        if self.condition.lobe_angle_error_deg:
            overlap = lobe_overlap(self.cam, self.condition.lobe_angle_error_deg)
            if overlap is not None:
                raise ValueError(tr("condition.lobe_angle_error_deg: {overlap}", overlap=overlap))
        return self

    @property
    def top_lift_mm(self) -> float:
        """Contact lift at the top of a lobe as new [mm]: K·(γ at the top − γ at the base circle)."""
        profile, breaker = self.cam.profile, self.breaker
        if isinstance(profile, MeasuredProfile):
            return max(profile.contact_lift_mm)
        assert breaker.pivot_distance_mm and breaker.heel_arm_mm and breaker.heel_radius_mm

        def arm_angle(radius: float) -> float:
            a, d = breaker.heel_arm_mm or 0.0, breaker.pivot_distance_mm or 0.0
            return math.acos((a * a + d * d - radius * radius) / (2 * a * d))

        base = profile.base_radius_mm + breaker.heel_radius_mm
        return breaker.contact_arm_mm * (arm_angle(base + profile.lift_mm) - arm_angle(base))

    @property
    def compensated(self) -> bool:
        """Whether the lobes stand at unequal spacing, or are not one per spark of a rotor turn."""
        peaks = self.cam.lobe_peaks_deg
        uniform = all(abs(p - i * 360.0 / len(peaks)) < 1e-6 for i, p in enumerate(peaks))
        return not (uniform and abs(len(peaks) * self.cam.turns_per_rotor_turn - self.poles) < 1e-6)


def _range_text(field: str, bounds: tuple[float, float]) -> str:
    return tr(
        "{field} is [{low:g}, {high:g}]; the first must be below the second",
        field=field,
        low=bounds[0],
        high=bounds[1],
    )
