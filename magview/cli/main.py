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
from magview.cli.paper import add_commands as add_paper_commands
from magview.cli.sheet import add_commands
from magview.paper.sizes import PAPERS
from magview.spec.base import SpecError
from magview.spec.language import marked, tr
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
        _complain(tr("{message}; `{program} --help` shows what is allowed", message=message, program=self.prog))
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
        description=tr(
            "A workbench for setting an aircraft magneto with breaker contacts. Without a command it opens the "
            "window."
        ),
        epilog=CAUTION,
    )
    parser.add_argument(
        "--version", action="version", version=f"magview {__version__}", help=tr("Print the version and end.")
    )
    shipped = ", ".join(shipped_names("magnetos"))
    parser.add_argument(
        "--magneto",
        metavar="MAGNETO",
        help=tr(
            "Open the window on this magneto: a file, or the name of a shipped one ({shipped}).", shipped=shipped
        ),
    )
    parser.set_defaults(run=_window)
    commands = parser.add_subparsers(title=tr("commands"), metavar="COMMAND", parser_class=_Parser)
    calculators = [_add_readings(commands), _add_adjust(commands), _add_shift(commands), _add_engine(commands)]

    opened = commands.add_parser("open", help=tr("Open a file in the window. `magview FILE` does the same."))
    opened.add_argument(
        "file",
        nargs="?",
        metavar="FILE",
        help=tr("Open this magneto, installation, exercise, lesson, attempt, class set, job sheet or limits card."),
    )
    opened.add_argument("--box", action="store_true", help=argparse.SUPPRESS)  # there is no terminal: say it in a box
    opened.set_defaults(run=_open)

    words = tr("Open the window at the bench, on a shipped magneto.")
    commands.add_parser("bench", help=words, description=words).set_defaults(run=_bench)

    desktop = commands.add_parser("desktop", help=tr("Put menu entry, icon and file types on your desktop."))
    desktop.add_argument("--remove", action="store_true", help=tr("Take them off the desktop again."))
    desktop.set_defaults(run=_desktop)
    check = commands.add_parser("check", help=tr("Tell what this machine lacks for window, printing and files."))
    check.set_defaults(run=_check)

    add_commands(commands)
    add_paper_commands(commands)
    add_class_command(commands)
    add_guide(commands)
    parser.commands = commands.choices
    for command in (*calculators, desktop, check):
        command.add_argument("--json", action="store_true", help=tr("Print JSON with all digits, for programs."))
    return parser


def _add_magneto(command: argparse.ArgumentParser) -> None:
    shipped = ", ".join(shipped_names("magnetos"))
    words = tr("Take this magneto: a file, or the name of a shipped one ({shipped}).", shipped=shipped)
    command.add_argument("magneto", metavar="MAGNETO", help=words)


def _add_readings(commands: argparse._SubParsersAction[_Parser]) -> _Parser:
    words = tr("Tell where the contacts open, and how far, for a setting of plate and contact screw.")
    readings = commands.add_parser("readings", help=words, description=words)
    _add_magneto(readings)
    readings.add_argument(
        "--backplate-deg",
        type=_angle,
        required=True,
        metavar="B",
        help=tr("Set the backplate to this angle, in degrees of plate, positive with rotation, such as 1.5."),
    )
    readings.add_argument(
        "--screw-deg",
        type=_angle,
        required=True,
        metavar="S",
        help=tr(
            "Set the contact screw to this angle, in degrees of screw, positive for contacts closer, such as -10."
        ),
    )
    readings.set_defaults(run=_readings)
    return readings


def _add_adjust(commands: argparse._SubParsersAction[_Parser]) -> _Parser:
    words = tr("Find the setting that gives a largest gap and opens at the E-gap.")
    adjust = commands.add_parser("adjust", help=words, description=words)
    _add_magneto(adjust)
    adjust.add_argument(
        "--gap",
        type=_length,
        required=True,
        metavar="GAP",
        help=tr("Aim at this largest gap. Write its unit: 0.33mm, 0.013in or 13thou."),
    )
    adjust.set_defaults(run=_adjust)
    return adjust


def _add_shift(commands: argparse._SubParsersAction[_Parser]) -> _Parser:
    words = tr("Find the teeth to move at the coupling for the timing wanted.")
    shift = commands.add_parser("shift", help=words, description=words)
    add = shift.add_argument
    shipped = ", ".join(shipped_names("installations"))
    add(
        "installation", nargs="?", metavar="INSTALLATION",
        help=tr("Take coupling, engine and limits from this file, limits card or shipped installation "
                "({shipped}).", shipped=shipped),
    )  # fmt: skip
    teeth = tr("Give the teeth of the disc at its magneto face, such as 20.")
    add("--magneto-teeth", type=_whole, metavar="N", help=teeth)
    teeth = tr("Give the teeth of the disc at its drive face, such as 19.")
    add("--drive-teeth", type=_whole, metavar="N", help=teeth)
    add(
        "--rotor-turns-per-crank-turn", type=_ratio, metavar="K",
        help=tr("Give the turns of the rotor for one turn of the crank, such as 1.5 or 9/8."),
    )  # fmt: skip
    add(
        "--tolerance", type=_angle, metavar="DEG",
        help=tr("Allow the firing to be this far from where it is wanted, in degrees of crank, such as 1."),
    )  # fmt: skip
    add(
        "--synchronising-tolerance", type=_angle, metavar="DEG",
        help=tr("Allow left and right to be this far apart, in degrees of crank, such as 0.5."),
    )  # fmt: skip
    add(
        "--rotation", choices=ROTATIONS,
        help=tr("Name the way the magneto turns, seen from its drive end: clockwise or anticlockwise."),
    )  # fmt: skip
    add("--name", metavar="NAME", help=tr("Call the magneto by this name in the answer."))
    before = tr("in degrees of crank before top dead centre, such as 22; 3 ATDC is after it")
    for option, words in (
        ("--reads", marked("Give the firing that the lamp shows, {before}.")),
        ("--left-reads", marked("For both magnetos: give the firing of the left one, {before}.")),
        ("--right-reads", marked("For both magnetos: give the firing of the right one, {before}.")),
        ("--wanted", marked("Aim at this firing, {before}. Without it, the engine's file says.")),
        ("--left-wanted", marked("For both magnetos: aim at this firing of the left one, {before}.")),
        ("--right-wanted", marked("For both magnetos: aim at this firing of the right one, {before}.")),
    ):
        add(option, type=_btdc, metavar="BTDC", help=tr(words, before=before))
    add(
        "--opening-change", type=_angle, metavar="DEG",
        help=tr(
            "Count in that the contacts were set anew since the lamp was read, and open this much later, in degrees "
            "of rotor, such as 1.5; earlier is negative."
        ),
    )  # fmt: skip
    add(
        "--checked", action="store_true",
        help=tr("Say that stroke, mark and finger were looked at: plan an error above 90° of crank."),
    )  # fmt: skip
    add(
        "--move", type=_whole, metavar="N",
        help=tr("Judge and print move N of the list, such as 2. Without it, the first."),
    )  # fmt: skip
    add("--pdf", metavar="OUT", help=tr("Write the move as a plan of one page with steps to tick, such as plan.pdf."))
    add("--html", metavar="OUT", help=tr("Write the plan step by step for a tablet, one file, such as plan.html."))
    add("--paper", type=str.lower, choices=PAPERS, default="a4", help=tr("Choose the size of paper: a4 or letter."))
    shift.set_defaults(run=_shift)
    return shift


def _add_engine(commands: argparse._SubParsersAction[_Parser]) -> _Parser:
    words = tr("Tell every cylinder's true top dead centre and its firing.")
    engine = commands.add_parser("engine", help=words, description=words)
    shipped = ", ".join(shipped_names("engines"))
    words = tr("Take this engine: a file, or the name of a shipped one ({shipped}).", shipped=shipped)
    engine.add_argument("engine", metavar="ENGINE", help=words)
    engine.set_defaults(run=_engine)
    return engine


def _argument(parse: Callable[[str], T]) -> Callable[[str], T]:
    def convert(text: str) -> T:
        try:
            return parse(text)
        except ValueError as error:
            raise argparse.ArgumentTypeError(str(error)) from error

    return convert


def _parse_whole(text: str) -> int:
    if not re.fullmatch(r"[+-]?[0-9]{1,9}", text.strip()):
        raise ValueError(tr("“{text}” is not a whole number, such as 20", text=text[:40]))
    return int(text)


def _parse_ratio(text: str) -> Fraction:
    try:
        if not re.fullmatch(r"\s*\d{1,6}([.,]\d{1,15}|/\d{1,6})?\s*", text):
            raise ValueError(text)
        return Fraction(text.replace(",", "."))
    except (ValueError, ZeroDivisionError) as error:
        raise ValueError(tr("“{text}” is not a number or a fraction, such as 1.5 or 9/8", text=text[:40])) from error


_angle = _argument(parse_angle_deg)
_btdc = _argument(parse_btdc_deg)
_length = _argument(parse_length_mm)
_whole = _argument(_parse_whole)
_ratio = _argument(_parse_ratio)


# ---------------------------------------------------------------------- commands, none imported before it is wanted


def _window(arguments: argparse.Namespace) -> int:
    from magview.cli.window import show_named

    return show_named(arguments.magneto, _readings_text)


def _bench(arguments: argparse.Namespace) -> int:
    from magview.cli.window import show_named

    return show_named(None, _readings_text, bench=True)


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
