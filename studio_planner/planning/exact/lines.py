"""Straight lines that stand for a rising step function of whole numbers.

A stage time moves almost in step with the pour that it follows. Rounded to whole numbers, one
or two straight lines give every value of a working stretch, and the solver sees one inequality
instead of a table. Where it makes no difference which of several values is given, as through a
night in which nothing can begin, one line reaches further.
"""

from __future__ import annotations

import math
from dataclasses import dataclass
from typing import TYPE_CHECKING, NamedTuple

if TYPE_CHECKING:
    from collections.abc import Sequence

SCALE = 4096
"""Slopes are whole numbers of this part."""

_ANCHORS = (0.05, 0.35, 0.65, 0.95)
"""How far below its first value a line may begin; some are tried."""


class Point(NamedTuple):
    """A value at x, and the lowest and highest that would do as well."""

    x: int
    value: int
    low: int
    high: int


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


def line_through(points: Sequence[Point], slopes: Sequence[float], *, up: bool) -> Line | None:
    """A line of one of some slopes that, rounded up (or down), will do at every point.

    It is as high as it can be where values are rounded up, and else as low.
    """
    for slope in slopes:
        rise = max(0, round(SCALE * slope))
        # Rounded up, what is above `low` less one is `low` at least; rounded down likewise.
        low = max(SCALE * (one.low - up) - rise * one.x for one in points) + up
        high = min(SCALE * (one.high + 1 - up) - rise * one.x for one in points) - 1 + up
        if low <= high:
            return Line(rise, high if up else low)
    return None


class Reached:
    """How far a line can go on through points, and at what slope."""

    def __init__(self, first: Point) -> None:
        """Begin at the first point: near its value, or anywhere between what would do."""
        begins = [first.value - below for below in _ANCHORS]
        begins += [end - 0.5 for end in (first.low, first.high) if end != first.value]
        self._x0 = first.x
        self._open = [(begin, 0.0, math.inf) for begin in begins]

    @property
    def slopes(self) -> list[float]:
        """Slopes that serve so far."""
        return [low if high == math.inf else (low + high) / 2 for _, low, high in self._open]

    def take(self, point: Point) -> bool:
        """Go on through one more point; False, and nothing is taken, when no line can."""
        wide = point.x - self._x0
        still = []
        for begin, low, high in self._open:
            flattest = max(low, (point.low - 1 - begin) / wide)
            steepest = min(high, (point.high - begin) / wide)
            if flattest < steepest:
                still.append((begin, flattest, steepest))
        if still:
            self._open = still
        return bool(still)


def pieces_of(points: Sequence[Point], *, up: bool) -> list[tuple[int, int, Line]]:
    """Cut points into parts (first, last), each with a line that will do for it."""
    parts: list[tuple[int, int, Line]] = []
    low = 0
    while low < len(points):
        last, line = _part_from(points, low, up=up)
        parts.append((low, last, line))
        low = last + 1
    return parts


def _part_from(points: Sequence[Point], low: int, *, up: bool) -> tuple[int, Line]:
    reached = Reached(points[low])
    last = low
    while last + 1 < len(points) and reached.take(points[last + 1]):
        last += 1
    slopes = reached.slopes
    while last > low:
        line = line_through(points[low : last + 1], slopes, up=up)
        if line is not None:
            return last, line
        last = low + (last - low) // 2
        slopes = _from_end_to_end(points[low], points[last])
    return low, Line(0, SCALE * points[low].value)


def _from_end_to_end(first: Point, last: Point) -> list[float]:
    wide = max(1, last.x - first.x)
    return [(last.value - first.value + part) / wide for part in (0.0, 0.3, -0.3, 0.6, -0.6)]
