"""Under the curve: what this air does to the products tonight, live while it is drawn."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import QTimer
from PySide6.QtWidgets import QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.room_pages.effect_words import effect_words
from studio_planner.desktop.studio_pages.lines import Line
from studio_planner.desktop.tongue import translate
from studio_planner.services.air_effects import pours_tonight, tonight
from studio_planner.services.caution import deferral

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.places import Place
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas

_GATHERED_MS = 120
"""Moves of the mouse that come within this time are answered once."""


class EffectsView(QWidget):
    """A heading, a line for each two-part product, and the caution."""

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Say nothing yet."""
        super().__init__(parent)
        self._canvas = canvas
        self._wanted: tuple[Studio, Place, datetime] | None = None
        self._gathering = QTimer(self)
        self._gathering.setSingleShot(True)
        self._gathering.setInterval(_GATHERED_MS)
        self._gathering.timeout.connect(self._say)
        self.title = Line(canvas, "", self, font="bold")
        self.lines = Line(canvas, "", self)
        self.caution = Line(canvas, deferral(), self, font="small", colour="quiet")
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 0, 0, 0)
        layout.setSpacing(4)
        for line in (self.title, self.lines, self.caution):
            layout.addWidget(line)

    def show_place(self, studio: Studio, place: Place, now: datetime) -> None:
        """Say it of a place, which need not be as it is kept; soon, and once for many calls."""
        self._wanted = (studio, place, now)
        if not self._gathering.isActive():
            self._gathering.start()

    def _say(self) -> None:
        if self._wanted is None:
            return
        studio, place, now = self._wanted
        wall = words.wall_of(studio)
        self.title.say(
            translate("room", "What this does to a pour {when} in {place}").format(
                when=words.moment(tonight(studio, now), wall), place=place.name
            )
        )
        pours = pours_tonight(studio, place, now)
        nothing = translate(
            "room", "Add a two-part product under Products to see its window here."
        )
        self.lines.say("\n".join(effect_words(pour, wall) for pour in pours) or nothing)
        self.caution.setVisible(bool(pours))
