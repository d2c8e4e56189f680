"""The practice room: pictures without numbers, what eyes see, the work, and at the end the debrief."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from pathlib import Path

from PySide6.QtCore import Qt, QTimer, Signal
from PySide6.QtGui import QFontInfo, QKeySequence, QResizeEvent, QShortcut
from PySide6.QtWidgets import (
    QApplication,
    QMenu,
    QPushButton,
    QSplitter,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from magview import __version__
from magview.bench.autosave import Keeper
from magview.bench.lead_words import WORK_OFF_THE_ENGINE
from magview.bench.tray import NUMBERS, Item, RightHand, Thing
from magview.practice.actions import Act, Care, HandIn, Renew, Sight
from magview.practice.attempt import Attempt, write_attempt
from magview.practice.debrief import debrief
from magview.practice.report import debrief_csv, debrief_text
from magview.practice.screen_words import live_words
from magview.practice.state import Practice
from magview.practice.tray import blades_of, putting, taking_back, things
from magview.practice.words import act_words
from magview.spec.base import SpecError
from magview.spec.files import write_text
from magview.spec.formats import ENDING, file_filter
from magview.spec.language import number, tr
from magview.ui.kit.asking import ACCEPT, DESTROY, REJECT, ask, ask_picture, ask_save, refuse
from magview.ui.kit.callout import Callout
from magview.ui.kit.look import Look
from magview.ui.kit.panes import TallPanel
from magview.ui.kit.place import Page
from magview.ui.kit.strip import Foot, Strip
from magview.ui.pictures.hand_callout import HandCallout
from magview.ui.pictures.picture_view import PictureView
from magview.ui.pictures.right_hand import RightHandOverPicture
from magview.ui.pictures.tray import Tray
from magview.ui.practice.controls import TABS, PracticePanel
from magview.ui.practice.debrief_view import DebriefView
from magview.ui.practice.hands import HandsPanel
from magview.ui.practice.menus import PracticeMenus, help_words
from magview.ui.practice.model import AttemptModel, PracticeModel
from magview.ui.practice.notebook import NotebookPanel
from magview.ui.practice.pictures import Pictures
from magview.ui.practice.sight import CAUTION
from magview.ui.practice.task import PapersPanel, TaskPanel
from magview.ui.practice.tried import TriedPanel
from magview.ui.practice.work import WorkPanel

_KEEP_MS = 1000
_PAGE_EM = 31.0
"""Width of the page beside the pictures."""
_ROOMY = 600
"""From this height on [px] words keep the room of the longest they may be."""


class PracticePage(Page):
    """One attempt. Nothing in it knows a true number before the hand-in but the model."""

    begin_wanted = Signal(object, bool)
    """The exercise of this attempt once more: with the same code, or with another."""
    next_wanted = Signal()
    lesson_wanted = Signal(str)

    def __init__(self, model: PracticeModel, look: Look, keeper: Keeper[Attempt] | None = None) -> None:
        super().__init__(look)
        self.model, self._keeper = model, keeper
        model.setParent(self)
        self._saved = len(model.session.attempt.events) if isinstance(model, AttemptModel) else 0
        self.debrief: DebriefView | None = None
        self._keep_soon = QTimer(self)
        self._keep_soon.setSingleShot(True)
        self._keep_soon.setInterval(_KEEP_MS)
        self._keep_soon.timeout.connect(self._keep)
        self._lay_out()
        self.menus = PracticeMenus(self, self, counts=not model.teaches)
        self.setWindowTitle(f"{tr(self.name())} – {tr('practice')}")
        model.acted.connect(self._acted)
        model.refused.connect(self.say)
        if model.practice.handed_in:
            self._tell()
        look.changed.connect(self._look_changed)
        self._look_changed()
        self.tabs.currentChanged.connect(self.rearranged)

    def name(self) -> str:
        """Name of what is worked at."""
        return self.model.practice.exercise.name

    def first_panel(self) -> tuple[str, PracticePanel]:
        """Return the first tab's panel, and the words on it."""
        self.task = TaskPanel(self.model, self.look)
        return tr("&1 Task"), self.task

    def build_strip(self) -> PracticePanel | None:
        """Build the strip above the room."""
        return None

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        model, look = self.model, self.look
        practice, teaches = model.practice, model.teaches
        self.pictures = Pictures(model, practice, look, inside=teaches, engine=False)
        # The mechanism needs the room that names would take; a lesson needs the names.
        self.pictures.breaker.set_names(teaches)
        self.hands, self.sight = HandsPanel(model, look), TriedPanel(model, look)
        self.work, self.notebook = WorkPanel(model, look), NotebookPanel(model, look)
        self.papers = PapersPanel(model, look)
        kinds = practice.exercise.tray.blades
        self.tray = Tray(self.items(), kinds, look, {kind: blades_of(kind) for kind in kinds})
        self.right_hand = RightHandOverPicture(self.tray, self.pictures.breaker, model, self, look)
        self.right_hand.changed.connect(self._show_right_hand)
        self.pictures.eye.looked.connect(self._looked)
        self.refusal = HandCallout(self.pictures.breaker, model, look)
        self.tray_refusal = Callout(self.tray, model)
        self.strip = self.build_strip()
        self.live = Strip(look)
        room = self.live.sizePolicy()
        room.setRetainSizeWhenHidden(True)  # nothing moves when something becomes live
        self.live.setSizePolicy(room)
        self._build_side()
        left = QWidget()
        column = QVBoxLayout(left)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(0)
        column.addWidget(self.pictures, 1)
        column.addWidget(self.tray)
        self.split = QSplitter(Qt.Orientation.Horizontal)
        self.split.addWidget(left)
        self.split.addWidget(self._side)
        for i, stretch in enumerate((1, 0)):
            self.split.setStretchFactor(i, stretch)
            self.split.setCollapsible(i, False)
        room_widget = QWidget()
        whole = QVBoxLayout(room_widget)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(2)
        on_engine = practice.bench.engaged is not None
        for above in (self.strip, self.live if on_engine else None):
            if above is not None:
                whole.addWidget(above)
        whole.addWidget(self.split, 1)
        self.foot = Foot(look, tr(CAUTION if on_engine else WORK_OFF_THE_ENGINE))
        self.foot.setContentsMargins(8, 4, 8, 2)
        whole.addWidget(self.foot)
        self.fill(room_widget)
        self._show_live(practice)
        self._make_keys()

    def _build_side(self) -> None:
        """Hands and sights, which are always there; below them the task with the notebook, the work, the papers."""
        title, first = self.first_panel()
        self.panels: tuple[PracticePanel, ...] = (first, self.work, self.papers)
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        together = TaskAndNotebook(first, self.notebook)
        shown: tuple[QWidget, ...] = (together, self.work, self.papers)
        for panel, words in zip(shown, (title, *(tr(words) for words in TABS.values())), strict=True):
            pane = TallPanel(lambda panel=panel: panel)  # type: ignore[misc]
            pane.panel()
            self.tabs.addTab(pane, words)
        self.hand_in = QPushButton(tr("Hand &in…"))
        self.hand_in.setAutoDefault(False)
        self.hand_in.setToolTip(tr("Ctrl+Return"))
        self.hand_in.clicked.connect(self.ask_hand_in)
        if self.model.teaches:
            self.hand_in.hide()
        side = self._side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(4, 4, 4, 4)
        column.setSpacing(4)
        # On a low screen both scroll: nothing in them is squeezed until it cannot be read.
        both = _Together(self.hands, self.sight)
        room = both.layout()
        assert isinstance(room, QVBoxLayout)
        room.addStretch(1)
        self._above = TallPanel(lambda: both)
        column.addWidget(self._above)
        column.addWidget(self.tabs, 1000)
        column.addWidget(self.hand_in)

    def _make_keys(self) -> None:
        """Numbers take things, N writes, H gives a hint, Ctrl+Return hands in, Esc empties the right hand."""

        def key(keys: str, act: Callable[[], object]) -> QShortcut:
            shortcut = QShortcut(QKeySequence(keys), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(act)
            return shortcut

        self._keys = [key(str(n), partial(self.right_hand.press, n)) for n in NUMBERS.values()]
        self._keys.append(key("N", self._write))
        self._escape = key("Esc", self.right_hand.put_away)
        if not self.model.teaches:
            self._keys += [key("H", self._hint), key("Ctrl+Return", self.ask_hand_in)]
        self._show_right_hand()

    def _write(self) -> None:
        self.tabs.setCurrentIndex(0)
        self.notebook.value.setFocus(Qt.FocusReason.ShortcutFocusReason)

    def _hint(self) -> None:
        self.tabs.setCurrentIndex(0)
        self.task.hint.click()

    # -------------------------------------------------------------- the right hand

    def items(self) -> Sequence[Item]:
        """Return the things on the tray now."""
        return things(self.model.practice)

    def put(self, hand: RightHand, spot: str, kind: str) -> bool:
        """Put what is in hand at a place."""
        try:
            act = putting(self.model.practice, hand, spot, kind)
        except SpecError as error:
            self.model.refused.emit(str(error))
            return False
        return self.model.do(act)

    def take_back(self, thing: Thing) -> bool:
        """Put a thing back on the tray."""
        return self.model.do(taking_back(thing))

    def choose(self, thing: Thing) -> bool:
        """The disc is turned where it is, by the left hand."""
        return thing is Thing.DISC and self.hands.take("disc")

    def _show_right_hand(self) -> None:
        hand = self.right_hand.hand if hasattr(self, "right_hand") else RightHand()
        words = self.right_hand.words() if hand.thing is not None else ""
        self.hands.show_right(words)
        self.sight.show_blades(hand.blades if hand.thing is Thing.BLADES else (), self.tray.kind)
        self.pictures.held_blades = " + ".join(number(b) for b in hand.blades) if hand.thing is Thing.BLADES else ""
        self.pictures.breaker.viewport().update()
        if hasattr(self, "_escape"):
            self._escape.setEnabled(hand.thing is not None)

    def _looked(self, eye_deg: float) -> None:
        self.model.do(Sight(eye_deg))

    def _show_live(self, practice: Practice) -> None:
        words = live_words(practice)
        self.live.show_causes((words,) if words else ())

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Share the width anew: the controls take what they need, the pictures the rest."""
        super().resizeEvent(event)
        self._share()

    def settle(self) -> None:
        """Share the room anew: the words have another size."""
        if self.debrief is not None:
            return
        for i in range(self.tabs.count()):
            pane = self.tabs.widget(i)
            if isinstance(pane, TallPanel):
                pane.refit()
        self._share()

    def _share(self) -> None:
        if self.debrief is not None:  # the room is gone
            return
        self.sight.keep_room(self.height() >= _ROOMY)
        self.keep_room(self.height() >= _ROOMY)
        needed = max(self._side.minimumSizeHint().width(), round(_PAGE_EM * QFontInfo(self.font()).pixelSize()))
        self.split.setSizes([max(0, self.split.width() - needed), needed])

    def keep_room(self, roomy: bool) -> None:
        """Whether there is room for the longest words above the room."""

    # -------------------------------------------------------------- showing

    def _acted(self, act: Act, new: Practice, old: Practice) -> None:
        self.say("")
        if isinstance(act, Care | Renew) and new.said is None:  # no picture shows it, and nothing answered
            self.say(act_words(act, old, new) + ".")
        self.pictures.show_practice(new)
        self._show_live(new)
        self.notebook.show_rows(self.sight.tried.before)
        if self._keeper is not None and not self._keep_soon.isActive():
            self._keep_soon.start()
        if new.handed_in:
            self._tell()

    def _tell(self) -> None:
        attempt = self.attempt
        assert attempt is not None
        self.debrief = DebriefView(attempt, debrief(attempt), self.look)
        self.debrief.said.connect(self.say)
        self.debrief.again.connect(partial(self.begin_wanted.emit, attempt, True))
        self.debrief.another.connect(partial(self.begin_wanted.emit, attempt, False))
        self.debrief.next_one.connect(self.next_wanted)
        self.debrief.lesson.connect(self.lesson_wanted)
        for shortcut in (*self._keys, self._escape):  # there is nothing more to take in hand
            shortcut.setEnabled(False)
        self.fill(self.debrief)
        self.menus.handed_in()
        self.rearranged.emit()

    def take_keyboard(self) -> None:
        """Put the keyboard where it was, or on the debrief's first goal."""
        if self.debrief is not None and not self.debrief.isAncestorOf(QApplication.focusWidget() or self):
            self.debrief.take_keyboard()
        else:
            super().take_keyboard()

    @property
    def attempt(self) -> Attempt | None:
        """The attempt so far; None in a lesson."""
        return self.model.session.attempt if isinstance(self.model, AttemptModel) else None

    def views(self) -> tuple[PictureView, ...]:
        """The pictures in view."""
        return self.pictures_shown.views

    @property
    def pictures_shown(self) -> Pictures:
        """The room's pictures, or the replay's."""
        return self.debrief.pictures if self.debrief is not None else self.pictures

    def bar_menus(self) -> Sequence[QMenu]:
        """The attempt, and how it is seen."""
        return self.menus.made

    def help_words(self) -> str:
        """Keys and cautions."""
        return help_words()

    # -------------------------------------------------------------- handing in, keeping, files

    def ask_hand_in(self) -> None:
        """Ask once; from then on the truth is shown and nothing more can be done."""
        box = ask(
            self,
            tr("Hand in now?"),
            (tr("&Hand in"), ACCEPT, self._hand_in),
            (tr("&Go on working"), REJECT, None),
            more=tr("Then the true values are shown, and nothing more can be done."),
        )
        box.setWindowTitle(tr("Hand in"))

    def _hand_in(self) -> None:
        self.model.do(HandIn())

    def _keep(self) -> None:
        attempt = self.attempt
        if self._keeper is not None and attempt is not None:
            try:
                self._keeper.keep(attempt)
            except SpecError as error:
                self.say(tr("The attempt cannot be kept for after a crash: {error}", error=error))

    def save_file(self) -> None:
        """Ask where, and write the attempt there."""
        path = ask_save(self, tr("Save the attempt"), f"attempt{ENDING}", file_filter(tr("Attempts")))
        if path is not None:
            self.save_path(path)

    def save_path(self, path: Path) -> bool:
        """Write the attempt; a file that cannot be written is left as it was."""
        attempt = self.attempt
        if attempt is None:
            return False
        try:
            write_attempt(path, attempt)
        except SpecError as error:
            refuse(self, str(error))
            return False
        self._saved = len(attempt.events)
        self.say(tr("Saved {name}.", name=path.name))
        return True

    def kept_elsewhere(self) -> None:
        """The attempt as it is now stands in another place: closing need not ask."""
        attempt = self.attempt
        self._saved = len(attempt.events) if attempt is not None else 0

    def save_debrief(self) -> None:
        """Ask where, and write the debrief there."""
        kinds = tr("Text (*.txt);;Table (*.csv)")
        path = ask_save(self, tr("Save the debrief"), "debrief.txt", kinds)
        if path is not None:
            self.save_debrief_path(path)

    def save_debrief_path(self, path: Path) -> None:
        """Write the debrief, as a table where the name ends in .csv, else as text."""
        if self.debrief is None:
            return
        write = debrief_csv if path.suffix.lower() == ".csv" else debrief_text
        try:
            write_text(path, write(self.debrief.attempt, self.debrief.told))
        except SpecError as error:
            refuse(self, str(error))
            return
        self.say(tr("Saved {name}.", name=path.name))

    def export_file(self, view: PictureView) -> None:
        """Ask where, and save a picture there."""
        target = ask_picture(self)
        if target is not None:
            self.export(view, target)

    def export(self, view: PictureView, path: Path) -> None:
        """Save a picture: before the hand-in without scale and numbers."""
        from magview.ui.pictures.export import export_picture

        aid = tr("magview {version}: a training aid.", version=__version__)
        caption = f"{self.windowTitle()}. {view.accessibleDescription()} {aid}"
        try:
            export_picture(view, path, caption)
        except SpecError as error:
            refuse(self, str(error))
            return
        self.say(tr("Saved {name}.", name=path.name))

    def may_close(self) -> bool:
        """Work that is nowhere else is not lost by a click; what was handed in is done with."""
        attempt = self.attempt
        if attempt is not None and not attempt.handed_in and len(attempt.events) > self._saved:
            self._ask_close()
            return False
        return True

    def _ask_close(self) -> None:
        ask(
            self,
            tr("This attempt has not been saved."),
            (tr("&Save…"), ACCEPT, self.save_file),
            (tr("Close &without saving"), DESTROY, self.discard),
            (tr("&Go on"), REJECT, None),
        )

    def discard(self) -> None:
        """Close and keep nothing."""
        attempt = self.attempt
        self._saved = len(attempt.events) if attempt is not None else 0
        self.close()

    def halt(self) -> None:
        """End what runs; nothing is left to be found again."""
        self._keep_soon.stop()
        if self.debrief is not None:
            self.debrief.halt()
        if self._keeper is not None:
            self._keeper.forget()

    # -------------------------------------------------------------- looks

    def _look_changed(self) -> None:
        """For a class the tabs make room."""
        projecting = self.look.line_factor != 1.0
        if self.debrief is None and projecting == self.tabs.isVisibleTo(self):
            self.tabs.setVisible(not projecting)
            column = self._side.layout()
            assert isinstance(column, QVBoxLayout)
            column.setStretchFactor(self._above, 1000 if projecting else 0)
            self._share()


class _Together(QWidget):
    """Two panels one under the other."""

    def __init__(self, upper: PracticePanel, lower: PracticePanel) -> None:
        super().__init__()
        self._parts = (upper, lower)
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.addWidget(upper)
        column.addWidget(lower, 1)

    def halt(self) -> None:
        """Nothing runs here."""
        for part in self._parts:
            part.halt()


class TaskAndNotebook(_Together):
    """The task, and the notebook under it."""
