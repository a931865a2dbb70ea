"""Quiet hours: what rings in them, and until when the rest is put off."""

from __future__ import annotations

from datetime import datetime, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import Span, daily_span, without
from studio_planner.craft.reminders import Reminder, Reminding, Urgency

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import date
    from zoneinfo import ZoneInfo

    from studio_planner.craft.hands import Person

BREAKFAST = timedelta(hours=1)
"""What can be saved for so long after the quiet hours can wait for their end."""

_DAY = timedelta(days=1)


class QuietHours:
    """The quiet hours of a studio on its wall clock; hours in which somebody works are not."""

    def __init__(
        self, reminding: Reminding, zone: ZoneInfo, people: Iterable[Person] = ()
    ) -> None:
        """Take the hours from `reminding`; there are none when both are the same."""
        self._from, self._to = reminding.quiet_from, reminding.quiet_to
        self._zone = zone
        self._people = tuple(people)
        self._known: dict[date, tuple[Span, ...]] = {}

    def ends(self, at: datetime) -> datetime | None:
        """When the quiet hours end that `at` (aware) lies in; None when it lies in none."""
        span = self.around(at)
        return None if span is None else span[1]

    def around(self, at: datetime) -> Span | None:
        """The quiet hours that `at` (aware) lies in; None when it lies in none."""
        if self._from == self._to:
            return None
        day = at.astimezone(self._zone).date()
        if day not in self._known:
            self._known[day] = self._on(day)
        return next((span for span in self._known[day] if span[0] <= at < span[1]), None)

    def _on(self, day: date) -> tuple[Span, ...]:
        quiet = [daily_span(self._zone, one, self._from, self._to) for one in (day - _DAY, day)]
        work = [
            span
            for person in self._people
            for span in person.working(self._zone, quiet[0][0], quiet[1][1])
        ]
        return without(quiet, work)

    def put_off(self, reminder: Reminder) -> Reminder:
        """The reminder as it may ring: at its time, or at the end of the quiet hours."""
        end = self.ends(reminder.due)
        if end is None or _cannot_wait(reminder, reminder.due, end):
            return reminder
        return reminder.put_off(end)

    def may_ring(self, reminder: Reminder, now: datetime) -> bool:
        """Whether it may ring at `now`; what was missed before has to wait for the end, too."""
        end = self.ends(now)
        return end is None or _cannot_wait(reminder, now, end)


def _cannot_wait(reminder: Reminder, at: datetime, end: datetime) -> bool:
    """Whether it can be saved at an instant of the quiet hours, and not after breakfast."""
    until = reminder.saved_until
    if reminder.urgency is not Urgency.LOST_LATER or until is None:
        return False
    return at < until < end + BREAKFAST
