"""The page of the studio: what it lacks, hands, places, units, rules of thumb, backups."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QFrame, QHBoxLayout, QScrollArea, QStackedWidget, QWidget
from typing_extensions import override

from studio_planner.desktop.page import Page
from studio_planner.desktop.page_keys import REMINDERS, SET_UP
from studio_planner.desktop.studio_pages.section_names import SectionNames
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from pathlib import Path

    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

HANDS, ROOM, UNITS, RULES, BACKUPS = (
    "hands",
    "room",
    "units",
    "rules",
    "backups",
)
"""The keys of the sections; behind a slash may follow the key of a thing on it."""


def _set_up(desk: PageDesk) -> Page:
    from studio_planner.desktop.studio_pages.set_up_section import (  # noqa: PLC0415 - when seen
        SetUpSection,
    )

    return SetUpSection(desk)


def _hands(desk: PageDesk) -> Page:
    from studio_planner.desktop.studio_pages.hands_section import HandsSection  # noqa: PLC0415

    return HandsSection(desk)


def _room(desk: PageDesk) -> Page:
    from studio_planner.desktop.pages.room_section import RoomSection  # noqa: PLC0415

    return RoomSection(desk)


def _units(desk: PageDesk) -> Page:
    from studio_planner.desktop.studio_pages.units_section import UnitsSection  # noqa: PLC0415

    return UnitsSection(desk)


def _rules(desk: PageDesk) -> Page:
    from studio_planner.desktop.studio_pages.rules_section import RulesSection  # noqa: PLC0415

    return RulesSection(desk)


def _reminders(desk: PageDesk) -> Page:
    from studio_planner.desktop.due_pages.reminders_section import (  # noqa: PLC0415 - likewise
        RemindersSection,
    )

    return RemindersSection(desk)


def _backups(desk: PageDesk) -> Page:
    from studio_planner.desktop.studio_pages.backups_section import (  # noqa: PLC0415
        BackupsSection,
    )

    return BackupsSection(desk)


_MAKERS: dict[str, Callable[[PageDesk], Page]] = {
    SET_UP: _set_up,
    HANDS: _hands,
    ROOM: _room,
    UNITS: _units,
    RULES: _rules,
    REMINDERS: _reminders,
    BACKUPS: _backups,
}


class StudioPage(Page):
    """One section in front, chosen from the words at the left; each is made when first seen.

    Signals:
        section_shown: the key of the section that is in front now.
    """

    section_shown = Signal(str)

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show the first section."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self._held: dict[str, tuple[Page, QScrollArea]] = {}
        self._stale: set[str] = set()
        self.key = SET_UP
        self.names = SectionNames(self.canvas, translate("studio", "Sections"), self)
        for key, words in (
            (SET_UP, translate("studio", "Set-up")),
            (HANDS, translate("studio", "Hands")),
            (ROOM, translate("studio", "Room and shelf")),
            (UNITS, translate("studio", "Units and words")),
            (RULES, translate("studio", "Rules of thumb")),
            (REMINDERS, translate("studio", "Reminders")),
            (BACKUPS, translate("studio", "Backups")),
        ):
            self.names.add(key, words)
        self._stack = QStackedWidget(self)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(0)
        layout.addWidget(self.names)
        layout.addWidget(self._stack, 1)
        self.names.section_asked.connect(self.choose)
        self.names.show_section(SET_UP)

    def section(self, key: str) -> Page:
        """The section of that key, made now if it was not yet."""
        if key not in self._held:
            section = _MAKERS[key](self.desk)
            scroll = QScrollArea(self)
            scroll.setFrameShape(QFrame.Shape.NoFrame)
            scroll.setWidgetResizable(True)
            scroll.setFocusPolicy(Qt.FocusPolicy.NoFocus)
            scroll.setWidget(section)
            self._stack.addWidget(scroll)
            self._held[key] = (section, scroll)
            self._stale.add(key)
        return self._held[key][0]

    @override
    def getting_ready(self) -> Iterator[None]:
        for key in _MAKERS:
            self.section(key)
            yield

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        self._stale = set(self._held)
        self._bring(self.key)

    @override
    def choose(self, key: str) -> None:
        """Choose a section, and behind a slash a thing on it: hands/ada."""
        name, _, thing = key.partition("/")
        if name not in _MAKERS:
            return
        self._bring(name)
        self.names.names[name].setFocus()
        if thing:
            self.section(name).choose(thing)

    @override
    def take_file(self, path: Path) -> None:
        """Take what is a logger's record by its name into the room that is chosen."""
        self._bring(ROOM)
        self.section(ROOM).take_file(path)

    def _bring(self, key: str) -> None:
        section = self.section(key)
        self.key = key
        if key in self._stale:
            section.show_view(self._view)
            self._stale.discard(key)
        self._stack.setCurrentWidget(self._held[key][1])
        self.names.show_section(key)
        self.section_shown.emit(key)
