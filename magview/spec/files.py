"""Reading and writing our files: bounded, strict, and every refusal one clear sentence."""

from __future__ import annotations

import contextlib
import json
import os
import re
import stat
import tempfile
import typing
from collections import Counter
from pathlib import Path
from typing import Any, TypeVar

from pydantic import TypeAdapter, ValidationError
from pydantic_core import ErrorDetails

from magview.spec.base import Model, SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.magneto import Magneto

MAX_BYTES = 2_000_000
"""Far above any magneto file (a 20,000-point measured profile is 0.4 MB), far below what would hurt."""

MAX_VALUES = 25_000
"""Longest list: just above a measured profile's, and few enough that a list of rubbish takes no memory to refuse."""

M = TypeVar("M", bound=Model)

_UNION_TAGS = {"profile": {"law", "measured"}, "contact_screw": {"eccentric", "threaded"}}
_UNITS = {"_mm": " of millimetres", "_deg": " of degrees", "_nm": " of newton metres", "_ohm": " of ohms"}


def read_magneto(path: Path) -> Magneto:
    """Read a ``magview-magneto/1`` file; raise SpecError with one sentence for anything amiss."""
    return validate(Magneto, read_json(path), path.name)


def read_engine(path: Path) -> Engine:
    """Read a ``magview-engine/1`` file; raise SpecError with one sentence for anything amiss."""
    return validate(Engine, read_json(path), path.name)


def read_installation(path: Path) -> Installation:
    """Read a ``magview-installation/1`` file. A magneto or engine given as a path is sought beside it."""
    data = read_json(path)
    if isinstance(data, dict):
        data = dict(data)
        for field, read in (("magneto", read_magneto), ("engine", read_engine)):
            if isinstance(data.get(field), str):
                data[field] = read(path.parent / data[field])
    return validate(Installation, data, path.name)


def read_bench_item(path: Path) -> Magneto | Installation:
    """Read a magneto or an installation, whichever the file says it is; anything else is refused as no magneto."""
    data = read_json(path)
    if isinstance(data, dict) and str(data.get("format")).startswith("magview-installation/"):
        return read_installation(path)
    return validate(Magneto, data, path.name)


def read_bytes(path: Path) -> bytes:
    """What a file holds.

    Raises SpecError for a missing or unreadable file, one that is not a regular file, or one larger than MAX_BYTES.
    """
    try:
        if not stat.S_ISREG(path.stat().st_mode):
            raise ValueError("it is not a file")
        with path.open("rb") as file:
            raw = file.read(MAX_BYTES + 1)
    except (OSError, ValueError) as error:
        reason = error.strerror if isinstance(error, OSError) and error.strerror else str(error)
        raise SpecError(f"{path.name}: cannot be read: {reason}") from error
    if len(raw) > MAX_BYTES:
        raise SpecError(f"{path.name}: is larger than {MAX_BYTES / 1e6:g} MB, the most that is read")
    return raw


def read_json(path: Path) -> Any:
    """Read JSON with lists as tuples.

    Raises SpecError as `read_bytes` does, and for text that is not UTF-8 or not JSON, a name given twice, or nesting
    that is too deep.
    """
    raw = read_bytes(path)
    try:
        return _tuples(json.loads(raw.decode("utf-8-sig"), object_pairs_hook=_no_repeats, parse_int=_integer))
    except UnicodeDecodeError as error:
        raise SpecError(f"{path.name}: is not a text file (byte {error.start} is not UTF-8)") from error
    except json.JSONDecodeError as error:
        raise SpecError(f"{path.name}: line {error.lineno}, column {error.colno}: not JSON: {error.msg}") from error
    except RecursionError as error:
        raise SpecError(f"{path.name}: is nested too deeply") from error
    except ValueError as error:
        raise SpecError(f"{path.name}: {error}") from error


def _no_repeats(pairs: list[tuple[str, Any]]) -> dict[str, Any]:
    result = dict(pairs)
    if len(result) != len(pairs):
        repeated = Counter(name for name, _ in pairs).most_common(1)[0][0]
        raise ValueError(f"“{repeated[:40]}” is given twice in one place; give it once")
    return result


def _integer(digits: str) -> int | float:
    # Python refuses whole numbers of thousands of digits in words of its own; as infinity the field is named.
    return int(digits) if len(digits) <= 400 else float(digits)


def _tuples(value: Any) -> Any:
    if isinstance(value, list):
        if len(value) > MAX_VALUES:
            raise ValueError(f"holds a list of {len(value)} values; at most {MAX_VALUES} are read")
        return tuple(_tuples(v) for v in value)
    if isinstance(value, dict):
        return {k: _tuples(v) for k, v in value.items()}
    return value


def validate(model: type[M], data: Any, source: str) -> M:
    """Make a file's model of parsed JSON (lists as tuples), or raise SpecError naming `source` and the field."""
    wanted = format_of(model)
    kind = wanted.split("/", 1)[0]
    if not isinstance(data, dict):
        raise SpecError(f"{source}: holds no {kind} object; it must be one JSON object in braces")
    found = data.get("format")
    if found is None:
        raise SpecError(f'{source}: format is missing; it must be "{wanted}"')
    if found != wanted:
        number = re.fullmatch(re.escape(kind) + r"/(\d{1,6})", str(found))
        newer = number is not None and int(number[1]) > 1
        hint = " (a newer magview wrote it; it is left as it was)" if newer else ""
        raise SpecError(f'{source}: format is {_show(found)}{hint}; it must be "{wanted}"')
    try:
        return model.model_validate(data)
    except ValidationError as error:
        # The first error is enough to act on; errors of whole models come only once the fields are right.
        raise SpecError(f"{source}: {_sentence(model, error.errors()[0])}") from error


def format_of(model: type[Model]) -> str:
    """The format that a file's model names in its own field, such as "magview-magneto/1"."""
    return str(typing.get_args(model.model_fields["format"].annotation)[0])


def _show(value: Any) -> str:
    try:
        text = json.dumps(value, ensure_ascii=False)
    except (TypeError, ValueError):
        text = repr(value)
    text = {"NaN": "not a number (NaN)", "Infinity": "infinite", "-Infinity": "infinite"}.get(text, text)
    return text if len(text) <= 60 else text[:57] + "…"


def _sentence(model: type[Model], error: ErrorDetails) -> str:
    path = _without_tags(error["loc"])
    field = "".join(f"[{p}]" if isinstance(p, int) else f".{p}" for p in path).lstrip(".")
    if error["type"] == "value_error":
        # Raised by our own validators, which name the field relative to their model.
        reason = str(error["ctx"]["error"])
        return f"{field}: {reason}" if field else reason
    if error["type"] == "missing":
        return f"{field} is missing"
    if error["type"] == "extra_forbidden":
        known = _fields_at(model, error["loc"][:-1])
        import difflib  # needed by refusals only

        close = difflib.get_close_matches(str(path[-1]), known, n=1, cutoff=0.5)
        hint = f"did you mean {close[0]}?" if close else f"known here: {', '.join(known)}"
        return f"{field[:80]} is not a known name ({hint})"
    if error["type"] in ("union_tag_not_found", "union_tag_invalid"):
        tags = " or ".join(f'"{t}"' for t in sorted(_UNION_TAGS[str(path[-1])]))
        found = error["input"].get("kind") if isinstance(error["input"], dict) else None
        return (
            f"{field}.kind is {_show(found)}; it must be {tags}"
            if found is not None
            else f"{field}.kind is missing; it must be {tags}"
        )
    return f"{field} is {_show(error['input'])}; it must {_allowed(error, path)}"


_ALLOWED = {
    "greater_than_equal": "be at least {ge:g}",
    "greater_than": "be above {gt:g}",
    "less_than_equal": "be at most {le:g}",
    "less_than": "be below {lt:g}",
    "multiple_of": "be a multiple of {multiple_of:g}",
    "float_type": "be a finite number{unit}",
    "finite_number": "be a finite number{unit}",
    "int_type": "be a whole number",
    "int_from_float": "be a whole number",
    "int_parsing_size": "be a whole number",
    "string_type": "be text",
    "string_unicode": "be text without broken characters",
    "string_too_short": "have at least {min_length} characters",
    "string_too_long": "have at most {max_length} characters",
    "string_pattern_mismatch": "be one line of text",
    "bool_type": "be true or false",
    "literal_error": "be {expected}",
    "too_short": "have at least {min_length} values",
    "too_long": "have at most {max_length} values",
    "tuple_type": "be a list",
    "model_type": "be an object in braces",
    "model_attributes_type": "be an object in braces",
}


def _allowed(error: ErrorDetails, path: tuple[int | str, ...]) -> str:
    name = next((p for p in reversed(path) if isinstance(p, str)), "")
    unit = next((text for suffix, text in _UNITS.items() if name.endswith(suffix)), "")
    template = _ALLOWED.get(error["type"])
    if template is None:
        return error["msg"].removeprefix("Input should ")
    return template.format(unit=unit, **error.get("ctx", {})).replace("'", '"')


def _without_tags(loc: tuple[int | str, ...]) -> tuple[int | str, ...]:
    """Drop the union tags that pydantic puts into an error's place: they stand in no file."""
    return tuple(p for i, p in enumerate(loc) if not (i and p in _UNION_TAGS.get(str(loc[i - 1]), ())))


def _fields_at(model: type[Model], loc: tuple[int | str, ...]) -> list[str]:
    here = [model]
    for part in loc:
        if isinstance(part, str):
            found = [m for h in here if part in h.model_fields for m in _models(h.model_fields[part].annotation)]
            here = found or [h for h in here if _tag(h) == part] or here
    return sorted({name for h in here for name in h.model_fields})


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
    except OSError as error:
        if temporary is not None:
            with contextlib.suppress(OSError):
                os.unlink(temporary)
        raise SpecError(f"{path.name}: cannot be written: {error.strerror or error}") from error


def _umask() -> int:
    current = os.umask(0)
    os.umask(current)
    return current
