"""The windows of coats lose no plan: what the quick planner does lies inside."""

from __future__ import annotations

from typing import TYPE_CHECKING

from hypothesis import HealthCheck, given, settings

from studio_planner.planning.exact.rooms import Limits, RoomMaker
from tests.planning.exact.frames import examples, search_of
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.planning.exact.search import PlanSearch


@settings(suppress_health_check=list(HealthCheck), max_examples=examples(20))
@given(studios())
def test_every_start_and_packing_of_a_quick_plan_lies_in_its_window(
    situation: Situation,
) -> None:
    search = search_of(situation.studio, situation.start)
    if search is not None:
        _judge(search)


def _judge(search: PlanSearch) -> None:
    parts = search.best.parts
    grid, rooms = parts.frame.grid, RoomMaker(parts.frame)
    for lane in search.best.standing.lanes:
        if lane.placed is None:
            continue
        starts, packs = lane.placed.starts, lane.placed.packed
        chain = lane.placed.chain
        lengths = {i: [chain.tasks[i].block] for i in range(chain.first, len(starts))}
        last = grid.up(
            max([one.start for one in packs] or [starts[-1] + chain.tasks[-1].block])
        )
        room = rooms.room(lane, parts.asked(lane), lengths, Limits(last))
        assert room is not None
        for index, (low, high) in room.windows.items():
            assert low <= grid.up(starts[index]) <= high
            assert any(
                first <= grid.up(starts[index]) <= end
                for by in room.starts[index].values()
                for first, end in by
            )
        assert all(room.first_packing <= grid.up(pack.start) for pack in packs)
        alone = parts.alone(lane)
        assert alone is not None
        # The pours of a piece that lacks none lie in the past, where the grid does not reach.
        assert alone <= max(last, 0)


@settings(suppress_health_check=list(HealthCheck), max_examples=examples(12))
@given(studios())
def test_no_order_is_ever_less_late_than_its_own_lanes_alone(situation: Situation) -> None:
    search = search_of(situation.studio, situation.start)
    if search is None:
        return
    standing, parts = search.best.standing, search.best.parts
    for order in situation.studio.orders:
        mine = [
            lane.placed.score[0]
            for lane in standing.lanes
            if lane.chain.order is order and lane.placed is not None
        ]
        if mine:
            placed = [lane for lane in standing.lanes if lane.placed is not None]
            assert parts.alone_late(placed, order) <= round(3600 * max(mine))
