"""Whatever becomes of the solving process, there is a plan that keeps every rule."""

from __future__ import annotations

from multiprocessing import active_children, get_context
from typing import TYPE_CHECKING

import pytest

from studio_planner.planning import best
from studio_planner.planning.best import best_plan
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.solving import Request, Teller, serve
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.exact import broken_solving
from tests.planning.exact.broken_solving import MARK

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.plans import Plan

_STUDIO = make_studio(3, 8, 4, 1)


def _worth(plan: Plan) -> list[float]:
    return [row.value for row in plan.goals]


@pytest.mark.parametrize(
    "broken", [broken_solving.ends_at_once, broken_solving.raises], ids=lambda one: one.__name__
)
def test_a_solving_process_that_ends_leaves_the_quick_plan(
    broken: Callable[..., None], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(best, "serve", broken)
    plan = best_plan(_STUDIO, START, seconds=1.0)
    assert plan.coats == quick_plan(_STUDIO, START).coats
    assert not check_plan(_STUDIO, plan).broken


def test_what_was_found_before_a_solver_aborts_stands(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(best, "serve", broken_solving.aborts_after_a_plan)
    told: list[Plan] = []
    plan = best_plan(_STUDIO, START, seconds=1.0, told=told.append)
    assert plan.grid_minutes == MARK
    assert len(told) == 2


def test_a_search_that_broke_down_is_begun_again_while_there_is_time(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(best, "serve", broken_solving.works_the_second_time)
    plan = best_plan(_STUDIO, START, seconds=60.0)
    assert plan.grid_minutes == MARK


def test_a_process_that_is_killed_in_the_middle_leaves_a_plan_that_keeps_every_rule() -> None:
    told: list[Plan] = []

    def tell(plan: Plan) -> None:
        told.append(plan)
        if len(told) == 2:
            for child in active_children():
                child.kill()

    plan = best_plan(_STUDIO, START, seconds=5.0, told=tell)
    assert not check_plan(_STUDIO, plan).broken
    assert _worth(plan) <= _worth(told[0])


def test_the_solving_process_ends_when_nobody_listens_any_more() -> None:
    context = get_context("spawn")
    ours, theirs = context.Pipe()
    request = Request(_STUDIO, START, None, 600.0, 0)
    process = context.Process(target=serve, args=(theirs, request), daemon=True)
    process.start()
    theirs.close()
    ours.close()
    process.join(60.0)
    assert process.exitcode == 0


def test_nothing_is_started_when_no_time_is_asked_for() -> None:
    plan = best_plan(_STUDIO, START, seconds=0.0)
    assert plan.coats == quick_plan(_STUDIO, START).coats
    assert not active_children()


def test_what_is_proved_is_told_at_once_and_what_is_only_better_after_a_pause() -> None:
    search = PlanSearch(quick_start(_STUDIO, START))
    best = search.best
    context = get_context("spawn")
    ours, theirs = context.Pipe()
    tell = Teller(theirs).told

    def told() -> bool:
        tell(search)
        return ours.poll() and bool(ours.recv())

    assert told()
    assert not told()
    unmet = next(row for row in best.goals if not row.proved)
    best.bound(unmet.goal, best.parts.values(best.standing.lanes)[unmet.goal])
    assert told()
    assert not told()
