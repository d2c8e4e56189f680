"""Base of all pictures on the bench: a fitted, antialiased view with words painted over it."""

from __future__ import annotations

from collections.abc import Callable

from PySide6.QtCore import QEvent, QPointF, QRectF, QSize, Qt, Signal
from PySide6.QtGui import (
    QBrush,
    QColor,
    QFocusEvent,
    QFontMetricsF,
    QMouseEvent,
    QPainter,
    QPaintEvent,
    QPen,
    QPixmap,
    QResizeEvent,
    QStaticText,
    QTransform,
    QWheelEvent,
)
from PySide6.QtWidgets import QGraphicsView, QWidget

from magview.bench.state import BenchState
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.kit.turns import Follower
from magview.ui.pictures.ghost import Ghost
from magview.ui.pictures.scene import PictureScene


def step_factor(modifiers: Qt.KeyboardModifier) -> float:
    """Steps by hand: one, ten times finer with Shift, a hundred times with Shift and Alt, ten times coarser
    with Alt alone (Ctrl is for zooming)."""
    shift = bool(modifiers & Qt.KeyboardModifier.ShiftModifier)
    alt = bool(modifiers & Qt.KeyboardModifier.AltModifier)
    return {(False, False): 1.0, (True, False): 0.1, (True, True): 0.01, (False, True): 10.0}[shift, alt]


def fill(painter: QPainter, boxes: list[QRectF], colour: QColor) -> None:
    """As `fillRect`, which asks whether a colour is a gradient, whereupon PySide builds 200 names of those (5 ms)."""
    pen = painter.pen()
    painter.setPen(Qt.PenStyle.NoPen)
    painter.setBrush(QBrush(colour, Qt.BrushStyle.SolidPattern))
    painter.drawRects(boxes)
    painter.setPen(pen)
    painter.setBrush(QBrush())


class PictureView(QGraphicsView):
    """A still view of a picture scene: antialiased, no scroll bars, fitted by its owner."""

    lit = Signal(str)
    """The part under the pointer, for other pictures to light theirs; "" where there is none."""

    def __init__(
        self,
        scene: PictureScene,
        look: Look,
        ground: tuple[str, ...],
        moving: tuple[str, ...],
        parent: QWidget | None = None,
    ) -> None:
        """`ground`: groups painted once and kept until one of them moves; `moving`: painted anew on top."""
        super().__init__(scene, parent)
        # One of our own: asked for Qt's, PySide builds every class of widget there is to name its kind (60 ms).
        self.setViewport(QWidget())
        self.look, self._parts = look, scene
        self._model: Pictured
        self.numbers = True
        """Whether true numbers may be written here, and hands find true places by themselves; in practice not."""
        self.ghost = Ghost()
        """The moment it is compared with."""
        self.follower: Follower | None = None
        """Has it show the model's state in its turn; None for a picture that shows each at once."""
        self.to_scale = True
        """Whether a bar can say how long a millimetre is drawn."""
        self.over: Callable[[QPainter], None] | None = None
        """Light that a presenter lays over the picture; None while nobody presents."""
        self._ground_groups, self._moving_groups = ground, moving
        self._ground, self._ground_key = QPixmap(), tuple[object, ...]()
        self._texts: dict[str, tuple[QStaticText, int]] = {}
        self._texts_of_blocks: dict[str, QStaticText] = {}
        self._blocks: dict[tuple[str, int, int], QRectF] = {}
        self.setRenderHint(QPainter.RenderHint.Antialiasing)
        # Whoever changes the picture asks for one repaint; the scene's own requests would make it two.
        self.setViewportUpdateMode(QGraphicsView.ViewportUpdateMode.NoViewportUpdate)
        self.setTransformationAnchor(QGraphicsView.ViewportAnchor.NoAnchor)
        self.setFrameStyle(0)  # by number: naming it, PySide builds every enum of frames
        self.setHorizontalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setVerticalScrollBarPolicy(Qt.ScrollBarPolicy.ScrollBarAlwaysOff)
        self.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self._zoom, self._pan, self._panning = 1.0, QPointF(0.0, 0.0), QPointF()
        self._base = (1.0, QPointF(0.0, 0.0))
        scene.line_factor = look.line_factor
        look.changed.connect(self.look_changed)
        self.mirrored = False
        """Seen from the other side: left and right change places."""

    def paintEvent(self, event: QPaintEvent) -> None:
        """Paint the kept ground, what moves on it, then the words over it in the widget's own pixels."""
        if self.follower is not None:
            self.follower.catch_up(painting=True)
        painter = QPainter(self.viewport())
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        self.paint_picture(painter, self.viewport().devicePixelRatioF())
        if self.over is not None:
            self.over(painter)
        self._paint_focus(painter)
        painter.end()

    def repaint_soon(self) -> None:
        """Ask for a repaint, unless one is under way that shows the same."""
        if self.follower is None or not self.follower.painting:
            self.viewport().update()

    def paint_picture(self, painter: QPainter, ratio: float) -> None:
        """Paint picture and words, with so many pixels of the device for each of ours; 0 on paper: only lines."""
        if ratio:
            self._paint_ground(painter)
            self._parts.paint(painter, self.viewportTransform(), self._moving_groups)
        else:
            painter.fillRect(self.viewport().rect(), QColor(self.look.theme.paper))
            self._parts.paint(painter, self.viewportTransform(), (*self._ground_groups, *self._moving_groups))
        painter.setFont(self.font())
        if self._zoom > 1.0 or not ratio:  # what moves may come under them
            self.paint_edges(painter)
        self.paint_words(painter)

    def paint_part(self, painter: QPainter, part: str, outline: QPen) -> None:
        """Paint one part again, alone, its outline with a pen of its own."""
        self._parts.paint_part(painter, self.viewportTransform(), part, outline)

    def _paint_ground(self, painter: QPainter) -> None:
        """Paint what stands still, in the screen's own pixels, so that it is as crisp as if it were drawn anew."""
        port, base = self.viewport(), self.viewportTransform()
        key = (
            port.size().toTuple(), port.devicePixelRatioF(), self.edges() if self._zoom == 1.0 else None,
            self._parts.version, self._parts.turns(self._ground_groups),
            base.m11(), base.m12(), base.m21(), base.m22(), base.dx(), base.dy(),
        )  # fmt: skip
        if key != self._ground_key:
            ratio = port.devicePixelRatioF()
            self._ground = QPixmap(port.size() * ratio)
            self._ground.setDevicePixelRatio(ratio)
            self._ground.fill(QColor(self.look.theme.paper))
            still = QPainter(self._ground)
            still.setRenderHint(QPainter.RenderHint.Antialiasing)
            self._parts.paint(still, base, self._ground_groups)
            if self._zoom == 1.0:
                still.setFont(self.font())
                self.paint_edges(still)
            still.end()
            self._ground_key = key
        painter.drawPixmap(0, 0, self._ground)

    def paint_words(self, painter: QPainter) -> None:
        """Paint what stands over the picture, in pixels, but for the words of its edges."""

    def edges(self) -> tuple[str, str]:
        """Words along the upper and the lower edge that seldom change: they are kept with what stands still."""
        return "", ""

    def paint_edges(self, painter: QPainter) -> None:
        """Write the words of the edges."""
        head, foot = self.edges()
        if head:
            self.paint_head(painter, head)
        if foot:
            self.paint_foot(painter, foot)

    def text(self, painter: QPainter, x: float, base_line: float, words: str) -> None:
        """Write at a place [px]; laid out once and kept, as most words stay the same from frame to frame."""
        kept = self._texts.get(words)
        if kept is None:
            if len(self._texts) > 500:  # readings change without end
                self._texts.clear()
            static = QStaticText(words)
            static.setTextFormat(Qt.TextFormat.PlainText)
            static.prepare(QTransform(), painter.font())
            kept = self._texts[words] = static, painter.fontMetrics().ascent()
        painter.drawStaticText(QPointF(x, base_line - kept[1]), kept[0])

    def pixel(self, x_mm: float, y_mm: float) -> QPointF:
        """Return where a point of the picture [mm, y up] stands [px], without rounding to whole pixels."""
        return self.viewportTransform().map(QPointF(x_mm, -y_mm))

    def focusInEvent(self, event: QFocusEvent) -> None:
        """Show where the keyboard is."""
        super().focusInEvent(event)
        self.viewport().update()

    def focusOutEvent(self, event: QFocusEvent) -> None:
        """Show that the keyboard has gone."""
        super().focusOutEvent(event)
        self.viewport().update()

    def set_ghost(self, state: BenchState | None) -> None:
        """Compare with a moment; None: with none any more."""
        self.ghost.state = state
        self.viewport().update()

    # -------------------------------------------------------------- looks

    def group_in_hand(self) -> str | None:
        """The group drawn bolder because it is in hand, if there is one."""
        return None

    def look_changed(self) -> None:
        """Other colours, thicker lines, or another unit of length."""
        self.draw_lines(1.0)

    @property
    def line_factor(self) -> float:
        """Thickness of lines against usual."""
        return self._parts.line_factor

    def picture_size(self) -> QSize:
        """Size of the picture [px]."""
        return self.viewport().size()

    def pixels_per_mm(self) -> float:
        """Scale of the view now."""
        return float(self.transform().m22())

    def stand_in(self, model: Pictured) -> Pictured:
        """Show another model's state from now on, unseen until the next repaint; returns the former model."""
        if self.follower is not None:
            self.follower.catch_up()
        former, self._model = self._model, model
        self.show_state(model.state)
        return former

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state."""

    def draw_lines(self, factor: float) -> None:
        """Draw lines this much thicker than the look has them: a file is finer than the screen."""
        self._parts.line_factor = factor * self.look.line_factor
        self._parts.colour(self.look.theme, self.group_in_hand())
        self.viewport().update()

    # -------------------------------------------------------------- framing

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Keep the picture whole and in true proportion."""
        super().resizeEvent(event)
        self.fit()

    def fit(self) -> None:
        """Show the whole picture in the room there is."""

    def changeEvent(self, event: QEvent) -> None:
        """Words of another size leave another room."""
        super().changeEvent(event)
        if event.type() == QEvent.Type.FontChange:
            self._texts.clear()
            self._texts_of_blocks.clear()
            self._blocks.clear()
            self._ground_key = ()
            self.fit()

    def frame(self, pixels_per_mm: float, centre: QPointF) -> None:
        """Fit: the scale and the scene point in the middle of the view, before zoom and pan."""
        self._base = (pixels_per_mm, centre)
        scale = pixels_per_mm * self._zoom
        self.resetTransform()
        self.scale(-scale if self.mirrored else scale, scale)
        self.centerOn(centre + self._pan)
        self.viewport().update()

    @property
    def zoom(self) -> float:
        """Magnification, 1 = the whole picture."""
        return self._zoom

    def zoom_by(self, factor: float, at: QPointF | None = None) -> None:
        """Zoom about a point of the view [px], the middle if none; outlines stay crisp, they are drawn anew."""
        middle = QPointF(self.viewport().rect().center())
        at = at if at is not None else middle
        fixed = self._scene_point(at)
        self._zoom = min(max(self._zoom * factor, 1.0), 60.0)
        scale, centre = self._base
        if self._zoom == 1.0:
            self._pan = QPointF(0.0, 0.0)
        self.frame(scale, centre)
        if self._zoom > 1.0:
            self._pan += fixed - self._scene_point(at)
            self.frame(scale, centre)

    def look_at(self, point: QPointF) -> None:
        """Bring a scene point to the middle."""
        scale, centre = self._base
        self._pan = point - centre
        self.frame(scale, centre)

    def whole(self) -> None:
        """Show the whole picture again."""
        self._zoom, self._pan = 1.0, QPointF(0.0, 0.0)
        self.frame(*self._base)

    def _scene_point(self, at: QPointF) -> QPointF:
        inverse, _ = self.viewportTransform().inverted()
        return inverse.map(at)

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """The middle button pans."""
        if event.button() == Qt.MouseButton.MiddleButton:
            self._panning = event.position()
            self.viewport().setCursor(Qt.CursorShape.SizeAllCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """The picture goes with the pointer while the middle button is down."""
        if event.buttons() & Qt.MouseButton.MiddleButton and self._zoom > 1.0:
            moved = self._scene_point(self._panning) - self._scene_point(event.position())
            self._panning = event.position()
            scale, centre = self._base
            self._pan += moved
            self.frame(scale, centre)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        self.viewport().unsetCursor()

    def wheelEvent(self, event: QWheelEvent) -> None:
        """With Ctrl the wheel zooms about the pointer; without it, it turns what is in hand."""
        turned = (event.angleDelta().y() or event.angleDelta().x()) / 120.0
        if event.modifiers() & Qt.KeyboardModifier.ControlModifier:
            self.zoom_by(1.25**turned, event.position())
        else:
            self.turn(turned * step_factor(event.modifiers()))
        event.accept()

    def turn(self, steps: float) -> None:
        """Turn what is in hand by a number of steps."""

    # -------------------------------------------------------------- words

    def paint_head(self, painter: QPainter, text: str) -> None:
        """The viewpoint, top left, on as many lines as it needs."""
        painter.setPen(QColor(self.look.theme.text))
        self._paint_block(painter, text, Qt.AlignmentFlag.AlignTop)

    def paint_foot(self, painter: QPainter, text: str) -> None:
        """Paint what must be said about the picture along its lower edge; on the pointer where there is no room."""
        if self.viewport().toolTip() != text:
            self.viewport().setToolTip(text)
        if self.foot_height(text) == 0.0:
            return
        painter.setPen(QColor(self.look.theme.faint))
        self._paint_block(painter, text, Qt.AlignmentFlag.AlignBottom)

    def foot_height(self, text: str) -> float:
        """Height of the words along the lower edge [px]; 0 where they would crowd the picture out."""
        height = self.words_height(text)
        return height if height <= 0.24 * self.viewport().height() else 0.0

    def words_height(self, *blocks: str) -> float:
        """Height that blocks of words take at the view's width [px]."""
        return sum(self._block(text, Qt.AlignmentFlag.AlignTop).height() + 4.0 for text in blocks)

    def _block(self, text: str, edge: Qt.AlignmentFlag) -> QRectF:
        port = self.viewport()
        key = (f"{text}{edge}", port.width(), port.height())
        box = self._blocks.get(key)
        if box is None:
            if len(self._blocks) > 200:
                self._blocks.clear()
            room = QRectF(port.rect()).adjusted(8, 3, -8, -3)
            flags = edge | Qt.AlignmentFlag.AlignLeft | Qt.TextFlag.TextWordWrap
            box = self._blocks[key] = QFontMetricsF(self.font()).boundingRect(room, int(flags), text)
        return QRectF(box)

    def _paint_block(self, painter: QPainter, text: str, edge: Qt.AlignmentFlag) -> None:
        box = self._block(text, edge)
        self._lay_paper(painter, box)
        key = f"{text}\n{box.width()}"
        static = self._texts_of_blocks.get(key)
        if static is None:
            if len(self._texts_of_blocks) > 200:
                self._texts_of_blocks.clear()
            static = self._texts_of_blocks[key] = QStaticText(text)
            static.setTextFormat(Qt.TextFormat.PlainText)
            static.setTextWidth(box.width() + 1.0)
            static.prepare(QTransform(), painter.font())
        painter.drawStaticText(box.topLeft(), static)

    def _paint_focus(self, painter: QPainter) -> None:
        """A frame while the keyboard is here."""
        if self.hasFocus():
            w, h = self.viewport().width(), self.viewport().height()
            sides = ((0, 0, w, 2), (0, h - 2, w, 2), (0, 0, 2, h), (w - 2, 0, 2, h))
            fill(painter, [QRectF(*side) for side in sides], QColor(self.look.theme.hand))

    def paint_on_paper(self, painter: QPainter, at: QPointF, text: str) -> None:
        """Words that stay readable whatever part lies behind them; `at` is the start of their base line."""
        self._lay_paper(painter, QFontMetricsF(painter.font()).boundingRect(text).translated(at))
        painter.drawText(at, text)

    def _lay_paper(self, painter: QPainter, words: QRectF) -> None:
        """Paper under words, through which what lies behind shows faintly."""
        paper = QColor(self.look.theme.paper)
        paper.setAlpha(225)
        fill(painter, [words.adjusted(-4, -1, 4, 1)], paper)
