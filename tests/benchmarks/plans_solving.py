"""One run of the best plan's search, as a maker starts it: what was found, and when."""

from __future__ import annotations

from collections import Counter
from dataclasses import dataclass, field
from time import monotonic
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.best import best_plan
from studio_planner.planning.checker import check_plan

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime

    from studio_planner.craft.plans import GoalValue, Plan
    from studio_planner.craft.studio import Studio

FIRST_GOALS = (Goal.LEFT_OUT, Goal.LATENESS, Goal.SCUFFED, Goal.TESTED)
"""Lateness and joints, and what goes before them."""


@dataclass(frozen=True, slots=True)
class Solved:
    """What a search found.

    `seconds` is all that the maker waited; `start_up` those from the quick plan until the
    process began to search, None when it told of no better plan. `joints_proved` and
    `all_proved` are the seconds of searching after which lateness and joints, or all goals,
    were told to be proved; None when they were not.
    """

    plan: Plan
    seconds: float
    start_up: float | None
    joints_proved: float | None
    all_proved: float | None
    broken: int

    @property
    def late(self) -> float:
        """Weighted hours late."""
        return value(self.plan, Goal.LATENESS)

    @property
    def bound(self) -> float:
        """Below which lateness cannot get; nothing gets below zero."""
        return goal_of(self.plan, Goal.LATENESS).bound or 0.0


@dataclass(slots=True)
class _Listener:
    """Notes when plans come and what they have proved."""

    enough: Callable[[Plan], bool]
    begun: float
    quick: float | None = None
    start_up: float | None = None
    joints_proved: float | None = None
    all_proved: float | None = None
    last: Plan | None = field(default=None)

    def told(self, plan: Plan) -> None:
        now = monotonic() - self.begun
        self.last = plan
        if self.quick is None:
            self.quick = now
            return
        if not plan.rehearsals:
            # Rehearsing takes time that belongs to no start-up.
            begun_after = now - self.quick - plan.solved_seconds
            self.start_up = min(begun_after, self.start_up or begun_after)
        self._note_proofs(plan)
        if self.enough(plan):
            raise _EnoughError

    def _note_proofs(self, plan: Plan) -> None:
        if self.joints_proved is None and proved(plan, *FIRST_GOALS):
            self.joints_proved = plan.solved_seconds
        if self.all_proved is None and proved(plan, *Goal):
            self.all_proved = plan.solved_seconds


class _EnoughError(Exception):
    """What was looked for is found."""


def solve(
    studio: Studio,
    now: datetime,
    seconds: float,
    enough: Callable[[Plan], bool] = lambda _: False,
) -> Solved:
    """Look for the best plan for some seconds, or until there is enough, and check it."""
    listener = _Listener(enough, monotonic())
    try:
        plan = best_plan(studio, now, seconds=seconds, told=listener.told)
    except _EnoughError:
        assert listener.last is not None
        plan = listener.last
    return Solved(
        plan=plan,
        seconds=monotonic() - listener.begun,
        start_up=listener.start_up,
        joints_proved=listener.joints_proved,
        all_proved=listener.all_proved,
        broken=len(check_plan(studio, plan).broken),
    )


def goal_of(plan: Plan, goal: Goal) -> GoalValue:
    """A plan's goal."""
    return next(row for row in plan.goals if row.goal is goal)


def value(plan: Plan, goal: Goal) -> float:
    """What a plan's goal is worth."""
    return goal_of(plan, goal).value


def proved(plan: Plan, *goals: Goal) -> bool:
    """Whether some goals cannot be better."""
    return all(row.proved for row in plan.goals if row.goal in goals)


def sharing_coats(plan: Plan) -> int:
    """How many coats come out of a mix with another coat."""
    mixes = Counter(coat.mix for coat in plan.coats)
    return sum(count for count in mixes.values() if count > 1)
