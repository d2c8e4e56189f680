"""Which calculators there are beside the pictures."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from magview.spec.language import marked
from magview.ui.kit.panes import Panel

if TYPE_CHECKING:
    from magview.ui.shell.window import MainWindow


def _setting_panel(window: MainWindow) -> Panel:
    from magview.ui.bench.setting_panel import SettingPanel

    return SettingPanel(window.model, window.look)


def _timing_panel(window: MainWindow) -> Panel:
    from magview.ui.bench.timing_panel import TimingPanel

    panel = TimingPanel(window.model, window.look)
    panel.previewed.connect(window.drive.preview)
    panel.plan.print_wanted.connect(window.print_shift_plan)
    return panel


def _lead_panel(window: MainWindow) -> Panel:
    from magview.ui.bench.lead_panel import LeadPanel

    return LeadPanel(window.model, window.look)


def _trials_panel(window: MainWindow) -> Panel:
    from magview.ui.bench.trials_panel import TrialsPanel

    panel = TrialsPanel(window.model, window.look)
    panel.said.connect(window.say)
    return panel


def _uncertainty_panel(window: MainWindow) -> Panel:
    from magview.ui.bench.uncertainty_panel import UncertaintyPanel

    return UncertaintyPanel(window.model, window.look, window.judging)


def _wear_panel(window: MainWindow) -> Panel:
    from magview.ui.bench.wear_panel import WearPanel

    return WearPanel(window.model, window.look)


PANELS: dict[str, tuple[str, str, Callable[[MainWindow], Panel]]] = {
    "setting": (marked("&Internal"), marked("Internal timing"), _setting_panel),
    "timing": (marked("En&gine"), marked("Timing to the engine"), _timing_panel),
    "lead": (marked("&Lead"), marked("Switch lead"), _lead_panel),
    "trials": (marked("&Trials"), marked("Trials, and what to try next"), _trials_panel),
    "uncertainty": (marked("Unce&rtainty"), marked("How sure the setting is"), _uncertainty_panel),
    "wear": (marked("&Wear"), marked("Wear and drift"), _wear_panel),
}
"""The calculators beside the pictures: words of their tabs, and what builds them when first seen."""
