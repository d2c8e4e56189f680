"""A mechanic without a file for the magneto at hand: own magneto, engine and installation, then timed."""

from __future__ import annotations

import pytest
from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QLineEdit

from magview.bench.state import firing_btdc_deg
from magview.spec.files import read_installation
from tests.hands import click

MAGNETO = {
    "name": "Shed magneto, right", "rotation": "clockwise", "poles": "2",
    "cam.lobe_peaks_deg": "0; 180", "cam.turns_per_rotor_turn": "1", "cam.profile.kind": "law",
    "cam.profile.base_radius_mm": "9,5", "cam.profile.lift_mm": "0,5", "cam.profile.rise_deg": "40",
    "cam.profile.dwell_deg": "10", "cam.profile.fall_deg": "40", "cam.profile.law": "modified-sine",
    "breaker.contact_arm_mm": "27", "breaker.heel_arm_mm": "17", "breaker.pivot_distance_mm": "20",
    "breaker.heel_radius_mm": "1,8", "breaker.pivot": "behind", "breaker.pivot_bearing_deg": "-60",
    "contact_screw.kind": "eccentric", "contact_screw.throw_mm": "20 thou", "contact_screw.range_deg[0]": "-60",
    "contact_screw.range_deg[1]": "60", "contact_screw.positive_is_clockwise": True,
    "backplate.range_deg[0]": "-6", "backplate.range_deg[1]": "6", "designed_setting.backplate_deg": "0",
    "designed_setting.gap_mm": "0,3 mm", "e_gap_deg": "10", "gap_limits_mm[0]": "0,25", "gap_limits_mm[1]": "0,35",
    "marks.radius_mm": "32", "marks.tolerance_mm": "1 thirtysecond",
}  # fmt: skip
ENGINE = {
    "name": "Shed engine", "cylinders": "4", "arrangement": "inline", "rotation": "clockwise",
    "firing_order": "1-3-4-2", "firing_btdc_deg.left": "25", "firing_btdc_deg.right": "25",
    "timing_tolerance_deg": "1", "synchronising_tolerance_deg": "1", "stroke_mm": "4 in", "rod_mm": "190",
}  # fmt: skip
INSTALLATION = {
    "magneto": "own", "engine": "own", "position": "right", "coupling.magneto_teeth": "19",
    "coupling.drive_teeth": "20",
}  # fmt: skip


def fill(own, answers):
    """Go from one open field to the next, as the button leads, and answer what it asks for."""
    given = []
    while own.next_gap.isEnabled():
        click(own.next_gap)
        field = QApplication.focusWidget()
        path = next(p for p, row in own.page().rows.items() if row.field is field)
        given.append(path)
        assert len(given) < 60
        if path not in answers:
            assert path == "rotor_turns_per_crank_turn"
            click(own.page().rows[path].work_button)
        elif isinstance(field, QLineEdit):
            QTest.keyClick(field, Qt.Key.Key_A, Qt.KeyboardModifier.ControlModifier)
            QTest.keyClicks(field, answers[path])
            QTest.keyClick(field, Qt.Key.Key_Tab)
            if answers[path] == "1 thirtysecond":  # no number: refused at the field, then typed as one
                assert own.page().rows[path].refusal.isVisible()
                answers = {**answers, path: "0,8 mm"}
        else:
            place = field.findData(answers[path])
            QTest.keyClick(field, Qt.Key.Key_Home)
            for _ in range(place):
                QTest.keyClick(field, Qt.Key.Key_Down)
            field.activated.emit(field.currentIndex())
    return given


def test_own_magneto_engine_and_installation_made_opened_and_timed(open_window, qtbot, tmp_path):
    window = open_window("seven-radial-left")
    window.draft_own()
    own = window.own.page
    own.activateWindow()
    qtbot.waitUntil(own.isActiveWindow)
    asked = fill(own, MAGNETO)
    assert set(asked) == set(MAGNETO), "asked for all that is needed and nothing else"
    own.files.save_to("magneto", tmp_path / "magneto.json")
    own.show_kind("engine")
    assert set(fill(own, ENGINE)) == set(ENGINE)
    own.files.save_to("engine", tmp_path / "engine.json")
    own.show_kind("installation")
    fill(own, INSTALLATION)
    # Common practice: cylinders over twice the poles.
    assert own.model.own.installation.values["rotor_turns_per_crank_turn"] == pytest.approx(4 / (2 * 2))
    own.files.save_to("installation", tmp_path / "both.json")

    # Opened on the bench as any file is, it is timed as wanted.
    window.open_path(tmp_path / "both.json")
    state = window.model.state
    assert state.engaged.installation == read_installation(tmp_path / "both.json")
    assert state.engaged.side == "right"
    assert firing_btdc_deg(state, "right") == pytest.approx(25.0)

    # The lamp says otherwise; the planner's first move brings it within the tolerance typed in.
    window.places.bench.go_home()
    window.tabs.setCurrentIndex(1)
    reads = window.timing.lamp.reads["right"]
    reads.setFocus()
    reads.selectAll()
    QTest.keyClicks(reads.lineEdit(), "21,5")
    QTest.keyClick(reads.lineEdit(), Qt.Key.Key_Return)
    table = window.timing.plan.table
    window.tabs.currentWidget().ensureWidgetVisible(table)
    spot = table.visualRect(table.model().index(0, 0)).center()
    QTest.mouseClick(table.viewport(), Qt.MouseButton.LeftButton, pos=spot)
    while window.timing.plan.next.isEnabled():
        QTest.mouseClick(window.timing.plan.next, Qt.MouseButton.LeftButton)
    # A vernier of 19 and 20 teeth steps the rotor by 360/380°, here as much at the crank: half of it is the worst.
    assert abs(firing_btdc_deg(window.model.state, "right") - 25.0) <= 360 / 380 / 2 + 1e-9
