"""A job's store as a Qt object: one `changed` signal, refusals as sentences, every step in the file."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import Any

from PySide6.QtCore import QObject, Signal

from magview.forms.draft import labelled
from magview.job import judge
from magview.job.offered import as_before
from magview.job.readings import ReadingRow, rows
from magview.job.sheet import Job, change, change_in, open_again, title_of
from magview.job.store import JobStore
from magview.spec.base import Model, SpecError
from magview.spec.language import marked, tr

HEAD = ""
"""The part that the sheet's own title and date stand in."""


NOT_TAKEN = marked("Not taken yet: {what}. Correct it, or press Escape in its field to put back what was there.")


def part_of(job: Job, part: str) -> Model:
    """A part of the sheet by its name; the sheet itself for HEAD."""
    found = job if part == HEAD else getattr(job, part)
    assert isinstance(found, Model)
    return found


def part_title(part: str) -> str:
    """Return the name of a part for people."""
    return tr("Job sheet") if part == HEAD else tr(title_of(part))


def plain(error: SpecError) -> str:
    """A refusal with fields named by their labels, and no name of a file where there is none yet."""
    return labelled(Job, str(error).removeprefix("this sheet: "))


def _done(job: Job, stage: str) -> Job:
    """The sheet with a stage done; where it does not say by whom, by whoever did the one before."""
    who = as_before(job, stage)
    done = judge.finish(job, stage)
    return change_in(done, stage, by=who) if who else done


class JobModel(QObject):
    """Owns one open job sheet. What it takes is in the file when a call returns, or `store.trouble` says why not."""

    changed = Signal(object, object)
    """The sheet as it is, and as it was; also sent when the state of the file changed."""
    refused = Signal(str)
    """One sentence: why something was not done."""
    righted = Signal()
    """An entry that was refused is right now, or gone."""
    pending_changed = Signal()
    """Entries that were not taken stand in their fields, or do so no more."""

    def __init__(self, store: JobStore, fixed: bool = False, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self.store = store
        self.fixed = fixed
        """Whether the file ships with the program: it is never written, and so never reloaded for writing."""
        self.pending: dict[tuple[str, str], str] = {}
        """Entries that were typed and not taken, by part and field: what each is called."""
        self._rows: tuple[Job, dict[tuple[str, str], ReadingRow]] | None = None
        store.subscribe(self._tell)

    def _tell(self, new: Job, old: Job) -> None:
        self.changed.emit(new, old)

    @property
    def job(self) -> Job:
        """The sheet."""
        return self.store.job

    @property
    def writable(self) -> bool:
        """Whether the sheet can be changed here."""
        return self.store.read_only is None

    def rows(self) -> dict[tuple[str, str], ReadingRow]:
        """Every reading of the sheet with its verdict, by stage and field; made once for each state of the sheet."""
        if self._rows is None or self._rows[0] is not self.job:
            self._rows = (self.job, {(row.stage, row.field): row for row in rows(self.job)})
        return self._rows[1]

    def hold(self, part: str, field: str, title: str) -> None:
        """Remember that a field's text was not taken and still stands there."""
        self.pending[part, field] = title
        self.pending_changed.emit()

    def let_go(self, part: str, field: str) -> None:
        """Remember that a field holds what is on the sheet."""
        if self.pending.pop((part, field), None) is not None:
            self.righted.emit()
            self.pending_changed.emit()

    def pending_in(self, part: str) -> tuple[str, ...]:
        """Names of the fields of a part that hold something not taken."""
        return tuple(title for (where, _), title in self.pending.items() if where == part)

    def reload(self) -> None:
        """Take what is in the file now."""
        if not self.fixed:
            self._try(self.store.reload)

    # -------------------------------------------------------------- taking steps

    def commit(self, make: Callable[[Job], Job], name: str) -> str:
        """Take a step; what stood in its way as one sentence, or nothing."""
        try:
            self.store.commit(make(self.job), name)
        except SpecError as error:
            return plain(error)
        return ""

    def step(self, make: Callable[[Job], Job], name: str) -> bool:
        """Take a step, or say why not."""
        sentence = self.commit(make, name)
        if sentence:
            self.refused.emit(sentence)
        return not sentence

    def with_value(self, part: str, field: str, value: Any) -> Job:
        """The sheet with one field changed. Raises SpecError for a value it does not take."""
        values = {field: value}
        return change(self.job, **values) if part == HEAD else change_in(self.job, part, **values)

    def set_value(self, part: str, field: str, value: Any, title: str) -> str:
        """Change one field; what stood in its way as one sentence, or nothing."""
        if getattr(part_of(self.job, part), field) == value:
            return ""
        name = tr("{part}: {field}", part=part_title(part), field=title)
        return self.commit(lambda _: self.with_value(part, field, value), name)

    def finish(self, stage: str) -> bool:
        """Mark a stage as done, or say what is missing or was not taken."""
        pending = self.pending_in(stage)
        if pending:
            self.refused.emit(tr(NOT_TAKEN, what=", ".join(pending)))
            return False
        return self.step(partial(_done, stage=stage), tr("{stage}: done", stage=part_title(stage)))

    def skip(self, stage: str, reason: str) -> bool:
        """Skip a stage for a reason."""
        name = tr("{stage}: skipped", stage=part_title(stage))
        return self.step(lambda job: judge.skip(job, stage, reason.strip()), name)

    def open_again(self, stage: str) -> bool:
        """Open a stage that was done or skipped."""
        return self.step(
            lambda job: open_again(job, stage), tr("{stage}: opened again", stage=part_title(stage))
        )  # fmt: skip

    # -------------------------------------------------------------- back, forward, the file

    def undo(self) -> None:
        """Go back one step."""
        self._try(self.store.undo)

    def redo(self) -> None:
        """Go forward one step again."""
        self._try(self.store.redo)

    def retry(self) -> None:
        """Try again to write."""
        self._try(self.store.retry)

    def save_as(self, path: Path) -> bool:
        """Go on in another file."""
        was, self.fixed = self.fixed, False
        if self._try(lambda: self.store.save_as(path)):
            return True
        self.fixed = was
        return False

    def _try(self, act: Callable[[], None]) -> bool:
        try:
            act()
        except SpecError as error:
            self.refused.emit(plain(error))
            return False
        return True
