"""Places one chain of coats on given spots: all feasible starts forward, then one choice back.

Windows move with the start but never overtake each other (a later pour never opens or closes
earlier), so the feasible starts of each coat are a few stretches, and the latest start that
still serves the next coat is always a good one.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.planning.placing.chain_times import (
    ChainTimes,
    PlacedJoint,
    standing,
)
from studio_planner.planning.placing.feasible_starts import FeasibleStarts, Look
from studio_planner.planning.placing.pins import UNPINNED
from studio_planner.planning.spans import (
    GRID,
    Stretches,
    latest_until,
)
from studio_planner.science.stages import Edge, Stage

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.planning.placing.chain_times import Allow, Ground, Means
    from studio_planner.planning.placing.pins import Pins
    from studio_planner.planning.problem import Chain

__all__ = ["ChainSearch", "Dead", "Look"]

_ENDS_TRIED = 30
_STRETCHES_ENTERED = 5
_HOUR = 3600
_STEPS_BACK = (0, _HOUR // 2, _HOUR, 2 * _HOUR, 4 * _HOUR, 8 * _HOUR, 16 * _HOUR, 32 * _HOUR)
_WISHES_TRIED = 3
_TRIES = 200
"""How often an earlier start than the latest is tried in one search."""


@dataclass(frozen=True, slots=True)
class Dead:
    """Where a chain found no start: the position of the coat."""

    index: int
    each_alone: bool = False
    """Every coat has starts of its own, but no choice of them serves all joints."""


class ChainSearch:
    """One chain, one ground, one set of allowed joints."""

    def __init__(  # noqa: PLR0913 - each is one plain question
        self,
        means: Means,
        chain: Chain,
        ground: Ground,
        allow: Allow,
        look: Look,
        *,
        pins: Pins = UNPINNED,
    ) -> None:
        """Prepare; `look` says how far and how closely is looked, `pins` what has to stay."""
        self._means = means
        self._chain = chain
        self._pins = pins
        grounds = pins.grounds or standing(chain, ground)
        self.times = ChainTimes(means, chain, grounds, allow, pins.sandings)
        self._forward = FeasibleStarts(means, chain, grounds, self.times, look=look, pins=pins)
        self._tries = _TRIES

    @property
    def starts(self) -> list[Stretches]:
        """The feasible starts of each coat, as far as the search has come."""
        return self._forward.starts

    @property
    def truncated(self) -> bool:
        """Whether there are more feasible starts than were looked at."""
        return self._forward.truncated

    def solve(
        self, known: Sequence[Stretches] = ()
    ) -> tuple[list[int], list[PlacedJoint]] | Dead:
        """Starts (seconds) and joints of all coats, or the coat that found no start.

        `known` are the feasible starts of the first coats, from a search that asked the same
        of them.
        """
        forward = self._forward
        forward.starts += known
        for index in range(len(known), len(self._chain.tasks)):
            ranges = forward.ranges(index)
            stretches = forward.within(index, ranges)
            if not stretches:
                return Dead(index)
            forward.starts.append(stretches)
        for target in self._targets():
            found = self._walk_back(target)
            if found is not None:
                return found
        return Dead(len(self._chain.tasks) - 1, each_alone=True)

    def _targets(self) -> Iterator[int]:
        """Ends to try: the earliest of each stretch, then further into the first ones.

        Before them what is nearest to the start that is wished for.
        """
        stretches = self.starts[-1][:_ENDS_TRIED]
        wish = self._pins.wishes.get(len(self.starts) - 1)
        if wish is not None:
            near = [min(max(wish, first), last) for first, last in stretches]
            yield from sorted(near, key=lambda start: abs(start - wish))[:_WISHES_TRIED]
        yield from (first for first, _ in stretches)
        for first, last in stretches[:_STRETCHES_ENTERED]:
            yield from range(first + GRID, min(last, first + _HOUR) + 1, GRID)
            yield from range(first + 2 * _HOUR, min(last, first + 24 * _HOUR) + 1, _HOUR)

    def _walk_back(self, target: int) -> tuple[list[int], list[PlacedJoint]] | None:
        tasks = self._chain.tasks
        starts = [0] * len(tasks)
        starts[-1] = target
        if not self._choose(len(tasks) - 2, starts):
            return None
        joints = []
        for index in range(len(tasks)):
            joint = self.times.joint(index, starts)
            if joint is None or not self.times.steps_fit(index, starts):
                return None
            joints.append(joint)
        return starts, joints

    def _choose(self, index: int, starts: list[int]) -> bool:
        """Choose starts for a coat and all before it: the latest that serve, or earlier."""
        if index < 0:
            return True
        limit = self._limit(index, starts)
        tried: set[int] = set()
        for back, until in self._untils(index, limit):
            start = latest_until(self.starts[index], until)
            if start is None or self._tries < 0:
                return False
            if start in tried:
                continue
            tried.add(start)
            self._tries -= bool(back)
            starts[index] = start
            # The latest start serves by its making; an earlier one may miss the close.
            if (not back or self._serves(index, starts)) and self._choose(index - 1, starts):
                return True
        return False

    def _untils(self, index: int, limit: int) -> Iterator[tuple[int, int]]:
        """Until when a coat is tried to start, and how much before its limit that is."""
        wish = self._pins.wishes.get(index)
        if wish is not None and self.starts[index][0][0] <= wish < limit:
            yield limit - wish, wish
        yield from ((back, limit - back) for back in _STEPS_BACK)

    def _serves(self, index: int, starts: list[int]) -> bool:
        """Tell whether the coats on this one still meet it in a joint that is allowed."""
        later = [i for i, task in enumerate(self._chain.tasks) if task.below == index]
        return all(self.times.joint(i, starts) is not None for i in later)

    def _limit(self, index: int, starts: list[int]) -> int:
        """No start of a coat after this one serves what is already chosen above it."""
        tasks = self._chain.tasks
        task = tasks[index]
        if task.fixed is not None:
            return self.starts[index][0][0]
        following = tasks[index + 1]
        limit = starts[index + 1] - following.lead - task.block
        for later in range(index + 1, len(tasks)):
            if index in tasks[later].rests_on or (
                later == index + 1 and self._forward.moved(later)
            ):
                handle = self._means.edges.handle(task.product, self.times.place(index))
                latest = handle.latest(starts[later] - tasks[later].lead)
                limit = min(limit, -1 if latest is None else latest - task.block)
            if tasks[later].below == index:
                limit = min(limit, self._joint_limit(index, later, starts[later]))
            elif self.times.scuffs(tasks[later]) and (tasks[later].below or 0) < index:
                limit = min(limit, self._cover_limit(index, later, starts[later]))
        return limit

    def _joint_limit(self, index: int, later: int, upper: int) -> int:
        """The latest start of a coat that still lets the coat on it start at `upper`."""
        above = self._chain.tasks[later]
        for edge in (None, Edge.LIKELY) if self.times.tests(above) else (None,):
            limit = self._opening_limit(index, later, upper, edge)
            start = latest_until(self.starts[index], limit)
            if start is None or not above.has_window:
                continue
            if self.times.closes(later, start, edge) >= upper + above.block:
                return limit
        return self._scuff_limit(index, later, upper)

    def _opening_limit(self, index: int, later: int, upper: int, edge: Edge | None) -> int:
        task, above = self._chain.tasks[index], self._chain.tasks[later]
        if above.sheet_opens is None:
            return upper - task.block
        clock = self._means.edges.not_before(
            task.product, self.times.place(index), above.sheet_opens, edge or Edge.LATE
        )
        latest = None if clock is None else clock.latest(upper)
        return -1 if latest is None else latest - task.block

    def _scuff_limit(self, index: int, later: int, upper: int) -> int:
        """The latest start of a coat that leaves time to sand it before the one at `upper`."""
        task = self._chain.tasks[index]
        sanding = self._latest_sanding(index, later, upper)
        clock = self._means.edges.not_before(
            task.product, self.times.place(index), Stage.SANDABLE
        )
        latest = None if sanding is None or clock is None else clock.latest(sanding)
        return -1 if latest is None else latest - task.block

    def _latest_sanding(self, index: int, later: int, upper: int) -> int | None:
        if not self.times.scuffs(self._chain.tasks[later]):
            return None
        first = self.starts[index][0][0]
        until = upper - self.times.settling(later)
        return self._means.shop.latest_sanding(first, until, self.times.sand_length(later))

    def _cover_limit(self, index: int, later: int, upper: int) -> int:
        """The latest start of a coat in between that is covered while another is sanded."""
        sanding = self._latest_sanding(index, later, upper)
        return -1 if sanding is None else self.times.covered_by(index, sanding)
