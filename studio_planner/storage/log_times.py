"""From the stamps of a whole log to instants: date order, direction, and the clock changes."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from functools import partial
from itertools import pairwise
from statistics import median
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import readings_of
from studio_planner.craft.tongue import translate
from studio_planner.storage.log_stamps import DateOrder, Stamp

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import timezone
    from zoneinfo import ZoneInfo

_MOST_MONTHS = 12
_JUMP = timedelta(days=20)


@dataclass(frozen=True, slots=True)
class OrderFound:
    """The date order of a log; `question` asks the maker when nothing decides it."""

    order: DateOrder
    question: str = ""


def date_order(stamps: Sequence[Stamp], said: DateOrder | None) -> OrderFound:
    """Decide whether open dates begin with the day or the month."""
    if said is not None:
        return OrderFound(said)
    open_ones = [stamp for stamp in stamps if stamp.order is None and stamp.year]
    days = sum(stamp.first > _MOST_MONTHS for stamp in open_ones)
    months = sum(stamp.second > _MOST_MONTHS for stamp in open_ones)
    if days != months:
        return OrderFound(DateOrder.DAY_FIRST if days > months else DateOrder.MONTH_FIRST)
    if all(stamp.first == stamp.second for stamp in open_ones):
        return OrderFound(DateOrder.DAY_FIRST)
    return _order_by_jumps(open_ones)


def _order_by_jumps(stamps: Sequence[Stamp]) -> OrderFound:
    # Read the wrong way, a log of some days jumps from month to month.
    jumps = {order: _jumps(stamps, order) for order in DateOrder}
    least = min(jumps, key=lambda order: jumps[order])
    if min(jumps.values()) < max(jumps.values()):
        return OrderFound(least)
    one = stamps[0]
    return OrderFound(
        least,
        translate(
            "log",
            "Is {first:02d}/{second:02d}/{year} the day first or the month first? Nothing in "
            "the log decides it.",
        ).format(first=one.first, second=one.second, year=one.year),
    )


def _jumps(stamps: Sequence[Stamp], order: DateOrder) -> int:
    walls = [wall for stamp in stamps if (wall := stamp.wall(order)) is not None]
    return sum(abs(after - before) > _JUMP for before, after in pairwise(walls))


def newest_first(walls: Sequence[datetime | None]) -> bool:
    """Whether a log runs backwards in time."""
    known = [wall for wall in walls if wall is not None]
    down = sum(after < before for before, after in pairwise(known))
    return down > sum(after > before for before, after in pairwise(known))


@dataclass(frozen=True, slots=True)
class Moment:
    """The instant of a row, or why it has none."""

    when: datetime | None
    why: str = ""


class WallClock:
    """Reads the rows of a log, oldest first, so that the doubled hour is read right.

    A local time that the autumn change shows twice is taken for the passing that fits the log's
    usual step from its neighbour. A log that begins in that hour is read back from its first
    row that can be meant in one way only.
    """

    def __init__(
        self, zone: ZoneInfo, offset: timezone | None, order: DateOrder, step: timedelta
    ) -> None:
        """Read naive rows in `offset` if the heading named one, else in `zone`."""
        self._zone = zone
        self._offset = offset
        self._order = order
        self._step = step

    def moments(self, stamps: Sequence[Stamp]) -> list[Moment]:
        """The instant of each row, or why it has none."""
        meant = [self._candidates(stamp) for stamp in stamps]
        sure = next((i for i, found in enumerate(meant) if len(found) == 1), 0)
        ahead = self._chosen(meant[sure:], self._step, None)
        back = self._chosen(meant[:sure][::-1], -self._step, ahead[0] if ahead else None)
        chosen = zip(stamps, back[::-1] + ahead, strict=True)
        return [Moment(when, "" if when else self._why_none(stamp)) for stamp, when in chosen]

    def _candidates(self, stamp: Stamp) -> tuple[datetime, ...]:
        counted, wall = stamp.instant(), stamp.wall(self._order)
        if counted is not None:
            return (counted,)
        if wall is None:
            return ()
        if stamp.offset is not None:
            return ((wall - stamp.offset).replace(tzinfo=UTC),)
        if self._offset is not None:
            return (wall.replace(tzinfo=self._offset).astimezone(UTC),)
        return readings_of(self._zone, wall)

    def _chosen(
        self,
        meant: Sequence[tuple[datetime, ...]],
        step: timedelta,
        before: datetime | None,
    ) -> list[datetime | None]:
        chosen: list[datetime | None] = []
        when: datetime | None
        for candidates in meant:
            if len(candidates) == 1:
                when = candidates[0]  # nearly always
            else:
                due = None if before is None else before + step
                when = min(candidates, key=partial(_distance, due=due), default=None)
            chosen.append(when)
            before = when or before
        return chosen

    def _why_none(self, stamp: Stamp) -> str:
        if stamp.wall(self._order) is None:
            return translate("log", "there is no such date")
        return translate(
            "log", "the clock in {key} skips this time at the spring change"
        ).format(key=self._zone.key)


def _distance(moment: datetime, due: datetime | None) -> tuple[timedelta, datetime]:
    return (abs(moment - due) if due else timedelta(), moment)


def usual_step(walls: Sequence[datetime | None]) -> timedelta:
    """The median step forward of a log; zero when there is none."""
    known = [wall for wall in walls if wall is not None]
    steps = [after - before for before, after in pairwise(known) if after > before]
    return (
        timedelta(seconds=median(step.total_seconds() for step in steps))
        if steps
        else timedelta()
    )
