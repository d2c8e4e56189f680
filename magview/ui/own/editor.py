"""A magneto of one's own: the guided editor of magneto, engine and installation files."""

from __future__ import annotations

from collections.abc import Sequence
from functools import partial

from PySide6.QtCore import Qt
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QListWidget,
    QListWidgetItem,
    QMenu,
    QPushButton,
    QSplitter,
    QStackedWidget,
    QTabBar,
    QToolBar,
    QVBoxLayout,
    QWidget,
)

from magview.own.compare import shipped_item
from magview.own.drafts import asked, shipped_kind
from magview.own.fields import KINDS, Kind, on_page, pages_of
from magview.spec.language import marked, tr
from magview.ui.kit.inputs import QuietCombo
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page
from magview.ui.kit.strip import Foot
from magview.ui.own.file_acts import FileWork
from magview.ui.own.menus import OwnMenus
from magview.ui.own.model import OwnModel
from magview.ui.own.page import PageView
from magview.ui.own.pictures import PicturesPane

_KINDS: dict[Kind, str] = {
    "magneto": marked("&1 Magneto"),
    "engine": marked("&2 Engine"),
    "installation": marked("&3 Installation"),
}


class OwnPage(Page):
    """Pages on the left, entries in the middle, what they come to on the right."""

    def __init__(self, model: OwnModel, look: Look) -> None:
        super().__init__(look)
        self.model, self._inches = model, look.inches
        self._pages: dict[Kind, list[PageView | None]] = {kind: [None] * len(pages_of(kind)) for kind in KINDS}
        self._place: dict[Kind, int] = dict.fromkeys(KINDS, 0)
        self.kind: Kind = "magneto"
        self.files = FileWork(self, self, model, look)
        self.setWindowTitle(tr("A magneto of your own"))
        self.menus = OwnMenus(self, self)
        self._lay_out()
        model.changed.connect(self.show_drafts)
        model.said.connect(self.say)
        look.changed.connect(self._look_changed)
        self.show_kind("magneto")

    # -------------------------------------------------------------- building

    def _lay_out(self) -> None:
        self.kinds = QTabBar()
        self.kinds.setAccessibleName(tr("What is drafted"))
        self.kinds.setExpanding(False)
        for kind in KINDS:
            self.kinds.addTab(tr(_KINDS[kind]))
        self.kinds.currentChanged.connect(lambda i: self.show_kind(KINDS[i]))
        self.list = QListWidget()
        self.list.setAccessibleName(tr("Pages"))
        self.list.setWordWrap(True)
        self.list.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.list.setMinimumHeight(6 * self.fontMetrics().height())
        self.list.currentRowChanged.connect(self._turn_to)
        self.stack = QStackedWidget()
        self.summary = QLabel()
        self.summary.setWordWrap(True)
        self.summary.setAccessibleName(tr("How far it has come"))
        self.next_gap = QPushButton(tr("Next o&pen field"))
        self.next_gap.setToolTip(tr("Go to the next field that is still needed, or refused"))
        self.next_gap.clicked.connect(self.go_to_next)
        left = _column(self.list, self.summary, self.next_gap)
        self.back, self.on = QPushButton(tr("◂ &Back")), QPushButton(tr("&Next ▸"))
        self.back.clicked.connect(partial(self._step, -1))
        self.on.clicked.connect(partial(self._step, 1))
        steps = QHBoxLayout()
        for button in (self.back, self.on):
            button.setAutoDefault(False)
            steps.addWidget(button)
        steps.insertStretch(1, 1)
        middle = _column(self.stack)
        middle.layout().addLayout(steps)  # type: ignore[union-attr]
        self.pictures = PicturesPane(self.model, self.look)
        self.split = QSplitter(Qt.Orientation.Horizontal)
        for i, (part, stretch) in enumerate(((left, 0), (middle, 3), (self.pictures, 2))):
            self.split.addWidget(part)
            self.split.setStretchFactor(i, stretch)
            self.split.setCollapsible(i, False)
        letter = self.fontMetrics().averageCharWidth()
        self.split.setSizes([30 * letter, 100 * letter, 64 * letter])
        whole = _column(self.kinds, self.split, Foot(self.look))
        whole.layout().setStretch(1, 1)  # type: ignore[union-attr]
        whole.layout().insertWidget(0, self._build_bar())  # type: ignore[union-attr]
        self.fill(whole)

    def _build_bar(self) -> QToolBar:
        bar = QToolBar(tr("Drafts"))
        bar.setObjectName("drafts")
        bar.setMovable(False)
        self.bases = QuietCombo()
        self.bases.setAccessibleName(tr("Begin from"))
        self.bases.setMinimumContentsLength(20)
        self.bases.setSizeAdjustPolicy(QuietCombo.SizeAdjustPolicy.AdjustToMinimumContentsLengthWithIcon)
        self.begin_button = QPushButton(tr("B&egin"))
        self.begin_button.setToolTip(tr("The draft becomes this one; Undo brings the former back"))
        self.begin_button.setAutoDefault(False)
        self.begin_button.clicked.connect(lambda: self.files.begin(self.kind, self.bases.currentData()))
        self.units = QuietCombo()
        self.units.setAccessibleName(tr("Unit of length"))
        self.units.addItems([tr("Millimetres"), tr("Inches")])
        self.units.setCurrentIndex(int(self._inches))
        self.units.currentIndexChanged.connect(self._unit_chosen)
        for text, widget in (
            (tr("  Begin from "), self.bases), ("", self.begin_button), (tr("   Lengths in "), self.units)
        ):  # fmt: skip
            if text:
                label = QLabel(text)
                label.setBuddy(widget)
                bar.addWidget(label)
            bar.addWidget(widget)
        bar.addSeparator()
        for action in (self.menus.undo_action, self.menus.redo_action):
            bar.addAction(action)
        bar.addSeparator()
        bar.addAction(self.menus.save_action)
        bar.addAction(self.menus.bench_action)
        return bar

    def _fill_bases(self) -> None:
        self.bases.clear()
        for name in shipped_kind(self.kind):
            item = shipped_item(self.kind, name)
            title = getattr(item, "name", None) or tr("{magneto}, mounted {side}", magneto=name.rpartition("-")[0],
                                                      side=name.rpartition("-")[2])  # fmt: skip
            self.bases.addItem(str(title), name)
        self.bases.addItem(tr("What is on the bench"), "bench")
        self.bases.addItem(tr("Nothing: empty fields"), "")
        self.bases.setCurrentIndex(max(0, self.bases.findData(self.model.own.draft(self.kind).basis or None)))

    # -------------------------------------------------------------- showing

    def show_kind(self, kind: Kind) -> None:
        """Turn to the magneto, the engine or the installation."""
        self.commit()
        self.kind = kind
        self.kinds.setCurrentIndex(KINDS.index(kind))
        blocked = self.list.blockSignals(True)
        self.list.clear()
        for page in pages_of(kind):
            self.list.addItem(QListWidgetItem(tr(page.title)))
        self.list.blockSignals(blocked)
        if hasattr(self, "bases"):
            self._fill_bases()
        self.list.setCurrentRow(self._place[kind])
        self.show_drafts()

    def page(self, index: int | None = None) -> PageView:
        """A page of the kind in view, built now if it has not been seen; the one in view without a number."""
        index = self._place[self.kind] if index is None else index
        found = self._pages[self.kind][index]
        if found is None:
            found = PageView(self.model, self.kind, pages_of(self.kind)[index], self.look)
            self._pages[self.kind][index] = found
            for row in found.rows.values():
                row.worked_out.connect(partial(self.files.work_out, self.kind))
            found.table_wanted.connect(self.files.ask_table)
            found.trials_wanted.connect(self.files.take_trials)
            self.stack.addWidget(found)
        return found

    def _turn_to(self, index: int) -> None:
        if index < 0:
            return
        self.commit()
        self._place[self.kind] = index
        page = self.page(index)
        page.show_drafts(self._inches)
        self.stack.setCurrentWidget(page)
        self.back.setEnabled(index > 0)
        self.on.setEnabled(index < self.list.count() - 1)

    def _step(self, by: int) -> None:
        self.list.setCurrentRow(self._place[self.kind] + by)

    def show_drafts(self) -> None:
        """Show the drafts as they stand: fields, marks on the pages, pictures."""
        draft, checked = self.model.own.draft(self.kind), self.model.checked(self.kind)
        for i, page in enumerate(pages_of(self.kind)):
            paths = set(on_page(self.kind, page))
            refused = len(paths & set(checked.refused))
            missing = len(paths & set(checked.missing))
            title = tr(page.title)
            if refused:
                words = tr("⚠ {page}: {count} refused", page=title, count=refused)
            elif missing:
                words = tr("{page}: {count} needed", page=title, count=missing)
            elif paths & set(draft.values):
                words = tr("✓ {page}", page=title)
            else:
                words = title
            self.list.item(i).setText(words)
        self.page().show_drafts(self._inches)
        if self.stack.currentWidget() is not self.page():
            self.stack.setCurrentWidget(self.page())
        self.summary.setText(
            tr("Still needed: {missing}\nRefused: {refused}\nWithout a source: {bare}",
               missing=len(checked.missing), refused=len(checked.refused), bare=checked.sourceless)
        )  # fmt: skip
        self.next_gap.setEnabled(bool(checked.missing or checked.refused))
        self.menus.show_drafts()
        self.pictures.show_kind(self.kind)

    def go_to_next(self) -> None:
        """Go to the first field that is refused or still needed, past the one in hand."""
        checked = self.model.checked(self.kind)
        wrong = {*checked.refused, *checked.missing}
        open_ones = [p for p in asked(self.model.own.draft(self.kind)) if p in wrong]
        if not open_ones:
            return
        here = [p for p, row in self.page().rows.items() if row.isAncestorOf(self.focusWidget())]
        after = open_ones.index(here[0]) + 1 if here and here[0] in open_ones else 0
        self.go_to(open_ones[after % len(open_ones)])

    def go_to(self, path: str) -> None:
        """Turn to the page that asks for an entry, and put the keyboard there."""
        for i, page in enumerate(pages_of(self.kind)):
            if path in on_page(self.kind, page):
                self.list.setCurrentRow(i)
                self.page(i).go_to(path)

    def commit(self) -> None:
        """Take what is being typed."""
        page = self._pages[self.kind][self._place[self.kind]]
        if page is not None:
            page.commit()

    # -------------------------------------------------------------- looks

    def _look_changed(self) -> None:
        """Read what is being typed in the unit it was begun in."""
        if self.look.inches != self._inches:
            self.commit()
            self._inches = self.look.inches
            self.units.setCurrentIndex(int(self._inches))
            self.show_drafts()

    def _unit_chosen(self, index: int) -> None:
        self.look.inches = index == 1

    def bar_menus(self) -> Sequence[QMenu]:
        """Files and steps."""
        return self.menus.made

    def may_close(self) -> bool:
        """The drafts stay: the page may be opened again."""
        self.commit()
        return True

    def halt(self) -> None:
        """The pictures stand still."""
        self.pictures.halt()


def _column(*widgets: QWidget) -> QWidget:
    box = QWidget()
    column = QVBoxLayout(box)
    column.setContentsMargins(4, 2, 4, 2)
    for widget in widgets:
        column.addWidget(widget)
    return box
