"""Scenes as SVG text, for paper: black, white, light greys and hatching, so that black and white loses nothing.

Turns are worked into the points, so that any viewer shows the same, however little of SVG it knows.
"""

from __future__ import annotations

from collections.abc import Callable
from html import escape

from magview.drawing.scene import Frame, Group, Piece, Scene, Word
from magview.drawing.shapes import Array, hatching

_FILLS = {
    "rim": "#f2f2f2", "plate": "#ffffff", "bracket": "#e2e2e2", "steel": "#d8d8d8", "steel_high": "#efefef",
    "steel_low": "#bdbdbd", "lift": "#8c8c8c", "lift_fill": "#c4c4c4", "contact": "#000000", "ink": "#000000",
    "disc": "#e6e6e6", "core": "#d8d8d8", "case": "#f2f2f2", "good": "#c8c8c8", "paint": "#000000",
    "steel_line": "#000000", "planned": "#000000", "planned_fill": "#e6e6e6", "second_ink": "#000000",
    "bad": "#000000", "opening": "#000000",
}  # fmt: skip
"""Greys light enough for a copier; black for what is small; white for all others."""

_HATCHED = {"north": (45.0,), "south": (-45.0,), "drive": (-45.0,)}
"""Bearings of the lines that stand for a colour where the piece has none of its own [deg]."""

_FONT = "font-family=\"'DejaVu Sans', Verdana, sans-serif\""
_WIDE_EM = 0.6
"""Width of a letter on average; words are written smaller where they would not fit."""
_LEAST_SHARE = 26.0
"""A picture's half is so many pitches of its hatching wide."""


def stroked(
    d: str, width: float, *, fill: str = "none", colour: str = "#000000", dash: str = "", opacity: float = 1.0
) -> str:
    """A path of SVG, its line so wide [px]; `opacity` is of the fill."""
    dashed = f' stroke-dasharray="{dash}"' if dash else ""
    through = f' fill-opacity="{opacity:g}"' if opacity < 1.0 else ""
    return f'<path d="{d}" fill="{fill}"{through} stroke="{colour}" stroke-width="{width:g}"{dashed}/>\n'


def path(points: Array, closed: bool) -> str:
    """Points as the way of a path."""
    pairs = [f"{x:.2f} {y:.2f}" for x, y in points.tolist()]
    return f"M{pairs[0]}L{' '.join(pairs[1:])}{'Z' if closed else ''}"


def disc(x: float, y: float, radius: float, fill: str, colour: str = "none", width: float = 0.0) -> str:
    """A filled circle [px]."""
    line = f'stroke="{colour}" stroke-width="{width:g}"'
    return f'<circle cx="{x:.1f}" cy="{y:.1f}" r="{radius:g}" fill="{fill}" {line}/>\n'


def words(
    x: float, y: float, text: str, anchor: str = "start", size: float = 10.0, *,
    bold: bool = False, turned: float = 0.0, colour: str = "",
) -> str:  # fmt: skip
    """A line of text at a place [px], turned about it [deg clockwise]."""
    more = ' font-weight="bold"' if bold else ""
    more += f' transform="rotate({turned:.1f} {x:.1f} {y:.1f})"' if turned else ""
    more += f' fill="{colour}"' if colour else ""
    return (
        f'<text x="{x:.1f}" y="{y:.1f}" {_FONT} font-size="{size:g}" text-anchor="{anchor}"{more}>'
        f"{escape(text)}</text>\n"
    )


def scene_body(
    scene: Scene, frame: Frame, em: float, wanted: Callable[[Word], bool] = lambda word: not word.margin
) -> str:
    """The pieces of a scene from the back to the front, and those of its words that are wanted.

    `em`: size of usual type [px].
    """
    pitch = max(scene.box[2] - scene.box[0], scene.box[3] - scene.box[1]) / (2.0 * _LEAST_SHARE)
    text = ""
    for layer in ("ground", "plate", "moving"):
        for group in scene.groups:
            if group.layer == layer:
                text += "".join(_piece(piece, group, frame, pitch) for piece in group.pieces)
        text += "".join(_word(word, frame, em) for word in scene.words if word.layer == layer and wanted(word))
    return text


def _piece(piece: Piece, group: Group, frame: Frame, pitch: float) -> str:
    style = piece.style
    if "shadow" in (style.fill, style.line):
        return ""
    outline = "".join(path(frame.of(group.put(points)), piece.closed) for points in piece.outlines if len(points) > 1)
    if not outline:
        return ""
    role = style.fill or ("steel" if style.gradient is not None else "")
    fill = _FILLS.get(role, "#ffffff") if role and piece.closed else "none"
    colour = "none" if not style.line else "#808080" if style.line == "hair" else "#000000"
    dash = " ".join(f"{length * style.width_px:g}" for length in style.dash)
    # A screen's second line is thin, and a printer's thinner: it is drawn a little wider than a copier loses.
    text = stroked(
        outline, max(0.7, 0.85 * style.width_px) if style.line else 0.0, fill=fill, colour=colour, dash=dash,
        opacity=style.fill_alpha,
    )  # fmt: skip
    bearings, gap = (style.hatch.bearings, style.hatch.pitch_mm) if style.hatch else (_HATCHED.get(role, ()), pitch)
    for bearing in bearings:
        lines = hatching(piece.outlines, bearing, gap)
        marks = "".join(path(frame.of(group.put(line)), False) for line in lines)
        text += stroked(marks, 0.4) if marks else ""
    return text


def _word(word: Word, frame: Frame, em: float) -> str:
    x, y = frame.at(word.at)
    longest = word.room_mm * frame.scale / (_WIDE_EM * len(word.text))
    size = min(word.size * em, word.height_mm * frame.scale, longest)
    anchor = {"left": "start", "middle": "middle", "right": "end"}[word.align]
    behind, colour = "", "#ffffff" if word.disc else ""
    if word.disc or len(word.text) == 1:  # hatching would run through a letter
        behind = disc(x, y, 0.75 * size, "#000000" if word.disc else "#ffffff")
    bearing = word.bearing_deg % 360.0
    return behind + words(
        x, y + 0.36 * size, word.text, anchor, size, bold=word.bold, turned=bearing, colour=colour
    )  # fmt: skip
