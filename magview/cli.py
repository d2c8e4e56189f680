"""The ``magview`` command: thin words around spec, physics and bench (``model.md`` §10).

Exit codes: 0 pass, 1 out of limits or out of reach, 2 bad input.
"""

from __future__ import annotations

import argparse
import contextlib
import json
import math
import os
import re
import sys
from collections.abc import Callable, Mapping, Sequence
from dataclasses import asdict
from fractions import Fraction
from typing import Any, NoReturn, TypeVar

import numpy as np

from magview import __version__
from magview.bench.apply import BTDC_LIMIT_DEG
from magview.bench.verdict import faults, judged_words, mark_words, never_words
from magview.bench.words import move_words, setting_moves, way_words
from magview.cli_class import add_class_command
from magview.cli_guide import add_guide
from magview.cli_paper import add_commands as add_paper_commands
from magview.cli_sheet import add_commands
from magview.physics.coupling import Move, outside_tolerance, plan
from magview.physics.engine import firing_order_mismatch, firing_table, top_dead_centre_deg
from magview.physics.setting import Readings, internal_timing
from magview.spec.base import SpecError
from magview.spec.library import (
    find_engine,
    find_installation,
    find_magneto,
    shipped_names,
)
from magview.spec.magneto import Magneto, Rotation
from magview.spec.units import format_angle, format_length, parse_angle_deg, parse_btdc_deg, parse_length_mm

PASS, FAIL, BAD_INPUT = 0, 1, 2

T = TypeVar("T")

CAUTION = (
    "A training and planning aid: treat the propeller as live; the maker's current manual and local rules govern."
)


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; returns the exit code."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal without ° gets a ?, not a traceback
    parser = _parser()
    words = _with_values(sys.argv[1:] if argv is None else argv)
    if words and not words[0].startswith("-") and words[0] not in parser.commands and _is_file(words[0]):
        words = ["open", *words]
    arguments = parser.parse_args(words)
    try:
        code: int = arguments.run(arguments)
        sys.stdout.flush()
        return code
    except SpecError as error:
        _complain(str(error))
        return BAD_INPUT
    except BrokenPipeError:
        # The reader went away (`magview … | head`); say nothing more, not even at exit.
        with contextlib.suppress(OSError):
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
        return PASS


def window() -> int:
    """Open the window: the entry point that needs no console."""
    # Without one Python has no streams either; what would be said there is said to nobody.
    for name in ("stdout", "stderr"):
        if getattr(sys, name) is None:
            setattr(sys, name, open(os.devnull, "w", encoding="utf-8"))  # noqa: SIM115
    return main(["open", "--box", *sys.argv[1:2]])


def _is_file(word: str) -> bool:
    return word.endswith(".json") or os.path.exists(word)


class _Parser(argparse.ArgumentParser):
    commands: Mapping[str, Any] = {}
    """Its commands by name."""

    def error(self, message: str) -> NoReturn:
        _complain(f"{message}; `{self.prog} --help` shows what is allowed")
        raise SystemExit(BAD_INPUT)


def _with_values(argv: Sequence[str]) -> list[str]:
    """Join "--gap" and "-1,5°": argparse would take a negative value with a unit for an option."""
    joined: list[str] = []
    for word in argv:
        takes = joined and joined[-1].startswith("--") and "=" not in joined[-1]
        if takes and re.match(r"[-−][\d.,]", word):
            joined[-1] += f"={word}"
        else:
            joined.append(word)
    return joined


def _complain(sentence: str) -> None:
    sys.stderr.write(f"magview: {sentence}\n")


def _parser() -> _Parser:
    parser = _Parser(
        prog="magview",
        description="A workbench for setting an aircraft magneto with breaker contacts. "
        "Without a command it opens the window.",
        epilog=CAUTION,
    )
    parser.add_argument("--version", action="version", version=f"magview {__version__}")
    shipped = ", ".join(shipped_names("magnetos"))
    parser.add_argument(
        "--magneto",
        metavar="MAGNETO",
        help=f"what to open the window on: a file or a shipped one ({shipped})",
    )
    parser.set_defaults(run=_window)
    commands = parser.add_subparsers(title="commands", metavar="COMMAND", parser_class=_Parser)

    readings = commands.add_parser("readings", help="where the contacts open and how far, for a setting")
    readings.add_argument("magneto", metavar="MAGNETO", help=f"a file or a shipped magneto ({shipped})")
    readings.add_argument("--backplate-deg", type=_angle, required=True, metavar="B", help="positive with rotation")
    readings.add_argument("--screw-deg", type=_angle, required=True, metavar="S", help="positive = contacts closer")
    readings.set_defaults(run=_readings)

    adjust = commands.add_parser("adjust", help="the setting that gives a gap and opens at the E-gap")
    adjust.add_argument("magneto", metavar="MAGNETO", help=f"a file or a shipped magneto ({shipped})")
    adjust.add_argument("--gap", type=_length, required=True, metavar="GAP", help="with its unit: 0.23mm, 9thou")
    adjust.set_defaults(run=_adjust)

    shift = commands.add_parser("shift", help="which teeth to move at the coupling for the timing wanted")
    installations = ", ".join(shipped_names("installations"))
    shift.add_argument(
        "installation", nargs="?", metavar="INSTALLATION", help=f"a file or a shipped one ({installations}), or:"
    )
    shift.add_argument("--magneto-teeth", type=_whole, metavar="N", help="teeth of the disc's magneto face")
    shift.add_argument("--drive-teeth", type=_whole, metavar="N", help="teeth of the disc's drive face")
    shift.add_argument("--rotor-turns-per-crank-turn", type=_ratio, metavar="K", help="a number or a fraction, 9/8")
    shift.add_argument("--reads", type=_btdc, required=True, metavar="BTDC", help="where the lamp says it fires")
    shift.add_argument("--wanted", type=_btdc, metavar="BTDC", help="where it should; left out: as the engine's file")
    shift.set_defaults(run=_shift)

    engine = commands.add_parser("engine", help="true top dead centres and firing of every cylinder")
    engine.add_argument(
        "engine", metavar="ENGINE", help=f"a file or a shipped one ({', '.join(shipped_names('engines'))})"
    )
    engine.set_defaults(run=_engine)

    opened = commands.add_parser("open", help="open a file in the window; `magview FILE` does the same")
    opened.add_argument(
        "file",
        nargs="?",
        metavar="FILE",
        help="a magneto, installation, exercise, lesson, attempt, class set or job sheet",
    )
    opened.add_argument("--box", action="store_true", help=argparse.SUPPRESS)  # there is no terminal: say it in a box
    opened.set_defaults(run=_open)

    desktop = commands.add_parser("desktop", help="put the program on your desktop: menu entry, icon, file types")
    desktop.add_argument("--remove", action="store_true", help="take away again what was put there")
    desktop.set_defaults(run=_desktop)
    check = commands.add_parser("check", help="what this machine lacks for window, printing and files, if anything")
    check.set_defaults(run=_check)

    add_commands(commands)
    add_paper_commands(commands)
    add_class_command(commands)
    add_guide(commands)
    parser.commands = commands.choices
    for command in (readings, adjust, shift, engine, desktop, check):
        command.add_argument("--json", action="store_true", help="full precision, for programs")
    return parser


def _argument(parse: Callable[[str], T]) -> Callable[[str], T]:
    def convert(text: str) -> T:
        try:
            return parse(text)
        except ValueError as error:
            raise argparse.ArgumentTypeError(str(error)) from error

    return convert


def _parse_whole(text: str) -> int:
    if not re.fullmatch(r"[+-]?[0-9]{1,9}", text.strip()):
        raise ValueError(f"“{text[:40]}” is not a whole number")
    return int(text)


def _parse_ratio(text: str) -> Fraction:
    try:
        if not re.fullmatch(r"\s*\d{1,6}([.,]\d{1,15}|/\d{1,6})?\s*", text):
            raise ValueError(text)
        return Fraction(text.replace(",", "."))
    except (ValueError, ZeroDivisionError) as error:
        raise ValueError(f"“{text[:40]}” is not a number or a fraction such as 9/8") from error


_angle = _argument(parse_angle_deg)
_btdc = _argument(parse_btdc_deg)
_length = _argument(parse_length_mm)
_whole = _argument(_parse_whole)
_ratio = _argument(_parse_ratio)


# ---------------------------------------------------------------------- commands


def _window(arguments: argparse.Namespace) -> int:
    from magview.cli_window import show_named

    return show_named(arguments.magneto, _readings_text)


def _open(arguments: argparse.Namespace) -> int:
    from magview.cli_window import show_file

    return show_file(arguments.file, arguments.box, _readings_text)


def _desktop(arguments: argparse.Namespace) -> int:
    from magview.cli_desktop import run_desktop  # the window does not wait for this, nor for the next

    return run_desktop(arguments.remove, arguments.json)


def _check(arguments: argparse.Namespace) -> int:
    from magview.cli_check import run_check

    return run_check(arguments.json)


def _readings(arguments: argparse.Namespace) -> int:
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
        _say(_readings_text(magneto, backplate, screw))
    return PASS if result.within_limits else FAIL


def _adjust(arguments: argparse.Namespace) -> int:
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


def _shift(arguments: argparse.Namespace) -> int:
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
    tolerance = None if installation is None else installation.engine.timing_tolerance_deg
    outside = None if tolerance is None else outside_tolerance(moves, tolerance)
    if arguments.json:
        _print_json({"moves": [asdict(move) for move in moves]})
    else:
        rotation = None if installation is None else installation.magneto.rotation
        _say(_moves_text(moves, arguments.reads, wanted, rotation))
        if tolerance is None:
            _say("  Whether that is near enough, the engine's manual says; an INSTALLATION brings its tolerance.")
        else:
            _say(f"  {outside}" if outside else f"  The first is within the tolerance of {tolerance:g}°.")
        _say(f"Mark disc, flanges and engine before taking anything apart; move one tooth at a time.\n{CAUTION}")
    return FAIL if outside else PASS


def _engine(arguments: argparse.Namespace) -> int:
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


def _readings_text(magneto: Magneto, backplate_deg: float, screw_deg: float) -> str:
    result = internal_timing(magneto).readings(backplate_deg, screw_deg)
    plate, screw = format_angle(backplate_deg, True), format_angle(screw_deg, True)
    lines = [
        f"{magneto.name}: backplate {plate}, contact screw {screw}",
        "",
        "  lobe   opens     E-gap error   closes    dwell     largest gap",
    ]
    for i in range(len(result.opens_deg)):
        opens = "never" if never_words(result, i) else format_angle(result.opens_deg[i])
        closes = format_angle(result.closes_deg[i])
        error, dwell = format_angle(result.e_gap_error_deg[i], True), format_angle(result.dwell_deg[i])
        gap = f"{format_length(result.max_gap_mm[i], False)} = {format_length(result.max_gap_mm[i], True)}"
        lines.append(f"  {i + 1:>4}   {opens:<9} {error:<13} {closes:<9} {dwell:<9} {gap}")
    low, high = magneto.gap_limits_mm
    found, judged = faults(magneto, result), judged_words(magneto)
    lines += [
        "",
        f"  straightedge from the rim mark  {_offset_words(result)} (limit ±{magneto.marks.tolerance_mm:.2f} mm)",
        f"  largest gap allowed             {low:.3f} to {high:.3f} mm = "
        f"{format_length(low, True)} to {format_length(high, True)}",
        f"  {'OUT OF LIMITS: ' + '; '.join(found) if found else 'WITHIN LIMITS'}"
        + (f" ({judged})" if judged else ""),
        "",
        "Angles in degrees of the rotor from the neutral before No. 1 fires; a positive error opens late.",
        CAUTION,
    ]
    return "\n".join(lines)


def _offset_words(result: Readings) -> str:
    offset = float(result.mark_offset_mm)
    return mark_words(f"{abs(offset):.2f} mm", offset)


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
