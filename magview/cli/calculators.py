"""The commands ``magview readings``, ``adjust`` and ``engine``, in words or as JSON (guide: commands)."""

from __future__ import annotations

import argparse
import math

from magview import CAUTION
from magview.bench.advised import Advised, advised, creep_words
from magview.bench.engine_words import firing_order_words
from magview.bench.placing import new_bench
from magview.bench.state import Side
from magview.bench.verdict import faults, judged_words, mark_words, never_words
from magview.bench.words import setting_moves
from magview.cli.streams import print_json, say
from magview.physics.cam.setting import Readings, internal_timing
from magview.physics.engine.crank import firing_table, top_dead_centre_deg
from magview.spec.base import SpecError
from magview.spec.language import format_angle, format_length, marked, tr
from magview.spec.library import find_engine, find_magneto
from magview.spec.magneto import Magneto
from magview.spec.units import digits_beside, length_digits

PASS, FAIL = 0, 1
SIDES: tuple[Side, ...] = ("left", "right")


_BEYOND_SLOT = marked("--backplate-deg is {value}; the slot of this magneto runs from {low} to {high}")
_BEYOND_TRAVEL = marked(
    "--screw-deg is {value}; the contact screw's travel of this magneto runs from {low} to {high}"
)


def run_readings(arguments: argparse.Namespace) -> int:
    """Tell where the contacts open and how far. Exit code 1 out of limits; SpecError for what the magneto has not."""
    magneto = find_magneto(arguments.magneto)
    backplate, screw = arguments.backplate_deg, arguments.screw_deg
    for words, value, (low, high) in (
        (_BEYOND_SLOT, backplate, magneto.backplate.range_deg),
        (_BEYOND_TRAVEL, screw, magneto.contact_screw.range_deg),
    ):
        if not low <= value <= high:
            raise SpecError(tr(words, value=value, low=low, high=high))
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
    """Print the setting that gives a gap [mm] and opens at the E-gap.

    Exit code 1 where there is none, and where it is out of limits.
    """
    magneto = find_magneto(arguments.magneto)
    if arguments.gap < 0:
        raise SpecError(tr("--gap is {gap} mm; it must be 0 or more, such as 0.33mm", gap=arguments.gap))
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
        gap = tr("{gap:mm} = {gap:in}", gap=arguments.gap)
        if result is None:
            words = marked("{name}: {gap} is out of reach: {reason}.")
            say(tr(words, name=magneto.name, gap=gap, reason=orders.reason))
        else:
            say(_orders_text(magneto, gap, orders, result))
    return PASS if within else FAIL


def _orders_text(magneto: Magneto, gap: str, orders: Advised, result: Readings) -> str:
    low, high = magneto.gap_limits_mm
    plate = orders.backplate_deg - magneto.designed_setting.backplate_deg
    moves = setting_moves(magneto, plate, orders.screw_deg)
    found = faults(magneto, result)
    mm, inch = (max(length_digits(g, low, high, inches) for g in result.max_gap_mm) for inches in (False, True))
    screw = creep_words(orders) or format_angle(orders.screw_deg, True)
    return "\n".join((
        f"{magneto.name}: {gap}",
        tr("  backplate      {angle:+deg}", angle=orders.backplate_deg),
        tr("  contact screw  {screw}", screw=screw),
        tr("From the designed setting: {moves}.", moves="; ".join(moves) or tr("nothing to turn")),
        tr("  largest gap allowed  {limits}", limits=_limits(low, high, mm, inch)),
        f"  {_verdict(found)}",
        CAUTION,
    ))  # fmt: skip


def _limits(low: float, high: float, mm: int, inch: int) -> str:
    words = marked("{low:.{mm}mm} to {high:.{mm}mm} = {low:.{inch}in} to {high:.{inch}in}")
    return tr(words, low=low, high=high, mm=mm, inch=inch)


def _verdict(faults_found: list[str]) -> str:
    if not faults_found:
        return tr("WITHIN LIMITS")
    return tr("OUT OF LIMITS: {faults}", faults="; ".join(faults_found))


def run_engine(arguments: argparse.Namespace) -> int:
    """Tell true top dead centres and firing of every cylinder [crank deg]."""
    engine = find_engine(arguments.engine)
    top, firing = top_dead_centre_deg(engine), firing_table(engine)
    # Each firing before its own cylinder's top, which comes a cycle later where the firing stands near its end.
    btdc = {side: (top - at + 360.0) % 720.0 - 360.0 for side, at in firing.items()}
    if arguments.json:
        print_json({"top_dead_centre_deg": top, "firing_deg": dict(firing), "firing_btdc_deg": dict(btdc)})
        return PASS
    say(tr("{name}: crank degrees from No. 1's own firing top dead centre", name=engine.name) + "\n")
    say(tr("  cylinder   top dead centre   left fires                     right fires"))
    for i in range(engine.cylinders):
        left, right = (
            tr(
                "{at:>8} = {before:>7} before top",
                at=format_angle(firing[side][i]),
                before=format_angle(btdc[side][i]),
            )
            for side in SIDES
        )
        say(f"  {i + 1:>8}   {format_angle(top[i]):>15}   {left:<28}   {right}")
    wanted = engine.firing_btdc_deg
    words = marked("Each fires {left}° (left) and {right}° (right) before its own true top dead centre.")
    say("\n" + tr(words, left=wanted.left, right=wanted.right))
    if engine.articulation is not None:
        say(tr("A compensated cam aims at equal piston position instead, which on link rods is not quite the same."))
    mismatch = firing_order_words(engine)
    if mismatch:
        say(tr("Take care: {mismatch}.", mismatch=mismatch))
    say(CAUTION)
    return PASS


# ---------------------------------------------------------------------- output


def readings_text(magneto: Magneto, backplate_deg: float, screw_deg: float) -> str:
    """Every lobe's readings and the verdict, for a backplate and a contact-screw angle [deg]."""
    result = internal_timing(magneto).readings(backplate_deg, screw_deg)
    plate, screw = format_angle(backplate_deg, True), format_angle(screw_deg, True)
    lines = [
        tr("{name}: backplate {plate}, contact screw {screw}", name=magneto.name, plate=plate, screw=screw),
        "",
        tr("  lobe   opens     E-gap error   closes    dwell     largest gap"),
    ]
    gaps, (low, high) = result.max_gap_mm.tolist(), magneto.gap_limits_mm
    mm, inch = (max(length_digits(g, low, high, inches) for g in gaps) for inches in (False, True))
    for i in range(len(result.opens_deg)):
        # Why a lobe never opens them stands at the end of its row: the column of angles is narrow.
        never = never_words(result, i)
        opens, why = (tr("never"), f"  ({never})") if never else (format_angle(result.opens_deg[i]), "")
        closes = format_angle(result.closes_deg[i])
        error, dwell = format_angle(result.e_gap_error_deg[i], True), format_angle(result.dwell_deg[i])
        gap = tr("{gap:.{mm}mm} = {gap:.{inch}in}", gap=gaps[i], mm=mm, inch=inch)
        lines.append(f"  {i + 1:>4}   {opens:<9} {error:<13} {closes:<9} {dwell:<9} {gap}{why}")
    found, judged = faults(magneto, result), judged_words(magneto)
    offset, tolerance = float(result.mark_offset_mm), magneto.marks.tolerance_mm
    places = digits_beside(abs(offset), None, tolerance, 2)
    lines += [
        "",
        tr(
            "  straightedge from the rim mark  {mark} (limit ±{tolerance:.{places}mm})",
            mark=mark_words(format_length(abs(offset), False, places), offset),
            tolerance=tolerance,
            places=places,
        ),
        tr("  largest gap allowed             {limits}", limits=_limits(low, high, mm, inch)),
        f"  {_verdict(found)}" + (f" ({judged})" if judged else ""),
        "",
        tr("Angles in degrees of the rotor from the neutral before No. 1 fires; a positive error opens late."),
        CAUTION,
    ]
    return "\n".join(lines)
