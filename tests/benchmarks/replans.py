"""How fast and how gently a kept plan is made anew; run it by hand, it is no test.

    python -m tests.benchmarks.replans

A plan of a seeded realistic studio is kept, a day and a half of it is poured, and something
happens: nights get 1.5 °C colder, an afternoon is lost, a pour was made 40 min late and the
later ones of that day not yet, or an order comes in. Prints for each size and event the seconds
of one core to the first new plan (with all clocks anew, and with clocks built), the pours that
moved, the weighted hours late before and after, and what the checker finds; medians over six
seeds, with the worst. Asked: 20 pieces x 5 coats within 0.2 s, 150 x 5 within 2 s. Exit 1 when
missed.
"""

from __future__ import annotations

import statistics
import sys
from dataclasses import dataclass
from time import process_time
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from studio_planner.planning.checker import check_plan
from studio_planner.planning.clocks.clockwork import Clockworks
from studio_planner.planning.quick import quick_plan
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.happenings import HAPPENINGS

if TYPE_CHECKING:
    from studio_planner.craft.plans import Plan
    from tests.planning.happenings import Happening

SEEDS = range(6)
SIZES = ((20, 5, 2), (150, 5, 8))
ASKED = {(20, 5, 2): 0.2, (150, 5, 8): 2.0}


@dataclass(frozen=True, slots=True)
class Measured:
    """One plan made anew: seconds with and without building clocks, and what changed."""

    anew: float
    again: float
    moved: float
    still: int
    late_before: float
    late_after: float
    broken: int


def measure(seed: int, size: tuple[int, int, int], happening: Happening) -> Measured:
    """Keep a plan of one studio, let something happen, and plan again."""
    studio = make_studio(seed, *size)
    before = quick_plan(studio, START)
    now, changed = happening(studio, before)
    clockworks = Clockworks()
    begun = process_time()
    after = quick_plan(changed, now, clockworks=clockworks)
    anew = process_time() - begun
    begun = process_time()
    quick_plan(changed, now, clockworks=clockworks)
    again = process_time() - begun
    return Measured(
        anew=anew,
        again=again,
        moved=value(after, Goal.MOVED),
        still=sum(not coat.poured for coat in after.coats),
        late_before=value(before, Goal.LATENESS),
        late_after=value(after, Goal.LATENESS),
        broken=len(check_plan(changed, after).broken),
    )


def value(plan: Plan, goal: Goal) -> float:
    """What a plan's goal is worth."""
    return next(row.value for row in plan.goals if row.goal is goal)


def first_plans_kept() -> bool:
    """Print the table of first plans, and tell whether what was asked is met."""
    kept = True
    print("median (worst) of six seeds; all pours still to be made; weighted hours late")
    for size in SIZES:
        print(f"\n{size[0]} pieces x {size[1]} coats, {size[2]} weeks")
        for name, happening in HAPPENINGS.items():
            rows = [measure(seed, size, happening) for seed in SEEDS]
            anew, again, moved, still, before, after = (
                [getattr(row, field) for row in rows]
                for field in ("anew", "again", "moved", "still", "late_before", "late_after")
            )
            print(
                f"{name:18} {_both(anew, '.2f')} s, clocks built {_both(again, '.2f')} s,"
                f" moved {_both(moved, '.0f')} of {statistics.median(still):.0f},"
                f" late {_both(before, '.1f')} -> {_both(after, '.1f')},"
                f" broken {sum(row.broken for row in rows)}"
            )
            kept &= statistics.median(anew) < ASKED[size]
            kept &= not any(row.broken for row in rows)
    return kept


def _both(values: list[float], form: str) -> str:
    return f"{statistics.median(values):{form}} ({max(values):{form}})"


if __name__ == "__main__":
    sys.exit(0 if first_plans_kept() else 1)
