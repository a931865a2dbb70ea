"""How fast a plan is rehearsed; run it by hand, it is no test.

    python -m tests.benchmarks.rehearsals

Prints, for seeded realistic studios of four sizes, the time of 1,000 rehearsals of the quick
plan, medians over seeds, and what they found. Asked: 20 pieces x 5 coats over 2 weeks in under
2 s on one core. Exit 1 when that is missed.
"""

from __future__ import annotations

import math
import resource
import statistics
import sys
from dataclasses import dataclass
from time import perf_counter

from studio_planner.planning.quick import quick_plan
from studio_planner.planning.rehearsal.rehearsing import rehearse
from tests.planning.benchmark_studios import START, make_studio

SEEDS = range(4)
WEEKS = 1000
SIZES = ((8, 4, 1), (20, 5, 2), (60, 5, 4), (150, 5, 8))
ASKED = {(20, 5, 2): 2.0}


@dataclass(frozen=True, slots=True)
class Measured:
    """Seconds of all rehearsals of one plan, and what they found."""

    seconds: float
    mean_held: float
    least_held: float
    kept: float
    planned: float


def measure(seed: int, size: tuple[int, int, int]) -> Measured:
    """Plan one studio and rehearse its plan."""
    studio = make_studio(seed, *size)
    plan = quick_plan(studio, START)
    begun = perf_counter()
    found = rehearse(studio, plan, weeks=WEEKS, seed=seed)
    seconds = perf_counter() - begun
    held = [coat.held for coat in found.coats]
    return Measured(
        seconds,
        statistics.mean(held),
        min(held),
        statistics.mean(order.held for order in found.orders),
        statistics.mean(one.late_hours == 0.0 for one in plan.outcomes),
    )


def main() -> int:
    """Print the table; 1 when what was asked is missed."""
    met = True
    print(
        f"{WEEKS} rehearsals          seconds (worst)    windows held (least)   promises kept"
    )
    for size in SIZES:
        rows = [measure(seed, size) for seed in SEEDS]
        seconds = [row.seconds for row in rows]
        name = f"{size[0]} x {size[1]}, {size[2]} weeks"
        print(
            f"{name:20}  {statistics.median(seconds):7.2f} ({max(seconds):.2f})      "
            f"{statistics.mean(row.mean_held for row in rows):9.1%} "
            f"({min(row.least_held for row in rows):.1%})      "
            f"{statistics.mean(row.kept for row in rows):6.1%} of "
            f"{statistics.mean(row.planned for row in rows):.1%} planned in time"
        )
        met &= statistics.median(seconds) < ASKED.get(size, math.inf)
    megabytes = resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024.0
    print(f"most memory of this process: {megabytes:.0f} MB")
    return 0 if met else 1


if __name__ == "__main__":
    sys.exit(main())
