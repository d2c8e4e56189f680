"""One writer for one file: an advisory lock beside it, gone with the program that held it."""

from __future__ import annotations

import contextlib
import errno
import os
from pathlib import Path

_HELD = {errno.EWOULDBLOCK, errno.EAGAIN, errno.EACCES, errno.EDEADLK}


class Held(Exception):
    """Another program, or another window of this one, has the lock."""


class Lock:
    """The lock of a file. Raises Held where it is taken, OSError where the folder does not take a lock file."""

    def __init__(self, path: Path) -> None:
        self._path = path.with_name(f".{path.name}.lock")
        self._handle: int | None = self._take()

    def _take(self) -> int:
        while True:
            handle = os.open(self._path, os.O_RDWR | os.O_CREAT, 0o666)
            try:
                _lock(handle)
                # Its last owner may have taken the file away between our opening and locking it.
                if os.name == "nt" or _same(handle, self._path):
                    return handle
            except OSError as error:
                os.close(handle)
                if error.errno in _HELD:
                    raise Held from error
                raise
            os.close(handle)

    def release(self) -> None:
        """Let others write."""
        if self._handle is None:
            return
        with contextlib.suppress(OSError):  # while it is still locked, or the next owner's file would go
            if os.name != "nt" and _same(self._handle, self._path):
                self._path.unlink(missing_ok=True)
        with contextlib.suppress(OSError):
            os.close(self._handle)
        self._handle = None
        if os.name == "nt":
            with contextlib.suppress(OSError):
                self._path.unlink(missing_ok=True)


def _lock(handle: int) -> None:
    if os.name == "nt":
        import msvcrt

        msvcrt.locking(handle, msvcrt.LK_NBLCK, 1)  # type: ignore[attr-defined, unused-ignore]
    else:
        import fcntl

        try:
            fcntl.flock(handle, fcntl.LOCK_EX | fcntl.LOCK_NB)
        except OSError as error:
            # Some network drives and sticks know no locks: then there is none, and work goes on.
            if error.errno in _HELD:
                raise


def _same(handle: int, path: Path) -> bool:
    try:
        there, ours = os.stat(path), os.fstat(handle)
    except OSError:
        return False
    return (there.st_dev, there.st_ino) == (ours.st_dev, ours.st_ino)
