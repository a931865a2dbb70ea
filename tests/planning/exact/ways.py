"""All that can be done with one piece of a tiny studio, hour by hour."""

from __future__ import annotations

from dataclasses import dataclass, replace
from math import ceil
from typing import TYPE_CHECKING

from studio_planner.craft.pieces import Joint
from studio_planner.science.stages import Edge, Stage
from tests.planning.exact.hours import HOUR, LAST, down, second_of, span, up
from tests.planning.exact.tiny_studios import NOW

if TYPE_CHECKING:
    from collections.abc import Iterator, Sequence

    from studio_planner.craft.pieces import Piece
    from tests.planning.exact.hours import Hours
    from tests.planning.exact.tiny_studios import Before

Key = tuple[int, int]
"""A piece and one of its coats, by position."""


@dataclass(frozen=True, slots=True)
class Mixing:
    """Which coats are poured from one mix: the block [h] of each, and whose hands it takes."""

    blocks: dict[Key, float]
    groups: tuple[tuple[Key, ...], ...]


@dataclass(frozen=True, slots=True)
class Way:
    """One way to do a piece: hours of starts, who pours, and what it takes as bits.

    `hands` by person and `spots` by spot; `ready` is the hour from which it may be packed.
    """

    starts: tuple[int, ...] = ()
    people: tuple[int, ...] = ()
    stands: tuple[int, ...] = ()
    hands: tuple[int, ...] = ()
    spots: tuple[int, ...] = ()
    wet: int = 0
    sanding: int = 0
    scuffed: int = 0
    tested: int = 0
    moved: int = 0
    ready: int = 0
    end: float = 0


def with_bits(bits: tuple[int, ...], at: int, more: int) -> tuple[int, ...]:
    return tuple(one | more if k == at else one for k, one in enumerate(bits))


def all_bits(ones: tuple[int, ...], others: tuple[int, ...]) -> tuple[int, ...]:
    return tuple(one | other for one, other in zip(ones, others, strict=True))


class PieceWays:
    """Lists the ways of single pieces."""

    def __init__(self, hours: Hours, before: Before) -> None:
        """Look at one studio."""
        self._hours = hours
        self._studio = hours.studio
        self._before = before
        self._settle = hours.studio.settings.settle_minutes // 60

    def ways(self, at: int, mixing: Mixing) -> list[Way]:
        piece = self._studio.pieces[at]
        empty = Way(hands=(0,) * len(self._studio.people), spots=(0,) * len(self._studio.spots))
        ways = [empty]
        for pour in self._studio.pours_of(piece.key):
            carried = [one.spot for one in self._studio.log if one.piece == piece.key]
            spot = [one.key for one in self._studio.spots].index([pour.spot, *carried][-1])
            ways = [
                self._wet(
                    piece,
                    replace(
                        way,
                        starts=(*way.starts, down(pour.start.timestamp())),
                        people=(*way.people, -1),
                        stands=(*way.stands, spot),
                    ),
                    1,
                )
                for way in ways
            ]
        poured = len(self._studio.pours_of(piece.key))
        ends = [1] * poured + [mixing.blocks[at, i] for i in range(poured, len(piece.stack))]
        leads = {group[0] for group in mixing.groups}
        for index in range(poured, len(piece.stack)):
            leader = (at, index) in leads
            ways = [
                more
                for way in ways
                for more in self._poured(piece, way, ends, takes_hands=leader)
            ]
        return [done for way in ways if (done := self._done(piece, way, ends)) is not None]

    def _poured(
        self, piece: Piece, way: Way, blocks: Sequence[float], *, takes_hands: bool
    ) -> Iterator[Way]:
        """All ways to pour the next coat."""
        index = len(way.starts)
        lead = 1 if piece.turned_before(index) else 0
        begin = way.starts[-1] + blocks[index - 1] if index else 0
        for person in range(len(self._hours.work)):
            for start, work in self._hours.blocks(person, lead, blocks[index]):
                if start - lead < begin:
                    continue
                if not self._faces(piece, way, blocks, start - lead):
                    continue
                if not self._taped(piece, way, blocks, start - lead):
                    continue
                for joined in self._joined(piece, way, blocks, start):
                    taken = work if takes_hands else 0
                    yield from self._stood(piece, joined, blocks, (start, person, taken))

    def _since(
        self, piece: Piece, way: Way, blocks: Sequence[float], index: int, stage: Stage
    ) -> int:
        """The first full hour at which one of its coats has safely reached a stage."""
        end = second_of(way.starts[index] + blocks[index])
        return self._hours.first_from(piece.stack[index], stage, end)

    def _faces(self, piece: Piece, way: Way, blocks: Sequence[float], turned: int) -> bool:
        return all(
            self._hours.first_from(
                piece.stack[i], Stage.HANDLE, second_of(way.starts[i] + blocks[i])
            )
            <= turned
            for i in piece.rests_on(len(way.starts))
        )

    def _taped(self, piece: Piece, way: Way, blocks: Sequence[float], by: int) -> bool:
        """Tape of the last coat can be pulled before the next block, if it still can at all."""
        index = len(way.starts) - 1
        if index < 0 or not piece.stack[index].taped:
            return True
        hours = list(self._pulls(piece, way, blocks, index))
        late = way.people[index] < 0 and not hours
        return late or any(hour + 1 <= by for hour in hours)

    def _pulls(self, piece: Piece, way: Way, blocks: Sequence[float], index: int) -> list[int]:
        coat, start = piece.stack[index], way.starts[index]
        opens = self._hours.first_from(coat, Stage.TAPE_OPENS, second_of(start + blocks[index]))
        closes = self._hours.reached(coat, Stage.TAPE_CLOSES, Edge.EARLY, second_of(start))
        last = LAST if closes is None else down(closes) - 1
        return list(self._hours.awake(opens, last))

    def _joined(
        self, piece: Piece, way: Way, blocks: Sequence[float], start: int
    ) -> Iterator[Way]:
        """All joints that the next coat may make when it starts so."""
        index = len(way.starts)
        below = piece.below(index)
        if below is None:
            yield way
            return
        lower, coat = piece.stack[below], piece.stack[index]
        wet = coat.joint is Joint.WET_IN_WET
        edges = [(0, Edge.LATE, Edge.EARLY)]
        if not wet and (lower.sandable or lower.test_first):
            edges.append((1, Edge.LIKELY, Edge.LIKELY))
        for tested, opening, closing in edges:
            spread = second_of(way.starts[below] + blocks[below])
            opens = (
                up(spread)
                if wet
                else self._hours.first_from(lower, Stage.RECOAT_OPENS, spread, opening)
            )
            stage = Stage.WORKING_TIME if wet else Stage.RECOAT_CLOSES
            closes = self._hours.reached(lower, stage, closing, second_of(way.starts[below]))
            in_time = closes is None or second_of(start + blocks[index]) <= closes
            if opens <= start and in_time:
                yield replace(way, tested=way.tested + tested)
                break
        if lower.sandable and not wet:
            yield from self._sanded(piece, way, blocks, start)

    def _sanded(
        self, piece: Piece, way: Way, blocks: Sequence[float], start: int
    ) -> Iterator[Way]:
        index = len(way.starts)
        below = piece.below(index) or 0
        turn = 1 if piece.turned_before(index) else 0
        waits = [(below, Stage.SANDABLE)]
        waits += [(other, Stage.HANDLE) for other in piece.rests_on(index)]
        low = max(
            self._hours.first_from(piece.stack[i], stage, second_of(way.starts[i] + blocks[i]))
            for i, stage in waits
        )
        low = max(low, ceil(way.starts[-1] + blocks[index - 1]))
        for sand in range(low, start - 1 - turn - max(self._settle, turn) + 1):
            work = span(sand, sand + 1 + turn)
            dust = span(sand, sand + 1 + turn + self._settle)
            for person, hours in enumerate(self._hours.work):
                if not work & ~hours and not work & way.hands[person] and not dust & way.wet:
                    yield replace(
                        way,
                        hands=with_bits(way.hands, person, work),
                        sanding=way.sanding | dust,
                        scuffed=way.scuffed + 1,
                    )

    def _stood(
        self, piece: Piece, way: Way, blocks: Sequence[float], pour: tuple[int, int, int]
    ) -> Iterator[Way]:
        """All spots that the next coat may stand on."""
        start, person, work = pour
        index = len(way.starts)
        if work & way.hands[person]:
            return
        left = None
        if index:
            last = piece.stack[index - 1]
            end = second_of(way.starts[-1] + blocks[index - 1])
            left = self._hours.first_from(last, Stage.HANDLE, end)
            way = replace(
                way,
                spots=with_bits(
                    way.spots, way.stands[-1], span(way.starts[-1], min(left, start))
                ),
            )
        for stand, spot in enumerate(self._studio.spots):
            moved = left is not None and stand != way.stands[-1]
            if moved and left is not None and start < left:
                continue
            if spot.holds(piece.footprint, piece.body_mm + piece.cover_mm):
                then = self._before.get((piece.key, piece.stack[index].key))
                off = then is not None and abs(second_of(start) - then) > HOUR // 2
                yield from self._not_dusted(
                    self._wet(
                        piece,
                        replace(
                            way,
                            starts=(*way.starts, start),
                            people=(*way.people, person),
                            stands=(*way.stands, stand),
                            hands=with_bits(way.hands, person, work),
                            moved=way.moved + off,
                        ),
                        blocks[index],
                    )
                )

    def _wet(self, piece: Piece, way: Way, block: float) -> Way:
        index = len(way.starts) - 1
        end = way.starts[-1] + block
        covered = max(
            ceil(end), self._hours.first_from(piece.stack[index], Stage.COVER, second_of(end))
        )
        return replace(way, wet=way.wet | span(way.starts[-1], covered))

    def _not_dusted(self, way: Way) -> Iterator[Way]:
        if not way.wet & way.sanding:
            yield way

    def _done(self, piece: Piece, way: Way, blocks: Sequence[float]) -> Way | None:
        """The way with the last coat's stay and the hour from which it may be packed."""
        if not self._taped(piece, way, blocks, LAST):
            return None
        ends = [start + block for start, block in zip(way.starts, blocks, strict=True)]
        freed = self._hours.first_from(piece.stack[-1], Stage.HANDLE, second_of(ends[-1]))
        spots = with_bits(way.spots, way.stands[-1], span(way.starts[-1], freed))
        order = self._studio.order_of(piece.key)
        ready = ceil(ends[-1])
        if order is not None:
            gates = [
                self._hours.first_from(coat, order.gate.stage, second_of(end))
                for coat, end in zip(piece.stack, ends, strict=True)
            ]
            ready = max(ready, up(NOW.timestamp()), *gates)
        return replace(way, spots=spots, ready=ready, end=ends[-1])
