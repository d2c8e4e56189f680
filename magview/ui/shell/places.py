"""The six places: each imported and built when it is first gone to, and what one has for another passed on."""

from __future__ import annotations

import sys
from collections.abc import Callable
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, cast

from PySide6.QtCore import Signal

from magview.practice.progress import FILE, ProgressBook
from magview.spec.language import marked, tr
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page, Place, Stack

if TYPE_CHECKING:  # loaded when they are first gone to
    from magview.bench.autosave import Autosave
    from magview.ui.bench.place import BenchPlace
    from magview.ui.classroom.paper_dialog import PaperDialog
    from magview.ui.classroom.room import ClassRoom, What
    from magview.ui.guide.place import GuidePlace
    from magview.ui.guide.window import GuideWindow
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.learn.place import LearnPlace
    from magview.ui.own.room import OwnRoom
    from magview.ui.practice.place import PracticePlace
    from magview.ui.work.place import WorkPlace

PLACES = {
    "start": marked("Start"),
    "learn": marked("Learn"),
    "practise": marked("Practise"),
    "work": marked("Work"),
    "bench": marked("Bench"),
    "guide": marked("Guide"),
}
"""The places as the bar names them, from left to right."""


class Places(Stack):
    """Holds the places, one in front. A place keeps what it was doing while others are in front."""

    said = Signal(str)
    turned = Signal()
    """Another page is in front, or it has another title."""
    rearranged = Signal()
    built = Signal(str)
    """A place is there, by its name."""

    def __init__(
        self,
        model: BenchModel | Callable[[], BenchModel],
        look: Look,
        autosave: Autosave | None,
        first: str = "bench",
    ) -> None:
        """`model`: the bench, or a function that makes it when somebody first goes there."""
        super().__init__()
        self._model, self.look, self._autosave = model, look, autosave
        self._folder: Path | None = autosave.folder if autosave is not None else None
        self.progress = ProgressBook(self._folder.parent / FILE if self._folder is not None else None)
        """Lessons and exercises done on this computer."""
        self._made: dict[str, Place] = {}
        self._classes: ClassRoom | None = None
        self._before_guide = first
        self._build: dict[str, Callable[[], Place]] = {
            "start": self._build_start,
            "learn": self._build_learn,
            "practise": self._build_practise,
            "work": self._build_work,
            "bench": self._build_bench,
            "guide": self._build_guide,
        }
        self.go(first)

    @property
    def model(self) -> BenchModel:
        """The bench's state, made now if nobody has asked for it."""
        if callable(self._model):
            self._model = self._model()
        return self._model

    # -------------------------------------------------------------- going about

    @property
    def name(self) -> str:
        """The place in front."""
        return next(name for name, place in self._made.items() if place is self.currentWidget())

    @property
    def place(self) -> Place:
        """The place in front, itself."""
        return cast(Place, self.currentWidget())

    @property
    def front(self) -> Page:
        """The page in front."""
        return self.place.front

    def go(self, name: str) -> None:
        """Bring a place to the front, as it was left."""
        place = self.named(name)
        if self.currentWidget() is place and self._made[name].count():
            return
        if name == "guide" and self.currentWidget() is not None:
            self._before_guide = self.name
        _ = place.front  # built now if it has not been seen
        self.setCurrentWidget(place)
        self.turned.emit()

    def named(self, name: str) -> Place:
        """A place by its name, built now if nobody has been there."""
        place = self._made.get(name)
        if place is None:
            place = self._made[name] = self._build[name]()
            place.said.connect(self.said)
            place.rearranged.connect(self.rearranged)
            place.wanted.connect(partial(self._wanted, name))
            place.turned.connect(partial(self._turned, place))
            self.addWidget(place)
            self.built.emit(name)
        return place

    def has(self, name: str) -> bool:
        """Whether somebody has been at a place."""
        return name in self._made

    def _wanted(self, name: str, _: object) -> None:
        self.go(name)

    def _turned(self, place: Place, _: object) -> None:
        if place is self.currentWidget():
            self.turned.emit()

    @property
    def open_pages(self) -> list[Page]:
        """Everything that is under way anywhere."""
        return [page for place in self._made.values() for page in place.open_pages]

    # -------------------------------------------------------------- the places

    @property
    def bench(self) -> BenchPlace:
        """Place with the workbench."""
        return cast("BenchPlace", self.named("bench"))

    @property
    def own(self) -> OwnRoom:
        """Drafts of a magneto of one's own."""
        return self.bench.own

    @property
    def learn(self) -> LearnPlace:
        """Lessons."""
        return cast("LearnPlace", self.named("learn"))

    @property
    def practice(self) -> PracticePlace:
        """Exercises."""
        return cast("PracticePlace", self.named("practise"))

    @property
    def work(self) -> WorkPlace:
        """Job sheets."""
        return cast("WorkPlace", self.named("work"))

    @property
    def guide(self) -> GuidePlace:
        """Place with the pages to read."""
        return cast("GuidePlace", self.named("guide"))

    @property
    def classes(self) -> ClassRoom:
        """The class, whose pages stand where one practises."""
        if self._classes is None:
            from magview.ui.classroom.room import ClassRoom

            kept = self._folder.parent / "class" if self._folder is not None else None
            self._classes = ClassRoom(self.practice, kept)
        return self._classes

    def _build_bench(self) -> Place:
        from magview.ui.bench.place import BenchPlace

        return BenchPlace(self.model, self.look, self._autosave)

    def _build_learn(self) -> Place:
        from magview.ui.learn.place import LearnPlace

        return LearnPlace(self.look, self.progress)

    def _build_practise(self) -> Place:
        from magview.ui.practice.place import PracticePlace

        place = PracticePlace(self.look, self._folder, self.progress)
        place.lesson_wanted.connect(lambda name: self.learn.begin_named(name))
        place.more = (
            (tr("&Join a class…"), partial(self.open_class, "join")),
            (tr("&Make a class set…"), partial(self.open_class, "make")),
            (tr("&Gather a class…"), partial(self.open_class, "gather")),
        )
        return place

    def _build_work(self) -> Place:
        from magview.ui.bench.readings import BenchReadings
        from magview.ui.work.place import WorkPlace

        return WorkPlace(self.look, self.model, BenchReadings(self.model, lambda: self.bench.page), self._folder)

    def _build_guide(self) -> Place:
        from magview.ui.guide.place import GuidePlace

        place = GuidePlace(self.look)
        place.left.connect(self._leave_guide)
        return place

    def _build_start(self) -> Place:
        from magview.ui.start.place import StartPlace

        return StartPlace(self.look, self)

    @property
    def kept_copies(self) -> Path | None:
        """Folder of copies of job sheets that could not be written to their files."""
        from magview.ui.work.place import spare_in

        return spare_in(self._folder)

    # -------------------------------------------------------------- what menus ask for

    def open_class(self, what: What) -> None:
        """Open a page of the class."""
        self.classes.open(what)

    def class_paper(self) -> PaperDialog:
        """Choose worksheets, keys and handouts to print."""
        from PySide6.QtCore import Qt

        from magview.ui.classroom.paper_dialog import PaperDialog

        dialog = PaperDialog(self.model.state, self)
        dialog.setAttribute(Qt.WidgetAttribute.WA_DeleteOnClose)
        dialog.open()
        return dialog

    def open_guide(self, address: str | None = None) -> None:
        """The guide, at an address or at the page about what is in front."""
        if address is not None or self.name != "guide":
            self.guide.go_to(self._topic() if address is None else address)

    def open_guide_window(self) -> GuideWindow:
        """The guide in a window of its own, at the page about what is in front."""
        from magview.ui.guide.window import GuideWindow

        window = self._guide_window() or GuideWindow(self.look, self.window())
        window.go_to(self._topic())
        window.show()
        window.raise_()
        window.activateWindow()
        return window

    def _guide_window(self) -> GuideWindow | None:
        from magview.ui.guide.window import GuideWindow

        shown = (w for w in self.window().findChildren(GuideWindow) if w.isVisible())
        return next(shown, None)

    def _topic(self) -> str:
        from magview.ui.kit.guide_context import topic_of

        return topic_of(self.front)

    def _leave_guide(self) -> None:
        self.go(self._before_guide)

    # -------------------------------------------------------------- closing

    def may_close(self) -> bool:
        """Whether nothing would be lost; what would lose something comes to the front and asks."""
        return all(place.may_close() for place in self._made.values())

    def halt(self) -> None:
        """The window closes: what runs in the places ends."""
        beside = self._guide_window() if "magview.ui.guide.window" in sys.modules else None
        if beside is not None:
            beside.close()
        for place in self._made.values():
            place.halt()
        if self._classes is not None:
            self._classes.halt()
