"""Pages of the job sheet: whose it is, and one for each stage with what the bench has for it."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QSize, Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QGridLayout,
    QGroupBox,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QVBoxLayout,
    QWidget,
)

from magview.job.entries import HEAD_PARTS
from magview.job.feeds import Feed, feeds_of
from magview.job.instruments import SEPARATOR
from magview.job.read_with import field_of, last_used, names_in, with_instruments
from magview.job.sheet import CAUTIONS, Job, title_of
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.work.form import Form
from magview.ui.work.model import HEAD, JobModel, part_title
from magview.ui.work.photographs import PhotographBox

_IN_A_ROW = 3
"""Buttons beside each other, so that they have room at large type."""


def cautions_frame() -> QFrame:
    """All cautions, numbered, in a frame."""
    frame = QFrame()
    frame.setFrameShape(QFrame.Shape.Box)
    column = QVBoxLayout(frame)
    column.setContentsMargins(8, 6, 8, 6)
    label = QLabel("\n".join(f"⚠ {number}. {tr(text)}" for number, text in enumerate(CAUTIONS, 1)))
    label.setWordWrap(True)
    label.setAccessibleName(tr("Cautions"))
    column.addWidget(label)
    return frame


class Page(QScrollArea):
    """Page at the right of the list: a column that scrolls where it has not room, and never sideways."""

    def __init__(self, title: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self.setWidgetResizable(True)
        self.setFrameShape(QScrollArea.Shape.NoFrame)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAsNeeded)
        self.inner = QWidget()
        self.column = QVBoxLayout(self.inner)
        self.column.setContentsMargins(12, 8, 12, 8)
        self.heading = QLabel(title)
        self.heading.setWordWrap(True)
        font = self.heading.font()
        font.setBold(True)
        self.heading.setFont(font)
        self.column.addWidget(self.heading)
        self.setWidget(self.inner)

    def forms(self) -> list[Form]:
        """The forms on this page."""
        return self.inner.findChildren(Form)

    def finish(self) -> None:
        """Take what is still being typed."""
        for form in self.forms():
            form.finish()

    def halt(self) -> None:
        """The window closes."""

    def minimumSizeHint(self) -> QSize:
        """A page may be small: it scrolls."""
        return QSize(20 * self.fontMetrics().averageCharWidth(), 6 * self.fontMetrics().height())


class FeedBox(QWidget):
    """Buttons that note what the bench has."""

    wanted = Signal(object)
    """A feed."""

    def __init__(self, model: JobModel, page: str, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model = model
        self.buttons: dict[str, QPushButton] = {}
        grid = QGridLayout(self)
        grid.setContentsMargins(0, 0, 0, 0)
        grid.setSpacing(4)
        grid.setColumnStretch(_IN_A_ROW + 1, 1)
        grid.addWidget(QLabel(tr("Note from the bench:")), 0, 0)
        for place, feed in enumerate(feeds_of(page)):
            grid.addWidget(self._button(feed), place // _IN_A_ROW, 1 + place % _IN_A_ROW)
        self.setEnabled(model.writable)
        model.changed.connect(self._changed)

    def _button(self, feed: Feed) -> QPushButton:
        button = self.buttons[feed.key] = QPushButton(feed.words)
        button.setAutoDefault(False)
        button.setToolTip(tr(feed.tip))
        button.setAccessibleName(tr("Note from the bench: {what}", what=feed.words))
        button.clicked.connect(partial(self._pressed, feed))
        return button

    def _changed(self, job: Job, old: Job) -> None:
        self.setEnabled(self._model.writable)

    def _pressed(self, feed: Feed) -> None:
        self.wanted.emit(feed)


class StagePage(Page):
    """One stage: what the bench has for it, and its entries."""

    feed_wanted = Signal(object)
    instruments_wanted = Signal(str)
    """Instruments are to be chosen for this stage."""

    def __init__(self, model: JobModel, stage: str, look: Look) -> None:
        super().__init__(part_title(stage))
        self.model, self.stage = model, stage
        self.feeds = FeedBox(model, stage)
        self.feeds.wanted.connect(self.feed_wanted)
        self.form = Form(model, stage, look)
        if stage == "cautions":
            self.column.addWidget(cautions_frame())
        if self.feeds.buttons:
            self.column.addWidget(self.feeds)
        if field_of(stage) in self.form.entries:
            self.column.addWidget(self._build_read_with())
        self.column.addWidget(self.form)
        if stage == "marks":
            self.photographs = PhotographBox(model, look)
            self.column.addWidget(self.photographs)
        self.column.addStretch(1)

    def _build_read_with(self) -> QWidget:
        box = QWidget()
        row = QHBoxLayout(box)
        row.setContentsMargins(0, 0, 0, 0)
        self.choose, self.again = QPushButton(tr("Read &with…")), QPushButton()
        self.choose.setToolTip(tr("Choose from the instruments of your own"))
        self.choose.clicked.connect(lambda: self.instruments_wanted.emit(self.stage))
        self.again.clicked.connect(self._use_again)
        for button in (self.choose, self.again):
            button.setAutoDefault(False)
            row.addWidget(button)
        row.addStretch(1)
        self.model.changed.connect(self._show_again)
        self._show_again(self.model.job, self.model.job)
        return box

    def _show_again(self, job: Job, old: Job) -> None:
        """Offer what the stage before was read with, while this one names nothing."""
        names = SEPARATOR.join(instrument.name for instrument in last_used(job, self.stage))
        self.again.setText(tr("As before: {instruments}", instruments=names.replace("&", "&&")))
        self.again.setVisible(bool(names) and not names_in(job, self.stage))
        for button in (self.choose, self.again):
            button.setEnabled(self.model.writable)

    def _use_again(self) -> None:
        def again(job: Job) -> Job:
            return with_instruments(job, self.stage, last_used(job, self.stage))

        self.model.step(again, tr("{stage}: instruments", stage=part_title(self.stage)))


class HeadPage(Page):
    """Whose it is, and what readings are judged by."""

    feed_wanted = Signal(object)

    def __init__(self, model: JobModel, look: Look) -> None:
        super().__init__(tr("Aircraft, engine, magneto and limits"))
        self.model = model
        self.column.addWidget(cautions_frame())
        self.form = Form(model, HEAD, look)
        self.column.addWidget(self.form)
        self.feeds = FeedBox(model, HEAD)
        self.feeds.wanted.connect(self.feed_wanted)
        self.described = QLabel()
        self.described.setWordWrap(True)
        for part in HEAD_PARTS:
            box = QGroupBox(tr(title_of(part)))
            column = QVBoxLayout(box)
            if part == "limits":
                column.addWidget(self.feeds)
                column.addWidget(self.described)
            column.addWidget(Form(model, part, look))
            self.column.addWidget(box)
        self.column.addStretch(1)
        model.changed.connect(self._changed)
        self._changed(model.job)

    def _changed(self, job: Job, old: Job | None = None) -> None:
        magneto = job.described
        if magneto is None:
            text = tr(
                "The sheet does not say yet which magneto the bench worked with; without it there are no drawings, "
                "and limits are as entered from the maker's manual."
            )
        elif job.installation is not None:
            text = tr(
                "On the bench: {magneto}, on {engine}.", magneto=magneto.name, engine=job.installation.engine.name
            )
        else:
            text = tr("On the bench: {magneto}.", magneto=magneto.name)
        self.described.setText(text)
