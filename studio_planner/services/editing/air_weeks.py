"""The expected air of a place over a week: its points moved, added, set back, made alike.

A pattern is a tuple of points in the order of day and time; points of *every day* count on all
seven, beside those of one weekday. All functions give a new pattern and leave the old one.
"""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from dataclasses import replace
from datetime import time
from typing import TYPE_CHECKING

from studio_planner.craft.errors import BrokenRule, InvalidEntry
from studio_planner.craft.places import PatternPoint
from studio_planner.craft.tongue import translate

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

Pattern = tuple[PatternPoint, ...]

DAY_MINUTES = 1440
WEEK_DAYS = 7
GRID_MINUTES = 5
"""Points that are dragged come to lie on whole five minutes, like pours."""

_WEEK = WEEK_DAYS * DAY_MINUTES
_LAST = DAY_MINUTES - 1


def minute_of(at: time) -> int:
    """The minute of the day of a time."""
    return at.hour * 60 + at.minute


def time_at(minute: int) -> time:
    """The time of a minute of the day; beyond its ends the first or the last minute."""
    kept = min(max(minute, 0), _LAST)
    return time(kept // 60, kept % 60)


def in_order(points: Iterable[PatternPoint]) -> Pattern:
    """Points by day (every day first) and time; a step keeps its two points as they were."""
    return tuple(sorted(points, key=lambda p: (-1 if p.day is None else p.day, p.at)))


def differs(pattern: Pattern) -> bool:
    """Tell whether a weekday has points of its own."""
    return any(point.day is not None for point in pattern)


def indexes_on(pattern: Pattern, weekday: int) -> list[int]:
    """Which points count on a weekday, in the order of time."""
    found = [i for i, point in enumerate(pattern) if point.day in {None, weekday}]
    return sorted(found, key=lambda i: pattern[i].at)


class WeekLine:
    """A pattern as a line over the minutes of a week, Monday 0:00 first, without an end."""

    def __init__(self, pattern: Pattern) -> None:
        """Lay the points of all seven days out."""
        self.corners = [
            (day * DAY_MINUTES + minute_of(pattern[i].at), pattern[i])
            for day in range(WEEK_DAYS)
            for i in indexes_on(pattern, day)
        ]
        self._minutes = [minute for minute, _ in self.corners]

    def at(self, minute: float, *, after: bool = True) -> tuple[float, float | None]:
        """Temperature [°C] and humidity [%] at a minute of the week.

        On a step the value `after` it, or else the one before it.
        """
        within = minute % _WEEK
        find = bisect_right if after else bisect_left
        later = find(self._minutes, within)
        (begin, one), (end, other) = self._corner(later - 1), self._corner(later)
        share = 0.0 if end == begin else (within - begin) / (end - begin)
        humidity = None
        if one.humidity_pct is not None and other.humidity_pct is not None:
            humidity = one.humidity_pct + share * (other.humidity_pct - one.humidity_pct)
        return one.celsius + share * (other.celsius - one.celsius), humidity

    def _corner(self, index: int) -> tuple[float, PatternPoint]:
        turn, place = divmod(index, len(self.corners))
        minute, point = self.corners[place]
        return minute + turn * _WEEK, point


def room_to_move(pattern: Pattern, index: int) -> tuple[int, int]:
    """The first and the last minute of its day that a point can be moved to.

    It stays between its neighbours, and no three points come to lie on one time.
    """
    mine = pattern[index]
    days = range(WEEK_DAYS) if mine.day is None else (mine.day,)
    low, high = 0, _LAST - _LAST % GRID_MINUTES
    for day in days:
        on_day = indexes_on(pattern, day)
        place = on_day.index(index)
        minutes = [minute_of(pattern[i].at) for i in on_day]
        low = max(low, _bound(minutes[:place][::-1], 1, low))
        high = min(high, _bound(minutes[place + 1 :], -1, high))
    own = minute_of(mine.at)
    return min(low, own), max(high, own)


def _bound(towards: Sequence[int], inwards: int, otherwise: int) -> int:
    """How far a point can go towards others, the nearest first."""
    if not towards:
        return otherwise
    taken = len(towards) > 1 and towards[0] == towards[1]
    return towards[0] + inwards * GRID_MINUTES * taken


def moved(
    pattern: Pattern,
    index: int,
    *,
    minute: int | None = None,
    celsius: float | None = None,
    humidity: float | None = None,
) -> Pattern:
    """Move a point in time (held between its neighbours), temperature or humidity."""
    point = pattern[index]
    if minute is not None:
        low, high = room_to_move(pattern, index)
        point = replace(point, at=time_at(min(max(minute, low), high)))
    if celsius is not None:
        point = replace(point, celsius=min(max(celsius, -30.0), 80.0))
    if humidity is not None:
        point = replace(point, humidity_pct=min(max(humidity, 1.0), 100.0))
    return (*pattern[:index], point, *pattern[index + 1 :])


def with_point(pattern: Pattern, day: int | None, minute: int) -> tuple[Pattern, int]:
    """Add a point upon the line, so that nothing changes yet; the pattern, and its index."""
    celsius, humidity = WeekLine(pattern).at((day or 0) * DAY_MINUTES + minute)
    point = PatternPoint(
        at=time_at(minute), celsius=round(celsius, 2), humidity_pct=humidity, day=day
    )
    new = in_order((*pattern, point))
    return new, max(i for i, one in enumerate(new) if one is point)


def without_point(pattern: Pattern, index: int) -> Pattern:
    """Take a point out; InvalidEntry for the last one, since a place needs a temperature."""
    if len(pattern) == 1:
        rule = BrokenRule(
            "pattern",
            translate("places", "a place needs one expected temperature; change this one."),
        )
        raise InvalidEntry(translate("nouns", "expected air"), [rule])
    return (*pattern[:index], *pattern[index + 1 :])


def with_step(pattern: Pattern, day: int | None, minute: int) -> tuple[Pattern, int]:
    """Put two points at one time, to be drawn apart; the pattern, and the later one's index."""
    once, first = with_point(pattern, day, minute)
    point = replace(once[first])
    new = (*once[: first + 1], point, *once[first + 1 :])
    return new, first + 1


def set_back(pattern: Pattern, start: time, end: time, celsius: float) -> Pattern:
    """Let every night be `celsius` from `start` to `end`, with a step at either time.

    What the pattern says outside these times stays. InvalidEntry when the two are the same.
    """
    begins, ends = minute_of(start), minute_of(end)
    if begins == ends:
        rule = BrokenRule(
            "end",
            translate("places", "it has to come on again at another time than it goes off."),
        )
        raise InvalidEntry(translate("nouns", "heater off"), [rule])
    if any(point.day is None for point in pattern) and differs(pattern):
        pattern = parted(pattern)
    line = WeekLine(pattern)
    kept = [p for p in pattern if not _within(minute_of(p.at), begins, ends)]
    for day in range(WEEK_DAYS) if differs(pattern) else (None,):
        kept += _night(line, day, (begins, ends), celsius)
    return in_order(kept)


def _night(
    line: WeekLine, day: int | None, between: tuple[int, int], celsius: float
) -> list[PatternPoint]:
    first, last = ((day or 0) * DAY_MINUTES + minute for minute in between)
    before, damp_before = line.at(first, after=False)
    after, damp_after = line.at(last)
    rows = (
        (between[0], before, damp_before),
        (between[0], celsius, damp_before),
        (between[1], celsius, damp_after),
        (between[1], after, damp_after),
    )
    return [
        PatternPoint(at=time_at(minute), celsius=warmth, humidity_pct=damp, day=day)
        for minute, warmth, damp in rows
    ]


def _within(minute: int, begins: int, ends: int) -> bool:
    if begins < ends:
        return begins <= minute <= ends
    return minute >= begins or minute <= ends


def parted(pattern: Pattern) -> Pattern:
    """Give every weekday points of its own, so that each can differ."""
    days = range(WEEK_DAYS)
    return in_order(
        replace(point, day=day)
        for point in pattern
        for day in (days if point.day is None else (point.day,))
    )


def day_copied(pattern: Pattern, source: int, targets: Iterable[int]) -> Pattern:
    """Make other weekdays like one."""
    others = set(targets) - {source}
    every = parted(pattern)
    mine = [point for point in every if point.day == source]
    kept = [point for point in every if point.day not in others]
    return in_order([*kept, *(replace(p, day=day) for day in sorted(others) for p in mine)])


def alike(pattern: Pattern, source: int) -> Pattern:
    """Make every day like one, with a single line for all."""
    points = [pattern[i] for i in indexes_on(pattern, source)]
    if not points:  # the line merely runs through that day
        celsius, humidity = WeekLine(pattern).at(source * DAY_MINUTES)
        points = [PatternPoint(at=time(0), celsius=celsius, humidity_pct=humidity)]
    return tuple(replace(point, day=None) for point in points)


def with_humidity(pattern: Pattern, humidity: float | None) -> Pattern:
    """Give every point that has none a humidity [%], or with None take it from all."""
    if humidity is None:
        return tuple(replace(point, humidity_pct=None) for point in pattern)
    return tuple(
        point if point.humidity_pct is not None else replace(point, humidity_pct=humidity)
        for point in pattern
    )
