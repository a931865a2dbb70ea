"""Plans that foresee shared mixes, and the search that starts near them."""

from __future__ import annotations

from random import Random
from typing import TYPE_CHECKING

import pytest

from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.all_lanes import AllLanes
from studio_planner.planning.exact.foreseen import Foreseen
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.solver import Search
from tests.planning.benchmark_studios import START, benchmark_studio
from tests.planning.happenings import HAPPENINGS

if TYPE_CHECKING:
    from studio_planner.planning.exact.part import Standing

_LATE = 5
"""The seed of a small studio whose quick plan is late, with no mix shared."""

_LATE_WHERE_COLD = 1
"""The seed of one whose plan comes late by colder nights."""

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
    assert found.worth.late < standing.worth.late
    before, after = _blocks(standing), _blocks(found)
    assert before.keys() == after.keys()
    assert all(after[coat] <= before[coat] for coat in before)
    assert any(after[coat] < before[coat] for coat in before)


def test_what_is_turned_pays_its_whole_set_up() -> None:
    for seed in range(6):
        search, foreseen = _foreseen(seed)
        found = foreseen.less_late(search.best, _DRAWN)
        for one in () if found is None else found.placed:
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


@pytest.mark.parametrize("loosely", [False, True])
def test_near_a_foreseen_plan_less_comes_late_with_few_pours_moved(*, loosely: bool) -> None:
    studio = benchmark_studio("S", _LATE_WHERE_COLD)
    now, then = HAPPENINGS["cold nights"](studio, quick_plan(studio, START))
    start = quick_start(then, now)
    search = PlanSearch(start)
    best, standing = search.best, search.best.standing
    foreseen = Foreseen(start.rounds, best.parts, standing, 1, start.before)
    wish = foreseen.less_late(best, Random(0))  # noqa: S311 - to be repeated
    assert wish is not None
    tried = AllLanes(best.parts).near(standing, wish, loosely=loosely)
    assert tried is not None
    answer = tried.draft.model.solve(Search(_LONG, _WORK, light=True), tried.enough)
    assert Improver(best, 0)._put_back(tried, answer)
    after = best.standing.worth
    most = standing.worth.late if loosely else wish.worth.late + 0.5
    assert after.late <= most
    assert after < standing.worth
    assert loosely or after.moved <= wish.worth.moved + 3
    assert not check_plan(then, search.plan()).broken
