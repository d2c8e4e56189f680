"""The plate of a magneto of known shape, for tests of trials."""

from __future__ import annotations

from magview.physics.cam.setting import InternalTiming
from tests.magnetos import build


def plate_at(timing: InternalTiming, gap: float) -> float:
    """Where the plate stands when lobe 1 opens at the E-gap with this gap, out of any slot too."""
    wide = timing.magneto.model_copy(
        update={
            "backplate": timing.magneto.backplate.model_copy(update={"range_deg": (-300.0, 300.0)}),
            "contact_screw": build(
                contact_screw={
                    "kind": "threaded",
                    "lead_mm": 100.0,
                    "range_deg": (-3000.0, 3000.0),
                    "positive_is_clockwise": True,
                }
            ).contact_screw,
        }
    )
    found = InternalTiming(wide).adjust(gap)
    assert found.reachable, found.obstacles
    return found.backplate_deg
