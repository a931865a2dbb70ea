"""Shared mixes as unknowns of their own: each coat is poured from one, each has its turn.

Where many coats may share, few mixes are poured from many coats, and the least number of mixes
and the earliest ends are proved with it in seconds. With one flag for each pair of coats they
were hardly ever (measured on studios of 32 coats).
"""

from __future__ import annotations

import math
from collections import Counter, defaultdict
from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.planning.exact.draft import Busy, MixUnknowns
from studio_planner.planning.exact.grid import joined_slots
from studio_planner.planning.exact.led_mixes import block, in_parts
from studio_planner.planning.exact.sharing import A_GRAIN

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.sharing import Coat, Portion, Sharing
    from studio_planner.planning.problem import Kind
    from studio_planner.planning.solver import Flag, Quantity
    from studio_planner.planning.spans import Stretches


def mixes_in_turn(draft: Draft, sharing: Sharing, most: int) -> Quantity:
    """Let coats be poured from `most` mixes at the most, in somebody's hours; count them."""
    kinds = _kinds(draft, sharing)
    alone = [coat for coat in _new_coats(draft) if not any(coat in one for one in kinds)]
    for coat in alone:
        block(draft, draft.coat(coat), [])
    least = [_least(draft, sharing, coats) for coats in kinds]
    spare = max(0, most - len(alone) - sum(least))
    count: Quantity = len(alone)
    for coats, fewest in zip(kinds, least, strict=True):
        portions = [sharing.portions[coat] for coat in coats]
        for mix in _Kind(draft, portions).mixes(fewest, min(len(coats), fewest + spare)):
            draft.in_turn.append(mix)
            count += mix.used
    draft.model.at_least(most, count)
    draft.model.earliest_first([mix.start for mix in draft.in_turn])
    return count


def _new_coats(draft: Draft) -> list[Coat]:
    return [
        (at, index)
        for at, lane in enumerate(draft.lanes)
        for index, coat in enumerate(lane.coats)
        if coat.known_start is None
    ]


def _kinds(draft: Draft, sharing: Sharing) -> list[list[Coat]]:
    """The new coats that may share with others, those of one kind together."""
    paired = {coat for pair in sharing.pairs for coat in pair}
    kinds: dict[Kind, list[Coat]] = defaultdict(list)
    for coat in _new_coats(draft):
        if coat in paired:
            kinds[sharing.portions[coat].kind].append(coat)
    return list(kinds.values())


def _least(draft: Draft, sharing: Sharing, coats: Sequence[Coat]) -> int:
    """How many mixes coats of one kind need in any plan.

    No mix holds more than its cup does or two coats of a piece, and what can never start at
    once is never poured at once.
    """
    portions = [sharing.portions[coat] for coat in coats]
    room = max(one.limit for one in portions) + A_GRAIN
    by_grams = math.ceil(sum(one.grams for one in portions) / room - A_GRAIN)
    by_piece = max(Counter(at for at, _ in coats).values())
    apart, until = 0, -1
    for first, last in sorted((draft.coat(c).window for c in coats), key=lambda w: w[1]):
        if first > until:
            apart, until = apart + 1, last
    return max(by_grams, by_piece, apart)


class _Kind:
    """Makes the mixes of one kind, one after the other."""

    def __init__(self, draft: Draft, portions: Sequence[Portion]) -> None:
        self._draft = draft
        self._model = draft.model
        self._portions = portions
        self._coats = [draft.coat(one.coat) for one in portions]
        self._starts = self._starts_by_length()

    def mixes(self, fewest: int, most: int) -> list[MixUnknowns]:
        """So many mixes, of which the first `fewest` are made in any case."""
        yes = self._draft.yes
        found = [self._mix(yes if at < fewest else self._model.flag()) for at in range(most)]
        for coat in self._portions:
            self._model.exactly_one(mix.poured[coat.coat] for mix in found)
        for before, after in pairwise(found):
            self._in_turn(before, after)
        self._in_order(found)
        return found

    def _starts_by_length(self) -> dict[int, Stretches]:
        """The slots in which a block of each length [s] may start, whoever is poured."""
        found: dict[int, list[tuple[int, int]]] = defaultdict(list)
        for at, index in (one.coat for one in self._portions):
            for (_, _, length), starts in self._draft.lanes[at].room.starts[index].items():
                found[length] += starts
        return {length: joined_slots(starts) for length, starts in sorted(found.items())}

    def _mix(self, used: Flag) -> MixUnknowns:
        draft, model = self._draft, self._model
        lasting = draft.maker.one_of(list(self._starts))
        possible = joined_slots(s for one in self._starts.values() for s in one)
        start = model.among(possible)
        lengths = [draft.grid.length(length) for length in self._starts]
        minutes = model.between(min(self._starts) // 60, max(self._starts) // 60)
        model.equal(minutes, sum(length // 60 * flag for length, flag in lasting))
        slots = model.between(min(lengths), max(lengths))
        model.equal(slots, sum(draft.grid.length(one) * flag for one, flag in lasting))
        end = model.between(0, 2 * draft.frame.reaches.far)
        model.equal(end, start + slots)
        if not draft.maker.in_hours.keep(start, end, self._starts):
            for length, flag in lasting:
                model.inside(start, self._starts[length], draft.flags(flag))
        mix = MixUnknowns(
            used=used,
            start=start,
            minutes=minutes,
            slots=slots,
            end=end,
            first=self._starts[lasting[0][0]][0][0],
            lasting=lasting,
            by=draft.maker.one_of([hands for hands, _ in self._coats[0].by]),
            poured={one.coat: model.flag() for one in self._portions},
        )
        for hands, flag in mix.by:
            there = draft.all_of(draft.flags(flag, used) or [draft.yes])
            span = model.span(start, slots, end, there)
            draft.busy[hands].append(Busy(span, possible[0][0], possible[-1][1] + lengths[-1]))
        self._pour(mix)
        return mix

    def _pour(self, mix: MixUnknowns) -> None:
        """Whoever is poured from a mix shares its block, which is as long as all need."""
        model, flags = self._model, mix.poured.values()
        for portion, coat in zip(self._portions, self._coats, strict=True):
            poured = mix.poured[portion.coat]
            model.some([mix.used], [poured])
            model.equal(coat.start, mix.start, [poured])
            model.equal(coat.minutes, mix.minutes, [poured])
            if len(coat.by) > 1:
                for (_, mine), (_, theirs) in zip(coat.by, mix.by, strict=True):
                    model.equal(mine, theirs, [poured])
        model.some(flags, [mix.used])
        work = sum(one.own // 60 * mix.poured[one.coat] for one in self._portions)
        model.equal(mix.minutes, self._setup(mix) + work, [mix.used])
        model.equal(mix.minutes, min(self._starts) // 60, [~mix.used])
        grams = sum(in_parts(one.grams) * mix.poured[one.coat] for one in self._portions)
        model.at_least(in_parts(self._portions[0].limit + A_GRAIN), grams)

    def _setup(self, mix: MixUnknowns) -> Quantity:
        """The minutes to set up: the longest that one of those poured needs."""
        lengths = sorted({one.setup // 60 for one in self._portions})
        ways = self._draft.maker.one_of(lengths)
        for at, (minutes, longest) in enumerate(ways):
            needing = [one.coat for one in self._portions if one.setup // 60 == minutes]
            longer = [flag for _, flag in ways[at:]]
            for coat in needing if at else ():
                self._model.some(longer, [mix.poured[coat]])
            if len(ways) > 1:
                self._model.some([mix.poured[coat] for coat in needing], [longest, mix.used])
        return sum(minutes * flag for minutes, flag in ways)

    def _in_turn(self, before: MixUnknowns, after: MixUnknowns) -> None:
        """Mixes of a kind are alike until they are filled: they come in the order of time."""
        there = self._draft.flags(after.used)
        alone = sum(len(hands.people) for hands in self._draft.busy) == 1
        self._model.at_least(after.start, before.end if alone else before.start, there)
        self._model.some([before.used], [after.used])

    def _in_order(self, found: Sequence[MixUnknowns]) -> None:
        """A piece's coats come from later and later mixes."""
        pieces: dict[int, list[Coat]] = defaultdict(list)
        for at, index in sorted(one.coat for one in self._portions):
            pieces[at].append((at, index))
        for lower, upper in (pair for coats in pieces.values() for pair in pairwise(coats)):
            for first, second in _not_later(len(found)):
                flags = found[first].poured[lower], found[second].poured[upper]
                self._model.at_most_one(flags)


def _not_later(count: int) -> Iterable[tuple[int, int]]:
    """Pairs of turns of which the second one is not later than the first."""
    return ((first, second) for first in range(count) for second in range(first + 1))
