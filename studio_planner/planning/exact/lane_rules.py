"""The rules of one lane by itself: order of blocks, joints, faces, tape, spot, packing."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

from studio_planner.planning.clocks.stage_times import ALWAYS
from studio_planner.planning.exact.draft import (
    JointUnknowns,
    LaneUnknowns,
    Lying,
    WorkUnknowns,
)
from studio_planner.planning.exact.frame import ALL_JOINTS
from studio_planner.planning.exact.reaches import not_after, not_before
from studio_planner.planning.exact.work_by_hand import work_by_hand
from studio_planner.planning.placing.chain_times import ChainTimes, Ground, narrow_windows
from studio_planner.planning.problem import cover_stage
from studio_planner.science.stages import Stage

if TYPE_CHECKING:
    from studio_planner.planning.exact.asked import Joining
    from studio_planner.planning.exact.choices import AlikeSpots
    from studio_planner.planning.exact.coat_unknowns import CoatUnknowns
    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.rooms import LaneRoom
    from studio_planner.planning.solver import Flag, Quantity


class LaneRules:
    """Adds one lane to a draft."""

    def __init__(self, draft: Draft, room: LaneRoom) -> None:
        """Take the lane's room."""
        self._draft = draft
        self._model = draft.model
        self._maker = draft.maker
        self._room = room
        self._chain = room.lane.chain
        self._lane = LaneUnknowns(room=room, coats=[])

    def add(self) -> LaneUnknowns:
        """Add the lane with all its rules."""
        for index in range(len(self._chain.tasks)):
            self._lane.coats.append(self._coat(index))
        self._keep_order()
        for index in range(self._chain.first, len(self._chain.tasks)):
            self._join(index)
            self._turn(index)
        for index in range(len(self._chain.tasks)):
            self._pull_and_trim(index)
        self._stay()
        self._pack()
        self._draft.lanes.append(self._lane)
        return self._lane

    # Coats

    def _coat(self, index: int) -> CoatUnknowns:
        task, room = self._chain.tasks[index], self._room
        if task.fixed is not None:
            means, start = self._draft.frame.means, int(task.fixed.start.timestamp())
            spot, since = means.legs(task.fixed)[-1]
            where, way = self._spots_with(spot), means.place_of(task.fixed)
            return self._maker.known(task, where, start, way, since)
        placed = room.lane.placed
        if index in room.settled and placed is not None:
            shared = placed.laid.chain.tasks[index]
            where = self._spots_with(placed.laid.grounds[index].spots[0])
            start = placed.starts[index]
            # It is still to be poured, so nobody has carried anything with it on.
            return self._maker.known(shared, where, start, where.place, start)
        reaches = room.asked.of(index, room.lengths)
        asked = [(place, reach) for place in self._places() for reach in reaches]
        return self._maker.free(
            task, room.spots, room.starts[index], asked, room.windows[index]
        )

    def _places(self) -> list[str]:
        return list(dict.fromkeys(spots.place for spots in self._room.spots))

    def _spots_with(self, spot: str) -> AlikeSpots:
        return next(one for one in self._draft.frame.choices.spots if spot in one.spots)

    def _keep_order(self) -> None:
        """No block of a piece begins, turning included, before the one before is over."""
        for before, after in pairwise(self._lane.coats):
            if after.task.fixed is not None:
                continue
            self._maker.over(after.start, before, after.task.lead)

    # Joints

    def _join(self, index: int) -> None:
        task, coat = self._chain.tasks[index], self._lane.coats[index]
        if task.below is None:
            return
        below = self._lane.coats[task.below]
        joint = JointUnknowns()
        ways: list[Flag] = []
        lengths = [seconds for seconds, _ in coat.lasting]
        for tested, window in self._room.asked.joinings(task, lengths):
            flag = self._model.flag()
            self._in_window(coat, below, window, flag)
            ways.append(flag)
            joint.safe, joint.tested = (joint.safe, flag) if tested else (flag, joint.tested)
        if self._room.asked.scuffs(task):
            joint.scuffed = self._model.flag()
            joint.sanding = self._sand(index, joint.scuffed)
            ways.append(joint.scuffed)
        self._model.exactly_one(ways)
        self._lane.joints[index] = joint
        pieces = len(self._chain.pieces)
        self._draft.goals.scuffed += 0 if joint.scuffed is None else pieces * joint.scuffed
        self._draft.goals.tested += 0 if joint.tested is None else pieces * joint.tested

    def _in_window(
        self, coat: CoatUnknowns, below: CoatUnknowns, window: Joining, when: Flag
    ) -> None:
        if window.opens is not None:
            low = coat.window[0]
            self._maker.waits_for(coat.start, below, window.opens, [when], low)
        if window.closes is not None:
            flags = [when, *self._draft.flags(coat.alone)]
            self._maker.in_time_for(coat.start, below, window.closes, flags)
        if window.closes_mixed is not None:
            flags = [when, ~coat.alone]
            self._maker.in_time_for(coat.end, below, window.closes_mixed, flags)

    def _sand(self, index: int, when: Flag) -> WorkUnknowns:
        """Sanding, turning first where it has to be; then the dust settles, then the coat."""
        task, draft = self._chain.tasks[index], self._draft
        means, grid = draft.frame.means, draft.grid
        count = sum(piece.count for piece in self._chain.pieces)
        seconds = means.sand_seconds * count + task.lead
        rest = grid.length(seconds + max(means.shop.settle, task.lead))
        below = task.below or 0
        first = self._lane.coats[below].window[0]
        last = self._lane.coats[index].window[1] - rest
        work = work_by_hand(draft, seconds, (first, last), when)
        draft.sandings.append(draft.span(work.start, work.slots, when))
        self._maker.waits_for(
            work.start, self._lane.coats[below], not_before(Stage.SANDABLE), [when]
        )
        for other in task.rests_on:
            self._maker.waits_for(
                work.start, self._lane.coats[other], not_before(Stage.HANDLE), [when]
            )
        for other in range(below, index):
            self._maker.over(work.start, self._lane.coats[other], 0, [when])
        for other in range(below + 1, index):
            self._covered(work.start, self._lane.coats[other], when)
        self._model.at_least(self._lane.coats[index].start, work.start + rest, [when])
        return work

    def _covered(self, by: Quantity, coat: CoatUnknowns, when: Flag) -> None:
        stage = cover_stage(coat.task.product)
        if stage is not None:
            self._maker.waits_for(by, coat, not_before(stage), [when])

    # Faces, tape and drips

    def _turn(self, index: int) -> None:
        """What a piece lies on can be handled before it is turned for a coat."""
        task, coat = self._chain.tasks[index], self._lane.coats[index]
        for other in task.rests_on:
            reach = not_before(Stage.HANDLE, extra=task.lead)
            self._maker.waits_for(
                coat.start, self._lane.coats[other], reach, (), coat.window[0]
            )

    def _pull_and_trim(self, index: int) -> None:
        """Somebody is awake in the safe window, and before the next block of the piece."""
        coat = self._lane.coats[index]
        if coat.task.fixed is not None:
            self._pulled_from_poured(index, coat)
            return
        seconds = self._draft.frame.means.tape_seconds
        for opens, closes in narrow_windows(coat.task):
            step = self._model.among(self._draft.frame.choices.awake(seconds))
            self._maker.waits_for(step, coat, not_before(opens))
            self._maker.in_time_for(step, coat, not_after(closes, extra=seconds))
            if index + 1 < len(self._lane.coats):
                after = self._lane.coats[index + 1]
                rest = self._draft.grid.length(seconds + after.task.lead)
                self._model.at_least(after.start, step + rest)

    def _pulled_from_poured(self, index: int, coat: CoatUnknowns) -> None:
        """What can still be done on a poured coat is done before the next block."""
        if index + 1 != self._chain.first or index + 1 == len(self._lane.coats):
            return
        frame = self._draft.frame
        where = tuple(Ground(one.on[0][0].place, ()) for one in self._lane.coats)
        times = ChainTimes(frame.means, self._chain, where, ALL_JOINTS)
        lead = self._chain.tasks[index + 1].lead
        for window in narrow_windows(coat.task):
            found = times.awake_step(index, coat.known_start or 0, *window, ALWAYS)
            if found is not None:
                done = found[0] + frame.means.tape_seconds + lead
                self._model.at_least(
                    self._lane.coats[index + 1].start, self._draft.grid.up(done)
                )

    # Spots

    def _stay(self) -> None:
        """Each coat keeps its spot until handle, or until the next coat on the same one."""
        far = self._draft.frame.reaches.far
        for index, coat in enumerate(self._lane.coats):
            last = index + 1 == len(self._lane.coats)
            following = None if last else self._lane.coats[index + 1]
            if following is not None and following.task.fixed is not None:
                continue
            until: Quantity = self._model.between(-far, far + 1)
            if following is None:
                self._maker.waits_for(until, coat, not_before(Stage.HANDLE))
                self._hold(coat, until)
            else:
                stays = self._until_the_next(index, coat, following, until)
                self._hold(coat, until, stays, following.start)

    def _until_the_next(
        self, index: int, coat: CoatUnknowns, following: CoatUnknowns, until: Quantity
    ) -> Flag:
        """Hold a spot until the next coat; the flag says whether that one goes on there."""
        stays = self._draft.yes if coat.task.stays else self._model.flag()
        model = self._model
        model.at_least(until, following.start, [stays])
        for spots, on in coat.on:
            same = [flag for other, flag in following.on if other is spots]
            model.some([*same, ~stays], self._draft.flags(on))
        if coat.task.stays:
            return stays
        self._maker.waits_for(until, coat, not_before(Stage.HANDLE), [~stays])
        lead = following.task.lead if index + 1 == self._chain.first else 0
        reach = not_before(Stage.HANDLE, extra=lead)
        self._maker.waits_for(following.start, coat, reach, [~stays], following.window[0])
        return stays

    def _hold(
        self,
        coat: CoatUnknowns,
        until: Quantity,
        stays: Flag | None = None,
        goes_on: Quantity = 0,
    ) -> None:
        draft, pieces = self._draft, len(self._chain.pieces)
        if coat.task.fixed is not None:
            spot, since = draft.frame.means.legs(coat.task.fixed)[-1]
            lying = Lying(draft.grid.down(since), until, stays, goes_on)
            draft.lying[spot].append(lying)
            return
        for spots, on in coat.on:
            draft.held[spots].append((draft.span_until(coat.since, until, on), pieces))

    # Packing

    def _pack(self) -> None:
        chain, order = self._chain, self._chain.order
        coats = self._lane.coats
        if order is None:
            self._draft.goals.ends += len(chain.pieces) * self._maker.end_minute(coats[-1])
            return
        low, last = self._room.first_packing, self._room.last_packing
        for _ in chain.pieces:
            work = work_by_hand(self._draft, order.packing_minutes * 60, (low, last))
            for index, stage in self._room.asked.gates.items():
                self._maker.waits_for(work.start, coats[index], not_before(stage), (), low)
            self._maker.over(work.start, coats[-1], 0)
            self._lane.packs.append(work)
            begins = self._maker.grid_minutes(work.start)
            self._draft.goals.ends += begins + order.packing_minutes
