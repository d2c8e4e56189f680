"""Work kept on disk while it is done, and found again after a kill."""

from __future__ import annotations

import contextlib
import uuid
from collections.abc import Callable
from pathlib import Path
from typing import TYPE_CHECKING, Generic, TypeVar

from magview.spec.base import SpecError
from magview.spec.files import write_text
from magview.spec.language import tr
from magview.spec.lock import Held, Lock

if TYPE_CHECKING:
    from magview.bench.state import BenchState

T = TypeVar("T")


class Keeper(Generic[T]):
    """One file a running piece of work, in a folder shared by all of them.

    A lock beside it, held as long as the program lives, tells the files of the living from those of the dead;
    a process number would not, as numbers come again.
    """

    def __init__(self, folder: Path, kind: str, dump: Callable[[T], str], load: Callable[[Path], T]) -> None:
        """`kind`: what the file's name begins with. `load` raises SpecError for a file that is damaged."""
        self.folder = folder
        self._kind, self._dump, self._load = kind, dump, load
        self._path = folder / f"{kind}-{uuid.uuid4().hex}.json"
        self._lock: Lock | None = None

    def keep(self, work: T) -> None:
        """Write it. Raises SpecError where the disk does not take it; the last good file then stands."""
        try:
            self.folder.mkdir(parents=True, exist_ok=True)
            if self._lock is None:
                self._lock = Lock(_lock_of(self._path))
        except OSError as error:
            raise SpecError(
                tr("{name}: cannot be used: {reason}", name=self.folder.name, reason=error.strerror or error)
            ) from error
        write_text(self._path, self._dump(work))

    def forget(self) -> None:
        """The program ends as it should: nothing needs to be found again."""
        with contextlib.suppress(OSError):  # the folder may be gone by now, or locked; the end comes all the same
            self._path.unlink(missing_ok=True)
        if self._lock is not None:
            self._lock.release()
            self._lock = None

    def leave(self) -> None:
        """The program ends, and what was last kept is to be found again."""
        if self._lock is not None:
            self._lock.let_go()
            self._lock = None

    def recover(self) -> T | None:
        """The newest work that a program no longer running left behind, kept from now on as this one's own.

        A damaged or strange file is passed over and left where it is, and so is one
        that cannot be made this one's own.
        """
        others = [p for p in self.folder.glob(f"{self._kind}-*.json") if p != self._path]
        for path in sorted(others, key=_age, reverse=True):
            try:
                lock = Lock(_lock_of(path))
            except (Held, OSError):
                continue  # its program is alive, or nothing can be written here
            if not lock.held:
                continue  # a drive without locks does not tell
            try:
                work = self._load(path)
                self.keep(work)  # before the old file goes: a second kill must not lose it
                path.unlink(missing_ok=True)
                lock.release()
            except (SpecError, OSError):
                continue
            finally:
                lock.let_go()
            return work
        return None


class Autosave(Keeper["BenchState"]):
    """The bench, kept."""

    def __init__(self, folder: Path) -> None:
        super().__init__(folder, "bench", _dump, _load)


def _dump(state: BenchState) -> str:
    from magview.bench.saved import dump_state  # a start without a bench waits for nothing of it

    return dump_state(state)


def _load(path: Path) -> BenchState:
    from magview.bench.saved import load_state

    return load_state(path)


def _lock_of(path: Path) -> Path:
    return path.with_suffix(".lock")


def _age(path: Path) -> float:
    try:
        return path.stat().st_mtime
    except OSError:
        return 0.0
