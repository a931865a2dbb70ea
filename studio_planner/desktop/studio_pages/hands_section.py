"""The hands of the studio: who there is, and for whoever is chosen when they can work."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtWidgets import QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.list_beside import ListBeside
from studio_planner.desktop.page import Page
from studio_planner.desktop.studio_pages.person_panel import PersonPanel
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.people import (
    added_person,
    copied_person,
    moved_person,
    person_of,
    removed_person,
)
from studio_planner.services.editing.weeks import painted_week

if TYPE_CHECKING:
    from studio_planner.craft.hands import Person
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_MOST_ROWS = 6
_WIDE = 794
"""From this width on the list stands beside its person, else above them."""


class HandsSection(Page):
    """People at the left, the chosen one beside them."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Lie in the window `desk`, of no studio yet."""
        super().__init__(desk, parent)
        self._view: DeskView | None = None
        self._path: object = None
        self.people = NounList(
            self.canvas,
            translate("hands", "Hands"),
            translate("hands", "Nobody is named yet. Add yourself, then paint your hours."),
            self,
        )
        self.panel = PersonPanel(desk, self)
        side = QWidget(self)
        left = QVBoxLayout(side)
        left.setContentsMargins(0, 0, 0, 0)
        left.addWidget(self.people)
        left.addStretch(1)
        self._beside = ListBeside(side, self.panel, _WIDE, self)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self._beside)
        self.people.chosen.connect(lambda _key: self._show_chosen())
        self.people.add_asked.connect(self._add)
        self.people.copy_asked.connect(self._copy)
        self.people.remove_asked.connect(self._remove)
        self.people.move_asked.connect(self._move)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        self.setEnabled(view is not None)
        people = () if view is None else view.studio.people
        path = None if self.desk.session is None else self.desk.session.path
        if path != self._path:
            self._path = path
            self.panel.forget()
        self.people.show_things([(one.key, one.name, _week_words(one)) for one in people])
        self.people.keep_low(_MOST_ROWS)
        self._show_chosen()

    @override
    def choose(self, key: str) -> None:
        self.people.choose(key)

    @property
    def _person(self) -> Person | None:
        if self._view is None:
            return None
        return person_of(self._view.studio, self.people.current_key)

    def _show_chosen(self) -> None:
        person, view = self._person, self._view
        self._beside.show_column(shown=person is not None)
        if person is None or view is None:
            self.panel.forget()
        else:
            self.panel.show_person(view, person)

    def _add(self) -> None:
        if self._view is not None:
            change, key = added_person(self._view.studio)
            if self.desk.changes.attempt(change):
                self.people.choose(key)
                self.panel.name.take_up()

    def _copy(self) -> None:
        if self._view is not None and self._person is not None:
            change, key = copied_person(self._view.studio, self._person)
            if self.desk.changes.attempt(change):
                self.people.choose(key)

    def _remove(self) -> None:
        if self._person is not None:
            self.desk.changes.attempt(removed_person(self._person))

    def _move(self, key: str, to: int) -> None:
        person = None if self._view is None else person_of(self._view.studio, key)
        if person is not None:
            self.desk.changes.attempt(moved_person(person, to))


def _week_words(person: Person) -> str:
    minutes = sum(block.end - block.start for block in painted_week(person.work))
    if not minutes:
        return translate("hands", "no weekly hours") if not person.work else ""
    hours, left = divmod(minutes, 60)
    said = f"{hours} h {left} min" if left else f"{hours} h"
    return translate("hands", "{hours} a week").format(hours=said)
