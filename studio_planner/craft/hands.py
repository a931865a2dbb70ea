"""Hands: who can work when, and who is awake when."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.day_rules import days_of, gives_a_day, is_day_rule, needs_first
from studio_planner.craft.errors import Rulebook
from studio_planner.craft.local_time import (
    Span,
    clipped,
    daily_span,
    days_between,
    merged,
    without,
)
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterator
    from datetime import date
    from zoneinfo import ZoneInfo


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
        rules = Rulebook(translate("nouns", "working hours"))
        rules.wall_clock(self.start, "start")
        rules.wall_clock(self.end, "end")
        rules.require(
            self.start != self.end,
            "end",
            translate("rules", "start and end are the same time."),
        )
        self._check_rule(rules)
        rules.close()

    def _check_rule(self, rules: Rulebook) -> None:
        readable = is_day_rule(self.rule)
        rules.require(
            readable,
            "rule",
            translate(
                "rules",
                "“{rule}” is not a rule for days; write for example FREQ=WEEKLY;BYDAY=MO,TH.",
            ).format(rule=self.rule),
        )
        if not readable:
            return
        begins = self.first is not None or not needs_first(self.rule)
        rules.require(
            begins,
            "first",
            translate("rules", "“{rule}” needs the date it begins on.").format(rule=self.rule),
        )
        rules.require(
            not begins or gives_a_day(self.rule, self.first),
            "rule",
            translate("rules", "“{rule}” never gives a day from its first date on.").format(
                rule=self.rule
            ),
        )

    def days(self, first: date, last: date) -> Iterator[date]:
        """Local dates of the rule from `first` to `last`, both inside."""
        return days_of(self.rule, self.first, first, last)


@dataclass(frozen=True, slots=True, kw_only=True)
class Absence:
    """A span in which somebody is away: no work, and not there to wake either."""

    start: datetime
    end: datetime
    why: str = ""

    def __post_init__(self) -> None:
        """Check that the span runs forward and carries a zone."""
        rules = Rulebook(translate("nouns", "absence"))
        rules.forward(self.start, self.end)
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
        rules = Rulebook(translate("nouns", "person {name}").format(name=self.name or self.key))
        rules.named(self.key, "key")
        rules.named(self.name)
        rules.wall_clock(self.wakes, "wakes")
        rules.wall_clock(self.sleeps, "sleeps")
        rules.require(
            self.wakes != self.sleeps,
            "sleeps",
            translate("rules", "waking and sleeping are the same time."),
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
        # Times of one zone compare by the wall clock; only UTC orders them in every hour.
        return [(a.start.astimezone(UTC), a.end.astimezone(UTC)) for a in self.absences]
