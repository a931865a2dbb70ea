"""Some chains of a plan are let go and placed again, over and over, until less comes late.

All others stay where they are: a try costs some milliseconds for a studio of a hundred coats,
and many can be made in the time of one search by the solver.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.keeping.keeper import Keeper
from studio_planner.planning.placing.placements import Placement
from studio_planner.planning.worth import UP_TO_LATE, UP_TO_MOVED, lost, moved_pours

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence
    from random import Random

    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.placing.placer import Placer, Stuck
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.rounds import Pass, Rounds

_MOST = 10
"""Chains that are let go beside what is to be better. Mostly few are: that takes less time and
moves less; but some plans get better by many only."""

_LATE_ONE, _ITS_TIME, _IT_FIRST, _BACK = 0.8, 0.6, 0.7, 0.8
"""How often a late one is to be better, and not one that has moved; how often those go that
take the same days, and not any; how often it is placed first, and not in any order; and how
often one that is in time looks for its old place, and not for the soonest."""

_DAY = 86_400


class LettingGo:
    """Makes rounds better by placing a few of their chains anew."""

    def __init__(
        self,
        rounds: Rounds,
        kept: KeptPlan | None,
        random: Random,
        shaped: Callable[[Chain], Chain] | None = None,
        most: int = _MOST,
    ) -> None:
        """Draw from a generator; chains may go back to where a `kept` plan has them.

        Those let go are placed again as they are, or as `shaped`; beside what is to be better
        they are so many at the `most`.
        """
        self._rounds = rounds
        self._shaped = shaped
        self._kept = kept
        self._random = random
        self._most = most

    def less_late(self, begun: Pass, tries: int, wanted: Callable[[], bool]) -> Pass:
        """Try so often from one round on, and take what is no worse; where that ends.

        It ends sooner when it is no longer `wanted`.
        """
        now = begun
        for _ in range(tries):
            lacking = now.stuck or now.worth.late or now.worth.moved
            if not now.placed or not lacking or not wanted():
                break
            found = self._again(now)
            if found.worth[:UP_TO_MOVED] <= now.worth[:UP_TO_MOVED]:
                now = found
        return now

    def _again(self, now: Pass) -> Pass:
        """The round with some of its chains, and those that were stuck, placed anew."""
        queue = [*(one.chain for one in now.stuck), *self._drawn(now)]
        gone = {chain.key for chain in queue}
        if self._random.random() >= _IT_FIRST:
            self._random.shuffle(queue)
        placed = [one for one in now.placed if one.chain.key not in gone]
        placer = self._rounds.placer(placed)
        in_time = {one.chain.key for one in now.placed if not one.score[0]}
        stuck: list[Stuck] = []
        for chain in queue:
            back = chain.key in in_time and self._random.random() < _BACK
            again = chain if self._shaped is None else self._shaped(chain)
            found = self._placed(placer, again, back=back)
            if isinstance(found, Placement):
                placer.finisher.book(found)
                placed.append(found)
            else:
                stuck.append(found)
            if lost(placed, stuck) > now.worth[:UP_TO_LATE]:
                break
        return self._rounds.weighed(placed, stuck)

    def _placed(self, placer: Placer, chain: Chain, *, back: bool) -> Placement | Stuck:
        if back and self._kept is not None and self._kept.starts_in(chain):
            return Keeper(self._rounds.studio, self._kept, placer, ()).moved(chain)
        return placer.place(chain)

    def _drawn(self, now: Pass) -> list[Chain]:
        """What is to be better, and some chains that may be in its way."""
        late = [one for one in now.placed if one.score[0] > 0]
        moved = [one for one in now.placed if self._has_moved(one)]
        of_late = not moved or (late and self._random.random() < _LATE_ONE)
        drawn = self._random.choice((late if of_late else moved) or now.placed)
        bound = _as_late(now.placed, drawn)
        taken = {one.chain.key for one in bound}
        others = [one for one in now.placed if one.chain.key not in taken]
        self._random.shuffle(others)
        if self._random.random() < _ITS_TIME:
            others.sort(key=lambda one: -_beside(one, drawn))
        more = self._random.randint(1, self._random.randint(1, self._most))
        return [one.chain for one in (*bound, *others[:more])]

    def _has_moved(self, one: Placement) -> bool:
        return self._kept is not None and moved_pours(one, self._kept.starts) > 0


def _as_late(placed: Sequence[Placement], drawn: Placement) -> list[Placement]:
    """A chain; a late one with those of its order that are as late: alone it gains nothing."""
    order, late = drawn.chain.order, drawn.score[0]
    alike = (one for one in placed if one.chain.order is order and one.score[0] >= late > 0)
    return [drawn, *(one for one in alike if one is not drawn)]


def _beside(one: Placement, other: Placement) -> int:
    """How many pours of a chain are made in the days of another one, or the day before."""
    first, last = min(other.starts) - _DAY, max(other.starts)
    return sum(first <= start <= last for start in one.starts)
