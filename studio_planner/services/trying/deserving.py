"""What a change is owed: no gain that a plan without it has as well, and no loss either."""

from __future__ import annotations

from dataclasses import replace
from typing import TYPE_CHECKING

from studio_planner.planning.late.written_worth import plan_worth
from studio_planner.services.checking import checked

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio


def deserved(planned: Studio, again: Studio) -> tuple[Studio, Studio]:
    """Let the better of two plans count on both sides where it breaks no rule on the other.

    A search may find for one what it has missed for the other in the same time.

    Parameters
    ----------
    planned
        The tried studio with the plan that was found for it.
    again
        The studio as it is, planned again from the same moment on.
    """
    tried, plain = planned.plan, again.plan
    if tried is None or plain is None:
        return planned, again
    with_it, without = plan_worth(planned, tried), plan_worth(again, plain)
    if with_it < without and _holds(again, tried):
        return planned, replace(again, plan=tried)
    if without < with_it and _holds(planned, plain):
        return replace(planned, plan=plain), again
    return planned, again


def _holds(studio: Studio, plan: Plan) -> bool:
    return checked(studio, plan).clean
