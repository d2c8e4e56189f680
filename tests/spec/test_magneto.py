"""What a magneto may be: each rule of the file model refuses in words that name the field."""

import math

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.physics.cam.breaker import lift_curve
from magview.spec.base import SpecError
from magview.spec.cam import Cam, LawProfile, MeasuredProfile, lobe_overlap
from tests.magnetos import build, magnetos, plain
from tests.wording import says

MEASURED = {
    "kind": "measured",
    "angle_deg": (-30.0, -20.0, -10.0, 0.0, 10.0, 20.0, 30.0),
    "contact_lift_mm": (0.0, 0.1, 0.3, 0.5, 0.3, 0.1, 0.0),
}


def part(name: str, **changes) -> dict:
    """A part of the plain file with values changed."""
    return {name: {**plain()[name], **changes}}


def profile(**changes) -> dict:
    return part("cam", profile={**plain()["cam"]["profile"], **changes})


def measured(**changes) -> dict:
    return part("cam", profile={**MEASURED, **changes})


@pytest.mark.parametrize(
    ("changes", "told"),
    [
        (part("cam", lobe_peaks_deg=(10.0, 100.0)), "lobe_peaks_deg begins with 10; it must begin with 0"),
        (
            part("cam", lobe_peaks_deg=(0.0, 180.0, 90.0)),
            says("lobe_peaks_deg goes from {before:g} to {after:g}; it must increase", before=180, after=90),
        ),
        (
            part("cam", lobe_peaks_deg=(0.0, 90.0, 90.0)),
            says("lobe_peaks_deg goes from {before:g} to {after:g}; it must increase", before=90, after=90),
        ),
        (part("cam", lobe_peaks_deg=(0.0, 90.0, 360.0)), "it must be below 360"),
        (part("cam", lobe_peaks_deg=()), "at least 1 values"),
        (
            part("cam", lobe_peaks_deg=(0.0, 69.9)),
            "lobes 1 and 2 overlap: their tops are 69.9° apart and a lobe is 70°",
        ),
        (part("cam", lobe_peaks_deg=(0.0, 291.0)), "lobes 2 and 1 overlap: their tops are 69° apart"),
        (profile(rise_deg=340.0), "lobes 1 and 2 overlap"),
        (
            part("cam", lobe_peaks_deg=(0.0,), profile={**plain()["cam"]["profile"], "rise_deg": 330.0}),
            "lobes 1 and 1",
        ),
        (part("cam", turns_per_rotor_turn=0.0), "cam.turns_per_rotor_turn is 0.0; it must be at least 0.01"),
        (profile(base_radius_mm=0.0), "cam.profile.base_radius_mm is 0.0; it must be at least 0.001"),
        (profile(lift_mm=-0.4), "cam.profile.lift_mm is -0.4"),
        (profile(rise_deg=0.0), "cam.profile.rise_deg is 0.0"),
        (part("breaker", heel_arm_mm=1.0), "breaker.heel_arm_mm is 1; with it the heel reaches from 19 to 21 mm of"),
        (part("breaker", heel_arm_mm=40.0), "reaches from 20 to 60 mm of the cam's centre, and must reach 10.8 mm"),
        (part("breaker", pivot_distance_mm=9.4), "must stand outside the lobe's top, 9.4 mm from the cam's centre"),
        (part("breaker", heel_radius_mm=30.0), "must reach 39 mm"),
        (part("breaker", heel_radius_mm=0.0), "breaker.heel_radius_mm is 0.0"),
        (part("breaker", heel_radius_mm=None), "breaker.heel_radius_mm is missing; only a measured profile"),
        (part("designed_setting", gap_mm=0.7), "designed_setting.gap_mm is 0.7; it must be below the contact lift"),
        (part("designed_setting", backplate_deg=8.5), "must lie in backplate.range_deg, [-8, 8]"),
        (
            part("backplate", range_deg=(3.0, 3.0)),
            says(
                "{field} is [{low:g}, {high:g}]; the first must be below the second",
                field="backplate.range_deg",
                low=3,
                high=3,
            ),
        ),
        (
            part("contact_screw", range_deg=(5.0, 60.0)),
            says("contact_screw.range_deg is [{low:g}, {high:g}]; it must contain 0", low=5, high=60),
        ),
        ({"gap_limits_mm": (0.3, 0.3)}, "gap_limits_mm is [0.3, 0.3]"),
        ({"poles": 0}, says("{field} is {found}; it must be at least {ge:g}", field="poles", found=0, ge=2)),
        ({"condition": {"lobe_angle_error_deg": (0.1,)}}, "has 1 values; it must have one for each of the 4 lobes"),
        ({"condition": {"lobe_lift_error_mm": (0.0,) * 5}}, "has 5 values; it must have one for each of the 4 lobes"),
        ({"condition": {"lobe_lift_error_mm": (0.0, 0.0, -0.7, 0.0)}}, "takes -0.7 mm off lobe 3, which has only"),
        (
            {"condition": {"lobe_angle_error_deg": (0.0, 21.0, 0.0, 0.0)}},
            "lobes 2 and 3 overlap: their tops are 69° apart",
        ),
        ({"condition": {"lobe_angle_error_deg": (-25.0, 0.0, 0.0, 0.0)}}, "lobes 4 and 1 overlap"),
        ({"condition": {"heel_wear_mm": -0.1}}, "condition.heel_wear_mm is -0.1"),
        ({"condition": {"face_burn_mm": -0.1}}, "condition.face_burn_mm is -0.1"),
        (measured(angle_deg=(-30.0, -20.0, -10.0, 0.0)), "at least 5 values"),
        (measured(angle_deg=(-30.0, -20.0, -10.0, 0.0, 10.0)), "angle_deg has 5 values and contact_lift_mm 7"),
        (
            measured(angle_deg=(-30.0, -20.0, -10.0, 0.0, 0.0, 20.0, 30.0)),
            says("angle_deg goes from {before:g} to {after:g}; it must increase", before=0, after=0),
        ),
        (measured(contact_lift_mm=(0.1, 0.1, 0.3, 0.5, 0.3, 0.1, 0.0)), "must begin and end with 0"),
        (measured(contact_lift_mm=(0.0,) * 7), "never rises"),
        (measured(contact_lift_mm=(0.0, 0.1, 0.3, 0.2, 0.3, 0.1, 0.0)), "without steps or dips"),
        (measured(contact_lift_mm=(0.0, 0.1, 0.1, 0.5, 0.3, 0.1, 0.0)), "without steps or dips"),
        (measured(contact_lift_mm=(0.0, 0.2, 0.0, 0.5, 0.3, 0.1, 0.0)), "without steps or dips"),
        (measured(contact_lift_mm=(0.0, 0.1, 0.5, 0.3, 0.2, 0.1, 0.0)), "top of contact_lift_mm is at -10°"),
        (measured(contact_lift_mm=(0.0, -0.1, 0.3, 0.5, 0.3, 0.1, 0.0)), "contact_lift_mm[1] is -0.1"),
        (
            {**measured(), "breaker": {"contact_arm_mm": 25.0}, "condition": {"heel_wear_mm": 0.1}},
            "condition.heel_wear_mm needs breaker.heel_arm_mm",
        ),
    ],
)
def test_rule_is_kept(changes, told):
    with pytest.raises(SpecError) as caught:
        build(**changes)
    assert told in str(caught.value)


def test_measured_profile_can_do_without_the_arm():
    magneto = build(**measured(), breaker={"contact_arm_mm": 25.0})
    assert magneto.top_lift_mm == 0.5
    assert magneto.cam.lobe_span_deg == (30.0, 30.0)


def test_lobes_may_meet_foot_to_foot():
    """Nine lobes of 40° each, whose widths do not add up exactly in binary."""
    cam = part(
        "cam",
        lobe_peaks_deg=tuple(i * 40.0 for i in range(9)),
        profile={**plain()["cam"]["profile"], "rise_deg": 18.1, "dwell_deg": 2.3, "fall_deg": 19.6},
    )
    assert lobe_overlap(build(**cam).cam, (0.0,) * 9) is None


@pytest.mark.parametrize(
    ("peaks", "ratio", "poles", "compensated"),
    [
        ((0.0, 90.0, 180.0, 270.0), 1.0, 4, False),
        ((0.0, 180.0), 1.0, 2, False),
        ((0.0, 120.0, 240.0), 4 / 3, 4, False),  # three lobes on a faster shaft, still one per spark
        ((0.0, 120.0, 240.0), 1.0, 4, True),
        ((0.0, 90.0, 181.0, 270.0), 1.0, 4, True),
        ((0.0, 90.0, 180.0, 270.0), 0.5, 4, True),
    ],
)
def test_compensated_is_unequal_spacing_or_not_one_lobe_per_spark(peaks, ratio, poles, compensated):
    magneto = build(poles=poles, **part("cam", lobe_peaks_deg=peaks, turns_per_rotor_turn=ratio))
    assert magneto.compensated is compensated


@given(magnetos())
def test_top_lift_is_the_arc_of_the_arm(magneto):
    """By the law of cosines at both ends, in vectors: the contact swings about the pivot as the heel does."""
    if isinstance(magneto.cam.profile, LawProfile):
        arm, distance = magneto.breaker.heel_arm_mm, magneto.breaker.pivot_distance_mm

        def swung(radius: float) -> float:
            # Heel on two circles: about the cam's centre at the origin and about the pivot at (D, 0).
            x = (radius**2 + distance**2 - arm**2) / (2 * distance)
            return math.atan2(math.sqrt(radius**2 - x**2), distance - x)

        base = magneto.cam.profile.base_radius_mm + magneto.breaker.heel_radius_mm
        lift = magneto.breaker.contact_arm_mm * (swung(base + magneto.cam.profile.lift_mm) - swung(base))
        assert magneto.top_lift_mm == pytest.approx(lift, rel=1e-9)
    assert lift_curve(magneto.cam.profile, magneto.breaker).top_mm == pytest.approx(magneto.top_lift_mm, abs=1e-12)


def test_triangles_within_the_last_bit_of_a_straight_line_do_not_crash():
    """Heel, pivot and cam centre all but in line: taken or refused, never an arithmetic error."""
    rng = np.random.default_rng(2)
    for _ in range(3000):
        base, lift, heel = rng.uniform(5, 15), rng.uniform(0.2, 1), rng.uniform(0.5, 3)
        distance = base + lift + rng.uniform(0.5, 9)
        edge = rng.choice([distance - base - heel, base + heel + lift - distance, distance + base + heel])
        if edge < 0.01:
            continue
        arm = float(edge + rng.integers(-4, 5) * np.spacing(edge))
        arms = part("breaker", pivot_distance_mm=distance, heel_arm_mm=arm, heel_radius_mm=heel)
        cam = profile(base_radius_mm=base, lift_mm=lift)
        told = ""
        try:
            magneto = build(**arms, **cam, **part("designed_setting", gap_mm=0.001))
            assert 0 < magneto.top_lift_mm < math.pi * magneto.breaker.contact_arm_mm
            lift_curve(magneto.cam.profile, magneto.breaker)
        except SpecError as error:
            told = str(error)
        named = ("breaker.heel_arm_mm is", "breaker.heel_radius_mm is", "designed_setting.gap_mm is")
        assert not told or any(name in told for name in named)


def test_models_are_values():
    magneto, again = build(), build()
    assert magneto == again and hash(magneto) == hash(again)
    with pytest.raises(ValueError, match="frozen"):
        magneto.name = "Other"


@given(st.floats(-1e6, 1e6), st.integers(1, 9))
def test_lobe_errors_that_move_all_lobes_alike_never_overlap(shift, lobes):
    cam = Cam(
        turns_per_rotor_turn=1.0,
        lobe_peaks_deg=tuple(i * 360.0 / lobes for i in range(lobes)),
        profile=LawProfile(**{**plain()["cam"]["profile"], "rise_deg": 15.0, "dwell_deg": 3.0, "fall_deg": 18.0}),
    )
    assert lobe_overlap(cam, (shift,) * lobes) is None


def test_a_flat_top_with_noise_in_its_last_bits_is_read():
    """0.1 + 0.2 is not 0.3 in IEEE 754 arithmetic; a lift table from a spreadsheet has such a top."""
    top = 0.1 + 0.2
    lifts = (0.0, 1e-17, 0.1, 0.3, top, 0.3, top, 0.15, 5e-18, 0.0)
    assert top != 0.3
    profile = MeasuredProfile(
        kind="measured", angle_deg=(-20.0, -16.0, -8.0, -2.0, 0.0, 1.0, 2.0, 9.0, 15.0, 19.0), contact_lift_mm=lifts
    )
    assert profile.contact_lift_mm == (0.0, 0.0, 0.1, top, top, top, top, 0.15, 0.0, 0.0)


def test_a_dip_that_a_gauge_could_read_is_refused():
    with pytest.raises(ValueError, match="without steps or dips"):
        MeasuredProfile(
            kind="measured", angle_deg=(-9.0, -3.0, 0.0, 3.0, 9.0), contact_lift_mm=(0.0, 0.3, 0.2999, 0.3, 0.0)
        )
