"""Whether a plan keeps every rule, by the checker that shares nothing with the planner."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.checker import CheckReport, Finding, check_plan

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

__all__ = ["CheckReport", "Finding", "checked"]


def checked(studio: Studio, plan: Plan) -> CheckReport:
    """Check a plan: every broken rule, and the warnings, each in the maker's words."""
    return check_plan(studio, plan)
