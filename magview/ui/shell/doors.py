"""The doors of the main window: what opens windows, boxes and files, each loaded when it is first asked for."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QMainWindow

from magview import __version__
from magview.bench import actions as do
from magview.bench.autosave import Autosave
from magview.spec.base import SpecError
from magview.spec.files import read_bench_item, write_model
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import marked, tr, tr_n
from magview.spec.library import find_installation, find_magneto, shipped_installation_of
from magview.spec.magneto import Magneto
from magview.ui.kit.bench_model import BenchModel

if TYPE_CHECKING:
    from magview.ui.classroom.paper_dialog import PaperDialog
    from magview.ui.classroom.room import ClassRoom, What
    from magview.ui.own.lift_dialog import LiftDialog
    from magview.ui.own.room import OwnRoom
    from magview.ui.pictures.picture_view import PictureView
    from magview.ui.practice.room import PracticeRoom
    from magview.ui.shell.window import MainWindow
    from magview.ui.work.room import JobRoom

_TABLES = marked("Tables (*.csv *.tsv *.txt);;All files (*)")
HANDLING = marked(
    "Drag the rotor or cam, the backplate, or the contact screw; or take one in hand with 1, 2, 3 and turn it with "
    "the arrow keys, Page Up and Page Down, or the wheel: ten times finer with Shift, coarser with Alt. A dragged "
    "rotor catches at contacts just open, top of lobe, E-gap and neutral; Alt lets it pass. Double-click puts a part "
    "back. Space holds the rotor or lets it go. In the drive end, left and right move the magneto flange, up and "
    "down the disc, one tooth at a time. Ctrl and the wheel zoom, the middle button pans. Numbers can be typed with "
    "their unit: 1.5°, 13 thou, 0.33 mm.\n\nPositive angles go the way the rotor turns in service; a positive "
    "contact-screw angle brings the contacts closer."
)


class Doors(QMainWindow):
    """Opens files, practice, job sheets, the class, files of one's own, paper, help and fault reports."""

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
        from magview.ui.classroom.paper_dialog import PaperDialog

        dialog = PaperDialog(self.model.state, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()
        return dialog

    def print_shift_plan(self, paper: str) -> None:
        """Ask where, and print the tooth shift chosen on the Engine page there, or the planner's first."""
        state = self.model.state
        try:
            from magview.job.shift_plan import plan_of, shift_documents

            side = state.engaged.side if state.engaged is not None else "left"
            plan = plan_of(state, side, self._main.timing.chosen_move())
        except SpecError as error:
            self._main.say(str(error))
            return
        title = tr("Print the tooth-shift plan to PDF")
        from magview.ui.kit.asking import ask_save

        path = ask_save(self, title, "tooth-shift-plan.pdf", tr("PDF (*.pdf)"))
        if path is None:
            return
        from magview.ui.paper.pdf import print_pdf

        try:
            pages = print_pdf(path, *shift_documents(plan, "letter" if paper == "letter" else "a4"))
        except SpecError as error:
            self._main.say(str(error))
            return
        self._main.say(
            tr_n(
                "✓ Printed {count} page to {file}.", "✓ Printed {count} pages to {file}.", count=pages, file=path.name
            )
        )

    def show_help(self) -> None:
        """Keys, signs and cautions."""
        from PySide6.QtWidgets import QMessageBox

        from magview.ui.kit.cautions import CAUTION

        box = QMessageBox(self)
        box.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        box.setWindowTitle(tr("Keys and cautions"))
        box.setText(f"magview {__version__}")
        box.setInformativeText(f"{tr(HANDLING)}\n\n{tr(CAUTION)}")
        box.open()

    def show_fault_reports(self, after_fault: bool = False) -> None:
        """Show what went wrong in the program itself, on this computer."""
        from magview.ui.kit.crash_report_dialog import ReportDialog
        from magview.upkeep.places import report_folder

        dialog = ReportDialog(report_folder(), self, after_fault=after_fault)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()

    # -------------------------------------------------------------- the bench's files

    def place(self, name: str) -> None:
        """Put a shipped magneto on the bench, on its shipped engine."""
        installation = shipped_installation_of(name)
        if installation is None:
            self.model.send(do.PlaceMagneto(find_magneto(name)))
        else:
            self.model.send(do.PlaceInstallation(find_installation(installation)))

    def open_file(self) -> None:
        """Ask for a file and put it on the bench."""
        from magview.ui.kit.asking import ask_open

        path = ask_open(self, tr("Open a magneto or an installation"), file_filter(tr("Magnetos and installations")))
        if path is not None:
            self.open_path(path)

    def open_path(self, path: Path) -> None:
        """Put a file's magneto or installation on the bench, or say in one sentence why not."""
        refusals: list[str] = []
        self.model.refused.connect(refusals.append)
        try:
            item = read_bench_item(path)
            self.model.send(do.PlaceMagneto(item) if isinstance(item, Magneto) else do.PlaceInstallation(item))
        except SpecError as error:
            refusals.append(str(error))
        finally:
            self.model.refused.disconnect(refusals.append)
        if refusals:
            self._refuse(refusals[0] if path.name in refusals[0] else f"{path.name}: {refusals[0]}")

    def import_lift(self) -> None:
        """Ask for a table of angles and readings."""
        from magview.ui.kit.asking import ask_open

        path = ask_open(self, tr("Open a table of the lift"), tr(_TABLES))
        if path is not None:
            self.import_lift_from(path)

    def import_lift_from(self, path: Path) -> LiftDialog:
        """Show what comes of a table of angles and readings."""
        from magview.ui.own.lift_dialog import LiftDialog

        dialog = LiftDialog(self.model, self._main.look, path, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.said.connect(self._main.say)
        dialog.open()
        return dialog

    def save_file(self) -> None:
        """Ask where, and write the magneto there."""
        from magview.ui.kit.asking import ask_save

        path = ask_save(
            self, tr("Save the magneto"), f"magneto{ENDING}", file_filter(tr("Magnetos and installations"))
        )
        if path is not None:
            self.save_path(path)

    def save_path(self, path: Path) -> None:
        """Write the magneto on the bench; a file that cannot be written is left as it was."""
        try:
            write_model(path, self.model.state.magneto)
        except SpecError as error:
            self._refuse(str(error))
            return
        self._main.say(tr("Saved {name}.", name=path.name))

    def export_file(self, view: PictureView) -> None:
        """Ask where, and save a picture there."""
        from magview.ui.kit.asking import ask_picture

        target = ask_picture(self)
        if target is not None:
            self.export(view, target)

    def export(self, view: PictureView, path: Path) -> None:
        """Save a picture with scale bar and caption."""
        state = self.model.state
        aid = tr(
            "magview {version}: a training and planning aid; the maker's current manual governs.", version=__version__
        )
        caption = f"{tr(state.magneto.name)}. {view.accessibleDescription()} {aid}"
        from magview.ui.pictures.export import export_picture

        try:
            export_picture(view, path, caption)
        except SpecError as error:
            self._refuse(str(error))
            return
        self._main.say(tr("Saved {name}.", name=path.name))

    def _refuse(self, sentence: str) -> None:
        from magview.ui.kit.asking import refuse

        refuse(self, sentence)

    # -------------------------------------------------------------- files of one's own

    @property
    def own(self) -> OwnRoom:
        """The guided editor of one's own files; its window stands beside this one."""
        if self._own is None:
            from magview.ui.own.room import OwnRoom

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
            from magview.ui.practice.room import PracticeRoom

            self._practice = PracticeRoom(self._main, self._folder)
        return self._practice

    @property
    def classes(self) -> ClassRoom:
        """What opens the windows of the class."""
        if self._classes is None:
            from magview.ui.classroom.room import ClassRoom

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
            from magview.ui.work.room import JobRoom

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
