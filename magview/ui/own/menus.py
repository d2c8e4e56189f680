"""Menus of the guided editor."""

from __future__ import annotations

from typing import Protocol

from PySide6.QtGui import QKeySequence
from PySide6.QtWidgets import QWidget

from magview.own.fields import Kind
from magview.spec.language import tr
from magview.ui.kit.menu_maker import MenuMaker
from magview.ui.own.file_acts import FileWork
from magview.ui.own.model import OwnModel


class Editor(Protocol):
    """Editor as its menus see it."""

    model: OwnModel
    kind: Kind
    files: FileWork

    def commit(self) -> None:
        """Take what is being typed."""


class OwnMenus(MenuMaker):
    """Menus of the editor while it is in front; they follow the drafts."""

    def __init__(self, page: QWidget, editor: Editor) -> None:
        super().__init__(page)
        self._own = editor
        keys, work = QKeySequence.StandardKey, editor.files
        files, edit = self.menu(tr("&File"), "file"), self.menu(tr("&Edit"), "edit")
        self.act(files, tr("&Open magneto, engine or installation…"), work.ask_open, keys.Open)
        files.addSeparator()
        self.save_action = self.act(files, tr("&Save"), self._save, keys.Save)
        self.save_as_action = self.act(files, tr("Save &as…"), self._save_as, keys.SaveAs)
        files.addSeparator()
        self.bench_action = self.act(files, tr("Put on the &bench"), self._bench, QKeySequence("Ctrl+B"))
        files.addSeparator()
        self.act(files, tr("&Close"), page.close, keys.Close)
        self.undo_action = self.act(edit, tr("&Undo"), self._undo, keys.Undo)
        self.redo_action = self.act_redo(edit, self._redo)

    def show_drafts(self) -> None:
        """Say what can be undone, saved and put on the bench."""
        model, kind = self._own.model, self._own.kind
        undo, redo = model.undo_name, model.redo_name
        self.undo_action.setText(tr("&Undo") if undo is None else tr("&Undo: {step}", step=undo))
        self.redo_action.setText(tr("&Redo") if redo is None else tr("&Redo: {step}", step=redo))
        self.undo_action.setIconText(tr("Undo"))
        self.redo_action.setIconText(tr("Redo"))
        self.undo_action.setEnabled(undo is not None)
        self.redo_action.setEnabled(redo is not None)
        whole = model.checked(kind).item is not None
        for action in (self.save_action, self.save_as_action):
            action.setEnabled(whole)
        self.bench_action.setEnabled(whole and kind != "engine")
        self.bench_action.setToolTip(
            tr("An engine comes to the bench with an installation") if kind == "engine" else tr("Put on the bench")
        )

    def _save(self) -> None:
        self._own.commit()
        self._own.files.save(self._own.kind)

    def _save_as(self) -> None:
        self._own.commit()
        self._own.files.ask_save(self._own.kind)

    def _bench(self) -> None:
        self._own.commit()
        self._own.files.put_on_bench(self._own.kind)

    def _undo(self) -> None:
        self._own.commit()
        self._own.model.undo()

    def _redo(self) -> None:
        self._own.model.redo()
