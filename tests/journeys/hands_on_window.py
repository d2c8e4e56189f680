"""All that a trainee at the real window has: mouse, keys, and the words on the screen."""

from __future__ import annotations

import re

from PySide6.QtCore import Qt
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QApplication, QMessageBox

from magview.bench import actions as bench
from magview.bench.tray import Thing
from magview.practice import actions as do
from magview.ui.practice.hands import STEPS
from tests.hands import click, drag


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
        # What stands as wanted already is left alone; a turn may take several steps.
        turns = isinstance(act, do.TurnScrew | do.TurnPlate | do.TurnDisc | do.TurnRotor | do.TurnPropeller)
        assert turns or len(self.session.attempt.events) - before <= 1
        if len(self.session.attempt.events) == before:
            return ""
        said = self.window.sight.said.text()
        return said.partition(": ")[2] if ": " in said else ""

    def _do(self, act: do.Act) -> None:
        w = self.window
        boxes = {
            bench.SwitchIgnition: "switch", bench.PullPlug: "plug", do.Chock: "chocks", do.SparkPlugs: "plugs",
            do.Nuts: "nuts", do.PlugLeads: "plug_leads", do.TakeCoilOff: "coil", bench.SlipPaper: "paper",
        }  # fmt: skip
        if type(act) in boxes:
            self._show(w.work)
            box, wanted = getattr(w.work, boxes[type(act)]), next(iter(vars(act).values()))
            if box.isChecked() != wanted:
                click(box)
            return
        things = {
            do.LayStraightedge: Thing.STRAIGHTEDGE, do.ConnectLamp: Thing.LAMP, do.FitStop: Thing.STOP,
            bench.FitJumper: Thing.JUMPER,
        }  # fmt: skip
        if type(act) in things:
            self._put(things[type(act)], next(iter(vars(act).values())))
            return
        if isinstance(act, do.Turning | do.Setting | do.TurnDisc):
            self._work_parts(act)
            return
        match act:
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

    def _work_parts(self, act: do.Act) -> None:
        hands = self.window.hands
        match act:
            case bench.TightenLock(tight) | bench.TightenClamps(tight):
                lock = isinstance(act, bench.TightenLock)
                if (self.lock_tight if lock else self.clamps_tight) != tight:
                    self._key("6")
                    self._click_spot("lock" if lock else "clamps")
                    self._key(Qt.Key.Key_Escape)
            case do.TurnScrew(by) | do.TurnPlate(by):
                self._by_keys("S" if isinstance(act, do.TurnScrew) else "B", by)
            case do.TurnUntil(what, forward):
                self._turn("propeller" if self.mounted or what == "stop" else "rotor", what, forward)
            case do.TurnPropeller(by) | do.TurnRotor(by) | do.TurnDisc(by):
                parts = {do.TurnPropeller: "propeller", do.TurnRotor: "rotor", do.TurnDisc: "disc"}
                self._by_steps(parts[type(act)], by)
            case do.TurnToReading(reading, forward):
                self._choose(hands.part, "propeller")
                self._choose(hands.how, "reading")
                self._type(hands.amount, reading)
                self._turn("propeller", "reading", forward)
            case _:
                raise AssertionError(f"no way at the window for {act}")

    # ------------------------------------------------------------------ the tray

    def _key(self, key) -> None:
        QTest.keyClick(QApplication.focusWidget() or self.window, key)

    def _put(self, thing: Thing, on: bool) -> None:
        """Drag a thing to its lit place; what is in use comes back by a click."""
        card = self.window.tray.things[thing]
        if bool(card.item.on) == on:
            return
        if not on:
            click(card)
            return
        drag(card, lambda: self.window.right_hand.spots[0])

    def _click_spot(self, name: str) -> None:
        click(next(s for s in self.window.right_hand.spots if s.spot.name == name))

    def _blades(self, stack: tuple[float, ...], kind: str) -> None:
        """One blade is dragged between the contacts; a stack is gathered with Shift and put there by Enter."""
        tray = self.window.tray
        self._choose(tray.sets, kind)
        if len(stack) == 1:
            drag(tray.leaves[stack[0]], lambda: self.window.right_hand.spots[0])
            return
        for i, blade in enumerate(stack):
            keys = Qt.KeyboardModifier.ShiftModifier if i else Qt.KeyboardModifier.NoModifier
            QTest.mouseClick(tray.leaves[blade], Qt.MouseButton.LeftButton, keys)
        self._key(Qt.Key.Key_Return)

    # ------------------------------------------------------------------ the left hand

    def _turn(self, part: str, how, forward: bool) -> None:
        hands = self.window.hands
        if hands.at_propeller.isVisible() and not hands.at_propeller.isChecked():
            click(hands.at_propeller)
        self._choose(hands.part, part)
        self._choose(hands.how, how)
        click(hands.with_ if forward else hands.against)

    def _by_steps(self, part: str, by: float) -> None:
        """So many of each step, the largest first."""
        left = abs(by)
        for step in sorted(STEPS[part], reverse=True):
            smallest = step == STEPS[part][0]
            times = round(left / step) if smallest else int(left / step + 1e-9)
            for _ in range(times):
                self._turn(part, step, by >= 0)
            left -= times * step

    def _by_keys(self, letter: str, by: float) -> None:
        """Screw and plate by the arrow keys: whole steps, tenths with Shift, hundredths with Shift and Alt."""
        view, step = self.window.pictures.breaker, {"S": 1.0, "B": 0.25}[letter]
        view.setFocus()
        QTest.keyClicks(view, letter)
        whole, shift = Qt.KeyboardModifier.NoModifier, Qt.KeyboardModifier.ShiftModifier
        hundredths = round(abs(by) / step * 100)
        for keys, times in (
            (whole, hundredths // 100), (shift, hundredths // 10 % 10),
            (shift | Qt.KeyboardModifier.AltModifier, hundredths % 10),
        ):  # fmt: skip
            for _ in range(times):
                QTest.keyClick(view, Qt.Key.Key_Right if by >= 0 else Qt.Key.Key_Left, keys)

    def _press(self, act: do.Act) -> None:
        work = self.window.work
        meters = {do.MeterLead: "lead", do.MeterTerminal: "terminal", do.MeterSwitch: "switch"}
        if type(act) in meters:
            self._key("4")
            self._click_spot(meters[type(act)])
            self._key(Qt.Key.Key_Escape)
            return
        if act == do.Sight(0.0):
            self.window.pictures.eye.setFocus()
            self._key(Qt.Key.Key_Home)
            return
        if isinstance(act, do.MoveTooth):
            button = work.tooth[act.face, act.way]
        else:
            buttons = (
                (do.FeelCompression(), "thumb"), (bench.PaintMarks(), "paint"), (do.InspectContacts(), "inspect"),
                (do.DressContacts(), "dress"), (do.LeaveAsIs("contacts"), "leave"), (do.LeaveAsIs("chocks"), "stay"),
                (do.RenewContacts(), "fit_new"), (do.PressFelt(), "felt"), (do.OilFelt(1), "oil"),
            )  # fmt: skip
            found = [name for known, name in buttons if known == act]
            assert found, f"no way at the window for {act}"
            button = getattr(work, found[0])
        self._show(work)
        click(button)

    def _show(self, panel) -> None:
        tabs = self.window.tabs
        index = next(i for i in range(tabs.count()) if tabs.widget(i).isAncestorOf(panel))
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
        burns = {"open": "lit", "closed": "dark", "buzzer": "buzzes high"}
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
        return "lock screw tight" in self.window.work.screws.text().lower()

    @property
    def clamps_tight(self) -> bool:
        return "clamp screws tight" in self.window.work.screws.text()

    @property
    def edge_laid(self) -> bool:
        return bool(self.window.tray.things[Thing.STRAIGHTEDGE].item.on)

    @property
    def side(self) -> str:
        return self.window.hands.sides.currentData() or self.exercise.sides[0]

    @property
    def mounted(self) -> bool:
        return "engine" in self.window.hands.left.holds.text()
