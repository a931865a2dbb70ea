"""Hands in simulated weeks: when somebody is free to begin something.

Work begins in somebody's working hours, or in the hour after them when things took longer, but
not once it is bedtime or an absence begins. Who is at a pour then still finishes it, and is up
to half an hour late for it; what takes longer is not begun. Common practice, without a source.
What was planned first goes first.
"""

from __future__ import annotations

import math
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable
    from datetime import datetime
    from zoneinfo import ZoneInfo

    from studio_planner.craft.hands import Person
    from studio_planner.planning.rehearsal.arrays import Flags, Floats

OVERTIME_SECONDS = 3600.0
"""How long after the hours work is still begun; common practice, without a source."""

LEAVING_LATE_SECONDS = 1800.0
"""How long after bedtime, or after an absence has begun, work that was begun may still end."""

_MOST_TRIES = 200
"""Spans and bookings that are tried for one start before it is given up."""


class Hours:
    """One person's hours, and what is booked of them in each week."""

    def __init__(self, person: Person, zone: ZoneInfo, span: tuple[datetime, datetime]) -> None:
        """Take the hours between two aware instants."""
        import numpy as np

        awake = person.awake(zone, *span)
        rows = [
            (
                work[0].timestamp(),
                min(work[1].timestamp() + OVERTIME_SECONDS, end.timestamp()),
                end.timestamp() + LEAVING_LATE_SECONDS,
            )
            for work in person.working(zone, *span)
            for start, end in awake
            if start <= work[0] < end
        ]
        # A last span that never comes keeps every search inside the arrays.
        rows.append((math.inf, math.inf, math.inf))
        self._begins, self._ends, self._latest = np.array(rows).T
        self._booked: list[tuple[Floats, Floats]] = []

    def earliest(self, after: Floats, length: Floats) -> Floats:
        """The first instant from `after` on at which work of `length` [s] can begin.

        Infinite where there is none, or where `after` is.
        """
        import numpy as np

        start = after
        for _ in range(_MOST_TRIES):
            start = self._within(start, length)
            free = self._past_bookings(start, length)
            if free is start:
                return start
            start = free
        return np.full_like(after, math.inf)

    def _past_bookings(self, start: Floats, length: Floats) -> Floats:
        """The same starts where nothing is booked, else later ones."""
        import numpy as np

        for begun, ended in self._booked:
            clash = (start < ended) & (start + length > begun)
            if clash.any():
                start = np.where(clash, ended, start)
        return start

    def book(self, start: Floats, end: Floats, really: Flags) -> None:
        """Take the hands in the weeks where it really happens."""
        import numpy as np

        begun = np.where(really, start, math.inf)
        self._booked.append((begun, np.where(really, end, -math.inf)))

    def forget(self, before: float) -> None:
        """Drop bookings that end before an instant from which on everything else begins."""
        self._booked = [pair for pair in self._booked if float(pair[1].max()) > before]

    def _within(self, after: Floats, length: Floats) -> Floats:
        """The first instants from `after` on at which somebody still begins it."""
        import numpy as np

        last = len(self._ends) - 1
        span = np.minimum(np.searchsorted(self._ends, after, side="right"), last)
        start: Floats = np.maximum(after, self._begins[span])
        too_late = start + length > self._latest[span]
        while too_late.any():
            span = span + too_late
            start = np.maximum(start, self._begins[span])
            too_late = start + length > self._latest[span]
        return start


def hours_of(
    people: Iterable[Person], zone: ZoneInfo, span: tuple[datetime, datetime]
) -> dict[str, Hours]:
    """The hours of everybody, by key."""
    return {person.key: Hours(person, zone, span) for person in people}
