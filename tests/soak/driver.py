"""A hand that does anything: random mouse, keys, wheel, menus, files, themes, sizes and languages on the real window.

    MAGVIEW_SOAK_MINUTES=60 MAGVIEW_SOAK_SEED=7 pytest tests/soak

The seed is printed; the last acts are told when something goes wrong.
"""

from __future__ import annotations

import ctypes
import gc
import importlib
import os
import pkgutil
import random
import sys
import threading
import time
from collections import Counter, deque
from collections.abc import Callable
from pathlib import Path
from types import TracebackType
from typing import Any

from PySide6.QtCore import (
    QEvent,
    QLocale,
    QMessageLogContext,
    QPoint,
    QPointF,
    Qt,
    QTimer,
    QtMsgType,
    qInstallMessageHandler,
)
from PySide6.QtGui import QAction, QGuiApplication, QPixmapCache, QWheelEvent
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QAbstractItemView,
    QAbstractSlider,
    QAbstractSpinBox,
    QApplication,
    QComboBox,
    QFileDialog,
    QLabel,
    QLineEdit,
    QMainWindow,
    QMenu,
    QPlainTextEdit,
    QSizeGrip,
    QTabBar,
    QTextEdit,
    QWidget,
)
from shiboken6 import isValid

import magview
from magview.bench.placing import new_bench
from magview.spec.language import speak_through, tr
from magview.spec.library import find_installation, resources, shipped_names
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.kit.theme import LIGHT
from magview.ui.kit.translation import LANGUAGES, speak
from magview.ui.shell.app import return_large_blocks
from magview.ui.shell.renewal import renewed
from magview.ui.shell.window import MainWindow
from tests.windows import workbench

KEYS = [
    Qt.Key.Key_Left, Qt.Key.Key_Right, Qt.Key.Key_Up, Qt.Key.Key_Down, Qt.Key.Key_PageUp, Qt.Key.Key_PageDown,
    Qt.Key.Key_Home, Qt.Key.Key_End, Qt.Key.Key_Tab, Qt.Key.Key_Backtab, Qt.Key.Key_Return, Qt.Key.Key_Escape,
    Qt.Key.Key_Space, Qt.Key.Key_Delete, Qt.Key.Key_F1, Qt.Key.Key_F5, Qt.Key.Key_F11, Qt.Key.Key_H, Qt.Key.Key_N,
    Qt.Key.Key_1, Qt.Key.Key_2, Qt.Key.Key_3, Qt.Key.Key_Plus, Qt.Key.Key_Minus,
]  # fmt: skip
CHORDS = [Qt.Key.Key_Z, Qt.Key.Key_Y, Qt.Key.Key_L, Qt.Key.Key_0, Qt.Key.Key_A, Qt.Key.Key_F]
TYPED = ["9 thou", "0.23 mm", "1,5", "-2.5", "1.5°", "0", "1e9", "nan", "", "abc", "-", "12 in", "25", "\t", "=1+1"]
SIZES = [(1280, 720), (1920, 1080), (1024, 640), (1600, 900)]
BROKEN = [
    b"",
    b"{",
    b"\xff\xfe\x00",
    b"[]",
    b'{"format": "magview-magneto/9"}',
    b'{"format": "magview-job/1"}',
    b"1,2\n",
]
NONE, CONTROL = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ControlModifier
MOST_WINDOWS = 6
_TEXTS = (QLabel, QLineEdit, QTextEdit, QPlainTextEdit, QSizeGrip)
"""Dragged, chosen words and the window's own corner go to the desktop, which waits for a real mouse."""


def load_all() -> None:
    """Everything that the program loads when it is first asked for: it stays, and is not to look like a loss."""
    for module in pkgutil.walk_packages(magview.__path__, "magview."):
        if not module.name.endswith("__main__"):
            importlib.import_module(module.name)
    for name in ("interpolate", "optimize", "special"):
        importlib.import_module(f"scipy.{name}")


class _MallInfo(ctypes.Structure):
    """`struct mallinfo2` of glibc's <malloc.h>; the bytes are named there."""

    _fields_ = tuple(
        (name, ctypes.c_size_t)
        for name in ("arena", "ordblks", "smblks", "hblks", "hblkhd", "usmblks", "fsmblks", "uordblks", "fordblks",
                     "keepcost")
    )  # fmt: skip


def heap_mb() -> tuple[float, float]:
    """What the program asked the C library for and holds, and what it gave back and the library keeps [MB].

    (0, 0) where the library does not tell. The system counts both as the program's, and with them Python's pools of
    small objects, whose number `sys.getallocatedblocks` tells: its figure rises for as long as pieces given back lie
    scattered between pieces in use, although nothing is lost. The first figure does not.
    """
    tell = getattr(ctypes.CDLL(None), "mallinfo2", None) if sys.platform == "linux" else None
    if tell is None:
        return 0.0, 0.0
    tell.restype = _MallInfo
    told = tell()
    return (told.uordblks + told.hblkhd) / 1e6, told.fordblks / 1e6


def our_objects() -> Counter[str]:
    """How many objects there are of each class of our windows."""
    kinds = Counter(type(thing) for thing in gc.get_objects())
    return Counter({k.__name__: n for k, n in kinds.items() if str(k.__module__).startswith("magview.ui.")})


def mapped_files() -> int:
    """How many pieces of files are in the address space; they are neither open files nor in the figure above."""
    if sys.platform != "linux":
        return 0
    return sum(" /" in line for line in Path("/proc/self/maps").read_text().splitlines())


class Soak:
    """One program under a random hand; `troubles` is what must stay empty."""

    def __init__(self, seed: int, folder: Path) -> None:
        self.seed, self.folder = seed, folder
        self.random = random.Random(seed)
        self.log: deque[str] = deque(maxlen=30)
        self.count: Counter[str] = Counter()
        self.diary = (folder.parent / "acts.txt").open("w", encoding="utf-8")
        self.troubles: list[str] = []
        for n, raw in enumerate(BROKEN):
            (folder / f"broken-{n}.json").write_bytes(raw)
        self.files = [*folder.glob("broken-*"), *resources().rglob("*.json"), folder / "not there.json"]
        load_all()
        return_large_blocks()  # as the program does
        self._first = self.random.choice(shipped_names("installations"))
        self.window = self._open(self._first)
        self._closer = QTimer()
        self._closer.timeout.connect(self._leave_boxes)
        self._closer.start(20)
        self._locale, self._font = QLocale(), QApplication.font()
        self._hooks = (sys.excepthook, threading.excepthook)
        sys.excepthook = self._raised
        threading.excepthook = lambda args: self._raised(args.exc_type, args.exc_value, args.exc_traceback)  # type: ignore[arg-type,assignment]
        self._messages = qInstallMessageHandler(self._message)

    def _open(self, name: str) -> MainWindow:
        window = workbench()(BenchModel(new_bench(find_installation(name))), Look(LIGHT))
        window.show()
        window.furnish()
        window.plots.wait()
        QApplication.processEvents()
        return window

    # ------------------------------------------------------------------ what goes wrong

    def _raised(self, kind: type[BaseException], error: BaseException | None, trace: TracebackType | None) -> None:
        import traceback

        self.troubles.append("".join(traceback.format_exception(kind, error, trace)) + self.told())

    def _message(self, kind: QtMsgType, _: QMessageLogContext, text: str) -> None:
        if kind != QtMsgType.QtDebugMsg and "This plugin does not support" not in text:
            self.troubles.append(f"Qt: {text}\n{self.told()}")

    def told(self) -> str:
        """The last acts, for who looks for the cause."""
        return f"seed {self.seed}; last acts:\n  " + "\n  ".join(self.log)

    # ------------------------------------------------------------------ acts

    def step(self) -> None:
        """One act, and everything that follows from it."""
        acts: list[tuple[int, Callable[[QWidget], str | None]]] = [
            (12, self._click), (8, self._key), (6, self._wheel), (6, self._drag), (5, self._type), (4, self._tab),
            (4, self._menu), (2, self._slide), (2, self._choose), (1, self._resize), (1, self._close_one),
            (0.1, self._language),
        ]  # fmt: skip
        window = self.random.choice(self.windows())
        window.activateWindow()
        act = self.random.choices([a for _, a in acts], [w for w, _ in acts])[0]
        self.log.append(f"{act.__name__[1:]} in {type(window).__name__} …")
        self.diary.write(self.log[-1] + "\n")
        self.diary.flush()  # a program that the system ends tells nothing any more
        what = act(window)
        self.log[-1] = f"{act.__name__[1:]} in {type(window).__name__}: {what}"
        self.diary.write(f"    {what}\n")
        self.count[act.__name__[1:]] += 1
        QApplication.processEvents()

    def windows(self) -> list[QWidget]:
        """What a hand can reach: the workbench, the page in front in it, and a window of ours over it.

        Those we know by name and the one in front: Qt's own list wraps every menu and box that Qt makes for itself,
        and PySide does not hear of the end of those.
        """
        main = self.window
        if not main.isVisible():
            main.show()
        while len(main.places.open_pages) >= MOST_WINDOWS:
            self._shut(main.places.open_pages[0])
        known: list[QWidget | None] = [main, *main.places.open_pages, QApplication.activeWindow()]
        found = dict.fromkeys(w for w in known if w is not None and isValid(w) and w.isVisible())
        return [w for w in found if w.isEnabled()] or [main]

    def others(self) -> list[QWidget]:
        """What is open beside the bench, in front or behind."""
        pages = self.window.places.open_pages
        return [*pages, *(w for w in self.windows() if w is not self.window and w not in pages)]

    def _seen(self, window: QWidget, kinds: type | tuple[type, ...]) -> QWidget | None:
        found = [w for w in window.findChildren(QWidget) if isinstance(w, kinds) and w.isVisible() and w.isEnabled()]
        return self.random.choice(found) if found else None

    def _spot(self, widget: QWidget) -> QPoint:
        return QPoint(self.random.randrange(max(1, widget.width())), self.random.randrange(max(1, widget.height())))

    def _click(self, window: QWidget) -> str | None:
        widget = self._seen(
            window, self.random.choice([QAbstractButton, QAbstractButton, QAbstractItemView, QWidget])
        )
        if widget is None:
            return None
        if isinstance(widget, QAbstractItemView):
            widget = widget.viewport()
        spot = widget.rect().center() if isinstance(widget, QAbstractButton) else self._spot(widget)
        QTest.mouseClick(widget, Qt.MouseButton.LeftButton, NONE, spot)
        text = widget.text() if isValid(widget) and isinstance(widget, QAbstractButton | QLabel) else ""
        return f"{type(widget).__name__} {text[:40]!r}"

    def _key(self, window: QWidget) -> str:
        widget = window.focusWidget() or window
        if self.random.random() < 0.2:
            key = self.random.choice(CHORDS)
            QTest.keyClick(widget, key, CONTROL)
        else:
            key = self.random.choice(KEYS)
            QTest.keyClick(widget, key, self.random.choice([NONE, NONE, Qt.KeyboardModifier.ShiftModifier]))
        return f"{key.name} on {type(widget).__name__}"

    def _type(self, window: QWidget) -> str | None:
        field = self._seen(window, (QLineEdit, QAbstractSpinBox))
        if field is None:
            return None
        words = self.random.choice(TYPED)
        field.setFocus()
        if isinstance(field, QLineEdit | QAbstractSpinBox):
            field.selectAll()
        name = field.accessibleName()[:40]
        QTest.keyClicks(field, words.replace("°", ""))  # QTest aborts on signs that are not ASCII
        if isValid(field):
            QTest.keyClick(field, self.random.choice([Qt.Key.Key_Return, Qt.Key.Key_Tab]))
        return f"{words!r} into {name!r}"

    def _wheel(self, window: QWidget) -> str | None:
        widget = self._seen(window, QWidget)
        if widget is None:
            return None
        spot = QPointF(self._spot(widget))
        turn = QPoint(0, self.random.choice([-120, 120, 240]))
        event = QWheelEvent(
            spot, widget.mapToGlobal(spot), QPoint(), turn, Qt.MouseButton.NoButton,
            self.random.choice([NONE, CONTROL]), Qt.ScrollPhase.NoScrollPhase, False,
        )  # fmt: skip
        QApplication.sendEvent(widget, event)
        return type(widget).__name__

    def _drag(self, window: QWidget) -> str | None:
        widget = self._seen(window, QWidget)
        if widget is None or isinstance(widget, _TEXTS) or isinstance(widget.parent(), _TEXTS):
            return None
        button = self.random.choice(
            [Qt.MouseButton.LeftButton, Qt.MouseButton.LeftButton, Qt.MouseButton.MiddleButton]
        )
        QTest.mousePress(widget, button, NONE, self._spot(widget))
        for _ in range(self.random.randrange(1, 6)):
            if isValid(widget):  # what was pressed may be gone by now
                QTest.mouseMove(widget, self._spot(widget))
            QApplication.processEvents()
        if isValid(widget):
            QTest.mouseRelease(widget, button, NONE, self._spot(widget))
        return type(widget).__name__

    def _tab(self, window: QWidget) -> str | None:
        bar = self._seen(window, QTabBar)
        if isinstance(bar, QTabBar) and bar.count():
            bar.setCurrentIndex(self.random.randrange(bar.count()))
            return bar.tabText(bar.currentIndex())
        return None

    def _slide(self, window: QWidget) -> str | None:
        slider = self._seen(window, QAbstractSlider)
        if isinstance(slider, QAbstractSlider):
            slider.setValue(self.random.randint(slider.minimum(), slider.maximum()))
            return slider.accessibleName()
        return None

    def _choose(self, window: QWidget) -> str | None:
        box = self._seen(window, QComboBox)
        if isinstance(box, QComboBox) and box.count():
            box.setCurrentIndex(self.random.randrange(box.count()))
            box.activated.emit(box.currentIndex())
            return box.currentText()[:40]
        return None

    def _menu(self, window: QWidget) -> str | None:
        window = window.window()
        if not isinstance(window, QMainWindow):
            return None
        found: list[QAction] = []
        for action in window.menuBar().actions():
            menu = action.menu()
            if isinstance(menu, QMenu):
                menu.aboutToShow.emit()
                found += self._entries(menu)
        found = [a for a in found if a.isEnabled() and a.isVisible() and not a.isSeparator()]
        if not found:
            return None
        action = self.random.choice(found)
        if window is self.window and action.text() == tr("&Quit"):
            return None
        action.trigger()
        return action.text()

    def _entries(self, menu: QMenu) -> list[QAction]:
        found = []
        for action in menu.actions():
            inner = action.menu()
            found += self._entries(inner) if isinstance(inner, QMenu) else [action]
        return [a for a in found if a.data() not in LANGUAGES]  # languages have an act of their own

    def _resize(self, window: QWidget) -> str:
        size = self.random.choice(SIZES)
        window.window().resize(*size)
        return str(size)

    def _close_one(self, window: QWidget) -> str | None:
        if window is self.window:
            return None
        self._shut(window)
        return "closed"

    def _language(self, window: QWidget) -> str:
        for other in self.others():
            self._shut(other)
        code = self.random.choice(list(LANGUAGES))
        self.window = renewed(self.window, code)
        self.window.plots.wait()
        return code

    def _shut(self, window: QWidget) -> None:
        discard = getattr(window, "discard", None)
        if callable(discard):
            discard()  # what would be asked about is thrown away
        else:
            window.close()

    # ------------------------------------------------------------------ files and boxes

    def answer_files(self, monkeypatch: Any) -> None:
        """File dialogs answer by themselves: any shipped file, a broken one, a new one, a folder, or cancelled."""

        def opened(*_: object, **__: object) -> tuple[str, str]:
            return (str(self.random.choice(self.files)) if self.random.random() < 0.7 else "", "")

        def saved(*args: Any, **__: object) -> tuple[str, str]:
            wanted = Path(str(args[2] if len(args) > 2 else "")).name or "saved.json"
            place = self.random.choice([self.folder, self.folder, self.folder / "no such folder"])
            return (str(place / f"{self.random.randrange(5)}-{wanted}") if self.random.random() < 0.7 else "", "")

        monkeypatch.setattr(QFileDialog, "getOpenFileName", opened)
        monkeypatch.setattr(QFileDialog, "getOpenFileNames", lambda *a, **k: ([o] if (o := opened()[0]) else [], ""))
        monkeypatch.setattr(QFileDialog, "getSaveFileName", saved)
        monkeypatch.setattr(QFileDialog, "getExistingDirectory", lambda *a, **k: str(self.folder))

    def _leave_boxes(self) -> None:
        """No box stays: one of its buttons is pressed, or it is closed."""
        popup = QApplication.activePopupWidget()
        if popup is not None:
            popup.close()
        box = QApplication.activeModalWidget()
        if box is None:
            return
        buttons = [b for b in box.findChildren(QAbstractButton) if b.isVisible() and b.isEnabled()]
        if buttons and self.random.random() < 0.5:
            button = self.random.choice(buttons)
            self.log.append(f"box {type(box).__name__}: {button.text()!r}")
            button.click()
        elif self.random.random() < 0.3:
            box.close()

    # ------------------------------------------------------------------ what must not grow

    def tidy(self) -> dict[str, float]:
        """Everything beside the workbench closed; then what is held."""
        for _ in range(20):
            others = self.others()
            if not others:
                break
            for other in others:
                self._shut(other)
            QApplication.processEvents()
        return self._held()

    def anew(self) -> dict[str, float]:
        """The workbench closed too, and one opened as the first was; then what is held.

        The bench, its history and the plots that were looked at differ from minute to minute by tens of MB. What is
        held now and was not held the time before is no window's.
        """
        self.tidy()
        self.window.close()
        self.window.deleteLater()
        del self.window
        speak("en")
        QApplication.setFont(self._font)
        self.window = self._open(self._first)
        return self._held()

    def _held(self) -> dict[str, float]:
        """Memory [MB], Python's objects, mapped and open files, threads, windows of the system."""
        end = time.monotonic() + 1.0
        while time.monotonic() < end:
            QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
            QApplication.processEvents()
        gc.collect()
        QPixmapCache.clear()  # Qt keeps up to 10 MB of pictures of buttons and the like
        linux = sys.platform == "linux"
        in_use, spare = heap_mb()
        pages = int(Path("/proc/self/statm").read_text().split()[1]) if linux else 0
        return {
            "memory_mb": pages * os.sysconf("SC_PAGE_SIZE") / 1e6 if pages else 0.0,
            "in_use_mb": in_use,
            "spare_mb": spare,
            "blocks": float(sys.getallocatedblocks()),
            "ours": float(our_objects().total()),
            "maps": float(mapped_files()),
            "files": float(len(os.listdir("/proc/self/fd"))) if linux else 0.0,
            "threads": float(threading.active_count()),
            "windows": float(len(QGuiApplication.topLevelWindows())),
        }

    def unreadable(self) -> list[str]:
        """Open windows that show one colour only."""
        found = []
        for window in self.windows():
            image = window.grab().toImage().scaled(64, 64)
            shades = {image.pixel(x, y) for x in range(64) for y in range(64)}
            if len(shades) < 3:
                found.append(f"{type(window).__name__} shows {len(shades)} colours\n{self.told()}")
        return found

    def end(self) -> None:
        """Close everything and give the hooks back."""
        self._closer.stop()
        self.diary.close()
        self.tidy()
        self.window.close()
        self.window.deleteLater()
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        sys.excepthook, threading.excepthook = self._hooks
        qInstallMessageHandler(self._messages)
        speak("en")  # whatever the last window spoke
        QLocale.setDefault(self._locale)
        speak_through(None)
        QApplication.setFont(self._font)
