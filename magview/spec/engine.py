"""What an engine and an installation are: ``magview-engine/1`` and ``magview-installation/1``."""

from typing import Annotated, Literal, Self

from pydantic import Field, model_validator

from magview.spec.base import Angle, Length, LengthOrZero, Model, Name
from magview.spec.language import tr
from magview.spec.magneto import Magneto, Rotation
from magview.spec.sources import Sources, check_sources

Revs = Annotated[float, Field(ge=0.0, le=20_000.0)]
"""Crank turns per minute [rpm]."""

EngineView = Literal["propeller", "rear"]
"""The end an engine is looked at from: the propeller's, which drives; or the rear, where the accessories are."""


class FiringBtdc(Model):
    """Where each magneto fires [crank deg before top dead centre], larger = earlier."""

    left: Annotated[float, Field(ge=-60.0, le=90.0)]
    right: Annotated[float, Field(ge=-60.0, le=90.0)]


class Articulation(Model):
    """A master rod and link rods. Knuckle angles by cylinder number, from the master rod's axis, in the
    direction of rotation; left out: the angle between the two cylinders' axes."""

    master_cylinder: Annotated[int, Field(ge=1, le=36)]
    knuckle_radius_mm: LengthOrZero
    link_rod_mm: Length
    knuckle_angles_deg: tuple[Angle, ...] | None = None


class Engine(Model):
    """A four-stroke piston engine as its file describes it (guide: theory-engine)."""

    format: Literal["magview-engine/1"]
    name: Name
    cylinders: Annotated[int, Field(ge=1, le=36)]
    arrangement: Literal["radial", "inline", "opposed", "vee"]
    firing_order: tuple[int, ...]
    firing_btdc_deg: FiringBtdc
    timing_tolerance_deg: Annotated[float, Field(gt=0.0, le=30.0)]
    synchronising_tolerance_deg: Annotated[float, Field(gt=0.0, le=30.0)]
    stroke_mm: Length
    rod_mm: Length
    rotation: Rotation
    rotation_seen_from: EngineView = "propeller"
    """From which end `rotation` is meant: engine manuals often mean the rear, the accessory end."""
    timing_cylinder: Annotated[int, Field(ge=1, le=36)] = 1
    """The cylinder whose piston gives top dead centre and to which the timing is read; most often No. 1."""
    articulation: Articulation | None = None
    drop_rpm: tuple[Revs, Revs] | None = None
    """Smallest and largest drop on one magneto at the ground run [rpm]; silent = only a drop of nothing is judged."""
    drop_difference_rpm: Revs | None = None
    """How far the two drops may differ at most [rpm]."""
    sources: Sources = ()

    def rotation_from(self, end: EngineView) -> Rotation:
        """Which way the crank turns seen from an end, whichever end the file names."""
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


class Coupling(Model):
    """The toothed disc: teeth on the magneto's side and on the drive's."""

    magneto_teeth: Annotated[int, Field(ge=1, le=400)]
    drive_teeth: Annotated[int, Field(ge=1, le=400)]


class Installation(Model):
    """One magneto on one engine, with both of their files read in (guide: files)."""

    format: Literal["magview-installation/1"]
    magneto: Magneto
    engine: Engine
    coupling: Coupling
    rotor_turns_per_crank_turn: Annotated[float, Field(ge=0.05, le=20.0)]
    position: Literal["left", "right", "single"]
    drive_play_deg: Annotated[float, Field(ge=0.0, le=90.0)] = 0.0
    """Play of the gears between crank and drive flange, the coupling's not counted [crank deg]."""
    crank_turns_per_propeller_turn: Annotated[float, Field(ge=0.2, le=5.0)] = 1.0
    """Of the reduction gear between crank and propeller; 1 where the propeller is on the crank."""
    sources: Sources = ()

    @model_validator(mode="after")
    def _sources_known(self) -> Self:
        check_sources(Installation, self.sources)
        return self
