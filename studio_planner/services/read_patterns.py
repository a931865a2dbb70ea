"""An expected day made from what was read: the median of each hour of the last two weeks."""

from __future__ import annotations

from dataclasses import dataclass, replace
from datetime import UTC, timedelta
from statistics import median
from typing import TYPE_CHECKING

from studio_planner.craft.places import PatternPoint
from studio_planner.craft.tongue import translate
from studio_planner.services.editing.air_weeks import WeekLine, in_order, time_at
from studio_planner.services.editing.places import changed_place

if TYPE_CHECKING:
    from collections.abc import Sequence
    from datetime import datetime
    from zoneinfo import ZoneInfo

    from studio_planner.craft.places import Place, Reading
    from studio_planner.services.editing.air_weeks import Pattern
    from studio_planner.services.editing.changes import Change

LOOKED_BACK = timedelta(days=14)
_HALF = 30
_HOURS = 24
_LEAST_IN_BAND = 0.9
"""The share of readings that a band holds, as everywhere in a studio."""

_STRAIGHT_CELSIUS = 0.15
_STRAIGHT_PER_CENT = 1.5
"""A point is left out where the line without it stays this near to every one (our choice)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class ReadPattern:
    """A pattern made from readings: the points, what it was made from, and how well it fits.

    `hours` are those of the day in which anything was read, `band_celsius` holds nine out of
    ten of the readings.
    """

    pattern: Pattern
    first: datetime
    last: datetime
    readings: int
    hours: int
    band_celsius: float


def read_pattern(readings: Sequence[Reading], zone: ZoneInfo) -> ReadPattern | None:
    """Make a pattern from the two weeks before the last reading; None without any.

    Each hour's median stands at its middle; points are left out as long as the line stays
    within 0.15 degrees and 1.5 % of every median.
    """
    if not readings:
        return None
    begin = readings[-1].when - LOOKED_BACK
    used = [reading for reading in readings if reading.when >= begin]
    by_hour: dict[int, list[Reading]] = {}
    walls = [reading.when.astimezone(zone) for reading in used]
    for wall, reading in zip(walls, used, strict=True):
        by_hour.setdefault(wall.hour, []).append(reading)
    points = [_point(hour, rows) for hour, rows in sorted(by_hour.items())]
    humid = all(point.humidity_pct is not None for point in points)
    if not humid:
        points = [replace(point, humidity_pct=None) for point in points]
    pattern = _straightened(points)
    line = WeekLine(pattern)
    off = sorted(
        abs(reading.celsius - line.at(wall.hour * 60 + wall.minute)[0])
        for wall, reading in zip(walls, used, strict=True)
    )
    within = off[min(int(_LEAST_IN_BAND * len(off)), len(off) - 1)]
    return ReadPattern(
        pattern=pattern,
        first=used[0].when.astimezone(UTC),
        last=used[-1].when.astimezone(UTC),
        readings=len(used),
        hours=len(by_hour),
        band_celsius=round(max(within, 0.1), 1),
    )


def taken_pattern(place: Place, made: ReadPattern) -> Change:
    """Let a place be expected as it was read."""
    return changed_place(
        place.key,
        translate("changes", "{place}, expected air from its readings").format(
            place=place.name
        ),
        lambda now: replace(
            now, pattern=made.pattern, band_celsius=min(made.band_celsius, 15.0)
        ),
    )


def _point(hour: int, rows: Sequence[Reading]) -> PatternPoint:
    damp = [row.humidity_pct for row in rows if row.humidity_pct is not None]
    known = 2 * len(damp) > len(rows)
    return PatternPoint(
        at=time_at(hour * 60 + _HALF),
        celsius=round(median(row.celsius for row in rows), 1),
        humidity_pct=min(max(round(median(damp)), 1.0), 100.0) if known else None,
    )


def _straightened(points: Sequence[PatternPoint]) -> Pattern:
    """Leave points out as long as the line stays close to every one of them."""
    kept = list(points)
    for point in points:
        rest = [one for one in kept if one is not point]
        if rest and _close(WeekLine(in_order(rest)), points):
            kept = rest
    return in_order(kept)


def _close(line: WeekLine, points: Sequence[PatternPoint]) -> bool:
    return all(_near(line, point) for point in points)


def _near(line: WeekLine, point: PatternPoint) -> bool:
    celsius, humidity = line.at(point.at.hour * 60 + point.at.minute)
    dry = 0.0
    if humidity is not None and point.humidity_pct is not None:
        dry = abs(humidity - point.humidity_pct)
    return abs(celsius - point.celsius) <= _STRAIGHT_CELSIUS and dry <= _STRAIGHT_PER_CENT
