"""After the hand-in: what was asked, goals as gauges, the path, the acts as cards, and four ways to go on."""

from __future__ import annotations

from functools import partial
from typing import cast

from PySide6.QtCore import Qt, Signal
from PySide6.QtGui import QFontInfo, QKeyEvent, QKeySequence, QResizeEvent, QShortcut, QShowEvent
from PySide6.QtWidgets import (
    QAbstractButton,
    QButtonGroup,
    QFrame,
    QHBoxLayout,
    QLabel,
    QPushButton,
    QScrollArea,
    QSplitter,
    QStackedWidget,
    QTabWidget,
    QVBoxLayout,
    QWidget,
)

from magview.bench.state import Side
from magview.practice.attempt import Attempt
from magview.practice.debrief import Debrief
from magview.practice.next_time import lesson_for, worst
from magview.practice.report import clock_words, sections
from magview.spec.language import marked, tr
from magview.ui.kit.key_button import KeyButton
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.kit.table import Table
from magview.ui.plots.way import WayPlot
from magview.ui.practice.act_cards import ActCards
from magview.ui.practice.controls import wrapped
from magview.ui.practice.goal_row import GoalRow
from magview.ui.practice.pictures import Pictures
from magview.ui.practice.replay import ReplayPane

_SHORT = 12
"""Columns with no longer words than this [letters] take just the room they need."""

_GOALS, _NARROW = 58, 76
"""Width of the goals, and of a window too narrow for them and the path side by side [em]."""

_TABS = {
    marked("An efficient path"): marked("&The method"),
    marked("True values"): marked("Tr&uth"),
    marked("Own readings"): marked("Note&book"),
    marked("Marks"): marked("Mar&ks"),
}
"""Tabs of the values, by the titles of the debrief's sections."""

_ENTER = (Qt.Key.Key_Return, Qt.Key.Key_Enter)


class DebriefView(QWidget):
    """Asked and got at the top; goals and path, or the replay, or all values; the cards; four buttons."""

    said = Signal(str)
    again = Signal()
    """The same code once more."""
    another = Signal()
    """The same exercise with another code."""
    lesson = Signal(str)
    """A lesson, by its short name."""
    next_one = Signal()

    def __init__(self, attempt: Attempt, told: Debrief, look: Look) -> None:
        super().__init__()
        self.attempt, self.told, self.look = attempt, told, look
        self._lesson = lesson_for(told.marking)
        self._seen = False
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(0)
        inside = _Page()
        column = QVBoxLayout(inside)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(self._build_head())
        self.replay = ReplayPane(told, look)
        self.replay.model.refused.connect(self.said)
        self.cards = ActCards(told, look)
        self.pages = QStackedWidget()
        for page in (self._build_goals(), self.replay, self._build_sheets()):
            self.pages.addWidget(page)
        column.addWidget(self.pages, 1)
        column.addWidget(self._build_cards())
        whole.addWidget(_scrolling(inside), 1)
        whole.addWidget(self._build_foot())
        self.cards.moment_chosen.connect(self.replay.go_to)
        self.cards.play_wanted.connect(self._play_from)
        self.replay.moved.connect(self.cards.show_moment)
        self._colour()
        look.changed.connect(self._colour)

    # -------------------------------------------------------------- building

    def _build_head(self) -> QWidget:
        told, marking = self.told, self.told.marking
        head = QWidget()
        column = QVBoxLayout(head)
        column.setContentsMargins(14, 6, 14, 4)
        column.setSpacing(2)
        top, row = QHBoxLayout(), QHBoxLayout()
        self._asked, self.task = QLabel(tr("Asked")), wrapped(tr(self.attempt.exercise.task))
        self.code = QLabel(tr("code {seed}, {time} minutes", seed=self.attempt.seed, time=clock_words(told.seconds)))
        self.needed = QLabel(tr("{points:.0f} needed", points=self.attempt.exercise.pass_percent))
        self.needed.setVisible(marking.marked)
        self.verdict = QLabel(verdict_words(told))
        self.verdict.setAccessibleDescription(marking.verdict)
        self.verdict.setToolTip(marking.verdict)
        top.addWidget(self._asked)
        top.addStretch(1)
        top.addWidget(self.code)
        row.addWidget(self.task, 1)
        row.addSpacing(12)
        row.addWidget(self.needed)
        row.addSpacing(8)
        row.addWidget(self.verdict)
        self.dangers, self.notes = wrapped("\n".join(_danger_lines(told))), wrapped("\n".join(_notes(told)))
        self.dangers.setVisible(bool(self.dangers.text()))
        self.notes.setVisible(bool(self.notes.text()))
        column.addLayout(top)
        column.addLayout(row)
        column.addWidget(self.dangers)
        column.addWidget(self.notes)
        return head

    def _build_goals(self) -> QWidget:
        told = self.told
        side = QWidget()
        column = QVBoxLayout(side)
        column.setContentsMargins(10, 2, 6, 4)
        column.setSpacing(4)
        self._title = QLabel(tr("Your readings against the truth"))
        self._legend = wrapped(tr("▼ the truth, ├─○─┤ your reading and what it cannot tell apart"))
        self.goals = [GoalRow(goal, self.look) for goal in told.goals]
        column.addWidget(self._title)
        column.addWidget(self._legend)
        for row in self.goals:
            row.looked_at.connect(self._show_way)
            column.addWidget(row)
        if not told.goals:
            column.addWidget(wrapped(told.marking.verdict))
        column.addStretch(1)
        left = self._left = QWidget()
        both = QVBoxLayout(left)
        both.setContentsMargins(0, 0, 0, 0)
        both.setSpacing(2)
        both.addWidget(_scrolling(side), 1)
        self.next_time = wrapped(tr("Next time: {words}", words=told.next_time))
        self.next_time.setMargin(8)
        self.next_time.setAutoFillBackground(True)
        self.next_time.setVisible(bool(told.next_time))
        both.addWidget(self.next_time)
        right = QWidget()
        beside = QVBoxLayout(right)
        beside.setContentsMargins(6, 4, 6, 2)
        self.path = WayPlot(self.look)
        self._path_title = QLabel()
        beside.addWidget(self._path_title)
        beside.addWidget(self.path, 1)
        lost = worst(told.marking)
        sides = told.replay.states[0].sides
        right.setVisible(self._show_way(lost.side if lost is not None and lost.side is not None else sides[0]))
        self.split = QSplitter(Qt.Orientation.Horizontal)
        for i, part in enumerate((left, right)):
            self.split.addWidget(part)
            self.split.setCollapsible(i, False)
        return self.split

    def _build_sheets(self) -> QTabWidget:
        self.tabs = QTabWidget()
        self.tabs.setDocumentMode(True)
        self.sheets: dict[str, Table] = {}
        found = {title: (heads, rows) for title, heads, rows in sections(self.attempt, self.told)}
        for key, words in _TABS.items():
            heads, rows = found[tr(key)]
            long = [n for n in range(len(heads)) if max((len(row[n]) for row in rows), default=0) > _SHORT]
            self.sheets[key] = Table(tr(key), heads, wide=long, wraps=True)
            self.sheets[key].fill(rows)
            self.tabs.addTab(self.sheets[key], tr(words))
            self.tabs.setTabToolTip(self.tabs.count() - 1, tr(key))
        return self.tabs

    def _build_cards(self) -> QWidget:
        box = QWidget()
        column = QVBoxLayout(box)
        column.setContentsMargins(10, 2, 10, 2)
        column.setSpacing(2)
        line = QHBoxLayout()
        self._did = QLabel(tr("What you &did"))
        self._did.setBuddy(self.cards)
        self._folds = QLabel(self.cards.summary)
        line.addWidget(self._did)
        line.addSpacing(8)
        line.addWidget(self._folds)
        line.addStretch(1)
        self.views = QButtonGroup(self)
        for i, words in enumerate((tr("&Goals"), tr("&Replay"), tr("Method and v&alues"))):
            button = QPushButton(words)
            button.setCheckable(True)
            button.setAutoDefault(False)
            self.views.addButton(button, i)
            line.addWidget(button)
        self.show_page(0)
        self.views.idClicked.connect(self.pages.setCurrentIndex)
        column.addLayout(line)
        column.addWidget(self.cards)
        return box

    def _build_foot(self) -> QWidget:
        foot = QWidget()
        row = QHBoxLayout(foot)
        row.setContentsMargins(14, 6, 14, 6)
        row.setSpacing(12)
        lesson, passed = self._lesson, self.told.marking.passed
        words = tr("The lesson for this")
        if lesson is not None:
            words = tr("The lesson for this: {number}", number=lesson.number)
        self.again_button = KeyButton(self.look, "A", tr("Again with this code"))
        self.another_button = KeyButton(self.look, "O", tr("Another like it"))
        self.lesson_button = KeyButton(self.look, "L", words)
        self.next_button = KeyButton(self.look, tr("Enter"), tr("Next exercise"))
        self.again_button.clicked.connect(self.again)
        self.another_button.clicked.connect(self.another)
        self.lesson_button.clicked.connect(self._to_lesson)
        self.next_button.clicked.connect(self.next_one)
        self.lesson_button.setVisible(lesson is not None)
        if lesson is not None:
            self.lesson_button.setToolTip(tr("Lesson {number}: {name}", number=lesson.number, name=tr(lesson.name)))
        fails = self.lesson_button if lesson is not None else self.another_button
        (self.next_button if passed else fails).filled = True
        for button in self.buttons:
            row.addWidget(button, 1)
        for key, button in (("A", self.again_button), ("O", self.another_button), ("L", self.lesson_button)):
            shortcut = QShortcut(QKeySequence(key), self)
            shortcut.setContext(Qt.ShortcutContext.WidgetWithChildrenShortcut)
            shortcut.activated.connect(partial(self._press, button))
        return foot

    @property
    def buttons(self) -> tuple[KeyButton, ...]:
        """The four ways to go on."""
        return self.again_button, self.another_button, self.lesson_button, self.next_button

    @property
    def pictures(self) -> Pictures:
        """The replay's pictures."""
        return self.replay.pictures

    # -------------------------------------------------------------- showing

    def show_page(self, index: int) -> None:
        """Show goals and path (0), the replay (1), or method and values (2)."""
        self.pages.setCurrentIndex(index)
        self.views.button(index).setChecked(True)

    def _show_way(self, side: str) -> bool:
        way = self.told.replay.way(self.told.cards, cast(Side, side))
        if way is None:
            return False
        self.path.show_way(way)
        two = len(self.told.replay.states[0].sides) > 1
        title = tr("Your path")
        if two:
            title = tr("Your path, left magneto") if side == "left" else tr("Your path, right magneto")
        self._path_title.setText(title)
        return True

    def _colour(self) -> None:
        theme, marking = self.look.theme, self.told.marking
        tint(self.verdict, (theme.good if marking.passed else theme.bad) if marking.marked else theme.text, bold=True)
        font = self.verdict.font()
        font.setPointSizeF(1.4 * self.font().pointSizeF())
        self.verdict.setFont(font)
        tint(self.dangers, theme.bad, bold=True)
        tint(self.notes, theme.warn, bold=True)
        for label in (self._asked, self.code, self.needed, self._legend, self._folds):
            tint(label, theme.faint)
        for label in (self.task, self._title, self._path_title, self._did):
            tint(label, theme.text, bold=True)
        palette = self.palette()
        palette.setColor(self.next_time.backgroundRole(), theme.hand_fill)
        palette.setColor(self.next_time.foregroundRole(), theme.text)
        self.next_time.setPalette(palette)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Goals keep their width; where there is no room beside them the path stands below."""
        super().resizeEvent(event)
        em = QFontInfo(self.font()).pixelSize()
        narrow = self.width() < _NARROW * em
        self.split.setOrientation(Qt.Orientation.Vertical if narrow else Qt.Orientation.Horizontal)
        whole = self.split.height() if narrow else self.split.width()
        self._left.setMinimumHeight(16 * em if narrow else 0)
        goals = whole // 2 if narrow else min(_GOALS * em, round(0.56 * whole))
        self.split.setSizes([goals, max(0, whole - goals)])

    def showEvent(self, event: QShowEvent) -> None:
        """The room is gone, and the keyboard with it: it begins here, once."""
        super().showEvent(event)
        if not self._seen:
            self._seen = True
            self.take_keyboard()

    def take_keyboard(self) -> None:
        """Put the keyboard on the first goal, or on the cards."""
        (self.goals[0] if self.goals else self.cards).setFocus()

    def halt(self) -> None:
        """The window closes: the replay stops."""
        self.replay.pause()

    # -------------------------------------------------------------- going on

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Enter goes on to the next exercise, unless it is pressed on a button or a card."""
        focused = self.focusWidget()
        if event.key() in _ENTER:
            if isinstance(focused, QAbstractButton):
                focused.click()
            elif focused is not self.cards:
                self.next_button.click()
            return
        super().keyPressEvent(event)

    def _press(self, button: KeyButton) -> None:
        if button.isVisible():
            button.click()

    def _to_lesson(self) -> None:
        if self._lesson is not None:
            self.lesson.emit(self._lesson.id)

    def _play_from(self, index: int) -> None:
        self.show_page(1)
        self.replay.play_from(index)


class _Page(QWidget):
    """A page as high as the window: its parts scroll in themselves before it does."""

    def heightForWidth(self, width: int) -> int:
        """No more than it cannot do without."""
        return self.minimumSizeHint().height()


def _scrolling(content: QWidget) -> QScrollArea:
    """As high as there is room; what is higher scrolls."""
    scroll = QScrollArea()
    scroll.setFrameShape(QFrame.Shape.NoFrame)
    scroll.setWidgetResizable(True)
    scroll.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
    scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
    scroll.setWidget(content)
    return scroll


def verdict_words(told: Debrief) -> str:
    """The result in a few words."""
    marking = told.marking
    if not marking.marked:
        return tr("not marked again")
    if marking.passed:
        return tr("{points:.0f} of 100: passed", points=marking.percent)
    if marking.dangers:
        return tr("{points:.0f} of 100: not passed, a dangerous act", points=marking.percent)
    return tr("{points:.0f} of 100: not yet", points=marking.percent)


def _danger_lines(told: Debrief) -> list[str]:
    return [
        f"⚠ {clock_words(d.at_s)} – "
        + (tr("{danger} ({times} times)", danger=d.text, times=d.times) if d.times > 1 else d.text)
        for d in told.marking.dangers
    ]


def _notes(told: Debrief) -> list[str]:
    notes = [told.other_version] if told.other_version else []
    if told.truth_known:
        notes.append(tr("Not the first time with this code: its truth had been shown. This counts as practice."))
    if told.nothing_done:
        notes.append(tr("Nothing was done: points are for what was right as found."))
    return notes
