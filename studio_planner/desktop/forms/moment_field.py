"""A field for a day and a time on the studio's wall clock."""

from __future__ import annotations

from datetime import UTC, date, datetime, time
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from PySide6.QtCore import QDate, Qt, QTime
from typing_extensions import override

from studio_planner.craft.local_time import instant
from studio_planner.craft.settings import ClockForm
from studio_planner.desktop.forms.field import Field
from studio_planner.desktop.forms.still_editors import StillDate, StillTime
from studio_planner.desktop.tongue import translate

if TYPE_CHECKING:
    from PySide6.QtWidgets import QWidget

    from studio_planner.craft.settings import Units
    from studio_planner.desktop.canvas import Canvas


class MomentField(Field):
    """An instant (aware, UTC), entered as the studio's wall clock shows it."""

    def __init__(self, canvas: Canvas, label: str, parent: QWidget | None = None) -> None:
        """Start at the beginning of 2000, in UTC until the zone is told."""
        super().__init__(canvas, label, parent)
        self._zone = ZoneInfo("UTC")
        self._shown = datetime(2000, 1, 1, tzinfo=UTC)
        self.day = StillDate(self)
        self.at = StillTime(self)
        self.at.setDisplayFormat("HH:mm")
        self.hold(self.day)
        self.at.setAccessibleName(translate("forms", "{label}, time").format(label=label))
        self._row.addWidget(self.at)
        self._row.addStretch(1)
        for editor in (self.day, self.at):
            editor.editingFinished.connect(self._finished)

    def set_zone(self, zone: ZoneInfo) -> None:
        """Read the wall clock of that zone from now on."""
        if zone != self._zone:
            self._zone = zone
            self.show_value(self._shown)

    def set_units(self, units: Units) -> None:
        """Write times as the studio does, and begin weeks when its weeks do."""
        twelve = units.clock is ClockForm.HOURS_12
        self.at.setDisplayFormat("h:mm ap" if twelve else "HH:mm")
        self.day.calendarWidget().setFirstDayOfWeek(Qt.DayOfWeek(units.week_starts + 1))

    def _finished(self) -> None:
        if self.value() != self._shown:
            self._shown = self.value()
            self.edited.emit()

    @property
    @override
    def in_hand(self) -> bool:
        focused = self.day.hasFocus() or self.at.hasFocus()
        return focused and self.value() != self._shown

    @override
    def value(self) -> datetime:
        day, at = self.day.date(), self.at.time()
        wall = date(day.year(), day.month(), day.day()), time(at.hour(), at.minute())
        local = self._shown.astimezone(self._zone)
        if wall == (local.date(), local.time().replace(second=0, microsecond=0, fold=0)):
            # What was not touched stays: an hour of the autumn change comes twice.
            return self._shown
        return instant(self._zone, *wall)

    @override
    def show_value(self, value: datetime) -> None:
        self.say_right()
        self._shown = value.astimezone(UTC)
        local = value.astimezone(self._zone)
        self.day.setDate(QDate(local.year, local.month, local.day))
        self.at.setTime(QTime(local.hour, local.minute))
