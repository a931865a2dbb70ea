"""A plan carried over to a studio in which something has changed since it was made."""

from __future__ import annotations

from dataclasses import replace
from itertools import takewhile
from typing import TYPE_CHECKING, NamedTuple

from studio_planner.craft.plans import Goal
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.keeping.kept_plan import KeptPlan, plan_that_counts
from studio_planner.planning.problem import build_chains
from studio_planner.planning.quick import quick_plan, require_means
from studio_planner.planning.rounds import Rounds
from studio_planner.planning.worth import starts_of

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


class CarriedOver(NamedTuple):
    """A plan as it is after a change.

    `moved` are the pours (piece, coat) that could not stay, the soonest first. It is `worse`
    when then more is left out, late, scuffed or to be tested than before, and than in the quick
    plan of the studio as it is. Bounds of its goals are gone: what they were proved of is no
    more.
    """

    plan: Plan
    moved: tuple[tuple[str, str], ...]
    worse: bool


def carried_over(studio: Studio, plan: Plan, until: datetime | None = None) -> CarriedOver:
    """Carry a plan over to a studio that has changed since.

    What was poured meanwhile is in it, what is new is placed around the rest, and windows,
    ready times and promises are those of the studio as it is. Only what must is moved.

    Parameters
    ----------
    studio
        The studio as it is now.
    plan
        The plan, of the studio as it was.
    until
        Pours start before it, as when the plan was made.

    Raises
    ------
    NoPlanPossible
        As the quick plan does.
    """
    require_means(studio)
    before = plan_that_counts(studio, plan, plan.start)
    if before is None:
        return CarriedOver(quick_plan(studio, plan.start, until, before=None), (), worse=False)
    chains, unplanned = build_chains(studio, twins=True)
    starts = starts_of(before)
    rounds = Rounds(studio, plan.start, until, chains, Clockworks(), before=starts)
    kept = KeptPlan(studio, before)
    apart, _ = build_chains(studio, twins=False)
    found = rounds.passed(rounds.keeping(list(kept.chains(chains, apart)), kept), kept)
    written = rounds.written(found, unplanned)
    now = starts_of(written)
    moved = [key for key, start in starts.items() if now.get(key) != start]
    moved.sort(key=lambda key: (starts[key], key))
    worse = bool(moved) and _settled(written) > _settled(plan)
    # What has become harder may be so for every plan.
    worse = worse and _settled(written) > _settled(quick_plan(studio, plan.start, until))
    return CarriedOver(_as_searched(written, plan), tuple(moved), worse)


def _settled(plan: Plan) -> list[float]:
    """What a plan is worth by the goals for which pours may be moved."""
    values = {row.goal: round(row.value, 6) for row in plan.goals}
    before = takewhile(lambda goal: goal is not Goal.MOVED, Goal)
    return [values.get(goal, 0.0) for goal in before]


def _as_searched(written: Plan, plan: Plan) -> Plan:
    """A plan with what is still true of the search that it comes from.

    Pours were moved by the search, and then by what was changed.
    """
    were = {row.goal: row.value for row in plan.goals}
    goals = tuple(
        replace(row, value=row.value + were.get(row.goal, 0.0), bound=None)
        if row.goal is Goal.MOVED
        else row
        for row in written.goals
    )
    return replace(
        written,
        goals=goals,
        grid_minutes=plan.grid_minutes,
        solved_seconds=plan.solved_seconds,
    )
