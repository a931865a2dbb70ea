"""A model in which each chain takes one of its ways, within what hands and spots a day has.

What else of them is in each other's way is left open: so it is soon searched.
"""

from __future__ import annotations

from collections import defaultdict
from typing import TYPE_CHECKING

from studio_planner.planning.solver import Model

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Sequence

    from studio_planner.planning.exact.ways import Way
    from studio_planner.planning.exact.working_days import WorkingDays
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Task
    from studio_planner.planning.solver import Flag, Quantity, Search

_MINUTE = 60

Rows = list[tuple[int, "Flag"]]
"""What each way takes, with the flag that chooses it."""


class RoughModel:
    """Which of its ways each chain takes, and how late all orders are then."""

    def __init__(
        self,
        placer: Placer,
        days: WorkingDays,
        paid: Callable[[Task], int],
        ways: Sequence[Sequence[Way]],
        *,
        stand: bool = False,
    ) -> None:
        """Choose among `ways` of chains; a coat has `paid` so many seconds of hands for itself.

        Where chains `stand` so already, the first way of each is the one that stands: all of
        them together are never too much.
        """
        self.model = Model()
        self.chosen: list[list[Flag]] = [[self.model.flag() for _ in some] for some in ways]
        self._placer, self._days, self._paid = placer, days, paid
        self._ways, self._stand = ways, stand
        for flags in self.chosen:
            self.model.exactly_one(flags)

    def found(self, search: Search) -> list[Way] | None:
        """The way of each chain, as few of what is aimed at as could be; None: none found."""
        answer = self.model.solve(search)
        if not answer.found:
            return None
        return [way for way, flag, _ in self._rows() if answer.of(flag)]

    def limit_hands(self, share: float) -> None:
        """No more hands in a day than that share of them."""
        work: dict[int, Rows] = defaultdict(list)
        stands: dict[int, int] = defaultdict(int)
        for way, flag, first in self._rows():
            for day, seconds in self._work(way.placed).items():
                work[day].append((seconds // _MINUTE, flag))
                stands[day] += first * (seconds // _MINUTE)
        for day, rows in work.items():
            most = round(share * self._days.hands[day]) // _MINUTE
            self._at_most(max(most, stands[day]), rows)

    def _work(self, placed: Placement) -> dict[int, int]:
        """The seconds of hands that a way takes in each day."""
        chain, of = placed.chain, self._days.of
        work: dict[int, int] = defaultdict(int)
        for index in range(chain.first, len(chain.tasks)):
            task = chain.tasks[index]
            work[of(placed.starts[index])] += self._paid(task) + task.lead
        for packed in placed.packed:
            work[of(packed.start)] += packed.end - packed.start
        return work

    def limit_spots(self) -> None:
        """No more pieces in a quarter of a day than there are spots that hold them."""
        fitting = {
            (ways[0].placed.chain.key, grounds[0].place): frozenset(
                spot for ground in grounds for spot in ground.spots
            )
            for ways in self._ways
            for grounds in self._placer.grounds(ways[0].placed.chain)
        }
        for spots in set(fitting.values()):
            there: dict[int, Rows] = defaultdict(list)
            stands: dict[int, int] = defaultdict(int)
            for way, flag, first in self._rows():
                chain, place = way.placed.chain, way.placed.laid.grounds[-1].place
                if fitting.get((chain.key, place), spots) <= spots:
                    pieces = len(chain.pieces)
                    for quarter in way.stands:
                        there[quarter].append((pieces, flag))
                        stands[quarter] += first * pieces
            for quarter, rows in there.items():
                self._at_most(max(len(spots), stands[quarter]), rows)

    def late(self) -> Quantity:
        """The weighted minutes by which orders are late; each is as late as its last chain."""
        orders: dict[str, list[Rows]] = defaultdict(list)
        for ways, flags in zip(self._ways, self.chosen, strict=True):
            order = ways[0].placed.chain.order
            late = [
                (round(60 * way.placed.score[0]), flag)
                for way, flag in zip(ways, flags, strict=True)
                if way.placed.score[0] > 0
            ]
            if order is not None and late:
                orders[order.key].append(late)
        total: Quantity = 0
        for chains in orders.values():
            most = max(minutes for rows in chains for minutes, _ in rows)
            ones = [self.model.weighed(rows) for rows in chains]
            total += self.model.largest(ones, 0, most)
        return total

    def _at_most(self, most: int, rows: Rows) -> None:
        self.model.at_least(most, self.model.weighed(rows))

    def _rows(self) -> Iterator[tuple[Way, Flag, bool]]:
        """Each way with its flag, and whether it is the one that stands."""
        for ways, flags in zip(self._ways, self.chosen, strict=True):
            for at, (way, flag) in enumerate(zip(ways, flags, strict=True)):
                yield way, flag, self._stand and not at
