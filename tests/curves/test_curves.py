"""The plots' numbers against other ways to them: dense samples, brute force, exact fractions, reading tables back."""

from __future__ import annotations

import csv
import io
import math
from dataclasses import replace
from fractions import Fraction
from itertools import product

import numpy as np
import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from magview.bench import actions as do
from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.bench.store import Store
from magview.curves import adjustment_window as curves_window
from magview.curves import budget as curves_budget
from magview.curves import coil as curves_coil
from magview.curves import coupling as curves_coupling
from magview.curves import lift as curves
from magview.curves import trials as curves_trials
from magview.curves import wear as curves_wear
from magview.physics.cam.setting import internal_timing
from magview.physics.electric.coil import primary_current_a
from magview.physics.engine.coupling import teeth_moved
from magview.physics.trials.advice import advise
from magview.physics.trials.trial import Trial
from magview.physics.uncertainty.measurement import judge_linear
from magview.physics.uncertainty.setting_uncertainty import InternalReadings, internal_measurement
from magview.physics.wear.prediction import WearRates
from magview.spec.library import find_magneto, shipped_names
from tests.magnetos import build, in_thousandths, magnetos, on_the_published_coupling

WITH_COIL = [n for n in shipped_names("magnetos") if find_magneto(n).electrical]


def some_setting(magneto, plate_share: float, screw_share: float) -> BenchState:
    """A bench with plate and screw at a share of slot and travel."""
    (left, right), (low, high) = magneto.backplate.range_deg, magneto.contact_screw.range_deg
    state = new_bench(magneto)
    return replace(
        state,
        backplate_deg=min(left + plate_share * (right - left), right),
        screw_deg=min(low + screw_share * (high - low), high),
    )


share = st.floats(0.0, 1.0)


# ---------------------------------------------------------------------- lift and gap


@given(magnetos(), share, share)
def test_open_spans_are_where_the_sampled_gap_is_not_nothing(magneto, plate, screw):
    state = some_setting(magneto, plate, screw)
    spans, whole = curves.open_spans_deg(state), curves.cycle_deg(magneto)
    angles = np.linspace(0.0, whole, 1501)[:-1]
    timing = internal_timing(magneto)
    over = timing.lift_mm(angles, state.backplate_deg) - timing.stop_mm(state.screw_deg)
    inside = np.zeros(angles.shape, dtype=bool)
    for start, end in spans:
        assert 0.0 <= start <= end <= whole + 1e-9
        inside |= (angles >= start) & (angles <= end)
    clear = np.abs(over) > 1e-6  # nearer than a nanometre to touching, rounding decides
    assert np.array_equal(inside[clear], over[clear] > 0.0)


@given(magnetos(), share, share)
def test_the_gap_is_the_lift_over_the_stop_and_nothing_below_it(magneto, plate, screw):
    state = some_setting(magneto, plate, screw)
    setting = curves.setting_of(state)
    found = curves.lift_curves(setting)
    assert found.rotor_deg[0] == 0.0
    assert found.rotor_deg[-1] == pytest.approx(360.0 / magneto.cam.turns_per_rotor_turn)
    for n in range(0, len(found.rotor_deg), 97):  # one angle at a time, by the way the picture goes
        lift = float(setting.timing.lift_mm(float(found.rotor_deg[n]), state.backplate_deg))
        assert found.lift_mm[n] == pytest.approx(lift, abs=1e-9)
        assert found.gap_mm[n] == pytest.approx(max(0.0, lift - setting.stop_mm), abs=1e-9)
    # A turn of the cam later everything is as it was.
    assert found.lift_mm[0] == pytest.approx(found.lift_mm[-1], abs=1e-9)


def test_the_designed_curve_opens_at_the_e_gap_with_the_designed_gap():
    """What the file says, whatever the wear: the first angle past neutral with a gap is the E-gap."""
    magneto = in_thousandths()
    worn = magneto.model_copy(update={"condition": magneto.condition.model_copy(update={"heel_wear_mm": 0.2})})
    found = curves.lift_curves(curves.designed_setting(worn))
    first = found.rotor_deg[np.flatnonzero(found.gap_mm > 1e-9)[0]]
    assert magneto.e_gap_deg < first <= magneto.e_gap_deg + 0.25
    assert found.gap_mm.max() == pytest.approx(magneto.designed_setting.gap_mm, abs=1e-6)


def test_a_slow_cam_is_still_a_curve_of_few_points():
    magneto = build(cam=build().cam.model_copy(update={"turns_per_rotor_turn": 0.01}).model_dump())
    angles = curves.turn_deg(magneto)
    assert angles[-1] == pytest.approx(36_000.0)
    assert len(angles) < 10_000


def test_contacts_that_never_close_stand_open_all_round():
    magneto = build(contact_screw={"kind": "threaded", "lead_mm": 1.0, "range_deg": (-360.0, 360.0),
                                   "positive_is_clockwise": True})  # fmt: skip
    state = replace(new_bench(magneto), screw_deg=-360.0)
    assert curves.lift_curves(curves.setting_of(state)).gap_mm.min() > 0.0
    assert curves.open_spans_deg(state) == [(0.0, 360.0)]
    assert curves.open_spans_deg(replace(state, screw_deg=360.0)) == []


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_the_limit_of_the_opening_puts_the_straightedge_at_its_tolerance(name):
    magneto = find_magneto(name)
    marks, cam = magneto.marks, magneto.cam.turns_per_rotor_turn
    bound = curves.opening_limit_deg(magneto)
    assert marks.radius_mm * math.tan(math.radians(bound * cam)) == pytest.approx(marks.tolerance_mm)


def test_the_lobes_table_is_told_by_the_lift_curve():
    """Opening: where the densely sampled gap begins; largest gap: its maximum near each lobe."""
    state = some_setting(in_thousandths(), 0.6, 0.55)
    columns = dict(curves.lobe_table(state))
    angles = np.arange(0.0, 360.0, 0.001)
    timing = internal_timing(state.magneto)
    gap = timing.lift_mm(angles, state.backplate_deg) - timing.stop_mm(state.screw_deg)
    begins = angles[1:][(gap[1:] > 0.0) & (gap[:-1] <= 0.0)]
    assert np.sort(columns["opens [rotor deg]"] % 360.0) == pytest.approx(begins, abs=0.002)
    assert columns["largest gap [mm]"].max() == pytest.approx(gap.max(), abs=1e-6)
    late = columns["opening error, positive late [rotor deg]"]
    assert late[0] == pytest.approx(begins[0] - state.magneto.e_gap_deg, abs=0.002)


# ---------------------------------------------------------------------- adjustment window


@given(magnetos(), share, share)
def test_the_telling_part_of_the_travel_is_inside_it_and_holds_present_and_middle(magneto, plate, screw):
    state = some_setting(magneto, plate, screw)
    low, high = curves_window.telling_screw_span(state)
    assert magneto.contact_screw.range_deg[0] <= low < high <= magneto.contact_screw.range_deg[1]
    assert low <= 0.0 <= high
    assert low <= state.screw_deg <= high


def test_every_gap_within_limits_is_in_the_telling_part():
    state = new_bench(find_magneto("four-opposed"))
    low, high = curves_window.telling_screw_span(state)
    timing, (least, most) = internal_timing(state.magneto), state.magneto.gap_limits_mm
    for screw in np.linspace(*state.magneto.contact_screw.range_deg, 400):
        gap = timing.curve.top_mm - float(timing.stop_mm(screw))
        if least <= gap <= most:
            assert low <= screw <= high


def test_crossings_of_a_curve_that_turns_back():
    x = np.linspace(-170.0, 170.0, 681)
    found = curves_window.crossings(x, np.sin(np.radians(x)), 0.5)
    assert found == pytest.approx([30.0, 150.0], abs=1e-3)
    assert curves_window.crossings(x, np.sin(np.radians(x)), 1.5).size == 0


@given(st.floats(-1e3, 1e3), st.floats(1e-6, 1e3), st.integers(1, 12))
def test_round_levels_are_round_inside_and_few(low, width, most):
    high = low + width
    assume(high > low)
    levels = curves.round_levels(low, high, most)
    assert len(levels) <= most + 1
    slack = 1e-6 * width + 1e-12
    assert all(low - slack <= v <= high + slack for v in levels)
    if len(levels) > 1:
        steps = np.diff(levels)
        assert steps == pytest.approx(np.full(len(steps), steps[0]), rel=1e-6)
        mantissa = float(f"{steps[0]:.5e}".split("e")[0])
        assert min(abs(mantissa - m) for m in (1, 2, 5, 10)) < 1e-3
        # All multiples of the step that lie inside are there.
        assert levels[0] - steps[0] < low + slack
        assert levels[-1] + steps[0] > high - slack


@pytest.mark.parametrize(("low", "high"), [(1.0, 1.0), (2.0, 1.0), (math.nan, 1.0), (0.0, math.inf)])
def test_no_levels_where_there_is_no_room(low, high):
    assert curves.round_levels(low, high).size == 0


def test_the_windows_table_agrees_with_single_settings():
    state = new_bench(find_magneto("nine-radial"))
    columns = dict(curves_window.window_table(state, 9))
    timing = internal_timing(state.magneto)
    rows = zip(*(columns.values()), strict=True)
    for plate, screw, error, gap, inside in rows:
        one = timing.readings(plate, screw)
        assert error == pytest.approx(float(one.e_gap_error_deg[0]), abs=1e-9, nan_ok=True)
        assert gap == pytest.approx(float(one.max_gap_mm[0]), abs=1e-12)
        assert bool(inside) == bool(one.within_limits)


# ---------------------------------------------------------------------- coil and magnet


@pytest.mark.parametrize("name", WITH_COIL)
@pytest.mark.parametrize("rpm", [10.0, 100.0, 3000.0])
def test_the_energy_curve_by_integrating_the_circuit_step_by_step(name, rpm):
    """½ L i² with i from L di/dt + R i = −N dΦs/dt, integrated by the trapezoidal rule from closing to opening."""
    state = new_bench(find_magneto(name))
    magneto, coil = state.magneto, state.magneto.electrical
    curve = curves_coil.energy_curve(state, rpm)
    errors, energy = curve.error_deg, curve.energy_j
    assert errors[0] == -errors[-1] == pytest.approx(-90.0 / magneto.poles)
    dwell = float(dict(curves.lobe_table(state))["dwell [rotor deg]"][0])

    def stored_j(opens: float) -> float:
        theta, step = np.linspace(opens - dwell, opens, 20_001, retstep=True)
        seconds = step / (6.0 * rpm)
        e = np.radians(theta * magneto.poles / 2)
        flux = -coil.peak_flux_wb * (np.sin(e) + coil.third_harmonic * np.sin(3 * e))
        drop, linked = coil.resistance_ohm * seconds / 2, -coil.coil_turns * np.diff(flux)
        current = 0.0
        for push in linked.tolist():
            current = ((coil.inductance_h - drop) * current + push) / (coil.inductance_h + drop)
        return 0.5 * coil.inductance_h * current**2

    for n in (0, 90, 180, 270, 360):
        assert energy[n] == pytest.approx(stored_j(magneto.e_gap_deg + errors[n]), rel=1e-4, abs=1e-9)
    fine = magneto.e_gap_deg + np.linspace(-90.0 / magneto.poles, 90.0 / magneto.poles, 5001)
    brute = primary_current_a(coil, magneto.poles, rpm, fine - dwell, fine) ** 2
    assert curve.best_deg + magneto.e_gap_deg == pytest.approx(fine[int(brute.argmax())], abs=0.3)
    assert curve.at_j(0.0) == pytest.approx(energy[180])


def test_the_coils_table_is_dark_where_the_contacts_are_open():
    state = new_bench(in_thousandths())
    columns = dict(curves_coil.coil_table(state, 100.0, 2000.0))
    angles, closed = columns["rotor angle past neutral [deg]"], columns["contacts closed"] > 0.5
    inside, clear = np.zeros(angles.shape, dtype=bool), np.ones(angles.shape, dtype=bool)
    for start, end in curves.open_spans_deg(state):
        inside |= (angles >= start) & (angles < end)
        for edge in (start, end):
            clear &= np.abs(angles - edge) > 1e-9  # the E-gap is a sampled angle: rounding decides there
    assert clear.sum() > 1400
    assert np.array_equal(closed[clear], ~inside[clear])
    for speed in ("100/min", "2000/min"):
        assert np.all(columns[f"primary current, {speed} [A]"][~closed] == 0.0)
        assert np.array_equal(columns[f"resultant flux, {speed} [Wb]"][~closed], columns["static flux [Wb]"][~closed])
    both = np.array([columns[f"primary current, {speed} [A]"] for speed in ("100/min", "2000/min")])
    assert np.abs(both[1]).max() > np.abs(both[0]).max()


def test_the_two_speeds_are_the_files_own_or_said_to_be_assumed():
    magneto = find_magneto("seven-radial")
    coil = magneto.electrical
    assert curves_coil.speeds_of(magneto) == curves_coil.Speeds(coil.starting_rpm, coil.running_rpm)

    def of(**speeds):
        changed = coil.model_copy(update={"starting_rpm": None, "running_rpm": None, **speeds})
        found = curves_coil.speeds_of(magneto.model_copy(update={"electrical": changed}))
        return found.starting_rpm, found.running_rpm, found.starting_assumed, found.running_assumed

    assert of() == (100.0, 2000.0, True, True)
    assert of(starting_rpm=1500.0) == (1500.0, 3000.0, False, True)
    assert of(running_rpm=120.0) == (60.0, 120.0, True, False)
    silent = curves_coil.speeds_of(magneto.model_copy(update={"electrical": None}))
    assert silent.starting_assumed and silent.running_assumed


@pytest.mark.parametrize("name", shipped_names("magnetos"))
def test_the_pull_is_nothing_at_rest_and_drives_back_to_it(name):
    magneto = find_magneto(name)
    table = curves_coil.detent_table(magneto)
    if magneto.detent is None:
        assert table == []
        return
    (_, angles), (_, torque) = table
    pitch = 360.0 / magneto.poles
    for k in range(magneto.poles):
        at = round(k * pitch / 0.25)
        assert angles[at] == pytest.approx(k * pitch)
        assert torque[at] == pytest.approx(0.0, abs=1e-12 * magneto.detent.torque_nm + 1e-13)
        assert torque[at + 8] < 0.0, "past a rest the magnet pulls back"
        between = round((k + 0.5) * pitch / 0.25)
        assert torque[between] == pytest.approx(0.0, abs=1e-12)
        assert torque[between + 8] > 0.0, "past full register it pulls on"


@given(st.sampled_from([2, 4, 6]), st.floats(-2000, 2000))
def test_a_rotor_rests_at_one_of_the_two_neutrals_beside_it(poles, angle):
    state = replace(new_bench(build(poles=poles)), rotor_deg=angle)
    below, above = curves_coil.resting_places_deg(state)
    assert below - 1e-9 <= angle <= above + 1e-9  # the last bit may fall on either side of a neutral
    assert above - below == pytest.approx(360.0 / poles)
    assert math.remainder(below, 360.0 / poles) == pytest.approx(0.0, abs=1e-9)
    falls = curves_coil.falls_to_deg(state)
    nearer = min((below, above), key=lambda place: abs(place - angle))
    if abs(angle - (below + above) / 2) > 1e-6:
        assert falls == pytest.approx(nearer, abs=1e-9)


# ---------------------------------------------------------------------- coupling


@given(
    st.integers(1, 24), st.integers(1, 24), st.sampled_from([Fraction(7, 8), Fraction(9, 8), Fraction(3, 2)]),
    st.integers(-40, 40), st.integers(-40, 40), st.integers(1, 9),
)  # fmt: skip
def test_reachable_timings_by_counting_every_move_in_fractions(nm, nd, ratio, reads, wanted, within):
    reads_at, wanted_at = Fraction(reads, 2), Fraction(wanted, 2)
    # A bound that no timing lies on: they are fractions with far smaller denominators.
    bound = Fraction(within) + Fraction(1, 10**6)
    fewest: dict[Fraction, int] = {}

    for i, j in product(range(1 - nm, nm), range(1 - nd, nd)):  # less than a whole turn of either face
        shift = Fraction(i, nm) + Fraction(j, nd)
        at = reads_at + 360 * shift / ratio
        if abs(at - wanted_at) <= bound and -1 < 2 * shift <= 1:  # half a turn: a whole one would move the finger
            fewest[at] = min(fewest.get(at, 10**6), abs(i) + abs(j))
    found = curves_coupling.shifts_near(nm, nd, float(ratio), float(reads_at), float(wanted_at), float(bound))
    assert [m.result_btdc_deg for m in found] == pytest.approx([float(at) for at in sorted(fewest)], abs=1e-8)
    assert [teeth_moved(m) for m in found] == [fewest[at] for at in sorted(fewest)]


# ---------------------------------------------------------------------- tables


def all_tables():
    state = some_setting(in_thousandths(), 0.6, 0.53)
    before = curves.Setting(state.magneto, 0.0, 0.0)
    moves = curves_coupling.shifts_near(19, 20, 0.875, 22.0, 25.0, 3.0)
    return {
        "lift": curves.lift_table(curves.setting_of(state), before),
        "lobes": curves.lobe_table(state),
        "window": curves_window.window_table(state, 11),
        "coil": curves_coil.coil_table(state, 100.0, 2000.0),
        "pull": curves_coil.detent_table(state.magneto),
        "shifts": curves_coupling.shift_table(moves),
    }


@pytest.mark.parametrize("which", ["lift", "lobes", "window", "coil", "pull", "shifts"])
def test_a_table_reads_back_to_the_last_bit(which):
    table = all_tables()[which]
    text = curves.csv_text(table)
    assert text.endswith("\r\n")
    rows = list(csv.reader(io.StringIO(text, newline="")))
    header, body = rows[0], rows[1:]
    assert header == [name for name, _ in table]
    assert len(body) == len(table[0][1]) > 1
    for column, (name, values) in enumerate(table):
        back = np.array([float(row[column]) if row[column] else math.nan for row in body])
        assert back.tobytes() == np.asarray(values, dtype=float).tobytes() or np.array_equal(
            back, values, equal_nan=True
        ), name
        countable = name in ("lobe in firing order", "within limits", "contacts closed")
        assert countable or (name.endswith("]") and name.count("[") == 1), f"{name} does not say its unit"


def test_what_does_not_exist_is_an_empty_field():
    text = curves.csv_text([("a [mm]", np.array([1.0, math.nan])), ("b, c [deg]", np.array([0.1, -0.0]))])
    assert text == 'a [mm],"b, c [deg]"\r\n1.0,0.1\r\n,-0.0\r\n'


# ---------------------------------------------------------------------- before


def test_before_is_the_setting_before_the_last_change_of_it():
    store = Store(new_bench(on_the_published_coupling()))
    key = curves.setting_of
    assert store.before_last(key) is None
    first = store.state
    store.send(do.TurnRotor(50.0))
    assert store.before_last(key) is None, "the rotor is not part of the setting"
    store.send(do.TurnBackplate(1.0), "drag")
    store.send(do.TurnBackplate(2.0), "drag")
    store.send(do.TurnRotor(60.0))
    was = store.before_last(key)
    assert was is not None
    assert key(was) == key(first), "one drag is one change"
    store.send(do.TurnScrew(3.0))
    again = store.before_last(key)
    assert again is not None
    assert (again.backplate_deg, again.screw_deg) == (2.0, 0.0)
    store.undo()
    undone = store.before_last(key)
    assert undone is not None
    assert undone.backplate_deg == first.backplate_deg


# ---------------------------------------------------------------------- trials, sureness, wear


def test_without_a_setting_before_there_is_no_column_of_it():
    present = curves.setting_of(new_bench(in_thousandths()))
    names = [name for name, _ in curves.lift_table(present, None)]
    with_before = [name for name, _ in curves.lift_table(present, curves.Setting(present.magneto, 1.0, 0.0))]
    assert with_before == [*names, "gap before [mm]"]


@pytest.mark.parametrize("lost", ["coil", "lobe"])
def test_no_energy_where_there_is_no_coil_or_the_contacts_never_work(lost):
    magneto = in_thousandths()
    worn = magneto.condition.model_copy(update={"heel_wear_mm": 0.5})  # 0.81 mm off, more than the lobe lifts
    without = {"electrical": None} if lost == "coil" else {"condition": worn}
    curve = curves_coil.energy_curve(new_bench(magneto.model_copy(update=without)), 200.0)
    assert curve.error_deg.size == curve.energy_j.size == 0
    assert curves_coil.energy_curve(new_bench(magneto), 200.0).error_deg.size


def test_the_curve_through_trials_goes_through_them_and_the_files_is_the_adjustments():
    magneto = in_thousandths()
    # Past the slot's end too, as somebody may have filed it: the curve reaches as far as was tried.
    trials = [Trial.reading(plate, gap) for plate, gap in ((-1.5, 0.28), (0.5, 0.35), (7.0, 0.54))]
    found = curves_trials.trials_curve(advise(magneto, trials))
    assert found.backplate_deg[0] == -6.0 and found.backplate_deg[-1] == 7.0
    for trial in trials:
        low, high = (
            np.interp(trial.backplate_deg, found.backplate_deg, ends) for ends in (found.low_mm, found.high_mm)
        )
        assert low <= trial.middle_mm <= high
    assert np.all(found.low_mm <= found.gap_mm) and np.all(found.gap_mm <= found.high_mm)
    timing = internal_timing(magneto)
    for gap in (0.15, 0.2, 0.2286, 0.27):
        plate = timing.adjust(gap).backplate_deg
        assert np.interp(plate, found.backplate_deg, found.file_mm) == pytest.approx(gap, abs=2e-4)
    untried = curves_trials.trials_curve(advise(magneto, ()))
    assert (untried.backplate_deg[0], untried.backplate_deg[-1]) == (-6.0, 6.0)
    assert np.allclose(untried.gap_mm, untried.file_mm, equal_nan=True), "without a trial the file is all there is"
    reads_back(curves_trials.trials_table(found))


def reads_back(table):
    rows = list(csv.reader(io.StringIO(curves.csv_text(table), newline="")))
    assert rows[0] == [name for name, _ in table]
    for column, (_, values) in enumerate(table):
        for row, value in zip(rows[1:], values.tolist(), strict=True):
            if isinstance(value, str):
                assert row[column] == value
            else:
                assert float(row[column] or "nan") == value or math.isnan(value)


def outcome():
    return judge_linear(internal_measurement(in_thousandths(), InternalReadings(0.5, 0.2286)))[1]


def test_the_density_drawn_is_a_normal_one():
    """Its area over ±4 standard uncertainties is erf(4/√2); mean and spread are the outcome's, by summing it up."""
    found = outcome()
    x, density = curves_budget.density_curve(found)
    area = np.trapezoid(density, x) if hasattr(np, "trapezoid") else np.trapz(density, x)
    assert area == pytest.approx(math.erf(4 / math.sqrt(2)), abs=1e-4)
    weight = density / density.sum()
    mean = float((weight * x).sum())
    assert mean == pytest.approx(found.linear.estimate)
    spread = math.sqrt(float((weight * (x - mean) ** 2).sum()))
    assert spread == pytest.approx(found.linear.standard_uncertainty, rel=2e-3)
    sure = replace(found, linear=replace(found.linear, standard_uncertainty=0.0))
    assert curves_budget.density_curve(sure)[0].size == 0, "what is exact has no density"


def test_the_budgets_columns_add_up():
    """Law of propagation (GUM 5.1.2): contributions are sensitivity times uncertainty and add in square."""
    found = outcome()
    columns = dict(curves_budget.budget_table(found))
    u, c = columns["standard uncertainty [its unit]"], columns["sensitivity [mm per unit]"]
    contribution = columns["contribution [mm]"]
    assert np.abs(c * u) == pytest.approx(np.abs(contribution))
    assert math.sqrt(float((contribution**2).sum())) == pytest.approx(found.linear.standard_uncertainty)
    assert columns["share of the variance [1]"].sum() == pytest.approx(1.0)
    assert set(columns["unit of the input"]) == {"mm", "deg"}
    reads_back(curves_budget.budget_table(found))


def test_wear_takes_its_lever_off_the_gap_and_the_pip_off_the_blade():
    """Lift lost at the contacts = heel wear times contact arm over heel arm (guide: theory-setting): 27.5/17."""
    state = new_bench(in_thousandths())
    found = curves_wear.wear_course(state, WearRates(0.01, 0.02), 400.0)
    columns = dict(curves_wear.wear_table(found, state))
    hours = columns["running hours [h]"]
    assert (hours[0], hours[-1]) == (0.0, 400.0)
    gap = columns["largest gap [mm]"]
    assert gap == pytest.approx(0.2286 - 1e-4 * hours * 27.5 / 17.0)
    assert gap - columns["thickest blade that passes [mm]"] == pytest.approx(2e-4 * hours)
    assert columns["opening error, positive late [rotor deg]"][0] == pytest.approx(0.0, abs=1e-9)
    within = columns["within limits"]
    assert within[0] == 1.0 and within[-1] == 0.0, "0.065 mm less in 400 h, where 0.025 mm are allowed"
    reads_back(curves_wear.wear_table(found, state))
    with pytest.raises(ValueError, match="0 or more"):
        curves_wear.wear_course(state, WearRates(0.01), -1.0)
