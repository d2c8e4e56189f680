"""Photographs added through the window, and hostile ones refused before they are decoded."""

from __future__ import annotations

import struct
import zlib

import pytest
from PySide6.QtCore import QSize, Qt
from PySide6.QtGui import QColor, QImage
from PySide6.QtTest import QTest

from magview.job.photographs import read_photograph
from magview.spec.base import SpecError
from magview.ui.work.photo_reading import reduced
from tests.job_windows import choose_page


def png_of(width: int, height: int) -> bytes:
    """A PNG that declares this size and holds next to nothing (ISO/IEC 15948: signature, IHDR, IDAT, IEND)."""

    def chunk(kind: bytes, data: bytes) -> bytes:
        return struct.pack(">I", len(data)) + kind + data + struct.pack(">I", zlib.crc32(kind + data))

    head = struct.pack(">IIBBBBB", width, height, 8, 2, 0, 0, 0)
    return (
        b"\x89PNG\r\n\x1a\n" + chunk(b"IHDR", head) + chunk(b"IDAT", zlib.compress(bytes(64))) + chunk(b"IEND", b"")
    )


def picture(path, width=2000, height=1000):
    image = QImage(width, height, QImage.Format.Format_RGB32)
    image.fill(QColor("#c04020"))
    assert image.save(str(path))
    return path


@pytest.mark.parametrize(
    ("name", "data"),
    [
        ("huge.png", png_of(60_000, 60_000)),
        ("wide.png", png_of(2_000_000_000, 1)),
        ("short.png", png_of(400, 300)),
        ("words.jpg", b"not a picture"),
        ("empty.jpg", b""),
        ("drawing.png", b'<svg xmlns="http://www.w3.org/2000/svg"><image href="file:///etc/passwd"/></svg>'),
    ],
)
def test_what_is_no_whole_photograph_is_refused_in_one_sentence(qapp, tmp_path, name, data):
    (tmp_path / name).write_bytes(data)
    with pytest.raises(SpecError) as refused:
        reduced(tmp_path / name)
    assert str(refused.value).startswith(f"{name}: ") and "\n" not in str(refused.value)


@pytest.mark.parametrize("name", ["marks.jpg", "marks.png"])
def test_one_cut_short_is_refused_and_a_whole_one_made_small(qapp, tmp_path, name):
    path = picture(tmp_path / name)
    small = QImage.fromData(reduced(path))
    assert small.size() == QSize(1600, 800)
    whole = path.read_bytes()
    path.write_bytes(whole[: len(whole) * 2 // 3])
    with pytest.raises(SpecError, match="damaged or cut short"):
        reduced(path)
    with pytest.raises(SpecError, match="is no file"):
        reduced(tmp_path)


def test_a_photograph_is_added_named_and_missed(open_job, tmp_path):
    window = open_job()
    choose_page(window, "marks")
    box = window.page.photographs
    box.add_from(tmp_path / "none.jpg")
    assert box.said.isVisible() and window.model.job.photographs == ()
    box.add_from(picture(tmp_path / "seen.jpg"))
    (photograph,) = window.model.job.photographs
    assert photograph.name == "a-job-photo-1.jpg" and not box.said.isVisible()
    assert read_photograph(window.model.store.path.parent, photograph)
    box.caption.setFocus()
    QTest.keyClicks(box.caption, "disc and flange")
    QTest.keyClick(box.caption, Qt.Key.Key_Return)
    assert window.model.job.photographs[0].caption == "disc and flange"
    assert "disc and flange" in box.list.item(0).text()
    path = tmp_path / photograph.name
    path.rename(tmp_path / "elsewhere.jpg")
    choose_page(window, "as_found")
    choose_page(window, "marks")
    assert box.list.item(0).text().startswith("✗") and photograph.name in box.said.text()
    QTest.mouseClick(box.drop, Qt.MouseButton.LeftButton)
    assert window.model.job.photographs == ()
    window.undo()
    assert len(window.model.job.photographs) == 1
