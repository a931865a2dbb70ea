"""The days in which there are hands: when they begin and end, and how many there are."""

from __future__ import annotations

from collections import defaultdict
from datetime import UTC, datetime, time, timedelta
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import instant
from studio_planner.planning.spans import grid_down

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.placing.means import Means
    from studio_planner.planning.spans import Stretch

_DAY = 86_400

_NIGHT_ENDS = 4
"""The hour at which one day ends and the next begins: who pours at midnight is still up."""


class WorkingDays:
    """Days by number, counted from the one in which a plan begins."""

    def __init__(self, first: int, hours: Iterable[tuple[int, int]]) -> None:
        """Begin with the day that begins at `first` [s]; hours are spans [s] of anybody."""
        self._first = first
        self._hours: dict[int, Stretch] = {}
        self.hands: dict[int, int] = defaultdict(int)
        """Seconds of hands in each day that has any."""
        for start, end in hours:
            for day in range(self.of(start), self.of(end - 1) + 1):
                begins = first + day * _DAY
                since, until = max(start, begins), min(end, begins + _DAY)
                known = self._hours.get(day, (since, until))
                self._hours[day] = min(known[0], since), max(known[1], until)
                self.hands[day] += until - since

    def of(self, second: int) -> int:
        """The day of an instant."""
        return (second - self._first) // _DAY

    def quarter(self, second: int) -> int:
        """The quarter of a day of an instant, counted from the first."""
        return 4 * (second - self._first) // _DAY

    def numbers(self, until: int) -> list[int]:
        """The days with hands, up to the one of an instant."""
        return sorted(day for day in self._hours if day <= self.of(until))

    def starts(self, day: int) -> Stretch:
        """The first and the last start in a day with hands."""
        since, until = self._hours[day]
        return since, grid_down(until - 1)


def working_days(studio: Studio, means: Means) -> WorkingDays:
    """The days of all hands that means have, from now on."""
    zone = studio.time_zone
    now = datetime.fromtimestamp(means.now, UTC).astimezone(zone)
    first = instant(zone, (now - timedelta(hours=_NIGHT_ENDS)).date(), time(_NIGHT_ENDS))
    hours = (span for free in means.shop.hands.values() for span in free.from_(means.now))
    return WorkingDays(int(first.timestamp()), hours)
