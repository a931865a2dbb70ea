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
"""(x, value), x rising."""


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


def line_through(points: Points, slopes: Sequence[float], *, up: bool) -> Line | None:
    """A line of one of some slopes that, rounded up (or down), is the value at every point."""
    for slope in slopes:
        rise = max(0, round(SCALE * slope))
        rests = [SCALE * value - rise * x for x, value in points]
        low, high = min(rests), max(rests)
        if high - low < SCALE:
            return Line(rise, low if up else high)
    return None


class Reached:
    """How far a line can go on through points, and at what slope."""

    def __init__(self, first: tuple[int, int]) -> None:
        """Begin at the first point."""
        self._x0, self._v0 = first
        self._open = [(below, 0.0, math.inf) for below in _ANCHORS]

    @property
    def slopes(self) -> list[float]:
        """Slopes that serve so far."""
        return [low if high == math.inf else (low + high) / 2 for _, low, high in self._open]

    def take(self, point: tuple[int, int]) -> bool:
        """Go on through one more point; False, and nothing is taken, when no line can."""
        x, value = point
        wide = x - self._x0
        still = []
        for below, low, high in self._open:
            above = value - self._v0 + below
            flattest, steepest = max(low, (above - 1) / wide), min(high, above / wide)
            if flattest < steepest:
                still.append((below, flattest, steepest))
        if still:
            self._open = still
        return bool(still)


def pieces_of(points: Points, *, up: bool) -> list[tuple[int, int, Line]]:
    """Cut points into parts (first, last), each with a line that gives it exactly."""
    parts: list[tuple[int, int, Line]] = []
    low = 0
    while low < len(points):
        last, line = _part_from(points, low, up=up)
        parts.append((low, last, line))
        low = last + 1
    return parts


def _part_from(points: Points, low: int, *, up: bool) -> tuple[int, Line]:
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
    return low, Line(0, SCALE * points[low][1])


def _from_end_to_end(first: tuple[int, int], last: tuple[int, int]) -> list[float]:
    wide = max(1, last[0] - first[0])
    return [(last[1] - first[1] + part) / wide for part in (0.0, 0.3, -0.3, 0.6, -0.6)]
