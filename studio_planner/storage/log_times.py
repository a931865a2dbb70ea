"""From the stamps of a whole log to instants: date order, direction, and the clock changes."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import UTC, datetime, timedelta
from itertools import pairwise
from statistics import median
from typing import TYPE_CHECKING

from studio_planner.craft.local_time import readings_of
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
        f"Is {one.first:02d}/{one.second:02d}/{one.year} the day first or the month first? "
        "Nothing in the log decides it.",
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
    """Reads rows one after the other, oldest first, so that the doubled hour is read right.

    A local time that the autumn change shows twice is taken for the passing that fits the log's
    usual step after the row before.
    """

    def __init__(
        self, zone: ZoneInfo, offset: timezone | None, order: DateOrder, step: timedelta
    ) -> None:
        """Read naive rows in `offset` if the heading named one, else in `zone`."""
        self._zone = zone
        self._offset = offset
        self._order = order
        self._step = step
        self._before: datetime | None = None

    def moment(self, stamp: Stamp) -> Moment:
        """The instant of the next row."""
        wall = stamp.wall(self._order)
        counted = stamp.instant()
        if counted is None and wall is None:
            return Moment(None, "there is no such date")
        found = (counted,) if counted or wall is None else self._candidates(stamp, wall)
        if not found:
            zone = self._zone.key
            return Moment(None, f"the clock in {zone} skips this time at the spring change")
        self._before = min((one for one in found if one), key=self._distance)
        return Moment(self._before)

    def _candidates(self, stamp: Stamp, wall: datetime) -> tuple[datetime, ...]:
        if stamp.offset is not None:
            return ((wall - stamp.offset).replace(tzinfo=UTC),)
        if self._offset is not None:
            return (wall.replace(tzinfo=self._offset).astimezone(UTC),)
        return readings_of(self._zone, wall)

    def _distance(self, moment: datetime) -> tuple[timedelta, datetime]:
        if self._before is None:
            return (timedelta(), moment)
        return (abs(moment - self._before - self._step), moment)


def usual_step(walls: Sequence[datetime | None]) -> timedelta:
    """The median step forward of a log; zero when there is none."""
    known = [wall for wall in walls if wall is not None]
    steps = [after - before for before, after in pairwise(known) if after > before]
    return (
        timedelta(seconds=median(step.total_seconds() for step in steps))
        if steps
        else timedelta()
    )
