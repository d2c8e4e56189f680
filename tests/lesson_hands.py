"""Hands of a learner in a lesson's window: every act by mouse, or every act by keys, as real events."""

from __future__ import annotations

import math
from typing import Any, Literal

from PySide6.QtCore import QEvent, QPointF, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractButton, QComboBox, QWidget

from magview.bench import actions as bench
from magview.drawing.scene import hand_at
from magview.practice import actions as do
from magview.ui.pictures.breaker_hands import HANDS_OF_VALUES, STEPS
from tests.hands import click, send_mouse

Way = Literal["mouse", "keys"]

_CHECKS: dict[type, str] = {
    do.ConnectLamp: "lamp", do.LayStraightedge: "edge", bench.TightenLock: "lock", bench.TightenClamps: "clamps",
    bench.SwitchIgnition: "switch", bench.PullPlug: "plug", bench.FitJumper: "jumper", do.Chock: "chocks",
    do.SparkPlugs: "plugs", do.FitStop: "stop", do.Nuts: "nuts", do.PlugLeads: "plug-leads",
}  # fmt: skip
_BUTTONS: dict[type, str] = {
    do.Sight: "square", do.InspectContacts: "look", do.DressContacts: "dress", do.MeterLead: "meter",
    do.MeterTerminal: "terminal", do.Renew: "new-lead", do.FeelCompression: "thumb", bench.PaintMarks: "marks",
    do.Refit: "refit", do.Remove: "lift", do.LeaveAsIs: "leave-chocks",
}  # fmt: skip


class Learner:
    """One who goes through a lesson by the mouse or by the keys alone."""

    def __init__(self, page: Any, way: Way) -> None:
        self.page, self.way = page, way

    # ---------------------------------------------------------------- small moves

    def press(self, button: QAbstractButton) -> None:
        """Press a button or a check box."""
        assert button.isVisible() and button.isEnabled(), button.text()
        if self.way == "mouse":
            click(button)
        else:
            button.setFocus()
            QTest.keyClick(button, Qt.Key.Key_Space)

    def choose(self, combo: QComboBox, data: object) -> None:
        """Choose from a list."""
        combo.setFocus()
        QTest.keyClick(combo, Qt.Key.Key_Home)
        for _ in range(combo.findData(data)):
            QTest.keyClick(combo, Qt.Key.Key_Down)
        assert combo.currentData() == data

    def type(self, field: QWidget, value: float) -> None:
        """Type a number into a field."""
        field.setFocus()
        field.selectAll()
        QTest.keyClicks(field, f"{value:g}")

    def drag(self, hand: str, by_deg: float) -> None:
        """Take a part of the breaker end by the pointer and turn it."""
        view = self.page.pictures.breaker
        held = next(h for h in view.picture.hands if HANDS_OF_VALUES[h.value] == hand)
        centre = view.pixel(*held.centre)
        corners = [view.pixel(*point) for point in held.outline.tolist()]
        middle = sum(corners, QPointF()) / len(corners)
        steps = [middle, *corners, *((corner * 0.9 + centre * 0.1) for corner in corners)]
        at = next(p for p in steps if self._hand_under(view, p, centre, held.centre) == hand)
        send_mouse(view, QEvent.Type.MouseButtonPress, at)
        out = max(80.0, math.hypot(*(at - centre).toTuple()))
        start = math.atan2(*(at - centre).toTuple()[::-1])
        whole = math.radians(by_deg / held.per_bearing)
        for step in range(25):
            angle = start + whole * step / 24
            send_mouse(view, QEvent.Type.MouseMove, centre + out * QPointF(math.cos(angle), math.sin(angle)))
        send_mouse(view, QEvent.Type.MouseButtonRelease, centre + out * QPointF(math.cos(angle), math.sin(angle)))

    @staticmethod
    def _hand_under(view: Any, at: QPointF, centre: QPointF, centre_mm: tuple[float, float]) -> str:
        scale = view.viewportTransform().m22()
        point = centre_mm[0] + (at - centre).x() / scale, centre_mm[1] - (at - centre).y() / scale
        found = hand_at(view.picture, point, scale)
        return HANDS_OF_VALUES[found.value] if found is not None else ""

    def arrows(self, hand: str, by_deg: float) -> None:
        """Take a part in hand by its number and turn it by the arrow keys."""
        view = self.page.pictures.breaker
        view.setFocus()
        QTest.keyClick(view, {"rotor": Qt.Key.Key_1, "plate": Qt.Key.Key_2, "screw": Qt.Key.Key_3}[hand])
        left = round(abs(by_deg) / STEPS[hand])
        big, small = (Qt.Key.Key_PageUp, Qt.Key.Key_Up) if by_deg > 0 else (Qt.Key.Key_PageDown, Qt.Key.Key_Down)
        for key in [big] * (left // 10) + [small] * (left % 10):
            QTest.keyClick(view, key)

    # ---------------------------------------------------------------- acts

    def answer(self) -> None:
        """Answer everything that the step asks, always with the first choice."""
        for number, asked in enumerate(self.page.strip.asked):
            if self.page.model.run.step is not None and number < len(self.page.model.run.step.ask):
                if self.way == "mouse":
                    click(asked.chips[0])
                else:
                    QTest.keyClick(self.page.focusWidget() or self.page, Qt.Key.Key_1)

    def go_on(self) -> None:
        """On to the next step."""
        if self.way == "mouse":
            click(self.page.strip.next)
        else:
            QTest.keyClick(self.page.focusWidget() or self.page, Qt.Key.Key_Return)

    def do(self, act: do.Act) -> None:
        """Do an act by its control, or in the picture."""
        tools, kind = self.page.controls.controls, type(act)
        if kind in _CHECKS:
            self.press(tools[_CHECKS[kind]])
        elif kind in _BUTTONS:
            self.press(tools[_BUTTONS[kind]])
        elif isinstance(act, do.TurnRotor | do.TurnPlate | do.TurnScrew):
            turn = self.drag if self.way == "mouse" else self.arrows
            turn({do.TurnRotor: "rotor", do.TurnPlate: "plate", do.TurnScrew: "screw"}[kind], act.by_deg)
        else:
            self._with_numbers(act)

    def _with_numbers(self, act: do.Act) -> None:
        tools = self.page.controls.controls
        match act:
            case do.TurnPropeller(by):
                self._turn("by", abs(by), by > 0)
            case do.TurnUntil(what, forward):
                self._turn(what, None, forward)
            case do.TurnToReading(reading, forward):
                self._turn("reading", reading, forward)
            case do.TurnDisc(by):
                self.type(tools["disc"].amount, abs(by))
                self.press(tools["disc"].more if by > 0 else tools["disc"].less)
            case do.MoveTooth(face, way):
                row = tools["magneto-flange" if face == "magneto" else "toothed-disc"]
                self.press(row.with_ if way > 0 else row.against)
            case do.TryBlades(stack, _):
                self.choose(tools["blades"].one, stack[0])
                self.choose(tools["blades"].two, stack[1] if len(stack) > 1 else 0.0)
                self.press(tools["blades"].try_it)
            case do.WriteReading(kind, value):
                self.choose(tools["note"].kind, kind)
                self.type(tools["note"].value, 0.0 - value if kind == "disc-zero" else value)
                self.press(tools["note"].write)
            case do.MakeSafe(what, _):
                self.press(tools[what])
            case do.LetGo():
                self._let_go()
            case do.PointAt(part):
                self._point(part)

    def _turn(self, how: str, amount: float | None, forward: bool) -> None:
        row = self.page.controls.controls["turn"]
        self.choose(row.until, how)
        if amount is not None:
            self.type(row.amount, amount)
        self.press(row.with_ if forward else row.against)

    def _let_go(self) -> None:
        if self.way == "mouse":
            click(self.page.controls.controls["hold"])
        else:
            self.page.pictures.breaker.setFocus()
            QTest.keyClick(self.page.pictures.breaker, Qt.Key.Key_Space)

    def _point(self, part: str) -> None:
        if self.way == "keys":
            row = self.page.controls.controls["parts"]
            self.choose(row.part, part)
            self.press(row.point)
            return
        view = self.page.pictures.breaker
        group, at = view.drawing.anchors[part]
        place = view.viewportTransform().map(view.scene_of_parts.to_scene(group, at))
        for kind in (QEvent.Type.MouseButtonPress, QEvent.Type.MouseButtonRelease):
            send_mouse(view, kind, place)
