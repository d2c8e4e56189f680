"""The window with a sheet of plots in front, for tests; Qt is imported only when one is asked for."""

from __future__ import annotations

import pytest

SHEETS = ("lift", "lobes", "window", "coil", "pull", "coupling")


@pytest.fixture
def open_plots(open_window):
    """Open a window with one sheet of plots in front, laid out."""

    def open_on(sheet: str, name: str = "seven-radial-left", size: tuple[int, int] = (1280, 720)):
        window = open_window(name, size, first=lambda window: window.show_plots(True))
        plots = window.plots.choose(sheet)
        settle()
        return window, plots

    return open_on


def settle() -> None:
    """A few turns of the event loop: sizes, ticks, then pictures."""
    from tests.hands import what_is_due

    what_is_due(3)
