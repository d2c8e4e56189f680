"""Round the pages of a job sheet: the list of stages, the bar under a stage, the banner over a file in trouble."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QSize, Qt, Signal
from PySide6.QtWidgets import (
    QFrame,
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QProgressBar,
    QPushButton,
    QVBoxLayout,
    QWidget,
)

from magview.job import judge, status
from magview.job.requirements import missing
from magview.job.sheet import STAGES, Job, stage_of
from magview.spec.language import marked, tr, tr_n
from magview.ui.kit.look import Look
from magview.ui.kit.steady_label import SteadyLabel
from magview.ui.kit.strip import Strip
from magview.ui.kit.style import tint
from magview.ui.work.model import NOT_TAKEN, JobModel, part_title

_TITLES = {
    "": marked("Aircraft, engine, magneto"),
    "end": marked("Next check, signature"),
    "history": marked("Earlier sheets"),
    "preview": marked("As printed"),
}


def state_words(job: Job, name: str) -> str:
    """State of a stage, a sign and words."""
    stage, lacks = stage_of(job, name), missing(job, name)
    if stage.state == "skipped":
        return tr("→ skipped: {reason}", reason=stage.reason.splitlines()[0][:60])
    out = status.out_in(job, name)
    if stage.state == "done":
        against = status.done_words(job, name)
        if not status.is_well(job, name):
            return tr("✗ done, but {what}", what=against)
        return tr("△ done; {what}", what=against) if against else tr("✓ done")
    if not stage.model_dump(exclude_defaults=True):
        return tr("○ not begun")
    if out.left:
        return tr("✗ begun; out of limits")
    return tr("◐ begun; {count} missing", count=len(lacks)) if lacks else tr("◐ nothing missing; not marked done")


class Contents(QWidget):
    """All pages, each stage with its state, and how far the sheet has come."""

    chosen = Signal(str)

    def __init__(self, model: JobModel, pages: tuple[str, ...], parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.pages = model, pages
        self._told: dict[str, str] = {}
        self.progress = SteadyLabel()  # the list below stays where the pointer is, whatever is counted
        self.progress.setAccessibleName(tr("Progress"))
        self.bar = QProgressBar()
        self.bar.setRange(0, len(STAGES))
        self.bar.setTextVisible(False)
        self.bar.setMaximumHeight(self.fontMetrics().height() // 2)
        self.bar.setAccessibleName(tr("Stages done or skipped"))
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Stages of the job"))
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        for _ in pages:
            self.list.addItem(QListWidgetItem())
        self.list.currentRowChanged.connect(self._chosen)
        column = QVBoxLayout(self)
        column.setContentsMargins(6, 6, 2, 6)
        column.addWidget(self.progress)
        column.addWidget(self.bar)
        column.addWidget(self.list, 1)
        model.changed.connect(self._changed)
        self._fit()
        self._changed(model.job)

    def choose(self, page: str) -> None:
        """Choose a page."""
        self.list.setCurrentRow(self.pages.index(page))

    def _chosen(self, row: int) -> None:
        self.chosen.emit(self.pages[row])

    def tell(self, page: str, words: str) -> None:
        """Write under the title of a page that is no stage."""
        self._told[page] = words
        self._changed(self._model.job)

    def _changed(self, job: Job, old: Job | None = None) -> None:
        found = judge.progress(job)
        come = len(STAGES) - len(found.open)
        self.bar.setValue(come)
        self._told["end"] = (
            tr("○ not signed") if found.signature is None
            else tr("✓ signed") if found.signature
            else tr("✗ changed since signed")
        )  # fmt: skip
        parts = [tr("{come} of {count} stages done or skipped", come=come, count=len(STAGES))]
        if found.missing:
            parts.append(tr("missing in {count}", count=len(found.missing)))
        if found.out:
            count = len(found.out)
            parts.append(tr_n("{count} reading out", "{count} readings out", count=count))
        most = len(STAGES)
        longest = (
            tr("{come} of {count} stages done or skipped", come=most, count=most),
            tr("missing in {count}", count=most),
            tr("{count} readings out", count=most),
        )
        self.progress.keep_room_for(("; ".join(longest),))
        self.progress.setText("; ".join(parts))
        for row, page in enumerate(self.pages):
            item = self.list.item(row)
            if page in STAGES:
                number = STAGES.index(page) + 1
                text = f"{number}. {part_title(page)}\n     {state_words(job, page)}"
            else:
                told = self._told.get(page, "")
                text = tr(_TITLES[page]) + (f"\n     {told}" if told else "")
            if item.text() != text:
                item.setText(text)

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._fit()

    def _fit(self) -> None:
        self.setMinimumWidth(33 * self.fontMetrics().averageCharWidth())
        self.setMaximumWidth(60 * self.fontMetrics().averageCharWidth())

    def sizeHint(self) -> QSize:
        """As wide as most titles."""
        return QSize(40 * self.fontMetrics().averageCharWidth(), 20 * self.fontMetrics().height())


class StageBar(QFrame):
    """Foot of a stage: what was said last, what is missing; done, skip, open again, next."""

    done_wanted = Signal()
    skip_wanted = Signal()
    open_wanted = Signal()
    next_wanted = Signal()

    def __init__(self, model: JobModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look, self._stage = model, look, ""
        self._qualified = False
        self.setFrameShape(QFrame.Shape.StyledPanel)
        self.said, self.missing = QLabel(), QLabel()
        for label, name in ((self.said, tr("Answer")), (self.missing, tr("Still missing"))):
            label.setWordWrap(True)
            label.setAccessibleName(name)
        self.done, self.skip = QPushButton(tr("Mark as &done")), QPushButton(tr("S&kip…"))
        self.again, self.next = QPushButton(tr("Open a&gain")), QPushButton(tr("Ne&xt page"))
        row = QHBoxLayout()
        row.addWidget(self.missing, 1)
        for button, signal in (
            (self.done, self.done_wanted), (self.skip, self.skip_wanted), (self.again, self.open_wanted),
            (self.next, self.next_wanted),
        ):  # fmt: skip
            button.setAutoDefault(False)
            button.clicked.connect(signal)
            row.addWidget(button)
        column = QVBoxLayout(self)
        column.setContentsMargins(12, 4, 12, 4)
        column.addWidget(self.said)
        column.addLayout(row)
        model.changed.connect(self._changed)
        look.changed.connect(self._look_changed)
        model.pending_changed.connect(self._pending)
        self.say("")

    def show_page(self, stage: str | None) -> None:
        """A stage is in front, or another page."""
        self._stage = stage or ""
        self.say("")
        self._changed(self._model.job)

    def say(self, sentence: str, qualified: bool = False) -> None:
        """One sentence, until another page or another sentence; `qualified`: what is well, but not all of it."""
        self.said.setText(sentence)
        self.said.setVisible(bool(sentence))
        self._qualified = qualified
        good, bad = sentence.startswith("✓") and not qualified, sentence.startswith("✗")
        tint(
            self.said,
            self.look.theme.good if good else self.look.theme.bad if bad else self.look.theme.text,
            bold=True,
        )

    def say_done(self, job: Job, stage: str, who: str = "") -> None:
        """A stage was marked as done, and what stands against it; `who`: by whom, taken from the stage before."""
        against, title = status.done_words(job, stage), part_title(stage)
        if not status.is_well(job, stage):
            self.say(tr("✗ {stage} is marked as done, with {what}.", stage=title, what=against))
        elif against:
            self.say(tr("✓ Done: {stage}; {what}.", stage=title, what=against), qualified=True)
        else:
            self.say(tr("✓ Done: {stage}.", stage=title))
        if who:
            self.say(tr("{said} Done by {who}, as before.", said=self.said.text(), who=who), self._qualified)

    def _look_changed(self) -> None:
        self.say(self.said.text(), self._qualified)
        self._changed(self._model.job)

    def _changed(self, job: Job, old: Job | None = None) -> None:
        writable, stage = self._model.writable, self._stage
        for button in (self.done, self.skip, self.again):
            button.setVisible(bool(stage))
        if not stage:
            self.missing.clear()
            return
        state, lacks = stage_of(job, stage).state, missing(job, stage)
        pending = self._model.pending_in(stage)
        self.done.setEnabled(writable and state == "open")
        self.skip.setEnabled(writable and state != "skipped")
        self.again.setEnabled(writable and state != "open")
        if state == "skipped":
            self.missing.setText(tr("Skipped: {reason}", reason=stage_of(job, stage).reason))
        elif pending:
            self.missing.setText(f"✗ {tr(NOT_TAKEN, what=', '.join(pending))}")
        elif lacks:
            self.missing.setText(tr("Still missing: {what}.", what=", ".join(lacks)))
        else:
            self.missing.setText(self._whole(job, stage, state == "open"))
        bad = self.missing.text().startswith("✗")
        tint(self.missing, self.look.theme.bad if bad else self.look.theme.text, bold=bad)

    def _pending(self) -> None:
        self._changed(self._model.job)

    @staticmethod
    def _whole(job: Job, stage: str, is_open: bool) -> str:
        """Of a stage that lacks nothing; one with readings out is never said to be simply done."""
        against = status.done_words(job, stage)
        if not status.is_well(job, stage):
            return (
                tr("✗ Nothing is missing, but {what}.", what=against)
                if is_open
                else tr("✗ Done, but {what}.", what=against)
            )
        if against:
            return (
                tr("✓ Nothing is missing; {what}.", what=against) if is_open else tr("△ Done; {what}.", what=against)
            )
        return tr("✓ Nothing is missing.") if is_open else tr("✓ Done.")


class Danger(Strip):
    """Over every page: what on the sheet is dangerous, and that it was signed under earlier rules."""

    def __init__(self, model: JobModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(look, parent)
        self.notes.setAccessibleName(tr("Earlier rules"))
        model.changed.connect(self._changed)
        self._changed(model.job)

    def _changed(self, job: Job, old: Job | None = None) -> None:
        self.show_causes(status.dangers(job), status.earlier(job))


class Banner(QFrame):
    """Over the pages, while the file is not as the screen is: why, and what can be done."""

    retry_wanted = Signal()
    save_as_wanted = Signal()
    reload_wanted = Signal()

    def __init__(self, model: JobModel, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self._conflict = model, False
        self.setFrameShape(QFrame.Shape.Box)
        self.setLineWidth(2)
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.words.setAccessibleName(tr("State of the file"))
        font = self.words.font()
        font.setBold(True)
        self.words.setFont(font)
        self.retry, self.save_as = QPushButton(tr("&Try again")), QPushButton(tr("Save &as…"))
        self.reload = QPushButton(tr("&Reload"))
        row = QHBoxLayout(self)
        row.addWidget(self.words, 1)
        for button, signal in (
            (self.retry, self.retry_wanted), (self.save_as, self.save_as_wanted), (self.reload, self.reload_wanted)
        ):  # fmt: skip
            button.setAutoDefault(False)
            button.clicked.connect(signal)
            row.addWidget(button)
        model.changed.connect(self._changed)
        self._changed(model.job)

    def show_conflict(self, conflict: bool) -> None:
        """Another program has changed the file, or not."""
        self._conflict = conflict
        self._changed(self._model.job)

    def _changed(self, job: Job, old: Job | None = None) -> None:
        store = self._model.store
        if store.trouble is not None:
            self._conflict = store.changed_on_disk()
            text = tr("✗ Not saved: {sentence}.", sentence=store.trouble)
        elif store.read_only is not None:
            text = tr("Read only: {sentence}.", sentence=store.read_only)
        elif self._conflict:
            text = tr(
                "{file} was changed by another program while it was open here; reload it, or save elsewhere.",
                file=store.path.name,
            )
        else:
            text = ""
        self.words.setText(text)
        self.retry.setVisible(store.trouble is not None and not self._conflict)
        self.reload.setVisible(not self._model.fixed and (self._conflict or store.read_only is not None))
        self.setVisible(bool(text))
