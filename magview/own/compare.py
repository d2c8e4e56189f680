"""A draft beside a shipped file: which is nearest, which fields differ, and what both come to."""

from __future__ import annotations

import math
from dataclasses import dataclass

from magview.bench.engine_words import firing_order_words, speed_words
from magview.bench.placing import new_bench
from magview.bench.state import readings
from magview.forms.entry import Entry, Value
from magview.forms.typed import written
from magview.own.drafts import Draft, Item, draft_of, in_words, shipped_kind
from magview.own.fields import Kind, entries
from magview.physics.cam.setting import internal_timing
from magview.physics.engine.coupling import crank_advance_deg, finest_shift_deg
from magview.physics.engine.crank import piston_drop_mm, top_dead_centre_deg
from magview.spec.engine import Engine, Installation
from magview.spec.language import format_angle, format_length, tr
from magview.spec.library import find_engine, find_installation, find_magneto
from magview.spec.magneto import Magneto

_WORDS = ("name", "notes", "magneto", "engine")
"""Entries that tell nothing of how near two files are."""


@dataclass(frozen=True)
class Difference:
    """A field that differs, as it is written."""

    entry: Entry
    own: str
    other: str


@dataclass(frozen=True)
class Result:
    """Something a file comes to: a length [mm], an angle [deg] or a plain number; NaN where it cannot be had."""

    label: str
    value: float
    form: str

    def words(self, inches: bool = False) -> str:
        """As it is written."""
        if math.isnan(self.value):
            return tr("cannot be had")
        if self.form == "length":
            return format_length(self.value, inches)
        return format_angle(self.value) if self.form == "angle" else f"{self.value:.4g}"


def shipped_item(kind: Kind, name: str) -> Item:
    """A shipped file by its short name."""
    if kind == "magneto":
        return find_magneto(name)
    return find_engine(name) if kind == "engine" else find_installation(name)


def nearest(draft: Draft) -> str:
    """Short name of the shipped file that differs least, over the entries given so far; the first of equals."""
    return min(shipped_kind(draft.kind), key=lambda name: (_distance(draft, name), name))


def _distance(draft: Draft, name: str) -> float:
    other = draft_of(shipped_item(draft.kind, name))
    return sum(_apart(value, other.values.get(path)) for path, value in draft.values.items() if path not in _WORDS)


def _apart(one: Value | None, other: Value | None) -> float:
    """0 for alike, 1 for nothing in common; numbers by how far they differ against the larger."""
    if isinstance(one, tuple) and isinstance(other, tuple) and len(one) == len(other):
        return sum(_apart(a, b) for a, b in zip(one, other, strict=True)) / max(len(one), 1)
    if _number(one) and _number(other):
        a, b = float(one), float(other)  # type: ignore[arg-type]
        return 0.0 if a == b else min(1.0, abs(a - b) / max(abs(a), abs(b)))
    return 0.0 if one == other else 1.0


def _number(value: Value | None) -> bool:
    return isinstance(value, int | float) and not isinstance(value, bool)


def differences(draft: Draft, name: str, inches: bool = False) -> list[Difference]:
    """The fields in which a draft differs from a shipped file, in the order they are asked."""
    other = draft_of(shipped_item(draft.kind, name))
    return [
        Difference(entry, shown(entry, draft.values.get(path), inches), shown(entry, other.values.get(path), inches))
        for path, entry in entries(draft.kind).items()
        if path not in _WORDS and draft.values.get(path) != other.values.get(path)
    ]


def shown(entry: Entry, value: Value | None, inches: bool) -> str:
    """A value in words, for reading."""
    for choice, words in entry.choices:
        if choice == value and type(choice) is type(value):
            return tr(words)
    return written(entry, value, inches) or "–"


def results(item: Item) -> list[Result]:
    """Readings of a file at the setting it was designed for."""
    if isinstance(item, Magneto):
        return _of_magneto(item)
    return _of_engine(item) if isinstance(item, Engine) else _of_installation(item)


def _of_magneto(magneto: Magneto) -> list[Result]:
    if magneto.assumed:
        return []
    timing = internal_timing(magneto)
    now = readings(new_bench(magneto))
    low, high = (timing.adjust(gap).backplate_deg for gap in magneto.gap_limits_mm)
    opens, gaps = now.opens_deg, now.max_gap_mm
    return [
        Result(tr("Lobe 1 opens, past neutral"), float(opens[0]), "angle"),
        Result(tr("Off the E-gap"), float(now.e_gap_error_deg[0]), "angle"),
        Result(tr("Largest gap on lobe 1"), float(gaps[0]), "length"),
        Result(tr("Gap of all lobes, least"), float(gaps.min()), "length"),
        Result(tr("Gap of all lobes, most"), float(gaps.max()), "length"),
        Result(tr("Contacts closed before lobe 1"), float(now.dwell_deg[0]), "angle"),
        Result(tr("Contact lift at the top"), timing.curve.top_mm, "length"),
        Result(tr("At the rim for 1° late"), float(timing.mark_offset_mm(1.0)), "length"),
        Result(tr("Plate for the least gap allowed"), low, "angle"),
        Result(tr("Plate for the most gap allowed"), high, "angle"),
    ]


def _of_engine(engine: Engine) -> list[Result]:
    centres = top_dead_centre_deg(engine)
    due = [720.0 * engine.firing_order.index(c + 1) / engine.cylinders for c in range(engine.cylinders)]
    off = max(abs((float(a) - b + 360.0) % 720.0 - 360.0) for a, b in zip(centres, due, strict=True))
    return [
        Result(tr("Between two sparks"), 720.0 / engine.cylinders, "angle"),
        Result(tr("Dead centres uneven by up to"), off, "angle"),
        *(
            Result(label, float(piston_drop_mm(engine, -btdc)), "length")
            for label, btdc in (
                (tr("No. 1 down at the left spark"), engine.firing_btdc_deg.left),
                (tr("No. 1 down at the right spark"), engine.firing_btdc_deg.right),
            )
        ),
        Result(tr("Left before right"), engine.firing_btdc_deg.left - engine.firing_btdc_deg.right, "angle"),
    ]


def _of_installation(item: Installation) -> list[Result]:
    ratio = item.rotor_turns_per_crank_turn
    btdc = item.engine.firing_btdc_deg
    of_all = [
        Result(tr("Wanted, before top dead centre"), btdc.right if item.position == "right" else btdc.left, "angle"),
        Result(tr("E-gap, at the crank"), item.magneto.e_gap_deg / ratio, "angle"),
    ]
    if item.coupling is None:
        return of_all
    teeth = item.coupling
    step = crank_advance_deg(teeth.magneto_teeth, teeth.drive_teeth, 1, -1, ratio)
    one = crank_advance_deg(teeth.magneto_teeth, teeth.drive_teeth, 1, 0, ratio)
    finest = finest_shift_deg(teeth.magneto_teeth, teeth.drive_teeth)
    return [
        Result(tr("One tooth, at the crank"), one, "angle"),
        Result(tr("One vernier step, at the crank"), step, "angle"),
        Result(tr("Finest step, at the crank"), finest / ratio, "angle"),
        *of_all,
    ]


def warnings(item: Item) -> list[str]:
    """Warnings about values that are allowed and yet look wrong: sentences."""
    found: list[tuple[Kind, str]] = []
    if isinstance(item, Installation):
        found.append(("installation", speed_words(item)))
    if not isinstance(item, Magneto):
        engine = item.engine if isinstance(item, Installation) else item
        found.append(("engine", firing_order_words(engine)))
    return [in_words(kind, sentence) for kind, sentence in found if sentence]
