"""A handed-in attempt as one file in a folder that the whole class writes to: ``magview-handed-in/1``.

The digest in it finds what went wrong on the way: a file cut short, a disk's error, an edit by accident. It is no
protection against a determined cheat, who can compute it as well as this program does. What counts is therefore
not believed from the file but marked again from the acts; time and name are believed as they stand.

Nothing is ever written over. A file is written under a name of its own beside its place, then put there in one step
that fails where something stands already; a program that is killed meanwhile leaves a file whose name begins with a
full stop, which is passed over.
"""

from __future__ import annotations

import contextlib
import errno
import json
import os
import time
import uuid
from datetime import datetime
from hashlib import sha256
from pathlib import Path
from typing import Annotated, Any, Literal

from pydantic import Field

from magview.classroom.names import normal
from magview.practice.attempt import Attempt, dump_attempt
from magview.spec.base import Model, Name, SpecError
from magview.spec.fields import may_say
from magview.spec.files import sync_folder, validate
from magview.spec.formats import ENDING
from magview.spec.language import marked, tr

FORMAT = "magview-handed-in/1"
PLAINLY = marked(
    "The digest finds damage in copying. It is no protection against a determined cheat: the acts are marked again, "
    "but who did them, and when, is believed as written."
)

_STALE_S = 60.0
"""A claim this old belongs to a program that was killed."""


class HandedIn(Model):
    """Contents of a handed-in file."""

    format: Literal["magview-handed-in/1"]
    about: Annotated[str, Field(max_length=1000)] = may_say(
        marked("About"), marked("For whoever opens the file: what the digest is, and what it is not."), ""
    )
    set: Annotated[str, Field(pattern=r"^[0-9a-f]{16}$")] = Field(
        title=marked("Set"), description=marked("The set's identity: sixteen hexadecimal digits.")
    )
    number: Annotated[int, Field(ge=1, le=40)] = Field(
        title=marked("Exercise"), description=marked("Which exercise of the set, from 1.")
    )
    pupil: Name = Field(title=marked("Pupil"), description=marked("The name as it was typed."))
    handed_in_at: Annotated[
        str, Field(max_length=40, pattern=r"^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d([+-]\d\d:\d\d|Z)$")
    ] = Field(title=marked("Handed in at"), description=marked("By the pupil's machine, with its offset from UTC."))
    token: Annotated[str, Field(pattern=r"^[0-9a-f]{16}$")] = Field(
        title=marked("Token"), description=marked("Drawn at random: no two files of a class have the same.")
    )
    attempt: dict[str, Any] = Field(
        title=marked("Attempt"), description=marked("What was done: a magview-attempt/1 object.")
    )
    digest: Annotated[str, Field(pattern=r"^[0-9a-f]{64}$")] = Field(
        title=marked("Digest"),
        description=marked("SHA-256 of all the other fields as JSON with sorted names, without spaces, in UTF-8."),
    )


def digest_of(data: dict[str, Any]) -> str:
    """The digest of a handed-in file's object, whatever digest it holds."""
    rest = {name: value for name, value in data.items() if name != "digest"}
    text = json.dumps(rest, sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    return sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


def handed_in_of(data: Any, source: str) -> HandedIn:
    """A handed-in file from parsed JSON. Raises SpecError naming `source`: for a newer one, one with anything amiss,
    and one that is not as it was written."""
    found = validate(HandedIn, data, source)
    if digest_of(data) != found.digest:
        raise SpecError(
            tr("{file}: was changed or damaged after it was handed in: its digest does not fit", file=source)
        )
    return found


def dump_handed_in(attempt: Attempt, set_name: str, number: int, pupil: str, at: datetime, token: str) -> str:
    """The text of a handed-in file. Raises SpecError for an attempt that has not been handed in."""
    if not attempt.handed_in:
        raise SpecError(tr("the attempt has not been handed in"))
    data: dict[str, Any] = {
        "format": FORMAT,
        "about": PLAINLY,
        "set": set_name,
        "number": number,
        "pupil": pupil,
        "handed_in_at": at.astimezone().isoformat(timespec="seconds"),
        "token": token,
        "attempt": json.loads(dump_attempt(attempt)),
    }
    data["digest"] = digest_of(data)
    handed_in_of(data, "it")  # a name that no reader would take is refused here
    return json.dumps(data, ensure_ascii=False, allow_nan=False) + "\n"


def new_token() -> str:
    """Sixty-four random bits: thirty machines that hand in at the same second draw apart."""
    return uuid.uuid4().hex[:16]


def file_name(attempt: Attempt, number: int, pupil: str, at: datetime, token: str) -> str:
    """Return who, what, when, and the token: the name under which an attempt is handed in."""
    what = f"{number}-{_plain(attempt.exercise.name)}"
    return f"{_plain(pupil)}_{what}_{at.astimezone():%Y%m%d-%H%M%S}_{token}{ENDING}"


def _plain(name: str) -> str:
    """Letters that every disk takes, or a hash where none are left."""
    letters = "".join(c if c.isascii() else "" for c in normal(name)).strip().replace(" ", "-")[:40].strip("-")
    return letters or sha256(name.encode("utf-8", "surrogatepass")).hexdigest()[:8]


def write_new(folder: Path, name: str, text: str) -> Path:
    """Write a file that is not there yet, whole or not at all, and never over another.

    A file of that name with the same text counts as written: an earlier try that was not heard of. Raises SpecError,
    one sentence, where the folder does not take it.
    """
    target, raw = folder / name, text.encode("utf-8")
    temporary = folder / f".{name[:60]}.{uuid.uuid4().hex}.part"
    try:
        try:
            with open(temporary, "xb") as file:
                file.write(raw)
                file.flush()
                os.fsync(file.fileno())
            _put(temporary, target)
        except FileExistsError:
            if target.read_bytes() != raw:
                raise
        finally:
            with contextlib.suppress(OSError):
                temporary.unlink(missing_ok=True)
        sync_folder(folder)
    except OSError as error:
        reason = (
            tr("another file has its name") if isinstance(error, FileExistsError) else error.strerror or str(error)
        )
        raise SpecError(
            tr("{folder}: the attempt cannot be written there: {reason}", folder=folder, reason=reason)
        ) from error
    return target


def _put(temporary: Path, target: Path) -> None:
    """Give a written file its name. Raises FileExistsError where the name is taken."""
    if os.name == "nt":
        os.rename(temporary, target)  # on Windows it refuses to replace
        return
    try:
        os.link(temporary, target)
    except FileExistsError:
        raise
    except OSError as error:
        if error.errno in (errno.ENOENT, errno.ENOSPC, errno.EROFS):
            raise
        _claim_and_rename(temporary, target)  # a memory stick's file system has no links


def _claim_and_rename(temporary: Path, target: Path) -> None:
    claim = target.with_name(f".{target.name}.claim")
    with contextlib.suppress(OSError):
        if time.time() - claim.stat().st_mtime > _STALE_S:
            claim.unlink()
    os.close(os.open(claim, os.O_CREAT | os.O_EXCL | os.O_WRONLY))
    try:
        if target.exists():
            raise FileExistsError(errno.EEXIST, os.strerror(errno.EEXIST), str(target))
        os.rename(temporary, target)
    finally:
        claim.unlink(missing_ok=True)
