"""Orders in which chains are placed in turn."""

from __future__ import annotations

from random import Random
from typing import TYPE_CHECKING

from studio_planner.planning.exact.queues import in_turn, less_late
from studio_planner.planning.quick import quick_start
from tests.planning.benchmark_studios import START, benchmark_studio

if TYPE_CHECKING:
    from studio_planner.planning.exact.queues import Placed
    from studio_planner.planning.quick import QuickStart

_LATE = 5
"""The seed of a small studio whose quick plan is late."""

_MOVES = 12


def _begun(seed: int) -> tuple[QuickStart, Placed]:
    start = quick_start(benchmark_studio("S", seed), START)
    return start, in_turn(start.rounds, [one.chain for one in start.found.placed])


def test_the_same_order_gives_the_same_plan_again() -> None:
    start, begun = _begun(_LATE)
    assert begun.rank == start.found.worth[:2]
    assert [one.starts for one in begun.placements] == [
        one.starts for one in start.found.placed
    ]


def test_moving_chains_about_loses_none_and_never_makes_more_late() -> None:
    for seed in range(4):
        start, begun = _begun(_LATE)
        found = less_late(start.rounds, begun, _MOVES, Random(seed))  # noqa: S311
        assert found.rank <= begun.rank
        assert {chain.pieces for chain in found.queue} == {
            chain.pieces for chain in begun.queue
        }
        assert len(found.queue) == len(begun.queue)
        assert in_turn(start.rounds, found.queue).rank == found.rank


def test_the_same_draws_give_the_same_order() -> None:
    start, begun = _begun(_LATE)
    one, other = (
        less_late(start.rounds, begun, _MOVES, Random(1)).queue  # noqa: S311
        for _ in range(2)
    )
    assert one == other


def test_nothing_is_moved_where_nothing_is_late() -> None:
    start, begun = _begun(0)
    assert less_late(start.rounds, begun, _MOVES, Random(0)) is begun  # noqa: S311
