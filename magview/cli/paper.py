"""The commands of paper for a class: ``magview worksheet`` and ``magview handout``, thin."""

from __future__ import annotations

import argparse
import re
from dataclasses import replace
from pathlib import Path
from typing import TYPE_CHECKING, Any

from magview.cli.streams import words_stream, write_pdf
from magview.drawing.captions import End
from magview.paper.sizes import PAPERS
from magview.spec.base import SpecError
from magview.spec.language import tr, tr_n

if TYPE_CHECKING:  # the other commands do not wait for these
    from magview.paper.blocks import Document

PASS = 0

PICTURES: tuple[End, ...] = ("breaker", "drive", "crank", "lead")
LABELS = ("names", "blanks", "answers", "none")


def add_commands(commands: argparse._SubParsersAction[Any]) -> None:
    """Put both commands beside the others."""
    sheet = commands.add_parser("worksheet", help=tr("Write a worksheet of an exercise, or its answer key, as PDF."))
    sheet.add_argument(
        "exercise",
        nargs="?",
        metavar="EXERCISE",
        help=tr("Take this exercise: a file, or the name of a shipped one, such as gap-wrong."),
    )
    sheet.add_argument("--set", metavar="CODE", help=tr("Take a class's set instead: a code, or a file."))
    for_whom = tr("With --set: name a pupil, and give the option again for each further one.")
    sheet.add_argument("--pupil", metavar="NAME", action="append", default=[], help=for_whom)
    sheet.add_argument(
        "--seed", metavar="N", default="0", help=tr("Draw the faults by this number, such as 4711. Without it, 0.")
    )
    sheet.add_argument("--key", action="store_true", help=tr("Write the answer key instead of the worksheet."))
    sheet.add_argument("--hints", action="store_true", help=tr("Print the hints, too."))
    sheet.add_argument(
        "--no-parts", action="store_true", help=tr("Leave out the pictures whose parts are to be named.")
    )
    sheet.add_argument(
        "--name", metavar="NAME", default="", help=tr("Print this name. Without it, a line to write it on.")
    )
    _add_paper(sheet)
    sheet.set_defaults(run=run_worksheet)

    pictures = commands.add_parser("handout", help=tr("Write pictures of a magneto or installation as PDF."))
    pictures.add_argument(
        "bench", metavar="BENCH", help=tr("Take this magneto or installation: a file, or the name of a shipped one.")
    )
    pictures.add_argument(
        "--picture",
        choices=PICTURES,
        action="append",
        help=tr("Choose a picture, and give the option again for each further one. Without it, all."),
    )
    pictures.add_argument(
        "--labels", choices=LABELS, default="names", help=tr("Choose what stands beside the parts.")
    )
    pictures.add_argument("--told", action="store_true", help=tr("Add the description of each part."))
    _add_paper(pictures)
    pictures.set_defaults(run=run_handout)


def _add_paper(command: argparse.ArgumentParser) -> None:
    command.add_argument("--pdf", metavar="OUT", required=True, help=tr("Write this file, such as handout.pdf."))
    command.add_argument(
        "--paper", type=str.lower, choices=PAPERS, default="a4", help=tr("Choose the size of paper: a4 or letter.")
    )


def run_worksheet(arguments: argparse.Namespace) -> int:
    """Write a worksheet or its key, or those of a whole set."""
    if (arguments.exercise is None) == (arguments.set is None):
        raise SpecError(tr("give either an EXERCISE or --set with a class's code or file"))
    if arguments.set is not None:
        return _run_set(arguments)
    from magview.classroom.worksheet import Whose, answer_key, worksheet
    from magview.practice.library import find_exercise

    if not re.fullmatch(r"[0-9]{1,16}", arguments.seed.strip()):
        raise SpecError(
            tr("--seed is “{seed}”; it must be a whole number from 0 on, of at most 16 digits",
               seed=arguments.seed[:40])
        )  # fmt: skip
    exercise, seed, whose = find_exercise(arguments.exercise), int(arguments.seed), Whose(arguments.name[:120])
    paper = (
        answer_key(exercise, seed, whose)
        if arguments.key
        else worksheet(exercise, seed, whose, hints=arguments.hints)
    )
    return _print(paper, arguments)


def _run_set(arguments: argparse.Namespace) -> int:
    from magview.classroom.set_papers import set_key, set_worksheets
    from magview.classroom.sets import code_of, open_set, why_no_code

    of = open_set(arguments.set)
    code = "" if why_no_code(of) else code_of(of)
    if arguments.key:
        return _print(set_key(of, code, arguments.pupil), arguments)
    return _print(set_worksheets(of, code, arguments.pupil, hints=arguments.hints), arguments)


def run_handout(arguments: argparse.Namespace) -> int:
    """Write pictures of a bench as it is designed."""
    from magview.bench.placing import placed
    from magview.classroom.drawings import has
    from magview.classroom.worksheet import handout
    from magview.spec.library import find_installation, find_magneto, shipped_names

    name = arguments.bench
    item: Any
    if name in shipped_names("installations"):
        item = find_installation(name)
    elif name in shipped_names("magnetos"):
        item = find_magneto(name)
    else:
        from magview.spec.files import read_bench_item
        from magview.spec.formats import names_file

        known = ", ".join((*shipped_names("magnetos"), *shipped_names("installations")))
        if not names_file(name):
            raise SpecError(
                tr("“{name}” is neither a file nor one of the shipped: {known}", name=name[:60], known=known)
            )
        item = read_bench_item(Path(name))
    state = placed(item)
    ends = tuple(arguments.picture or [end for end in PICTURES if has(state, end)])
    return _print(handout(state, ends, arguments.labels, told=arguments.told), arguments)


def _print(paper: Document, arguments: argparse.Namespace) -> int:
    path = Path(arguments.pdf)
    pages = write_pdf(path, replace(paper, size=arguments.paper))
    said = tr_n("Wrote {file}: {count} page.", "Wrote {file}: {count} pages.", file=path.name, count=pages)
    words_stream(arguments.pdf).write(f"{said}\n")
    return PASS
