"""What commands say, and where: `-` as a file to write is standard output, which then carries nothing else."""

from __future__ import annotations

import json
import math
import sys
from pathlib import Path
from typing import Any, TextIO

import numpy as np

from magview.spec.base import SpecError
from magview.spec.files import STANDARD


def words_stream(*outputs: str | None, json_wanted: bool = False) -> TextIO:
    """Where a command's words go: standard error when one of its outputs is `-`, else standard output.

    Raises SpecError where two things would go to standard output.
    """
    taken = sum(1 for out in outputs if out is not None and Path(out) == STANDARD)
    if taken + json_wanted > 1 and taken:
        raise SpecError("standard output takes one thing at a time: name a file, such as out.pdf, in place of “-”")
    return sys.stderr if taken else sys.stdout


def say(text: str, stream: TextIO | None = None) -> None:
    """Write a line or more."""
    (stream or sys.stdout).write(text + "\n")


def print_json(values: dict[str, Any]) -> None:
    """Write an object as JSON, numbers in full precision."""
    say(json.dumps({name: _plain(value) for name, value in values.items()}, allow_nan=False))


def _plain(value: Any) -> Any:
    """JSON has no NaN: what does not exist is null."""
    if isinstance(value, np.ndarray):
        return [_plain(v) for v in value.tolist()] if value.ndim else _plain(value.item())
    if isinstance(value, list):
        return [_plain(v) for v in value]
    if isinstance(value, dict):
        return {name: _plain(v) for name, v in value.items()}
    if isinstance(value, float) and not math.isfinite(value):
        return None
    return value
