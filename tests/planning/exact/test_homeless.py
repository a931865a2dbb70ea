"""After a small slip only what has no place any more moves; all else stays where it was."""

from __future__ import annotations

from random import Random
from typing import TYPE_CHECKING

import pytest

from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.all_lanes import AllLanes
from studio_planner.planning.exact.homeless import Homeless
from studio_planner.planning.exact.improving import Improver
from studio_planner.planning.exact.search import Effort, PlanSearch
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.solver import Search
from studio_planner.planning.worth import MOVED_SECONDS, moved_pours
from tests.planning.benchmark_studios import START, benchmark_studio
from tests.planning.happenings import nothing, with_pours

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.exact.lanes import Lane

_LONG, _WORK = 60.0, 0.6


def _one_pour_missed(seed: int) -> tuple[datetime, Studio]:
    """A studio in whose kept plan the next pour was not made, and when that is known."""
    studio = benchmark_studio("S", seed)
    now, then = nothing(studio, quick_plan(studio, START))
    assert then.plan is not None
    missed = min(coat.end for coat in then.plan.coats if coat.start >= now)
    others = (coat for coat in then.plan.coats if now <= coat.start and coat.end < missed)
    return missed, with_pours(then, others)


def _search(seed: int) -> PlanSearch:
    now, studio = _one_pour_missed(seed)
    return PlanSearch(quick_start(studio, now))


def _moved(search: PlanSearch) -> frozenset[int]:
    before = search.best.parts.frame.before
    return frozenset(
        at
        for at, lane in enumerate(search.best.standing.lanes)
        if lane.placed is not None and moved_pours(lane.placed, before)
    )


def _homeless(search: PlanSearch) -> Homeless:
    seeded = Random(0)  # noqa: S311 - to be repeated, not to be secret
    return Homeless(seeded, search.best.parts.frame.before)


def _anything(lane: Lane) -> bool:
    del lane
    return True


@pytest.mark.parametrize("seed", [0, 3, 6])
def test_all_but_some_lanes_stay_or_go_back_and_nothing_is_lost(seed: int) -> None:
    search = _search(seed)
    standing = search.best.standing
    lanes = _moved(search)
    tried = AllLanes(search.best.parts).homeless(standing, 0, lanes)
    assert tried is not None
    answer = tried.draft.model.solve(Search(_LONG, _WORK, light=True), tried.enough)
    assert answer.found
    Improver(search.best, 0)._put_back(tried, answer)
    after = search.best.standing
    assert after.worth <= standing.worth
    before = search.best.parts.frame.before
    for at, lane in enumerate(standing.lanes):
        one, other = lane.placed, after.lanes[at].placed
        if at in lanes or one is None:
            continue
        assert other is not None
        for task, old, new in zip(one.chain.tasks, one.starts, other.starts, strict=True):
            then = before.get((one.chain.pieces[0].key, task.coat.key), old)
            assert new == old or abs(new - then) <= MOVED_SECONDS
    assert not check_plan(search._frame.studio, search.plan()).broken


@pytest.mark.parametrize(("seed", "most"), [(1, 4), (3, 4), (11, 2)])
def test_the_first_step_moves_only_what_has_no_place_any_more(seed: int, most: int) -> None:
    search = _search(seed)
    quick = search.best.standing.worth
    search.run(Effort(_LONG, 1), lambda _: None, lambda: False)
    found = search.best.standing.worth
    assert quick.moved > most
    assert found[:4] <= quick[:4]
    assert found.moved <= most


def test_few_lanes_that_moved_are_drawn_with_late_ones_then_alone_and_never_again() -> None:
    search = _search(4)
    standing, moved = search.best.standing, _moved(search)
    late = {
        at
        for at, lane in enumerate(standing.lanes)
        if lane.placed is not None and lane.placed.score[0] > 0
    }
    assert late - moved
    homeless = _homeless(search)
    assert homeless.drawn(standing, _anything, some=False) == moved | late
    assert homeless.drawn(standing, _anything, some=False) == moved
    assert not homeless.drawn(standing, _anything, some=False)


def test_of_many_lanes_that_moved_some_are_drawn_fewer_after_a_search_that_did_not_end() -> (
    None
):
    search = _search(3)
    standing, moved = search.best.standing, _moved(search)
    homeless = _homeless(search)
    for _ in range(9):
        homeless.learn(done=False)
    assert not homeless.drawn(standing, _anything, some=False)
    some = homeless.drawn(standing, _anything, some=True)
    assert some < moved
    coats = sum(
        len(standing.lanes[at].chain.tasks) - standing.lanes[at].chain.first for at in some
    )
    assert coats <= 8
    for _ in range(9):
        homeless.learn(done=True)
    assert homeless.drawn(standing, _anything, some=False)
