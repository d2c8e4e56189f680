"""The Engine page of a magneto that no toothed disc times, and of one with an impulse coupling."""

from __future__ import annotations

import pytest

from magview.bench.actions import MoveTeeth, PlaceInstallation, PlaceMagneto
from magview.bench.apply import apply
from magview.bench.placing import new_bench
from magview.spec.base import SpecError
from magview.spec.engine import Geared, ImpulseCoupling, SlottedFlange
from magview.spec.library import find_installation, find_magneto
from tests.magnetos import by_manual

WAYS = {
    "Slotted flange": SlottedFlange(kind="slotted_flange", travel_deg=20.0),
    "Geared drive": Geared(kind="geared", teeth=30),
}


def test_without_a_disc_the_page_says_how_it_is_timed_and_offers_no_teeth(open_window):
    window = open_window("seven-radial-left")
    window.tabs.setCurrentIndex(1)
    assert window.timing.teeth.isVisibleTo(window.timing)
    assert not window.timing.adjusted.isVisibleTo(window.timing)
    for words, how in WAYS.items():
        other = find_installation("seven-radial-left").model_copy(update={"coupling": None, "adjusted_by": how})
        window.model.send(PlaceInstallation(other))
        assert window.timing.adjusted.isVisibleTo(window.timing)
        assert words in window.timing.adjusted.text() and "do not apply" in window.timing.adjusted.text()
        assert not window.timing.teeth.isVisibleTo(window.timing)
        assert window.timing.plan.chosen is None
        assert words in window.drive.accessibleDescription()
    window.model.send(PlaceInstallation(find_installation("seven-radial-left")))
    assert window.timing.teeth.isVisibleTo(window.timing)
    assert not window.timing.adjusted.isVisibleTo(window.timing)


def test_an_impulse_coupling_is_warned_of_on_the_page(open_window):
    window = open_window("four-opposed-left")
    window.tabs.setCurrentIndex(1)
    assert not window.timing.impulse.isVisibleTo(window.timing)
    impulse = ImpulseCoupling(lag_deg=25.0, releases_above_rpm=300.0)
    found = find_installation("four-opposed-left").model_copy(update={"impulse_coupling": impulse})
    window.model.send(PlaceInstallation(found))
    assert window.timing.impulse.isVisibleTo(window.timing)
    assert "sparks at hand speed" in window.timing.impulse.text()


def test_a_reduction_gear_is_told_of_and_none_is_not(open_window):
    """Degrees at the propeller times the crank's turns a turn of the propeller are the crank's."""
    window = open_window("four-opposed-left")
    window.tabs.setCurrentIndex(1)
    assert not window.timing.propeller.isVisibleTo(window.timing)
    geared = find_installation("four-opposed-left").model_copy(update={"crank_turns_per_propeller_turn": 1.5})
    window.model.send(PlaceInstallation(geared))
    assert window.timing.propeller.isVisibleTo(window.timing)
    assert "1.5° of crank" in window.timing.propeller.text()


def test_a_magneto_known_by_its_manual_is_refused_and_the_bench_stays(open_window, qtbot):
    window = open_window("seven-radial")
    before = window.model.state
    with qtbot.waitSignal(window.model.refused) as refused:
        window.model.send(PlaceMagneto(by_manual(find_magneto("nine-radial"))))
    assert "known by its manual only" in refused.args[0]
    assert window.model.state is before


@pytest.mark.parametrize("kind", WAYS)
def test_no_tooth_is_moved_where_there_is_none(kind):
    found = find_installation("seven-radial-left").model_copy(update={"coupling": None, "adjusted_by": WAYS[kind]})
    with pytest.raises(SpecError, match="teeth do not apply"):
        apply(new_bench(found), MoveTeeth(1, 0))
