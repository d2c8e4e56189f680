"""What ``magview readings``, ``adjust``, ``shift`` and ``engine`` answer, in words or as JSON (``model.md`` §10)."""

from __future__ import annotations

import argparse
import json
import math
import os
import sys
from dataclasses import asdict
from fractions import Fraction
from pathlib import Path
from typing import Any

import numpy as np

from magview import CAUTION
from magview.bench.apply import BTDC_LIMIT_DEG
from magview.bench.tooth_steps import tooth_degrees
from magview.bench.verdict import faults, judged_words, mark_words, never_words
from magview.bench.words import move_words, setting_moves, way_words
from magview.physics.coupling import Move, outside_tolerance, plan
from magview.physics.engine import firing_order_mismatch, firing_table, top_dead_centre_deg
from magview.physics.setting import internal_timing
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.library import find_engine, find_installation, find_magneto
from magview.spec.magneto import Magneto, Rotation
from magview.spec.units import digits_beside, format_angle, format_length, length_digits

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
        _print_json(
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
        _say(readings_text(magneto, backplate, screw))
    return PASS if result.within_limits else FAIL


def run_adjust(arguments: argparse.Namespace) -> int:
    """Tell the setting that gives a gap [mm] and opens at the E-gap. Exit code 1 where there is none."""
    magneto = find_magneto(arguments.magneto)
    if arguments.gap < 0:
        raise SpecError(f"--gap is {arguments.gap:g} mm; it must be 0 or more")
    result = internal_timing(magneto).adjust(arguments.gap)
    if arguments.json:
        _print_json(
            {
                "backplate_deg": result.backplate_deg,
                "screw_deg": result.screw_deg,
                "reachable": result.reachable,
                "reason": result.reason,
            }
        )
    elif result.reachable:
        designed = magneto.designed_setting.backplate_deg
        _say(f"{magneto.name}: {format_length(arguments.gap, False)} = {format_length(arguments.gap, True)}")
        _say(f"  backplate      {format_angle(result.backplate_deg, True)}")
        _say(f"  contact screw  {format_angle(result.screw_deg, True)}")
        moves = setting_moves(magneto, result.backplate_deg - designed, result.screw_deg)
        _say(f"From the designed setting: {', then '.join(moves) if moves else 'nothing to turn'}.\n{CAUTION}")
    else:
        _say(f"{magneto.name}: {format_length(arguments.gap, False)} cannot be had: {result.reason}.")
    return PASS if result.reachable else FAIL


def run_shift(arguments: argparse.Namespace) -> int:
    """Tell which teeth to move. Exit code 1 if no move comes within the engine's tolerance."""
    by_hand = (arguments.magneto_teeth, arguments.drive_teeth, arguments.rotor_turns_per_crank_turn)
    if arguments.installation is not None:
        if by_hand != (None, None, None):
            raise SpecError("give either an INSTALLATION or the teeth and the ratio, not both")
        installation = find_installation(arguments.installation)
        coupling, engine = installation.coupling, installation.engine
        magneto_teeth, drive_teeth = coupling.magneto_teeth, coupling.drive_teeth
        ratio: float | Fraction = installation.rotor_turns_per_crank_turn
        side = "right" if installation.position == "right" else "left"
        wanted = getattr(engine.firing_btdc_deg, side) if arguments.wanted is None else arguments.wanted
    else:
        if None in by_hand or arguments.wanted is None:
            raise SpecError(
                "without an INSTALLATION, --magneto-teeth, --drive-teeth, --rotor-turns-per-crank-turn and --wanted "
                "are all needed"
            )
        installation = None
        magneto_teeth, drive_teeth, ratio = by_hand
        wanted = arguments.wanted
    try:
        moves = plan(magneto_teeth, drive_teeth, ratio, arguments.reads, wanted)
    except ValueError as error:
        raise SpecError(str(error)) from error
    for option, value in (("--reads", arguments.reads), ("--wanted", wanted)):
        if abs(value) > BTDC_LIMIT_DEG:
            raise SpecError(f"{option} is {value:g}; it must lie within ±{BTDC_LIMIT_DEG:g}° of top dead centre")
    _print_shift(arguments, installation, wanted, moves)
    tolerance = None if installation is None else installation.engine.timing_tolerance_deg
    outside = None if tolerance is None else outside_tolerance(moves, tolerance)
    if arguments.json:
        _print_json({"moves": [asdict(move) for move in moves]})
    else:
        rotation = None if installation is None else installation.magneto.rotation
        _say(_moves_text(moves, arguments.reads, wanted, rotation))
        _say(f"  {tooth_degrees(magneto_teeth, drive_teeth, ratio)}")
        if tolerance is None:
            _say("  Whether that is near enough, the engine's manual says; an INSTALLATION brings its tolerance.")
        else:
            _say(f"  {outside}" if outside else f"  The first is within the tolerance of {tolerance:g}°.")
        _say(f"Mark disc, flanges and engine before taking anything apart; move one tooth at a time.\n{CAUTION}")
    return FAIL if outside else PASS


def _print_shift(
    arguments: argparse.Namespace, installation: Installation | None, wanted: float, moves: list[Move]
) -> None:
    """Write a move as a plan on one page, if that was asked for."""
    if arguments.pdf is None:
        return
    if installation is None:
        raise SpecError("--pdf needs an INSTALLATION: the plan names magneto and engine, and which way they turn")
    if not 1 <= arguments.move <= len(moves):
        raise SpecError(f"--move is {arguments.move}; there are the moves 1 to {len(moves)}")
    from magview.job.shift_plan import plan_from
    from magview.ui.preflight import why_no_window

    page = plan_from(installation, arguments.reads, wanted, moves[arguments.move - 1])
    if sys.platform.startswith("linux"):
        os.environ["QT_QPA_PLATFORM"] = "offscreen"  # paper needs no display, even where there is one
    reason = why_no_window()
    if reason is not None:
        raise SpecError(f"no PDF: {reason}")
    from magview.ui.print_shift import print_shift

    print_shift(page, Path(arguments.pdf), arguments.paper)


def run_engine(arguments: argparse.Namespace) -> int:
    """Tell true top dead centres and firing of every cylinder [crank deg]."""
    engine = find_engine(arguments.engine)
    top, firing = top_dead_centre_deg(engine), firing_table(engine)
    if arguments.json:
        _print_json({"top_dead_centre_deg": top, "firing_deg": dict(firing)})
        return PASS
    _say(f"{engine.name}: crank degrees from No. 1's own firing top dead centre\n")
    _say("  cylinder   top dead centre   left fires   right fires")
    for i in range(engine.cylinders):
        left, right = firing["left"][i], firing["right"][i]
        _say(f"  {i + 1:>8}   {format_angle(top[i]):>15}   {format_angle(left):>10}   {format_angle(right):>11}")
    btdc = engine.firing_btdc_deg
    _say(f"\nEach fires {btdc.left:g}° (left) and {btdc.right:g}° (right) before its own true top dead centre.")
    if engine.articulation is not None:
        _say("A compensated cam aims at equal piston position instead, which on link rods is not quite the same.")
    mismatch = firing_order_mismatch(engine)
    if mismatch:
        _say(f"Take care: {mismatch}.")
    _say(CAUTION)
    return PASS


# ---------------------------------------------------------------------- output


def _moves_text(moves: list[Move], reads: float, wanted: float, rotation: Rotation | None) -> str:
    lines = [
        f"Fires at {reads:g}°, wanted {wanted:g}° before top dead centre. Moves, best first:",
        "",
        "       fires at   from wanted   magneto flange on the disc; disc on the drive flange",
    ]
    for n, move in enumerate(moves[:8], start=1):
        if rotation is None:
            words = (way_words(move.magneto_teeth), way_words(move.disc_teeth))
        else:
            words = move_words(move, rotation, "drive end")
        result, residual = format_angle(move.result_btdc_deg), format_angle(move.residual_deg, True)
        lines.append(f"  {n:>2}   {result:<8}   {residual:<11}   {words[0]}; {words[1]}")
    return "\n".join([*lines, ""])


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


def _say(text: str) -> None:
    sys.stdout.write(text + "\n")


def _print_json(values: dict[str, Any]) -> None:
    _say(json.dumps({name: _plain(value) for name, value in values.items()}, allow_nan=False))


def _plain(value: Any) -> Any:
    """JSON has no NaN: what does not exist is null."""
    if isinstance(value, np.ndarray):
        return [_plain(v) for v in value.tolist()] if value.ndim else _plain(value.item())
    if isinstance(value, list):
        return [_plain(v) for v in value]
    if isinstance(value, dict):
        return {name: _plain(v) for name, v in value.items()}
    if isinstance(value, float) and not math.isfinite(value):
        return None
    return value
