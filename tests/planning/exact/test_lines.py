"""Lines stand for step functions: at every point what they give will do."""

from __future__ import annotations

from itertools import accumulate, pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from studio_planner.planning.exact.lines import Point, pieces_of

_STEPS = st.lists(st.sampled_from((0, 1, 1, 1, 2, 5)), min_size=1, max_size=120)
_LENGTH = st.sampled_from((1, 5, 60))
_STRETCHES = st.lists(st.integers(1, 25), max_size=8)
"""By how much the steps, at which it makes no difference which value is given, lie apart."""


def _row(steps: list[int], apart: int, alike: list[int] | None = None) -> list[Point]:
    """Rising values at points so far apart; every other stretch of values is all alike."""
    edges = list(accumulate(alike or []))
    row = []
    for at, value in enumerate(accumulate(steps)):
        low, high = value, value
        for number, (one, other) in enumerate(pairwise(edges)):
            if number % 2 and one < value <= other:
                low, high = one + 1, other
        row.append(Point(at * apart, value, low, high))
    return row


@pytest.mark.parametrize("up", [True, False])
@given(_STEPS, _LENGTH, _STRETCHES)
def test_rounded_lines_will_do_at_every_point(
    up: bool, steps: list[int], apart: int, alike: list[int]
) -> None:
    row = _row(steps, apart, alike)
    for first, last, line in pieces_of(row, up=up):
        said = line.up if up else line.down
        assert all(one.low <= said(one.x) <= one.high for one in row[first : last + 1])


@given(_STEPS, _LENGTH, _STRETCHES)
def test_the_parts_of_a_row_follow_each_other_and_leave_no_gap(
    steps: list[int], apart: int, alike: list[int]
) -> None:
    parts = pieces_of(_row(steps, apart, alike), up=True)
    assert parts[0][0] == 0
    assert parts[-1][1] == len(steps) - 1
    assert all(after[0] == before[1] + 1 for before, after in pairwise(parts))


def test_what_moves_with_the_start_is_one_line() -> None:
    assert len(pieces_of(_row([1] * 200, 1), up=True)) == 1


def test_what_slows_down_evenly_is_few_lines() -> None:
    row = [Point(x, *[40 + (9 * x) // 10] * 3) for x in range(200)]
    assert len(pieces_of(row, up=True)) <= 2


def test_where_all_is_alike_one_line_goes_on_through_any_steps() -> None:
    row = [Point(x, x * x, 0, 40_000) for x in range(200)]
    assert len(pieces_of(row, up=True)) == 1
    assert len(pieces_of(row, up=False)) == 1
