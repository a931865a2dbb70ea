"""Chains of a round that are let go and placed again."""

from __future__ import annotations

from random import Random
from typing import TYPE_CHECKING

from studio_planner.planning.exact.letting_go import LettingGo
from studio_planner.planning.keeping.kept_plan import KeptPlan
from studio_planner.planning.placing.placer import Stuck
from studio_planner.planning.quick import quick_plan, quick_start
from tests.planning.benchmark_studios import START, benchmark_studio, make_studio
from tests.planning.happenings import HAPPENINGS

if TYPE_CHECKING:
    from collections.abc import Iterable

    from studio_planner.planning.placing.placements import Placement
    from studio_planner.planning.problem import Chain
    from studio_planner.planning.quick import QuickStart
    from studio_planner.planning.rounds import Pass

_LATE = 5
"""The seed of a small studio whose quick plan is late."""

_ALIKE = 72.0
"""Hours by which three chains of one order are late in another one."""

_TRIES = 60


def _less_late(start: QuickStart, begun: Pass, seed: int) -> Pass:
    kept = None if start.before is None else KeptPlan(start.rounds.studio, start.before)
    drawn = Random(seed)  # noqa: S311 - to be repeated, not to be secret
    return LettingGo(start.rounds, kept, drawn).less_late(begun, _TRIES, lambda: True)


def _starts(placed: Iterable[Placement]) -> dict[str, tuple[int, ...]]:
    return {one.chain.pieces[0].key: one.starts for one in placed}


def test_letting_go_loses_no_chain_and_never_makes_more_late() -> None:
    better = 0
    for seed in range(6):
        start = quick_start(benchmark_studio("S", seed), START)
        found = _less_late(start, start.found, seed)
        assert found.worth[:5] <= start.found.worth[:5]
        assert _starts(found.placed).keys() == _starts(start.found.placed).keys()
        assert len(found.placed) == len(start.found.placed)
        better += found.worth.late < start.found.worth.late
    assert better, "some late quick plans get better in this way alone"


def test_what_was_let_go_fits_among_what_stayed() -> None:
    start = quick_start(benchmark_studio("S", _LATE), START)
    found = _less_late(start, start.found, 0)
    shop = start.rounds.placer()
    for one in found.placed:
        for index, person in enumerate(one.people):
            task, begun = one.chain.tasks[index], one.starts[index]
            assert shop.means.shop.hands[person].holds(begun - task.lead, begun + task.block)
        shop.finisher.book(one)


def test_the_same_draws_give_the_same_plan() -> None:
    start = quick_start(benchmark_studio("S", _LATE), START)
    one, other = (_starts(_less_late(start, start.found, 1).placed) for _ in range(2))
    assert one == other


def test_nothing_is_let_go_where_nothing_is_late() -> None:
    start = quick_start(benchmark_studio("S", 0), START)
    assert _less_late(start, start.found, 0) is start.found


def test_no_more_is_tried_once_it_is_not_wanted() -> None:
    start = quick_start(benchmark_studio("S", _LATE), START)
    asked = iter([True, True, False])
    found = LettingGo(start.rounds, None, Random(0)).less_late(  # noqa: S311 - to be repeated
        start.found, _TRIES, lambda: next(asked)
    )
    assert found.worth[:5] <= start.found.worth[:5]
    assert next(asked, None) is None


def test_what_found_no_place_is_placed_before_all_else_is_better() -> None:
    start = quick_start(benchmark_studio("S", _LATE), START)
    first, *others = [one.chain for one in start.found.placed]
    placed, _ = start.rounds.placer().place_all(others)
    left_out = start.rounds.weighed(placed, [Stuck(first, None, None)])
    found = _less_late(start, left_out, 0)
    assert not found.stuck
    assert len(found.placed) == len(placed) + 1


def test_where_nothing_has_a_place_nothing_is_let_go() -> None:
    start = quick_start(benchmark_studio("S", _LATE), START)
    nothing = start.rounds.weighed([], [Stuck(start.found.placed[0].chain, None, None)])
    assert _less_late(start, nothing, 0) is nothing


def test_where_a_kept_plan_draws_fewer_pours_move_from_it() -> None:
    studio = make_studio(1, 8, 4, 1)
    now, changed = HAPPENINGS["cold nights"](studio, quick_plan(studio, START))
    start = quick_start(changed, now)
    anew = start.rounds.best([one.chain for one in start.found.placed], (), 1)
    found = _less_late(start, anew, 0)
    assert anew.worth.moved > 0
    assert found.worth[:5] < anew.worth[:5]


def test_chains_of_an_order_that_are_as_late_are_let_go_together() -> None:
    start = quick_start(benchmark_studio("S", 1), START)
    placed = [one for one in start.found.placed if one.score[0] in {0.0, _ALIKE}]
    late = {one.chain.key for one in placed if one.score[0]}
    assert len(late) == 3
    begun = start.rounds.weighed(placed, [])
    tried: list[set[str]] = []

    def as_it_is(chain: Chain) -> Chain:
        tried[-1].add(chain.key)
        return chain

    for seed in range(10):
        drawn = Random(seed)  # noqa: S311 - to be repeated, not to be secret
        tried.append(set())
        LettingGo(start.rounds, None, drawn, as_it_is, most=1).less_late(begun, 1, lambda: True)
    assert all(len(gone) <= len(late) + 1 for gone in tried)
    assert any(gone >= late for gone in tried), "the others were given up at the first"
