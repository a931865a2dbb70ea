"""Which lanes look for another place while all others stay where the plan before had them.

After a lost evening only a few pours cannot stay. What else would have to give way to them
mostly need not move in time: another spot will do.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.worth import moved_pours

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator
    from random import Random

    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.part import Standing
    from studio_planner.planning.worth import Starts

_FIRST_COATS, _FEWEST_COATS, _MOST_COATS = 20.0, 8.0, 60.0
_MORE, _LESS = 1.2, 0.7
"""New coats of homeless lanes; as many as are still searched to the end."""


class Homeless:
    """Draws the lanes that have moved: all of them while they are few, else some."""

    def __init__(self, random: Random, before: Starts) -> None:
        """Draw from a generator; `before` are the starts that should not be moved."""
        self._random = random
        self._before = before
        self._coats = _FIRST_COATS
        self._tried: set[frozenset[int]] = set()

    def drawn(
        self, standing: Standing, gains: Callable[[Lane], bool], *, some: bool
    ) -> frozenset[int]:
        """Lanes that have moved, no set of them twice; none where all were tried.

        Late ones that could gain come with them. Where they are many, `some` are drawn.
        """
        for lanes in self._sets(standing, gains, some=some):
            if lanes and lanes not in self._tried:
                self._tried.add(lanes)
                return lanes
        return frozenset()

    def learn(self, *, done: bool) -> None:
        """Hear whether all was searched to the end, and draw more or fewer next time."""
        change = _MORE if done else _LESS
        self._coats = min(_MOST_COATS, max(_FEWEST_COATS, change * self._coats))

    def _sets(
        self, standing: Standing, gains: Callable[[Lane], bool], *, some: bool
    ) -> Iterator[frozenset[int]]:
        lanes = standing.lanes
        moved = {at for at, lane in enumerate(lanes) if self._has_moved(lane)}
        late = {at for at, lane in enumerate(lanes) if _is_late(lane) and gains(lane)}
        for few in (moved | late, moved):
            if sum(lanes[at].new_coats for at in few) <= self._coats:
                yield frozenset(few)
        if some:
            yield self._some(standing, sorted(moved))

    def _some(self, standing: Standing, moved: list[int]) -> frozenset[int]:
        drawn, left = set(), self._coats
        for at in self._random.sample(moved, len(moved)):
            coats = standing.lanes[at].new_coats
            if coats <= left:
                drawn.add(at)
                left -= coats
        return frozenset(drawn)

    def _has_moved(self, lane: Lane) -> bool:
        return lane.placed is not None and moved_pours(lane.placed, self._before) > 0


def _is_late(lane: Lane) -> bool:
    return lane.placed is not None and lane.placed.score[0] > 0
