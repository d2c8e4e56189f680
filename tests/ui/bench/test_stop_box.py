"""The box that finds top dead centre: which cylinder the stop belongs in, and what its link rod adds."""

import pytest
from PySide6.QtCore import Qt

from magview.ui.bench.stop_box import StopBox
from magview.ui.kit.look import Look
from tests.published.pins import Pins, radial


@pytest.mark.parametrize("cylinder", [1, 3, 6])
def test_the_box_names_the_cylinder_and_its_correction(qtbot, cylinder):
    engine = radial(timing=cylinder)
    pins = Pins(engine, cylinder)
    before, after = (angle - pins.top() for angle in pins.stops(25.0))
    box = StopBox(Look())
    qtbot.addWidget(box)
    box.show_engine(engine)
    for spin, reading in zip(box.stops, (before, after), strict=True):
        spin.lineEdit().selectAll()
        qtbot.keyClicks(spin.lineEdit(), f"{reading:.3f}")
        qtbot.keyClick(spin.lineEdit(), Qt.Key.Key_Return)
    assert "centre is at 0.00°" in box.tdc.text()
    assert f"No. {cylinder}" in box.tdc.text()
    correction = -(before + after) / 2
    assert (f"{correction:+.2f}°" in box.tdc.text()) is (cylinder != 1)
