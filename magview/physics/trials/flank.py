"""Lobe 1's rising flank as plate against gap, and a file's cam scaled in lift and rise (guide: theory-trials)."""

from __future__ import annotations

from typing import Any

import numpy as np
from numpy.typing import ArrayLike, NDArray
from pydantic import ValidationError

from magview.physics.cam.breaker import lift_curve
from magview.spec.base import SpecError
from magview.spec.cam import Cam, LawProfile, MeasuredProfile
from magview.spec.files import refusal, validate
from magview.spec.language import tr
from magview.spec.magneto import Magneto

Array = NDArray[np.float64]


class Flank:
    """Lobe 1 of a file, index not shifted: plate against gap. Raises SpecError for a cam that undercuts."""

    def __init__(self, magneto: Magneto) -> None:
        self.magneto = magneto
        condition, designed = magneto.condition, magneto.designed_setting
        # Past the cache: a fit looks at many curves, each of them once.
        self.curve = lift_curve.__wrapped__(magneto.cam.profile, magneto.breaker)
        top = self.curve.top_mm
        late = (condition.lobe_angle_error_deg or (0.0,))[0]
        self.scale = 1.0 + (condition.lobe_lift_error_mm or (0.0,))[0] / top
        opening = float(self.curve.before_top_deg(top - designed.gap_mm))
        self.late_deg = late
        """Lateness of lobe 1 by its error [cam deg]."""
        self.foot_deg = designed.backplate_deg - opening - late
        """Plate at which lobe 1 would open at its very top [deg]."""

    def gap_mm(self, plate_deg: ArrayLike) -> Array:
        """Gap [mm] at plates [deg], any shape: 0 on the dwell, the whole lift off the lobe."""
        before = np.asarray(plate_deg, dtype=float) - self.foot_deg
        return np.asarray(self.scale * (self.curve.top_mm - self.curve.lift_mm(-np.maximum(before, 0.0))))


def scaled_magneto(magneto: Magneto, lift_scale: float, rise_scale: float, **changes: Any) -> Magneto:
    """The file with its lobe's lift and rise scaled.

    Parameters
    ----------
    magneto : the file.
    lift_scale, rise_scale : factors of the profile's lift and of its rise [-].
    changes : other top-level parts to put in.

    Raises
    ------
    SpecError : no such magneto can be: lobes overlap, the arm does not reach, the lift is below the gap.
    """
    profile: LawProfile | MeasuredProfile = magneto.cam.profile
    parts: dict[str, Any]
    if isinstance(profile, LawProfile):
        parts = {"lift_mm": profile.lift_mm * lift_scale, "rise_deg": profile.rise_deg * rise_scale}
    else:
        parts = {
            "angle_deg": tuple(a * rise_scale if a < 0 else a for a in profile.angle_deg),
            "contact_lift_mm": tuple(s * lift_scale for s in profile.contact_lift_mm),
        }
    try:
        profile = type(profile).model_validate({**dict(profile), **parts})
        cam = Cam.model_validate({**dict(magneto.cam), "profile": profile})
    except ValidationError as error:
        raise SpecError(tr("the scaled cam cannot be: {reason}", reason=refusal(Cam, error))) from error
    return validate(Magneto, {**dict(magneto), **changes, "cam": cam}, tr("the scaled magneto"))
