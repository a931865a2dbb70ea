"""Hands: who can work when, and who is awake when."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime, time, timedelta
from typing import TYPE_CHECKING

from dateutil.rrule import rrule, rrulestr

from studio_planner.craft.errors import Rulebook
from studio_planner.craft.local_time import (
    Span,
    clipped,
    daily_span,
    days_between,
    merged,
    without,
)

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date
    from zoneinfo import ZoneInfo

_BEFORE_EVERY_PLAN = datetime(2000, 1, 1)  # noqa: DTZ001 - a wall-clock date for the rule


def rrule_of(text: str, first: datetime) -> rrule:
    """Read one recurrence rule; ValueError when the text is something else."""
    parsed = rrulestr(text, dtstart=first, cache=False)
    if not isinstance(parsed, rrule):
        raise ValueError(text)  # noqa: TRY004 - the text is wrong, not a type
    return parsed


@dataclass(frozen=True, slots=True, kw_only=True)
class WorkHours:
    """Hours that come back, such as Tuesday and Thursday 18:00 to 22:00.

    `rule` is a recurrence rule (RFC 5545, RRULE without the name) for local dates; `start` and
    `end` are wall-clock times, `end` on the next day when it is not later. `first` is the date
    that rules with an interval count from.
    """

    rule: str
    start: time
    end: time
    first: date | None = None

    def __post_init__(self) -> None:
        """Check that the rule can be read and that the hours are not empty."""
        rules = Rulebook("working hours")
        rules.require(self.start != self.end, "end", "start and end are the same time.")
        try:
            self._parsed()
            readable = not any(part in self.rule.upper() for part in ("BYHOUR", "HOURLY"))
        except (ValueError, TypeError, KeyError, AttributeError):
            readable = False
        rules.require(
            readable and "\n" not in self.rule,
            "rule",
            f"{self.rule!r} is not a rule for days; write for example FREQ=WEEKLY;BYDAY=MO,TH.",
        )
        rules.close()

    def _parsed(self, near: date | None = None) -> rrule:
        parts = self.rule.upper()
        # Counting from the year 2000 is slow, and needed only where the rule counts.
        counts = "INTERVAL" in parts or "COUNT" in parts or "BYDAY" not in parts
        begins = self.first or (None if counts else near)
        first = datetime.combine(begins, time()) if begins else _BEFORE_EVERY_PLAN
        return rrule_of(f"RRULE:{self.rule}", first)

    def days(self, first: date, last: date) -> Iterator[date]:
        """Local dates of the rule from `first` to `last`, both inside."""
        start, end = (datetime.combine(day, time()) for day in (first, last))
        return (found.date() for found in self._parsed(first).between(start, end, inc=True))


@dataclass(frozen=True, slots=True, kw_only=True)
class Absence:
    """A span in which somebody is away: no work, and not there to wake either."""

    start: datetime
    end: datetime
    why: str = ""

    def __post_init__(self) -> None:
        """Check that the span runs forward and carries a zone."""
        rules = Rulebook("absence")
        aware = self.start.tzinfo is not None and self.end.tzinfo is not None
        rules.require(aware, "start", "an absence needs times with a zone.")
        rules.require(not aware or self.start < self.end, "end", "it ends before it starts.")
        rules.close()


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """One pair of hands: working hours, waking hours, absences."""

    key: str
    name: str
    work: tuple[WorkHours, ...]
    wakes: time = time(7, 0)
    sleeps: time = time(23, 0)
    absences: tuple[Absence, ...] = ()

    def __post_init__(self) -> None:
        """Check names and that waking hours are not empty."""
        rules = Rulebook(f"person {self.name or self.key}")
        rules.named(self.key, "key")
        rules.named(self.name)
        rules.require(
            self.wakes != self.sleeps, "sleeps", "waking and sleeping are the same time."
        )
        rules.close()

    def working(self, zone: ZoneInfo, start: datetime, end: datetime) -> tuple[Span, ...]:
        """UTC spans between `start` and `end` in which this person can work."""
        first = start.astimezone(zone).date() - timedelta(days=1)
        last = end.astimezone(zone).date()
        spans = [
            daily_span(zone, day, hours.start, hours.end)
            for hours in self.work
            for day in hours.days(first, last)
        ]
        return clipped(without(spans, self._away()), start, end)

    def awake(self, zone: ZoneInfo, start: datetime, end: datetime) -> tuple[Span, ...]:
        """UTC spans between `start` and `end` in which this person is there and awake."""
        days = days_between(zone, start - timedelta(days=1), end)
        spans = [daily_span(zone, day, self.wakes, self.sleeps) for day in days]
        spans += self.working(zone, start, end)
        return clipped(without(merged(spans), self._away()), start, end)

    def _away(self) -> list[Span]:
        return [(absence.start, absence.end) for absence in self.absences]
