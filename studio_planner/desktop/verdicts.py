"""What the notice line says about a plan that has just been made."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.services.plan_worth import summary_words

if TYPE_CHECKING:
    from studio_planner.craft.plans import Unplanned
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView

_MOST_NAMED = 2


def planned_words(view: DeskView) -> str:
    """That it is planned and what came of it; by name and reason what could not be planned."""
    plan = view.plan
    left = plan.unplanned if plan else ()
    if plan is None or not left:
        summary = f": {summary_words(view.studio, plan)}" if plan and plan.goals else ""
        return f"Planned again{summary}."
    reasons = [_reason(view.studio, row) for row in left[:_MOST_NAMED]]
    more = len(left) - len(reasons)
    rest = f" And {more} more; their lanes say why." if more else ""
    return f"Planned again, but not all of it. Not planned: {' '.join(reasons)}{rest}"


def _reason(studio: Studio, row: Unplanned) -> str:
    name = words.piece_name(studio.piece(row.piece))
    named = row.reason if name in row.reason else f"{name}: {row.reason}"
    return f"{named.rstrip('.')}."
