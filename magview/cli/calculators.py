"""What ``magview readings``, ``adjust`` and ``engine`` answer, in words or as JSON (guide: commands)."""

from __future__ import annotations

import argparse
import math

from magview import CAUTION
from magview.bench.advised import Advised, advised, creep_words
from magview.bench.apply import new_bench
from magview.bench.verdict import faults, judged_words, mark_words, never_words
from magview.bench.words import setting_moves
from magview.cli.streams import print_json, say
from magview.physics.cam.setting import Readings, internal_timing
from magview.physics.engine.crank import firing_order_mismatch, firing_table, top_dead_centre_deg
from magview.spec.base import SpecError
from magview.spec.language import format_angle, format_length
from magview.spec.library import find_engine, find_magneto
from magview.spec.magneto import Magneto
from magview.spec.units import digits_beside, length_digits

PASS, FAIL = 0, 1


def run_readings(arguments: argparse.Namespace) -> int:
    """Tell where the contacts open and how far. Exit code 1 out of limits; SpecError for what the magneto has not."""
    magneto = find_magneto(arguments.magneto)
    backplate, screw = arguments.backplate_deg, arguments.screw_deg
    for option, value, (low, high), where in (
        ("--backplate-deg", backplate, magneto.backplate.range_deg, "the slot"),
        ("--screw-deg", screw, magneto.contact_screw.range_deg, "the contact screw's travel"),
    ):
        if not low <= value <= high:
            raise SpecError(f"{option} is {value:g}; {where} of this magneto runs from {low:g} to {high:g}")
    result = internal_timing(magneto).readings(backplate, screw)
    if arguments.json:
        print_json(
            {
                "opens_deg": result.opens_deg,
                "closes_deg": result.closes_deg,
                "max_gap_mm": result.max_gap_mm,
                "e_gap_error_deg": result.e_gap_error_deg,
                "mark_offset_mm": result.mark_offset_mm,
                "dwell_deg": result.dwell_deg,
                "within_limits": bool(result.within_limits),
            }
        )
    else:
        say(readings_text(magneto, backplate, screw))
    return PASS if result.within_limits else FAIL


def run_adjust(arguments: argparse.Namespace) -> int:
    """Tell the setting that gives a gap [mm] and opens at the E-gap.

    Exit code 1 where there is none, and where it is out of limits.
    """
    magneto = find_magneto(arguments.magneto)
    if arguments.gap < 0:
        raise SpecError(f"--gap is {arguments.gap:g} mm; it must be 0 or more")
    timing, low_high = internal_timing(magneto), magneto.gap_limits_mm
    answer, orders = (
        timing.adjust(arguments.gap, magneto.condition.screw_creep_deg),
        advised(new_bench(magneto), arguments.gap),
    )
    result = timing.readings(orders.backplate_deg, orders.lands_deg) if orders.reachable else None
    within = None if result is None else bool(result.within_limits)
    if arguments.json:
        print_json(
            {
                "name": magneto.name,
                "gap_mm": arguments.gap,
                "gap_limits_mm": list(low_high),
                "backplate_deg": orders.backplate_deg if orders.reachable else math.nan,
                "screw_deg": orders.lands_deg if orders.reachable else math.nan,
                "set_screw_deg": orders.screw_deg if orders.reachable else math.nan,
                "reachable": orders.reachable,
                "reason": orders.reason,
                "nearest_gap_mm": answer.nearest_gap_mm,
                "within_limits": within,
            }
        )
    else:
        gap = f"{format_length(arguments.gap, False)} = {format_length(arguments.gap, True)}"
        if result is None:
            say(f"{magneto.name}: {gap} cannot be had: {orders.reason}.")
        else:
            say(_orders_text(magneto, gap, orders, result))
    return PASS if within else FAIL


def _orders_text(magneto: Magneto, gap: str, orders: Advised, result: Readings) -> str:
    low, high = magneto.gap_limits_mm
    plate = orders.backplate_deg - magneto.designed_setting.backplate_deg
    moves = setting_moves(magneto, plate, orders.screw_deg)
    found = faults(magneto, result)
    digits = {inches: max(length_digits(g, low, high, inches) for g in result.max_gap_mm) for inches in (False, True)}
    limits = " = ".join(
        f"{format_length(low, inches, digits[inches])} to {format_length(high, inches, digits[inches])}"
        for inches in (False, True)
    )
    return "\n".join((
        f"{magneto.name}: {gap}",
        f"  backplate      {format_angle(orders.backplate_deg, True)}",
        f"  contact screw  {creep_words(orders) or format_angle(orders.screw_deg, True)}",
        f"From the designed setting: {', then '.join(moves) if moves else 'nothing to turn'}.",
        f"  largest gap allowed  {limits}",
        f"  {'OUT OF LIMITS: ' + '; '.join(found) if found else 'WITHIN LIMITS'}",
        CAUTION,
    ))  # fmt: skip


def run_engine(arguments: argparse.Namespace) -> int:
    """Tell true top dead centres and firing of every cylinder [crank deg]."""
    engine = find_engine(arguments.engine)
    top, firing = top_dead_centre_deg(engine), firing_table(engine)
    # Each firing before its own cylinder's top, which comes a cycle later where the firing stands near its end.
    btdc = {side: (top - at + 360.0) % 720.0 - 360.0 for side, at in firing.items()}
    if arguments.json:
        print_json({"top_dead_centre_deg": top, "firing_deg": dict(firing), "firing_btdc_deg": dict(btdc)})
        return PASS
    say(f"{engine.name}: crank degrees from No. 1's own firing top dead centre\n")
    say("  cylinder   top dead centre   left fires                     right fires")
    for i in range(engine.cylinders):
        left, right = (
            f"{format_angle(firing[side][i]):>8} = {format_angle(btdc[side][i]):>7} before top"
            for side in ("left", "right")
        )
        say(f"  {i + 1:>8}   {format_angle(top[i]):>15}   {left:<28}   {right}")
    wanted = engine.firing_btdc_deg
    say(f"\nEach fires {wanted.left:g}° (left) and {wanted.right:g}° (right) before its own true top dead centre.")
    if engine.articulation is not None:
        say("A compensated cam aims at equal piston position instead, which on link rods is not quite the same.")
    mismatch = firing_order_mismatch(engine)
    if mismatch:
        say(f"Take care: {mismatch}.")
    say(CAUTION)
    return PASS


# ---------------------------------------------------------------------- output


def readings_text(magneto: Magneto, backplate_deg: float, screw_deg: float) -> str:
    """Every lobe's readings and the verdict, for a backplate and a contact-screw angle [deg]."""
    result = internal_timing(magneto).readings(backplate_deg, screw_deg)
    plate, screw = format_angle(backplate_deg, True), format_angle(screw_deg, True)
    lines = [
        f"{magneto.name}: backplate {plate}, contact screw {screw}",
        "",
        "  lobe   opens     E-gap error   closes    dwell     largest gap",
    ]
    gaps, (low, high) = result.max_gap_mm.tolist(), magneto.gap_limits_mm
    digits = {inches: max(length_digits(g, low, high, inches) for g in gaps) for inches in (False, True)}
    for i in range(len(result.opens_deg)):
        opens = "never" if never_words(result, i) else format_angle(result.opens_deg[i])
        closes = format_angle(result.closes_deg[i])
        error, dwell = format_angle(result.e_gap_error_deg[i], True), format_angle(result.dwell_deg[i])
        both = (format_length(gaps[i], inches, digits[inches]) for inches in (False, True))
        gap = " = ".join(both)
        lines.append(f"  {i + 1:>4}   {opens:<9} {error:<13} {closes:<9} {dwell:<9} {gap}")
    found, judged = faults(magneto, result), judged_words(magneto)
    offset, tolerance = float(result.mark_offset_mm), magneto.marks.tolerance_mm
    places = digits_beside(abs(offset), None, tolerance, 2)
    lines += [
        "",
        f"  straightedge from the rim mark  {mark_words(f'{abs(offset):.{places}f} mm', offset)} "
        f"(limit ±{tolerance:.{places}f} mm)",
        f"  largest gap allowed             {low:.{digits[False]}f} to {high:.{digits[False]}f} mm = "
        f"{format_length(low, True, digits[True])} to {format_length(high, True, digits[True])}",
        f"  {'OUT OF LIMITS: ' + '; '.join(found) if found else 'WITHIN LIMITS'}"
        + (f" ({judged})" if judged else ""),
        "",
        "Angles in degrees of the rotor from the neutral before No. 1 fires; a positive error opens late.",
        CAUTION,
    ]
    return "\n".join(lines)
