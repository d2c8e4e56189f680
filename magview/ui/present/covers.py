"""Covers over the pictures while a class looks: the frozen picture, and before beside after."""

from __future__ import annotations

from PySide6.QtCore import QEvent, QObject, QPoint, QRect, Qt
from PySide6.QtGui import QColor, QFont, QPainter, QPaintEvent, QPen, QPixmap
from PySide6.QtWidgets import QHBoxLayout, QLabel, QSizePolicy, QVBoxLayout, QWidget

from magview.bench.actions import Action
from magview.bench.changes import changes
from magview.bench.state import BenchState
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.breaker_view import BreakerView


class Cover(QWidget):
    """A widget that lies over another, as large as it is, without being in its layout."""

    def __init__(self, over: QWidget, window: QWidget) -> None:
        super().__init__(window)
        self._over = over
        over.installEventFilter(self)
        self._follow()

    def eventFilter(self, watched: QObject, event: QEvent) -> bool:
        """Follow what lies below when it moves."""
        if event.type() in (QEvent.Type.Resize, QEvent.Type.Move, QEvent.Type.Show):
            self._follow()
        return super().eventFilter(watched, event)

    def _follow(self) -> None:
        window = self.parentWidget()
        if window is not None:
            self.setGeometry(QRect(self._over.mapTo(window, QPoint(0, 0)), self._over.size()))


class Frozen(Cover):
    """The pictures as they were; hands reach through to the bench, which moves on unseen."""

    def __init__(self, over: QWidget, window: QWidget, look: Look) -> None:
        self._picture, self._moved = QPixmap(over.grab()), False
        super().__init__(over, window)
        self.look = look
        self.setAttribute(Qt.WidgetAttribute.WA_TransparentForMouseEvents)
        self.setAttribute(Qt.WidgetAttribute.WA_OpaquePaintEvent)
        self.setAccessibleName(self.words)
        look.changed.connect(self.update)
        self.show()
        self.raise_()

    @property
    def words(self) -> str:
        """Return the words that the picture says of itself."""
        return tr("FROZEN · the bench has moved on") if self._moved else tr("FROZEN · as on the bench")

    def bench_moved(self) -> None:
        """The bench is no longer as it is shown."""
        if not self._moved:
            self._moved = True
            self.setAccessibleName(self.words)
            self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The kept picture, a dashed frame, and what it is."""
        painter = QPainter(self)
        painter.fillRect(self.rect(), QColor(self.look.theme.paper))
        ratio = self._picture.devicePixelRatio()
        size = (self._picture.size() / ratio).scaled(self.size(), Qt.AspectRatioMode.KeepAspectRatio)
        at = self.rect().center() - QPoint(size.width() // 2, size.height() // 2)
        where = QRect(at, size) if size != self._picture.size() / ratio else QRect(QPoint(0, 0), size)
        painter.setRenderHint(QPainter.RenderHint.SmoothPixmapTransform)
        painter.drawPixmap(where, self._picture)
        painter.setPen(QPen(QColor(self.look.theme.hand), 6.0, Qt.PenStyle.DashLine))
        painter.drawRect(self.rect().adjusted(3, 3, -3, -3))
        font = QFont(self.font())
        font.setBold(True)
        painter.setFont(font)
        metrics = painter.fontMetrics()
        band = QRect(0, 0, metrics.horizontalAdvance(self.words) + 32, metrics.height() + 12)
        band.moveCenter(QPoint(self.width() // 2, self.height() - band.height() // 2 - 8))
        painter.fillRect(band, QColor(self.look.theme.text))
        painter.setPen(QColor(self.look.theme.paper))
        painter.drawText(band, Qt.AlignmentFlag.AlignCenter, self.words)
        painter.end()


class KeptMoment(Pictured):
    """A state that stands: what hands do to it is refused."""

    def __init__(self, state: BenchState, parent: QObject | None = None) -> None:
        super().__init__(parent)
        self._state = state

    @property
    def state(self) -> BenchState:
        """The moment kept."""
        return self._state

    def send(self, action: Action, gesture: object = None) -> bool:
        """Nothing can be done to it."""
        self.refused.emit(tr("This is the moment that was kept: it does not move."))
        return False


class BeforeAndAfter(Cover):
    """The kept moment beside the bench as it is now, and between them in words what has changed."""

    def __init__(self, before: BenchState, now: BreakerView, model: Pictured, over: QWidget, window: QWidget,
                 look: Look) -> None:  # fmt: skip
        super().__init__(over, window)
        self._model, self.look = model, look
        self.kept = KeptMoment(before, self)
        self.before = BreakerView(self.kept, look, numbers=now.numbers)
        self.after = BreakerView(model, look, numbers=now.numbers)
        self.words = QLabel()
        self.words.setWordWrap(True)
        self.words.setSizePolicy(QSizePolicy.Policy.Preferred, QSizePolicy.Policy.Minimum)
        self.setAutoFillBackground(True)
        layout, pair = QVBoxLayout(self), QHBoxLayout()
        layout.setContentsMargins(4, 4, 4, 4)
        for title, view in ((tr("Before"), self.before), (tr("Now"), self.after)):
            view.setAccessibleName(tr("{title}: breaker end of the magneto", title=title))
            view.snaps = now.snaps
            view.set_mirrored(now.mirrored)
            view.set_exaggeration(now.exaggeration)
            head = QLabel(title)
            font = QFont()
            font.setBold(True)
            head.setFont(font)
            head.setAlignment(Qt.AlignmentFlag.AlignHCenter)
            one = QVBoxLayout()
            one.addWidget(head)
            one.addWidget(view, 1)
            pair.addLayout(one, 1)
        layout.addLayout(pair, 1)
        layout.addWidget(self.words)
        model.changed.connect(self.show_state)
        look.changed.connect(self._look_changed)
        self.show_state(model.state)
        self.show()
        self.raise_()
        self.after.setFocus()

    def _look_changed(self) -> None:
        self.show_state(self._model.state)

    def set_numbers(self, numbers: bool) -> None:
        """Write true numbers, or none."""
        for view in (self.before, self.after):
            view.numbers = numbers
            view.show_state(self.kept.state if view is self.before else self._model.state)
            view.viewport().update()
        self.show_state(self._model.state)

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Say what is different now."""
        told = changes(self.kept.state, state, numbers=self.after.numbers)
        self.words.setText("   •   ".join(told) if told else tr("Nothing has changed."))
