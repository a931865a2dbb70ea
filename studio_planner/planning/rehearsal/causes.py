"""With which coat a piece goes wrong, in the weeks in which it does."""

from __future__ import annotations

from typing import TYPE_CHECKING

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.rehearsal.arrays import Flags
    from studio_planner.planning.rehearsal.fates import Followed


def first_wrong(studio: Studio, plan: Plan, found: Followed) -> dict[int, Flags]:
    """The weeks (weeks,) in which a piece goes wrong with a coat first, by the coat's number.

    A piece goes wrong when a coat of it misses its window, or when its order is late although
    the plan is not. It does so with the first coat that misses its window or slips: one that
    has to wait for other hands may find its own window and cost the next ones theirs.
    """
    wrong = _wrong(studio, plan, found)
    firsts: dict[int, Flags] = {}
    for coat in sorted(plan.coats, key=lambda coat: coat.start):
        if not coat.poured:
            fate, still = found.coats[coat.number], wrong[coat.piece]
            firsts[coat.number] = still & (fate.slipped | ~fate.held)
            wrong[coat.piece] = still & ~firsts[coat.number]
    return firsts


def _wrong(studio: Studio, plan: Plan, found: Followed) -> dict[str, Flags]:
    """The weeks in which each piece with coats to come goes wrong."""
    wrong: dict[str, Flags] = {}
    for coat in plan.coats:
        if not coat.poured:
            missed = ~found.coats[coat.number].held
            wrong[coat.piece] = wrong.get(coat.piece, missed) | missed
    kept = {outcome.order for outcome in plan.outcomes if outcome.late_hours == 0.0}
    for order in studio.orders:
        late = found.leaves[order.key] > order.due(studio.time_zone).timestamp()
        for piece in wrong.keys() & order.pieces if order.key in kept else ():
            wrong[piece] = wrong[piece] | late
    return wrong
