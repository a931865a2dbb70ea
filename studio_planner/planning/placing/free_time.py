"""What is still free of a person's hours or of a spot, as work is put into it."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from itertools import islice
from typing import TYPE_CHECKING

from studio_planner.planning.spans import GRID

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from studio_planner.planning.spans import Stretches


class FreeTime:
    """Sorted free stretches [from, to) in seconds; finding and taking cost O(log n)."""

    def __init__(self, spans: Iterable[tuple[int, int]], shortest: int = 1) -> None:
        """Start with sorted, disjoint spans; what gets shorter than `shortest` is dropped."""
        self._shortest = shortest
        self._starts: list[int] = []
        self._ends: list[int] = []
        for start, end in spans:
            self._starts.append(start)
            self._ends.append(end)

    def copy(self) -> FreeTime:
        """A second one that can be taken from on its own."""
        return FreeTime(zip(self._starts, self._ends, strict=True), self._shortest)

    def from_(self, after: int) -> Iterator[tuple[int, int]]:
        """Free spans that end after `after`, in order."""
        for index in range(bisect_right(self._ends, after), len(self._starts)):
            yield self._starts[index], self._ends[index]

    def before(self, until: int) -> Iterator[tuple[int, int]]:
        """Free spans that start before `until`, the last one first."""
        for index in range(bisect_left(self._starts, until) - 1, -1, -1):
            yield self._starts[index], self._ends[index]

    def starts_in(self, ranges: Stretches, lead: int, block: int, most: int) -> Stretches:
        """Grid starts within ranges at which all is free from `lead` before to the block's end.

        At most `most` stretches, the earliest.
        """
        found: Stretches = []
        starts, ends, count = self._starts, self._ends, len(self._starts)
        index = 0
        for first, last in ranges:
            index = bisect_left(ends, first + block, index)
            while index < count and len(found) < most:
                soonest = starts[index] + lead
                if soonest > last:
                    break
                low = first if soonest <= first else -(-soonest // GRID) * GRID
                high = (ends[index] - block) // GRID * GRID
                goes_on = high > last
                if low <= (last if goes_on else high):
                    found.append((low, last if goes_on else high))
                if goes_on:
                    break
                index += 1
        return found

    def earliest(self, after: int, length: int) -> int | None:
        """The earliest grid start from `after` on from which all is free for `length`."""
        starts, ends = self._starts, self._ends
        for index in range(bisect_left(ends, after + length), len(starts)):
            low = -(-max(starts[index], after) // GRID) * GRID
            if low + length <= ends[index]:
                return low
        return None

    @property
    def last_start(self) -> int | None:
        """Where the last free span starts; None when nothing is free."""
        return self._starts[-1] if self._starts else None

    def holds(self, start: int, end: int) -> bool:
        """Tell whether all of [start, end) is free."""
        index = bisect_right(self._starts, start) - 1
        return index >= 0 and self._ends[index] >= end

    def take(self, start: int, end: int) -> None:
        """Make [start, end) no longer free; what was not free stays so."""
        low = bisect_right(self._ends, start)
        high = bisect_left(self._starts, end)
        if low >= high:
            return
        left = (self._starts[low], start)
        right = (end, self._ends[high - 1])
        kept = [span for span in (left, right) if span[1] - span[0] >= self._shortest]
        self._starts[low:high] = [span[0] for span in kept]
        self._ends[low:high] = [span[1] for span in kept]

    def take_all(self, spans: Sequence[tuple[int, int]]) -> None:
        """As `take` for many sorted spans at once, in one go through all of them."""
        starts, ends, at, count = [], [], 0, len(spans)
        for start, end in zip(self._starts, self._ends, strict=True):
            while at < count and spans[at][1] <= start:
                at += 1
            since = start
            for begin, until in islice(spans, at, None):
                if begin >= end:
                    break
                if begin - since >= self._shortest:
                    starts.append(since)
                    ends.append(begin)
                since = max(since, until)
            if end - since >= self._shortest:
                starts.append(since)
                ends.append(end)
        self._starts, self._ends = starts, ends
