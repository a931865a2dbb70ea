"""A plan that is made better by what is tried for its late orders and needs no change."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.keeping.kept_plan import plan_that_counts
from studio_planner.planning.late.trials import Trials, is_late
from studio_planner.planning.late.written_worth import worth_against
from studio_planner.planning.worth import goals_of, starts_of

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


def bettered(
    studio: Studio,
    plan: Plan,
    until: datetime | None = None,
    clockworks: Clockworks | None = None,
) -> Plan:
    """Pour late orders before all others, or where there is room, as long as that is better.

    Parameters
    ----------
    studio
        The studio; moved pours are counted from its kept plan.
    plan
        A plan of it that was not rehearsed yet.
    until
        Nothing is poured from then on; None lets everything be planned to its end.
    clockworks
        Clocks to use again.

    Returns
    -------
    Plan
        The same one, or one that is worth more, with its goals. What no plan gets below stays.
    """
    clockworks = clockworks or Clockworks()
    better: Plan | None = plan
    while better is not None:
        plan, better = better, _better(studio, better, until, clockworks)
    return plan


def _better(
    studio: Studio, plan: Plan, until: datetime | None, clockworks: Clockworks
) -> Plan | None:
    if not any(is_late(outcome) for outcome in plan.outcomes):
        return None
    found = Trials(studio, plan, clockworks, until).better()
    return None if found is None else _in_its_place(studio, found, plan)


def _in_its_place(studio: Studio, better: Plan, plan: Plan) -> Plan:
    before = starts_of(plan_that_counts(studio, studio.plan, plan.start))
    # Up to the first goal that it is better in, both are alike: so far the bounds hold for it.
    bounds = {row.goal: row.bound for row in plan.goals if row.bound is not None}
    return replace(
        better,
        goals=goals_of(worth_against(studio, better, before), bounds),
        solved_seconds=plan.solved_seconds,
    )
