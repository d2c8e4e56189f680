"""The doors of the main window: what opens windows and boxes beside it, each loaded when it is first asked for."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMainWindow

from magview import __version__
from magview.bench.autosave import Autosave
from magview.spec.language import marked, tr
from magview.ui.model import BenchModel

if TYPE_CHECKING:
    from magview.ui.class_paper_dialog import PaperDialog
    from magview.ui.class_room import ClassRoom, What
    from magview.ui.job_room import JobRoom
    from magview.ui.own_room import OwnRoom
    from magview.ui.practice_room import PracticeRoom
    from magview.ui.window import MainWindow

HANDLING = marked(
    "Drag the rotor or cam, the backplate, or the contact screw; or take one in hand with 1, 2, 3 and turn it with "
    "the arrow keys, Page Up and Page Down, or the wheel: ten times finer with Shift, coarser with Alt. A dragged "
    "rotor catches at contacts just open, top of lobe, E-gap and neutral; Alt lets it pass. Double-click puts a part "
    "back. Space holds the rotor or lets it go. In the drive end, left and right move the magneto flange, up and "
    "down the disc, one tooth at a time. Ctrl and the wheel zoom, the middle button pans. Numbers can be typed with "
    "their unit: 1.5°, 9 thou, 0.23 mm.\n\nPositive angles go the way the rotor turns in service; a positive "
    "contact-screw angle brings the contacts closer."
)


class Doors(QMainWindow):
    """Opens practice, job sheets, the class, files of one's own, paper, help and fault reports."""

    def __init__(self, model: BenchModel, autosave: Autosave | None) -> None:
        super().__init__()
        self.model = model
        self._autosave = autosave
        self._practice: PracticeRoom | None = None
        self._own: OwnRoom | None = None
        self._jobs: JobRoom | None = None
        self._classes: ClassRoom | None = None

    @property
    def _main(self) -> MainWindow:
        return cast("MainWindow", self)

    @property
    def _folder(self) -> Path | None:
        return self._autosave.folder if self._autosave is not None else None

    def close_doors(self) -> None:
        """The main window closes: what runs behind the doors ends."""
        if self._classes is not None:
            self._classes.halt()
        if self._own is not None:
            self._own.close()

    # -------------------------------------------------------------- boxes

    def class_paper(self) -> PaperDialog:
        """Choose worksheets, keys and handouts to print."""
        from magview.ui.class_paper_dialog import PaperDialog

        dialog = PaperDialog(self.model.state, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()
        return dialog

    def show_help(self) -> None:
        """Keys, signs and cautions."""
        from PySide6.QtWidgets import QMessageBox

        from magview.ui.setting_panel import CAUTION

        box = QMessageBox(self)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.setWindowTitle(tr("Keys and cautions"))
        box.setText(f"magview {__version__}")
        box.setInformativeText(f"{tr(HANDLING)}\n\n{tr(CAUTION)}")
        box.open()

    def show_fault_reports(self, after_fault: bool = False) -> None:
        """Show what went wrong in the program itself, on this computer."""
        from magview.ui.report_dialog import ReportDialog
        from magview.upkeep.places import report_folder

        dialog = ReportDialog(report_folder(), self, after_fault=after_fault)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()

    # -------------------------------------------------------------- files of one's own

    @property
    def own(self) -> OwnRoom:
        """The guided editor of one's own files; its window stands beside this one."""
        if self._own is None:
            from magview.ui.own_room import OwnRoom

            self._own = OwnRoom(self._main, self._folder)
        return self._own

    def draft_own(self) -> None:
        """Open the guided editor."""
        self.own.open()

    # -------------------------------------------------------------- practice

    @property
    def practice(self) -> PracticeRoom:
        """What opens practice windows; they stand beside this one."""
        if self._practice is None:
            from magview.ui.practice_room import PracticeRoom

            self._practice = PracticeRoom(self._main, self._folder)
        return self._practice

    @property
    def classes(self) -> ClassRoom:
        """What opens the windows of the class."""
        if self._classes is None:
            from magview.ui.class_room import ClassRoom

            kept = self._folder.parent / "class" if self._folder is not None else None
            self._classes = ClassRoom(self._main, kept)
        return self._classes

    def open_class(self, what: What) -> None:
        """Open a window of the class."""
        self.classes.open(what)

    def new_exercise(self) -> None:
        """Choose an exercise and begin it."""
        self.practice.choose(lessons=False)

    def choose_lesson(self) -> None:
        """Choose a lesson and begin it."""
        self.practice.choose(lessons=True)

    def open_attempt(self) -> None:
        """Ask for an attempt's file and go on with it, or look at its debrief."""
        self.practice.ask_attempt()

    # -------------------------------------------------------------- job sheets

    @property
    def jobs(self) -> JobRoom:
        """What opens job sheets; they stand in windows beside this one."""
        if self._jobs is None:
            from magview.ui.job_room import JobRoom

            self._jobs = JobRoom(self._main, self._folder)
        return self._jobs

    def new_job(self) -> None:
        """Begin a job sheet."""
        self.jobs.ask_new()

    def open_job(self) -> None:
        """Ask for a job sheet's file and go on with it."""
        self.jobs.ask_open()

    def open_shipped_job(self) -> None:
        """Look at the job sheet that ships with the program."""
        self.jobs.open_shipped()

    def fill_job_menus(self) -> None:
        """What the job menu offers now."""
        menus = self._main.menus
        self.jobs.fill(menus.notes_menu, menus.recent_jobs)
