"""The commands of the class: ``magview class code``, ``key``, ``gather``, ``hand-in``; thin."""

from __future__ import annotations

import argparse
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any

from magview.cli.streams import words_stream, write_out
from magview.spec.base import SpecError
from magview.spec.language import tr

if TYPE_CHECKING:  # the other commands, and the window, do not wait for the class
    from magview.classroom.sets import ClassSet

PASS, FAIL = 0, 1


def add_class_command(commands: argparse._SubParsersAction[Any]) -> None:
    """Put the class beside the other commands."""
    whole = commands.add_parser(
        "class", help=tr("Make a code for a class, print its answer key, gather its attempts.")
    )
    parts = whole.add_subparsers(metavar="PART", required=True, parser_class=type(whole))

    code = parts.add_parser("code", help=tr("Make a class code, or tell what a code stands for."))
    code.add_argument(
        "exercises",
        nargs="+",
        metavar="EXERCISE",
        help=tr("Take these exercises in this order, shipped or files; or one code or set's file."),
    )
    code.add_argument(
        "--seed",
        type=int,
        metavar="N",
        help=tr("Draw the faults by this number, such as 4711: the same number makes the same code."),
    )
    code.add_argument("--each-their-own", action="store_true", help=tr("Draw a fault of their own for each pupil."))
    code.add_argument("--no-hints", action="store_true", help=tr("Give no hints."))
    code.add_argument(
        "--units",
        choices=("own", "metric", "inch"),
        default="own",
        help=tr("Choose rule and blades: the exercise's own, metric or inch."),
    )
    code.add_argument(
        "--minutes", type=int, metavar="N", help=tr("Allow this time for each exercise, in minutes, such as 20.")
    )
    code.add_argument(
        "--title", default="", metavar="TEXT", help=tr("Write this title into the file and on the key.")
    )
    code.add_argument(
        "--pupil",
        action="append",
        default=[],
        metavar="NAME",
        help=tr("Name a pupil. Give the option again for each further one."),
    )
    code.add_argument(
        "--save",
        metavar="OUT",
        help=tr("Write the set, with pupils and own exercises, to a file, such as class.magview.json."),
    )
    code.set_defaults(run=run_code)

    key = parts.add_parser("key", help=tr("Print the answer key of a code or of a set's file."))
    key.add_argument("set", metavar="SET", help=tr("Take this set: a code, or a file."))
    key.add_argument(
        "--pupil",
        action="append",
        default=[],
        metavar="NAME",
        help=tr("Name a pupil. Give the option again for each further one."),
    )
    key.add_argument("--csv", metavar="OUT", help=tr("Write the key as CSV, such as key.csv."))
    key.set_defaults(run=run_key)

    gather = parts.add_parser("gather", help=tr("Mark every attempt in a folder."))
    gather.add_argument("folder", metavar="FOLDER", help=tr("Read the attempts in this folder."))
    gather.add_argument("--set", metavar="SET", help=tr("Hold the attempts against this set: a code, or a file."))
    gather.add_argument("--csv", metavar="OUT", help=tr("Write every attempt as CSV, such as marks.csv."))
    gather.add_argument(
        "--cache", metavar="FILE", help=tr("Keep the marks in this file, so that the next time is quicker.")
    )
    gather.set_defaults(run=run_gather)

    hand_in = parts.add_parser("hand-in", help=tr("Put a finished attempt into the class's folder."))
    hand_in.add_argument("attempt", metavar="ATTEMPT", help=tr("Take this attempt: a file saved in Practise."))
    hand_in.add_argument("set", metavar="SET", help=tr("Take this set: a code, or a file."))
    hand_in.add_argument("folder", metavar="FOLDER", help=tr("Write it into this folder."))
    hand_in.add_argument("--pupil", required=True, metavar="NAME", help=tr("Name the pupil whose attempt it is."))
    hand_in.set_defaults(run=run_hand_in)


def run_code(arguments: argparse.Namespace) -> int:
    """Print a code and what it stands for. Exit code 1 for a set that needs its file and is not written to one."""
    from magview.classroom.sets import code_of, why_no_code
    from magview.spec.files import dump_json

    of = _asked(arguments)
    why, stream = why_no_code(of), words_stream(arguments.save)
    if arguments.save:
        write_out(arguments.save, dump_json(of))
    stream.write(f"{why}\n" if why else f"{code_of(of)}\n")
    for number in range(1, len(of.exercises) + 1):
        exercise = of.exercise(number)
        guide = tr("about {minutes} minutes", minutes=exercise.minutes)
        stream.write(f"  {number}. {exercise.name} ({guide})\n")
    same = tr("A fault of their own for each pupil.") if of.each_their_own else tr("The same faults for everyone.")
    stream.write(f"{same}\n")
    return FAIL if why and not arguments.save else PASS


def _asked(arguments: argparse.Namespace) -> ClassSet:
    from magview.classroom.sets import MAX_SEED, ClassSet, new_seed, open_set
    from magview.practice.library import find_exercise
    from magview.spec.files import validate

    given = arguments.exercises[0]
    if len(arguments.exercises) == 1 and _is_set(given):
        return open_set(given)
    if arguments.seed is not None and not 0 <= arguments.seed <= MAX_SEED:
        raise SpecError(tr("--seed is {seed}; it must be from 0 to {most}", seed=arguments.seed, most=MAX_SEED))
    data = {
        "format": "magview-class/1",
        "title": arguments.title,
        "seed": new_seed() if arguments.seed is None else arguments.seed,
        "each_their_own": arguments.each_their_own,
        "hints": not arguments.no_hints,
        "units": arguments.units,
        "minutes": arguments.minutes,
        "exercises": tuple(find_exercise(name) for name in arguments.exercises),
        "pupils": tuple(arguments.pupil),
    }
    return validate(ClassSet, data, tr("the set"))


def _is_set(given: str) -> bool:
    """Whether a word is a code or a set's file, and no exercise."""
    from magview.practice.library import shipped_exercises
    from magview.spec.files import read_json
    from magview.spec.formats import is_ours

    if Path(given).is_file():
        data = read_json(Path(given))
        return isinstance(data, dict) and str(data.get("format")).startswith("magview-class/")
    return given not in shipped_exercises() and not is_ours(given) and any(c.isdigit() for c in given)


def run_key(arguments: argparse.Namespace) -> int:
    """Print the key."""
    from magview.classroom.key import answer_key, key_csv, key_text
    from magview.classroom.sets import code_of, open_set, why_no_code

    of = open_set(arguments.set)
    entries = answer_key(of, arguments.pupil)
    if arguments.csv:
        write_out(arguments.csv, key_csv(entries))
    words_stream(arguments.csv).write(key_text(of, entries, "" if why_no_code(of) else code_of(of)))
    return PASS


def run_gather(arguments: argparse.Namespace) -> int:
    """Mark a folder and say how the class stands. Exit code 1 where something had to be passed over."""
    from magview.classroom.gather import Gatherer
    from magview.classroom.sets import open_set
    from magview.classroom.summary import summarise, summary_csv

    of = open_set(arguments.set) if arguments.set else None
    results = Gatherer(Path(arguments.cache) if arguments.cache else None).gather(Path(arguments.folder))
    summary = summarise(results, of)
    if arguments.csv:
        write_out(arguments.csv, summary_csv(summary))
    lines = [tr("{count} attempts count, of {files} files.", count=len(summary.counted), files=len(results))]
    for p in summary.pupils:
        line = tr("{name}: {percent} %, {passed} of {done} passed", name=p.name, percent=p.percent, passed=p.passed,
                  done=p.done)  # fmt: skip
        lines.append(f"  {line}" if not p.weakest else f"  {line}; {tr('weakest: {step}', step=p.weakest)}")
    lines += [tr("Most often:")] if summary.errors else []
    lines += [f"  {e.count:>4}  {e.words}" for e in summary.errors[:10]]
    lines += [tr("Nothing from: {names}", names=", ".join(summary.missing))] if summary.missing else []
    words_stream(arguments.csv).write("\n".join([*lines, ""]))
    over = [r.why for r in results if r.why]
    for sentence in over:
        sys.stderr.write(f"magview: {tr('passed over: {why}', why=sentence)}\n")
    return FAIL if over else PASS


def run_hand_in(arguments: argparse.Namespace) -> int:
    """Hand in a saved attempt: for a pupil whose folder could not be written at the time."""
    from magview.classroom.desk import place_of, prepare
    from magview.classroom.handed import write_new
    from magview.classroom.sets import open_set
    from magview.practice.attempt import read_attempt

    of = open_set(arguments.set)
    attempt = read_attempt(Path(arguments.attempt))
    name, text = prepare(of, place_of(of, attempt), arguments.pupil, attempt)
    path = write_new(Path(arguments.folder), name, text)
    sys.stdout.write(tr("Handed in as {file}.", file=path.name) + "\n")
    return PASS
