"""Sets: code and file name the same work, names are taken as their owners type them, the key is what is found."""

from __future__ import annotations

import json
import subprocess
import sys
import unicodedata
from hashlib import sha256

import pytest
from hypothesis import given
from hypothesis import strategies as st

from magview.classroom.code import ALPHABET, symbols_of
from magview.classroom.key import answer_key, faults_of, key_csv, key_rows, key_text
from magview.classroom.names import normal, seed_for
from magview.classroom.sets import (
    MAX_IN_CODE,
    UNITS,
    ClassSet,
    _number_of,
    code_of,
    open_set,
    read_set,
    set_id,
    set_of_code,
    why_no_code,
    write_set,
)
from magview.practice.faults import begin
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.state import true_readings
from magview.spec.base import SpecError

GAP = find_exercise("gap-wrong")


def a_set(*names: str, **settings) -> ClassSet:
    exercises = tuple(find_exercise(n) for n in names or ("gap-wrong",))
    return ClassSet(**{"seed": 4711, "exercises": exercises, **settings})


@given(
    st.lists(st.sampled_from(shipped_exercises()), min_size=1, max_size=MAX_IN_CODE),
    st.integers(0, 2**20 - 1),
    st.booleans(),
    st.booleans(),
    st.sampled_from(UNITS),
    st.none() | st.integers(1, 255),
)
def test_a_code_brings_back_the_set(names, seed, own, hints, units, minutes):
    made = a_set(*names, seed=seed, each_their_own=own, hints=hints, units=units, minutes=minutes)
    assert set_of_code(code_of(made).lower()) == made


def test_no_two_shipped_exercises_share_a_number():
    assert len({_number_of(n) for n in shipped_exercises()}) == len(shipped_exercises())


def test_a_code_for_one_exercise_is_short():
    assert len(code_of(a_set()).replace("-", "")) == 14


def test_the_file_names_the_same_set_as_the_code(tmp_path):
    made = a_set("pips", "gap-wrong", title="Tuesday", pupils=("Zoë", "7"), each_their_own=True)
    write_set(tmp_path / "set.json", made)
    assert read_set(tmp_path / "set.json") == made == open_set(str(tmp_path / "set.json"))
    assert set_id(set_of_code(code_of(made))) == set_id(made)
    assert set_id(made) != set_id(made.model_copy(update={"seed": 4712}))


def test_a_file_written_by_hand_may_name_exercises(tmp_path):
    (tmp_path / "own.json").write_text(
        json.dumps({**json.loads(GAP.model_dump_json(exclude_none=True)), "name": "Own"}), encoding="utf-8"
    )
    data = {"format": "magview-class/1", "seed": 5, "exercises": ["pips", "own.json"]}
    (tmp_path / "set.json").write_text(json.dumps(data), encoding="utf-8")
    made = read_set(tmp_path / "set.json")
    assert [e.name for e in made.exercises] == [find_exercise("pips").name, "Own"]
    assert "Own" in why_no_code(made)
    with pytest.raises(SpecError, match="file"):
        code_of(made)


@pytest.mark.parametrize(
    ("change", "says"),
    [
        ({"format": "magview-class/2"}, "newer"),
        ({"seed": -1}, "seed"),
        ({"seed": 1.5}, "seed"),
        ({"exercises": []}, "exercises"),
        ({"exercises": ["no-such"]}, "no-such"),
        ({"minutes": 0}, "minutes"),
        ({"pupils": ["Zoë", "zoe"]}, "cannot be told apart"),
        ({"pupils": ["–"]}, "neither"),
        ({"colour": 1}, "colour"),
    ],
)
def test_a_bad_file_is_refused_in_a_sentence(tmp_path, change, says):
    path = tmp_path / "set.json"
    path.write_text(json.dumps({"format": "magview-class/1", "seed": 5, "exercises": ["pips"], **change}))
    with pytest.raises(SpecError, match=says):
        read_set(path)


def test_a_newer_code_and_one_of_other_exercises_are_refused():
    from magview.classroom.code import Bits, checked

    symbols = symbols_of(code_of(a_set()))
    bits = Bits(symbols)
    bits.take(2)
    newer = Bits()
    newer.put(2, 2)
    newer.put(bits.take(bits.left), 5 * len(symbols) - 2)
    with pytest.raises(SpecError, match="newer"):
        set_of_code(checked(newer.symbols()))
    for place, says in ((-1, "not shipped"), (9, "another version")):
        other = list(symbols)
        other[place] ^= 1
        with pytest.raises(SpecError, match=says):
            set_of_code(checked(other))


@given(st.text(ALPHABET, max_size=31))
def test_random_characters_never_pass_for_a_code_unrefused(text):
    try:
        made = set_of_code(text)
    except SpecError:
        return
    assert symbols_of(code_of(made)) == symbols_of(text)


# ---------------------------------------------------------------------- names


@pytest.mark.parametrize(
    "alike",
    [
        ("Zoë  Ångström", "zoe angstrom", " ZOE ÅNGSTRÖM ", unicodedata.normalize("NFD", "Zoë Ångström")),
        ("O'Brien", "O’BRIEN", "obrien"),
        ("Anne-Marie", "anne marie"),
        ("07", "7", " 7 ", "７"),
        ("Straße", "STRASSE"),
        ("Łukasz Sørensen", "lukasz sorensen"),
    ],
)
def test_one_pupil_however_the_name_is_typed(alike):
    assert len({normal(name) for name in alike}) == 1


@given(st.text(max_size=30))
def test_normalising_twice_changes_nothing(name):
    assert normal(normal(name)) == normal(name)


def test_a_seed_is_the_hash_that_is_written_down():
    """The rule of `draws`: the first 53 bits of SHA-256 as a fraction, here of 10⁹."""
    digest = sha256(b"4711/class/2/zoe").digest()
    fraction = (int.from_bytes(digest[:8], "big") >> 11) / 2**53
    assert seed_for(4711, 2, "zoe") == int(fraction * 1_000_000_000)


def test_everyone_alike_or_each_their_own():
    alike, own = a_set("gap-wrong", "pips"), a_set("gap-wrong", "pips", each_their_own=True)
    assert alike.seed_of(1, "Zoë") == alike.seed_of(1, "Max") == alike.seed_of(1)
    assert alike.seed_of(1) != alike.seed_of(2)
    assert len({own.seed_of(n, who) for n in (1, 2) for who in ("Zoë", "Max", "7")}) == 6
    assert own.seed_of(1, " ZOE") == own.seed_of(1, "Zoë")
    for nobody in ("", " – "):
        with pytest.raises(SpecError, match="name or a number"):
            own.seed_of(1, nobody)


@pytest.mark.process
def test_another_process_draws_alike():
    made = a_set(each_their_own=True)
    code = f"from magview.classroom.sets import set_of_code as s; print(s({code_of(made)!r}).seed_of(1, 'ZOE'))"
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, check=True, timeout=60)
    assert int(done.stdout) == made.seed_of(1, "Zoë")


# ---------------------------------------------------------------------- settings


def test_settings_reach_the_exercise_and_the_faults_stay():
    plain, told = a_set(), a_set(hints=False, units="inch", minutes=12)
    one, other = plain.exercise(1), told.exercise(1)
    assert one.hints
    assert not other.hints
    assert other.minutes == 12.0
    assert set(other.tray.blades) == {"metric", "inch"}
    assert (one.tray.straightedge, other.tray.straightedge) == ("0.5 mm", "1/64 in")
    assert begin(one, plain.seed_of(1)).bench == begin(other, told.seed_of(1)).bench
    with pytest.raises(SpecError, match="not in this set"):
        plain.exercise(2)


# ---------------------------------------------------------------------- the key


@pytest.mark.parametrize("name", shipped_exercises())
def test_the_key_says_what_is_found(name):
    """Against the room as found, by its own true readings: the gap of the first lobe, and the opening."""
    made = a_set(name)
    (entry,) = answer_key(made)
    room = begin(made.exercise(1), made.seed_of(1))
    gap = next(t for t in entry.truths if t.what.startswith("Largest gap"))
    read = float(gap.as_found.split()[0].strip(","))
    assert read == pytest.approx(float(true_readings(room.bench).max_gap_mm[0]), abs=6e-4)
    kinds = {f.kind for f in made.exercises[0].faults if f.chance == 1.0}
    assert kinds <= {f.kind for f in entry.faults}


def test_a_key_for_pupils_names_each_and_needs_names():
    own = a_set("gap-wrong", "pips", each_their_own=True, pupils=("Zoë", "Max"))
    assert [(e.number, e.pupil) for e in answer_key(own)] == [(1, "Zoë"), (1, "Max"), (2, "Zoë"), (2, "Max")]
    assert [e.pupil for e in answer_key(own, ["7"])] == ["7", "7"]
    with pytest.raises(SpecError, match="name the pupils"):
        answer_key(a_set(each_their_own=True))


def test_signs_of_faults_are_words():
    """Exercise files say: positive opens late, is too wide, fires early."""
    from magview.practice.exercise_parts import Fault

    def words(kind: str, way: str, size: tuple[float, float]) -> str:
        whole = find_exercise("both-everything-wrong")
        one = whole.model_copy(update={"faults": (Fault(kind=kind, side="left", size=size, way=way),)})
        (fault,) = faults_of(one, 1)
        return fault.words

    assert words("opening", "plus", (2.0, 2.0)) == "contacts open 2.00° of rotor late"
    assert words("opening", "minus", (2.0, 2.0)) == "contacts open 2.00° of rotor early"
    assert words("gap", "minus", (0.1, 0.1)) == "largest gap 0.100 mm too narrow"
    assert words("teeth", "plus", (1, 1)) == "one tooth early at B, the magneto flange on the disc"
    assert words("vernier", "minus", (3, 3)) == "3 vernier steps late"


def test_one_disc_on_one_engine():
    faults = answer_key(a_set("both-everything-wrong"))[0].faults
    assert [f.side for f in faults if f.kind == "disc-zero"] == ["left"]


def test_the_key_as_text_and_table():
    entries = answer_key(a_set(title="Tuesday"))
    text = key_text(a_set(title="Tuesday"), entries, "8K2M")
    assert "Tuesday" in text
    assert "8K2M" in text
    assert all(f.words in text for f in entries[0].faults)
    assert len(key_csv(entries).splitlines()) == 1 + len(key_rows(entries))
