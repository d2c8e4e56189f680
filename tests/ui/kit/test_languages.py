"""The window in other languages: every text translated, nothing cut off, no letters that clash, decimal commas."""

from __future__ import annotations

import importlib.util
import subprocess
import sys
from collections import Counter
from collections.abc import Callable, Iterable, Iterator
from pathlib import Path
from typing import Any

import pytest
from PySide6.QtCore import QCoreApplication, QEvent, QLocale, QSettings, Qt
from PySide6.QtGui import QAction, QKeySequence
from PySide6.QtTest import QTest
from PySide6.QtWidgets import (
    QAbstractButton,
    QApplication,
    QComboBox,
    QLabel,
    QMenu,
    QMenuBar,
    QTabBar,
    QToolButton,
    QWidget,
)

from magview.bench.actions import ReadLamp, TurnBackplate
from magview.bench.placing import new_bench
from magview.spec import language as spoken_language
from magview.spec.language import speak_through, tr
from magview.spec.library import find_installation
from magview.ui.bench.panes import PANELS
from magview.ui.kit import translation
from magview.ui.kit.bench_model import BenchModel
from magview.ui.kit.inputs import AngleSpin, LengthSpin, NumberSpin
from magview.ui.kit.look import Look
from magview.ui.kit.theme import LIGHT
from magview.ui.plots.pane import SHEETS
from magview.ui.shell.renewal import renewed
from tests.counts import sampled
from tests.ui.kit.room import cut
from tests.windows import workbench

ROOT = Path(__file__).parents[3]
_spec = importlib.util.spec_from_file_location("translations", ROOT / ".ci" / "translations.py")
assert _spec is not None and _spec.loader is not None
translations = importlib.util.module_from_spec(_spec)
sys.modules["translations"] = translations
_spec.loader.exec_module(translations)

OTHERS = translations.LANGUAGES
FINISHED = translation.FINISHED
found = translations.collect
"""All texts of the program; read once."""


# ---------------------------------------------------------------------- the files of the translators


@pytest.mark.parametrize("code", OTHERS)
def test_what_is_offered_is_translated_whole_and_soundly(code: str) -> None:
    words = translations.Words.read(code)
    missing = words.missing(found())
    said = f"{len(missing)} of {len(found())} texts are missing, such as {missing[:5]}"
    assert (code in FINISHED) == (not missing), said
    unsound = {s: f for s, t in words.translations.items() if t and (f := translations.faults(s, t))}
    assert not unsound


@pytest.mark.parametrize("code", OTHERS)
def test_the_files_of_a_finished_language_hold_just_what_the_program_says(code: str) -> None:
    if code in FINISHED:
        assert set(translations.Words.read(code).translations) == set(found()), "run `python .ci/translations.py`"
    else:
        assert translations.check(code) == 1, "what is not offered lacks something, and the command says what"


@pytest.mark.process
@pytest.mark.parametrize("code", OTHERS)
def test_the_files_are_built(code: str, tmp_path: Path) -> None:
    source = translations.FOLDER / f"magview_{code}.ts"
    built = tmp_path / "again.qm"
    tool = Path(sys.executable).with_name("pyside6-lrelease")
    subprocess.run([tool, "-silent", "-nounfinished", source, "-qm", built], check=True, timeout=60)
    assert built.read_bytes() == source.with_suffix(".qm").read_bytes(), "run `python .ci/translations.py`"


@pytest.mark.parametrize(
    ("source", "translation"),
    [
        ("Turn it {angle}", "Dreh es"),
        ("Turn it {angle}", "Dreh es {winkel}"),
        ("Turn it {angle}", "Dreh es {angle"),
        ("&Save", "Sichern"),
        ("Save…", "Sichern"),
        ("Hint:", "Hinweis"),
        ("One\ntwo", "Eins zwei"),
        ("Plain", " Schlicht"),
        ("Tables (*.csv);;All files (*)", "Tabellen (*.txt);;Alle Dateien (*)"),
    ],
)
def test_an_unsound_translation_is_refused(source: str, translation: str) -> None:
    assert translations.faults(source, translation)
    assert not translations.faults(source, source)


def test_what_is_exported_comes_back(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> None:
    import json

    monkeypatch.setattr(translations, "FOLDER", tmp_path)
    assert translations.export("de", tmp_path / "de.json") == 0
    rows = json.loads((tmp_path / "de.json").read_text(encoding="utf-8"))
    assert [row["source"] for row in rows] == list(found())
    save, turn = "&Save magneto as…", next(s for s in found() if "{angle}" in s)
    for row in rows:
        row["translation"] = {save: "Magnet &speichern unter…", turn: "ohne Winkel"}.get(row["source"], "")
    (tmp_path / "de.json").write_text(json.dumps(rows), encoding="utf-8")
    assert translations.take("de", tmp_path / "de.json") == 1, "the unsound one is refused"
    words = translations.Words.read("de")
    assert words.translations[save] == "Magnet &speichern unter…" and not words.translations[turn]
    assert (tmp_path / "magview_de.qm").stat().st_size > 100


# ---------------------------------------------------------------------- choosing


@pytest.fixture(autouse=True)
def _english_again(tmp_path: Path) -> Iterator[None]:
    translation.FINISHED = tuple(translation.LANGUAGES)  # those to come work alike
    QSettings.setPath(QSettings.Format.IniFormat, QSettings.Scope.UserScope, str(tmp_path / "settings"))
    locale = QLocale()
    yield
    translation.FINISHED = FINISHED
    translation.speak("en")
    QLocale.setDefault(locale)
    speak_through(None)


def test_english_reads_no_file_and_others_their_own(monkeypatch: pytest.MonkeyPatch) -> None:
    from magview.spec import library

    monkeypatch.setattr(library, "resources", lambda: pytest.fail("a file was looked for"))
    assert translation.speak("en") == "en" and tr("File") == "File"


@pytest.mark.parametrize(
    ("tags", "code"),
    [
        (["de-AT", "de"], "de"),
        (["pt-BR", "en-US"], "pt"),
        (["it-IT", "fr-CH"], "fr"),
        (["nl-NL"], "en"),
        (["C"], "en"),
        (["en-GB", "de"], "en"),
    ],
)
def test_the_desktop_chooses_where_nobody_did(tags: list[str], code: str, monkeypatch: pytest.MonkeyPatch) -> None:
    class System:
        @staticmethod
        def system() -> Any:
            return System()

        def uiLanguages(self) -> list[str]:
            return tags

    monkeypatch.setattr(translation, "QLocale", System)
    assert translation.desktop() == code


def test_a_choice_is_kept_and_can_be_taken_back() -> None:
    assert translation.chosen() is None
    translation.choose("fr")
    assert translation.chosen() == "fr" and translation.speak() == "fr" == translation.language()
    translation.choose(None)
    assert translation.chosen() is None


def test_qt_s_own_buttons_speak_the_language_too(qapp: QApplication) -> None:
    translation.speak("de")
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Abbrechen"  # Qt's own translation
    translation.speak("en")
    assert QCoreApplication.translate("QPlatformTheme", "Cancel") == "Cancel"


def test_another_language_comes_over_the_same_bench(qapp: QApplication) -> None:
    model = BenchModel(new_bench(find_installation("seven-radial-left")))
    window = workbench()(model, Look(LIGHT))
    window.resize(1280, 720)  # wider than any language needs
    window.furnish()
    window.plots.wait()
    window.show()
    model.send(TurnBackplate(1.5))
    font = QApplication.font()
    try:
        window.menus.text_actions.actions()[1].trigger()
        window.menus.units.setCurrentIndex(1)
        window.tabs.setCurrentIndex(2)
        window.show_plots(True)
        window.plots.choose("coil")
        large = QApplication.font().pointSizeF()
        asked: list[str] = []
        window.language_wanted.connect(asked.append)
        menu = next(m for m in window.findChildren(QMenu) if m.title() == "L&anguage")
        menu.aboutToShow.emit()
        assert [a.text() for a in menu.actions()][1:] == list(translation.LANGUAGES.values())
        next(a for a in menu.actions() if a.text() == "Deutsch").trigger()
        assert asked == ["de"]
        new = renewed(window, "de")
        assert new is not window and new.spoken == "de" and translation.chosen() == "de"
        assert new.model is model and model.state.backplate_deg == 1.5 and model.store.undo_name is not None
        assert new.size() == window.size() and not window.isVisible() and new.isVisible()
        assert new.menus.units.currentIndex() == 1 and new.tabs.currentIndex() == 2
        assert list(SHEETS)[new.plots.currentIndex()] == "coil" and QApplication.font().pointSizeF() == large
        model.undo()
        again = renewed(new, "en")
        assert again.spoken == "en" and again.model is model
        again.close()
        again.deleteLater()
        del window, new, again
    finally:
        QApplication.sendPostedEvents(None, QEvent.Type.DeferredDelete.value)
        QApplication.setFont(font)


def test_work_in_other_windows_is_not_lost_by_it(open_window: Callable[..., Any], qtbot: Any) -> None:
    window = open_window("seven-radial-left")
    beside = QWidget()
    qtbot.addWidget(beside)
    beside.show()
    assert renewed(window, "fr") is window
    assert translation.chosen() == "fr" and translation.language() == "en"
    assert "Français" in window.statusBar().currentMessage()


# ---------------------------------------------------------------------- numbers


def test_numbers_are_shown_with_a_comma_and_typed_with_either(qtbot: Any) -> None:
    translation.speak("de")
    number, angle, length = (
        NumberSpin(1.0, 0.0, 5000.0),
        AngleSpin(1.0, -90.0, 90.0),
        LengthSpin(0.01, 0.0, 10.0, Look(LIGHT)),
    )
    for spin in (number, angle, length):
        qtbot.addWidget(spin)
        spin.show()
    angle.show_value(1.5)
    length.show_value(0.25)
    assert angle.text() == "+1,50°" and length.text() == "0,250 mm"
    for typed in ("1,5", "1.5"):
        for spin in (number, angle, length):
            spin.show_value(9.0)
            spin.lineEdit().selectAll()
            QTest.keyClicks(spin.lineEdit(), typed)
            QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)
            assert spin.exact == 1.5, typed
            assert "1,5" in spin.text()


def test_a_comma_never_separates_thousands(qtbot: Any) -> None:
    for code in ("en", "de"):
        translation.speak(code)
        assert QLocale().toDouble("1,5")[0] in (0.0, 1.5) and QLocale().toDouble("1.5")[0] in (0.0, 1.5)
        spin = NumberSpin(1.0, 0.0, 5000.0)
        qtbot.addWidget(spin)
        for typed in ("1,500", "1.500"):
            spin.show_value(9.0)
            spin.lineEdit().selectAll()
            QTest.keyClicks(spin.lineEdit(), typed)
            QTest.keyClick(spin.lineEdit(), Qt.Key.Key_Return)
            assert spin.exact == 1.5, (code, typed)


def test_axes_have_the_language_s_sign(open_window: Callable[..., Any]) -> None:
    translation.speak("fr")
    window = open_window("seven-radial-left")
    axis = window.plots.sheet("lift").plots[0].getAxis("left")
    assert axis.tickStrings([0.5, 1.5], 1.0, 0.1) == ["0,5", "1,5"]


# ---------------------------------------------------------------------- letters and room


def seen_letters(window: QWidget) -> list[str]:
    """The letter of each thing in sight of a window that answers to Alt: its menus, tabs, buttons and labels."""
    shown = [w for w in window.findChildren(QWidget) if w.isVisible()]
    texts = [action.text() for bar in shown if isinstance(bar, QMenuBar) for action in bar.actions()]
    texts += [tabs.tabText(i) for tabs in shown if isinstance(tabs, QTabBar) for i in range(tabs.count())]
    texts += [w.text() for w in shown if isinstance(w, QAbstractButton) and not isinstance(w, QToolButton)]
    texts += [w.text() for w in shown if isinstance(w, QLabel) and w.buddy() is not None and w.buddy().isVisible()]
    return letters(texts)


def letters(texts: Iterable[str]) -> list[str]:
    """The letter that each of the texts answers to, where it has one."""
    return [key for text in texts if (key := QKeySequence.mnemonic(text).toString().rpartition("+")[2])]


def clashes(found: list[str]) -> list[str]:
    """Letters that more than one text answers to."""
    return [key for key, times in Counter(found).items() if times > 1]


def pages(window: Any) -> Iterator[str]:
    """Every page of the calculators, and with the first every sheet of the plots."""
    for at, name in enumerate(PANELS):
        window.show_plots(False)
        window.tabs.setCurrentIndex(at)
        _settled()
        yield name
    window.show_plots(True)
    for sheet in SHEETS:
        window.plots.choose(sheet)
        _settled()
        yield sheet


def _settled() -> None:
    for _ in range(4):
        QApplication.processEvents()


def test_no_two_letters_clash(open_window: Callable[..., Any]) -> None:
    window = open_window("seven-radial-left")
    _settled()
    assert len(seen_letters(window)) > 15
    found = {page: clash for page in pages(window) if (clash := clashes(seen_letters(window)))}
    assert not found
    for action in window.menuBar().actions():
        assert not clashes(letters(entry.text() for entry in action.menu().actions())), action.text()


@pytest.mark.parametrize("code", sampled(translation.LANGUAGES, 1))
def test_nothing_is_cut_off(code: str, open_window: Callable[..., Any]) -> None:
    translation.speak(code)
    window = open_window("seven-radial-left")
    window.model.send(ReadLamp("left", 22.0))
    found = {page: short for page in pages(window) if (short := cut(window))}
    assert not found
    assert window.width() <= 1280 and window.height() <= 720


def test_lists_of_choices_are_as_wide_as_what_they_show(open_window: Callable[..., Any]) -> None:
    window = open_window("seven-radial-left")
    assert spoken_language.tr("x") == "x"
    for combo in window.menuBar().parent().findChildren(QComboBox):
        if combo.isVisible() and combo.sizeAdjustPolicy() == QComboBox.SizeAdjustPolicy.AdjustToContents:
            assert combo.width() >= combo.minimumSizeHint().width()
    assert all(isinstance(a, QAction) for a in window.menus.ticks())
