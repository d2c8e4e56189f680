"""Handing in: thirty processes at once, kills in the midst, folders that refuse, files that were changed."""

from __future__ import annotations

import json
import os
import random
import subprocess
import sys
from datetime import UTC, datetime
from pathlib import Path

import pytest

from magview.classroom import handed as module
from magview.classroom.desk import begin, place_of, prepare
from magview.classroom.handed import PLAINLY, digest_of, file_name, handed_in_of, new_token, write_new
from magview.classroom.outbox import Outbox
from magview.classroom.results import result_of
from magview.practice.attempt import Attempt
from magview.spec.base import SpecError
from magview.spec.files import parse_json
from tests.classroom.attempts import a_set, done, handed
from tests.counts import examples
from tests.mutants import mutant

WRITER = Path(__file__).with_name("writers.py")
OF = a_set("gap-wrong")


def files(folder: Path) -> list[Path]:
    return sorted(p for p in folder.iterdir() if not p.name.startswith("."))


def marked(path: Path):
    return result_of(path.read_bytes(), path.name, parse_json)


@pytest.mark.process
def test_thirty_processes_into_one_folder_lose_and_overwrite_nothing(tmp_path):
    """Every third has the same name as two others: what tells their files apart is the token alone."""
    each = 10
    subprocess.run([sys.executable, str(WRITER), "many", str(tmp_path), "30", str(each)], check=True, timeout=300)
    found = files(tmp_path)
    assert len(found) == len(list(tmp_path.iterdir())) == 30 * each + 1  # the first, and no leavings
    tokens = [json.loads(p.read_text(encoding="utf-8"))["token"] for p in found]
    assert len(set(tokens)) == len(found)
    assert {marked(p).state for p in found} == {"marked"}


@pytest.mark.process
def test_a_kill_in_the_midst_leaves_everything_readable(tmp_path):
    rng, told = random.Random(7), 0
    for i in range(int(os.environ.get("MAGVIEW_KILLS", "4"))):
        command = [sys.executable, str(WRITER), "one", str(tmp_path), f"Pupil {i}"]
        process = subprocess.Popen(command, stdout=subprocess.PIPE, text=True)
        assert process.stdout is not None
        for _ in range(rng.randrange(1, 4)):
            process.stdout.readline()
            told += 1
        for _ in range(rng.randrange(400)):  # anywhere within a write: so many looks at what is there
            files(tmp_path)
        process.kill()
        told += process.communicate()[0].count(".")
    found = files(tmp_path)
    assert len(found) >= told  # what was said to be written is there
    assert {marked(p).state for p in found} == {"marked"}


def test_a_name_that_is_taken_is_never_written_over(tmp_path):
    write_new(tmp_path, "a.json", "mine")
    assert write_new(tmp_path, "a.json", "mine") == tmp_path / "a.json"  # an earlier try that was not heard of
    with pytest.raises(SpecError, match="another file has its name"):
        write_new(tmp_path, "a.json", "yours")
    assert (tmp_path / "a.json").read_text() == "mine"
    assert [p.name for p in tmp_path.iterdir()] == ["a.json"]


def test_a_disk_without_links_is_written_to_as_safely(tmp_path, monkeypatch):
    """As FAT on a memory stick: `link` is refused there (EPERM, link(2))."""

    def refuse(*args: object, **more: object) -> None:
        raise PermissionError(1, "Operation not permitted")

    monkeypatch.setattr(module.os, "link", refuse)
    write_new(tmp_path, "a.json", "mine")
    with pytest.raises(SpecError, match="another file has its name"):
        write_new(tmp_path, "a.json", "yours")
    stale = tmp_path / ".b.json.claim"
    stale.touch()
    os.utime(stale, (0, 0))  # left by a program that was killed long ago
    write_new(tmp_path, "b.json", "mine")
    assert sorted(p.name for p in tmp_path.iterdir()) == ["a.json", "b.json"]


def test_names_say_who_what_and_when_in_letters_every_disk_takes():
    attempt = done(OF, 1, "Zoë", "idle")
    at = datetime(2026, 3, 2, 9, 5, 1, tzinfo=UTC).astimezone()
    name = file_name(attempt, 1, "  Zoë  Å/\\:*?", at, "0123456789abcdef")
    assert name == f"zoe-a_1-the-gap-is-wrong_{at:%Y%m%d-%H%M%S}_0123456789abcdef.magview.json"
    assert file_name(attempt, 1, "Лена", at, new_token()).isascii()


# ---------------------------------------------------------------------- what is in the file


def test_a_file_says_plainly_what_its_digest_is_not():
    _, text = handed(OF, 1, "Zoë", done(OF, 1, "Zoë", "idle"))
    assert "no protection against a determined cheat" in json.loads(text)["about"] == PLAINLY


def test_every_changed_field_is_found():
    _, text = handed(OF, 1, "Zoë", done(OF, 1, "Zoë", "idle"))
    data = json.loads(text)
    assert handed_in_of(parse_json(text.encode(), "f"), "f").pupil == "Zoë"
    for name in set(data) - {"digest", "format"}:
        changed = {**data, name: {**data[name], "seed": 1} if name == "attempt" else data[name]}
        if name == "number":
            changed[name] = 2
        elif isinstance(data[name], str):
            changed[name] = (
                data[name].translate(str.maketrans("0123456789", "1234567890")) if name != "about" else "x"
            )
            if name == "pupil":
                changed[name] = "Zoe"
        result = result_of(json.dumps(changed).encode(), "f.json", parse_json)
        assert result.state == "damaged", name
        assert "f.json" in result.why
        changed["digest"] = digest_of(changed)  # …and a determined cheat can do as much


@pytest.mark.parametrize(
    ("change", "state", "says"),
    [
        ({"format": "magview-handed-in/2"}, "newer", "newer magview"),
        ({"format": "magview-attempt/9"}, "newer", "newer magview"),
        ({"format": "magview-job/1"}, "damaged", "format"),
        ({"token": "x"}, "damaged", "token"),
        ({"number": 0}, "damaged", "number"),
        ({"attempt": {}}, "damaged", ""),
    ],
)
def test_newer_and_strange_files_are_named(change, state, says):
    data = {**json.loads(handed(OF, 1, "Zoë", done(OF, 1, "Zoë", "idle"))[1]), **change}
    data["digest"] = digest_of(data)
    result = result_of(json.dumps(data).encode(), "f.json", parse_json)
    assert (result.state, says in result.why) == (state, True)
    assert "f.json" in result.why


def test_damaged_files_never_raise():
    """Also where a determined cheat, or chance, made the digest fit: then it is the acts that are damaged."""
    data, rng = json.loads(handed(OF, 1, "Zoë", done(OF, 1, "Zoë"))[1]), random.Random(5)
    states = set()
    for i in range(int(os.environ.get("MAGVIEW_MUTANTS", examples(400)))):
        raw = mutant(data, rng)
        if i % 2:
            attempt = mutant(data["attempt"], rng)
            try:
                changed = {**data, "attempt": json.loads(attempt)}
                raw = json.dumps({**changed, "digest": digest_of(changed)}).encode()
            except (ValueError, RecursionError):
                raw = attempt
        states.add(result_of(raw, "f.json", parse_json).state)
    assert "damaged" in states
    for raw in (b"", json.dumps(data).encode()[:3000]):
        assert result_of(raw, "f.json", parse_json).state == "damaged"


def test_only_what_is_handed_in_is_written():
    session = begin(OF, 1, "Zoë")
    with pytest.raises(SpecError, match="not been handed in"):
        prepare(OF, 1, "Zoë", session.attempt)
    with pytest.raises(SpecError, match="name or a number"):
        begin(OF, 1, " – ")
    with pytest.raises(SpecError, match="name or a number"):
        prepare(OF, 1, "", done(OF, 1, "Zoë", "idle"))


def test_a_saved_attempt_finds_its_place_in_the_set():
    of = a_set("pips", "gap-wrong", hints=False)
    assert place_of(of, done(of, 2, "Zoë", "idle")) == 2
    other: Attempt = done(a_set("switch-lead"), 1, "Zoë", "idle")
    with pytest.raises(SpecError, match="not in this set"):
        place_of(of, other)


# ---------------------------------------------------------------------- the outbox


def test_what_cannot_be_delivered_waits_and_is_delivered_later(tmp_path):
    box, away = Outbox(tmp_path / "box"), tmp_path / "share"
    name, text = handed(OF, 1, "Zoë", done(OF, 1, "Zoë", "idle"))
    sent = box.hand_in(away, name, text)
    assert not sent.delivered
    assert str(away) in sent.why
    assert [w.name for w in box.waiting()] == [name]
    assert not box.retry()[0].delivered
    away.mkdir()
    assert box.retry()[0].path == away / name
    assert (away / name).read_text(encoding="utf-8") == text
    assert box.waiting() == []
    assert box.retry() == []


def test_an_attempt_delivered_before_a_kill_is_not_delivered_twice(tmp_path):
    box, share = Outbox(tmp_path / "box"), tmp_path
    name, text = handed(OF, 1, "Zoë", done(OF, 1, "Zoë", "idle"))
    write_new(share, name, text)
    box._keep(share, name, text)  # noqa: SLF001  # as a kill between delivering and tidying leaves it
    assert box.retry()[0].delivered
    assert box.waiting() == []
    assert len(files(share)) == 2  # the box and the one attempt


def test_what_waits_may_go_elsewhere(tmp_path):
    box = Outbox(tmp_path / "box")
    box.hand_in(tmp_path / "gone", *handed(OF, 1, "Zoë", done(OF, 1, "Zoë", "idle")))
    stick = tmp_path / "stick"
    stick.mkdir()
    assert [d.delivered for d in box.send_elsewhere(stick)] == [True]
    assert len(files(stick)) == 1


def test_where_nothing_takes_it_that_is_said(tmp_path):
    blocked = tmp_path / "file"
    blocked.touch()
    with pytest.raises(SpecError, match="save the attempt by hand"):
        Outbox(blocked).hand_in(tmp_path / "gone", *handed(OF, 1, "Zoë", done(OF, 1, "Zoë", "idle")))


def test_a_damaged_outbox_is_passed_over(tmp_path):
    (tmp_path / "x.json").write_text("{", encoding="utf-8")
    (tmp_path / "y.json").write_text('{"format": "magview-outbox/2"}', encoding="utf-8")
    assert Outbox(tmp_path).waiting() == []
    assert len(files(tmp_path)) == 2
