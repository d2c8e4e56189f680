"""Trace of a crash that ends the program at once. Opened before the first picture, so it needs nothing."""

from __future__ import annotations

import contextlib
import os
import time
from pathlib import Path
from typing import IO


class Trace:
    """A file that only a program ended by the system (a bad access of memory) writes into."""

    def __init__(self, path: Path, file: IO[str]) -> None:
        self.path, self.file = path, file

    def discard(self) -> None:
        """The program ends by itself: there is nothing to tell."""
        with contextlib.suppress(OSError):
            self.file.close()
            self.path.unlink()


def open_trace(folder: Path) -> Trace | None:
    """Open one for this program; None where nothing can be written."""
    path = folder / f"trace-{os.getpid()}-{time.time_ns()}.txt"
    try:
        folder.mkdir(parents=True, exist_ok=True)
        return Trace(path, path.open("w", encoding="utf-8"))
    except OSError:
        return None
