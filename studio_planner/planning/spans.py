"""Sets of start times: sorted, disjoint stretches (first, last) on the plan's five-minute grid.

Both ends are inside a stretch. All times are whole seconds since 1970 UTC.
"""

from __future__ import annotations

from bisect import bisect_left
from typing import TYPE_CHECKING

from studio_planner.craft.grid import GRID_SECONDS

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

GRID = GRID_SECONDS

Stretch = tuple[int, int]
Stretches = list[Stretch]
Span = tuple[float, float]
"""Any two instants, in seconds."""


def grid_up(second: float) -> int:
    """The first grid time that is not before `second`."""
    return -int(-second // GRID) * GRID


def grid_down(second: float) -> int:
    """The last grid time that is not after `second`."""
    return int(second // GRID) * GRID


def common(ones: Stretches, others: Stretches) -> Stretches:
    """What two sets of starts have in common; the second may be a long one."""
    result: Stretches = []
    if not ones:
        return result
    at, count = max(bisect_left(others, ones[0]) - 1, 0), len(others)
    for first, last in ones:
        while at < count:
            low, high = others[at]
            if low > last:
                break
            if high >= first:
                # Without calls: this is asked tens of thousands of times for one plan.
                begin = low if low > first else first  # noqa: FURB136
                end = high if high < last else last  # noqa: FURB136
                result.append((begin, end))
            if high >= last:
                break
            at += 1
    return result


def united(stretches: Iterable[Stretch]) -> Stretches:
    """Sort and join stretches that overlap or follow each other on the grid."""
    result: Stretches = []
    begun = ended = 0
    for first, last in sorted(stretches):
        if first > last:
            continue
        if result and first <= ended + GRID:
            if last > ended:
                ended = last
                result[-1] = (begun, ended)
        else:
            begun, ended = first, last
            result.append((first, last))
    return result


def joined(spans: Iterable[Span]) -> list[Span]:
    """Sort spans of seconds, drop empty ones and join those that meet."""
    result: list[Span] = []
    for start, end in sorted(spans):
        if result and start <= result[-1][1]:
            result[-1] = (result[-1][0], max(result[-1][1], end))
        elif start < end:
            result.append((start, end))
    return result


def outside(stretches: Stretches, holes: Sequence[Span]) -> Stretches:
    """What is left of a set of starts when sorted, disjoint (open) holes are cut out.

    A hole (a, b) takes away every start s with a < s < b.
    """
    result: Stretches = []
    at, count = 0, len(holes)
    for first, last in stretches:
        low = first
        while at < count and holes[at][1] <= low:
            at += 1
        index = at
        while index < count and holes[index][0] < last:
            begin, end = holes[index]
            if begin >= low:
                result.append((low, min(last, grid_down(begin))))
            low = max(low, grid_up(end))
            index += 1
        if low <= last:
            result.append((low, last))
    return result


def latest_until(stretches: Stretches, limit: int) -> int | None:
    """The latest start that is not after `limit`; what is poured may start off the grid."""
    for first, last in reversed(stretches):
        if first <= limit:
            return max(first, min(last, grid_down(limit)))
    return None
