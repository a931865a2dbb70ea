"""What the notice line says about a plan that has just been made."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.desktop import words

if TYPE_CHECKING:
    from studio_planner.craft.plans import Unplanned
    from studio_planner.craft.studio import Studio
    from studio_planner.services.desk import DeskView

_MOST_NAMED = 2


def planned_words(view: DeskView) -> str:
    """That it is planned, and by name and reason what could not be."""
    left = view.plan.unplanned if view.plan else ()
    if not left:
        return "Planned again."
    reasons = [_reason(view.studio, row) for row in left[:_MOST_NAMED]]
    more = len(left) - len(reasons)
    rest = f" And {more} more; their lanes say why." if more else ""
    return f"Planned again, but not all of it. Not planned: {' '.join(reasons)}{rest}"


def _reason(studio: Studio, row: Unplanned) -> str:
    name = words.piece_name(studio.piece(row.piece))
    named = row.reason if name in row.reason else f"{name}: {row.reason}"
    return f"{named.rstrip('.')}."
