"""The instructor's answer key: what is hidden in each exercise, for everyone or for each pupil."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from magview.bench.engine_words import disc_words
from magview.bench.state import Side
from magview.classroom.sets import ClassSet
from magview.practice.contacts import FACES_WORDS
from magview.practice.debrief import Truth, truths
from magview.practice.exercise import Exercise
from magview.practice.exercise_parts import FaultKind
from magview.practice.faults import Drawn, begin, drawn
from magview.spec.base import SpecError
from magview.spec.language import format_length, tr, tr_n
from magview.spec.tables import csv_text


@dataclass(frozen=True)
class KeyFault:
    """One fault that is there: on which magneto, of which kind, and in words with its size."""

    side: Side
    kind: FaultKind
    words: str


@dataclass(frozen=True)
class KeyEntry:
    """One exercise as one pupil (or everyone, `pupil` "") finds it."""

    number: int
    exercise: Exercise
    pupil: str
    seed: int
    faults: tuple[KeyFault, ...]
    truths: tuple[Truth, ...]
    """Readings that perfect instruments would show, as found."""


def key_entry(of: ClassSet, number: int, pupil: str = "") -> KeyEntry:
    """The key to one exercise for one pupil. Raises SpecError where each has their own and nobody is named."""
    exercise, seed = of.exercise(number), of.seed_of(number, pupil)
    first = begin(exercise, seed)
    named = pupil if of.each_their_own else ""
    return KeyEntry(number, exercise, named, seed, tuple(faults_of(exercise, seed)), tuple(truths(first, first)))


def answer_key(of: ClassSet, pupils: Iterable[str] = ()) -> list[KeyEntry]:
    """The key to every exercise; where each has their own fault, for each of `pupils`, or those of the set's list.

    Raises SpecError where each has their own and nobody is named.
    """
    numbers = range(1, len(of.exercises) + 1)
    if not of.each_their_own:
        return [key_entry(of, n) for n in numbers]
    names = list(pupils) or list(of.pupils)
    if not names:
        raise SpecError(tr("Each pupil of this set has a fault of their own: name the pupils the key is for"))
    return [key_entry(of, n, name) for n in numbers for name in names]


def faults_of(exercise: Exercise, seed: int, sound: bool = True) -> list[KeyFault]:
    """The faults that a seed draws, in words; `sound`: a switch lead drawn as sound is told too."""
    return [
        KeyFault(side, fault.kind, words)
        for side in exercise.sides
        for fault in exercise.faults
        if fault.side in (None, side)
        and not _unseen(exercise, side, fault.kind)
        and (found := drawn(exercise, seed, side))
        and (sound or fault.kind != "lead" or found.lead != "sound")
        and (words := _words(found, fault.kind))
    ]


def _unseen(exercise: Exercise, side: Side, kind: FaultKind) -> bool:
    """An engine has one disc: what was drawn for the second magneto's, or for one set already, is not there."""
    return kind == "disc-zero" and (exercise.start.disc_at_zero or side != exercise.sides[0])


def _words(found: Drawn, kind: FaultKind) -> str:
    """A fault in words; "" where it was not drawn."""
    size = _size(found, kind)
    if not size:
        return ""
    amount = f"{abs(size):.2f}"
    millimetres = abs(size)
    match kind:
        case "opening":
            late = tr("contacts open {amount}° of rotor late", amount=amount)
            return late if size > 0 else tr("contacts open {amount}° of rotor early", amount=amount)
        case "gap":
            wide = tr("largest gap {length:mm} too wide", length=millimetres)
            return wide if size > 0 else tr("largest gap {length:mm} too narrow", length=millimetres)
        case "plate":
            with_cam = tr("backplate {amount}° off, with cam rotation", amount=amount)
            return with_cam if size > 0 else tr("backplate {amount}° off, against cam rotation", amount=amount)
        case "creep":
            closer = tr("lock screw carries the contact screw {amount}° along, contacts closer", amount=amount)
            return closer if size > 0 else tr(
                "lock screw carries the contact screw {amount}° along, contacts wider", amount=amount
            )  # fmt: skip
        case "lobe-low" | "pip" | "backlash":
            return _wear_words(found, kind)
        case "teeth" | "disc-teeth" | "vernier":
            return _teeth_words(kind, int(size))
        case "disc-zero":
            return tr("crank disc reads {reading} at top dead centre", reading=disc_words(0.0 - size, 2))
        case "wrong-stroke" | "rotor-at-neutral":
            at_neutral = tr("fitted with the rotor at neutral")
            return at_neutral if kind == "rotor-at-neutral" else tr("fires on the wrong stroke")
        case "lead" | "contacts" | "dry-felt":
            return _found_words(found, kind)


def _found_words(found: Drawn, kind: str) -> str:
    """A finding that is not measured, in words."""
    if kind == "lead":
        return _lead_words(found.lead)
    if kind == "dry-felt":
        return tr("dry felt")
    told = tr(FACES_WORDS[found.contacts])
    return f"{told}, {format_length(found.pip, False)}" if found.pip else told


def _wear_words(found: Drawn, kind: str) -> str:
    """Wear, which has no sign."""
    less = found.lobe_low
    return {
        "lobe-low": tr("lobe {lobe} lifts {length:mm} less", lobe=found.lobe, length=less),
        "pip": tr("pip of {length:mm} on the contacts", length=found.pip),
        "backlash": tr("{amount}° of rotor play in the coupling", amount=f"{found.backlash:.2f}"),
    }[kind]


def _teeth_words(kind: str, size: int) -> str:
    """Whole teeth or vernier steps, positive = fires early; each number and way written out for translators."""
    count = abs(size)
    return {
        ("disc-teeth", True): tr_n(
            "one tooth early at A, the disc on the drive flange",
            "{count} teeth early at A, the disc on the drive flange",
            count=count,
        ),
        ("disc-teeth", False): tr_n(
            "one tooth late at A, the disc on the drive flange",
            "{count} teeth late at A, the disc on the drive flange",
            count=count,
        ),
        ("teeth", True): tr_n(
            "one tooth early at B, the magneto flange on the disc",
            "{count} teeth early at B, the magneto flange on the disc",
            count=count,
        ),
        ("teeth", False): tr_n(
            "one tooth late at B, the magneto flange on the disc",
            "{count} teeth late at B, the magneto flange on the disc",
            count=count,
        ),
        ("vernier", True): tr_n("one vernier step early", "{count} vernier steps early", count=count),
        ("vernier", False): tr_n("one vernier step late", "{count} vernier steps late", count=count),
    }[kind, size > 0]


def _lead_words(lead: str) -> str:
    return {
        "broken": tr("switch lead broken: no ground"),
        "shorted": tr("short inside the magneto: always grounded"),
        "tab": tr("grounding tab does not touch: live with the plug out"),
        "chafed": tr("switch lead chafed through: always grounded while it is plugged in"),
        "never-opens": tr("switch never opens: always grounded while the lead is plugged in"),
        "never-closes": tr("switch never closes: no ground"),
        "crossed": tr("leads of left and right crossed"),
        "sound": tr("switch lead sound"),
    }[lead]


def _size(found: Drawn, kind: FaultKind) -> float:
    """The size drawn; 1 for a fault without size that is there, 0 for one that is not."""
    if kind == "lead":
        return 1.0  # "sound" is an answer too
    if kind == "contacts":
        return float(bool(found.contacts))
    return float(getattr(found, kind.replace("-", "_")))


# ---------------------------------------------------------------------- as table and text

KeyRow = tuple[str, str, str, str, str]


def key_heads() -> KeyRow:
    """The heads of `key_rows`."""
    return tr("Exercise"), tr("Pupil"), tr("Magneto"), tr("What"), tr("Answer")


def key_rows(entries: Iterable[KeyEntry]) -> list[KeyRow]:
    """A key as rows: the hidden faults of each entry first, then what stands as found."""
    rows: list[KeyRow] = []
    for entry in entries:
        title = tr("{number}. {name}", number=entry.number, name=tr(entry.exercise.name))
        who = entry.pupil or tr("everyone")
        rows += [(title, who, side_word(f.side, entry.exercise), tr("Fault"), f.words) for f in entry.faults]
        if not entry.faults:
            rows.append((title, who, "", tr("Fault"), tr("none")))
        rows += [(title, who, "", t.what, t.as_found) for t in entry.truths]
    return rows


def side_word(side: Side, exercise: Exercise) -> str:
    """ "left" or "right" where there are two magnetos, else ""."""
    if not exercise.both_sides:
        return ""
    return tr("left") if side == "left" else tr("right")


def key_text(of: ClassSet, entries: Iterable[KeyEntry], code: str = "") -> str:
    """A key to read or print."""
    lines = [tr("Answer key: {title}", title=of.title) if of.title else tr("Answer key")]
    if code:
        lines.append(tr("Code {code}", code=code))
    for entry in entries:
        who = entry.pupil or tr("everyone")
        lines += ["", tr("{number}. {name} – {who} (draws from {seed})",
                         number=entry.number, name=tr(entry.exercise.name), who=who, seed=entry.seed)]  # fmt: skip
        for fault in entry.faults:
            side = side_word(fault.side, entry.exercise)
            lines.append(f"   • {side}: {fault.words}" if side else f"   • {fault.words}")
        if not entry.faults:
            lines.append(tr("   • no fault: it is as it should be"))
        width = max((len(t.what) for t in entry.truths), default=0)
        lines += [f"     {t.what:<{width}}  {t.as_found}" for t in entry.truths]
    return "\n".join(lines) + "\n"


def key_csv(entries: Iterable[KeyEntry]) -> str:
    """A key as comma-separated values."""
    return csv_text([key_heads(), *key_rows(entries)])
