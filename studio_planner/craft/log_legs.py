"""Where a poured piece was from when, as the log tells it: carried into the warm box, or out.

What was carried is a fact: it stays where it was put until it can be handled, and then rests in
the first room until its next coat. Whatever is carried later than that stays there until then.
"""

from __future__ import annotations

from collections import defaultdict
from collections.abc import Mapping
from datetime import datetime
from itertools import zip_longest
from typing import TYPE_CHECKING, TypeVar, overload

from studio_planner.craft.log import EntryKind
from studio_planner.craft.standing import lives_of

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from studio_planner.craft.log import Poured
    from studio_planner.craft.plans import PlannedCoat
    from studio_planner.craft.studio import Studio

SpotLeg = tuple[str, datetime]
"""A spot's key, and the instant from which a poured piece is there."""

CarriedPours = Mapping[tuple[str, str], tuple[SpotLeg, ...]]
"""Where the piece of every pour was from when, by piece and coat."""

_Where = TypeVar("_Where")
_When = TypeVar("_When", int, float, datetime)


def legs_of_pours(studio: Studio) -> CarriedPours:
    """Where the piece of every pour was from its start until the next one, by both keys.

    One that was carried nowhere has one leg. Spots that are gone are passed over.
    """
    lives = lives_of(studio)
    spots = {spot.key for spot in studio.spots}
    pours: dict[str, list[Poured]] = defaultdict(list)
    for pour in sorted(studio.poured, key=_begun):
        pours[pour.piece].append(pour)
    found = {}
    for piece, mine in pours.items():
        moves = [
            (entry.spot, entry.at)
            for entry in lives.get(piece, ())
            if entry.kind is EntryKind.MOVED and entry.spot in spots
        ]
        for pour, after in zip(mine, [*mine[1:], None], strict=True):
            found[piece, pour.coat] = _legs_of(pour, after, moves)
    return found


def legs_of(carried: CarriedPours, coat: Poured | PlannedCoat) -> tuple[SpotLeg, ...]:
    """Where a coat's piece is from when until the next one; on its spot if no pour is told."""
    return carried.get((coat.piece, coat.coat), ((coat.spot, coat.start),))


def _legs_of(
    pour: Poured, after: Poured | None, moves: Iterable[SpotLeg]
) -> tuple[SpotLeg, ...]:
    legs = [(pour.spot, pour.start)]
    for spot, at in moves:
        second = at.timestamp()
        if second < _begun(pour) or (after is not None and second >= _begun(after)):
            continue
        if second == legs[-1][1].timestamp():
            legs.pop()
        legs.append((spot, at))
    return tuple(legs)


def _begun(pour: Poured) -> float:
    return pour.start.timestamp()


def rested(
    legs: Sequence[tuple[_Where, _When]], handled: _When | None, rest: _Where
) -> list[tuple[_Where, _When]]:
    """Legs with the rest at `rest` from `handled` on, until the piece is carried on.

    Where it never can be handled nothing is added.

    Examples
    --------
    >>> rested([("shelf", 0), ("box", 6)], 9, "room")
    [('shelf', 0), ('box', 6), ('room', 9)]
    >>> rested([("shelf", 0), ("box", 6)], 4, "room")
    [('shelf', 0), ('room', 4), ('box', 6)]
    """
    if handled is None:
        return list(legs)
    found = list(legs)
    found.insert(sum(since <= handled for _, since in legs), (rest, handled))
    return found


def legs_from(legs: Sequence[tuple[_Where, _When]], since: _When) -> list[tuple[_Where, _When]]:
    """Legs from an instant on: the first begins then, where the piece is by then.

    Examples
    --------
    >>> legs_from([("shelf", 0), ("box", 6), ("room", 9)], 7)
    [('box', 7), ('room', 9)]
    """
    found = list(legs[max(sum(begun <= since for _, begun in legs) - 1, 0) :])
    found[0] = (found[0][0], since)
    return found


@overload
def stays_along(
    legs: Sequence[tuple[str, int]], until: int
) -> Iterator[tuple[str, int, int]]: ...


@overload
def stays_along(
    legs: Sequence[SpotLeg], until: datetime
) -> Iterator[tuple[str, datetime, datetime]]: ...


@overload
def stays_along(
    legs: Sequence[SpotLeg], until: datetime | None
) -> Iterator[tuple[str, datetime, datetime | None]]: ...


def stays_along(
    legs: Sequence[tuple[str, _When]], until: _When | None
) -> Iterator[tuple[str, _When, _When | None]]:
    """Where a piece is from when to when along legs that end at `until`; None: they never do.

    Examples
    --------
    >>> list(stays_along([("shelf", 0), ("box", 6), ("room", 12)], 9))
    [('shelf', 0, 6), ('box', 6, 9)]
    """
    for (where, since), carried in zip_longest(legs, [at for _, at in legs[1:]]):
        left = min((when for when in (carried, until) if when is not None), default=None)
        if left is None or since < left:
            yield where, since, left
