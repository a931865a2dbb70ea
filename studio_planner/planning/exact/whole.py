"""Solves a model goal by goal, strictly in their order, and says what is proved."""

from __future__ import annotations

from dataclasses import dataclass, field
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.answers import AnswerReader
from studio_planner.planning.exact.hints import Hints
from studio_planner.planning.solver import Search, Status

if TYPE_CHECKING:
    from collections.abc import Callable

    from studio_planner.planning.exact.answers import Rough
    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.solver import Answer, Quantity

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
    """The best lanes found, and the goals that were proved or bounded on the way."""

    lanes: list[Rough] | None = None
    values: dict[Goal, int] = field(default_factory=dict)
    bounds: dict[Goal, float] = field(default_factory=dict)
    proved: list[Goal] = field(default_factory=list)
    impossible: bool = False


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
    draft: Draft,
    seconds: float,
    search: Search,
    better: Callable[[Draft, Answer], bool] | None = None,
) -> Solved:
    """Make each goal small in turn and hold it there; each gets its share of the seconds."""
    solved = Solved()
    model = draft.model
    hints = Hints(draft).values
    model.hint(hints.values())
    end = monotonic() + seconds
    for goal in IN_ORDER:
        left = end - monotonic()
        if left <= 0:
            break
        quantity = quantity_of(draft, goal)
        if isinstance(quantity, int):
            solved.values[goal], solved.bounds[goal] = quantity, quantity
            solved.proved.append(goal)
            continue
        model.aim(quantity)
        answer = model.solve(_with_seconds(search, left))
        if answer.status is Status.IMPOSSIBLE:
            solved.impossible = not solved.values
            break
        if answer.bound is not None:
            solved.bounds[goal] = answer.bound
        if not answer.found:
            break
        lanes = AnswerReader(draft, answer).lanes()
        if lanes is None:
            break
        solved.lanes = lanes
        value = solved.values[goal] = answer.of(quantity)
        if answer.status is Status.PROVED:
            solved.proved.append(goal)
        model.at_least(value, quantity)
        model.hint_again(answer)
    return solved


def _with_seconds(search: Search, seconds: float) -> Search:
    return Search(seconds, search.work, search.workers, search.seed, search.polish)
