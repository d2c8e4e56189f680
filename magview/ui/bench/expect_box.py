"""The reading of the lamp that is expected: after the planned acts, or now that something was moved."""

from __future__ import annotations

from PySide6.QtCore import QRectF
from PySide6.QtGui import QColor, QFont, QFontMetrics, QPainter, QPaintEvent, QPen
from PySide6.QtWidgets import QHBoxLayout, QLabel, QPushButton, QWidget

from magview.bench.actions import ReadLamp
from magview.bench.apply import LAMP_LIMIT_DEG
from magview.bench.lamp import foretold
from magview.bench.lamp_words import NOT_READ, btdc_words, should_read_words, should_words
from magview.bench.planned import expected_words
from magview.bench.state import BenchState, Engaged, mounting_of
from magview.physics.engine.coupling import Move
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.steady_label import SteadyLabel


class ExpectBox(QWidget):
    """A sentence, the angle in large figures, and a button that enters it once the lamp was read to say so."""

    def __init__(self, model: BenchModel, look: Look) -> None:
        super().__init__()
        self._model, self._look = model, look
        self.should, self.angle = SteadyLabel(), QLabel()
        self.angle.setAccessibleName(tr("Reading of the lamp to be expected"))
        self.reads_so = QPushButton(tr("It reads s&o"))
        self.reads_so.setToolTip(tr("Enter as the new reading what the lamp should now read, once it was read again"))
        self.reads_so.clicked.connect(self._reads_so)
        row = QHBoxLayout(self)
        row.setContentsMargins(8, 5, 8, 5)
        row.addWidget(self.should, 1)
        row.addWidget(self.angle)
        row.addWidget(self.reads_so)
        look.changed.connect(self.update)

    def show_expected(self, state: BenchState, engaged: Engaged, move: Move | None, made: bool) -> None:
        """Show it for a chosen move, `made` or not, else for what was moved since the lamp was read."""
        should = should_read_words(state, engaged.side)
        read = mounting_of(engaged, engaged.side).lamp_read
        quiet = tr("Nothing was moved since the lamp was read.") if read else tr(NOT_READ)
        angle = btdc_words(foretold(state, engaged.side).btdc_deg) if should else ""
        if move is not None and not made:
            should, angle = expected_words(state, engaged.side, move), btdc_words(move.result_btdc_deg)
        self.should.setText(should or quiet)
        self.should.keep_room_for((should_words(LAMP_LIMIT_DEG), should_words(-LAMP_LIMIT_DEG)))
        self.angle.setText(angle)
        font = QFont()
        font.setBold(True)
        font.setPointSizeF(1.4 * self.font().pointSizeF())
        self.angle.setFont(font)
        self.angle.setMinimumWidth(QFontMetrics(font).horizontalAdvance("88.88°"))
        self.reads_so.setEnabled(bool(should_read_words(state, engaged.side)))

    def paintEvent(self, event: QPaintEvent) -> None:
        """A frame of amber: it is not read yet."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        painter.setPen(QPen(QColor(self._look.theme.warn), 1.3))
        painter.setBrush(QColor(self._look.theme.base))
        painter.drawRoundedRect(QRectF(self.rect()).adjusted(1, 1, -1, -1), 4.0, 4.0)

    def _reads_so(self) -> None:
        engaged = self._model.state.engaged
        if engaged is not None:
            self._model.send(ReadLamp(engaged.side, foretold(self._model.state, engaged.side).btdc_deg))
