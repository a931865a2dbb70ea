"""How the problem core does on published problems; run it by hand, it is no test.

    python -m tests.benchmarks.published FOLDER [SECONDS]

The folder is in the form that `tests/planning/published_instances.py` describes. Prints for
each set how many problems reach the best known whole time, how many are proved, how many are
shown to be impossible, the longest and all searches together; two workers, ten seconds each
unless told otherwise. Every answer is checked. Exit 1 when one best known value is missed or an
answer is broken, 2 when the folder cannot be read.
"""

from __future__ import annotations

import sys
from dataclasses import dataclass
from pathlib import Path
from time import perf_counter
from typing import TYPE_CHECKING

from studio_planner.planning.activities import Shortest, shortest
from studio_planner.planning.solver import Search, Status
from tests.planning.published_instances import Published, broken, read_sets

if TYPE_CHECKING:
    from collections.abc import Sequence

SECONDS = 10.0
WORKERS = 2


@dataclass(frozen=True, slots=True)
class Run:
    """One problem, what was found, and the seconds of the search and all around it."""

    published: Published
    found: Shortest
    seconds: float

    @property
    def reached(self) -> bool:
        """Whether it is as good as the best known, and keeps every lag and capacity."""
        if self.published.best is None:
            return self.found.status is Status.IMPOSSIBLE
        whole = self.found.whole
        return whole is not None and whole <= self.published.best and not self.faults

    @property
    def proved(self) -> bool:
        """Whether nothing is left open."""
        return self.found.status in {Status.PROVED, Status.IMPOSSIBLE}

    @property
    def faults(self) -> list[str]:
        """What the answer breaks."""
        return broken(self.published.problem, self.found.starts) if self.found.starts else []


def run(published: Published, seconds: float) -> Run:
    """Solve one problem."""
    begun = perf_counter()
    found = shortest(published.problem, Search(seconds, workers=WORKERS))
    return Run(published, found, perf_counter() - begun)


def report(name: str, runs: Sequence[Run]) -> bool:
    """Print one set and what it misses; tell whether nothing is missed."""
    missed = [done for done in runs if not done.reached]
    times = [done.seconds for done in runs]
    impossible = sum(done.found.status is Status.IMPOSSIBLE for done in runs)
    print(
        f"{name:8} {len(runs):4} {len(runs) - len(missed):8} "
        f"{sum(done.proved for done in runs):7} {impossible:11} "
        f"{max(times):9.2f} s {sum(times):7.2f} s"
    )
    for done in missed:
        best = "impossible" if done.published.best is None else done.published.best
        print(
            f"  {done.published.name}: {done.found.status} {done.found.whole}, at least "
            f"{done.found.bound}; best known {best}. {' '.join(done.faults)}"
        )
    return not missed


def main(arguments: Sequence[str]) -> int:
    """Run all sets of a folder."""
    if not arguments:
        print("Say which folder: python -m tests.benchmarks.published FOLDER [SECONDS]")
        return 2
    try:
        sets = read_sets(Path(arguments[0]))
    except (OSError, ValueError) as fault:
        print(fault)
        return 2
    seconds = float(arguments[1]) if len(arguments) > 1 else SECONDS
    for rows in sets.values():
        run(rows[0], seconds)  # the solver is loaded before anything is timed
        break
    print("set       all  reached  proved  impossible      worst       all")
    kept = [report(name, [run(row, seconds) for row in rows]) for name, rows in sets.items()]
    return 0 if all(kept) else 1


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
