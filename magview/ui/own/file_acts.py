"""Actions of the guided editor with files, the bench, tables and trials."""

from __future__ import annotations

from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QMessageBox, QWidget

from magview.bench.placing import new_bench
from magview.bench.state import BenchState
from magview.own.compare import shipped_item
from magview.own.drafts import Draft, Item, draft_of
from magview.own.fields import KINDS, Kind
from magview.own.files import open_file, take
from magview.own.measured import lift_base, with_lift, with_trials, with_worked_out
from magview.spec.base import SpecError
from magview.spec.engine import Engine, Installation
from magview.spec.formats import ENDING, file_filter, with_ending
from magview.spec.language import tr
from magview.ui.kit.asking import DESTROY, REJECT, ask, ask_open, ask_save, refuse
from magview.ui.kit.look import Look
from magview.ui.own.model import OwnModel

if TYPE_CHECKING:
    from magview.ui.own.lift_dialog import LiftDialog

_NAMES: dict[Kind, str] = {
    "magneto": f"my-magneto{ENDING}",
    "engine": f"my-engine{ENDING}",
    "installation": f"my-installation{ENDING}",
}


class Editing(Protocol):
    """Editor as these actions see it."""

    def commit(self) -> None:
        """Take what is being typed."""

    def show_kind(self, kind: Kind) -> None:
        """Turn to the magneto, the engine or the installation."""


class FileWork(QObject):
    """Beginning, opening, saving, measuring; what the bench holds is asked of whoever owns it."""

    bench_wanted = Signal(object)
    """Put this magneto or installation on the bench."""

    def __init__(self, page: QWidget, editor: Editing, model: OwnModel, look: Look) -> None:
        super().__init__(page)
        self._page, self._editor, self._model, self._look = page, editor, model, look
        self._lift_rows: tuple[tuple[str, str], ...] = ()
        self.bench: BenchState | None = None
        """Bench as it is now; kept up to date by whoever opened the editor."""

    # -------------------------------------------------------------- beginning

    def begin(self, kind: Kind, basis: str) -> None:
        """Begin a draft anew: from a shipped file, from what is on the bench, or from nothing."""
        self._editor.commit()
        own = self._model.own
        if basis == "bench":
            item = self._on_bench(kind)
            if item is None:
                self._model.said.emit(tr("there is no engine on the bench: open an installation there first"))
                return
            own = take(own, item)
        elif basis == "":
            own = own.put(Draft(kind))
        elif kind == "installation":
            # Its magneto and engine are pointed to where they are shipped; the drafts beside it stay.
            own = own.put(_shipped_installation(basis))
        else:
            own = own.put(draft_of(shipped_item(kind, basis), basis))
        self._model.begun_anew(kind)
        self._model.do(tr("beginning anew"), own)

    def _on_bench(self, kind: Kind) -> Item | None:
        state = self.bench
        if state is None:
            return None
        if kind == "magneto":
            return state.magneto
        if state.engaged is None:
            return None
        installation = state.engaged.installation
        return installation.engine if kind == "engine" else installation

    # -------------------------------------------------------------- opening and saving

    def ask_open(self) -> None:
        """Ask for a file and open it into its draft."""
        path = ask_open(self._page, tr("Open a file of your own"), file_filter(tr("Files")))
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> None:
        """Open a file into its draft, or say in one sentence why not; Undo brings the former draft back."""
        try:
            own, kind = open_file(self._model.own, path)
            self._model.do(tr("opening {file}", file=path.name), own)
            self._model.opened(kind, path)
        except SpecError as error:
            refuse(self._page, str(error) if path.name in str(error) else f"{path.name}: {error}")
            return
        self._editor.show_kind(kind)
        self._model.said.emit(tr("{file} is open.", file=path.name))

    def save(self, kind: Kind) -> None:
        """Save where it was opened from or saved to last; asked for where it never was."""
        path = self._model.file_of(kind)
        if path is None:
            self.ask_save(kind)
        else:
            self.save_to(kind, path)

    def ask_save(self, kind: Kind) -> None:
        """Ask where, and save there."""
        # Replacing is asked by us, alike on every platform, and only where it would lose something.
        name = self._model.file_of(kind) or _NAMES[kind]
        path = ask_save(self._page, tr("Save"), name, file_filter(tr("Files")), asks_itself=True)
        if path is not None:
            self.save_to(kind, path)

    def save_to(self, kind: Kind, path: Path) -> QMessageBox | None:
        """Save a draft; another's file there is asked about first, and the question returned."""
        path = with_ending(path)
        if self._model.may_write(kind, path):
            self._write(kind, path)
            return None
        return ask(
            self._page,
            tr("{file} is there already, and holds something else. Replace it?", file=path.name),
            (tr("&Replace it"), DESTROY, partial(self._write, kind, path)),
            (tr("&Leave it"), REJECT, None),
        )

    def _write(self, kind: Kind, path: Path) -> None:
        try:
            self._model.write(kind, path)
        except SpecError as error:
            refuse(self._page, str(error))
            return
        self._model.said.emit(tr("Saved {file}.", file=path.name))

    def put_on_bench(self, kind: Kind) -> None:
        """Put the magneto or the installation on the bench."""
        item = self._model.checked(kind).item
        if item is not None and not isinstance(item, Engine):
            self.bench_wanted.emit(item)

    # -------------------------------------------------------------- measuring

    def ask_table(self) -> LiftDialog:
        """Show the grid for angles and readings; what was typed before and not taken is in it again."""
        return self.table_from(None)

    def table_from(self, path: Path | None) -> LiftDialog:
        """Show what comes of a table, or an empty grid; taken, it is the draft's traced lift."""
        from magview.ui.kit.bench_model import BenchModel
        from magview.ui.own.lift_dialog import LiftDialog

        bench = BenchModel(new_bench(lift_base(self._model.own)))
        dialog = LiftDialog(bench, self._look, path, self._page, self._lift_rows)
        bench.setParent(dialog)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.place_button.setText(tr("&Use this lift"))
        dialog.save_button.hide()
        dialog.left.connect(self._keep_lift)

        def taken() -> None:
            if dialog.lift is not None:
                file = dialog.path.name if dialog.path is not None else ""
                note = tr("table {file}", file=file) if file else tr("readings typed in")
                draft = with_lift(self._model.own.magneto, dialog.lift.profile, note)
                self._model.do(tr("the lift from a table"), self._model.own.put(draft))
                told = tr("The lift is filled in from {file}, marked measured.", file=file)
                self._model.said.emit(told if file else tr("The lift is filled in as typed, marked measured."))

        dialog.accepted.connect(taken)
        dialog.open()
        return dialog

    def _keep_lift(self, rows: tuple[tuple[str, str], ...]) -> None:
        self._lift_rows = rows

    def take_trials(self) -> None:
        """Fill lift, rise and setting from the bench's trials, or say in one sentence why not."""
        self._editor.commit()
        trials = self.bench.trials if self.bench is not None else ()
        errors = self.bench.trials_read.errors if self.bench is not None else None
        try:
            draft = with_trials(self._model.own, trials, errors)
        except SpecError as error:
            self._model.said.emit(str(error))
            return
        self._model.do(tr("the bench's trials"), self._model.own.put(draft))
        self._model.said.emit(tr("Lift, rise and setting are filled in from the trials, marked measured."))

    def work_out(self, kind: Kind, path: str) -> None:
        """Work an entry out from others, or say which must be given first."""
        self._editor.commit()
        own = self._model.own
        try:
            draft = with_worked_out(own, own.draft(kind), path)
        except SpecError as error:
            self._model.said.emit(str(error))
            return
        self._model.do(tr("working out"), own.put(draft))


def _shipped_installation(basis: str) -> Draft:
    from magview.own.drafts import OWN, SHIPPED, shipped_kind, with_value

    item = shipped_item("installation", basis)
    assert isinstance(item, Installation)
    draft = draft_of(item, basis)
    for part, wanted in (("magneto", item.magneto), ("engine", item.engine)):
        kind: Kind = KINDS[0] if part == "magneto" else KINDS[1]
        name = next((n for n in shipped_kind(kind) if shipped_item(kind, n) == wanted), None)
        draft = with_value(draft, part, f"{SHIPPED}{name}" if name else OWN)
    return draft
