"""Days, months and times of day in words, where no system's calendar is known."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.saying import saying
from studio_planner.craft.settings import ClockForm
from studio_planner.craft.tongue import marked, translate

if TYPE_CHECKING:
    from datetime import date, datetime, time

    from studio_planner.craft.saying import Saying

_NOON = 12

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


def weekday_said(day: int) -> Saying:
    """A day of the week, 0 for Monday to 6 for Sunday, such as Tuesday."""
    return saying("days", _DAYS[day])


def short_weekday_said(day: int) -> Saying:
    """A day of the week, 0 for Monday to 6 for Sunday, such as Tue."""
    return saying("days", _SHORT_DAYS[day])


def month_said(month: int) -> Saying:
    """The short name of a month, 1 to 12, such as Dec."""
    return saying("months", _MONTHS[month - 1])


def weekday_word(day: int) -> str:
    """A day of the week, 0 for Monday to 6 for Sunday, in the language that is spoken."""
    return str(weekday_said(day))


def short_weekday_word(day: int) -> str:
    """The same shortly."""
    return str(short_weekday_said(day))


def month_word(month: int) -> str:
    """The short name of a month, 1 to 12, in the language that is spoken."""
    return str(month_said(month))


def day_word(day: date) -> str:
    """A day of the calendar, such as 8 Dec."""
    return translate("days", "{day} {month}").format(day=day.day, month=month_word(day.month))


def time_of_day(at: time | datetime, form: ClockForm) -> str:
    """A time of day as it is, without a zone: 07:05, or 7:05 am.

    Examples
    --------
    >>> from datetime import time
    >>> time_of_day(time(0, 5), ClockForm.HOURS_12), time_of_day(time(0, 5), ClockForm.HOURS_24)
    ('12:05 am', '00:05')
    """
    if form is ClockForm.HOURS_12:
        half = "am" if at.hour < _NOON else "pm"
        return f"{at.hour % _NOON or _NOON}:{at.minute:02} {half}"
    return f"{at.hour:02}:{at.minute:02}"
