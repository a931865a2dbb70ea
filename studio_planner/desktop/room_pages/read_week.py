"""The pattern that the last two weeks of readings make, shown before it is taken."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt
from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.room_pages.air_curve import AirCurve
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.read_patterns import read_pattern, taken_pattern

if TYPE_CHECKING:
    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.page import PageDesk
    from studio_planner.services.read_patterns import ReadPattern

_ALL_HOURS = 24


class ReadWeek(QWidget):
    """A verb; then what would be expected from then on, and the verbs to take or leave it."""

    def __init__(self, desk: PageDesk, parent: QWidget | None = None) -> None:
        """Offer nothing yet."""
        super().__init__(parent)
        self._desk = desk
        self._studio: Studio | None = None
        self._place: Place | None = None
        self.made: ReadPattern | None = None
        self.make = verb(
            translate("room", "Make the expected air from the last two weeks"), self._make, self
        )
        self.said = Line(desk.canvas, "", self)
        self.curve = AirCurve(desk.canvas, self)
        self.curve.setAccessibleName(translate("room", "Expected air as it would be"))
        # It is only looked at; it is drawn upon once it was taken.
        self.curve.setEnabled(False)
        self.curve.setFocusPolicy(Qt.FocusPolicy.NoFocus)
        self.take = verb(translate("room", "Expect this from now on"), self._take, self)
        self.leave = verb(translate("room", "Leave it as it was"), self._leave, self)
        verbs = Wrapping()
        verbs.add(self.make, self.take, self.leave)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.addWidget(self.said)
        layout.addWidget(self.curve)
        layout.addLayout(verbs)
        self._leave()

    def show_place(self, studio: Studio, place: Place) -> None:
        """Offer it for a place; what was made of other readings is let go."""
        before = self._place
        self._studio, self._place = studio, place
        self.setVisible(bool(place.readings))
        if before is None or before.readings != place.readings or before.key != place.key:
            self._leave()

    def _make(self) -> None:
        if self._place is None or self._studio is None:
            return
        self.made = read_pattern(self._place.readings, self._studio.time_zone)
        if self.made is None:
            return
        self.said.say(self._words(self.made, self._studio))
        shown = replace(
            self._place, pattern=self.made.pattern, band_celsius=self.made.band_celsius
        )
        self.curve.show_place(shown, self._studio.units)
        self._show(made=True)

    def _words(self, made: ReadPattern, studio: Studio) -> str:
        wall = words.wall_of(studio)
        text = translate(
            "room",
            "The median of each hour of {count} readings, {first} to {last}. Nine of ten lie "
            "within {band} of it; that becomes how far it may be off.",
        ).format(
            count=f"{made.readings:,}",
            first=words.moment(made.first, wall),
            last=words.moment(made.last, wall),
            band=words.degree_step(made.band_celsius, studio.units, decimals=1),
        )
        if made.hours < _ALL_HOURS:
            lacking = translate(
                "room",
                "Only {hours} hours of the day were read; the line runs on between them.",
            ).format(hours=made.hours)
            text = f"{text} {lacking}"
        return text

    def _show(self, *, made: bool) -> None:
        self.make.setVisible(not made)
        for widget in (self.said, self.curve, self.take, self.leave):
            widget.setVisible(made)

    def _take(self) -> None:
        if self.made is None or self._place is None:
            return
        if self._desk.changes.attempt(taken_pattern(self._place, self.made)):
            self._leave()

    def _leave(self) -> None:
        self.made = None
        self._show(made=False)
