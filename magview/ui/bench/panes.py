"""Calculators beside the pictures, each imported when it is first seen."""

from __future__ import annotations

from typing import TYPE_CHECKING

from magview.spec.language import marked

if TYPE_CHECKING:  # what comes after the first picture is imported then
    from magview.ui.bench.lead_panel import LeadPanel
    from magview.ui.bench.setting_panel import SettingPanel
    from magview.ui.bench.timing_panel import TimingPanel
    from magview.ui.bench.trials_panel import TrialsPanel
    from magview.ui.bench.uncertainty_panel import UncertaintyPanel
    from magview.ui.bench.wear_panel import WearPanel
    from magview.ui.kit.bench_model import BenchModel
    from magview.ui.kit.look import Look
    from magview.ui.plots.judging import Judging


def setting_panel(model: BenchModel, look: Look) -> SettingPanel:
    """Internal timing."""
    from magview.ui.bench.setting_panel import SettingPanel

    return SettingPanel(model, look)


def timing_panel(model: BenchModel, look: Look) -> TimingPanel:
    """Timing to the engine."""
    from magview.ui.bench.timing_panel import TimingPanel

    return TimingPanel(model, look)


def lead_panel(model: BenchModel, look: Look) -> LeadPanel:
    """Switch lead."""
    from magview.ui.bench.lead_panel import LeadPanel

    return LeadPanel(model, look)


def trials_panel(model: BenchModel, look: Look) -> TrialsPanel:
    """Panel for trials of settings, and advice on the next."""
    from magview.ui.bench.trials_panel import TrialsPanel

    return TrialsPanel(model, look)


def uncertainty_panel(model: BenchModel, look: Look, judging: Judging) -> UncertaintyPanel:
    """Panel that judges how sure the setting is."""
    from magview.ui.bench.uncertainty_panel import UncertaintyPanel

    return UncertaintyPanel(model, look, judging)


def wear_panel(model: BenchModel, look: Look) -> WearPanel:
    """Wear and drift."""
    from magview.ui.bench.wear_panel import WearPanel

    return WearPanel(model, look)


PANELS: dict[str, tuple[str, str]] = {
    "setting": (marked("&Internal"), marked("Internal timing")),
    "timing": (marked("En&gine"), marked("Timing to the engine")),
    "lead": (marked("Switch &lead"), marked("Switch lead")),
    "trials": (marked("Trials"), marked("Trials, and what to try next")),
    "uncertainty": (marked("How sure"), marked("How sure the setting is")),
    "wear": (marked("Wear"), marked("Wear and drift")),
}
"""The calculators beside the pictures: words of their tabs, and what they are about."""
