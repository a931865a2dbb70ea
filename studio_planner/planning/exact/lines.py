"""Straight lines that give a rising step function of whole numbers back exactly.

A stage time moves almost in step with the pour that it follows. Within a working stretch one
straight line is nearly always enough: rounded to whole slots it gives every value exactly, and
the solver sees one inequality instead of a table.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

SCALE = 4096
"""Slopes are whole numbers of this part."""

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


def line_from_below(points: Points) -> Line | None:
    """A line that, rounded up, is the value at every point; None when none was found."""
    for rise in _slopes(points):
        offset = min(SCALE * value - rise * x for x, value in points)
        if all(rise * x + offset > SCALE * (value - 1) for x, value in points):
            return Line(rise, offset)
    return None


def line_from_above(points: Points) -> Line | None:
    """A line that, rounded down, is the value at every point; None when none was found."""
    for rise in _slopes(points):
        offset = max(SCALE * value - rise * x for x, value in points)
        if all(rise * x + offset < SCALE * (value + 1) for x, value in points):
            return Line(rise, offset)
    return None


def _slopes(points: Points) -> list[int]:
    """Slopes worth trying: from end to end, and a little flatter and steeper."""
    (x0, v0), (x1, v1) = points[0], points[-1]
    if x0 == x1:
        return [0]
    wide = x1 - x0
    return [
        SCALE * rise // (4 * wide)
        for d in (0, 1, -1, 2, -2)
        if (rise := 4 * (v1 - v0) + d) >= 0
    ]


def longest_fits(
    first: int, last: int, fit: Callable[[int, int], Sequence[Line] | None]
) -> list[tuple[int, int, Sequence[Line]]]:
    """Cut first..last into as few parts as a greedy walk finds, each with lines that fit.

    `fit(a, b)` gives the lines for a..b, or None; it must succeed on a single number.
    """
    parts: list[tuple[int, int, Sequence[Line]]] = []
    low = first
    while low <= last:
        high, lines = _reach(low, last, fit)
        parts.append((low, high, lines))
        low = high + 1
    return parts


def _reach(
    low: int, last: int, fit: Callable[[int, int], Sequence[Line] | None]
) -> tuple[int, Sequence[Line]]:
    whole = fit(low, last)
    if whole is not None:
        return last, whole
    good, bad = low, last
    best = fit(low, low)
    if best is None:
        raise AssertionError("A single value always has a line.")
    step = 1
    while good + step < bad:
        lines = fit(low, good + step)
        if lines is None:
            bad = good + step
            break
        good, best, step = good + step, lines, 2 * step
    while bad - good > 1:
        middle = (good + bad) // 2
        lines = fit(low, middle)
        if lines is None:
            bad = middle
        else:
            good, best = middle, lines
    return good, best
