"""When anything can begin: what is reached between two such times may be said to be either."""

from __future__ import annotations

from bisect import bisect_right
from typing import TYPE_CHECKING

from studio_planner.planning.exact.grid import joined_slots
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from studio_planner.planning.exact.grid import Grid
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.spans import Stretches

_WHILE_AWAKE = frozenset(
    {Stage.TAPE_OPENS, Stage.TAPE_CLOSES, Stage.TRIM_OPENS, Stage.TRIM_CLOSES}
)
"""What is done whenever somebody is awake; all else begins in working hours."""


class Beginnings:
    """The stretches of slots in which something may begin or be over, the last one inside."""

    def __init__(self, stretches: Stretches) -> None:
        """Keep stretches in their order."""
        self._firsts = [first for first, _ in stretches]
        self._lasts = [last for _, last in stretches]

    def not_before(self, slot: int) -> tuple[int, int]:
        """The lowest and highest slot that lets begin just what is not before one."""
        at = bisect_right(self._firsts, slot)
        before = self._lasts[at - 1] if at else min(slot, 0) - 1
        if slot <= before:
            return slot, slot
        return before + 1, self._firsts[at] if at < len(self._firsts) else slot

    def not_after(self, slot: int) -> tuple[int, int]:
        """The lowest and highest slot that lets be over just what is not after one."""
        at = bisect_right(self._firsts, slot)
        before = self._lasts[at - 1] if at else slot
        if slot <= before:
            return slot, slot
        return before, self._firsts[at] - 1 if at < len(self._firsts) else slot

    def finer(self, parts: int) -> Beginnings:
        """The same counted in parts of a slot."""
        both = zip(self._firsts, self._lasts, strict=True)
        return Beginnings([(parts * first, parts * last) for first, last in both])


class AllBeginnings:
    """When what waits for each stage may begin in one studio."""

    def __init__(self, means: Means, grid: Grid) -> None:
        """Look at everybody's working and waking hours."""
        hours = [span for free in means.shop.hands.values() for span in free.from_(means.now)]
        awake = [(start, end) for start, end, _ in means.shop.awake]
        self._hours, self._awake = (
            Beginnings(joined_slots((grid.down(a), grid.up(b)) for a, b in spans))
            for spans in (hours, [*hours, *awake])
        )

    def of(self, stage: Stage) -> Beginnings:
        """When what waits for a stage may begin, or has to be over."""
        return self._awake if stage in _WHILE_AWAKE else self._hours
