"""Output of commands: `-` as a file to write is standard output, which then carries nothing else."""

from __future__ import annotations

import json
import math
import os
import sys
from pathlib import Path
from typing import TYPE_CHECKING, Any, TextIO

import numpy as np

from magview.spec.base import SpecError
from magview.spec.files import STANDARD, write_text
from magview.spec.language import tr

if TYPE_CHECKING:  # commands without paper do not wait for it
    from magview.paper.blocks import Document


def words_stream(*outputs: str | None, json_wanted: bool = False) -> TextIO:
    """Return where a command's words go: standard error when one of its outputs is `-`, else standard output.

    Raises SpecError where two things would go to standard output.
    """
    taken = sum(1 for out in outputs if out is not None and Path(out) == STANDARD)
    if taken + json_wanted > 1 and taken:
        raise SpecError(
            tr("standard output takes one thing at a time: name a file, such as out.pdf, in place of “-”")
        )
    return sys.stderr if taken else sys.stdout


def write_pdf(path: Path, *documents: Document, or_html: bool = False, most: int = 1) -> int:
    """Write a document, of several the first of at most `most` pages; returns the number of pages.

    `or_html`: the command could write it as HTML instead. Raises SpecError where there is no PDF to be had.
    """
    from magview.ui.kit.preflight import why_no_window

    if sys.platform.startswith("linux"):
        os.environ["QT_QPA_PLATFORM"] = "offscreen"  # paper needs no display, even where there is one
    reason = why_no_window()
    if reason is not None and or_html:
        raise SpecError(tr("no PDF: {reason} For HTML, which needs no Qt, use --html.", reason=reason))
    if reason is not None:
        raise SpecError(tr("no PDF: {reason}", reason=reason))
    from magview.ui.paper.pdf import pdf_bytes
    from magview.ui.pictures.export import written_beside

    data, pages = pdf_bytes(*documents, most=most)
    if path == STANDARD:
        sys.stdout.buffer.write(data)
        return pages
    with written_beside(path) as temporary:
        temporary.write_bytes(data)
    return pages


def write_out(out: str, text: str) -> None:
    """Write an output of a command: a file, whole or not at all, or standard output where its name is `-`."""
    if Path(out) == STANDARD:
        sys.stdout.write(text)
    else:
        write_text(Path(out), text)


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
