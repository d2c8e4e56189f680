"""Pictures as files: every one of them as SVG, PDF and PNG, and a turn of any as an animated PNG or a series."""

from __future__ import annotations

import struct
from itertools import pairwise

import pytest
from PIL import Image, ImageChops
from PySide6.QtGui import QImage
from PySide6.QtWidgets import QMessageBox

from magview.bench.actions import TurnRotor
from magview.spec.base import SpecError
from magview.ui.bench.filling import PICTURES
from magview.ui.pictures.export import image_of
from magview.ui.pictures.turn_export import MOST_FRAMES, Turn, check_turn, frame_path
from tests.counts import sampled

COLOURS = 4


def chunks(data: bytes):
    """Kinds and contents of the chunks of a PNG, by the format's own rule: length, kind, contents, check sum."""
    assert data[:8] == b"\x89PNG\r\n\x1a\n"
    at = 8
    while at < len(data):
        (length,) = struct.unpack(">I", data[at : at + 4])
        yield data[at + 4 : at + 8], data[at + 8 : at + 8 + length]
        at += 12 + length


def asked(window, name="breaker", angles=(0.0, 20.0), frames=5, width=320, series=False):
    words = PICTURES[name].replace("&", "")
    window.filling.show(name)
    window.menus._ask_turn()  # noqa: SLF001  (the entry's own slot)
    from magview.ui.pictures.turn_dialog import TurnDialog

    dialog = window.findChildren(TurnDialog)[-1]
    assert dialog.picture.currentText() == words, "the picture in hand comes first"
    dialog.start.setValue(angles[0])
    dialog.end.setValue(angles[1])
    dialog.count.setValue(frames)
    dialog.width_px.setValue(width)
    dialog.kind.setCurrentIndex(1 if series else 0)
    return dialog


def saved(dialog, path, qtbot):
    ended: list[int] = []
    dialog.finished.connect(ended.append)
    dialog.save(path)
    qtbot.waitUntil(lambda: bool(ended))


def rgb(image: QImage) -> Image.Image:
    plain = image.convertToFormat(QImage.Format.Format_RGB888)
    size = plain.width(), plain.height()
    return Image.frombuffer("RGB", size, bytes(plain.constBits()), "raw", "RGB", plain.bytesPerLine(), 1)


@pytest.mark.parametrize("name", sampled(["contact", "breaker", "drive", "shaft", "strip", "crank"], 3))
def test_an_animated_png_holds_every_frame_and_begins_with_the_still(open_window, qtbot, tmp_path, name):
    window = open_window("seven-radial-left")
    window.model.send(TurnRotor(0.0))
    state = window.model.state
    dialog = asked(window, name)
    path = tmp_path / "turn.png"
    saved(dialog, path, qtbot)
    assert window.model.state is state, "the bench itself does not turn"
    assert f"Saved {path.name}." in window.statusBar().currentMessage()
    kinds = [kind for kind, _ in chunks(path.read_bytes())]
    (control,) = [body for kind, body in chunks(path.read_bytes()) if kind == b"acTL"]
    assert struct.unpack(">II", control) == (5, 0), "five frames, without end"
    assert kinds.count(b"fcTL") == 5
    with Image.open(path) as read:
        assert read.n_frames == 5 and read.width == 320
        shown = []
        for i in range(5):
            read.seek(i)
            shown.append(read.convert("RGB"))
    for one, other in pairwise(shown):
        assert ImageChops.difference(one, other).getbbox() is not None
    view, factor = getattr(window, name), 320 / getattr(window, name).picture_size().width()
    caption = window.files.caption("The rotor turns; angles are past neutral.")
    assert ImageChops.difference(shown[0], rgb(image_of(view, caption, factor))).getbbox() is None
    window.model.send(TurnRotor(20.0))
    assert ImageChops.difference(shown[-1], rgb(image_of(view, caption, factor))).getbbox() is None
    assert [p.name for p in tmp_path.iterdir()] == [path.name]


def test_a_series_is_numbered_pngs(open_window, qtbot, tmp_path):
    window = open_window("seven-radial")
    dialog = asked(window, frames=3, series=True)
    saved(dialog, tmp_path / "turn.png", qtbot)
    names = ["turn-001.png", "turn-002.png", "turn-003.png"]
    assert sorted(p.name for p in tmp_path.iterdir()) == names
    images = [QImage(str(tmp_path / name)) for name in names]
    assert {image.width() for image in images} == {320}
    assert images[0] != images[1] != images[2]


@pytest.mark.parametrize("series", [False, True])
def test_given_up_half_way_nothing_is_left(open_window, qtbot, tmp_path, series):
    window = open_window("seven-radial")
    dialog = asked(window, frames=60, series=series)
    dialog.save(tmp_path / "turn.png")
    qtbot.waitUntil(lambda: dialog.progress.value() > 2)
    assert dialog.busy
    dialog.cancel_button.click()
    assert not dialog.busy and dialog.isVisible() and "nothing was saved" in dialog.answer.text()
    assert not list(tmp_path.iterdir())
    dialog.cancel_button.click()
    assert not dialog.isVisible()


def test_what_cannot_be_written_is_refused_in_one_sentence(open_window, qtbot, tmp_path):
    window = open_window("seven-radial")
    dialog = asked(window)
    beyond = (
        (dialog.count, 1), (dialog.count, MOST_FRAMES + 1), (dialog.width_px, 20), (dialog.width_px, 5000),
        (dialog.end, dialog.start.exact), (dialog.end, 5000.0),
    )  # fmt: skip
    for field, value in beyond:
        before = field.value()
        field.setValue(value)
        dialog.ask()
        told = dialog.answer.text()
        assert told and "\n" not in told and told.count(". ") == 0 and "give" in told
        field.setValue(before)
    for path in (tmp_path / "turn.gif", tmp_path / "no" / "turn.png"):
        dialog.count.setValue(2)
        dialog.save(path)
        qtbot.waitUntil(lambda: not dialog.busy)
        assert path.name in dialog.answer.text()
    dialog.reject()
    assert not list(tmp_path.iterdir())


def test_too_many_pixels_are_refused_with_a_number_of_frames_that_is_taken(open_window):
    window = open_window("seven-radial")
    with pytest.raises(SpecError, match="too many") as refused:
        check_turn(Turn(0.0, 90.0, 120, 1920), window.breaker, "")
    (fit,) = [int(word) for word in str(refused.value).split() if word.isdigit()][2:]
    check_turn(Turn(0.0, 90.0, fit, 1920), window.breaker, "")


@pytest.mark.parametrize("kind", ["svg", "pdf", "png"])
def test_shaft_strip_and_closeup_are_saved_like_the_others(open_window, tmp_path, kind):
    window = open_window("seven-radial-left")
    for name in ("contact", "shaft", "strip"):
        path = tmp_path / f"{name}.{kind}"
        window.files.export(getattr(window, name), path)
        data = path.read_bytes()
        assert not window.findChildren(QMessageBox)
        if kind == "svg":
            assert b"practice magneto" in data and data.count(b"<path") + data.count(b"<poly") > 10
            assert b"<image" not in data, "lines, not pixels"
        elif kind == "pdf":
            assert data.startswith(b"%PDF") and b"/FontFile" in data
        else:
            image = QImage(str(path))
            assert image.width() == 3 * getattr(window, name).width()
            points = [(x, y) for x in range(0, image.width(), 17) for y in range(0, image.height(), 19)]
            assert len({image.pixelColor(x, y).name() for x, y in points}) > COLOURS


def test_numbers_of_a_series_have_three_digits(tmp_path):
    assert frame_path(tmp_path / "turn.png", 7).name == "turn-007.png"


@pytest.mark.parametrize("kind", ["svg", "pdf", "png"])
def test_the_circuit_is_saved_like_the_other_pictures(open_window, tmp_path, kind):
    window = open_window("seven-radial-left")
    path = tmp_path / f"lead.{kind}"
    window.files.export(window.lead.diagram, path)
    data = path.read_bytes()
    if kind == "svg":
        assert all(word.encode() in data for word in ("capacitor", "contacts", "Meter on the lead"))
    elif kind == "pdf":
        assert data.startswith(b"%PDF") and b"/FontFile" in data
    else:
        image = QImage(str(path))
        assert image.width() > 900 and len({image.pixel(x, image.height() // 3) for x in range(image.width())}) > 2
