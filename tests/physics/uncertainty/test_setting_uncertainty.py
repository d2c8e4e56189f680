"""How sure a setting is: the measurement models against the forward physics, probabilities against plane geometry."""

import math
from dataclasses import replace

import numpy as np
import pytest
from scipy.optimize import brentq

from magview.physics.cam.setting import InternalTiming, internal_timing
from magview.physics.engine.coupling import rotor_ahead_deg
from magview.physics.uncertainty.instruments import INSTRUMENTS, Instrument, finer, instrument, instruments
from magview.physics.uncertainty.measurement import (
    Improvement,
    Judgement,
    better_instrument,
    improve,
    judge,
    judge_linear,
)
from magview.physics.uncertainty.monte_carlo import Cancelled
from magview.physics.uncertainty.setting_uncertainty import (
    EngineReadings,
    InternalReadings,
    engine_measurement,
    internal_measurement,
)
from magview.spec.library import find_installation, find_magneto, shipped_names
from tests.counts import sampled
from tests.magnetos import build, in_thousandths, on_the_published_coupling
from tests.wording import says

INTERNAL_ROLES = ("rule", "straightedge", "blade", "feel", "opening", "rotor turning", "lead-in", "tightening")
ENGINE_ROLES = ("disc", "opening", "crank turning", "lead-in")
TRIALS = 200_000
FIVE_SIGMA = 5 * 0.5 / math.sqrt(TRIALS)
"""Of a share of trials, at its widest."""


def tool(role, offset=0.0, half_width=0.0, unit="mm") -> Instrument:
    return Instrument(f"test-{role}", role, f"test {role}", offset, half_width, unit, "made up")


def perfect(roles, *others: Instrument) -> tuple[Instrument, ...]:
    """Instruments without error for all roles but those given."""
    given = {other.role: other for other in others}
    return tuple(given.get(role, tool(role)) for role in roles)


def rng() -> np.random.Generator:
    return np.random.default_rng(11)


def values(measurement) -> list[float]:
    return [outcome.linear.estimate for outcome in judge_linear(measurement)]


def judged(measurement, **more) -> Judgement:
    found = judge(measurement, rng(), TRIALS, **more)
    assert isinstance(found, Judgement)
    return found


# ---------------------------------------------------------------------- instruments


def test_instruments_stand_in_order_and_say_where_their_half_width_comes_from():
    assert len({i.key for i in INSTRUMENTS}) == len(INSTRUMENTS)
    for role in (*INTERNAL_ROLES, *ENGINE_ROLES):
        widths = [i.half_width for i in instruments(role)]
        assert len(widths) >= 2
        assert widths == sorted(widths, reverse=True)
        assert len(set(widths)) == len(widths)
        steps = [instruments(role)[0]]
        while (following := finer(steps[-1])) is not None:
            steps.append(following)
        assert tuple(steps) == instruments(role)
    assert all(i.name and i.basis and i.half_width >= 0 for i in INSTRUMENTS)
    with pytest.raises(KeyError):
        instrument("nothing")


def test_each_instrument_reads_in_the_unit_of_its_role():
    """Lengths at rim and contacts, angles of rotor, crank and disc, shares of play and creep."""
    units = dict.fromkeys(("rule", "straightedge", "blade", "feel", "opening"), "mm")
    units |= dict.fromkeys(("rotor turning", "crank turning", "disc"), "deg")
    units |= {"lead-in": "of the play", "tightening": "of the creep"}
    assert {i.key: i.unit for i in INSTRUMENTS} == {i.key: units[i.role] for i in INSTRUMENTS}
    inputs = internal_measurement(in_thousandths(), InternalReadings(0.0, 0.2)).inputs
    assert [item.unit for item in inputs] == ["mm"] * 6 + ["deg"] * 3


def test_scales_are_read_to_half_a_division():
    assert instrument("rule-32nds").half_width == pytest.approx(25.4 / 64)
    assert instrument("disc-half-deg").half_width == 0.25
    assert instrument("blades-thou").half_width == pytest.approx(0.0127)
    assert instrument("blades-thou").offset == pytest.approx(0.0127)


# ---------------------------------------------------------------------- internal timing, forwards


WORN = {
    "heel_wear_mm": 0.02,
    "pip_height_mm": 0.03,
    "lobe_angle_error_deg": (0.4, 0.0, 0.0, 0.0),
    "lobe_lift_error_mm": (0.02, 0.0, 0.0, 0.0),
}


@pytest.mark.parametrize("ratio", [1.0, 0.5])
@pytest.mark.parametrize("screw", ["eccentric", "threaded"])
def test_readings_without_error_give_the_setting_back(ratio, screw):
    """The bench the other way round: where does the forward model show the contacts `parting` apart, and what
    would straightedge and blade read there? The measurement must find the true opening and gap again."""
    threaded = {"kind": "threaded", "lead_mm": 0.7, "range_deg": (-90.0, 90.0), "positive_is_clockwise": True}
    magneto = build(
        cam=replace_in_cam(ratio), condition=WORN, **({"contact_screw": threaded} if screw == "threaded" else {})
    )
    timing = InternalTiming(magneto)
    plate, sigma, creep, play, parting = 1.3, 6.0, 5.0, 0.7, 0.006
    now, after = timing.readings(plate, sigma), timing.readings(plate, sigma + creep)
    opens = float(now.opens_deg[0])
    shown = brentq(lambda at: float(timing.gap_mm(at, plate, sigma)) - parting, opens + 1e-6, opens + 8.0)
    assert shown > opens
    offset = float(timing.mark_offset_mm(shown - timing.places_deg[0]))
    magneto = magneto.model_copy(
        update={
            "condition": magneto.condition.model_copy(
                update={"coupling_backlash_deg": play, "screw_creep_deg": creep}
            )
        }
    )
    tools = perfect(
        INTERNAL_ROLES,
        tool("opening", parting),
        tool("lead-in", 0.5, unit="of the play"),
        tool("tightening", 1.0, unit="of the creep"),
    )
    readings = InternalReadings(offset, float(now.blade_gap_mm[0]), screw_deg=sigma, instruments=tools)
    error, gap = values(internal_measurement(magneto, readings))
    assert gap == pytest.approx(float(after.max_gap_mm[0]), abs=1e-12)
    assert error == pytest.approx(float(after.e_gap_error_deg[0]) + 0.5 * play, abs=1e-7)


def replace_in_cam(ratio: float) -> dict:
    lobes = (0.0, 90.0, 180.0, 270.0) if ratio == 1.0 else tuple(np.arange(8) * 45.0)[:4]
    return {
        "turns_per_rotor_turn": ratio,
        "lobe_peaks_deg": lobes,
        "profile": {
            "kind": "law",
            "base_radius_mm": 9.0,
            "lift_mm": 0.4,
            "rise_deg": 30.0 * ratio,
            "dwell_deg": 5.0,
            "fall_deg": 35.0 * ratio,
            "law": "cycloidal",
        },
    }


def test_a_later_answer_of_the_indicator_means_that_they_parted_earlier():
    magneto = in_thousandths()
    late, later = (
        values(internal_measurement(magneto, InternalReadings(0.0, 0.23, instruments=perfect(INTERNAL_ROLES, t))))[0]
        for t in (tool("opening", 0.002), tool("opening", 0.02))
    )
    assert later < late < 0.0


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_rule_s_share_is_plane_trigonometry(name):
    """A rule to 1/32 in alone: half-width 1/64 in at the rim's radius, straight at the mark, cam to rotor."""
    magneto = find_magneto(name)
    tools = perfect(INTERNAL_ROLES, instrument("rule-32nds"))
    gap = magneto.designed_setting.gap_mm
    error, _ = judge_linear(internal_measurement(magneto, InternalReadings(0.0, gap, instruments=tools)))
    half_deg = math.degrees(25.4 / 64 / magneto.marks.radius_mm) / magneto.cam.turns_per_rotor_turn
    assert error.linear.standard_uncertainty == pytest.approx(half_deg / math.sqrt(3), rel=1e-4)
    assert error.matters_most.share == pytest.approx(1.0)
    assert error.matters_most.input.name == says("straightedge from the mark")
    assert "rule to thirty-seconds" in error.matters_most.input.source


def test_straightedge_and_rule_err_the_same_way():
    """At the mark a millimetre at the rim is 1/radius radians of the cam, whether laid wrong or read wrong."""
    magneto = in_thousandths()
    opening = judge_linear(internal_measurement(magneto, InternalReadings(0.0, 0.2159)))[0]
    slope = math.degrees(1 / magneto.marks.radius_mm) / magneto.cam.turns_per_rotor_turn
    rule, straightedge = opening.linear.budget[:2]
    assert (rule.input.name, straightedge.input.name) == (
        says("straightedge from the mark"),
        says("straightedge along the step"),
    )
    assert (rule.sensitivity, straightedge.sensitivity) == pytest.approx((slope, slope), rel=1e-4)


def test_blade_that_passes_and_the_next_enclose_the_gap():
    """Limits 0.2032 mm to 0.254 mm; a 0.19 mm blade passes and 0.24 mm does not: P = (0.24 − 0.2032)/0.05."""
    magneto = in_thousandths()
    tools = perfect(INTERNAL_ROLES, instrument("blades-0.05mm"))
    found = judged(internal_measurement(magneto, InternalReadings(0.0, 0.19, instruments=tools)))
    gap = found.outcomes[1]
    assert gap.linear.estimate == pytest.approx(0.215)
    assert gap.drawn.values.min() >= 0.19
    assert gap.drawn.values.max() <= 0.24
    expected = (0.24 - 0.2032) / 0.05
    assert gap.probability_in_limits == pytest.approx(expected, abs=FIVE_SIGMA)
    assert found.probability_in_limits == gap.probability_in_limits  # the opening is sure
    assert found.weakest is gap


def test_probability_of_the_mark_is_a_share_of_two_rectangles():
    """Rule ±a and straightedge ±b about an offset: P(|offset| ≤ limit) from the trapezium's area."""
    magneto, a, b, offset = in_thousandths(), 0.4, 0.2, 0.55
    limit = magneto.marks.tolerance_mm
    tools = perfect(INTERNAL_ROLES, tool("rule", half_width=a), tool("straightedge", half_width=b))
    found = judged(internal_measurement(magneto, InternalReadings(offset, 0.23, instruments=tools)))
    r = np.linspace(-a, a, 200_001)
    expected = float(np.clip((limit - offset - r + b) / (2 * b), 0, 1).mean())
    assert 0.6 < expected < 0.9
    assert found.outcomes[0].probability_in_limits == pytest.approx(expected, abs=FIVE_SIGMA)


def test_both_in_limits_is_less_likely_than_either():
    magneto = in_thousandths()
    found = judged(internal_measurement(magneto, InternalReadings(0.6, 0.1905)))
    opening, gap = (outcome.probability_in_limits for outcome in found.outcomes)
    assert found.probability_in_limits < min(opening, gap)
    # The two share next to nothing: independent to within the trials and the flank's slope.
    assert found.probability_in_limits == pytest.approx(opening * gap, abs=0.01)


def test_linear_and_monte_carlo_agree_on_the_opening():
    """Default instruments: several readings of like size, near normal, on a nearly straight flank."""
    found = judged(internal_measurement(in_thousandths(), InternalReadings(0.3, 0.2159)))
    opening = found.outcomes[0]
    assert opening.agreement.agree
    assert opening.drawn.mean == pytest.approx(opening.linear.estimate, abs=0.01)
    assert opening.drawn.standard_uncertainty == pytest.approx(opening.linear.standard_uncertainty, rel=0.01)


def test_play_and_creep_count_only_where_habits_let_them():
    magneto = in_thousandths()
    careful = internal_measurement(magneto, InternalReadings(0.0, 0.2159))
    hasty = careful.using(instrument("to-and-fro")).using(instrument("before-tightening"))
    by_name = [{line.input.name: line for line in judge_linear(m)[0].linear.budget} for m in (careful, hasty)]
    assert by_name[0]["play not taken up"].uncertainty == by_name[0]["creep of the screw"].uncertainty == 0
    play = magneto.condition.coupling_backlash_deg / 2 / math.sqrt(3)
    assert by_name[1]["play not taken up"].uncertainty == pytest.approx(play, rel=1e-6)
    # 3° of an eccentric of 0.5 mm about its middle moves the stop 0.0262 mm.
    gap = {line.input.name: line for line in judge_linear(hasty)[1].linear.budget}
    creep = 0.5 * math.radians(3.0) / math.sqrt(3)
    assert gap["creep of the screw"].uncertainty == pytest.approx(creep, rel=1e-3)
    assert by_name[1]["creep of the screw"].uncertainty > 0.1


def test_pips_are_added_to_what_the_blade_says():
    magneto = build(condition={"pip_height_mm": 0.03})
    tools = perfect(INTERNAL_ROLES)
    for pip, gap in ((None, 0.23), (0.0, 0.20), (0.05, 0.25)):
        readings = InternalReadings(0.0, 0.20, pip_mm=pip, instruments=tools)
        assert values(internal_measurement(magneto, readings))[1] == pytest.approx(gap)
    unsure = InternalReadings(0.0, 0.20, pip_half_width_mm=0.015, instruments=tools)
    gap = judge_linear(internal_measurement(magneto, unsure))[1]
    assert gap.linear.standard_uncertainty == pytest.approx(0.015 / math.sqrt(3))


@pytest.mark.parametrize(
    ("readings", "words"),
    [
        (InternalReadings(0.0, 5.0), "cannot be"),
        (InternalReadings(0.0, 0.0, instruments=perfect(INTERNAL_ROLES, tool("opening", 0.02))), "cannot be"),
        (InternalReadings(0.0, 0.02, instruments=perfect(INTERNAL_ROLES, tool("opening", 0.021))), "cannot be"),
        (InternalReadings(math.nan, 0.2), "no estimate"),
        (InternalReadings(0.0, 0.2, instruments=perfect(ENGINE_ROLES)), "0 instruments are given for rule"),
        (InternalReadings(0.0, 0.2, instruments=(*perfect(INTERNAL_ROLES), tool("rule"))), "2 instruments"),
    ],
)
def test_readings_that_cannot_be_are_refused(readings, words):
    with pytest.raises(ValueError, match=words):
        internal_measurement(in_thousandths(), readings)


# ---------------------------------------------------------------------- better instruments


def test_the_finer_instrument_is_for_the_reading_that_matters_most():
    measurement = internal_measurement(in_thousandths(), InternalReadings(0.6, 0.2159))
    opening, gap = judge_linear(measurement)
    assert better_instrument(measurement, opening) == finer(instrument("rule-32nds"))
    assert better_instrument(measurement, gap) == finer(instrument("blades-thou"))
    finest = tuple(instruments(role)[-1] for role in INTERNAL_ROLES)
    best = internal_measurement(in_thousandths(), InternalReadings(0.6, 0.2159, instruments=finest))
    assert better_instrument(best, judge_linear(best)[0]) is None


def test_a_better_instrument_keeps_the_finding_and_narrows_it():
    measurement = internal_measurement(in_thousandths(), InternalReadings(0.6, 0.2159))
    found = improve(measurement, rng(), TRIALS)
    assert isinstance(found, Improvement)
    weakest = [o.quantity.key for o in found.before.outcomes].index(found.before.weakest.quantity.key)
    assert found.was.role == found.instead.role
    before, after = found.before.outcomes[weakest], found.after.outcomes[weakest]
    assert after.linear.estimate == pytest.approx(before.linear.estimate)
    assert after.linear.standard_uncertainty < before.linear.standard_uncertainty
    assert after.probability_in_limits > before.probability_in_limits
    # The share that the instrument had shrinks by the square of the half-widths.
    share = sum(
        line.share
        for reading, line in zip(measurement.readings, before.linear.budget, strict=True)
        if reading.tool == found.was
    )
    smaller = (found.instead.half_width / found.was.half_width) ** 2
    expected = before.linear.standard_uncertainty**2 * (1 - share + share * smaller)
    assert after.linear.standard_uncertainty**2 == pytest.approx(expected, rel=1e-3)


def test_an_instrument_of_choice():
    measurement = internal_measurement(in_thousandths(), InternalReadings(0.6, 0.2159))
    found = improve(measurement, rng(), TRIALS, instead=instrument("straightedge-clamped"))
    assert isinstance(found, Improvement)
    assert (found.was.key, found.instead.key) == ("straightedge-hand", "straightedge-clamped")
    # What it does not touch is drawn from the same numbers.
    np.testing.assert_array_equal(found.before.outcomes[1].drawn.values, found.after.outcomes[1].drawn.values)
    with pytest.raises(ValueError, match="nothing was read"):
        improve(measurement, rng(), TRIALS, instead=instrument("disc-1deg"))


def test_nothing_to_improve():
    tools = tuple(instruments(role)[-1] for role in INTERNAL_ROLES)
    measurement = internal_measurement(in_thousandths(), InternalReadings(0.0, 0.22, instruments=tools))
    assert improve(measurement, rng(), 1000) is None


def test_what_has_no_share_is_not_read_better():
    """Without play it does not matter how the opening is approached, though a finer habit is known."""
    magneto = build(condition={"coupling_backlash_deg": 0.0})
    finest = (instruments(role)[-1] for role in INTERNAL_ROLES)
    tools = tuple(instrument("to-and-fro") if t.role == "lead-in" else t for t in finest)
    measurement = internal_measurement(magneto, InternalReadings(0.0, 0.22, instruments=tools))
    assert finer(instrument("to-and-fro")) == instrument("led-in")
    assert better_instrument(measurement, judge_linear(measurement)[0]) is None


@pytest.mark.parametrize(("digits", "u_like"), [(1, 0.5), (2, 0.05)])
def test_digits_that_matter_reach_both_runs(digits, u_like):
    """δ is half a unit of the first or second digit of u (JCGM 101 7.9.2), whose power of ten is read off log10."""
    measurement = internal_measurement(in_thousandths(), InternalReadings(0.6, 0.2159))
    found = improve(measurement, rng(), 2000, significant_digits=digits)
    assert isinstance(found, Improvement)
    for outcome in (*found.before.outcomes, *found.after.outcomes):
        power = 10.0 ** math.floor(math.log10(outcome.drawn.standard_uncertainty))
        assert outcome.agreement.tolerance == pytest.approx(u_like * power)


@pytest.mark.parametrize("stop_at", [0.2, 0.7])
def test_both_runs_can_be_stopped_and_report_as_one(stop_at):
    measurement = internal_measurement(in_thousandths(), InternalReadings(0.6, 0.2159))
    done = [0.0]
    whole = improve(measurement, rng(), TRIALS, progress=done.append)
    assert isinstance(whole, Improvement)
    assert done == sorted(done)
    assert done[-1] == pytest.approx(1.0)
    seen = [0.0]
    found = improve(measurement, rng(), TRIALS, progress=seen.append, should_stop=lambda: seen[-1] > stop_at)
    assert isinstance(found, Cancelled)
    assert found.done == pytest.approx(seen[-1])
    assert stop_at < found.done < stop_at + 0.2


# ---------------------------------------------------------------------- timing to the engine


@pytest.fixture
def installation():
    return on_the_published_coupling()


def exact(*others):
    return perfect(ENGINE_ROLES, *(others or (tool("disc", unit="deg"),)))


@pytest.mark.parametrize(
    ("stops", "reads", "fires"),
    [
        ((30.0, -30.0), 26.0, 26.0),
        ((31.0, -29.0), 26.0, 25.0),
        ((-29.0, 31.0), 26.0, 25.0),
        ((15.0, 335.0), 20.5, 25.5),  # the disc reads −5° at top dead centre
        ((215.0, 145.0), 205.0, 25.0),  # … and 180°
    ],
)
def test_disc_s_zero_is_taken_off(installation, stops, reads, fires):
    found = values(engine_measurement(installation, EngineReadings(stops, reads, instruments=exact())))
    assert found == [pytest.approx(fires)]


def test_a_disc_to_one_degree(installation):
    """A reading less half the sum of two, each ±0.5°: u² = (1 + ½)·0.5²/3. The difference is free of the zero."""
    readings = EngineReadings((30.0, -30.0), 25.0, 25.0, instruments=perfect(ENGINE_ROLES, instrument("disc-1deg")))
    left, right, difference = judge_linear(engine_measurement(installation, readings))
    for side in (left, right):
        assert side.linear.standard_uncertainty == pytest.approx(math.sqrt(1.5 / 12), rel=1e-9)
        assert [line.share for line in side.linear.budget[:2]] == pytest.approx([1 / 6, 1 / 6])
    assert difference.linear.standard_uncertainty == pytest.approx(math.sqrt(2 / 12), rel=1e-9)
    assert [line.share for line in difference.linear.budget[:2]] == pytest.approx([0, 0], abs=1e-9)
    assert [outcome.quantity.unit for outcome in (left, right, difference)] == ["deg"] * 3
    assert (left.quantity.low, left.quantity.high) == (24.0, 26.0)
    assert (difference.quantity.low, difference.quantity.high) == (-1.0, 1.0)


def test_difference_of_two_rectangles_is_a_triangle(installation):
    """Two readings to ±0.5° that differ by 0.5°: P(|difference| ≤ 1) = 1 − ½·0.5² of the triangle on ±1."""
    readings = EngineReadings((30.0, -30.0), 25.5, 25.0, instruments=perfect(ENGINE_ROLES, instrument("disc-1deg")))
    found = judged(engine_measurement(installation, readings))
    assert found.outcomes[2].probability_in_limits == pytest.approx(1 - 0.5 * 0.5**2, abs=FIVE_SIGMA)
    assert [outcome.quantity.key for outcome in found.outcomes] == ["left", "right", "difference"]


def test_difference_is_against_a_wanted_stagger():
    """The shipped four-cylinder engine wants 24° left and 20° right: read so, nothing is wrong."""
    staggered = find_installation("four-opposed-left")
    readings = EngineReadings((40.0, -40.0), 24.0, 20.0, instruments=exact())
    assert values(engine_measurement(staggered, readings)) == pytest.approx([24.0, 20.0, 0.0])


def test_one_magneto_alone(installation):
    right = engine_measurement(installation, EngineReadings((30.0, -30.0), None, 25.0))
    assert [q.key for q in right.quantities] == ["right"]
    with pytest.raises(ValueError, match="neither magneto"):
        engine_measurement(installation, EngineReadings((30.0, -30.0), None))


def test_play_not_taken_up_makes_it_fire_later_in_service(installation):
    """The rotor ahead of the drive by the whole play reaches its opening that much too early on the crank."""
    play, k = installation.magneto.condition.coupling_backlash_deg, installation.rotor_turns_per_crank_turn
    ahead = rotor_ahead_deg(0.0, -math.inf, play)
    assert ahead == play > 0
    phase, opens = 40.0, 11.0  # rotor = phase + k·crank + ahead
    read_btdc, service_btdc = ((phase + shift - opens) / k for shift in (ahead, 0.0))
    tools = exact(tool("disc", unit="deg"), tool("lead-in", 1.0, unit="of the play"))
    found = values(engine_measurement(installation, EngineReadings((30.0, -30.0), read_btdc, instruments=tools)))
    assert found == [pytest.approx(service_btdc)]


@pytest.mark.parametrize("name", ["seven-radial-left", "nine-radial-left", "four-opposed-right"])
def test_a_late_indicator_makes_it_fire_earlier_than_read(name):
    """By what the rotor turns until the contacts of the forward model are `parting` apart, over the speed ratio."""
    installation = find_installation(name)
    magneto, parting = installation.magneto, 0.02
    timing = internal_timing(magneto)
    plate = magneto.designed_setting.backplate_deg
    opens = float(timing.readings(plate, 0.0).opens_deg[0])
    shown = brentq(lambda at: float(timing.gap_mm(at, plate, 0.0)) - parting, opens + 1e-6, opens + 10.0)
    early = (shown - opens) / installation.rotor_turns_per_crank_turn
    assert early > 0.1
    tools = exact(tool("disc", unit="deg"), tool("opening", parting))
    found = values(engine_measurement(installation, EngineReadings((30.0, -30.0), 25.0, instruments=tools)))
    assert found == [pytest.approx(25.0 + early, abs=1e-6)]


@pytest.mark.parametrize("name", shipped_names("installations"))
def test_every_shipped_installation_can_be_judged(name):
    shipped = find_installation(name)
    wanted = shipped.engine.firing_btdc_deg
    readings = EngineReadings((35.0, -35.0), wanted.left, wanted.right)
    found = judged(engine_measurement(shipped, readings))
    for outcome in found.outcomes:
        assert outcome.linear.estimate == pytest.approx(outcome.drawn.mean, abs=0.01)
        assert outcome.probability_in_limits > 0.5
    better = improve(engine_measurement(shipped, readings), rng(), 20_000)
    assert isinstance(better, Improvement)
    assert (better.was.key, better.instead.key) == ("disc-1deg", "disc-half-deg")
    assert better.after.probability_in_limits > better.before.probability_in_limits


@pytest.mark.parametrize(
    ("readings", "words"),
    [
        (EngineReadings((30.0, 30.0), 25.0), "both stop readings"),
        (EngineReadings((30.0, -30.0), 25.0, gap_mm=5.0), "cannot be"),
        (
            EngineReadings((30.0, -30.0), 25.0, instruments=perfect(INTERNAL_ROLES)),
            "0 instruments are given for disc",
        ),
    ],
)
def test_engine_readings_that_cannot_be_are_refused(installation, readings, words):
    with pytest.raises(ValueError, match=words):
        engine_measurement(installation, readings)


@pytest.mark.parametrize("name", sampled(shipped_names("magnetos"), 2))
@pytest.mark.parametrize("side", [-1, 1])
def test_a_reading_at_the_very_limit_passes(name, side):
    """Whatever the last bit of a sum or an arc tangent does."""
    magneto = find_magneto(name)
    offset, gap = side * magneto.marks.tolerance_mm, magneto.gap_limits_mm[(side + 1) // 2]
    exactly = InternalReadings(offset, gap, instruments=perfect(INTERNAL_ROLES))
    assert judged(internal_measurement(magneto, exactly)).probability_in_limits == 1.0
    for step in np.arange(0.001, 0.04, 0.001):  # the limit as a sum that may be a bit beyond it
        summed = replace(exactly, blade_mm=gap - step, instruments=perfect(INTERNAL_ROLES, tool("blade", step)))
        found = judge(internal_measurement(magneto, summed), rng(), 100)
        assert isinstance(found, Judgement)
        assert found.probability_in_limits == 1.0
    for beyond in (replace(exactly, mark_offset_mm=offset * 1.0001), replace(exactly, blade_mm=gap + side * 1e-5)):
        assert judged(internal_measurement(magneto, beyond)).probability_in_limits == 0.0
