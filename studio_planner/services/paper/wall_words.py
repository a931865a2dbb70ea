"""Times on paper as the clock on the studio's wall shows them, in the studio's own form."""

from __future__ import annotations

from datetime import timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.day_words import day_word, short_weekday_word, time_of_day
from studio_planner.craft.local_time import readings_of
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from datetime import date, datetime

    from studio_planner.craft.studio import Studio


def clock_said(studio: Studio, when: datetime) -> str:
    """The time of day; in the hour that comes twice in autumn with the zone's short name."""
    local = when.astimezone(studio.time_zone)
    words = time_of_day(local, studio.units.clock)
    twice = len(readings_of(studio.time_zone, local.replace(tzinfo=None))) > 1
    return f"{words} {local.tzname()}" if twice else words


def date_said(day: date) -> str:
    """A day of the calendar, such as Tue 8 Dec."""
    return translate("paper", "{weekday} {day}").format(
        weekday=short_weekday_word(day.weekday()), day=day_word(day)
    )


def long_date_said(day: date) -> str:
    """A day of the calendar with its year, such as Tue 8 Dec 2026."""
    return f"{date_said(day)} {day.year}"


def local_day(studio: Studio, when: datetime) -> date:
    """The day on the studio's wall calendar."""
    return when.astimezone(studio.time_zone).date()


def moment_said(studio: Studio, when: datetime, seen_from: date | None = None) -> str:
    """Day and time; only the time on the day that it is `seen_from`."""
    day = local_day(studio, when)
    clock = clock_said(studio, when)
    return clock if day == seen_from else f"{date_said(day)} {clock}"


def span_said(studio: Studio, start: datetime, end: datetime, seen_from: date) -> str:
    """From and to as clock times; a day is named where it is not the one `seen_from`."""
    return translate("paper", "{start} to {end}").format(
        start=moment_said(studio, start, seen_from),
        end=moment_said(studio, end, local_day(studio, start)),
    )


def minute_after(when: datetime) -> datetime:
    """A whole minute that is never before: what opens is not to be begun too early."""
    whole = when.replace(second=0, microsecond=0)
    return whole if whole == when else whole + timedelta(minutes=1)
