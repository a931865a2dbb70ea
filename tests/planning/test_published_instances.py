"""The problem core on published problems: best known whole times, and what is impossible.

Where STUDIO_PLANNER_RCPSP_MAX names no folder, these are skipped; all problems of the folder
are run by `python -m tests.benchmarks.published FOLDER`.
"""

from __future__ import annotations

from typing import TYPE_CHECKING

import pytest

from studio_planner.planning.activities import Activity, Lag, Problem, shortest
from studio_planner.planning.solver import Search, Status
from tests.planning.published_instances import (
    FOLDER,
    Published,
    broken,
    folder,
    parse_problem,
    read_sets,
)

if TYPE_CHECKING:
    from pathlib import Path

EVERY = 6
"""Of each set every sixth problem is solved here."""

SMALL = """2 1 0 0
0 1 2 1 2 [0] [0]
1 1 2 2 3 [2] [4]
2 1 2 1 3 [-5] [3]
3 1 0
0 1 0 0
1 1 4 2
2 1 3 1
3 1 0 0
2
"""


def _sample() -> list[Published]:
    where = folder()
    if where is None:
        return []
    return [row for rows in read_sets(where).values() for row in rows[::EVERY]]


def _reason() -> str:
    return f"{FOLDER} names no folder with the published problems"


@pytest.mark.parametrize("published", _sample(), ids=lambda row: f"{row.set_name}/{row.name}")
def test_a_published_problem_reaches_the_best_known_whole_time(published: Published) -> None:
    found = shortest(published.problem, Search(10, workers=2))
    if published.best is None:
        assert found.status is Status.IMPOSSIBLE
        return
    assert found.whole is not None
    assert found.whole <= published.best
    assert broken(published.problem, found.starts) == []
    if published.proved:
        assert found.whole == published.best


@pytest.mark.skipif(folder() is None, reason=_reason())
def test_the_named_folder_holds_problems() -> None:
    assert _sample()


def test_a_published_file_is_read_with_its_lags_needs_and_capacities() -> None:
    assert parse_problem(SMALL, "small") == Problem(
        activities=(Activity(0, (0,)), Activity(4, (2,)), Activity(3, (1,)), Activity(0, (0,))),
        capacities=(2,),
        lags=(
            Lag(0, 1, 0),
            Lag(0, 2, 0),
            Lag(1, 2, 2),
            Lag(1, 3, 4),
            Lag(2, 1, -5),
            Lag(2, 3, 3),
        ),
    )


def test_a_file_that_stops_early_is_refused_by_name() -> None:
    with pytest.raises(ValueError, match="small: 9 lines instead of 10"):
        parse_problem(SMALL.removesuffix("2\n"), "small")


def test_a_successor_without_a_lag_is_refused_by_its_activity() -> None:
    with pytest.raises(ValueError, match="small: activity 1 has not one lag"):
        parse_problem(SMALL.replace("[2] [4]", "[2]"), "small")


def test_a_folder_without_a_table_is_refused(tmp_path: Path) -> None:
    with pytest.raises(ValueError, match="no table"):
        read_sets(tmp_path)


def test_a_set_is_read_by_its_table(tmp_path: Path) -> None:
    (tmp_path / "tiny").mkdir()
    for name in ("a.sch", "b.sch"):
        (tmp_path / "tiny" / name).write_text(SMALL, encoding="ascii")
    (tmp_path / "tiny.csv").write_text(
        "instance,best_known,best_known_proved\na.sch,7,1\nb.sch,infeasible,0\n",
        encoding="ascii",
    )
    rows = read_sets(tmp_path)["tiny"]
    assert [(row.name, row.best, row.proved) for row in rows] == [
        ("a.sch", 7, True),
        ("b.sch", None, False),
    ]


def test_the_check_names_each_broken_lag_and_capacity() -> None:
    problem = parse_problem(SMALL, "small")
    assert broken(problem, [0, 0, 4, 7]) == []
    assert broken(problem, [0, 0, 1, 7]) == [
        "2 starts 1 after 1, not 2",
        "3 of 2 of capacity 0 at 1",
    ]
    assert broken(problem, [0, -1, 4, 8]) == ["1 starts -1 after 0, not 0", "1 starts at -1"]
