"""Lines give step functions back exactly, at every point of theirs."""

from __future__ import annotations

from itertools import accumulate, pairwise

from hypothesis import given
from hypothesis import strategies as st

from studio_planner.planning.exact.lines import Points, pieces_of

_STEPS = st.lists(st.sampled_from((0, 1, 1, 1, 2, 5)), min_size=1, max_size=120)
_LENGTH = st.sampled_from((1, 5, 60))


def _row(steps: list[int], apart: int) -> Points:
    """Rising values at points so far apart."""
    return [(at * apart, value) for at, value in enumerate(accumulate(steps))]


@given(_STEPS, _LENGTH)
def test_lines_rounded_up_are_the_value_at_every_point(steps: list[int], apart: int) -> None:
    row = _row(steps, apart)
    for first, last, line in pieces_of(row, up=True):
        for at in range(first, last + 1):
            x, value = row[at]
            assert line.up(x) == value


@given(_STEPS, _LENGTH)
def test_lines_rounded_down_are_the_value_at_every_point(steps: list[int], apart: int) -> None:
    row = _row(steps, apart)
    for first, last, line in pieces_of(row, up=False):
        for at in range(first, last + 1):
            x, value = row[at]
            assert line.down(x) == value


@given(_STEPS, _LENGTH)
def test_the_parts_of_a_row_follow_each_other_and_leave_no_gap(
    steps: list[int], apart: int
) -> None:
    parts = pieces_of(_row(steps, apart), up=True)
    assert parts[0][0] == 0
    assert parts[-1][1] == len(steps) - 1
    assert all(after[0] == before[1] + 1 for before, after in pairwise(parts))


def test_what_moves_with_the_start_is_one_line() -> None:
    assert len(pieces_of([(x, x + 40) for x in range(200)], up=True)) == 1


def test_what_slows_down_evenly_is_few_lines() -> None:
    assert len(pieces_of([(x, 40 + (9 * x) // 10) for x in range(200)], up=True)) <= 2
