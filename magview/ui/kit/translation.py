"""The language the windows speak: chosen or the desktop's own, else the English of the source."""

from __future__ import annotations

from functools import lru_cache
from typing import TYPE_CHECKING

from PySide6.QtCore import QLocale
from PySide6.QtWidgets import QApplication

from magview.spec.language import speak_through
from magview.ui.kit.settings import keep, kept_text

if TYPE_CHECKING:
    from PySide6.QtCore import QTranslator

LANGUAGES = {"en": "English", "es": "Español", "fr": "Français", "de": "Deutsch", "pt": "Português"}
"""Each language by its code, in its own words."""

FINISHED: tuple[str, ...] = ("en",)
"""Languages offered: those whose every text is translated. `.ci/translations.py check` lists what one lacks."""

CONTEXT = "magview"
"""Context of all words of the translation files."""

_KEY = "language"
_kept: list[QTranslator] = []
"""Qt's own words in the present language, for as long as they are needed."""
_spoken = "en"


def chosen() -> str | None:
    """The code of the language that was chosen; None follows the desktop."""
    code = kept_text(_KEY)
    return code if code in FINISHED else None


def choose(code: str | None) -> None:
    """Keep a language for this and every later start; None follows the desktop."""
    keep(_KEY, code or "")


def desktop() -> str:
    """The first of the desktop's languages that is finished; English where there is none."""
    wanted = (tag.replace("_", "-").partition("-")[0] for tag in QLocale.system().uiLanguages())
    return next((code for code in wanted if code in FINISHED), "en")


def language() -> str:
    """The code of the language spoken now."""
    return _spoken


def speak(code: str | None = None) -> str:
    """Speak a language from now on, in what is built from now on; returns its code.

    `code`: None is what was chosen, or the desktop's own. English reads no file.
    """
    global _spoken
    _spoken = code = code or chosen() or desktop()
    app = QApplication.instance()
    for translator in _kept:
        if app is not None:
            app.removeTranslator(translator)
    _kept.clear()
    locale = _locale(code)
    QLocale.setDefault(locale)
    point = locale.decimalPoint()
    if code == "en":
        speak_through(None, point)
        return code
    from PySide6.QtCore import QLibraryInfo, QTranslator

    from magview.spec.library import resources

    words = QTranslator()
    if not words.load(f"magview_{code}", str(resources() / "translations")):
        return speak("en")  # a damaged install is no reason to stay closed

    @lru_cache(maxsize=8192)
    def translate(text: str) -> str:
        return words.translate(CONTEXT, text) or text

    speak_through(translate, point)
    # Buttons of Qt's own dialogs; Portuguese is there as Brazilian only.
    of_qt = QTranslator()  # nobody's child: it goes, and its file with it, when another language is spoken
    folder = QLibraryInfo.path(QLibraryInfo.LibraryPath.TranslationsPath)
    if app is not None and of_qt.load(f"qtbase_{'pt_BR' if code == 'pt' else code}", folder):
        app.installTranslator(of_qt)
        _kept.append(of_qt)
    return code


def _locale(code: str) -> QLocale:
    """Locale for numbers: the desktop's own where it speaks this language, else the language's."""
    system = QLocale.system()
    locale = system if desktop() == code and system.name().startswith(code) else QLocale(code)
    # A point or comma is always a decimal sign, never one between thousands: "1,5" must not become 15.
    options = QLocale.NumberOption.OmitGroupSeparator | QLocale.NumberOption.RejectGroupSeparator
    locale.setNumberOptions(options)
    return locale
