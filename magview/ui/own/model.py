"""The drafts of one's own as a Qt object: one signal, a history, and where each was saved."""

from __future__ import annotations

from dataclasses import dataclass
from pathlib import Path

from PySide6.QtCore import QObject, Signal

from magview.forms.entry import Value
from magview.own.drafts import Checked, Draft, Note, Own, check, with_note, with_value
from magview.own.fields import KINDS, Kind, entries
from magview.own.files import file_text
from magview.spec.base import SpecError
from magview.spec.files import read_bytes, write_text
from magview.spec.history import History, Step
from magview.spec.language import tr


@dataclass(frozen=True)
class _File:
    path: Path
    text: bytes
    """Contents when last read or written here: something else there now is another's work."""
    draft: Draft


class OwnModel(QObject):
    """Owns the drafts; pages show them and ask for changes."""

    changed = Signal()
    said = Signal(str)
    """One sentence about what was done, or why not."""

    def __init__(self, own: Own | None = None, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._own = own or Own()
        self._history: History[Own] = History()
        self._checked: dict[Kind, Checked] = {}
        self._files: dict[Kind, _File] = {}

    @property
    def own(self) -> Own:
        """The drafts as they stand."""
        return self._own

    def checked(self, kind: Kind) -> Checked:
        """Judge the draft, once for each change."""
        if kind not in self._checked:
            self._checked[kind] = check(self._own, kind)
        return self._checked[kind]

    # -------------------------------------------------------------- changing

    def do(self, name: str, own: Own) -> None:
        """Take drafts as changed by a step of this name."""
        if own == self._own:
            return
        self._history = self._history.take(Step(name, self._own, own))
        self._set(own)

    def give(self, kind: Kind, path: str, value: Value | None) -> None:
        """Give an entry its value, or take it away."""
        name = entries(kind)[path].label
        self.do(name, self._own.put(with_value(self._own.draft(kind), path, value)))

    def note(self, kind: Kind, field: str, note: Note) -> None:
        """Note where a field's value comes from."""
        self.do(tr("a source"), self._own.put(with_note(self._own.draft(kind), field, note)))

    @property
    def undo_name(self) -> str | None:
        """Name of the change that going back would undo; None if nothing."""
        return self._history.undo_name

    @property
    def redo_name(self) -> str | None:
        """Name of the change that going forward would do again; None if nothing."""
        return self._history.redo_name

    def undo(self) -> None:
        """Go back one step."""
        if step := self._history.last:
            self._history = self._history.undo()
            self._set(step.before)

    def redo(self) -> None:
        """Go forward again one step."""
        if step := self._history.next:
            self._history = self._history.redo()
            self._set(step.after)

    def restore(self, own: Own) -> None:
        """Show drafts that were found again, as the first of the history."""
        self._history = History()
        self._set(own)

    def _set(self, own: Own) -> None:
        self._own = own
        self._checked.clear()
        self.changed.emit()

    # -------------------------------------------------------------- files

    def file_of(self, kind: Kind) -> Path | None:
        """Return where a draft was opened from or saved to last."""
        return self._files[kind].path if kind in self._files else None

    def opened(self, kind: Kind, path: Path) -> None:
        """A draft has come from this file."""
        self._files[kind] = _File(path, read_bytes(path), self._own.draft(kind))

    def begun_anew(self, kind: Kind) -> None:
        """A draft is another one now; its file is no longer the last one's."""
        self._files.pop(kind, None)

    def unsaved(self, kind: Kind) -> bool:
        """Whether a draft holds something that no file does."""
        draft, file = self._own.draft(kind), self._files.get(kind)
        return bool(draft.values) and (file is None or file.draft != draft)

    @property
    def any_unsaved(self) -> bool:
        """Whether any of the three holds something that no file does."""
        return any(self.unsaved(kind) for kind in KINDS)

    def may_write(self, kind: Kind, path: Path) -> bool:
        """Whether nothing stands there but what was read or written from here: else it must be asked."""
        if not path.exists():
            return True
        file = self._files.get(kind)
        try:
            return file is not None and file.path == path and read_bytes(path) == file.text
        except SpecError:
            return False

    def write(self, kind: Kind, path: Path) -> None:
        """Save a finished draft, atomically. Raises SpecError; what stood there is then as it was."""
        write_text(path, file_text(self._own, kind, path))
        self._files[kind] = _File(path, read_bytes(path), self._own.draft(kind))
        self.changed.emit()
