"""Acts of an attempt folded into cards: neighbours of one kind are one card; turning between them joins in."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

from magview.bench import actions as bench
from magview.bench.state import Side
from magview.practice import actions as do
from magview.practice import instruments
from magview.practice.evidence import EvidenceStep
from magview.practice.state import Practice, true_readings
from magview.practice.words import act_words
from magview.spec.language import marked, number, tr, tr_n

_TURNS = (do.TurnRotor, do.TurnPropeller, do.TurnUntil, do.TurnToReading)


class Kind(Enum):
    """Kind of a card, by its title."""

    LOOK = marked("Look")
    SCREW = marked("Screw")
    PLATE = marked("Plate")
    TIGHTEN = marked("Tighten")
    CONTACTS = marked("Contacts")
    LEAD = marked("Lead")
    SAFE = marked("Make safe")
    COUPLING = marked("Coupling")
    DISC = marked("Disc")
    WRITE = marked("Write")
    HAND_IN = marked("Hand in")


class Outcome(Enum):
    """Effect of a card's acts on the goals."""

    BETTER = "better"
    WORSE = "worse"
    MOVED = "moved"
    """Tightening took the setting along and made it worse."""
    SAME = "same"


@dataclass(frozen=True)
class Folded:
    """Neighbouring acts of one kind on one magneto."""

    kind: Kind
    side: Side
    steps: tuple[EvidenceStep, ...]
    number: int = 0
    """Its number on the path, counted from 1; 0 where it moved nothing."""
    outcome: Outcome = Outcome.SAME
    danger: str = ""

    @property
    def before(self) -> Practice:
        """The room before its first act."""
        return self.steps[0].before

    @property
    def after(self) -> Practice:
        """The room after its last act."""
        return self.steps[-1].after

    @property
    def title(self) -> str:
        """Its kind in words; turning to where one looks is told in the same card, and named."""
        turned = self.kind is Kind.LOOK and any(isinstance(step.act, _TURNS) for step in self.steps)
        return tr("Turn and look") if turned else tr(self.kind.value)

    @property
    def words(self) -> str:
        """Sum of the acts in a few words."""
        was, now = self.before.bench, self.after.bench
        plate, screw = now.backplate_deg - was.backplate_deg, now.screw_deg - was.screw_deg
        match self.kind:
            case Kind.PLATE if abs(plate) >= 0.005:
                words = marked("{turn:.1deg} with rotation") if plate > 0 else marked("{turn:.1deg} against rotation")
                return tr(words, turn=abs(plate))
            case Kind.SCREW if abs(screw) >= 0.05:
                words = marked("{turn:.0deg} closer") if screw > 0 else marked("{turn:.0deg} wider")
                return tr(words, turn=abs(screw))
            case Kind.TIGHTEN if abs(screw) >= 0.05:
                carried = (
                    marked("the lock screw carried the contact screw {turn:.1deg} closer")
                    if screw > 0
                    else marked("the lock screw carried the contact screw {turn:.1deg} wider")
                )
                return tr(carried, turn=abs(screw))
            case Kind.LOOK:
                return _looked(self.steps)
        told = [act_words(s.act, s.before, s.after) for s in self.steps]
        return "; ".join([told[0], *(words[0].lower() + words[1:] for words in told[1:])])

    @property
    def count_words(self) -> str:
        """Number of acts folded, in words."""
        if self.kind in (Kind.PLATE, Kind.SCREW):
            turns = sum(isinstance(step.act, do.TurnPlate | do.TurnScrew) for step in self.steps)
            if turns:
                return tr_n("{count} turn", "{count} turns in 1", count=turns)
        return tr_n("{count} act", "{count} acts in 1", count=len(self.steps))


def fold(steps: Sequence[EvidenceStep], dangers: dict[int, str]) -> tuple[Folded, ...]:
    """Fold steps into cards; `dangers`: sentences by a step's index. Cards that moved something are numbered."""
    groups: list[tuple[Kind, list[EvidenceStep]]] = []
    for step in steps:
        kind, joins = _kind_of(step.act), isinstance(step.act, do.Turning)
        if groups:
            last, there = groups[-1]
            same_side = there[-1].after.side == step.after.side
            if same_side and (kind is last or (joins and last in (Kind.PLATE, Kind.SCREW, Kind.DISC, Kind.LEAD))):
                there.append(step)
                continue
        groups.append((kind, [step]))
    cards: list[Folded] = []
    numbered = 0
    for kind, group in groups:
        card = Folded(kind, group[-1].after.side, tuple(group))
        moved = _moved(card)
        numbered += moved
        told = "; ".join(dangers[step.index] for step in group if step.index in dangers)
        cards.append(Folded(kind, card.side, card.steps, numbered if moved else 0, _outcome(card), told))
    return tuple(cards)


def _kind_of(act: do.Act) -> Kind:
    match act:
        case do.TurnScrew() | bench.TightenLock(False):
            return Kind.SCREW
        case do.TurnPlate() | bench.TightenClamps(False):
            return Kind.PLATE
        case bench.TightenLock() | bench.TightenClamps():
            return Kind.TIGHTEN
        case do.InspectContacts():
            return Kind.LOOK
        case do.FitStop() | do.TurnDisc():
            return Kind.DISC
        case do.LeaveAsIs("chocks"):
            return Kind.SAFE
        case do.WriteReading():
            return Kind.WRITE
        case do.HandIn():
            return Kind.HAND_IN
        case do.Nuts() | do.Remove() | do.Refit() | do.MoveTooth() | bench.PaintMarks() | do.Pin():
            return Kind.COUPLING
    if isinstance(act, do.Care):
        return Kind.CONTACTS
    if isinstance(act, do.LeadWork | do.Meter):
        return Kind.LEAD
    return Kind.SAFE if isinstance(act, do.Safety) else Kind.LOOK


def _moved(card: Folded) -> bool:
    """Whether plate, screw or teeth stand elsewhere than before."""
    was, now = card.before.bench, card.after.bench
    if card.kind is Kind.COUPLING:
        return any(isinstance(step.act, do.MoveTooth | do.Refit) for step in card.steps)
    return card.kind in (Kind.PLATE, Kind.SCREW) and (
        abs(now.backplate_deg - was.backplate_deg) >= 0.005 or abs(now.screw_deg - was.screw_deg) >= 0.05
    )


def _outcome(card: Folded) -> Outcome:
    if card.kind not in (Kind.PLATE, Kind.SCREW, Kind.TIGHTEN):
        return Outcome.SAME
    # The screw answers for the gap, the plate for the opening; tightening may take either along.
    judged = {Kind.SCREW: (_gap_off,), Kind.PLATE: (_opening_off,)}.get(card.kind, (_gap_off, _opening_off))
    was, now = (max(off(room) for off in judged) for room in (card.before, card.after))
    if was == now or abs(was - now) < 0.01:
        return Outcome.SAME
    # Nearer to the middle within the limits is neither better nor worse.
    if max(was, now) <= 1.0:
        return Outcome.SAME
    if now < was:
        return Outcome.BETTER
    return Outcome.MOVED if card.kind is Kind.TIGHTEN else Outcome.WORSE


def _gap_off(room: Practice) -> float:
    """Distance of the worst lobe's gap from the middle of its limits, in half widths of them."""
    low, high = room.bench.magneto.gap_limits_mm
    gaps = true_readings(room.bench).max_gap_mm
    return float(abs(gaps - (low + high) / 2).max()) / ((high - low) / 2)


def _opening_off(room: Practice) -> float:
    """Distance of the worst judged opening from its mark, in tolerances."""
    off = float(true_readings(room.bench).mark_offset_mm)
    return abs(off) / room.bench.magneto.marks.tolerance_mm if math.isfinite(off) else math.inf


def _looked(steps: Sequence[EvidenceStep]) -> str:
    """The last reading of each instrument that answered, blades first."""
    told: dict[str, str] = {}
    for step in steps:
        said = step.after.said
        if isinstance(step.act, do.TryBlades) and said is not None:
            unit = tr("thou") if step.act.set == "inch" else "mm"
            blades = " + ".join(number(b) for b in step.act.blades)
            told[f"blade {blades}"] = f"{blades} {unit}: {said.text}"
        elif said is not None and said.instrument != "hand":
            told[said.instrument] = said.line
        if step.after.edge_laid and step.after.lamp_on and _lamp_changed(step):
            told["edge"] = tr("edge {place}", place=instruments.straightedge(step.after).text)
    if not told:
        return act_words(steps[-1].act, steps[-1].before, steps[-1].after)
    return "; ".join(told.values())


def _lamp_changed(step: EvidenceStep) -> bool:
    return instruments.light(step.before) != instruments.light(step.after)
