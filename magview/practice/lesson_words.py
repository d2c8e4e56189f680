"""The standing of a lesson's step, in words; and the part of the picture it is about."""

from __future__ import annotations

from magview.practice import actions as do
from magview.practice.instruments import disc
from magview.practice.lesson import LessonStep, Question, Until
from magview.practice.lesson_run import (
    LessonRun,
    Stand,
    choices_of,
    turned_so_far,
    undone,
    unmet,
    wrong_kind,
)
from magview.practice.predicates import rotor_past_deg
from magview.practice.screen_words import SEEN_TO
from magview.practice.state import Feel, true_readings
from magview.practice.words import act_words
from magview.spec.language import marked, together, tr

_WORDS = {
    "rotor-let-go": (marked("the rotor to be let go"), ""),
    "lamp-connected": (marked("the lamp across the contacts"), marked("the lamp taken off")),
    "contacts-seen-opening": (marked("the lamp to go from dark to light while you turn with rotation"), ""),
    "edge-laid": (marked("the straightedge laid on"), marked("the straightedge off")),
    "edge-square": (marked("the straightedge laid on and looked at square"), marked("the eye away from square")),
    "lock-tight": (marked("the lock screw tight"), marked("the lock screw slack")),
    "clamps-tight": (marked("the clamp screws tight"), marked("the clamp screws slack")),
    "opening-at-mark": (marked("the contacts to open at the mark"), ""),
    "gap-in-limits": (marked("the largest gap within its limits"), ""),
    "switch-on": (marked("the switch on"), marked("the switch off")),
    "plug-out": (marked("the plug pulled out"), marked("the plug in")),
    "jumper-on": (marked("the jumper on"), marked("the jumper off")),
    "made-safe": (marked("fuel, mixture, throttle and hanging leads seen to"), ""),
    "chocked": (marked("chocks at the wheels"), marked("the chocks away")),
    "plugs-out": (marked("the spark plugs out"), marked("the spark plugs in")),
    "proved": (marked("the lead proved: meter, plug out, switch off"), ""),
    "stop-fitted": (marked("the piston stop in"), marked("the piston stop out")),
    "disc-at-zero": (marked("the disc to read zero at top dead centre"), ""),
    "marked": (marked("marks painted across the coupling"), ""),
    "nuts-tight": (marked("the nuts tight"), marked("the nuts off")),
    "magneto-on": (marked("the magneto on the engine"), marked("the magneto off the engine")),
    "timing-in-limits": (marked("it to fire where it should"), ""),
}
_LAMP = {
    "light": marked("the lamp lit"),
    "dark": marked("the lamp dark"),
    "not connected": marked("the lamp not connected"),
}
_ROTOR = {
    "neutral": marked("the rotor at neutral"),
    "register": marked("the rotor at full register"),
    "e-gap": marked("the rotor at the E-gap"),
    "widest": marked("the contacts widest open"),
}
_TURNED = {
    ("screw", True): marked("the contact screw turned {angle}° closer or more"),
    ("screw", False): marked("the contact screw turned {angle}° wider or more"),
    ("plate", True): marked("the backplate turned {angle}° with rotation or more"),
    ("plate", False): marked("the backplate turned {angle}° against rotation or more"),
    ("rotor", True): marked("the rotor turned {angle}° with rotation"),
    ("rotor", False): marked("the rotor turned {angle}° against rotation"),
    ("magneto-flange", True): marked("the magneto flange moved with rotation, in teeth: {angle}"),
    ("magneto-flange", False): marked("the magneto flange moved against rotation, in teeth: {angle}"),
    ("toothed-disc", True): marked("the toothed disc moved with rotation, in teeth: {angle}"),
    ("toothed-disc", False): marked("the toothed disc moved against rotation, in teeth: {angle}"),
}
_PARTS = {
    "rotor-near": "rotor",
    "rotor-let-go": "rotor",
    "edge-laid": "step",
    "edge-square": "step",
    "lock-tight": "lock screw",
    "clamps-tight": "clamp screw",
    "opening-at-mark": "backplate",
    "gap-in-limits": "contact screw",
    "contacts-seen-opening": "contacts",
    "lamp-connected": "contacts",
}


def waiting_words(until: Until) -> str:
    """The act that one condition of a step waits for."""
    what, value = until.what or "", until.value or 0.0
    match until.that:
        case "pointed-at":
            return tr("the {part} to be pointed at", part=tr(what))
        case "rotor-near":
            return tr(_ROTOR[what])
        case "turned" | "turned-here":
            return tr(_TURNED[what, value > 0], angle=abs(value))
        case "act":
            return tr("this to be done: {act}", act=what.replace("-", " "))
        case "said":
            return _asked_words(what)
        case "lamp-shows":
            return tr(_LAMP[what])
        case "stop-met":
            return (
                tr("the piston to meet the stop with rotation")
                if what == "with"
                else tr("the piston to meet the stop against rotation")
            )
        case "crank-near":
            return tr("the crank {value}° before top dead centre, on compression", value=value)
        case "disc-near":
            return tr("the disc at {value}°", value=value)
        case "blade":
            return tr("the blade {value:.2f} mm tried", value=value)
        case "wrote":
            halved = tr("half the sum of both readings written down, minus before zero, plus after it")
            return halved if what == "disc-zero" else tr("a line in the notebook: {act}", act=what.replace("-", " "))
    yes, no = _WORDS[until.that]
    return tr(yes if until.yes else no)


_STEADY = ("dark all the way round", "light all the way round")
"""Words of the lamp where nothing changes in a whole turn."""


def _asked_words(answer: str) -> str:
    """The instrument to use. Its reading is for the learner to find, but for blades: they are picked by
    what they shall say."""
    if answer in tuple(Feel):
        return tr("the answer “{answer}”", answer=tr(answer))
    if answer in _STEADY:
        return tr("the lamp to be watched all the way round")
    if answer.endswith("ground"):
        return tr("what the meter says")
    return tr("what an instrument says")


# ---------------------------------------------------------------------- how a step stands


def stand_words(run: LessonRun) -> tuple[str, str]:
    """Tell how the step in hand stands: a short sentence, and what else is to be said. Nothing while it waits."""
    step = run.step
    if step is None:
        return tr("{name}: all steps are done.", name=tr(run.lesson.name)), foretold_words(run)
    match run.stand:
        case Stand.DONE:
            return f"{_done_head(run)} {' '.join(_guesses(run, step))}".rstrip(), tr(step.done) if step.done else ""
        case Stand.WRONG:
            return _wrong_words(run)
        case Stand.PART_WAY:
            return _so_far(run)
    return "", ""


def how_words(run: LessonRun) -> str:
    """Tell how the act in hand is done; with both readings of the disc where dead centre is worked out of them."""
    step = run.step
    if step is None or not step.how:
        return ""
    if run.previous is not None and any(u.that == "wrote" and u.what == "disc-zero" for u in step.until):
        one, other = disc(run.previous.began).text, disc(run.began).text
        return tr("{how} You read {one}, then {other}.", how=tr(step.how), one=one, other=other)
    return tr(step.how)


def question_words(question: Question) -> str:
    """Return what is asked."""
    return tr(_ASKED[question.about]) if question.about is not None else tr(question.ask)


def foretold_words(run: LessonRun) -> str:
    """Tell how many guesses were right; it is no mark."""
    right, asked = run.foretold
    if not asked:
        return ""
    return tr("Right guesses: {right} of {asked}. Guesses are not marked.", right=right, asked=asked)


_ASKED = {"gap": marked("The largest gap becomes"), "opening": marked("The contacts open")}


def _done_head(run: LessonRun) -> str:
    if run.already:
        return tr("Step {step} is so already.", step=run.at + 1)
    return tr("Step {step} done.", step=run.at + 1)


def _guesses(run: LessonRun, step: LessonStep) -> list[str]:
    """Of each guess, whether it was right, and the reading before and after."""
    told = []
    for question, said, right in zip(step.ask, run.answers[run.at], run.rights[run.at], strict=True):
        if question.about is None:
            answer = tr(choices_of(question)[right])
            told.append(tr("Right.") if said == right else tr("Not so: the answer is “{answer}”.", answer=answer))
            continue
        name = tr("Gap") if question.about == "gap" else tr("Opening")
        words = (
            marked("{name}: as you said, {change}.")
            if said == right
            else marked("{name}: not as you said, {change}.")
        )
        told.append(tr(words, name=name, change=_change(question.about, run, right)))
    return told


def _change(about: str, run: LessonRun, right: int) -> str:
    was, now = true_readings(run.began.bench), true_readings(run.practice.bench)
    if about == "gap":
        before, after = float(was.max_gap_mm[0]), float(now.max_gap_mm[0])
        if right == 1:
            return tr("it stays {gap:length}", gap=after)
        return tr("{before:length} became {after:length}", before=before, after=after)
    by = abs(float(now.e_gap_error_deg[0] - was.e_gap_error_deg[0]))
    if right == 1:
        return tr("it stays where it was")
    return tr("{by:.1f}° of rotor earlier", by=by) if right == 0 else tr("{by:.1f}° of rotor later", by=by)


def _wrong_words(run: LessonRun) -> tuple[str, str]:
    moment = run.moment
    assert moment is not None
    still = _still(run)
    match wrong_kind(run):
        case "part" if isinstance(moment.act, do.PointAt):
            return tr("You clicked the {part}.", part=tr(moment.act.part)), still
        case "undid":
            lost = together([waiting_words(u) for u in undone(run)])
            return tr("That took away {lost}.", lost=lost), tr("Undo act takes it back. {still}", still=still)
        case "way":
            return tr("That was the wrong way."), _so_far(run)[0]
    done = act_words(moment.act, moment.before, moment.after)
    return (
        tr("Not asked for: {act}.", act=f"{done[0].lower()}{done[1:]}"),
        tr("Undo act takes it back. {still}", still=still),
    )


def _still(run: LessonRun) -> str:
    left = [words for until in unmet(run) for words in _left_of(until, run)]
    return tr("Still to do: {wanted}.", wanted=together(left)) if left else ""


def _left_of(until: Until, run: LessonRun) -> list[str]:
    """The acts that a condition still waits for; of a list, the lines not ticked yet."""
    if until.that != "made-safe":
        return [waiting_words(until)]
    return [tr(words) for thing, words in SEEN_TO.items() if thing not in run.practice.seen_to]


def _so_far(run: LessonRun) -> tuple[str, str]:
    moment = run.moment
    if moment is not None and isinstance(moment.act, do.PointAt):
        return tr("You clicked the {part}.", part=tr(moment.act.part)), ""
    if moment is not None and isinstance(moment.act, do.TryBlades):
        return tr("You did this: {act}.", act=act_words(moment.act, moment.before, moment.after)), _still(run)
    for until in unmet(run):
        words = _distance(until, run)
        if words:
            return words, ""
    return _still(run), ""


def _distance(until: Until, run: LessonRun) -> str:
    """Tell how far an act has come, in numbers; "" for what has none."""
    what, value = until.what or "", until.value or 0.0
    if until.that in ("turned", "turned-here"):
        far, whole = turned_so_far(until, run, run.practice) * (1 if value > 0 else -1), abs(value)
        way, other = _WAYS[what, value > 0], _WAYS[what, value < 0]
        if what in ("magneto-flange", "toothed-disc"):
            return tr("{far:.0f} of {whole:.0f} teeth so far.", far=far, whole=whole)
        if far > whole:
            return tr(_TOO_FAR[other], far=far, whole=whole, rest=far - whole)
        return tr(_MORE[way], far=far, whole=whole, rest=whole - far)
    if until.that == "rotor-near":
        past = rotor_past_deg(run.practice, what)
        if past == float("inf"):
            return ""
        words = (
            marked("The rotor stands {by:.0f}° past {place}.")
            if past > 0
            else marked("The rotor stands {by:.0f}° short of {place}.")
        )
        return tr(words, by=max(1.0, abs(past)), place=tr(_PLACES[what]))
    return ""


_WAYS = {
    ("screw", True): "closer", ("screw", False): "wider",
    **{(what, True): "with" for what in ("plate", "rotor", "magneto-flange", "toothed-disc")},
    **{(what, False): "against" for what in ("plate", "rotor", "magneto-flange", "toothed-disc")},
}  # fmt: skip
_MORE = {
    "closer": marked("{far:.1f} of {whole}° so far. Turn {rest:.1f}° more, closer."),
    "wider": marked("{far:.1f} of {whole}° so far. Turn {rest:.1f}° more, wider."),
    "with": marked("{far:.1f} of {whole}° so far. Turn {rest:.1f}° more with rotation."),
    "against": marked("{far:.1f} of {whole}° so far. Turn {rest:.1f}° more against rotation."),
}
_TOO_FAR = {
    "closer": marked("{far:.1f}° of {whole}°: too far. Turn {rest:.1f}° closer."),
    "wider": marked("{far:.1f}° of {whole}°: too far. Turn {rest:.1f}° wider."),
    "with": marked("{far:.1f}° of {whole}°: too far. Turn {rest:.1f}° with rotation."),
    "against": marked("{far:.1f}° of {whole}°: too far. Turn {rest:.1f}° against rotation."),
}
_PLACES = {
    "neutral": marked("a neutral"),
    "register": marked("full register"),
    "e-gap": marked("the E-gap"),
    "widest": marked("the largest gap"),
}


_HELD = {"screw": "contact screw", "plate": "backplate", "rotor": "rotor"}


def part_of(step: LessonStep) -> str:
    """The part of the breaker end a step is about, by its name in the picture; "" where it is about none."""
    for until in step.until:
        if until.that == "pointed-at":
            return ""  # to be found, not to be shown
        if until.that in ("turned", "turned-here"):
            return _HELD.get(until.what or "", "")
        if until.that in _PARTS:
            return _PARTS[until.that]
    return ""


def learnt(run: LessonRun) -> list[str]:
    """Return what was said of the steps behind, in their order: whole sentences."""
    return [tr(step.done) for step in run.lesson.steps[: run.at] if step.done]
