"""Places of parts at an earlier moment, as hollow dashed outlines over a scene of now."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import replace
from weakref import WeakKeyDictionary

import numpy as np

from magview.drawing.scene import Group, Piece, Scene, Style

_MECHANISM = frozenset({"cam", "heel", "breaker arm", "contacts", "contact screw", "bracket"})

PARTS: dict[str, frozenset[str]] = {
    "breaker": _MECHANISM | {"straightedge"},
    "closeup": _MECHANISM | {"opening circle"},
    "coupling": frozenset({"painted mark"}),
    "shaft": frozenset({"heel", "breaker arm", "contacts", "finger", "paint"}),
    "rotor-cut": frozenset({"rotor"}),
}
"""The parts drawn as they stood, by the name of the scene: the others would hide them."""

HOLLOW = Style(line="second_ink", width_px=1.3, dash=(5.0, 3.0))

_hollow: WeakKeyDictionary[Piece, Piece] = WeakKeyDictionary()
"""The outline of each piece, kept as long as the piece is."""


def with_ghost(now: Scene, before: Scene) -> Scene:
    """A scene with hollow outlines of what stood elsewhere, or had another outline, in an earlier one."""
    ghosts = tuple(
        Group(f"{group.name}-before", "moving", pieces, group.turns, group.clip)
        for group in before.groups
        if (pieces := tuple(_moved(group, _same(now, group), PARTS.get(now.name, frozenset()))))
    )
    return replace(now, groups=(*now.groups, *ghosts))


def _same(scene: Scene, group: Group) -> Group | None:
    return next((other for other in scene.groups if other.name == group.name), None)


def _moved(before: Group, now: Group | None, parts: frozenset[str]) -> Iterator[Piece]:
    stands = now is not None and now.turns == before.turns
    for piece in before.pieces:
        told = piece.part in parts and piece.closed and piece.style.line
        if told and not (stands and now is not None and any(_alike(piece, other) for other in now.pieces)):
            yield _outline(piece)


def _alike(one: Piece, other: Piece) -> bool:
    return one is other or (
        one.part == other.part
        and len(one.outlines) == len(other.outlines)
        and all(np.array_equal(a, b) for a, b in zip(one.outlines, other.outlines, strict=True))
    )


def _outline(piece: Piece) -> Piece:
    hollow = _hollow.get(piece)
    if hollow is None:
        hollow = _hollow[piece] = Piece("", piece.outlines, HOLLOW)
    return hollow
