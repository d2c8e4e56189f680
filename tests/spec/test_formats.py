"""What kind of file it says it is: every shipped one is known for what it is, and what is none of ours is refused."""

from __future__ import annotations

import json
from pathlib import Path

import pytest

from magview.spec.base import SpecError
from magview.spec.files import write_model
from magview.spec.formats import ENDING, ENDINGS, KINDS, READ, file_filter, kind_of, names_file, stem_of, with_ending
from magview.spec.library import find_magneto, resources

FOLDERS = {
    "magnetos": "magneto",
    "engines": "engine",
    "installations": "installation",
    "exercises": "exercise",
    "lessons": "lesson",
    "jobs": "job",
}


@pytest.mark.parametrize("folder", FOLDERS)
def test_shipped_files_are_known_for_what_their_folder_says(folder):
    files = sorted((resources() / folder).glob("*.json"))
    assert files and {kind_of(file) for file in files} == {FOLDERS[folder]}


@pytest.mark.parametrize("kind", [*KINDS, "bench"])
@pytest.mark.parametrize("version", ["1", "2", "99"])
def test_the_kind_is_known_whatever_the_version(tmp_path, kind, version):
    """A newer program's file is still of its kind: its reader then says that it is newer."""
    (tmp_path / "x.json").write_text(json.dumps({"format": f"magview-{kind}/{version}"}), encoding="utf-8")
    assert kind_of(tmp_path / "x.json") == kind


@pytest.mark.parametrize(
    "content",
    [[], {}, 3, {"format": None}, {"format": 7}, {"format": "magview-own/1"}, {"format": "magview-/1"},
     {"format": "magneto/1"}, {"format": "x-magview-magneto/1"}, {"format": "MAGVIEW-magneto/1"}],
)  # fmt: skip
def test_what_is_none_of_ours_is_refused_with_what_would_be(tmp_path, content):
    (tmp_path / "x.json").write_text(json.dumps(content), encoding="utf-8")
    with pytest.raises(SpecError, match=r"^x\.json: is not a file of this program") as told:
        kind_of(tmp_path / "x.json")
    assert all(f'"magview-{kind}/1"' in str(told.value) for kind in KINDS)


def test_what_cannot_be_read_is_refused_as_any_file_is(tmp_path):
    (tmp_path / "x.json").write_text("{", encoding="utf-8")
    for name, told in (("x.json", "not JSON"), ("absent.json", "cannot be read")):
        with pytest.raises(SpecError, match=f"^{name}: .*{told}"):
            kind_of(tmp_path / name)


@pytest.mark.parametrize("ending", [*READ, *(ending.upper() for ending in READ)])
def test_every_ending_is_read_by_name_whether_or_not_the_file_is_there(ending):
    assert names_file(f"my magneto{ending}") and stem_of(Path(f"folder/a.b{ending}")) == "a.b"


def test_what_is_written_ends_so_that_a_desktop_knows_it_unless_another_ending_was_typed():
    assert ENDING == ENDINGS[0] == ".magview.json" and ".magview" in ENDINGS
    typed = ("a", "a.magview", "a.magview.json", "a.json")
    assert [with_ending(Path(name)).name for name in typed] == ["a.magview.json", *typed[1:]]


def test_dialogs_offer_every_ending_that_is_read():
    assert file_filter("Magnetos") == "Magnetos (*.magview.json *.magview *.json);;All files (*)"


def test_a_shipped_name_is_no_file():
    assert not names_file("seven-radial")


@pytest.mark.parametrize("ending", READ)
def test_the_library_reads_every_ending(tmp_path, ending):
    write_model(tmp_path / f"mine{ending}", find_magneto("seven-radial"))
    assert find_magneto(str(tmp_path / f"mine{ending}")) == find_magneto("seven-radial")
