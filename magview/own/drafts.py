"""Drafts of files of one's own: values that may be missing or wrong, where they come from, what they come to."""

from __future__ import annotations

import json
from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path
from types import MappingProxyType
from typing import Any

from magview.bench.placing import new_bench
from magview.forms import draft as forms
from magview.forms.entry import Entry, Value
from magview.own.fields import KINDS, MODELS, Kind, entries
from magview.physics.engine.crank import top_dead_centre_deg
from magview.spec.base import Model, SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.files import dump_json, read_engine, read_magneto, validate
from magview.spec.language import tr
from magview.spec.library import find_engine, find_magneto, shipped_names
from magview.spec.magneto import Magneto
from magview.spec.manual import LEFT_OUT
from magview.spec.sources import Origin

OWN = "own"
"""An installation's reference to the magneto or the engine drafted beside it."""

SHIPPED = "shipped:"

Item = Magneto | Engine | Installation


@dataclass(frozen=True)
class Note:
    """Origin of a value."""

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
        """Return where an entry's value comes from."""
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
    """Result of a draft."""

    item: Item | None
    """The magneto, engine or installation; None while something is missing or refused."""
    missing: tuple[str, ...]
    """Entries that must be given yet, in the order they are asked."""
    refused: Mapping[str, str]
    """Reasons why entries cannot be as they are: one sentence each."""
    sourceless: int
    """Values whose source is not noted."""


# ---------------------------------------------------------------------- changing


def with_value(draft: Draft, path: str, value: Value | None) -> Draft:
    """The draft with an entry's value, or without it. The source of the old value goes with it."""
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
    """The kind of an item."""
    return "magneto" if isinstance(item, Magneto) else "engine" if isinstance(item, Engine) else "installation"


def draft_of(item: Item, basis: str = "") -> Draft:
    """A draft that holds what an item does; with `basis`, every value is noted as that shipped file's."""
    kind = kind_of(item)
    values = forms.values_of(MODELS[kind], json.loads(dump_json(item)))
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


# ---------------------------------------------------------------------- judging


def asked(draft: Draft) -> dict[str, Entry]:
    """The entries that are asked for as the draft stands, in the order of the pages."""
    shown = forms.asked(MODELS[draft.kind], draft.values)
    if draft.values.get("known") == "manual":
        away = (*LEFT_OUT, "condition.heel_wear_mm")
        shown = {
            p: e for p, e in shown.items() if not p.startswith(tuple(f"{part}." for part in away)) and p not in away
        }
    if not _has_disc(draft):
        shown = {path: entry for path, entry in shown.items() if not path.startswith("coupling.")}
    return {path: entry for path, entry in entries(draft.kind).items() if path in shown}


def _has_disc(draft: Draft) -> bool:
    return draft.values.get("adjusted_by.kind") in (None, "toothed_disc")


def needed(draft: Draft) -> tuple[str, ...]:
    """The entries that a file cannot do without, as the draft stands."""
    found = forms.needed(MODELS[draft.kind], draft.values)
    drawn = draft.values.get("cam.profile.kind") == "law"
    return tuple(
        path
        for path in asked(draft)
        if path in found or path.startswith("coupling.") or (drawn and path.startswith("breaker."))
    )


def file_data(draft: Draft) -> dict[str, Any]:
    """The draft as a file's parsed JSON, lists as tuples, without what could not be read."""
    data = forms.data_of(MODELS[draft.kind], {p: v for p, v in draft.values.items() if p in asked(draft)})
    told = entries(draft.kind)
    held = {told[p].field for p in draft.values if p in asked(draft)}
    sources = tuple(
        {"field": name, "origin": note.origin, "note": note.text}
        for name, note in draft.notes.items()
        if note.origin is not None and name in held
    )
    if sources:
        data["sources"] = sources
    return data


def check(own: Own, kind: Kind) -> Checked:
    """Result of one of the drafts: the item, or the entries missing and refused."""
    draft = own.draft(kind)
    shown = asked(draft)
    data = file_data(draft)
    not_there: dict[str, str] = {}
    if kind == "installation":
        _refer(own, data, not_there)
    refused = forms.refused(MODELS[kind], draft.values, data) | not_there
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
            if not (item if isinstance(item, Magneto) else item.magneto).assumed:
                new_bench(item)
    except ValueError as error:  # a cam that undercuts shows only when its curve is built
        sentence = str(error)
        refused[forms.culprit(shown, (), sentence)] = forms.in_words(shown, sentence)
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


def in_words(kind: Kind, sentence: str) -> str:
    """A sentence about a file's fields with their names as a person knows them."""
    return forms.in_words(entries(kind), sentence)


def shipped_kind(kind: Kind) -> list[str]:
    """Short names of the shipped files of a kind."""
    return shipped_names(f"{kind}s")  # type: ignore[arg-type]
