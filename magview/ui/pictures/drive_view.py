"""The drive end on screen: the coupling's teeth, moved one at a time by drag, key or button."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace

from PySide6.QtCore import QEvent, QPointF, QRectF, Qt
from PySide6.QtGui import (
    QColor,
    QFont,
    QFontMetricsF,
    QKeyEvent,
    QMouseEvent,
    QPainter,
    QPen,
    QStaticText,
    QTransform,
)
from PySide6.QtWidgets import QWidget

from magview.bench import actions as do
from magview.bench.state import BenchState, Engaged, Mounting, crank_deg, same_but_worn
from magview.bench.tooth_steps import coupling_words, marks_words
from magview.bench.words import direction_word, drive_end_sense
from magview.drawing.drive_end import (
    DISC_IN_MM,
    DISC_OUT_MM,
    DRIVE_MM,
    EXTENT_MM,
    HUB_MM,
    NUMBER_RADII_MM,
    PARENTS,
    DrivePose,
    drive_end,
    drive_pose,
)
from magview.drawing.shapes import polar
from magview.physics.engine.coupling import Move
from magview.spec.language import marked, tr
from magview.ui.kit.look import Look
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.picture_view import PictureView, bearing_about, step_factor
from magview.ui.pictures.scene import PictureScene

_FOOT = marked("Both faces of the disc: drive flange outside, magneto flange inside.")

_PARTS = {"flange": marked("drive flange"), "disc": marked("disc"), "hub": marked("magneto flange")}


@dataclass
class _Drag:
    group: str
    last_bearing: float
    turned: float
    """How far the pointer has gone round since the press [bearing deg]."""
    start: tuple[int, int]
    start_crank: float
    gesture: int


class DriveView(PictureView):
    """The coupling seen from the drive end. Drag a flange or the disc; arrow keys move teeth."""

    def __init__(self, model: Pictured, look: Look, parent: QWidget | None = None, *, numbers: bool = True) -> None:
        self._picture = PictureScene(PARENTS)
        self._numbers: dict[str, tuple[QStaticText, float]] = {}
        super().__init__(self._picture, look, (), tuple(PARENTS), parent)
        self._model = model
        self.numbers = numbers
        self._marked, self._aside = True, 0.0
        self._coupling: object = None
        self._drag: _Drag | None = None
        self._preview: tuple[int, int] | None = None
        self.setFocusPolicy(Qt.FocusPolicy.StrongFocus)
        self.setMouseTracking(True)
        self.setMinimumSize(190, 190)
        self.setAccessibleName(tr("Drive end of the magneto: the toothed coupling"))
        self.show_state(model.state)
        model.changed.connect(self.show_state)

    # -------------------------------------------------------------- showing

    @property
    def scene_of_parts(self) -> PictureScene:
        """The scene of the coupling's parts."""
        return self._picture

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state; the outlines are rebuilt only for other tooth counts."""
        engaged = state.engaged
        here = (engaged, state.rotor_deg)
        if old is not None and here == (old.engaged, old.rotor_deg) and same_but_worn(state.magneto, old.magneto):
            return  # nothing at this end has moved
        coupling = engaged.installation.coupling if engaged else None
        if old is not None and self._reference(state) != self._reference(old):
            self._preview = None  # dotted marks of another magneto or reading would mislead
        if coupling != self._coupling:
            self._coupling = coupling
            shapes = drive_end(coupling) if coupling else ()
            self._picture.build(shapes, dict.fromkeys(PARENTS, (0.0, 0.0)), self.look.theme)
            self.fit()
        if engaged is None:
            self.setAccessibleDescription(tr("This magneto is not on an engine."))
        else:
            self._picture.turn(self._pose(state, engaged).turns_deg)
            words = tr("No marks on it.")
            if self._marked:
                words = f"{coupling_words(engaged)} {marks_words(engaged.mounting)}"
            seen = tr("Seen from the drive end, rotation {way}.", way=self._way(state))
            self.setAccessibleDescription(f"{seen} {words}")
        self.viewport().update()

    def set_aside(self, degrees: float) -> None:
        """Draw the whole coupling turned by so much, so that paint says nothing of where the crank stands."""
        self._aside = degrees
        self.show_state(self._model.state)

    def _pose(self, state: BenchState, engaged: Engaged, mounting: Mounting | None = None) -> DrivePose:
        pose, aside = drive_pose(state, engaged, mounting), self._aside
        return DrivePose(pose.flange + aside, pose.disc + aside, pose.hub + aside) if aside else pose

    def set_marked(self, marked: bool) -> None:
        """Whether paint stands across the coupling: without it there is nothing to number the teeth from."""
        self._marked = marked
        self.show_state(self._model.state)

    @staticmethod
    def _reference(state: BenchState) -> object:
        """What a previewed move counts from."""
        engaged = state.engaged
        at = engaged and engaged.mounting
        return engaged and at and (engaged.side, engaged.installation, at.phase_deg, at.wanted_btdc_deg)

    @property
    def previewed(self) -> tuple[int, int] | None:
        """The teeth (magneto flange, disc) that are shown with dotted marks, or None."""
        return self._preview

    def preview(self, move: Move | None) -> None:
        """Show with dotted marks where a move would bring the painted marks; None shows none."""
        self._preview = None if move is None else (move.magneto_teeth, move.disc_teeth)
        self.viewport().update()

    def _head(self) -> str:
        state, engaged = self._model.state, self._model.state.engaged
        if engaged is None:
            return tr("Drive end")
        if engaged.installation.position == "single":
            end = tr("Drive end")
        else:
            end = tr("Left magneto, drive end") if engaged.side == "left" else tr("Right magneto, drive end")
        words = [end, tr("turns {way}", way=self._way(state))]
        if not engaged.mounted:
            words.append(tr("magneto off the engine"))
        return " · ".join(words)

    @staticmethod
    def _way(state: BenchState) -> str:
        return direction_word(1, state.magneto.rotation, "drive end")

    def fit(self) -> None:
        """Show the whole picture in the room there is."""
        e = EXTENT_MM
        self.setSceneRect(QRectF(-2 * e, -2 * e, 4 * e, 4 * e))
        head, foot = self.words_height(self._head()), self.foot_height(tr(_FOOT))
        size = max(40.0, min(self.viewport().width(), self.viewport().height() - head - foot))
        self.frame(size / (2 * e), QPointF(0.0, (foot - head) / 2 * (2 * e) / size))

    # -------------------------------------------------------------- words over the picture

    def paint_words(self, painter: QPainter) -> None:
        """Viewpoint, tooth numbers, marks as found and previewed."""
        state, engaged = self._model.state, self._model.state.engaged
        if engaged is None:
            self.paint_head(painter, self._head())
            painter.setPen(QColor(self.look.theme.text))
            painter.drawText(
                self.viewport().rect().adjusted(20, 20, -20, -20),
                Qt.AlignmentFlag.AlignCenter | Qt.TextFlag.TextWordWrap,
                tr("This magneto is not on an engine. Open an installation to time it to one."),
            )
            return
        now = self._pose(state, engaged)
        found = self._pose(state, engaged, replace(engaged.mounting, magneto_teeth=0, disc_teeth=0))
        if self._marked:
            self._paint_numbers(painter, state, engaged, now)
        if now != found and self.numbers:
            self._paint_ghost(painter, found, tr("as found"), Qt.PenStyle.DashLine)
        if self._preview not in (None, (0, 0)):
            i, j = self._preview or (0, 0)
            after = self._pose(state, engaged, replace(engaged.mounting, magneto_teeth=i, disc_teeth=j))
            self._paint_ghost(painter, after, tr("after"), Qt.PenStyle.DotLine)
        self.paint_head(painter, self._head())
        self.paint_foot(painter, tr(_FOOT))

    def _paint_numbers(self, painter: QPainter, state: BenchState, engaged: Engaged, pose: DrivePose) -> None:
        """Slots and teeth numbered from the painted mark with rotation, while there is room for it."""
        sense, coupling = drive_end_sense(state.magneto), engaged.installation.coupling
        font = QFont(painter.font())
        font.setPointSizeF(max(6.0, 0.82 * font.pointSizeF()))
        painter.setFont(font)
        metrics = QFontMetricsF(font)
        scale = self.transform().m11()
        for ring, teeth, mark in (
            ("flange", coupling.drive_teeth, pose.flange),
            ("disc-out", coupling.drive_teeth, pose.disc),
            ("disc-in", coupling.magneto_teeth, pose.disc),
            ("hub", coupling.magneto_teeth, pose.hub),
        ):
            radius = NUMBER_RADII_MM[ring]
            widest = metrics.horizontalAdvance(str(teeth)) + 3
            rings_meet = (NUMBER_RADII_MM["disc-out"] - NUMBER_RADII_MM["disc-in"]) * scale < metrics.ascent()
            if 2 * math.pi * radius * scale / teeth < max(widest, metrics.height()) or (
                rings_meet and ring == "disc-in"
            ):
                continue
            painter.setPen(QColor(self.look.theme.text))
            base, pitch = self.viewportTransform(), math.radians(sense * 360.0 / teeth)
            start, drop = math.radians(mark), metrics.ascent() / 2 - 1
            for n in range(1, teeth):  # the painted mark itself is number 1
                words, bearing = str(n + 1), start + n * pitch
                at = base.map(QPointF(radius * math.sin(bearing), -radius * math.cos(bearing)))
                self.number(painter, at.x(), at.y() + drop, words, metrics)
        painter.setFont(self.font())

    def number(self, painter: QPainter, x: float, base_line: float, words: str, metrics: QFontMetricsF) -> None:
        """Write a number centred on a place [px], in the smaller type of numbers."""
        kept = self._numbers.get(words)
        if kept is None:
            static = QStaticText(words)
            static.prepare(QTransform(), painter.font())
            kept = self._numbers[words] = (static, metrics.horizontalAdvance(words) / 2)
        painter.drawStaticText(QPointF(x - kept[1], base_line - metrics.ascent()), kept[0])

    def changeEvent(self, event: QEvent) -> None:
        """Numbers of another size are laid out anew."""
        if event.type() == QEvent.Type.FontChange:
            self._numbers.clear()
        super().changeEvent(event)

    def _paint_ghost(self, painter: QPainter, pose: DrivePose, words: str, style: Qt.PenStyle) -> None:
        painter.setPen(QPen(QColor(self.look.theme.hand), 2, style))
        rings = (
            (pose.flange, DISC_OUT_MM + 3.0, DRIVE_MM + 2.5),
            (pose.disc, DISC_IN_MM + 2.6, DISC_OUT_MM - 2.6),
            (pose.hub, HUB_MM, DISC_IN_MM - 3.0),
        )
        for bearing, inner, outer in rings:
            painter.drawLine(self.pixel(*polar(inner, bearing)), self.pixel(*polar(outer, bearing)))
        # The words stand outside, at the bearing of the disc's mark: nothing that must be checked is hidden.
        leader = [self.pixel(*polar(r, pose.disc)) for r in (DISC_OUT_MM + 2.6, DRIVE_MM + 1.0)]
        painter.drawLine(leader[0], leader[1])
        at = self.pixel(*polar(DRIVE_MM + 3.0, pose.disc))
        width, ascent = painter.fontMetrics().horizontalAdvance(words), painter.fontMetrics().ascent()
        x = at.x() if at.x() > self.viewport().width() / 2 else at.x() - width
        y = at.y() if at.y() < self.viewport().height() / 2 else at.y() + ascent
        x = min(max(x, 4.0), self.viewport().width() - width - 4.0)
        self.paint_on_paper(painter, QPointF(x, y), words)

    # -------------------------------------------------------------- hands on

    def mousePressEvent(self, event: QMouseEvent) -> None:
        """Take hold of a flange or the disc."""
        super().mousePressEvent(event)
        engaged = self._model.state.engaged
        shape = self._picture.shape_at(self._scene_point(event.position()))
        if event.button() != Qt.MouseButton.LeftButton or engaged is None or shape is None:
            return
        at = engaged.mounting
        self._drag = _Drag(
            shape.group,
            self._bearing(event),
            0.0,
            (at.magneto_teeth, at.disc_teeth),
            crank_deg(self._model.state),
            self._model.gesture(),
        )
        self.viewport().setCursor(Qt.CursorShape.ClosedHandCursor)

    def mouseMoveEvent(self, event: QMouseEvent) -> None:
        """Whole teeth follow the pointer; the drive flange turns the crank."""
        super().mouseMoveEvent(event)
        drag, state, engaged = self._drag, self._model.state, self._model.state.engaged
        if drag is None or engaged is None:
            shape = self._picture.shape_at(self._scene_point(event.position()))
            self.viewport().setCursor(Qt.CursorShape.OpenHandCursor if shape else Qt.CursorShape.ArrowCursor)
            self.setToolTip(tr(_PARTS[shape.group]) if shape else "")
            return
        bearing = self._bearing(event)
        drag.turned += (bearing - drag.last_bearing + 180.0) % 360.0 - 180.0
        drag.last_bearing = bearing
        turned = drag.turned * drive_end_sense(state.magneto)
        coupling, (i, j) = engaged.installation.coupling, drag.start
        if drag.group == "flange":
            self._model.send(do.TurnCrank(drag.start_crank + turned / engaged.ratio), drag.gesture)
        elif drag.group == "disc":
            self._model.send(do.MoveTeeth(i, j + round(turned * coupling.drive_teeth / 360.0)), drag.gesture)
        else:
            self._model.send(do.MoveTeeth(i + round(turned * coupling.magneto_teeth / 360.0), j), drag.gesture)

    def mouseReleaseEvent(self, event: QMouseEvent) -> None:
        """Let go."""
        super().mouseReleaseEvent(event)
        if event.button() == Qt.MouseButton.LeftButton:
            self._drag = None

    def keyPressEvent(self, event: QKeyEvent) -> None:
        """Left, Right: magneto flange on the disc; Up, Down: disc on the drive flange; Page keys: crank."""
        engaged = self._model.state.engaged
        teeth = {
            Qt.Key.Key_Right: (1, 0), Qt.Key.Key_Left: (-1, 0), Qt.Key.Key_Up: (0, 1), Qt.Key.Key_Down: (0, -1),
        }  # fmt: skip
        crank = {Qt.Key.Key_PageUp: 1.0, Qt.Key.Key_PageDown: -1.0}
        key = Qt.Key(event.key())
        if engaged is not None and key in teeth:
            i, j = teeth[key]
            at = engaged.mounting
            self._model.send(do.MoveTeeth(at.magneto_teeth + i, at.disc_teeth + j))
        elif engaged is not None and key in crank:
            self.turn(crank[key] * step_factor(event.modifiers()))
        else:
            super().keyPressEvent(event)

    def turn(self, steps: float) -> None:
        """Turn the crank by degrees."""
        self._model.turn_crank(steps)

    def _bearing(self, event: QMouseEvent) -> float:
        return bearing_about(QPointF(0.0, 0.0), self._scene_point(event.position()))
