"""The words beside the coupling: from where it is seen, which way it turns, and a planned move step by step."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from magview.bench.lamp_words import btdc_words, place_words
from magview.bench.state import BenchState, Engaged, firing_btdc_deg
from magview.bench.words import drive_end_sense, short_words
from magview.drawing.scene import CornerLine, CornerWords
from magview.physics.engine.coupling import Move, crank_advance_deg
from magview.spec.language import tr

LOW_EM = 20.0
"""In a lower picture the title is one line and the steps are small."""

_BUTTON = "\u2003\u2003"
"""Room for a button in the upper right corner: two blanks, each an em wide."""

_INDENT = "\u2003"


@dataclass(frozen=True)
class Told:
    """Facts to be told of a coupling."""

    state: BenchState
    engaged: Engaged
    at_engine: bool
    move: Move | None
    along_a: int
    """Teeth that the disc goes on the drive flange."""
    along_b: int
    """Teeth from the disc's paint to the magneto flange's, afterwards."""
    strayed: bool
    """Whether paint is shown where it was as found."""

    @property
    def moved(self) -> bool:
        """Whether teeth stand elsewhere than as found."""
        at = self.engaged.mounting
        return (at.magneto_teeth, at.disc_teeth) != (0, 0)

    @property
    def clockwise(self) -> bool:
        """Whether it turns clockwise as it is seen."""
        return (drive_end_sense(self.state.magneto) > 0) != self.at_engine


def head_em(high_em: float) -> float:
    """Room for the title above the coupling."""
    return 3.9 if high_em >= LOW_EM else 2.3


def foot_em(high_em: float) -> float:
    """Room for the steps below it."""
    return 5.0 if high_em >= LOW_EM else 4.4


FOUND_EM = 3.2
"""The same for what a tooth does, while no move is planned: kept always, so that nothing moves with a tooth."""


def corner_lines(told: Told, numbers: bool, beside: bool, high_em: float) -> Iterator[CornerWords]:
    """Title and steps in the corners of a picture; `beside` the coupling they have a column, else the whole width."""
    yield CornerWords("top-left", tuple(_title(told, beside, high_em < LOW_EM)))
    if not beside:
        rows = 2 if told.move is not None else 1  # a planned move has a button that shows it
        yield CornerWords("top-right", (CornerLine((_BUTTON,)),) * rows)
    size = 0.92 if high_em >= LOW_EM else 0.84
    lines = [CornerLine(wordings, size=size) for step in steps(told) for wordings in _broken(step, beside)]
    if told.move is not None and numbers:
        expected = _broken(_expected(told, told.move), beside)
        lines += [CornerLine(wordings, "planned", size, i == 0) for i, wordings in enumerate(expected)]
    if told.move is None and numbers:
        lines += _consequence(told, beside, size) if told.moved else _one_tooth(told, beside, size)
    if told.strayed:
        lines.append(CornerLine((tr("dashed: as found"), tr("dashed: found")), "second_ink", size))
    if lines:
        yield CornerWords("bottom-left", tuple(lines))


def _crank_deg(told: Told, magneto_teeth: int, disc_teeth: int) -> float:
    """Advance of the firing by so many teeth [crank deg]."""
    teeth = told.engaged.installation.disc
    return crank_advance_deg(teeth.magneto_teeth, teeth.drive_teeth, magneto_teeth, disc_teeth, told.engaged.ratio)


def _consequence(told: Told, beside: bool, size: float) -> Iterator[CornerLine]:
    """Teeth moved from as found, and how much later or earlier it fires for them."""
    at = told.engaged.mounting
    crank = _crank_deg(told, at.magneto_teeth, at.disc_teeth)
    acts, short = [], []
    if at.disc_teeth:
        acts.append(tr("A disc {teeth}", teeth=short_words(at.disc_teeth)))
        short.append(tr("A {teeth}", teeth=short_words(at.disc_teeth)))
    if at.magneto_teeth:
        acts.append(tr("B magneto flange {teeth}", teeth=short_words(at.magneto_teeth)))
        short.append(tr("B {teeth}", teeth=short_words(at.magneto_teeth)))
    whole, brief, angle = ", ".join(acts), ", ".join(short), abs(crank)
    later = tr("{angle:deg} of crank later", angle=angle)
    change = tr("{angle:deg} of crank earlier", angle=angle) if crank > 0 else later
    if beside:
        yield CornerLine((f"{whole}:", f"{brief}:"), "planned", size, bold=True)
        yield CornerLine((f"{_INDENT}{change}", change), "planned", size, bold=True)
    else:
        yield CornerLine((f"{whole}: {change}", f"{brief}: {change}", change), "planned", size, bold=True)


def _one_tooth(told: Told, beside: bool, size: float) -> Iterator[CornerLine]:
    """The worth of one tooth of each face."""
    a, b = _crank_deg(told, 0, 1), _crank_deg(told, 1, 0)
    if beside:
        yield CornerLine((tr("One tooth, of crank:"), tr("One tooth:")), "second_ink", size)
        yield CornerLine((tr("A {a:deg}, B {b:deg}", a=a, b=b),), "second_ink", size)
    else:
        yield CornerLine(
            (
                tr("One tooth: A disc {a:deg}, B magneto flange {b:deg} of crank", a=a, b=b),
                tr("One tooth: A {a:deg}, B {b:deg} of crank", a=a, b=b),
            ),
            "second_ink",
            size,
        )  # fmt: skip


def _broken(step: tuple[str, ...], beside: bool) -> list[tuple[str, ...]]:
    """One line with the whole step, or two short ones for a column."""
    *whole, first, second, shorter, shortest = step
    if not beside:
        return [(*whole, first, shorter, shortest)]
    return [(first, shorter, shortest), (f"{_INDENT}{second}",)]


def _title(told: Told, beside: bool, low: bool) -> Iterator[CornerLine]:
    sign = "↻" if told.clockwise else "↺"
    way = tr("turns clockwise") if told.clockwise else tr("turns anticlockwise")
    short = tr("Engine side") if told.at_engine else tr("Drive end")
    title = short if told.engaged.installation.position == "single" else _of_two(told)
    hint = tr("as you face the engine") if told.at_engine else tr("as you face the magneto")
    off = "" if told.engaged.mounted else tr("magneto off the engine")
    if low and not beside:
        both = tuple(f"{t} · {w}" for t, w in ((title, way), (short, way)))
        yield CornerLine((*both, f"{title} {sign}", f"{short} {sign}"), bold=True)
        return
    yield CornerLine((title, short), size=1.17, bold=True)
    if beside:
        yield CornerLine((hint,), "second_ink", 0.92)
        yield CornerLine((way, sign), "second_ink", 0.92)
        if off:
            yield CornerLine((off,), "second_ink", 0.92)
        return
    whole = (" · ".join(filter(None, (hint, way, off))), f"{way} · {off}" if off else f"{hint} · {way}")
    yield CornerLine((*whole, f"{off} {sign}" if off else way, way, sign), "second_ink", 0.92)


def _of_two(told: Told) -> str:
    if told.engaged.side == "left":
        return tr("Left magneto, engine side") if told.at_engine else tr("Left magneto, drive end")
    return tr("Right magneto, engine side") if told.at_engine else tr("Right magneto, drive end")


def steps(told: Told) -> Iterator[tuple[str, ...]]:
    """The steps of the move, each in several wordings: whole ones first, then its halves, then the shortest."""
    move = told.move
    if move is None:
        return
    a, b = told.along_a, told.along_b
    if a:
        teeth, way = _counted(a), _way(told, a)
        yield (
            tr("A  disc {teeth} ({way}) on the drive flange", teeth=teeth, way=way),
            tr("A  disc {teeth} ({way})", teeth=teeth, way=way),
            tr("A  disc {teeth}", teeth=teeth),
            f"({way})",
            tr("A  disc {count} {sign}", count=abs(a), sign=_sign(told, a)),
            f"A  {abs(a)} {_sign(told, a)}",
        )
    if b:
        teeth, way = _counted(b), _way(told, b)
        yield (
            tr("B  count {teeth} ({way}) from the disc's paint to the magneto flange's", teeth=teeth, way=way),
            tr("B  count {teeth} from the disc's paint", teeth=teeth),
            tr("B  count {teeth}", teeth=teeth),
            tr("from the disc's paint"),
            tr("B  count {count} {sign}", count=abs(b), sign=_sign(told, b)),
            f"B  {abs(b)} {_sign(told, b)}",
        )
    elif move.magneto_teeth != told.engaged.mounting.magneto_teeth:
        yield (
            tr("B  the magneto flange's paint in line with the disc's"),
            tr("B  paint in line"),
            tr("with the disc's"),
            "B  = 0",
            "B  0",
        )


def _expected(told: Told, move: Move) -> tuple[str, ...]:
    after, was = move.result_btdc_deg, firing_btdc_deg(told.state, told.engaged.side, as_found=True)
    if min(after, was) < 0.0:
        now, before = btdc_words(after), btdc_words(was)
        return (
            tr("expect {after}, was {before}", after=place_words(after), before=place_words(was)),
            tr("expect {after}", after=now),
            tr("was {before}", before=before),
            f"→ {now}",
            now if after < 0.0 else f"{after:.1f}°",
        )
    return (
        tr("expect {after:.2f}° before TDC, was {before:.2f}°", after=after, before=was),
        tr("expect {after:.2f}°", after=after),
        tr("was {before:.2f}°", before=was),
        f"→ {after:.2f}°",
        f"{after:.1f}°",
    )


def _counted(teeth: int) -> str:
    if teeth > 0:
        return tr("{count} with rotation", count=teeth)
    return tr("{count} against rotation", count=-teeth)


def _way(told: Told, teeth: int) -> str:
    return tr("clockwise") if told.clockwise == (teeth > 0) else tr("anticlockwise")


def _sign(told: Told, teeth: int) -> str:
    return "↻" if told.clockwise == (teeth > 0) else "↺"
