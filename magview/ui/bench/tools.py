"""The bench's instruments: a slim tray beside the pictures, and where its things lie at the magneto."""

from __future__ import annotations

from collections.abc import Sequence

from PySide6.QtCore import QObject, Signal

from magview.bench import tool_tray
from magview.bench.blades import BLADES, thickness_mm
from magview.bench.lead_words import lamp_words, lead_meter_words, meter_shows, terminal_meter_words
from magview.bench.state import lamp_burns_now
from magview.bench.tool_tray import Lying
from magview.bench.tray import Item, RightHand, Thing
from magview.drawing.things import Laid, burning
from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.look import Look
from magview.ui.pictures.breaker_view import BreakerView
from magview.ui.pictures.contact_view import ContactView
from magview.ui.pictures.right_hand import RightHandOverPicture
from magview.ui.pictures.tray import Tray

KINDS = ("metric", "inch")


class BenchTools(QObject):
    """Puts the tray's things at the magneto and takes them back; the pictures show them there."""

    said = Signal(str)
    """A reading of an instrument, in words."""
    breaker_wanted = Signal()
    """The breaker end is to be in view: something goes there."""
    stop_wanted = Signal()
    """The readings against the piston stop are to be entered."""
    stop_moved = Signal(object)
    """The piston stop went into No. 1, with the angle at which it meets the piston [crank deg]; None: it is out."""
    disc_wanted = Signal()
    """The crank is to be turned by its disc."""

    def __init__(self, model: BenchModel, breaker: BreakerView, contact: ContactView, look: Look) -> None:
        super().__init__(breaker)
        self._model, self._breaker, self._contact, self._look = model, breaker, contact, look
        self.lying = Lying()
        self.tray = Tray(self.items(), KINDS, look, {kind: BLADES[kind] for kind in KINDS}, slim=True)
        self._choose_set()
        self.tray.blade_taken.connect(self.breaker_wanted)
        self.right_hand = RightHandOverPicture(self.tray, breaker, model, self, look)
        self.right_hand.changed.connect(self._show)
        self.tray.left.connect(breaker.setFocus)
        breaker.laid = self._laid
        breaker.lets_go = True
        look.changed.connect(self._choose_set)

    # -------------------------------------------------------------- what the right hand asks

    def items(self) -> Sequence[Item]:
        """Return the things on the tray now."""
        return tool_tray.bench_things(self._model.state, self.lying)

    def put(self, hand: RightHand, spot: str, kind: str) -> bool:
        """Put what is in hand at a place."""
        thing, state = hand.thing, self._model.state
        assert thing is not None
        act = tool_tray.bench_act(state, thing, spot)
        if act is not None:
            return self._model.send(act)
        if thing is Thing.BLADES:
            thick = thickness_mm(kind, hand.blades)
            self._lay(tool_tray.with_blades(self.lying, thick))
            self.said.emit(tool_tray.blades_words(state, self.right_hand.words(), thick))
        elif thing is Thing.METER:
            self._lay(tool_tray.with_meter(self.lying, spot))
            self.said.emit(lead_meter_words(state) if spot == "lead" else terminal_meter_words(state))
        else:
            self._lay(tool_tray.lying_after(self.lying, thing, True))
            if thing is Thing.LAMP:
                self.said.emit(lamp_words(state))
        return True

    def take_back(self, thing: Thing) -> bool:
        """Put a thing back on the tray."""
        act = tool_tray.bench_act(self._model.state, thing, "")
        if act is not None:
            return self._model.send(act)
        self._lay(tool_tray.lying_after(self.lying, thing, False))
        return True

    def choose(self, thing: Thing) -> bool:
        """Stop and disc are used where they are, at the crank; all else goes to the breaker end."""
        if thing is Thing.STOP:
            self._lay(tool_tray.lying_after(self.lying, thing, True))
            self.stop_wanted.emit()
            self.said.emit(tr("The piston stop goes into the plug hole of No. 1: enter what the disc reads there"))
        elif thing is Thing.DISC:
            self.disc_wanted.emit()
            self.said.emit(tr("The crank disc stays on the crank: drag it there to turn the engine"))
        else:
            self.breaker_wanted.emit()
        return thing in (Thing.STOP, Thing.DISC)

    def ease(self, forward: bool) -> None:
        """Turn the part in hand on or back, little by little, until the light changes: one step of the history."""
        try:
            act = tool_tray.eased_to_lamp(self._model.state, self.lying, self._breaker.hand, forward)
        except SpecError as error:
            self._model.refused.emit(str(error))
            return
        self._model.send(act)

    # -------------------------------------------------------------- showing

    def _lay(self, lying: Lying) -> None:
        if lying.stop != self.lying.stop:
            self.stop_moved.emit(tool_tray.STOP_REACH_DEG if lying.stop else None)
        self.lying = lying
        self._breaker.scene_of_parts.hide(frozenset() if lying.straightedge else frozenset({"straightedge"}))
        self._contact.blade_mm = lying.blades_mm
        for view in (self._breaker, self._contact):
            view.viewport().update()

    def _show(self) -> None:
        """Blades that are no longer in hand are no longer at the contacts, nor is the meter where it read."""
        if self.lying.meter and self.right_hand.hand.thing is not Thing.METER:
            self._lay(tool_tray.with_meter(self.lying, ""))
        if self.lying.blades_mm is not None and self._thick() != self.lying.blades_mm:
            self._lay(tool_tray.with_blades(self.lying, None))
        self._breaker.viewport().update()

    def _thick(self) -> float | None:
        hand = self.right_hand.hand
        return thickness_mm(self.tray.kind, hand.blades) if hand.thing is Thing.BLADES else None

    def _laid(self) -> Laid:
        state, thick = self._model.state, self.lying.blades_mm
        held = self.right_hand.hand.thing is Thing.BLADES
        return Laid(
            burning(state.lamp_kind == "buzzer", lamp_burns_now(state)) if self.lying.lamp else "",
            state.lead.jumper,
            self.right_hand.words() if held else "",
            thick is not None and tool_tray.blades_go(state, thick),
            meter_shows(state, self.lying.meter) if self.lying.meter else "",
        )

    def _choose_set(self) -> None:
        """Blades in the unit that lengths are shown in."""
        self.tray.sets.setCurrentIndex(KINDS.index("inch" if self._look.inches else "metric"))
