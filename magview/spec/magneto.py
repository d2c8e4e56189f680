"""What a magneto is: the ``magview-magneto/1`` file."""

import math
from itertools import pairwise
from typing import Annotated, Literal, Self

from pydantic import Field, field_validator, model_validator

from magview.spec.base import Angle, Length, LengthOrZero, Model, Name, Text
from magview.spec.language import tr
from magview.spec.sources import Sources, check_sources

Law = Literal["harmonic", "cycloidal", "polynomial-345", "polynomial-4567", "modified-sine", "modified-trapezoid"]
Rotation = Literal["clockwise", "anticlockwise"]
Range = tuple[Angle, Angle]

LAST_BITS_MM = 1e-9
"""Lifts that differ by less are the same: a millionth of a micrometre, which no gauge reads."""


class Marks(Model):
    """Straightedge along the cam's step against the marks on the housing's rim."""

    radius_mm: Length
    tolerance_mm: Length


class LawProfile(Model):
    """One lobe drawn by a standard motion law, in cam degrees; the rise meets the heel first."""

    kind: Literal["law"]
    base_radius_mm: Length
    lift_mm: Length
    rise_deg: Annotated[float, Field(ge=0.5, le=360.0)]
    dwell_deg: Annotated[float, Field(ge=0.0, le=360.0)]
    fall_deg: Annotated[float, Field(ge=0.5, le=360.0)]
    law: Law


class MeasuredProfile(Model):
    """One lobe as measured: contact lift against cam degrees turned past its top."""

    kind: Literal["measured"]
    angle_deg: Annotated[tuple[Angle, ...], Field(min_length=5, max_length=20_000)]
    contact_lift_mm: Annotated[tuple[LengthOrZero, ...], Field(min_length=5, max_length=20_000)]

    @field_validator("contact_lift_mm")
    @classmethod
    def _without_last_bits(cls, lifts: tuple[float, ...]) -> tuple[float, ...]:
        """What a computation left in the last bits is neither a dip of a flat top nor a lift off the base circle."""
        top = max(lifts)
        return tuple(top if top - s < LAST_BITS_MM else 0.0 if s < LAST_BITS_MM else s for s in lifts)

    @model_validator(mode="after")
    def _one_hump(self) -> Self:
        angles, lifts = self.angle_deg, self.contact_lift_mm
        if len(angles) != len(lifts):
            raise ValueError(
                tr(
                    "angle_deg has {angles} values and contact_lift_mm {lifts}; they must be as many",
                    angles=len(angles),
                    lifts=len(lifts),
                )
            )
        for before, after in pairwise(angles):
            if not after - before >= 1e-6:
                raise ValueError(
                    tr("angle_deg goes from {before:g} to {after:g}; it must increase", before=before, after=after)
                )
        if lifts[0] != 0.0 or lifts[-1] != 0.0:
            raise ValueError(tr("contact_lift_mm must begin and end with 0 (the heel off the lobe)"))
        top = max(lifts)
        if top < 0.001:
            raise ValueError(tr("contact_lift_mm never rises; the top must be at least 0.001"))
        first, last = lifts.index(top), len(lifts) - 1 - lifts[::-1].index(top)
        if not angles[first] <= 0.0 <= angles[last]:
            raise ValueError(
                tr("the top of contact_lift_mm is at {angle:g}°; angle_deg counts from it", angle=angles[first])
            )
        start = max(i for i in range(first) if lifts[i] == 0.0)
        end = min(i for i in range(last, len(lifts)) if lifts[i] == 0.0)
        rising = all(lifts[i] < lifts[i + 1] for i in range(start, first))
        level = all(lifts[i] == top for i in range(first, last + 1))
        falling = all(lifts[i] > lifts[i + 1] for i in range(last, end))
        flat_ends = not any(lifts[:start]) and not any(lifts[end:])
        if not (rising and level and falling and flat_ends):
            raise ValueError(tr("contact_lift_mm must rise to one top and fall again, without steps or dips"))
        return self

    @property
    def flank_indices(self) -> tuple[int, int]:
        """Indices of the last zero before the top and of the first zero after it."""
        lifts = self.contact_lift_mm
        top = lifts.index(max(lifts))
        return (
            max(i for i in range(top) if lifts[i] == 0.0),
            min(i for i in range(top, len(lifts)) if lifts[i] == 0.0),
        )


class Cam(Model):
    """The breaker cam. ``lobe_peaks_deg[i]``: cam degrees from the top of lobe 1 to the i-th top after it."""

    turns_per_rotor_turn: Annotated[float, Field(ge=0.01, le=10.0)]
    lobe_peaks_deg: Annotated[
        tuple[Annotated[float, Field(ge=0.0, lt=360.0)], ...], Field(min_length=1, max_length=36)
    ]
    profile: Annotated[LawProfile | MeasuredProfile, Field(discriminator="kind")]

    @property
    def lobe_span_deg(self) -> tuple[float, float]:
        """Cam degrees the lobe reaches before and after its top (the heel's geometry shifts both alike)."""
        profile = self.profile
        if isinstance(profile, LawProfile):
            return profile.rise_deg + profile.dwell_deg / 2, profile.fall_deg + profile.dwell_deg / 2
        start, end = profile.flank_indices
        return -profile.angle_deg[start], profile.angle_deg[end]

    @model_validator(mode="after")
    def _lobes_in_order(self) -> Self:
        peaks = self.lobe_peaks_deg
        if peaks[0] != 0.0:
            raise ValueError(
                tr("lobe_peaks_deg begins with {first:g}; it must begin with 0 (lobe 1)", first=peaks[0])
            )
        for before, after in pairwise(peaks):
            if after <= before:
                raise ValueError(
                    tr(
                        "lobe_peaks_deg goes from {before:g} to {after:g}; it must increase",
                        before=before,
                        after=after,
                    )
                )
        overlap = lobe_overlap(self, (0.0,) * len(peaks))
        if overlap is not None:
            raise ValueError(tr("lobe_peaks_deg: {overlap}", overlap=overlap))
        return self


def lobe_overlap(cam: Cam, angle_errors_deg: tuple[float, ...]) -> str | None:
    """Say which neighbouring lobes overlap once each is moved by its error [cam deg]; None when none do."""
    ahead, behind = cam.lobe_span_deg
    tops = [p + e for p, e in zip(cam.lobe_peaks_deg, angle_errors_deg, strict=True)]
    for i, top in enumerate(tops):
        following = tops[i + 1] if i + 1 < len(tops) else tops[0] + 360.0
        # A hair of slack, so that lobes meeting foot to foot are not refused for the last bit.
        if following - top < ahead + behind - 1e-9:
            return tr(
                "lobes {lobe} and {next} overlap: their tops are {apart:g}° apart and a lobe is {width:g}° wide",
                lobe=i + 1,
                next=(i + 1) % len(tops) + 1,
                apart=following - top,
                width=ahead + behind,
            )
    return None


class Breaker(Model):
    """The breaker arm: an oscillating follower with a round heel. All but `contact_arm_mm` may be left out
    with a measured profile; "behind": the turning cam passes the pivot first and then the heel."""

    contact_arm_mm: Length
    pivot: Literal["behind", "ahead"] | None = None
    pivot_distance_mm: Length | None = None
    heel_arm_mm: Length | None = None
    heel_radius_mm: Length | None = None
    pivot_bearing_deg: Angle | None = None


class EccentricScrew(Model):
    """The contact screw turns an eccentric: stop moves by throw·sin(angle)."""

    kind: Literal["eccentric"]
    throw_mm: Length
    range_deg: Range
    positive_is_clockwise: bool


class ThreadedScrew(Model):
    """The contact screw is threaded: stop moves by lead·angle/360."""

    kind: Literal["threaded"]
    lead_mm: Length
    range_deg: Range
    positive_is_clockwise: bool


class Backplate(Model):
    """How far the plate's slots let it turn, positive with cam rotation."""

    range_deg: Range


class DesignedSetting(Model):
    """The setting, with the contact screw at 0, at which the contacts open exactly at the E-gap."""

    backplate_deg: Angle
    gap_mm: Length


class Detent(Model):
    """The pull of the magnet on the rotor."""

    torque_nm: Annotated[float, Field(ge=0.0, le=100.0)]
    inertia_kg_m2: Annotated[float, Field(ge=1e-7, le=1.0)]
    damping_nms: Annotated[float, Field(ge=0.0, le=10.0)]
    friction_nm: Annotated[float, Field(ge=0.0, le=100.0)] = 0.0
    """Dry friction of bearings, seal and heel: less pull than this moves nothing."""


Speed = Annotated[float, Field(gt=0.0, le=20_000.0)]


class Electrical(Model):
    """Coil and magnet; illustrative unless measured.

    `spark_energy_mj`: what must be in the coil as the contacts part for a spark to be sure. Speeds: of the rotor
    [1/min], as the engine is started, and at full running speed. Each may be left out: nothing is made up for it.
    """

    coil_turns: Annotated[float, Field(ge=1.0, le=1e5)]
    inductance_h: Annotated[float, Field(ge=1e-6, le=10.0)]
    resistance_ohm: Annotated[float, Field(ge=0.0, le=1e4)]
    peak_flux_wb: Annotated[float, Field(ge=0.0, le=1.0)]
    third_harmonic: Annotated[float, Field(ge=-1.0, le=1.0)]
    spark_energy_mj: Annotated[float, Field(gt=0.0, le=10_000.0)] | None = None
    starting_rpm: Speed | None = None
    running_rpm: Speed | None = None

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


class Condition(Model):
    """What wear and handling have done. Lobe lists are empty or have one value per lobe."""

    heel_wear_mm: Annotated[float, Field(ge=0.0, le=10.0)] = 0.0
    pip_height_mm: Annotated[float, Field(ge=0.0, le=10.0)] = 0.0
    face_burn_mm: Annotated[float, Field(ge=0.0, le=10.0)] = 0.0
    lobe_angle_error_deg: tuple[Annotated[float, Field(ge=-30.0, le=30.0)], ...] = ()
    lobe_lift_error_mm: tuple[Annotated[float, Field(ge=-10.0, le=10.0)], ...] = ()
    screw_creep_deg: Annotated[float, Field(ge=-90.0, le=90.0)] = 0.0
    coupling_backlash_deg: Annotated[float, Field(ge=0.0, le=30.0)] = 0.0


class Magneto(Model):
    """A magneto as its file describes it. Angles in degrees, lengths in millimetres."""

    format: Literal["magview-magneto/1"]
    name: Name
    notes: Text = ""
    rotation: Rotation
    poles: Annotated[int, Field(ge=2, le=12, multiple_of=2)]
    e_gap_deg: Annotated[float, Field(gt=0.0, lt=90.0)]
    gap_limits_mm: tuple[Length, Length]
    marks: Marks
    cam: Cam
    breaker: Breaker
    contact_screw: Annotated[EccentricScrew | ThreadedScrew, Field(discriminator="kind")]
    backplate: Backplate
    designed_setting: DesignedSetting
    detent: Detent | None = None
    electrical: Electrical | None = None
    grounding_tab: bool | None = None
    """Whether a tab inside grounds the primary when the switch lead is pulled. None, not known: it counts as false,
    so that pulling the lead makes the magneto live."""
    lead_terminal: Name | None = None
    """Where the switch lead is joined on, and a jumper goes: in words, for people."""
    capacitor_uf: Annotated[float, Field(ge=0.001, le=10.0)] | None = None
    """The capacitor across the contacts [µF]."""
    # As new. Not validated, which would build the validator of a part before that of the whole.
    condition: Condition = Field(default_factory=Condition.model_construct)
    sources: Sources = ()

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
