"""Drafts of files of one's own: values that may be missing or wrong, where they come from, what they come to."""

from __future__ import annotations

import json
import re
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from types import MappingProxyType
from typing import Any

from magview.bench.apply import new_bench
from magview.own.entry import NUMERIC, Entry, Value, read_entry
from magview.own.fields import KINDS, MODELS, PARTS, Kind, entries
from magview.physics.engine.crank import top_dead_centre_deg
from magview.spec.base import Model, SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.files import dump_json, format_of, read_engine, read_magneto, refusals, validate
from magview.spec.language import tr
from magview.spec.library import find_engine, find_magneto, shipped_names
from magview.spec.magneto import Magneto
from magview.spec.sources import Origin

OWN = "own"
"""An installation's reference to the magneto or the engine drafted beside it."""

SHIPPED = "shipped:"

Item = Magneto | Engine | Installation


@dataclass(frozen=True)
class Note:
    """Where a value comes from."""

    origin: Origin | None = None
    text: str = ""


NO_NOTE = Note()


@dataclass(frozen=True)
class Draft:
    """One file in the making. Values by entry, sources by field; what is not known is not there."""

    kind: Kind
    values: Mapping[str, Value] = field(default_factory=lambda: MappingProxyType({}))
    notes: Mapping[str, Note] = field(default_factory=lambda: MappingProxyType({}))
    basis: str = ""
    """Short name of the shipped file it was begun from."""

    def note(self, entry: Entry) -> Note:
        """Where an entry's value comes from."""
        return self.notes.get(entry.field, NO_NOTE)


@dataclass(frozen=True)
class Own:
    """A magneto, an engine and the two put together, drafted side by side."""

    magneto: Draft = Draft("magneto")
    engine: Draft = Draft("engine")
    installation: Draft = Draft("installation")

    def draft(self, kind: Kind) -> Draft:
        """One of the three."""
        found: Draft = getattr(self, kind)
        return found

    def put(self, draft: Draft) -> Own:
        """With one of the three replaced."""
        return replace(self, **{draft.kind: draft})

    @property
    def empty(self) -> bool:
        """Whether nothing has been given yet."""
        return not any(self.draft(kind).values for kind in KINDS)


@dataclass(frozen=True)
class Checked:
    """What a draft comes to."""

    item: Item | None
    """The magneto, engine or installation; None while something is missing or refused."""
    missing: tuple[str, ...]
    """Entries that must be given yet, in the order they are asked."""
    refused: Mapping[str, str]
    """Why an entry cannot be as it is: one sentence each."""
    sourceless: int
    """Values whose source is not noted."""


# ---------------------------------------------------------------------- changing


def with_value(draft: Draft, path: str, value: Value | None) -> Draft:
    """The draft with an entry's value, or without it. A source that told of the old value goes with it."""
    values = dict(draft.values)
    if value is None:
        values.pop(path, None)
    else:
        values[path] = value
    notes = dict(draft.notes)
    name = entries(draft.kind)[path].field
    changed = draft.values.get(path) != value
    if changed and (value is None or notes.get(name, NO_NOTE).origin in ("shipped", "worked-out")):
        notes.pop(name, None)
    return replace(draft, values=MappingProxyType(values), notes=MappingProxyType(notes))


def with_note(draft: Draft, field_name: str, note: Note) -> Draft:
    """The draft with a field's source noted, or not."""
    notes = {k: v for k, v in draft.notes.items() if k != field_name}
    if note != NO_NOTE:
        notes[field_name] = note
    return replace(draft, notes=MappingProxyType(notes))


def kind_of(item: Item) -> Kind:
    """What an item is."""
    return "magneto" if isinstance(item, Magneto) else "engine" if isinstance(item, Engine) else "installation"


def draft_of(item: Item, basis: str = "") -> Draft:
    """A draft that holds what an item does; with `basis`, every value is noted as that shipped file's."""
    kind = kind_of(item)
    values = _flat(kind, json.loads(dump_json(item)))
    if isinstance(item, Installation):
        values = {k: v for k, v in values.items() if k not in ("magneto", "engine")}
    told = entries(kind)
    notes = {}
    for source in item.sources:
        for path in values:
            name = told[path].field
            if name == source.field or name.startswith(f"{source.field}."):
                notes[name] = Note(source.origin, source.note)
    if basis:
        values.pop("notes", None)  # they tell of the shipped one
        notes = {told[p].field: notes.get(told[p].field, Note("shipped", basis)) for p in values}
    return Draft(kind, MappingProxyType(values), MappingProxyType(notes), basis)


def _flat(kind: Kind, data: dict[str, Any]) -> dict[str, Value]:
    values: dict[str, Value] = {}
    for path, entry in entries(kind).items():
        found: Any = data
        for name in entry.field.split("."):
            found = found.get(name) if isinstance(found, dict) else None
        if entry.end is not None and isinstance(found, list) and len(found) == 2:
            found = found[entry.end]
        if found is not None and found != "" and not isinstance(found, dict):
            values[path] = tuple(found) if isinstance(found, list) else found
    return values


# ---------------------------------------------------------------------- judging


def asked(draft: Draft) -> dict[str, Entry]:
    """The entries that are asked for as the draft stands: the sizes of an eccentric only where there is one."""
    return {
        path: entry
        for path, entry in entries(draft.kind).items()
        if entry.only is None or draft.values.get(entry.only[0]) in entry.only[1]
    }


def needed(draft: Draft) -> tuple[str, ...]:
    """The entries that a file cannot do without, as the draft stands."""
    begun = [p.needed for p in PARTS[draft.kind] if any(v.startswith(f"{p.path}.") for v in draft.values)]
    parts = {path for group in begun for path in group}
    drawn = draft.values.get("cam.profile.kind") == "law"
    shown = asked(draft)
    # A range with one end is no range.
    ranges = {entry.field for path, entry in shown.items() if entry.end is not None and path in draft.values}
    return tuple(
        path
        for path, entry in shown.items()
        if not entry.optional or path in parts or entry.field in ranges or (drawn and path.startswith("breaker."))
    )


def file_data(draft: Draft) -> dict[str, Any]:
    """The draft as a file's parsed JSON, lists as tuples, without what could not be read."""
    told = entries(draft.kind)
    data: dict[str, Any] = {"format": format_of(MODELS[draft.kind])}
    ranges: dict[str, dict[int, Value]] = {}
    for path, entry in asked(draft).items():
        value = draft.values.get(path)
        if value is None or (entry.form in NUMERIC and isinstance(value, str)):
            continue
        if entry.end is not None:
            ranges.setdefault(entry.field, {})[entry.end] = value
        else:
            _put(data, entry.field, value)
    for name, ends in ranges.items():
        if len(ends) == 2:
            _put(data, name, (ends[0], ends[1]))
    held = {told[p].field for p in draft.values if p in asked(draft)}
    sources = tuple(
        {"field": name, "origin": note.origin, "note": note.text}
        for name, note in draft.notes.items()
        if note.origin is not None and name in held
    )
    if sources:
        data["sources"] = sources
    return data


def _put(data: dict[str, Any], name: str, value: object) -> None:
    *parts, last = name.split(".")
    for part in parts:
        data = data.setdefault(part, {})
    data[last] = value


def check(own: Own, kind: Kind) -> Checked:
    """What one of the drafts comes to: the item, or what is missing and what is refused, entry by entry."""
    draft = own.draft(kind)
    shown = asked(draft)
    refused: dict[str, str] = {}
    for path, entry in shown.items():
        value = draft.values.get(path)
        if entry.form in NUMERIC and isinstance(value, str):
            try:
                read_entry(entry, value)
                refused[path] = tr("“{text}” could not be taken: type it again", text=value[:40])
            except SpecError as error:
                refused[path] = str(error)
    data = file_data(draft)
    if kind == "installation":
        _refer(own, data, refused)
    model = MODELS[kind]
    for place, sentence in refusals(model, data):
        path = _culprit(shown, place, sentence)
        refused.setdefault(path, _in_words(shown, sentence))
    missing = tuple(p for p in needed(draft) if p not in draft.values)
    item: Item | None = None
    if not missing and not refused:
        item = _made(kind, data, shown, refused)
    bare = ("name", "notes", "magneto", "engine")  # what one calls it, and what has sources of its own
    told = {shown[p].field for p in draft.values if p in shown and p not in bare}
    sourceless = sum(draft.notes.get(name, NO_NOTE).origin is None for name in told)
    return Checked(item, missing, MappingProxyType(refused), sourceless)


def _made(kind: Kind, data: dict[str, Any], shown: dict[str, Entry], refused: dict[str, str]) -> Item | None:
    try:
        item = validate(MODELS[kind], data, kind)
        if isinstance(item, Engine):
            top_dead_centre_deg(item)
        else:
            assert isinstance(item, Magneto | Installation)
            new_bench(item)
    except ValueError as error:  # a cam that undercuts shows only when its curve is built
        sentence = str(error)
        refused[_culprit(shown, (), sentence)] = _in_words(shown, sentence)
        return None
    return item


def _refer(own: Own, data: dict[str, Any], refused: dict[str, str]) -> None:
    """Put the magneto and the engine that an installation names into its data, or say why not."""
    for kind in ("magneto", "engine"):
        name = data.pop(kind, None)
        if name is None:
            continue
        try:
            data[kind] = referred(own, kind, str(name))
        except SpecError as error:
            refused[kind] = str(error)


def referred(own: Own, kind: Kind, name: str) -> Model:
    """The magneto or engine that an installation's reference names. Raises SpecError with one sentence."""
    if name == OWN:
        item = check(own, kind).item
        if item is None and kind == "magneto":
            raise SpecError(tr("the magneto in this window is not complete yet: its own pages say what is missing"))
        if item is None:
            raise SpecError(tr("the engine in this window is not complete yet: its own pages say what is missing"))
        return item
    if name.startswith(SHIPPED):
        short = name.removeprefix(SHIPPED)
        return find_magneto(short) if kind == "magneto" else find_engine(short)
    return read_magneto(Path(name)) if kind == "magneto" else read_engine(Path(name))


_NAME = re.compile(r"[a-z_]+(?:\.[a-z_]+)*(?:\[\d+\])?")


def _culprit(shown: dict[str, Entry], place: tuple[int | str, ...], sentence: str) -> str:
    """The entry that a refusal belongs to: the one at its place, else the first that its sentence names."""
    name = ".".join(p for p in place if isinstance(p, str))
    at = [p for p in shown if shown[p].field == name]
    if at:
        end = next((p for p in reversed(place) if isinstance(p, int)), 0)
        return at[min(end, len(at) - 1)]
    for token in _NAME.findall(sentence):
        for full in (token, f"{name}.{token}" if name else token):
            found = [p for p in shown if p == full or shown[p].field == full.partition("[")[0]]
            if found:
                return found[-1]
    # A part of the file, such as the articulation, has no entry of its own: the first within it.
    inside = [p for part in (name, *_NAME.findall(sentence)) for p in shown if p.startswith(f"{part}.")]
    return inside[0] if inside else next(iter(shown))


def _in_words(shown: dict[str, Entry], sentence: str) -> str:
    """The sentence with the file's names of fields replaced by what the entries are called."""
    labels: dict[str, str] = {}
    for entry in shown.values():
        label = tr(entry.label)
        first = labels.get(entry.field)
        labels[entry.field] = tr("{first} and {second}", first=first, second=label) if first else label
    short = {name.rpartition(".")[2]: label for name, label in labels.items()}

    def word(match: re.Match[str]) -> str:
        name = match[0].partition("[")[0]
        if match.start() > 0 and "_" not in name and "." not in name:
            return match[0]  # a word of the sentence's own
        label = labels.get(name) or short.get(name)
        return f"“{label}”" if label else match[0]

    return _NAME.sub(word, sentence)


def in_words(kind: Kind, sentence: str) -> str:
    """A sentence about a file's fields with their names as a person knows them."""
    return _in_words(entries(kind), sentence)


def shipped_kind(kind: Kind) -> list[str]:
    """Short names of the shipped files of a kind."""
    return shipped_names(f"{kind}s")  # type: ignore[arg-type]
