"""A plan that the checker accepts comes off to the letter when nothing happens."""

from __future__ import annotations

import math
from collections import Counter
from typing import TYPE_CHECKING

import pytest
from hypothesis import HealthCheck, given, settings

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.planning.checker import check_plan
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.rehearsal.chances import NOTHING_HAPPENS
from studio_planner.planning.rehearsal.following import follow
from studio_planner.planning.rehearsal.rehearsing import rehearse
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.checker.hand_made import PLAN, STUDIO
from tests.planning.rehearsal.worlds import likely_world
from tests.planning.studios import Situation, studios

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


def assert_as_planned(studio: Studio, plan: Plan) -> None:
    """Every window holds, and every order leaves when the plan says or sooner."""
    rehearsed = rehearse(studio, plan, weeks=2, chances=NOTHING_HAPPENS)
    assert [(coat.number, coat.held) for coat in rehearsed.coats if coat.held < 1.0] == []
    outcomes = {outcome.order: outcome for outcome in plan.outcomes}
    leaves = follow(studio, plan, likely_world(studio, plan)).leaves
    for order in rehearsed.orders:
        planned = outcomes[order.order]
        if planned.leaves is None:
            assert (order.held, leaves[order.order][0]) == (0.0, math.inf)
        else:
            assert order.held in {1.0, float(planned.leaves <= planned.due)}
            assert leaves[order.order][0] <= planned.leaves.timestamp() + 36.0


def test_every_plan_comes_off_when_nothing_happens() -> None:
    seen: Counter[str] = Counter()

    @settings(suppress_health_check=list(HealthCheck))
    @given(studios())
    def judge(situation: Situation) -> None:
        try:
            plan = quick_plan(situation.studio, situation.start)
        except NoPlanPossible:
            seen["none"] += 1
            return
        assert_as_planned(situation.studio, plan)
        seen["some"] += 1

    judge()
    assert seen["some"] > seen["none"], seen


@pytest.mark.parametrize("seed", range(3))
def test_realistic_plans_come_off_when_nothing_happens(seed: int) -> None:
    studio = make_studio(seed, 20, 5, 2)
    plan = quick_plan(studio, START)
    assert not check_plan(studio, plan).broken
    assert_as_planned(studio, plan)


def test_every_kind_of_joint_comes_off_when_nothing_happens() -> None:
    assert_as_planned(STUDIO, PLAN)
