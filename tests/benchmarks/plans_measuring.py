"""What is measured of one benchmark studio: its plans, how soon they come, and made anew."""

from __future__ import annotations

import statistics
from dataclasses import dataclass, field
from time import process_time
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.checker import check_plan
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.quick import quick_plan
from tests.benchmarks.plans_best_known import PLAN
from tests.benchmarks.plans_solving import sharing_coats, solve, value
from tests.planning.benchmark_studios import SIZES, START, attended_share, benchmark_studio
from tests.planning.earliest_promise_first import earliest_promise_first
from tests.planning.happenings import HAPPENINGS

if TYPE_CHECKING:
    from datetime import datetime

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from studio_planner.planning.worth import Worth
    from tests.benchmarks.plans_best_known import BestKnown, Known
    from tests.benchmarks.plans_solving import Solved

SECONDS = {"S": 25.0, "M": 5.0, "L": 60.0, "X": 60.0}
"""How long a maker looks for a better plan; S with what its start-up and rehearsal take."""

EVENTS = ("cold nights", "lost hours")
REPLANNED = ("M", "X")
REPLAN_SECONDS = 5.0
COMPARED = "X"
"""The size at which the quick plan is compared with the plainest planner."""

SEARCHED_ANEW = "M"
"""The size at which a plan made anew is made better with the search."""


@dataclass(frozen=True, slots=True)
class Anew:
    """A kept plan made anew: seconds of one core to the first, and the search's own, if any."""

    first: float
    moved: float
    late: float
    broken: int
    solved: Solved | None
    known: Known | None


@dataclass(frozen=True, slots=True)
class Measured:
    """All of one studio.

    `first` and `again` are the seconds of one core of the quick plan, without any clocks and
    with all of them; `window` is the median window between two coats [h], `load` the share of
    everybody's hours.
    """

    size: str
    seed: int
    load: float
    window: float
    quick: Plan
    first: float
    again: float
    broken: int
    plain: Worth | None
    solved: Solved
    known: Known | None
    anew: dict[str, Anew] = field(default_factory=dict)

    @property
    def all_broken(self) -> int:
        """How many rules all plans of this studio break together."""
        return (
            self.broken
            + self.solved.broken
            + sum(
                one.broken + (one.solved.broken if one.solved else 0)
                for one in self.anew.values()
            )
        )

    @property
    def shared_for_nothing(self) -> int:
        """Coats that share a mix, 0 when that has cost lateness or a scuffed joint."""
        plan, quick = self.solved.plan, self.quick
        goals = (Goal.LEFT_OUT, Goal.LATENESS, Goal.SCUFFED)
        dear = any(value(plan, goal) > value(quick, goal) + 1e-6 for goal in goals)
        return 0 if dear else sharing_coats(plan)


def measure(size: str, seed: int, best_known: BestKnown) -> Measured:
    """Measure one studio of a size."""
    studio = benchmark_studio(size, seed)
    clockworks = Clockworks()
    begun = process_time()
    quick = quick_plan(studio, START, clockworks=clockworks)
    first = process_time() - begun
    begun = process_time()
    quick_plan(studio, START, clockworks=clockworks)
    again = process_time() - begun
    return Measured(
        size=size,
        seed=seed,
        load=attended_share(studio, SIZES[size].weeks),
        window=statistics.median(_windows(quick)),
        quick=quick,
        first=first,
        again=again,
        broken=len(check_plan(studio, quick).broken),
        plain=earliest_promise_first(studio, START) if size == COMPARED else None,
        solved=solve(studio, START, SECONDS[size]),
        known=best_known.of((size, seed, PLAN), studio),
        anew={
            event: _made_anew(size, seed, event, best_known)
            for event in (EVENTS if size in REPLANNED else ())
        },
    )


def after(size: str, seed: int, event: str) -> tuple[datetime, Studio]:
    """A benchmark studio with its quick plan kept, after something has happened."""
    studio = benchmark_studio(size, seed)
    return HAPPENINGS[event](studio, quick_plan(studio, START))


def _made_anew(size: str, seed: int, event: str, best_known: BestKnown) -> Anew:
    now, studio = after(size, seed, event)
    begun = process_time()
    plan = quick_plan(studio, now)
    first = process_time() - begun
    searched = size == SEARCHED_ANEW
    return Anew(
        first=first,
        moved=value(plan, Goal.MOVED),
        late=value(plan, Goal.LATENESS),
        broken=len(check_plan(studio, plan).broken),
        solved=solve(studio, now, REPLAN_SECONDS) if searched else None,
        known=best_known.of((size, seed, event), studio),
    )


def _windows(plan: Plan) -> list[float]:
    """The hours of all windows that close."""
    windows = [coat.window for coat in plan.coats if coat.window is not None]
    return [
        (window.closes - window.opens).total_seconds() / 3600.0
        for window in windows
        if window.closes is not None
    ]
