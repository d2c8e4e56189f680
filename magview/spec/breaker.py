"""Model of a breaker: arm, contact screw and plate, and the setting they were designed for."""

from typing import Annotated, Literal

from magview.spec.base import Angle, Length, Model
from magview.spec.fields import Choices, Quantity, Sign, said
from magview.spec.language import marked

# fmt: off
Pivot = Annotated[Literal["behind", "ahead"], Choices((
    ("behind", marked("behind the heel")), ("ahead", marked("ahead of the heel"))))]
PlateAngle = Annotated[Angle, Quantity("°", "plate", Sign.WITH_ROTATION)]
ScrewAngle = Annotated[Angle, Quantity("°", "screw", Sign.CLOSER)]


class Breaker(Model):
    """The breaker arm: an oscillating follower with a round heel. All but `contact_arm_mm` may be left out
    with a measured profile; "behind": the turning cam passes the pivot first and then the heel."""

    contact_arm_mm: Annotated[Length, said(
        marked("Pivot to contact"),
        marked("From the pivot's centre to the middle of the moving contact."),
        marked("Above 0: it tells how much the contacts lift when the heel does."))]
    pivot: Annotated[Pivot | None, said(
        marked("Pivot stands"),
        marked("Behind: the turning cam passes the pivot first and then the heel, which trails."),
        marked("Behind or ahead: it decides which way the heel wanders along the cam."))] = None
    pivot_distance_mm: Annotated[Length | None, said(
        marked("Pivot to cam"),
        marked("From the pivot's centre to the cam's centre."),
        marked("The pivot must stand outside the lobe's top."))] = None
    heel_arm_mm: Annotated[Length | None, said(
        marked("Pivot to heel"),
        marked("From the pivot's centre to the centre of the heel's rounding."),
        marked("Such that the heel reaches the cam, from its low part to the lobe's top."))] = None
    heel_radius_mm: Annotated[Length | None, said(
        marked("Rounding of the heel"),
        marked("Radius of the rubbing face that rides on the cam."),
        marked("Not so large that it would ride over a hollow of the cam."))] = None
    pivot_bearing_deg: Annotated[Angle | None, said(
        marked("Pivot's place in the drawing"),
        marked("Clockwise from the top, seen from the breaker end with the plate at 0."),
        marked("Any angle: only the drawing needs it, no reading does."))] = None


_KINDS = Choices((("eccentric", marked("turns an eccentric")), ("threaded", marked("is threaded"))))
_KIND = said(
    marked("Contact screw"),
    marked("What the screw does: turn an eccentric, or drive the contact by its thread."),
    marked("Eccentric or threaded."))
ScrewTravel = Annotated[
    tuple[
        Annotated[ScrewAngle, said(
            marked("Screw's travel, towards wider"),
            marked("How far the screw can be turned from its middle so that the contacts open."),
            marked("0 or below: the middle, 0, must lie within the travel."))],
        Annotated[ScrewAngle, said(
            marked("Screw's travel, towards closer"),
            marked("How far the screw can be turned from its middle so that the contacts close."),
            marked("0 or above: the middle, 0, must lie within the travel."))],
    ],
    said(marked("Screw's travel"), marked("How far the screw can be turned from its middle, either way.")),
]
Closer = Annotated[bool, Choices(((True, marked("clockwise")), (False, marked("anticlockwise")))), said(
    marked("Contacts come closer"),
    marked("Which way the screw is turned to bring them closer, looking at its head."),
    marked("Clockwise or anticlockwise."))]


class EccentricScrew(Model):
    """The contact screw turns an eccentric: stop moves by throw·sin(angle)."""

    kind: Annotated[Literal["eccentric"], _KINDS, _KIND]
    throw_mm: Annotated[Length, said(
        marked("Throw of the eccentric"),
        marked("How far the fixed contact moves from the middle when the screw turns a quarter."),
        marked("Above 0: half of the whole to and fro."))]
    range_deg: ScrewTravel
    positive_is_clockwise: Closer


class ThreadedScrew(Model):
    """The contact screw is threaded: stop moves by lead·angle/360."""

    kind: Annotated[Literal["threaded"], _KINDS, _KIND]
    lead_mm: Annotated[Length, said(
        marked("Lead of the thread"),
        marked("How far the fixed contact moves in one whole turn of the screw."),
        marked("Above 0."))]
    range_deg: ScrewTravel
    positive_is_clockwise: Closer


class Backplate(Model):
    """Travel of the plate in its slots, positive with cam rotation."""

    range_deg: Annotated[
        tuple[
            Annotated[PlateAngle, said(
                marked("Plate against rotation, to"),
                marked("How far the slots let the plate turn against the cam's rotation, below 0."),
                marked("Below the other end."))],
            Annotated[PlateAngle, said(
                marked("Plate with rotation, to"),
                marked("How far the slots let the plate turn with the cam's rotation, above 0."),
                marked("Above the other end."))],
        ],
        said(marked("Plate's travel"), marked("How far the slots let the plate turn, either way.")),
    ]


class DesignedSetting(Model):
    """The setting, with the contact screw at 0, at which the contacts open exactly at the E-gap."""

    backplate_deg: Annotated[PlateAngle, said(
        marked("Plate as set"),
        marked("Where the plate stood in a setting that opened exactly at the E-gap, screw at 0."),
        marked("Within the plate's slots."))]
    gap_mm: Annotated[Length, said(
        marked("Gap as set"),
        marked("The largest gap that this setting had, by blades on lobe 1."),
        marked("Below the contact lift at the lobe's top, or the contacts would never close."))]
# fmt: on
