"""Finds a late chain a place beside the work of all others: what stands there goes elsewhere.

Often a chain is late only because no spot is free long enough, though hands are. Then another
one can go to another spot at its very times: to the maker that is no change of the week.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.keeping.keeper import Keeper
from studio_planner.planning.keeping.stays import clash, nowhere, on_each_spot, stays
from studio_planner.planning.placing.placements import Placement

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.keeping.shared_mixes import SharedMix
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain

_WAYS = 4
"""Spots that are tried for one chain, those with the fewest others on them first."""


class SteppingAside:
    """Places chains again among others that give way to them on the spots alone."""

    def __init__(self, studio: Studio, kept: KeptPlan, fresh: Callable[[], Placer]) -> None:
        """Work with fresh placers on a workshop that holds nothing but what is poured."""
        self._studio = studio
        self._kept = kept
        self._fresh = fresh

    def placed(
        self,
        others: Sequence[Placement],
        chain: Chain,
        mixes: Sequence[SharedMix],
        late: float,
    ) -> list[Placement] | None:
        """The others and a chain that shares no mix with them, less than so much `late`.

        All but the chain start when they did. None when no spot can be had.
        """
        placer = self._fresh()
        keeper = self._booked(placer, map(nowhere, others), mixes)
        alone = keeper.again(chain)
        if not isinstance(alone, Placement) or alone.score[0] >= late:
            return None
        theirs = [(one, stays(placer.finisher, one.laid)) for one in others]
        ways = []
        for there in on_each_spot(placer, alone):
            mine = stays(placer.finisher, there.laid)
            ways.append((there, [one for one, takes in theirs if clash(takes, mine)]))
        ways.sort(key=lambda way: len(way[1]))
        for there, hinder in ways[:_WAYS]:
            found = self._given_way(others, there, hinder, mixes)
            if found is not None:
                return found
        return None

    def _given_way(
        self,
        others: Sequence[Placement],
        there: Placement,
        hinder: Sequence[Placement],
        mixes: Sequence[SharedMix],
    ) -> list[Placement] | None:
        """All others with those that hinder a placement on spots that are left by it."""
        found = [one for one in others if all(one is not other for other in hinder)]
        found.append(there)
        keeper = self._booked(self._fresh(), found, mixes)
        for one in sorted(hinder, key=lambda one: one.starts[one.chain.first]):
            aside = keeper.aside(one.chain)
            if aside is None or aside.starts != one.starts:
                return None
            keeper.book(aside)
            found.append(aside)
        return found

    def _booked(
        self, placer: Placer, placed: Iterable[Placement], mixes: Sequence[SharedMix]
    ) -> Keeper:
        keeper = Keeper(self._studio, self._kept, placer, mixes)
        for one in placed:
            keeper.book(one)
        return keeper
