"""Blocks of several lengths that start and end in the same working hours."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from studio_planner.planning.exact.grid import Grid
from studio_planner.planning.exact.in_hours import InHours, common_ends
from studio_planner.planning.solver import Model, Search, Status

_GRID = Grid(0, 300)
_FIVE = 300


def _starts(hours: list[tuple[int, int]], slots: int) -> list[tuple[int, int]]:
    """The slots in which a block of so many slots may start within hours."""
    return [(first, until - slots) for first, until in hours if until - slots >= first]


def test_longer_blocks_end_where_shorter_ones_do() -> None:
    hours = [(0, 10), (20, 24), (30, 50)]
    starts = [(slots, _starts(hours, slots)) for slots in (2, 4, 12)]
    assert common_ends(starts) == [10, 24, 50]


def test_hours_that_are_cut_by_a_window_have_their_end_all_the_same() -> None:
    starts = [(2, [(3, 8), (20, 21)]), (4, [(3, 6), (20, 20)])]
    assert common_ends(starts) == [10, 24]
    assert common_ends([(2, [(3, 4)]), (4, [(3, 4)])]) == [8]


def test_bad_air_in_the_middle_is_no_matter_of_ends() -> None:
    assert common_ends([(2, [(0, 8)]), (4, [(0, 2), (5, 6)])]) is None
    assert common_ends([(2, [(0, 8)]), (4, [(1, 6)])]) is None
    assert common_ends([(2, [(0, 3)]), (4, [(0, 3), (9, 12)])]) is None


@st.composite
def _hours(draw: st.DrawFn) -> list[tuple[int, int]]:
    found, at = [], 0
    for _ in range(draw(st.integers(1, 3))):
        first = at + draw(st.integers(0, 4))
        at = first + draw(st.integers(1, 6))
        found.append((first, at))
        at += 1
    return found


@given(_hours(), st.lists(st.integers(1, 7), min_size=2, max_size=3, unique=True))
def test_what_may_start_is_what_each_length_may(
    hours: list[tuple[int, int]], lengths: list[int]
) -> None:
    starts = {slots * _FIVE: _starts(hours, slots) for slots in lengths}
    possible = {
        (slots, start)
        for slots in lengths
        for first, last in starts[slots * _FIVE]
        for start in range(first, last + 1)
    }
    found = set()
    for slots in lengths:
        for start in range(hours[-1][1] + 1):
            model = Model()
            at = model.between(start, start)
            model.inside(at, starts[min(lengths) * _FIVE] or [(-1, -1)])
            kept = InHours(model, _GRID).keep(at, at + slots, starts)
            assert kept or not possible
            if kept and model.solve(Search(5.0)).status is Status.PROVED:
                found.add((slots, start))
    assert found == possible


def test_another_s_hours_may_lie_between_somebody_s() -> None:
    """Only who is chosen has to end in their own hours."""
    mine, theirs = [(0, 4), (20, 24)], [(6, 12)]
    model = Model()
    start, chosen = model.between(8, 8), model.flag()
    hours = InHours(model, _GRID)
    for whose, when in ((mine, [chosen]), (theirs, [~chosen])):
        starts = {slots * _FIVE: _starts(whose, slots) for slots in (2, 3)}
        model.inside(start, starts[2 * _FIVE], when)
        assert hours.keep(start, start + 3, starts, when)
    answer = model.solve(Search(5.0))
    assert answer.found
    assert not answer.of(chosen)
