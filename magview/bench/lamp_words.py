"""Readings of the lamp in words: the expected reading, contradictions and causes."""

from __future__ import annotations

from magview.bench.lamp import (
    SHOWN_DEG,
    Standing,
    explanations,
    foretold,
    slack_deg,
    standing,
    unanswered,
)
from magview.bench.state import BenchState, Check, Engaged, Side, firing_btdc_deg, mounting_of
from magview.bench.words import way_words
from magview.physics.engine.lamp import ASK_FIRST_DEG, Cause, Explanation
from magview.spec.language import format_angle, marked, tr

LOOK_FIRST = marked("⚠ Check stroke, mark and finger first.")
LOOK_FIRST_WHY = marked(
    "So large an error is seldom one of teeth: No. 1 may be on its exhaust stroke, the disc off its zero, a painted "
    "mark not the right one, the finger at another outlet."
)

NOT_READ = marked("The lamp has not been read yet: the bench begins at the timing wanted.")

CHECK_WORDS: dict[Check, str] = {
    "reading": marked("I read the lamp again: it says so"),
    "stroke": marked("No. 1 is on its compression stroke"),
    "mark": marked("The disc's zero and the painted marks are right"),
    "finger": marked("The finger stands at No. 1"),
}
"""The words of each check that a person has made."""


def place_words(btdc_deg: float) -> str:
    """A place of the crank [crank deg BTDC] with its side of top dead centre."""
    angle = abs(btdc_deg)
    if abs(btdc_deg) < SHOWN_DEG:
        return tr("top dead centre")
    return (
        tr("{angle:deg} before top dead centre", angle=angle)
        if btdc_deg > 0
        else tr("{angle:deg} after top dead centre", angle=angle)
    )


def short_place_words(btdc_deg: float) -> str:
    """The same where there is room for a few words only."""
    angle = abs(btdc_deg)
    if angle < SHOWN_DEG:
        return tr("at TDC")
    return tr("{angle:deg} before TDC", angle=angle) if btdc_deg > 0 else tr("{angle:deg} after TDC", angle=angle)


def play_words(state: BenchState) -> str:
    """A warning of play that is not taken up, wherever an angle of the crank is told; "" without any."""
    engaged = state.engaged
    if engaged is None or engaged.play.deg <= SHOWN_DEG:
        return ""
    return tr("Approached against rotation, play of {play:deg} of rotor not taken up", play=engaged.play.deg)


def btdc_words(btdc_deg: float) -> str:
    """An angle where "before top dead centre" is said already, or understood; one after it says so itself."""
    if btdc_deg > -SHOWN_DEG:
        return format_angle(max(btdc_deg, 0.0))
    return tr("{angle:deg} after TDC", angle=-btdc_deg)


def should_read_words(state: BenchState, side: Side) -> str:
    """Expected reading of the lamp, by its last reading and the acts since; "" where there were none."""
    assert state.engaged is not None
    acts, reads = foretold(state, side), mounting_of(state.engaged, side).reads_btdc_deg
    if acts.btdc_deg != acts.btdc_deg or abs(acts.btdc_deg - reads) <= SHOWN_DEG:
        return ""
    return should_words(acts.btdc_deg)


def should_words(btdc_deg: float) -> str:
    """Expected reading of the lamp now [crank deg BTDC]."""
    return tr("The lamp should now read {now}. Read it again, coming with rotation.", now=place_words(btdc_deg))


_OUT_OF_DATE = {
    "single": marked(
        "⚠ {old:deg} is out of date: {why}. It should now read {now}: read it again before any tooth is moved."
    ),
    "left": marked(
        "⚠ Left, {old:deg} is out of date: {why}. It should now read {now}: read it again before any tooth is moved."
    ),
    "right": marked(
        "⚠ Right, {old:deg} is out of date: {why}. It should now read {now}: read it again before any tooth is moved."
    ),
}
_SET_ANEW = {
    True: marked("the contacts were set anew and open {change:deg} of rotor later"),
    False: marked("the contacts were set anew and open {change:deg} of rotor earlier"),
}
_BY_TEETH = {True: marked("teeth moved: {crank:deg} earlier"), False: marked("teeth moved: {crank:deg} later")}
_BY_SETTING = {True: marked("setting: {crank:deg} earlier"), False: marked("setting: {crank:deg} later")}
_IN_ALL = {
    True: marked("{teeth}; {setting}; in all {crank:deg} of crank earlier"),
    False: marked("{teeth}; {setting}; in all {crank:deg} of crank later"),
}
"""By whether it then fires earlier."""
_TEETH_MOVED = {
    "single": marked("⚠ Read with the teeth as found; expect {now} now: read again."),
    "left": marked("⚠ Left: read with the teeth as found; expect {now} now: read again."),
    "right": marked("⚠ Right: read with the teeth as found; expect {now} now: read again."),
}
_TEETH_NOT_READ = {
    "single": marked("⚠ Teeth moved, and the lamp not read yet; expect {now} now: read it."),
    "left": marked("⚠ Left: teeth moved, and the lamp not read yet; expect {now} now: read it."),
    "right": marked("⚠ Right: teeth moved, and the lamp not read yet; expect {now} now: read it."),
}

_CONTRADICTED = marked(
    "✗ Stop: the lamp reads {reads} and should read {should}. They are {apart:deg} apart, and two readings may be "
    "{slack:deg}. Likeliest: {cause} Look, and read the lamp again."
)


def standing_words(state: BenchState, side: Side) -> str:
    """Faults of a magneto's reading, in one sentence or two; "" for a reading that stands."""
    engaged = state.engaged
    assert engaged is not None
    mounting, now = mounting_of(engaged, side), standing(state, side)
    who = "single" if engaged.installation.position == "single" else side
    if now is Standing.OUT_OF_DATE:
        return tr(
            _OUT_OF_DATE[who],
            old=mounting.reads_btdc_deg,
            why=_why_words(state, side),
            now=short_place_words(foretold(state, side).btdc_deg),
        )
    if now is Standing.CONTRADICTED and mounting.foretold is not None:
        should, reads = mounting.foretold.btdc_deg, mounting.reads_btdc_deg
        likeliest = explanations(state, side, reads)[0]
        return tr(
            _CONTRADICTED,
            should=place_words(should),
            reads=place_words(reads),
            apart=abs(reads - should),
            slack=slack_deg(engaged.installation),
            cause=explanation_words(likeliest),
        )
    return ""


def teeth_moved_words(state: BenchState, side: Side) -> str:
    """Say that teeth were moved since the reading; "" where they were not, or worse is wrong with it."""
    engaged = state.engaged
    assert engaged is not None
    if standing(state, side) is not Standing.TEETH_MOVED:
        return ""
    who = "single" if engaged.installation.position == "single" else side
    words = _TEETH_MOVED if mounting_of(engaged, side).lamp_read else _TEETH_NOT_READ
    return tr(words[who], now=btdc_words(foretold(state, side).btdc_deg))


def teeth_moved_longest(engaged: Engaged) -> str:
    """The longest that this can be, for a label that keeps room."""
    who = "single" if engaged.installation.position == "single" else "right"
    return tr(_TEETH_NOT_READ[who], now=btdc_words(-88.88))


def _why_words(state: BenchState, side: Side) -> str:
    """Acts since the lamp was read: contacts set anew, and the teeth's part of it where they were moved too."""
    engaged = state.engaged
    assert engaged is not None
    acts = foretold(state, side)
    by_teeth = acts.btdc_deg - firing_btdc_deg(state, side, as_found=True)
    if abs(by_teeth) <= SHOWN_DEG:
        return tr(_SET_ANEW[acts.opening_deg > 0], change=abs(acts.opening_deg))
    whole = acts.btdc_deg - mounting_of(engaged, side).reads_btdc_deg
    setting = whole - by_teeth
    return tr(
        _IN_ALL[whole > 0],
        teeth=tr(_BY_TEETH[by_teeth > 0], crank=abs(by_teeth)),
        setting=tr(_BY_SETTING[setting > 0], crank=abs(setting)),
        crank=abs(whole),
    )


def unanswered_words(state: BenchState, side: Side) -> str:
    """Say why no teeth are planned from an error so large; nothing where they are."""
    if not unanswered(state, side):
        return ""
    return tr(
        "✗ It is more than {limit}° of crank out. No tooth is planned until stroke, mark and finger were looked at.",
        limit=ASK_FIRST_DEG,
    )


_WORDS = {
    Cause.NOTHING: marked("nothing need have moved: it should read {reads}."),
    Cause.NOT_MOVED: marked("no tooth was moved: it then reads {reads}."),
    Cause.WRONG_WAY: marked(
        "the teeth were moved the wrong way (A disc {disc}, B magneto flange {flange}): it then reads {reads}."
    ),
    Cause.WRONG_FACE: marked(
        "the teeth were moved on the wrong face (A disc {disc}, B magneto flange {flange}): it then reads {reads}."
    ),
    Cause.ONE_FACE: marked(
        "only one face was moved (A disc {disc}, B magneto flange {flange}): it then reads {reads}."
    ),
    Cause.MISCOUNTED: marked(
        "one tooth was miscounted (A disc {disc}, B magneto flange {flange}): it then reads {reads}."
    ),
    Cause.CONTACTS_AS_BEFORE: marked("the contacts were not set anew after all: it then reads {reads}."),
    Cause.AGAINST_ROTATION: marked("the lamp was read coming against rotation: it then reads {reads}."),
    Cause.OTHER_LOBE: marked("lobe {lobe} was read, which stands off its place: it then reads {reads}."),
    Cause.OTHER_CYLINDER: marked("the opening for another cylinder was read, on lobe {lobe}: it then reads {reads}."),
    Cause.OTHER_STROKE: marked("No. 1 was on its exhaust stroke, lobe {lobe} opening: it then reads {reads}."),
    Cause.TEETH: marked(
        "teeth were moved beyond those entered (A disc {disc}, B magneto flange {flange}): it then reads {reads}."
    ),
}

_OPENING = {
    True: marked("the contacts open {amount:deg} of rotor later than they did: plate, screw or heel moved."),
    False: marked("the contacts open {amount:deg} of rotor earlier than they did: plate, screw or heel moved."),
}
_DISC = {
    True: marked(
        "the disc or its pointer slipped on the crank, or was not at zero: it reads {amount:deg} too early."
    ),
    False: marked(
        "the disc or its pointer slipped on the crank, or was not at zero: it reads {amount:deg} too late."
    ),
}


def explanation_words(found: Explanation) -> str:
    """One explanation of a reading, to follow a colon."""
    amount = abs(found.amount_deg)
    if found.cause is Cause.OPENING:
        return tr(_OPENING[found.amount_deg > 0], amount=amount)
    if found.cause is Cause.DISC:
        return tr(_DISC[found.amount_deg > 0], amount=amount)
    return tr(
        _WORDS[found.cause],
        flange=way_words(found.magneto_teeth),
        disc=way_words(found.disc_teeth),
        lobe=found.lobe,
        reads=place_words(found.reads_btdc_deg),
    )
