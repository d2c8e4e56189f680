"""Gathering a folder: every attempt in it marked, quickly, again and again as files arrive.

A file is known by its time and size while the program runs and by the digest of its bytes in the cache on disk, so
nothing is marked twice. What is new is marked in processes beside this one where there is enough of it: a replay is
Python's own work, which threads cannot share.
"""

from __future__ import annotations

import contextlib
import multiprocessing
import os
import sys
import threading
from collections.abc import Callable, Iterable, Iterator, Sequence
from concurrent.futures import FIRST_COMPLETED, Future, ProcessPoolExecutor, wait
from concurrent.futures.process import BrokenProcessPool
from dataclasses import replace
from hashlib import sha256
from pathlib import Path

from magview import __version__
from magview.classroom.results import Result, State, dump_result, load_result, result_of
from magview.practice.attempt import RULES
from magview.spec.base import SpecError
from magview.spec.files import parse_json, read_bytes
from magview.spec.formats import is_ours
from magview.spec.language import tr

Progress = Callable[[float], None]
ShouldStop = Callable[[], bool]

LOOKED = 0.1
"""The share of the work that is done when every file has been looked at; the rest is marking what is new."""

_RULES = 2
"""Raised whenever marks come out otherwise within one version of the program."""

_CHUNK = 16
_ALONE = 80
"""So few attempts are marked before another process has started."""

_MAX_PROCESSES = 8


class Cancelled(Exception):
    """Gathering was given up."""


class Gatherer:
    """Marks of a folder's attempts. `cache`: a file of one's own that keeps marks from one session to the next."""

    def __init__(self, cache: Path | None = None, processes: int | None = None) -> None:
        """`processes`: how many beside this one; left out: as many as there are processors; 0: none."""
        self._cache = cache
        self._processes = min(os.cpu_count() or 1, _MAX_PROCESSES) if processes is None else processes
        if getattr(sys, "frozen", False):
            self._processes = 0  # a bundled program would start its own window again
        self._seen: dict[Path, tuple[int, int, Result]] = {}
        self._by_digest: dict[str, Result] | None = None

    def gather(
        self,
        folder: Path,
        progress: Progress = lambda share: None,
        should_stop: ShouldStop = lambda: False,
    ) -> tuple[Result, ...]:
        """Every attempt in a folder, by file name: those marked, and those passed over with the reason.

        Raises SpecError for a folder that cannot be read, Cancelled where `should_stop` said so; what was marked by
        then is kept.
        """
        if self._by_digest is None:
            self._by_digest = self._load()
        results: dict[Path, Result] = {}
        wanted: list[tuple[Path, int, int]] = []
        for path, mtime, size in _files(folder):
            seen = self._seen.get(path)
            if seen is not None and seen[:2] == (mtime, size) and seen[2].state is not State.DAMAGED:
                results[path] = seen[2]
            else:
                wanted.append((path, mtime, size))
        new: list[tuple[Path, int, int]] = []
        for i, (path, mtime, size) in enumerate(wanted):
            if should_stop():
                raise Cancelled
            known = self._known(path)
            if known is None:
                new.append((path, mtime, size))
            else:
                results[path] = known
                self._seen[path] = (mtime, size, known)
            progress(LOOKED * (i + 1) / len(wanted))
        stamps = {path: (mtime, size) for path, mtime, size in new}
        for done, (path, result) in enumerate(self._mark([p for p, _, _ in new], should_stop), start=1):
            results[path] = result
            self._seen[path] = (*stamps[path], result)
            progress(LOOKED + (1.0 - LOOKED) * done / len(new))
        progress(1.0)
        return tuple(results[path] for path in sorted(results))

    def _known(self, path: Path) -> Result | None:
        try:
            digest = sha256(read_bytes(path)).hexdigest()
        except SpecError:
            return None
        assert self._by_digest is not None
        found = self._by_digest.get(digest)
        return None if found is None else replace(found, file=path.name)

    def _mark(self, paths: list[Path], should_stop: ShouldStop) -> Iterator[tuple[Path, Result]]:
        marked: list[Result] = []
        try:
            for path, result in self._each(paths, should_stop):
                marked.append(result)
                yield path, result
        finally:
            self._keep(marked)

    def _each(self, paths: list[Path], should_stop: ShouldStop) -> Iterator[tuple[Path, Result]]:
        rest = paths
        if self._processes and len(paths) > _ALONE:
            done: set[Path] = set()
            try:
                for path, result in self._beside(paths, should_stop):
                    done.add(path)
                    yield path, result
                return
            except (BrokenProcessPool, OSError):
                rest = [p for p in paths if p not in done]  # no processes to be had here: it takes longer
        for path in rest:
            if should_stop():
                raise Cancelled
            yield path, mark_file(path)

    def _beside(self, paths: list[Path], should_stop: ShouldStop) -> Iterator[tuple[Path, Result]]:
        chunks = [paths[i : i + _CHUNK] for i in range(0, len(paths), _CHUNK)]
        context = multiprocessing.get_context("spawn")  # a fork of a program with threads may hang
        pool = ProcessPoolExecutor(min(self._processes, len(chunks)), context, initializer=_end_with_parent)
        try:
            futures: dict[Future[list[Result]], list[Path]] = {pool.submit(mark_files, c): c for c in chunks}
            left = set(futures)
            while left:
                if should_stop():
                    raise Cancelled
                ended, left = wait(left, timeout=0.1, return_when=FIRST_COMPLETED)
                for future in ended:
                    yield from zip(futures[future], future.result(), strict=True)
        finally:
            pool.shutdown(wait=True, cancel_futures=True)

    # ------------------------------------------------------------------ the cache

    @property
    def _key(self) -> str:
        return f"{__version__}/{RULES}/{_RULES}"

    def _load(self) -> dict[str, Result]:
        found: dict[str, Result] = {}
        if self._cache is None:
            return found
        try:
            lines = self._cache.read_bytes().split(b"\n")
        except OSError:
            return found
        head = self._key.encode()
        for line in lines:
            key, _, text = line.partition(b" ")
            if key == head:
                with contextlib.suppress(ValueError):  # a line cut short by a kill
                    result = load_result(text)
                    found[result.digest] = result
        return found

    def _keep(self, results: Iterable[Result]) -> None:
        """Remember marks, here and on disk; a disk that does not take them costs time and nothing else."""
        assert self._by_digest is not None
        new = [r for r in results if r.digest and r.state is State.MARKED and r.digest not in self._by_digest]
        self._by_digest.update((r.digest, r) for r in new)
        if self._cache is None or not new:
            return
        text = "".join(f"\n{self._key} {dump_result(r)}" for r in new) + "\n"
        with contextlib.suppress(OSError):
            self._cache.parent.mkdir(parents=True, exist_ok=True)
            handle = os.open(self._cache, os.O_WRONLY | os.O_CREAT | os.O_APPEND, 0o600)
            try:
                os.write(handle, text.encode())
            finally:
                os.close(handle)


def mark_file(path: Path) -> Result:
    """Mark one file. Never raises for what it may hold."""
    try:
        raw = read_bytes(path)
    except SpecError as error:
        return Result(path.name, "", State.DAMAGED, str(error))
    return result_of(raw, path.name, parse_json)


def mark_files(paths: Sequence[Path]) -> list[Result]:
    """Mark several: one errand of a process."""
    return [mark_file(path) for path in paths]


def _files(folder: Path) -> list[tuple[Path, int, int]]:
    """Path, time [ns] and size of what may be attempts. Names that begin with a full stop are half-written."""
    found = []
    try:
        with os.scandir(folder) as entries:
            for entry in entries:
                if entry.name.startswith(".") or not is_ours(entry.name):
                    continue
                with contextlib.suppress(OSError):  # gone between two looks
                    stat = entry.stat()
                    found.append((folder / entry.name, stat.st_mtime_ns, stat.st_size))
    except OSError as error:
        raise SpecError(
            tr("{folder}: the folder cannot be read: {reason}", folder=folder, reason=error.strerror or str(error))
        ) from error
    return found


def _end_with_parent() -> None:
    """A program that is killed leaves no processes behind that wait for it."""
    parent = multiprocessing.parent_process()

    def watch() -> None:
        if parent is not None:
            parent.join()
            os._exit(1)

    threading.Thread(target=watch, daemon=True).start()
