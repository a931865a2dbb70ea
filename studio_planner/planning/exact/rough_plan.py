"""A rough plan: in which days each chain goes through the week, by hands and spots of a day.

Each chain takes one of the ways that it would have alone. Together they need no more hands in a
day than there are, and no more spots in a quarter of one; what else of them is in each other's
way is left open. That is soon searched, and far less late than what is found chain by chain:
which pieces go through which week is settled for all at once.
"""

from __future__ import annotations

import math
from collections import defaultdict
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.planning.exact.ways import Ways
from studio_planner.planning.solver import Model, Search

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence

    from studio_planner.planning.exact.ways import Way
    from studio_planner.planning.exact.working_days import WorkingDays
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain, Task
    from studio_planner.planning.solver import Flag

_MINUTE = 60

_EFFORT, _BY_CHAINS, _SECONDS = 0.0134, 1.5, 5.0
"""The solver's own work, by which power of the number of chains; it is about a second each, and
so many seconds at the most on a machine gone slow. Twenty chains take one second, sixty up to
six."""


@dataclass(frozen=True, slots=True)
class Blocks:
    """How long a coat's block is thought to be, in seconds.

    `lasting` as others are poured from its mix too; `paid` what it takes of hands by itself.
    """

    lasting: Callable[[Task], int]
    paid: Callable[[Task], int]


class RoughPlans:
    """Rough plans of the same chains, with more or fewer hands."""

    def __init__(
        self, placer: Placer, days: WorkingDays, stood: Iterable[Placement], blocks: Blocks
    ) -> None:
        """Look for chains as they `stood`, which do so on where they have no other way."""
        self.days = days
        self._placer = placer
        self._blocks = blocks
        self._stood = list(stood)
        self._ways = self._found()

    def placed(self, share: float, seed: int) -> list[Placement] | None:
        """A way for each chain, as little late as can be; None when that is not found.

        So large a share of all hands is given at the most.
        """
        model = Model()
        chosen = [[model.flag() for _ in ways] for ways in self._ways]
        for flags in chosen:
            model.exactly_one(flags)
        pairs = [
            (way, flag)
            for ways, flags in zip(self._ways, chosen, strict=True)
            for way, flag in zip(ways, flags, strict=True)
        ]
        self._limit_hands(model, pairs, share)
        self._limit_spots(model, pairs)
        self._aim(model, chosen)
        work = _EFFORT * math.pow(len(chosen), _BY_CHAINS)
        search = Search(_SECONDS * work, work, seed=seed, light=True, sums=1)
        answer = model.solve(search)
        if not answer.found:
            return None
        return [way.placed for way, flag in pairs if answer.of(flag)]

    def _found(self) -> list[list[Way]]:
        ways = Ways(self._placer, self.days)
        until = round(max((one.score[4] for one in self._stood), default=0))
        found = []
        for one in self._stood:
            chain = one.chain
            lasting = replace(chain, tasks=_tasks(chain, self._blocks.lasting))
            alone = [_of(chain, way) for way in ways.of(lasting, until)]
            found.append(alone or [ways.way(one)])
        return found

    def _limit_hands(
        self, model: Model, pairs: Iterable[tuple[Way, Flag]], share: float
    ) -> None:
        """No more hands in a day than that share of them."""
        work: dict[int, list[tuple[int, Flag]]] = defaultdict(list)
        for way, flag in pairs:
            for day, seconds in self._work(way.placed).items():
                work[day].append((seconds // _MINUTE, flag))
        for day, rows in work.items():
            most = round(share * self.days.hands[day]) // _MINUTE
            model.at_least(most, model.weighed(rows))

    def _work(self, placed: Placement) -> dict[int, int]:
        """The seconds of hands that a way takes in each day."""
        chain, of = placed.chain, self.days.of
        work: dict[int, int] = defaultdict(int)
        for index in range(chain.first, len(chain.tasks)):
            task = chain.tasks[index]
            work[of(placed.starts[index])] += self._blocks.paid(task) + task.lead
        for packed in placed.packed:
            work[of(packed.start)] += packed.end - packed.start
        return work

    def _limit_spots(self, model: Model, pairs: Sequence[tuple[Way, Flag]]) -> None:
        """No more pieces in a quarter of a day than there are spots that hold them."""
        fitting = {
            (one.chain.key, grounds[0].place): frozenset(
                spot for ground in grounds for spot in ground.spots
            )
            for one in self._stood
            for grounds in self._placer.grounds(one.chain)
        }
        for spots in set(fitting.values()):
            standing: dict[int, list[tuple[int, Flag]]] = defaultdict(list)
            for way, flag in pairs:
                chain = way.placed.chain
                place = way.placed.laid.grounds[-1].place
                if fitting.get((chain.key, place), spots) <= spots:
                    for quarter in way.stands:
                        standing[quarter].append((len(chain.pieces), flag))
            for rows in standing.values():
                model.at_least(len(spots), model.weighed(rows))

    def _aim(self, model: Model, chosen: Sequence[Sequence[Flag]]) -> None:
        """As few weighted minutes late as can be; an order is as late as its last chain."""
        orders: dict[str, list[list[tuple[int, Flag]]]] = defaultdict(list)
        for ways, flags in zip(self._ways, chosen, strict=True):
            order = ways[0].placed.chain.order
            late = [
                (round(60 * way.placed.score[0]), flag)
                for way, flag in zip(ways, flags, strict=True)
                if way.placed.score[0] > 0
            ]
            if order is not None and late:
                orders[order.key].append(late)
        total = []
        for chains in orders.values():
            most = max(minutes for rows in chains for minutes, _ in rows)
            total.append(model.largest([model.weighed(rows) for rows in chains], 0, most))
        model.aim(sum(total))


def _of(chain: Chain, way: Way) -> Way:
    """A way that was found for longer blocks, as one of the chain itself."""
    laid = replace(way.placed.laid, chain=chain)
    return replace(way, placed=replace(way.placed, laid=laid))


def _tasks(chain: Chain, lasting: Callable[[Task], int]) -> tuple[Task, ...]:
    return tuple(replace(task, block=lasting(task)) for task in chain.tasks)
