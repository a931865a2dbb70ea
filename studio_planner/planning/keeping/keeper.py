"""A round that keeps a plan: what still keeps every rule stays, and only what must move moves.

Chains whose pours all hold are put back where they were, in the order of their old starts. Of
the others as many pours stay as can: those that find no start are given up to half an hour
first, then any time, as near to the old one as serves. New chains come last. Mixes that chains
share stay as a whole or fall apart into mixes of their own.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.keeping.kept_grounds import kept_grounds, other_grounds
from studio_planner.planning.keeping.packing import Packing
from studio_planner.planning.keeping.shared_mixes import labels_of, with_shared_blocks
from studio_planner.planning.keeping.stays import stays
from studio_planner.planning.placing.chain_search import ChainSearch, Dead, Look
from studio_planner.planning.placing.pins import Pins
from studio_planner.planning.placing.placements import Laid, Placement
from studio_planner.planning.placing.placer import Stuck
from studio_planner.planning.worth import MOVED_SECONDS, moved_pours

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Mapping, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.keeping.kept_plan import KeptPlan
    from studio_planner.planning.keeping.shared_mixes import SharedMix
    from studio_planner.planning.keeping.stays import Taken
    from studio_planner.planning.placing.chain_times import Allow, Ground, PlacedJoint
    from studio_planner.planning.placing.placer import Placer
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.spans import Stretch, Stretches

_LOOK = Look(24)
_LOOSE = (0, MOVED_SECONDS, 5 * 86_400)
"""Seconds that a pour may start before or after its old start, step by step.

What finds no place within the last is placed as if it were new.
"""

Fitness = tuple[float, int, int, int, float, int]
"""Weighted hours late, scuffed, tested, pours moved, spare lacking, seconds moved in all."""


class Keeper:
    """Puts the chains of a kept plan back into a workshop, one by one."""

    def __init__(
        self,
        studio: Studio,
        kept: KeptPlan,
        placer: Placer,
        mixes: Sequence[SharedMix] = (),
    ) -> None:
        """Work with a placer on a workshop that holds nothing but what is poured.

        `mixes` are those that have to stay whole.
        """
        self._kept = kept
        self._placer = placer
        self.packing = Packing(kept, placer)
        self._mixes = mixes
        self._poured_by: dict[str, str] = {}
        self._sanding = studio.settings.sand_minutes * 60

    def held(self, chain: Chain) -> Placement | int:
        """A chain with all pours where they were, not packed yet; else which pour can't be."""
        shaped = with_shared_blocks(chain, self._mixes)
        starts, grounds = self._kept.starts_in(chain), kept_grounds(self._kept, chain)
        there = starts.keys() & self._kept.grounds(chain).keys()
        if not there:
            return chain.first
        for index in range(chain.first, len(chain.tasks)):
            if index not in there:
                return index
        pins = self._pins(shaped, grounds, dict.fromkeys(starts, 0))
        found = self._search(shaped, self._kept.allow(chain), pins).solve()
        if isinstance(found, Dead):
            return found.index
        placement = self._manned(_laid(shaped, grounds, found, self._mixes))
        if isinstance(placement, Placement) and self._worse_joints(placement):
            return chain.first
        return placement

    def book(self, placement: Placement) -> None:
        """Take what a placement needs, and remember who pours the mixes that it shares."""
        self._placer.finisher.book(placement)
        for index, person in enumerate(placement.people):
            label = placement.laid.mix(index)
            if label:
                self._poured_by[label] = person

    def again(self, chain: Chain) -> Placement | Stuck:
        """A chain where it was, packed; else with as few moves as can be."""
        held = self.held(chain)
        packed = self.packing.packed(held) if isinstance(held, Placement) else None
        if packed is not None and self.good(packed):
            return packed
        return self.moved(chain)

    def aside(self, chain: Chain) -> Placement | None:
        """A chain with all its old starts on other spots; None when there are none."""
        shaped, allow = with_shared_blocks(chain, self._mixes), self._kept.allow(chain)
        old = kept_grounds(self._kept, chain)
        tries = (
            self._at(shaped, grounds, allow)
            for grounds in other_grounds(self._kept, self._placer, chain, old)
        )
        return next((one for one in tries if one is not None and self.good(one)), None)

    def taken(self, placement: Placement) -> list[Taken]:
        """The hands and spots that a placement takes: whose or which, from when until when."""
        laid = placement.laid
        found = stays(self._placer.finisher, laid)
        for index in range(laid.chain.first, len(laid.starts)):
            task, start = laid.chain.tasks[index], laid.starts[index]
            found.append((placement.people[index], start - task.lead, start + task.block))
            sand, sander = laid.joints[index].sand, placement.sanders[index]
            if sand is not None and sander is not None:
                found.append((sander, *sand))
        return found

    def moved(self, chain: Chain) -> Placement | Stuck:
        """A chain with as many pours as can where they were."""
        found: list[Placement] = []
        stuck: list[Stuck] = []
        for attempt in self._attempts(chain):
            if isinstance(attempt, Stuck):
                stuck.append(attempt)
            elif attempt is not None:
                found.append(attempt)
                if self.good(attempt):
                    return attempt
        if found:
            return min(found, key=self.fitness)
        return stuck[0] if stuck else Stuck(chain, None, None)

    def _attempts(self, chain: Chain) -> Iterator[Placement | Stuck | None]:
        """Tries in turn; each is made only when none of those before was good."""
        shaped = with_shared_blocks(chain, self._mixes)
        allow = self._kept.allow(chain)
        old = kept_grounds(self._kept, chain)
        others = list(other_grounds(self._kept, self._placer, chain, old))
        for grounds in others:
            yield self._at(shaped, grounds, allow)
        for grounds in (old, *others[:1]) if old else ():
            yield self._loosened(shaped, grounds, allow)
        for more in self._placer.more_joints(chain) if old else ():
            yield self._loosened(shaped, old, more)
        if shaped is chain:
            yield self._placer.place(chain)

    def good(self, placement: Placement) -> bool:
        """Tell whether nothing but pours that move was lost."""
        late = self._kept.late(placement.chain.order)
        return placement.score[0] <= late and not self._worse_joints(placement)

    def _worse_joints(self, placement: Placement) -> bool:
        return placement.score[1:3] > self._kept.joints(placement.chain)

    def fitness(self, placement: Placement) -> Fitness:
        """What a placement is worth beside others of the same chain."""
        old = self._kept.starts_in(placement.chain)
        late, scuffed, tested, spare, _ = placement.score
        moved = moved_pours(placement, self._kept.starts)
        seconds = sum(abs(placement.starts[i] - start) for i, start in old.items())
        return (late, scuffed, tested, moved, spare, seconds)

    def _at(self, chain: Chain, grounds: tuple[Ground, ...], allow: Allow) -> Placement | None:
        """A chain with all its old starts, on other spots."""
        starts = self._kept.starts_in(chain)
        pins = self._pins(chain, grounds, dict.fromkeys(starts, 0))
        found = self._search(chain, allow, pins).solve()
        return None if isinstance(found, Dead) else self._whole(chain, grounds, found)

    def _loosened(
        self, chain: Chain, grounds: tuple[Ground, ...], allow: Allow
    ) -> Placement | None:
        """A chain of which one pour after the other is let go until it finds a place."""
        loose = dict.fromkeys(self._kept.starts_in(chain), 0)
        pins = self._pins(chain, grounds, loose)
        known: list[Stretches] = []
        while True:
            search = self._search(chain, allow, pins)
            found = search.solve(known)
            if not isinstance(found, Dead):
                return self._whole(chain, grounds, found)
            index = self._next_loosened(found, loose)
            if index is None:
                return None
            loose[index] += 1
            stiffer, pins = pins, self._pins(chain, grounds, loose)
            known = search.starts[: _alike(stiffer, pins)]

    def _next_loosened(self, dead: Dead, loose: Mapping[int, int]) -> int | None:
        """The pour to let go: the one that found no start, or the nearest before it."""
        free = len(_LOOSE) - 1
        if dead.each_alone:
            stiff = [index for index in loose if loose[index] < free]
            return min(stiff, key=lambda index: (loose[index], -index), default=None)
        for index in range(dead.index, -1, -1):
            if loose.get(index, free) < free:
                return index
        return None

    def _pins(
        self, chain: Chain, grounds: tuple[Ground, ...], loose: Mapping[int, int]
    ) -> Pins:
        starts = self._kept.starts_in(chain)
        labels = labels_of(chain, self._mixes)
        ranges: dict[int, Stretch] = {}
        until = self._placer.means.until
        for index, start in sorted(starts.items(), reverse=True):
            # What shares a mix moves with the others or not at all.
            tied = bool(labels and labels[index])
            seconds = 0 if tied else _LOOSE[loose[index]]
            until = min(until, start + seconds)
            ranges[index] = (start - seconds, until)
        count = sum(piece.count for piece in chain.pieces)
        return Pins(
            grounds=grounds,
            ranges=ranges,
            wishes={i: start for i, start in starts.items() if loose[i]},
            sandings=self._kept.sandings(chain, self._sanding * count),
            shared=frozenset(i for i, label in enumerate(labels) if label in self._poured_by),
        )

    def _search(self, chain: Chain, allow: Allow, pins: Pins) -> ChainSearch:
        means = self._placer.means
        return ChainSearch(means, chain, pins.grounds[-1], allow, _LOOK, pins=pins)

    def _whole(
        self,
        chain: Chain,
        grounds: tuple[Ground, ...],
        found: tuple[list[int], list[PlacedJoint]],
    ) -> Placement | None:
        manned = self._manned(_laid(chain, grounds, found, self._mixes))
        return self.packing.packed(manned) if isinstance(manned, Placement) else None

    def _manned(self, laid: Laid) -> Placement | int:
        """A laid chain with people, as before where they can; or which pour has none."""
        people = []
        for index, task in enumerate(laid.chain.tasks):
            person = "" if task.fixed is not None else self._person(laid, index)
            if person is None:
                return index
            people.append(person)
        sanders = tuple(self._sander(laid, index) for index in range(len(laid.starts)))
        score = self._placer.finisher.score(laid, ())
        return Placement(laid, tuple(people), sanders, (), score)

    def _person(self, laid: Laid, index: int) -> str | None:
        task, start = laid.chain.tasks[index], laid.starts[index]
        pours = self._poured_by.get(laid.mix(index))
        if pours is not None:
            # The block is booked already; what is left is to turn the piece before it.
            free = self._placer.means.shop.hands[pours].holds(start - task.lead, start)
            return pours if free or not task.lead else None
        row = self._kept.coat(laid.chain, index)
        wanted = None if row is None else row.person
        return self._who(wanted, start - task.lead, start + task.block)

    def _sander(self, laid: Laid, index: int) -> str | None:
        sand = laid.joints[index].sand
        if sand is None:
            return None
        return self._who(self._kept.sander(laid.chain, index), *sand)

    def _who(self, wanted: str | None, start: int, end: int) -> str | None:
        shop = self._placer.means.shop
        if wanted in shop.hands and shop.hands[wanted].holds(start, end):
            return wanted
        return shop.somebody(start, end)


def _alike(one: Pins, other: Pins) -> int:
    """How many coats from the first on may start at the same times by both."""
    ranges = (one.ranges.get(i) == other.ranges.get(i) for i in range(len(one.grounds)))
    return next((i for i, alike in enumerate(ranges) if not alike), len(one.grounds))


def _laid(
    chain: Chain,
    grounds: tuple[Ground, ...],
    found: tuple[Sequence[int], Sequence[PlacedJoint]],
    mixes: Iterable[SharedMix],
) -> Laid:
    starts, joints = found
    return Laid(chain, grounds, tuple(starts), tuple(joints), labels_of(chain, mixes))
