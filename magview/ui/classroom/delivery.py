"""Handing in beside the window: what is done goes into the class's folder, and is tried again until it is there."""

from __future__ import annotations

import contextlib
from collections import deque
from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, QTimer, Signal

from magview.classroom.desk import prepare
from magview.classroom.outbox import Delivery, Outbox
from magview.classroom.sets import ClassSet
from magview.practice.attempt import Attempt
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.worker import Progress, ShouldStop, Work, Worker
from magview.ui.practice.page import PracticePage

RETRY_MS = 20_000
"""Interval after which sending is tried again."""


@dataclass(frozen=True)
class Place:
    """Exercise and set of a practice page, for whom it is done, and where it is handed in."""

    of: ClassSet
    number: int
    pupil: str
    folder: Path


class Courier(QObject):
    """Carries finished attempts. Signals arrive in the window's thread."""

    arrived = Signal(object, object)
    """The `Place` of an attempt, and the `Delivery`: whether it stands in the folder or waits here."""
    failed = Signal(object, str)
    """The `Place`, and why neither folder nor machine took it."""
    retried = Signal(object)
    """A list of `Delivery`: what became of those that waited."""

    def __init__(self, outbox: Outbox, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.outbox = outbox
        self._errands: deque[tuple[Place | None, PracticePage | None, Work]] = deque()
        self._worker = Worker(self)
        self._worker.finished.connect(self._done)
        self._worker.failed.connect(self._not_done)
        self._timer = QTimer(self)
        self._timer.setInterval(RETRY_MS)
        self._timer.timeout.connect(self.retry)

    @property
    def busy(self) -> bool:
        """Whether something is being carried."""
        return bool(self._errands)

    def hand_in(self, place: Place, attempt: Attempt, page: PracticePage | None = None) -> None:
        """Hand in an attempt; `page` is told, and need not ask to save it. Raises SpecError for one that is not
        finished."""
        name, text = prepare(place.of, place.number, place.pupil, attempt)

        def work(progress: Progress, should_stop: ShouldStop) -> Delivery:
            return self.outbox.hand_in(place.folder, name, text)

        self._send(place, page, work)

    def retry(self, folder: Path | None = None) -> None:
        """Try again what waits, in another folder if one is given."""
        if any(place is None for place, _, _ in self._errands):
            return

        def work(progress: Progress, should_stop: ShouldStop) -> list[Delivery]:
            return self.outbox.retry() if folder is None else self.outbox.send_elsewhere(folder)

        self._send(None, None, work)

    def halt(self) -> None:
        """The program ends: what is being written is finished, what stands behind it is written now, and what
        waits stays on this machine."""
        self._timer.stop()
        self._worker.cancel()
        behind = list(self._errands)[1:]
        self._errands.clear()
        for place, _, work in behind:
            if place is not None:
                with contextlib.suppress(SpecError):  # nobody is left to be told; its page still holds it
                    work(lambda share: None, lambda: False)

    def _send(self, place: Place | None, page: PracticePage | None, work: Work) -> None:
        self._errands.append((place, page, work))
        if len(self._errands) == 1:
            self._worker.start(work)

    def _next(self) -> None:
        self._errands.popleft()
        if self._errands:
            self._worker.start(self._errands[0][2])

    def _done(self, result: object) -> None:
        place, page, _ = self._errands[0]
        self._next()
        if isinstance(result, Delivery):
            if page is not None:
                page.kept_elsewhere()
                page.say(delivery_words(result))
            if not result.delivered:
                self._timer.start()
            self.arrived.emit(place, result)
        elif isinstance(result, list):
            if all(d.delivered for d in result):
                self._timer.stop()
            else:
                self._timer.start()
            self.retried.emit(result)

    def _not_done(self, sentence: str) -> None:
        place, page, _ = self._errands[0]
        self._next()
        if page is not None:
            page.say(sentence)
        if place is not None:
            self.failed.emit(place, sentence)

    def attach(self, place: Place, page: PracticePage) -> None:
        """Hand in what a practice page does, as soon as it is handed in there."""

        def acted(act: object, new: object, old: object) -> None:
            if page.model.practice.handed_in:
                self._take(place, page)

        page.model.acted.connect(acted)

    def _take(self, place: Place, page: PracticePage) -> None:
        attempt = page.attempt
        assert attempt is not None
        try:
            self.hand_in(place, attempt, page)
        except SpecError as error:
            page.say(str(error))
            self.failed.emit(place, str(error))


def delivery_words(delivery: Delivery) -> str:
    """Say in a sentence what became of an attempt."""
    if delivery.path is not None:
        return tr("Handed in: {file} stands in {folder}.", file=delivery.name, folder=delivery.folder)
    return tr("Kept on this machine, and tried again every {seconds} seconds: {why}",
              seconds=RETRY_MS // 1000, why=delivery.why)  # fmt: skip
