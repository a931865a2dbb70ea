"""Straight lines that give a rising step function of whole numbers back exactly.

A stage time moves almost in step with the pour that it follows. Within a working stretch one or
two straight lines are nearly always enough: rounded to whole slots they give every value
exactly, and the solver sees one inequality instead of a table.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

SCALE = 4096
"""Slopes are whole numbers of this part."""

_ANCHORS = (0.05, 0.35, 0.65, 0.95)
"""How far below its first value a line may begin; some are tried."""

Points = list[tuple[int, int]]
"""(x, value), the first x the smallest."""


@dataclass(frozen=True, slots=True)
class Line:
    """`rise` times x plus `offset`, in parts of `SCALE`."""

    rise: int
    offset: int

    def up(self, x: int) -> int:
        """The value at x, rounded up."""
        return -(-(self.rise * x + self.offset) // SCALE)

    def down(self, x: int) -> int:
        """The value at x, rounded down."""
        return (self.rise * x + self.offset) // SCALE


def line_through(
    points: Points, slopes: Sequence[float], *, up: bool, slack: int = 0
) -> Line | None:
    """A line of one of some slopes that, rounded up (or down), is the value at every point.

    With `slack` it may be up to so much more; only for what is rounded up.
    """
    for slope in slopes:
        rise = max(0, round(SCALE * slope))
        rests = [SCALE * value - rise * x for x, value in points]
        low, high = min(rests), max(rests)
        if high - low < SCALE * (1 + slack):
            return Line(rise, max(low, high - SCALE + 1) if up else high)
    return None


def steep_line(points: Points) -> Line:
    """A line that, rounded up, is the first value at the first point, and no less at others."""
    x0, v0 = points[0]
    rise = max((-(-SCALE * (v - v0) // (x - x0)) for x, v in points[1:]), default=0)
    return Line(max(0, rise), SCALE * v0 - max(0, rise) * x0)


class Reached:
    """How far a line can go on through rows of points, and at what slope."""

    def __init__(self, first: tuple[int, int], slack: int) -> None:
        """Begin at the first point; lines may be up to `slack` more than the values."""
        self._x0, self._v0 = first
        self._slack = slack
        self._open = [(below, 0.0, math.inf) for below in _ANCHORS]

    @property
    def slopes(self) -> list[float]:
        """Slopes that serve so far."""
        found = []
        for _, low, high in self._open:
            found.append(low if high == math.inf else (low + high) / 2)
        return found

    def take(self, points: Points) -> bool:
        """Go on through more points; False, and nothing is taken, when no line can."""
        still = []
        for below, low, high in self._open:
            begin = self._v0 - below
            lows = [(value - 1 - begin) / (x - self._x0) for x, value in points]
            most = begin - self._slack
            highs = [(value - most) / (x - self._x0) for x, value in points]
            flattest, steepest = max(low, *lows), min(high, *highs)
            if flattest < steepest:
                still.append((below, flattest, steepest))
        if not still:
            return False
        self._open = still
        return True


def pieces_of(
    row: Sequence[Points], *, up: bool, slack: int = 0
) -> list[tuple[int, int, Line]]:
    """Cut a row of points into parts (first, last), each with a line that gives it exactly.

    With `slack` lines may be up to so much more, and go further. A single number always has a
    line; of several points at it only the first is exact then, the others on the late side.
    """
    parts: list[tuple[int, int, Line]] = []
    low = 0
    while low < len(row):
        last, line = _part_from(row, low, up=up, slack=slack)
        parts.append((low, last, line))
        low = last + 1
    return parts


def _part_from(row: Sequence[Points], low: int, *, up: bool, slack: int) -> tuple[int, Line]:
    reached = Reached(row[low][0], slack)
    last = low
    while last + 1 < len(row) and reached.take(row[last + 1]):
        last += 1
    slopes = reached.slopes
    while last > low:
        line = line_through(_points(row, low, last), slopes, up=up, slack=slack)
        if line is not None:
            return last, line
        last = low + (last - low) // 2
        slopes = _from_end_to_end(row, low, last)
    points = _points(row, low, low)
    line = line_through(points, (0.0, 1.0, *slopes), up=up, slack=slack)
    return low, line or steep_line(points)


def _points(row: Sequence[Points], low: int, last: int) -> Points:
    return [point for at in range(low, last + 1) for point in row[at]]


def _from_end_to_end(row: Sequence[Points], low: int, last: int) -> list[float]:
    (x0, v0), (x1, v1) = row[low][0], row[last][0]
    wide = max(1, x1 - x0)
    return [(v1 - v0 + part) / wide for part in (0.0, 0.3, -0.3, 0.6, -0.6)]
