"""What is kept between sessions comes back as it was, and damage is nothing kept."""

from pathlib import Path

import pytest
from PySide6.QtCore import QSettings

from magview.ui.kit.settings import keep, kept_text, kept_texts


@pytest.fixture
def place(tmp_path: Path) -> Path:
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path))
    return tmp_path


@pytest.mark.parametrize(
    "text", ["Ada", "Ä Ö, ü; ß", 'a "quoted" name', "C:\\class\\set, 2", "true", "100", "@x", "%1"]
)
def test_a_text_comes_back(place, text):
    keep("pupil", text)
    assert kept_text("pupil") == text
    keep("pupil", "")
    assert kept_text("pupil") == ""


@pytest.mark.parametrize("texts", [["a"], ["a, b", "c"], ["ä", "b", "c"], []])
def test_a_list_comes_back_in_its_order(place, texts):
    keep("jobs", texts)
    assert kept_texts("jobs") == texts


def test_a_damaged_file_is_nothing_kept(place):
    keep("pupil", "Ada")
    (ini,) = place.rglob("*.ini")
    ini.write_bytes(b"[General\n\x00\xff=\npupil=@Invalid()\njobs=@Invalid()\n")
    assert kept_text("pupil") == "" and kept_texts("jobs") == []


def test_where_nothing_can_be_kept_it_is_asked_for_again(tmp_path):
    (tmp_path / "file").write_text("a file where the folder should be")
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path / "file"))
    keep("pupil", "Ada")
    assert (tmp_path / "file").is_file()
    assert kept_text("pupil") == ""
