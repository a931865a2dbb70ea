"""What the notice line says about a plan that has just been made."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words
from studio_planner.desktop.tongue import translate
from studio_planner.services.plan_worth import summary_words
from studio_planner.services.still_to_do import nothing_left

if TYPE_CHECKING:
    from studio_planner.craft.plans import Unplanned
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView

_MOST_NAMED = 2


def planned_words(view: DeskView) -> str:
    """That it is planned and what came of it; by name and reason what could not be planned."""
    plan = view.plan
    if nothing_left(view.studio):
        return translate(
            "planning", "Everything is packed or has left; there is nothing to plan."
        )
    left = plan.unplanned if plan else ()
    if plan is None or not left:
        if not plan or not plan.goals:
            return translate("planning", "Planned again.")
        said = translate("planning", "Planned again: {summary}.")
        return said.format(summary=summary_words(view.studio, plan))
    reasons = [_reason(view.studio, row) for row in left[:_MOST_NAMED]]
    more = len(left) - len(reasons)
    rest = translate("planning", "And {more} more; their lanes say why.").format(more=more)
    said = translate("planning", "Planned again, but not all of it. Not planned: {reasons}")
    return said.format(reasons=" ".join([*reasons, rest] if more else reasons))


def _reason(studio: Studio, row: Unplanned) -> str:
    piece, reason = studio.piece(row.piece), str(row.reason)
    named = reason if piece.name in reason else f"{words.piece_name(piece)}: {reason}"
    return f"{named.rstrip('.')}."
