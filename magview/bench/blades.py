"""Sets of feeler blades, and how thick some of them are together."""

from __future__ import annotations

from magview.spec.base import SpecError
from magview.spec.language import tr
from magview.spec.units import MM_PER_THOU

JOINT_MM = 0.002
"""Oil and air between two stacked blades."""

MOST_BLADES = 3
"""Blades that one hand holds together."""

BLADES: dict[str, tuple[float, ...]] = {
    "inch": (1.5, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 13, 15, 18, 20, 22, 25),
    "metric": (
        0.03, 0.04, 0.05, 0.06, 0.07, 0.08, 0.09, 0.1, 0.15, 0.2, 0.25, 0.26, 0.3, 0.32, 0.35, 0.36, 0.4, 0.45, 0.5,
        0.6, 0.7,
    ),
}  # fmt: skip
"""Blades of a set as they are marked: thousandths of an inch; millimetres. Some are there to prove shipped limits."""


def thickness_mm(kind: str, stack: tuple[float, ...]) -> float:
    """Thickness of blades held together [mm]. Raises SpecError for blades the set does not have."""
    if kind not in BLADES:
        raise SpecError(
            tr("“{kind}” is not a set of blades; there are {known}", kind=kind[:40], known=", ".join(BLADES))
        )
    if not 1 <= len(stack) <= MOST_BLADES:
        raise SpecError(
            tr(
                "{blades} blades cannot be held together; take 1 to {most}",
                blades=len(stack),
                most=MOST_BLADES,
            )
        )
    left = list(BLADES[kind])
    for blade in stack:
        if blade not in left:
            raise SpecError(tr("the {kind} set has no blade {blade} left to take", kind=kind, blade=blade))
        left.remove(blade)
    unit = MM_PER_THOU if kind == "inch" else 1.0
    return sum(stack) * unit + JOINT_MM * (len(stack) - 1)
