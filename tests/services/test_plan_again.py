from __future__ import annotations

import sys
from dataclasses import replace
from types import ModuleType
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.saying import SILENT
from studio_planner.planning.quick import quick_plan
from studio_planner.services.plan_again import explained, plan_again
from tests.planning.benchmark_studios import START, hurried, make_studio
from tests.services.small_studios import kept, morning, planned_once, two_trays

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from threading import Event

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.services.plan_again import CheckedPlan


def rehearsed(plan: Plan, weeks: int) -> Plan:
    return replace(plan, rehearsals=weeks)


def spoiled(plan: Plan) -> Plan:
    """The plan with two coats at one time on one spot."""
    first, second, *rest = plan.coats
    double = replace(second, start=first.start, end=first.end, spot=first.spot)
    return replace(plan, coats=(first, double, *rest))


def looks(monkeypatch: pytest.MonkeyPatch, find: Callable[[Plan], list[Plan]]) -> list[object]:
    """Let `find` say which plans come after the quick one; gives what was asked."""
    asked: list[object] = []

    def best_plan(  # noqa: PLR0913 - as the real one
        studio: Studio,
        now: datetime,
        until: datetime | None = None,
        *,
        seconds: float,
        seed: int = 0,
        told: Callable[[Plan], None] | None = None,
        enough: Event | None = None,
    ) -> Plan:
        del enough
        asked.append((now, until, seconds, seed))
        plans = find(quick_plan(studio, now, until))
        for plan in plans:
            assert told is not None
            told(plan)
        return plans[-1]

    module = ModuleType("studio_planner.planning.best")
    module.best_plan = best_plan  # type: ignore[attr-defined]
    monkeypatch.setitem(sys.modules, module.__name__, module)
    return asked


def test_each_better_plan_is_told_and_the_last_is_given(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    asked = looks(monkeypatch, lambda quick: [rehearsed(quick, weeks) for weeks in range(3)])
    studio = two_trays()
    told: list[CheckedPlan] = []
    made = plan_again(studio, morning(studio), seconds=7, told=told.append)
    assert [one.plan.rehearsals for one in told] == [0, 1, 2]
    assert made.plan == told[-1].plan
    assert asked == [(morning(studio), None, 7, 0)]


def test_nobody_needs_to_listen_to_better_plans(monkeypatch: pytest.MonkeyPatch) -> None:
    looks(monkeypatch, lambda quick: [rehearsed(quick, 3)])
    studio = two_trays()
    assert plan_again(studio, morning(studio), seconds=1).plan.rehearsals == 3


def test_a_better_plan_that_breaks_a_rule_is_never_passed_on(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    looks(monkeypatch, lambda quick: [quick, rehearsed(quick, 1), spoiled(quick)])
    studio = two_trays()
    told: list[CheckedPlan] = []
    made = plan_again(studio, morning(studio), seconds=1, told=told.append)
    assert [one.plan.rehearsals for one in told] == [0, 1]
    assert made.plan == told[-1].plan


def test_a_search_that_finds_only_wrong_plans_gives_none(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    looks(monkeypatch, lambda quick: [spoiled(quick)])
    studio = two_trays()
    with pytest.raises(NoPlanPossible, match="breaks a rule and is not used"):
        plan_again(studio, morning(studio), seconds=1)


def test_without_seconds_nothing_better_is_looked_for(monkeypatch: pytest.MonkeyPatch) -> None:
    asked = looks(monkeypatch, lambda quick: [quick])
    studio = two_trays()
    told: list[CheckedPlan] = []
    made = plan_again(studio, morning(studio), told=told.append)
    assert (asked, told) == ([], [])
    assert made.plan.goals


def test_a_late_order_goes_first_where_that_is_better_though_nothing_better_is_looked_for() -> (
    None
):
    studio = hurried(make_studio(1, 8, 4, 2), 5)
    plan = plan_again(studio, START).plan
    late = [one.goals[1].value for one in (plan, quick_plan(studio, START))]
    assert late[0] < late[1]
    tried = [str(change.words) for row in plan.outcomes for change in row.changes]
    assert any(words.startswith("pour it before all others (makes ") for words in tried)
    assert not any(words.startswith("plan again") for words in tried)


def test_a_plan_can_be_given_its_reasons_anew() -> None:
    studio = planned_once()
    plan = kept(studio)
    bare = replace(
        plan, outcomes=tuple(replace(one, reason=SILENT, changes=()) for one in plan.outcomes)
    )
    assert explained(studio, bare).plan == plan
