"""Photographs on a sheet: files beside it, each under a plain name with the digest of what it was.

A sheet may come from anybody. What it names is looked for in its own folder alone: a name with a path in it, and a
link, are refused; what is not as it was is said and never shown.
"""

from __future__ import annotations

import contextlib
import hashlib
import os
import re
import stat
from pathlib import Path
from typing import Annotated, Self

from pydantic import Field, model_validator

from magview.job.parts import Line
from magview.spec.base import Model, SpecError
from magview.spec.fields import may_say
from magview.spec.language import marked, tr

MAX_PHOTOGRAPHS = 12
MAX_KEPT_BYTES = 4_000_000
"""Of a photograph beside a sheet: those put there are far smaller."""

MAX_SIDE = 4000
"""Dots of either side of a photograph that is shown."""

_NAME = re.compile(r"[^\\/:*?\"<>|\x00-\x1f\x7f.][^\\/:*?\"<>|\x00-\x1f\x7f]{0,99}-photo-[0-9]{1,3}\.jpg")


class Photograph(Model):
    """A photograph beside the sheet. Raises ValueError for a name that is not a plain one of this kind."""

    name: Annotated[str, Field(max_length=120)] = Field(
        title=marked("File"), description=marked("Its file's name, in the sheet's own folder.")
    )
    sha256: Annotated[str, Field(max_length=64)] = Field(
        title=marked("Digest"), description=marked("SHA-256 of the file: a change shows.")
    )
    caption: Line = may_say(marked("Caption"), marked("Words under the photograph."), "")

    @model_validator(mode="after")
    def _beside(self) -> Self:
        if not _NAME.fullmatch(self.name) or ".." in self.name:
            raise ValueError(
                tr("the photograph “{name}” is not a plain name beside the sheet, such as left-photo-1.jpg",
                   name=self.name[:60])
            )  # fmt: skip
        return self


def read_photograph(folder: Path, photograph: Photograph) -> bytes:
    """Bytes of a photograph, as they were when it was attached.

    Raises SpecError where it is not there, is a link or no plain file, is too large, or is another one now.
    """
    name, path = photograph.name, folder / photograph.name
    try:
        handle = os.open(path, os.O_RDONLY | getattr(os, "O_NOFOLLOW", 0) | getattr(os, "O_BINARY", 0) | _NO_WAIT)
    except OSError as error:
        if path.is_symlink():
            raise SpecError(_is_link(name)) from error
        raise SpecError(tr("the photograph {name} is missing: put it back beside the sheet", name=name)) from error
    with os.fdopen(handle, "rb") as file:
        if path.is_symlink() or not stat.S_ISREG(os.fstat(file.fileno()).st_mode):
            raise SpecError(_is_link(name))
        data = file.read(MAX_KEPT_BYTES + 1)
    if len(data) > MAX_KEPT_BYTES or hashlib.sha256(data).hexdigest() != photograph.sha256:
        raise SpecError(tr("the photograph {name} was changed since it was attached, and is not shown", name=name))
    if max(_dots(data)) > MAX_SIDE or min(_dots(data)) < 1:
        # The digest is the sheet's own word: who wrote one can write the other.
        raise SpecError(
            tr(
                "the photograph {name} is no JPEG of at most {most} dots a side, and is not shown",
                name=name,
                most=MAX_SIDE,
            )
        )
    return data


def _dots(jpeg: bytes) -> tuple[int, int]:
    """Width and height that a JPEG declares (ITU-T T.81, B.2.2), nothing of it decoded; (0, 0) for what is none."""
    at = 2
    while jpeg[:2] == b"\xff\xd8" and at + 9 <= len(jpeg) and jpeg[at] == 0xFF:
        marker, length = jpeg[at + 1], int.from_bytes(jpeg[at + 2 : at + 4])
        if marker == 0xFF:  # filled up before a marker
            at += 1
            continue
        if 0xC0 <= marker <= 0xCF and marker not in (0xC4, 0xC8, 0xCC):
            return int.from_bytes(jpeg[at + 7 : at + 9]), int.from_bytes(jpeg[at + 5 : at + 7])
        if length < 2 or marker == 0xDA:
            break
        at += 2 + length
    return 0, 0


_NO_WAIT = getattr(os, "O_NONBLOCK", 0)
"""A pipe in the place of a file must not hold the program up."""


def _is_link(name: str) -> str:
    return tr("the photograph {name} is a link or no plain file, and is not followed: put the file itself there",
              name=name)  # fmt: skip


def amiss(photographs: tuple[Photograph, ...], folder: Path) -> tuple[str, ...]:
    """Photographs that cannot be shown from a folder, a sentence each."""
    told = []
    for photograph in photographs:
        try:
            read_photograph(folder, photograph)
        except SpecError as error:
            told.append(str(error))
    return tuple(told)


def attach(sheet: Path, data: bytes, caption: str = "") -> Photograph:
    """Write a photograph beside a sheet under a new name; no file is ever replaced. Raises SpecError."""
    stem = re.sub(r"[\\/:*?\"<>|\x00-\x1f\x7f]", "-", sheet.name.partition(".")[0])[:60].strip() or "sheet"
    for number in range(1, 1000):
        path = sheet.with_name(f"{stem}-photo-{number}.jpg")
        try:
            _create(path, data)
        except FileExistsError:
            continue
        except OSError as error:
            raise SpecError(
                tr("{name}: cannot be written: {reason}", name=path.name, reason=error.strerror or error)
            ) from error
        return Photograph(name=path.name, sha256=hashlib.sha256(data).hexdigest(), caption=caption)
    raise SpecError(tr("there is no number left for a photograph beside {name}: save the sheet elsewhere",
                       name=sheet.name))  # fmt: skip


def _create(path: Path, data: bytes) -> None:
    """Write a new file, whole or not at all. Raises OSError; FileExistsError where anything has the name."""
    with path.open("xb") as file:
        try:
            file.write(data)
            file.flush()
            os.fsync(file.fileno())
        except OSError:
            with contextlib.suppress(OSError):
                path.unlink()
            raise


def copy_photographs(photographs: tuple[Photograph, ...], folder: Path, to: Path) -> None:
    """Copy photographs to another folder; one that cannot be shown here is passed over, and is amiss there, too.

    Raises SpecError where another file has a photograph's name there, or it cannot be written: nothing is replaced.
    """
    for photograph in photographs:
        if amiss((photograph,), folder):
            continue
        try:
            _create(to / photograph.name, read_photograph(folder, photograph))
        except FileExistsError as error:
            if amiss((photograph,), to):
                raise SpecError(
                    tr("{name}: is in that folder already, and is another picture; choose another folder",
                       name=photograph.name)
                ) from error  # fmt: skip
        except OSError as error:
            raise SpecError(
                tr("{name}: cannot be written: {reason}", name=photograph.name, reason=error.strerror or error)
            ) from error
