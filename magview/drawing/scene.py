"""Pictures as values: groups of pieces in millimetres, words, names to place, measures, and places for hands.

A scene is a value without Qt and without colours. Pieces are kept and drawn again where only their group turns, so
whoever draws a scene may keep what it made of them. Bearings are degrees clockwise from the top; y points up.
"""

from __future__ import annotations

import math
from collections.abc import Iterable, Sequence
from dataclasses import dataclass, field
from typing import Literal

import numpy as np

from magview.drawing.shapes import Array, Point

Layer = Literal["ground", "plate", "moving"]
"""Ground stands still for one magneto, the plate's layer for one setting; what moves is drawn for every frame."""

Corner = Literal["top-left", "top-right", "bottom-left", "bottom-right"]
Value = Literal["rotor_deg", "backplate_deg", "screw_deg"]


@dataclass(frozen=True)
class Options:
    """Choices for drawing a picture."""

    numbers: bool = True
    """Whether true numbers may stand in it; in practice not."""
    inches: bool = False
    names: bool = True
    """Whether the parts are named where there is room."""
    named: frozenset[str] | None = None
    """The only parts to be named; None: all that there is room for."""
    hovering: str = ""
    """The part the pointer is over or the hand holds: it is named wherever it is, and lit up."""
    in_hand: str = ""
    """The part that keys and wheel turn: it is outlined."""
    hidden: frozenset[str] = frozenset()
    """Parts that are not there, or must not be seen yet."""
    still_motion: bool = False
    """Reduced motion: nothing is drawn that only tells of moving, such as chevrons along the rotor."""
    mirrored: bool = False
    """Seen through from the other end."""
    remark: str = ""
    """A line under the title, for what no part shows."""
    eye_deg: float = 0.0
    """From where the straightedge is looked at [deg]: 0 square on, positive from behind it, negative from ahead."""


@dataclass(frozen=True)
class Gradient:
    """Light on a round thing: roles at shares of a radius about a centre, in the piece's own millimetres."""

    centre: Point
    radius_mm: float
    stops: tuple[tuple[float, str], ...]


@dataclass(frozen=True)
class LinearGradient:
    """Light on a drum: roles and how far they cover, at shares of the way between two points [mm] of the piece."""

    start: Point
    end: Point
    stops: tuple[tuple[float, str, float], ...]


@dataclass(frozen=True)
class Hatch:
    """Lines along bearings [deg], a pitch [mm] apart, in the colour of the piece's line."""

    bearings: tuple[float, ...]
    pitch_mm: float
    alpha: float = 0.4


@dataclass(frozen=True)
class Style:
    """Look of a piece, in roles that a theme gives colours to; an empty role is not drawn."""

    fill: str = ""
    line: str = ""
    width_px: float = 1.0
    dash: tuple[float, ...] = ()
    """Lengths of strokes and spaces in widths of the line."""
    fill_alpha: float = 1.0
    line_alpha: float = 1.0
    gradient: Gradient | LinearGradient | None = None
    hatch: Hatch | None = None


@dataclass(frozen=True, eq=False)
class Piece:
    """Outlines (n, 2) [mm] of one part, filled by the odd-even rule; kept as long as nothing but its group moves."""

    part: str
    outlines: tuple[Array, ...]
    style: Style
    closed: bool = True


@dataclass(frozen=True)
class Turn:
    """A turn [deg clockwise] about a point [mm]."""

    bearing_deg: float
    about: Point = (0.0, 0.0)


@dataclass(frozen=True, eq=False)
class Carrier:
    """Several turns made one."""

    turn: Array
    shift: Array

    @classmethod
    def of(cls, turns: Iterable[Turn]) -> Carrier:
        """Each turn in order."""
        turn, shift = np.eye(2), np.zeros(2)
        for one in turns:
            b = math.radians(one.bearing_deg)
            c, s = math.cos(b), math.sin(b)
            step, about = np.array([[c, s], [-s, c]]), np.array(one.about)
            turn, shift = step @ turn, step @ (shift - about) + about
        return cls(turn, shift)

    def put(self, points: Array) -> Array:
        """Points (…, 2) [mm] where the turns carry them."""
        return np.asarray(points @ self.turn.T + self.shift)


@dataclass(frozen=True, eq=False)
class Group:
    """Pieces that move together: turned by each turn in order, cut off at the clip, which does not turn."""

    name: str
    layer: Layer
    pieces: tuple[Piece, ...]
    turns: tuple[Turn, ...] = ()
    clip: Array | None = None

    def put(self, points: Array) -> Array:
        """Points (…, 2) of the group [mm] where they stand in the picture [mm]."""
        return Carrier.of(self.turns).put(points)


@dataclass(frozen=True)
class Word:
    """A word at a place of the picture [mm], always upright unless it is turned with the part that it is on."""

    text: str
    at: Point
    role: str = "ink"
    size: float = 1.0
    """In ems of the picture's type."""
    bold: bool = False
    align: Literal["left", "middle", "right"] = "middle"
    layer: Layer = "ground"
    disc: str = ""
    """Role of a disc behind the word; "" for none."""
    paper: bool = False
    """Whether the paper's colour lies behind it, so that it can be read over a part."""
    bearing_deg: float = 0.0
    room_mm: float = float("inf")
    """The word is left out where it is longer than this."""
    shorter: str = ""
    """Written instead where the word is too long for its room."""
    height_mm: float = float("inf")
    """Large type is written no higher than this: what the word stands on is no larger."""
    margin: Literal["", "left", "right"] = ""
    """Stands at this side of the picture, with a leader to its place; "" for a word at its place."""
    leads_to: Point | None = None
    """End of a thin line from the word [mm]; drawn only if the word is written."""
    up_em: float = 0.0
    """Height of a word at the side above the lower edge."""


@dataclass(frozen=True)
class CornerLine:
    """A line of words in a corner of the picture; the first of its wordings that fits is written."""

    wordings: tuple[str, ...]
    role: str = "ink"
    size: float = 1.0
    bold: bool = False


@dataclass(frozen=True)
class CornerWords:
    """Lines in a corner, from the top down."""

    corner: Corner
    lines: tuple[CornerLine, ...]


@dataclass(frozen=True)
class Name:
    """A part's name, or a reading at a part, to be placed near it with a leader line."""

    part: str
    text: str
    widest: str
    """The widest text that may stand there: the place is kept for it, so that readings do not jump."""
    places: tuple[Point, ...]
    """Points that its leader may end at when it is placed [mm], the best first."""
    over: frozenset[str] = frozenset()
    """Parts that its leader may cross: what the part sits on."""
    at_worst: frozenset[str] = frozenset()
    """Parts that it may cross besides where there is no other way."""
    role: str = "ink"
    bold: bool = False
    leader: bool = True
    reach_em: float = 9.0
    """Greatest distance from its part."""


@dataclass(frozen=True, eq=False)
class Obstacle:
    """Area that names keep out of (n, 2) [mm]. Leaders cross it on their way to its part, or if it is of none."""

    part: str
    outline: Array


@dataclass(frozen=True, eq=False)
class Plan:
    """Layout that the places of names depend on; the same object as long as they are to stay where they are."""

    names: tuple[Name, ...]
    """Most important first: where there is no room, the last are left out."""
    obstacles: tuple[Obstacle, ...]
    within_mm: float
    """Names stand within this radius about the picture's zero."""


@dataclass(frozen=True)
class Measure:
    """A length drawn as an arrow between two points [mm] with its words."""

    name: str
    start: Point
    end: Point
    text: str
    role: str
    shows_mm: float
    """The true length that it shows; drawn `factor` times as long."""
    factor: float = 1.0
    both_heads: bool = True
    width_px: float = 1.4
    words_at: Point | None = None
    """Places of the words; the middle if there is no other. They are left out where the text is empty."""
    align: Literal["left", "middle", "right"] = "middle"
    """Alignment of its words with that place."""
    shorter: str = ""
    """Written instead where there is no room for the words."""
    witnesses: tuple[tuple[Point, Point], ...] = ()
    """Thin lines that join its ends to what is measured."""
    witness_role: str = "hair"

    @property
    def drawn_mm(self) -> float:
        """Length as drawn."""
        return float(np.hypot(self.end[0] - self.start[0], self.end[1] - self.start[1]))


@dataclass(frozen=True)
class Term:
    """A number of a sum: its sign, itself, and what it is."""

    sign: str
    text: str
    meanings: tuple[str, ...]
    """From the longest to the shortest; the picture takes the longest that fits for all terms."""
    role: str


@dataclass(frozen=True, eq=False)
class Hand:
    """Area by which a part can be taken hold of; on screen never smaller than a finger's target."""

    part: str
    value: Value
    """Part of the bench that it turns."""
    outline: Array
    """Its present outline (n, 2) [mm]."""
    centre: Point
    """Centre that it turns about [mm]."""
    per_bearing: float
    """Change of the value for each degree the hand goes round, clockwise [deg]."""


@dataclass(frozen=True, eq=False)
class Glass:
    """A round glass in a corner: a small scene about its own zero, `half_mm` from there to the rim of the glass."""

    corner: Corner
    scene: Scene
    half_mm: float
    least_px: float
    share: float
    """Radius as a share of the shorter side, where that is more than the least."""
    above_em: float = 0.0
    """Height above the lower edge that is kept besides."""
    tells_factor: bool = True
    """Whether its factor is written in it."""


@dataclass(frozen=True, eq=False)
class Scene:
    """A whole picture."""

    name: str
    box: tuple[float, float, float, float]
    """Left, bottom, right, top [mm] of what must be seen."""
    groups: tuple[Group, ...]
    words: tuple[Word, ...] = ()
    corners: tuple[CornerWords, ...] = ()
    plan: Plan | None = None
    tips: dict[str, tuple[Point, ...]] = field(default_factory=dict)
    """Points that each name of the plan may have now [mm], in the order of its places."""
    readings: dict[str, tuple[str, str]] = field(default_factory=dict)
    """Text and role now of names that are readings."""
    measures: tuple[Measure, ...] = ()
    total: tuple[Term, ...] = ()
    """The sum along the lower edge."""
    hands: tuple[Hand, ...] = ()
    glasses: tuple[Glass, ...] = ()
    margins_em: tuple[float, float] = (0.0, 0.0)
    """Room above and below the box."""
    mirrored: bool = False
    """Whether it is seen from behind: left and right change places, words do not."""
    round_mm: float = 0.0
    """Radius of the round middle that words in the corners keep off; 0 for none."""
    assumed: str = ""
    """Written across the picture where its proportions are not the file's."""
    lit: str = ""
    """The part that is lit up."""
    in_hand: str = ""
    """The part that is outlined because keys and wheel turn it."""
    description: str = ""
    """The picture in words, for who cannot see it."""

    def group(self, name: str) -> Group:
        """A group by its name."""
        return next(group for group in self.groups if group.name == name)


@dataclass(frozen=True)
class Frame:
    """From a scene's millimetres to a picture's pixels, y down."""

    scale: float
    left: float
    top: float
    mirrored: bool = False

    def of(self, points: Array) -> Array:
        """Points (…, 2) [mm] in pixels."""
        side = -self.scale if self.mirrored else self.scale
        return np.stack([self.left + side * points[..., 0], self.top - self.scale * points[..., 1]], axis=-1)

    def at(self, point: Point) -> Point:
        """One point [mm] in pixels."""
        side = -self.scale if self.mirrored else self.scale
        return self.left + side * point[0], self.top - self.scale * point[1]

    def back(self, x: float, y: float) -> Point:
        """A pixel's place in the picture [mm]."""
        side = -self.scale if self.mirrored else self.scale
        return (x - self.left) / side, (self.top - y) / self.scale


EDGE_PX = 12.0
"""From a picture's edge to the words in its corners."""


def frame_of(scene: Scene, width: float, height: float, em: float) -> Frame:
    """The largest frame in which the whole scene fits a picture [px] whose type is an em [px] high."""
    x0, y0, x1, y1 = scene.box
    above, below = (share * em for share in scene.margins_em)
    scale = min(width / (x1 - x0), (height - above - below) / (y1 - y0))
    if scene.round_mm:
        for glass in scene.glasses:  # a pane that is nearly square leaves its corner for the glass
            radius = glass_radius(glass, width, height)
            away = np.hypot(width / 2 - radius - 10.0, height / 2 - radius - 10.0) - radius - 6.0
            scale = min(scale, float(away) / scene.round_mm)
    middle_y = above + (height - above - below) / 2
    side = -scale if scene.mirrored else scale
    return Frame(scale, width / 2 - side * (x0 + x1) / 2, middle_y + scale * (y0 + y1) / 2, scene.mirrored)


def glass_radius(glass: Glass, width: float, height: float) -> float:
    """Radius of a glass in a picture [px]."""
    return max(glass.least_px, glass.share * min(width, height))


LEAST_TARGET_PX = 24.0
"""A hand's target is never less across."""


def hand_at(scene: Scene, at: Point, pixels_per_mm: float) -> Hand | None:
    """The hand whose target is under a point [mm]: the one drawn last, small ones widened to a finger's size."""
    for hand in reversed(scene.hands):
        middle = (hand.outline.min(axis=0) + hand.outline.max(axis=0)) / 2
        if inside(hand.outline, at) or np.hypot(*(middle - np.array(at))) * pixels_per_mm <= LEAST_TARGET_PX / 2:
            return hand
    return next((hand for hand in reversed(scene.hands) if _beside(hand.outline, at, pixels_per_mm)), None)


def _beside(outline: Array, at: Point, pixels_per_mm: float) -> bool:
    """Whether a point is so near a narrow outline that it would lie in one as broad as a finger's target."""
    edges = np.roll(outline, -1, axis=0) - outline
    area = abs(float(np.sum(outline[:, 0] * edges[:, 1] - outline[:, 1] * edges[:, 0]))) / 2
    breadth = 2 * area / float(np.hypot(*edges.T).sum())  # of a band
    near = float(np.hypot(*(outline - np.array(at)).T).min())
    return near * pixels_per_mm <= (LEAST_TARGET_PX - breadth * pixels_per_mm) / 2


def inside(outline: Array, at: Point) -> bool:
    """Whether a point lies in a closed outline (n, 2)."""
    x, y = at
    x0, y0 = outline[:, 0], outline[:, 1]
    x1, y1 = np.roll(x0, -1), np.roll(y0, -1)
    crosses = (y0 > y) != (y1 > y)
    with np.errstate(divide="ignore", invalid="ignore"):
        where = x0 + (y - y0) * (x1 - x0) / (y1 - y0)
    return bool(np.count_nonzero(crosses & (x < where)) % 2)


def pieces_of(scene: Scene, part: str) -> Sequence[tuple[Group, Piece]]:
    """All pieces of a part, with their groups."""
    return [(group, piece) for group in scene.groups for piece in group.pieces if piece.part == part]
