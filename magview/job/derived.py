"""Values derived from a sheet's readings, never stored: dead centre, firing, the expected reading of the lamp."""

from __future__ import annotations

from dataclasses import dataclass
from math import atan2, degrees, hypot

from magview.bench.lamp import slack_deg
from magview.job.sheet import Job
from magview.job.stages import Setting
from magview.physics.engine.coupling import finest_shift_deg, rotor_shift_deg
from magview.physics.engine.dead_centre import disc_zero_error_deg, has_link_rod, link_rod_correction_deg
from magview.physics.engine.lamp import Explanation, Foretold, explain, lamp_after_deg
from magview.spec.magneto import Magneto

READ_TWICE_DEG = 0.5
"""Error of lamp and disc read by hand, to either side [crank deg] (common practice)."""

OPENING_BY_HAND_DEG = 1.96 * 0.5 / 3**0.5
"""Expanded uncertainty of one opening by rule and straightedge, evenly likely within 0.5° [rotor deg]
(common practice; JCGM 100:2008, 4.3.7)."""

_HAIR = 1e-9


def side_of(job: Job) -> str:
    """Place of the magneto on its engine; a single one stands in the left one's."""
    return "right" if job.magneto.position == "right" else "left"


def sides(job: Job) -> tuple[str, ...]:
    """The magnetos the engine has: both, or the left one's place for a single."""
    return ("left",) if job.magneto.position == "single" else ("left", "right")


def dead_centre_deg(job: Job) -> float | None:
    """Reading of the disc at the timing cylinder's true top dead centre [deg]; None if that is not known.

    Halfway between the stops, a link rod there allowed for; a sheet that does not say which engine is taken to have
    none.
    """
    first, second = job.dead_centre.first_stop_deg, job.dead_centre.second_stop_deg
    if first is None or second is None:
        return None
    engine = None if job.installation is None else job.installation.engine
    try:
        return disc_zero_error_deg(engine, first, second)
    except ValueError:
        return None


def link_rod_deg(job: Job) -> float | None:
    """Correction of the disc's reading at top dead centre for the link rod [deg]; None without one."""
    first, second = job.dead_centre.first_stop_deg, job.dead_centre.second_stop_deg
    if job.installation is None or first is None or second is None or dead_centre_deg(job) is None:
        return None
    engine = job.installation.engine
    return link_rod_correction_deg(engine, first, second) if has_link_rod(engine) else None


def disc_zero_deg(job: Job) -> float:
    """Correction of every reading before top dead centre [crank deg]: 0 where the disc was set to zero.

    The disc counts what is before its zero as negative. At the true top it reads z; the reading R before its own zero
    is then R + z before the true top.
    """
    return (dead_centre_deg(job) or 0.0) if job.dead_centre.disc_reset is False else 0.0


def true_btdc_deg(job: Job, stage: str, field: str) -> float | None:
    """A reading of the disc, counted from the true top dead centre [crank deg]; None where it was not read."""
    value: float | None = getattr(getattr(job, stage), field)
    return None if value is None else value + disc_zero_deg(job)


def timing_difference_deg(job: Job) -> float | None:
    """Left error less right error [crank deg], a wanted stagger taken off; None unless both were read."""
    stage, limits = job.synchronising, job.limits
    if stage.left_btdc_deg is None or stage.right_btdc_deg is None:
        return None
    stagger = 0.0
    if limits.left_btdc_deg is not None and limits.right_btdc_deg is not None:
        stagger = limits.left_btdc_deg - limits.right_btdc_deg
    return stage.left_btdc_deg - stage.right_btdc_deg - stagger


def drop_difference_rpm(job: Job) -> float | None:
    """Difference of the two drops [rpm], ≥ 0; None unless both were read."""
    left, right = job.ground_run.drop_left_rpm, job.ground_run.drop_right_rpm
    return None if left is None or right is None else abs(left - right)


# ---------------------------------------------------------------------- the chain from contacts to crank


@dataclass(frozen=True)
class LampDue:
    """A reading of the lamp and what it should be, by the reading before and what was changed since."""

    should_btdc_deg: float
    reads_btdc_deg: float
    """Both as the disc says, uncorrected [crank deg BTDC]."""
    opening_change_deg: float
    """Delay of the opening since the lamp was read before [rotor deg]."""
    slack_deg: float
    """Largest difference of the two [crank deg]."""

    @property
    def contradicts(self) -> bool:
        """Whether the reading is further from what it should be than readings can be out."""
        return abs(self.reads_btdc_deg - self.should_btdc_deg) > self.slack_deg + _HAIR


def opening_error_deg(job: Job, setting: Setting) -> float | None:
    """Lateness of the opening [rotor deg]: as read, or else by the straightedge at the rim; None if neither."""
    if setting.opening_error_deg is not None:
        return setting.opening_error_deg
    magneto, offset = job.described, setting.mark_offset_mm
    return None if magneto is None or offset is None else _at_the_rotor_deg(magneto, offset)


def opening_limit_deg(job: Job) -> float | None:
    """Tolerance of an opening [rotor deg]: the tolerance at the rim, at the marks' radius."""
    magneto, tolerance = job.described, job.limits.mark_tolerance_mm
    return None if magneto is None or tolerance is None else _at_the_rotor_deg(magneto, tolerance)


def _at_the_rotor_deg(magneto: Magneto, offset_mm: float) -> float:
    """Rotor angle of an offset at the rim marks [deg]."""
    return degrees(atan2(offset_mm, magneto.marks.radius_mm)) / magneto.cam.turns_per_rotor_turn


def opening_change_deg(job: Job) -> float | None:
    """Delay of the opening as left against as found [rotor deg]; None where either was not read."""
    found, left = opening_error_deg(job, job.as_found), opening_error_deg(job, job.internal_timing)
    return None if found is None or left is None else left - found


def lamp_should_read_deg(job: Job) -> float | None:
    """Expected reading of the lamp with the setting as left and the teeth as found [crank deg BTDC].

    As the disc says, like the reading as found that it follows from; None where something is not known.
    """
    found, change = getattr(job.as_found, f"{side_of(job)}_btdc_deg"), opening_change_deg(job)
    if job.installation is None or found is None or change is None:
        return None
    return lamp_after_deg(found, job.installation.rotor_turns_per_crank_turn, opening_change_deg=change)


def lamp_out_of_date(job: Job) -> LampDue | None:
    """A tooth shift's first reading of the lamp that cannot have been taken after the setting; None if it can.

    It contradicts what the lamp should read, or is the very figure read as found although the setting moved it.
    """
    shift, should, change = job.tooth_shift, lamp_should_read_deg(job), opening_change_deg(job)
    reads = shift.reads_btdc_deg
    if should is None or change is None or reads is None or shift.side != side_of(job):
        return None
    due = LampDue(should, reads, change, _slack_deg(job))
    found = getattr(job.as_found, f"{side_of(job)}_btdc_deg")
    copied = reads == found and abs(should - found) > READ_TWICE_DEG
    return due if due.contradicts or copied else None


def both_contradict(job: Job) -> LampDue | None:
    """This magneto's last reading where it contradicts the one before it; None where they go together.

    The one before is the reading after the teeth were moved, else the one before that, else what follows from the
    reading as found.
    """
    if job.installation is None:
        return None
    last = getattr(job.synchronising, f"{side_of(job)}_btdc_deg")
    shift, should = job.tooth_shift, lamp_should_read_deg(job)
    if shift.state != "skipped" and shift.side == side_of(job):
        if shift.result_btdc_deg is not None:
            should = shift.result_btdc_deg
        elif shift.reads_btdc_deg is not None:
            return None  # the teeth are still to be moved
    if last is None or should is None:
        return None
    due = LampDue(should, last, opening_change_deg(job) or 0.0, _slack_deg(job))
    return due if due.contradicts else None


def _slack_deg(job: Job) -> float:
    """Largest difference of what the lamp should read and what it reads [crank deg].

    Two readings of the lamp and two of the opening, each with the uncertainty stated on the sheet; where none is
    stated, as the lamp's on the bench, and the opening's by rule and straightedge.
    """
    assert job.installation is not None
    lamp = getattr(job.synchronising.uncertainty, f"{side_of(job)}_btdc_deg")
    opening = job.internal_timing.uncertainty.opening_error_deg
    both = slack_deg(job.installation) if lamp is None else 2**0.5 * lamp.expanded_uncertainty
    once = OPENING_BY_HAND_DEG if opening is None else opening.expanded_uncertainty
    return hypot(both, 2**0.5 * once / job.installation.rotor_turns_per_crank_turn)


@dataclass(frozen=True)
class TeethMoved:
    """Effect that the teeth moved should have had, and the effect by the lamp [crank deg BTDC, as the disc says]."""

    expected_btdc_deg: float
    fires_btdc_deg: float
    likeliest: Explanation
    """The likeliest cause."""


def teeth_contradict(job: Job) -> TeethMoved | None:
    """Teeth moved that do not account for the readings before and after; None where they do, or it is not known.

    What a reading may be off by is the timing's tolerance; the teeth themselves, by one step of the coupling.
    """
    shift, installation = job.tooth_shift, job.installation
    before, after = shift.reads_btdc_deg, shift.result_btdc_deg
    i, j = shift.moved_magneto_teeth, shift.moved_disc_teeth
    if (
        installation is None
        or installation.coupling is None
        or before is None
        or after is None
        or i is None
        or j is None
    ):
        return None
    teeth, ratio = installation.coupling, installation.rotor_turns_per_crank_turn
    turned = rotor_shift_deg(teeth.magneto_teeth, teeth.drive_teeth, i, j)
    expected = lamp_after_deg(before, ratio, rotor_shift_deg=turned)
    step = finest_shift_deg(teeth.magneto_teeth, teeth.drive_teeth) / ratio
    slack = (job.limits.timing_tolerance_deg or 0.0) + step
    if abs(after - expected) <= slack + _HAIR:
        return None
    acts = Foretold(expected, i, j)
    return TeethMoved(expected, after, explain(after, acts, step, teeth.magneto_teeth, teeth.drive_teeth, ratio)[0])
