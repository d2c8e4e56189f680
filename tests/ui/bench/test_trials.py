"""Trials and their advice, and lift from a table, through the real window."""

from __future__ import annotations

import math

import numpy as np
import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication

from magview.bench.actions import GrowPip, PlaceMagneto, TurnBackplate, WearHeel
from magview.bench.advice_words import advice_words
from magview.bench.autosave import Autosave
from magview.bench.state import readings
from magview.physics.cam.breaker import lift_curve
from magview.physics.cam.setting import internal_timing
from magview.physics.trials.advice import advise
from magview.physics.trials.trial import PlateScale
from magview.spec.files import read_magneto
from magview.spec.library import find_magneto
from magview.spec.units import MM_PER_THOU
from magview.ui.bench import trials_panel
from magview.ui.kit.theme import DARK
from magview.ui.own.lift_dialog import LiftDialog
from tests.wording import says


@pytest.fixture
def panel(open_window):
    window = open_window("seven-radial-left")
    window.tabs.setCurrentIndex(3)
    return window, window.panel_of("trials")


def click(button):
    QTest.mouseClick(button, Qt.MouseButton.LeftButton)
    QApplication.processEvents()


def fill(page, plate, passes, fails):
    page.plate.show_value(plate)
    page.go.show_value(passes)
    page.no_go.show_value(fails)


def test_trials_of_a_real_magneto_that_the_file_has_wrong_lead_into_limits(panel):
    """The true cam lifts 15 % more than the file: follow the advice with blades only, as a mechanic would."""
    window, page = panel
    filed = window.model.state.magneto
    profile = filed.cam.profile.model_copy(update={"lift_mm": 1.15 * filed.cam.profile.lift_mm})
    true = filed.model_copy(update={"cam": filed.cam.model_copy(update={"profile": profile})})
    timing = internal_timing(true)
    top, designed = timing.curve.top_mm, filed.designed_setting
    for _ in range(8):
        if page.advice.outcome == "done":
            break
        plate = page.advice.backplate_deg
        # guide: theory-setting backwards: the gap at which the screw opens it at the E-gap with the plate here.
        gaps = np.linspace(0.01, 0.98 * top, 4000)
        plates = designed.backplate_deg + np.array(
            timing.curve.before_top_deg(top - gaps) - timing.curve.before_top_deg(top - designed.gap_mm)
        )
        gap = float(np.interp(plate, plates, gaps))
        passes = math.floor(gap / MM_PER_THOU) * MM_PER_THOU
        fill(page, plate, passes, passes + MM_PER_THOU)
        click(page.note_button)
    assert page.advice.outcome == "done"
    last = window.model.state.trials[-1]
    low, high = filed.gap_limits_mm
    assert low - 1e-9 <= last.gap_low_mm <= last.gap_high_mm <= high + 1e-9
    assert "Done" in page.chance.text()
    assert not page.turn_button.isEnabled()


def test_the_bench_gives_a_trial_and_the_advice_turns_its_plate(panel):
    window, page = panel
    window.model.send(TurnBackplate(2.0))
    page.take_from_bench()
    result = readings(window.model.state)
    assert page.plate.exact == 2.0
    gap = float(result.max_gap_mm[0])
    assert page.go.exact <= gap < page.no_go.exact
    page.go.show_value(0.0127 * 30)
    page.no_go.show_value(0.0127 * 32)
    click(page.note_button)
    assert len(window.model.state.trials) == 1
    assert page.table.row_count() == 1
    to = page.advice.backplate_deg
    assert to < 2.0  # a gap too wide: against rotation
    click(page.turn_button)
    assert window.model.state.backplate_deg == pytest.approx(to)
    click(page.drop_button)
    assert window.model.state.trials == ()
    window.model.undo()
    assert len(window.model.state.trials) == 1
    assert says("strike out trial {place}", place=1) in window.model.store.redo_name.lower()


def test_a_plate_is_read_in_degrees_along_the_slot_or_in_marks(panel):
    _, page = panel
    page.scale.setCurrentIndex(1)
    page.radius.show_value(30.0)
    page.along.show_value(math.pi * 30.0 / 180.0)  # an arc of one degree
    assert page.plate_deg == pytest.approx(1.0)
    assert page.along.isVisible()
    assert not page.plate.isVisible()
    page.scale.setCurrentIndex(2)
    page.marks.setValue(-3.0)
    page.per_mark.show_value(0.5)
    assert page.plate_deg == pytest.approx(-1.5)


def test_a_trial_that_cannot_be_is_refused_in_one_sentence(panel):
    window, page = panel
    fill(page, 0.0, 0.30, 0.20)
    click(page.note_button)
    assert window.model.state.trials == ()
    assert "must be thinner" in window.statusBar().currentMessage()


def test_what_was_found_is_saved_as_a_magneto_of_ones_own(panel, tmp_path):
    window, page = panel
    for plate, passes in ((0.0, 0.2794), (1.5, 0.3556), (-1.5, 0.2032)):
        fill(page, plate, passes, passes + MM_PER_THOU)
        click(page.note_button)
    page.save_to(tmp_path / "own.json")
    own = read_magneto(tmp_path / "own.json")
    timing = internal_timing(own)
    for trial in window.model.state.trials:
        # The saved file gives the trials back, within a blade's feel and what the marks allow.
        found = timing.adjust(trial.middle_mm)
        assert found.backplate_deg == pytest.approx(trial.backplate_deg, abs=0.5)
    page.save_to(tmp_path / "no" / "such" / "place.json")
    assert "cannot be written" in window.statusBar().currentMessage()


def test_trials_outlive_a_kill(panel, tmp_path):
    window, page = panel
    fill(page, 1.0, 0.2540, 0.0)  # every blade passed: no upper end
    click(page.note_button)
    Autosave(tmp_path).keep(window.model.state)
    (lock,) = tmp_path.glob("*.lock")
    lock.unlink()  # its program is gone
    found = Autosave(tmp_path).recover()
    assert found == window.model.state
    assert math.isinf(found.trials[0].gap_high_mm)


def test_the_plot_shows_file_fit_and_next(panel):
    window, page = panel
    window.show_plots(True)
    sheet = window.plots.choose("trials")
    fill(page, 0.0, 0.2794, 0.3048)
    click(page.note_button)
    table = dict(sheet.table())
    plates = table["backplate, positive with rotation [deg]"]
    through = np.interp(0.0, plates, table["largest gap through the trials [mm]"])
    assert 0.2794 <= through <= 0.3048  # one trial: the curve goes through it
    # As filed, the designed plate gives the designed gap.
    designed = window.model.state.magneto.designed_setting
    filed = np.interp(designed.backplate_deg, plates, table["largest gap as the file has it [mm]"])
    assert filed == pytest.approx(designed.gap_mm, abs=1e-3)
    assert sheet.summary() == advice_words(page.advice)


def test_contacts_that_never_open_make_no_trial(panel):
    window, page = panel
    fill(page, 1.0, 0.2286, 0.2540)
    window.model.send(WearHeel(1.9))
    assert math.isnan(float(readings(window.model.state).e_gap_error_deg[0]))
    page.take_from_bench()
    assert "never open" in window.statusBar().currentMessage()
    assert (page.plate.exact, page.go.exact, page.no_go.exact) == (1.0, 0.2286, 0.2540)


def test_a_decimal_comma_between_marks_is_a_decimal_comma(panel):
    _, page = panel
    page.scale.setCurrentIndex(2)
    page.per_mark.show_value(1.0)
    page.marks.setFocus()
    page.marks.selectAll()
    QTest.keyClicks(page.marks, "1,5")
    QTest.keyClick(page.marks, Qt.Key.Key_Return)
    assert page.plate_deg == pytest.approx(1.5)


def test_advice_is_made_once_a_move_and_only_for_somebody_who_looks(panel, monkeypatch):
    window, page = panel
    fill(page, 0.0, 0.2794, 0.3048)
    click(page.note_button)
    made: list[int] = []
    monkeypatch.setattr(trials_panel, "advise", lambda m, t, **how: made.append(len(t)) or advise(m, t, **how))
    window.look.theme = DARK
    window.look.inches = True
    assert made == []  # the same advice in other colours and units
    assert page.table.words(0, 1).endswith(" in")
    window.model.send(WearHeel(0.01))
    window.model.send(GrowPip(0.01))
    QApplication.processEvents()
    assert made == [1]
    window.tabs.setCurrentIndex(0)
    window.model.send(WearHeel(0.02))
    QApplication.processEvents()
    assert made == [1]
    window.tabs.setCurrentIndex(3)
    assert made == [1, 1]
    assert page.reason.text() == advice_words(advise(window.model.state.magneto, window.model.state.trials))


def test_how_it_is_read_is_kept_undone_and_advised_in(panel, tmp_path):
    window, page = panel
    fill(page, 0.0, 0.2286, 0.2540)
    click(page.note_button)
    page.scale.setCurrentIndex(2)
    page.per_mark.setValue(0.5)
    page.plate_error.setValue(0.5)
    page.straightedge.setCurrentIndex(1)
    page.straightedge.activated.emit(1)
    how = window.model.state.trials_read
    assert how.scale == PlateScale.marks(0.5)
    assert (how.errors.mark_mm, how.errors.plate_deg) == (0.1, 0.25)  # clamped; half a mark of half a degree
    QApplication.processEvents()
    told = advice_words(page.advice)
    assert told.startswith("Turn the plate") and " marks with cam rotation" in told
    assert page.table.words(0, 0).endswith(" marks")
    Autosave(tmp_path).keep(window.model.state)
    (lock,) = tmp_path.glob("*.lock")
    lock.unlink()
    assert Autosave(tmp_path).recover() == window.model.state
    window.model.undo()
    assert page.straightedge.currentIndex() == 0
    assert page.mark_error.exact == 0.2


def test_tab_leads_through_the_list_not_into_every_cell(panel):
    _, page = panel
    for _ in range(3):
        click(page.note_button)
    page.table.setFocus()
    QTest.keyClick(page.table, Qt.Key.Key_Tab)
    assert QApplication.focusWidget() is page.drop_button


# ---------------------------------------------------------------------- lift from a table


@pytest.fixture
def table(tmp_path):
    """One lobe of the shipped seven-cylinder magneto as a dial would read it, in thousandths, decimal commas."""
    magneto = find_magneto("seven-radial")
    curve = lift_curve(magneto.cam.profile, magneto.breaker)
    angles = np.arange(-44.0, 44.5, 1.0)
    rows = [f"{a:.1f};{lift / MM_PER_THOU:.2f}".replace(".", ",") for a, lift in zip(angles, curve.lift_mm(angles))]  # noqa: B905
    path = tmp_path / "lobe.csv"
    path.write_text("Winkel;Hub\n" + "\n".join(rows) + "\n", encoding="utf-8")
    return path, curve


def test_a_table_becomes_lobes_once_its_unit_is_said(open_window, table):
    path, curve = table
    window = open_window("seven-radial")
    dialog = window.import_lift_from(path)
    assert "unit" in dialog.answer.text()
    assert not dialog.place_button.isEnabled()
    dialog.unit.setCurrentIndex(3)
    assert dialog.place_button.isEnabled()
    assert max(dialog.lift.profile.contact_lift_mm) == pytest.approx(curve.top_mm, abs=0.002)
    click(dialog.place_button)
    assert window.model.state.magneto.cam.profile.kind == "measured"
    inside = np.linspace(-30.0, 30.0, 61)
    measured = internal_timing(window.model.state.magneto).curve.lift_mm(inside)
    np.testing.assert_allclose(measured, curve.lift_mm(inside), atol=0.004)
    assert not window.findChildren(LiftDialog)


def test_a_table_that_is_none_says_why_and_does_nothing(open_window, tmp_path):
    window = open_window("seven-radial")
    path = tmp_path / "words.csv"
    path.write_text("nothing but words\n", encoding="utf-8")
    dialog = window.import_lift_from(path)
    dialog.unit.setCurrentIndex(1)
    assert "words.csv" in dialog.answer.text()
    assert not dialog.save_button.isEnabled()
    before = window.model.state
    dialog.place()
    assert window.model.state is before
    dialog.reject()


def test_the_lift_is_saved_as_a_magneto(open_window, table, tmp_path):
    path, _ = table
    window = open_window("seven-radial")
    dialog = window.import_lift_from(path)
    dialog.unit.setCurrentIndex(3)
    dialog.save_to(tmp_path / "traced.json")
    assert read_magneto(tmp_path / "traced.json").cam.profile.kind == "measured"
    dialog.reject()


@pytest.mark.parametrize("field", ["stop", "ratio", "angle_column"])
def test_return_in_a_field_of_the_lift_ends_the_typing_only(open_window, table, qtbot, field):
    path, _ = table
    window = open_window("seven-radial")
    dialog = window.import_lift_from(path)
    qtbot.waitUntil(dialog.isVisible)
    dialog.unit.setCurrentIndex(3)
    dialog.reading.setCurrentIndex({"stop": 1, "ratio": 2}.get(field, 0))
    before = window.model.state
    spin = getattr(dialog, field)
    spin.setFocus()
    QTest.keyClick(spin, Qt.Key.Key_Return)
    QApplication.processEvents()
    assert dialog.isVisible()
    assert window.model.state is before
    dialog.reject()


def test_the_ratio_of_the_arms_takes_a_decimal_comma(open_window, table):
    path, _ = table
    dialog = open_window("seven-radial").import_lift_from(path)
    dialog.unit.setCurrentIndex(3)
    dialog.reading.setCurrentIndex(2)
    dialog.ratio.selectAll()
    QTest.keyClicks(dialog.ratio, "1,25")
    QTest.keyClick(dialog.ratio, Qt.Key.Key_Return)
    assert dialog.ratio.exact == 1.25
    dialog.reject()


def test_trials_belong_to_their_magneto(panel):
    window, page = panel
    fill(page, 0.0, 0.2794, 0.3048)
    click(page.note_button)
    window.model.send(PlaceMagneto(find_magneto("four-opposed")))
    assert window.model.state.trials == ()
    assert page.table.row_count() == 0
    window.model.undo()
    assert len(window.model.state.trials) == 1
