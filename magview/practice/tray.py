"""The tray of an exercise: what lies on it now, and the act that putting a thing somewhere is.

Nothing here tells more than hands know: where things are, and not whether they read anything.
"""

from __future__ import annotations

from magview.bench.actions import FitJumper, TightenClamps, TightenLock
from magview.bench.blades import BLADES
from magview.bench.lead_words import LAMPS
from magview.bench.tray import ON_THE_MAGNETO, Item, RightHand, Spot, Thing, meter_spots, screw_spots
from magview.practice import actions as do
from magview.practice.state import Practice
from magview.spec.base import SpecError
from magview.spec.language import marked, tr

_STEP, _CONTACTS = "step", "contacts"


def things(practice: Practice) -> tuple[Item, ...]:
    """Everything on the tray of an exercise, by number."""
    tray, engine = practice.exercise.tray, practice.bench.engaged is not None
    bench, missing = practice.bench, marked("not given here")
    on = tr(ON_THE_MAGNETO)

    def item(thing: Thing, there: bool, spots: tuple[Spot, ...], where: str = "", why: str = missing) -> Item:
        if not there:
            return Item(thing, why_not=tr(why))
        return Item(thing, () if where else spots, where)

    along = Spot(_STEP, tr("along the step"), "step")
    across, between = Spot("lamp", tr("across the contacts"), _CONTACTS), Spot(_CONTACTS, tr("between the contacts"),
                                                                               _CONTACTS)  # fmt: skip
    hole = Spot("stop", tr("plug hole of No. {n}", n=practice.timing_cylinder))
    no_engine = marked("no engine") if not engine else missing
    lamp = item(Thing.LAMP, tray.lamp, (across,), on if practice.lamp_on else "")
    return (
        item(Thing.STRAIGHTEDGE, tray.straightedge is not None, (along,), on if practice.edge_laid else ""),
        Item(Thing.LAMP, lamp.spots, lamp.on, lamp.why_not, tr(LAMPS[tray.lamp_kind]) if tray.lamp else ""),
        item(Thing.BLADES, bool(tray.blades), (between,)),
        item(Thing.METER, tray.meter, _meter_spots()),
        item(Thing.JUMPER, True, (Spot("jumper", tr("terminal to ground")),), on if bench.lead.jumper else ""),
        item(Thing.SCREWDRIVER, True, screw_spots(bench)),
        item(Thing.STOP, tray.stop and engine, (hole,),
             tr("in No. {n}", n=practice.timing_cylinder) if practice.stop_fitted else "", no_engine),
        item(Thing.DISC, tray.disc_step_deg is not None and engine, (), tr("on the crank"), no_engine),
    )  # fmt: skip


def _meter_spots() -> tuple[Spot, ...]:
    return (*meter_spots(), Spot("switch", tr("switch alone to ground")))


def putting(practice: Practice, hand: RightHand, spot: str, kind: str = "") -> do.Act:
    """The act that putting what is in hand at a place is. Raises SpecError where that is no act."""
    match hand.thing, spot:
        case Thing.STRAIGHTEDGE, "step":
            return do.LayStraightedge(True)
        case Thing.LAMP, "lamp":
            return do.ConnectLamp(True)
        case Thing.BLADES, "contacts" if hand.blades:
            return do.TryBlades(hand.blades, "metric" if kind == "metric" else "inch")
        case Thing.METER, "lead":
            return do.MeterLead()
        case Thing.METER, "terminal":
            return do.MeterTerminal()
        case Thing.METER, "switch":
            return do.MeterSwitch()
        case Thing.JUMPER, "jumper":
            return FitJumper(True)
        case Thing.SCREWDRIVER, "lock":
            return TightenLock(not practice.bench.lock_tight)
        case Thing.SCREWDRIVER, "clamps":
            return TightenClamps(not practice.bench.clamps_tight)
        case Thing.STOP, "stop":
            return do.FitStop(True)
    raise SpecError(tr("there is nothing in hand that goes there: take a thing from the tray first"))


def taking_back(thing: Thing) -> do.Act:
    """The act that takes a thing off again and puts it on the tray. Raises SpecError for one that stays."""
    acts: dict[Thing, do.Act] = {
        Thing.STRAIGHTEDGE: do.LayStraightedge(False),
        Thing.LAMP: do.ConnectLamp(False),
        Thing.JUMPER: FitJumper(False),
        Thing.STOP: do.FitStop(False),
    }
    if thing not in acts:
        raise SpecError(tr("the disc stays on the crank: turn it there, one step at a time"))
    return acts[thing]


def blades_of(kind: str) -> tuple[float, ...]:
    """The blades of a set as they are marked."""
    return BLADES[kind]


def stop_in_no_1(practice: Practice) -> float | None:
    """Angle from top dead centre at which a stop in No. 1 meets its piston [crank deg]; None where none is in it."""
    return practice.stop_reach_deg if practice.stop_fitted and practice.timing_cylinder == 1 else None
