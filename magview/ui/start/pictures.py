"""The pictures over the doors: the program's own scenes, larger than their frames, drawn after the page is there."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from functools import cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QSize, QSizeF, Qt, QTimer
from PySide6.QtGui import QColor, QPainter, QPainterPath, QPaintEvent, QPixmap, QResizeEvent
from PySide6.QtWidgets import QSizePolicy, QWidget

from magview.spec.library import DEFAULT_MAGNETO, find_installation, shipped_installation_of
from magview.ui.kit.look import Look
from magview.ui.kit.theme import Theme

if TYPE_CHECKING:  # loaded once the page is there
    from magview.bench.state import BenchState
    from magview.drawing.scene import Frame, Scene

_AFTER_MS = 1
"""After the page was painted; each picture then has a turn of its own."""


class DoorPicture(QWidget):
    """One picture, kept as pixels for its size and colours. It tells nothing that the words do not."""

    def __init__(self, name: str, look: Look) -> None:
        super().__init__()
        self._name, self._look = name, look
        self._pixels: QPixmap | None = None
        self._key: object = None
        self._soon = QTimer(self)
        self._soon.setSingleShot(True)
        self._soon.setInterval(_AFTER_MS)
        self._soon.timeout.connect(self._draw)
        self.setSizePolicy(QSizePolicy.Policy.Ignored, QSizePolicy.Policy.Expanding)
        self.setMinimumHeight(0)
        look.changed.connect(self.update)

    def sizeHint(self) -> QSize:
        """A share of the page."""
        return QSize(360, 320)

    @property
    def drawn(self) -> bool:
        """Whether the picture is there as it should be now."""
        return self._key == self._wanted()

    def _wanted(self) -> tuple[object, ...]:
        return self.size().toTuple(), self._look.theme.name, self._look.line_factor, self.devicePixelRatioF()

    def _draw(self) -> None:
        if self.isVisible() and self.height() > 40:
            ratio = self.devicePixelRatioF()
            pixels = QPixmap(self.size() * ratio)
            pixels.setDevicePixelRatio(ratio)
            paint_door(pixels, self._name, QSizeF(self.size()), self._look.theme, self._look.line_factor)
            self._pixels, self._key = pixels, self._wanted()
            self.update()

    def resizeEvent(self, event: QResizeEvent) -> None:
        """Drawn anew, once the size has settled."""
        super().resizeEvent(event)
        self.update()

    def paintEvent(self, event: QPaintEvent) -> None:
        """The picture, within the card's round corners."""
        painter = QPainter(self)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        card = QPainterPath()
        card.addRoundedRect(0, 0, self.width(), self.height() + 10, 5, 5)
        painter.setClipPath(card)
        painter.fillRect(self.rect(), QColor(self._look.theme.paper))
        if self._pixels is not None:
            painter.drawPixmap(0, 0, self._pixels)
        if not self.drawn and not self._soon.isActive():
            self._soon.start()
        painter.setPen(QColor(self._look.theme.grid))
        painter.drawLine(0, self.height() - 1, self.width(), self.height() - 1)
        painter.end()


def paint_door(pixels: QPixmap, name: str, size: QSizeF, theme: Theme, line_factor: float = 1.0) -> None:
    """Paint a door's picture."""
    from PySide6.QtGui import QFont

    from magview.ui.pictures.scene_painter import ScenePainter

    pixels.fill(QColor(theme.paper) if name in PICTURES else Qt.GlobalColor.transparent)
    scene, frame = PICTURES[name](size)
    brush = ScenePainter(theme)
    brush.line_factor = line_factor
    painter = QPainter(pixels)
    brush.paint(painter, scene, size, QFont(), frame, pixels.devicePixelRatio())
    painter.end()


@cache
def _bench() -> BenchState:
    from magview.bench.placing import new_bench

    return new_bench(find_installation(shipped_installation_of(DEFAULT_MAGNETO) or ""))


def _cropped(scene: Scene, size: QSizeF, times: float, to: tuple[float, float]) -> tuple[Scene, Frame]:
    """A scene without its words in the corners, so many times larger, with its middle at shares of the frame."""
    from magview.drawing.scene import Frame, frame_of

    scene = replace(scene, corners=(), margins_em=(0.0, 0.0), glasses=(), total=(), plan=None)
    whole = frame_of(scene, size.width(), size.height(), 12.0)
    x0, y0, x1, y1 = scene.box
    scale = times * whole.scale
    side = -scale if whole.mirrored else scale
    left = to[0] * size.width() - side * (x0 + x1) / 2
    return scene, Frame(scale, left, to[1] * size.height() + scale * (y0 + y1) / 2, whole.mirrored)


def _learn(size: QSizeF) -> tuple[Scene, Frame]:
    from magview.drawing.breaker_hero import Shown
    from magview.drawing.contacts_closeup import closeup_scene
    from magview.drawing.scene import Options

    state = _bench()
    turns = (Shown(state.magneto, float(deg), state.backplate_deg, state.screw_deg) for deg in range(0, 90, 2))
    widest = max(turns, key=lambda shown: shown.pose.gap_mm)
    return _cropped(closeup_scene(widest, Options(), state.magneto.gap_limits_mm[0]), size, 1.0, (0.5, 0.5))


def _practise(size: QSizeF) -> tuple[Scene, Frame]:
    from magview.drawing.breaker_hero import Shown, breaker_scene
    from magview.drawing.scene import Options

    state = _bench()
    shown = Shown(state.magneto, state.rotor_deg - 14.0, state.backplate_deg, state.screw_deg)
    away = frozenset({"rotor scale", "plate scale", "rotor", "pole shoe"})
    scene = breaker_scene(shown, Options(numbers=False, names=False, hidden=away, still_motion=True))
    scene = replace(scene, words=tuple(word for word in scene.words if word.text.isdigit()))
    return _cropped(scene, size, 1.8, (0.42, 0.95))


def _work(size: QSizeF) -> tuple[Scene, Frame]:
    from magview.drawing.coupling_scene import coupling_scene
    from magview.drawing.scene import Options
    from magview.physics.engine.coupling import plan

    state = _bench()
    assert state.engaged is not None
    coupling = state.engaged.installation.disc
    move = plan(coupling.magneto_teeth, coupling.drive_teeth, state.engaged.ratio, 23.0, 27.0, most=1)[0]
    scene = coupling_scene(state, Options(names=False), move)
    return _cropped(scene, size, 1.5, (0.5, 0.75))


PICTURES: dict[str, Callable[[QSizeF], tuple[Scene, Frame]]] = {"learn": _learn, "practise": _practise, "work": _work}
"""The scene of each door, and where it stands."""
