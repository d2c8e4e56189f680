"""Over a lesson's pictures: the step, what is asked, and what came of it. Its height is the same whatever it says."""

from __future__ import annotations

from functools import partial

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import QColor, QFont, QFontInfo, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QHBoxLayout, QLabel, QPushButton, QSizePolicy, QVBoxLayout, QWidget

from magview.practice.lesson import LessonStep
from magview.practice.lesson_run import Stand, choices_of
from magview.practice.lesson_words import how_words, question_words, stand_words
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.theme import Theme
from magview.ui.learn.model import LessonModel

HEIGHT_EM = 15.2
_STEPS_EM, _ACT_EM, _HOW_EM, _QUESTION_EM, _FEEDBACK_EM = 1.8, 2.5, 3.0, 3.2, 4.4
_SHORT_ACT = 120
"""An act longer than this many letters, of a lesson written otherwise, is told below its title."""


def em_of(widget: QWidget) -> float:
    """The size of type of a widget [px]."""
    return float(QFontInfo(widget.font()).pixelSize())


class Dots(QWidget):
    """The steps in a row: those done ticked, the one in hand filled, the others by their number."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look, self._steps, self._at, self._done = look, 1, 0, False
        self._title = ""
        look.changed.connect(self.update)

    def show_step(self, at: int, steps: int, done: bool, title: str) -> None:
        """Show where the lesson stands."""
        self._at, self._steps, self._done, self._title = at, steps, done, title
        self.setAccessibleName(self.words)
        self.update()

    @property
    def words(self) -> str:
        """Return in words where the lesson stands."""
        if self._at >= self._steps:
            return tr("all {steps} steps done", steps=self._steps)
        return tr("step {step} of {steps}, {title}", step=self._at + 1, steps=self._steps, title=self._title)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Discs on a line, and the words."""
        theme, em, painter = self._look.theme, em_of(self), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        y, radius = self.height() / 2, 0.72 * em
        room = self.width() - 15 * em
        pitch = min(2.3 * em, max(1.6 * em, room / max(self._steps, 1)))
        painter.setPen(QPen(QColor(theme.hair), 1.0))
        painter.drawLine(QPointF(em, y), QPointF(em + (self._steps - 1) * pitch, y))
        font = QFont(self.font())
        font.setPixelSize(max(9, round(0.85 * em)))
        font.setBold(True)
        painter.setFont(font)
        for number in range(self._steps):
            done = number < self._at or (number == self._at and self._done)
            here = number == self._at
            fill, ink = (
                (theme.good, theme.base)
                if done
                else (theme.hand, theme.on_hand)
                if here
                else (theme.base, theme.text)
            )
            size = radius * (1.2 if here else 1.0)
            box = QRectF(em + number * pitch - size, y - size, 2 * size, 2 * size)
            painter.setPen(QPen(QColor(theme.hand if here else theme.hair), 2.0 if here else 1.0))
            painter.setBrush(QColor(fill))
            painter.drawEllipse(box)
            painter.setPen(QColor(ink))
            painter.drawText(box, Qt.AlignmentFlag.AlignCenter, "✓" if done else str(number + 1))
        painter.setFont(self.font())
        painter.setPen(QColor(theme.faint))
        x = em + (self._steps - 1) * pitch + 1.6 * em
        words = painter.fontMetrics().elidedText(self.words, Qt.TextElideMode.ElideRight, round(self.width() - x))
        painter.drawText(QRectF(x, 0, self.width() - x, self.height()), Qt.AlignmentFlag.AlignVCenter, words)


class ActLabel(QLabel):
    """The act, as large as it can be in the room there is: on one line, or else on two."""

    def __init__(self) -> None:
        super().__init__()
        self.setWordWrap(True)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.setAlignment(Qt.AlignmentFlag.AlignLeft | Qt.AlignmentFlag.AlignVCenter)

    def paintEvent(self, event: QPaintEvent) -> None:
        """In the largest type that fits."""
        em, painter = em_of(self), QPainter(self)
        painter.setPen(self.palette().color(self.foregroundRole()))
        font = QFont(self.font())
        font.setBold(True)
        for size in (1.65, 1.5, 1.35, 1.2, 1.1, 1.0, 0.9):
            font.setPixelSize(round(size * em))
            metrics = QFontMetricsF(font)
            box = metrics.boundingRect(QRectF(0, 0, self.width(), 1e4), int(Qt.TextFlag.TextWordWrap), self.text())
            if box.height() <= self.height() + 1:
                break
        painter.setFont(font)
        flags = int(Qt.AlignmentFlag.AlignVCenter) | int(Qt.TextFlag.TextWordWrap)
        painter.drawText(self.rect(), flags, self.text())


class Chip(QPushButton):
    """One answer: free, taken, right, or taken and not right."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.sign = ""
        self.right = False
        self.setCheckable(True)
        self.setAutoDefault(False)
        policy = QSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        policy.setRetainSizeWhenHidden(True)
        self.setSizePolicy(policy)

    def show_answer(self, words: str, taken: bool, right: bool | None) -> None:
        """`right`: whether it is the right one; None where nobody may know yet."""
        self.setChecked(taken)
        self.right = bool(right)
        self.sign = "" if right is None else "✓" if right and taken else "✗" if taken else ""
        self.setText(words)
        said = {"✓": tr("right"), "✗": tr("not right")}.get(self.sign, tr("the right answer") if self.right else "")
        self.setAccessibleName(f"{words}, {said}" if said else words)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """Edge, ground and sign: never by colour alone."""
        theme, painter = self._look.theme, QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        taken = self.isChecked()
        edge = theme.good if self.right else theme.hand if taken else theme.hair
        fill = theme.good_fill if self.right else theme.hand_fill if taken else theme.base
        painter.setPen(QPen(QColor(edge), 2.0 if taken or self.right or self.hasFocus() else 1.0))
        painter.setBrush(QColor(fill))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 3.0, 3.0)
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.hand), 1.0, Qt.PenStyle.DotLine))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(4, 4, -4, -4), 2.0, 2.0)
        font = QFont(self.font())
        font.setBold(taken or self.right)
        painter.setFont(font)
        painter.setPen(QColor(theme.text))
        words = f"{self.text()}  {self.sign}" if self.sign else self.text()
        fitted = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, self.width() - 12)
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, fitted)


class Asked(QWidget):
    """A question over its answers, in room that it keeps while nothing is asked."""

    chosen = Signal(int)

    def __init__(self, look: Look) -> None:
        super().__init__()
        self.words = QLabel()
        self.chips = [Chip(look) for _ in range(3)]
        column = QVBoxLayout(self)
        column.setContentsMargins(0, 0, 0, 0)
        column.setSpacing(1)
        column.addWidget(self.words)
        row = QHBoxLayout()
        row.setSpacing(6)
        for choice, chip in enumerate(self.chips):
            chip.clicked.connect(partial(self._clicked, choice))
            row.addWidget(chip, 1)
        column.addLayout(row)

    def _clicked(self, choice: int, _: bool = False) -> None:
        self.chosen.emit(choice)

    def size_up(self, em: float) -> None:
        """As high as the type asks."""
        self.setFixedHeight(round(_QUESTION_EM * em))
        for chip in self.chips:
            chip.setFixedHeight(round(1.9 * em))


class LessonStrip(QFrame):
    """Above the pictures, always in view."""

    more = Signal()
    """On to the next lesson."""

    def __init__(self, model: LessonModel, look: Look) -> None:
        super().__init__()
        self.model, self.look = model, look
        self.hinted = False
        self.dots, self.act, self.how = Dots(look), ActLabel(), QLabel()
        self.how.setWordWrap(True)
        self.how.setAlignment(Qt.AlignmentFlag.AlignTop | Qt.AlignmentFlag.AlignLeft)
        self.how.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Fixed)
        self.asked = [Asked(look), Asked(look)]
        for number, asked in enumerate(self.asked):
            asked.chosen.connect(partial(model.answer, number))
        self.feedback = Feedback(look)
        self.next = NextButton(look)
        self.next.clicked.connect(self._next)
        self.back, self.hint, self.undo = (_link(words) for words in (tr("Back"), tr("Hint"), tr("Undo act")))
        self.back.clicked.connect(model.go_back)
        self.undo.clicked.connect(model.undo)
        self.hint.clicked.connect(self.tell_hint)
        self._lay_out()
        self._size_up()
        model.judged.connect(self._judged)
        look.changed.connect(self.show_run)
        self.show_run()

    def _lay_out(self) -> None:
        self._outer = QVBoxLayout(self)
        above, left, right = QHBoxLayout(), QVBoxLayout(), QVBoxLayout()
        left.setSpacing(2)
        right.setSpacing(3)
        for widget in (self.dots, self.act, self.how):
            left.addWidget(widget)
        left.addStretch(1)
        for asked in self.asked:
            right.addWidget(asked)
        right.addStretch(1)
        above.setSpacing(14)
        above.addLayout(left, 46)
        above.addLayout(right, 54)
        self._outer.addLayout(above, 1)
        below, beside, links = QHBoxLayout(), QVBoxLayout(), QHBoxLayout()
        below.addWidget(self.feedback, 1)
        beside.setSpacing(2)
        beside.addWidget(self.next)
        for link in (self.back, self.hint, self.undo):
            links.addWidget(link)
        beside.addLayout(links)
        below.addLayout(beside)
        self._outer.addLayout(below)

    def changeEvent(self, event: QEvent) -> None:
        """Type of another size needs other room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange and hasattr(self, "_outer"):
            self._size_up()

    def _size_up(self) -> None:
        em = em_of(self)
        self._outer.setContentsMargins(round(1.2 * em), round(0.6 * em), round(1.2 * em), round(0.6 * em))
        self._outer.setSpacing(round(0.4 * em))
        self.setFixedHeight(round(HEIGHT_EM * em))
        self.dots.setFixedHeight(round(_STEPS_EM * em))
        self.act.setFixedHeight(round(_ACT_EM * em))
        self.how.setFixedHeight(round(_HOW_EM * em))
        for asked in self.asked:
            asked.size_up(em)
        self.feedback.setFixedHeight(round(_FEEDBACK_EM * em))
        self.next.setFixedHeight(round(2.4 * em))
        self.next.setFixedWidth(round(15 * em))
        for link in (self.back, self.hint, self.undo):
            link.setFixedHeight(max(24, round(1.9 * em)) if em < 14 else round(1.9 * em))

    # -------------------------------------------------------------- showing

    def _judged(self) -> None:
        self.hinted = False
        self.show_run()

    def show_run(self) -> None:
        """Show how the lesson stands."""
        run = self.model.run
        step, steps = run.step, run.lesson.steps
        title = tr(step.title) if step is not None else ""
        self.dots.show_step(run.at, len(steps), run.step_done, title)
        act, how = (
            _act_and_how(step, how_words(run))
            if step is not None
            else (tr("{name}: done", name=tr(run.lesson.name)), "")
        )
        self.act.setText(act)
        self.act.setAccessibleName(act)
        self.how.setText(how)
        self.how.setToolTip(how)
        for number, asked in enumerate(self.asked):
            self._show_question(number, asked)
        self._say()
        onward = tr("Next lesson") if step is None else tr("Next step") if run.at + 1 < len(steps) else tr("Finish")
        self.next.show_words(onward, run.step_done or step is None)
        self.hint.setEnabled(step is not None and bool(step.hint))
        self.undo.setEnabled(run.before is not None)
        self.back.setEnabled(run.previous is not None or run.before is not None)

    def _show_question(self, number: int, asked: Asked) -> None:
        run = self.model.run
        there = run.step is not None and number < len(run.step.ask)
        asked.words.setText("")
        asked.setEnabled(there)
        for chip in asked.chips:
            chip.setVisible(False)
        if run.step is None or not there:
            return
        question, mine = run.step.ask[number], run.answers[run.at][number]
        asked.words.setText(f"<b>{question_words(question)}</b>")
        for choice, (chip, words) in enumerate(zip(asked.chips, choices_of(question), strict=False)):
            chip.setVisible(True)
            right = run.rights[run.at][number] == choice if run.step_done else None
            chip.show_answer(tr(words), mine == choice, right)

    def _say(self) -> None:
        run, refusal = self.model.run, self.model.refusal
        if self.hinted and run.step is not None:
            self.feedback.show_words("?", "hand", tr("Hint"), tr(run.step.hint))
        elif refusal and run.step_done:
            head, more = stand_words(run)
            said = f"{refusal[0].upper()}{refusal[1:].rstrip('.')}."
            self.feedback.show_words("✓", "good", said, f"{head} {more}".strip())
        elif refusal:
            self.feedback.show_words("△", "warn", f"{refusal[0].upper()}{refusal[1:].rstrip('.')}.", "")
        else:
            head, more = stand_words(run)
            sign, role = _SIGNS[run.stand] if run.step is not None else ("✓", "good")
            if not head and not run.answered:
                head, more = "", tr("Guess first: choose an answer above, or press 1, 2 or 3.")
            self.feedback.show_words(sign if head else "", role, head, more)

    def tell_hint(self) -> None:
        """Say the hint in the place of what came of it."""
        self.hinted = True
        self._say()

    def _next(self) -> None:
        if self.model.run.done:
            self.more.emit()
        else:
            self.model.go_on()


_SIGNS = {
    Stand.WAITING: ("", "faint"),
    Stand.PART_WAY: ("…", "faint"),
    Stand.WRONG: ("✗", "bad"),
    Stand.DONE: ("✓", "good"),
}
"""Sign and colour of how a step stands."""


def _act_and_how(step: LessonStep, how: str) -> tuple[str, str]:
    """The act, and how to do it; a long act of a lesson written otherwise stands below its title."""
    if len(step.text) <= _SHORT_ACT:
        return tr(step.text), how
    return tr(step.title), tr(step.text)


def _link(words: str) -> QPushButton:
    button = QPushButton(words)
    button.setFlat(True)
    button.setAutoDefault(False)
    return button


class Feedback(QFrame):
    """The outcome: a sign, one sentence, and why."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look, self._role = look, "faint"
        self.sign, self.head, self.more = "", "", ""
        self.setSizePolicy(QSizePolicy.Policy.Expanding, QSizePolicy.Policy.Fixed)
        look.changed.connect(self.update)

    def show_words(self, sign: str, role: str, head: str, more: str) -> None:
        """Say something."""
        self.sign, self._role, self.head, self.more = sign, role, head, more
        text = f"{head} {more}".strip()
        self.setAccessibleName(text or tr("Nothing yet"))
        self.setToolTip(text)
        self.update()

    @property
    def role(self) -> str:
        """The role of its colour: "good", "bad", "warn", "hand" or "faint"."""
        return self._role

    def sizeHint(self) -> QSize:
        """As wide as there is room."""
        return QSize(200, 50)

    def paintEvent(self, event: QPaintEvent) -> None:
        """Ground, sign and words."""
        theme, em, painter = self._look.theme, em_of(self), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        edge, fill = _colours(theme, self._role)
        painter.setPen(QPen(QColor(edge), 1.6 if self._role != "faint" else 1.0))
        painter.setBrush(QColor(fill))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4.0, 4.0)
        x = 1.0 * em
        if self.sign:
            font = QFont(self.font())
            font.setPixelSize(round(1.5 * em))
            font.setBold(True)
            painter.setFont(font)
            painter.setPen(QColor(edge))
            painter.drawText(QRectF(0, 0, 3.2 * em, self.height()), Qt.AlignmentFlag.AlignCenter, self.sign)
            x = 3.4 * em
        self._paint_words(painter, QRectF(x, 0.25 * em, self.width() - x - 0.6 * em, self.height() - 0.5 * em))

    def _paint_words(self, painter: QPainter, room: QRectF) -> None:
        em, theme = em_of(self), self._look.theme
        flags = int(Qt.TextFlag.TextWordWrap)
        for size in (1.05, 1.0, 0.92, 0.84):
            bold, plain = QFont(self.font()), QFont(self.font())
            bold.setPixelSize(round(size * em))
            plain.setPixelSize(round(size * em))
            bold.setBold(True)
            wide = QRectF(0, 0, room.width(), 1e4)
            head = QFontMetricsF(bold).boundingRect(wide, flags, self.head).height() if self.head else 0.0
            more = QFontMetricsF(plain).boundingRect(wide, flags, self.more).height() if self.more else 0.0
            if head + more <= room.height():
                break
        top = room.top() + max(0.0, (room.height() - head - more) / 2)
        painter.setPen(QColor(theme.text))
        painter.setFont(bold)
        painter.drawText(QRectF(room.left(), top, room.width(), head + 2), flags, self.head)
        painter.setFont(plain)
        painter.drawText(
            QRectF(room.left(), top + head, room.width(), room.bottom() - top - head + 2), flags, self.more
        )


def _colours(theme: Theme, role: str) -> tuple[str, str]:
    """Edge and ground of a role."""
    return {
        "good": (theme.good, theme.good_fill), "bad": (theme.bad, theme.bad_fill), "warn": (theme.warn, theme.base),
        "hand": (theme.hand, theme.hand_fill),
    }.get(role, (theme.hair, theme.window))  # fmt: skip


class NextButton(QPushButton):
    """The one filled button: it can be pressed once the step is done. Its key stands on it."""

    def __init__(self, look: Look) -> None:
        super().__init__()
        self._look = look
        self.setAutoDefault(False)

    def show_words(self, words: str, ready: bool) -> None:
        """Say where it goes, and whether it goes."""
        self.setText(words)
        self.setEnabled(ready)
        self.setToolTip(tr("{words} (Enter)", words=words) if ready else tr("First do the step"))

    def paintEvent(self, event: QPaintEvent) -> None:
        """Filled when it can be pressed."""
        theme, em, painter = self._look.theme, em_of(self), QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        ready = self.isEnabled()
        painter.setPen(QPen(QColor(theme.hand if ready else theme.hair), 1.0))
        painter.setBrush(QColor(theme.hand if ready else theme.window))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4.0, 4.0)
        if self.hasFocus():
            painter.setPen(QPen(QColor(theme.on_hand if ready else theme.hand), 1.0, Qt.PenStyle.DotLine))
            painter.drawRoundedRect(QRectF(self.rect()).adjusted(4, 4, -4, -4), 2.0, 2.0)
        painter.setPen(QColor(theme.on_hand if ready else theme.faint))
        font = QFont(self.font())
        font.setBold(ready)
        painter.setFont(font)
        metrics = painter.fontMetrics()
        key = tr("Enter")
        width, key_width = metrics.horizontalAdvance(self.text()), metrics.horizontalAdvance(key) + round(0.8 * em)
        x = (self.width() - width - key_width - 0.6 * em) / 2
        painter.drawText(QRectF(x, 0, width + 4, self.height()), Qt.AlignmentFlag.AlignVCenter, self.text())
        box = QRectF(x + width + 0.6 * em, self.height() / 2 - 0.8 * em, key_width, 1.6 * em)
        painter.setBrush(Qt.BrushStyle.NoBrush)
        painter.drawRoundedRect(box, 3.0, 3.0)
        painter.drawText(box, Qt.AlignmentFlag.AlignCenter, key)
