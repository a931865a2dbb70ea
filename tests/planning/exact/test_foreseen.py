"""Plans that foresee shared mixes, and the search that starts near them."""

from __future__ import annotations

from random import Random
from typing import TYPE_CHECKING

from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.foreseen import Foreseen
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_start
from tests.planning.benchmark_studios import START, benchmark_studio, late_studio, make_studio

if TYPE_CHECKING:
    from studio_planner.planning.exact.part import Standing

_LATE = 5
"""The seed of a small studio whose quick plan is late, with no mix shared."""

_LATE_OF_M = 0
"""The seed of a larger one of which much is late."""

_DRAWN = Random(0)  # noqa: S311 - to be repeated, not to be secret
_LONG, _WORK, _FIRST_STEPS = 60.0, 0.6, 8


def _foreseen(seed: int) -> tuple[PlanSearch, Foreseen]:
    start = quick_start(benchmark_studio("S", seed), START)
    search = PlanSearch(start)
    return search, Foreseen(
        start.rounds, search.best.parts, search.best.standing, 3, start.before
    )


def _blocks(standing: Standing) -> dict[tuple[str, int], int]:
    return {
        (one.chain.pieces[0].key, index): task.block
        for one in standing.placed
        for index, task in enumerate(one.laid.chain.tasks)
    }


def test_a_foreseen_plan_is_less_late_and_no_block_in_it_is_longer() -> None:
    search, foreseen = _foreseen(_LATE)
    standing = search.best.standing
    found = foreseen.less_late(search.best, _DRAWN)
    assert found is not None
    assert found.plan.worth.late < standing.worth.late
    before, after = _blocks(standing), _blocks(found.plan)
    assert before.keys() == after.keys()
    assert all(after[coat] <= before[coat] for coat in before)
    assert any(after[coat] < before[coat] for coat in before)


def test_what_is_turned_pays_its_whole_set_up() -> None:
    for seed in range(6):
        search, foreseen = _foreseen(seed)
        found = foreseen.less_late(search.best, _DRAWN)
        for one in () if found is None else found.plan.placed:
            for task, own in zip(one.laid.chain.tasks, one.chain.tasks, strict=True):
                assert not own.lead or task.block == own.block


def test_no_plan_is_foreseen_where_nothing_is_late() -> None:
    search, foreseen = _foreseen(0)
    assert not search.best.standing.worth.late
    assert foreseen.less_late(search.best, _DRAWN) is None


def test_the_first_steps_share_mixes_by_every_rule() -> None:
    for seed in (0, _LATE):
        search, foreseen = _foreseen(seed)
        improver = Improver(search.best, 0, foreseen)
        before = search.best.standing.worth
        mixes = []
        for _ in range(_FIRST_STEPS):
            improver.step(_LONG, _WORK)
            mixes.append(search.best.standing.worth.mixes)
        coats = len(_blocks(search.best.standing))
        assert search.best.standing.worth < before
        assert min(mixes) <= 0.85 * coats
        assert not check_plan(benchmark_studio("S", seed), search.plan()).broken


def test_of_a_very_large_studio_no_plan_is_foreseen_anew() -> None:
    search = PlanSearch(quick_start(make_studio(0, 101, 4, 8), START))
    foreseen = search._foreseen()
    assert not foreseen.anew
    assert not foreseen.opening


def test_of_a_large_studio_there_are_rough_plans_instead() -> None:
    search = PlanSearch(quick_start(benchmark_studio("L", 2), START))
    foreseen = search._foreseen()
    assert not foreseen.anew
    assert not foreseen.opening
    more = [foreseen.by_days_first]
    foreseen.leave_rough_plans()
    assert [*more, foreseen.by_days_first] == [True, False]
    assert foreseen.by_days(search.best, _DRAWN) is None


def test_beside_the_plan_that_stands_few_lanes_differ_and_less_comes_late() -> None:
    search = PlanSearch(quick_start(late_studio(_LATE_OF_M), START))
    standing, foreseen = search.best.standing, search._foreseen()
    wish = foreseen.beside(search.best, Random(0))  # noqa: S311 - to be repeated
    assert wish is not None
    assert wish.beside is standing
    assert wish.plan.worth.late < standing.worth.late
    pairs = list(zip(standing.lanes, wish.plan.lanes, strict=True))
    assert all(one.chain is other.chain for one, other in pairs)
    gone = [other for one, other in pairs if one.placed is not other.placed]
    assert 0 < len(gone) < len(pairs)


def test_nothing_is_beside_a_plan_in_which_nothing_is_late() -> None:
    search, foreseen = _foreseen(0)
    assert foreseen.beside(search.best, _DRAWN) is None
    assert foreseen.beside_by_days(search.best, _DRAWN) is None
