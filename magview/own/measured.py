"""Fields filled in one go: from a traced lift, from trials on the bench, or worked out from other fields."""

from __future__ import annotations

import math
from collections.abc import Sequence

from magview.forms.entry import Value
from magview.own.drafts import OWN, Draft, Note, Own, check, in_words, referred, with_note, with_value
from magview.physics.engine.coupling import speed_ratio
from magview.physics.trials.flank_fit import fit_flank, fitted_magneto
from magview.physics.trials.trial import ReadingErrors, Trial
from magview.spec.base import SpecError
from magview.spec.cam import LawProfile, MeasuredProfile
from magview.spec.engine import Engine, Installation
from magview.spec.files import format_of, validate
from magview.spec.language import marked, tr, tr_n
from magview.spec.library import DEFAULT_MAGNETO, find_magneto
from magview.spec.magneto import Magneto
from magview.spec.sources import Origin

WORKED_OUT: dict[str, str] = {
    "cam.lobe_peaks_deg": marked("evenly spaced, one a spark of the rotor's turns"),
    "cam.turns_per_rotor_turn": marked("poles over lobes, for a spark at every pole"),
    "rotor_turns_per_crank_turn": marked("cylinders over twice the poles"),
    "articulation.link_rod_mm": marked("connecting rod less the knuckle pins' radius"),
}
"""Entries that follow from others, and how."""


def with_lift(draft: Draft, profile: MeasuredProfile, note: str) -> Draft:
    """The draft with its lift as traced; what was drawn by a law stays behind it, should it be wanted again."""
    return _filled(
        draft,
        {
            "cam.profile.kind": "measured",
            "cam.profile.angle_deg": profile.angle_deg,
            "cam.profile.contact_lift_mm": profile.contact_lift_mm,
        },
        "measured",
        note,
    )


def lift_base(own: Own) -> Magneto:
    """Magneto for reading a table of lift: the one drafted, or while that is not complete one with a single lobe
    and hardly any gap, so that whatever was traced goes with it."""
    item = check(own, "magneto").item
    if isinstance(item, Magneto):
        return item
    traced = find_magneto("traced-six")
    turns = own.magneto.values.get("cam.turns_per_rotor_turn", 1.0)
    if not isinstance(turns, float | int) or not 0.01 <= turns <= 10.0:
        turns = 1.0
    arm = own.magneto.values.get("breaker.contact_arm_mm")
    heel = own.magneto.values.get("breaker.heel_arm_mm")
    arms = {"contact_arm_mm": arm, "heel_arm_mm": heel} if _length(arm) and _length(heel) else {}
    return traced.model_copy(
        update={
            "cam": traced.cam.model_copy(update={"lobe_peaks_deg": (0.0,), "turns_per_rotor_turn": float(turns)}),
            "breaker": traced.breaker.model_copy(update=arms),
            "designed_setting": traced.designed_setting.model_copy(update={"gap_mm": 0.001}),
        }
    )


def _length(value: Value | None) -> bool:
    return isinstance(value, int | float) and 0.001 <= value <= 1000.0


def with_trials(own: Own, trials: Sequence[Trial], errors: ReadingErrors | None = None) -> Draft:
    """The magneto's draft with lift, rise and setting as trials, read so closely, tell them.

    Raises SpecError while the magneto is not complete, where there are no trials, or where no magneto fits them.
    """
    if not trials:
        raise SpecError(tr("there are no trials on the bench: note some on its page Trials first"))
    item = check(own, "magneto").item
    if not isinstance(item, Magneto):
        raise SpecError(tr("trials correct a complete magneto: begin from a shipped one and fill in what is known"))
    try:
        fitted = fitted_magneto(fit_flank(item, trials, errors))
    except ValueError as error:
        raise SpecError(in_words("magneto", str(error))) from error
    profile, designed = fitted.cam.profile, fitted.designed_setting
    found: dict[str, Value] = {
        "designed_setting.backplate_deg": designed.backplate_deg,
        "designed_setting.gap_mm": designed.gap_mm,
    }
    if isinstance(profile, LawProfile):
        found |= {"cam.profile.lift_mm": profile.lift_mm, "cam.profile.rise_deg": profile.rise_deg}
    else:
        found |= {
            "cam.profile.angle_deg": profile.angle_deg,
            "cam.profile.contact_lift_mm": profile.contact_lift_mm,
        }
    count = len(trials)
    note = tr_n("one trial on the bench", "{count} trials on the bench", count=count)
    return _filled(own.magneto, found, "measured", note)


def with_worked_out(own: Own, draft: Draft, path: str) -> Draft:
    """The draft with an entry worked out from others. Raises SpecError, saying which must be given first."""
    return _filled(draft, {path: _worked_out(own, draft, path)}, "worked-out", tr(WORKED_OUT[path]))


def _worked_out(own: Own, draft: Draft, path: str) -> Value:
    match path:
        case "cam.turns_per_rotor_turn":
            poles, peaks = draft.values.get("poles"), draft.values.get("cam.lobe_peaks_deg")
            if not isinstance(poles, int) or not isinstance(peaks, tuple) or not peaks:
                raise SpecError(tr("give the poles of the rotor and the tops of the lobes first"))
            return poles / len(peaks)
        case "cam.lobe_peaks_deg":
            return _even_lobes(draft)
        case "articulation.link_rod_mm":
            rod, knuckle = draft.values.get("rod_mm"), draft.values.get("articulation.knuckle_radius_mm")
            if not isinstance(rod, float | int) or not isinstance(knuckle, float | int):
                raise SpecError(tr("give the connecting rod and the knuckle pins' radius first"))
            return rod - knuckle
        case _:
            return _drive_ratio(own)


def _even_lobes(draft: Draft) -> Value:
    poles, turns = draft.values.get("poles"), draft.values.get("cam.turns_per_rotor_turn", 1.0)
    if not isinstance(poles, int) or not isinstance(turns, float | int) or not turns > 0:
        raise SpecError(tr("give the poles of the rotor and the cam's turns per rotor turn first"))
    lobes = poles / turns
    if not (math.isfinite(lobes) and abs(lobes - round(lobes)) < 1e-6 and 1 <= round(lobes) <= 36):
        raise SpecError(
            tr("poles over the cam's turns per rotor turn is {lobes}; it must be a whole number from 1 to 36",
               lobes=f"{lobes:.4g}")
        )  # fmt: skip
    return tuple(i * 360.0 / round(lobes) for i in range(round(lobes)))


def _drive_ratio(own: Own) -> Value:
    names = own.installation.values
    magneto = referred(own, "magneto", str(names.get("magneto", OWN)))
    engine = referred(own, "engine", str(names.get("engine", OWN)))
    assert isinstance(magneto, Magneto) and isinstance(engine, Engine)
    return float(speed_ratio(engine.cylinders, magneto.poles))


def _filled(draft: Draft, values: dict[str, Value], origin: Origin, note: str) -> Draft:
    for path, value in values.items():
        draft = with_value(draft, path, value)
        draft = with_note(draft, path.partition("[")[0], Note(origin, note[:200]))
    return draft


def on_an_engine(item: Engine | Installation) -> Installation:
    """Installation for a picture of an engine; a bare engine's has a shipped magneto and no vernier."""
    if isinstance(item, Installation):
        return item
    magneto = find_magneto(DEFAULT_MAGNETO)
    ratio = max(0.05, float(speed_ratio(item.cylinders, magneto.poles)))
    data = {
        "format": format_of(Installation),
        "magneto": magneto,
        "engine": item,
        "coupling": {"magneto_teeth": 1, "drive_teeth": 1},
        "rotor_turns_per_crank_turn": ratio,
        "position": "left",
    }
    return validate(Installation, data, item.name)
