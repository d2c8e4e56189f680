"""Painted parts of a lesson's strip: the steps in a row, the act, the answers, the outcome, the button onward."""

from __future__ import annotations

from PySide6.QtCore import QPointF, QRectF, QSize, Qt
from PySide6.QtGui import QColor, QFont, QFontInfo, QFontMetricsF, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QFrame, QLabel, QPushButton, QSizePolicy, QWidget

from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.theme import Theme


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
    """One answer, after the key that takes it: free, taken, right, or taken and not right."""

    def __init__(self, look: Look, key: int) -> None:
        super().__init__()
        self._look, self._key = look, key
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
        words = f"{self._key}  {self.text()}  {self.sign}".rstrip()
        fitted = painter.fontMetrics().elidedText(words, Qt.TextElideMode.ElideRight, self.width() - 12)
        painter.drawText(self.rect(), Qt.AlignmentFlag.AlignCenter, fitted)


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
