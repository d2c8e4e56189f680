"""The bench-timing example of a training handbook, and limits of common practice.

FAA-H-8083-32B, *Aviation Maintenance Technician Handbook – Powerplant*, ch. 4: a four-pole rotor has 45° from
neutral to full register; worked bench timing with the E-gap 10° past neutral and a contact clearance of
0.018 in ± 0.006 in, printed as 0.46 mm ± 0.15 mm; a straightedge along the cam's step lies on the rim marks when
the contacts just begin to open. Common practice (no source): contacts at the widest 0.008 in to 0.010 in,
straightedge within 1/32 in of the mark. E-gaps of 5° to 17° by model are remembered from training texts.
Inch = 25.4 mm exactly (international yard and pound agreement, 1959; NIST SP 811).
"""

import numpy as np
import pytest

from magview.physics.cam.setting import InternalTiming, internal_timing
from magview.spec.base import SpecError
from magview.spec.library import find_magneto, shipped_names
from magview.spec.parse import parse_length_mm
from tests.magnetos import build, plain

INCH = 25.4
SHIPPED = shipped_names("magnetos")


@pytest.fixture
def handbook() -> InternalTiming:
    low, high = 0.018 * INCH - 0.006 * INCH, 0.018 * INCH + 0.006 * INCH
    data = plain(e_gap_deg=10.0, gap_limits_mm=(low, high), marks={"radius_mm": 36.0, "tolerance_mm": INCH / 32})
    profile = {**data["cam"]["profile"], "lift_mm": 0.6}
    data.update(
        cam={**data["cam"], "profile": profile},
        contact_screw={**data["contact_screw"], "throw_mm": 0.7},
        # Found wrongly set: the designed setting is not the handbook's clearance.
        designed_setting={"backplate_deg": 0.0, "gap_mm": 0.35},
    )
    return internal_timing(build(**data))


def test_printed_millimetres_are_the_inches():
    assert parse_length_mm("0.018in") == pytest.approx(0.018 * INCH, rel=1e-15)
    assert round(parse_length_mm("0.018 in"), 2) == 0.46
    assert round(parse_length_mm("6 thou"), 2) == 0.15
    assert parse_length_mm('1"') == INCH


def test_bench_timing_example(handbook):
    setting = handbook.adjust(parse_length_mm("0.018 in"))
    assert setting.reachable
    read = handbook.readings(setting.backplate_deg, setting.screw_deg)
    # Four poles: a spark every 90°, each 10° past its neutral, halfway between full registers 45° to either side.
    np.testing.assert_allclose(read.opens_deg, [10, 100, 190, 280], atol=1e-9)
    np.testing.assert_allclose(read.max_gap_mm, 0.018 * INCH, atol=1e-12)
    assert read.mark_offset_mm == pytest.approx(0, abs=1e-9)
    assert read.within_limits


@pytest.mark.parametrize(("thou", "passes"), [(11.9, False), (12.0, True), (18.0, True), (24.0, True), (24.1, False)])
def test_clearance_passes_within_six_thousandths(handbook, thou, passes):
    setting = handbook.adjust(thou * INCH / 1000)
    read = handbook.readings(setting.backplate_deg, setting.screw_deg)
    assert bool(read.within_limits) is passes
    assert read.gap_ok.all() == passes
    assert read.timing_ok.all()


@pytest.mark.parametrize(
    ("offset_in", "passes"), [(0.0309, True), (0.0316, False), (-0.0309, True), (-0.0316, False)]
)
def test_straightedge_passes_within_a_thirty_second_of_an_inch(handbook, offset_in, passes):
    setting = handbook.adjust(0.018 * INCH)
    # The straightedge swings with the cam, which is on the rotor here: offset = 36 mm · tan(error).
    error_deg = np.degrees(np.arctan(offset_in * INCH / 36.0))
    read = handbook.readings(setting.backplate_deg + error_deg, setting.screw_deg)
    assert read.mark_offset_mm == pytest.approx(offset_in * INCH, abs=1e-9)
    assert bool(read.timing_ok.all()) is passes
    assert bool(read.within_limits) is passes


def test_e_gap_lies_before_full_register():
    """Four poles: 45° from neutral to full register, and no E-gap at or beyond it."""
    assert build(poles=4, e_gap_deg=44.9).e_gap_deg == 44.9
    with pytest.raises(SpecError, match=r"e_gap_deg is 45; with 4 poles it must be below 45"):
        build(poles=4, e_gap_deg=45.0)


def test_contact_limits_and_mark_of_common_practice():
    """Common practice: 0.008 in to 0.010 in at the widest, the straightedge within 1/32 in of the mark."""
    low, high = 0.008 * INCH, 0.010 * INCH
    timing = internal_timing(
        build(
            **plain(
                gap_limits_mm=(low, high),
                marks={"radius_mm": 36.0, "tolerance_mm": INCH / 32},
                designed_setting={"backplate_deg": 0.0, "gap_mm": 0.009 * INCH},
            )
        )
    )
    assert timing.readings(0.0, 0.0).within_limits
    for thou, passes in ((7.9, False), (8.0, True), (10.0, True), (10.1, False)):
        setting = timing.adjust(thou * INCH / 1000)
        assert bool(timing.readings(setting.backplate_deg, setting.screw_deg).within_limits) is passes


@pytest.mark.parametrize("name", SHIPPED)
def test_shipped_magnetos_can_be_set_as_designed(name):
    magneto = find_magneto(name)
    assert 5 <= magneto.e_gap_deg <= 17
    low, high = magneto.backplate.range_deg
    # "Several degrees" of slot (common practice), about the designed setting.
    assert 4 <= high - low <= 30
    assert low < magneto.designed_setting.backplate_deg < high
    assert magneto.gap_limits_mm[0] < magneto.designed_setting.gap_mm < magneto.gap_limits_mm[1]
    read = internal_timing(magneto).readings(magneto.designed_setting.backplate_deg, 0.0)
    np.testing.assert_allclose(read.e_gap_error_deg, 0, atol=1e-6)
    assert read.within_limits
