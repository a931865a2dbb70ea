"""A part of a plan, freed and solved exactly among all the rest, which stays as it is."""

from __future__ import annotations

import math
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.around import Around
from studio_planner.planning.exact.assigning import assigned
from studio_planner.planning.exact.between_lanes import drafted
from studio_planner.planning.exact.draft import Draft
from studio_planner.planning.exact.frame import ALL_JOINTS, Frame
from studio_planner.planning.exact.lanes import Lane
from studio_planner.planning.exact.promised import HOUR
from studio_planner.planning.exact.reaches import MINUTE
from studio_planner.planning.exact.rooms import Limits, RoomMaker
from studio_planner.planning.exact.sharing import sharing
from studio_planner.planning.exact.standing_plan import Takings, pinned
from studio_planner.planning.problem import build_chains
from studio_planner.planning.solver import Search, Status
from studio_planner.planning.worth import Worth, of_orders, worth_of

if TYPE_CHECKING:
    from collections.abc import Collection, Iterable, Sequence

    from studio_planner.craft.orders import Order
    from studio_planner.planning.exact.answers import Rough
    from studio_planner.planning.exact.asked import Asked
    from studio_planner.planning.exact.working_days import WorkingDays
    from studio_planner.planning.placing.placements import Placement


@dataclass(frozen=True, slots=True)
class Standing:
    """All lanes as they are placed, and what that is worth."""

    lanes: tuple[Lane, ...]
    worth: Worth

    @property
    def placed(self) -> list[Placement]:
        """The placements of all lanes that have one."""
        return [lane.placed for lane in self.lanes if lane.placed is not None]

    @property
    def new_coats(self) -> int:
        """How many coats are still to be poured."""
        return sum(lane.new_coats for lane in self.lanes)


_WORK = 1.0
"""The solver's own work put into whether a lane has a place at all."""

_A_LITTLE = 0.1
"""Days by which coats give way to share a mix: most can be shared within an evening."""


@dataclass(frozen=True, slots=True)
class Freedom:
    """How a part is freed: lanes by position, days around each start, mixes to be shared."""

    lanes: frozenset[int]
    days: float | None = None
    beside: frozenset[int] = frozenset()
    """Lanes among them that only give way a little, so that mixes can be shared with others."""
    beside_days: float = _A_LITTLE
    """How much those give way: days around each start."""
    all_mixes: bool = False
    back: bool = False
    """Whether coats may also start where the plan before had them."""
    to_prove: bool = False
    """Whether nothing may be cut off that could be better in any way."""
    late: int | None = None
    """Weighted seconds by which all freed orders together may be late; None for as now."""
    most_mixes: int | None = None
    """How many mixes may be made, which are unknowns of their own then."""
    as_placed: bool = False
    """Whether joints are scuffed only in lanes that have such now, and pieces are packed no
    later than in the working hours after those in which they are: far fewer ways."""
    whole_days: WorkingDays | None = None
    """Where given, each coat of all lanes but those `beside` may start all through its day."""

    def around(self, lane: int) -> float | None:
        """The days around its start in which each coat of a lane may start."""
        return self.beside_days if lane in self.beside else self.days


class Parts:
    """Frees parts of one studio's plans and puts answers back."""

    def __init__(self, frame: Frame) -> None:
        """Work in one frame."""
        self.frame = frame
        self._rooms = RoomMaker(frame)
        self._takings = Takings(frame)
        self._asked: dict[tuple[str, bool], Asked] = {}
        self._alone: dict[str, int | None] = {}
        self._possible: dict[str, bool] = {}
        self.chains = build_chains(frame.studio, twins=False)[0]
        self._single = {chain.key: chain for chain in self.chains}

    def standing(self, lanes: Sequence[Lane]) -> Standing:
        """Lanes with their worth."""
        placed = [lane.placed for lane in lanes if lane.placed is not None]
        left_out = sum(len(lane.chain.pieces) for lane in lanes if lane.placed is None)
        worth = worth_of(placed, left_out, self.frame.grid.origin, self.frame.before)
        return Standing(tuple(lanes), worth)

    def draft(
        self, standing: Standing, freedom: Freedom, near: Standing | None = None
    ) -> Draft | None:
        """The model of a freed part; None when it has no room for an answer as good.

        Days count around the starts of the plan that stands, or of another one it is `near`.
        """
        free = sorted(freedom.lanes)
        lanes = [(near or standing).lanes[at] for at in free]
        held = pinned(standing.lanes, freedom.lanes)
        ends = self.last_packing(standing, freedom)
        around = [
            Around(
                self.frame,
                lane,
                freedom.around(at),
                back=freedom.back,
                whole=None if at in freedom.beside else freedom.whole_days,
            )
            for at, lane in zip(free, lanes, strict=True)
        ]
        asked = {lane.key: self.asked(lane, as_placed=freedom.as_placed) for lane in lanes}
        if freedom.as_placed:
            ends = {
                at: min(ends[at], self._rooms.last_pack(lane))
                for at, lane in zip(free, lanes, strict=True)
            }
        limits = [
            Limits(ends[at], where.hull, held[at])
            for at, where in zip(free, around, strict=True)
        ]
        bounds = []
        for lane, limit in zip(lanes, limits, strict=True):
            bound = self._rooms.bounds(lane, asked[lane.key], limit)
            if bound is None:
                return None
            bounds.append(bound)
        may_start = {
            (position, index): window
            for position, bound in enumerate(bounds)
            for index, window in bound.windows.items()
            if index not in limits[position].settled
        }
        shared = sharing(
            self.frame.studio, lanes, all_pairs=freedom.all_mixes, may_start=may_start
        )
        rooms = []
        for position, lane in enumerate(lanes):
            lengths = {i: shared.lengths((position, i)) for i in bounds[position].windows}
            limit, bound = limits[position], bounds[position]
            rooms.append(self._rooms.bounded(lane, asked[lane.key], lengths, limit, bound))
        settled = self._takings.settled(standing.lanes, freedom.lanes)
        draft = drafted(
            Draft(self.frame, to_the_minute=freedom.to_prove),
            rooms,
            shared,
            settled,
            freedom.most_mixes,
        )
        for unknown, where in zip(draft.lanes, around, strict=True):
            where.keep(draft.model, unknown)
        return draft

    def put_back(
        self, standing: Standing, free: Collection[int], found: Sequence[Rough]
    ) -> Standing | None:
        """The standing with the answer of a freed part in it; None when it does not fit."""
        roughs = [*found, *self._takings.roughs(standing.lanes, free)]
        placed = assigned(self.frame, roughs)
        if placed is None:
            return None
        by_key = {one.chain.key: one for one in placed}
        lanes = [Lane(lane.chain, by_key.get(lane.key)) for lane in standing.lanes]
        return self.standing(lanes)

    def values(self, lanes: Sequence[Lane]) -> dict[Goal, int]:
        """What some placed lanes have of each goal, in the model's units; empty if one is not.

        Coats that share a mix with other lanes are not counted among the mixes.
        """
        placed = [lane.placed for lane in lanes if lane.placed is not None]
        if len(placed) < len(lanes):
            return {}
        worth = worth_of(placed, 0, self.frame.grid.origin, self.frame.before)
        return {
            Goal.LATENESS: _in_seconds(placed, 0),
            Goal.SCUFFED: worth.scuffed,
            Goal.TESTED: worth.tested,
            Goal.MOVED: worth.moved,
            Goal.SPARE: _in_seconds(placed, 3),
            Goal.MIXES: worth.mixes,
            Goal.ENDS: math.ceil(round(worth.ends * HOUR / MINUTE, 3)),
        }

    def asked(self, lane: Lane, *, as_placed: bool = False) -> Asked:
        """What is asked of a lane's coats, whatever joints they allow.

        `as_placed` none is scuffed where the lane has no such joint as it is placed.
        """
        scuff = not as_placed or lane.placed is None or lane.placed.score[1] > 0
        if (lane.key, scuff) not in self._asked:
            allow = replace(ALL_JOINTS, scuff=scuff)
            self._asked[lane.key, scuff] = self.frame.asked(lane.chain, allow)
        return self._asked[lane.key, scuff]

    def possible(self, lane: Lane) -> bool:
        """Whether the model could place a lane if there were no others."""
        if lane.key not in self._possible:
            draft = self.draft(self.standing([Lane(lane.chain, None)]), Freedom(frozenset({0})))
            found = None if draft is None else draft.model.solve(Search(1.0, _WORK, light=True))
            self._possible[lane.key] = found is not None and (
                found.status is not Status.IMPOSSIBLE
            )
        return self._possible[lane.key]

    def alone(self, lane: Lane) -> int | None:
        """The earliest slot in which the packing of a lane by itself can begin."""
        if lane.key not in self._alone:
            found = [self._alone_piece(piece.key) for piece in lane.chain.pieces]
            known = [begins for begins in found if begins is not None]
            self._alone[lane.key] = max(known, default=None)
        return self._alone[lane.key]

    def _alone_piece(self, piece: str) -> int | None:
        """As `alone`, for one of several twins: apart they may be sooner than together."""
        lane = Lane(self._single[piece], None)
        return self._rooms.alone(lane, self.frame.asked(lane.chain, ALL_JOINTS))

    def alone_late(self, lanes: Sequence[Lane], order: Order) -> int:
        """The weighted seconds by which an order is late at least, its lanes by themselves."""
        found = [self.alone(lane) for lane in lanes if lane.chain.order is order]
        known = [begins for begins in found if begins is not None]
        return self.frame.promised(order).leaving(max(known)).late if known else 0

    def alone_ends(self, lanes: Sequence[Lane]) -> float:
        """The sum of the minutes in which pieces are done, each by itself in the studio.

        Twins that stay together are left out: which of them is packed last is open.
        """
        grid, ends = self.frame.grid, 0.0
        for lane in lanes:
            order, begins, last = lane.chain.order, self.alone(lane), lane.chain.tasks[-1]
            if order is None and last.fixed is not None:
                over = last.fixed.start.timestamp() + last.block
                ends += (over - grid.origin) / MINUTE
            elif begins is not None and len(lane.chain.pieces) == 1:
                # Who is not packed is done within the slot before.
                slot = grid.step // MINUTE
                ends += begins * slot + (order.packing_minutes if order else 1 - slot)
        return ends

    def last_packing(self, standing: Standing, freedom: Freedom) -> dict[int, int]:
        """The last slot in which each freed lane's packing begins, to be no later in all.

        One order may be later than now only by what the other freed ones could gain at most.
        What nobody ordered keeps within what is placed now, unless something is to be proved.
        """
        free = sorted(freedom.lanes)
        lanes = [standing.lanes[at] for at in free]
        orders = {lane.chain.order.key: lane.chain.order for lane in lanes if lane.chain.order}
        least = {key: self.alone_late(lanes, order) for key, order in orders.items()}
        placed = [lane.placed for lane in lanes if lane.placed is not None]
        total = _in_seconds(placed, 0) if len(placed) == len(lanes) else None
        total = total if freedom.late is None else freedom.late
        far = self.frame.grid.down(self.frame.means.end)
        unordered = far
        if total is not None and not freedom.to_prove:
            unordered = min(far, self._latest_end(standing))
        found = {}
        for at, lane in zip(free, lanes, strict=True):
            order = lane.chain.order
            if order is None or total is None:
                found[at] = unordered if order is None else far
            else:
                most = total - sum(least.values()) + least[order.key]
                found[at] = min(far, self.frame.promised(order).begins_by(max(most, 0)))
        return found

    def _latest_end(self, standing: Standing) -> int:
        return self.frame.grid.up(max(one.score[4] for one in standing.placed))


def _in_seconds(placed: Iterable[Placement], part: int) -> int:
    """What orders have of a part of the score that is in hours, each to the second."""
    return sum(round(HOUR * hours) for hours in of_orders(placed, part).values())
