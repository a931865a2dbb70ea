"""Gives rough lanes their very spots and people; where it can be, those that they had.

Alike spots and alike people can always be given out in the order of starts when there are never
more in use at once than there are; the model sees to that.
"""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.planning.exact.left_lying import held_spots
from studio_planner.planning.placing.chain_times import Ground
from studio_planner.planning.placing.placements import Laid, Packed, Placement

if TYPE_CHECKING:
    from collections.abc import Iterable, Iterator, Sequence

    from studio_planner.planning.exact.answers import Rough
    from studio_planner.planning.exact.frame import Frame

Place = tuple[int, int, int]
"""Lane, coat, piece of the lane."""


@dataclass(frozen=True, slots=True)
class _Need:
    """Something that needs one of several alike things from `start` to `end`."""

    start: int
    end: int
    whom: tuple[object, ...]
    among: tuple[str, ...]
    had: str
    fact: bool = False
    """Whether it is so already, and cannot fail."""


def assigned(frame: Frame, roughs: Sequence[Rough]) -> list[Placement] | None:
    """Placements for all lanes at once; None when spots or people do not suffice after all."""
    spots = _given([*_left_lying(frame, roughs), *_spot_needs(frame, roughs)])
    people = _given(_hand_needs(roughs))
    if spots is None or people is None:
        return None
    found = []
    for at, rough in enumerate(roughs):
        placement = _placement(frame, rough, at, spots, people)
        if placement is None:
            return None
        found.append(placement)
    return found


def _given(needs: Iterable[_Need]) -> dict[tuple[object, ...], str] | None:
    """Who or what each need gets; the earliest first, what it had before if that is free."""
    free_from: dict[str, int] = {}
    given: dict[tuple[object, ...], str] = {}
    for need in sorted(needs, key=_in_turn):
        free = [key for key in need.among if free_from.get(key, need.start) <= need.start]
        if not free and not need.fact:
            return None
        longest_busy = max(free or need.among, key=lambda key: free_from.get(key, 0))
        chosen = need.had if need.had in free else longest_busy
        free_from[chosen] = max(need.end, free_from.get(chosen, need.end))
        given[need.whom] = chosen
    return given


def _in_turn(need: _Need) -> tuple[bool, int, bool, int]:
    """What is so already comes first, then the earliest; who has no choice before others."""
    return not need.fact, need.start, len(need.among) > 1, need.end


# Spots


def _left_lying(frame: Frame, roughs: Sequence[Rough]) -> Iterator[_Need]:
    """What is poured of pieces that are in none of the lanes."""
    there = {piece.key for rough in roughs for piece in rough.chain.pieces}
    for number, (spot, start, end) in enumerate(held_spots(frame, there)):
        yield _Need(start, end, ("left", number), (spot,), spot, fact=True)


def _spot_needs(frame: Frame, roughs: Sequence[Rough]) -> Iterator[_Need]:
    for at, rough in enumerate(roughs):
        for first, last, until in _stays(frame, rough):
            for piece in range(len(rough.chain.pieces)):
                whom = at, first, piece
                fact = _lies_on(frame, rough, first, last)
                if fact is None:
                    had, among = _spot_before(rough, first, piece), rough.spots[first].spots
                    yield _Need(rough.starts[first], until, whom, among, had)
                    continue
                spot, since = fact
                goes_on = (
                    rough.starts[rough.chain.first] if rough.chain.first <= last else until
                )
                yield _Need(since, goes_on, whom, (spot,), spot, fact=True)
                if goes_on < until:
                    yield _Need(goes_on, until, whom, (spot,), spot)


def _stays(frame: Frame, rough: Rough) -> Iterator[tuple[int, int, int]]:
    """First and last coat of each stay on one spot, and when it ends."""
    first = 0
    for index in range(len(rough.starts)):
        until = _freed(frame, rough, index)
        last = index + 1 == len(rough.starts)
        if last or until <= rough.starts[index + 1]:
            yield first, index, until
            first = index + 1


def _freed(frame: Frame, rough: Rough, index: int) -> int:
    task = rough.chain.tasks[index]
    if task.stays and index + 1 < len(rough.starts):
        return rough.starts[index + 1] + 1
    place = rough.spots[index].place if task.fixed is None else frame.means.place_of(task.fixed)
    handle = frame.means.edges.handle(task.product, place)
    handled = handle.at(rough.starts[index] + task.block)
    return frame.means.end if handled is None else handled


def _lies_on(frame: Frame, rough: Rough, first: int, last: int) -> tuple[str, int] | None:
    """The spot that a piece is on by the last poured of some coats, since when [s]."""
    fixed = [task.fixed for task in rough.chain.tasks[first : last + 1] if task.fixed]
    return frame.means.legs(fixed[-1])[-1] if fixed else None


def _spot_before(rough: Rough, index: int, piece: int) -> str:
    placed = rough.lane.placed
    return "" if placed is None else placed.laid.grounds[index].spots[piece]


# Hands


def _hand_needs(roughs: Sequence[Rough]) -> Iterator[_Need]:
    seen: set[str] = set()
    for at, rough in enumerate(roughs):
        placed = rough.lane.placed
        for index, hands in enumerate(rough.hands):
            label = rough.mixes[index]
            if hands is None or (label and label in seen):
                continue
            seen.add(label)
            task, start = rough.chain.tasks[index], rough.starts[index]
            yield _Need(
                start=start - task.lead,
                end=start + task.block,
                whom=("mix", label) if label else ("block", at, index),
                among=hands.people,
                had="" if placed is None else placed.people[index],
            )
        for index, hands in enumerate(rough.sanders):
            sand = rough.joints[index].sand
            if hands is not None and sand is not None:
                had = "" if placed is None else placed.sanders[index] or ""
                yield _Need(*sand, ("sand", at, index), hands.people, had)
        for number, pack in enumerate(rough.packs):
            packs = () if placed is None else placed.packed
            had = packs[number].person if number < len(packs) else ""
            yield _Need(pack.start, pack.end, ("pack", at, number), pack.hands.people, had)


def _placement(
    frame: Frame,
    rough: Rough,
    at: int,
    spots: dict[tuple[object, ...], str],
    people: dict[tuple[object, ...], str],
) -> Placement | None:
    grounds: list[Ground] = []
    for first, last, _ in _stays(frame, rough):
        mine = tuple(spots[at, first, piece] for piece in range(len(rough.chain.pieces)))
        grounds += [Ground(rough.spots[last].place, mine)] * (last + 1 - first)
    laid = Laid(rough.chain, tuple(grounds), rough.starts, rough.joints, rough.mixes)
    packed = tuple(
        Packed(pack.start, pack.end, people["pack", at, number])
        for number, pack in enumerate(rough.packs)
    )
    gate = None if rough.chain.order is None else rough.chain.order.gate.stage
    if packed and gate is not None:
        ready = frame.finisher.gate(laid, gate)
        if ready is None or ready > min(pack.start for pack in packed):
            return None
    packed = tuple(sorted(packed, key=lambda pack: pack.start))
    found = Placement(
        laid=laid,
        people=tuple(_person(rough, at, index, people) for index in range(len(rough.starts))),
        sanders=tuple(people.get(("sand", at, index)) for index in range(len(rough.starts))),
        packed=packed,
        score=frame.finisher.score(laid, packed),
    )
    placed = rough.lane.placed
    # The same as before is the very same: what is known of it need not be found out again.
    return placed if placed is not None and placed == found else found


def _person(rough: Rough, at: int, index: int, people: dict[tuple[object, ...], str]) -> str:
    if rough.chain.tasks[index].fixed is not None:
        return ""
    placed = rough.lane.placed
    label = rough.mixes[index]
    known = people.get(("mix", label)) if label else people.get(("block", at, index))
    return known or ("" if placed is None else placed.people[index])
