"""The ways in which a chain could go through the days if it were alone in the workshop."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.planning.placing.chain_search import ChainSearch, Dead, Look
from studio_planner.planning.placing.chain_times import Allow, Ground, standing
from studio_planner.planning.placing.pins import Pins
from studio_planner.planning.placing.placements import Laid

if TYPE_CHECKING:
    from collections.abc import Callable, Iterator, Mapping

    from studio_planner.planning.exact.working_days import WorkingDays
    from studio_planner.planning.placing.placements import Placement, Score
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain, Task

_LOOK = Look(60)

_SECOND, _LAST = 3, 5
"""In how many of the days with hands that follow the second new coat is tried, from the day of
the first on; and the last one, from the day after. With the last three days alone a studio of
sixty pieces was foreseen 253 hours late, with these 229, and with all that go 229 too."""


@dataclass(frozen=True, slots=True)
class Way:
    """A chain as it would be alone, and the quarters of days in which it stands on a spot."""

    placed: Placement
    stands: range


@dataclass(frozen=True, slots=True)
class Blocks:
    """How long a coat's block is thought to be, in seconds.

    `lasting` as others are poured from its mix too; `paid` what it takes of hands by itself.
    """

    lasting: Callable[[Task], int]
    paid: Callable[[Task], int]


class Ways:
    """Finds the ways of chains in a workshop that holds nothing but what is poured."""

    def __init__(self, placer: Placer, days: WorkingDays) -> None:
        """Look with a placer."""
        self._placer = placer
        self._days = days

    def of(
        self, chain: Chain, until: int, *, lasting: Callable[[Task], int] | None = None
    ) -> list[Way]:
        """The ways of a chain that begin until an instant, each on other days.

        With safe joints only; of several on the same days the one that is worth most. They are
        those of a chain with `lasting` blocks, where that is said.
        """
        grounds = [grounds[0] for grounds in self._placer.grounds(chain)]
        if lasting is None:
            return [way for ground in grounds for way in self._on(chain, ground, until)]
        longer = replace(chain, tasks=tuple(replace(t, block=lasting(t)) for t in chain.tasks))
        found = (way for ground in grounds for way in self._on(longer, ground, until))
        return [_of(chain, way) for way in found]

    def _on(self, chain: Chain, ground: Ground, until: int) -> list[Way]:
        best: dict[tuple[int, ...], Placement] = {}
        spans: set[tuple[int, int]] = set()
        of, last = self._days.of, len(chain.tasks) - 1
        for days in self._days_tried(chain, until):
            if last in days and (min(days.values()), days[last]) in spans:
                # Ways that begin and end on these days are known: another one is rarely better.
                continue
            found = self._alone(chain, ground, days)
            if found is not None:
                key = tuple(of(start) for start in found.starts)
                spans.add((key[min(chain.first, last)], key[-1]))
                known = best.get(key)
                best[key] = found if known is None else min(known, found, key=_score)
        return [self.way(placed) for placed in best.values()]

    def way(self, placed: Placement) -> Way:
        """A placement as a way, wherever it is from."""
        chain, days = placed.chain, self._days
        begins = self._placer.means.now if chain.first else placed.starts[0]
        left = self._placer.finisher.left(placed.laid, len(placed.starts) - 1)
        return Way(placed, range(days.quarter(begins), days.quarter(left) + 1))

    def _days_tried(self, chain: Chain, until: int) -> Iterator[Mapping[int, int]]:
        """The days of some new coats; those of the others follow from them."""
        first, last = chain.first, len(chain.tasks) - 1
        numbers = self._days.numbers(until)
        if first > last:
            yield {}
        for at, day in enumerate(numbers if first <= last else ()):
            if first == last:
                yield {first: day}
                continue
            yield from ({first: day, first + 1: later} for later in numbers[at : at + _SECOND])
            if last > first + 1:
                following = numbers[at + 1 : at + 1 + _LAST]
                yield from ({first: day, last: later} for later in following)

    def _alone(self, chain: Chain, ground: Ground, days: Mapping[int, int]) -> Placement | None:
        """It as if it needed no spot, and then on one of the place: which, is left open.

        But a begun piece may be coated where it lies before it can be handled.
        """
        ranges = {index: self._days.starts(day) for index, day in days.items()}
        alone = ground if chain.first else Ground(ground.place, ())
        search = ChainSearch(
            self._placer.means, chain, alone, Allow(), _LOOK, pins=Pins(ranges=ranges)
        )
        found = search.solve()
        if isinstance(found, Dead):
            return None
        starts, joints = found
        laid = Laid(chain, standing(chain, alone), tuple(starts), tuple(joints))
        placed = self._placer.finisher.finished(laid)
        return None if placed is None else placed.on(ground)


def _score(placed: Placement) -> Score:
    return placed.score


def _of(chain: Chain, way: Way) -> Way:
    """A way that was found for longer blocks, as one of the chain itself."""
    laid = replace(way.placed.laid, chain=chain)
    return replace(way, placed=replace(way.placed, laid=laid))
