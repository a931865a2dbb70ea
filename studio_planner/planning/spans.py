"""Sets of start times: sorted, disjoint stretches (first, last) on the plan's five-minute grid.

Both ends are inside a stretch. All times are whole seconds since 1970 UTC.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Iterable

GRID = 300
"""The plan's grid in seconds; every planned start is a multiple of it."""

Stretch = tuple[int, int]
Stretches = list[Stretch]


def grid_up(second: float) -> int:
    """The first grid time that is not before `second`."""
    return -int(-second // GRID) * GRID


def grid_down(second: float) -> int:
    """The last grid time that is not after `second`."""
    return int(second // GRID) * GRID


def common(ones: Stretches, others: Stretches) -> Stretches:
    """What two sets of starts have in common."""
    result: Stretches = []
    i = j = 0
    while i < len(ones) and j < len(others):
        first = max(ones[i][0], others[j][0])
        last = min(ones[i][1], others[j][1])
        if first <= last:
            result.append((first, last))
        if ones[i][1] < others[j][1]:
            i += 1
        else:
            j += 1
    return result


def united(stretches: Iterable[Stretch]) -> Stretches:
    """Sort and join stretches that overlap or follow each other on the grid."""
    result: Stretches = []
    for first, last in sorted(s for s in stretches if s[0] <= s[1]):
        if result and first <= result[-1][1] + GRID:
            result[-1] = (result[-1][0], max(result[-1][1], last))
        else:
            result.append((first, last))
    return result


def outside(stretches: Stretches, holes: Iterable[Stretch]) -> Stretches:
    """What is left of a set of starts when (open) holes are cut out.

    A hole (a, b) takes away every start s with a < s < b.
    """
    for low, high in holes:
        if not stretches or high <= stretches[0][0] or low >= stretches[-1][1]:
            continue
        cut: Stretches = []
        for first, last in stretches:
            cut += [(first, min(last, grid_down(low))), (max(first, grid_up(high)), last)]
            if last <= low or first >= high:
                cut[-2:] = [(first, last)]
        stretches = [s for s in cut if s[0] <= s[1]]
    return stretches


def latest_until(stretches: Stretches, limit: int) -> int | None:
    """The latest start that is not after `limit`."""
    for first, last in reversed(stretches):
        if first <= limit:
            return min(last, grid_down(limit))
    return None
