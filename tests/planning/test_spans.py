"""Sets of starts and free time, against plain sets of seconds."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from studio_planner.planning.placing.free_time import FreeTime
from studio_planner.planning.spans import (
    GRID,
    Stretches,
    common,
    grid_down,
    grid_up,
    joined,
    latest_until,
    outside,
    united,
)

_SLOTS = 60


@st.composite
def stretches(draw: st.DrawFn) -> Stretches:
    chosen = draw(st.sets(st.integers(0, _SLOTS)))
    return united((slot * GRID, slot * GRID) for slot in chosen)


def members(found: Stretches) -> set[int]:
    return {start for first, last in found for start in range(first, last + 1, GRID)}


@given(stretches(), stretches())
def test_common_is_the_intersection(one: Stretches, other: Stretches) -> None:
    assert members(common(one, other)) == members(one) & members(other)


@given(stretches(), stretches())
def test_united_is_the_union(one: Stretches, other: Stretches) -> None:
    assert members(united([*one, *other])) == members(one) | members(other)


_SECONDS = st.integers(-GRID, (_SLOTS + 1) * GRID)


@given(stretches(), st.lists(st.tuples(_SECONDS, _SECONDS)))
def test_outside_takes_away_what_lies_strictly_in_a_hole(
    found: Stretches, pairs: list[tuple[int, int]]
) -> None:
    holes = joined((min(pair), max(pair)) for pair in pairs)
    kept = {s for s in members(found) if not any(a < s < b for a, b in holes)}
    assert members(outside(found, holes)) == kept


@given(stretches(), _SECONDS)
def test_latest_until_is_the_largest_not_after(found: Stretches, limit: int) -> None:
    below = [start for start in members(found) if start <= limit]
    assert latest_until(found, limit) == (max(below) if below else None)


@given(st.floats(-1e6, 1e6))
def test_the_grid_brackets_every_second(second: float) -> None:
    low, high = grid_down(second), grid_up(second)
    assert low <= second <= high
    assert high - low in {0, GRID}
    assert low % GRID == 0


_TAKEN = st.lists(st.tuples(st.integers(0, 200), st.integers(1, 50)), max_size=8)


@given(_TAKEN, st.integers(0, 200), st.integers(1, 40))
def test_free_time_is_what_was_not_taken(
    taken: list[tuple[int, int]], start: int, length: int
) -> None:
    free = FreeTime([(0, 250)])
    left = set(range(250))
    for begin, size in taken:
        free.take(begin, begin + size)
        left -= set(range(begin, begin + size))
    assert {s for a, b in free.from_(-1) for s in range(a, b)} == left
    assert free.holds(start, start + length) == (set(range(start, start + length)) <= left)


@given(_TAKEN, _TAKEN, st.integers(1, 30))
def test_all_that_is_taken_at_once_is_taken_as_one_by_one(
    before: list[tuple[int, int]], taken: list[tuple[int, int]], shortest: int
) -> None:
    one_by_one = FreeTime([(0, 100), (120, 250)], shortest)
    at_once = FreeTime([(0, 100), (120, 250)], shortest)
    for start, length in before:
        one_by_one.take(start, start + length)
        at_once.take(start, start + length)
    spans = sorted((start, start + length) for start, length in taken)
    for span in spans:
        one_by_one.take(*span)
    at_once.take_all(spans)
    assert list(at_once.from_(-1)) == list(one_by_one.from_(-1))


@given(_TAKEN, stretches(), st.integers(0, 3), st.integers(1, 5))
def test_starts_in_leave_lead_and_block_free(
    taken: list[tuple[int, int]], ranges: Stretches, lead: int, block: int
) -> None:
    free = FreeTime([(0, 250 * GRID)])
    for begin, size in taken:
        free.take(begin * GRID, (begin + size) * GRID)
    found = free.starts_in(ranges, lead * GRID, block * GRID, 10_000)
    wanted = {
        start
        for start in members(ranges)
        if free.holds(start - lead * GRID, start + block * GRID)
    }
    assert members(united(found)) == wanted


def test_a_second_copy_is_taken_from_on_its_own() -> None:
    free = FreeTime([(0, 100)])
    twin = free.copy()
    twin.take(0, 50)
    assert free.holds(0, 100)
    assert not twin.holds(0, 100)


def test_what_is_left_too_short_is_dropped() -> None:
    free = FreeTime([(0, 100)], shortest=30)
    free.take(20, 60)
    assert list(free.from_(-1)) == [(60, 100)]
    assert free.last_start == 60
