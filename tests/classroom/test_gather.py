"""Gathering: each file marked once and as `mark` marks it; what does not fit is said; nothing is believed that can be
worked out."""

from __future__ import annotations

import csv
import io
import json
import os

import pytest

from magview.classroom import gather as module
from magview.classroom.gather import Cancelled, Gatherer, mark_file
from magview.classroom.handed import digest_of
from magview.classroom.results import dump_result, load_result, result_of
from magview.classroom.sets import ClassSet
from magview.classroom.summary import attempt_heads, summarise, summary_csv
from magview.practice.attempt import dump_attempt
from magview.practice.library import find_exercise, shipped_exercises
from magview.practice.marking import mark
from magview.spec.base import SpecError
from magview.spec.files import parse_json
from magview.spec.formats import READ, stem_of
from tests.classroom.attempts import a_set, class_folder, done, handed
from tests.practice.trainee import Trainee
from tests.wording import says

OF = a_set("gap-wrong", "pips", each_their_own=True, pupils=("Zoë", "Max", "Kim"))


def put(folder, of: ClassSet, number: int, pupil: str, how: str = "well", minute: int = 0, attempt=None) -> str:
    name, text = handed(of, number, pupil, attempt or done(of, number, pupil, how), minute)
    (folder / name).write_text(text, encoding="utf-8")
    return name


@pytest.fixture
def counted(monkeypatch) -> list[str]:
    """The files that are marked in this process, in order."""
    seen: list[str] = []

    def mark_and_count(path):
        seen.append(path.name)
        return mark_file(path)

    monkeypatch.setattr(module, "mark_file", mark_and_count)
    return seen


@pytest.mark.parametrize("ending", READ)
def test_every_ending_is_gathered(tmp_path, ending):
    path = tmp_path / put(tmp_path, OF, 1, "Zoë")
    path.rename(path.with_name(f"{stem_of(path)}{ending}"))
    assert len(Gatherer(processes=0).gather(tmp_path)) == 1


# ---------------------------------------------------------------------- marks


@pytest.mark.parametrize("how", ["well", "idle", "slack"])
def test_marks_are_those_of_marking(tmp_path, how):
    attempt = done(OF, 1, "Zoë", how)
    put(tmp_path, OF, 1, "Zoë", how)
    (result,) = Gatherer(processes=0).gather(tmp_path)
    marking = mark(attempt)
    assert (result.percent, result.passed) == (marking.percent, marking.passed)
    assert [s.got for s in result.steps] == [r.got for r in marking.rows]
    assert [d.kind for d in result.dangers] == [d.kind for d in marking.dangers]
    assert load_result(dump_result(result)) == result


@pytest.mark.parametrize("name", shipped_exercises())
def test_who_does_everything_finds_every_fault_and_who_does_nothing_none(name):
    of = a_set(name)
    for how in ("well", "idle"):
        text = handed(of, 1, "Zoë", done(of, 1, "Zoë", how))[1]
        result = result_of(text.encode(), "f", parse_json)
        asked = {f.found for f in result.faults if f.found is not None}
        assert asked <= {how == "well"}
        assert result.passed == (how == "well")


def test_marks_in_a_file_are_not_believed(tmp_path):
    """A cheat writes a digest that fits: what is worked out stays as it was."""
    name = put(tmp_path, OF, 1, "Zoë", "idle")
    data = json.loads((tmp_path / name).read_text(encoding="utf-8"))
    honest = mark_file(tmp_path / name)
    data["attempt"]["events"].insert(0, {"at_s": 0.0, "do": "inspect-contacts"})
    data["digest"] = digest_of(data)
    again = result_of(json.dumps(data).encode(), name, parse_json)
    assert again.percent == honest.percent < 50.0
    data["percent"] = 100.0
    data["digest"] = digest_of(data)
    assert result_of(json.dumps(data).encode(), name, parse_json).state == "damaged"


# ---------------------------------------------------------------------- once each


def test_a_second_look_marks_only_what_is_new(tmp_path, counted):
    folder, cache = tmp_path / "in", tmp_path / "marks"
    class_folder(folder, 5)
    gatherer = Gatherer(cache, 0)
    first = gatherer.gather(folder)
    assert len(counted) == 5
    name = put(folder, OF, 1, "Zoë")
    assert {r.file for r in gatherer.gather(folder)} == {r.file for r in first} | {name}
    assert counted[5:] == [name]
    assert len(Gatherer(cache, 0).gather(folder)) == 6  # another session
    assert len(counted) == 6
    (folder / name).unlink()
    assert gatherer.gather(folder) == first


def test_a_file_that_was_half_copied_is_looked_at_again(tmp_path):
    text = handed(OF, 1, "Zoë", done(OF, 1, "Zoë"))[1]
    path = tmp_path / "a.json"
    path.write_text(text[:500], encoding="utf-8")
    gatherer = Gatherer(processes=0)
    assert gatherer.gather(tmp_path)[0].state == "damaged"
    stat = path.stat()
    path.write_text(text, encoding="utf-8")
    os.utime(path, ns=(stat.st_atime_ns, stat.st_mtime_ns))  # a copy keeps its time
    assert gatherer.gather(tmp_path)[0].state == "marked"


def test_a_cache_that_is_damaged_costs_time_and_nothing_else(tmp_path, counted):
    folder, cache = tmp_path / "in", tmp_path / "marks"
    class_folder(folder, 3)
    whole = Gatherer(cache, 0).gather(folder)
    for damage in (cache.read_bytes()[:-40], b"\xff\x00garbage", b"0.0.0/0 {}\n"):
        cache.write_bytes(damage)
        assert Gatherer(cache, 0).gather(folder) == whole
    assert 3 < len(counted) <= 10


@pytest.mark.process
def test_processes_mark_as_this_one_does(tmp_path, monkeypatch):
    class_folder(tmp_path, 20, ("gap-wrong", "switch-lead"))
    alone = Gatherer(processes=0).gather(tmp_path)
    monkeypatch.setattr(module, "_ALONE", 4)
    monkeypatch.setattr(module, "_CHUNK", 4)
    shares: list[float] = []
    assert Gatherer(processes=2).gather(tmp_path, shares.append) == alone
    assert shares == sorted(shares)
    assert shares[-1] == 1.0


def test_where_no_process_can_be_started_it_goes_on_alone(tmp_path, monkeypatch):
    class_folder(tmp_path, 6)
    monkeypatch.setattr(module, "_ALONE", 4)

    def refuse(*args: object, **more: object) -> None:
        raise OSError(12, "no memory")

    monkeypatch.setattr(module, "ProcessPoolExecutor", refuse)
    assert {r.state for r in Gatherer(processes=2).gather(tmp_path)} == {"marked"}


def test_cancelling_keeps_what_was_marked(tmp_path, counted):
    folder = tmp_path / "in"
    class_folder(folder, 6)
    gatherer = Gatherer(tmp_path / "marks", 0)
    with pytest.raises(Cancelled):
        gatherer.gather(folder, should_stop=lambda: len(counted) >= 3)
    assert len(counted) == 3
    assert len(gatherer.gather(folder)) == 6
    assert len(counted) == 6


def test_odd_things_in_the_folder_are_passed_over_with_a_reason(tmp_path):
    good = put(tmp_path, OF, 1, "Zoë")
    (tmp_path / "notes.txt").write_text("x")
    (tmp_path / ".half.json").write_text("{")
    (tmp_path / "folder.json").mkdir()
    (tmp_path / "cut.json").write_bytes((tmp_path / good).read_bytes()[:900])
    unfinished = Trainee(find_exercise("gap-wrong"), 1)
    unfinished.inside()
    (tmp_path / "under-way.json").write_text(dump_attempt(unfinished.hands.session.attempt), encoding="utf-8")
    found = {r.file: r.state for r in Gatherer(processes=0).gather(tmp_path)}
    assert found == {good: "marked", "cut.json": "damaged", "folder.json": "damaged", "under-way.json": "unfinished"}
    with pytest.raises(SpecError, match="cannot be read"):
        Gatherer(processes=0).gather(tmp_path / "gone")


# ---------------------------------------------------------------------- counting


def summary_of(folder, of: ClassSet | None = OF):
    return summarise(Gatherer(processes=0).gather(folder), of)


def test_the_latest_counts_and_the_rest_is_explained(tmp_path):
    early = put(tmp_path, OF, 1, "zoe", "idle", minute=1)
    late = put(tmp_path, OF, 1, " ZOË", "well", minute=2)
    summary = summary_of(tmp_path)
    notes = {e.result.file: (e.counts, e.notes) for e in summary.entries}
    assert notes[late] == (True, ())
    assert notes[early] == (False, (says("there is a later attempt"),))
    (zoe,) = summary.pupils
    assert (zoe.percent, zoe.done, zoe.passed, zoe.missed) == (100.0, 1, 1, 0)
    assert summary.missing == ("Max", "Kim")


def test_what_does_not_fit_the_set_is_said(tmp_path):
    stolen = done(OF, 1, "Zoë")
    put(tmp_path, OF, 1, "Zoë", minute=1, attempt=stolen)
    copied = put(tmp_path, OF, 1, "Max", minute=2, attempt=stolen)
    stranger = put(tmp_path, OF, 1, "Lee", minute=3)
    other = put(tmp_path, a_set("switch-lead"), 1, "Kim", minute=4)
    wrong = put(tmp_path, OF, 2, "Kim", minute=5, attempt=done(OF, 1, "Kim"))
    notes = {e.result.file: " ".join(e.notes) for e in summary_of(tmp_path).entries}
    assert "the same acts, to the second, as Zoë" in notes[copied]
    assert "was not drawn for this pupil" in notes[copied]
    assert "not on the list" in notes[stranger]
    assert "of another set" in notes[other]
    assert "exercise is not the set's" in notes[wrong]


def test_a_file_copied_twice_counts_once(tmp_path):
    name = put(tmp_path, OF, 1, "Zoë")
    (tmp_path / "zz-copy.json").write_bytes((tmp_path / name).read_bytes())
    summary = summary_of(tmp_path)
    assert len(summary.counted) == 1
    assert any(f"a copy of {name}" in e.notes for e in summary.entries)


def test_steps_and_errors_are_counted_as_by_hand(tmp_path):
    """Three pupils: one does all, two leave a screw slack. Shares by hand from the marking of each."""
    attempts = [("Zoë", "well"), ("Max", "slack"), ("Kim", "slack")]
    for i, (pupil, how) in enumerate(attempts):
        put(tmp_path, OF, 1, pupil, how, minute=i)
    summary = summary_of(tmp_path)
    markings = [mark(done(OF, 1, pupil, how)) for pupil, how in attempts]
    for i, line in enumerate(summary.steps):
        shares = [m.rows[i].got / m.rows[i].weight for m in markings]
        assert line.share == pytest.approx(sum(shares) / 3)
        assert line.count == 3
        assert line.wrong + line.near + line.unproved == sum(s < 1.0 for s in shares)
    slack = next(e for e in summary.errors if e.words.startswith("DANGER") and "slack" in e.words)
    assert (slack.count, slack.pupils) == (2, ("Kim", "Max"))


def test_numbers_are_in_the_order_people_count(tmp_path):
    for i, pupil in enumerate(("10", "9", "Zoë", "1")):
        put(tmp_path, OF, 1, pupil, "idle", minute=i)
    assert [p.name for p in summary_of(tmp_path).pupils] == ["1", "9", "10", "Zoë"]


def test_without_a_set_everything_counts_also_what_was_saved_by_hand(tmp_path):
    attempt = Trainee(find_exercise("gap-wrong"), 1).work()
    (tmp_path / "mine.json").write_text(dump_attempt(attempt), encoding="utf-8")
    put(tmp_path, OF, 1, "Zoë")
    assert len(summary_of(tmp_path, None).counted) == 2
    assert len(summary_of(tmp_path).counted) == 1


def test_the_table_has_a_row_for_each_file(tmp_path):
    put(tmp_path, OF, 1, "=Zoë")
    (tmp_path / "bad.json").write_text("{")
    rows = list(csv.reader(io.StringIO(summary_csv(summary_of(tmp_path)))))
    assert rows[0] == attempt_heads()
    assert {row[0] for row in rows[1:]} == {"'=Zoë", ""}
    assert all(len(row) == len(rows[0]) for row in rows)


# ---------------------------------------------------------------------- settings and marks


@pytest.mark.parametrize("units", ["metric", "inch"])
@pytest.mark.parametrize("name", shipped_exercises())
def test_every_exercise_can_be_passed_with_other_blades(name, units):
    """By the scripted trainee, who knows what stands on paper and what instruments say."""
    of = a_set(name, units=units)
    assert mark(done(of, 1, "Zoë")).passed
