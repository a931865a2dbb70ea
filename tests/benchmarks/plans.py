"""How fast the quick plan is made; run it by hand, it is no test.

    python -m tests.benchmarks.plans

Prints, for seeded realistic studios of four sizes, the time of a whole first plan (clocks and
all) and of one more plan with the clocks built, medians over runs and seeds, with what the
checker finds. Then how the time grows with the number of coats, against n log n. Asked: 20
pieces x 5 coats over 2 weeks under 0.1 s, 150 x 5 over 8 weeks under 2 s, growth no faster than
n log n once the clocks are built. Exit 1 when one of them is missed.
"""

from __future__ import annotations

import math
import statistics
import sys
from dataclasses import dataclass
from itertools import pairwise
from time import perf_counter

from studio_planner.planning.checker import check_plan
from studio_planner.planning.clockwork import Clockworks
from studio_planner.planning.problem import build_chains
from studio_planner.planning.quick import quick_plan
from studio_planner.planning.rounds import Rounds
from tests.planning.benchmark_studios import START, make_studio

SEEDS = range(6)
SIZES = ((8, 4, 1), (20, 5, 2), (60, 5, 4), (150, 5, 8))
ASKED = {(20, 5, 2): 0.1, (150, 5, 8): 2.0}
GROWING = ((75, 5, 4), (150, 5, 8), (300, 5, 16))
SLACK = 1.25
"""How much faster than n log n it may grow before it counts: the measure is noisy."""


@dataclass(frozen=True, slots=True)
class Measured:
    """Seconds of one studio: the whole first plan, and one more with the clocks built."""

    first: float
    again: float
    late: int
    broken: int


def measure(seed: int, size: tuple[int, int, int]) -> Measured:
    """Plan one studio twice and check the plan."""
    studio = make_studio(seed, *size)
    clockworks = Clockworks()
    begun = perf_counter()
    plan = quick_plan(studio, START, clockworks=clockworks)
    first = perf_counter() - begun
    begun = perf_counter()
    quick_plan(studio, START, clockworks=clockworks)
    again = perf_counter() - begun
    late = sum(bool(outcome.late_hours) for outcome in plan.outcomes)
    return Measured(first, again, late, len(check_plan(studio, plan).broken))


def sizes_kept() -> bool:
    """Print the table of sizes, and tell whether what was asked is met."""
    kept = True
    print("pieces x coats, weeks   first plan (worst)   clocks built (worst)   late  broken")
    for size in SIZES:
        rows = [measure(seed, size) for seed in SEEDS]
        first, again = ([getattr(row, name) for row in rows] for name in ("first", "again"))
        name = f"{size[0]} x {size[1]}, {size[2]}"
        print(
            f"{name:22}  {statistics.median(first):6.3f} s ({max(first):.3f})   "
            f"{statistics.median(again):6.3f} s ({max(again):.3f})      "
            f"{sum(row.late for row in rows):4}  {sum(row.broken for row in rows):6}"
        )
        kept &= statistics.median(first) < ASKED.get(size, math.inf)
        kept &= not any(row.broken for row in rows)
    return kept


def round_seconds(seed: int, size: tuple[int, int, int]) -> float:
    """One round over all chains with the clocks built: larger studios get fewer rounds."""
    studio = make_studio(seed, *size)
    clockworks = Clockworks()
    chains, _ = build_chains(studio, twins=True)
    rounds = Rounds(studio, START, None, chains, clockworks)
    rounds.best(chains, (), 1)
    begun = perf_counter()
    rounds.best(chains, (), 1)
    return perf_counter() - begun


def growth_kept() -> bool:
    """Print how a round's time grows with the coats, and tell whether n log n holds it."""
    times = [statistics.median(round_seconds(seed, size) for seed in SEEDS) for size in GROWING]
    coats = [pieces * each for pieces, each, _ in GROWING]
    kept = True
    for (n0, t0), (n1, t1) in pairwise(zip(coats, times, strict=True)):
        bound = n1 * math.log(n1) / (n0 * math.log(n0))
        print(f"{n0} to {n1} coats: {t1 / t0:.2f} times the time; n log n is {bound:.2f} times")
        kept &= t1 / t0 < SLACK * bound
    return kept


if __name__ == "__main__":
    met = [sizes_kept(), growth_kept()]
    sys.exit(0 if all(met) else 1)
