"""Readings in words: what is out of limits, and what is judged."""

from __future__ import annotations

import math

from magview.physics.cam.setting import Readings
from magview.spec.language import marked, tr
from magview.spec.magneto import Magneto


def faults(magneto: Magneto, result: Readings) -> list[str]:
    """Readings out of limits, lobe by lobe; empty if there are none. `result` is of one setting."""
    judged = result.timing_ok[:1] if magneto.compensated else result.timing_ok
    bad_timing = [str(i + 1) for i, ok in enumerate(judged) if not ok]
    bad_gap = [str(i + 1) for i, ok in enumerate(result.gap_ok) if not ok]
    lobes = len(result.gap_ok)
    found = []
    if bad_timing:
        if len(bad_timing) == (len(judged) if not magneto.compensated else lobes) > 1:
            found.append(tr("opening of every lobe"))
        else:
            found.append(tr("opening of lobe {lobes}", lobes=", ".join(bad_timing)))
    if bad_gap:
        if len(bad_gap) == lobes > 1:
            found.append(tr("gap of every lobe"))
        else:
            found.append(tr("gap of lobe {lobes}", lobes=", ".join(bad_gap)))
    return found


def judged_words(magneto: Magneto) -> str:
    """The lobes whose opening is judged."""
    return tr("compensated cam: the opening is judged on lobe 1") if magneto.compensated else ""


def blade_words(magneto: Magneto, result: Readings) -> str:
    """The lobes whose true gap is within limits while a blade, over the pip, reads too little; "" for none."""
    low = magneto.gap_limits_mm[0] - 1e-9
    pairs = enumerate(zip(result.gap_ok, result.blade_gap_mm, strict=True), 1)
    short = [str(lobe) for lobe, (ok, blade) in pairs if ok and blade < low]
    if not short:
        return ""
    words = marked("✗ By blades the gap of lobe {lobes} is too small; the true gap is within limits, under a pip.")
    return tr(words, lobes=", ".join(short))


def never_words(result: Readings, lobe: int = 0) -> str:
    """Say why a lobe has no opening angle: nothing if it has one."""
    if math.isfinite(result.opens_deg[lobe]):
        return ""
    return tr("never: they stay open") if result.max_gap_mm[lobe] > 0 else tr("never: they stay closed")


def late_words(result: Readings) -> str:
    """The opening of lobe 1 against the E-gap [rotor deg], in a few words."""
    error = float(result.e_gap_error_deg[0])
    if never := never_words(result):
        return never
    if abs(error) < 0.005:
        return tr("at the E-gap")
    return tr("{angle:deg} late", angle=error) if error > 0 else tr("{angle:deg} early", angle=-error)


def mark_words(offset_text: str, offset_mm: float) -> str:
    """An offset of the straightedge with its side: `offset_text` as written in the user's unit, `offset_mm` [mm] past
    the mark, negative short of it; NaN where there is none."""
    if math.isnan(offset_mm):
        return "–"
    if abs(offset_mm) < 5e-4:
        return offset_text
    return tr("{offset} past", offset=offset_text) if offset_mm > 0 else tr("{offset} short", offset=offset_text)
