"""Reading and writing our files: bounded, strict, and every refusal one clear sentence."""

from __future__ import annotations

import contextlib
import json
import os
import re
import stat
import sys
import tempfile
import typing
from collections import Counter
from pathlib import Path
from typing import Any, TypeVar

from pydantic import TypeAdapter, ValidationError
from pydantic_core import ErrorDetails

from magview.spec.base import Model, SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.fields import about
from magview.spec.language import alternatives, marked, tr
from magview.spec.magneto import Magneto

MAX_BYTES = 2_000_000
"""Far above any magneto file (a 20,000-point measured profile is 0.4 MB), far below what would hurt."""

MAX_VALUES = 25_000
"""Longest list: just above a measured profile's, and few enough that a list of rubbish takes no memory to refuse."""

STANDARD = Path("-")
"""Standard input where a file is read, standard output where one is written."""

M = TypeVar("M", bound=Model)

_UNION_TAGS = {
    "profile": {"law", "measured"},
    "contact_screw": {"eccentric", "threaded"},
    "adjusted_by": {"toothed_disc", "slotted_flange", "geared"},
}


def read_magneto(path: Path) -> Magneto:
    """Read a ``magview-magneto/1`` file; raise SpecError with one sentence for anything amiss."""
    return validate(Magneto, read_json(path), name_of(path))


def read_engine(path: Path) -> Engine:
    """Read a ``magview-engine/1`` file; raise SpecError with one sentence for anything amiss."""
    return validate(Engine, read_json(path), name_of(path))


def read_installation(path: Path) -> Installation:
    """Read a ``magview-installation/1`` file. A magneto or engine given as a path is sought beside it."""
    data = read_json(path)
    if isinstance(data, dict):
        data = dict(data)
        for field, read in (("magneto", read_magneto), ("engine", read_engine)):
            if isinstance(data.get(field), str):
                data[field] = read(path.parent / data[field])
    return validate(Installation, data, name_of(path))


def read_bench_item(path: Path) -> Magneto | Installation:
    """Read a magneto or an installation, whichever the file says it is; anything else is refused as no magneto."""
    data = read_json(path)
    if isinstance(data, dict) and str(data.get("format")).startswith("magview-installation/"):
        return read_installation(path)
    return validate(Magneto, data, name_of(path))


def name_of(path: Path) -> str:
    """The name of a file in messages about it."""
    return tr("standard input") if path == STANDARD else path.name


def read_bytes(path: Path) -> bytes:
    """The contents of a file.

    Raises SpecError for a missing or unreadable file, one that is not a regular file, or one larger than MAX_BYTES.
    """
    try:
        if path == STANDARD:
            raw = sys.stdin.buffer.read(MAX_BYTES + 1)
        elif not stat.S_ISREG(path.stat().st_mode):
            raise ValueError(tr("it is not a file"))
        else:
            with path.open("rb") as file:
                raw = file.read(MAX_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        raise SpecError(tr("{file}: cannot be read: {reason}", file=name_of(path), reason=reason)) from error
    if len(raw) > MAX_BYTES:
        raise SpecError(
            tr(
                "{file}: is larger than {most:g} MB, the most that is read",
                file=name_of(path),
                most=MAX_BYTES / 1000000.0,
            )
        )
    return raw


def read_json(path: Path) -> Any:
    """Read JSON with lists as tuples.

    Raises SpecError as `read_bytes` does, and for text that is not UTF-8 or not JSON, a name given twice, or nesting
    that is too deep.
    """
    return parse_json(read_bytes(path), name_of(path))


def parse_json(raw: bytes, source: str) -> Any:
    """The data of a JSON file's bytes; `source` names it in messages."""
    try:
        return _tuples(json.loads(raw.decode("utf-8-sig"), object_pairs_hook=_no_repeats, parse_int=_integer))
    except UnicodeDecodeError as error:
        raise SpecError(
            tr("{file}: is not a text file (byte {byte} is not UTF-8)", file=source, byte=error.start)
        ) from error
    except json.JSONDecodeError as error:
        raise SpecError(
            tr(
                "{file}: line {line}, column {column}: not JSON: {reason}",
                file=source,
                line=error.lineno,
                column=error.colno,
                reason=error.msg,
            )
        ) from error
    except RecursionError as error:
        raise SpecError(tr("{file}: is nested too deeply", file=source)) from error
    except ValueError as error:
        raise SpecError(f"{source}: {error}") from error


def _no_repeats(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    result = dict(pairs)
    if len(result) != len(pairs):
        repeated = Counter(name for name, _ in pairs).most_common(1)[0][0]
        raise ValueError(tr("“{repeated}” is given twice in one place; give it once", repeated=repeated[:40]))
    return result


def _integer(digits: str) -> int | float:
    # Python refuses whole numbers of thousands of digits in words of its own; as infinity the field is named.
    return int(digits) if len(digits) <= 400 else float(digits)


def _tuples(value: Any) -> Any:
    if isinstance(value, list):
        if len(value) > MAX_VALUES:
            raise ValueError(
                tr(
                    "holds a list of {count} values; at most {most} are read",
                    count=len(value),
                    most=MAX_VALUES,
                )
            )
        return tuple(_tuples(v) for v in value)
    if isinstance(value, dict):
        return {k: _tuples(v) for k, v in value.items()}
    return value


def validate(model: type[M], data: Any, source: str) -> M:
    """Make a file's model of parsed JSON (lists as tuples), or raise SpecError naming `source` and the field."""
    wanted = format_of(model)
    kind = wanted.split("/", 1)[0]
    if not isinstance(data, dict):
        raise SpecError(
            tr("{source}: holds no {kind} object; it must be one JSON object in braces", source=source, kind=kind)
        )
    found = data.get("format")
    if found is None:
        raise SpecError(tr('{source}: format is missing; it must be "{wanted}"', source=source, wanted=wanted))
    if found != wanted:
        number = re.fullmatch(re.escape(kind) + r"/(\d{1,6})", str(found))
        newer = number is not None and int(number[1]) > 1
        places = {"source": source, "found": _show(found), "wanted": wanted}
        if newer:
            raise SpecError(
                tr(
                    "{source}: format is {found} (a newer magview wrote it; it is left as it was); "
                    'it must be "{wanted}"',
                    **places,
                )
            )
        raise SpecError(tr('{source}: format is {found}; it must be "{wanted}"', **places))
    try:
        return model.model_validate(data)
    except ValidationError as error:
        raise SpecError(f"{source}: {refusal(model, error)}") from error


def format_of(model: type[Model]) -> str:
    """The format that a file's model names in its own field, such as "magview-magneto/1"."""
    return str(typing.get_args(model.model_fields["format"].annotation)[0])


_NOT_FINITE = {
    "NaN": marked("not a number (NaN)"),
    "Infinity": marked("infinite"),
    "-Infinity": marked("infinite"),
}


def _show(value: Any) -> str:
    try:
        text = json.dumps(value, ensure_ascii=False)
    except (TypeError, ValueError):
        text = repr(value)
    text = tr(_NOT_FINITE[text]) if text in _NOT_FINITE else text
    return text if len(text) <= 60 else text[:57] + "…"


def refusal(model: type[Model], error: ValidationError) -> str:
    """The reason why a model was refused, one sentence that names the field.

    The first error is enough to act on; errors of whole models come only once the fields are right.
    """
    return _sentence(model, error.errors()[0])


def _sentence(model: type[Model], error: ErrorDetails) -> str:
    path = _without_tags(error["loc"])
    field = "".join(f"[{p}]" if isinstance(p, int) else f".{p}" for p in path).lstrip(".")
    if error["type"] == "value_error":
        # Raised by our own validators, which name the field relative to their model.
        reason = str(error["ctx"]["error"])
        return f"{field}: {reason}" if field else reason
    if error["type"] == "missing":
        return tr("{field} is missing", field=field)
    if error["type"] == "extra_forbidden":
        known = sorted({name for part in _models_at(model, error["loc"][:-1]) for name in part.model_fields})
        import difflib  # needed by refusals only

        close = difflib.get_close_matches(str(path[-1]), known, n=1, cutoff=0.5)
        if close:
            return tr("{field} is not a known name (did you mean {close}?)", field=field[:80], close=close[0])
        return tr("{field} is not a known name (known here: {known})", field=field[:80], known=", ".join(known))
    if error["type"] in ("union_tag_not_found", "union_tag_invalid"):
        tags = alternatives([f'"{t}"' for t in sorted(_UNION_TAGS[str(path[-1])])])
        found = error["input"].get("kind") if isinstance(error["input"], dict) else None
        return (
            tr("{field}.kind is {found}; it must be {tags}", field=field, found=_show(found), tags=tags)
            if found is not None
            else tr("{field}.kind is missing; it must be {tags}", field=field, tags=tags)
        )
    return tr(_refusal(model, error), field=field, found=_show(error["input"]), **_places(error))


_REFUSALS = {
    "greater_than_equal": marked("{field} is {found}; it must be at least {ge:g}"),
    "greater_than": marked("{field} is {found}; it must be above {gt:g}"),
    "less_than_equal": marked("{field} is {found}; it must be at most {le:g}"),
    "less_than": marked("{field} is {found}; it must be below {lt:g}"),
    "multiple_of": marked("{field} is {found}; it must be a multiple of {multiple_of:g}"),
    "int_type": marked("{field} is {found}; it must be a whole number"),
    "int_from_float": marked("{field} is {found}; it must be a whole number"),
    "int_parsing_size": marked("{field} is {found}; it must be a whole number"),
    "string_type": marked("{field} is {found}; it must be text"),
    "string_unicode": marked("{field} is {found}; it must be text without broken characters"),
    "string_too_short": marked("{field} is {found}; it must have at least {min_length} characters"),
    "string_too_long": marked("{field} is {found}; it must have at most {max_length} characters"),
    "string_pattern_mismatch": marked("{field} is {found}; it must be one line of text"),
    "bool_type": marked("{field} is {found}; it must be true or false"),
    "literal_error": marked("{field} is {found}; it must be {expected}"),
    "too_short": marked("{field} is {found}; it must have at least {min_length} values"),
    "too_long": marked("{field} is {found}; it must have at most {max_length} values"),
    "tuple_type": marked("{field} is {found}; it must be a list"),
    "model_type": marked("{field} is {found}; it must be an object in braces"),
    "model_attributes_type": marked("{field} is {found}; it must be an object in braces"),
}
_NO_NUMBER = {
    "mm": marked("{field} is {found}; it must be a finite number of millimetres"),
    "°": marked("{field} is {found}; it must be a finite number of degrees"),
    "N·m": marked("{field} is {found}; it must be a finite number of newton metres"),
    "Ω": marked("{field} is {found}; it must be a finite number of ohms"),
    "": marked("{field} is {found}; it must be a finite number"),
}
"""By the field's unit."""


def _refusal(model: type[Model], error: ErrorDetails) -> str:
    """The sentence for an error, not yet read out."""
    if error["type"] in ("float_type", "finite_number"):
        return _NO_NUMBER.get(_unit_at(model, error["loc"]), _NO_NUMBER[""])
    return _REFUSALS.get(error["type"], marked("{field} is {found}; it must {rule}"))


def _places(error: ErrorDetails) -> dict[str, Any]:
    places = dict(error.get("ctx", {}), rule=error["msg"].removeprefix("Input should "))
    if "expected" in places:
        places["expected"] = alternatives(re.split(", | or ", str(places["expected"]).replace("'", '"')))
    return places


def _without_tags(loc: tuple[int | str, ...]) -> tuple[int | str, ...]:
    """Drop the union tags that pydantic puts into an error's place: they stand in no file."""
    return tuple(p for i, p in enumerate(loc) if not (i and p in _UNION_TAGS.get(str(loc[i - 1]), ())))


def _unit_at(model: type[Model], loc: tuple[int | str, ...]) -> str:
    """The unit of the field at an error's place; nothing where it has none."""
    last = max(i for i, part in enumerate(loc) if isinstance(part, str))
    name = str(loc[last])
    parts = [part for part in _models_at(model, loc[:last]) if name in part.model_fields]
    return about(parts[0], name).quantity.unit if parts else ""


def _models_at(model: type[Model], loc: tuple[int | str, ...]) -> list[type[Model]]:
    here = [model]
    for part in loc:
        if isinstance(part, str):
            found = [m for h in here if part in h.model_fields for m in _models(h.model_fields[part].annotation)]
            here = found or [h for h in here if _tag(h) == part] or here
    return here


def _tag(model: type[Model]) -> str | None:
    kind = model.model_fields.get("kind")
    return typing.get_args(kind.annotation)[0] if kind is not None else None


def _models(annotation: Any) -> list[type[Model]]:
    if isinstance(annotation, type) and issubclass(annotation, Model):
        return [annotation]
    return [m for a in typing.get_args(annotation) for m in _models(a)]


def dump_json(model: Model) -> str:
    """The file text of a model; optional parts that were left out stay left out."""
    data = TypeAdapter(type(model)).dump_python(model, mode="json", exclude_none=True, exclude_defaults=True)
    return json.dumps({"format": format_of(type(model)), **data}, indent=2, ensure_ascii=False) + "\n"


def write_model(path: Path, model: Model) -> None:
    """Write a model's file atomically. Raises SpecError; the old file then stands."""
    write_text(path, dump_json(model))


def write_text(path: Path, text: str) -> None:
    """Replace a file atomically: write beside it, fsync, rename. Raises SpecError; the old file then stands."""
    temporary = None
    try:
        path = path.resolve()  # a link goes on leading to the file that is replaced
        handle, temporary = tempfile.mkstemp(dir=path.parent, prefix=f".{path.name[:40]}.")
        with os.fdopen(handle, "w", encoding="utf-8") as file:
            file.write(text)
            file.flush()
            os.fsync(file.fileno())
        mode = stat.S_IMODE(path.stat().st_mode) if path.exists() else 0o666 & ~_umask()
        os.chmod(temporary, mode)
        os.replace(temporary, path)
        sync_folder(path.parent)
    except OSError as error:
        if temporary is not None:
            with contextlib.suppress(OSError):
                os.unlink(temporary)
        raise SpecError(
            tr("{file}: cannot be written: {reason}", file=path.name, reason=error.strerror or error)
        ) from error


def sync_folder(folder: Path) -> None:
    """Have a renaming itself on the disk; where folders cannot be synced (Windows) nothing more can be done."""
    with contextlib.suppress(OSError):
        handle = os.open(folder, os.O_RDONLY)
        try:
            os.fsync(handle)
        finally:
            os.close(handle)


def _umask() -> int:
    current = os.umask(0)
    os.umask(current)
    return current


def refusals(model: type[M], data: dict[str, Any]) -> list[tuple[tuple[int | str, ...], str]]:
    """Every error in parsed JSON by a file's model, with its place and one sentence; missing fields are left out.

    The checks of fields against one another come only once the fields themselves are right.
    """
    try:
        model.model_validate(data)
    except ValidationError as error:
        return [
            (
                _without_tags(e["loc"]),
                str(e["ctx"]["error"]) if e["type"] == "value_error" else _sentence(model, e),
            )
            for e in error.errors()
            if e["type"] not in ("missing", "union_tag_not_found")
        ]
    return []
