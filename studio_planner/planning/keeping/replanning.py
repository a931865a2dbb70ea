"""A whole round from a kept plan: what holds, what has to move, what is new."""

from __future__ import annotations

import math
from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from studio_planner.planning.keeping.keeper import Keeper
from studio_planner.planning.keeping.repairing import Kept
from studio_planner.planning.keeping.shared_mixes import labels_of, shared_mixes
from studio_planner.planning.placing.placements import Placement
from studio_planner.planning.placing.placer import Placer, Stuck

if TYPE_CHECKING:
    from collections.abc import Callable, Iterable, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.keeping.shared_mixes import SharedMix
    from studio_planner.planning.problem import Chain

_MOST_ROUNDS = 6
"""How often mixes may fall apart one after another before all of them do."""


@dataclass(slots=True)
class _Found:
    """What a round has placed so far, what found no place, and which mixes fell apart."""

    placed: list[Placement] = field(default_factory=list)
    stuck: list[Stuck] = field(default_factory=list)
    apart: set[str] = field(default_factory=set)


class KeepingRound:
    """Puts a kept plan back into a fresh workshop as far as it still holds."""

    def __init__(
        self,
        studio: Studio,
        kept: KeptPlan,
        chains: Sequence[Chain],
        fresh: Callable[[], Placer],
        urgency: Callable[[Chain], tuple[bool, bool, float, float]],
    ) -> None:
        """Place `chains`; `fresh` makes a placer on a workshop with only what is poured.

        Chains that the plan does not know come by `urgency`.
        """
        self._studio = studio
        self._kept = kept
        self._fresh = fresh
        self._urgency = urgency
        old = [chain for chain in chains if kept.starts_in(chain)]
        self._old = sorted(old, key=lambda chain: min(kept.starts_in(chain).values()))
        self._new = [chain for chain in chains if not kept.starts_in(chain)]

    def made(self) -> Kept:
        """The placements and what is stuck; mixes are whole, or everybody's own."""
        mixes: Sequence[SharedMix] = shared_mixes(self._studio, self._kept, self._old)
        for _ in range(_MOST_ROUNDS):
            found = self._round(mixes)
            if not found.apart:
                break
            mixes = [mix for mix in mixes if mix.label not in found.apart]
        else:
            mixes = ()
            found = self._round(mixes)
        return Kept(tuple(found.placed), tuple(found.stuck), tuple(mixes))

    def _round(self, mixes: Sequence[SharedMix]) -> _Found:
        placer = self._fresh()
        keeper = Keeper(self._studio, self._kept, placer, mixes)
        found = _Found()
        broken = self._held(keeper, mixes, found)
        if found.apart:
            return found
        self._packed(keeper, placer, found)
        broken.sort(key=lambda row: row[0])
        for _, chain in broken:
            self._add(keeper, keeper.moved(chain), mixes, found)
        for chain in sorted(self._new, key=self._urgency):
            self._add(keeper, placer.place(chain), mixes, found)
        found.placed = [keeper.packing.sooner(one) for one in found.placed]
        return found

    def _held(
        self, keeper: Keeper, mixes: Iterable[SharedMix], found: _Found
    ) -> list[tuple[float, Chain]]:
        """Book every chain that holds; the others with the old starts of what does not."""
        broken: list[tuple[float, Chain]] = []
        for chain in self._old:
            held = keeper.held(chain)
            if isinstance(held, Placement):
                keeper.book(held)
                found.placed.append(held)
            else:
                broken.append((self._kept.starts_in(chain).get(held, math.inf), chain))
                labels = labels_of(chain, mixes)[held:]
                found.apart |= {label for label in labels if label}
        return broken

    def _packed(self, keeper: Keeper, placer: Placer, found: _Found) -> None:
        """Pack what holds: first what can be when it was planned, then the rest."""
        held, found.placed = found.placed, []
        now = placer.means.now
        held.sort(key=lambda one: not keeper.packing.as_planned(one.chain, now))
        for one in held:
            packed = keeper.packing.packed(one)
            if packed is None:
                found.stuck.append(Stuck(one.chain, one.laid.grounds[-1], None, cured=False))
                continue
            for pack in packed.packed:
                placer.means.shop.take_hands(pack.person, pack.start, pack.end)
            found.placed.append(packed)

    def _add(
        self,
        keeper: Keeper,
        one: Placement | Stuck,
        mixes: Iterable[SharedMix],
        found: _Found,
    ) -> None:
        if isinstance(one, Placement):
            keeper.book(one)
            found.placed.append(one)
        else:
            found.stuck.append(one)
            found.apart |= {label for label in labels_of(one.chain, mixes) if label}
