"""The ``magview`` command: what may be written behind it, and who answers.

Exit codes: 0 pass, 1 out of limits or out of reach, 2 bad input.
"""

from __future__ import annotations

import argparse
import contextlib
import os
import re
import sys
from collections.abc import Callable, Mapping, Sequence
from fractions import Fraction
from typing import Any, NoReturn, TypeVar

from magview import CAUTION, __version__
from magview.cli.classroom import add_class_command
from magview.cli.guide import add_guide
from magview.cli.paper import SIZES
from magview.cli.paper import add_commands as add_paper_commands
from magview.cli.sheet import add_commands
from magview.spec.base import SpecError
from magview.spec.library import shipped_names
from magview.spec.magneto import Magneto
from magview.spec.parse import parse_angle_deg, parse_btdc_deg, parse_length_mm

PASS, BAD_INPUT = 0, 2

ROTATIONS = ("clockwise", "anticlockwise")

T = TypeVar("T")


def main(argv: Sequence[str] | None = None) -> int:
    """Run the command line; returns the exit code."""
    for stream in (sys.stdout, sys.stderr):
        if hasattr(stream, "reconfigure"):
            stream.reconfigure(errors="replace")  # a terminal without ° gets a ?, not a traceback
    words = _with_values(sys.argv[1:] if argv is None else argv)
    # The bench, asked for without a word more, does not wait for the parser of twenty commands.
    arguments = _parsed(words) if words else argparse.Namespace(run=_window, magneto=None)
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


def _parsed(words: list[str]) -> argparse.Namespace:
    parser = _parser()
    if not words[0].startswith("-") and words[0] not in parser.commands and _is_file(words[0]):
        words = ["open", *words]
    return parser.parse_args(words)


def window() -> int:
    """Open the window: the entry point that needs no console."""
    # Without one Python has no streams either; what would be said there is said to nobody.
    for name in ("stdout", "stderr"):
        if getattr(sys, name) is None:
            setattr(sys, name, open(os.devnull, "w", encoding="utf-8"))  # noqa: SIM115
    return main(["open", "--box", *sys.argv[1:2]])


def _is_file(word: str) -> bool:
    from magview.spec.formats import is_ours

    return is_ours(word) or os.path.exists(word)


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
    adjust.add_argument("--gap", type=_length, required=True, metavar="GAP", help="with its unit: 0.33mm, 13thou")
    adjust.set_defaults(run=_adjust)

    shift = commands.add_parser("shift", help="which teeth to move at the coupling for the timing wanted")
    installations = ", ".join(shipped_names("installations"))
    shift.add_argument(
        "installation", nargs="?", metavar="INSTALLATION", help=f"a file or a shipped one ({installations}), or:"
    )
    shift.add_argument("--magneto-teeth", type=_whole, metavar="N", help="teeth of the disc's magneto face")
    shift.add_argument("--drive-teeth", type=_whole, metavar="N", help="teeth of the disc's drive face")
    shift.add_argument("--rotor-turns-per-crank-turn", type=_ratio, metavar="K", help="a number or a fraction, 9/8")
    shift.add_argument("--tolerance", type=_angle, metavar="DEG", help="timing tolerance, degrees of crank")
    shift.add_argument(
        "--synchronising-tolerance", type=_angle, metavar="DEG", help="how far both magnetos may be apart, of crank"
    )
    shift.add_argument("--rotation", choices=ROTATIONS, help="the magneto's, seen from its drive end")
    shift.add_argument("--name", metavar="NAME", help="what the answer calls it")
    shift.add_argument("--reads", type=_btdc, metavar="BTDC", help="where the lamp says it fires, or for both:")
    shift.add_argument("--left-reads", type=_btdc, metavar="BTDC", help="where the left magneto fires, and")
    shift.add_argument("--right-reads", type=_btdc, metavar="BTDC", help="where the right magneto fires")
    shift.add_argument("--wanted", type=_btdc, metavar="BTDC", help="where it should; left out: as the engine's file")
    shift.add_argument("--left-wanted", type=_btdc, metavar="BTDC", help="where the left magneto should")
    shift.add_argument("--right-wanted", type=_btdc, metavar="BTDC", help="where the right magneto should")
    shift.add_argument(
        "--opening-change", type=_angle, metavar="DEG",
        help="how much later the contacts open since the lamp was read, degrees of rotor; earlier is negative",
    )  # fmt: skip
    shift.add_argument(
        "--checked", action="store_true", help="stroke, mark and finger were looked at: plan more than 90° of crank"
    )
    shift.add_argument(
        "--move", type=_whole, metavar="N", help="which of the moves is judged and printed; left out: 1"
    )
    shift.add_argument("--pdf", metavar="OUT", help="write the move as a plan on one page, its steps to be ticked")
    shift.add_argument("--paper", type=str.lower, choices=SIZES, default="a4", help="paper size; left out: a4")
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


# ---------------------------------------------------------------------- commands, none imported before it is wanted


def _window(arguments: argparse.Namespace) -> int:
    from magview.cli.window import show_named

    return show_named(arguments.magneto, _readings_text)


def _open(arguments: argparse.Namespace) -> int:
    from magview.cli.window import show_file

    return show_file(arguments.file, arguments.box, _readings_text)


def _desktop(arguments: argparse.Namespace) -> int:
    from magview.cli.desktop import run_desktop

    return run_desktop(arguments.remove, arguments.json)


def _check(arguments: argparse.Namespace) -> int:
    from magview.cli.check import run_check

    return run_check(arguments.json)


def _readings(arguments: argparse.Namespace) -> int:
    from magview.cli.calculators import run_readings

    return run_readings(arguments)


def _adjust(arguments: argparse.Namespace) -> int:
    from magview.cli.calculators import run_adjust

    return run_adjust(arguments)


def _shift(arguments: argparse.Namespace) -> int:
    from magview.cli.shift import run_shift

    return run_shift(arguments)


def _engine(arguments: argparse.Namespace) -> int:
    from magview.cli.calculators import run_engine

    return run_engine(arguments)


def _readings_text(magneto: Magneto, backplate_deg: float, screw_deg: float) -> str:
    from magview.cli.calculators import readings_text

    return readings_text(magneto, backplate_deg, screw_deg)
