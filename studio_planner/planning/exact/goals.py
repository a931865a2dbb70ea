"""The goals of a plan as quantities of a model."""

from __future__ import annotations

from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.promised import HOUR
from studio_planner.planning.exact.reaches import MINUTE

if TYPE_CHECKING:
    from collections.abc import Mapping, Sequence

    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.solver import Quantity

IN_ORDER = (
    Goal.LATENESS,
    Goal.SCUFFED,
    Goal.TESTED,
    Goal.MOVED,
    Goal.SPARE,
    Goal.MIXES,
    Goal.ENDS,
)
"""The goals in their strict order, after pieces left out."""


def quantity_of(draft: Draft, goal: Goal) -> Quantity:
    """A goal of a draft."""
    goals = draft.goals
    return {
        Goal.LATENESS: goals.late,
        Goal.SCUFFED: goals.scuffed,
        Goal.TESTED: goals.tested,
        Goal.MOVED: goals.moved,
        Goal.SPARE: goals.spare,
        Goal.MIXES: goals.mixes,
        Goal.ENDS: goals.ends,
    }[goal]


def hold_before(draft: Draft, goal: Goal, most: Mapping[Goal, int]) -> None:
    """Let no goal before one get more than it has."""
    for before in IN_ORDER[: IN_ORDER.index(goal)]:
        draft.model.at_least(most[before], quantity_of(draft, before))


class InOneGo:
    """Some goals as one number: less of one is worth more than all of those after it."""

    def __init__(self, draft: Draft, goals: Sequence[Goal]) -> None:
        """Join goals of a draft, in which no lane has several pieces."""
        self._most = {goal: _most(draft, goal) for goal in goals[1:]}
        self._first = goals[0]
        self.number = quantity_of(draft, self._first)
        for goal, most in self._most.items():
            self.number = (most + 1) * self.number + quantity_of(draft, goal)

    def parted(self, number: int) -> dict[Goal, int]:
        """What such a number, or a bound on it, has of each goal, in their order."""
        found = {}
        for goal, most in reversed(self._most.items()):
            number, found[goal] = divmod(number, most + 1)
        return {self._first: number} | dict(reversed(found.items()))


def _most(draft: Draft, goal: Goal) -> int:
    """What a goal that follows others can be at the most."""
    if goal is Goal.ENDS:
        return len(draft.lanes) * 2 * draft.maker.grid_minutes_of(draft.frame.reaches.far)
    return sum(len(lane.joints) for lane in draft.lanes)


def in_hours(goal: Goal, value: float) -> float:
    """A value in a model's units as plans have it: times in hours, all else as counted."""
    if goal in {Goal.LATENESS, Goal.SPARE}:
        return value / HOUR
    return value * MINUTE / HOUR if goal is Goal.ENDS else value
