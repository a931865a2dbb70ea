"""Which file is watched for a place, how that goes, and the verb to end it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QHBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.reading_watch import watching_words
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk


class WatchRow(QWidget):
    """It is not there where nothing is watched."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Show no place yet."""
        super().__init__(parent)
        self._desk = desk
        self._shown: tuple[Studio, str] | None = None
        self._listening = False
        self.said = Line(desk.canvas, "", self)
        self.stop = verb(translate("room", "Stop watching"), self._stop, self)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(12)
        layout.addWidget(self.said, 1)
        layout.addWidget(self.stop, 0, Qt.AlignmentFlag.AlignTop)
        self.hide()

    def show_place(self, studio: Studio, place: Place) -> None:
        """Say what is watched for a place."""
        self._shown = (studio, place.key)
        if not self._listening:
            self._listening = True
            self._desk.reading_watch.changed.connect(self._say)
        self._say(place.key)

    def _say(self, key: str) -> None:
        if self._shown is None or self._shown[1] != key:
            return
        studio, place = self._shown
        watching = self._desk.reading_watch.watching(place)
        self.setVisible(watching is not None)
        if watching is None:
            return
        wall = words.wall_of(studio)
        when = "" if watching.looked is None else words.clock_time(watching.looked, wall)
        mark = "\N{BLACK RIGHT-POINTING TRIANGLE} " if watching.wrong else ""
        self.said.say(mark + watching_words(watching, when))

    def _stop(self) -> None:
        if self._shown is not None:
            self._desk.reading_watch.stop(self._shown[1])
