"""From a table to a lobe's lift: known cams come back through noise, backlash and every way of writing readings.

The cams are the tests' own: lift by a motion law integrated in `tests.reference`, straight on the cam angle, so no
arm and nothing of magview is in them. Tolerances are in millimetres of lift.
"""

from itertools import product

import numpy as np
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from magview.physics.cam.breaker import lift_curve
from magview.physics.cam.lift_rows import Rows, directions, folded_deg, lay_branches_together, unwound_deg
from magview.physics.cam.setting import InternalTiming
from magview.physics.cam.traced_lift import MIN_PLACES, MeasuredLift, Measuring, measured_lift, with_measured_lift
from magview.spec.base import SpecError
from magview.spec.breaker import Breaker
from magview.spec.cam import MeasuredProfile
from magview.spec.files import dump_json
from magview.spec.library import find_magneto
from magview.spec.lift_table import LiftTable, parse_lift_table
from tests.counts import examples, sampled
from tests.reference import LAWS, law

TOP = 0.6
RISE, DWELL, FALL = 30.0, 8.0, 36.0


def lift(cam_deg, name="modified-sine", dwell=DWELL):
    """Lift [mm] of the tests' lobe at cam degrees past its top."""
    x = np.asarray(cam_deg, dtype=float)
    t = np.where(x < 0, 1 + (x + dwell / 2) / RISE, 1 - (x - dwell / 2) / FALL)
    return TOP * law(name, np.clip(t, 0.0, 1.0))[0]


ANGLES = np.arange(-42.0, 48.0, 1.0)


def table(angle, reading) -> LiftTable:
    """As from a file, with as many digits as a person writes."""
    return parse_lift_table("".join(f"{a:.3f};{s:.5f}\n" for a, s in zip(angle, reading, strict=True)))


def curve_of(found: MeasuredLift):
    return lift_curve(found.profile, Breaker(contact_arm_mm=25.0))


def furthest(found: MeasuredLift, name="modified-sine", dwell=DWELL, above=0.0) -> float:
    """Largest error of lift [mm] over the lobe, wherever its top was put: where it is counted from moves nothing."""
    x = np.linspace(-45, 50, 1901)
    x = x[lift(x, name, dwell) >= above]
    curve, true = curve_of(found), lift(x, name, dwell)
    best = (np.inf, 0.0)
    for reach in (2.0, 0.1, 0.005):
        around = best[1] + np.linspace(-reach, reach, 41)
        best = min((float(np.abs(curve.lift_mm(x - d) - true).max()), float(d)) for d in around)
    return best[0]


def refusal(angle, reading, how=None) -> str:
    with pytest.raises(SpecError) as caught:
        measured_lift(table(angle, reading), how or Measuring())
    told = str(caught.value)
    assert told.isprintable() and told[0].islower() and "Error" not in told
    return told


# ---------------------------------------------------------------------- round trips


@pytest.mark.parametrize(("name", "dwell", "step"), sampled(product(LAWS, (0.0, DWELL), (0.25, 1.0, 2.0)), 14))
def test_a_known_cam_comes_back(name, dwell, step):
    angle = np.arange(-44.0, 50.0, step)
    found = measured_lift(table(angle, lift(angle, name, dwell)), Measuring())
    # Where rise or fall starts with a jump in acceleration (harmonic), a coarse table rounds it off.
    assert furthest(found, name, dwell) < (0.004 if step <= 1 else 0.007)
    assert found.warnings == ()
    assert found.kept.all() and found.backlash_deg == 0.0
    assert np.abs(found.residual_mm).max() < 0.007
    assert found.top_at_deg == pytest.approx(0.0, abs=1.5)


@pytest.mark.parametrize("seed", range(4))
def test_noise_is_smoothed_and_its_size_said(seed):
    rng = np.random.default_rng(seed)
    sd = 0.005
    found = measured_lift(table(ANGLES, lift(ANGLES) + rng.normal(0, sd, len(ANGLES))), Measuring())
    assert furthest(found) < 2.5 * sd
    assert found.noise_mm == pytest.approx(sd, rel=0.4)
    # Smoother than the rows: over the flanks the curve lies nearer the truth than they do.
    flank = np.abs(ANGLES) < 30
    off = np.sqrt(np.mean((curve_of(found).lift_mm(found.raw_angle_deg) - lift(ANGLES))[flank] ** 2))
    assert off < 0.8 * sd


def test_a_dial_that_reads_in_hundredths_is_good_enough():
    assert furthest(measured_lift(table(ANGLES, np.round(lift(ANGLES), 2)), Measuring())) < 0.006


def test_the_fine_line_is_the_file_s_curve_between_its_samples_too():
    found = measured_lift(table(ANGLES, lift(ANGLES)), Measuring())
    assert found.smooth_angle_deg[[0, -1]].tolist() == [found.profile.angle_deg[0], found.profile.angle_deg[-1]]
    x = np.linspace(-35.0, 40.0, 7501)
    drawn = np.interp(x, found.smooth_angle_deg, found.smooth_lift_mm)
    assert np.abs(drawn - curve_of(found).lift_mm(x)).max() < 2e-4


@pytest.mark.parametrize("backlash", [0.1, 0.8, 3.0])
@pytest.mark.parametrize("noise", [0.0, 0.003])
def test_backlash_is_found_said_and_halved(backlash, noise):
    rng = np.random.default_rng(1)
    angle = np.r_[ANGLES, ANGLES[::-1]]
    seen = np.r_[lift(ANGLES - backlash / 2), lift(ANGLES[::-1] + backlash / 2)]
    found = measured_lift(table(angle, seen + rng.normal(0, noise, len(angle))), Measuring())
    assert found.backlash_deg == pytest.approx(backlash, abs=0.01 + 12 * noise)
    assert furthest(found) < 0.004 + 2 * noise
    assert any(f"{found.backlash_deg:.2f}° of cam apart" in w for w in map(str, found.warnings))


def test_an_outlier_is_left_out_and_said():
    for at, size in ((20, 0.15), (45, -0.2), (60, 0.1)):
        reading = lift(ANGLES)
        reading[at] += size
        found = measured_lift(table(ANGLES, reading), Measuring())
        assert np.flatnonzero(~found.kept).tolist() == [at]
        assert furthest(found) < 0.004
        assert found.residual_mm[at] == pytest.approx(size, abs=0.005)
        assert any("1 of 90 rows" in w for w in map(str, found.warnings))


def test_rows_in_no_order_are_the_same_rows():
    order = np.random.default_rng(2).permutation(len(ANGLES))
    mixed, plain = (measured_lift(table(a, lift(a)), Measuring()) for a in (ANGLES[order], ANGLES))
    assert mixed.profile == plain.profile and mixed.backlash_deg == 0.0
    np.testing.assert_allclose(mixed.raw_angle_deg, plain.raw_angle_deg[order])


def test_twenty_thousand_rows():
    angle = np.linspace(-42, 48, 20_000)
    noisy = lift(angle) + np.random.default_rng(3).normal(0, 0.005, len(angle))
    found = measured_lift(table(angle, noisy), Measuring())
    assert furthest(found) < 0.007 and len(found.raw_angle_deg) == 20_000
    assert len(found.profile.angle_deg) < 200


def test_a_cam_turned_twice_round_and_a_disc_that_starts_over():
    turned = np.arange(0.0, 720.0, 1.0)
    seen = lift((turned - 100.0 + 180.0) % 360.0 - 180.0)
    for angle in (turned, turned % 360.0):
        found = measured_lift(table(angle, seen), Measuring())
        assert furthest(found) < 0.004
        assert found.top_at_deg % 360.0 == pytest.approx(100.0, abs=1.5)


# ---------------------------------------------------------------------- what the columns are


def test_units_kinds_and_directions_are_one_cam():
    """The same lobe written eight ways gives the same lift; a dial at the heel sees A/K of it."""
    s = lift(ANGLES)
    ways = {
        "inches": (ANGLES, s / 25.4, Measuring(unit="in")),
        "thou": (ANGLES, s / 0.0254, Measuring(unit="thou")),
        "heel": (ANGLES, s / 1.6, Measuring(reading="heel-dial", contact_per_heel=1.6)),
        "dial set anywhere": (ANGLES, s + 3.21, Measuring()),
        "dial falls": (ANGLES, 5.0 - s, Measuring(falls=True)),
        "against rotation": (200.0 - ANGLES, s, Measuring(with_rotation=False)),
        "rotor": (ANGLES / 0.5, s, Measuring(angle="rotor", turns_per_rotor_turn=0.5)),
        "cam, whatever its ratio": (ANGLES, s, Measuring(angle="cam", turns_per_rotor_turn=0.5)),
        "gap, just touching": (ANGLES, s, Measuring(reading="gap")),
        "backwards": (ANGLES[::-1], s[::-1], Measuring()),
    }
    for way, (angle, reading, how) in ways.items():
        rows = "".join(f"{a:.4f};{r:.7f}\n" for a, r in zip(angle, reading, strict=True))
        found = measured_lift(parse_lift_table(rows), how)
        assert furthest(found) < 0.004, way
        assert found.warnings == (), way


def test_the_rise_is_the_side_that_meets_the_heel_first():
    """Rise 30°, fall 36°: read against rotation without saying so they change places."""
    right = measured_lift(table(ANGLES, lift(ANGLES)), Measuring()).profile
    wrong = measured_lift(table(ANGLES, lift(ANGLES)), Measuring(with_rotation=False)).profile
    assert -right.angle_deg[0] + 4 < right.angle_deg[-1]
    assert -wrong.angle_deg[0] > wrong.angle_deg[-1] + 4


def test_a_gap_tells_no_lift_while_the_contacts_are_closed():
    stop = 0.2
    gap = np.maximum(lift(ANGLES) - stop, 0.0)
    found = measured_lift(table(ANGLES, gap), Measuring(reading="gap", stop_mm=stop))
    assert furthest(found, above=stop + 0.02) < 0.004
    assert max(found.profile.contact_lift_mm) == pytest.approx(TOP, abs=0.003)
    assert any("Below 0.200 mm" in w and "not measured" in w for w in map(str, found.warnings))
    assert len(found.raw_angle_deg) == np.count_nonzero(gap)


@pytest.mark.parametrize(
    "more",
    [
        {"turns_per_rotor_turn": 0.0},
        {"contact_per_heel": float("nan")},
        {"contact_per_heel": 1000.0},
        {"stop_mm": -1.0},
        {"stop_mm": float("inf")},
    ],
)
def test_ratios_that_cannot_be_are_refused(more):
    with pytest.raises(ValueError, match="must be"):
        Measuring(**more)


def test_the_bounds_of_ratios_and_stops_themselves_are_allowed():
    for ratio in (0.01, 100.0):
        assert Measuring(turns_per_rotor_turn=ratio).turns_per_rotor_turn == ratio
        assert Measuring(contact_per_heel=ratio).contact_per_heel == ratio
    for stop in (0.0, 20.0):
        assert Measuring(stop_mm=stop).stop_mm == stop
    for beyond in ({"turns_per_rotor_turn": 0.0099}, {"contact_per_heel": 100.1}, {"stop_mm": 20.1}):
        with pytest.raises(ValueError, match="must be"):
            Measuring(**beyond)


# ---------------------------------------------------------------------- honest warnings and refusals


def test_few_rows_on_a_flank_are_said():
    angle = np.arange(-42.0, 50.0, 8.0)
    found = measured_lift(table(angle, lift(angle)), Measuring())
    assert any("Only" in w and "rise" in w for w in map(str, found.warnings))


def test_a_table_that_starts_on_the_flank_is_said():
    angle = ANGLES[ANGLES > -24.0]
    found = measured_lift(table(angle, lift(angle)), Measuring())
    assert any("begins on the flank" in w for w in map(str, found.warnings))
    assert furthest(found, above=0.3) < 0.01


@pytest.mark.parametrize("slip", [0.05, 0.02, -0.02, -0.05])
def test_a_base_circle_that_reads_differently_on_either_side_is_said(slip):
    slipped = lift(ANGLES) + np.where(ANGLES > 0, slip, 0.0)
    found = measured_lift(table(ANGLES, slipped), Measuring())
    (said,) = (w for w in map(str, found.warnings) if "The base circle reads" in w)
    assert f"{abs(slip):.3f} mm more {'after' if slip > 0 else 'before'} the lobe than" in said


def test_an_uneven_base_circle_is_said():
    angle = np.arange(-80.0, 80.0, 1.0)
    bump = 0.06 * np.exp(-(((angle + 60) / 4) ** 2))
    found = measured_lift(table(angle, lift(angle) + bump), Measuring())
    assert any("before the lobe is uneven" in w for w in map(str, found.warnings))
    assert furthest(found) < 0.012


def test_great_scatter_is_said():
    noisy = lift(ANGLES) + np.random.default_rng(5).normal(0, 0.03, len(ANGLES))
    assert any("scatter by" in w for w in map(str, measured_lift(table(ANGLES, noisy), Measuring()).warnings))


def test_scatter_too_great_for_a_lobe_is_refused():
    noisy = lift(ANGLES) + np.random.default_rng(5).normal(0, 0.12, len(ANGLES))
    assert "at most 10 % is taken for a lobe" in refusal(ANGLES, noisy)


def test_spare_columns_are_said():
    rows = "".join(f"{a};{s:.5f};7\n" for a, s in zip(ANGLES, lift(ANGLES), strict=True))
    assert str(measured_lift(parse_lift_table(rows), Measuring()).warnings[0]).startswith("The table has 3 columns")


@pytest.mark.parametrize(
    ("angle", "reading", "told"),
    [
        (ANGLES, np.zeros(len(ANGLES)), "comes to 0 mm"),
        (ANGLES, lift(ANGLES) * 1e-3, "is allowed: are its unit and the kind of reading right?"),
        (ANGLES, lift(ANGLES) * 100, "is allowed: are its unit"),
        (ANGLES, 1.0 - lift(ANGLES), "say that the dial falls with lift"),
        (ANGLES[ANGLES < 0], lift(ANGLES[ANGLES < 0]), "one side of the lobe only"),
        (ANGLES, ANGLES / 100.0, "one side of the lobe only"),
        (ANGLES[abs(ANGLES) < 20], lift(ANGLES[abs(ANGLES) < 20]), "base circle"),
        (np.repeat([1.0, 2.0, 3.0], 4), np.tile([0.0, 0.5, 0.0, 0.1], 3), "at 3 different angles; it must be at 7"),
        (np.full(10, 5.0), np.arange(10) / 10, "at 1 different angles"),
    ],
)
def test_what_is_no_lobe_is_refused(angle, reading, told):
    assert told in refusal(angle, reading)


def test_a_lobe_too_narrow_for_a_file_is_refused_with_the_reason():
    """Of 74 millionths of a degree: no two knots of the file are nearer than a thousandth, and it takes five."""
    rows = "".join(f"{a:.7f};{s:.5f}\n" for a, s in zip(ANGLES * 1e-6, lift(ANGLES), strict=True))
    with pytest.raises(SpecError, match=r"no lobe can be drawn .*: angle_deg is .*; it must have at least 5 values$"):
        measured_lift(parse_lift_table(rows), Measuring())


def test_several_lobes_are_named_by_the_table_s_own_angles():
    angle = np.arange(0.0, 360.0, 1.0)
    seen = lift((angle - 50.0) % 180.0 - 90.0)  # tops at 140° and 320°
    told = refusal(angle, seen)
    assert "shows 2 tops" in told and "one lobe, from base circle to base circle" in told
    tops = [float(part) for part in told.split("near ")[1].split(";")[0].replace("°", "").split(", ")]
    assert tops == pytest.approx([140.0, 320.0], abs=5.0)


def test_rows_enough_are_just_enough():
    angle = np.array([-60.0, -40, -20, 0, 20, 42, 60])
    assert len(angle) == MIN_PLACES
    assert max(measured_lift(table(angle, lift(angle)), Measuring()).profile.contact_lift_mm) == pytest.approx(
        TOP, rel=0.1
    )
    assert "at 6 different angles" in refusal(angle[:-1], lift(angle[:-1]))


# ---------------------------------------------------------------------- into a magneto


def test_the_lift_goes_into_a_file_and_reads_back():
    magneto = find_magneto("traced-six")
    found = measured_lift(table(ANGLES, lift(ANGLES)), Measuring())
    own = with_measured_lift(magneto, found)
    assert isinstance(own.cam.profile, MeasuredProfile) and "contact_lift_mm" in dump_json(own)
    timing = InternalTiming(own)
    # Opening moves from gap 0.3 to 0.2 as the rise says: where the tests' own flank has 0.3 and 0.4 of lift.
    x = np.linspace(-34, -4, 60_001)
    where = np.interp([TOP - 0.3, TOP - 0.2], lift(x), x)
    moved = timing.adjust(0.2).backplate_deg - timing.adjust(0.3).backplate_deg
    assert moved == pytest.approx(where[0] - where[1], abs=0.15)


def test_a_lift_that_does_not_suit_the_magneto_is_refused():
    found = measured_lift(table(ANGLES, lift(ANGLES) / 2.5), Measuring())  # 0.24 mm, below the designed gap of 0.3
    with pytest.raises(SpecError, match=r"designed_setting\.gap_mm"):
        with_measured_lift(find_magneto("traced-six"), found)
    wide = measured_lift(table(ANGLES * 4, lift(ANGLES)), Measuring())
    with pytest.raises(SpecError, match="overlap"):
        with_measured_lift(find_magneto("traced-six"), wide)


# ---------------------------------------------------------------------- rows


def test_a_disc_s_jump_is_unwound():
    np.testing.assert_allclose(unwound_deg(np.array([350.0, 358, 4, 10, 2, 355])), [350, 358, 364, 370, 362, 355])
    plain = np.array([-50.0, 0, 120, 170])
    assert unwound_deg(plain) is plain


def test_directions_of_turning():
    there = np.array([0.0, 1, 2, 3, 3, 2, 1, 0])
    assert directions(there).tolist() == [1, 1, 1, 1, 1, -1, -1, -1]
    assert directions(-there).tolist() == [-1, -1, -1, -1, -1, 1, 1, 1]
    assert set(directions(np.random.default_rng(0).permutation(100.0 * np.arange(100))).tolist()) == {1}
    # A row read twice belongs to the move before it, also on the way back; one at the start to the move after it.
    assert directions(np.array([3.0, 4, 3, 3, 2])).tolist() == [1, 1, -1, -1, -1]
    assert directions(np.array([5.0, 5, 4, 4, 5])).tolist() == [-1, -1, -1, -1, 1]
    assert directions(np.array([5.0, 5, 6, 5])).tolist() == [1, 1, 1, -1]
    assert directions(np.array([5.0, 5, 4])).tolist() == [-1, -1, -1]
    assert directions(np.full(5, 3.0)).tolist() == [1] * 5


def test_one_direction_has_no_backlash():
    rows = Rows(ANGLES.copy(), lift(ANGLES), np.ones(len(ANGLES), dtype=bool))
    assert lay_branches_together(rows, directions(ANGLES)) == 0.0
    np.testing.assert_array_equal(rows.angle, ANGLES)


def test_two_directions_over_different_stretches_have_no_backlash_to_tell():
    """One flank turned through forwards, and the next lobe's backwards: nowhere do the two overlap."""
    flank = np.arange(-42.0, 1.0)
    angle = np.r_[flank, 100.0 - flank]
    rows = Rows(angle.copy(), np.r_[lift(flank), lift(flank)], np.ones(len(angle), dtype=bool))
    way = np.repeat([1.0, -1.0], len(flank))
    assert lay_branches_together(rows, way) == 0.0
    np.testing.assert_array_equal(rows.angle, angle)


def test_more_than_any_backlash_is_not_all_put_down_to_it():
    """14° apart, where no drive has more than 10° of play: the readings are brought no nearer than by that."""
    angle = np.r_[ANGLES, ANGLES[::-1]]
    rows = Rows(angle.copy(), np.r_[lift(ANGLES - 7.0), lift(ANGLES[::-1] + 7.0)], np.ones(len(angle), dtype=bool))
    assert abs(lay_branches_together(rows, directions(angle))) == pytest.approx(10.0)
    assert np.abs(rows.angle - angle) == pytest.approx(5.0)


@pytest.mark.parametrize("fails", ["by refusing", "by no numbers"])
def test_a_table_is_read_too_where_the_smoothing_spline_gives_up(monkeypatch, fails):
    """Its equations can be singular to the last bit; the curve then goes through the rows, which are exact here."""

    def spline(x, y, weight):
        if fails == "by refusing":
            raise np.linalg.LinAlgError("singular matrix")
        return lambda at: np.full_like(at, np.nan)

    monkeypatch.setattr("scipy.interpolate.make_smoothing_spline", spline)
    assert furthest(measured_lift(table(ANGLES, lift(ANGLES)), Measuring())) < 0.003


def test_folding_keeps_the_lobe_whole_even_with_a_wild_row():
    turned = np.arange(0.0, 720.0, 2.0)
    seen = lift((turned - 10.0 + 180.0) % 360.0 - 180.0)
    seen[100] = 5.0
    folded = folded_deg(turned, seen)
    assert np.ptp(folded) <= 360.0
    on_lobe = folded[lift((turned - 10.0 + 180.0) % 360.0 - 180.0) > 0.1]
    assert np.ptp(on_lobe) < RISE + DWELL + FALL


# ---------------------------------------------------------------------- anything at all


readings = st.one_of(
    st.floats(-1e6, 1e6),
    st.floats(-1, 1),
    st.sampled_from([0.0, 0.1, 0.5, 1.0, 1e-12]),
    st.integers(-5, 5).map(float),
)


@settings(max_examples=examples(150), suppress_health_check=[HealthCheck.too_slow])
@given(
    st.lists(st.tuples(readings, readings), min_size=5, max_size=60),
    st.sampled_from(["contact-lift", "gap", "heel-dial"]),
    st.booleans(),
    st.sampled_from([0.0, 0.2]),
)
def test_any_table_gives_a_profile_that_is_accepted_or_one_sentence(rows, kind, falls, stop):
    columns = tuple(zip(*rows, strict=True))
    given_table = LiftTable(columns[0], columns[1], tuple(range(1, len(rows) + 1)), (), 2, "space", ".")
    answer(given_table, Measuring(reading=kind, falls=falls, stop_mm=stop))


@settings(max_examples=examples(100), suppress_health_check=[HealthCheck.too_slow])
@given(st.data())
def test_any_spoilt_lobe_gives_a_profile_that_is_accepted_or_one_sentence(data):
    """Near enough to a lobe that most are taken: rows moved, repeated, cut, scaled, made noisy."""
    step, noise = data.draw(st.sampled_from([0.5, 2.0, 6.0])), data.draw(st.sampled_from([0.0, 0.01, 0.1]))
    first, last = data.draw(st.floats(-60, -10)), data.draw(st.floats(5, 60))
    angle = np.arange(first, last, step)
    rng = np.random.default_rng(data.draw(st.integers(0, 1000)))
    seen = lift(angle, data.draw(st.sampled_from(LAWS))) * data.draw(st.floats(0.1, 5.0)) + rng.normal(
        0, noise, len(angle)
    )
    for at in data.draw(st.lists(st.integers(0, 1000), max_size=4)):
        if len(angle):
            seen[at % len(angle)] += data.draw(st.floats(-2, 2))
            angle[at % len(angle)] += data.draw(st.floats(-5, 5))
    if data.draw(st.booleans()):
        angle, seen = np.r_[angle, angle[::-1] + 0.5], np.r_[seen, seen[::-1]]
    columns = (tuple(angle.tolist()), tuple(seen.tolist()))
    given_table = LiftTable(*columns, tuple(range(len(angle))), (), 2, "space", ".")
    answer(given_table, Measuring())


def answer(given_table: LiftTable, how: Measuring) -> None:
    found, told = None, "taken"
    try:
        found = measured_lift(given_table, how)
    except SpecError as error:
        told = str(error)
    assert told.isprintable() and len(told) <= 600 and "nan" not in told
    if found is None:
        return
    MeasuredProfile.model_validate(found.profile.model_dump())
    curve = curve_of(found)
    assert np.isfinite(curve.before_top_deg(curve.top_mm / 2))
    count = len(found.raw_angle_deg)
    assert all(len(a) == count for a in (found.raw_lift_mm, found.residual_mm, found.kept))
    assert np.isfinite(found.residual_mm).all() and np.isfinite(found.smooth_lift_mm).all()
    for text in map(str, found.warnings):
        assert text.isprintable() and text.endswith(".") and "nan" not in text
