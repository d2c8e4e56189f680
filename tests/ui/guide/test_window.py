"""The guide's window, by mouse and keys; F1 from every panel; the guide on paper."""

from __future__ import annotations

import re
import subprocess
import sys

import numpy as np
import pytest
from PySide6.QtCore import QPoint, Qt
from PySide6.QtGui import QAction, QColor, QImage, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import QAbstractSlider, QApplication, QTabWidget, QWidget
from shiboken6 import isValid

from magview.cli import main as cli
from magview.guide.book import book
from magview.guide.pages import pages
from magview.guide.topics import TOPICS
from magview.practice.library import find_lesson
from magview.ui.bench.panes import PANELS
from magview.ui.guide.page import GuidePage
from magview.ui.guide.window import GuideWindow
from magview.ui.kit.guide_context import topic_of
from magview.ui.kit.look import Look
from magview.ui.kit.theme import DARK, HIGH_CONTRAST, LIGHT, colours
from magview.ui.paper.pdf import pdf_bytes
from magview.ui.plots.pane import SHEETS
from tests.counts import sampled, swept
from tests.guide.marked_words import KEY, bold
from tests.hands import timers_at_rest
from tests.ui.paper.pdf_reader import Pdf, bare

KEYS = Qt.Key
CTRL, SHIFT, ALT = (
    Qt.KeyboardModifier.ControlModifier, Qt.KeyboardModifier.ShiftModifier, Qt.KeyboardModifier.AltModifier
)  # fmt: skip


@pytest.fixture
def guide(qtbot):
    """The guide in a window of its own."""
    window = GuideWindow(Look(LIGHT))
    window.go_to("first-minutes")
    window.show()
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    yield window.page
    if isValid(window):
        window.close()


def windows_shown() -> list[GuideWindow]:
    return [w for w in QApplication.topLevelWidgets() if isinstance(w, GuideWindow) and w.isVisible()]


def press_f1(window, shift: bool = False) -> GuidePage:
    """Press it where the keyboard is: the guide is in front, or with Shift in a window of its own."""
    widget = window.places.front.focusWidget() or window
    QTest.keyClick(widget, KEYS.Key_F1, SHIFT if shift else Qt.KeyboardModifier.NoModifier)
    page = windows_shown()[0].page if shift else window.places.front
    assert isinstance(page, GuidePage) and page.isVisible()
    return page


# ---------------------------------------------------------------------- from where one is


def test_f1_opens_the_page_of_what_has_the_keyboard(open_window, qtbot):
    window = open_window("seven-radial-left")
    window.breaker.setFocus()
    guide = press_f1(window)
    assert guide.address == "pictures#breaker-end"
    guide.go_to("glossary")
    assert press_f1(window) is guide and guide.address == "glossary", "in the guide itself it changes nothing"
    for widget, address in ((window.panel.rotor, "internal-timing"), (window.drive, "pictures#drive-end")):
        window.places.go("bench")
        widget.setFocus()
        assert press_f1(window) is guide, "there is one guide"
        assert guide.address == address
    timers_at_rest(qtbot, guide)


def test_escape_leads_back_to_the_work_with_the_keyboard_where_it_was(open_practice, qtbot):
    page = open_practice("gap-wrong")
    page.work.setFocus()
    page.tabs.setCurrentIndex(2)
    page.tabs.tabBar().setFocus()
    guide = press_f1(page.window())
    timers_at_rest(qtbot, guide)
    QTest.keyClick(guide.contents, KEYS.Key_Escape)
    assert page.window().places.front is page and page.tabs.tabBar().hasFocus()


def test_shift_f1_opens_it_beside_the_work(open_window, qtbot):
    window = open_window("seven-radial-left")
    window.drive.setFocus()
    guide = press_f1(window, shift=True)
    assert guide.address == "pictures#drive-end" and window.places.name == "bench"
    window.activateWindow()
    qtbot.waitUntil(window.isActiveWindow)
    window.breaker.setFocus()
    assert press_f1(window, shift=True) is guide and len(windows_shown()) == 1
    assert guide.address == "pictures#breaker-end"
    window.close()
    assert windows_shown() == [], "it closes with the window that opened it"


def test_every_panel_has_a_page_of_its_own(open_window):
    window = open_window("seven-radial-left")
    found = {}
    for i, name in enumerate(PANELS):
        window.tabs.setCurrentIndex(i)
        window.tabs.tabBar().setFocus()
        found[name] = topic_of(window.bench_page)
        assert type(window.panel_of(name)).__name__ in TOPICS
    assert len(set(found.values())) == len(PANELS)
    assert set(found.values()) <= set(pages())


def test_every_plot_has_a_section_of_its_own(open_window):
    window = open_window("seven-radial-left")
    window.show_plots(True)
    found = set()
    for name in SHEETS:
        sheet = window.plots.choose(name)
        assert TOPICS[type(sheet).__name__].startswith("plots#")
        window.plots.tabBar().setFocus()
        found.add(topic_of(window.bench_page))
    assert len(found) == len(SHEETS)


def test_every_part_of_practice_has_its_section(open_practice, qtbot):
    window = open_practice("gap-wrong")
    for i, panel in enumerate(window.panels):
        window.tabs.setCurrentIndex(i)
        window.tabs.tabBar().setFocus()
        assert topic_of(window) == TOPICS[type(panel).__name__]
    guide = press_f1(window.window())
    assert guide.address == "practice#the-task"
    timers_at_rest(qtbot, guide)
    lesson = open_practice("plate-and-screw")
    lesson.controls.turn.until.setFocus()
    assert topic_of(lesson) == "practice#lessons"


def test_every_class_that_has_a_topic_is_there():
    from pathlib import Path

    import magview

    code = "".join(p.read_text(encoding="utf-8") for p in (Path(magview.__path__[0]) / "ui").rglob("*.py"))
    for name in TOPICS:
        assert re.search(rf"^class {name}\b", code, re.M), name


def test_the_menu_opens_it(open_window, qtbot):
    window = open_window()
    (action,) = (a for a in window.findChildren(QAction) if a.text() == "&Guide")
    assert action.shortcut() == QKeySequence("F1")
    action.trigger()
    assert window.places.name == "guide"
    timers_at_rest(qtbot, window.places.front)


@pytest.mark.process
def test_the_window_starts_without_it():
    code = (
        "import os, sys\n"
        "os.environ['QT_QPA_PLATFORM'] = 'offscreen'\n"
        "from PySide6.QtWidgets import QApplication\n"
        "from magview.bench.placing import new_bench\n"
        "from magview.spec.library import find_magneto\n"
        "from magview.ui.kit.bench_model import BenchModel\n"
        "from magview.ui.shell.window import MainWindow\n"
        "app = QApplication([])\n"
        "window = MainWindow(BenchModel(new_bench(find_magneto('seven-radial'))))\n"
        "window.furnish(); window.show(); app.processEvents()\n"
        "assert 'markdown_it' not in sys.modules and 'magview.guide' not in sys.modules\n"
    )
    done = subprocess.run([sys.executable, "-c", code], capture_output=True, text=True, timeout=60, check=False)
    assert done.returncode == 0, done.stderr


# ---------------------------------------------------------------------- within it


def test_typing_searches_and_return_opens_the_first(guide, qtbot):
    assert guide.search.hasFocus()
    QTest.keyClicks(guide.search, "greatest divisor")
    qtbot.waitUntil(lambda: guide.results.count() > 0)
    assert guide.lists.currentWidget() is guide.results
    assert "<b>divisor</b>" in guide.results.item(0).text().casefold()
    QTest.keyClick(guide.search, KEYS.Key_Return)
    assert guide.address == "theory-coupling#the-shifts-that-can-be-reached"
    assert guide.page.verticalScrollBar().value() > 0
    assert "greatest" in guide.page.textCursor().selectedText().casefold()
    QTest.keyClick(guide, KEYS.Key_Escape)
    assert guide.lists.currentWidget() is guide.contents and guide.search.text() == ""


def test_down_goes_into_what_was_found_and_return_opens_it(guide, qtbot):
    QTest.keyClicks(guide.search, "pip")
    qtbot.waitUntil(lambda: guide.results.count() > 1)
    QTest.keyClick(guide.search, KEYS.Key_Down)
    assert guide.results.hasFocus()
    QTest.keyClick(guide.results, KEYS.Key_Down)
    wanted = guide.results.item(1).data(Qt.ItemDataRole.UserRole)
    QTest.keyClick(guide.results, KEYS.Key_Return)
    assert guide.address == wanted


def test_nothing_found_is_said(guide, qtbot):
    QTest.keyClicks(guide.search, "qqqq")
    qtbot.waitUntil(lambda: guide.results.count() == 1)
    assert "Nothing found" in guide.results.item(0).text()
    QTest.keyClick(guide.search, KEYS.Key_Return)
    assert guide.address == "first-minutes"


def click_on(guide: GuidePage, words: str) -> None:
    """Click a link in the page."""
    cursor = guide.page.document().find(words)
    assert not cursor.isNull()
    guide.page.setTextCursor(cursor)
    guide.page.ensureCursorVisible()
    cursor.setPosition(cursor.selectionStart() + 1)
    where = guide.page.cursorRect(cursor).center()
    QTest.mouseClick(guide.page.viewport(), Qt.MouseButton.LeftButton, pos=QPoint(where.x() + 1, where.y()))


def test_links_lead_on_and_back_and_forward_return(guide):
    click_on(guide, "pictures")
    assert guide.address == "pictures"
    click_on(guide, "coupling")
    assert guide.address == "glossary#coupling"
    QTest.keyClick(guide, KEYS.Key_Left, ALT)
    assert guide.address == "pictures"
    QTest.keyClick(guide, KEYS.Key_Left, ALT)
    assert guide.address == "first-minutes" and not guide.back_action.isEnabled()
    QTest.keyClick(guide, KEYS.Key_Right, ALT)
    assert guide.address == "pictures" and guide.forward_action.isEnabled()
    guide.go_to("keys")
    assert not guide.forward_action.isEnabled()


def test_back_returns_to_where_on_the_page_one_was(guide):
    bar = guide.page.verticalScrollBar()
    bar.setValue(bar.maximum() // 2)
    was = bar.value()
    guide.go_to("glossary")
    assert bar.value() == 0 and was > 0
    guide.back()
    assert bar.value() == was


def test_the_contents_by_mouse_and_keys(guide):
    QTest.keyClick(guide, KEYS.Key_T, CTRL)
    assert guide.contents.hasFocus()
    assert guide.contents.currentItem().text(0) == "The first ten minutes"
    QTest.keyClicks(guide.contents, "The")  # a page's title begins it
    item = guide.contents.findItems("Keys and mouse", Qt.MatchFlag.MatchRecursive)[0]
    guide.contents.scrollToItem(item)
    at = guide.contents.visualItemRect(item).center()
    QTest.mouseClick(guide.contents.viewport(), Qt.MouseButton.LeftButton, pos=at)
    assert guide.address == "keys" and "Keys and mouse" in guide.windowTitle()
    assert item.isExpanded()
    QTest.keyClick(guide.contents, KEYS.Key_Down)
    QTest.keyClick(guide.contents, KEYS.Key_Return)
    assert guide.address == "keys#everywhere-in-the-main-window"


def test_find_in_page_goes_round_and_says_so(guide):
    QTest.keyClick(guide, KEYS.Key_F, CTRL)
    assert guide.find_bar.line.hasFocus()
    QTest.keyClicks(guide.find_bar.line, "gap")
    first = guide.page.textCursor().selectionStart()
    assert guide.page.textCursor().selectedText().casefold() == "gap"
    QTest.keyClick(guide, KEYS.Key_F3)
    second = guide.page.textCursor().selectionStart()
    assert second > first
    QTest.keyClick(guide, KEYS.Key_F3, SHIFT)
    assert guide.page.textCursor().selectionStart() == first
    QTest.keyClick(guide, KEYS.Key_F3, SHIFT)
    assert "other end" in guide.find_bar.says.text()
    guide.find_bar.line.selectAll()
    QTest.keyClicks(guide.find_bar.line, "zzz")
    assert "Not on this page" in guide.find_bar.says.text()
    QTest.keyClick(guide, KEYS.Key_Escape)
    assert not guide.find_bar.isVisible() and guide.isVisible()
    QTest.keyClick(guide, KEYS.Key_Escape)
    assert not guide.isVisible()


def test_zoom_by_keys_keeps_pictures_within_the_page(guide, qtbot):
    before = guide.page.font().pointSizeF()
    QTest.keyClick(guide, KEYS.Key_Plus, CTRL)
    assert guide.page.font().pointSizeF() == pytest.approx(1.25 * before)
    for _ in range(9):
        QTest.keyClick(guide, KEYS.Key_Plus, CTRL)
    assert guide.page.zoom == 300
    timers_at_rest(qtbot, guide.page)
    assert guide.page.horizontalScrollBar().maximum() <= guide.page.viewport().width() * 0.6
    QTest.keyClick(guide, KEYS.Key_0, CTRL)
    assert guide.page.font().pointSizeF() == pytest.approx(before)


@pytest.mark.parametrize("theme", [LIGHT, DARK, HIGH_CONTRAST], ids=lambda t: t.name)
def test_it_takes_the_colours_of_the_application(guide, qtbot, theme):
    try:
        colours(theme)
        guide.go_to("theory-coupling")
        qtbot.waitUntil(lambda: f"a {{ color: {theme.hand}; }}" in guide.page.document().defaultStyleSheet())
        qtbot.waitUntil(lambda: guide.page.viewport().grab().toImage().pixelColor(2, 2) == QColor(theme.base))

        def seen() -> set[str]:
            shot = guide.page.viewport().grab().toImage()
            rows = shot.copy(0, 0, shot.width(), 300).convertToFormat(QImage.Format.Format_RGB32)
            pixels = np.unique(np.frombuffer(rows.constBits(), np.uint32))
            return {QColor.fromRgb(int(pixel)).name() for pixel in pixels}

        qtbot.waitUntil(lambda: theme.text in seen())  # words in the theme's colour
        assert theme.button in seen(), "formulas stand on a ground of their own"
    finally:
        colours(LIGHT)


@pytest.mark.parametrize("name", sampled(pages(), 10))
def test_every_page_shows_whole_with_its_pictures(guide, qtbot, name):
    guide.go_to(name)
    text = bare(guide.page.toPlainText())
    assert bare(pages()[name].title) in text
    for section in pages()[name].sections:
        assert bare(section.title) in text
        guide.go_to(section.address)
    assert guide.page.horizontalScrollBar().maximum() == 0

    def fits() -> bool:
        widths = re.findall(r'<img[^>]*width="(\d+)"', guide.page.toHtml())
        wide = guide.page.viewport().width()
        return len(widths) == pages()[name].source.count("![") and all(100 < int(w) <= wide for w in widths)

    qtbot.waitUntil(fits)  # pictures follow the window's width a moment later


def test_an_address_that_is_not_there_shows_the_first_page(guide):
    guide.go_to("nowhere#at-all")
    assert guide.address == "first-minutes"


def test_it_reads_nothing_but_its_own_pictures(guide):
    for name in ("../../LICENSE.txt", "pictures/../index.md", "file:///etc/passwd", "https://example.org/a.png"):
        assert guide.page.loadResource(2, name) is None
    assert guide.page.loadResource(2, "pictures/crank.png").width() > 100


def test_everything_can_be_reached_and_has_a_name(guide):
    for widget in (guide.search, guide.contents, guide.results, guide.page, guide.find_bar.line):
        assert widget.accessibleName()
        assert widget.focusPolicy() & Qt.FocusPolicy.TabFocus


# ---------------------------------------------------------------------- keys


def test_every_key_named_in_the_guide_is_one(open_window, open_practice):
    """Combinations and function keys are shortcuts of some window; other keys are pressed in tests of their views."""
    shortcuts = set()
    main = open_window("seven-radial-left")
    main.draft_own()
    main.present(True)
    job = main.work.open_shipped()
    windows: list[QWidget] = [main, job, main.own.page, open_practice("gap-wrong"), main.guide.home]
    windows.append(main.learn.begin(find_lesson("plate-and-screw")))
    for window in windows:
        for action in window.findChildren(QAction):
            shortcuts |= {s.toString() for s in action.shortcuts()}
        for tabs in window.findChildren(QTabWidget):
            for i in range(tabs.count()):
                letter = re.search("&(.)", tabs.tabText(i))
                shortcuts |= {f"Alt+{letter[1].upper()}"} if letter else set()
    keys = QKeySequence.StandardKey
    by_views = {
        "Up", "Down", "Left", "Right", "Page Up", "Page Down", "Space", "1", "2", "3", "E", "H", "L",
        "Shift", "Ctrl", "Alt", "Tab", "Shift+Tab", "Return", "Home", "Alt+1", "Alt+4",
        "Enter", "Esc", "R", "B", "S", "N", "8", "Ctrl+V",
    }  # fmt: skip
    # Of the desktop, which has other keys for them where no desktop is: their entries ask it for its own.
    by_desktop = {"Ctrl+Q", "Ctrl+W"}
    asked = {a.text(): a.shortcut() for w in windows for a in w.findChildren(QAction)}
    for text, key in (("&Quit", keys.Quit), ("&Close", keys.Close)):
        assert asked[text] == QKeySequence(key)
    named = {b for name in pages() for b in bold(name) if KEY.fullmatch(b)}
    assert len(named) > 30
    main.present(False)
    job.close()
    assert named - by_views - {"+1", "-1"} <= shortcuts | by_desktop


# ---------------------------------------------------------------------- on paper


@pytest.mark.parametrize(("paper", "size"), [("a4", (595, 842)), swept(("letter", (612, 792)))])
def test_every_word_can_be_selected_in_the_pdf(qapp, tmp_path, paper, size):
    data, count = pdf_bytes(book(paper))
    pdf = Pdf(data)
    assert len(pdf.pages) == count > 25
    boxes = re.findall(rb"/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]", data)
    assert len(boxes) == count and all((round(float(w)), round(float(h))) == size for w, h in boxes)
    texts = [pdf.text(i) for i in range(count)]
    whole = "".join(texts)
    for page in pages().values():
        for section in page.sections:
            assert bare(section.title) in whole, section.address
    # A list and a paragraph after a table: the ends of pages are there, too.
    assert bare("Work on a certified aircraft is done or released by a licensed person.") in whole
    assert bare("In this guide Ctrl++ makes the page larger.") in whole
    # The contents tell the right page.
    foot = bare("The magview guide · magview")
    contents = "".join(text.split(foot)[0] for text in texts[:2])
    for page in pages().values():
        (number,) = re.findall(re.escape(bare(page.title)) + r"(\d+)", contents)[:1]
        assert any(texts[int(str(number)[:n]) - 1].startswith(bare(page.title)) for n in (1, 2) if n <= len(number))
    # No heading is the last thing on a page.
    for text in texts[1:]:
        body = text.split(foot)[0]
        for page in pages().values():
            for section in page.sections[1:]:
                if f"{section.title}\n\n![" in page.source:
                    continue  # a picture follows it
                assert not body.endswith(bare(section.title)) or body == bare(section.title)


@pytest.mark.process
def test_the_command_writes_a_pdf(tmp_path):
    target = tmp_path / "guide.pdf"
    command = [sys.executable, "-m", "magview", "guide", "--pdf", str(target), "--paper", "letter"]
    done = subprocess.run(command, capture_output=True, text=True, timeout=120, check=False)
    assert done.returncode == 0 and done.stderr == "", done.stderr
    assert target.read_bytes().startswith(b"%PDF-")


def test_a_place_that_cannot_be_written_is_one_sentence(tmp_path, capsys):
    assert cli.main(["guide", "--html", str(tmp_path / "no" / "guide.html")]) == 2
    assert capsys.readouterr().err.count("\n") == 1


def test_open_guide_at_an_address(open_window, qtbot):
    window = open_window()
    window.places.open_guide("commands")
    assert window.places.front.address == "commands"
    timers_at_rest(qtbot, window.places.front)


@pytest.mark.parametrize("address", sampled(sorted({a for a in TOPICS.values() if "#" in a}), 3))
def test_the_section_asked_for_stands_at_the_top(qtbot, address):
    """Also once the window is shown and the pictures have their sizes, and for the last sections of a page."""
    name, _, _ = address.partition("#")
    title = next(s.title for s in pages()[name].sections if s.address == address)
    window = GuideWindow(Look(LIGHT))
    window.go_to(address)  # before it is shown, as F1 does
    page = window.page.page
    window.show()
    window.resize(window.width() - 60, window.height() - 40)
    timers_at_rest(qtbot, window)

    def first_line() -> str:
        line = page.fontMetrics().height()
        spots = (page.cursorForPosition(QPoint(40, y)) for y in range(line // 2, 4 * line, line // 2))
        return next((s.block().text() for s in spots if s.block().text().strip()), "")

    assert first_line() == title
    page.verticalScrollBar().triggerAction(QAbstractSlider.SliderAction.SliderToMinimum)
    window.resize(window.width() + 30, window.height())
    timers_at_rest(qtbot, window)
    assert page.verticalScrollBar().value() == 0, "who scrolls away is not brought back"
    window.close()
