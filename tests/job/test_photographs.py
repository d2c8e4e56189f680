"""Photographs beside a sheet: never outside its folder, never another picture, never a huge one."""

from __future__ import annotations

import hashlib
import os
from pathlib import Path

import pytest

from magview.job.photographs import Photograph, amiss, attach, copy_photographs, read_photograph
from magview.job.sheet import change, new_job
from magview.job.store import JobStore
from magview.spec.base import SpecError
from tests.job.sheets import html_text


def jpeg(width: int = 40, height: int = 30, more: bytes = b"") -> bytes:
    """The head of a JPEG that declares this size (ITU-T T.81: SOI, SOF0, SOS, EOI); nothing here decodes it."""
    frame = b"\x08" + height.to_bytes(2) + width.to_bytes(2) + b"\x01\x01\x11\x00"
    return b"\xff\xd8\xff\xc0" + (len(frame) + 2).to_bytes(2) + frame + more + b"\xff\xda\x00\x02\xff\xd9"


def kept(folder: Path, data: bytes = b"", caption: str = "") -> Photograph:
    return attach(folder / "left.magview.json", data or jpeg(), caption)


def test_a_photograph_gets_a_new_name_beside_the_sheet_each_time(tmp_path):
    first, second = kept(tmp_path), kept(tmp_path, jpeg(41))
    assert (first.name, second.name) == ("left-photo-1.jpg", "left-photo-2.jpg")
    assert read_photograph(tmp_path, first) == jpeg() and read_photograph(tmp_path, second) == jpeg(41)
    assert first.sha256 == hashlib.sha256(jpeg()).hexdigest()


@pytest.mark.parametrize(
    "name",
    ["../left-photo-1.jpg", "/etc/left-photo-1.jpg", "a/left-photo-1.jpg", "a\\left-photo-1.jpg", "..-photo-1.jpg",
     "C:left-photo-1.jpg", "left.jpg", ".left-photo-1.jpg", "left\n-photo-1.jpg", "left-photo-1.jpg\x00",
     "left..x-photo-1.jpg"],
)  # fmt: skip
def test_a_sheet_that_names_another_place_is_refused(name):
    with pytest.raises(SpecError):
        change(new_job("x"), photographs=({"name": name, "sha256": "0" * 64},))


def test_links_and_pipes_are_not_followed(tmp_path):
    outside = tmp_path / "outside.jpg"
    outside.write_bytes(jpeg())
    folder = tmp_path / "sheets"
    folder.mkdir()
    (folder / "left-photo-1.jpg").symlink_to(outside)
    linked = Photograph(name="left-photo-1.jpg", sha256=hashlib.sha256(jpeg()).hexdigest())
    with pytest.raises(SpecError, match="is a link"):
        read_photograph(folder, linked)
    os.mkfifo(folder / "left-photo-2.jpg")
    with pytest.raises(SpecError, match="no plain file"):
        read_photograph(folder, linked.model_copy(update={"name": "left-photo-2.jpg"}))
    assert kept(folder).name == "left-photo-3.jpg", "nothing is written through a link"
    assert outside.read_bytes() == jpeg()


def test_a_missing_changed_or_huge_one_is_said(tmp_path):
    photograph = kept(tmp_path)
    path = tmp_path / photograph.name
    job = change(new_job("x"), photographs=(photograph.model_dump(),))
    from magview.job.document import document
    from magview.paper.html import document_html

    printed = document_html(document(job, folder=tmp_path))
    assert "data:image/jpeg;base64," in printed and "PHOTOGRAPH 1" not in printed
    assert "not looked for here" in html_text(job)
    path.write_bytes(jpeg(42))
    with pytest.raises(SpecError, match="was changed"):
        read_photograph(tmp_path, photograph)
    path.unlink()
    with pytest.raises(SpecError, match="is missing"):
        read_photograph(tmp_path, photograph)
    assert "PHOTOGRAPH 1" in document_html(document(job, folder=tmp_path))
    huge, none = kept(tmp_path, jpeg(60_000, 60_000)), kept(tmp_path, b"not an image")
    for hostile in (huge, none):  # with a digest that holds
        with pytest.raises(SpecError, match="no JPEG of at most 4000 dots"):
            read_photograph(tmp_path, hostile)


def test_save_as_copies_them_and_replaces_nothing(tmp_path):
    here, there = tmp_path / "here", tmp_path / "there"
    here.mkdir(), there.mkdir()
    photograph = attach(here / "left-job.json", jpeg())
    job = change(new_job("x"), photographs=(photograph.model_dump(),))
    store = JobStore.create(here / "left-job.json", job)
    store.save_as(there / "left-job.json")
    assert read_photograph(there, photograph) == jpeg()
    (there / photograph.name).write_bytes(b"another's")
    back = JobStore.open(here / "left-job.json")
    with pytest.raises(SpecError, match="is another picture"):
        back.save_as(there / "second-job.json")
    assert (there / photograph.name).read_bytes() == b"another's" and not (there / "second-job.json").exists()
    assert back.path == (here / "left-job.json").resolve() and back.read_only is None
    (here / photograph.name).unlink()
    copy_photographs(job.photographs, here, tmp_path)
    assert len(amiss(job.photographs, tmp_path)) == 1, "a missing one is passed over, and said"
    store.close(), back.close()
