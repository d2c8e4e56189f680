"""Effect of each act: the practice room before an act to the practice room after it, and nothing else changed."""

from __future__ import annotations

import math
from dataclasses import replace
from typing import get_args

from magview.bench import actions as bench
from magview.bench.apply import apply as apply_to_bench
from magview.bench.state import Mounting, Side, crank_deg, other_circuit, shift_deg, with_play
from magview.physics.engine.coupling import finest_shift_deg
from magview.physics.engine.play import Play
from magview.practice import actions as do
from magview.practice import contacts, instruments, turning
from magview.practice.draws import between, uniform, whole
from magview.practice.exercise_parts import LeadFault
from magview.practice.state import SAFE_THINGS, Note, Practice, ReadingKind, Said, true_circuit, view
from magview.spec.base import SpecError
from magview.spec.language import marked, tr

MAX_NOTES = 500
MAX_TEXT = 400
MAX_PART = 60
MAX_DROPS = 20


def apply(practice: Practice, act: do.Act) -> Practice:
    """The state after an act; a new value. Raises SpecError, in one sentence, for an act that cannot be done."""
    if practice.handed_in:
        raise SpecError(tr("the attempt has been handed in"))
    return _apply(replace(practice, said=None, acts=practice.acts + 1), act)


def _apply(practice: Practice, act: do.Act) -> Practice:
    if isinstance(act, do.Turning):
        return _turn(practice, act)
    if isinstance(act, do.Setting):
        return _set(practice, act)
    if isinstance(act, do.Care):
        return _care(practice, act)
    if isinstance(act, do.LeadWork):
        return _lead(practice, act)
    if isinstance(act, do.Tool):
        return _tool(practice, act)
    if isinstance(act, do.Meter):
        return _meter(practice, act)
    match act:
        case do.PointAt(part):
            if not part.isprintable() or len(part) > MAX_PART:
                raise SpecError(tr("a part's name is one line of at most {most} characters", most=MAX_PART))
            return replace(practice, said=Said("hand", marked("that is the {part}"), places=(("part", part),)))
        case do.WriteReading():
            return _write(practice, act)
        case do.HandIn():
            return replace(practice, handed_in=True)
        case _:
            return _engine(practice, act)


# ---------------------------------------------------------------------- turning


def _turn(practice: Practice, act: do.Turning) -> Practice:
    match act:
        case do.TurnRotor(by_deg):
            return turning.turn_rotor(practice, by_deg)
        case do.TurnPropeller(by_deg):
            return turning.turn_propeller(practice, by_deg)
        case do.TurnUntil(what, forward):
            return turning.until(practice, what, forward)
        case do.TurnToReading(reading_deg, forward):
            return turning.to_reading(practice, reading_deg, forward)
        case do.LetGo():
            if practice.seat.pinned:
                raise SpecError(tr("the pin holds the rotor"))
            return _on_bench(practice, bench.SettleRotor())
        case bench.LoadTrain():
            return _on_bench(practice, act)
    return _on_bench(practice, bench.HoldRotor())


def _on_bench(practice: Practice, action: bench.Action) -> Practice:
    return replace(practice, bench=apply_to_bench(practice.bench, action))


# ---------------------------------------------------------------------- setting the contacts


def _set(practice: Practice, act: do.Setting) -> Practice:
    state = practice.bench
    match act:
        case do.TurnPlate(by_deg):
            to = state.backplate_deg + turning.reasonable(by_deg, 360.0)
            after = _on_bench(practice, bench.TurnBackplate(to))
            turned = practice.seat.plate_turned_deg + after.bench.backplate_deg - state.backplate_deg
            after = replace(after, seat=replace(after.seat, plate_turned_deg=turned))
            return _at_end(after, to, after.bench.backplate_deg, marked("the backplate is at the end of its slot"))
        case do.TurnScrew(by_deg):
            to = state.screw_deg + turning.reasonable(by_deg, turning.MAX_TURN_DEG)
            after = _on_bench(practice, bench.TurnScrew(to))
            turned = practice.seat.screw_turned_deg + after.bench.screw_deg - state.screw_deg
            after = replace(after, seat=replace(after.seat, screw_turned_deg=turned))
            return _at_end(after, to, after.bench.screw_deg, marked("the contact screw is at the end of its travel"))
    return _on_bench(practice, act)


def _at_end(practice: Practice, wanted: float, now: float, words: str) -> Practice:
    return replace(practice, said=Said("hand", words)) if abs(wanted - now) > 1e-6 else practice


# ---------------------------------------------------------------------- what contacts and cam are cared for with


def _care(practice: Practice, act: do.Care) -> Practice:
    seat = practice.seat
    match act:
        case do.InspectContacts():
            return replace(practice, said=contacts.look(practice))
        case do.DressContacts():
            return contacts.dress(practice)
        case do.RenewContacts():
            return contacts.renew(practice)
        case do.LeaveAsIs("chocks") if practice.bench.engaged is None:
            raise SpecError(tr("there are no wheels here"))
        case do.LeaveAsIs(what):
            if what not in ("contacts", "chocks"):
                raise SpecError(tr("what can be left as it is are the contacts or the chocks"))
            return practice
        case do.TakeCoilOff(off):
            return replace(practice, seat=replace(seat, coil_off=off))
        case do.PressFelt():
            return replace(practice, said=instruments.felt(practice))
        case do.OilFelt(drops):
            if not 1 <= drops <= MAX_DROPS:
                raise SpecError(
                    tr("{drops} drops of oil cannot be given at once; 1 to {most} can", drops=drops, most=MAX_DROPS)
                )
            return replace(practice, seat=replace(seat, oil_drops=seat.oil_drops + drops))


# ---------------------------------------------------------------------- switch lead


def _lead(practice: Practice, act: do.LeadWork) -> Practice:
    match act:
        case bench.SwitchOther() if other_circuit(practice.bench) is None:
            raise SpecError(tr("there is no other magneto here"))
        case bench.SlipPaper(True) | do.Renew("tab") if practice.bench.magneto.grounding_tab is not True:
            return replace(practice, said=Said("hand", marked("there is no grounding tab here")))
        case do.Renew(part):
            return _renew(practice, part)
        case _:
            return _on_bench(practice, act)


_MENDED = {
    "lead": ("broken", "chafed"), "tab": ("tab",), "insulation": ("shorted",),
    "switch": ("never-opens", "never-closes"), "places": ("crossed",),
}  # fmt: skip
"""The fault that each new part puts right."""


def _renew(practice: Practice, part: str) -> Practice:
    if part not in _MENDED:
        raise SpecError(
            tr("what can be renewed is the lead, the tab, the insulation, the switch or the leads' places")
        )
    for fault in _MENDED[part]:
        practice = _on_bench(practice, bench.SetLeadFault(fault, False))
    if part in ("lead", "switch", "places"):
        practice = replace(practice, seat=replace(practice.seat, proved=False))
    if part in ("switch", "places") and practice.other is not None:
        other = practice.other
        practice = replace(practice, other=replace(other, seat=replace(other.seat, proved=False)))
    return practice


def _meter(practice: Practice, act: do.Meter) -> Practice:
    if not practice.exercise.tray.meter:
        raise SpecError(tr("there is no meter on the tray"))
    match act:
        case do.MeterTerminal():
            return replace(practice, said=instruments.terminal_meter(practice))
        case do.MeterSwitch():
            return replace(practice, said=instruments.switch_meter(practice))
        case do.MeterLead():
            said = instruments.meter(practice)
    if practice.bench.lead.switch_on:
        return replace(practice, said=said)
    proved = true_circuit(practice.bench).meter_sees_ground
    return replace(practice, said=said, seat=replace(practice.seat, proved=proved))


# ---------------------------------------------------------------------- instruments


def _tool(practice: Practice, act: do.Tool) -> Practice:
    tray = practice.exercise.tray
    match act:
        case do.LayStraightedge(on):
            _there(tray.straightedge is not None, marked("there is no straightedge on the tray"))
            # One leans over it from somewhere; looking square on is an act of its own.
            way = 1.0 if uniform(practice.seed, "hand", str(practice.acts), "side") < 0.5 else -1.0
            eye = way * between(practice.seed, 12.0, 25.0, "hand", str(practice.acts), "eye")
            return replace(practice, edge_laid=on, eye_deg=eye if on else 0.0)
        case do.Sight(eye_deg):
            return replace(practice, eye_deg=turning.reasonable(eye_deg, instruments.MAX_EYE_DEG))
        case do.ConnectLamp(on):
            _there(tray.lamp, marked("there is no timing lamp on the tray"))
            return replace(practice, lamp_on=on)
        case do.TryBlades(stack, kind):
            _there(kind in tray.blades, marked("there is no {kind} set of blades on the tray"), kind=str(kind)[:20])
            return replace(practice, said=instruments.blades(practice, kind, stack))
        case do.FeelCompression():
            return replace(practice, said=instruments.compression(practice))
        case do.FitStop(on):
            return _stop(practice, on)
        case do.TurnDisc(by_deg):
            _there(
                tray.disc_step_deg is not None and practice.bench.engaged is not None,
                marked("there is no crank disc on the tray"),
            )
            error = practice.disc_error_deg + turning.reasonable(by_deg, 360.0)
            return replace(practice, disc_error_deg=(error + 180.0) % 360.0 - 180.0)


def _stop(practice: Practice, on: bool) -> Practice:
    _there(
        practice.exercise.tray.stop and practice.bench.engaged is not None,
        marked("there is no piston stop on the tray"),
    )
    if on and not practice.plugs_out:
        raise SpecError(
            tr(
                "the stop goes into the plug hole of No. {cylinder}: take the spark plugs out first",
                cylinder=practice.timing_cylinder,
            )
        )
    if on and not practice.stop_fitted and not turning.free_of_stop(practice):
        raise SpecError(
            tr(
                "the piston of No. {cylinder} stands too high for the stop: turn the propeller with rotation first",
                cylinder=practice.timing_cylinder,
            )
        )
    return replace(practice, stop_fitted=on)


def _there(on_tray: bool, words: str, **places: str) -> None:
    if not on_tray:
        raise SpecError(tr(words, **places))


# ---------------------------------------------------------------------- on the engine


def _engine(practice: Practice, act: do.EngineWork) -> Practice:
    engaged, seat = practice.bench.engaged, practice.seat
    if engaged is None:
        raise SpecError(tr("there is no engine here"))
    if isinstance(act, do.Safety):
        return _safety(practice, act)
    match act:
        case do.Nuts(tight):
            return _nuts(practice, tight)
        case do.Pin(on):
            return replace(practice, seat=replace(seat, pinned=on), bench=replace(practice.bench, held=True))
        case do.Remove():
            return _remove(practice)
        case do.Refit(by_marks):
            return _refit(practice, by_marks)
        case do.MoveTooth():
            return _move_tooth(practice, act)
        case bench.PaintMarks():
            return replace(_on_bench(practice, act), seat=replace(seat, marked=True))
        case bench.ViewSide(side):
            return _look_at(practice, side)


def _safety(practice: Practice, act: do.Safety) -> Practice:
    match act:
        case do.Chock(on):
            return replace(practice, chocked=on)
        case do.MakeSafe(what, done):
            if what not in SAFE_THINGS:
                raise SpecError(tr("what is seen to is the fuel, the mixture, the throttle or the hanging leads"))
            seen_to = practice.seen_to | {what} if done else practice.seen_to - {what}
            return replace(practice, seen_to=seen_to)
        case do.SparkPlugs(out):
            return _spark_plugs(practice, out)
        case do.PlugLeads(on):
            if on and practice.plugs_out:
                raise SpecError(tr("the spark plugs are out: put them in first"))
            return replace(practice, leads_hang=not on)


def _spark_plugs(practice: Practice, out: bool) -> Practice:
    if not out and practice.stop_fitted:
        raise SpecError(tr("the piston stop is in a plug hole: take it out first"))
    hang = practice.leads_hang or (out and practice.exercise.rules >= 2)
    return replace(practice, plugs_out=out, leads_hang=hang)


def _nuts(practice: Practice, tight: bool) -> Practice:
    if not practice.mounted:
        raise SpecError(tr("the magneto is off the engine"))
    return replace(practice, seat=replace(practice.seat, nuts_tight=tight))


def _look_at(practice: Practice, side: Side) -> Practice:
    """Lamp and straightedge stay behind: they were on the other magneto."""
    if side not in practice.sides:
        raise SpecError(tr("there is no {side} magneto here", side=str(side)[:20]))
    if side == practice.side:
        return practice
    return replace(view(practice, side), edge_laid=False, eye_deg=0.0, lamp_on=False)


def _remove(practice: Practice) -> Practice:
    if not practice.mounted:
        raise SpecError(tr("the magneto is off the engine already"))
    if practice.seat.nuts_tight:
        raise SpecError(tr("the nuts hold the magneto: take them off first"))
    if practice.bench.lead.plug_in:
        raise SpecError(tr("the switch lead holds the magneto: pull its plug first"))
    off = _on_bench(practice, bench.MountMagneto(False))
    if off.seat.pinned:
        return off
    return _on_bench(off, bench.SettleRotor())  # nothing holds the rotor: the magnet takes it to neutral


def _refit(practice: Practice, by_marks: bool) -> Practice:
    if practice.mounted:
        raise SpecError(tr("the magneto is on the engine already"))
    if by_marks:
        if not practice.seat.marked:
            raise SpecError(tr("no marks were painted to refit it by: it can be fitted only as its rotor stands"))
        on = _on_bench(practice, bench.MountMagneto(True))
        return replace(on, bench=replace(on.bench, held=True))
    return _mesh_as_it_stands(practice)


def _mesh_as_it_stands(practice: Practice) -> Practice:
    """Mesh the coupling with rotor and crank where they are; the rotor gives way to the nearest tooth."""
    engaged = practice.bench.engaged
    assert engaged is not None
    teeth, at = engaged.installation.disc, engaged.mounting
    was = at.phase_deg + shift_deg(engaged, engaged.side)
    off = practice.bench.rotor_deg - engaged.ratio * crank_deg(practice.bench) - was
    finest = finest_shift_deg(teeth.magneto_teeth, teeth.drive_teeth)
    steps = math.floor(off / finest + 0.5)
    phase = was + steps * finest
    same = steps == 0
    mounting = Mounting(phase, at.wanted_btdc_deg, at.reads_btdc_deg, 0, 0, *(at.marks_apart if same else (0, 0)))
    crank = crank_deg(practice.bench)
    meshed = replace(engaged, left=mounting) if engaged.side == "left" else replace(engaged, right=mounting)
    meshed = with_play(replace(meshed, off_crank_deg=None), Play())
    state = replace(
        practice.bench, engaged=meshed, rotor_deg=phase + engaged.ratio * crank, held=True, speed_deg_s=0.0
    )  # fmt: skip
    return replace(practice, bench=state, seat=replace(practice.seat, marked=practice.seat.marked and same))


def _move_tooth(practice: Practice, act: do.MoveTooth) -> Practice:
    engaged, seat = practice.bench.engaged, practice.seat
    assert engaged is not None
    if act.face not in ("magneto", "disc") or act.way not in (1, -1):
        raise SpecError(tr("the coupling is moved one tooth at a time, at its magneto or its disc face"))
    if seat.nuts_tight:
        raise SpecError(tr("the coupling is closed: take the nuts off and draw the magneto back first"))
    if seat.pinned:
        raise SpecError(tr("the pin holds the rotor: take it out to turn the magneto flange"))
    i, j = engaged.mounting.magneto_teeth, engaged.mounting.disc_teeth
    # With no marks to go by, the other face may slip a tooth and nobody sees it.
    slip = 0 if seat.marked else whole(practice.seed, -1, 1, "hand", str(practice.acts), "slip")
    moved = (i + act.way, j + slip) if act.face == "magneto" else (i + slip, j + act.way)
    return _on_bench(practice, bench.MoveTeeth(*moved))


# ---------------------------------------------------------------------- the notebook


def _write(practice: Practice, act: do.WriteReading) -> Practice:
    side: Side = act.side or practice.side
    if act.kind not in get_args(ReadingKind):
        raise SpecError(tr("“{kind}” is no kind of reading", kind=str(act.kind)[:40]))
    if side not in practice.sides:
        raise SpecError(tr("there is no {side} magneto here", side=str(side)[:20]))
    if len(practice.notebook) >= MAX_NOTES:
        raise SpecError(tr("the notebook is full: it holds {most} lines", most=MAX_NOTES))
    if len(act.text) > MAX_TEXT or not act.text.isprintable():
        raise SpecError(tr("a note is one line of at most {most} characters", most=MAX_TEXT))
    if act.kind == "lead" and act.text not in get_args(LeadFault):
        raise SpecError(tr("a finding on the switch lead is one of {known}", known=", ".join(get_args(LeadFault))))
    if act.kind in ("lead", "note", "running-in") and act.value is not None:
        raise SpecError(tr("a finding in words takes no number"))
    if act.kind in ("lead", "note", "running-in"):
        return _noted(practice, Note(act.kind, side, None, act.text))
    if act.value is None:
        raise SpecError(tr("a reading needs its number"))
    lobes = len(practice.bench.magneto.cam.lobe_peaks_deg)
    if not 1 <= act.lobe <= lobes:
        raise SpecError(tr("there is no lobe {lobe}; the cam has {lobes}", lobe=act.lobe, lobes=lobes))
    return _noted(practice, Note(act.kind, side, turning.reasonable(act.value, 1000.0), act.text, act.lobe))


def _noted(practice: Practice, note: Note) -> Practice:
    return replace(practice, notebook=(*practice.notebook, note))
