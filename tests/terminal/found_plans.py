"""Plans as a search finds them, without a search."""

from __future__ import annotations

import sys
from dataclasses import replace
from types import ModuleType
from typing import TYPE_CHECKING

import pytest

from studio_planner.craft.plans import Goal, GoalValue
from studio_planner.planning.quick import quick_plan
from studio_planner.terminal import plan_command

if TYPE_CHECKING:
    from collections.abc import Callable
    from datetime import datetime
    from threading import Event

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio

GOALS = (
    GoalValue(goal=Goal.LATENESS, value=14.5, bound=6.0),
    GoalValue(goal=Goal.SCUFFED, value=2, bound=2),
    GoalValue(goal=Goal.MIXES, value=41),
)


STOPPED = 77
"""The weeks in which a plan was rehearsed whose search was ended by hand."""


def sure(plan: Plan, seconds: float = 20.0) -> Plan:
    """The plan as if it had been searched and rehearsed; its last pour is the weakest."""
    coats = [
        coat if coat.poured else replace(coat, held=0.97, wrong_first=0.03)
        for coat in plan.coats
    ]
    coats[-1] = replace(coats[-1], held=0.71, wrong_first=0.29)
    return replace(
        plan,
        coats=tuple(coats),
        outcomes=tuple(replace(one, held=0.93) for one in plan.outcomes),
        goals=GOALS,
        grid_minutes=10,
        solved_seconds=seconds,
        rehearsals=1000,
    )


@pytest.fixture
def looks(monkeypatch: pytest.MonkeyPatch) -> Callable[..., list[float]]:
    """Put a planner in place that tells the quick plan and then better ones."""

    def install(
        count: int = 2, between: Callable[[int], None] | None = None, pause: float = 0.0
    ) -> list[float]:
        asked: list[float] = []

        def best_plan(  # noqa: PLR0913 - as the real one
            studio: Studio,
            now: datetime,
            until: datetime | None = None,
            *,
            seconds: float,
            told: Callable[[Plan], None],
            enough: Event,
        ) -> Plan:
            asked.append(seconds)
            plan = quick_plan(studio, now, until)
            told(plan)
            for step in range(1, count + 1):
                if enough.is_set():
                    return replace(plan, rehearsals=STOPPED)
                if between is not None:
                    between(step)
                plan = sure(plan, seconds=float(step))
                told(plan)
            return plan

        module = ModuleType("studio_planner.planning.best")
        module.best_plan = best_plan  # type: ignore[attr-defined]
        module.rehearsed = lambda _studio, plan: plan  # type: ignore[attr-defined]
        monkeypatch.setitem(sys.modules, module.__name__, module)
        monkeypatch.setattr(plan_command, "PAUSE_SECONDS", pause)
        return asked

    return install
