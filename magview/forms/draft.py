"""Values of a form that may be missing or wrong, by entry: what is asked, what is missing, what is refused, and why.

Nothing that was typed is lost: text that could not be read stands where a number belongs until it is one.
"""

from __future__ import annotations

import re
from collections.abc import Iterator, Mapping
from typing import Any

from pydantic import BaseModel

from magview.forms.entry import NUMERIC, Entry, Value, entries_of, needed_with
from magview.forms.typed import read
from magview.spec.base import Model, SpecError
from magview.spec.fields import about, parts_of
from magview.spec.files import M, format_of, refusals, validate
from magview.spec.language import tr

Values = Mapping[str, Value]


def asked(model: type[Model], values: Values) -> dict[str, Entry]:
    """The entries that are asked for as the values stand: the sizes of an eccentric only where there is one."""
    return {
        path: entry
        for path, entry in entries_of(model).items()
        if entry.only is None or values.get(entry.only[0]) in entry.only[1]
    }


def needed(model: type[Model], values: Values) -> set[str]:
    """The entries that a file cannot do without, as the values stand."""
    begun = {path for part, of_it in needed_with(model).items() if _begun(part, values) for path in of_it}
    shown = asked(model, values)
    # A range with one end is no range.
    ranges = {entry.field for path, entry in shown.items() if entry.end is not None and path in values}
    return {
        path
        for path, entry in shown.items()
        if not entry.optional or path in begun or (entry.end is not None and entry.field in ranges)
    }


def _begun(part: str, values: Values) -> bool:
    return any(path.startswith(f"{part}.") for path in values)


def data_of(model: type[Model], values: Values) -> dict[str, Any]:
    """The values as a file's parsed JSON, lists as tuples, without what could not be read."""
    data: dict[str, Any] = {"format": format_of(model)}
    ranges: dict[str, dict[int, Value]] = {}
    for path, entry in asked(model, values).items():
        value = values.get(path)
        if value is None or _unread(entry, value):
            continue
        if entry.end is not None:
            ranges.setdefault(entry.field, {})[entry.end] = value
        else:
            _put(data, entry.field, value)
    for name, ends in ranges.items():
        if len(ends) == 2:
            _put(data, name, (ends[0], ends[1]))
    return data


def _unread(entry: Entry, value: Value) -> bool:
    return entry.kind in NUMERIC and isinstance(value, str)


def _put(data: dict[str, Any], name: str, value: object) -> None:
    *parts, last = name.split(".")
    for part in parts:
        data = data.setdefault(part, {})
    data[last] = value


def values_of(model: type[Model], data: dict[str, Any]) -> dict[str, Value]:
    """The values that parsed JSON has for the entries of a model."""
    values: dict[str, Value] = {}
    for path, entry in entries_of(model).items():
        found: Any = data
        for name in entry.field.split("."):
            found = found.get(name) if isinstance(found, dict) else None
        if entry.end is not None and isinstance(found, list) and len(found) == 2:
            found = found[entry.end]
        if found is not None and found != "" and not isinstance(found, dict):
            values[path] = tuple(found) if isinstance(found, list) else found
    return values


# ---------------------------------------------------------------------- refused


def refused(model: type[Model], values: Values, data: dict[str, Any]) -> dict[str, str]:
    """Say why entries cannot be as they are, a sentence each: what could not be read, and what the model refuses."""
    shown = asked(model, values)
    found = dict(_not_read(shown, values))
    for place, sentence in refusals(model, data):
        found.setdefault(culprit(shown, place, sentence), in_words(shown, sentence))
    return found


def _not_read(shown: dict[str, Entry], values: Values) -> Iterator[tuple[str, str]]:
    for path, entry in shown.items():
        value = values.get(path)
        if isinstance(value, str) and _unread(entry, value):
            try:
                read(entry, value)
                yield path, tr("“{text}” could not be taken: type it again", text=value[:40])
            except SpecError as error:
                yield path, str(error)


_NAME = re.compile(r"[a-z_]+(?:\.[a-z_]+)*(?:\[\d+\])?")


def culprit(shown: dict[str, Entry], place: tuple[int | str, ...], sentence: str) -> str:
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


def in_words(shown: dict[str, Entry], sentence: str) -> str:
    """The sentence with the file's names of fields replaced by what the entries are called."""
    labels: dict[str, str] = {}
    for entry in shown.values():
        first = labels.get(entry.field)
        labels[entry.field] = tr("{first} and {second}", first=first, second=entry.label) if first else entry.label
    short = {name.rpartition(".")[2]: label for name, label in labels.items()}

    def word(match: re.Match[str]) -> str:
        name = match[0].partition("[")[0]
        if match.start() > 0 and "_" not in name and "." not in name:
            return match[0]  # a word of the sentence's own
        label = labels.get(name) or short.get(name)
        return f"“{label}”" if label else match[0]

    return _NAME.sub(word, sentence)


# ---------------------------------------------------------------------- a form's data as a model

_PATH = re.compile(r"[a-z_]+(?:\[\d+\])?(?:\.[a-z_]+(?:\[\d+\])?)*")


def made(model: type[M], data: dict[str, Any]) -> M:
    """The model of what a form's fields hold. Raises SpecError; its sentence names fields by their labels."""
    try:
        return validate(model, data, "")
    except SpecError as error:
        for place, sentence in refusals(model, data):
            path = "".join(f"[{p}]" if isinstance(p, int) else f".{p}" for p in place).lstrip(".")
            if sentence.startswith(path):
                raise SpecError(labelled(model, sentence)) from None
            part = _part_at(model, path)
            told = labelled(part, sentence) if part is not None else sentence
            raise SpecError(f"{labelled(model, path)}: {told}") from None
        # Something is missing altogether.
        raise SpecError(labelled(model, str(error).removeprefix(": "))) from None


def labelled(model: type[BaseModel], sentence: str) -> str:
    """The sentence with paths of fields ("faults[0].size") replaced by what a person reads beside them."""

    def word(match: re.Match[str]) -> str:
        # A bare name within a sentence may be a word of the sentence's own.
        if match.start() > 0 and not re.search(r"[_.\[]", match[0]):
            return match[0]
        labels = _labels(model, match[0])
        return f"“{', '.join(labels)}”" if labels else match[0]

    return _PATH.sub(word, sentence)


def _labels(model: type[BaseModel], path: str) -> list[str]:
    """Label each step of a path, lists counted from 1; nothing for what is no path of the model."""
    found, here = [], [model]
    for step in path.split("."):
        name, _, place = step.partition("[")
        owner = next((part for part in here if name in part.model_fields), None)
        if owner is None:
            return []
        field = about(owner, name)
        words = tr(field.label or name)
        found.append(tr("{field} {number}", field=words, number=int(place[:-1]) + 1) if place else words)
        here = parts_of(field.base)
    return found


def _part_at(model: type[BaseModel], path: str) -> type[BaseModel] | None:
    """The model that stands at a path, or that the field at a path belongs to."""
    here: type[BaseModel] | None = model
    for step in path.split(".") if path else ():
        name = step.partition("[")[0]
        if here is None or name not in here.model_fields:
            return here
        parts = parts_of(about(here, name).base)
        here = parts[0] if len(parts) == 1 else here
    return here
