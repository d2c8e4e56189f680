"""A short turn of a picture as a file: an animated PNG, or a series of numbered PNGs.

Qt reads animated pictures and writes none, so Pillow writes them; see `write_animation`.
"""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import BinaryIO

import numpy as np
from PySide6.QtGui import QImage

from magview.bench.actions import Action, TurnRotor
from magview.bench.apply import apply
from magview.bench.state import BenchState
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.pictured import Pictured
from magview.ui.pictures.export import Drawn, image_of, whole_size, written_beside

MOST_FRAMES = 120
WIDTHS_PX = (200, 1920)
MOST_PIXELS = 60_000_000
"""All frames together: a quarter of a gigabyte while they are written."""
FRAME_MS = 80
LEAST_DEG, MOST_DEG = -720.0, 720.0


@dataclass(frozen=True)
class Turn:
    """Angles of the rotor from the first frame to the last [deg], how many frames, and their width [px]."""

    start_deg: float
    end_deg: float
    frames: int
    width_px: int

    @property
    def angles_deg(self) -> list[float]:
        """The rotor's angle in each frame."""
        return [float(angle) for angle in np.linspace(self.start_deg, self.end_deg, self.frames)]


class Moment(Pictured):
    """A state for one frame, that no hand turns."""

    def __init__(self, state: BenchState) -> None:
        super().__init__()
        self._state = state

    @property
    def state(self) -> BenchState:
        """The state of this frame."""
        return self._state

    def send(self, action: Action, gesture: object = None) -> bool:
        """Take nothing."""
        return False


def check_turn(turn: Turn, view: Drawn, caption: str) -> None:
    """Raise SpecError, in one sentence, for a turn that cannot be written."""
    if not 2 <= turn.frames <= MOST_FRAMES:
        raise SpecError(tr("{n} frames: give 2 to {most}, such as 24", n=turn.frames, most=MOST_FRAMES))
    if turn.start_deg == turn.end_deg:
        raise SpecError(
            tr("from {angle:deg} to the same angle nothing turns: give two angles, such as 0° and 90°",
               angle=turn.start_deg)
        )  # fmt: skip
    for angle in (turn.start_deg, turn.end_deg):
        if not LEAST_DEG <= angle <= MOST_DEG:
            raise SpecError(
                tr("{angle:deg} of rotor: give an angle from {low:deg} to {high:deg}, such as 90°",
                   angle=angle, low=LEAST_DEG, high=MOST_DEG)
            )  # fmt: skip
    if not WIDTHS_PX[0] <= turn.width_px <= WIDTHS_PX[1]:
        low, high = WIDTHS_PX
        raise SpecError(tr("{n} pixels wide: give {low} to {high}, such as 640", n=turn.width_px, low=low, high=high))
    size = whole_size(view, caption)
    pixels = turn.width_px**2 * size.height() / max(1, size.width())
    if turn.frames * pixels > MOST_PIXELS:
        fit = max(2, int(MOST_PIXELS / pixels))
        raise SpecError(
            tr("{n} frames of {width} pixels are too many to hold: give {fit} frames, or a smaller width",
               n=turn.frames, width=turn.width_px, fit=fit)
        )  # fmt: skip


def frames(view: Drawn, state: BenchState, turn: Turn, caption: str) -> Iterator[QImage]:
    """A picture at each angle of a turn; the view shows its own state again after each.

    Raises SpecError where the rotor cannot be turned there.
    """
    factor = turn.width_px / view.picture_size().width()
    for angle in turn.angles_deg:
        moment = Moment(apply(state, TurnRotor(angle)))
        former = view.stand_in(moment)
        moment.reduced_motion = former.reduced_motion
        try:
            image = image_of(view, caption, factor)
        finally:
            view.stand_in(former)
        yield image


def frame_path(path: Path, number: int) -> Path:
    """Name of one PNG of a series: picture-001.png for picture.png."""
    return path.with_name(f"{path.stem}-{number:03d}.png")


def write_frame(path: Path, image: QImage) -> None:
    """Write one PNG of a series."""
    with written_beside(path) as temporary:
        if not image.save(str(temporary)):
            raise OSError(0, tr("the picture could not be saved"))


class _Watched:
    """A file that is written until somebody no longer wants it."""

    def __init__(self, file: BinaryIO, unwanted: Callable[[], bool]) -> None:
        self._file, self._unwanted = file, unwanted

    def write(self, data: bytes) -> int:
        """Write, or raise OSError once it is unwanted."""
        if self._unwanted():
            raise OSError(0, tr("given up"))
        return self._file.write(data)

    def flush(self) -> None:
        """Flush the file."""
        self._file.flush()


def write_animation(path: Path, images: list[QImage], unwanted: Callable[[], bool] = lambda: False) -> None:
    """Write an animated PNG that goes round without end; what stood there stands if it fails or is given up."""
    from PIL import Image  # only here, so that the window does not wait for it

    pictures = []
    for image in images:
        plain = image.convertToFormat(QImage.Format.Format_RGB888)
        size, data = (plain.width(), plain.height()), bytes(plain.constBits())
        pictures.append(Image.frombuffer("RGB", size, data, "raw", "RGB", plain.bytesPerLine(), 1))
    with written_beside(path) as temporary, temporary.open("wb") as file:
        pictures[0].save(
            _Watched(file, unwanted), format="PNG", save_all=True, append_images=pictures[1:],  # type: ignore[arg-type]
            duration=FRAME_MS, loop=0,
        )  # fmt: skip
