"""A lesson as a page: a strip over the picture that is worked at; beside it why, the gauges and the controls."""

from __future__ import annotations

from collections.abc import Sequence
from pathlib import Path

from PySide6.QtCore import QEvent, QObject, Qt, QTimer, Signal
from PySide6.QtGui import QKeyEvent
from PySide6.QtWidgets import (
    QHBoxLayout,
    QLabel,
    QMenu,
    QScrollArea,
    QSizePolicy,
    QStackedWidget,
    QVBoxLayout,
    QWidget,
)

from magview.practice.actions import PointAt
from magview.practice.lesson_acts import tools_for, tools_toward
from magview.practice.lesson_run import unmet
from magview.practice.lesson_words import learnt, part_of
from magview.practice.screen_words import live_words
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.place import Page
from magview.ui.kit.style import tint
from magview.ui.learn.menus import LessonMenus, help_words
from magview.ui.learn.model import LessonModel
from magview.ui.learn.pictures import LessonPictures
from magview.ui.learn.readings import LessonReadings
from magview.ui.learn.strip import LessonStrip
from magview.ui.learn.strip_parts import em_of
from magview.ui.learn.tools import LessonTools
from magview.ui.pictures.picture_view import PictureView

_HERO, _BESIDE = 46, 54
"""Shares of the width."""
_LEAST_EM = 12.0
"""Least height of the picture beside."""


class LessonPage(Page):
    """One lesson. It is not marked; that it was done is remembered."""

    finished = Signal()
    """All steps are behind."""
    more = Signal()
    """On to the next lesson."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        super().__init__(look)
        self.model = model
        model.setParent(self)
        lesson = model.run.lesson
        self.setWindowTitle(f"{lesson.number}. {tr(lesson.name)}")
        self._told_finished = model.run.done
        self.strip = LessonStrip(model, look)
        self.pictures = LessonPictures(model, look)
        self.readings, self.controls = LessonReadings(model, look), LessonTools(model, look)
        self._lay_out()
        self.menus = LessonMenus(self, self, self.close)
        for view in self.pictures.all:
            view.installEventFilter(self)
        self.pictures.breaker.pointed.connect(self._pointed)
        self.strip.more.connect(self.more)
        model.judged.connect(self._judged)
        model.refused.connect(self._refused)
        look.changed.connect(self._judged)
        self._at = -1
        self._judged()

    @property
    def step_at(self) -> int:
        """The step in hand, counted from 0."""
        return self.model.run.at

    @property
    def lesson_done(self) -> bool:
        """Whether all steps are behind."""
        return self.model.run.done

    def _lay_out(self) -> None:
        self.hero, self.beside = QStackedWidget(), QStackedWidget()
        self.learnt = QLabel()
        self.learnt.setWordWrap(True)
        self.learnt.setMargin(round(em_of(self)))
        self.learnt.setAlignment(Qt.AlignmentFlag.AlignTop)
        self.learnt.setTextInteractionFlags(Qt.TextInteractionFlag.TextSelectableByMouse)
        hero = self.model.run.lesson.hero
        self.hero.addWidget(self.pictures.view(hero))
        for name in self.pictures.names:
            if name != hero:
                self.beside.addWidget(self.pictures.view(name))
        self.beside.addWidget(self._scrolled_learnt())
        for stack, share in ((self.hero, _HERO), (self.beside, _BESIDE)):
            policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Ignored)
            policy.setHorizontalStretch(share)
            stack.setSizePolicy(policy)
        self.live = QLabel()
        self.live.setAccessibleName(tr("Danger"))
        self.live.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        side = QWidget()
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Preferred)
        policy.setHorizontalStretch(_BESIDE)
        side.setSizePolicy(policy)
        column = QVBoxLayout(side)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(2)
        column.addWidget(self.beside, 1)
        column.addWidget(self.readings)
        column.addWidget(self.live)
        column.addWidget(self.controls)
        # With large type, or many controls, this side scrolls; strip and picture stay.
        self.side = QScrollArea()
        self.side.setWidgetResizable(True)
        self.side.setFrameShape(QScrollArea.Shape.NoFrame)
        self.side.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.side.setWidget(side)
        policy.setVerticalPolicy(QSizePolicy.Policy.Ignored)
        self.side.setSizePolicy(policy)
        row = QHBoxLayout()
        row.setSpacing(4)
        row.addWidget(self.hero, _HERO)
        row.addWidget(self.side, _BESIDE)
        room = QWidget()
        whole = QVBoxLayout(room)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.setSpacing(2)
        whole.addWidget(self.strip)
        whole.addLayout(row, 1)
        self.fill(room)
        self._size_up()

    def _scrolled_learnt(self) -> QScrollArea:
        """The closing list in the room of a picture: a long list scrolls there, and no control moves."""
        room = QScrollArea()
        room.setWidgetResizable(True)
        room.setFrameShape(QScrollArea.Shape.NoFrame)
        room.setMinimumSize(120, 60)
        room.setWidget(self.learnt)
        return room

    def _size_up(self) -> None:
        self.beside.setMinimumHeight(round(_LEAST_EM * em_of(self)))
        self.live.setFixedHeight(round(1.6 * em_of(self)) if self.model.run.practice.bench.engaged is not None else 0)

    def settle(self) -> None:
        """The words have another size."""
        self.readings.settle()
        self._size_up()

    # -------------------------------------------------------------- showing

    def _judged(self) -> None:
        run = self.model.run
        self.pictures.show_practice(self.model.practice)
        step = run.step
        self.pictures.breaker.point_out(part_of(step) if step is not None and not run.step_done else "")
        waited = () if run.step_done else unmet(run)
        self.pictures.breaker.rings_hand = step is None or all(until.that != "pointed-at" for until in step.until)
        self.controls.point_out(tools_toward(waited))
        self.controls.show_practice(run.practice)
        live = live_words(run.practice)
        self.live.setText(f"⚠ {live}" if live else "")
        self.live.setToolTip(live)
        tint(self.live, self.look.theme.bad, bold=True)
        if run.at != self._at:
            self._at = run.at
            self._turn_to_step()
        if run.done and not self._told_finished:
            self._told_finished = True
            self.finished.emit()

    def _turn_to_step(self) -> None:
        step = self.model.run.step
        if step is None:
            lines = "".join(f"<li>{line}</li>" for line in learnt(self.model.run))
            self.learnt.setText(f"<b>{tr('What you have learnt')}</b><ul>{lines}</ul>")
            self.beside.setCurrentIndex(self.beside.count() - 1)
            self.strip.next.setFocus()
            return
        self.beside.setCurrentWidget(self.pictures.view(self.pictures.shown_beside(step)))
        needed = next((self.controls.controls[tool] for tool in tools_for(step)), None)
        if needed is not None:
            self.side.ensureWidgetVisible(needed)
        if self.isVisible():
            self.pictures.view(self.model.run.lesson.hero).setFocus()

    def _refused(self, sentence: str) -> None:
        self.controls.show_practice(self.model.run.practice)

    def _pointed(self, part: str) -> None:
        self.model.do(PointAt(part))

    def views(self) -> tuple[PictureView, ...]:
        """The pictures in view."""
        return tuple(v for v in self.pictures.all if isinstance(v, PictureView) and v.isVisible())

    # -------------------------------------------------------------- keys

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """In a picture, too, 1 to 3 answer while something is asked, and a key let go is a hand that lets go."""
        if isinstance(event, QKeyEvent):
            if event.type() == QEvent.Type.KeyPress and self._answered_by(event):
                return True
            if event.type() == QEvent.Type.KeyRelease and not event.isAutoRepeat():
                QTimer.singleShot(0, self.model, self.model.let_go)
        return super().eventFilter(watched, event)

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Return goes on, 1 to 3 answer, H helps."""
        if self._answered_by(event):
            return
        if event.key() in (Qt.Key.Key_Return, Qt.Key.Key_Enter):
            if self.model.run.done:
                self.more.emit()
            else:
                self.model.go_on()
        elif event.key() == Qt.Key.Key_H and not event.modifiers():
            self.strip.tell_hint()
        else:
            super().keyPressEvent(event)

    def _answered_by(self, event: QKeyEvent) -> bool:
        run = self.model.run
        choice = event.key() - Qt.Key.Key_1
        if (
            run.step is None
            or run.answered
            or not 0 <= choice <= 2
            or event.modifiers() & Qt.KeyboardModifier.ControlModifier
        ):
            return False
        self.model.answer(run.answers[run.at].index(None), choice)
        return True

    # -------------------------------------------------------------- what the window asks

    def take_keyboard(self) -> None:
        """The picture that is worked at."""
        if self.focusWidget() is None:
            self.pictures.view(self.model.run.lesson.hero).setFocus()
        else:
            super().take_keyboard()

    def bar_menus(self) -> Sequence[QMenu]:
        """The lesson, and how it is seen."""
        return self.menus.made

    def help_words(self) -> str:
        """Keys and cautions."""
        return help_words()

    def export(self, view: PictureView, path: Path) -> None:
        """Save a picture as it is seen."""
        self.menus.export(view, path)

    def halt(self) -> None:
        """Nothing runs any more."""
        self.model.halt()
