"""The choice of the language in the menu Look; it counts from the next start."""

from __future__ import annotations

from functools import partial
from typing import TYPE_CHECKING, Protocol

from PySide6.QtGui import QAction, QActionGroup

from studio_planner.desktop.remembered import remember_language, remembered_language
from studio_planner.desktop.tongue import Language, translate

if TYPE_CHECKING:
    from PySide6.QtWidgets import QMenu


class Telling(Protocol):
    """Whoever can say news in passing."""

    def tell(self, words: str) -> None:
        """Say news that goes by itself."""
        ...


def fill_languages(menu: QMenu, desk: Telling) -> None:
    """Offer every language in a menu that is being opened; each is called by its own name."""
    if not menu.isEmpty():
        return
    group = QActionGroup(menu)
    names = {
        Language.SYSTEM: translate("menus", "As the &system"),
        Language.ENGLISH: "&English",
        Language.GERMAN: "&Deutsch",
    }
    for language, name in names.items():
        action = QAction(name, menu)
        action.setCheckable(True)
        action.setChecked(language is remembered_language())
        action.triggered.connect(partial(_chosen, language, desk))
        group.addAction(action)
        menu.addAction(action)


def _chosen(language: Language, desk: Telling, _checked: object = None) -> None:
    remember_language(language)
    desk.tell(translate("menus", "The language is another one from the next start on."))
