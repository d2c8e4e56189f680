"""Start: the doors to the three places where one learns, practises and works."""

from __future__ import annotations

import datetime
from collections.abc import Sequence
from functools import partial
from pathlib import Path
from typing import TYPE_CHECKING, Protocol

from magview.practice import shelf
from magview.practice.progress import ProgressBook
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page, Place
from magview.ui.kit.settings import kept_texts
from magview.ui.start import doors as facts
from magview.ui.start.door import Door
from magview.ui.start.page import StartPage
from magview.ui.start.recent import Item, damaged, damaged_progress, recent

if TYPE_CHECKING:  # each is loaded when its door is opened
    from magview.ui.bench.place import BenchPlace
    from magview.ui.learn.place import LearnPlace
    from magview.ui.practice.place import PracticePlace
    from magview.ui.work.place import WorkPlace


class Rooms(Protocol):
    """Places behind the doors. Asking for a place builds it; `has` says whether that was done."""

    progress: ProgressBook

    @property
    def bench(self) -> BenchPlace: ...

    @property
    def learn(self) -> LearnPlace: ...

    @property
    def practice(self) -> PracticePlace: ...

    @property
    def work(self) -> WorkPlace: ...

    @property
    def kept_copies(self) -> Path | None:
        """Folder of copies of job sheets that could not be written to their files."""

    def has(self, name: str) -> bool:
        """Whether somebody has been at a place."""

    def go(self, name: str) -> None:
        """Bring a place to the front."""


class StartPlace(Place):
    """One page, which is as new each time it is seen."""

    def __init__(self, look: Look, rooms: Rooms) -> None:
        super().__init__(look)
        self._rooms = rooms

    def build_home(self) -> Page:
        """The doors."""
        rooms = self._rooms
        doors = (
            Door(tr("Learn"), tr("See why, then do it. No marks."), "L", "learn", self._learn),
            Door(
                tr("Practise"),
                tr("A magneto set wrong. Only instruments, no numbers."),
                "P",
                "practise",
                self._practise,
            ),
            Door(
                tr("Work"),
                tr("Job sheet, tooth shift, a magneto of your own."),
                "W",
                "work",
                self._work,
                (
                    (tr("Plan a tooth shift"), self._plan),
                    (tr("A magneto of your own…"), lambda: rooms.bench.draft_own()),
                ),
            ),
        )
        lists = (
            (tr("All lessons"), partial(self._list, "learn")),
            (tr("All exercises"), partial(self._list, "practise")),
            (tr("All jobs"), partial(self._list, "work")),
        )
        page = StartPage(self.look, doors, self._facts, lists)
        page.picked.connect(self._picked)
        return page

    # -------------------------------------------------------------- what stands there

    def _facts(self, read: bool) -> tuple[Sequence[facts.Told], Sequence[Item]]:
        progress, now = self._rooms.progress.read(), datetime.datetime.now().astimezone()
        lesson = self._rooms.learn.under_way_at() if self._rooms.has("learn") else None
        pages = self._rooms.practice.not_handed_in if self._rooms.has("practise") else []
        attempt = tr(pages[-1].name()) if pages else None
        work, broken, whole = self._work_told(read)
        items: list[Item] = []
        if self._rooms.progress.damaged is not None:
            items.append(damaged_progress(self._rooms.progress.damaged))
        items += [item for path in broken for item in damaged(path, self._copy_of(path))]
        items += recent(progress, whole, now)
        return (facts.learn_door(progress, lesson), facts.practise_door(progress, attempt), work), items

    def _work_told(self, read: bool) -> tuple[facts.Told, list[Path], list[tuple[Path, str]]]:
        """The door, the sheets that cannot be read, and the others with when they were written."""
        paths = [Path(name) for name in kept_texts("recent-jobs")]
        whole = [(path, _written(path)) for path in paths if path.is_file()]
        if not whole:
            return facts.no_job(), [], []
        if not read:
            return facts.unread_job(whole[0][0]), [], whole
        broken: list[Path] = []
        told: facts.Told | None = None
        for path, when in list(whole):
            found = facts.read_job_door(path, when)
            if found is None:
                broken.append(path)
                whole.remove((path, when))
            elif told is None:
                told = found
        return told or facts.no_job(), broken, whole

    def _copy_of(self, path: Path) -> Path | None:
        folder = self._rooms.kept_copies
        return folder / path.name if folder is not None and (folder / path.name).is_file() else None

    # -------------------------------------------------------------- what the doors do

    def _learn(self) -> None:
        learn, lessons = self._rooms.learn, shelf.lessons()
        under_way = learn.under_way_at()
        found = self._rooms.progress.read().next_lesson(lessons) or lessons[0]
        learn.begin_named(under_way[0] if under_way is not None else found.id)

    def _practise(self) -> None:
        practice = self._rooms.practice
        if practice.not_handed_in:
            practice.show_page(practice.not_handed_in[-1])
            return
        exercises = shelf.exercises()
        practice.begin_named((self._rooms.progress.read().next_exercise(exercises) or exercises[-1]).id)

    def _work(self) -> None:
        work = self._rooms.work
        paths = [path for path, _ in self._work_told(True)[2]]
        if paths:
            work.open_path(paths[0])
        else:
            self._rooms.go("work")
            work.ask_new()

    def _plan(self) -> None:
        self._rooms.go("bench")
        self._rooms.bench.go_home()
        self._rooms.bench.page.show_panel("timing")

    def _list(self, name: str) -> None:
        self._rooms.go(name)
        {"learn": self._rooms.learn, "practise": self._rooms.practice, "work": self._rooms.work}[name].go_home()

    def _picked(self, item: Item) -> None:
        if item.kind == "lesson":
            self._rooms.learn.begin_named(str(item.key))
        elif item.kind == "exercise":
            self._rooms.practice.begin_named(str(item.key))
        elif isinstance(item.key, Path):
            self._rooms.work.open_path(item.key)


def _written(path: Path) -> str:
    try:
        seconds = path.stat().st_mtime
    except OSError:
        return ""
    return datetime.datetime.fromtimestamp(seconds).astimezone().isoformat(timespec="seconds")
