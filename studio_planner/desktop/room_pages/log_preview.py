"""A log that was dropped: what was understood, what is open, and the verb to take it."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from PySide6.QtCore import Qt, Signal
from PySide6.QtWidgets import QGridLayout, QVBoxLayout, QWidget

from studio_planner.desktop import words
from studio_planner.desktop.forms.fields import ChoiceField, FlagField
from studio_planner.desktop.room_pages.log_words import found_words, gap_words, skipped_words
from studio_planner.desktop.studio_pages.lines import Line, verb
from studio_planner.desktop.tongue import translate
from studio_planner.desktop.wrapping import Wrapping
from studio_planner.services.room_logs import (
    DateOrder,
    LogAnswers,
    LogAsked,
    LogUnit,
    Overlap,
)

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio
    from studio_planner.desktop.canvas import Canvas
    from studio_planner.services.room_logs import LogLook

_COLUMNS = 3


class LogPreview(QWidget):
    """Answers are asked beside what was understood; each one looks at the log again.

    Signals:
        asked_again: the answers are others.
        taken: the maker wants the log as it is shown.
        watched: the maker wants it, and all that comes into its file from now on.
        left: the maker does not want it.
    """

    asked_again = Signal(object)
    taken = Signal(object)
    watched = Signal(object)
    left = Signal()

    def __init__(self, canvas: Canvas, parent: QWidget | None = None) -> None:
        """Show no log yet."""
        super().__init__(parent)
        self._canvas = canvas
        self.look: LogLook | None = None
        self.asked = LogAsked()
        self.title = Line(canvas, "", self, font="bold")
        self.questions = Line(canvas, "", self, colour="now")
        self.said = Line(canvas, "", self)
        self.lost = Line(canvas, "", self, font="small", colour="quiet")
        found = (None, translate("room", "as found"))
        self.warmth = ChoiceField(canvas, translate("room", "Temperature column"), [found])
        self.damp = ChoiceField(canvas, translate("room", "Humidity column"), [found])
        self.unit = ChoiceField(
            canvas,
            translate("room", "Temperatures in"),
            [found, (LogUnit.CELSIUS, "°C"), (LogUnit.FAHRENHEIT, "°F")],
        )
        self.order = ChoiceField(
            canvas,
            translate("room", "Dates such as 03/04/2026"),
            [
                found,
                (DateOrder.DAY_FIRST, translate("room", "day first")),
                (DateOrder.MONTH_FIRST, translate("room", "month first")),
            ],
        )
        self.zone = ChoiceField(canvas, translate("room", "Times without a zone are"))
        self.overlap = ChoiceField(
            canvas,
            translate("room", "Where there are readings already"),
            [
                (Overlap.EXISTING_WINS, translate("room", "they stay")),
                (Overlap.NEW_WINS, translate("room", "the new ones replace them")),
            ],
        )
        self.thin = FlagField(canvas, translate("room", "Keep one reading in ten minutes"))
        self.take = verb(translate("room", "Take these readings"), self._take, self)
        said = translate("room", "Take them, and watch this file")
        self.watch = verb(said, self._watch, self)
        self.leave = verb(translate("room", "Leave them"), self.left.emit, self)
        self._lay_out()
        for field in self._fields:
            field.edited.connect(self._ask)
        self.hide()

    @property
    def _fields(self) -> tuple[ChoiceField | FlagField, ...]:
        return (
            self.warmth,
            self.unit,
            self.damp,
            self.zone,
            self.order,
            self.overlap,
            self.thin,
        )

    def _lay_out(self) -> None:
        grid = QGridLayout()
        grid.setHorizontalSpacing(20)
        for number, field in enumerate(self._fields):
            grid.addWidget(
                field, number // _COLUMNS, number % _COLUMNS, Qt.AlignmentFlag.AlignTop
            )
        verbs = Wrapping()
        verbs.add(self.take, self.watch, self.leave)
        layout = QVBoxLayout(self)
        layout.setContentsMargins(0, 6, 0, 6)
        layout.addWidget(self.title)
        layout.addWidget(self.questions)
        layout.addLayout(grid)
        layout.addWidget(self.said)
        layout.addWidget(self.lost)
        layout.addLayout(verbs)

    def begin(self) -> None:
        """Forget the answers that were given for another log."""
        self.asked = LogAsked()
        self.look = None

    def show_look(self, look: LogLook, studio: Studio) -> None:
        """Show what a log was found to be."""
        self.look = look
        wall, units = words.wall_of(studio), studio.units
        self.title.say(look.name)
        mark = "\N{BLACK RIGHT-POINTING TRIANGLE} "
        self.questions.say("\n".join(mark + question for question in look.questions))
        self.said.say("\n".join(found_words(look, wall, units)))
        self.lost.say("\n".join([*gap_words(look, wall), *skipped_words(look)]))
        self._offer(look, studio)
        self.take.setEnabled(look.ready)
        self.watch.setEnabled(not look.questions)
        several = translate("room", "Take {count} readings").format(count=f"{look.added:,}")
        self.take.setText(several if look.ready else translate("room", "Take these readings"))
        self.show()

    def _offer(self, look: LogLook, studio: Studio) -> None:
        answers = self.asked.answers
        found = (None, translate("room", "as found"))
        columns = [(name, name) for name in look.columns]
        for field, value in (
            (self.warmth, answers.temperature_column),
            (self.damp, answers.humidity_column),
        ):
            field.offer([found, *columns])
            field.show_value(value)
        self.unit.show_value(answers.unit)
        self.order.show_value(answers.date_order)
        local = translate("room", "local times of {zone}").format(zone=studio.zone)
        self.zone.offer([(False, local), (True, "UTC")])
        self.zone.show_value(self.asked.in_utc)
        self.zone.setVisible(bool(look.found.local_rows))
        self.overlap.show_value(answers.overlap)
        self.overlap.setVisible(bool(look.overlapping))
        self.thin.show_value(look.thinned)

    def _ask(self) -> None:
        answers = LogAnswers(
            date_order=self.order.value(),
            unit=self.unit.value(),
            temperature_column=self.warmth.value(),
            humidity_column=self.damp.value(),
            overlap=self.overlap.value() or Overlap.EXISTING_WINS,
        )
        thin = self.thin.value()
        decided = self.look is None or thin != self.look.thinned
        self.asked = replace(
            self.asked,
            answers=answers,
            in_utc=bool(self.zone.value()),
            thin=thin if decided else self.asked.thin,
        )
        self.asked_again.emit(self.asked)

    def _take(self) -> None:
        if self.look is not None and self.look.ready:
            self.taken.emit(self.look)

    def _watch(self) -> None:
        if self.look is not None and not self.look.questions:
            self.watched.emit(self.look)
