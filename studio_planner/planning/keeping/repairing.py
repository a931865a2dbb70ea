"""Repairs a round that keeps a plan where an order fares worse than it has to, with few moves.

The chains of one late order are let go together with those that are in their way; all others
stay where they are. The late ones are placed first, then the others as near to their old starts
as they fit. What is better in the goals' order is taken, and the next late order is tried.
"""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.planning.keeping.keeper import Keeper
from studio_planner.planning.keeping.shared_mixes import labels_of
from studio_planner.planning.keeping.stays import clash
from studio_planner.planning.keeping.stepping_aside import SteppingAside
from studio_planner.planning.placing.placements import Placement

if TYPE_CHECKING:
    from collections.abc import Callable, Collection, Iterable, Iterator, Mapping, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.keeping.shared_mixes import SharedMix
    from studio_planner.planning.keeping.stays import Taken
    from studio_planner.planning.placing.placer import Placer, Stuck
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.worth import Worth

_WORK = 40
"""Chains placed again at the most; not seconds: the same studio always gets the same plan."""

_BOOKED_FOR_ONE = 20
"""How many chains are booked where they are in the time that it takes to place one."""

_DEPTH = 2


@dataclass(frozen=True, slots=True)
class Kept:
    """A round that keeps a plan: what is placed, what is stuck, and the mixes still shared.

    `freed` are the chains that were placed again for it.
    """

    placed: tuple[Placement, ...]
    stuck: tuple[Stuck, ...]
    mixes: tuple[SharedMix, ...]
    freed: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Aim:
    """What a repair has to reach: the worth of a plan made anew, but with fewer pours moved.

    `late` are the weighted hours by which each order may be late.
    """

    worth: Worth
    late: Mapping[str, float]

    def missed(self, found: Kept, tried: Collection[str]) -> bool:
        """Tell whether the orders tried in vain are by themselves worse than the aim."""
        late: dict[str, float] = {}
        for one in found.placed:
            key = _order(one.chain)
            if key in tried:
                late[key] = max(late.get(key, 0.0), one.score[0])
        left_out = sum(
            len(one.chain.pieces) for one in found.stuck if _order(one.chain) in tried
        )
        lost = left_out, round(sum(late.values()), 6)
        return lost > (self.worth.left_out, self.worth.late)


class Repair:
    """Frees late orders one after another as long as that makes a round better."""

    def __init__(
        self,
        studio: Studio,
        kept: KeptPlan,
        fresh: Callable[[], Placer],
        worth: Callable[[Sequence[Placement], Sequence[Stuck]], Worth],
    ) -> None:
        """Work with fresh placers on a workshop that holds nothing but what is poured."""
        self._studio = studio
        self._kept = kept
        self._fresh = fresh
        self._worth = worth
        self._stepping_aside = SteppingAside(studio, kept, fresh)

    def repaired(self, found: Kept, aim: Aim) -> Kept:
        """A round at least as good, as long as it may still get as good as it aims for."""
        best, worth = found, self._worth(found.placed, found.stuck)
        tried: set[str] = set()
        work = _WORK
        while work > 0 and not aim.missed(best, tried):
            order = self._worst(best, aim, tried)
            if order is None:
                break
            tried.add(order)
            for other in self._tries(best, order, aim):
                work -= 1 + len(other.placed) // _BOOKED_FOR_ONE + len(other.freed)
                now = self._worth(other.placed, other.stuck)
                if now < worth:
                    best, worth = other, now
                    tried.clear()
                    break
                if work <= 0:
                    break
        return best

    def _tries(self, found: Kept, order: str, aim: Aim) -> Iterator[Kept]:
        """An order let go; then once more, with those that gave way to it where they were.

        First, what only stands in its way goes to other spots, and nothing else moves.
        """
        yield from self._on_cleared_spots(found, order, aim)
        gave_way: set[str] = set()
        first: set[str] = set()
        for other in self._let_go(found, order, aim, first):
            gave_way |= other.freed
            yield other
        if gave_way - first:
            yield from self._let_go(found, order, aim, gave_way - first)

    def _let_go(self, found: Kept, order: str, aim: Aim, settled: set[str]) -> Iterator[Kept]:
        """One order let go, then the one that fares worst for it, and so on."""
        done: set[str] = set()
        for _ in range(_DEPTH):
            found = self._without_hindrance(found, order, aim, settled)
            yield found
            done.add(order)
            following = self._worst(found, aim, done)
            if following is None:
                return
            order = following

    def _without_hindrance(self, found: Kept, order: str, aim: Aim, settled: set[str]) -> Kept:
        """The late chains of an order placed first.

        Chains that are `settled` give no way; afterwards nor do these.
        """
        late = self._late_chains(found, order, aim)
        keys = {chain.key for chain in late}
        mixes = tuple(
            mix for mix in found.mixes if not any(key in keys for key, _ in mix.members)
        )
        freed = keys | (self._in_the_way(found, late, keys, settled) - settled)
        freed |= _fellows(freed, found.mixes)
        settled |= keys
        fixed = [one for one in found.placed if one.chain.key not in freed]
        givers = [one.chain for one in found.placed if one.chain.key in freed - keys]
        return self._placed_again(found, fixed, (late, givers), mixes)

    def _late_chains(self, found: Kept, order: str, aim: Aim) -> list[Chain]:
        """The chains of an order that are stuck, or worse than they have to be."""
        return [
            *(one.chain for one in found.stuck if _order(one.chain) == order),
            *(
                one.chain
                for one in found.placed
                if _order(one.chain) == order and any(self._misses(one, aim))
            ),
        ]

    def _on_cleared_spots(self, found: Kept, order: str, aim: Aim) -> Iterator[Kept]:
        """The late chains of an order, one after another, where others leave them a spot."""
        for chain in self._late_chains(found, order, aim):
            if any(labels_of(chain, found.mixes)):
                continue
            others = [one for one in found.placed if one.chain is not chain]
            late = next((one.score[0] for one in found.placed if one.chain is chain), math.inf)
            placed = self._stepping_aside.placed(others, chain, found.mixes, late)
            freed = frozenset({chain.key})
            if placed is not None:
                stuck = tuple(one for one in found.stuck if one.chain is not chain)
                found = Kept(tuple(placed), stuck, found.mixes)
            # What was tried in vain is work too.
            yield replace(found, freed=freed)

    def _misses(self, one: Placement, aim: Aim) -> tuple[float, int]:
        """The weighted hours that a chain is later than wanted, and the joints it has worse."""
        joints = sum(one.score[1:3]) - sum(self._kept.joints(one.chain))
        late = one.score[0] - aim.late.get(_order(one.chain), 0.0)
        return max(0.0, late), max(0, joints)

    def _worst(self, found: Kept, aim: Aim, tried: Collection[str]) -> str | None:
        """The order furthest from what is wanted; one with a stuck piece goes before."""
        misses = {_order(one.chain): (math.inf, 0) for one in found.stuck}
        for one in found.placed:
            key = _order(one.chain)
            miss = self._misses(one, aim)
            misses[key] = max(misses.get(key, miss), miss)
        rows = {key: miss for key, miss in misses.items() if any(miss) and key not in tried}
        return max(rows, key=lambda key: (rows[key], key), default=None)

    def _in_the_way(
        self,
        found: Kept,
        late: Iterable[Chain],
        keys: Collection[str],
        settled: Collection[str],
    ) -> set[str]:
        """Chains that work, or stand, where the late ones would beside settled ones alone."""
        keeper = Keeper(self._studio, self._kept, self._fresh())
        for one in found.placed:
            if one.chain.key in settled and one.chain.key not in keys:
                keeper.book(one)
        takes: list[Taken] = []
        for chain in late:
            alone = keeper.again(chain)
            if isinstance(alone, Placement):
                keeper.book(alone)
                takes += keeper.taken(alone)
        return {
            one.chain.key
            for one in found.placed
            if one.chain.key not in keys and clash(keeper.taken(one), takes)
        }

    def _placed_again(
        self,
        found: Kept,
        fixed: Iterable[Placement],
        freed: tuple[Sequence[Chain], Sequence[Chain]],
        mixes: tuple[SharedMix, ...],
    ) -> Kept:
        keeper = Keeper(self._studio, self._kept, self._fresh(), mixes)
        placed = list(fixed)
        for one in placed:
            keeper.book(one)
        stuck = [one for one in found.stuck if one.chain not in freed[0]]
        late, givers = freed
        for chain in (*late, *sorted(givers, key=self._begins)):
            again = keeper.again(chain)
            if isinstance(again, Placement):
                keeper.book(again)
                placed.append(again)
            else:
                stuck.append(again)
                if any(labels_of(chain, mixes)):
                    # Half a mix is none: this try is over.
                    return found
        keys = frozenset(chain.key for chain in (*late, *givers))
        return Kept(tuple(placed), tuple(stuck), mixes, keys)

    def _begins(self, chain: Chain) -> tuple[bool, int]:
        starts = self._kept.starts_in(chain)
        return (not starts, min(starts.values(), default=0))


def _fellows(keys: Collection[str], mixes: Iterable[SharedMix]) -> set[str]:
    """Chains that share mixes with others, and those that share with them."""
    groups = [{key for key, _ in mix.members} for mix in mixes]
    found = set(keys)
    while True:
        more = {key for group in groups if group & found for key in group} - found
        if not more:
            return found - set(keys)
        found |= more


def _order(chain: Chain) -> str:
    """What a chain belongs to: its order, or else itself."""
    return chain.key if chain.order is None else chain.order.key
