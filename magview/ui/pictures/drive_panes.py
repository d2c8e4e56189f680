"""One view of the coupling, or both side by side: where each is painted, and scenes kept while nothing changes."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace

from PySide6.QtCore import QRectF

from magview.drawing.scene import Frame, Scene

WIDE = 2.0
"""So much wider than high, the picture shows both views."""


@dataclass(frozen=True)
class Pane:
    """A view of the coupling, where it is painted, and its frame within that."""

    room: QRectF
    scene: Scene
    frame: Frame


class KeptScenes:
    """Scenes by what they are drawn of. Pointing at a part lights it up without drawing the coupling again."""

    def __init__(self) -> None:
        self._kept: dict[bool, tuple[object, Scene]] = {}
        self.built = 0
        """Number of times that a scene had to be drawn."""

    def scene(self, at_engine: bool, key: object, lit: str, build: Callable[[], Scene]) -> Scene:
        """The scene of a side as of a key, with a part lit up."""
        kept = self._kept.get(at_engine)
        if kept is None or kept[0] != key:
            self.built += 1
            kept = self._kept[at_engine] = key, build()
        scene = kept[1]
        if scene.lit != lit:
            scene = replace(scene, lit=lit)
            self._kept[at_engine] = key, scene
        return scene


def room_of(port: QRectF, which: int, both: bool) -> QRectF:
    """The place of a view: all the room, or the left or right half."""
    if not both:
        return port
    half = port.width() / 2
    return QRectF(which * half, 0.0, half, port.height())
