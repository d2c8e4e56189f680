"""One writer for one file: a lock beside it, which the system releases when its program ends, however it ends."""

from __future__ import annotations

import contextlib
import errno
import os
from pathlib import Path

_NO_LOCKS = {errno.ENOSYS, errno.ENOLCK, errno.EOPNOTSUPP, errno.EINVAL}


class Held(Exception):
    """Another program, or another window of this one, has the lock."""


class Lock:
    """A lock, held from the moment it is made. Raises Held where it is taken, OSError where no file can be written.

    Some network drives and sticks know no locks: there nobody is kept out, and work goes on.
    """

    def __init__(self, path: Path) -> None:
        from filelock import FileLock, Timeout  # long to import, and the start needs no lock

        if not path.parent.is_dir():  # the package would make it, and with it the folder of a drive that is gone
            raise FileNotFoundError(errno.ENOENT, os.strerror(errno.ENOENT), str(path))
        self._path = path
        self._lock = FileLock(path, timeout=0, fallback_to_soft=False)
        try:
            self._lock.acquire()
        except Timeout as error:
            raise Held from error
        except OSError as error:
            if error.errno not in _NO_LOCKS:
                raise

    @property
    def held(self) -> bool:
        """Whether others are kept out: False where the drive knows no locks, and after it was let go."""
        return self._lock.is_locked

    def release(self) -> None:
        """Let others have it, and take the lock file away."""
        if os.name != "nt":  # Windows takes it away by itself, once it is closed
            with contextlib.suppress(OSError):  # while it is held: whoever waits for it sees that it is gone
                self._path.unlink(missing_ok=True)
        self.let_go()

    def let_go(self) -> None:
        """Let others have it, and leave the lock file."""
        self._lock.release()
