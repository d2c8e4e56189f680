"""All that a trainee at the real window has: mouse, keys, and the words on the screen."""

from __future__ import annotations

import re

from PySide6.QtCore import QPoint, Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QCheckBox, QMessageBox

from magview.bench import actions as bench
from magview.practice import actions as do


def click(widget) -> None:
    at = QPoint(8, widget.height() // 2) if isinstance(widget, QCheckBox) else widget.rect().center()
    QTest.mouseClick(widget, Qt.MouseButton.LeftButton, pos=at)


class WindowHands:
    """Acts become clicks and keys; readings come off labels. The model behind is asked for nothing true."""

    def __init__(self, window) -> None:
        self.window = window
        self.session = window.model.session
        self.exercise = window.model.practice.exercise
        self._refused: list[str] = []
        window.model.refused.connect(self._refused.append)

    # ------------------------------------------------------------------ acting

    def act(self, act: do.Act) -> str:
        """Do it at the window; what an instrument then said. Raises ValueError, as the room does, if refused."""
        self._refused.clear()
        before = len(self.session.attempt.events)
        self._do(act)
        if self._refused:
            raise ValueError(self._refused[0])
        if isinstance(act, do.HandIn):
            return ""
        # A box that stands as wanted already is left alone: there is nothing to do.
        assert len(self.session.attempt.events) - before <= 1
        if len(self.session.attempt.events) == before:
            return ""
        said = self.window.sight.said.text()
        return said.partition(": ")[2] if ": " in said else ""

    def _do(self, act: do.Act) -> None:
        w = self.window
        boxes = {
            do.LayStraightedge: (w.tray, "edge"), do.ConnectLamp: (w.tray, "lamp"), do.FitStop: (w.tray, "stop"),
            bench.TightenLock: (w.work, "lock"), bench.TightenClamps: (w.work, "clamps"),
            bench.SwitchIgnition: (w.work, "switch"), bench.PullPlug: (w.work, "plug"), do.Chock: (w.work, "chocks"),
            do.SparkPlugs: (w.work, "plugs"), do.Nuts: (w.work, "nuts"), bench.FitJumper: (w.work, "jumper"),
            do.PlugLeads: (w.work, "plug_leads"), do.TakeCoilOff: (w.tray, "coil"),
            bench.SlipPaper: (w.work, "paper"),
        }  # fmt: skip
        if type(act) in boxes:
            panel, name = boxes[type(act)]
            self._show(panel)
            box, wanted = getattr(panel, name), next(iter(vars(act).values()))
            if box.isChecked() != wanted:
                click(box)
            return
        rows = {do.TurnScrew: (w.work, "screw"), do.TurnPlate: (w.work, "plate"), do.TurnDisc: (w.tray, "disc")}
        if type(act) in rows:
            panel, name = rows[type(act)]
            self._by(panel, getattr(panel, name), act.by_deg)
            return
        match act:
            case do.TurnUntil(what, forward):
                self._turn(what, None, forward)
            case do.TurnPropeller(by) | do.TurnRotor(by):
                self._turn("by" if isinstance(act, do.TurnRotor) else "propeller", abs(by), by >= 0)
            case do.TurnToReading(reading, forward):
                self._turn("reading", reading, forward)
            case do.TryBlades(stack, kind):
                self._blades(stack, kind)
            case do.WriteReading():
                self._write(act)
            case do.MakeSafe(what, done):
                self._show(w.work)
                if w.work.safe[what].isChecked() != done:
                    click(w.work.safe[what])
            case do.HandIn():
                click(w.hand_in)
                box = w.findChild(QMessageBox)
                click(next(b for b in box.buttons() if "Hand in" in b.text()))
            case _:
                self._press(act)

    def _press(self, act: do.Act) -> None:
        tray, work = self.window.tray, self.window.work
        if isinstance(act, do.MoveTooth):
            panel, button = work, work.tooth[act.face, act.way]
        else:
            buttons = (
                (do.Sight(0.0), tray, "square"), (do.FeelCompression(), tray, "thumb"),
                (do.MeterLead(), tray, "meter"), (do.MeterTerminal(), tray, "meter_terminal"),
                (do.MeterSwitch(), tray, "meter_switch"), (bench.PaintMarks(), work, "paint"),
                (do.InspectContacts(), work, "inspect"), (do.DressContacts(), work, "dress"),
                (do.LeaveAsIs("contacts"), work, "leave"), (do.LeaveAsIs("chocks"), work, "stay"),
                (do.RenewContacts(), work, "fit_new"), (do.PressFelt(), work, "felt"), (do.OilFelt(1), work, "oil"),
            )  # fmt: skip
            found = [(panel, name) for known, panel, name in buttons if known == act]
            assert found, f"no way at the window for {act}"
            panel, button = found[0][0], getattr(*found[0])
        self._show(panel)
        click(button)

    def _show(self, panel) -> None:
        tabs = self.window.tabs
        index = self.window.panels.index(panel)
        if tabs.currentIndex() != index:
            QTest.mouseClick(tabs.tabBar(), Qt.MouseButton.LeftButton, pos=tabs.tabBar().tabRect(index).center())

    def _choose(self, combo, data) -> None:
        if combo.currentData() != data:
            combo.setFocus()
            QTest.keyClick(combo, Qt.Key.Key_Home)
            for _ in range(combo.findData(data)):
                QTest.keyClick(combo, Qt.Key.Key_Down)
        assert combo.currentData() == data

    @staticmethod
    def _type(spin, number: float) -> None:
        spin.setFocus()
        spin.selectAll()
        QTest.keyClicks(spin, f"{number:g}")
        QTest.keyClick(spin, Qt.Key.Key_Return)

    def _turn(self, what: str, amount: float | None, forward: bool) -> None:
        turning = self.window.turning
        if turning.at_propeller.isVisible() and not turning.at_propeller.isChecked():
            click(turning.at_propeller)
        self._choose(turning.until, what)
        if amount is not None:
            self._type(turning.amount, amount)
        click(turning.with_ if forward else turning.against)

    def _by(self, panel, row, by: float) -> None:
        self._show(panel)
        self._type(row.amount, abs(by))
        click(row.more if by >= 0 else row.less)

    def _blades(self, stack: tuple[float, ...], kind: str) -> None:
        self._show(self.window.tray)
        box = self.window.tray.blades
        click(box.put_back)
        self._choose(box.sets, kind)
        for blade in stack:
            click(box.blades[blade])
        click(box.try_them)

    def _write(self, act: do.WriteReading) -> None:
        book = self.window.notebook
        self._show(book)
        self._choose(book.kind, act.kind)
        book.value.setFocus()
        unit = "mm" if act.kind in ("opening", "gap") else "°"
        QTest.keyClicks(book.value, f"{act.value:g} {unit}")
        QTest.keyClick(book.value, Qt.Key.Key_Return)

    # ------------------------------------------------------------------ reading

    def lamp(self) -> str:
        return self.window.sight.lamp_words.text()

    def sees_open(self) -> bool:
        """What the lamp says, by the kind that the data sheet names."""
        burns = {"open": "light", "closed": "dark", "buzzer": "buzzes high"}
        return self.lamp() == burns[self.exercise.tray.lamp_kind]

    def edge(self) -> int | None:
        """Divisions past the mark, off the label."""
        words = self.window.sight.edge.text()
        if words.startswith("in line"):
            return 0
        match = re.match(r"([\d.]+) mm (past|short of)", words)
        return None if match is None else round(float(match[1]) / 0.5) * (1 if match[2] == "past" else -1)

    def mark(self) -> int | None:
        match = re.search(r"mark (\d+)", self.window.sight.edge.text())
        return None if match is None else int(match[1])

    def disc(self) -> float:
        match = re.match(r"([\d.]+)° (before|after)", self.window.sight.disc.text())
        return float(match[1]) * (1 if match[2] == "before" else -1)

    def finger(self) -> int:
        return int(re.search(r"No\. (\d+)", self.window.sight.finger.text())[1])

    @property
    def lock_tight(self) -> bool:
        return self.window.work.lock.isChecked()

    @property
    def clamps_tight(self) -> bool:
        return self.window.work.clamps.isChecked()

    @property
    def edge_laid(self) -> bool:
        return self.window.tray.edge.isChecked()

    @property
    def side(self) -> str:
        return self.window.turning.sides.currentData() or self.exercise.sides[0]

    @property
    def mounted(self) -> bool:
        return "propeller" in self.window.turning.box.title()
