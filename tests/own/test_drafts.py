"""Drafts of files of one's own: nothing can be forgotten, refusals stand where they belong, sources are kept."""

from __future__ import annotations

import json
import os
import subprocess
import sys

import pytest
from jsonschema import Draft202012Validator

from magview.forms.entry import NUMERIC
from magview.forms.typed import allowed, bounds, read, written
from magview.job.schema import schema
from magview.own.compare import differences, nearest, results, shipped_item, warnings
from magview.own.drafts import OWN, Draft, Note, Own, check, draft_of, with_note, with_value
from magview.own.drafts import SHIPPED as OF_SHIPPED
from magview.own.fields import KINDS, MODELS, entries, on_page, pages_of
from magview.own.files import file_text, keeper, open_file, take
from magview.own.measured import lift_base, on_an_engine, with_lift, with_trials, with_worked_out
from magview.physics.cam.breaker import lift_curve
from magview.physics.cam.setting import InternalTiming
from magview.physics.trials.trial import Trial
from magview.spec.base import SpecError
from magview.spec.files import dump_json, read_engine, read_installation, read_magneto, validate, write_text
from magview.spec.library import find_engine, find_installation, find_magneto, resources, shipped_names
from tests.magnetos import on_the_published_coupling
from tests.physics.trials.plates import plate_at
from tests.wording import says

SHIPPED = [(kind, name) for kind in KINDS for name in shipped_names(f"{kind}s")]
READERS = {"magneto": read_magneto, "engine": read_engine}


def own_of(kind, name):
    return take(Own(), shipped_item(kind, name))


def leaves(part, defs, path=""):
    """Names of all fields in a JSON Schema: a second way to them, past our own models."""
    if "$ref" in part:
        yield from leaves(defs[part["$ref"].rpartition("/")[2]], defs, path)
        return
    for branch in (*part.get("anyOf", ()), *part.get("oneOf", ())):
        yield from leaves(branch, defs, path)
    if "properties" in part:
        for name, inside in part["properties"].items():
            yield from leaves(inside, defs, f"{path}.{name}".lstrip("."))
    elif part.get("type") != "null" and not {"anyOf", "oneOf"} & set(part):
        yield path


@pytest.mark.parametrize("kind", KINDS)
def test_every_field_of_the_file_is_asked_for_and_explained(kind):
    whole = schema(kind)
    wanted = {p for p in leaves(whole, whole["$defs"]) if p.rpartition(".")[2] != "format"}
    wanted = {p for p in wanted if not p.startswith("sources")}
    if kind == "installation":  # its magneto and engine are files of their own, asked for as such
        wanted = {p.partition(".")[0] if p.startswith(("magneto", "engine")) else p for p in wanted}
    assert {entry.field for entry in entries(kind).values()} == wanted
    asked_once = [path for page in pages_of(kind) for path in on_page(kind, page)]
    assert len(asked_once) == len(set(asked_once))
    for entry in entries(kind).values():
        for words in (entry.label, entry.meaning, entry.rule):
            assert (words and words[0].isupper()) or words[0].isdigit(), entry.path
        assert entry.meaning.endswith(".") and entry.rule.endswith(".")


def test_choices_are_the_files_own():
    for kind in KINDS:
        whole = json.dumps(schema(kind))
        for entry in entries(kind).values():
            for value, _ in entry.choices:
                assert json.dumps(value) in whole or isinstance(value, bool), entry.path


@pytest.mark.parametrize(("kind", "name"), SHIPPED)
def test_a_shipped_file_makes_a_complete_draft_and_the_same_file_again(kind, name, tmp_path):
    item = shipped_item(kind, name)
    own = own_of(kind, name)
    checked = check(own, kind)
    assert checked.item == item and not checked.missing and not checked.refused
    text = file_text(own, kind, tmp_path / "mine.json")
    assert list(Draft202012Validator(schema(kind)).iter_errors(json.loads(text))) == []
    (tmp_path / "mine.json").write_text(text, encoding="utf-8")
    again, found = open_file(Own(), tmp_path / "mine.json")
    assert found == kind and check(again, kind).item == item


@pytest.mark.parametrize(("kind", "name"), [s for s in SHIPPED if s[0] != "installation"])
def test_a_field_is_missing_exactly_where_the_file_without_it_is_refused(kind, name, tmp_path):
    """Second method: the shipped file with the field taken out, read as any file is."""
    folder = resources() / f"{kind}s"
    own = own_of(kind, name)
    for path, entry in entries(kind).items():
        if path not in own.draft(kind).values:
            continue
        data = json.loads((folder / f"{name}.json").read_text(encoding="utf-8"))
        part = data
        *parts, last = entry.field.split(".")
        for step in parts:
            part = part[step]
        del part[last]
        target = tmp_path / "without.json"
        target.write_text(json.dumps(data), encoding="utf-8")
        try:
            READERS[kind](target)
            stands = True
        except SpecError:
            stands = False
        draft = own.draft(kind)
        for other in entries(kind).values():
            if other.field == entry.field:
                draft = with_value(draft, other.path, None)
        checked = check(own.put(draft), kind)
        assert (checked.item is not None) == stands, path
        if not stands:
            assert path in checked.missing or checked.refused or set(checked.missing), path


WRONG = [
    ("magneto", "poles", 3),
    ("magneto", "poles", 4.5),
    ("magneto", "e_gap_deg", 50.0),
    ("magneto", "gap_limits_mm[1]", 0.1),
    ("magneto", "cam.lobe_peaks_deg", (0.0, 40.0, 100.0)),
    ("magneto", "cam.lobe_peaks_deg", (1.0, 90.0)),
    ("magneto", "cam.lobe_peaks_deg", (0.0, 400.0)),
    ("magneto", "cam.profile.lift_mm", "a bit"),
    ("magneto", "cam.profile.dwell_deg", -3.0),
    ("magneto", "breaker.heel_arm_mm", 60.0),
    ("magneto", "breaker.pivot_distance_mm", 5.0),
    ("magneto", "backplate.range_deg[1]", -7.0),
    ("magneto", "designed_setting.backplate_deg", 20.0),
    ("magneto", "designed_setting.gap_mm", 2.0),
    ("magneto", "condition.lobe_lift_error_mm", (0.1,)),
    ("magneto", "electrical.third_harmonic", 3.0),
    ("engine", "firing_order", (1, 2, 3)),
    ("engine", "firing_order", (2, 1, 3, 4, 5, 6, 7)),
    ("engine", "rod_mm", 10.0),
    ("engine", "articulation.link_rod_mm", 60.0),
    ("engine", "timing_tolerance_deg", 0.0),
    ("installation", "coupling.magneto_teeth", 0),
    ("installation", "rotor_turns_per_crank_turn", 99.0),
]  # fmt: skip


@pytest.mark.parametrize(("kind", "path", "value"), WRONG)
def test_a_refusal_stands_at_its_field_in_words_of_the_trade(kind, path, value):
    own = own_of(kind, "seven-radial-left" if kind == "installation" else "seven-radial")
    checked = check(own.put(with_value(own.draft(kind), path, value)), kind)
    assert checked.item is None and set(checked.refused) == {path}
    sentence = checked.refused[path]
    assert "_" not in sentence and "\n" not in sentence


def test_a_cam_that_the_heel_cannot_follow_is_refused_at_the_heel():
    own = own_of("magneto", "seven-radial")
    draft = with_value(own.magneto, "cam.profile.rise_deg", 2.0)
    assert set(check(own.put(draft), "magneto").refused) == {"breaker.heel_radius_mm"}


@pytest.mark.parametrize(
    ("path", "text", "value"),
    [
        ("marks.radius_mm", "36,5", 36.5),
        ("marks.radius_mm", "1 in", 25.4),
        ("gap_limits_mm[0]", "9 thou", 0.2286),
        ("e_gap_deg", "11,5°", 11.5),
        ("poles", "4", 4),
        ("cam.lobe_peaks_deg", "0; 41,4; 82.29", (0.0, 41.4, 82.29)),
        ("cam.lobe_peaks_deg", "0 90 180 270", (0.0, 90.0, 180.0, 270.0)),
        ("cam.lobe_peaks_deg", "0, 90,5, 180°", (0.0, 90.5, 180.0)),
        ("condition.lobe_lift_error_mm", "0; 1 thou; -0,01 mm", (0.0, 0.0254, -0.01)),
        ("detent.torque_nm", "0,35 N·m", 0.35),
        ("name", "  Left one ", "Left one"),
        ("e_gap_deg", "  ", None),
    ],
)
def test_entries_are_read_as_people_type_them(path, text, value):
    entry = entries("magneto")[path]
    assert read(entry, text) == (pytest.approx(value) if isinstance(value, float | tuple) else value)
    if value is not None:
        again = read(entry, written(entry, read(entry, text)))
        assert again == read(entry, text), "what is shown reads the same"


def test_a_firing_order_is_read_however_it_is_written():
    entry = entries("engine")["firing_order"]
    for text in ("1-3-5-7-2-4-6", "1,3,5,7,2,4,6", "1; 3; 5; 7; 2; 4; 6", "1 3 5 7 2 4 6"):
        assert read(entry, text) == (1, 3, 5, 7, 2, 4, 6)


@pytest.mark.parametrize("text", ["0,90,180,270", "0; ninety", "0; 1.234,5"])
def test_a_list_that_cannot_be_told_apart_is_asked_for(text):
    with pytest.raises(SpecError):
        read(entries("magneto")["cam.lobe_peaks_deg"], text)


def test_inches_are_shown_and_read_as_inches():
    entry = entries("magneto")["marks.radius_mm"]
    assert written(entry, 25.4, inches=True) == "1 in"
    assert read(entry, "0,5", inches=True) == pytest.approx(12.7)
    # The model's least length, 0.001 mm, over 25.4 mm an inch.
    assert "3.937e-05 in" in allowed(entry, inches=True)


def test_limits_are_the_models_own():
    """Second method: a value just inside is taken, one just outside is refused at the field."""
    own = own_of("magneto", "seven-radial")
    for path in ("marks.radius_mm", "detent.torque_nm", "condition.screw_creep_deg", "electrical.coil_turns"):
        found = bounds(entries("magneto")[path])
        for end, sign in (("ge", -1), ("le", 1)):
            for value, fine in ((found[end], True), (found[end] + sign * 1e-3 * max(1.0, abs(found[end])), False)):
                checked = check(own.put(with_value(own.magneto, path, value)), "magneto")
                assert (path not in checked.refused) == fine, (path, value)


def bounds_in_schema(kind, name):
    """What the published schema says a field's numbers may be: a second way, past our own reading of the models."""
    whole = schema(kind)
    node = whole
    for step in name.split("."):
        found = [node]
        for part in found:
            part = whole["$defs"][part["$ref"].rpartition("/")[2]] if "$ref" in part else part
            found.extend((*part.get("anyOf", ()), *part.get("oneOf", ())))
            if step in part.get("properties", {}):
                node = part["properties"][step]
                break
    words = {"minimum": "ge", "exclusiveMinimum": "gt", "maximum": "le", "exclusiveMaximum": "lt"}
    found = [node]
    for part in found:
        inside = part.get("items", {})
        prefixed = part.get("prefixItems", ())
        found.extend((*part.get("anyOf", ()), *([inside] if isinstance(inside, dict) and inside else ()), *prefixed))
    return {words[k]: v for part in found for k, v in part.items() if k in words}


@pytest.mark.parametrize("kind", KINDS)
def test_every_limit_told_is_the_published_schemas(kind):
    numeric = [e for e in entries(kind).values() if e.kind in NUMERIC]
    for entry in numeric:
        assert bounds(entry) == bounds_in_schema(kind, entry.field), entry.path
    assert sum(bool(bounds(e)) for e in numeric) > len(numeric) / 2, "most have some"


@pytest.mark.parametrize(
    ("kind", "path", "words"),
    [
        ("magneto", "e_gap_deg", says("Allowed: between {low} and {high}, neither included.", low="0°", high="90°")),
        ("engine", "timing_tolerance_deg", says("Allowed: above {low}, up to {high}.", low="0°", high="30°")),
        ("magneto", "cam.lobe_peaks_deg", says("Allowed: {low} and more, below {high}.", low="0°", high="360°")),
        ("magneto", "poles", "Allowed: 2 to 12."),
        ("magneto", "condition.heel_wear_mm", says("Allowed: {low} to {high}.", low="0 mm", high="10 mm")),
        ("magneto", "condition.lobe_lift_error_mm", says("Allowed: {low} to {high}.", low="-10 mm", high="10 mm")),
        ("magneto", "electrical.inductance_h", says("Allowed: {low} to {high}.", low="0.000001 H", high="10 H")),
        ("magneto", "name", ""),
        ("magneto", "contact_screw.range_deg[0]", ""),  # ten turns either way is no limit that anybody meets
    ],
)
def test_limits_are_told_as_people_write_them(kind, path, words):
    """The numbers as guide: files has them."""
    assert allowed(entries(kind)[path]) == words


def test_limits_are_told_in_inches_where_inches_are_shown():
    entry = entries("magneto")["condition.heel_wear_mm"]
    assert allowed(entry, inches=True) == says("Allowed: {low} to {high}.", low="0 in", high="0.3937 in")


def test_a_value_is_shown_as_it_is_typed_and_known_for_the_same_again():
    order = entries("engine")["firing_order"]
    assert written(order, (1, 3, 5, 2, 4)) == "1-3-5-2-4"
    assert read(order, written(order, (1, 3, 5, 2, 4))) == (1, 3, 5, 2, 4)
    length = entries("magneto")["marks.radius_mm"]
    assert written(length, None) == "" and written(length, "about 30") == "about 30"
    # 36 mm over 25.4 mm an inch; what is 35.9999 mm must not be written back (tests/ui/kit/test_forms.py).
    assert written(length, 36.0, inches=True) == "1.41732 in"


# ---------------------------------------------------------------------- judging


def test_link_rods_of_an_engine_that_has_none_are_refused_at_the_link_rods():
    own = own_of("engine", "seven-radial")
    checked = check(own.put(with_value(own.engine, "arrangement", "inline")), "engine")
    assert list(checked.refused) == ["articulation.master_cylinder"]
    assert "radial" in checked.refused["articulation.master_cylinder"]


def test_text_that_was_no_number_is_asked_for_again_even_where_it_would_be_one():
    """A draft holds text only for what could not be read: it was never taken, and is not quietly taken now."""
    own = own_of("magneto", "seven-radial")
    for text, told in (("4", "“4” could not be taken: type it again"), ("about four", "is not a number")):
        checked = check(own.put(with_value(own.magneto, "poles", text)), "magneto")
        assert checked.item is None and told in checked.refused["poles"]


def test_half_a_range_is_no_range():
    own = own_of("magneto", "seven-radial")
    checked = check(own.put(with_value(own.magneto, "gap_limits_mm[1]", None)), "magneto")
    assert checked.item is None and checked.missing == ("gap_limits_mm[1]",) and not checked.refused


def test_half_a_range_that_may_be_left_out_is_missing_its_other_end():
    own = own_of("engine", "seven-radial")

    def checked(**ends):
        engine = own.engine
        for path, value in (("drop_rpm[0]", ends.get("low")), ("drop_rpm[1]", ends.get("high"))):
            engine = with_value(engine, path, value)
        return check(own.put(engine), "engine")

    assert checked(low=40.0, high=120.0).item.drop_rpm == (40.0, 120.0)
    assert checked(high=120.0).missing == ("drop_rpm[0]",) and checked(low=40.0).missing == ("drop_rpm[1]",)
    assert checked().item is not None and checked().item.drop_rpm is None


def test_a_note_taken_back_leaves_the_value_without_a_source():
    own = own_of("magneto", "seven-radial")
    entry = entries("magneto")["e_gap_deg"]
    noted = with_note(own.magneto, "e_gap_deg", Note("manual", "p. 3"))
    assert noted.note(entry) == Note("manual", "p. 3")
    plain = with_note(noted, "e_gap_deg", Note())
    assert plain.note(entry) == Note() and "e_gap_deg" not in plain.notes
    without, with_one = (check(own.put(d), "magneto").sourceless for d in (plain, noted))
    assert without == with_one + 1


# ---------------------------------------------------------------------- sources


def test_sources_are_kept_field_by_field_and_old_files_stay_as_they_were(tmp_path):
    own = own_of("magneto", "seven-radial")
    before = file_text(own, "magneto", tmp_path / "a.json")
    assert "sources" not in before
    draft = with_note(own.magneto, "e_gap_deg", Note("manual", "page 12"))
    draft = with_note(draft, "gap_limits_mm", Note("measured", "Büchsenlehre"))
    text = file_text(own.put(draft), "magneto", tmp_path / "a.json")
    assert json.loads(text)["sources"] == [
        {"field": "e_gap_deg", "origin": "manual", "note": "page 12"},
        {"field": "gap_limits_mm", "origin": "measured", "note": "Büchsenlehre"},
    ]
    assert list(Draft202012Validator(schema("magneto")).iter_errors(json.loads(text))) == []
    (tmp_path / "a.json").write_text(text, encoding="utf-8")
    again, _ = open_file(Own(), tmp_path / "a.json")
    assert again.magneto.notes["e_gap_deg"] == Note("manual", "page 12")
    hash(read_magneto(tmp_path / "a.json"))  # readings are kept by magneto


@pytest.mark.parametrize(
    ("sources", "told"),
    [
        ([{"field": "e_gap", "origin": "manual"}], "“e_gap”"),
        ([{"field": "poles", "origin": "manual"}, {"field": "poles", "origin": "assumed"}], "already"),
        ([{"field": "poles", "origin": "hearsay"}], "origin"),
    ],
)
def test_sources_of_nothing_are_refused(sources, told, tmp_path):
    data = json.loads(dump_json(find_magneto("seven-radial")))
    data["sources"] = sources
    (tmp_path / "m.json").write_text(json.dumps(data), encoding="utf-8")
    with pytest.raises(SpecError, match=told):
        read_magneto(tmp_path / "m.json")


def test_a_value_of_ones_own_is_no_longer_the_shipped_files():
    draft = draft_of(find_magneto("seven-radial"), "seven-radial")
    assert {note.origin for note in draft.notes.values()} == {"shipped"}
    changed = with_value(draft, "e_gap_deg", 12.0)
    assert "e_gap_deg" not in changed.notes and "poles" in changed.notes
    assert check(Own(magneto=changed), "magneto").sourceless == 1
    manual = with_note(changed, "e_gap_deg", Note("manual", "p. 3"))
    assert with_value(manual, "e_gap_deg", 12.5).notes["e_gap_deg"].text == "p. 3", "a slip put right"


# ---------------------------------------------------------------------- measured and worked out


def test_trials_fill_in_lift_and_setting_and_say_so():
    """The true lobe is 15 % higher: then the draft asks for the plates the trials had, before not."""
    own = own_of("magneto", "seven-radial")
    item = check(own, "magneto").item
    true = validate(
        MODELS["magneto"],
        {**dict(item), "cam": item.cam.model_copy(
            update={"profile": item.cam.profile.model_copy(update={"lift_mm": 1.15 * item.cam.profile.lift_mm})}
        )},
        "true",
    )  # fmt: skip
    curve = lift_curve(true.cam.profile, true.breaker)
    gaps = (0.12, 0.18, 0.24, 0.3, 0.36)
    designed = float(curve.before_top_deg(curve.top_mm - item.designed_setting.gap_mm))
    trials = [
        Trial(float(curve.before_top_deg(curve.top_mm - gap)) - designed, gap - 0.003, gap + 0.003) for gap in gaps
    ]
    draft = with_trials(own, trials)
    fitted = check(own.put(draft), "magneto").item
    for magneto, fine in ((item, False), (fitted, True)):
        timing = InternalTiming(magneto)
        off = max(abs(plate_at(timing, g) - t.backplate_deg) for g, t in zip(gaps, trials, strict=True))
        assert (off < 0.25) == fine, off
    for field in ("cam.profile.lift_mm", "cam.profile.rise_deg", "designed_setting.gap_mm"):
        assert draft.notes[field].origin == "measured" and "5 trials" in draft.notes[field].text
    assert check(own.put(draft), "magneto").item is not None


def test_trials_without_a_magneto_or_without_trials_are_refused():
    with pytest.raises(SpecError, match="no trials"):
        with_trials(own_of("magneto", "seven-radial"), ())
    with pytest.raises(SpecError, match="complete"):
        with_trials(Own(), (Trial.blades(0.0, 0.2, 0.23),))


def test_a_traced_lift_takes_the_place_of_the_drawn_one():
    own = own_of("magneto", "seven-radial")
    profile = find_magneto("traced-six").cam.profile
    draft = with_lift(own.magneto, profile, "table")
    item = check(own.put(draft), "magneto")
    # The traced lobe is wider than a quarter turn: refused at the lobes, not lost.
    assert set(item.refused) == {"cam.lobe_peaks_deg"}
    item = check(own.put(with_value(draft, "cam.lobe_peaks_deg", (0.0, 180.0))), "magneto").item
    assert item.cam.profile == profile
    assert draft.values["cam.profile.lift_mm"] == own.magneto.values["cam.profile.lift_mm"], "kept"


def test_what_follows_from_other_fields_is_worked_out():
    """Common practice: a spark at every pole; rotor speed = cylinders / (2 × poles) of crank speed."""
    own = own_of("installation", "nine-radial-left")
    ratio = with_worked_out(own, own.installation, "rotor_turns_per_crank_turn")
    assert ratio.values["rotor_turns_per_crank_turn"] == pytest.approx(9 / 8)
    assert ratio.notes["rotor_turns_per_crank_turn"].origin == "worked-out"
    cam = with_worked_out(own, own.magneto, "cam.turns_per_rotor_turn")
    assert cam.values["cam.turns_per_rotor_turn"] == pytest.approx(4 / 9)
    fresh = own.put(with_value(Draft("magneto"), "poles", 4))
    lobes = with_worked_out(fresh, fresh.magneto, "cam.lobe_peaks_deg").values["cam.lobe_peaks_deg"]
    assert lobes == pytest.approx((0.0, 90.0, 180.0, 270.0))
    rods = with_worked_out(own, own.engine, "articulation.link_rod_mm")
    assert rods.values["articulation.link_rod_mm"] == pytest.approx(272 - 64)
    with pytest.raises(SpecError, match="poles"):
        with_worked_out(Own(), Draft("magneto"), "cam.turns_per_rotor_turn")
    with pytest.raises(SpecError, match="not complete"):
        with_worked_out(Own(), Draft("installation"), "rotor_turns_per_crank_turn")


def test_what_is_worked_out_says_what_it_must_have_first():
    own = own_of("magneto", "seven-radial")
    for path, without, told in (
        ("cam.turns_per_rotor_turn", "cam.lobe_peaks_deg", "the tops of the lobes first"),
        ("cam.lobe_peaks_deg", "poles", "poles of the rotor and the cam's turns"),
    ):
        with pytest.raises(SpecError, match=told):
            with_worked_out(own, with_value(own.magneto, without, None), path)
    for without in ("rod_mm", "articulation.knuckle_radius_mm"):
        engine = with_value(own_of("engine", "seven-radial").engine, without, None)
        with pytest.raises(SpecError, match="connecting rod and the knuckle"):
            with_worked_out(own, engine, "articulation.link_rod_mm")


@pytest.mark.parametrize(("turns", "lobes"), [(0.3, "13.33"), (0.05, "80"), (8.0, "0.5")])
def test_a_spark_at_every_pole_takes_a_whole_number_of_lobes(turns, lobes):
    """Four poles over so many turns; 36 lobes are the most a file holds."""
    own = own_of("magneto", "seven-radial")
    draft = with_value(own.magneto, "cam.turns_per_rotor_turn", turns)
    with pytest.raises(SpecError, match=f"is {lobes}; it must be a whole number from 1 to 36"):
        with_worked_out(own, draft, "cam.lobe_peaks_deg")
    assert check(own.put(draft), "magneto") is not None


def test_trials_bend_a_traced_lift_too():
    """Trials that the traced file itself foretells leave its lift as it is, and fill in the traced points."""
    own = own_of("magneto", "traced-six")
    item = check(own, "magneto").item
    timing = InternalTiming(item)
    trials = [Trial.reading(plate_at(timing, gap), gap) for gap in (0.2, 0.25, 0.3, 0.35)]
    draft = with_trials(own, trials)
    assert draft.values["cam.profile.contact_lift_mm"] == pytest.approx(item.cam.profile.contact_lift_mm, rel=0.02)
    assert draft.notes["cam.profile.angle_deg"] == Note("measured", "4 trials on the bench")
    one = with_trials(own, trials[:1])
    assert one.notes["cam.profile.angle_deg"].text == says("one trial on the bench")


def test_trials_that_cannot_be_used_are_refused_in_one_sentence():
    own = own_of("magneto", "seven-radial")
    with pytest.raises(SpecError, match="201 trials are given; at most 200"):
        with_trials(own, [Trial.reading(0.0, 0.23)] * 201)
    # 1 mm where the lobe lifts 0.58 mm: no cam at all like this one.
    with pytest.raises(SpecError, match="contradict one another or the file"):
        with_trials(own, [Trial.reading(-5.0, 1.0)])


def test_a_lift_is_read_against_the_magneto_or_while_it_is_unfinished_against_what_is_known_of_it():
    own = own_of("magneto", "seven-radial")
    assert lift_base(own) == check(own, "magneto").item
    started = own.put(with_value(with_value(own.magneto, "poles", None), "cam.turns_per_rotor_turn", 0.5))
    base = lift_base(started)
    # One lobe, so that a trace over any part of a turn goes with it; the arms are those given.
    assert base.cam.lobe_peaks_deg == (0.0,) and base.cam.turns_per_rotor_turn == 0.5
    assert (base.breaker.contact_arm_mm, base.breaker.heel_arm_mm) == (27.5, 17.0)
    for turns, arm in (("half", 27.5), (0.0, None), (50.0, "long"), (1.0, 2000.0)):
        odd = with_value(
            with_value(Draft("magneto"), "cam.turns_per_rotor_turn", turns), "breaker.contact_arm_mm", arm
        )
        base = lift_base(Own(magneto=odd))
        assert base.cam.turns_per_rotor_turn == 1.0, "what cannot be is not taken"
        assert base.breaker == find_magneto("traced-six").breaker, "one arm alone has no ratio"


@pytest.mark.parametrize("name", shipped_names("engines"))
def test_an_engine_alone_is_pictured_with_a_magneto_that_turns_as_its_cylinders_ask(name):
    """Common practice: rotor turns per crank turn = cylinders over twice the poles."""
    engine = find_engine(name)
    shown = on_an_engine(engine)
    assert shown.engine == engine and shown.magneto.poles == 4
    assert shown.rotor_turns_per_crank_turn == pytest.approx(engine.cylinders / 8)
    assert on_an_engine(shown) is shown


# ---------------------------------------------------------------------- comparing


def test_what_an_installation_comes_to_by_counting_teeth():
    """19 and 20 teeth at 7/8 of crank speed: a tooth is 360/19, a vernier step 360/380, over 7/8 at the crank."""
    told = {r.label: r.words() for r in results(on_the_published_coupling())}
    assert told["One tooth, at the crank"] == f"{360 / 19 / 0.875:.2f}°"
    assert told["One vernier step, at the crank"] == told["Finest step, at the crank"] == f"{360 / 380 / 0.875:.2f}°"
    assert told["Wanted, before top dead centre"] == "25.00°"
    assert told["E-gap, at the crank"] == f"{11 / 0.875:.2f}°"
    firing = find_installation("seven-radial-right").engine.firing_btdc_deg.model_copy(update={"right": 22.0})
    staggered = find_installation("seven-radial-right")
    staggered = staggered.model_copy(
        update={"engine": staggered.engine.model_copy(update={"firing_btdc_deg": firing})}
    )
    wanted = {r.label: r.words() for r in results(staggered)}["Wanted, before top dead centre"]
    assert wanted == "22.00°", "the right magneto's own"


def test_what_cannot_be_had_is_said_so_and_lengths_in_the_unit_shown():
    magneto = find_magneto("seven-radial")
    as_new = {r.label: r for r in results(magneto)}
    assert as_new["Largest gap on lobe 1"].words() == "0.330 mm"
    assert as_new["Largest gap on lobe 1"].words(inches=True) == "0.0130 in"
    # 1° late puts the straightedge 36·tan 1° beside the mark.
    assert as_new["At the rim for 1° late"].words() == "0.628 mm"
    assert as_new["Off the E-gap"].words() == "0.00°"
    worn = magneto.model_copy(update={"condition": magneto.condition.model_copy(update={"heel_wear_mm": 0.5})})
    assert {r.label: r.words() for r in results(worn)}["Lobe 1 opens, past neutral"] == "cannot be had"


def test_a_choice_that_differs_is_told_in_words():
    own = own_of("magneto", "seven-radial")
    draft = with_value(own.magneto, "rotation", "clockwise")
    draft = with_value(with_value(draft, "contact_screw.positive_is_clockwise", False), "detent.torque_nm", None)
    told = {d.entry.path: (d.own, d.other) for d in differences(draft, "seven-radial")}
    assert set(told) == {"rotation", "contact_screw.positive_is_clockwise", "detent.torque_nm"}
    assert told["rotation"] == ("clockwise", "anticlockwise")
    assert told["detent.torque_nm"][0] == "–"
    assert len(set(told["contact_screw.positive_is_clockwise"])) == 2
    assert not set(told["contact_screw.positive_is_clockwise"]) & {"True", "False", "0", "1"}


def test_a_file_that_is_allowed_and_looks_wrong_is_warned_of_in_the_names_people_know():
    """Seven cylinders and four poles need 7/8; a seven-cylinder radial fires every other cylinder."""
    good = find_installation("seven-radial-left")
    assert warnings(good) == warnings(good.engine) == warnings(good.magneto) == []
    (fast,) = warnings(good.model_copy(update={"rotor_turns_per_crank_turn": 1.0}))
    assert fast.startswith("“Rotor turns per crank turn” is 1;") and "7/8" in fast and "rotor_turns" not in fast
    in_a_row = good.engine.model_copy(update={"firing_order": (1, 2, 3, 4, 5, 6, 7)})
    (order,) = warnings(in_a_row)
    assert order.startswith("“Firing order” puts cylinder")
    assert warnings(good.model_copy(update={"engine": in_a_row})) == [order]


@pytest.mark.parametrize(("kind", "name"), SHIPPED)
def test_a_shipped_file_is_nearest_to_itself_and_differs_in_nothing(kind, name):
    draft = own_of(kind, name).draft(kind)
    assert nearest(draft) == name or not differences(draft, nearest(draft))
    assert differences(draft, name) == []


def test_what_differs_is_told_with_what_it_comes_to():
    own = own_of("magneto", "four-opposed")
    draft = with_value(own.magneto, "e_gap_deg", 14.0)
    assert nearest(draft) == "four-opposed"
    (only,) = differences(draft, "four-opposed")
    assert (only.entry.path, only.own, only.other) == ("e_gap_deg", "14°", "13°")
    opens = results(check(own.put(draft), "magneto").item)[0]
    assert opens.value == pytest.approx(14.0), "as designed it opens at the E-gap"


def test_an_engine_without_link_rods_has_even_centres_and_the_textbooks_piston():
    """Crank and rod (guide: theory-engine): x = r cos a + √(l² − r² sin² a)."""
    from math import cos, radians, sin, sqrt

    engine = find_engine("six-inline")
    told = {r.label: r.value for r in results(engine)}
    r, rod, a = engine.stroke_mm / 2, engine.rod_mm, radians(engine.firing_btdc_deg.left)
    drop = r + rod - r * cos(a) - sqrt(rod**2 - (r * sin(a)) ** 2)
    assert told["No. 1 down at the left spark"] == pytest.approx(drop, abs=1e-9)
    assert told["Dead centres uneven by up to"] == pytest.approx(0.0, abs=1e-9)
    assert told["Between two sparks"] == pytest.approx(120.0)


# ---------------------------------------------------------------------- files


def test_an_installation_names_files_by_their_paths_and_moves_with_them(tmp_path):
    (tmp_path / "a" / "parts").mkdir(parents=True)
    magneto, engine = tmp_path / "a" / "parts" / "m.json", tmp_path / "a" / "e.json"
    write_text(magneto, dump_json(find_magneto("seven-radial")))
    write_text(engine, dump_json(find_engine("seven-radial")))
    own = own_of("installation", "seven-radial-left")
    draft = with_value(with_value(own.installation, "magneto", str(magneto)), "engine", str(engine))
    target = tmp_path / "a" / "both.json"
    target.write_text(file_text(own.put(draft), "installation", target), encoding="utf-8")
    data = json.loads(target.read_text(encoding="utf-8"))
    assert (data["magneto"], data["engine"]) == ("parts/m.json", "e.json")
    assert list(Draft202012Validator(schema("installation")).iter_errors(data)) == []
    (tmp_path / "a").rename(tmp_path / "b")
    item = read_installation(tmp_path / "b" / "both.json")
    assert item.magneto == find_magneto("seven-radial")
    again, _ = open_file(Own(), tmp_path / "b" / "both.json")
    assert check(again, "installation").item == item
    # A file that goes is refused where it is named.
    (tmp_path / "b" / "e.json").unlink()
    assert set(check(again, "installation").refused) == {"engine"}


def test_an_installation_may_name_shipped_parts_which_are_written_into_it(tmp_path):
    own = own_of("installation", "seven-radial-left")
    draft = with_value(own.installation, "magneto", f"{OF_SHIPPED}nine-radial")
    draft = with_value(draft, "engine", f"{OF_SHIPPED}nine-radial")
    item = check(own.put(draft), "installation").item
    assert (item.magneto, item.engine) == (find_magneto("nine-radial"), find_engine("nine-radial"))
    data = json.loads(file_text(own.put(draft), "installation", tmp_path / "x.json"))
    assert data["magneto"]["name"] == item.magneto.name, "a file that stands for itself"
    gone = check(own.put(with_value(draft, "engine", f"{OF_SHIPPED}no-such")), "installation")
    assert list(gone.refused) == ["engine"] and "“no-such”" in gone.refused["engine"]


def test_an_installation_without_its_parts_says_which_are_missing():
    own = own_of("installation", "seven-radial-left")
    draft = with_value(with_value(own.installation, "magneto", None), "engine", None)
    checked = check(own.put(draft), "installation")
    assert checked.missing == ("magneto", "engine") and not checked.refused
    unfinished = check(own.put(with_value(own.engine, "rod_mm", None)), "installation")
    assert list(unfinished.refused) == ["engine"] and "engine in this window" in unfinished.refused["engine"]


def test_a_part_on_another_drive_is_named_by_its_whole_path(tmp_path, monkeypatch):
    """Where there are drives, no path leads from one to another, and the standard library says so by ValueError."""
    part = tmp_path / "m.json"
    write_text(part, dump_json(find_magneto("seven-radial")))
    own = own_of("installation", "seven-radial-left")
    own = own.put(with_value(own.installation, "magneto", str(part)))

    def another_drive(path, start):
        raise ValueError("path is on mount 'D:', start on mount 'C:'")

    monkeypatch.setattr(os.path, "relpath", another_drive)
    data = json.loads(file_text(own, "installation", tmp_path / "a" / "x.json"))
    assert data["magneto"] == part.as_posix()


def test_an_installation_of_this_windows_parts_waits_for_them():
    own = own_of("installation", "seven-radial-left")
    assert own.installation.values["magneto"] == OWN
    broken = own.put(with_value(own.magneto, "poles", None))
    checked = check(broken, "installation")
    assert set(checked.refused) == {"magneto"} and "not complete" in checked.refused["magneto"]
    with pytest.raises(SpecError, match="not complete"):
        file_text(broken, "installation", resources() / "x.json")


def test_what_is_no_file_of_ours_is_refused_in_one_sentence(tmp_path):
    for text in ("[]", '{"format": "magview-job/1"}', "{", '{"format": 7}'):
        (tmp_path / "x.json").write_text(text, encoding="utf-8")
        with pytest.raises(SpecError, match=r"x\.json"):
            open_file(Own(), tmp_path / "x.json")


@pytest.mark.process
def test_drafts_are_found_again_after_a_kill_unreadable_text_and_all(tmp_path):
    code = (
        "import os, pathlib\n"
        "from magview.own.drafts import Own, Note, with_value, with_note, draft_of\n"
        "from magview.own.files import keeper\n"
        "from magview.spec.library import find_magneto\n"
        "d = draft_of(find_magneto('nine-radial'), 'nine-radial')\n"
        "d = with_value(d, 'e_gap_deg', 'about eight')\n"
        "d = with_note(d, 'poles', Note('manual', 'Seite 4'))\n"
        f"k = keeper(pathlib.Path({str(tmp_path)!r}))\n"
        "k.keep(Own(magneto=d))\n"
        "os.kill(os.getpid(), 9)\n"
    )
    here = {**os.environ, "PYTHONPATH": os.getcwd()}
    subprocess.run([sys.executable, "-c", code], check=False, env=here, timeout=60)
    found = keeper(tmp_path).recover()
    assert found is not None
    assert found.magneto.values["e_gap_deg"] == "about eight"
    assert found.magneto.notes["poles"] == Note("manual", "Seite 4")
    assert found.magneto.values["cam.lobe_peaks_deg"][1] == find_magneto("nine-radial").cam.lobe_peaks_deg[1]
    assert set(check(found, "magneto").refused) == {"e_gap_deg"}


@pytest.mark.parametrize("text", ["{}", '{"format": "magview-own/1", "drafts": 3}', "nonsense"])
def test_damaged_drafts_are_passed_over(text, tmp_path):
    (tmp_path / "own-1.json").write_text(text, encoding="utf-8")
    assert keeper(tmp_path).recover() is None
    assert (tmp_path / "own-1.json").exists()


def test_strange_values_in_kept_drafts_do_no_harm(tmp_path):
    data = {"format": "magview-own/1", "drafts": {"magneto": {
        "basis": 3, "values": {"poles": {"a": 1}, "unheard": 2, "e_gap_deg": [1, "x"], "name": "N"},
        "notes": {"poles": ["hearsay", "x"], "name": 7}}}}  # fmt: skip
    (tmp_path / "own-1.json").write_text(json.dumps(data), encoding="utf-8")
    found = keeper(tmp_path).recover()
    assert found is not None and dict(found.magneto.values) == {"name": "N"}
    assert check(found, "magneto").item is None


def test_taking_an_installation_brings_its_parts():
    own = take(Own(), find_installation("traced-six-single"))
    assert own.magneto.values["poles"] == 2 and own.engine.values["cylinders"] == 6
    assert not own.empty and Own().empty
