"""Faults of the program itself: a report is kept, one sentence said, and the window lives on.

Installed before Qt is asked for anything; all it needs beyond that is imported when something has happened.
"""

from __future__ import annotations

import contextlib
import faulthandler
import os
import sys
import threading
from collections.abc import Callable, Iterable
from pathlib import Path
from types import TracebackType

from PySide6.QtCore import QMessageLogContext, QObject, QtMsgType, Signal, qInstallMessageHandler

from magview.spec.language import tr
from magview.upkeep.trace import Trace, open_trace

MOST_REPORTS = 5
"""Reports of one run: what goes wrong at every painting is told once, and a program in pieces not for ever."""


class Mishaps(QObject):
    """Takes every uncaught exception of the process, in whatever thread, what Qt complains of, and fatal signals."""

    _elsewhere = Signal(object)
    """An exception of another thread; Qt carries it into the window's."""

    def __init__(self, folder: Path) -> None:
        """`folder`: where reports are kept."""
        super().__init__()
        self._folder = folder
        self._seen: set[tuple[str, int]] = set()
        self._trace: Trace | None = None
        self._busy = False
        self._elsewhere.connect(self._take)
        self.tell: Callable[[str], None] = _nobody
        """Puts one sentence where the person sees it."""
        self.acts: Callable[[], Iterable[object]] = acts_of_windows
        """Acts so far, oldest first."""

    def watch(self) -> None:
        """Begin."""
        sys.excepthook = self._uncaught
        threading.excepthook = self._in_thread
        sys.unraisablehook = self._unraisable
        qInstallMessageHandler(self._complaint)
        self._trace = open_trace(self._folder)
        if self._trace is not None:
            faulthandler.enable(self._trace.file)

    def end(self) -> None:
        """The program ends as it should."""
        sys.excepthook, threading.excepthook = sys.__excepthook__, threading.__excepthook__
        sys.unraisablehook = sys.__unraisablehook__
        qInstallMessageHandler(None)
        if self._trace is not None:
            faulthandler.disable()
            self._trace.discard()
            self._trace = None

    # -------------------------------------------------------------- hooks

    def _uncaught(self, kind: type[BaseException], error: BaseException, trace: TracebackType | None) -> None:
        if issubclass(kind, KeyboardInterrupt) or self._busy:
            sys.__excepthook__(kind, error, trace)  # the reporting itself is at fault: as Python would
        else:
            self._take(error.with_traceback(trace))

    def _in_thread(self, args: threading.ExceptHookArgs) -> None:
        if args.exc_value is not None and not issubclass(args.exc_type, SystemExit):
            self._elsewhere.emit(args.exc_value)

    def _unraisable(self, args: sys.UnraisableHookArgs) -> None:
        if args.exc_value is not None:  # Python goes on by itself; nothing of the person's is lost
            with contextlib.suppress(Exception):
                from magview.upkeep.reports import trace_text

                note(40, trace_text(args.exc_value))

    def _complaint(self, kind: QtMsgType, context: QMessageLogContext, text: str) -> None:
        if sys.stderr is not None:  # a window without a console has none
            sys.stderr.write(f"{text}\n")
        level = {QtMsgType.QtInfoMsg: 20, QtMsgType.QtWarningMsg: 30, QtMsgType.QtCriticalMsg: 40}.get(kind)
        if level is not None:
            with contextlib.suppress(Exception):
                from magview.upkeep.reports import scrubbed

                note(level, scrubbed(text))
        elif kind == QtMsgType.QtFatalMsg:
            # Qt would abort the process; the preflight names what is missing, this is the net below it.
            with contextlib.suppress(Exception):
                from magview.upkeep.reports import end_text, keep

                keep(self._folder, end_text(text))
            if self._trace is not None:
                self._trace.discard()
            os._exit(2)

    # -------------------------------------------------------------- reporting

    def _take(self, error: BaseException) -> None:
        self._busy = True
        try:
            self._report(error)
        except Exception:
            sys.__excepthook__(type(error), error, error.__traceback__)
        finally:
            self._busy = False

    def _report(self, error: BaseException) -> None:
        from magview.spec.base import SpecError
        from magview.upkeep.reports import fault_text, keep, trace_text

        place = _place_of(error)
        if place in self._seen or len(self._seen) >= MOST_REPORTS:
            return
        self._seen.add(place)
        note(40, trace_text(error))
        if sys.flags.dev_mode:
            sys.__excepthook__(type(error), error, error.__traceback__)
        try:
            acts = list(self.acts())
        except Exception:  # what is at fault may be what knows them
            acts = []
        try:
            path = keep(self._folder, fault_text(error, acts))
        except SpecError as reason:
            self.tell(
                tr(
                    "something in the program went wrong; look whether what you did last is done. No report of it "
                    "could be kept: {reason}",
                    reason=reason,
                )
            )
            return
        sys.stderr.write(tr("magview: a report of a fault in the program was kept: {file}", file=path) + "\n")
        self.tell(
            tr(
                "something in the program went wrong; look whether what you did last is done. A report was kept: "
                "Help, Fault reports"
            )
        )


def _nobody(sentence: str) -> None:
    """There is no window yet; the report is there, and the terminal has been told."""


def _place_of(error: BaseException) -> tuple[str, int]:
    trace = error.__traceback__
    while trace is not None and trace.tb_next is not None:
        trace = trace.tb_next
    return ("", 0) if trace is None else (trace.tb_frame.f_code.co_filename, trace.tb_lineno)


def note(level: int, text: str) -> None:
    """Put something into the log."""
    import logging

    logging.getLogger("magview").log(level, "%s", text)


def acts_of_windows() -> list[object]:
    """Return the last acts on the benches and in the practice windows that are open: each window's, oldest first."""
    from PySide6.QtWidgets import QApplication

    acts: list[object] = []
    # A report keeps the last acts: those of the window in front come last. One put away may still await its end.
    shown = [widget for widget in QApplication.topLevelWidgets() if widget.isVisible()]
    for widget in sorted(shown, key=lambda widget: widget.isActiveWindow()):
        model = getattr(widget, "model", None)
        store, session = getattr(model, "store", None), getattr(model, "session", None)
        if store is not None:
            acts += [event for event, _ in store.journal[-200:]]
        elif session is not None:
            acts += [event.act for event in session.attempt.events[-200:]]
    return acts
