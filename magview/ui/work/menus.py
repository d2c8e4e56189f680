"""Menus of a job sheet: the file, its steps, the bench's readings, reports, looks."""

from __future__ import annotations

from functools import partial
from typing import Protocol

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QListWidget, QMenu, QVBoxLayout, QWidget

from magview.job.feeds import FEEDS, Feed
from magview.job.sheet import Job
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.menu_maker import MenuMaker
from magview.ui.work.model import JobModel


class SheetWork(Protocol):
    """Sheet's page as its menus see it."""

    model: JobModel

    def new_job(self) -> None:
        """Begin another sheet."""

    def open_job(self) -> None:
        """Open another sheet."""

    def ask_save_as(self) -> None:
        """Ask where, and go on there."""

    def ask_reload(self) -> None:
        """Take what is in the file."""

    def undo(self) -> None:
        """Go back one step."""

    def redo(self) -> None:
        """Go forward one step."""

    def finish_stage(self) -> None:
        """Mark the stage in front as done."""

    def ask_skip(self) -> None:
        """Ask for a reason, and skip the stage in front."""

    def open_stage(self) -> None:
        """Open the stage in front again."""

    def go(self, by: int) -> None:
        """The next page, or the one before."""

    def go_to_stages(self) -> None:
        """Put the keys on the list of stages."""

    def go_to_danger(self) -> None:
        """Show the stage that makes the magneto live."""

    def note(self, feed: Feed) -> bool:
        """Note what the bench has."""

    def ask_pdf(self, paper: str) -> None:
        """Ask where, and print there."""

    def ask_html(self) -> None:
        """Ask where, and write the sheet as HTML."""

    def ask_csv(self) -> None:
        """Ask where, and write the readings as a table."""

    def ask_json(self) -> None:
        """Ask where, and write the readings for programs."""

    def print_earlier(self, _: bool = True) -> None:
        """Whether earlier sheets are printed, too."""


class JobMenus(MenuMaker):
    """Menus of a job sheet while it is in front; they follow the sheet."""

    def __init__(self, page: QWidget, sheet: SheetWork, look: Look) -> None:
        super().__init__(page)
        self.sheet, self._look = sheet, look
        keys = QKeySequence.StandardKey
        job, edit, stage, note, report, view = (
            self.menu(text, name)
            for text, name in (
                (tr("&File"), "file"),
                (tr("&Edit"), "edit"),
                (tr("&Stage"), ""),
                (tr("&Note on the job sheet"), ""),
                (tr("&Report"), ""),
                (tr("&View"), "view"),
            )
        )
        self.act(job, tr("&New job sheet…"), sheet.new_job, keys.New)
        self.act(job, tr("&Open job sheet…"), sheet.open_job, keys.Open)
        self.act(job, tr("Save &as…"), sheet.ask_save_as, QKeySequence("Ctrl+Shift+S"))
        self.retry_action = self.act(job, tr("&Try again to save"), sheet.model.retry, keys.Save)
        self.act(job, tr("&Reload from the file"), sheet.ask_reload, None)
        job.addSeparator()
        self.act(job, tr("&Close"), page.close, keys.Close)

        self.undo_action = self.act(edit, tr("&Undo"), sheet.undo, keys.Undo)
        self.redo_action = self.act_redo(edit, sheet.redo)
        self.act(edit, tr("&Steps taken…"), self.show_steps, None)

        self.act(stage, tr("Mark as &done"), sheet.finish_stage, QKeySequence("Ctrl+Return"))
        self.act(stage, tr("&Skip for a reason…"), sheet.ask_skip, None)
        self.act(stage, tr("&Open again"), sheet.open_stage, None)
        stage.addSeparator()
        self.act(stage, tr("&Next page"), partial(sheet.go, 1), QKeySequence("Ctrl+PgDown"))
        self.act(stage, tr("&Previous page"), partial(sheet.go, -1), QKeySequence("Ctrl+PgUp"))

        self.act(stage, tr("&List of stages"), sheet.go_to_stages, QKeySequence("F2"))
        self.act(stage, tr("What makes it &live"), sheet.go_to_danger, QKeySequence("F3"))

        self.note_actions = fill_notes(self, note, sheet)

        self.act(report, tr("Print to PDF, &A4…"), partial(sheet.ask_pdf, "a4"), keys.Print)
        self.act(report, tr("Print to PDF, &Letter…"), partial(sheet.ask_pdf, "letter"), None)
        self.act(report, tr("Save as &HTML…"), sheet.ask_html, None)
        self.act(report, tr("Save readings as &CSV…"), sheet.ask_csv, None)
        self.act(report, tr("Save readings as &JSON…"), sheet.ask_json, None)
        report.addSeparator()
        self.with_earlier = self.check(
            report, tr("With &earlier sheets of this magneto"), sheet.print_earlier, True, None
        )  # fmt: skip

        self.inches_action = self.check(view, tr("Lengths in &inches"), self._inches_chosen, look.inches, None)
        look.changed.connect(self._show_look)
        sheet.model.changed.connect(self.show_job)
        self.show_job(sheet.model.job)

    def show_job(self, job: Job, old: Job | None = None) -> None:
        """Name what would be undone, and offer what can be done."""
        store, writable = self.sheet.model.store, self.sheet.model.writable
        self.undo_action.setEnabled(writable and store.undo_name is not None)
        self.redo_action.setEnabled(writable and store.redo_name is not None)
        self.undo_action.setText(
            tr("&Undo") if store.undo_name is None else tr("&Undo: {step}", step=store.undo_name)
        )
        self.redo_action.setText(
            tr("&Redo") if store.redo_name is None else tr("&Redo: {step}", step=store.redo_name)
        )
        self.retry_action.setEnabled(store.trouble is not None)
        for action in self.note_actions:
            action.setEnabled(writable)

    def show_steps(self) -> None:
        """Every step in the sheet, with its time, the newest first."""
        dialog = QDialog(self._owner)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle(tr("Steps taken"))
        column = QVBoxLayout(dialog)
        steps = QListWidget()
        steps.setAccessibleName(tr("Steps taken"))
        for at, name in reversed(self.sheet.model.store.steps):
            steps.addItem(f"{at.replace('T', ' ')}   {name}")
        if not steps.count():
            steps.addItem(tr("No step has been taken yet."))
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(dialog.reject)
        column.addWidget(steps)
        column.addWidget(buttons)
        letter = self._owner.fontMetrics().averageCharWidth()
        dialog.resize(90 * letter, 50 * letter)
        dialog.open()

    def _inches_chosen(self, on: bool) -> None:
        self._look.inches = on

    def _show_look(self) -> None:
        self.inches_action.setChecked(self._look.inches)


def fill_notes(maker: MenuMaker, menu: QMenu, sheet: SheetWork) -> list[QAction]:
    """An entry for everything that the bench may have for the sheet."""
    made, page = [], FEEDS[0].page
    for feed in FEEDS:
        if feed.page != page:
            menu.addSeparator()
            page = feed.page
        action = maker.act(menu, feed.words, partial(sheet.note, feed), None)
        action.setToolTip(tr(feed.tip))
        action.setStatusTip(tr(feed.tip))
        made.append(action)
    return made
