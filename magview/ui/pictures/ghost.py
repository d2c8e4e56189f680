"""The moment that a picture is compared with, and its scene, which stands as long as the moment is kept."""

from __future__ import annotations

from collections.abc import Callable

from magview.bench.state import BenchState, same_but_worn
from magview.drawing.ghost import with_ghost
from magview.drawing.scene import Scene


class Ghost:
    """Lays what was over what is, once a moment is kept."""

    def __init__(self) -> None:
        self.state: BenchState | None = None
        """The moment kept; None for none."""
        self._kept: tuple[object, Scene] | None = None

    def of(self, now: BenchState) -> BenchState | None:
        """The moment kept, if it is one of the magneto that is shown."""
        kept = self.state
        return kept if kept is not None and same_but_worn(kept.magneto, now.magneto) else None

    def over(self, scene: Scene, now: BenchState, build: Callable[[BenchState], Scene], *drawn_with: object) -> Scene:
        """A scene of now with the ghost of the moment kept; `drawn_with`: what its own scene depends on besides."""
        kept = self.of(now)
        if kept is None:
            return scene
        if self._kept is None or self._kept[0] != (id(kept), drawn_with):
            self._kept = (id(kept), drawn_with), build(kept)
        return with_ghost(scene, self._kept[1])
