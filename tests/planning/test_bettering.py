"""What is tried for late orders and needs no change becomes the plan where it is better."""

from __future__ import annotations

from collections import Counter
from dataclasses import replace
from datetime import timedelta
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.planning.best import best_plan
from studio_planner.planning.checker import check_plan
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.late.bettering import bettered
from studio_planner.planning.late.promises import explain
from studio_planner.planning.late.trials import Trials, is_late
from studio_planner.planning.late.written_worth import plan_worth
from studio_planner.planning.quick import quick_plan
from tests.planning.benchmark_studios import START, hurried, make_studio
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


def tight(seed: int) -> Studio:
    """A small studio whose dates are sooner than it can well keep."""
    return hurried(make_studio(seed, 8, 4, 2), 5)


def worth(plan: Plan) -> tuple[float, ...]:
    return tuple(goal.value for goal in plan.goals)


def says_plan_again(studio: Studio, plan: Plan) -> bool:
    rows = explain(studio, plan).outcomes
    words = [str(change.words) for row in rows for change in row.changes]
    return any(one.startswith("plan again: pour it before all others") for one in words)


def test_a_plan_with_a_late_order_first_takes_the_place_of_one_that_is_later() -> None:
    studio = tight(1)
    plan = quick_plan(studio, START)
    assert says_plan_again(studio, plan)
    better = bettered(studio, plan)
    assert worth(better) < worth(plan)
    assert not says_plan_again(studio, better)


def test_a_plan_that_is_bettered_keeps_what_was_proved_and_how_long_was_looked() -> None:
    studio = tight(1)
    plan = quick_plan(studio, START)
    late = plan.goals[1].value - 20.0
    goals = [replace(row, bound=late) if row is plan.goals[1] else row for row in plan.goals]
    better = bettered(studio, replace(plan, goals=tuple(goals), solved_seconds=3.0))
    assert (better.goals[1].bound, better.solved_seconds) == (late, 3.0)


def test_a_search_however_short_ends_with_a_plan_that_no_late_order_betters() -> None:
    studio = tight(1)
    plan = best_plan(studio, START, seconds=0.5)
    assert plan.rehearsals
    assert worth(plan) < worth(quick_plan(studio, START))
    assert Trials(studio, plan, Clockworks()).better() is None


def test_nothing_is_poured_after_the_days_that_were_asked_for() -> None:
    studio, until = tight(1), START + timedelta(days=4)
    better = bettered(studio, quick_plan(studio, START, until), until)
    assert all(coat.start < until for coat in better.coats)


def test_in_any_studio_no_change_is_offered_that_needs_only_another_order_of_pouring() -> None:
    seen: Counter[str] = Counter()
    examples = settings.get_profile(settings.get_current_profile_name()).max_examples // 4

    @settings(suppress_health_check=list(HealthCheck), max_examples=max(1, examples))
    @given(studios(most_pieces=4, most_coats=3))
    def judge(situation: Situation) -> None:
        studio = situation.studio
        try:
            plan = quick_plan(studio, situation.start)
        except NoPlanPossible:
            return
        better = bettered(studio, plan)
        assert worth(better) <= worth(plan)
        assert check_plan(studio, better).clean
        assert Trials(studio, better, Clockworks()).better() is None
        late = any(is_late(outcome) for outcome in better.outcomes)
        seen["late" if late else "in time"] += 1

    judge()
    assert seen["late"], seen


@pytest.mark.parametrize("seed", range(4))
def test_an_order_that_counts_for_as_much_as_is_said_is_planned_first(seed: int) -> None:
    studio = tight(seed)
    plan = bettered(studio, quick_plan(studio, START))
    trials = [one for one in Trials(studio, plan, Clockworks()).all() if one.weight is not None]
    for trial in trials:
        assert trial.plan is not None
        assert trial.weight is not None
        assert f"once its being late counts {trial.weight}" in str(
            trial.words(str(trial.order))
        )

        def with_weight(weight: float, key: str | None = trial.order) -> Studio:
            orders = [replace(o, weight=weight) if o.key == key else o for o in studio.orders]
            return replace(studio, orders=tuple(orders))

        weighed = with_weight(trial.weight)
        assert plan_worth(weighed, trial.plan) < plan_worth(weighed, plan)
        if trial.weight > 1:
            fewer = with_weight(trial.weight - 1)
            assert plan_worth(fewer, plan) <= plan_worth(fewer, trial.plan)
    assert trials or seed
