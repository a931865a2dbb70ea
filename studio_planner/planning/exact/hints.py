"""Starts the solver at lanes as they are placed, with a value for everything that follows."""

from __future__ import annotations

from collections import defaultdict
from itertools import groupby
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Trust

if TYPE_CHECKING:
    from collections.abc import Iterable, Sequence

    from studio_planner.planning.exact.choices import AlikeHands
    from studio_planner.planning.exact.coat_unknowns import CoatUnknowns
    from studio_planner.planning.exact.draft import (
        Draft,
        LaneUnknowns,
        MixUnknowns,
        WorkUnknowns,
    )
    from studio_planner.planning.exact.sharing import Coat
    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.solver import Flag, Quantity, Unknown


class Hints:
    """Values of unknowns at the lanes as placed."""

    def __init__(self, draft: Draft) -> None:
        """Read all lanes of a draft."""
        self._draft = draft
        self.values: dict[int, tuple[Unknown, int]] = {}
        for at, lane in enumerate(draft.lanes):
            placed = lane.room.lane.placed
            if placed is not None:
                self._lane(at, lane, placed)
        self._shared()
        self._poured_in_turn()

    def _set(self, unknown: Quantity | Flag, value: int) -> None:
        index = getattr(unknown, "index", -1)
        if index >= 0 and unknown is not self._draft.yes:
            self.values[index] = (unknown, value)  # type: ignore[assignment]

    def _lane(self, at: int, lane: LaneUnknowns, placed: Placement) -> None:
        laid = placed.laid
        for index, coat in enumerate(lane.coats):
            if coat.known_start is None:
                slot = self._draft.grid.up(laid.starts[index])
                self._coat(coat, slot, placed, index)
        for index, joint in lane.joints.items():
            found = laid.joints[index]
            tested = found.trust is Trust.TEST_FIRST
            scuffed = found.sand is not None
            for flag, value in (
                (joint.safe, not tested and not scuffed),
                (joint.tested, tested),
                (joint.scuffed, scuffed),
            ):
                if flag is not None:
                    self._set(flag, int(value))
            if joint.sanding is not None and found.sand is not None:
                self._work(joint.sanding, found.sand[0], placed.sanders[index])
        for pack, packed in zip(lane.packs, placed.packed, strict=False):
            self._work(pack, packed.start, packed.person)
        del at

    def _coat(self, coat: CoatUnknowns, slot: int, placed: Placement, index: int) -> None:
        laid = placed.laid
        self._set(coat.start, slot)
        for part, flag in coat.parts:
            self._set(flag, int(part.first <= slot <= part.last))
        for seconds, flag in coat.lasting:
            self._set(flag, int(seconds == laid.chain.tasks[index].block))
        block = laid.chain.tasks[index].block
        maker = self._draft.maker
        end = maker.of_slot * slot - (-block // maker.unit)
        self._set(coat.end, end)
        for part, flag in coat.end_parts:
            self._set(flag, int(part.first <= end <= part.last))
        spots = laid.grounds[index].spots
        for alike, flag in coat.on:
            self._set(flag, int(bool(spots) and spots[0] in alike.spots))
        self._whose(coat.by, placed.people[index])

    def _work(self, work: WorkUnknowns, start: int, person: str | None) -> None:
        slot = self._draft.grid.up(start)
        self._set(work.start, slot)
        for hours in work.hours:
            there = person in hours.hands.people and hours.first <= slot <= hours.last
            self._set(hours.chosen, int(there))

    def _whose(self, by: Sequence[tuple[AlikeHands, Flag]], person: str | None) -> None:
        for hands, flag in by:
            self._set(flag, int(person in hands.people))

    def _shared(self) -> None:
        """Of coats that share a mix the first in the order of pairs leads."""
        led: set[tuple[int, int]] = set()
        for (leader, follower), flag in self._draft.together.items():
            same = self._mix(leader) and self._mix(leader) == self._mix(follower)
            leads = bool(same) and leader not in led and follower not in led
            if leads:
                led.add(follower)
            self._set(flag, int(leads))

    def _poured_in_turn(self) -> None:
        """The mixes of each kind in the order of their starts, and last those not made."""
        for _, mixes in groupby(self._draft.in_turn, key=lambda mix: list(mix.poured)):
            kind = list(mixes)
            made = self._made(kind[0].poured)
            for mix, coats in zip(kind, [*made, *[[]] * len(kind)], strict=False):
                self._one_mix(mix, coats)

    def _made(self, coats: Iterable[Coat]) -> list[list[Coat]]:
        """Who is poured from the same mix as placed, the earliest mix first."""
        found = defaultdict(list)
        for coat in coats:
            placed = self._draft.lanes[coat[0]].room.lane.placed
            start = 0 if placed is None else placed.starts[coat[1]]
            found[start, self._mix(coat) or str(coat)].append(coat)
        return [found[key] for key in sorted(found)]

    def _one_mix(self, mix: MixUnknowns, coats: Sequence[Coat]) -> None:
        """A mix with the block of those poured; one not made is as short as it may be."""
        self._set(mix.used, int(bool(coats)))
        for coat, flag in mix.poured.items():
            self._set(flag, int(coat in coats))
        block, start, person = mix.lasting[0][0], mix.first, None
        placed = self._draft.lanes[coats[0][0]].room.lane.placed if coats else None
        if placed is not None:
            index = coats[0][1]
            block = placed.laid.chain.tasks[index].block
            start, person = self._draft.grid.up(placed.starts[index]), placed.people[index]
        slots = self._draft.grid.length(block)
        self._set(mix.start, start)
        self._set(mix.minutes, block // 60)
        self._set(mix.slots, slots)
        self._set(mix.end, start + slots)
        for seconds, flag in mix.lasting:
            self._set(flag, int(seconds == block))
        self._whose(mix.by, person or mix.by[0][0].people[0])

    def _mix(self, coat: Coat) -> str:
        placed = self._draft.lanes[coat[0]].room.lane.placed
        return "" if placed is None else placed.laid.mix(coat[1])
