"""Frames and searches of studios, for tests of the exact model."""

from __future__ import annotations

from itertools import pairwise
from typing import TYPE_CHECKING

from hypothesis import settings

from studio_planner.craft.errors import NoPlanPossible
from studio_planner.planning.exact.asked import gates_of
from studio_planner.planning.exact.search import PlanSearch
from studio_planner.planning.quick import quick_start
from studio_planner.planning.solver import Search

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.studio import Studio
    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.hints import Hints
    from studio_planner.planning.solver import Answer


def search_of(
    studio: Studio, start: datetime, until: datetime | None = None
) -> PlanSearch | None:
    """A search from a studio's quick plan; None when there is no plan, or nothing in it."""
    try:
        quick = quick_start(studio, start, until)
    except NoPlanPossible:
        return None
    search = PlanSearch(quick)
    return search if search.best.standing.placed else None


def sanded_at_once(search: PlanSearch) -> bool:
    """Whether two people sand at the same time: a plan may, the model does without."""
    spans = sorted(
        joint.sand
        for one in search.best.standing.placed
        for joint in one.laid.joints
        if joint.sand is not None
    )
    return any(after[0] < before[1] for before, after in pairwise(spans))


def warmed_from_above(search: PlanSearch) -> bool:
    """Whether a film that packing waits for is in a warm box with a later coat on its piece.

    The model takes it to go on curing in the room: its gate opens later there than in a plan.
    """
    rest = search.best.parts.frame.means.edges.rest
    studio = search.best.parts.frame.studio
    return any(
        ground.place != rest
        for one in search.best.standing.placed
        for index in gates_of(studio, one.chain)
        for ground in one.laid.grounds[index + 1 :]
    )


def examples(count: int) -> int:
    """So many examples, and more in the longer profiles."""
    return count * max(1, settings().max_examples // 50)


def fixed_at(draft: Draft, hints: Hints) -> Answer:
    """What the solver says to a draft in which everything hinted is fixed."""
    for unknown, value in hints.values.values():
        draft.model.equal(unknown, value)
    return draft.model.solve(Search(20.0))
