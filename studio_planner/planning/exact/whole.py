"""Solves a model goal by goal, strictly in their order, and says what is proved."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.answers import AnswerReader
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.solver import Status

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.planning.exact.answers import Rough
    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.solver import Answer, Quantity, Search

IN_ORDER = (
    Goal.LATENESS,
    Goal.SCUFFED,
    Goal.TESTED,
    Goal.MOVED,
    Goal.SPARE,
    Goal.MIXES,
    Goal.ENDS,
)


@dataclass(slots=True)
class Solved:
    """The best lanes found so far, and the bound of each goal that was looked at.

    A bound holds for all plans that are as good in the goals before.
    """

    lanes: list[Rough] | None = None
    bounds: dict[Goal, float] = field(default_factory=dict)


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


def solve_in_order(
    draft: Draft, end: float, search: Search, better: Callable[[Solved], None]
) -> Solved:
    """Make each goal small in turn and hold it there, until the monotonic clock says `end`.

    Goals after one that is not proved are still made small, but have no bound.
    """
    solved = Solved()
    draft.model.hint(Hints(draft).values.values())
    proved = True
    for goal in IN_ORDER:
        quantity = quantity_of(draft, goal)
        if isinstance(quantity, int):
            solved.bounds |= {goal: quantity} if proved else {}
            continue
        left = end - monotonic()
        if left <= 0:
            break
        draft.model.aim(quantity)
        answer = draft.model.solve(replace(search, seconds=left * _SHARE[goal]))
        if proved and answer.bound is not None:
            solved.bounds[goal] = answer.bound
        proved = proved and answer.status is Status.PROVED
        if not _taken(draft, answer, solved):
            break
        draft.model.at_least(answer.of(quantity), quantity)
        draft.model.hint_again(answer)
        better(solved)
    return solved


_SHARE = {
    Goal.LATENESS: 0.5,
    Goal.SCUFFED: 0.4,
    Goal.TESTED: 0.4,
    Goal.MOVED: 0.4,
    Goal.SPARE: 0.4,
    Goal.MIXES: 0.5,
    Goal.ENDS: 1.0,
}
"""The share of the time left that each goal may take."""


def _taken(draft: Draft, answer: Answer, solved: Solved) -> bool:
    """Read the lanes of an answer; False when there are none."""
    lanes = AnswerReader(draft, answer).lanes() if answer.found else None
    if lanes is None:
        return False
    solved.lanes = lanes
    return True
