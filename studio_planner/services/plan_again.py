"""Planning a studio again: plan, say why what is late is late, and have it checked."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.craft.tongue import translate
from studio_planner.planning.late.promises import explain
from studio_planner.planning.quick import quick_plan
from studio_planner.services.checking import CheckReport, checked
from studio_planner.services.still_to_do import only_to_do, still_to_do, with_what_is_done

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckedPlan:
    """A plan and what the checker said about it: no rule is broken."""

    plan: Plan
    report: CheckReport


def plan_again(
    studio: Studio,
    now: datetime,
    until: datetime | None = None,
    *,
    seconds: float = 0.0,
    told: Callable[[CheckedPlan], None] | None = None,
) -> CheckedPlan:
    """Plan everything from `now` on; what was poured stays. Nothing is kept in a file.

    Parameters
    ----------
    studio
        The studio; its kept plan is not changed.
    now
        Aware instant; nothing new starts before it.
    until
        Nothing is poured from then on; None lets everything be planned to its end.
    seconds
        How long to look for better plans than the quick one; 0 looks for none.
    told
        Takes each better plan as it comes, the quick one first, when better ones are looked
        for. Reasons and tried changes are only on the plan that is returned.

    Raises
    ------
    NoPlanPossible
        With the reasons, when the studio cannot be planned as asked, or when the checker finds
        the plan wrong.
    """
    todo = still_to_do(studio)
    if seconds > 0.0:
        plan = _best(studio, now, until, seconds, told)
    else:
        plan = quick_plan(todo, now, until)
    return _passed(studio, explain(todo, plan))


def explained(studio: Studio, plan: Plan) -> CheckedPlan:
    """Say anew why orders are late in a plan that stays as it is; raises as `plan_again`."""
    return _passed(studio, explain(still_to_do(studio), only_to_do(plan, studio)))


def _best(
    studio: Studio,
    now: datetime,
    until: datetime | None,
    seconds: float,
    told: Callable[[CheckedPlan], None] | None,
) -> Plan:
    # Only a maker who waits for a better plan waits for what looks for it.
    from studio_planner.planning.best import best_plan  # noqa: PLC0415

    todo = still_to_do(studio)
    passed: list[Plan] = []

    def pass_on(plan: Plan) -> None:
        report = checked(todo, plan)
        if report.clean:
            passed.append(plan)
            if told is not None:
                told(CheckedPlan(plan=with_what_is_done(plan, studio), report=report))

    last = best_plan(todo, now, until, seconds=seconds, told=pass_on)
    # A better plan that breaks a rule is no plan; the best that breaks none is.
    return passed[-1] if passed and not checked(todo, last).clean else last


def _passed(studio: Studio, plan: Plan) -> CheckedPlan:
    """Check a plan of what is still to do, and add what is done."""
    report = checked(still_to_do(studio), plan)
    if not report.clean:
        broken = translate(
            "planning", "The plan that was found breaks a rule and is not used: {finding}"
        )
        raise NoPlanPossible(broken.format(finding=finding.words) for finding in report.broken)
    return CheckedPlan(plan=with_what_is_done(plan, studio), report=report)
