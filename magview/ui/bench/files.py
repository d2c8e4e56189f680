"""File actions of the bench: magnetos, installations, tables of the lift, pictures, the tooth-shift plan."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, Qt, Signal
from PySide6.QtWidgets import QWidget

from magview import __version__
from magview.bench import actions as do
from magview.physics.engine.coupling import Move
from magview.spec.base import SpecError
from magview.spec.files import read_bench_item, write_model, write_text
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import tr, tr_n
from magview.spec.library import find_installation, find_magneto, shipped_installation_of
from magview.spec.magneto import Magneto
from magview.ui.kit.asking import ask_open, ask_picture, ask_save, refuse
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look

if TYPE_CHECKING:  # loaded when it is first asked for
    from magview.bench.shift_plan import ShiftPlan
    from magview.ui.own.lift_dialog import LiftDialog
    from magview.ui.pictures.export import Drawn
    from magview.ui.pictures.turn_dialog import TurnDialog


class BenchFiles(QObject):
    """Asks where, reads and writes, and says so."""

    said = Signal(str)

    def __init__(self, page: QWidget, model: BenchModel, look: Look, chosen_move: Callable[[], Move | None]) -> None:
        """`page`: what stands behind the boxes that ask; `chosen_move`: the tooth shift to print."""
        super().__init__(page)
        self._page, self.model, self._look, self._chosen_move = page, model, look, chosen_move
        self._lift_rows: tuple[tuple[str, str], ...] = ()

    def place(self, name: str) -> None:
        """Put a shipped magneto on the bench, on its shipped engine."""
        installation = shipped_installation_of(name)
        if installation is None:
            self.model.send(do.PlaceMagneto(find_magneto(name)))
        else:
            self.model.send(do.PlaceInstallation(find_installation(installation)))

    def open_file(self) -> None:
        """Ask for a file and put it on the bench."""
        path = ask_open(
            self._page, tr("Open a magneto or an installation"), file_filter(tr("Magnetos and installations"))
        )
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

    def import_lift(self) -> LiftDialog:
        """Show the grid for angles and readings; what was typed before and not taken is in it again."""
        return self._show_lift(None)

    def import_lift_from(self, path: Path) -> LiftDialog:
        """Show what comes of a table of angles and readings."""
        return self._show_lift(path)

    def _show_lift(self, path: Path | None) -> LiftDialog:
        from magview.ui.own.lift_dialog import LiftDialog

        dialog = LiftDialog(self.model, self._look, path, self._page, self._lift_rows)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.said.connect(self.said)
        dialog.left.connect(self._keep_lift)
        dialog.open()
        return dialog

    def _keep_lift(self, rows: tuple[tuple[str, str], ...]) -> None:
        self._lift_rows = rows

    def save_file(self) -> None:
        """Ask where, and write the magneto there."""
        kinds = file_filter(tr("Magnetos and installations"))
        path = ask_save(self._page, tr("Save the magneto"), f"magneto{ENDING}", kinds)
        if path is not None:
            self.save_path(path)

    def save_path(self, path: Path) -> None:
        """Write the magneto on the bench; a file that cannot be written is left as it was."""
        try:
            write_model(path, self.model.state.magneto)
        except SpecError as error:
            self._refuse(str(error))
            return
        self.said.emit(tr("Saved {name}.", name=path.name))

    def export_file(self, view: Drawn) -> None:
        """Ask where, and save a picture there."""
        target = ask_picture(self._page)
        if target is not None:
            self.export(view, target)

    def caption(self, told: str) -> str:
        """Words under a picture: its magneto, what is told of it, and what governs."""
        aid = tr(
            "magview {version}: a training and planning aid; the maker's current manual governs.", version=__version__
        )
        return f"{tr(self.model.state.magneto.name)}. {told} {aid}"

    def ask_turn(self, pictures: Mapping[str, Drawn]) -> TurnDialog:
        """Ask for a turn of one of these pictures, and save it."""
        from magview.ui.pictures.turn_dialog import TurnDialog

        told = tr("The rotor turns; angles are past neutral.")
        dialog = TurnDialog(pictures, self.model.state, self.caption(told), self._page)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.said.connect(self.said)
        dialog.open()
        return dialog

    def export(self, view: Drawn, path: Path) -> None:
        """Save a picture with scale bar and caption."""
        caption = self.caption(view.accessibleDescription())
        from magview.ui.pictures.export import export_picture

        try:
            export_picture(view, path, caption)
        except SpecError as error:
            self._refuse(str(error))
            return
        self.said.emit(tr("Saved {name}.", name=path.name))

    def give_shift_plan(self, form: str) -> None:
        """Give the tooth shift chosen on the Engine page, or the planner's first: on paper, a screen or as HTML."""
        plan = self._shift_plan()
        if plan is None:
            return
        if form == "screen":
            self._show_shift_screen(plan)
        elif form == "html":
            self._save_shift_html(plan)
        else:
            self._print_shift_plan(plan, form)

    def print_shift_plan(self, paper: str) -> None:
        """Ask where, and print that tooth shift there on a size of paper, "a4" or "letter"."""
        self.give_shift_plan(paper)

    def _shift_plan(self) -> ShiftPlan | None:
        from magview.job.shift_plan import plan_of

        state = self.model.state
        side = state.engaged.side if state.engaged is not None else "left"
        try:
            return plan_of(state, side, self._chosen_move())
        except SpecError as error:
            self.said.emit(str(error))
            return None

    def _show_shift_screen(self, plan: ShiftPlan) -> None:
        from magview.job.shift_html import shift_steps
        from magview.ui.bench.shift_screen import ShiftScreen

        screen = ShiftScreen(self._page.window(), plan.title, tuple(shift_steps(plan)))
        screen.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        screen.setWindowModality(Qt.WindowModality.WindowModal)
        screen.showFullScreen()

    def _save_shift_html(self, plan: ShiftPlan) -> None:
        from magview.job.shift_html import shift_html

        title = tr("Save the tooth-shift plan for a tablet")
        path = ask_save(self._page, title, "tooth-shift-plan.html", tr("HTML (*.html)"))
        if path is None:
            return
        try:
            write_text(path, shift_html(plan))
        except SpecError as error:
            self.said.emit(str(error))
            return
        self.said.emit(tr("Saved {name}.", name=path.name))

    def _print_shift_plan(self, plan: ShiftPlan, paper: str) -> None:
        title = tr("Print the tooth-shift plan to PDF")
        path = ask_save(self._page, title, "tooth-shift-plan.pdf", tr("PDF (*.pdf)"))
        if path is None:
            return
        from magview.job.shift_plan import shift_documents
        from magview.ui.paper.pdf import print_pdf

        try:
            pages = print_pdf(path, *shift_documents(plan, "letter" if paper == "letter" else "a4"))
        except SpecError as error:
            self.said.emit(str(error))
            return
        self.said.emit(
            tr_n(
                "✓ Printed {count} page to {file}.", "✓ Printed {count} pages to {file}.", count=pages, file=path.name
            )
        )

    def _refuse(self, sentence: str) -> None:
        refuse(self._page, sentence)
