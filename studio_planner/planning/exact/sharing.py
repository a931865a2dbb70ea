"""Which coats could be poured from one mix, and how long their blocks would be then."""

from __future__ import annotations

import math
from collections import Counter
from dataclasses import dataclass
from itertools import combinations
from typing import TYPE_CHECKING

from studio_planner.planning.problem import coat_mass, mix_room

if TYPE_CHECKING:
    from collections.abc import Iterable, Mapping, Sequence

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.problem import Kind

Coat = tuple[int, int]
"""The position of a lane, and of a coat in it."""

MOST_TOGETHER = 12
"""Lanes that pour from one mix at the most."""

A_GRAIN = 5e-7
"""Grams by which a mix may be too heavy: weighing no scales could do."""

_MOST_LENGTHS = 80
"""Lengths that a block may have; where there would be more, fewer lanes pour from one mix."""


@dataclass(frozen=True, slots=True)
class Portion:
    """A coat as a part of a mix: its grams, and seconds of set-up, by its pieces, and alone."""

    coat: Coat
    kind: Kind
    grams: float
    limit: float
    setup: int
    own: int
    alone: int


class Sharing:
    """The pairs of coats that may share a mix: the first leads, and its block holds both."""

    def __init__(
        self,
        portions: Mapping[Coat, Portion],
        pairs: Iterable[tuple[Coat, Coat]],
        now: Iterable[Sequence[Coat]] = (),
    ) -> None:
        """Keep the pairs, leader first, and who shares a mix now."""
        self.portions = portions
        self.pairs = tuple(pairs)
        self._most_known: dict[Coat, int] = {}
        self._now = {coat: group for group in now for coat in group}
        self._led: dict[Coat, list[Coat]] = {}
        for leader, follower in self.pairs:
            self._led.setdefault(leader, []).append(follower)

    def led_by(self, leader: Coat) -> Sequence[Coat]:
        """The coats that may follow a leader."""
        return self._led.get(leader, [])

    def lengths(self, coat: Coat) -> list[int]:
        """All lengths [s] that a coat's block may have, the one by itself first."""
        alone = self.portions[coat].alone
        found = set(self._leading(coat))
        for leader, follower in self.pairs:
            if follower == coat:
                found |= self._leading(leader)
        return [alone, *sorted(found - {alone})]

    def most_together(self, leader: Coat) -> int:
        """How many coats may follow a leader at once: as many as now do in any case."""
        return max(self._most(leader), len(self._now.get(leader, ())) - 1)

    @property
    def capped(self) -> bool:
        """Whether a mix could be shared by more than is looked at."""
        return any(self._fitting(leader) > self._most(leader) for leader in self._led)

    def _fitting(self, leader: Coat) -> int:
        """How many followers a leader's mix could hold, the lightest first."""
        own = self.portions[leader]
        room = own.limit + A_GRAIN - own.grams
        count = 0
        for grams in sorted(self.portions[one].grams for one in self.led_by(leader)):
            room -= grams
            count += room >= 0
        return count

    def _most(self, leader: Coat) -> int:
        if leader not in self._most_known:
            most = MOST_TOGETHER - 1
            while most > 1 and len(self._sums(leader, most)) > _MOST_LENGTHS:
                most -= 1
            self._most_known[leader] = most
        return self._most_known[leader]

    def _leading(self, leader: Coat) -> set[int]:
        alone = self.portions[leader].alone
        sums = self._sums(leader, self._most(leader))
        now = [self.portions[one].own for one in self._now.get(leader, ()) if one != leader]
        return {alone + more for more in (*sums, sum(now)) if more}

    def _sums(self, leader: Coat, most: int) -> set[int]:
        """The seconds that up to so many followers can add to a leader's block."""
        own = self.portions[leader]
        room = own.limit + A_GRAIN - own.grams
        # For each count and sum of seconds the lightest choice of followers.
        lightest = {(0, 0): 0.0}
        for follower in (self.portions[one] for one in self.led_by(leader)):
            for (count, seconds), grams in list(lightest.items()):
                key = count + 1, seconds + follower.own
                more = grams + follower.grams
                if count < most and more <= room and more < lightest.get(key, math.inf):
                    lightest[key] = more
        return {seconds for count, seconds in lightest if count}


def portions_of(studio: Studio, lanes: Sequence[Lane]) -> dict[Coat, Portion]:
    """Every coat of the lanes that is still to be poured, as a part of a mix."""
    found = {}
    for at, lane in enumerate(lanes):
        for index in range(lane.chain.first, len(lane.chain.tasks)):
            task = lane.chain.tasks[index]
            pieces = lane.chain.pieces
            setup = task.coat.setup_minutes * 60
            found[at, index] = Portion(
                coat=(at, index),
                kind=task.kind,
                grams=sum(coat_mass(studio, piece, task.coat) for piece in pieces),
                limit=mix_room(studio, task.coat),
                setup=setup,
                own=task.coat.piece_minutes * 60 * sum(piece.count for piece in pieces),
                alone=task.block,
            )
    return found


def least_mixes(lanes: Sequence[Lane]) -> int:
    """How many mixes any plan makes: one for each coat of a kind that the same piece has."""
    most: dict[Kind, int] = {}
    for lane in lanes:
        new = lane.chain.tasks[lane.chain.first :]
        kinds = Counter(task.kind for task in new)
        most |= {kind: max(count, most.get(kind, 0)) for kind, count in kinds.items()}
    return sum(most.values())


def sharing(
    studio: Studio,
    lanes: Sequence[Lane],
    *,
    all_pairs: bool,
    may_start: Mapping[Coat, tuple[int, int]] | None = None,
) -> Sharing:
    """The pairs that may share: all that fit, or only those that do so in the lanes as placed.

    Coats that a piece is turned for, or that need more than one mix, are poured by themselves;
    and, where it is known when coats `may_start`, so are those that can never start at once.
    """
    portions = portions_of(studio, lanes)
    single = [
        one
        for one in portions.values()
        if one.grams <= one.limit and not lanes[one.coat[0]].chain.tasks[one.coat[1]].lead
    ]
    single.sort(key=lambda one: (-one.setup, one.coat))
    pairs = [
        (one.coat, other.coat)
        for one, other in combinations(single, 2)
        if _fit(one, other)
        and (all_pairs or _share_now(lanes, one.coat, other.coat))
        and (may_start is None or _meet(may_start, one.coat, other.coat))
    ]
    return Sharing(portions, pairs, _groups_now(lanes, single))


def _groups_now(lanes: Sequence[Lane], portions: Iterable[Portion]) -> Iterable[Sequence[Coat]]:
    """The coats that share a mix as the lanes are placed."""
    groups: dict[str, list[Coat]] = {}
    for at, index in (one.coat for one in portions):
        placed = lanes[at].placed
        label = "" if placed is None else placed.laid.mix(index)
        if label:
            groups.setdefault(label, []).append((at, index))
    return groups.values()


def _fit(one: Portion, other: Portion) -> bool:
    return (
        one.kind == other.kind
        and one.coat[0] != other.coat[0]
        and one.grams + other.grams <= one.limit + A_GRAIN
    )


def _meet(may_start: Mapping[Coat, tuple[int, int]], one: Coat, other: Coat) -> bool:
    """Whether both are known and there are slots in which both may start."""
    mine, theirs = may_start.get(one), may_start.get(other)
    if mine is None or theirs is None:
        return False
    return max(mine[0], theirs[0]) <= min(mine[1], theirs[1])


def _share_now(lanes: Sequence[Lane], one: Coat, other: Coat) -> bool:
    mine, theirs = lanes[one[0]].placed, lanes[other[0]].placed
    if mine is None or theirs is None:
        return False
    label = mine.laid.mix(one[1])
    return bool(label) and label == theirs.laid.mix(other[1])
