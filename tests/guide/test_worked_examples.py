"""The numbers of the guide's examples, computed here from the formulas it prints, apart from the program.

Each example is read out of the page: an example that is changed and no longer true fails.
"""

from __future__ import annotations

import re
from cmath import rect
from fractions import Fraction
from math import acos, asin, atan, cos, degrees, exp, gcd, lcm, pi, radians, sin, sqrt, tan

import pytest

from magview.bench.advised import ORDERS
from magview.guide.pages import pages
from magview.physics.cam.setting import internal_timing
from magview.spec.library import find_engine, find_installation, find_magneto


def holds(page: str, *texts: str) -> None:
    source = re.sub(r"\*", "", pages()[page].source)
    for text in texts:
        assert text in source, f"{page} does not say “{text}”"


SEVEN = find_magneto("seven-radial")
D, A, K = SEVEN.breaker.pivot_distance_mm, SEVEN.breaker.heel_arm_mm, SEVEN.breaker.contact_arm_mm


def arm_rad(radius: float) -> float:
    return acos((A**2 + D**2 - radius**2) / (2 * A * D))


def test_cam_and_breaker():
    profile = SEVEN.cam.profile
    base = profile.base_radius_mm + SEVEN.breaker.heel_radius_mm
    low, high = arm_rad(base), arm_rad(base + profile.lift_mm)
    holds(
        "theory-breaker",
        f"base circle {profile.base_radius_mm:g} mm, lift {profile.lift_mm:g} mm",
        f"D = {D:g} mm, A = {A:g} mm, K = {K:g} mm",
        f"R = {base:.1f} mm and γ = {degrees(low):.2f}°",
        f"R = {base + profile.lift_mm:.2f} mm and γ = {degrees(high):.2f}°",
        f"lifted {K * (high - low):.3f} mm",
    )


def test_offset_at_the_rim():
    tolerance = SEVEN.marks.tolerance_mm
    radius = SEVEN.marks.radius_mm
    holds(
        "theory-setting",
        f"rim marks at {radius:g} mm",
        f"one degree is {radius * tan(radians(1)):.3f} mm",
        f"{tolerance:g} mm is {degrees(atan(tolerance / radius)):.2f}°",
    )


def test_contacts_opening_later_read_less_at_the_lamp():
    """Plain gearing: rotor degrees over the rotor's turns for each turn of the crank."""
    ratio = Fraction(find_installation("seven-radial-left").rotor_turns_per_crank_turn)
    holds(
        "engine-timing",
        f"The rotor turns {ratio} of the crank.",
        f"0.70°/({ratio}) = {float(Fraction(7, 10) / ratio):.2f}° less",
    )


def test_the_orders_of_work_are_said_in_the_bench_s_own_words():
    holds("internal-timing", ORDERS)


def test_a_tolerance_at_the_rim_in_rotor_degrees():
    nine = find_magneto("nine-radial")
    radius, ratio = nine.marks.radius_mm, Fraction(nine.cam.turns_per_rotor_turn).limit_denominator(20)
    cam = degrees(atan(0.7 / radius))
    holds(
        "theory-setting",
        f"At a rim of {radius:g} mm, 0.7 mm are {cam:.3f}° of the cam; with the cam at {ratio} of the rotor's speed "
        f"they are {cam / ratio:.3f}° of the rotor",
    )


def test_the_coil_at_two_speeds():
    """Phasors and a dying transient, from closing to opening; the best opening by trying every hundredth degree."""
    coil, cam = SEVEN.electrical, internal_timing(SEVEN)
    dwell = float(cam.readings(SEVEN.designed_setting.backplate_deg, 0.0).dwell_deg[0])

    def current(rpm: float, opens: float) -> float:
        rate, e = SEVEN.poles * pi * rpm / 60, [radians(SEVEN.poles * a / 2) for a in (opens - dwell, opens)]
        dying = exp(-coil.resistance_ohm / coil.inductance_h * (e[1] - e[0]) / rate)
        total = 0.0
        for n, share in ((1, 1.0), (3, coil.third_harmonic)):
            phasor = n * share * coil.coil_turns * coil.peak_flux_wb * rate
            phasor = phasor / complex(coil.resistance_ohm, n * rate * coil.inductance_h)
            closing, opening = ((phasor * rect(1.0, n * angle)).real for angle in e)
            total += opening - closing * dying
        return total

    def best(rpm: float) -> float:
        return max((step / 100 for step in range(-2200, 2201)), key=lambda off: current(rpm, SEVEN.e_gap_deg + off))

    start, run = coil.starting_rpm, coil.running_rpm
    amperes = [current(rpm, SEVEN.e_gap_deg) for rpm in (start, run)]
    energy = [1e3 * coil.inductance_h / 2 * i**2 for i in amperes]
    holds(
        "theory-coil",
        f"starts at {start:g} rotor turns a minute and runs at {run:g}",
        f"the coil has {amperes[0]:.2f} A and {energy[0]:.1f} mJ at starting, {amperes[1]:.2f} A and "
        f"{energy[1]:.1f} mJ when running; a spark is taken to need {coil.spark_energy_mj:g} mJ",
        f"about {-best(start):.1f}° before the E-gap at starting, and {best(run):.1f}° past it when running",
    )


def modified_sine(x: float) -> float:
    """The law as handbooks of cam design write it."""
    c = 1 / (4 + pi)
    if x < 1 / 8:
        return c * (pi * x - sin(4 * pi * x) / 4)
    if x <= 7 / 8:
        return c * (2 + pi * x - 9 / 4 * sin(4 * pi * x / 3 + pi / 3))
    return c * (4 + pi * x - sin(4 * pi * x) / 4)


def bearing_rad(radius: float) -> float:
    """Of the heel's centre from the pivot's direction, at the cam's centre."""
    return acos((radius**2 + D**2 - A**2) / (2 * radius * D))


def lift_by_touching_mm(before_deg: float) -> float:
    """Contact lift with the top of lobe 1 so many degrees before the heel's place: the arm is raised until its heel
    clears every point of the cam's edge, which the program's pitch curve never looks at one by one."""
    profile, rho = SEVEN.cam.profile, SEVEN.breaker.heel_radius_mm
    top_at = bearing_rad(profile.base_radius_mm + profile.lift_mm + rho) - radians(before_deg)
    points = []
    for i in range(-800, 801):
        past = before_deg + i * 0.01  # how far before its top this point of the rise lies
        x = min(max(1 - (past - profile.dwell_deg / 2) / profile.rise_deg, 0.0), 1.0)
        r, at = profile.base_radius_mm + profile.lift_mm * modified_sine(x), top_at + radians(past)
        points.append((r * cos(at), r * sin(at)))
    base = arm_rad(profile.base_radius_mm + rho)
    low, high = base - 1e-4, base + 0.03
    for _ in range(22):
        gamma = (low + high) / 2
        radius = sqrt(A**2 + D**2 - 2 * A * D * cos(gamma))
        cx, cy = radius * cos(bearing_rad(radius)), radius * sin(bearing_rad(radius))
        touches = any((cx - x) ** 2 + (cy - y) ** 2 < rho**2 for x, y in points)
        low, high = (gamma, high) if touches else (low, gamma)
    return K * (high - base)


def test_plate_and_screw():
    gap, throw = SEVEN.designed_setting.gap_mm, SEVEN.contact_screw.throw_mm
    rise = throw * sin(radians(10))
    holds(
        "theory-setting",
        f"opens at 11° with {gap:.3f} mm",
        f"{throw:g} mm·sin 10° = {rise:.3f} mm",
        f"falls to {gap - rise:.3f} mm",
    )

    def opens_before_top(stop: float) -> float:
        low, high = 3.0, 29.0
        for _ in range(16):
            mid = (low + high) / 2
            low, high = (mid, high) if lift_by_touching_mm(mid) > stop else (low, mid)
        return (low + high) / 2

    base = SEVEN.cam.profile.base_radius_mm + SEVEN.breaker.heel_radius_mm
    top = K * (arm_rad(base + SEVEN.cam.profile.lift_mm) - arm_rad(base))
    designed, closer = (opens_before_top(top - gap + extra) for extra in (0.0, rise))
    (said,) = re.findall(r"it opens at (\d+\.\d+)°", pages()["theory-setting"].source)
    assert float(said) == pytest.approx(11.0 + designed - closer, abs=0.02)


def test_flux_at_the_e_gap():
    coil = SEVEN.electrical
    electrical = SEVEN.poles * SEVEN.e_gap_deg / 2
    flux = -coil.peak_flux_wb * (sin(radians(electrical)) + coil.third_harmonic * sin(radians(3 * electrical)))
    holds(
        "theory-coil",
        f"Φ_m = {1e3 * coil.peak_flux_wb:g} mWb and h_3 = {coil.third_harmonic:g}",
        f"E-gap of {SEVEN.e_gap_deg:g}° the electrical angle is {electrical:g}° and the flux −{-1e3 * flux:.3f} mWb",
    )


def test_the_coupling():
    k = Fraction(7, 8)
    step = Fraction(360, 17) - Fraction(360, 18)
    at = 23 + 3 * step / k
    holds(
        "theory-coupling",
        f"360°/306 = {float(step):.3f}° of the rotor",
        f"{float(step / k):.3f}° of the crank",
        f"360°/17 = {360 / 17:.2f}° of the rotor",
        f"three steps give {float(3 * step / k):.3f}°: {float(at):.2f}°",
        f"divisor is {gcd(16, 20)}: the finest shift is 360°/{lcm(16, 20)} = {360 / lcm(16, 20):g}°",
        f"finest shift 360°/{lcm(18, 23)} = {360 / lcm(18, 23):.3f}°",
        "−7/18 + 9/23 = 1/414",
        # The article's own numbers; its source stands with tests/published.
        f"1/19 − 1/20 = 1/380 of a turn, {360 / 380:.3f}° of the rotor",
    )
    assert step == Fraction(360, 306) and lcm(17, 18) == 306 and gcd(18, 23) == 1
    assert Fraction(1, 19) - Fraction(1, 20) == Fraction(1, 380)
    assert Fraction(-7, 18) + Fraction(9, 23) == Fraction(1, 414)
    assert (Fraction(1, 18) - Fraction(1, 23)) / Fraction(1, 414) == 5  # "one vernier step is five of it"
    # "no other move comes nearer", and 7/8 from the printed formula
    reached = [23 + 360 * (Fraction(i, 17) + Fraction(j, 18)) / k for i in range(-16, 17) for j in range(-17, 18)]
    assert min(abs(x - 27) for x in reached) == abs(at - 27)
    far = 360 * (Fraction(8, 17) - Fraction(9, 18))
    holds(
        "theory-coupling",
        f"8/17 − 9/18 = −1/34 of a turn: −{-float(far):.3f}° of the rotor, −{-float(far / k):.3f}° of the crank",
        f"It then fires at {39.1 + float(far / k):.2f}°",
    )
    assert Fraction(8, 17) - Fraction(9, 18) == Fraction(-1, 34)
    assert Fraction(7, 2 * 4) == k and Fraction(9, 8) == Fraction(9, 2 * 4)
    installation = find_installation("seven-radial-left")
    assert (installation.coupling.magneto_teeth, installation.coupling.drive_teeth) == (17, 18)
    holds("mechanic", "A disc 3 teeth against rotation, B magneto flange 3 teeth with", f"fire at {float(at):.2f}°")
    holds(
        "mechanic", "Three of them are 4.03°", "At 7/8 rotor turns for one of the crank that is 1.345° of the crank"
    )


def test_the_piston():
    engine = find_engine("seven-radial")
    r, rod = engine.stroke_mm / 2, engine.rod_mm

    def drop(a: float) -> float:
        return r + rod - r * cos(radians(a)) - sqrt(rod**2 - (r * sin(radians(a))) ** 2)

    holds(
        "theory-engine",
        f"Stroke {engine.stroke_mm:g} mm and rod {rod:g} mm",
        f"{drop(27):.2f} mm below its top, at 23° only {drop(23):.2f} mm",
        f"Four degrees are {drop(27) - drop(23):.1f} mm",
    )
    assert drop(3) == pytest.approx(0.1, abs=0.03)  # "a tenth of a millimetre"
    engine = find_engine("nine-radial")
    assert engine.firing_order.index(2) * 80 == 400 and engine.firing_order.index(3) * 80 == 80
    holds("theory-engine", "400.57°", "83.14°")  # by geometry below
    link, crank = engine.articulation, engine.stroke_mm / 2

    def height(cylinder: int, a: float) -> float:
        """Link piston along its own axis: points in the plane, crank angle from No. 1's axis."""
        axis = radians(40.0 * (cylinder - 1))
        pin = (crank * cos(a), crank * sin(a))
        lean = asin(crank * sin(a) / engine.rod_mm)  # the master rod leans back over its own axis
        knuckle_at = -lean + axis
        kx = pin[0] + link.knuckle_radius_mm * cos(knuckle_at)
        ky = pin[1] + link.knuckle_radius_mm * sin(knuckle_at)
        along, across = kx * cos(axis) + ky * sin(axis), -kx * sin(axis) + ky * cos(axis)
        return along + sqrt(link.link_rod_mm**2 - across**2)

    for cylinder, said in ((2, 400.57), (3, 83.14)):
        middle = 40.0 * (cylinder - 1)
        best = max((middle + i / 1000 for i in range(-8000, 8001)), key=lambda a: height(cylinder, radians(a)))
        assert best % 360 == pytest.approx(said % 360, abs=0.006)


def test_halving_between_stops():
    holds("engine-timing", "Halfway between −32° and 34° is 1°")
    assert (328 - 360, (328 - 360 + 34) / 2) == (-32, 1)


def test_uncertainty():
    rule, hand = 0.25 / sqrt(3), 0.2 / sqrt(3)
    both = sqrt(rule**2 + hand**2)
    holds(
        "theory-uncertainty",
        f"u = {rule:.3f} mm",
        f"has {hand:.3f} mm",
        f"= {both:.3f} mm, and at a rim of 36 mm that is {degrees(both / 36):.3f}°",
    )


def test_wear_at_the_contacts():
    holds("theory-trials", f"0.05 mm off the heel take {0.05 * K / A:.3f} mm off the gap")


def test_a_gap_asked_for_is_what_the_readings_give_back():
    """The example of the page is run both ways: what `adjust` says, `readings` confirms."""
    from magview.physics.cam.setting import internal_timing

    timing = internal_timing(SEVEN)
    source = pages()["internal-timing"].source
    ((plate, screw),) = re.findall(r"backplate \+([\d.]+)° and contact screw −([\d.]+)°", source)
    back = timing.readings(float(plate), -float(screw))
    assert back.max_gap_mm[0] == pytest.approx(0.38, abs=0.0005)
    assert abs(back.e_gap_error_deg[0]) < 0.02
    assert not back.within_limits


def test_thirteen_thou():
    holds("glossary", f'13 thou" is 0.013 in = {0.013 * 25.4:.3f} mm')
