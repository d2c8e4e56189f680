"""How fast the bench draws, offscreen at 1000×800, as ratios against named baselines of the same run.

    pytest tests/benchmarks/test_bench_speed.py --benchmark-only -o addopts=

Baselines: the same paths filled and stroked by a bare QPainter; the same scene redrawn whole by matplotlib,
and by its blitting (`pip install matplotlib`); a bare QMainWindow that imports numpy and pydantic.
"""

from __future__ import annotations

import os
import resource
import statistics
import subprocess
import sys
import time
from dataclasses import replace

import numpy as np
import pytest
from PySide6.QtCore import QEvent, QPointF, QRectF, Qt
from PySide6.QtGui import QImage, QMouseEvent, QPainter
from PySide6.QtWidgets import QApplication

from magview.bench.actions import TurnRotor
from magview.drawing.breaker_hero import Shown, breaker_scene
from magview.drawing.scene import Carrier, frame_of
from magview.ui.pictures.scene_painter import ScenePainter, base_of, turned

WIDTH, HEIGHT = 1000, 800


@pytest.fixture
def bench(open_window):
    window = open_window("seven-radial")
    view = window.breaker
    view.setParent(None)  # the picture alone, at its own size
    window.hide()
    view.resize(WIDTH, HEIGHT)
    view.show()
    QApplication.processEvents()
    yield window, view
    window.show()
    view.setParent(window)


def frame(window, view, angle: float) -> None:
    """Turn the rotor and have it painted: what a person waits for."""
    window.model.send(TurnRotor(angle))
    QApplication.processEvents()


def median_ms(action, rounds: int = 60) -> float:
    times = []
    for i in range(rounds):
        start = time.perf_counter()
        action(i)
        times.append(1000 * (time.perf_counter() - start))
    return statistics.median(times)


def medians_in_turns(actions, rounds: int, clock=time.process_time) -> list[float]:
    """Median time [ms] of each, one after the other in every round; of the processor, which others cannot take."""
    times = [[] for _ in actions]
    for i in range(rounds):
        for kept, action in zip(times, actions, strict=True):
            start = clock()
            action(i)
            kept.append(1000 * (clock() - start))
    return [statistics.median(kept) for kept in times]


def bare_painter(view):
    """Fill and stroke the same paths, placed by their groups' own turns, with a bare QPainter."""
    scene, painter_of_scenes = view.picture, ScenePainter(view.look.theme)
    image = QImage(WIDTH, HEIGHT, QImage.Format.Format_RGB32)
    base = base_of(frame_of(scene, WIDTH, HEIGHT, 13.0))
    placed = [
        (painter_of_scenes.path_of(piece), *painter_of_scenes.tools_of(piece.style), turned(group.turns) * base)
        for group in scene.groups
        for piece in group.pieces
    ]

    def paint(_: int) -> None:
        image.fill(0xFFFFFF)
        painter = QPainter(image)
        painter.setRenderHint(QPainter.RenderHint.Antialiasing)
        for path, pen, brush, where in placed:
            painter.setTransform(where)
            painter.setPen(pen)
            painter.setBrush(brush)
            painter.drawPath(path)
        painter.end()

    return paint


def matplotlib_scene(state):
    """The same scene as matplotlib patches and texts, and what turns them."""
    import matplotlib

    matplotlib.use("Agg")
    import matplotlib.pyplot as plt

    figure = plt.figure(figsize=(WIDTH / 100, HEIGHT / 100), dpi=100)
    axes = figure.add_axes((0, 0, 1, 1))
    axes.set_aspect("equal")
    axes.set_axis_off()
    scene = breaker_scene(Shown.of(state))
    left, bottom, right, top = scene.box
    axes.set_xlim(left * WIDTH / HEIGHT, right * WIDTH / HEIGHT)
    axes.set_ylim(bottom, top)

    def drawn(piece, outline):
        if not (piece.closed and piece.style.fill):
            return axes.plot(outline[:, 0], outline[:, 1], "k-", linewidth=piece.style.width_px)[0]
        hatch = "///" if piece.style.hatch else None
        edge = "k" if piece.style.line else "none"
        return axes.fill(outline[:, 0], outline[:, 1], facecolor="#ddd", edgecolor=edge, linewidth=1, hatch=hatch)[0]

    artists = [
        (group.name, outline, drawn(piece, outline))
        for group in scene.groups
        for piece in group.pieces
        for outline in piece.outlines
    ]
    words = [axes.text(*word.at, word.text, fontsize=9) for word in scene.words]
    corners = [line.wordings[0] for corner in scene.corners for line in corner.lines]
    for n, text in enumerate([*corners, *(name.text for name in scene.plan.names)]):
        axes.text(left, top - 2.5 * n, text, fontsize=9)
    for name in scene.plan.names:
        axes.plot([0, name.places[0][0]], [top, name.places[0][1]], "0.5", linewidth=0.8)
    moves = {group.name for group in scene.groups if group.layer == "moving"}

    def turn(angle: float, only_moving: bool = False) -> list:
        now, moved = breaker_scene(Shown(state.magneto, angle)), []
        carriers = {group.name: Carrier.of(group.turns) for group in now.groups}
        for name, outline, artist in artists:
            if only_moving and name not in moves:
                continue
            points = carriers[name].put(outline)
            if hasattr(artist, "set_xy"):
                artist.set_xy(points)
            else:
                artist.set_data(points[:, 0], points[:, 1])
            moved.append(artist)
        for text, word in zip(words, now.words, strict=True):
            if not only_moving or word.layer == "moving":
                text.set_position(word.at)
                moved.append(text)
        return moved

    moving = [artist for name, _, artist in artists if name in moves]
    moving += [text for text, word in zip(words, scene.words, strict=True) if word.layer == "moving"]
    return figure, axes, turn, moving


def test_a_frame_against_bare_painter_and_matplotlib(bench, benchmark):
    window, view = bench
    benchmark.pedantic(lambda: frame(window, view, time.perf_counter() * 50 % 360), rounds=200, warmup_rounds=20)
    bare_frame = bare_painter(view)
    figure, _, turn, moving = matplotlib_scene(window.model.state)

    def ours(i: int) -> None:
        frame(window, view, i * 1.7)

    def whole(i: int) -> None:
        turn(i * 1.7)
        figure.canvas.draw()

    # In turns, so that a slow minute of the machine falls on all of them.
    ours_ms, bare_ms, full_ms = medians_in_turns([ours, bare_frame, whole], rounds=40)
    for artist in moving:
        artist.set_animated(True)
    figure.canvas.draw()
    ground = figure.canvas.copy_from_bbox(figure.bbox)

    def blitted(i: int) -> None:
        figure.canvas.restore_region(ground)
        for artist in turn(i * 1.7, only_moving=True):
            figure.draw_artist(artist)
        figure.canvas.blit(figure.bbox)

    ours_again_ms, blit_ms = medians_in_turns([ours, blitted], rounds=60)
    benchmark.extra_info.update(
        frame_ms=ours_ms, bare_painter_ms=bare_ms, ratio_to_bare_painter=ours_ms / bare_ms,
        matplotlib_ms=full_ms, faster_than_matplotlib=full_ms / ours_ms,
        matplotlib_blit_ms=blit_ms, faster_than_blitting=blit_ms / ours_again_ms,
    )  # fmt: skip


def test_a_change_that_moves_one_reading(open_window, benchmark):
    """A gauge of the panel against a full frame, in the whole window."""
    window = open_window("seven-radial-left", (1280, 720))
    full = median_ms(lambda i: frame(window, window.breaker, i * 1.7))
    gauge = window.panel.gauges["gap"]
    shown = gauge.shown

    def one(i: int) -> None:
        gauge.show_value(replace(shown, words=f"0.{i % 900 + 100} mm"))
        QApplication.processEvents()

    benchmark.pedantic(lambda: one(int(time.perf_counter() * 1000)), rounds=200, warmup_rounds=20)
    single = median_ms(one)
    benchmark.extra_info.update(full_frame_ms=full, one_reading_ms=single, share=single / full)


@pytest.mark.parametrize("size", [(1280, 720), (1920, 1080)], ids=["1280x720", "1920x1080"])
def test_drag_to_paint(open_window, benchmark, size):
    """The whole window: from the mouse event to everything painted, pictures, readings and all."""
    window = open_window("seven-radial-left", size)
    view = window.breaker
    radius = view.drawing.rim_mm * 1.065
    times: list[float] = []
    worked: list[float] = []

    def send(kind: QEvent.Type, bearing: float) -> None:
        b = np.radians(bearing)
        where = view.pixel(radius * np.sin(b), radius * np.cos(b))
        moving = kind == QEvent.Type.MouseMove
        button = Qt.MouseButton.NoButton if moving else Qt.MouseButton.LeftButton
        port = view.viewport()
        at = QPointF(port.mapToGlobal(where.toPoint()))
        QApplication.sendEvent(
            port, QMouseEvent(kind, where, at, button, Qt.MouseButton.LeftButton, Qt.KeyboardModifier.NoModifier)
        )

    send(QEvent.Type.MouseButtonPress, 11.0)

    def move(i: int) -> None:
        start, begun = time.perf_counter(), time.process_time()
        send(QEvent.Type.MouseMove, 11.0 + i * 0.9)
        QApplication.processEvents()
        times.append(1000 * (time.perf_counter() - start))
        worked.append(1000 * (time.process_time() - begun))

    for i in range(300):
        move(i)
    benchmark.pedantic(lambda: move(int(time.perf_counter() * 60) % 360), rounds=100)
    send(QEvent.Type.MouseButtonRelease, 11.0)
    benchmark.extra_info.update(
        median_ms=statistics.median(times), p95_ms=float(np.percentile(times, 95)), frame_at_60_hz_ms=1000 / 60,
        processor_ms=statistics.median(worked), processor_p95_ms=float(np.percentile(worked, 95)),
    )  # fmt: skip


def test_processor_share_while_turning(open_window, benchmark, qtbot):
    window = open_window("seven-radial-left", (1280, 720))

    def run() -> None:
        cpu, wall = time.process_time(), time.perf_counter()
        window.model.run(60.0, None)
        qtbot.wait(3000)
        window.model.stop()
        benchmark.extra_info["share_of_one_core"] = (time.process_time() - cpu) / (time.perf_counter() - wall)

    benchmark.pedantic(run, rounds=1)


def test_memory_over_many_frames(bench, benchmark):
    """MAGVIEW_FRAMES frames (100,000 for the record; 5,000 unless told)."""
    window, _ = bench
    frames = int(os.environ.get("MAGVIEW_FRAMES", "5000"))

    def resident_mb() -> float:
        with open("/proc/self/statm") as file:
            return int(file.read().split()[1]) * resource.getpagesize() / 1e6

    def run() -> None:
        gesture = window.model.gesture()
        for i in range(500):
            window.model.send(TurnRotor(i * 0.7), gesture)
            QApplication.processEvents()
        before = resident_mb()
        for i in range(frames):
            window.model.send(TurnRotor(i * 0.7), gesture)
            QApplication.processEvents()
        benchmark.extra_info.update(frames=frames, grown_mb=resident_mb() - before)

    benchmark.pedantic(run, rounds=1)


_BARE_WINDOW = """
import os
{imports}
class Model(pydantic.BaseModel):  # pydantic loads itself when the first model is built; unused, it would not be there
    value: float
Model(value=1.0)
app = QApplication([])
window = QMainWindow()
window.setCentralWidget(QLabel('bench'))
window.resize(1000, 800)
window.show()
app.processEvents()
os._exit(0)  # the start is measured, not the end
"""
_QT = "from PySide6.QtCore import QEvent, QObject\nfrom PySide6.QtWidgets import QApplication, QLabel, QMainWindow"
_NUMBERS = "import numpy, pydantic"

_OURS = """
import os, sys
class Stop:
    def find_spec(self, name, path=None, target=None):
        if name in ("magview.ui.shell.menus", {after!r}):  # the first that is asked for after the first picture
            os._exit(0)
sys.meta_path.insert(0, Stop())
sys.argv = ["magview", *{words!r}]
from magview.__main__ import main
main()
raise SystemExit("the first picture did not come")
"""


def test_first_picture_against_a_bare_window(benchmark, tmp_path):
    """Fresh processes in turn, from start to first paint: `magview`, `magview bench`, and a bare window.

    The bench then has one picture, the breaker end; `ratio_pictures` is until all its pictures are painted.

    The bare window imports Qt first; `ratio_qt_last` is against one that imports numpy and pydantic before, as the
    program does, and so spares itself what PySide does at every later import.
    """
    # As installed: an installer leaves compiled modules behind, and so may this.
    environment = {k: v for k, v in os.environ.items() if k != "PYTHONDONTWRITEBYTECODE"}
    environment |= {"QT_QPA_PLATFORM": "offscreen"}
    environment |= {name: str(tmp_path) for name in ("XDG_DATA_HOME", "XDG_STATE_HOME", "XDG_CONFIG_HOME")}

    def start(code: str) -> float:
        begin = time.perf_counter()
        subprocess.run([sys.executable, "-c", code], check=True, env=environment, stderr=subprocess.DEVNULL)
        return 1000 * (time.perf_counter() - begin)

    codes = {
        "bare": _BARE_WINDOW.format(imports=f"{_QT}\n{_NUMBERS}"),
        "bare_qt_last": _BARE_WINDOW.format(imports=f"{_NUMBERS}\n{_QT}"),
        "ours": _OURS.format(words=[], after=""),
        "bench": _OURS.format(words=["bench"], after="magview.ui.pictures.contact_view"),
        "pictures": _OURS.format(words=["bench"], after=""),
    }
    times: dict[str, list[float]] = {name: [] for name in codes}

    def run() -> None:
        for _ in range(12):
            for name, code in codes.items():
                times[name].append(start(code))

    start(codes["pictures"])
    benchmark.pedantic(run, rounds=1)
    middle = {name: statistics.median(found) for name, found in times.items()}
    benchmark.extra_info.update(
        {f"{name}_ms": value for name, value in middle.items()},
        ratio=middle["ours"] / middle["bare"],
        ratio_qt_last=middle["ours"] / middle["bare_qt_last"],
        ratio_bench=middle["bench"] / middle["bare"],
        ratio_pictures=middle["pictures"] / middle["bare"],
    )


def test_nothing_of_the_picture_is_jagged(bench, benchmark):
    """Not a time: edges are antialiased in every frame, so the speed was not bought with them."""
    _, view = bench

    def shades() -> int:
        image = view.grab(QRectF(300, 200, 300, 300).toRect()).toImage()
        return len({image.pixel(x, y) for x in range(image.width()) for y in range(image.height())})

    found = benchmark.pedantic(shades, rounds=1)
    benchmark.extra_info["shades"] = found
    assert found > 200
