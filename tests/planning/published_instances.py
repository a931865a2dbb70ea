"""Published problems with minimum and maximum lags, from a folder that the tests are given.

The folder holds sets such as `ubo20/` with `.sch` files, made by C. Schwindt's generator, and
beside each a table such as `ubo20.csv` with the best whole time known. Sources, cited from
memory: R. Kolisch, C. Schwindt and A. Sprecher, Benchmark instances for project scheduling
problems, in Project Scheduling, Kluwer, 1999; B. Franck, K. Neumann and C. Schwindt, Truncated
branch-and-bound, schedule-construction, and schedule-improvement procedures for
resource-constrained project scheduling, OR Spektrum 23, 2001. What others reach on them:
A. Schutt, T. Feydy, P. J. Stuckey and M. G. Wallace, Solving the resource constrained project
scheduling problem with generalized precedences by lazy clause generation, arXiv 1009.0347.

A `.sch` file: `n m 0 0`; for each of the n + 2 activities `number modes k`, k successors and k
lags in brackets; for each `number mode length` and m needs; at the end m capacities. Lags run
from start to start; a negative one from i to j says that i starts that much after j at most.
"""

from __future__ import annotations

import csv
import os
import re
from dataclasses import dataclass
from pathlib import Path
from typing import TYPE_CHECKING

from studio_planner.planning.activities import Activity, Lag, Problem

if TYPE_CHECKING:
    from collections.abc import Sequence

FOLDER = "STUDIO_PLANNER_RCPSP_MAX"
"""The environment variable that names the folder."""


@dataclass(frozen=True, slots=True)
class Published:
    """A problem with the best whole time known; None: it is known to be impossible."""

    set_name: str
    name: str
    problem: Problem
    best: int | None
    proved: bool


def folder() -> Path | None:
    """The folder of the published problems; None where nobody named one."""
    named = os.environ.get(FOLDER)
    return Path(named) if named else None


def read_sets(where: Path) -> dict[str, list[Published]]:
    """Read all sets of a folder, each by its table.

    Raises
    ------
    ValueError
        When there is no table, or a file is not in the published form.
    """
    tables = sorted(where.glob("*.csv"))
    if not tables:
        raise ValueError(f"{where}: there is no table (.csv) of best known whole times.")
    return {table.stem: _read_set(table) for table in tables}


def _read_set(table: Path) -> list[Published]:
    with table.open(encoding="utf-8", newline="") as rows:
        return [
            Published(
                set_name=table.stem,
                name=row["instance"],
                problem=read_problem(table.with_suffix("") / row["instance"]),
                best=None if row["best_known"] == "infeasible" else int(row["best_known"]),
                proved=row["best_known_proved"] == "1",
            )
            for row in csv.DictReader(rows)
        ]


def read_problem(path: Path) -> Problem:
    """Read one `.sch` file."""
    return parse_problem(path.read_text(encoding="ascii"), str(path))


def parse_problem(text: str, name: str) -> Problem:
    """Read the text of a `.sch` file; `name` is used in what an error says."""
    rows = [re.findall(r"-?\d+", line) for line in text.splitlines() if line.strip()]
    numbers = [[int(word) for word in row] for row in rows]
    count = numbers[0][0] + 2
    if len(numbers) != 2 * count + 2:
        raise ValueError(f"{name}: {len(numbers)} lines instead of {2 * count + 2}.")
    lags = [lag for row in numbers[1 : count + 1] for lag in _lags(row, name)]
    activities = [Activity(row[2], tuple(row[3:])) for row in numbers[count + 1 : -1]]
    return Problem(tuple(activities), tuple(numbers[-1]), tuple(lags))


def _lags(row: Sequence[int], name: str) -> list[Lag]:
    one, _, count = row[:3]
    if len(row) != 3 + 2 * count:
        raise ValueError(f"{name}: activity {one} has not one lag for each successor.")
    pairs = zip(row[3 : 3 + count], row[3 + count :], strict=True)
    return [Lag(one, other, least) for other, least in pairs]


def broken(problem: Problem, starts: Sequence[int]) -> list[str]:
    """What starts break, found without the planner: lags, and capacities at every start."""
    faults = [
        f"{lag.later} starts {starts[lag.later] - starts[lag.earlier]} after {lag.earlier}, "
        f"not {lag.least}"
        for lag in problem.lags
        if starts[lag.later] - starts[lag.earlier] < lag.least
    ]
    faults += [f"{i} starts at {start}" for i, start in enumerate(starts) if start < 0]
    for instant in sorted(set(starts)):
        running = [
            activity
            for activity, start in zip(problem.activities, starts, strict=True)
            if start <= instant < start + activity.length
        ]
        for k, most in enumerate(problem.capacities):
            used = sum(activity.needs[k] for activity in running)
            if used > most:
                faults.append(f"{used} of {most} of capacity {k} at {instant}")
    return faults
