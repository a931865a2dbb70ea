"""Planning a studio again: plan, say why what is late is late, and have it checked."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.planning.promises import explain
from studio_planner.planning.quick import quick_plan
from studio_planner.services.checking import CheckReport, checked

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


@dataclass(frozen=True, slots=True, kw_only=True)
class CheckedPlan:
    """A plan and what the checker said about it: no rule is broken."""

    plan: Plan
    report: CheckReport


def plan_again(studio: Studio, now: datetime, until: datetime | None = None) -> CheckedPlan:
    """Plan everything from `now` on; what was poured stays. Nothing is kept in a file.

    With `until` nothing is poured from that instant on. Raises NoPlanPossible with the reasons
    when the studio cannot be planned as asked, or when the checker finds the plan wrong.
    """
    plan = explain(studio, quick_plan(studio, now, until))
    report = checked(studio, plan)
    if not report.clean:
        raise NoPlanPossible(
            f"The plan that was found breaks a rule and is not used: {finding.words}"
            for finding in report.broken
        )
    return CheckedPlan(plan=plan, report=report)
