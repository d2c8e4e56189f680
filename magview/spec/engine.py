"""Models of an engine and an installation: ``magview-engine/1`` and ``magview-installation/1``."""

from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from magview.spec.base import Angle, Length, LengthOrZero, Model, Name, SpecError
from magview.spec.fields import Choices, Quantity, Sign, said
from magview.spec.language import marked, tr
from magview.spec.magneto import WAYS_ROUND, Magneto, Rotation
from magview.spec.sources import Sources, check_sources

# fmt: off
Revs = Annotated[float, Field(ge=0.0, le=20_000.0), Quantity("rpm")]
"""Crank turns per minute [rpm]."""

CRANK_DEG = Quantity("°", "crank")
Btdc = Annotated[float, Field(ge=-60.0, le=90.0), Quantity("°", "crank", Sign.BEFORE_TOP)]
Tolerance = Annotated[float, Field(gt=0.0, le=30.0), CRANK_DEG]
Cylinder = Annotated[int, Field(ge=1, le=36)]

EngineView = Literal["propeller", "rear"]
"""The end an engine is looked at from: the propeller's, which drives; or the rear, where the accessories are."""


class FiringBtdc(Model):
    """Angle at which each magneto fires [crank deg before top dead centre], larger = earlier."""

    left: Annotated[Btdc, said(
        marked("Left magneto fires before top dead centre"),
        marked("Crank degrees before top dead centre at which the left magneto should fire No. 1."),
        marked("Larger is earlier; staggered settings, left unlike right, are allowed."))]
    right: Annotated[Btdc, said(
        marked("Right magneto fires before top dead centre"),
        marked("Crank degrees before top dead centre at which the right magneto should fire No. 1."),
        marked("An engine with a single magneto has the same figure twice."))]


class Articulation(Model):
    """A master rod and link rods. Knuckle angles by cylinder number, from the master rod's axis, in the
    direction of rotation; left out: the angle between the two cylinders' axes."""

    master_cylinder: Annotated[Cylinder, said(
        marked("Cylinder of the master rod"),
        marked("The cylinder whose rod carries all others."),
        marked("One of the engine's cylinders."))]
    knuckle_radius_mm: Annotated[LengthOrZero, said(
        marked("Radius of the knuckle pins"),
        marked("From the crank pin's centre to the pins of the link rods."),
        marked("0 or more; 0 gives evenly spaced dead centres."))]
    link_rod_mm: Annotated[Length, said(
        marked("Link rods"),
        marked("From the knuckle pin's centre to the piston pin's."),
        marked("Longer than half the stroke and the knuckle radius together."))]
    knuckle_angles_deg: Annotated[tuple[Angle, ...] | None, said(
        marked("Angles of the knuckle pins"),
        marked("By cylinder number, from the master rod's axis in the direction of rotation."),
        marked("One for each cylinder, or none: then they stand as the cylinders do."))] = None


class Engine(Model):
    """A four-stroke piston engine as its file describes it (guide: theory-engine)."""

    format: Literal["magview-engine/1"]
    name: Annotated[Name, said(
        marked("Name"),
        marked("What you call this engine: type, number, aircraft."),
        marked("One line of up to 120 characters."))]
    cylinders: Annotated[Cylinder, said(
        marked("Cylinders"), marked("How many cylinders the two magnetos fire."), marked("A whole number."))]
    arrangement: Annotated[
        Literal["radial", "inline", "opposed", "vee"],
        Choices((
            ("radial", marked("radial")), ("inline", marked("in line")), ("opposed", marked("opposed")),
            ("vee", marked("vee")))),
        said(
            marked("Arrangement"),
            marked("How the cylinders stand round the crank."),
            marked("Only a radial engine can have link rods on a master rod."))]
    firing_order: Annotated[tuple[int, ...], said(
        marked("Firing order"),
        marked("The cylinders in the order they fire, such as 1-3-5-2-4."),
        marked("Begins with 1 and names each cylinder once."))]
    firing_btdc_deg: Annotated[FiringBtdc, said(
        marked("Timing"), marked("Where each magneto should fire, crank degrees before top dead centre."))]
    timing_tolerance_deg: Annotated[Tolerance, said(
        marked("Timing tolerance"),
        marked("How far off the wanted timing either magneto may fire, either way."),
        marked("Above 0: no reading is ever exact."))]
    synchronising_tolerance_deg: Annotated[Tolerance, said(
        marked("Synchronising tolerance"),
        marked("How far apart the two magnetos may fire, beyond a wanted stagger."),
        marked("Above 0: no reading is ever exact."))]
    stroke_mm: Annotated[Length, said(
        marked("Stroke"),
        marked("How far the piston travels from one dead centre to the other."),
        marked("Above 0, and below twice the rod's length."))]
    rod_mm: Annotated[Length, said(
        marked("Connecting rod"),
        marked("From the centre of its big end to that of its piston pin; the master rod's in a radial."),
        marked("Longer than half the stroke, or the crank could not turn."))]
    rotation: Annotated[Rotation, WAYS_ROUND, said(
        marked("Rotation of the crank"),
        marked("Which way the crank turns, seen from the end that the next entry names."),
        marked("Clockwise or anticlockwise."))]
    rotation_seen_from: Annotated[
        EngineView,
        Choices((("propeller", marked("the propeller end")), ("rear", marked("the rear end")))),
        said(
            marked("Rotation is seen from"),
            marked("Engine manuals often mean the rear, where the accessories are. A magneto's own plate means "
                   "the magneto's drive end. Left out: the propeller end."),
            marked("The propeller end or the rear end; seen from the other it is the other way round.")),
    ] = "propeller"
    timing_cylinder: Annotated[Cylinder, said(
        marked("Timing cylinder"),
        marked("The cylinder whose piston gives top dead centre; the manual names it, most often No. 1. "
               "The bench takes No. 1 alone; practice and job sheet take any."),
        marked("One of the engine's cylinders; left empty: No. 1."))] = 1
    articulation: Annotated[Articulation | None, said(
        marked("Link rods"), marked("Master rod and link rods of a radial engine. May be left out."))] = None
    drop_rpm: Annotated[
        tuple[
            Annotated[Revs, said(
                marked("Smallest drop on one magneto"),
                marked("Smallest loss of engine speed on one magneto alone, in turns per minute."),
                marked("Above 0: with no drop the other magneto is probably not grounded."))],
            Annotated[Revs, said(
                marked("Largest drop on one magneto"),
                marked("Largest loss of engine speed on one magneto alone, in turns per minute."),
                marked("Above the smallest drop."))],
        ] | None,
        said(
            marked("Drop on one magneto"),
            marked("Smallest and largest drop at the ground run. Left out: only a drop of nothing is judged.")),
    ] = None
    drop_difference_rpm: Annotated[Revs | None, said(
        marked("Largest difference of the drops"),
        marked("How far the drops on left and right may differ, in turns per minute."),
        marked("0 or more."))] = None
    sources: Sources = ()
    # fmt: on

    def rotation_from(self, end: EngineView) -> Rotation:
        """Direction of the crank seen from an end, whichever end the file names."""
        if end == self.rotation_seen_from:
            return self.rotation
        return "anticlockwise" if self.rotation == "clockwise" else "clockwise"

    @model_validator(mode="after")
    def _sources_known(self) -> Self:
        check_sources(Engine, self.sources)
        return self

    @model_validator(mode="after")
    def _drops_in_order(self) -> Self:
        if self.drop_rpm is not None and not 0.0 < self.drop_rpm[0] < self.drop_rpm[1]:
            low, high = self.drop_rpm
            raise ValueError(
                tr(
                    "drop_rpm is {low:g} to {high:g}; the smallest drop must be above 0 and below the largest, such "
                    "as 40 to 120",
                    low=low,
                    high=high,
                )
            )
        return self

    @model_validator(mode="after")
    def _consistent(self) -> Self:
        n = self.cylinders
        if sorted(self.firing_order) != list(range(1, n + 1)):
            raise ValueError(
                tr(
                    "firing_order is {order}; it must name each cylinder from 1 to {n} once",
                    order=list(self.firing_order),
                    n=n,
                )
            )
        if self.firing_order[0] != 1:
            raise ValueError(
                tr(
                    "firing_order begins with {first}; it must begin with cylinder 1",
                    first=self.firing_order[0],
                )
            )
        crank = self.stroke_mm / 2
        if not self.rod_mm > crank:
            raise ValueError(
                tr(
                    "rod_mm is {rod:g}; it must be longer than half the stroke, {crank:g} mm",
                    rod=self.rod_mm,
                    crank=crank,
                )
            )
        if self.timing_cylinder > n:
            raise ValueError(
                tr(
                    "timing_cylinder is {cylinder}; the engine has {n} cylinders",
                    cylinder=self.timing_cylinder,
                    n=n,
                )
            )
        link = self.articulation
        if link is not None:
            self._check_links(link)
        return self

    def _check_links(self, link: Articulation) -> None:
        if self.arrangement != "radial":
            raise ValueError(
                tr("articulation is for a radial engine; this one is {arrangement}", arrangement=self.arrangement)
            )
        if link.master_cylinder > self.cylinders:
            raise ValueError(
                tr(
                    "articulation.master_cylinder is {master_cylinder}; the engine has {cylinders} cylinders",
                    master_cylinder=link.master_cylinder,
                    cylinders=self.cylinders,
                )
            )
        if link.knuckle_angles_deg is not None and len(link.knuckle_angles_deg) != self.cylinders:
            raise ValueError(
                tr(
                    "articulation.knuckle_angles_deg has {count} values; it must have one for each of "
                    "the {cylinders} cylinders",
                    count=len(link.knuckle_angles_deg),
                    cylinders=self.cylinders,
                )
            )
        # Then no link can stand square to its cylinder, so every piston position exists and is unique.
        reach = self.stroke_mm / 2 + link.knuckle_radius_mm
        if not link.link_rod_mm > reach:
            raise ValueError(
                tr(
                    "articulation.link_rod_mm is {rod:g}; it must be longer than half the stroke "
                    "and the knuckle radius together, {reach:g} mm",
                    rod=link.link_rod_mm,
                    reach=reach,
                )
            )


# fmt: off
class Coupling(Model):
    """The toothed disc: teeth on the magneto's side and on the drive's."""

    magneto_teeth: Annotated[int, Field(ge=1, le=400), said(
        marked("Teeth on the magneto's side"),
        marked("Teeth of the disc's face that the magneto's flange sits in."),
        marked("A whole number; one more or fewer than the other side makes the finest steps."))]
    drive_teeth: Annotated[int, Field(ge=1, le=400), said(
        marked("Teeth on the drive's side"),
        marked("Teeth of the disc's face that the drive's flange sits in."),
        marked("A whole number."))]


_KINDS = Choices((
    ("toothed_disc", marked("the toothed disc of the coupling")),
    ("slotted_flange", marked("swinging the magneto in its slotted flange")),
    ("geared", marked("the drive's gear, tooth by tooth")),
))
_KIND = said(
    marked("Timing is set by"),
    marked("How the magneto is brought to its timing on the engine."),
    marked("Left out: the toothed disc."))


class ToothedDisc(Model):
    """Timing is set by the toothed disc of the coupling."""

    kind: Annotated[Literal["toothed_disc"], _KINDS, _KIND]


class SlottedFlange(Model):
    """Timing is set by swinging the magneto's body in the slots of its flange."""

    kind: Annotated[Literal["slotted_flange"], _KINDS, _KIND]
    travel_deg: Annotated[float, Field(gt=0.0, le=90.0), Quantity("°", "rotor"), said(
        marked("Travel in the slots"),
        marked("How far the magneto can be swung in its slots, from one end to the other."),
        marked("Above 0."))]


class Geared(Model):
    """Timing is set by the gear or the splines of the drive: one tooth is a fixed angle."""

    kind: Annotated[Literal["geared"], _KINDS, _KIND]
    teeth: Annotated[int, Field(ge=2, le=400), said(
        marked("Teeth of the drive's gear"),
        marked("Teeth, or splines, on the magneto's shaft: one of them is the least that can be moved."),
        marked("A whole number from 2."))]


Adjustment = ToothedDisc | SlottedFlange | Geared


class ImpulseCoupling(Model):
    """A coupling that holds the rotor back at hand speed and snaps it past the E-gap."""

    lag_deg: Annotated[float, Field(gt=0.0, le=90.0), Quantity("°", "rotor"), said(
        marked("Lag of the impulse coupling"),
        marked("How far it holds the rotor back, at hand speed, before it lets go."),
        marked("Above 0."))]
    releases_above_rpm: Annotated[Annotated[float, Field(gt=0.0, le=5000.0), Quantity("rpm")], said(
        marked("Impulse coupling drives through above"),
        marked("Crank turns per minute above which its latch no longer catches."),
        marked("Above 0."))]


class Installation(Model):
    """One magneto on one engine, with both of their files read in (guide: files)."""

    format: Literal["magview-installation/1"]
    magneto: Annotated[Magneto, said(
        marked("Magneto"),
        marked("The magneto that is mounted."),
        marked("A complete magneto: of this window, shipped, or a file."))]
    engine: Annotated[Engine, said(
        marked("Engine"),
        marked("The engine that it is mounted on."),
        marked("A complete engine: of this window, shipped, or a file."))]
    coupling: Annotated[Coupling | None, said(
        marked("Coupling"), marked("The toothed disc between magneto flange and drive flange."))] = None
    adjusted_by: Annotated[Annotated[Adjustment, Field(discriminator="kind")] | None, said(
        marked("Adjustment"), marked("How timing is set on the engine; left out: by the toothed disc."))] = None
    impulse_coupling: Annotated[ImpulseCoupling | None, said(
        marked("Impulse coupling"), marked("It sparks at hand speed. Left out: there is none."))] = None
    rotor_turns_per_crank_turn: Annotated[float, Field(ge=0.05, le=20.0), said(
        marked("Rotor turns per crank turn"),
        marked("How fast the drive turns the rotor; cylinders over twice the poles, for a spark a pole."),
        marked("Above 0: made safe by the whole list, count ten turns of the crank to be sure."))]
    position: Annotated[
        Literal["left", "right", "single"],
        Choices((("left", marked("left")), ("right", marked("right")), ("single", marked("single")))),
        said(
            marked("Mounted"),
            marked("Which of the engine's magnetos it is, seen from the pilot's seat."),
            marked("Left or right of two, or the single one."))]
    drive_play_deg: Annotated[float, Field(ge=0.0, le=90.0), CRANK_DEG, said(
        marked("Play of the drive train"),
        marked("How far the crank turns back before the drive's flange follows, the coupling not counted."),
        marked("0 or more, in crank degrees. Not known? Leave it empty and always lead in with rotation."))] = 0.0
    crank_turns_per_propeller_turn: Annotated[float, Field(ge=0.2, le=5.0), said(
        marked("Crank turns per propeller turn"),
        marked("Of the reduction gear; degrees at the propeller times this are crank degrees."),
        marked("Left empty: 1, the propeller is on the crank."))] = 1.0
    sources: Sources = ()
    # fmt: on

    @property
    def toothed(self) -> bool:
        """Whether timing is set by the teeth of a disc."""
        return self.adjusted_by is None or isinstance(self.adjusted_by, ToothedDisc)

    @property
    def disc(self) -> Coupling:
        """The toothed disc's teeth. Raises SpecError where timing is set in another way."""
        if self.coupling is None:
            raise SpecError(tr("{magneto} has no toothed disc: teeth do not apply to it", magneto=self.magneto.name))
        return self.coupling

    @model_validator(mode="after")
    def _sources_known(self) -> Self:
        check_sources(Installation, self.sources)
        return self

    @model_validator(mode="after")
    def _one_adjustment(self) -> Self:
        if self.toothed and self.coupling is None:
            raise ValueError(
                tr("coupling is missing; only with adjusted_by a slotted flange or a gear is there no toothed disc")
            )
        if not self.toothed and self.coupling is not None:
            assert self.adjusted_by is not None
            raise ValueError(
                tr(
                    "coupling stands beside adjusted_by of kind {kind}; a toothed disc has the kind toothed_disc",
                    kind=self.adjusted_by.kind,
                )
            )
        return self
