"""Contacts graded and decided, the felt, stories by the draw, timing lights, and closing up whole."""

from __future__ import annotations

import json
from itertools import product

import pytest

from magview.bench import actions as bench
from magview.bench.advised import ORDERS
from magview.physics.cam.lobes import places_of_lobe
from magview.practice import actions as do
from magview.practice import contacts, instruments
from magview.practice.advice import efficient_path
from magview.practice.apply import apply
from magview.practice.exercise import Exercise
from magview.practice.faults import begin, drawn
from magview.practice.library import find_exercise
from magview.practice.marking import mark
from magview.practice.state import Practice, true_readings
from magview.practice.story import story
from magview.spec.base import SpecError
from magview.spec.files import dump_json, validate
from magview.spec.library import find_installation, find_magneto, resources
from tests.practice.graded import LEAVE, LOOK, done, exercise, with_grade
from tests.wording import says


def acted(practice: Practice, *acts: do.Act) -> Practice:
    for act in acts:
        practice = apply(practice, act)
    return practice


def test_dressing_takes_metal_off_wider_and_earlier():
    room = begin(with_grade("mound"), 3)
    dressed = acted(room, do.DressContacts())
    before, after = true_readings(room.bench), true_readings(dressed.bench)
    taken = float(after.max_gap_mm[0] - before.max_gap_mm[0])
    assert contacts.STONED_MM[0] <= taken <= contacts.STONED_MM[1]
    assert (after.opens_deg < before.opens_deg).all()
    assert dressed.bench.magneto.condition.pip_height_mm == 0.0 < room.bench.magneto.condition.pip_height_mm
    # A second time takes more off.
    again = true_readings(acted(dressed, do.DressContacts()).bench)
    assert float(again.max_gap_mm[0]) > float(after.max_gap_mm[0])


def test_a_stone_does_not_take_a_pit_out_and_a_new_pair_loses_the_setting():
    room = begin(with_grade("pit"), 3)
    assert contacts.look(acted(room, do.DressContacts())).plain.startswith("a deep pit")
    new = acted(room, do.RenewContacts())
    assert contacts.look(new).plain == "new and flat" and not new.bench.lock_tight
    screws = {round(acted(begin(with_grade("pit"), s), do.RenewContacts()).bench.screw_deg, 3) for s in range(10)}
    assert len(screws) == 10 and new.bench.screw_deg != room.bench.screw_deg


def test_looks_are_words_and_no_numbers():
    for grade in ("frosted", "light", "mound", "pit"):
        said = contacts.look(begin(with_grade(grade), 3))
        assert said.value is None and not any(c.isdigit() for c in said.text)


def test_leaving_without_a_word_is_not_proved_and_a_needless_pair_is_nearly_right():
    silent = mark(done(with_grade("frosted"), LOOK)).rows[0]
    assert silent.judged.right and not silent.judged.proved and "nothing was decided" in silent.evidence
    blind = mark(done(with_grade("frosted"), LEAVE)).rows[0]
    assert not blind.judged.proved and "before the decision" in blind.evidence
    needless = mark(done(with_grade("light"), LOOK, do.RenewContacts(), do.WriteReading("running-in"), LOOK)).rows[0]
    assert not needless.judged.right and needless.judged.near
    forgotten = mark(done(with_grade("pit"), LOOK, do.RenewContacts(), LOOK)).rows[0]
    assert forgotten.judged.right and not forgotten.judged.proved and "after running in" in forgotten.evidence


def test_under_the_first_rules_nothing_has_changed():
    old = exercise(rules=1, faults=({"kind": "pip", "size": (0.05, 0.06)},))
    room = begin(old, 3)
    assert contacts.look(room).plain.startswith("a pip stands")
    clean = acted(room, do.DressContacts())
    assert contacts.look(clean).plain == "clean and flat"
    assert clean.bench.magneto.condition.face_burn_mm == 0.0
    assert mark(done(old, do.DressContacts(), LOOK)).percent == 100.0
    # A file that says nothing of rules is of the first.
    data = json.loads(dump_json(exercise(rules=1)))
    data.pop("rules", None)
    assert validate(Exercise, _tuples(data), "test").rules == 1


def _tuples(value):
    if isinstance(value, list):
        return tuple(_tuples(v) for v in value)
    return {k: _tuples(v) for k, v in value.items()} if isinstance(value, dict) else value


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"faults": ({"kind": "contacts"},)}, "among of kind contacts must be a list"),
        ({"faults": ({"kind": "contacts", "among": ("tab",)},)}, "among of kind contacts must be a list"),
        ({"faults": ({"kind": "contacts", "among": ("mound",)},)}, "size of contacts ends at 0"),
        ({"faults": ({"kind": "contacts", "among": ("pit",), "size": (0.1, 0.2)},)}, "size is not for contacts"),
        ({"faults": ({"kind": "dry-felt"},)}, "needs felt_drops"),
        ({"goals": ({"goal": "secured", "weight": 1.0, "every_lobe": True},)}, "it is for gap, and for opening"),
    ],
)
def test_what_cannot_be_is_refused(change, says):
    with pytest.raises(SpecError, match=says):
        exercise(**change)


def test_every_lobe_is_refused_for_the_opening_of_a_compensated_cam():
    goal = {"goal": "opening", "weight": 1.0, "every_lobe": True}
    with pytest.raises(SpecError, match="not compensated"):
        exercise(magneto=find_magneto("nine-radial"), goals=(goal,))
    # An older file that says so reads as before.
    assert exercise(rules=1, goals=({"goal": "lead", "weight": 1.0, "every_lobe": True},)).goals[0].every_lobe


def test_an_opening_on_every_lobe_needs_every_lobe_seen():
    goal = {"goal": "opening", "weight": 1.0, "every_lobe": True}
    on = exercise(goals=(goal,))
    see = [do.LayStraightedge(True), do.Sight(0.0), do.ConnectLamp(True)]
    lobes = len(on.unit.cam.lobe_peaks_deg)
    for turns, proved in ((2, False), (2 * lobes + 1, True)):
        judged = mark(done(on, *see, *[do.TurnUntil("lamp")] * turns)).rows[0].judged
        assert judged.right and judged.proved is proved, judged.evidence
    assert (
        mark(done(exercise(goals=({"goal": "opening", "weight": 1.0},)), *see, *[do.TurnUntil("lamp")] * 2))
        .rows[0]
        .judged.proved
    )


# ---------------------------------------------------------------------- stories


@pytest.mark.parametrize("seed", range(40))
def test_a_story_of_teeth_follows_the_sign_drawn(seed):
    """Early: kick-back, hot, rough, drop small. Late: weak, hot exhaust, hard to start, larger drop, no kick-back
    (common practice)."""
    found = find_exercise("several-teeth-out")
    told, teeth = story(found, seed), drawn(found, seed, "left").teeth
    early = "kicks back" in told and "drop is small" in told
    late = "does not kick back" in told and "hard to start" in told and "drop is larger" in told
    assert (early, late) == ((True, False) if teeth > 0 else (False, True))
    assert not any(c.isdigit() for c in told)
    assert story(found, None) in told and "kick" not in story(found, None)


def test_a_low_lobe_weakens_every_cylinder_where_the_story_says_so():
    found = find_exercise("one-lobe-low")
    lobes, cylinders = len(found.unit.cam.lobe_peaks_deg), find_installation("seven-radial-left").engine.cylinders
    assert not found.unit.compensated
    assert all(len(places_of_lobe(lobes, cylinders, lobe)) == cylinders for lobe in range(1, lobes + 1))
    assert "Every cylinder" in found.story and "One cylinder" not in found.story


# ---------------------------------------------------------------------- timing lights


@pytest.mark.parametrize("kind", ["open", "closed", "buzzer", "plain"])
def test_each_light_shows_the_opening_by_its_kind(kind):
    on = exercise(tray={"lamp": True, "lamp_kind": kind})
    room = acted(begin(on, 3), do.ConnectLamp(True))
    if kind == "plain":
        assert acted(room, do.TurnUntil("lamp")).said.plain == "light all the way round"
        assert instruments.shows_open(room) is None
        room = acted(room, do.TakeCoilOff(True))
    burns = {"open": "light", "closed": "dark", "buzzer": "buzzes high", "plain": "dark"}
    for _ in range(2):
        room = acted(room, do.TurnUntil("lamp"))
        if instruments.shows_open(room):
            break
    assert instruments.lamp(room).plain == burns[kind]
    opens = true_readings(room.bench).opens_deg
    assert min(abs((room.bench.rotor_deg - o + 180) % 360 - 180) for o in opens) < 0.3
    # With the switch off a sound lead grounds it: none shows anything but closed.
    grounded = acted(room, bench.SwitchIgnition(False), do.TurnUntil("lamp"))
    assert grounded.said.plain.endswith("all the way round") and not instruments.shows_open(grounded)


# ---------------------------------------------------------------------- closed up


def on_engine() -> Exercise:
    return exercise(
        magneto=None,
        installation=find_installation("seven-radial-left"),
        start={},
        tray={"lamp": True, "straightedge": "0.5 mm", "meter": True},
        faults=({"kind": "dry-felt"},),
        felt_drops=2,
        goals=({"goal": "secured", "weight": 1.0},),
    )


OPENED = (do.Chock(True), do.SparkPlugs(True), do.TurnPropeller(20.0), do.ConnectLamp(True), do.LayStraightedge(True))
CLOSED: dict[str, tuple[do.Act, ...]] = {
    "timing light off": (do.ConnectLamp(False),),
    "straightedge off": (do.LayStraightedge(False),),
    "felt oiled": (do.PressFelt(), do.OilFelt(1), do.OilFelt(1)),
    "proved again": (bench.PullPlug(True), do.MeterLead()),
    "plug in": (bench.PullPlug(False),),
    "leads on their plugs": (do.SparkPlugs(False), do.PlugLeads(True)),
    "chocks": (do.LeaveAsIs("chocks"),),
}


def test_closed_up_whole_counts_whole():
    acts = [act for acts in CLOSED.values() for act in acts]
    row = mark(done(on_engine(), *OPENED, *acts)).rows[0]
    assert row.full and row.evidence == says("Everything is closed up.")


@pytest.mark.parametrize("left_out", CLOSED)
def test_each_thing_left_is_named(left_out):
    acts = [act for name, acts in CLOSED.items() if name != left_out for act in acts]
    pulled = [bench.PullPlug(True)] if left_out == "plug in" else []
    row = mark(done(on_engine(), *OPENED, *acts, *pulled)).rows[0]
    assert not row.full and left_out in row.evidence


@pytest.mark.parametrize("drops", [1, 3])
def test_oil_is_given_as_the_manual_says(drops):
    acts = [act for name, acts in CLOSED.items() if name != "felt oiled" for act in acts]
    row = mark(done(on_engine(), *OPENED, *acts, do.OilFelt(drops))).rows[0]
    assert "felt oiled" in row.evidence


def test_what_was_proved_or_decided_before_the_last_change_does_not_count():
    acts = [act for acts in CLOSED.values() for act in acts]
    after = (bench.TightenLock(False), bench.TightenLock(True))
    assert "proved again" in mark(done(on_engine(), *OPENED, *acts, *after)).rows[0].evidence
    turned = (do.SparkPlugs(True), do.TurnPropeller(5.0), do.SparkPlugs(False), do.PlugLeads(True))
    assert "chocks" in mark(done(on_engine(), *OPENED, *acts, *turned)).rows[0].evidence


def test_leads_go_on_plugs_that_are_in():
    room = begin(on_engine(), 1)
    with pytest.raises(SpecError, match="put them in first"):
        acted(room, do.SparkPlugs(True), do.PlugLeads(True))


@pytest.mark.parametrize(("dry", "pressed"), list(product((True, False), repeat=2)))
def test_a_felt_shows_oil_or_not(dry, pressed):
    faults = ({"kind": "dry-felt"},) if dry else ()
    room = begin(exercise(faults=faults, felt_drops=2), 1)
    room = acted(room, *([do.OilFelt(1)] if pressed else []), do.PressFelt())
    assert ("dry" in room.said.plain) == (dry and not pressed)


def test_the_orders_of_work_are_told_in_the_same_words_everywhere():
    told = [
        find_exercise("gap-wrong").hints,
        find_exercise("one-lobe-low").hints,
        efficient_path(begin(find_exercise("gap-wrong"), 1)),
    ]
    assert all(ORDERS in lines for lines in told)
    guide = resources() / "guide"
    for page in ("practice.md", "trainee.md"):
        assert ORDERS in (guide / page).read_text(encoding="utf-8")
