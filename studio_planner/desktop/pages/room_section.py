"""Room and shelf: places, the air that is expected there, what was read, and their spots."""

from __future__ import annotations

from pathlib import Path
from typing import TYPE_CHECKING

from PySide6.QtCore import QSignalBlocker
from PySide6.QtWidgets import QLineEdit, QVBoxLayout, QWidget
from typing_extensions import override

from studio_planner.craft.places import PlaceKind
from studio_planner.desktop import words
from studio_planner.desktop.forms.noun_list import NounList
from studio_planner.desktop.list_beside import ListBeside
from studio_planner.desktop.page import Page
from studio_planner.desktop.page_keys import AIR_FORM
from studio_planner.desktop.room_pages.air_panel import AirPanel
from studio_planner.desktop.room_pages.place_form import PlaceForm, kind_word
from studio_planner.desktop.room_pages.readings_panel import ReadingsPanel
from studio_planner.desktop.room_pages.shelf_panel import ShelfPanel
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.editing.places import (
    added_place,
    copied_place,
    moved_place,
    place_of,
    removed_place,
    why_kept,
)

if TYPE_CHECKING:
    from PySide6.QtGui import QDragEnterEvent, QDropEvent

    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.desk import DeskView

_MOST_ROWS = 6
_WIDE = 834
"""From this width on the list stands beside its place, else above it."""

_USUAL_CELSIUS = 20.0


class RoomSection(Page):
    """Places at the left; the chosen one beside them, in the order in which it is entered."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no studio yet."""
        super().__init__(desk, parent)
        canvas = self.canvas
        self._view: DeskView | None = None
        self.setAcceptDrops(True)
        self.places = NounList(
            canvas,
            translate("room", "Rooms and boxes"),
            translate("room", "No room yet. Add it, then say about how warm it is."),
            self,
        )
        self.rests = Line(canvas, "", self, font="small", colour="quiet")
        self.kept = Line(canvas, "", self, font="small", colour="quiet")
        self.form = PlaceForm(desk, self)
        self.air = AirPanel(desk, self)
        self.readings = ReadingsPanel(desk, self)
        self.shelf = ShelfPanel(desk, self)
        self._lay_out()
        self._connect()

    def _lay_out(self) -> None:
        side = QWidget(self)
        left = QVBoxLayout(side)
        left.setContentsMargins(0, 0, 0, 0)
        for widget in (self.places, self.rests, self.kept):
            left.addWidget(widget)
        left.addStretch(1)
        self._column = QWidget(self)
        right = QVBoxLayout(self._column)
        right.setContentsMargins(0, 0, 16, 0)
        right.setSpacing(22)
        figures = self.form.figures
        for panel in (self.form, self.shelf, self.air, self.readings, figures):
            right.addWidget(panel)
        right.addStretch(1)
        self._beside = ListBeside(side, self._column, _WIDE, self)
        whole = QVBoxLayout(self)
        whole.setContentsMargins(0, 0, 0, 0)
        whole.addWidget(self._beside)

    def _connect(self) -> None:
        for editor in self.findChildren(QLineEdit):
            # A file that is dropped upon a field is meant for the page, not typed into it.
            editor.setAcceptDrops(False)
        self.places.chosen.connect(lambda _key: self._show_place())
        self.places.add_asked.connect(self._add)
        self.places.copy_asked.connect(self._copy)
        self.places.remove_asked.connect(self._remove)
        self.places.move_asked.connect(self._move)

    @override
    def show_view(self, view: DeskView | None) -> None:
        self._view = view
        studio = None if view is None else view.studio
        self.setEnabled(studio is not None)
        if studio is None:
            self.places.show_things(())
            self._show_place()
            return
        with QSignalBlocker(self.places):  # the chosen place is shown once, below
            self.places.show_things(
                [(place.key, place.name, _line(place, studio)) for place in studio.places]
            )
        self.places.keep_low(_MOST_ROWS)
        rests = studio.resting_place
        self.rests.say(
            ""
            if rests is None or len(studio.places) == 1
            else translate(
                "room",
                "Pieces that need no spot rest in {room}, the first room of the list. "
                "Alt with up or down moves a place.",
            ).format(room=rests.name)
        )
        self._show_place()

    @override
    def choose(self, key: str) -> None:
        """Choose a place, a spot and its place, or another temperature for a time."""
        if key == AIR_FORM:
            self.air.spells.open()
        studio = None if self._view is None else self._view.studio
        if studio is None:
            return
        for place in studio.places:
            if place.key == key or any(spot.key == key for spot in place.spots):
                self.places.choose(place.key)
                self.shelf.choose(key)

    @override
    def take_file(self, path: Path) -> None:
        """Look at a logger's file for the place that is chosen."""
        if self._place is not None:
            self.readings.open_log(path)

    @property
    def _place(self) -> Place | None:
        if self._view is None:
            return None
        return place_of(self._view.studio, self.places.current_key)

    def _show_place(self) -> None:
        view, place = self._view, self._place
        self._beside.show_column(shown=place is not None)
        self.kept.say("")
        if view is None or place is None:
            return
        self.form.show_place(view.studio, place)
        for panel in (self.air, self.readings, self.shelf):
            panel.show_place(view, place)
        why = why_kept(view.studio, place.spots)
        stays = translate("room", "{place} cannot be removed: {why}")
        self.kept.say(stays.format(place=place.name, why=why) if why else "")
        self.places.remove_button.setEnabled(not why)

    # Verbs

    def _add(self) -> None:
        if self._view is None:
            return
        change, key = added_place(self._view.studio, PlaceKind.ROOM, _USUAL_CELSIUS)
        if self.desk.changes.attempt(change):
            self.places.choose(key)
            self.form.form.fields["name"].take_up()

    def _copy(self) -> None:
        view, place = self._view, self._place
        if view is not None and place is not None:
            change, key = copied_place(view.studio, place)
            if self.desk.changes.attempt(change):
                self.places.choose(key)

    def _remove(self) -> None:
        place = self._place
        if place is not None:
            self.desk.changes.attempt(removed_place(place))

    def _move(self, key: str, to: int) -> None:
        place = self._place
        if place is not None and place.key == key:
            self.desk.changes.attempt(moved_place(place, to))

    # A logger's file, dropped anywhere on the page

    @override
    def dragEnterEvent(self, event: QDragEnterEvent) -> None:
        if event.mimeData().hasUrls():
            event.acceptProposedAction()

    @override
    def dropEvent(self, event: QDropEvent) -> None:
        paths = [url.toLocalFile() for url in event.mimeData().urls() if url.isLocalFile()]
        if self._place is None:
            self.desk.notice.say(
                translate("room", "Add a room first; then drop its readings again."), wrong=True
            )
        elif len(paths) != 1:
            self.desk.notice.say(
                translate("room", "Drop one file at a time: a logger's CSV."), wrong=True
            )
        else:
            event.acceptProposedAction()
            self.readings.open_log(Path(paths[0]))


def _line(place: Place, studio: Studio) -> str:
    kind = kind_word(place.kind)
    low = min(point.celsius for point in place.pattern)
    high = max(point.celsius for point in place.pattern)
    if low == high:
        return f"{kind}, {words.degrees(low, studio.units)}"
    return translate("room", "{kind}, {low} to {high}").format(
        kind=kind,
        low=words.degrees(low, studio.units),
        high=words.degrees(high, studio.units),
    )
