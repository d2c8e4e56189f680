"""Presenting to a class: parts named one at a time, spotlight, frozen picture, no numbers, before and after.

Nothing of this is loaded before it is asked for, and the pictures know nothing of it while it is off.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QObject, QTimer, Signal
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtWidgets import QLabel, QToolBar

from magview.bench.state import BenchState, crank_deg
from magview.classroom.drawings import crank_anchors, drive_anchors
from magview.drawing.breaker_end import BreakerEnd
from magview.drawing.captions import CAPTIONS, End
from magview.spec.language import tr
from magview.ui.bench.page import BenchPage
from magview.ui.kit.look import PROJECTED
from magview.ui.present.covers import BeforeAndAfter, Frozen
from magview.ui.present.light import Light

if TYPE_CHECKING:
    from collections.abc import Mapping

    from magview.drawing.shapes import Point


class Presenter(QObject):
    """Actions of a presenter on the bench's pictures, from a bar below them and by keys."""

    changed = Signal(bool)
    """Presenting has begun or ended."""

    def __init__(self, page: BenchPage) -> None:
        super().__init__(page)
        self._page, self._model, self._look = page, page.model, page.look
        self.on = False
        self._order: list[tuple[End, str]] = []
        self._at = -1
        """Index of the part named, in their order; −1: none yet."""
        self._projected_here = False
        self.frozen: Frozen | None = None
        self._plots_were = False
        self.compared: BeforeAndAfter | None = None
        self.lights: dict[str, Light] = {
            "breaker": Light(page.pictures.breaker, self._breaker_anchors, self._look),
            "drive": Light(page.pictures.drive, drive_anchors, self._look),
            "crank": Light(page.pictures.crank, self._crank_anchors, self._look),
            "contacts": Light(page.pictures.contact, dict, self._look),
        }
        self._build_bar()
        self._model.changed.connect(self._bench_changed)
        page.pictures.breaker.pointed.connect(self._pointed)
        self._look.changed.connect(self._look_changed)

    def _build_bar(self) -> None:
        self.bar = QToolBar(tr("Present"))
        self.bar.setObjectName("present")
        self.bar.setMovable(False)
        layout = self._page.layout()
        assert layout is not None
        layout.addWidget(self.bar)
        self.actions: list[QAction] = []
        self.previous = self._act(tr("◀ Previous"), tr("Name the part before"), ("PgUp",))
        self.next = self._act(tr("Next ▶"), tr("Name the next part; or click a part"), ("PgDown",))
        self.where = QLabel()
        self.bar.addWidget(self.where)
        self.spot = self._act(tr("Spotlight"), tr("Dim all but the part that is named"), ("S",), check=True)
        self.freeze = self._act(tr("Freeze"), tr("The picture stands; the bench moves on"), ("F",), check=True)
        self.hide = self._act(tr("Hide numbers"), tr("No numbers until they are asked for"), ("D", "."), check=True)
        self.bar.addAction(self._page.menus.compare_action)
        self.compare = self._act(tr("Before and after"), tr("The kept moment beside now"), ("A",), check=True)
        self.end = self._act(tr("End"), tr("Put away what is shown, then end"), ("Esc",))
        self.previous.triggered.connect(self.name_previous)
        self.next.triggered.connect(self.name_next)
        self.spot.toggled.connect(self._light)
        self.freeze.toggled.connect(self.set_frozen)
        self.hide.toggled.connect(self.hide_numbers)
        if self._page.comparing is not None:
            self._page.comparing.changed.connect(self._kept_another)
        self.compare.toggled.connect(self.set_compared)
        self.end.triggered.connect(self.step_back)

    def _act(self, text: str, tip: str, keys: tuple[str, ...], check: bool = False) -> QAction:
        action = QAction(text, self._page)
        action.setShortcuts([QKeySequence(key) for key in keys])
        action.setToolTip(f"{tip} ({', '.join(keys)})")
        action.setCheckable(check)
        self.bar.addAction(action)
        self.actions.append(action)
        return action

    # -------------------------------------------------------------- beginning and ending

    def show(self, on: bool) -> None:
        """Begin, in projector mode, or end and leave the page as it was."""
        if on == self.on:
            return
        self.on = on
        page = self._page
        self.changed.emit(on)
        if not on:
            self._put_away()
        self.bar.setVisible(on)
        for action in self.actions:
            action.setEnabled(on)
        if on:
            self._at = -1
            self._projected_here = self._look.line_factor == 1.0
            if self._projected_here:
                self._look.line_factor = PROJECTED
            self._reorder()
            self.compare.setEnabled(self.kept is not None)
        elif self._projected_here:
            self._look.line_factor = 1.0
        self._light()
        page.pictures.breaker.setFocus()

    def step_back(self) -> None:
        """Put away one thing after the other, the last laid on first; then end."""
        for action in (self.compare, self.freeze, self.spot):
            if action.isChecked():
                action.setChecked(False)
                return
        self.show(False)

    def _put_away(self) -> None:
        for action in (self.compare, self.freeze, self.spot, self.hide):
            action.setChecked(False)
        self._at = -1

    # -------------------------------------------------------------- naming and the light

    def _reorder(self) -> None:
        """The parts of the pictures there are, in the order they are told; what was named stays named."""
        named = self._order[self._at] if self._at >= 0 else None
        ends: tuple[End, ...] = ("breaker",) if self._model.state.engaged is None else ("breaker", "drive", "crank")
        self._order = [(end, part) for end in ends for part in CAPTIONS[end]]
        self._at = self._order.index(named) if named in self._order else -1

    def name_next(self) -> None:
        """Name the next part."""
        self._at = min(self._at + 1, len(self._order) - 1)
        self._light()

    def name_previous(self) -> None:
        """Name the part before; before the first, none."""
        self._at = max(self._at - 1, -1)
        self._light()

    def _pointed(self, part: str) -> None:
        if self.on and ("breaker", part) in self._order:
            self._at = self._order.index(("breaker", part))
            self._light()

    @property
    def named(self) -> str:
        """The part that is named now, or nothing."""
        return self._order[self._at][1] if self._at >= 0 else ""

    def _light(self) -> None:
        """Show what is named: names told before stand beside the picture, this one on it."""
        end, part = self._order[self._at] if self._at >= 0 else ("breaker", "")
        said = tr(CAPTIONS[end][part]) if part else ""
        for name, light in self.lights.items():
            if not self.on or not part:
                light.clear()
                continue
            here = name == end
            # The words on a part always stand in the same place: under the largest picture.
            words = said if name == "breaker" else ""
            light.show(part if here else "", tr(part) if here else "", words, self.spot.isChecked())
        told = {p for e, p in self._order[: max(self._at, 0)] if e == "breaker"} - {part}
        self._page.pictures.breaker.set_named(frozenset(told) if self.on else None)
        count = len(self._order)
        self.where.setText(tr("  {number} of {count}  ", number=self._at + 1, count=count))
        words = tr("{part}: {told}", part=tr(part), told=said) if part else tr("No part is named yet")
        self.where.setAccessibleName(words)
        self.previous.setEnabled(self.on and self._at >= 0)
        self.next.setEnabled(self.on and self._at < count - 1)

    def _breaker_anchors(self) -> Mapping[str, tuple[str, Point]]:
        drawing: BreakerEnd = self._page.pictures.breaker.drawing
        return drawing.anchors

    def _crank_anchors(self) -> Mapping[str, tuple[str, Point]]:
        engaged = self._model.state.engaged
        return {} if engaged is None else crank_anchors(engaged.installation.engine, crank_deg(self._model.state))

    # -------------------------------------------------------------- freeze, numbers, before and after

    def set_frozen(self, on: bool) -> None:
        """Let the picture stand while the bench moves on, or show the bench again."""
        if self.frozen is not None:
            self.frozen.deleteLater()
            self.frozen.hide()
            self.frozen = None
        if on:
            self.frozen = Frozen(self._page.pictures, self._page, self._look)

    def hide_numbers(self, hidden: bool) -> None:
        """Take the true numbers off all pictures, and calculators and plots away, or bring them back."""
        page = self._page
        for view in (page.pictures.breaker, page.pictures.contact, page.pictures.drive, page.pictures.crank):
            view.numbers = not hidden
            view.show_state(self._model.state)
            view.fit()
            view.viewport().update()
        page.tabs.setVisible(not hidden and self._look.line_factor == 1.0)
        if hidden:
            self._plots_were = page.menus.plots_action.isChecked()
            page.show_plots(False)
        elif self._plots_were:
            page.show_plots(True)
        page.menus.plots_action.setEnabled(not hidden)
        if self.compared is not None:
            self.compared.set_numbers(not hidden)
        if page.comparing is not None:
            page.comparing.show_words()

    def _look_changed(self) -> None:
        # The page brings its calculators back by itself; after that they go again.
        QTimer.singleShot(0, self, self._keep_hidden)

    def _keep_hidden(self) -> None:
        if self.hide.isChecked():
            self._page.tabs.hide()

    @property
    def kept(self) -> BenchState | None:
        """The moment that the bench keeps to compare with."""
        comparing = self._page.comparing
        return None if comparing is None else comparing.kept

    def _kept_another(self, kept: bool) -> None:
        """Another moment is kept, or none any more: the pictures of the old one are of no use."""
        self.compare.setChecked(False)
        self.compare.setEnabled(self.on and kept)

    def set_compared(self, on: bool) -> None:
        """Show the kept moment beside the bench, or the bench alone."""
        page = self._page
        if self.compared is not None:
            self.compared.hide()
            self.compared.deleteLater()
            self.compared = None
            page.pictures.setEnabled(True)
            page.pictures.breaker.setFocus()
        if on and self.kept is not None:
            self.compared = BeforeAndAfter(
                self.kept, page.pictures.breaker, self._model, page.pictures, page, self._look
            )  # fmt: skip
            self.compared.kept.refused.connect(page.say)
            page.pictures.setEnabled(False)  # what lies below takes no keys

    def _bench_changed(self, state: BenchState, old: BenchState | None = None) -> None:
        if not self.on:
            return
        if self.frozen is not None:
            self.frozen.bench_moved()
        if old is not None and (old.engaged is None) != (state.engaged is None):
            self._reorder()
            self._light()
