"""A part of a plan that was freed, as a model that aims at one goal."""

from __future__ import annotations

from dataclasses import dataclass
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.exact.goals import IN_ORDER, hold_before, quantity_of

if TYPE_CHECKING:
    from collections.abc import Callable, Sequence

    from studio_planner.planning.exact.draft import Draft
    from studio_planner.planning.exact.foreseen import Wish
    from studio_planner.planning.exact.lanes import Lane
    from studio_planner.planning.exact.part import Parts, Standing
    from studio_planner.planning.solver import Answer, Quantity

MUCH = 50_000_000
"""What one unit of the goal that is aimed at counts."""

_GUIDES = {
    Goal.SCUFFED: 10_000,
    Goal.TESTED: 2000,
    Goal.MOVED: 1000,
    Goal.MIXES: 250,
    Goal.ENDS: 1,
}
"""What the goals after the one aimed at count for each other: a guide, the worth decides."""


@dataclass(frozen=True, slots=True, eq=False)
class Try:
    """A part that was freed from a standing plan, as a model that aims at a goal.

    `effort` is what it may cost against other steps. One that `replaces` puts all that is
    placed anew.
    """

    goal: Goal
    standing: Standing
    lanes: frozenset[int]
    draft: Draft
    seed: int = 0
    effort: float = 1.0
    replaces: bool = False
    hoped: float | None = None
    """The value of what is aimed at that is hoped for: with it the search ends."""
    wish: Wish | None = None
    """The foreseen plan that it is near to."""

    @property
    def near(self) -> float | None:
        """How near to its bound an answer is good enough."""
        return None if self.goal is Goal.ENDS else MUCH / 2

    @property
    def enough(self) -> Callable[[Answer], bool] | None:
        """Tells whether an answer has what is hoped for; None to look on to the end."""
        hoped = self.hoped
        if hoped is None:
            return None if not self.draft.model.as_it_is else lambda _: False
        return lambda answer: answer.value is not None and answer.value < hoped


def aim(parts: Parts, draft: Draft, free: Sequence[Lane], goal: Goal) -> None:
    """Ask for as little of a goal as can be, and no more of those before it."""
    now = parts.values(free)
    wanted = Goal.LATENESS if goal is Goal.LEFT_OUT else goal
    if now:
        hold_before(draft, wanted, now)
    draft.model.aim(aimed(draft, wanted))


def aimed(draft: Draft, goal: Goal) -> Quantity:
    """One goal before all, then those after it without their strict order."""
    total: Quantity = 0
    for after in IN_ORDER[IN_ORDER.index(goal) + 1 :]:
        total += _GUIDES.get(after, 0) * quantity_of(draft, after)
    unit = draft.grid.step if goal in {Goal.LATENESS, Goal.SPARE} else 1
    return MUCH // unit * quantity_of(draft, goal) + total
