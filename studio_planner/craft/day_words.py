"""Days and months by name, for sentences that are made where no system's calendar is known."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.tongue import marked, translate

if TYPE_CHECKING:
    from datetime import date

_DAYS = (
    marked("days", "Monday"),
    marked("days", "Tuesday"),
    marked("days", "Wednesday"),
    marked("days", "Thursday"),
    marked("days", "Friday"),
    marked("days", "Saturday"),
    marked("days", "Sunday"),
)
_SHORT_DAYS = (
    marked("days", "Mon"),
    marked("days", "Tue"),
    marked("days", "Wed"),
    marked("days", "Thu"),
    marked("days", "Fri"),
    marked("days", "Sat"),
    marked("days", "Sun"),
)
_MONTHS = (
    marked("months", "Jan"),
    marked("months", "Feb"),
    marked("months", "Mar"),
    marked("months", "Apr"),
    marked("months", "May"),
    marked("months", "Jun"),
    marked("months", "Jul"),
    marked("months", "Aug"),
    marked("months", "Sep"),
    marked("months", "Oct"),
    marked("months", "Nov"),
    marked("months", "Dec"),
)


def weekday_word(day: int) -> str:
    """A day of the week, 0 for Monday to 6 for Sunday, such as Tuesday."""
    return translate("days", _DAYS[day])


def short_weekday_word(day: int) -> str:
    """A day of the week, 0 for Monday to 6 for Sunday, such as Tue."""
    return translate("days", _SHORT_DAYS[day])


def month_word(month: int) -> str:
    """The short name of a month, 1 to 12, such as Dec."""
    return translate("months", _MONTHS[month - 1])


def day_word(day: date) -> str:
    """A day of the calendar, such as 8 Dec."""
    return translate("days", "{day} {month}").format(day=day.day, month=month_word(day.month))
