"""How much room each lane has in a model: lengths, starts and windows of its coats."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import TYPE_CHECKING

from studio_planner.planning.exact.grid import joined_slots
from studio_planner.planning.exact.windows import OwnTimes, Windows

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.planning.exact.asked import Asked
    from studio_planner.planning.exact.choices import AlikeHands, AlikeSpots
    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.spans import Stretches

StartsBy = dict[tuple[str, "AlikeHands", int], "Stretches"]
"""Start slots by place, hands and length of the block in seconds."""


@dataclass(frozen=True, slots=True)
class LaneRoom:
    """One lane, and what its new coats may choose from.

    `settled` are coats whose mix belongs to a lane outside the model: they stay as placed.
    """

    lane: Lane
    asked: Asked
    spots: tuple[AlikeSpots, ...]
    lengths: dict[int, list[int]]
    starts: dict[int, StartsBy]
    windows: Mapping[int, tuple[int, int]]
    first_packing: int
    last_packing: int
    settled: frozenset[int] = frozenset()


@dataclass(frozen=True, slots=True)
class Limits:
    """What a lane has to keep to in a model.

    The packing of its last piece begins by the slot `last_packing`; `within` narrows the
    starts of coats, and `settled` coats stay as they are placed.
    """

    last_packing: int
    within: Mapping[int, tuple[int, int]] = field(default_factory=dict)
    settled: frozenset[int] = frozenset()


@dataclass(frozen=True, slots=True)
class Bounds:
    """First and last slot in which each coat of a lane may start, and the first packing."""

    windows: Mapping[int, tuple[int, int]]
    first_packing: int


class RoomMaker:
    """Works out the room of lanes in one frame."""

    def __init__(self, frame: Frame) -> None:
        """Look at one plan."""
        self._frame = frame

    def spots(self, lane: Lane) -> tuple[AlikeSpots, ...]:
        """The kinds of spots that hold all pieces of a lane at once."""
        pieces = lane.chain.pieces
        return tuple(
            spots
            for spots in self._frame.choices.spots
            if all(p.key in spots.pieces for p in pieces) and len(spots.spots) >= len(pieces)
        )

    def starts(self, lane: Lane, index: int, lengths: Sequence[int]) -> StartsBy:
        """The start slots of a coat by place, hands and length."""
        task, material = lane.chain.tasks[index], lane.chain.pieces[0].material
        choices = self._frame.choices
        places = dict.fromkeys(spots.place for spots in self.spots(lane))
        return {
            (place, hands, length): choices.starts(task, material, place, hands, length)
            for place in places
            for hands in choices.hands
            for length in lengths
        }

    def windows(self, lane: Lane, asked: Asked, starts: Mapping[int, StartsBy]) -> Windows:
        """The earliest and latest starts of a lane by itself."""
        chain = lane.chain
        by_coat = {
            index: joined_slots(s for v in by.values() for s in v)
            for index, by in starts.items()
        }
        places = [spots.place for spots in self.spots(lane)]
        fixed = {
            index: self._frame.means.place_of(task.fixed)
            for index, task in enumerate(chain.tasks)
            if task.fixed is not None
        }
        own = OwnTimes(by_coat, dict.fromkeys(starts, places), fixed)
        return Windows(self._frame.reaches, self._frame.means, asked, own)

    def alone(self, lane: Lane, asked: Asked) -> int | None:
        """The earliest slot at which a lane's packing may begin; None when never."""
        tasks = lane.chain.tasks
        starts = {
            index: self.starts(lane, index, [tasks[index].block])
            for index in range(lane.chain.first, len(tasks))
        }
        if not self.spots(lane) and starts:
            return None
        windows = self.windows(lane, asked, starts)
        firsts = windows.earliest()
        return None if firsts is None else self.first_pack(lane, windows.ready(firsts))

    def first_pack(self, lane: Lane, ready: int) -> int:
        """The first slot from `ready` on at which the packing of a piece may begin."""
        order = lane.chain.order
        if order is None:
            return ready
        choices, length = self._frame.choices, order.packing_minutes * 60
        found = [
            max(first, ready)
            for hands in choices.hands
            for first, last in choices.for_steps(hands, length)
            if last >= ready
        ]
        return min(found, default=self._frame.reaches.far)

    def last_pack(self, lane: Lane) -> int:
        """The last slot of the working hours after those in which a placed lane is packed."""
        order, placed, choices = lane.chain.order, lane.placed, self._frame.choices
        if order is None or placed is None:
            return self._frame.reaches.far
        begins = self._frame.grid.down(max(one.start for one in placed.packed))
        length = order.packing_minutes * 60
        hours = [choices.for_steps(hands, length) for hands in choices.hands]
        joined = joined_slots(stretch for found in hours for stretch in found)
        far = self._frame.reaches.far
        return [*(last for _, last in joined if last >= begins), far, far][1]

    def bounds(self, lane: Lane, asked: Asked, limits: Limits) -> Bounds | None:
        """When the coats of a lane may start within limits; None when it cannot keep them.

        Blocks are as long as each coat needs by itself: no longer one may start at other times.
        """
        tasks = lane.chain.tasks
        lengths = {index: [tasks[index].block] for index in _new_coats(lane)}
        lengths |= _settled_lengths(lane, limits.settled)
        starts = {index: self.starts(lane, index, lengths[index]) for index in lengths}
        windows = self.windows(lane, asked, starts)
        firsts = windows.earliest()
        lasts = None if firsts is None else windows.latest(limits.last_packing)
        if firsts is None or lasts is None:
            return None
        both = {i: _narrowed((firsts[i], lasts[i]), limits.within.get(i)) for i in lengths}
        if any(low > high for i, (low, high) in both.items() if i not in limits.settled):
            return None
        return Bounds(both, self.first_pack(lane, windows.ready(firsts)))

    def room(
        self, lane: Lane, asked: Asked, lengths: dict[int, list[int]], limits: Limits
    ) -> LaneRoom | None:
        """The room of a lane within limits; None when it cannot keep them."""
        bounds = self.bounds(lane, asked, limits)
        return None if bounds is None else self.bounded(lane, asked, lengths, limits, bounds)

    def bounded(
        self,
        lane: Lane,
        asked: Asked,
        lengths: dict[int, list[int]],
        limits: Limits,
        bounds: Bounds,
    ) -> LaneRoom:
        """The room of a lane whose bounds are known."""
        lengths = {**lengths, **_settled_lengths(lane, limits.settled)}
        return LaneRoom(
            lane=lane,
            asked=asked,
            spots=self.spots(lane),
            lengths=lengths,
            starts={i: self.starts(lane, i, lengths[i]) for i in _new_coats(lane)},
            windows=bounds.windows,
            first_packing=bounds.first_packing,
            last_packing=limits.last_packing,
            settled=limits.settled,
        )


def _new_coats(lane: Lane) -> range:
    return range(lane.chain.first, len(lane.chain.tasks))


def _settled_lengths(lane: Lane, settled: frozenset[int]) -> dict[int, list[int]]:
    """The blocks of coats that stay as they are placed."""
    if lane.placed is None:
        return {}
    return {index: [lane.placed.laid.chain.tasks[index].block] for index in settled}


def _narrowed(window: tuple[int, int], within: tuple[int, int] | None) -> tuple[int, int]:
    if within is None:
        return window
    return max(window[0], within[0]), min(window[1], within[1])
