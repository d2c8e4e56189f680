"""Menus of a job sheet's window: the file, its steps, the bench's readings, reports, looks."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QDialog, QDialogButtonBox, QListWidget, QMenu, QVBoxLayout

from magview.job.sheet import Job
from magview.spec.language import tr
from magview.ui.kit.menu_maker import COLOURS, TEXT_SIZES, MenuMaker
from magview.ui.kit.theme import THEMES
from magview.ui.work.sources import FEEDS

if TYPE_CHECKING:
    from magview.ui.work.window import JobWindow


class JobMenus(MenuMaker):
    """What hangs in the window's menu bar, and follows the sheet."""

    def __init__(self, window: JobWindow) -> None:
        super().__init__(window)
        self.window: JobWindow = window
        keys = QKeySequence.StandardKey
        bar = window.menuBar()
        job, edit, stage, note, report, view, help_menu = (
            bar.addMenu(text)
            for text in (
                tr("&Job"),
                tr("&Edit"),
                tr("&Stage"),
                tr("&Note on the job sheet"),
                tr("&Report"),
                tr("&View"),
                tr("&Help"),
            )
        )
        self.act(job, tr("&New job sheet…"), window.new_wanted.emit, keys.New)
        self.act(job, tr("&Open job sheet…"), window.open_wanted.emit, keys.Open)
        self.act(job, tr("Save &as…"), window.ask_save_as, QKeySequence("Ctrl+Shift+S"))
        self.retry_action = self.act(job, tr("&Try again to save"), window.model.retry, keys.Save)
        self.act(job, tr("&Reload from the file"), window.ask_reload, None)
        job.addSeparator()
        self.act(job, tr("&Close"), window.close, keys.Close)

        self.undo_action = self.act(edit, tr("&Undo"), window.undo, keys.Undo)
        self.redo_action = self.act(edit, tr("&Redo"), window.redo, None)
        self.redo_action.setShortcuts([QKeySequence("Ctrl+Shift+Z"), QKeySequence("Ctrl+Y")])
        self.act(edit, tr("&Steps taken…"), self.show_steps, None)

        self.act(stage, tr("Mark as &done"), window.finish_stage, QKeySequence("Ctrl+Return"))
        self.act(stage, tr("&Skip for a reason…"), window.ask_skip, None)
        self.act(stage, tr("&Open again"), window.open_stage, None)
        stage.addSeparator()
        self.act(stage, tr("&Next page"), partial(window.go, 1), QKeySequence("Ctrl+PgDown"))
        self.act(stage, tr("&Previous page"), partial(window.go, -1), QKeySequence("Ctrl+PgUp"))

        self.note_actions = fill_notes(self, note, window)

        self.act(report, tr("Print to PDF, &A4…"), partial(window.ask_pdf, "a4"), keys.Print)
        self.act(report, tr("Print to PDF, &Letter…"), partial(window.ask_pdf, "letter"), None)
        self.act(report, tr("Save as &HTML…"), window.ask_html, None)
        self.act(report, tr("Save readings as &CSV…"), window.ask_csv, None)
        self.act(report, tr("Save readings as &JSON…"), window.ask_json, None)
        report.addSeparator()
        self.with_earlier = self.check(
            report, tr("With &earlier sheets of this magneto"), window.print_earlier, True, None
        )  # fmt: skip

        self.inches_action = self.check(view, tr("Lengths in &inches"), window.set_inches, window.look.inches, None)
        view.addSeparator()
        self.choice(view, [(tr(COLOURS[name]), name) for name in THEMES], window.look.theme.name, self._theme_chosen)
        self.choice(
            view.addMenu(tr("&Text size")), [(tr("{n} %", n=n), n) for n in TEXT_SIZES], 100, self._text_chosen
        )  # fmt: skip
        self.guide(help_menu)
        self.act(help_menu, tr("&Keys and cautions"), window.show_help, None)
        window.model.changed.connect(self.show_job)
        self.show_job(window.model.job)

    def show_job(self, job: Job, old: Job | None = None) -> None:
        """Name what would be undone, and offer what can be done."""
        store, writable = self.window.model.store, self.window.model.writable
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
        dialog = QDialog(self.window)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.setWindowTitle(tr("Steps taken"))
        column = QVBoxLayout(dialog)
        steps = QListWidget()
        steps.setAccessibleName(tr("Steps taken"))
        for at, name in reversed(self.window.model.store.steps):
            steps.addItem(f"{at.replace('T', ' ')}   {name}")
        if not steps.count():
            steps.addItem(tr("No step has been taken yet."))
        buttons = QDialogButtonBox(QDialogButtonBox.StandardButton.Close)
        buttons.rejected.connect(dialog.reject)
        column.addWidget(steps)
        column.addWidget(buttons)
        letter = self.window.fontMetrics().averageCharWidth()
        dialog.resize(90 * letter, 50 * letter)
        dialog.open()

    def _theme_chosen(self, action: QAction) -> None:
        self.window.look.theme = THEMES[action.data()]

    def _text_chosen(self, action: QAction) -> None:
        self.window.look.text_percent = action.data()


def fill_notes(maker: MenuMaker, menu: QMenu, window: JobWindow) -> list[QAction]:
    """An entry for everything that the bench may have for the sheet."""
    made, page = [], FEEDS[0].page
    for feed in FEEDS:
        if feed.page != page:
            menu.addSeparator()
            page = feed.page
        action = maker.act(menu, feed.words, partial(window.note, feed), None)
        action.setToolTip(tr(feed.tip))
        action.setStatusTip(tr(feed.tip))
        made.append(action)
    return made
