"""Work that needs no thing of the tray: contacts cared for, switch lead, making safe, engine, coupling."""

from __future__ import annotations

from collections.abc import Callable
from functools import partial
from typing import Literal

from PySide6.QtWidgets import QAbstractButton, QGridLayout, QGroupBox, QPushButton, QVBoxLayout

from magview.bench.actions import (
    PaintMarks,
    PullPlug,
    SlipPaper,
    SwitchIgnition,
    SwitchOther,
)
from magview.bench.lead_words import tab_words
from magview.bench.state import other_circuit
from magview.practice import actions as do
from magview.practice.screen_words import seen
from magview.practice.state import Practice, SafeThing
from magview.spec.language import tr
from magview.ui.kit.look import Look
from magview.ui.practice.controls import PracticePanel, wrapped
from magview.ui.practice.model import PracticeModel


class WorkPanel(PracticePanel):
    """Everything that can be turned, tightened, renewed, taken off and put back."""

    def __init__(self, model: PracticeModel, look: Look) -> None:
        super().__init__(model, look)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(8, 4, 8, 4)
        self.engine, self.teeth = wrapped(), wrapped()
        on_engine = model.practice.bench.engaged is not None
        if on_engine:  # making safe comes before hands go anywhere else
            layout.addWidget(self._build_engine())
        layout.addWidget(self._build_lead())
        layout.addWidget(self._build_contacts())
        if on_engine:
            layout.addWidget(self._build_coupling())
        layout.addStretch(1)
        self.show_practice(model.practice)

    def _build_contacts(self) -> QGroupBox:
        box = QGroupBox(tr("Contacts"))
        column = QVBoxLayout(box)
        column.setSpacing(3)
        self.screws, self.turned = wrapped(), wrapped()
        column.addWidget(self.screws)
        column.addWidget(self.turned)
        grid = QGridLayout()
        grid.setVerticalSpacing(3)
        self.inspect = self.button(tr("Look at the &contacts"), do.InspectContacts)
        self.leave = self.button(tr("Leave them as they are"), lambda: do.LeaveAsIs("contacts"))
        self.dress = self.button(tr("D&ress them"), do.DressContacts)
        self.fit_new = self.button(tr("Fit a new pair"), do.RenewContacts)
        self.felt = self.button(tr("Thumbnail to the felt"), do.PressFelt)
        self.oil = self.button(tr("A drop of oil to the felt"), lambda: do.OilFelt(1))
        buttons: list[QAbstractButton] = [self.inspect, self.leave, self.dress, self.fit_new, self.felt, self.oil]
        if self.model.practice.exercise.tray.lamp_kind == "plain" and self.model.practice.exercise.tray.lamp:
            self.coil = self.check(tr("Coil taken off the contacts"), do.TakeCoilOff, lambda p: p.seat.coil_off)
            buttons.append(self.coil)
        for i, button in enumerate(buttons):
            grid.addWidget(button, i // 2, i % 2)
        column.addLayout(grid)
        return box

    def _build_lead(self) -> QGroupBox:
        box = QGroupBox(tr("Switch lead"))
        grid = QGridLayout(box)
        grid.setVerticalSpacing(3)
        self.switch = self.check(tr("Ignition switch &on"), SwitchIgnition, lambda p: p.bench.lead.switch_on)
        self.plug = self.check(tr("Plu&g pulled out"), PullPlug, lambda p: not p.bench.lead.plug_in)
        self.paper = self.check(tr("Paper under the grounding tab"), SlipPaper, lambda p: p.bench.lead.paper)
        self.other = self.check(tr("Other magneto's switch on"), SwitchOther, lambda p: p.bench.lead.other_on)
        self.renew = {
            "lead": self.button(tr("New lead"), lambda: do.Renew("lead")),
            "insulation": self.button(tr("New insulation"), lambda: do.Renew("insulation")),
            "switch": self.button(tr("New ignition switch"), lambda: do.Renew("switch")),
            "tab": self.button(tr("New grounding tab"), lambda: do.Renew("tab")),
            "places": self.button(tr("Leads in their own places"), lambda: do.Renew("places")),
        }
        tab = self.model.practice.bench.magneto.grounding_tab is True
        two = other_circuit(self.model.practice.bench) is not None
        shown: list[QAbstractButton] = [self.switch, self.plug, *[self.paper] * tab, *[self.other] * two]
        shown += [button for part, button in self.renew.items() if {"tab": tab, "places": two}.get(part, True)]
        for i, widget in enumerate(shown):
            grid.addWidget(widget, i // 2, i % 2)
        for widget in {self.paper, self.other, *self.renew.values()} - set(shown):
            widget.setParent(box)
            widget.hide()
        grid.addWidget(wrapped(tab_words(self.model.practice.bench.magneto)), len(shown) // 2 + 1, 0, 1, 2)
        return box

    def _build_engine(self) -> QGroupBox:
        box = QGroupBox(tr("Engine and magneto"))
        grid = QGridLayout(box)
        grid.setVerticalSpacing(3)
        self.chocks = self.check(tr("Wh&eels chocked"), do.Chock, lambda p: p.chocked)
        self.plugs = self.check(tr("Spark plugs o&ut"), do.SparkPlugs, lambda p: p.plugs_out)
        self.safe = {
            "fuel": self.check(tr("Fuel off"), partial(do.MakeSafe, "fuel"), _seen_to("fuel")),
            "mixture": self.check(tr("Mixture cut off"), partial(do.MakeSafe, "mixture"), _seen_to("mixture")),
            "throttle": self.check(tr("Throttle closed"), partial(do.MakeSafe, "throttle"), _seen_to("throttle")),
            "leads": self.check(tr("Hanging plug leads grounded"), partial(do.MakeSafe, "leads"), _seen_to("leads")),
        }
        self.nuts = self.check(tr("&Nuts tight"), do.Nuts, lambda p: p.seat.nuts_tight)
        self.pin = self.check(tr("Rotor pinned"), do.Pin, lambda p: p.seat.pinned)
        self.remove = self.button(tr("Lift the magneto o&ff"), do.Remove)
        self.by_marks = self.button(tr("Refit by its marks"), lambda: do.Refit(by_marks=True))
        self.as_stands = self.button(tr("Refit as the rotor stands"), lambda: do.Refit(by_marks=False))
        self.stay = self.button(tr("Leave the chocks in"), lambda: do.LeaveAsIs("chocks"))
        n = self.model.practice.timing_cylinder
        self.thumb = self.button(tr("Thum&b over the plug hole of No. {n}", n=n), do.FeelCompression)
        self.plug_leads = self.check(tr("Leads on their plugs"), do.PlugLeads, lambda p: not p.leads_hang)
        order = (
            *self.safe.values(), self.chocks, self.stay, self.plugs, self.plug_leads, self.nuts, self.pin,
            self.remove, self.by_marks,
        )  # fmt: skip
        for i, widget in enumerate(order):
            grid.addWidget(widget, i // 2, i % 2)
        grid.addWidget(self.as_stands, 6, 0, 1, 2)
        grid.addWidget(self.thumb, 7, 0, 1, 2)
        grid.addWidget(self.engine, 8, 0, 1, 2)
        return box

    def _build_coupling(self) -> QGroupBox:
        box = QGroupBox(tr("Coupling, one tooth at a time"))
        grid = QGridLayout(box)
        grid.setVerticalSpacing(3)
        self.paint = self.button(tr("Paint marks across i&t"), PaintMarks)
        grid.addWidget(self.paint, 0, 0, 1, 2)
        self.tooth: dict[tuple[str, int], QPushButton] = {}
        faces: tuple[tuple[Literal["magneto", "disc"], str], ...] = (
            ("disc", tr("A: disc")),
            ("magneto", tr("B: magneto flange")),
        )
        for row, (face, name) in enumerate(faces, start=1):
            for column, (way, words) in enumerate(((-1, tr("◀ against")), (1, tr("with ▶")))):
                button = self.button(f"{name} {words}", _Tooth(face, 1 if way > 0 else -1))
                self.tooth[face, way] = button
                grid.addWidget(button, row, column)
        grid.addWidget(self.teeth, 3, 0, 1, 2)
        return box

    def show_practice(self, practice: Practice) -> None:
        """Show a room."""
        super().show_practice(practice)
        now = seen(practice)
        self.screws.setText(f"{now.screws[:1].upper()}{now.screws[1:]}.")
        self.turned.setText(tr("Screw {screw}; plate {plate}.", screw=now.screw, plate=now.plate))
        self.engine.setText(f"{now.engine[:1].upper()}{now.engine[1:]}.")
        self.teeth.setText(f"{now.teeth[:1].upper()}{now.teeth[1:]}.")


def _seen_to(what: SafeThing) -> Callable[[Practice], bool]:
    return lambda practice: what in practice.seen_to


class _Tooth:
    def __init__(self, face: Literal["magneto", "disc"], way: Literal[1, -1]) -> None:
        self._face, self._way = face, way

    def __call__(self) -> do.Act:
        return do.MoveTooth(self._face, self._way)
