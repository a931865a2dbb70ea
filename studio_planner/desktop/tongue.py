"""The language of the desk: texts of our own, Qt's own, and how days and months are called."""

from __future__ import annotations

from enum import StrEnum
from typing import Final

from PySide6.QtCore import QCoreApplication, QLibraryInfo, QLocale, QTranslator

from studio_planner.craft import tongue
from studio_planner.craft.resources import resource_path
from studio_planner.craft.tongue import counted, marked, quoted, translate

__all__ = ["Language", "counted", "marked", "quoted", "speak", "spoken", "translate"]

_FOLDER = "translations"
_OWN = "studio_planner"
_QTS = "qtbase"


class Language(StrEnum):
    """What a maker can choose; SYSTEM follows the computer as far as we speak it."""

    SYSTEM = "system"
    ENGLISH = "en"
    GERMAN = "de"


_LOCALES: Final = {
    Language.ENGLISH: QLocale.Language.English,
    Language.GERMAN: QLocale.Language.German,
}
_installed: Final[list[QTranslator]] = []


def spoken() -> Language:
    """The language that the desk speaks now."""
    return Language.GERMAN if _installed else Language.ENGLISH


def speak(language: Language) -> None:
    """Speak a language from now on; what is on screen already stays as it is."""
    chosen = _of_system() if language is Language.SYSTEM else language
    for translator in _installed:
        QCoreApplication.removeTranslator(translator)
    _installed.clear()
    tongue.speak_with(None)
    QLocale.setDefault(locale_of(chosen))
    if chosen is not Language.ENGLISH:
        _install(chosen)
        tongue.speak_with(QCoreApplication.translate)


def locale_of(language: Language) -> QLocale:
    """How days, months and numbers are written: as the computer does where it agrees."""
    system = QLocale.system()
    if language is Language.SYSTEM or system.language() is _LOCALES[language]:
        return system
    return QLocale(_LOCALES[language])


def _of_system() -> Language:
    wanted = QLocale.system().language()
    return next((one for one, name in _LOCALES.items() if name is wanted), Language.ENGLISH)


def _install(language: Language) -> None:
    """Put our texts and Qt's in; without the file of ours the installation is not whole."""
    # PySide gives the members of its enumerations on the class, which its stubs do not say.
    qts = QLibraryInfo.path(QLibraryInfo.TranslationsPath)  # type: ignore[attr-defined]
    own = str(resource_path(_FOLDER))
    for name, folder in ((_QTS, qts), (_OWN, own)):
        translator = QTranslator()
        if translator.load(f"{name}_{language.value}", folder):
            QCoreApplication.installTranslator(translator)
            _installed.append(translator)


def weekday(day: int) -> str:
    """The short name of a day of the week, 0 for Monday to 6 for Sunday, such as Tue."""
    return _names().standaloneDayName(day + 1, QLocale.FormatType.ShortFormat)


def whole_weekday(day: int) -> str:
    """The name of a day of the week, 0 for Monday to 6 for Sunday, such as Tuesday."""
    return _names().standaloneDayName(day + 1, QLocale.FormatType.LongFormat)


def month(number: int) -> str:
    """The short name of a month, 1 to 12, such as Dec."""
    return _names().standaloneMonthName(number, QLocale.FormatType.ShortFormat)


def _names() -> QLocale:
    return QLocale(_LOCALES[spoken()])
