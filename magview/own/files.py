"""Drafts on disk: files opened into drafts, finished ones as a file's text, unfinished ones kept over a kill."""

from __future__ import annotations

import json
import os
from pathlib import Path
from types import MappingProxyType
from typing import Any, get_args

from magview.bench.autosave import Keeper
from magview.forms.entry import Value
from magview.own.drafts import OWN, SHIPPED, Draft, Item, Note, Own, check, draft_of, with_value
from magview.own.fields import KINDS, MODELS, Kind, entries
from magview.spec.base import SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.files import dump_json, format_of, read_engine, read_installation, read_json, read_magneto
from magview.spec.language import tr
from magview.spec.magneto import Magneto
from magview.spec.sources import Origin

FORMAT = "magview-own/1"


def keeper(folder: Path) -> Keeper[Own]:
    """Drafts kept while they are made."""
    return Keeper(folder, "own", dump_own, load_own)


def open_file(own: Own, path: Path) -> tuple[Own, Kind]:
    """Open a magneto's, an engine's or an installation's file into its draft; which of them it was.

    An installation that holds its magneto or engine within itself brings them along. Raises SpecError.
    """
    data = read_json(path)
    kind = _kind_of(data, path)
    if kind == "magneto":
        return own.put(draft_of(read_magneto(path))), kind
    if kind == "engine":
        return own.put(draft_of(read_engine(path))), kind
    return _with_installation(own, read_installation(path), data, path.parent), kind


def _kind_of(data: Any, path: Path) -> Kind:
    found = str(data.get("format")) if isinstance(data, dict) else ""
    for kind in KINDS:
        if found.partition("/")[0] == format_of(MODELS[kind]).partition("/")[0]:
            return kind
    raise SpecError(tr("{file}: is neither a magneto's nor an engine's nor an installation's file", file=path.name))


def _with_installation(own: Own, item: Installation, data: dict[str, Any] | None, folder: Path | None) -> Own:
    draft = draft_of(item)
    part: Magneto | Engine
    for kind, part in (("magneto", item.magneto), ("engine", item.engine)):
        name = data.get(kind) if data is not None else None
        if isinstance(name, str) and folder is not None:
            draft = with_value(draft, kind, str((folder / name).resolve()))
        else:
            own = own.put(draft_of(part))
            draft = with_value(draft, kind, OWN)
    return own.put(draft)


def take(own: Own, item: Item) -> Own:
    """Drafts with an item put in: an installation brings its magneto and engine along."""
    if isinstance(item, Installation):
        return _with_installation(own, item, None, None)
    return own.put(draft_of(item))


def file_text(own: Own, kind: Kind, target: Path) -> str:
    """A finished draft as the text of a file at `target`. Raises SpecError while it is not finished.

    A magneto or engine that an installation takes from a file is named by its path from the installation's folder,
    as guide: files has it; one of this window or a shipped one is written into it.
    """
    item = check(own, kind).item
    if item is None:
        raise SpecError(tr("this is not complete yet: what is missing or refused is marked at its field"))
    text = dump_json(item)
    if kind != "installation":
        return text
    data = json.loads(text)
    for part in ("magneto", "engine"):
        name = str(own.installation.values[part])
        if name != OWN and not name.startswith(SHIPPED):
            data[part] = _path_from(target.resolve().parent, Path(name))
    return json.dumps(data, indent=2, ensure_ascii=False) + "\n"


def _path_from(folder: Path, path: Path) -> str:
    try:
        return Path(os.path.relpath(path, folder)).as_posix()
    except ValueError:  # another drive has no path from here
        return path.as_posix()


# ---------------------------------------------------------------------- kept over a kill


def dump_own(own: Own) -> str:
    """All drafts as text."""
    drafts = {
        kind: {
            "basis": draft.basis,
            "values": dict(draft.values),
            "notes": {name: [note.origin, note.text] for name, note in draft.notes.items()},
        }
        for kind in KINDS
        for draft in (own.draft(kind),)
    }
    return json.dumps({"format": FORMAT, "drafts": drafts}, ensure_ascii=False)


def load_own(path: Path) -> Own:
    """Read drafts. Raises SpecError for a file that holds none."""
    data = read_json(path)
    if not isinstance(data, dict) or data.get("format") != FORMAT or not isinstance(data.get("drafts"), dict):
        raise SpecError(tr('{file}: holds no drafts; its format must be "{format}"', file=path.name, format=FORMAT))
    own = Own()
    for kind in KINDS:
        found = data["drafts"].get(kind)
        if isinstance(found, dict):
            own = own.put(_draft(kind, found))
    return own


def _draft(kind: Kind, found: dict[str, Any]) -> Draft:
    told = entries(kind)
    fields = {entry.field for entry in told.values()}
    values: dict[str, Value] = {}
    for path, value in _dict(found.get("values")).items():
        if path in told and _is_value(value):
            values[path] = value
    notes: dict[str, Note] = {}
    for name, note in _dict(found.get("notes")).items():
        if name in fields and isinstance(note, tuple) and len(note) == 2 and isinstance(note[1], str):
            notes[name] = Note(note[0] if note[0] in get_args(Origin) else None, note[1])
    basis = found.get("basis")
    return Draft(kind, MappingProxyType(values), MappingProxyType(notes), basis if isinstance(basis, str) else "")


def _dict(value: Any) -> dict[str, Any]:
    return value if isinstance(value, dict) else {}


def _is_value(value: Any) -> bool:
    if isinstance(value, tuple):
        return all(isinstance(v, int | float) for v in value)
    return isinstance(value, int | float | str)
