"""The command ``magview shift``: the teeth to move, of one magneto or of both, in words, as JSON or on paper."""

from __future__ import annotations

import argparse
from dataclasses import asdict, dataclass
from fractions import Fraction
from pathlib import Path
from typing import TextIO

from magview import CAUTION
from magview.bench.apply import BTDC_LIMIT_DEG
from magview.bench.engine_words import move_outside_words, outside_words
from magview.bench.lamp_words import LOOK_FIRST, LOOK_FIRST_WHY, btdc_words, place_words
from magview.bench.state import Side
from magview.bench.tooth_steps import tooth_degrees
from magview.bench.words import move_words, way_words
from magview.cli.streams import print_json, say, words_stream, write_out, write_pdf
from magview.physics.engine.coupling import (
    Move,
    nearest_firings,
    plan,
    within_tolerance,
)
from magview.physics.engine.lamp import ASK_FIRST_DEG, LOOK_FIRST_DEG, lamp_after_deg
from magview.physics.engine.pair_plan import PairPlan, PairReading, plan_pair
from magview.spec.base import SpecError
from magview.spec.engine import Installation
from magview.spec.language import format_angle, marked, tr
from magview.spec.library import find_installation_or_card
from magview.spec.magneto import Rotation

PASS, FAIL = 0, 1

MAX_SHOWN = 8
"""Moves in the list in words."""

MAX_TOLERANCE_DEG = 30.0
"""As in the engine's file."""

SIDES: tuple[Side, ...] = ("left", "right")


@dataclass(frozen=True)
class Coupling:
    """The coupling asked about, from an installation's file or as typed."""

    name: str | None
    magneto_teeth: int
    drive_teeth: int
    ratio: float | Fraction
    rotation: Rotation | None
    timing_tolerance_deg: float | None
    synchronising_tolerance_deg: float | None
    installation: Installation | None


def run_shift(arguments: argparse.Namespace) -> int:
    """Print the teeth to move. Exit code 1 if the best move does not come within the tolerance."""
    coupling = _coupling(arguments)
    both = arguments.left_reads is not None or arguments.right_reads is not None
    if both:
        return _run_both(arguments, coupling)
    if arguments.reads is None:
        raise SpecError(tr("give --reads, or both --left-reads and --right-reads"))
    side: Side = "right" if coupling.installation and coupling.installation.position == "right" else "left"
    return _run_one(arguments, coupling, _reading(arguments, coupling, side, arguments.reads, "--reads"))


def _coupling(arguments: argparse.Namespace) -> Coupling:
    by_hand = (arguments.magneto_teeth, arguments.drive_teeth, arguments.rotor_turns_per_crank_turn)
    extras = (arguments.tolerance, arguments.synchronising_tolerance, arguments.rotation, arguments.name)
    if arguments.installation is not None:
        if any(value is not None for value in (*by_hand, *extras)):
            raise SpecError(
                tr(
                    "give either an INSTALLATION or the coupling's teeth, ratio, tolerances, rotation and name, "
                    "not both"
                )
            )
        found = find_installation_or_card(arguments.installation)
        engine, teeth = found.engine, found.disc
        return Coupling(
            found.magneto.name, teeth.magneto_teeth, teeth.drive_teeth, found.rotor_turns_per_crank_turn,
            found.magneto.rotation, engine.timing_tolerance_deg, engine.synchronising_tolerance_deg, found,
        )  # fmt: skip
    if None in by_hand:
        raise SpecError(
            tr(
                "without an INSTALLATION, --magneto-teeth, --drive-teeth, --rotor-turns-per-crank-turn and --wanted "
                "are all needed"
            )
        )
    for option, value in (("--tolerance", extras[0]), ("--synchronising-tolerance", extras[1])):
        if value is not None and not 0 < value <= MAX_TOLERANCE_DEG:
            words = marked("{option} is {value}; it must be above 0° and at most {most}° of crank, such as 1")
            raise SpecError(tr(words, option=option, value=value, most=MAX_TOLERANCE_DEG))
    return Coupling(
        arguments.name, *by_hand, arguments.rotation, arguments.tolerance, arguments.synchronising_tolerance, None
    )


def _reading(arguments: argparse.Namespace, coupling: Coupling, side: Side, reads: float, option: str) -> PairReading:
    wanted = getattr(arguments, f"{side}_wanted") if option != "--reads" else None
    wanted = arguments.wanted if wanted is None else wanted
    if wanted is None and coupling.installation is not None:
        wanted = getattr(coupling.installation.engine.firing_btdc_deg, side)
    if wanted is None:
        raise SpecError(tr("without an INSTALLATION, --wanted is needed: where it should fire, such as --wanted 27"))
    for name, value in ((option, reads), (option.replace("reads", "wanted"), wanted)):
        if abs(value) > BTDC_LIMIT_DEG:
            words = marked("{option} is {value}; it must lie within ±{limit}° of top dead centre")
            raise SpecError(tr(words, option=name, value=value, limit=BTDC_LIMIT_DEG))
    if arguments.opening_change is not None:
        reads = lamp_after_deg(reads, float(coupling.ratio), opening_change_deg=arguments.opening_change)
    off = abs(reads - wanted)
    if off > ASK_FIRST_DEG and not arguments.checked:
        raise SpecError(
            tr(
                "the timing is {off}° of crank out, more than {limit}°: look at stroke, mark and finger first, then "
                "say --checked",
                off=off,
                limit=ASK_FIRST_DEG,
            )
        )
    return PairReading(coupling.magneto_teeth, coupling.drive_teeth, coupling.ratio, reads, wanted)


# ---------------------------------------------------------------------- one magneto


def _run_one(arguments: argparse.Namespace, coupling: Coupling, reading: PairReading) -> int:
    stream = words_stream(arguments.pdf, arguments.html, json_wanted=arguments.json)
    reads, wanted = reading.reads_btdc_deg, reading.wanted_btdc_deg
    try:
        moves = plan(reading.magneto_teeth, reading.drive_teeth, reading.rotor_turns_per_crank_turn, reads, wanted)
    except ValueError as error:
        raise SpecError(str(error)) from error
    number = 1 if arguments.move is None else arguments.move
    if not 1 <= number <= len(moves):
        raise SpecError(tr("--move is {number}; there are the moves 1 to {last}", number=number, last=len(moves)))
    move, tolerance = moves[number - 1], coupling.timing_tolerance_deg
    if (arguments.pdf or arguments.html) and arguments.opening_change is not None:
        raise SpecError(
            tr("--pdf and --html need a reading that stands: read the lamp again, and leave --opening-change out")
        )
    _print_plan(arguments, coupling, reading, move)
    good = None if tolerance is None else within_tolerance(move, tolerance)
    change = arguments.opening_change
    before = {} if change is None else {"read_before_btdc_deg": arguments.reads, "opening_change_deg": change}
    if arguments.json:
        print_json({
            **_inputs(coupling), "reads_btdc_deg": reads, "wanted_btdc_deg": wanted, "move": number,
            "within_tolerance": good, **before, "moves": [asdict(move) for move in moves],
        })  # fmt: skip
    else:
        shown = moves[: max(MAX_SHOWN, number)]
        if arguments.opening_change is not None:
            words = marked(
                "{old}° is out of date: the contacts were set anew. The lamp should now read {now:deg}. Read it "
                "again before any tooth is moved."
            )
            say(tr(words, old=arguments.reads, now=reads), stream)
        if abs(reads - wanted) > LOOK_FIRST_DEG:
            say(f"{tr(LOOK_FIRST)} {tr(LOOK_FIRST_WHY)}", stream)
        say(_moves_text(shown, reading, coupling), stream)
        say(f"  {tooth_degrees(reading.magneto_teeth, reading.drive_teeth, coupling.ratio)}", stream)
        say(f"  {_verdict_text(moves, number, arguments.move is not None, tolerance)}", stream)
        _say_care(stream)
    return FAIL if good is False or arguments.opening_change is not None else PASS


def _inputs(coupling: Coupling) -> dict[str, object]:
    return {
        "name": coupling.name,
        "magneto_teeth": coupling.magneto_teeth,
        "drive_teeth": coupling.drive_teeth,
        "rotor_turns_per_crank_turn": float(coupling.ratio),
        "rotation": coupling.rotation,
        "timing_tolerance_deg": coupling.timing_tolerance_deg,
        "synchronising_tolerance_deg": coupling.synchronising_tolerance_deg,
    }


def _verdict_text(moves: list[Move], number: int, asked: bool, tolerance: float | None) -> str:
    """The sentence on the move asked for, or on the first: a move's own error is not the coupling's best."""
    if tolerance is None:
        return tr(
            "The engine's manual says whether that is near enough; --tolerance or an INSTALLATION brings the limit."
        )
    if asked:
        outside = move_outside_words(moves[number - 1], tolerance)
        if outside:
            return tr("Move {number}: {outside}.", number=number, outside=outside)
        words = marked("Move {number}: within the tolerance of {tolerance}° of crank.")
        return tr(words, number=number, tolerance=tolerance)
    outside = outside_words(moves, tolerance)
    if not outside:
        return tr("The first is within the tolerance of {tolerance}° of crank.", tolerance=tolerance)
    told, near = f"{outside[0].upper()}{outside[1:]}.", [move.result_btdc_deg for move in nearest_firings(moves)]
    if not near[1:]:
        return told
    one, other = (btdc_words(result) for result in near[:2])
    return f"{told} {tr('Nearest on either side: {one} or {other}.', one=one, other=other)}"


_READS = {
    (True, True): marked("Fires at {reads}°, wanted {wanted}° before top dead centre. Moves, best first:"),
    (False, True): marked("{name}: fires at {reads}°, wanted {wanted}° before top dead centre. Moves, best first:"),
    (True, False): marked("Fires at {reads}, wanted {wanted}. Moves, best first:"),
    (False, False): marked("{name}: fires at {reads}, wanted {wanted}. Moves, best first:"),
}
"""By whether there is no name, and whether both angles are before top dead centre."""


def _before_top(reading: PairReading) -> bool:
    return min(reading.reads_btdc_deg, reading.wanted_btdc_deg) >= 0.0


def _reading_text(words: str, reading: PairReading, name: str | None = None) -> str:
    """Say where it fires and should: angles alone where both are before top dead centre, else each with its side."""
    reads, wanted = reading.reads_btdc_deg, reading.wanted_btdc_deg
    if _before_top(reading):
        return tr(words, name=name, reads=reads, wanted=wanted)
    return tr(words, name=name, reads=place_words(reads), wanted=place_words(wanted))


def _moves_text(moves: list[Move], reading: PairReading, coupling: Coupling) -> str:
    lines = [
        _reading_text(_READS[coupling.name is None, _before_top(reading)], reading, coupling.name),
        "",
    ]
    results = [btdc_words(move.result_btdc_deg) for move in moves]
    head, wide = tr("fires at"), max((len(words) for words in results), default=0)
    wide = max(len(head), wide)
    rest = tr("from wanted   A disc on the drive flange; B magneto flange on the disc")
    lines.append(f"       {head:<{wide}}   {rest}")
    for n, (move, result) in enumerate(zip(moves, results, strict=True), start=1):
        disc, flange = _words(move, coupling)
        residual = format_angle(move.residual_deg, True)
        lines.append(f"  {n:>2}   {result:<{wide}}   {residual:<11}   A {disc}; B {flange}")
    return "\n".join([*lines, ""])


def _words(move: Move, coupling: Coupling) -> tuple[str, str]:
    if coupling.rotation is None:
        return way_words(move.disc_teeth), way_words(move.magneto_teeth)
    return move_words(move, coupling.rotation, "drive end")


def _say_care(stream: TextIO) -> None:
    care = tr("Mark disc, flanges and engine before taking anything apart; move one tooth at a time.")
    say(f"{care}\n{CAUTION}", stream)


def _print_plan(arguments: argparse.Namespace, coupling: Coupling, reading: PairReading, move: Move) -> None:
    """Write a move as a plan on one page and as one file of HTML, as far as that was asked for."""
    if arguments.pdf is None and arguments.html is None:
        return
    from magview.job.shift_plan import plan_from, plan_typed, shift_documents

    reads, wanted = reading.reads_btdc_deg, reading.wanted_btdc_deg
    known = coupling.installation
    if known is not None and not known.magneto.assumed:
        page = plan_from(known, reads, wanted, move, checked=arguments.checked)
    else:
        page = plan_typed(
            coupling.magneto_teeth, coupling.drive_teeth, coupling.ratio, reads, wanted, move,
            tolerance_deg=coupling.timing_tolerance_deg, rotation=coupling.rotation, name=coupling.name or "",
        )  # fmt: skip
    if arguments.pdf is not None:
        write_pdf(Path(arguments.pdf), *shift_documents(page, arguments.paper))
    if arguments.html is not None:
        from magview.job.shift_html import shift_html

        write_out(arguments.html, shift_html(page))


# ---------------------------------------------------------------------- both


def _run_both(arguments: argparse.Namespace, coupling: Coupling) -> int:
    timing, together = coupling.timing_tolerance_deg, coupling.synchronising_tolerance_deg
    if arguments.reads is not None or arguments.left_reads is None or arguments.right_reads is None:
        raise SpecError(tr("give --reads for one magneto, or both --left-reads and --right-reads"))
    if arguments.opening_change is not None:
        raise SpecError(tr("--opening-change is for one magneto: give --reads"))
    if arguments.html is not None or arguments.move is not None:
        raise SpecError(tr("--html and --move are for one magneto: give --reads, such as --reads 20.5"))
    if coupling.installation is not None and coupling.installation.position == "single":
        raise SpecError(tr("this installation has a single magneto: give --reads"))
    if timing is None or together is None:
        raise SpecError(tr("without an INSTALLATION, both magnetos need --tolerance and --synchronising-tolerance"))
    readings = {
        side: _reading(arguments, coupling, side, getattr(arguments, f"{side}_reads"), f"--{side}-reads")
        for side in SIDES
    }
    try:
        found = plan_pair(readings["left"], readings["right"], timing, together)
    except ValueError as error:
        raise SpecError(str(error)) from error
    stream = words_stream(arguments.pdf, json_wanted=arguments.json)
    if arguments.pdf is not None:
        _print_pair(arguments, coupling, readings, found)
    if arguments.json:
        sides: dict[str, object] = {
            side: {
                "reads_btdc_deg": reading.reads_btdc_deg,
                "wanted_btdc_deg": reading.wanted_btdc_deg,
                "move": None if found is None else asdict(getattr(found, side)),
            }
            for side, reading in readings.items()
        }
        difference = None if found is None else found.difference_deg
        print_json(
            {**_inputs(coupling), **sides, "difference_deg": difference, "within_tolerance": found is not None}
        )
    else:
        say(_pair_text(coupling, readings, found, timing, together), stream)
        _say_care(stream)
    return FAIL if found is None else PASS


def _print_pair(
    arguments: argparse.Namespace, coupling: Coupling, readings: dict[Side, PairReading], found: PairPlan | None
) -> None:
    """Write both plans, a page each."""
    if found is None:
        raise SpecError(
            tr("no PDF: no pair of moves comes within the tolerances; give --reads for a plan of one magneto")
        )
    from magview.job.shift_plan import pair_documents, plan_from, plan_typed

    pages = []
    for side in SIDES:
        of, move = readings[side], found.left if side == "left" else found.right
        reads, wanted = of.reads_btdc_deg, of.wanted_btdc_deg
        if coupling.installation is not None:
            checked = arguments.checked
            pages.append(plan_from(coupling.installation, reads, wanted, move, checked=checked, of_side=side))
            continue
        pages.append(plan_typed(
            of.magneto_teeth, of.drive_teeth, coupling.ratio, reads, wanted, move, position=side,
            tolerance_deg=coupling.timing_tolerance_deg, rotation=coupling.rotation, name=coupling.name or "",
        ))  # fmt: skip
    write_pdf(Path(arguments.pdf), *pair_documents(pages[0], pages[1], arguments.paper), most=2)


def _pair_text(
    coupling: Coupling, readings: dict[Side, PairReading], found: PairPlan | None, timing: float, together: float
) -> str:
    lines = [] if coupling.name is None else [coupling.name]
    for side, reading in readings.items():
        lines.append(_reading_text(_FIRES[side, _before_top(reading)], reading))
    words = _NO_PAIR if found is None else _TOGETHER
    lines.append(tr(words, timing=timing, together=together))
    if found is None:
        return "\n".join(lines)
    for side in SIDES:
        move: Move = getattr(found, side)
        disc, flange = _words(move, coupling)
        lines.append(
            tr(_MOVED[side], flange=flange, disc=disc, fires=btdc_words(move.result_btdc_deg), off=move.residual_deg)
        )
    lines.append(tr("  Their errors then differ by {angle:deg} of crank.", angle=abs(found.difference_deg)))
    return "\n".join(lines)


_FIRES = {
    ("left", True): marked("Left fires at {reads}°, wanted {wanted}° before top dead centre."),
    ("right", True): marked("Right fires at {reads}°, wanted {wanted}° before top dead centre."),
    ("left", False): marked("Left fires at {reads}, wanted {wanted}."),
    ("right", False): marked("Right fires at {reads}, wanted {wanted}."),
}
"""By whether both angles are before top dead centre."""

_NO_PAIR = marked(
    "No pair of moves brings each within {timing}° of where it should fire and both within {together}° of one "
    "another."
)
_TOGETHER = marked(
    "Moved together, each comes within {timing}° of where it should fire and both within {together}° of one another:"
)
_MOVED = {
    "left": marked(
        "  left   A disc on the drive flange: {disc}; B magneto flange on the disc: {flange}; then fires at {fires}, "
        "{off:+deg} from wanted"
    ),
    "right": marked(
        "  right  A disc on the drive flange: {disc}; B magneto flange on the disc: {flange}; then fires at {fires}, "
        "{off:+deg} from wanted"
    ),
}
