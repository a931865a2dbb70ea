"""Every plan of a tiny studio on the hour, judged by the studio's clocks; the best of all.

Nothing here is shared with the exact model: hours of hands, spots, wet work and sanding are
bits of whole numbers, and the only clocks are those of the craft. What a piece does by itself
is listed first; then all combinations of pieces are gone through.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import UTC, datetime
from itertools import permutations, product
from typing import TYPE_CHECKING

from studio_planner.craft.amounts import coat_grams, portion_room
from tests.planning.exact.hours import HOUR, LAST, Hours, second_of
from tests.planning.exact.tiny_studios import NOW
from tests.planning.exact.ways import Key, Mixing, PieceWays, Way, all_bits, with_bits

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.craft.orders import Order
    from studio_planner.craft.pieces import Coat, Piece
    from studio_planner.craft.studio import Studio
    from tests.planning.exact.tiny_studios import Before

Value = tuple[float, int, int, int, float, int, float]
"""Lateness, scuffed, tested, moved, spare, mixes, ends: as in a plan's worth."""


class EveryPlan:
    """Goes through all plans of a studio."""

    def __init__(self, studio: Studio, before: Before) -> None:
        """Look at one studio; `before` are the starts of a plan that was kept."""
        self._studio = studio
        self._work = (hours := Hours(studio)).work
        self._pieces = PieceWays(hours, before)
        self._promises: dict[tuple[str, int], tuple[float, float]] = {}

    def best(self) -> Value | None:
        """The value of the best plan; None when there is no plan with every piece in it."""
        best: Value | None = None
        for mixing in self._mixings():
            best = self._best_with(mixing, best)
        return best

    # Mixes

    def _mixings(self) -> Iterator[Mixing]:
        new = [
            (at, index)
            for at, piece in enumerate(self._studio.pieces)
            for index in range(len(self._studio.pours_of(piece.key)), len(piece.stack))
        ]
        for groups in _partitions(new):
            if all(self._one_mix(group) for group in groups):
                blocks = {one: self._block(group) for group in groups for one in group}
                yield Mixing(blocks, tuple(tuple(group) for group in groups))

    def _one_mix(self, group: Sequence[Key]) -> bool:
        if len(group) == 1:
            return True
        coats = [self._coat(one) for one in group]
        kinds = {(coat.product, coat.colour_names) for coat in coats}
        apart = len({at for at, _ in group}) == len(group)
        turned = any(self._piece(one).turned_before(one[1]) for one in group)
        mixed = self._studio.product(coats[0].product)
        limit = portion_room(coats[0], mixed, self._studio.settings)
        grams = sum(
            coat_grams(
                self._piece(one),
                self._coat(one),
                mixed,
                self._studio.settings,
            )
            for one in group
        )
        return len(kinds) == 1 and apart and not turned and grams <= limit

    def _block(self, group: Sequence[Key]) -> float:
        coats = [self._coat(one) for one in group]
        setup = max(coat.setup_minutes for coat in coats)
        return (setup + sum(coat.piece_minutes for coat in coats)) / 60

    def _piece(self, one: Key) -> Piece:
        return self._studio.pieces[one[0]]

    def _coat(self, one: Key) -> Coat:
        return self._piece(one).stack[one[1]]

    # All pieces

    def _best_with(self, mixing: Mixing, best: Value | None) -> Value | None:
        nothing = Way(
            hands=(0,) * len(self._studio.people), spots=(0,) * len(self._studio.spots)
        )
        rows = [self._pieces.ways(at, mixing) for at in range(len(self._studio.pieces))]
        if not all(rows):
            return best
        for row in rows:
            row.sort(key=lambda way: (way.ready, way.scuffed, way.tested, way.end))
        return self._together(mixing, rows, (), nothing, best)

    def _together(
        self,
        mixing: Mixing,
        rows: Sequence[Sequence[Way]],
        chosen: tuple[Way, ...],
        taken: Way,
        best: Value | None,
    ) -> Value | None:
        at = len(chosen)
        if at == len(rows):
            return self._packed(mixing, chosen, taken, best)
        rest = [_at_best(row) for row in rows[at + 1 :]]
        for way in rows[at]:
            if _clash(way, taken) or not _one_block(mixing, (*chosen, way)):
                continue
            if best is not None and self._least(mixing, (*chosen, way, *rest)) >= best:
                continue
            both = replace(
                taken,
                hands=all_bits(taken.hands, way.hands),
                spots=all_bits(taken.spots, way.spots),
                wet=taken.wet | way.wet,
                sanding=taken.sanding | way.sanding,
            )
            best = self._together(mixing, rows, (*chosen, way), both, best)
        return best

    def _packed(
        self, mixing: Mixing, ways: Sequence[Way], taken: Way, best: Value | None
    ) -> Value | None:
        """The best packing of ways that go together: in every order, by everybody."""
        orders = [self._studio.order_of(piece.key) for piece in self._studio.pieces]
        ordered = [at for at, order in enumerate(orders) if order is not None]
        for turns in permutations(ordered):
            for people in product(range(len(self._work)), repeat=len(turns)):
                ends = self._pack_ends(ways, taken.hands, list(zip(turns, people, strict=True)))
                if ends is not None:
                    value = self._value(mixing, ways, ends)
                    best = value if best is None else min(best, value)
        return best

    def _least(self, mixing: Mixing, ways: Sequence[Way]) -> Value:
        """What ways are worth at best: each packed as soon as it is ready."""
        return self._value(mixing, ways, {at: way.ready + 1 for at, way in enumerate(ways)})

    def _pack_ends(
        self, ways: Sequence[Way], hands: tuple[int, ...], turns: Sequence[tuple[int, int]]
    ) -> dict[int, int] | None:
        ends = {}
        for at, person in turns:
            free = self._work[person] & ~hands[person]
            begin = next(
                (h for h in range(ways[at].ready, LAST) if free >> h & 1),
                None,
            )
            if begin is None:
                return None
            hands = with_bits(hands, person, 1 << begin)
            ends[at] = begin + 1
        return ends

    def _value(self, mixing: Mixing, ways: Sequence[Way], packed: dict[int, int]) -> Value:
        late = spare = 0.0
        for order in self._studio.orders:
            last = max(
                packed[at]
                for at, piece in enumerate(self._studio.pieces)
                if piece.key in order.pieces
            )
            more, lacking = self._promise(order, last)
            late, spare = late + more, spare + lacking
        begin = int(NOW.timestamp())
        ends = [
            way.end if self._studio.order_of(piece.key) is None else packed[at]
            for at, (way, piece) in enumerate(zip(ways, self._studio.pieces, strict=True))
        ]
        return (
            round(late, 6),
            sum(way.scuffed for way in ways),
            sum(way.tested for way in ways),
            sum(way.moved for way in ways),
            round(spare, 6),
            len(mixing.groups),
            round(sum((second_of(end) - begin) / HOUR for end in ends), 6),
        )

    def _promise(self, order: Order, packed: int) -> tuple[float, float]:
        key = (order.key, packed)
        if key not in self._promises:
            self._promises[key] = self._late_and_spare(order, packed)
        return self._promises[key]

    def _late_and_spare(self, order: Order, packed: int) -> tuple[float, float]:
        zone = self._studio.time_zone
        leaves = order.leaves(zone, datetime.fromtimestamp(second_of(packed), UTC))
        ahead = (order.due(zone) - leaves).total_seconds() / HOUR
        spare = max(0.0, self._studio.settings.spare_hours - max(0.0, ahead))
        return max(0.0, -ahead) * order.weight, spare


def _at_best(ways: Sequence[Way]) -> Way:
    """A way that is as good as the best in everything that counts."""
    return Way(
        scuffed=min(way.scuffed for way in ways),
        tested=min(way.tested for way in ways),
        moved=min(way.moved for way in ways),
        ready=min(way.ready for way in ways),
        end=min(way.end for way in ways),
    )


def _clash(one: Way, other: Way) -> bool:
    return (
        any(a & b for a, b in zip(one.hands, other.hands, strict=True))
        or any(a & b for a, b in zip(one.spots, other.spots, strict=True))
        or bool(one.wet & other.sanding)
        or bool(one.sanding & other.wet)
    )


def _one_block(mixing: Mixing, ways: Sequence[Way]) -> bool:
    """Coats of one mix start together in one pair of hands."""
    for group in mixing.groups:
        there = [(at, index) for at, index in group if at < len(ways)]
        if len({(ways[at].starts[i], ways[at].people[i]) for at, i in there}) > 1:
            return False
    return True


def _partitions(ones: Sequence[Key]) -> Iterator[list[list[Key]]]:
    """All ways to put things into groups."""
    if not ones:
        yield []
        return
    for rest in _partitions(ones[1:]):
        yield [[ones[0]], *rest]
        for at, group in enumerate(rest):
            yield [*rest[:at], [ones[0], *group], *rest[at + 1 :]]
