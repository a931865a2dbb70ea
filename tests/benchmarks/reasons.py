"""How fast a plan's late orders are explained; run it by hand, it is no test.

    python -m tests.benchmarks.reasons

Prints, for seeded realistic studios of three sizes with their dates moved sooner, how many
orders come late, the seconds until each has its reason and its tried changes, and how many
plans from the start that time would make. Asked: about 1 s for 20 pieces x 5 coats over 2 weeks
and about 4 s for 60 x 5 over 4 weeks, in the median. Exit 1 when one of them is missed.
"""

from __future__ import annotations

import math
import statistics
import sys
from time import perf_counter
from typing import TYPE_CHECKING

from studio_planner.planning.late.promises import explain
from studio_planner.planning.late.trials import is_late
from studio_planner.planning.quick import quick_plan
from tests.planning.benchmark_studios import START, hurried, make_studio

if TYPE_CHECKING:
    from studio_planner.craft.studio import Studio

SEEDS = range(4)
SIZES = ((8, 4, 1), (20, 5, 2), (60, 5, 4))
DAYS_SOONER = (0, 3, 6)
ASKED = {(20, 5, 2): 1.0, (60, 5, 4): 4.0}


def measure(studio: Studio) -> tuple[int, float, float]:
    """Late orders, seconds to explain them, and seconds of one plan in one round."""
    begun = perf_counter()
    quick_plan(studio, START, passes=1)
    one = perf_counter() - begun
    plan = quick_plan(studio, START)
    begun = perf_counter()
    explain(studio, plan)
    return sum(map(is_late, plan.outcomes)), perf_counter() - begun, one


def main() -> int:
    """Print the table; 1 when something asked for is missed."""
    kept = True
    print("pieces x coats, weeks  days sooner   late orders   explained (worst)   in plans")
    for size in SIZES:
        every: list[float] = []
        for days in DAYS_SOONER:
            rows = [measure(hurried(make_studio(seed, *size), days)) for seed in SEEDS]
            late, seconds, ones = (list(column) for column in zip(*rows, strict=True))
            every += [second for count, second in zip(late, seconds, strict=True) if count]
            plans = statistics.median(s / one for s, one in zip(seconds, ones, strict=True))
            print(
                f"{size[0]} x {size[1]}, {size[2]:<14} {days:8}   {sum(late):11}   "
                f"{statistics.median(seconds):6.2f} s ({max(seconds):.2f})    {plans:8.1f}"
            )
        kept &= statistics.median(every) < ASKED.get(size, math.inf)
    return 0 if kept else 1


if __name__ == "__main__":
    sys.exit(main())
