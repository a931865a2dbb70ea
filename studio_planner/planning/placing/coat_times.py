"""The stage times of a chain's coats where they stand, by the clocks alone."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import rested
from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.clocks.stage_times import NotBefore
    from studio_planner.planning.clocks.window_times import WindowTimes
    from studio_planner.planning.placing.means import Ground, Means
    from studio_planner.planning.problem import Chain, Task


class CoatTimes:
    """When the coats of one chain on its grounds open, close, and can be handled."""

    def __init__(self, means: Means, chain: Chain, grounds: Sequence[Ground]) -> None:
        """Answer for a chain on grounds, one for each coat."""
        self._means = means
        self._chain = chain
        self._places = [
            ground.place if task.fixed is None else means.place_of(task.fixed)
            for task, ground in zip(chain.tasks, grounds, strict=True)
        ]

    def task(self, index: int) -> Task:
        """What is asked of a coat."""
        return self._chain.tasks[index]

    def place(self, index: int) -> str:
        """The place that a coat stands in until it can be handled, or its way."""
        return self._places[index]

    def rests_from(self, index: int) -> bool:
        """Tell whether a piece stands in the place where it rests from a coat on to its end."""
        rest = self._means.edges.rest
        return all(place == rest for place in self._places[index:])

    def handled(self, index: int, start: int) -> int | None:
        """When a coat that starts at `start` can be handled; None when never."""
        task = self._chain.tasks[index]
        return self._means.edges.handle(task.product, self.place(index)).at(start + task.block)

    def sandable(self, index: int, start: int) -> int | None:
        """When a coat that starts at `start` can be sanded; None when never."""
        task = self._chain.tasks[index]
        clock = self._means.edges.not_before(task.product, self.place(index), Stage.SANDABLE)
        return None if clock is None else clock.at(start + task.block)

    def window_times(self, index: int, *, tests: bool) -> WindowTimes:
        """The window of a joint to the coat below: the likely one where it may be tested."""
        task = self._chain.tasks[index]
        below = task.below or 0
        return self._means.edges.window_times(
            task, self._chain.tasks[below], self.place(below), likely=tests
        )

    def opens(self, index: int, below_start: int, edge: Edge | None) -> int | None:
        """When the joint to the coat below opens, for a start of that one."""
        task = self._chain.tasks[index]
        below = self._chain.tasks[task.below or 0]
        spread = below_start + below.block
        if task.sheet_opens is None:
            return spread
        clock = self._means.edges.not_before(
            below.product, self.place(task.below or 0), task.sheet_opens, edge or Edge.LATE
        )
        return None if clock is None else clock.at(spread)

    def closes(self, index: int, below_start: int, edge: Edge | None) -> int:
        """When the joint to the coat below closes; ALWAYS when it never does."""
        task = self._chain.tasks[index]
        below = self._chain.tasks[task.below or 0]
        if task.sheet_closes is None:
            return ALWAYS
        clock = self._means.edges.not_after(
            below.product, self.place(task.below or 0), task.sheet_closes, edge or Edge.EARLY
        )
        return ALWAYS if clock is None else clock.at(below_start)

    def closes_on_the_way(self, index: int, starts: list[int], edge: Edge | None) -> int:
        """As `closes`, for a piece that is moved before or for this coat."""
        task = self._chain.tasks[index]
        below = task.below or 0
        if task.sheet_closes is None or self.rests_from(below):
            return self.closes(index, starts[below], edge)
        legs = self.itinerary(starts, below, starts[below])
        product = self._chain.tasks[below].product
        exact = self._means.edges.along(product, task.sheet_closes, edge or Edge.EARLY, legs)
        return ALWAYS if exact is None else int(exact) - 2

    def itinerary(
        self, starts: Sequence[int], index: int, since: int
    ) -> list[tuple[str, float]]:
        """Where a piece is from `since` on, when coat `index` is on it: places and seconds."""
        if self.rests_from(index):
            return [(self._means.edges.rest, since)]
        legs: list[tuple[str, float]] = []
        for later in range(index, len(starts)):
            begins = since if later == index else starts[later]
            until = starts[later + 1] if later + 1 < len(starts) else ALWAYS
            stood = self._means.edges.legs(self.place(later), begins)
            stood = rested(stood, self._leaves(later, starts), self._means.edges.rest)
            legs += [leg for leg in stood if leg[1] < max(until, begins + 1)]
        return legs

    def _leaves(self, index: int, starts: Sequence[int]) -> int | None:
        """When a piece leaves the spot of a coat to rest; None when it stays until the next."""
        task = self._chain.tasks[index]
        handled = self.handled(index, starts[index])
        last = index + 1 == len(starts)
        if handled is None or (task.stays and not last):
            return None
        return handled if last or handled < starts[index + 1] else None

    def covered(self, index: int, start: int) -> int:
        """When a coat's wet face is under its cover, or past the stage that stands for it."""
        end = start + self._chain.tasks[index].block
        clock = self._cover_clock(index)
        if clock is None:
            return end
        reached = clock.at(end)
        return self._means.end if reached is None else max(end, reached)

    def _cover_clock(self, index: int) -> NotBefore | None:
        product = self._chain.tasks[index].product
        return self._means.edges.cover(product, self.place(index))

    def covered_by(self, index: int, by: int) -> int:
        """The latest start that is under its cover by some second."""
        clock = self._cover_clock(index)
        latest = by if clock is None else clock.latest(by)
        return -1 if latest is None else min(latest, by) - self._chain.tasks[index].block

    def own_hold(self, spot: str) -> tuple[int, int] | None:
        """The time for which the chain's own last poured coat holds this spot by itself."""
        last = self._chain.first - 1
        fixed = self._chain.tasks[last].fixed if last >= 0 else None
        at, since = ("", 0) if fixed is None else self._means.legs(fixed)[-1]
        if fixed is None or at != spot:
            return None
        handled = self.handled(last, int(fixed.start.timestamp()))
        with_it = self._means.shop.lying.get(spot, ())
        others = (until for key, until in with_it if key != fixed.piece)
        return (max([since, *others]), self._means.until if handled is None else handled)
