"""Fields for a time of day and for a date."""

from __future__ import annotations

from datetime import date, time
from typing import TYPE_CHECKING

from PySide6.QtCore import QDate, Qt, QTime
from typing_extensions import override

from studio_planner.craft.settings import ClockForm
from studio_planner.desktop.forms.field import TypedField
from studio_planner.desktop.forms.still_editors import StillDate, StillTime

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas


class TimeField(TypedField):
    """A time of day."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start at midnight."""
        super().__init__(canvas, label, parent)
        self._shown = time()
        self.editor = StillTime(self)
        self.editor.setDisplayFormat("HH:mm")
        self.editor.editingFinished.connect(self._finished)
        self.hold(self.editor)
        self._row.addStretch(1)

    def set_units(self, units: Units) -> None:
        """Write the time as the studio does."""
        twelve = units.clock is ClockForm.HOURS_12
        self.editor.setDisplayFormat("h:mm ap" if twelve else "HH:mm")

    @override
    def _typed(self) -> time:
        return self.value()

    @override
    def value(self) -> time:
        shown = self.editor.time()
        return time(shown.hour(), shown.minute())

    @override
    def show_value(self, value: time) -> None:
        self.say_right()
        self._shown = value.replace(second=0, microsecond=0)
        self.editor.setTime(QTime(value.hour, value.minute))


class DateField(TypedField):
    """A date, with a calendar to choose from."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start with the calendar's own first date."""
        super().__init__(canvas, label, parent)
        self._shown = date(2000, 1, 1)
        self.editor = StillDate(self)
        self.editor.editingFinished.connect(self._finished)
        self.hold(self.editor)
        self._row.addStretch(1)

    def set_units(self, units: Units) -> None:
        """Begin the calendar's weeks on the day that the studio's begin on."""
        self.editor.calendarWidget().setFirstDayOfWeek(Qt.DayOfWeek(units.week_starts + 1))

    @override
    def _typed(self) -> date:
        return self.value()

    @override
    def value(self) -> date:
        shown = self.editor.date()
        return date(shown.year(), shown.month(), shown.day())

    @override
    def show_value(self, value: date) -> None:
        self.say_right()
        self._shown = value
        self.editor.setDate(QDate(value.year, value.month, value.day))
