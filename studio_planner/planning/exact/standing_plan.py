"""All lanes as they are placed now: what each takes, and what is settled around some."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.log_legs import stays_along
from studio_planner.planning.exact.answers import Rough, Work
from studio_planner.planning.exact.choices import is_wet
from studio_planner.planning.exact.lanes import Lane, Settled
from studio_planner.planning.exact.left_lying import held_spots, placed_pieces, wet_lying

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Sequence

    from studio_planner.planning.exact.choices import AlikeHands, AlikeSpots
    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.placing.workshop import Taken


_MOST_KNOWN = 2000
"""Placements of which is kept what they take; then all are forgotten."""


@dataclass(frozen=True, slots=True)
class _Known:
    """What one placement takes, and what is poured of it: (spot, from, to) in seconds."""

    placed: Placement
    taken: Taken
    lying: tuple[tuple[str, int, int], ...]
    wet: tuple[tuple[int, int], ...]
    rough: Rough


class Takings:
    """What lanes take, worked out once for each placement."""

    def __init__(self, frame: Frame) -> None:
        """Look at the lanes of one frame."""
        self._frame = frame
        self._known: dict[int, _Known] = {}
        self._hands = {key: one for one in frame.choices.hands for key in one.people}
        self._spots = {key: one for one in frame.choices.spots for key in one.spots}

    def settled(self, lanes: Sequence[Lane], free: Collection[int]) -> Settled:
        """What all lanes but the free ones take."""
        settled = Settled()
        for at, lane in enumerate(lanes):
            if at not in free and lane.placed is not None:
                _add(settled, self._of(lane, lane.placed))
        there = placed_pieces(lanes, free)
        for spot, start, end in held_spots(self._frame, there):
            settled.lying.setdefault(spot, []).append((start, end))
        settled.wet += wet_lying(self._frame, there)
        for person, spans in settled.hands.items():
            # Coats of one mix are one block.
            settled.hands[person] = sorted(set(spans))
        return settled

    def roughs(self, lanes: Sequence[Lane], free: Collection[int]) -> list[Rough]:
        """All placed lanes but the free ones, without their very spots and people."""
        return [
            self._of(lane, lane.placed).rough
            for at, lane in enumerate(lanes)
            if at not in free and lane.placed is not None
        ]

    def _of(self, lane: Lane, placed: Placement) -> _Known:
        known = self._known.get(id(placed))
        if known is None:
            if len(self._known) > _MOST_KNOWN:
                self._known.clear()
            known = self._known[id(placed)] = self._found_out(lane, placed)
        return known

    def _found_out(self, lane: Lane, placed: Placement) -> _Known:
        laid, finisher = placed.laid, self._frame.finisher
        times, poured = finisher.times(laid), range(laid.chain.first)
        return _Known(
            placed=placed,
            taken=finisher.taken(placed),
            lying=tuple(
                stay
                for index in poured
                if (pour := laid.chain.tasks[index].fixed) is not None
                for stay in stays_along(
                    self._frame.means.legs(pour)[-1:], finisher.left(laid, index)
                )
            ),
            wet=tuple(
                (laid.starts[index], times.covered(index, laid.starts[index]))
                for index in poured
                if is_wet(laid.chain.tasks[index])
            ),
            rough=self._rough(lane, placed),
        )

    def _rough(self, lane: Lane, placed: Placement) -> Rough:
        laid = placed.laid
        tasks = laid.chain.tasks
        return Rough(
            lane=lane,
            chain=laid.chain,
            starts=laid.starts,
            joints=laid.joints,
            spots=tuple(self._alike_spots(placed, index) for index in range(len(tasks))),
            hands=tuple(
                None if task.fixed is not None else self._hands[placed.people[index]]
                for index, task in enumerate(tasks)
            ),
            sanders=tuple(self._alike_hands(sander) for sander in placed.sanders),
            packs=tuple(
                Work(pack.start, pack.end, self._hands[pack.person]) for pack in placed.packed
            ),
            mixes=tuple(laid.mix(index) for index in range(len(tasks))),
        )

    def _alike_spots(self, placed: Placement, index: int) -> AlikeSpots:
        fixed = placed.laid.chain.tasks[index].fixed
        if fixed is not None:
            return self._spots[self._frame.means.legs(fixed)[-1][0]]
        return self._spots[placed.laid.grounds[index].spots[0]]

    def _alike_hands(self, person: str | None) -> AlikeHands | None:
        return None if person is None else self._hands[person]


def _add(settled: Settled, known: _Known) -> None:
    taken = known.taken
    for person, start, end in taken.hands:
        settled.hands.setdefault(person, []).append((start, end))
    for by_spot, spans in (settled.spots, taken.spots), (settled.lying, known.lying):
        for spot, start, end in spans:
            by_spot.setdefault(spot, []).append((start, end))
    settled.wet += [*taken.wet, *known.wet]
    settled.sanding += taken.sanding


def same_place(one: Lane, other: Lane) -> bool:
    """Whether two lanes of a piece are placed at the same times and from the same mixes."""
    mine, theirs = one.placed, other.placed
    if mine is None or theirs is None:
        return mine is theirs
    return (mine.starts, mine.laid.mixes) == (theirs.starts, theirs.laid.mixes)


def pinned(lanes: Sequence[Lane], free: Collection[int]) -> dict[int, frozenset[int]]:
    """Coats of free lanes that share a mix with a lane that is not: they stay as placed."""
    outside = {
        label
        for at, lane in enumerate(lanes)
        if at not in free and lane.placed is not None
        for label in lane.placed.laid.mixes
        if label
    }
    return {
        at: frozenset(
            index for index, label in enumerate(_mixes(lanes[at])) if label in outside
        )
        for at in free
    }


def _mixes(lane: Lane) -> Iterable[str]:
    return () if lane.placed is None else lane.placed.laid.mixes
