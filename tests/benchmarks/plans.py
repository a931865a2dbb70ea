"""How good and how fast plans are, in one table; run it by hand, it is no test.

    python -m tests.benchmarks.plans [--sizes S,M,L,X,all] [--seeds 0,1,2,3,4,5] [--keep]
    python -m tests.benchmarks.plans --best-known [SECONDS] [--parts plan,moves] [--sizes ...]

Prints, for seeded realistic studios of four sizes, what is asked, whether it is met and what
was measured: the first plan, what the search makes of it, a kept plan made anew, and memory;
`all` is how a round's time grows with the coats. Then a line for each studio with its load, its
windows and the best value known. Every plan goes through the checker. With `--keep` the lines
go into `plans.txt`. The second form looks for better best values and keeps them in
`best_known.json`; a studio whose lateness is proved takes no longer. Exit 1 when something
asked is missed.
"""

from __future__ import annotations

import argparse
import resource
import sys
from typing import TYPE_CHECKING

from studio_planner.craft.plans import Goal
from tests.benchmarks.plans_best_known import PLAN, BestKnown, Known, mark_of
from tests.benchmarks.plans_growth import ALL, growth_rows
from tests.benchmarks.plans_judging import rows_of
from tests.benchmarks.plans_measuring import EVENTS, SEARCHED_ANEW, after, measure
from tests.benchmarks.plans_solving import FIRST_GOALS, proved, solve, value
from tests.benchmarks.plans_table import details, keep, row_line
from tests.planning.benchmark_studios import SIZES, START, benchmark_studio

if TYPE_CHECKING:
    from collections.abc import Sequence

    from studio_planner.craft.plans import Plan
    from studio_planner.craft.studio import Studio
    from tests.benchmarks.plans_best_known import Entry
    from tests.benchmarks.plans_solving import Solved

LONG = {"S": 60.0, "M": 690.0, "L": 210.0, "X": 210.0}
"""Seconds of a search for a best known value: ten minutes and three, and what the end takes."""

LONG_ANEW = 120.0
KILOBYTES_OF_A_MEGABYTE = 1024.0


def size_measured(
    size: str, seeds: Sequence[int], best_known: BestKnown, *, kept: bool
) -> bool:
    """Measure, judge and print one size; tell whether all that was asked is met."""
    lines: list[str] = []
    if size == ALL:
        rows = growth_rows(seeds)
    else:
        runs = []
        for seed in seeds:
            runs.append(measure(size, seed, best_known))
            found = details(runs[-1])
            print("\n".join(found), flush=True)
            lines += found
        # The most of all children so far: sizes come from small to large.
        most = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss / KILOBYTES_OF_A_MEGABYTE
        rows = rows_of(size, runs, most)
    table = [row_line(row) for row in rows]
    print("\n".join(table), flush=True)
    if kept:
        keep(table, lines)
    return all(row.met for row in rows)


def best_searched(
    size: str, seeds: Sequence[int], best_known: BestKnown, seconds: float | None
) -> None:
    """Search each studio of a size for long, and keep what is better than what is known."""
    for seed in seeds:
        studio = benchmark_studio(size, seed)
        solved = solve(studio, START, seconds or LONG[size], _lateness_proved)
        _keep((size, seed, PLAN), studio, solved, best_known)


def moves_searched(size: str, seeds: Sequence[int], best_known: BestKnown) -> None:
    """Make each kept plan anew with the fewest moves that a long search finds; keep them."""
    for seed in seeds:
        for event in EVENTS:
            now, studio = after(size, seed, event)
            solved = solve(studio, now, LONG_ANEW, _moves_proved)
            _keep((size, seed, event), studio, solved, best_known)


def _keep(entry: Entry, studio: Studio, solved: Solved, best_known: BestKnown) -> None:
    """Keep what a search found, if it breaks no rule."""
    name = " ".join(map(str, entry))
    if solved.broken:
        print(f"{name}: breaks {solved.broken} rules")
        return
    found = Known(
        studio=mark_of(studio),
        late=round(solved.late, 3),
        bound=round(solved.bound, 3),
        moved=int(value(solved.plan, Goal.MOVED)),
        seconds=round(solved.seconds),
        left_out=int(value(solved.plan, Goal.LEFT_OUT)),
    )
    known = best_known.keep(entry, found)
    print(f"{name}: found {found}; best known {known}", flush=True)


def _lateness_proved(plan: Plan) -> bool:
    return proved(plan, Goal.LEFT_OUT, Goal.LATENESS)


def _moves_proved(plan: Plan) -> bool:
    return proved(plan, *FIRST_GOALS, Goal.MOVED)


def _arguments() -> argparse.Namespace:
    parser = argparse.ArgumentParser(description="How good and how fast plans are.")
    parser.add_argument("--sizes", default=",".join([*SIZES, ALL]))
    parser.add_argument("--seeds", default="0,1,2,3,4,5")
    parser.add_argument("--keep", action="store_true")
    parser.add_argument("--parts", default="plan,moves", help="of the best known values")
    parser.add_argument("--best-known", nargs="?", type=float, const=0.0, metavar="SECONDS")
    return parser.parse_args()


def main() -> int:
    """Run what is asked for; 1 when a target is missed."""
    asked = _arguments()
    sizes = [size for size in [*SIZES, ALL] if size in asked.sizes.split(",")]
    seeds = [int(seed) for seed in asked.seeds.split(",")]
    best_known = BestKnown()
    if asked.best_known is not None:
        parts = asked.parts.split(",")
        for size in sizes:
            if size != ALL and "plan" in parts:
                best_searched(size, seeds, best_known, asked.best_known or None)
            if size == SEARCHED_ANEW and "moves" in parts:
                moves_searched(size, seeds, best_known)
        return 0
    met = [size_measured(size, seeds, best_known, kept=asked.keep) for size in sizes]
    return 0 if all(met) else 1


if __name__ == "__main__":
    sys.exit(main())
