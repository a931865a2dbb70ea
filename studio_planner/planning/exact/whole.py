"""Solves a whole studio goal by goal, strictly in their order, and says what is proved."""

from __future__ import annotations

from dataclasses import replace
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.planning.exact.answers import AnswerReader
from studio_planner.planning.exact.goals import IN_ORDER, hold_before, quantity_of
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.sharing import sharing

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.craft.plans import Goal
    from studio_planner.planning.exact.best_so_far import BestSoFar
    from studio_planner.planning.solver import Search

_SHARE = 0.6
"""The share of the time left that one goal may take, so that some is left for the next."""


class Whole:
    """The studio as one model that leaves nothing out."""

    def __init__(self, best: BestSoFar) -> None:
        """Start from the best plan so far; others may make it better meanwhile."""
        self._best = best

    def solve(self, end: float, search: Search, over: Callable[[], bool]) -> None:
        """Make each goal small in turn, until the monotonic clock says `end`.

        A goal that cannot be proved in its share of the time is looked at once more when the
        plan has become better: less room is left then. Otherwise it is left, and with it all
        that follow: their bounds would hold for nothing.
        """
        for goal in IN_ORDER:
            while goal not in self._best.met:
                if over():
                    return
                before = self._best.standing.worth
                self._aim(goal, search, end)
                if goal not in self._best.met and not self._best.standing.worth < before:
                    return

    def _aim(self, goal: Goal, search: Search, end: float) -> None:
        standing = self._best.standing
        lanes = frozenset(range(len(standing.lanes)))
        freedom = Freedom(lanes, all_mixes=True, to_prove=True)
        draft = self._best.parts.draft(standing, freedom)
        values = self._best.parts.values(standing.lanes)
        if draft is None or not values:
            return
        hold_before(draft, goal, values)
        draft.model.hint(Hints(draft).values.values())
        draft.model.aim(quantity_of(draft, goal))
        left = end - monotonic()
        if left <= 0:
            return
        seconds = left if goal is IN_ORDER[-1] else _SHARE * left
        answer = draft.model.solve(replace(search, seconds=seconds))
        found = AnswerReader(draft, answer).lanes() if answer.found else None
        with self._best.lock:
            if found is not None:
                after = self._best.parts.put_back(self._best.standing, lanes, found)
                self._best.offer(after)
            if answer.bound is not None:
                self._best.bound(goal, answer.bound)


def leaves_nothing_out(best: BestSoFar) -> bool:
    """Whether the model has all that a plan may do, so that its bounds hold for every plan.

    In a second place clocks depend on where other coats stood; two people may sand at once;
    twins that are turned together are one lane; a mix may be shared by very many.
    """
    frame, lanes = best.parts.frame, best.standing.lanes
    places = {spots.place for spots in frame.choices.spots}
    scuffs = any(task.may_scuff for lane in lanes for task in lane.chain.tasks)
    return (
        places == {frame.means.edges.rest}
        and (len(frame.means.shop.hands) == 1 or not scuffs)
        and all(len(lane.chain.pieces) == 1 and lane.placed is not None for lane in lanes)
        and not sharing(frame.studio, lanes, all_pairs=True).capped
    )
