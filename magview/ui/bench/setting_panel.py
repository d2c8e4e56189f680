"""The page of internal timing: setting, readings against limits, four at one instant, what puts it right, lobes."""

from __future__ import annotations

from PySide6.QtWidgets import QVBoxLayout, QWidget

from magview.bench.four_conditions import four_now
from magview.bench.lamp import Standing, standing
from magview.bench.lamp_words import standing_words, teeth_moved_words
from magview.bench.state import BenchState, readings, same_but_worn
from magview.physics.cam.setting import Readings
from magview.spec.language import format_angle, format_length, tr
from magview.spec.units import length_digits
from magview.ui.bench.bench_warning import BenchWarning
from magview.ui.bench.conditions_box import ConditionsBox
from magview.ui.bench.put_right_box import PutRightBox
from magview.ui.bench.readings_box import ReadingsBox
from magview.ui.bench.setting_box import SettingBox
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.callout import Callout
from magview.ui.kit.look import Look
from magview.ui.kit.notice import Notice
from magview.ui.kit.section import Section
from magview.ui.kit.strip import Foot
from magview.ui.kit.table import Table


class SettingPanel(QWidget):
    """The setting and all that is read of it, beside the picture."""

    def __init__(self, model: BenchModel, look: Look, parent: QWidget | None = None) -> None:
        super().__init__(parent)
        self._model, self.look = model, look
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        layout.setSpacing(9)
        self.setting, self.read = SettingBox(model, look), ReadingsBox(look)
        self.conditions = ConditionsBox(look, tr("as it stands now"))
        self.put_right = PutRightBox(model, look)
        self.lamp = self.pinned = Notice(look)
        self.lamp.setParent(self)
        for part in (
            self.setting, self.read, self.conditions, self.put_right, self._build_lobes(),
            BenchWarning(model), Foot(look),
        ):  # fmt: skip
            layout.addWidget(part)
        layout.addStretch(1)
        self.rotor, self.plate, self.screw = self.setting.rotor, self.setting.plate, self.setting.screw
        self.lock, self.clamps, self.gauges = self.setting.lock, self.setting.clamps, self.read.gauges
        self.overall, self.wanted, self.advice = self.read.overall, self.put_right.wanted, self.put_right.steps
        self.do_it = self.advice.button
        self.callout = Callout(self, model)
        self.put_right.placed(model.state)
        self.show_state(model.state)
        model.changed.connect(self.show_state)
        look.changed.connect(self._show_again)

    def _build_lobes(self) -> Section:
        box = Section(tr("Every lobe"), self.look)
        box.note.setText(tr("in firing order"))
        heads = (tr("Opens"), tr("Error"), tr("Closes"), tr("Dwell"), tr("Gap"))
        self.lobes = Table(tr("Readings of every lobe"), heads, wide=range(5), numbers=range(5))
        self.lobes.setToolTip(tr("Rotor degrees; the gap is the largest, at the top of the lobe"))
        self.lobes.verticalHeader().show()
        self.lobes.show_at_most(9)
        box.body.addWidget(self.lobes)
        return box

    # -------------------------------------------------------------- showing

    def show_state(self, state: BenchState, old: BenchState | None = None) -> None:
        """Show a state."""
        if old is not None and not same_but_worn(old.magneto, state.magneto):
            self.put_right.placed(state)
        self.setting.show_state(state, old)
        setting = (state.magneto, state.backplate_deg, state.screw_deg)
        tight = (state.lock_tight, state.clamps_tight)
        was = None if old is None else (old.magneto, old.backplate_deg, old.screw_deg)
        if setting != was or old is None or tight != (old.lock_tight, old.clamps_tight):
            result = readings(state)
            self.read.show_readings(state, result)
            if setting != was:
                self._show_lobes(state, result)
            self.put_right.show_advice(state)
        if setting != was or old is None or (state.engaged, state.rotor_deg) != (old.engaged, old.rotor_deg):
            self.conditions.show_four(state, four_now(state))
        if setting != was or old is None or state.engaged != old.engaged:
            self._show_lamp(state)

    def _show_again(self) -> None:
        self.show_state(self._model.state)

    def halt(self) -> None:
        """The window closes."""
        self.put_right.halt()

    def _show_lobes(self, state: BenchState, result: Readings) -> None:
        inches, limits = self.look.inches, state.magneto.gap_limits_mm
        gaps = [float(gap) for gap in result.max_gap_mm]
        self.lobes.fill([
            (
                format_angle(result.opens_deg[row]),
                format_angle(result.e_gap_error_deg[row], True),
                format_angle(result.closes_deg[row]),
                format_angle(result.dwell_deg[row]),
                format_length(gap, inches, length_digits(gap, *limits, inches)),
            )
            for row, gap in enumerate(gaps)
        ])  # fmt: skip

    def _show_lamp(self, state: BenchState) -> None:
        """Show what setting contacts or moving teeth does to the lamp's reading: said here too, where it is done."""
        engaged = state.engaged
        old = engaged is not None and standing(state, engaged.side) is Standing.OUT_OF_DATE
        words = standing_words(state, engaged.side) if engaged is not None and old else ""
        self.lamp.say(words or (teeth_moved_words(state, engaged.side) if engaged is not None else ""))
