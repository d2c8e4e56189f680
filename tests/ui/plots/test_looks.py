"""The plots on screen and in files: what is saved and copied, themes, large type, inches, words."""

from __future__ import annotations

import csv
import io
from itertools import product
from xml.etree import ElementTree

import pyqtgraph as pg
import pytest
from PySide6.QtGui import QColor, QGuiApplication, QImage
from PySide6.QtWidgets import QApplication

from magview.bench import actions as do
from magview.spec.library import shipped_names
from magview.ui.kit.look import PROJECTED
from magview.ui.kit.theme import THEMES
from magview.ui.plots.adjustment_window import WindowSheet
from tests.counts import sampled
from tests.plot_windows import SHEETS, settle
from tests.ui.kit.contrast import contrast

ONE_OF_A_KIND = [name for name in shipped_names("installations") if not name.endswith("right")]

# ---------------------------------------------------------------------- taking away


@pytest.mark.parametrize("sheet", sampled(SHEETS, 3))
def test_every_sheet_is_saved_and_copied(open_plots, sheet, tmp_path):
    window, plots = open_plots(sheet)
    for kind in ("svg", "png", "csv"):
        plots.save_to(tmp_path / f"plot.{kind}")
        assert window.statusBar().currentMessage() == f"Saved plot.{kind}."
    assert sorted(p.name for p in tmp_path.iterdir()) == ["plot.csv", "plot.png", "plot.svg"], "nothing beside them"
    space = "{http://www.w3.org/2000/svg}"
    svg = ElementTree.parse(tmp_path / "plot.svg").getroot()
    assert svg.tag == f"{space}svg"
    words = " ".join("".join(node.itertext()) for node in svg.iter(f"{space}text"))
    assert plots.plots[0].getAxis("bottom").labelText.split()[0] in words
    assert window.model.state.magneto.name in svg.find(f"{space}title").text
    pictures = list(svg.iter(f"{space}image"))
    assert len(pictures) == (1 if sheet == "window" else 0), "curves and signs are lines, not pixels"
    image = QImage(str(tmp_path / "plot.png"))
    assert (image.width(), image.height()) == (2 * plots.canvas.width(), 2 * plots.canvas.height())
    assert len({image.pixel(x, image.height() // 2) for x in range(image.width())}) > 3
    rows = list(csv.reader(io.StringIO((tmp_path / "plot.csv").read_bytes().decode(), newline="")))
    assert len(rows) > 2
    assert len({len(row) for row in rows}) == 1
    assert all(float(value) or True for value in rows[1] if value)
    QGuiApplication.clipboard().clear()
    plots.copy_button.click()
    assert QGuiApplication.clipboard().image().width() == image.width()


def test_taking_a_picture_leaves_the_screen_as_it_is(open_plots, tmp_path):
    _, plots = open_plots("lift")
    before = plots.canvas.grab().toImage()
    plots.copy()
    plots.save_to(tmp_path / "a.svg")
    assert plots.canvas.grab().toImage() == before


@pytest.mark.parametrize("name", ["plots.svg", "plots.png", "plots.csv", "plots.pdf"])
def test_what_cannot_be_saved_is_said_in_one_sentence(open_plots, tmp_path, name):
    window, plots = open_plots("lift")
    place = tmp_path / "nowhere" / name if not name.endswith("pdf") else tmp_path / name
    plots.save_to(place)
    said = window.statusBar().currentMessage()
    assert "lots" in said
    assert "\n" not in said
    assert list(tmp_path.iterdir()) == []


# ---------------------------------------------------------------------- looks


@pytest.mark.parametrize("sheet", sampled(SHEETS, 3))
def test_lines_and_words_stand_out_from_the_paper_in_every_theme(open_plots, sheet):
    window, plots = open_plots(sheet)
    for theme in THEMES.values():
        window.look.theme = theme
        QApplication.processEvents()
        stands_out(plots, theme)


def stands_out(plots, theme) -> None:
    """Every line and word of a sheet against its paper."""
    shown = plots.canvas.grab().toImage()
    assert shown.pixelColor(2, 2) == QColor(theme.paper)
    for plot in plots.plots:
        for side in ("left", "bottom"):
            assert contrast(plot.getAxis(side).textPen().color(), theme.paper) >= 4.5
        for item in plot.items:
            if isinstance(item, pg.TextItem):
                assert contrast(item.color, theme.paper) >= 4.5
            elif isinstance(item, pg.PlotCurveItem):
                assert contrast(pg.mkPen(item.opts["pen"]).color(), theme.paper) >= 3.0
            elif isinstance(item, pg.InfiniteLine):
                assert contrast(item.pen.color(), theme.paper) >= 3.0
    if isinstance(plots, WindowSheet):  # words and lines over the map's green, too
        shades = {tuple(int(v) for v in c) for c in plots._image.image.reshape(-1, 3)[::7]}  # noqa: SLF001
        assert len(shades) == 2
        for shade in shades:
            assert contrast(theme.text, QColor(*shade)) >= 4.5
            assert contrast(theme.good, QColor(*shade)) >= 3.0


@pytest.mark.parametrize("sheet", sampled(SHEETS, 3))
def test_projector_inches_and_large_type(open_plots, sheet):
    window, plots = open_plots(sheet, size=(1920, 1080))
    font = QApplication.font()
    try:
        thin = plots.cursors[0].pen.widthF() if plots.cursors else 1.0
        small = plots.plots[0].getAxis("bottom").height()
        window.look.line_factor = PROJECTED
        window.look.text_percent = 200
        window.look.inches = True
        settle()
        if plots.cursors:
            assert plots.cursors[0].pen.widthF() > 1.5 * thin
        assert plots.plots[0].getAxis("bottom").height() > 1.5 * small, "numbers grow with the type"
        titles = [plot.getAxis("left").labelText for plot in plots.plots]
        if sheet == "lift":
            assert titles == ["contact lift [in]", "gap [in]"]
        if sheet == "lobes":
            assert titles[1] == "largest gap [in]"
        lengths = [t for t in titles if "gap" in t or "lift" in t]
        assert all("[mm]" not in t for t in lengths)
        plots.canvas.grab()
        window.look.line_factor = 1.0
        window.look.text_percent = 100
        window.look.inches = False
        settle()
        assert plots.plots[0].getAxis("bottom").height() <= small + 3
        assert not any("[in]" in plot.getAxis("left").labelText for plot in plots.plots)
    finally:
        QApplication.setFont(font)


def test_inches_are_the_same_lengths(open_plots):
    window, plots = open_plots("lift")
    in_mm = plots._gaps["present"].getData()[1].copy()  # noqa: SLF001
    window.look.inches = True
    in_inches = plots._gaps["present"].getData()[1]  # noqa: SLF001
    assert in_inches * 25.4 == pytest.approx(in_mm)
    assert " in" in plots.summary()


@pytest.mark.parametrize(("name", "size"), sampled(product(ONE_OF_A_KIND, [(1280, 720), (1920, 1080)]), 3))
def test_axes_say_what_they_are_and_words_do_not_hide_each_other(open_plots, name, size):
    window, _ = open_plots(SHEETS[0], name, size)
    window.model.send(do.SetBoth(1.0, 2.0))
    for sheet in SHEETS:
        plots = window.plots.choose(sheet)
        settle()
        plots.canvas.grab()
        axes_and_words(plots)


def axes_and_words(plots) -> None:
    """Every axis says what it is, within the picture, and no word stands upon another."""
    for plot in plots.plots:
        words = [i for i in plot.items if isinstance(i, pg.TextItem) and i.isVisible() and i.toPlainText()]
        boxes = [(w.toPlainText(), w.mapRectToScene(w.boundingRect()).adjusted(3, 3, -3, -3)) for w in words]
        for n, (text, box) in enumerate(boxes):
            for other, there in boxes[n + 1 :]:
                assert not box.intersects(there), f"“{text.strip()}” and “{other.strip()}”"
        for side in ("left", "bottom"):
            axis = plot.getAxis(side)
            assert axis.labelText
            label = axis.label.mapRectToScene(axis.label.boundingRect())
            assert plots.canvas.sceneRect().adjusted(-6, -6, 6, 6).contains(label), axis.labelText
