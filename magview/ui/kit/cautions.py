"""The cautions that stand wherever hands are sent to a magneto."""

from __future__ import annotations

from magview.spec.language import marked

CAUTION = marked(
    "Training and planning aid with invented magnetos. Treat the propeller as live: fuel off, mixture cut off, "
    "throttle closed, switch off, each switch lead grounded and proved, plugs out, hanging leads grounded, wheels "
    "chocked. Plugs out alone ends no danger. The maker's current manual and local rules govern; work on a certified "
    "aircraft is done or released by a licensed person."
)
