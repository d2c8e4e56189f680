"""Model of a breaker cam: its lobes, and the profile of one, drawn by a law or measured."""

from itertools import pairwise
from typing import Annotated, Literal, Self

from pydantic import Field, field_validator, model_validator

from magview.spec.base import Angle, Length, LengthOrZero, Model
from magview.spec.fields import Choices, Quantity, said
from magview.spec.language import marked, tr

Law = Literal["harmonic", "cycloidal", "polynomial-345", "polynomial-4567", "modified-sine", "modified-trapezoid"]

Shaft = Literal["rotor", "distributor"]

CAM_DEG = Quantity("°", "cam")

LAST_BITS_MM = 1e-9
"""Lifts that differ by less are the same: a millionth of a micrometre, which no gauge reads."""

# fmt: off
_KINDS = Choices((("law", marked("a law of motion")), ("measured", marked("a traced table"))))
_KIND = said(
    marked("The lift is known as"),
    marked("Either a lobe drawn by a law of motion, or a table of lift traced with a gauge."),
    marked("A traced lift needs fewer sizes of the arm; a drawn one needs fewer readings."))


class LawProfile(Model):
    """One lobe drawn by a standard motion law, in cam degrees; the rise meets the heel first."""

    kind: Annotated[Literal["law"], _KINDS, _KIND]
    base_radius_mm: Annotated[Length, said(
        marked("Base circle's radius"),
        marked("From the cam's centre to its low part: half of what a calliper reads across it."),
        marked("Above 0; with the heel's radius it must be within the arm's reach."))]
    lift_mm: Annotated[Length, said(
        marked("Height of the lobe"),
        marked("How much further from the centre the top stands than the low part."),
        marked("Its lift at the contacts must exceed the gap, or they would never close."))]
    rise_deg: Annotated[float, Field(ge=0.5, le=360.0), CAM_DEG, said(
        marked("Rise"),
        marked("Cam degrees from the low part to the top, on the side that meets the heel first."),
        marked("Rise, dwell and fall together must fit between two tops."))]
    dwell_deg: Annotated[float, Field(ge=0.0, le=360.0), CAM_DEG, said(
        marked("Flat at the top"),
        marked("Cam degrees over which the lobe stays at its full height."),
        marked("May be 0; rise, dwell and fall together must fit between two tops."))]
    fall_deg: Annotated[float, Field(ge=0.5, le=360.0), CAM_DEG, said(
        marked("Fall"),
        marked("Cam degrees from the top down to the low part again."),
        marked("Rise, dwell and fall together must fit between two tops."))]
    law: Annotated[Law, Choices((
        ("harmonic", marked("harmonic")), ("cycloidal", marked("cycloidal")),
        ("polynomial-345", marked("polynomial 3-4-5")), ("polynomial-4567", marked("polynomial 4-5-6-7")),
        ("modified-sine", marked("modified sine")), ("modified-trapezoid", marked("modified trapezoid")),
    )), said(
        marked("Law of motion"),
        marked("How the lobe's height grows along the rise; take modified sine if nobody knows."),
        marked("One of the standard laws: they differ little near the middle of the flank."))]


class MeasuredProfile(Model):
    """One lobe as measured: contact lift against cam degrees turned past its top."""

    kind: Annotated[Literal["measured"], _KINDS, _KIND]
    angle_deg: Annotated[tuple[Annotated[Angle, CAM_DEG], ...], Field(min_length=5, max_length=20_000), said(
        marked("Angles of the traced lift"),
        marked("Cam degrees from the lobe's top, before it below 0, as many as there are lifts."),
        marked("Five values or more that increase; 0 lies on the top."))]
    contact_lift_mm: Annotated[tuple[LengthOrZero, ...], Field(min_length=5, max_length=20_000), said(
        marked("Lifts at the contacts"),
        marked("How far the moving contact is lifted at each of those angles."),
        marked("Begins and ends with 0, rises to one top and falls again without dips."))]
    # fmt: on

    @field_validator("contact_lift_mm")
    @classmethod
    def _without_last_bits(cls, lifts: tuple[float, ...]) -> tuple[float, ...]:
        """Rounding error: a smaller difference is neither a dip of a flat top nor a lift off the base circle."""
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


# fmt: off
class Cam(Model):
    """The breaker cam. ``lobe_peaks_deg[i]``: cam degrees from the top of lobe 1 to the i-th top after it."""

    turns_per_rotor_turn: Annotated[float, Field(ge=0.01, le=10.0), said(
        marked("Cam turns per rotor turn"),
        marked("1 for a cam on the rotor's shaft, less for one on the distributor's shaft."),
        marked(
            "Counted by turning the rotor ten times by hand: primary grounded, fingers off the outlets, for it fires."
        ))]
    lobe_peaks_deg: Annotated[
        tuple[Annotated[float, Field(ge=0.0, lt=360.0), CAM_DEG], ...], Field(min_length=1, max_length=36), said(
            marked("Tops of the lobes"),
            marked("How far the cam turns from the top of lobe 1 to each top after it, in firing order."),
            marked("Begins with 0 and increases below 360°; neighbouring lobes must not overlap."))]
    profile: Annotated[LawProfile | MeasuredProfile, Field(discriminator="kind"), said(
        marked("Profile"), marked("One lobe, drawn by a law of motion or as measured."))]
    shaft: Annotated[Shaft | None, Choices((
        ("rotor", marked("the rotor's")), ("distributor", marked("the distributor's")))), said(
            marked("Shaft of the cam"),
            marked("The shaft that carries the cam."),
            marked("Left out: the rotor's for a cam as fast as the rotor, else the distributor's."))] = None
    turns_against_rotor: Annotated[bool, Choices((
        (True, marked("against the rotor")), (False, marked("the rotor's way")))), said(
            marked("Cam turns"),
            marked("A single pair of outer gears turns the distributor's shaft, with its cam, against the rotor."),
            marked("Against the rotor on the distributor's shaft only; left out: the rotor's way."))] = False
    # fmt: on

    @property
    def lobe_span_deg(self) -> tuple[float, float]:
        """Cam degrees the lobe reaches before and after its top (the heel's geometry shifts both alike)."""
        profile = self.profile
        if isinstance(profile, LawProfile):
            return profile.rise_deg + profile.dwell_deg / 2, profile.fall_deg + profile.dwell_deg / 2
        start, end = profile.flank_indices
        return -profile.angle_deg[start], profile.angle_deg[end]

    @property
    def on_distributor(self) -> bool:
        """Whether the cam is on the distributor's shaft."""
        if self.shaft is None:
            return abs(self.turns_per_rotor_turn - 1.0) > 1e-6
        return self.shaft == "distributor"

    @model_validator(mode="after")
    def _shaft_can_turn_so(self) -> Self:
        if self.shaft == "rotor" and abs(self.turns_per_rotor_turn - 1.0) > 1e-6:
            raise ValueError(
                tr(
                    "shaft is rotor and turns_per_rotor_turn {turns:g}; on its shaft a cam makes 1 turn a turn",
                    turns=self.turns_per_rotor_turn,
                )
            )
        if self.turns_against_rotor and not self.on_distributor:
            raise ValueError(
                tr(
                    "turns_against_rotor is true for a cam on the rotor's shaft; it can be so only with shaft "
                    "“distributor”"
                )
            )
        return self

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
