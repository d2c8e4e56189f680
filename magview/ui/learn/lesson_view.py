"""A lesson over the room: the step that waits, what is wrong with what was done, and in the end what was learnt."""

from __future__ import annotations

from PySide6.QtCore import QRect, Qt, Signal
from PySide6.QtGui import QFont, QResizeEvent
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QListWidget, QListWidgetItem, QPushButton, QVBoxLayout

from magview.practice.actions import Act, PointAt
from magview.practice.lesson import LessonStep
from magview.practice.lesson_words import done_words, learnt, part_of, step_done, tabs_of, waiting_words, wrong_words
from magview.practice.state import Practice
from magview.spec.language import together, tr
from magview.ui.kit.look import Look
from magview.ui.kit.style import tint
from magview.ui.practice.controls import TABS, PracticePanel, Reserved, wrapped
from magview.ui.practice.model import LessonModel


class LessonStrip(PracticePanel):
    """Above the room: one step, always in view. It goes on by itself once the act is done."""

    part = Signal(str)
    """The part of the picture the step is about."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        super().__init__(model, look)
        self._lesson = model
        self._wrong, self._noticed, self._roomy = "", "", True
        outer = QVBoxLayout(self)
        outer.setContentsMargins(8, 4, 8, 4)
        frame = QFrame()
        frame.setFrameShape(QFrame.Shape.StyledPanel)
        outer.addWidget(frame)
        column = QVBoxLayout(frame)
        column.setSpacing(2)
        edges = (outer.contentsMargins(), column.contentsMargins())
        self._aside = sum(m.left() + m.right() for m in edges) + 2 * frame.frameWidth()
        self.title, self.words, self.answer = wrapped(), Reserved(1), Reserved(1)
        # The result of the last act stands before what is to be done next.
        column.addWidget(self.answer)
        row = QHBoxLayout()
        row.addWidget(self.title, 1)
        self.hint = QPushButton(tr("A hint"))
        self.hint.setAutoDefault(False)
        self.hint.clicked.connect(self._tell)
        row.addWidget(self.hint)
        column.addLayout(row)
        column.addWidget(self.words)
        for label, edge in ((self.words, Qt.AlignmentFlag.AlignTop), (self.answer, Qt.AlignmentFlag.AlignBottom)):
            label.setAlignment(edge | Qt.AlignmentFlag.AlignLeft)
        self.title.setAccessibleName(tr("Step"))
        self.answer.setAccessibleName(tr("What came of it"))
        self._show()

    def _acted(self, act: Act, new: Practice, old: Practice) -> None:
        run = self._lesson.run
        if run.at != self._at:
            self._wrong, self._noticed = "", done_words(run, self._at)
        elif run.step is not None:
            self._wrong = wrong_words(run.step, act, old, new)
            if self._wrong and isinstance(act, PointAt):  # looked for in the picture: it lies elsewhere
                self._wrong = f"{self._wrong} {_where(run.step)}".rstrip()
        self._show()

    def _refused(self, sentence: str) -> None:
        self._wrong = f"{sentence[0].upper()}{sentence[1:]}."
        self._show()

    def _show(self) -> None:
        run = self._lesson.run
        self._at = run.at
        step = run.step
        if step is None:
            self.title.setText(tr("{name}: done", name=tr(run.lesson.name)))
            told = " ".join(tr(line) for line in learnt(run))
            self.words.setText(tr("What you have learnt: {told}", told=told) if told else tr("All steps are done."))
            self.answer.setText("")
        else:
            self.title.setText(
                tr(
                    "Step {step} of {steps} – {title}",
                    step=run.at + 1,
                    steps=len(run.lesson.steps),
                    title=tr(step.title),
                )
            )
            self.words.setText(_text(step))
            told = f"✓ {self._noticed}" if self._noticed else ""
            self.answer.setText(f"✗ {self._wrong}" if self._wrong else told)
        self.hint.setVisible(step is not None and bool(step.hint))
        self.part.emit(self.step_part())
        self.show_practice(run.practice)

    def step_part(self) -> str:
        """The part the step is about; "" for none."""
        step = self._lesson.run.step
        return part_of(step) if step is not None else ""

    def show_practice(self, practice: Practice) -> None:
        """Colours by what came of the last act."""
        tint(self.title, self.look.theme.text, bold=True)
        tint(self.answer, self.look.theme.bad if self._wrong else self.look.theme.good, bold=False)

    def keep_room(self, roomy: bool) -> None:
        """So many lines as the longest step and what may be said of it take: what is below stays where it is.

        A small window has not the room, and keeps one line.
        """
        self._roomy = roomy
        steps = self._lesson.run.lesson.steps
        wide = self.width() - self._aside  # the labels may not have been laid out anew yet
        self.words.reserve(_lines(self.words, wide, [_text(s) for s in steps]) if roomy else 1)
        said = [text for i, step in enumerate(steps) for text in self._said_of(i, step)]
        self.answer.reserve(_lines(self.answer, wide, said) if roomy else 1)

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Lines of another width are others in number."""
        super().resizeEvent(event)
        self.keep_room(self._roomy)

    @staticmethod
    def _said_of(number: int, step: LessonStep) -> tuple[str, str]:
        waits = tr("Not yet. The step waits for {wanted}.", wanted=together([waiting_words(u) for u in step.until]))
        return f"✓ {step_done(number, step)}", f"✗ {waits}"

    def _tell(self) -> None:
        step = self._lesson.run.step
        if step is not None:
            self.words.setText(f"{_text(step)}\n{tr('Hint: {hint}', hint=tr(step.hint))}")


def _text(step: LessonStep) -> str:
    """Say what to do, and where lies what it needs."""
    return f"{tr(step.text)} {_where(step)}".rstrip()


def _where(step: LessonStep) -> str:
    tabs = [tr("“{tab}”", tab=tr(TABS[tab]).replace("&", "")) for tab in tabs_of(step)]
    if not tabs:
        return ""
    if len(tabs) == 1:
        return tr("What it needs is on the tab {tab}.", tab=tabs[0])
    return tr("What it needs is on the tabs {tabs}.", tabs=together(tabs))


def _lines(label: QLabel, width: int, texts: list[str]) -> int:
    """Lines that the longest of some texts takes in a label so wide [px]."""
    metrics, wide = label.fontMetrics(), QRect(0, 0, max(width, 1), 10_000)
    flags = int(Qt.AlignmentFlag.AlignLeft) | int(Qt.TextFlag.TextWordWrap)
    tallest = max(metrics.boundingRect(wide, flags, text).height() for text in texts)
    return max(1, round(tallest / metrics.lineSpacing()))


class LessonPanel(PracticePanel):
    """All steps with those done ticked, and what was to be noticed so far."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        super().__init__(model, look)
        self._lesson = model
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        lesson = model.run.lesson
        self.about = wrapped(tr(lesson.text))
        layout.addWidget(self.about)
        layout.addWidget(wrapped(tr(lesson.exercise.story)))
        self.steps = QListWidget()
        self.steps.setAccessibleName(tr("Steps"))
        self.steps.setMinimumHeight(8 * self.fontMetrics().height())
        layout.addWidget(self.steps, 1)
        self.noticed = wrapped()
        layout.addWidget(self.noticed)
        self.show_practice(model.practice)

    def show_practice(self, practice: Practice) -> None:
        """Tick what is done."""
        run = self._lesson.run
        if self.steps.count() != len(run.lesson.steps):
            self.steps.clear()
            self.steps.addItems([""] * len(run.lesson.steps))
        for i, step in enumerate(run.lesson.steps):
            sign = "✓" if i < run.at else ("▶" if i == run.at else "  ")
            item: QListWidgetItem = self.steps.item(i)
            item.setText(f"{sign} {i + 1}. {tr(step.title)}")
            font = QFont()
            font.setBold(i == run.at)
            item.setFont(font)
        if not run.done:
            self.steps.scrollToItem(self.steps.item(run.at))
        told = learnt(run)
        self.noticed.setText("\n".join(f"• {tr(line)}" for line in told))
        self.noticed.setVisible(bool(told))
