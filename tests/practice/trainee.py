"""A scripted trainee who knows what stands on paper and what instruments say, and nothing else.

`Hands` is all it has; the true state is behind it and not used here.
"""

from __future__ import annotations

import math

from magview.bench import actions as bench
from magview.physics.engine.coupling import Move, plan
from magview.physics.engine.crank import true_tdc_from_stops
from magview.practice import actions as do
from magview.practice import instruments
from magview.practice.attempt import Attempt
from magview.practice.exercise import Exercise
from magview.practice.state import SAFE_THINGS
from magview.spec.breaker import EccentricScrew
from tests.practice.hands import Hands, stacks


class Trainee:
    """Works to one order: safe, contacts, gap, lock screw, opening, dead centre, teeth, closing up."""

    def __init__(self, exercise: Exercise, seed: int) -> None:
        self.hands = Hands(exercise, seed)
        self.exercise = exercise
        self.paper = exercise.unit
        self.act = self.hands.act
        self.goals = {g.goal for g in exercise.goals}
        self.readings = {g.reading for g in exercise.goals if g.reading}
        self.stacks = stacks(exercise.tray.blades)
        self.corrected: set[str] = set()

    # ------------------------------------------------------------------ the whole job

    def work(self) -> Attempt:
        """Solve the exercise and hand in."""
        if self.exercise.installation is not None:
            self.make_safe()
        for side in self.exercise.sides:
            self.go_to(side)
            self.inside()
        if self.goals & {"timing", "disc-zero"}:
            self.to_the_engine()
        for side in self.exercise.sides:
            self.go_to(side)
            self.close_up()
        if "e-gap" in self.goals:
            self.stand_at_mark()
        self.act(do.HandIn())
        return self.hands.session.attempt

    def go_to(self, side: str) -> None:
        if self.hands.side != side:
            self.act(bench.ViewSide(side))

    # ------------------------------------------------------------------ safety

    def make_safe(self) -> None:
        """The whole list, and a jumper on each magneto: it comes off for a reading alone, and at the end."""
        self.act(do.Chock(True))
        for thing in SAFE_THINGS:
            self.act(do.MakeSafe(thing, True))
        for side in self.exercise.sides:
            self.go_to(side)
            self.ground()
        self.act(do.SparkPlugs(True))

    def ground(self) -> None:
        """Switch off, jumper on; off the engine nothing needs it."""
        if self.exercise.installation is not None:
            self.act(bench.SwitchIgnition(False))
            self.act(bench.FitJumper(True))

    def open_up(self) -> None:
        """For the reading alone."""
        self.act(bench.SwitchIgnition(True))
        if self.exercise.installation is not None:
            self.act(bench.FitJumper(False))

    @property
    def tab(self) -> bool:
        return self.paper.grounding_tab is True

    def see_to_lead(self) -> None:
        """Meter with the switch off and on, switch and lead told apart, tab and coil by the lamp; the finding is
        written down."""
        self.act(bench.PullPlug(True))
        finding = self.metered()
        if finding == "sound" and self.tab:
            self.act(bench.FitJumper(False))
            if not self.steady_closed(self.act(do.TurnUntil("lamp"))):
                finding = "tab"
                self.act(do.Renew("tab"))
            # Whether the tab is new or not: with the plug out it must keep the lamp dark.
            assert self.steady_closed(self.act(do.TurnUntil("lamp")))
        self.act(bench.PullPlug(False))
        self.act(bench.SwitchIgnition(True))
        self.act(bench.FitJumper(False))
        if self.steady_closed(self.act(do.TurnUntil("lamp"))):
            finding = "shorted"
            self.act(do.Renew("insulation"))
            self.open_now()
        self.ground()
        if "lead" in self.readings:
            self.act(do.WriteReading("lead", text=finding))

    def steady_closed(self, said: str) -> bool:
        """Whether the lamp saw "closed" all the way round."""
        return "all the way round" in said and not self.hands.sees_open()

    def metered(self) -> str:
        """What the meter says of lead and switch, put right and proved."""
        pair = {
            ("ground", "no ground"): "sound",
            ("no ground", "no ground"): "broken",
            ("ground", "ground"): "chafed",
        }
        finding = pair[self.by_meter()]
        if finding == "broken" and self.act(do.MeterSwitch()) == "no ground":
            finding = "never-closes"
        elif finding == "chafed":
            self.act(bench.SwitchIgnition(True))
            if self.act(do.MeterSwitch()) == "ground":
                finding = "never-opens"
            elif self.with_other(True) == "no ground":
                finding = "crossed"
            if finding != "never-opens":
                self.with_other(False)
        if finding == "sound":
            return finding
        part = {"broken": "lead", "chafed": "lead", "crossed": "places"}.get(finding, "switch")
        self.act(do.Renew(part))
        if finding == "crossed":
            self.act(bench.SwitchIgnition(False))
            assert self.with_other(True) == "ground"
            self.act(bench.SwitchOther(False))
        assert pair[self.by_meter()] == "sound"
        return finding

    def with_other(self, on: bool) -> str:
        self.act(bench.SwitchOther(on))
        return self.act(do.MeterLead())

    def by_meter(self) -> tuple[str, str]:
        """Meter on the lead, switch off and on; left off."""
        says = []
        for on in (False, True):
            self.act(bench.SwitchIgnition(on))
            says.append(self.act(do.MeterLead()))
        self.act(bench.SwitchIgnition(False))
        return says[0], says[1]

    # ------------------------------------------------------------------ inside

    def inside(self) -> None:
        tray = self.exercise.tray
        if tray.lamp:
            self.act(do.ConnectLamp(True))
        if "lead" in self.goals:
            self.see_to_lead()
        self.open_up()
        if self.exercise.rules >= 2 and "contacts" in self.goals:
            self.decide_on_contacts()
        elif self.goals & {"contacts", "gap"} and "pip" in self.act(do.InspectContacts()):
            self.act(do.DressContacts())
            self.act(do.InspectContacts())
        if "gap" in self.readings:
            self.act(do.WriteReading("gap", round(self.gap_of_lobe(1), 4), lobe=1))
        if "opening" in self.readings:
            self.lay_edge()
            by_mark = self.openings()
            step = instruments.DIVISIONS_MM[str(tray.straightedge)]
            self.act(do.WriteReading("opening", by_mark[1] * step))
        if "gap" in self.goals:
            self.set_gap()
        if "opening" in self.goals:
            self.lay_edge()
            self.set_opening()
        self.ground()

    def decide_on_contacts(self) -> None:
        """By what eyes say and the data sheet allows."""
        said = self.act(do.InspectContacts())
        if not ("mound" in said or "deep pit" in said):
            self.act(do.LeaveAsIs("contacts"))
            return
        if "mound" in said and "mound" in self.exercise.dressing_allowed:
            self.act(do.DressContacts())
        else:
            self.act(do.RenewContacts())
            self.act(do.WriteReading("running-in"))
        self.act(do.InspectContacts())

    def lobes(self) -> range:
        return range(1, len(self.paper.cam.lobe_peaks_deg) + 1)

    def gap_of_lobe(self, lobe: int) -> float:
        """Go to where the lobe holds the contacts widest, and measure between blades [mm]."""
        self.stand_widest(lobe)
        return self.measure()

    def stand_widest(self, lobe: int) -> None:
        """The marks tell the lobes apart; without a straightedge they are counted from the rotor as it stands."""
        if self.exercise.tray.straightedge is None:
            self.act(do.TurnUntil("widest"))
            return
        if not self.hands.edge_laid:
            self.lay_edge()
        for _ in range(2 * len(self.lobes()) + 1):
            self.act(do.TurnUntil("widest"))
            if self.hands.mark() == lobe or self.paper.compensated:
                return
        raise AssertionError("no such lobe")

    def measure(self) -> float:
        """Blades between go and no-go, halving what is left."""
        low, high = 0, len(self.stacks)  # stacks below `low` go, from `high` on they do not
        while low < high:
            middle = (low + high) // 2
            thick, stack, kind = self.stacks[middle]
            says = self.act(do.TryBlades(stack, kind))
            if says == "drag":
                return thick + instruments.DRAG_MM / 2
            low, high = (middle + 1, high) if says == "go" else (low, middle)
        below = self.stacks[low - 1][0] if low else 0.0
        above = self.stacks[low][0] if low < len(self.stacks) else below
        return (
            (below + instruments.DRAG_MM + above) / 2 if above > below + instruments.DRAG_MM else (below + above) / 2
        )

    def gaps(self) -> list[float]:
        """All lobes where that is asked for, else the first that comes."""
        if any(g.every_lobe for g in self.exercise.goals):
            return [self.gap_of_lobe(lobe) for lobe in self.lobes()]
        self.act(do.TurnUntil("widest"))
        return [self.measure()]

    def screw_for(self, wider_mm: float) -> float:
        """Contact-screw turn for a change of the gap [mm], by the data sheet [deg]."""
        screw = self.paper.contact_screw
        if isinstance(screw, EccentricScrew):
            return -math.degrees(math.asin(max(-1.0, min(1.0, wider_mm / screw.throw_mm))))
        return -360.0 * wider_mm / screw.lead_mm

    def set_gap(self) -> None:
        low, high = self.paper.gap_limits_mm
        wanted, margin = (low + high) / 2, (high - low) / 6
        lead = 0.0
        before = None
        for _ in range(12):
            gaps = self.gaps()
            middle = (min(gaps) + max(gaps)) / 2
            if before is not None:
                lead = middle - before  # what tightening did
            if abs(middle - wanted) <= margin and self.locked():
                break
            self.act(bench.TightenLock(False))
            for _ in range(8):
                aim = wanted - lead
                if abs(middle - aim) <= margin:
                    break
                self.act(do.TurnScrew(round(self.screw_for(aim - middle), 2)))
                gaps = self.gaps()
                middle = (min(gaps) + max(gaps)) / 2
            before = middle
            self.act(bench.TightenLock(True))
        else:
            raise AssertionError("the gap cannot be brought within limits")
        self.prove_gap()

    def locked(self) -> bool:
        return self.hands.lock_tight

    def prove_gap(self) -> None:
        low, high = self.paper.gap_limits_mm
        go = next(s for s in self.stacks if s[0] >= low - 1e-6)
        no_go = next(s for s in self.stacks if s[0] >= high - 1e-6)
        every = any(g.every_lobe for g in self.exercise.goals)
        for lobe in self.lobes() if every else [1]:
            if every:
                self.stand_widest(lobe)
            else:
                self.act(do.TurnUntil("widest"))
            assert self.act(do.TryBlades(go[1], go[2])) != "no-go"
            assert self.act(do.TryBlades(no_go[1], no_go[2])) == "no-go"

    def lay_edge(self) -> None:
        self.act(do.LayStraightedge(True))
        self.act(do.Sight(0.0))

    def open_now(self) -> None:
        """Turn with rotation until the contacts are seen to open."""
        for _ in range(3):
            self.act(do.TurnUntil("lamp"))
            if self.hands.sees_open():
                return
        raise AssertionError("the lamp does not show them open")

    def openings(self) -> dict[int, int]:
        """Divisions past the mark at which each lobe opens the contacts, by the mark's number."""
        found: dict[int, int] = {}
        wanted = 1 if self.paper.compensated else len(self.lobes())
        for _ in range(6 * len(self.lobes())):
            if len(found) == wanted:
                return found
            self.open_now()
            value, mark = self.hands.edge(), self.hands.mark()
            if value is not None and mark is not None and abs(value) < 30:
                found[mark] = value
        raise AssertionError("not every lobe is seen to open")

    def set_opening(self) -> None:
        marks, ratio = self.paper.marks, self.paper.cam.turns_per_rotor_turn
        step = instruments.DIVISIONS_MM[str(self.exercise.tray.straightedge)]
        for _ in range(8):
            found = self.openings()
            middle = (min(found.values()) + max(found.values())) / 2
            if middle == 0 and self.hands.clamps_tight:
                return
            self.act(bench.TightenClamps(False))
            if middle:
                self.act(do.TurnPlate(round(-math.degrees(math.atan(middle * step / marks.radius_mm)), 2)))
            self.act(bench.TightenClamps(True))
            assert ratio > 0
        raise AssertionError("the opening cannot be brought to the mark")

    def stand_at_mark(self) -> None:
        self.lay_edge()
        self.act(do.TurnUntil("mark"))
        assert self.hands.edge() == 0

    # ------------------------------------------------------------------ to the engine

    def to_the_engine(self) -> None:
        if self.exercise.tray.stop:
            self.find_dead_centre()
        if "timing" not in self.goals:
            return
        reads = {}
        for side in self.exercise.sides:
            self.go_to(side)
            self.act(do.ConnectLamp(True))
            self.open_up()
            reads[side] = self.read_timing()
            if "firing" in self.readings:
                self.act(do.WriteReading("firing", round(reads[side][0], 2)))
            if not reads[side][1]:
                self.mesh_anew()
                reads[side] = self.read_timing()
                assert reads[side][1]
            self.ground()
        moves = self.choose({side: r[0] for side, r in reads.items()})
        for side, move in moves.items():
            self.go_to(side)
            self.move(move)
        for side in self.exercise.sides:
            self.go_to(side)
            self.act(do.ConnectLamp(True))
            self.open_up()
            self.read_timing()
            self.ground()

    def find_dead_centre(self) -> None:
        for _ in range(4):
            try:
                self.act(do.FitStop(True))
                break
            except ValueError:
                self.act(do.TurnPropeller(100.0))
        for _ in range(2):  # once to find it, once to see that it is so
            assert "stop" in self.act(do.TurnUntil("stop", True))
            first = self.hands.disc()
            assert "stop" in self.act(do.TurnUntil("stop", False))
            zero = (true_tdc_from_stops(first, self.hands.disc()) + 180.0) % 360.0 - 180.0
            if "disc-zero" in self.readings and "written" not in self.corrected:
                self.act(do.WriteReading("disc-zero", round(zero, 3)))
                self.corrected.add("written")
            if abs(zero) > 0.13:
                self.act(do.TurnDisc(round(-zero, 3)))
        self.act(do.FitStop(False))

    def read_timing(self) -> tuple[float, bool]:
        """Disc at No. 1's opening, approached with rotation and taken three times; whether it is near compression."""
        wanted = self.wanted()
        if self.comes_up_on_compression(wanted):
            near = True
        else:  # not where it belongs: wherever the finger comes to No. 1
            self.first_cylinder_opens()
            near = abs(self.hands.disc() - wanted) < 60.0
            # Felt some way before dead centre.
            self.act(do.TurnPropeller(self.hands.disc() - 60.0))
            near = near and self.act(do.FeelCompression()).startswith("pressure")
        found = []
        for _ in range(3):
            self.act(do.TurnPropeller(-20.0))
            while not (self.hands.sees_open() and self.hands.finger() == 1):
                self.act(do.TurnUntil("lamp"))
            found.append(self.hands.disc())
            self.act(do.TurnPropeller(-6.0))
        self.act(do.TurnUntil("lamp"))
        ratio = self.exercise.installation.rotor_turns_per_crank_turn
        return sum(found) / len(found) + 0.09 / ratio, near

    def comes_up_on_compression(self, wanted: float) -> bool:
        """Bring No. 1 up on compression, and see whether the next spark is its own and comes about when it should."""
        for _ in range(2):
            self.act(do.TurnToReading(wanted + 12.0))
            if self.act(do.FeelCompression()).startswith("pressure"):
                break
        else:
            raise AssertionError("No. 1 never comes up on compression")
        self.open_now()
        return self.hands.finger() == 1 and abs(self.hands.disc() - wanted) < 60.0

    def first_cylinder_opens(self) -> None:
        for _ in range(40):
            self.open_now()
            if self.hands.finger() == 1:
                return
        raise AssertionError("the finger never comes to No. 1")

    def wanted(self, side: str | None = None) -> float:
        btdc = self.exercise.installation.engine.firing_btdc_deg
        return btdc.left if (side or self.hands.side) == "left" else btdc.right

    def choose(self, reads: dict[str, float]) -> dict[str, Move]:
        """The best move of each magneto; of two, the pair that keeps errors and difference smallest."""
        on = self.exercise.installation
        teeth, engine = on.coupling, on.engine
        options = {
            side: plan(
                teeth.magneto_teeth,
                teeth.drive_teeth,
                on.rotor_turns_per_crank_turn,
                round(btdc, 3),
                self.wanted(side),
                most=4,
            )
            for side, btdc in reads.items()
        }
        if len(options) == 1:
            return {side: moves[0] for side, moves in options.items()}
        best = min(
            ((a, b) for a in options["left"] for b in options["right"]),
            key=lambda m: max(
                abs(m[0].residual_deg) / engine.timing_tolerance_deg,
                abs(m[1].residual_deg) / engine.timing_tolerance_deg,
                abs(m[0].residual_deg - m[1].residual_deg) / engine.synchronising_tolerance_deg,
            ),
        )
        return {"left": best[0], "right": best[1]}

    def move(self, move: Move) -> None:
        self.act(bench.PaintMarks())
        if not (move.magneto_teeth or move.disc_teeth):
            return
        self.act(do.Nuts(False))
        for face, teeth in (("magneto", move.magneto_teeth), ("disc", move.disc_teeth)):
            for _ in range(abs(teeth)):
                self.act(do.MoveTooth(face, 1 if teeth > 0 else -1))
        self.act(do.Nuts(True))

    def mesh_anew(self) -> None:
        """Off with it; crank to the firing point on compression, rotor to No. 1's opening; on with it."""
        self.act(bench.PaintMarks())
        self.ground()
        self.act(bench.PullPlug(True))
        self.act(do.Nuts(False))
        self.act(do.Remove())
        for _ in range(3):
            self.act(do.TurnToReading(60.0))
            if self.act(do.FeelCompression()).startswith("pressure"):
                break
        self.act(do.TurnToReading(self.wanted()))
        self.act(bench.SlipPaper(True))
        self.act(bench.FitJumper(False))
        self.act(do.ConnectLamp(True))
        self.first_cylinder_opens()
        self.ground()
        self.act(do.Refit(by_marks=False))
        self.act(do.Nuts(True))
        self.act(bench.SlipPaper(False))
        self.act(bench.PullPlug(False))
        self.open_up()

    # ------------------------------------------------------------------ closing up

    def close_up(self) -> None:
        tray = self.exercise.tray
        if self.exercise.felt_drops is not None and "dry" in self.act(do.PressFelt()):
            self.act(do.OilFelt(self.exercise.felt_drops))
        if tray.lamp:
            self.act(do.ConnectLamp(False))
        if tray.straightedge is not None:
            self.act(do.LayStraightedge(False))
        if self.exercise.installation is None:
            return
        self.act(bench.SwitchIgnition(False))
        if tray.meter:
            self.act(bench.PullPlug(True))
            assert self.act(do.MeterLead()) == "ground"
        self.act(bench.PullPlug(False))
        self.act(bench.FitJumper(False))
        self.act(do.SparkPlugs(False))
        self.act(do.PlugLeads(True))
        self.act(do.LeaveAsIs("chocks"))
