"""The problem core on small problems whose answer is known, and against trying everything."""

from __future__ import annotations

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.planning.activities import (
    Activity,
    Lag,
    Problem,
    Shortest,
    groups_apart,
    known_gaps,
    pairs_apart,
    shortest,
)
from studio_planner.planning.solver import Search, Status
from tests.planning.published_instances import broken

SEARCH = Search(seconds=20, workers=1)


def solved(problem: Problem) -> Shortest:
    found = shortest(problem, SEARCH)
    if found.starts:
        assert broken(problem, found.starts) == []
    return found


def test_nothing_to_do_ends_at_once() -> None:
    assert solved(Problem(())) == Shortest(Status.PROVED, (), 0, 0)


def test_one_activity_takes_its_own_length() -> None:
    assert solved(Problem((Activity(7, (1,)),), (1,))) == Shortest(Status.PROVED, (0,), 7, 7)


def test_activities_that_share_one_hand_follow_each_other() -> None:
    found = solved(Problem((Activity(3, (1,)), Activity(4, (1,)), Activity(5, (1,))), (1,)))
    assert (found.status, found.whole, found.bound) == (Status.PROVED, 12, 12)


def test_two_hands_share_the_work_as_evenly_as_can_be() -> None:
    lengths = (7, 6, 5, 4, 4, 4)  # 30 in all: 15 each, as 7 + 4 + 4 and 6 + 5 + 4
    found = solved(Problem(tuple(Activity(length, (1,)) for length in lengths), (2,)))
    assert (found.status, found.whole) == (Status.PROVED, 15)


def test_a_minimum_lag_keeps_a_start_waiting() -> None:
    found = solved(Problem((Activity(2), Activity(3)), (), (Lag(0, 1, 8),)))
    assert (found.starts, found.whole) == ((0, 8), 11)


def test_a_maximum_lag_delays_the_first_of_two() -> None:
    # The third blocks the only hand until 10 (it must start at once); 1 follows 0 within 4.
    problem = Problem(
        (Activity(2, (0,)), Activity(3, (1,)), Activity(10, (1,))),
        (1,),
        (Lag(0, 1, 2), Lag(1, 0, -4), Lag(0, 2, -8), Lag(1, 2, -14)),
    )
    found = solved(problem)
    assert found.whole == 13
    assert found.starts[1] - found.starts[0] in {2, 3, 4}


def test_two_coats_of_two_pieces_meet_their_windows_with_one_pair_of_hands() -> None:
    # Each second coat 6 to 8 after the first; blocks of 2: 0-2, 2-4, 6-8, 8-10.
    coats = tuple(Activity(2, (1,)) for _ in range(4))
    windows = (Lag(0, 1, 6), Lag(1, 0, -8), Lag(2, 3, 6), Lag(3, 2, -8))
    assert solved(Problem(coats, (1,), windows)).whole == 10


def test_windows_too_narrow_for_the_hands_are_impossible() -> None:
    # Three first coats within 2 of each other cannot be poured by one pair of hands.
    coats = tuple(Activity(2, (1,)) for _ in range(3))
    together = tuple(Lag(i, j, -2) for i in range(3) for j in range(3) if i != j)
    assert solved(Problem(coats, (1,), together)) == Shortest(Status.IMPOSSIBLE)


def test_lags_that_chase_each_other_are_impossible() -> None:
    found = solved(Problem((Activity(1), Activity(1)), (), (Lag(0, 1, 5), Lag(1, 0, -4))))
    assert found == Shortest(Status.IMPOSSIBLE)


def test_an_activity_that_needs_more_than_there_is_is_impossible() -> None:
    assert solved(Problem((Activity(1, (3,)),), (2,))) == Shortest(Status.IMPOSSIBLE)


def test_an_activity_without_length_takes_up_nothing() -> None:
    assert solved(Problem((Activity(0, (3,)),), (2,))).whole == 0


def test_two_that_cannot_overlap_are_ordered_by_their_windows() -> None:
    pair = (Activity(5, (1,)), Activity(4, (1,)))
    gaps = known_gaps(Problem(pair, (1,), (Lag(0, 1, -3),)))
    assert gaps is not None
    assert gaps[0][1] == 5


def test_pairs_that_cannot_overlap_are_grouped() -> None:
    activities = tuple(Activity(1, (need,)) for need in (3, 3, 2, 1, 2))
    problem = Problem(activities, (4,))
    assert pairs_apart(problem) == [(0, 1), (0, 2), (0, 4), (1, 2), (1, 4)]
    assert groups_apart(problem) == [(0, 1, 2), (0, 1, 4)]


def test_a_search_that_may_do_nothing_still_gives_a_bound() -> None:
    coats = tuple(Activity(length, (1,)) for length in (5, 3, 8, 2, 7, 4))
    found = shortest(Problem(coats, (2,)), Search(seconds=20, work=0.0))
    assert (found.status, found.starts, found.whole) == (Status.UNKNOWN, (), None)
    assert found.bound == 15  # 29 in all on two hands


def test_better_answers_are_told_and_may_end_the_search() -> None:
    coats = tuple(Activity(length, (1,)) for length in (5, 3, 8, 2, 7, 4))
    told: list[int] = []

    def enough(whole: int) -> bool:
        told.append(whole)
        return True

    found = shortest(Problem(coats, (2,)), SEARCH, enough)
    assert found.whole == told[-1]
    assert all(later < earlier for earlier, later in pairwise(told))


@pytest.mark.parametrize(
    ("activities", "capacities", "lags", "words"),
    [
        ((Activity(1),), (-1,), (), "A capacity is below 0"),
        ((Activity(-1),), (), (), "Activity 0 has a length or a need below 0"),
        ((Activity(1, (-1,)),), (2,), (), "Activity 0 has a length or a need below 0"),
        ((Activity(1, (1, 1)),), (2,), (), "Activity 0 has 2 needs for 1 capacities"),
        ((Activity(1),), (), (Lag(0, 1, 0),), "The lag from 0 to 1 names an activity"),
    ],
)
def test_a_problem_that_makes_no_sense_is_refused(
    activities: tuple[Activity, ...],
    capacities: tuple[int, ...],
    lags: tuple[Lag, ...],
    words: str,
) -> None:
    with pytest.raises(ValueError, match=words):
        Problem(activities, capacities, lags)


_MOST_LENGTH = 3
_MOST_LAG = 4


@st.composite
def tiny_problems(draw: st.DrawFn) -> Problem:
    capacities = tuple(draw(st.lists(st.integers(0, 3), max_size=2)))
    count = draw(st.integers(1, 5 if len(capacities) < 2 else 4))
    activities = tuple(
        Activity(
            draw(st.integers(0, _MOST_LENGTH)),
            tuple(draw(st.integers(0, most + (most == 0))) for most in capacities),
        )
        for _ in range(count)
    )
    position = st.integers(0, count - 1)
    lags = st.builds(Lag, position, position, st.integers(-_MOST_LAG, _MOST_LAG))
    return Problem(activities, capacities, tuple(draw(st.lists(lags, max_size=5))))


def tried(problem: Problem) -> int | None:
    """The shortest whole time by trying all starts; None: there are none.

    In an answer that is as short as can be, at every instant something runs or a lag waits, so
    all is over after the longer of length and lag of every activity.
    """
    limit = sum(
        max([a.length, *(lag.least for lag in problem.lags if lag.earlier == i)])
        for i, a in enumerate(problem.activities)
    )
    return _placed(problem, (), limit)


def _placed(problem: Problem, starts: tuple[int, ...], limit: int) -> int | None:
    """The shortest whole time, up to `limit`, of all answers that begin with these starts."""
    ends = [start + a.length for start, a in zip(starts, problem.activities, strict=False)]
    if len(starts) == len(problem.activities):
        return None if max(ends) > limit or broken(problem, starts) else max(ends)
    best: int | None = None
    length = problem.activities[len(starts)].length
    for start in range(limit - length + 1):
        more = (*starts, start)
        if _lags_kept(problem, more):
            found = _placed(problem, more, limit if best is None else best - 1)
            best = best if found is None else found
    return best


def _lags_kept(problem: Problem, starts: tuple[int, ...]) -> bool:
    return all(
        starts[lag.later] - starts[lag.earlier] >= lag.least
        for lag in problem.lags
        if max(lag.earlier, lag.later) < len(starts)
    )


@given(tiny_problems())
def test_the_answer_is_the_shortest_of_all_starts(problem: Problem) -> None:
    found = solved(problem)
    best = tried(problem)
    assert found.whole == best
    assert found.status is (Status.IMPOSSIBLE if best is None else Status.PROVED)
    assert found.bound == best
