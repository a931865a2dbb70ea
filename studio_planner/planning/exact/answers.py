"""What a solved model means: starts, joints and packing of its lanes, in seconds again."""

from __future__ import annotations

from dataclasses import dataclass, replace
from functools import cached_property
from typing import TYPE_CHECKING, TypeVar

from studio_planner.craft.pieces import Joint
from studio_planner.planning.exact.frame import ALL_JOINTS
from studio_planner.planning.placing.chain_times import ChainTimes, Ground, PlacedJoint

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.planning.exact.choices import AlikeHands, AlikeSpots
    from studio_planner.planning.exact.coat_unknowns import CoatUnknowns
    from studio_planner.planning.exact.draft import Draft, LaneUnknowns, WorkUnknowns
    from studio_planner.planning.exact.frame import Frame
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.sharing import Coat
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.solver import Answer, Flag


_Thing = TypeVar("_Thing")


@dataclass(frozen=True, slots=True)
class Work:
    """Work by hand: from, to (seconds), and one of which people does it."""

    start: int
    end: int
    hands: AlikeHands


@dataclass(frozen=True, slots=True)
class Rough:
    """A lane as found: everything but which of alike spots and people are used.

    `chain` has the blocks as long as their mixes; `mixes` names those that are shared.
    """

    lane: Lane
    chain: Chain
    starts: tuple[int, ...]
    joints: tuple[PlacedJoint, ...]
    spots: tuple[AlikeSpots, ...]
    hands: tuple[AlikeHands | None, ...]
    sanders: tuple[AlikeHands | None, ...]
    packs: tuple[Work, ...]
    mixes: tuple[str, ...]


class AnswerReader:
    """Reads an answer of the solver back into lanes."""

    def __init__(self, draft: Draft, answer: Answer) -> None:
        """Read one answer."""
        self._draft = draft
        self._frame = draft.frame
        self._answer = answer

    def lanes(self) -> list[Rough] | None:
        """All lanes of the model; None when a real clock disagrees with the model."""
        found = [self._rough(at, lane) for at, lane in enumerate(self._draft.lanes)]
        good = [rough for rough in found if rough is not None]
        return good if len(good) == len(found) else None

    def _rough(self, at: int, lane: LaneUnknowns) -> Rough | None:
        chain = lane.room.lane.chain
        tasks = tuple(
            replace(task, block=self._block(coat))
            for task, coat in zip(chain.tasks, lane.coats, strict=True)
        )
        chain = replace(chain, tasks=tasks)
        starts = [self._start(coat) for coat in lane.coats]
        sandings = [self._sanding(lane, index) for index in range(len(tasks))]
        spots = tuple(self._chosen(coat.on) for coat in lane.coats)
        joints = judged_joints(self._frame, chain, spots, starts, sandings)
        if joints is None:
            return None
        return Rough(
            lane=lane.room.lane,
            chain=chain,
            starts=tuple(starts),
            joints=tuple(joints),
            spots=spots,
            hands=tuple(
                None if coat.known_start is not None else self._chosen(coat.by)
                for coat in lane.coats
            ),
            sanders=tuple(None if work is None else work.hands for work in sandings),
            packs=tuple(self._work(pack, self._packing(chain)) for pack in lane.packs),
            mixes=tuple(self._label(at, index, lane) for index in range(len(tasks))),
        )

    def _packing(self, chain: Chain) -> int:
        return 0 if chain.order is None else chain.order.packing_minutes * 60

    def _block(self, coat: CoatUnknowns) -> int:
        return 60 * self._answer.of(coat.minutes)

    def _start(self, coat: CoatUnknowns) -> int:
        if coat.known_start is not None:
            return coat.known_start
        return self._draft.grid.second(self._answer.of(coat.start))

    def _sanding(self, lane: LaneUnknowns, index: int) -> Work | None:
        joint = lane.joints.get(index)
        if joint is None or joint.sanding is None or joint.scuffed is None:
            return None
        if not self._answer.of(joint.scuffed):
            return None
        chain = lane.room.lane.chain
        count = sum(piece.count for piece in chain.pieces)
        seconds = self._frame.means.sand_seconds * count + chain.tasks[index].lead
        return self._work(joint.sanding, seconds)

    def _work(self, work: WorkUnknowns, seconds: int) -> Work:
        start = self._draft.grid.second(self._answer.of(work.start))
        return Work(
            start,
            start + seconds,
            self._chosen([(one.hands, one.chosen) for one in work.hours]),
        )

    def _chosen(self, ways: Sequence[tuple[_Thing, Flag]]) -> _Thing:
        return next(thing for thing, flag in ways if self._answer.of(flag))

    def _label(self, at: int, index: int, lane: LaneUnknowns) -> str:
        placed = lane.room.lane.placed
        if index in lane.room.settled and placed is not None:
            return placed.laid.mix(index)
        leader = self._leaders.get((at, index))
        if leader is None:
            return ""
        first = self._draft.lanes[leader[0]].room.lane
        return f"{first.key}/{first.chain.tasks[leader[1]].coat.key}"

    @cached_property
    def _leaders(self) -> dict[Coat, Coat]:
        """The coats that share a mix, each with the one that the mix is named after."""
        found: dict[Coat, Coat] = {}
        for (leader, follower), flag in self._draft.together.items():
            if self._answer.of(flag):
                found |= {leader: leader, follower: leader}
        for mix in self._draft.in_turn:
            poured = [coat for coat, flag in mix.poured.items() if self._answer.of(flag)]
            if len(poured) > 1:
                found |= dict.fromkeys(poured, poured[0])
        return found


def judged_joints(
    frame: Frame,
    chain: Chain,
    spots: Sequence[AlikeSpots],
    starts: list[int],
    sandings: Sequence[Work | None],
) -> list[PlacedJoint] | None:
    """The joints that the real clocks find; None when one of them does not hold."""
    grounds = tuple(Ground(one.place, ()) for one in spots)
    times = ChainTimes(frame.means, chain, grounds, replace(ALL_JOINTS, scuff=False))
    joints: list[PlacedJoint] = []
    for index, work in enumerate(sandings):
        joint = (
            times.joint(index, starts)
            if work is None
            else PlacedJoint(Joint.SCUFFED, sand=(work.start, work.end))
        )
        poured_over = index + 1 < chain.first
        if joint is None or not (poured_over or times.steps_fit(index, starts)):
            return None
        joints.append(joint)
    return joints
