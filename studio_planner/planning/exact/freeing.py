"""Which part of a plan to free: whole orders, around one that could be better.

What is in the way of a piece is found in three ways: orders whose pours are near in time, all
that is poured on the same days, and what stands on the same spots before and after.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal, Trust
from studio_planner.planning.worth import moved_pours

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence
    from random import Random

    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.part import Standing
    from studio_planner.planning.worth import Starts

_DAY = 86_400


class Freeing:
    """Draws parts to be freed from a seeded generator."""

    def __init__(self, random: Random, before: Starts) -> None:
        """Draw from a generator; `before` are the starts that should not be moved."""
        self._random = random
        self._before = before

    def part(
        self, standing: Standing, goal: Goal, coats: int, gains: Callable[[Lane], bool]
    ) -> frozenset[int]:
        """Lanes to free for a goal, with about so many new coats.

        `gains` tells whether a lane could come earlier at all.
        """
        focus = self._focus(standing, goal, gains)
        if focus is None:
            return frozenset()
        ways = (self._near_in_time, self._same_days, self._same_spots)
        way = self._same_mix if goal is Goal.MIXES else self._random.choice(ways)
        order = way(standing, focus)
        return _taken(standing, (focus, *order), coats)

    def _focus(
        self, standing: Standing, goal: Goal, gains: Callable[[Lane], bool]
    ) -> int | None:
        lanes = standing.lanes
        wanted = [at for at, lane in enumerate(lanes) if self._lacks(lane, goal)]
        if goal is Goal.LATENESS:
            wanted = [at for at in wanted if gains(lanes[at])]
        return self._random.choice(wanted) if wanted else None

    def _lacks(self, lane: Lane, goal: Goal) -> bool:
        """Whether a lane has anything of a goal that could be less."""
        placed = lane.placed
        if placed is None:
            return goal is Goal.LEFT_OUT
        if not lane.new_coats:
            return False
        joints = placed.laid.joints
        return {
            Goal.LEFT_OUT: False,
            Goal.LATENESS: placed.score[0] > 0,
            Goal.SCUFFED: any(joint.sand is not None for joint in joints),
            Goal.TESTED: any(joint.trust is Trust.TEST_FIRST for joint in joints),
            Goal.MOVED: moved_pours(placed, self._before) > 0,
            Goal.SPARE: placed.score[3] > 0,
        }.get(goal, True)

    def _near_in_time(self, standing: Standing, focus: int) -> list[int]:
        """Lanes whose pours are near to those of the focus, with some luck in the order."""
        mine = _starts(standing.lanes[focus])
        rows = []
        for at, lane in enumerate(standing.lanes):
            starts = _starts(lane)
            if starts and mine:
                near = min(abs(one - other) for one in starts for other in mine)
                rows.append((near + self._random.random() * 2 * _DAY, at))
        return [at for _, at in sorted(rows)] or self._any(standing)

    def _same_days(self, standing: Standing, focus: int) -> list[int]:
        """Lanes that are poured within a day or two of one of the focus's pours."""
        mine = _starts(standing.lanes[focus])
        if not mine:
            return self._any(standing)
        middle = self._random.choice(mine)
        found = [
            at
            for at, lane in enumerate(standing.lanes)
            if any(abs(start - middle) < _DAY for start in _starts(lane))
        ]
        self._random.shuffle(found)
        return found

    def _same_spots(self, standing: Standing, focus: int) -> list[int]:
        """Lanes on the spots of the focus and on another one, the nearest in time first."""
        mine = _starts(standing.lanes[focus])
        spots = _spots(standing.lanes[focus])
        everything = sorted(set().union(*(_spots(lane) for lane in standing.lanes)))
        if not mine or not everything:
            return self._any(standing)
        spots |= {self._random.choice(everything)}
        rows = [
            (min(abs(start - mine[0]) for start in _starts(lane)), at)
            for at, lane in enumerate(standing.lanes)
            if _spots(lane) & spots and _starts(lane)
        ]
        return [at for _, at in sorted(rows)]

    def _same_mix(self, standing: Standing, focus: int) -> list[int]:
        """Lanes with a coat that could share a mix with one of the focus, the nearest first."""
        mine = standing.lanes[focus].pours
        rows = []
        for at, lane in enumerate(standing.lanes):
            near = [
                abs(one - other)
                for kind, one in mine
                for alike, other in lane.pours
                if kind == alike
            ]
            if at != focus and near:
                rows.append((min(near) + self._random.random() * _DAY, at))
        return [at for _, at in sorted(rows)]

    def _any(self, standing: Standing) -> list[int]:
        found = list(range(len(standing.lanes)))
        self._random.shuffle(found)
        return found


def _starts(lane: Lane) -> list[int]:
    return [] if lane.placed is None else list(lane.placed.starts[lane.chain.first :])


def _spots(lane: Lane) -> set[str]:
    if lane.placed is None:
        return set()
    return {spot for ground in lane.placed.laid.grounds for spot in ground.spots}


def _same_order(lanes: Sequence[Lane], at: int) -> set[int]:
    order = lanes[at].chain.order
    if order is None:
        return {at}
    return {other for other, lane in enumerate(lanes) if lane.chain.order is order}


def _taken(standing: Standing, lanes: Iterable[int], most: int) -> frozenset[int]:
    """Whole orders in turn until there are coats enough."""
    taken: set[int] = set()
    coats = 0
    for at in lanes:
        if at in taken:
            continue
        more = _same_order(standing.lanes, at)
        new = sum(standing.lanes[one].new_coats for one in more)
        if taken and coats + new > most:
            continue
        taken |= more
        coats += new
        if coats >= 0.8 * most:
            break
    return frozenset(taken)
