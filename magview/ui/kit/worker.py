"""Long work beside the window: with progress, and ended when it is no longer wanted."""

from __future__ import annotations

import contextlib
import threading
from collections.abc import Callable
from typing import Any

from PySide6.QtCore import QObject, Signal

Progress = Callable[[float], None]
ShouldStop = Callable[[], bool]
Work = Callable[[Progress, ShouldStop], Any]


class Worker(QObject):
    """Runs one piece of work at a time in a thread of its own; signals arrive in the window's thread."""

    progressed = Signal(float)
    """Share done, 0…1."""
    finished = Signal(object)
    """Sent with the result of the work; not for work that was cancelled."""
    failed = Signal(str)
    """One sentence: why it could not be done."""
    _ended = Signal(int, object, str)

    def __init__(self, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._thread: threading.Thread | None = None
        self._run = 0
        self._stop = threading.Event()
        self._ended.connect(self._end)

    @property
    def busy(self) -> bool:
        """Whether something is being worked at."""
        return self._thread is not None

    def start(self, work: Work) -> None:
        """Begin; what was being worked at is given up."""
        self.cancel()
        self._run += 1
        self._stop = threading.Event()
        self._thread = threading.Thread(target=self._do, args=(work, self._run, self._stop), daemon=True)
        self._thread.start()

    def cancel(self) -> None:
        """Give up what is being worked at, and wait until it has ended."""
        if self._thread is not None:
            self._stop.set()
            self._run += 1  # what it still has to say is not heard
            self._thread.join()
            self._thread = None

    def _do(self, work: Work, run: int, stop: threading.Event) -> None:
        result, failure = None, ""
        try:
            result = work(self._progress(run), stop.is_set)
        except (ValueError, OSError) as error:
            failure = str(error)
        with contextlib.suppress(RuntimeError):  # whoever waited for it has gone with its window
            self._ended.emit(run, result, failure)

    def _progress(self, run: int) -> Progress:
        def report(share: float) -> None:
            if run == self._run:
                with contextlib.suppress(RuntimeError):
                    self.progressed.emit(share)

        return report

    def _end(self, run: int, result: object, failure: str) -> None:
        if run != self._run or self._thread is None:
            return
        self._thread.join()
        self._thread = None
        if failure:
            self.failed.emit(failure)
        else:
            self.finished.emit(result)
