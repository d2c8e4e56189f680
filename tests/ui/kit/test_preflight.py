"""A missing system library is named with its package, in one sentence."""

from __future__ import annotations

import pytest

from magview.ui.kit import preflight


@pytest.mark.parametrize(
    ("message", "library", "package"),
    [
        ("libGL.so.1: cannot open shared object file: No such file or directory", "libGL.so.1", "libgl1"),
        ("libxcb-cursor.so.0: cannot open shared object file", "libxcb-cursor.so.0", "libxcb-cursor0"),
        ("libEGL.so.1: cannot open shared object file", "libEGL.so.1", "libegl1"),
    ],
)
def test_the_package_of_a_missing_library(monkeypatch, message, library, package):
    def no_qt(name: str) -> None:
        raise ImportError(message)

    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    monkeypatch.setattr(preflight.importlib, "import_module", no_qt)
    sentence = preflight.why_no_window()
    assert library in sentence
    assert f"package {package} " in sentence
    assert "\n" not in sentence


def test_nothing_stands_in_the_way_offscreen(monkeypatch):
    monkeypatch.setenv("QT_QPA_PLATFORM", "offscreen")
    assert preflight.why_no_window() is None


def test_no_display_is_said_before_anything_is_loaded(monkeypatch):
    for name in ("DISPLAY", "WAYLAND_DISPLAY", "QT_QPA_PLATFORM"):
        monkeypatch.delenv(name, raising=False)
    monkeypatch.setattr(preflight.sys, "platform", "linux")
    assert "no display" in preflight.why_no_window()
