"""A tooth-shift plan step by step for a tablet beside the engine: one HTML file that needs no network.

With its script one step fills the screen; without it all steps stand below one another.
"""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from html import escape

from magview.bench.lamp_words import LOOK_FIRST, LOOK_FIRST_WHY
from magview.bench.shift_plan import Face, ShiftPlan, act_a, act_b, check_words, start_words
from magview.drawing.shift_boxes import box_svg
from magview.drawing.shift_views import views_svg
from magview.job.shift_plan import (
    PLANNING_AID,
    all_warnings,
    before_words,
    closing_words,
    expected_words,
    in_hand_words,
    safety_words,
    unknown_rotation_words,
)
from magview.paper.blocks import printable
from magview.spec.language import tr

_STYLE = """
* { box-sizing: border-box; }
body { margin: 0; color: #000; background: #fff; font: 1.6rem/1.35 "DejaVu Sans", Verdana, sans-serif; }
section { padding: 1.2rem; border-bottom: 2px solid #000; }
h1 { font-size: 2.2rem; margin: 0 0 .6rem; }
p { margin: .5rem 0; }
svg { width: 100%; height: auto; max-height: 58vh; }
.views { display: flex; flex-wrap: wrap; }
figure { flex: 1; min-width: 16rem; margin: 0; }
nav { display: none; }
.stepped section { display: none; min-height: calc(100vh - 6rem); border: 0; }
.stepped section.now { display: block; }
.stepped nav { display: flex; height: 5.5rem; position: sticky; bottom: 0; background: #fff; }
button { flex: 1; font: inherit; font-weight: bold; border: 3px solid #000; background: #fff; color: #000; }
"""

_SCRIPT = """
(function () {
  var steps = document.querySelectorAll("section"), at = 0;
  function go(to) {
    at = Math.max(0, Math.min(steps.length - 1, to));
    for (var i = 0; i < steps.length; i++) { steps[i].className = i === at ? "now" : ""; }
    window.scrollTo(0, 0);
  }
  document.body.className = "stepped";
  document.getElementById("next").onclick = function () { go(at + 1); };
  document.addEventListener("keydown", function (event) {
    if (event.key === "ArrowLeft" || event.key === "Backspace") { go(at - 1); }
    if (event.key === "ArrowRight") { go(at + 1); }
  });
  go(0);
})();
"""


@dataclass(frozen=True)
class ShiftStep:
    """One screen: a title, sentences, and drawings as SVG."""

    title: str
    words: tuple[str, ...]
    drawings: tuple[str, ...] = ()


def shift_steps(plan: ShiftPlan) -> Iterator[ShiftStep]:
    """The steps in their order, cautions first; without a tooth to move there is nothing between."""
    far = (f"{tr(LOOK_FIRST)} {tr(LOOK_FIRST_WHY)}",) if plan.far_off else ()
    yield ShiftStep(plan.title, (*safety_words(), *far, *all_warnings(plan)))
    if plan.moves:
        yield ShiftStep(tr("Before"), (before_words(), start_words(plan)))
        unknown = (unknown_rotation_words(),) if plan.rotation is None else ()
        acts: tuple[tuple[Face, str, str, int], ...] = (
            ("A", tr("A disc"), act_a(plan), plan.move.disc_teeth),
            ("B", tr("B magneto flange"), act_b(plan), plan.move.magneto_teeth),
        )
        for face, title, act, teeth in acts:
            seen = (
                (tr("The large arrow: as you stand at the engine."),) if teeth and plan.rotation is not None else ()
            )
            more = (*seen, in_hand_words()) if face == "B" else seen
            yield ShiftStep(title, (act, *more, *(unknown if teeth else ())), (box_svg(plan, face),))
        views = () if plan.rotation is None else (views_svg(plan, 66.0),)
        yield ShiftStep(tr("Check by the paint"), (check_words(plan),), views)
    else:
        yield ShiftStep(tr("Leave the teeth alone."), ())
    yield ShiftStep(tr("Then the lamp"), (expected_words(plan), closing_words(), tr(PLANNING_AID)))


def shift_html(plan: ShiftPlan) -> str:
    """All steps as one file: its drawings are in it, and nothing is fetched."""
    steps = "\n".join(_section(step) for step in shift_steps(plan))
    return (
        '<!DOCTYPE html>\n<html lang="en">\n<head>\n<meta charset="utf-8">\n'
        '<meta name="viewport" content="width=device-width, initial-scale=1">\n'
        f"<title>{_text(plan.title)}</title>\n<style>{_STYLE}</style>\n</head>\n<body>\n<main>\n{steps}\n</main>\n"
        f'<nav><button type="button" id="next">{_text(tr("Next"))}</button></nav>\n'
        f"<script>{_SCRIPT}</script>\n</body>\n</html>\n"
    )


def _section(step: ShiftStep) -> str:
    words = "".join(f"<p>{_text(sentence)}</p>" for sentence in step.words)
    drawn = "".join(f"<figure>{svg}</figure>" for svg in step.drawings)
    views = f'<div class="views">{drawn}</div>' if drawn else ""
    return f"<section><h1>{_text(step.title)}</h1>{views}{words}</section>"


def _text(text: str) -> str:
    return escape(printable(text), quote=False)
