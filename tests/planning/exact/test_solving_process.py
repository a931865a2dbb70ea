"""Whatever becomes of the solving process, there is a plan that keeps every rule."""

from __future__ import annotations

import os
import signal
from multiprocessing import active_children, get_context, resource_tracker
from threading import Event
from typing import TYPE_CHECKING

import pytest

from studio_planner.planning import best
from studio_planner.planning.best import best_plan
from studio_planner.planning.checker import check_plan
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_plan, quick_start
from studio_planner.planning.solving import ENOUGH, Request, Teller, serve
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.exact import broken_solving
from tests.planning.exact.broken_solving import MARK

if TYPE_CHECKING:
    from collections.abc import Callable
    from multiprocessing.connection import Connection
    from multiprocessing.process import BaseProcess

    from studio_planner.craft.plans import Plan

_STUDIO = make_studio(3, 8, 4, 1)


def _worth(plan: Plan) -> list[float]:
    return [row.value for row in plan.goals]


def _starts(plan: Plan) -> list[tuple[object, ...]]:
    return [(coat.piece, coat.coat, coat.start) for coat in plan.coats]


def _searching(seconds: float) -> tuple[Connection, BaseProcess]:
    """A solving process, and our end of the line to it."""
    context = get_context("spawn")
    ours, theirs = context.Pipe()
    process = context.Process(target=serve, args=(theirs,), daemon=True)
    process.start()
    theirs.close()
    ours.send(Request(_STUDIO, START, None, seconds, 0))
    return ours, process


def _received(ours: Connection) -> list[Plan]:
    """All plans that a solving process still sends."""
    return list(iter(ours.recv, None))


@pytest.mark.parametrize(
    "broken", [broken_solving.ends_at_once, broken_solving.raises], ids=lambda one: one.__name__
)
def test_a_solving_process_that_ends_leaves_the_quick_plan(
    broken: Callable[..., None], monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr(best, "serve", broken)
    plan = best_plan(_STUDIO, START, seconds=1.0)
    assert _starts(plan) == _starts(quick_plan(_STUDIO, START))
    assert not check_plan(_STUDIO, plan).broken
    assert plan.solved_seconds <= 1.0


def test_a_search_that_breaks_down_is_said_to_have_been_made_and_its_plan_is_rehearsed(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(best, "serve", broken_solving.ends_at_once)
    plan = best_plan(_STUDIO, START, seconds=1.0)
    assert plan.rehearsals > 0
    assert 0.0 < plan.solved_seconds <= 1.0
    assert all(coat.held is not None for coat in plan.coats)


def test_where_rehearsing_fails_too_there_is_a_plan_that_says_that_it_is_not_rehearsed(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(best, "serve", broken_solving.ends_at_once)
    monkeypatch.setattr(best, "serve_rehearsal", broken_solving.does_not_rehearse)
    plan = best_plan(_STUDIO, START, seconds=1.0)
    assert plan.rehearsals == 0
    assert plan.solved_seconds > 0.0


def test_a_search_that_does_not_end_is_not_waited_for_and_a_worse_plan_not_taken(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(best, "serve", broken_solving.sends_a_worse_plan_and_never_ends)
    monkeypatch.setattr(best, "serve_rehearsal", broken_solving.does_not_rehearse)
    monkeypatch.setattr(best, "_GRACE", 2.0)
    plan = best_plan(_STUDIO, START, seconds=2.0)
    assert plan.grid_minutes != MARK
    assert not active_children()


def test_what_was_found_before_a_solver_aborts_stands(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(best, "serve", broken_solving.aborts_after_a_plan)
    told: list[Plan] = []
    plan = best_plan(_STUDIO, START, seconds=1.0, told=told.append)
    assert plan.grid_minutes == MARK
    assert len(told) == 3, "the quick plan, the one that came, and that one rehearsed"


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
    ours, process = _searching(600.0)
    ours.close()
    process.join(60.0)
    assert process.exitcode == 0


def test_a_search_that_is_told_to_look_no_further_gives_what_it_has_rehearsed() -> None:
    ours, process = _searching(600.0)
    ours.send(ENOUGH)
    *_, last = _received(ours)
    assert last.rehearsals > 0
    assert not check_plan(_STUDIO, last).broken
    process.join(60.0)
    assert process.exitcode == 0


def test_a_key_that_ends_all_of_a_terminal_does_not_end_the_solving_process() -> None:
    enough = Event()
    told: list[Plan] = []

    def tell(plan: Plan) -> None:
        told.append(plan)
        for child in active_children() if len(told) > 1 else ():
            assert child.pid is not None
            os.kill(child.pid, signal.SIGINT)
            enough.set()

    plan = best_plan(_STUDIO, START, seconds=600.0, told=tell, enough=enough)
    assert plan.rehearsals > 0
    assert plan.solved_seconds > 0.0


@pytest.mark.parametrize("handed_down", [True, False])
def test_enough_ends_a_long_search_with_what_is_proved_and_rehearsed(
    monkeypatch: pytest.MonkeyPatch,
    handed_down: bool,
) -> None:
    if not handed_down:
        # As on Windows, where there is none of what cleans up after processes either.
        resource_tracker.ensure_running()
        monkeypatch.delattr(signal, "pthread_sigmask")
    told: list[Plan] = []
    enough = Event()

    def tell(plan: Plan) -> None:
        told.append(plan)
        if len(told) > 1:
            enough.set()

    plan = best_plan(_STUDIO, START, seconds=600.0, told=tell, enough=enough)
    assert plan.rehearsals > 0
    assert 0.0 < plan.solved_seconds < 600.0
    assert plan == told[-1]
    known = {goal.goal for goal in told[1].goals if goal.proved}
    assert known <= {goal.goal for goal in plan.goals if goal.proved}
    assert not active_children()


def test_enough_before_a_search_leaves_the_quick_plan_rehearsed() -> None:
    enough = Event()
    enough.set()
    plan = best_plan(_STUDIO, START, seconds=600.0, enough=enough)
    assert _starts(plan) == _starts(quick_plan(_STUDIO, START))
    assert plan.rehearsals > 0
    assert plan.solved_seconds == 0.0


def test_nothing_is_started_when_no_time_is_asked_for() -> None:
    plan = best_plan(_STUDIO, START, seconds=0.0)
    assert plan.coats == quick_plan(_STUDIO, START).coats
    assert not active_children()


def test_what_is_proved_is_told_at_once_and_what_is_only_better_after_a_pause() -> None:
    search = PlanSearch(quick_start(_STUDIO, START))
    context = get_context("spawn")
    ours, theirs = context.Pipe()
    teller = Teller(theirs)

    def told() -> bool:
        teller.told(search)
        return ours.poll() and bool(ours.recv())

    assert told()
    assert not told()
    _prove_one_more(search)
    assert told()
    assert not told()
    teller.end()
    _prove_one_more(search)
    assert not told(), "the last plan is somebody else's to send"


def _prove_one_more(search: PlanSearch) -> None:
    best = search.best
    unmet = next(row for row in best.goals if not row.proved)
    best.bound(unmet.goal, best.parts.values(best.standing.lanes)[unmet.goal])
