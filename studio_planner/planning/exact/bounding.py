"""Bounds: below which no plan can get, goal by goal.

The first bound on lateness is what each order needs by itself. The next comes from a model of
the whole studio that allows a little more than a plan may do, where mixes are shared, and so
can only be better; it is searched beside the search for plans.
"""

from __future__ import annotations

from threading import Event, Thread
from typing import TYPE_CHECKING

from typing_extensions import override

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.part import Freedom
from studio_planner.planning.exact.whole import IN_ORDER, quantity_of
from studio_planner.planning.solver import Search, Status

if TYPE_CHECKING:
    from collections.abc import Collection, Mapping

    from studio_planner.planning.exact.part import Parts, Standing

MOST_COATS = 130
"""New coats up to which the whole studio is looked at at once."""

_BOUNDED = IN_ORDER[: IN_ORDER.index(Goal.MIXES)]
"""The goals for which a bound is searched; those after them are never met by it."""


def first_open(met: Collection[Goal], values: Mapping[Goal, int]) -> Goal | None:
    """The first goal that is neither met nor nothing; None when those that are searched are."""
    return next((goal for goal in _BOUNDED if goal not in met and values[goal] > 0), None)


class Bound(Thread):
    """A search for one bound, beside everything else; `value` is what was found."""

    def __init__(self, parts: Parts, standing: Standing, goal: Goal, search: Search) -> None:
        """Prepare the model here, and search in the thread."""
        super().__init__(daemon=True)
        self.goal = goal
        self.worth = standing.worth
        self.value: float | None = None
        self.done = Event()
        self._search = search
        free = frozenset(range(len(standing.lanes)))
        self._draft = parts.draft(standing, Freedom(free, loose=True))
        now = parts.values(standing.lanes)
        if self._draft is not None:
            for before in IN_ORDER[: IN_ORDER.index(goal)]:
                self._draft.model.at_least(now[before], quantity_of(self._draft, before))
            self._draft.model.aim(quantity_of(self._draft, goal))

    @override
    def run(self) -> None:
        """Search; a model without an answer says nothing."""
        if self._draft is not None:
            answer = self._draft.model.solve(self._search)
            if answer.status is not Status.IMPOSSIBLE:
                self.value = answer.bound
        self.done.set()
