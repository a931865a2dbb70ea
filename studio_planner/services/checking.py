"""Whether a plan keeps every rule, by the checker that shares nothing with the planner."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.planning.checker import CheckReport, Finding, check_plan
from studio_planner.services.still_to_do import only_to_do, still_to_do

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

__all__ = ["CheckReport", "Finding", "checked"]


def checked(studio: Studio, plan: Plan) -> CheckReport:
    """Check a plan: every broken rule, and the warnings, each in the maker's words.

    Pieces that are packed or have left are no longer judged.
    """
    return check_plan(still_to_do(studio), only_to_do(plan, studio))
