"""One way out of a missed window: what it means, what it costs, its dates, and to do it."""

from __future__ import annotations

from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QHBoxLayout, QVBoxLayout, QWidget

from studio_planner.craft.tongue import capital
from studio_planner.desktop import words
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.timeline_work.voice import DeskVoice
from studio_planner.desktop.tongue import translate
from studio_planner.services.log_book.after_missing import way_word

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.log_book.after_missing import Choice
    from studio_planner.services.log_book.planned_choices import Dates


class WayRow(QWidget):
    """It can be done once its dates are known.

    Signals:
        done: the maker wants it.
    """

    done = Signal()

    def __init__(
        self, canvas: Canvas, studio: Studio, choice: Choice, parent: QWidget | None = None
    ) -> None:
        """Show a choice before it is planned."""
        super().__init__(parent)
        self._studio = studio
        self.choice = choice
        way = capital(way_word(choice.way))
        self.way = Line(canvas, way, self, font="bold")
        self.meaning = Line(canvas, choice.words.words(DeskVoice(studio)), self)
        self.cost = Line(canvas, "", self)
        self.dates = Line(canvas, "", self)
        self.do = verb(translate("missed", "Do it"), self.done.emit, self, about=way)
        text = QVBoxLayout()
        text.setSpacing(1)
        for line in (self.way, self.meaning, self.cost, self.dates):
            text.addWidget(line)
        layout = QHBoxLayout(self)
        layout.setContentsMargins(0, 4, 0, 4)
        layout.setSpacing(14)
        layout.addLayout(text, 1)
        layout.addWidget(self.do, 0, Qt.AlignmentFlag.AlignTop)
        self.cost.say(self._cost_words())
        self.dates.say("")
        self.do.hide()

    def _cost_words(self) -> str:
        choice, units = self.choice, self._studio.units
        if choice.trial is None:
            return ""
        minutes, grams = choice.extra_minutes, choice.extra_grams
        if not minutes and not grams:
            return translate("missed", "It costs nothing more.")
        text = (
            translate("missed", "It costs {time} of hands and {mass} of mix more.")
            if grams
            else translate("missed", "It costs {time} of hands more.")
        )
        hours = round(minutes) / 60.0
        return text.format(
            time=words.length_of_time(hours), mass=words.mass(grams, units) if grams else ""
        )

    def say(self, sentence: str) -> None:
        """Say how planning it goes, in place of its dates."""
        self.dates.say(sentence)

    def show_dates(self, dates: Dates) -> None:
        """Show what it means once it is planned; then it can be done."""
        self.dates.say(_dates_words(self._studio, dates))
        self.do.setVisible(not dates.reason)


def _dates_words(studio: Studio, dates: Dates) -> str:
    if dates.reason:
        return translate("missed", "It can't be planned so: {why}").format(why=dates.reason)
    wall = words.wall_of(studio)
    said = []
    if dates.next_pour is not None and dates.last_pour is not None:
        text = translate("missed", "Next pour {next}, last one done {last}.")
        said.append(
            text.format(
                next=words.moment(dates.next_pour, wall),
                last=words.moment(dates.last_pour, wall),
            )
        )
    if dates.leaves is not None:
        kept = (
            translate("missed", "The order leaves {when}: the promise is kept.")
            if dates.keeps_promise
            else translate("missed", "The order leaves {when}: the promise is not kept.")
        )
        said.append(kept.format(when=words.moment(dates.leaves, wall)))
    return " ".join(said)
