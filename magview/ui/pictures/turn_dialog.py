"""Dialog that asks for a turn of a picture, and writes it beside the window's other work."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from functools import partial
from pathlib import Path

from PySide6.QtCore import QTimer, Signal
from PySide6.QtGui import QCloseEvent, QImage
from PySide6.QtWidgets import (
    QDialog,
    QDialogButtonBox,
    QFormLayout,
    QLabel,
    QProgressBar,
    QPushButton,
    QSpinBox,
    QVBoxLayout,
    QWidget,
)

from magview.bench.state import BenchState
from magview.spec.base import SpecError
from magview.spec.language import tr, tr_n
from magview.ui.kit.asking import ask_save, may_replace
from magview.ui.kit.inputs import AngleSpin, QuietCombo
from magview.ui.kit.worker import Progress, ShouldStop, Worker
from magview.ui.pictures.export import Drawn
from magview.ui.pictures.turn_export import (
    MOST_FRAMES,
    WIDTHS_PX,
    Turn,
    check_turn,
    frame_path,
    frames,
    write_animation,
    write_frame,
)

_DRAWING_SHARE = 80
"""Of the progress, what is reached when all frames are drawn [%]."""


class TurnDialog(QDialog):
    """Dialog for a picture, the rotor's first and last angle in it, frames, width, and kind of file."""

    said = Signal(str)
    """One sentence about what was done."""

    def __init__(
        self, pictures: Mapping[str, Drawn], state: BenchState, caption: str, parent: QWidget | None = None
    ) -> None:
        super().__init__(parent)
        self._pictures, self._state, self._caption = dict(pictures), state, caption
        self.setWindowTitle(tr("Save a turn of a picture"))
        self._drawing: Iterator[QImage] | None = None
        self._drawn: list[QImage] = []
        self._written: list[Path] = []
        self._target = Path()
        self._turn = Turn(0.0, 0.0, 0, 0)
        self._next = QTimer(self)
        self._next.setInterval(0)
        self._next.timeout.connect(self._draw_one)
        self._worker = Worker(self)
        self._worker.finished.connect(self._done)
        self._worker.failed.connect(self._refuse)
        self._build()

    def _build(self) -> None:
        self.picture, self.kind = QuietCombo(), QuietCombo()
        self.picture.addItems(list(self._pictures))
        self.kind.addItems([tr("one animated PNG"), tr("a series of numbered PNGs")])
        self.start, self.end = AngleSpin(1.0, -7200.0, 7200.0), AngleSpin(1.0, -7200.0, 7200.0)
        self.count, self.width_px = QSpinBox(), QSpinBox()
        here = self._state.rotor_deg
        for spin, value in ((self.start, here), (self.end, here + 90.0)):
            spin.show_value(value)
            spin.said.connect(self._tell)
        self.count.setRange(1, 9999)
        self.count.setValue(24)
        self.width_px.setRange(1, 99_999)
        self.width_px.setValue(640)
        self.count.setToolTip(tr("2 to {most}", most=MOST_FRAMES))
        self.width_px.setToolTip(tr("{low} to {high}", low=WIDTHS_PX[0], high=WIDTHS_PX[1]))
        form = QFormLayout()
        for text, field in (
            (tr("&Picture"), self.picture), (tr("Rotor &from"), self.start), (tr("Rotor &to"), self.end),
            (tr("F&rames"), self.count), (tr("&Width in pixels"), self.width_px), (tr("&As"), self.kind),
        ):  # fmt: skip
            form.addRow(text, field)
            field.setAccessibleName(text.replace("&", ""))
        self.answer = QLabel()
        self.answer.setWordWrap(True)
        self.progress = QProgressBar()
        self.progress.setAccessibleName(tr("Progress"))
        self.progress.hide()
        self.save_button, self.cancel_button = QPushButton(tr("&Save as…")), QPushButton(tr("Cancel"))
        self.save_button.setDefault(True)
        self.cancel_button.setAutoDefault(False)
        self.save_button.clicked.connect(self.ask)
        self.cancel_button.clicked.connect(self.cancel)
        buttons = QDialogButtonBox()
        buttons.addButton(self.save_button, QDialogButtonBox.ButtonRole.ActionRole)
        buttons.addButton(self.cancel_button, QDialogButtonBox.ButtonRole.ActionRole)
        column = QVBoxLayout(self)
        column.addLayout(form)
        column.addWidget(self.answer)
        column.addWidget(self.progress)
        column.addWidget(buttons)

    # -------------------------------------------------------------- asking

    @property
    def _view(self) -> Drawn:
        return self._pictures[self.picture.currentText()]

    @property
    def _is_series(self) -> bool:
        return self.kind.currentIndex() == 1

    def ask(self) -> None:
        """Ask where, unless the turn is refused already."""
        self._turn = Turn(self.start.exact, self.end.exact, self.count.value(), self.width_px.value())
        try:
            check_turn(self._turn, self._view, self._caption)
        except SpecError as error:
            self._refuse(str(error))
            return
        path = ask_save(self, self.windowTitle(), "turn.png", tr("PNG (*.png)"), asks_itself=self._is_series)
        if path is not None:
            self.save(path)

    def save(self, path: Path) -> None:
        """Draw the frames one after another, and write them there."""
        self._turn = Turn(self.start.exact, self.end.exact, self.count.value(), self.width_px.value())
        first = frame_path(path, 1)
        if self._is_series and first.exists() and not may_replace(self, first):
            return
        try:
            check_turn(self._turn, self._view, self._caption)
            if path.suffix.lower() != ".png":
                raise SpecError(tr("{name}: a turn's name must end in .png, such as turn.png", name=path.name))
        except SpecError as error:
            self._refuse(str(error))
            return
        self._target, self._drawn, self._written = path, [], []
        self._drawing = frames(self._view, self._state, self._turn, self._caption)
        self._set_busy(True)
        self._next.start()

    # -------------------------------------------------------------- at work

    @property
    def busy(self) -> bool:
        """Whether frames are being drawn or written."""
        return self._drawing is not None or self._worker.busy

    def _set_busy(self, busy: bool) -> None:
        self.answer.setText("")
        self.progress.setVisible(busy)
        self.progress.setValue(0)
        for field in (self.picture, self.start, self.end, self.count, self.width_px, self.kind, self.save_button):
            field.setEnabled(not busy)

    def _draw_one(self) -> None:
        assert self._drawing is not None
        try:
            image = next(self._drawing, None)
            if image is not None and self._is_series:
                path = frame_path(self._target, len(self._written) + 1)
                write_frame(path, image)
                self._written.append(path)
            elif image is not None:
                self._drawn.append(image)
        except SpecError as error:
            self._refuse(str(error))
            return
        done = len(self._written) if self._is_series else len(self._drawn)
        self.progress.setValue(round((100 if self._is_series else _DRAWING_SHARE) * done / self._turn.frames))
        if image is not None:
            return
        self._next.stop()
        self._drawing = None
        if self._is_series:
            self._done(None)
        else:
            self._worker.start(partial(_write, self._target, self._drawn))

    def _done(self, _result: object) -> None:
        self._set_busy(False)
        self._drawn = []
        if self._is_series:
            count, name = len(self._written), frame_path(self._target, 1).name
            self.said.emit(
                tr_n("Saved {count} picture, {name}.", "Saved {count} pictures from {name} on.",
                     count=count, name=name)
            )  # fmt: skip
        else:
            self.said.emit(tr("Saved {name}.", name=self._target.name))
        self.accept()

    def _refuse(self, sentence: str) -> None:
        self._stop()
        self._tell(sentence)

    def _tell(self, sentence: str) -> None:
        self.answer.setText(sentence)

    def _stop(self) -> None:
        """Give up; no frame of an unfinished series is left."""
        unfinished = self._drawing is not None
        self._next.stop()
        self._drawing = None
        self._worker.cancel()
        if unfinished:
            for path in self._written:
                path.unlink(missing_ok=True)
        self._drawn, self._written = [], []
        self._set_busy(False)

    def cancel(self) -> None:
        """Give up what is being written; where nothing is, close."""
        if self.busy:
            self._stop()
            self._tell(tr("Given up; nothing was saved."))
        else:
            self.reject()

    def reject(self) -> None:
        """Close, and give up what is being written."""
        self._stop()
        super().reject()

    def closeEvent(self, event: QCloseEvent) -> None:
        """Give up what is being written."""
        self._stop()
        super().closeEvent(event)


def _write(path: Path, images: list[QImage], progress: Progress, unwanted: ShouldStop) -> None:
    write_animation(path, images, unwanted)
