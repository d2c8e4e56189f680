"""Whether a window can open here, asked before Qt is loaded: Qt itself would abort the process."""

from __future__ import annotations

import ctypes
import importlib
import importlib.util
import os
import re
import sys
from pathlib import Path

# Debian and Ubuntu package of each system library that Qt's wheel expects to find.
PACKAGES = {
    "libglib-2.0.so.0": "libglib2.0-0",
    "libgthread-2.0.so.0": "libglib2.0-0",
    "libGL.so.1": "libgl1",
    "libEGL.so.1": "libegl1",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfontconfig1",
    "libdbus-1.so.3": "libdbus-1-3",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb.so.1": "libxcb1",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
    "libX11-xcb.so.1": "libx11-xcb1",
}
# In the order in which a bare Debian misses them; the rest of the table comes with these.
_INSTALL = (
    "apt-get install libglib2.0-0 libgl1 libegl1 libxkbcommon0 libfontconfig1 libdbus-1-3 libxcb-cursor0 "
    "libxkbcommon-x11-0 libxcb-icccm4 libxcb-keysyms1 libxcb-shape0"
)


def why_no_window() -> str | None:
    """One sentence saying what stands in the way of a window and what would open it; None if nothing does."""
    platform = os.environ.get("QT_QPA_PLATFORM", "")
    chosen = platform.split(":")[0]
    if sys.platform.startswith("linux") and chosen in ("", "xcb", "wayland"):
        display, wayland = os.environ.get("DISPLAY"), os.environ.get("WAYLAND_DISPLAY")
        if not display and not wayland:
            return (
                "there is no display (neither DISPLAY nor WAYLAND_DISPLAY is set); run `magview` in a desktop "
                "session, or on a virtual screen with `xvfb-run magview` (Debian package xvfb)."
            )
    missing = _import_problem()
    if missing is None and sys.platform.startswith("linux") and chosen in ("", "xcb"):
        missing = _xcb_problem(bool(os.environ.get("WAYLAND_DISPLAY")) and chosen == "")
    return missing


def say_in_a_box(sentence: str) -> None:
    """Say why there is no window to somebody who has no terminal either; only Windows has a box that needs no Qt."""
    if sys.platform == "win32":
        ctypes.windll.user32.MessageBoxW(None, sentence, "magview", 0x10)


def missing_libraries() -> list[tuple[str, str]]:
    """System libraries that Qt needs here and the system has not, each with its Debian package; Linux only."""
    if not sys.platform.startswith("linux"):
        return []
    chosen = os.environ.get("QT_QPA_PLATFORM", "").split(":")[0]
    x11 = chosen == "xcb" or (chosen == "" and not os.environ.get("WAYLAND_DISPLAY"))
    wanted = [name for name in PACKAGES if x11 or not _of_x11(name)]
    return [(name, PACKAGES[name]) for name in wanted if not loads(name)]


def _of_x11(library: str) -> bool:
    return "xcb" in library or "x11" in library


def loads(library: str) -> bool:
    """Whether the system finds a shared library."""
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def _import_problem() -> str | None:
    try:
        importlib.import_module("PySide6.QtWidgets")
    except ImportError as error:
        return _missing(str(error))
    return None


def _xcb_problem(wayland: bool) -> str | None:
    if wayland:  # Qt has a second plugin to fall back on, which needs none of these
        return None
    spec = importlib.util.find_spec("PySide6")
    folder = Path(spec.origin).parent if spec is not None and spec.origin else Path()
    plugin = folder / "Qt" / "plugins" / "platforms" / "libqxcb.so"
    if plugin.exists():
        try:
            ctypes.CDLL(str(plugin))
        except OSError as error:
            return _missing(str(error))
    try:
        xcb = ctypes.CDLL("libxcb.so.1")
    except OSError as error:
        return _missing(str(error))
    xcb.xcb_connect.restype = ctypes.c_void_p
    xcb.xcb_connect.argtypes = [ctypes.c_char_p, ctypes.c_void_p]
    xcb.xcb_connection_has_error.argtypes = [ctypes.c_void_p]
    xcb.xcb_disconnect.argtypes = [ctypes.c_void_p]
    connection = xcb.xcb_connect(None, None)
    failed = xcb.xcb_connection_has_error(connection)
    xcb.xcb_disconnect(connection)
    if failed:
        return (
            f"the display {os.environ.get('DISPLAY')} does not answer; run `magview` in a desktop session, "
            "or on a virtual screen with `xvfb-run magview` (Debian package xvfb)."
        )
    return None


def _missing(message: str) -> str:
    found = re.search(r"(lib[\w.+-]+\.so[.\d]*)", message)
    if found is None:
        return f"Qt cannot be loaded: {' '.join(message.split())}."
    library = found[1]
    package = PACKAGES.get(library)
    hint = f"the package {package} has it" if package else "your system's package manager has it"
    return (
        f"the system library {library} is missing and Qt needs it: {hint}; on Debian or Ubuntu all that the window "
        f"needs comes with `{_INSTALL}`."
    )
