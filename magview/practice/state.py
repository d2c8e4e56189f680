"""The practice room as a value: the bench with its truth, and what the bench alone does not know of.

Nothing in here is for the screen as a number before the attempt is handed in; `magview.practice.screen_words` says
what may be shown.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from enum import StrEnum
from functools import lru_cache
from typing import Literal, get_args

import numpy as np
from numpy.typing import NDArray

from magview.bench.apply_lead import lead_in_view
from magview.bench.state import BenchState, Side, circuit_with, crank_deg, gap_now_mm, readings, shift_deg, with_play
from magview.physics.cam.setting import Readings
from magview.physics.electric.circuit import Circuit
from magview.physics.engine.dead_centre import timing_centre_deg
from magview.physics.engine.play import Play
from magview.practice.exercise import Exercise
from magview.spec.engine import Installation
from magview.spec.language import marked, number, tr
from magview.spec.magneto import Magneto

ReadingKind = Literal["opening", "gap", "firing", "disc-zero", "lead", "note", "running-in"]
"""Readings to write down: offset of the straightedge as the contacts open [mm, positive past], largest gap of a
lobe [mm], firing before top dead centre [crank deg], what the disc reads at top dead centre [crank deg], what the
switch lead was found to be, anything else in words, and that new contacts are to be looked at after running in."""

Faces = Literal["frosted", "light", "mound", "pit", "dressed", "new"]
"""Look of the contacts' faces: as found, or what hands have made of them."""


SafeThing = Literal["fuel", "mixture", "throttle", "leads"]
"""Fuel off, mixture cut off, throttle closed; hanging plug leads grounded or kept clear."""
SAFE_THINGS: tuple[SafeThing, ...] = get_args(SafeThing)


class Feel(StrEnum):
    """Feel of blades between the contacts, in the words of files and rules; `tr` reads it out."""

    GO = marked("go")
    DRAG = marked("drag")
    NO_GO = marked("no-go")


@dataclass(frozen=True)
class Seat:
    """Acts of hands on one magneto beyond those that the bench knows."""

    plate_turned_deg: float = 0.0
    """Angle by which hands have turned the backplate since it was found, and…"""
    screw_turned_deg: float = 0.0
    """…the contact screw: what tightening carried it along is not among it."""
    nuts_tight: bool = True
    marked: bool = False
    """Whether paint stands across the coupling as it is meshed now, or as it has been moved since."""
    pinned: bool = False
    """A pin through the flange holds the rotor."""
    faces: Faces = "frosted"
    felt_dry: bool = False
    """State in which the felt that oils the cam was found."""
    oil_drops: int = 0
    """Drops of oil given to it since."""
    coil_off: bool = False
    """The coil's primary is taken off the contacts."""
    proved: bool = False
    """The meter has seen ground through the lead, switch off, since it was last worked on."""


@dataclass(frozen=True)
class Kept:
    """The magneto that is not in view."""

    magneto: Magneto
    rotor_deg: float
    held: bool
    backplate_deg: float
    screw_deg: float
    lock_tight: bool
    clamps_tight: bool
    mounted: bool
    play_deg: float
    seat: Seat
    train_deg: float = 0.0


INSTRUMENTS = {
    "lamp": marked("lamp"),
    "straightedge": marked("straightedge"),
    "blades": marked("blades"),
    "contacts": marked("contacts"),
    "disc": marked("disc"),
    "meter": marked("meter"),
    "finger": marked("finger"),
    "thumb": marked("thumb"),
    "stop": marked("stop"),
    "hand": marked("hand"),
    "felt": marked("felt"),
}
"""Names of the instruments and hands that answer."""


def _read_out(value: str | float) -> str:
    if isinstance(value, str):
        return tr(value) if value[:1].isalpha() else value
    return number(value)


_ON_SCREEN = {"light": marked("lit"), "light all the way round": marked("lit all the way round")}
"""Words that people read for those that files and rules use, where the two differ."""


@dataclass(frozen=True)
class Said:
    """Reading of an instrument after the act just done: words, and the number read off if any."""

    instrument: str
    words: str
    """Marked for translators, its places open; places that are strings are words too."""
    value: float | None = None
    places: tuple[tuple[str, str | float], ...] = ()

    @property
    def text(self) -> str:
        """In the present language."""
        return tr(_ON_SCREEN.get(self.words, self.words), **{k: _read_out(v) for k, v in self.places})

    @property
    def plain(self) -> str:
        """In the words that files and rules use, whatever the language."""
        return self.words.format(**{k: v if isinstance(v, str) else f"{v:g}" for k, v in self.places})

    @property
    def line(self) -> str:
        """With the instrument named before it."""
        return f"{tr(INSTRUMENTS[self.instrument])}: {self.text}"


@dataclass(frozen=True)
class Note:
    """One line of the trainee's own notebook."""

    kind: ReadingKind
    side: Side
    value: float | None
    text: str = ""
    lobe: int = 1


@dataclass(frozen=True)
class Practice:
    """Everything there is to an attempt at one moment. Angles [deg] and lengths [mm] as at the bench."""

    exercise: Exercise
    seed: int
    bench: BenchState
    """The magneto in view, as it truly is."""
    seat: Seat
    other: Kept | None = None
    disc_error_deg: float = 0.0
    """Reading of the crank disc at No. 1's top dead centre [crank deg]; hidden until found."""
    stop_reach_deg: float = 30.0
    """Angle from top dead centre at which the piston meets the stop [crank deg]."""
    stop_fitted: bool = False
    chocked: bool = False
    plugs_out: bool = False
    """One spark plug of each cylinder out, at least: nothing is compressed. Others, and hanging leads, can flash."""
    seen_to: frozenset[SafeThing] = frozenset()
    """Other steps of making safe that were done."""
    leads_hang: bool = False
    """The leads of plugs that were taken out hang free."""
    lamp_on: bool = False
    """The timing lamp is clipped across the contacts of the magneto in view."""
    edge_laid: bool = False
    eye_deg: float = 0.0
    """From how far to the side the eye looks over the straightedge [deg]: positive the way the edge then seems to be
    further on with rotation, which is from behind; negative from ahead."""
    acts: int = 0
    """Acts so far; each act's unsteadiness of hand is drawn by its number."""
    said: Said | None = None
    notebook: tuple[Note, ...] = ()
    handed_in: bool = False

    @property
    def side(self) -> Side:
        """The magneto in view; "left" where there is no engine."""
        return self.bench.engaged.side if self.bench.engaged is not None else "left"

    @property
    def sides(self) -> tuple[Side, ...]:
        """The magnetos of the exercise."""
        if self.other is None:
            return (self.side,)
        return ("left", "right")

    @property
    def timing_cylinder(self) -> int:
        """The cylinder whose top dead centre and firing are read; 1 where there is no engine."""
        engaged = self.bench.engaged
        return engaged.installation.engine.timing_cylinder if engaged is not None else 1

    @property
    def mounted(self) -> bool:
        """Whether the magneto in view is on the engine."""
        return self.bench.engaged is not None and self.bench.engaged.mounted


def view(practice: Practice, side: Side) -> Practice:
    """The same with the other magneto in view; itself where that is the one. The crank stays where it is."""
    bench, other, engaged = practice.bench, practice.other, practice.bench.engaged
    if other is None or engaged is None or side == practice.side:
        return practice
    crank = crank_deg(bench)
    kept = Kept(
        bench.magneto,
        bench.rotor_deg,
        bench.held,
        bench.backplate_deg,
        bench.screw_deg,
        bench.lock_tight,
        bench.clamps_tight,
        engaged.mounted,
        engaged.play_deg,
        practice.seat,
        engaged.train_deg,
    )
    shown = with_play(
        replace(engaged, side=side, off_crank_deg=None if other.mounted else crank),
        Play(other.train_deg, other.play_deg),
    )
    rotor = other.rotor_deg
    if other.mounted:
        rotor = shown.mounting.phase_deg + shift_deg(shown, side) + shown.ratio * crank + shown.play.deg
    new = replace(
        lead_in_view(bench, side),
        magneto=other.magneto,
        engaged=shown,
        rotor_deg=rotor,
        held=other.held,
        speed_deg_s=0.0,
        backplate_deg=other.backplate_deg,
        screw_deg=other.screw_deg,
        lock_tight=other.lock_tight,
        clamps_tight=other.clamps_tight,
    )
    return replace(practice, bench=new, seat=other.seat, other=kept)


# ---------------------------------------------------------------------- the truth, asked often and kept


class _Same:
    """A magneto as the key of a cache, by identity: hashing all its fields costs more than is saved."""

    __slots__ = ("magneto",)

    def __init__(self, magneto: Magneto) -> None:
        self.magneto = magneto

    def __eq__(self, other: object) -> bool:
        return isinstance(other, _Same) and other.magneto is self.magneto

    def __hash__(self) -> int:
        return id(self.magneto)


@lru_cache(maxsize=8)
def _found(same: _Same) -> tuple[Callable[[float, float, float], float], Callable[[float, float], Readings]]:
    """Gap and readings of one magneto, each setting computed once.

    Of the last few magnetos only: one cache for all of them would keep a thousand whose windows are long closed.
    """
    magneto = same.magneto

    @lru_cache(maxsize=4096)
    def gap_mm(rotor_deg: float, backplate_deg: float, screw_deg: float) -> float:
        return gap_now_mm(BenchState(magneto, rotor_deg, backplate_deg, screw_deg))

    @lru_cache(maxsize=512)
    def read(backplate_deg: float, screw_deg: float) -> Readings:
        return readings(BenchState(magneto, 0.0, backplate_deg, screw_deg))

    return gap_mm, read


def true_gap_mm(bench: BenchState) -> float:
    """Gap between the contacts as the rotor stands [mm]."""
    return _found(_Same(bench.magneto))[0](bench.rotor_deg, bench.backplate_deg, bench.screw_deg)


def true_readings(bench: BenchState) -> Readings:
    """Readings of the present setting, lobe by lobe."""
    return _found(_Same(bench.magneto))[1](bench.backplate_deg, bench.screw_deg)


def true_circuit(bench: BenchState) -> Circuit:
    """Present state of the primary circuit."""
    return circuit_with(bench, true_gap_mm(bench) <= 0.0)


def true_firing_deg(bench: BenchState) -> float:
    """Firing of the timing cylinder by the magneto in view [crank deg BTDC], −360…360; NaN if it never opens."""
    engaged = bench.engaged
    assert engaged is not None
    phase = engaged.mounting.phase_deg + shift_deg(engaged, engaged.side)
    fires = (phase - first_spark_deg(engaged.installation, true_readings(bench).opens_deg)) / engaged.ratio
    return (fires + 360.0) % 720.0 - 360.0


def first_spark_deg(installation: Installation, opens_deg: NDArray[np.float64]) -> float:
    """The rotor angle at which the timing cylinder is fired [deg], its top dead centre put at crank 0.

    `opens_deg`: where each lobe opens the contacts, lobe 1 firing No. 1. For No. 1 itself this is lobe 1's opening.
    """
    engine, cam = installation.engine, installation.magneto.cam
    turns, lobe = divmod(engine.firing_order.index(engine.timing_cylinder), len(cam.lobe_peaks_deg))
    rotor = float(opens_deg[lobe]) + turns * 360.0 / cam.turns_per_rotor_turn
    return rotor - installation.rotor_turns_per_crank_turn * timing_centre_deg(engine)
