"""Readings of an exercise: tables with a blank for each reading, and the true values."""

from __future__ import annotations

import math
from collections.abc import Iterator
from dataclasses import dataclass, replace

from magview.bench.engine_words import disc_words
from magview.bench.state import Side, circuit_with
from magview.bench.words import move_words
from magview.practice.advice import teeth_wanted
from magview.practice.contacts import FACES_WORDS, PIP_MM, best
from magview.practice.exercise import Exercise
from magview.practice.faults import begin
from magview.practice.readings import lead_truth
from magview.practice.state import Practice, true_firing_deg, true_readings, view
from magview.spec.language import marked, tr
from magview.spec.units import MM_PER_INCH


@dataclass(frozen=True)
class Cell:
    """A blank: what truly belongs on it; "" where only the work itself can tell."""

    answer: str
    hidden: bool = True
    """Whether it is to be found; else what is wanted, which the data sheet says too."""


@dataclass(frozen=True)
class Blanks:
    """A table to fill in: heads, and rows of words and blanks. `weights` are the columns' shares of the width."""

    title: str
    head: tuple[str, ...]
    rows: tuple[tuple[str | Cell, ...], ...]
    weights: tuple[float, ...]
    note: str = ""
    """Way of reading it."""

    @property
    def answers(self) -> list[str]:
        """The solutions."""
        return [c.answer for row in self.rows for c in row if isinstance(c, Cell) and c.answer and c.hidden]


def blanks(exercise: Exercise, seed: int) -> list[Blanks]:
    """The tables of an exercise as a seed draws it, in the order of the work. Raises SpecError for a seed that is
    none."""
    room = begin(exercise, seed)
    found: list[Blanks] = []
    for side in room.sides:
        found += _of_magneto(exercise, view(room, side), side)
    if exercise.installation is not None:
        found += _of_engine(exercise, room)
    return found


def sets_something(exercise: Exercise) -> bool:
    """Whether something is put right, so that there are readings as left."""
    return any(g.goal not in ("reading", "secured") for g in exercise.goals)


def _wants(exercise: Exercise) -> set[str]:
    goals: set[str] = {g.goal for g in exercise.goals}
    return goals | {g.reading for g in exercise.goals if g.reading is not None}


def _named(exercise: Exercise, title: str, side: Side) -> str:
    """A table's title with the magneto it is of, where there are two."""
    if not exercise.both_sides:
        return title
    left = tr("{table}: left magneto", table=title)
    return left if side == "left" else tr("{table}: right magneto", table=title)


def _of_magneto(exercise: Exercise, room: Practice, side: Side) -> Iterator[Blanks]:
    wants = _wants(exercise)
    if "lead" in wants:
        yield _lead(exercise, room, side)
    if "e-gap" in wants:
        yield _e_gap(exercise)
    if wants & {"contacts", "gap"} and exercise.tray.blades:
        yield _contacts(exercise, room, side)
    if wants & {"gap", "opening"}:
        yield _inside(exercise, room, side)


def _lead(exercise: Exercise, room: Practice, side: Side) -> Blanks:
    def meter(on: bool) -> str:
        lead = replace(room.bench.lead, plug_in=False, switch_on=on)
        grounded = circuit_with(replace(room.bench, lead=lead), contacts_closed=True)
        return tr("ground") if grounded.meter_sees_ground else tr("no ground")

    finding = {
        "broken": tr("the lead is broken inside"),
        "shorted": tr("a short inside the magneto grounds it"),
        "tab": tr("the grounding tab does not touch the case"),
        "chafed": tr("the lead is chafed through to ground"),
        "never-opens": tr("the switch never opens"),
        "never-closes": tr("the switch never closes"),
        "crossed": tr("the leads of left and right are crossed"),
        "sound": tr("nothing: it is sound"),
    }[lead_truth(room)]
    left = Cell(tr("sound, and proved"), False)
    return Blanks(
        _named(exercise, tr("Switch lead"), side),
        (tr("Reading"), tr("As found"), tr("As left")),
        (
            (tr("Meter from plug to case, switch off"), Cell(meter(False)), Cell(tr("ground"), False)),
            (tr("Meter from plug to case, switch on"), Cell(meter(True)), Cell(tr("no ground"), False)),
            (tr("What it suffers from"), Cell(finding), left),
        ),
        (2.2, 2.0, 2.0),
        tr("Plug out. A lead without ground while the switch is off leaves the magneto live.")
        if room.bench.magneto.grounding_tab is True
        else tr(
            "Jumper on, then plug out: no tab grounds this magneto. A lead without ground while the switch is off "
            "leaves it live."
        ),
    )


def _e_gap(exercise: Exercise) -> Blanks:
    tolerance = exercise.unit.marks.tolerance_mm
    within = Cell(tr("in line, within {length:mm}", length=tolerance), False)
    return Blanks(
        tr("The rotor at the E-gap"),
        (tr("Try"), tr("Straightedge from the rim mark"), tr("Short of it or past it")),
        tuple((str(n), within, Cell("")) for n in (1, 2, 3)),
        (0.6, 2.4, 2.4),
        tr("Held by hand, looked at square over the straightedge, reached with rotation."),
    )


_DECISIONS = {"leave": marked("left"), "dress": marked("dressed"), "renew": marked("renewed")}


def _contacts(exercise: Exercise, room: Practice, side: Side) -> Blanks:
    pip = room.bench.magneto.condition.pip_height_mm
    found = tr("a pip of {length:mm}", length=pip) if pip > PIP_MM else tr("clean and flat")
    if exercise.rules >= 2:
        return Blanks(
            _named(exercise, tr("The contacts"), side),
            (tr("Looked at"), tr("As found"), tr("Left, dressed or renewed")),
            ((tr("Faces of the contacts"), Cell(tr(FACES_WORDS[room.seat.faces])),
              Cell(tr(_DECISIONS[best(exercise, room.seat.faces)]))),),
            (2.2, 2.0, 2.0),
            tr("Look before measuring, and decide by the manual; a new pair is looked at again after running in."),
        )  # fmt: skip
    return Blanks(
        _named(exercise, tr("The contacts"), side),
        (tr("Looked at"), tr("As found"), tr("As left")),
        ((tr("Faces of the contacts"), Cell(found), Cell(tr("clean and flat"), False)),),
        (2.2, 2.0, 2.0),
        tr("Look before measuring: a blade on a pip reads too small a gap."),
    )


def offset_side(mm: float) -> int:
    """On which side of its mark a straightedge stands as it is written: 1 past it, -1 short of it, 0 in line."""
    written = round(mm, 2)
    return (written > 0) - (written < 0)


def offset_words(mm: float) -> str:
    """Return where the straightedge stands as the contacts open, from its mark [mm]; positive is past it."""
    if not math.isfinite(mm):
        return tr("never opens")
    if offset_side(mm) == 0:
        return tr("in line")
    amount = f"{abs(mm):.2f}"
    return tr("{amount} mm past", amount=amount) if mm >= 0 else tr("{amount} mm short", amount=amount)


def both_units(mm: float) -> str:
    """A length in both units."""
    return tr("{mm} mm = {inch} in", mm=f"{mm:.3f}", inch=f"{mm / MM_PER_INCH:.4f}")


def offsets_mm(room: Practice) -> list[float]:
    """Distances of the straightedge from its mark as each lobe opens the contacts [mm]; positive is past it."""
    magneto = room.bench.magneto
    turn = [e * magneto.cam.turns_per_rotor_turn for e in true_readings(room.bench).e_gap_error_deg.tolist()]
    return [magneto.marks.radius_mm * math.tan(math.radians(t)) if math.isfinite(t) else math.nan for t in turn]


def _inside(exercise: Exercise, room: Practice, side: Side) -> Blanks:
    """Opening and gap of every lobe, as far as the tray can read them."""
    magneto, tray, readings = room.bench.magneto, exercise.tray, true_readings(room.bench)
    opens, gaps = tray.lamp and tray.straightedge is not None, bool(tray.blades)
    low, high = magneto.gap_limits_mm
    within = tr("within {length:mm}", length=magneto.marks.tolerance_mm)
    limits = tr("{low} to {high:mm}", low=f"{low:.3f}", high=high)
    columns: list[tuple[str, list[Cell]]] = []
    if opens:
        columns.append((tr("Opens from the mark, as found"), [Cell(offset_words(v)) for v in offsets_mm(room)]))
    if gaps:
        columns.append((tr("Largest gap, as found"), [Cell(both_units(v)) for v in readings.max_gap_mm.tolist()]))
    count = len(readings.max_gap_mm)
    if sets_something(exercise):
        columns += [(tr("Opens from the mark, as left"), [Cell(within, False)] * count)] if opens else []
        columns += [(tr("Largest gap, as left"), [Cell(limits, False)] * count)] if gaps else []
    return Blanks(
        _named(exercise, tr("Opening and gap, lobe by lobe"), side),
        (tr("Lobe"), *(head for head, _ in columns)),
        tuple((str(i + 1), *(cells[i] for _, cells in columns)) for i in range(count)),
        (0.6, *(1.8 for _ in columns)),
        tr("Turn with rotation. Lobe 1 opens for No. 1; the gap is measured with the heel on top of the lobe."),
    )


def _of_engine(exercise: Exercise, room: Practice) -> Iterator[Blanks]:
    wants = _wants(exercise)
    finds_zero = exercise.tray.stop and exercise.tray.disc_step_deg and not exercise.start.disc_at_zero
    if finds_zero and wants & {"disc-zero", "timing", "firing"}:
        yield _disc(room)
    if wants & {"timing", "firing"}:
        yield _firing(exercise, room)


def _disc(room: Practice) -> Blanks:
    # The stop holds the piston as far before top dead centre as after it; the disc reads off by its error.
    error, reach = room.disc_error_deg, room.stop_reach_deg
    return Blanks(
        tr("Top dead centre of No. 1"),
        (tr("Disc reads"), tr("As found"), tr("Disc set anew")),
        (
            (tr("At the stop, turned with rotation"), Cell(_disc_words(error + reach)), Cell("")),
            (tr("At the stop, turned against rotation"), Cell(_disc_words(error - reach)), Cell("")),
            (tr("Half-way between: true top dead centre"), Cell(_disc_words(error)), Cell(tr("0°"), False)),
        ),
        (2.4, 1.8, 1.8),
        tr("Bring the piston to the stop gently, by hand, from both sides. Write “before” or “after” with each."),
    )


def _disc_words(reading: float) -> str:
    """A reading of the disc [crank deg before its zero], in words."""
    return disc_words(180.0 - (reading + 180.0) % 360.0, 2)


def _firing(exercise: Exercise, room: Practice) -> Blanks:
    assert exercise.installation is not None
    engine, rows, fires = exercise.installation.engine, list[tuple[str | Cell, ...]](), list[float]()
    for side in room.sides:
        one = view(room, side)
        assert one.bench.engaged is not None
        true, wanted = true_firing_deg(one.bench), one.bench.engaged.mounting.wanted_btdc_deg
        fires.append(true)
        what = tr("Fires before top dead centre")
        if exercise.both_sides:
            left_one, right_one = tr("Left fires before top dead centre"), tr("Right fires before top dead centre")
            what = left_one if side == "left" else right_one
        left = tr("{angle}° within {allowed}°", angle=f"{wanted:g}", allowed=f"{engine.timing_tolerance_deg:g}")
        rows.append((what, Cell(_firing_words(true, wanted)), Cell(left, False)))
    if len(fires) > 1:
        left = tr("within {allowed}°", allowed=f"{engine.synchronising_tolerance_deg:g}")
        rows.append((tr("Apart from one another"), Cell(_apart_words(*fires)), Cell(left, False)))
    if "timing" in _wants(exercise):
        for side in room.sides:
            rows += _teeth(exercise, view(room, side), side)
    return Blanks(
        tr("Timing to the engine"),
        (tr("Reading"), tr("As found"), tr("As left")),
        tuple(rows),
        (2.4, 1.6, 2.6),
        tr("Lamp and disc, approached with rotation; teeth as seen from the drive end."),
    )


def _teeth(exercise: Exercise, room: Practice, side: Side) -> Iterator[tuple[str | Cell, ...]]:
    """Ask for the moves A, of the disc, and B, of the flange, once the contacts open at the E-gap."""
    move = teeth_wanted(room.bench)
    a, b = tr("A: disc moved on the drive flange"), tr("B: magneto flange moved on the disc")
    if exercise.both_sides and side == "left":
        a, b = tr("Left A: disc moved on the drive flange"), tr("Left B: magneto flange moved on the disc")
    elif exercise.both_sides:
        a, b = tr("Right A: disc moved on the drive flange"), tr("Right B: magneto flange moved on the disc")
    off = tr("off, and meshed anew")
    words = (off, off) if move is None else move_words(move, room.bench.magneto.rotation, "drive end")
    yield a, "–", Cell(words[0])
    yield b, "–", Cell(words[1])


def _firing_words(fires: float, wanted: float) -> str:
    """Reading of the disc as the contacts open: it does not know one turn of the crank from the next."""
    if not math.isfinite(fires):
        return tr("never")
    reads = (fires - wanted + 180.0) % 360.0 - 180.0 + wanted
    if abs(fires - wanted) > 180.0:
        return tr("{angle}°, on the wrong stroke", angle=f"{reads:.2f}")
    return f"{reads:.2f}°"


def _apart_words(left: float, right: float) -> str:
    if not (math.isfinite(left) and math.isfinite(right)):
        return tr("one never fires")
    apart = abs((left - right + 180.0) % 360.0 - 180.0)
    if abs(left - right) > 180.0:
        return tr("{angle}° and a turn of the crank", angle=f"{apart:.2f}")
    return f"{apart:.2f}°"
