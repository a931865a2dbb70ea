"""What is known of the time between starts: the least gaps, followed through all between."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from collections.abc import Sequence

Gaps = list[list[int | None]]
"""`gaps[i][j]`: how long after the start of i that of j lies at least; None: nothing known."""


def unknown_gaps(count: int) -> Gaps:
    """Gaps between so many starts of which nothing is known yet."""
    return [[0 if i == j else None for j in range(count)] for i in range(count)]


def follow_through(gaps: Gaps) -> None:
    """Follow the gaps through every activity between (longest paths)."""
    for through in range(len(gaps)):
        onward = [(j, gap) for j, gap in enumerate(gaps[through]) if gap is not None]
        for row in gaps:
            first = row[through]
            if first is not None:
                _raise(row, first, onward)


def _raise(row: list[int | None], first: int, onward: Sequence[tuple[int, int]]) -> None:
    for j, gap in onward:
        known = row[j]
        if known is None or first + gap > known:
            row[j] = first + gap


def widen(gaps: Gaps, one: int, other: int, least: int) -> bool:
    """Add a gap and what follows from it; False when it was known."""
    known = gaps[one][other]
    if known is not None and known >= least:
        return False
    onward = [(j, gap + least) for j, gap in enumerate(gaps[other]) if gap is not None]
    for row in gaps:
        first = row[one]
        if first is not None:
            _raise(row, first, onward)
    return True
