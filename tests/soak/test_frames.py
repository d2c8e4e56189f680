"""Memory while the rotor turns: tens of thousands of frames of every picture must leave nothing behind.

MAGVIEW_FRAMES=60000 pytest tests/soak/test_frames.py -m '' -s -o faulthandler_timeout=0
"""

from __future__ import annotations

import ctypes
import gc
import os
from pathlib import Path

import pytest

FRAMES = int(os.environ.get("MAGVIEW_FRAMES", "600"))
WARM = FRAMES // 3
MOST_MB = 5.0


def resident_mb() -> float:
    """Memory of this process that is in use, once the C library has given back what it can [MB]."""
    gc.collect()
    ctypes.CDLL("libc.so.6").malloc_trim(0)
    lines = Path("/proc/self/status").read_text(encoding="utf-8").splitlines()
    return next(int(line.split()[1]) for line in lines if line.startswith("VmRSS")) / 1024.0


@pytest.mark.process
@pytest.mark.skipif(not Path("/proc/self/status").exists(), reason="memory is read from Linux")
def test_turning_through_all_pictures_keeps_memory_flat(qtbot, capsys):
    """Every picture is painted in every frame, whatever the screen would leave out."""
    from magview.bench.actions import TurnRotor
    from magview.bench.placing import new_bench
    from magview.spec.library import find_installation
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.kit.look import Look
    from magview.ui.kit.theme import LIGHT
    from magview.ui.pictures.breaker_view import BreakerView
    from magview.ui.pictures.contact_view import ContactView
    from magview.ui.pictures.drive_view import DriveView
    from magview.ui.pictures.shaft_view import ShaftView
    from magview.ui.pictures.why_here_view import WhyHereView

    model, look = BenchModel(new_bench(find_installation("seven-radial-left"))), Look(LIGHT)
    breaker = BreakerView(model, look)
    pictures = (
        (breaker, (420, 360)), (ContactView(model, breaker, look), (420, 170)), (DriveView(model, look), (420, 190)),
        (ShaftView(model, look), (540, 205)), (WhyHereView(model, look), (300, 205)),
    )  # fmt: skip
    targets = []
    for picture, size in pictures:
        qtbot.addWidget(picture)
        picture.resize(*size)
        picture.show()
        targets.append(picture.viewport() if hasattr(picture, "viewport") else picture)
    looks = {round(FRAMES * share) for share in (1 / 3, 0.5, 2 / 3, 5 / 6, 1)}
    told: dict[int, float] = {}
    for frame in range(1, FRAMES + 1):
        model.send(TurnRotor(0.37 * (frame % 1946)), "turn")
        for target in targets:
            target.repaint()
        if frame in looks:
            told[frame] = resident_mb()
            with capsys.disabled():
                print(f"\nframe {frame}: {told[frame]:.1f} MB", flush=True)  # noqa: T201
    assert told[FRAMES] - told[WARM] < MOST_MB
