"""The first and the last slot in which each coat of a lane may start, by itself.

Nothing that keeps a lane's horizon lies outside, whatever the other lanes do: the windows make
the model smaller and lose no plan. The earliest end of a lane by itself is a bound on every
plan, since other lanes can only be in the way.
"""

from __future__ import annotations

from bisect import bisect_left
from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.planning.exact.reaches import Reach, not_before
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from collections.abc import Callable, Mapping, Sequence

    from studio_planner.planning.exact.asked import Asked
    from studio_planner.planning.exact.reaches import Reaches
    from studio_planner.planning.placing.chain_times import Means
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.spans import Stretches


@dataclass(frozen=True, slots=True)
class OwnTimes:
    """What a lane needs by itself, in slots.

    `starts` and `places` are those that each new coat has, `blocks` its shortest [s].
    """

    starts: Mapping[int, Stretches]
    places: Mapping[int, Sequence[str]]
    fixed_place: Mapping[int, str]


class Windows:
    """Earliest and latest starts of one chain."""

    def __init__(self, reaches: Reaches, means: Means, asked: Asked, own: OwnTimes) -> None:
        """Look at one chain with the starts that its coats have."""
        self._reaches = reaches
        self._means = means
        self._asked = asked
        self._own = own
        places = {
            *own.fixed_place.values(),
            *(one for row in own.places.values() for one in row),
        }
        self._moves = not places <= {means.edges.rest}
        """Whether the piece may be moved: then coats go on curing wherever later ones stand."""

    @property
    def _chain(self) -> Chain:
        return self._asked.chain

    def earliest(self) -> dict[int, int] | None:
        """The earliest slot of each new coat; None when one of them has none."""
        firsts: dict[int, int] = {}
        for index in range(self._chain.first, len(self._chain.tasks)):
            low = max([0, *(self._follows(index, i, firsts.get(i)) for i in range(index))])
            start = _first_from(self._own.starts[index], low)
            if start is None:
                return None
            firsts[index] = start
        return firsts

    def ready(self, firsts: Mapping[int, int]) -> int:
        """The earliest slot in which the chain may be packed, with such first starts."""
        return max([0, *(self._packs(i, firsts.get(i)) for i in range(len(self._chain.tasks)))])

    def latest(self, ready_by: int) -> dict[int, int] | None:
        """The latest slot of each new coat that lets the chain be ready by a slot."""
        lasts: dict[int, int] = {}
        for index in reversed(range(self._chain.first, len(self._chain.tasks))):
            slots = self._own.starts[index]
            last = _last_that(slots, self._serving(index, lasts, ready_by))
            if last is None:
                return None
            lasts[index] = last
        return lasts

    def _serving(
        self, index: int, lasts: Mapping[int, int], ready_by: int
    ) -> Callable[[int], bool]:
        """Whether a slot of a coat lets all later ones and the packing be in time."""
        later = range(index + 1, len(self._chain.tasks))

        def serves(slot: int) -> bool:
            return self._packs(index, slot) <= ready_by and all(
                self._follows(one, index, slot) <= lasts[one] for one in later
            )

        return serves

    def _packs(self, index: int, slot: int | None) -> int:
        task = self._chain.tasks[index]
        ends = self._reaches.grid.up(self._second(index, slot) + task.block)
        last = index + 1 == len(self._chain.tasks)
        if index not in self._asked.gates or (self._moves and not last):
            return ends
        return max(ends, self._slot(index, slot, not_before(self._asked.gates[index])))

    def _follows(self, later: int, index: int, slot: int | None) -> int:
        """The first slot of a later coat, for a slot of an earlier one."""
        task, above = self._chain.tasks[index], self._chain.tasks[later]
        low = self._reaches.grid.up(self._second(index, slot) + task.block + above.lead)
        if index in above.rests_on:
            low = max(low, self._slot(index, slot, not_before(Stage.HANDLE, extra=above.lead)))
        if above.below == index:
            low = max(low, self._joins(later, index, slot))
        return low

    def _joins(self, later: int, index: int, slot: int | None) -> int:
        """The first slot at which one of the allowed joints opens."""
        above = self._chain.tasks[later]
        if self._moves and later > index + 1:
            return 0
        found = [
            0 if window.opens is None else self._slot(index, slot, window.opens)
            for _, window in self._asked.joinings(above, (above.block,))
        ]
        if self._asked.scuffs(above):
            found.append(self._slot(index, slot, not_before(Stage.SANDABLE)))
        return min(found, default=self._reaches.far)

    def _slot(self, index: int, slot: int | None, reach: Reach) -> int:
        task = self._chain.tasks[index]
        places = (
            [self._own.fixed_place[index]]
            if task.fixed is not None
            else self._own.places[index]
        )
        start = self._second(index, slot)
        return min(
            self._reaches.slot(task.product, place, reach, (start, task.block))
            for place in places
        )

    def _second(self, index: int, slot: int | None) -> int:
        fixed = self._chain.tasks[index].fixed
        if fixed is not None:
            return int(fixed.start.timestamp())
        return self._reaches.grid.second(slot or 0)


def _first_from(slots: Stretches, low: int) -> int | None:
    return next((max(first, low) for first, last in slots if last >= low), None)


def _last_that(slots: Stretches, serves: Callable[[int], bool]) -> int | None:
    """The last slot that serves, where all before one that serves do too."""
    count = bisect_left(slots, 1, key=lambda stretch: not serves(stretch[0]))
    if not count:
        return None
    first, last = slots[count - 1]
    return first - 1 + bisect_left(range(first, last + 1), 1, key=lambda slot: not serves(slot))
