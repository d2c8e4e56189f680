"""A job kept on disk while it is worked on: every step is in the file, whole, before the next one is taken.

The history stands in the file itself, so that one atomic replacement commits sheet and history together: after a kill
or a power cut the file holds the last committed step, and undo reaches back over sessions. Where a step cannot be
written it is not lost: it stays here, `trouble` says so in one sentence, and it is written with the next step.
"""

from __future__ import annotations

import contextlib
import datetime
import hashlib
import json
import os
import re
from collections.abc import Callable
from pathlib import Path

from pydantic import ValidationError

from magview.job.library import read_job
from magview.job.photographs import copy_photographs
from magview.job.sheet import Job, Parts, as_data, steps_of, with_steps, without_history
from magview.spec.base import SpecError
from magview.spec.files import MAX_BYTES, dump_json, sync_folder, write_text
from magview.spec.history import History, Step
from magview.spec.language import marked, tr
from magview.spec.lock import Held, Lock

_ROOM_BYTES = MAX_BYTES // 2
"""Older steps are forgotten rather than have a file grow so large that writing it is felt, or that it is not read."""

Listener = Callable[[Job, Job], None]


class _Conflict(SpecError):
    """The file holds another program's work."""


def _now() -> str:
    return datetime.datetime.now(datetime.UTC).isoformat(timespec="seconds")


_KEPT = {
    (True, True): marked(
        "{error}. What you entered is kept here and tried again with your next step; a copy is in {folder}"
    ),
    (True, False): marked("{error}. What you entered is kept here and tried again with your next step"),
    (False, True): marked("{error}. What you entered is kept here; a copy is in {folder}"),
    (False, False): marked("{error}. What you entered is kept here"),
}
"""By whether it is tried again, and whether there is a copy."""


class JobStore:
    """The owner of one job file. Listeners get (new, old) after each change, and after trouble came or went.

    `read_only` is one sentence where this store must not write (another window has the file, or its folder takes no
    files); `trouble` is one sentence while what is on the screen is not yet in the file. Neither stops the work of
    looking; `save_as` ends both.
    """

    def __init__(self, path: Path, job: Job, *, now: Callable[[], str] = _now, spare: Path | None = None) -> None:
        self.path = path
        self.read_only: str | None = None
        self.trouble: str | None = None
        self._now, self._spare = now, spare
        self._job, self._history = without_history(job), steps_of(job)
        self._lock: Lock | None = None
        self._written: str | None = None
        self._device: int | None = None
        self._listeners: list[Listener] = []

    @classmethod
    def open(cls, path: Path, *, now: Callable[[], str] = _now, spare: Path | None = None) -> JobStore:
        """Open a job's file. Raises SpecError where it cannot be read as one.

        `now` tells the time of a step; `spare` is a folder for a copy while the file's own cannot be written.
        """
        path = _resolved(path)
        store = cls(path, Job(format="magview-job/1"), now=now, spare=spare)
        store._own()
        try:
            store._read()
        except SpecError:
            store.close()
            raise
        return store

    @classmethod
    def create(cls, path: Path, job: Job, *, now: Callable[[], str] = _now, spare: Path | None = None) -> JobStore:
        """Start a new file. Raises SpecError where there is one already, or it cannot be written."""
        path = _resolved(path)
        if path.exists():
            raise SpecError(tr("{name}: is there already; open it, or choose another name", name=path.name))
        store = cls(path, job, now=now, spare=spare)
        store._own()
        if store.read_only is None:
            store._save()
        trouble = store.read_only or store.trouble
        if trouble is not None:
            store.close()
            raise SpecError(trouble)
        return store

    # -------------------------------------------------------------- looking

    @property
    def job(self) -> Job:
        """The sheet as it is now, without its history."""
        return self._job

    @property
    def undo_name(self) -> str | None:
        """Name of the step that would be undone; None if there is none."""
        return self._history.undo_name

    @property
    def redo_name(self) -> str | None:
        """Name of the step that would be redone; None if there is none."""
        return self._history.redo_name

    @property
    def steps(self) -> tuple[tuple[str, str], ...]:
        """Name and time of every step in the sheet, oldest first."""
        return tuple((step.at, step.name) for step in self._history.steps[: self._history.done])

    def subscribe(self, listener: Listener) -> None:
        """Have `listener(new, old)` called after each change."""
        self._listeners.append(listener)

    # -------------------------------------------------------------- working

    def commit(self, job: Job, name: str) -> None:
        """Take a step: the sheet as it became, and what was done. It is in the file when this returns, or `trouble`.

        Raises SpecError where this store only reads, or the sheet has grown larger than a file may be.
        """
        self._writable()
        old, new = as_data(self._job), as_data(job)
        changed = [k for k in {**old, **new} if old.get(k) != new.get(k)]
        if not changed:
            return
        step = Step(
            name="".join(c if c.isprintable() else " " for c in name)[:120],
            before={k: old[k] for k in changed if k in old},
            after={k: new[k] for k in changed if k in new},
            at=self._now(),
        )
        self._become(without_history(job), self._history.take(step))

    def undo(self) -> None:
        """Go back one step, if there is one. Raises SpecError where this store only reads."""
        if step := self._history.last:
            self._writable()
            self._become(self._patched(step.before, instead_of=step.after), self._history.undo())

    def redo(self) -> None:
        """Go forward one step again, if there is one. Raises SpecError where this store only reads."""
        if step := self._history.next:
            self._writable()
            self._become(self._patched(step.after, instead_of=step.before), self._history.redo())

    def retry(self) -> None:
        """Try again to write what could not be written."""
        if self.trouble is not None and self.read_only is None:
            self._become(self._job, self._history)

    def save_as(self, path: Path) -> None:
        """Go on in another file, history and photographs with it; the present one may be another program's by now.

        Raises SpecError where that fails; nothing changes then.
        """
        path = _resolved(path)
        if path != self.path and path.exists():
            raise SpecError(tr("{name}: is there already; choose another name", name=path.name))
        other = JobStore(path, with_steps(self._job, self._history), now=self._now, spare=self._spare)
        if path == self.path:
            if self._lock is None:
                raise SpecError(
                    self.read_only or tr("{name}: cannot be written; choose another name", name=path.name)
                )
            other._lock, other._device = self._lock, _device(path.parent)
        else:
            other._own()
        if other.read_only is None:
            if path.parent != self.path.parent:
                try:
                    copy_photographs(self._job.photographs, self.path.parent, path.parent)
                except SpecError:
                    other.close()
                    raise
            other._save()
        trouble = other.read_only or other.trouble
        if trouble is not None:
            if path != self.path:
                other.close()
            raise SpecError(trouble)
        if path != self.path:
            self.close()
        self.path, self._lock, self._written, self._device = path, other._lock, other._written, other._device
        self.read_only = self.trouble = None
        self._tell(self._job)

    def changed_on_disk(self) -> bool:
        """Whether another program has changed the file since this store last read or wrote it."""
        found = _text_of(self.path)
        return found is not None and _digest(found) != self._written

    def reload(self) -> None:
        """Take what is in the file now and give up what was not written. Raises SpecError where it cannot be read."""
        old = self._job
        if self._lock is None:
            self.read_only = None
            self._own()
        self._read()
        self.trouble = None
        self._tell(old)

    def close(self) -> None:
        """Let go of the file."""
        if self._lock is not None:
            self._lock.release()
            self._lock = None

    # -------------------------------------------------------------- within

    def _own(self) -> None:
        try:
            self._lock = Lock(self.path.with_name(f".{self.path.name}.lock"))
        except Held:
            self.read_only = tr(
                "{name} is open in another window or program: it can be read here, and changed "
                "there; save it under another name to change it here",
                name=self.path.name,
            )
            return
        except OSError as error:
            self.read_only = tr(
                "{name} can only be read: its folder takes no files ({reason}); save it elsewhere to change it",
                name=self.path.name,
                reason=error.strerror or error,
            )
            return
        if self.path.exists() and not os.access(self.path, os.W_OK):
            self.read_only = tr(
                "{name} may only be read; save it under another name to change it", name=self.path.name
            )
            return
        _sweep(self.path)
        self._device = _device(self.path.parent)

    def _read(self) -> None:
        found = _text_of(self.path)
        job = read_job(self.path)
        self._written = None if found is None else _digest(found)
        self._job, self._history = without_history(job), steps_of(job)

    def _writable(self) -> None:
        if self.read_only is not None:
            raise SpecError(self.read_only)

    def _patched(self, values: Parts, instead_of: Parts) -> Job:
        data = {k: v for k, v in as_data(self._job).items() if k not in values and k not in instead_of}
        try:
            # Through JSON, as a file is read: a step's values are what a file holds.
            return without_history(Job.model_validate_json(json.dumps({**data, **values})))
        except (ValidationError, ValueError, TypeError, RecursionError) as error:
            raise SpecError(tr("this step of the history is damaged; it cannot be undone or done again")) from error

    def _become(self, job: Job, history: History[Parts]) -> None:
        history, text = _fitting(job, history)
        old, self._job, self._history = self._job, job, history
        self._save(text)
        self._tell(old)

    def _tell(self, old: Job) -> None:
        for listener in list(self._listeners):
            listener(self._job, old)

    def _save(self, text: str | None = None) -> None:
        text = _fitting(self._job, self._history)[1] if text is None else text
        try:
            self._check_place()
            write_text(self.path, text)
            sync_folder(self.path.parent)
            self._written, self.trouble = _digest(_text_of(self.path) or b""), None
        except SpecError as error:
            again = not isinstance(error, _Conflict)
            self.trouble = tr(_KEPT[again, self._aside(text)], error=error, folder=self._spare)

    def _check_place(self) -> None:
        """Refuse to write over another program's work, or on a drive that has taken the place of ours."""
        name, folder = self.path.name, self.path.parent
        if not folder.is_dir() or (self._device is not None and _device(folder) != self._device):
            raise SpecError(
                tr(
                    "{name}: cannot be written: its folder or drive is gone; put it back, or save elsewhere",
                    name=name,
                )
            )
        if self._written is not None and self.changed_on_disk():
            raise _Conflict(
                tr(
                    "{name}: was changed by another program and is left as it is; reload it, or save "
                    "under another name",
                    name=name,
                )
            )

    def _aside(self, text: str) -> bool:
        """Keep a copy in the spare folder; say whether it is there."""
        if self._spare is None:
            return False
        try:
            self._spare.mkdir(parents=True, exist_ok=True)
            write_text(self._spare / self.path.name, text)
        except (SpecError, OSError):
            return False
        return True


def _fitting(job: Job, history: History[Parts]) -> tuple[History[Parts], str]:
    """As much of the history as there is room for, and the file's text. Raises SpecError for too large a sheet."""
    while True:
        text = dump_json(with_steps(job, history))
        size = len(text.encode())
        if not history.steps and size > MAX_BYTES:
            raise SpecError(
                tr(
                    "this sheet is larger than {most} MB, the most that is read again; shorten it",
                    most=MAX_BYTES / 1000000.0,
                )
            )
        if not history.steps or size <= _ROOM_BYTES:
            return history, text
        history = history.shorter(max(1, len(history.steps) // 8))


def _resolved(path: Path) -> Path:
    try:
        return path.resolve()
    except (OSError, RuntimeError, ValueError) as error:
        raise SpecError(tr("{name}: is no name of a file", name=path.name)) from error


def _text_of(path: Path) -> bytes | None:
    try:
        with path.open("rb") as file:
            return file.read(MAX_BYTES + 1)
    except OSError:
        return None


def _digest(text: bytes) -> str:
    return hashlib.sha256(text).hexdigest()


def _device(folder: Path) -> int | None:
    try:
        return os.stat(folder).st_dev
    except OSError:
        return None


def _sweep(path: Path) -> None:
    """Take away what a kill left half written: files of ours beside the job, which nobody else can be writing now."""
    half = re.compile(rf"\.{re.escape(path.name[:40])}\.[a-z0-9_]{{8}}")
    if len(path.name) > 40:  # the start of a long name may be another job's, too
        return
    with contextlib.suppress(OSError):
        for other in path.parent.iterdir():
            if half.fullmatch(other.name):
                other.unlink(missing_ok=True)
