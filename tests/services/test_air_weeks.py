"""The expected air of a week: points are moved, added, set back and made alike."""

from __future__ import annotations

from datetime import time

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from studio_planner.craft.errors import InvalidEntry
from studio_planner.craft.places import PatternPoint, Place
from studio_planner.services.editing.air_weeks import (
    DAY_MINUTES,
    WeekLine,
    alike,
    day_copied,
    differs,
    in_order,
    indexes_on,
    minute_of,
    moved,
    parted,
    room_to_move,
    set_back,
    time_at,
    with_humidity,
    with_point,
    with_step,
    without_point,
)

CONSTANT = (PatternPoint(at=time(0), celsius=20.0),)
DAY = (
    PatternPoint(at=time(6), celsius=16.0, humidity_pct=60),
    PatternPoint(at=time(12), celsius=22.0, humidity_pct=50),
    PatternPoint(at=time(18), celsius=20.0, humidity_pct=50),
)


@st.composite
def patterns(draw: st.DrawFn) -> tuple[PatternPoint, ...]:
    days = draw(st.sampled_from([(None,), (0, 1, 2, 3, 4, 5, 6), (2, 5)]))
    points = []
    for day in days:
        minutes = draw(st.lists(st.integers(0, 287), min_size=1, max_size=4))
        assume(all(minutes.count(minute) < 3 for minute in minutes))
        warmths = st.floats(-10, 40).map(lambda value: round(value, 1))
        points += [
            PatternPoint(at=time_at(5 * minute), celsius=draw(warmths), day=day)
            for minute in minutes
        ]
    return in_order(points)


def lines_agree(one: tuple[PatternPoint, ...], other: tuple[PatternPoint, ...]) -> bool:
    left, right = WeekLine(one), WeekLine(other)
    return all(
        left.at(minute)[0] == pytest.approx(right.at(minute)[0])
        for minute in range(0, 7 * DAY_MINUTES, 17)
    )


def valid(pattern: tuple[PatternPoint, ...]) -> bool:
    Place(key="p", name="p", pattern=pattern)
    return True


def test_the_line_runs_through_its_points_and_over_midnight() -> None:
    line = WeekLine(DAY)
    assert line.at(9 * 60) == pytest.approx((19.0, 55.0))
    assert line.at(0) == pytest.approx((18.0, 55.0))
    assert line.at(6 * DAY_MINUTES + 12 * 60)[0] == pytest.approx(22.0)


def test_a_night_set_back_is_two_steps_and_leaves_the_day() -> None:
    pattern = set_back(CONSTANT, time(22), time(7), 16.0)
    assert valid(pattern)
    line = WeekLine(pattern)
    warmths = [line.at(hour * 60)[0] for hour in (3, 6.9, 7, 12, 21.9, 22, 23)]
    assert warmths == pytest.approx([16, 16, 20, 20, 20, 16, 16])
    assert line.at(22 * 60, after=False)[0] == 20.0
    assert lines_agree(set_back(pattern, time(22), time(7), 16.0), pattern)


def test_a_set_back_by_day_keeps_the_humidity() -> None:
    line = WeekLine(set_back(DAY, time(9), time(12), 10.0))
    assert line.at(10 * 60) == pytest.approx((10.0, 55 - 5 / 3))
    assert line.at(15 * 60)[0] == pytest.approx(21.0)


def test_a_heater_that_goes_on_as_it_goes_off_is_refused() -> None:
    with pytest.raises(InvalidEntry, match="another time"):
        set_back(CONSTANT, time(22), time(22), 16.0)


@given(patterns(), st.integers(0, 287), st.integers(0, 287), st.floats(0, 30))
def test_every_set_back_makes_a_valid_pattern(
    pattern: tuple[PatternPoint, ...], off: int, on: int, celsius: float
) -> None:
    assume(off != on)
    after = set_back(pattern, time_at(off * 5), time_at(on * 5), celsius)
    assert valid(after)
    line = WeekLine(after)
    assert line.at(off * 5)[0] == pytest.approx(celsius)


@given(patterns(), st.data())
def test_a_point_moved_anywhere_keeps_the_pattern_valid_and_in_order(
    pattern: tuple[PatternPoint, ...], data: st.DataObject
) -> None:
    index = data.draw(st.integers(0, len(pattern) - 1))
    minute = data.draw(st.integers(-200, 1700))
    after = moved(pattern, index, minute=minute, celsius=21.0)
    assert valid(after)
    assert after == in_order(after)
    assert after[index].celsius == 21.0
    low, high = room_to_move(pattern, index)
    assert low <= minute_of(after[index].at) <= high


@given(patterns(), st.integers(0, 287), st.integers(0, 6))
def test_a_point_added_upon_the_line_changes_nothing(
    pattern: tuple[PatternPoint, ...], five: int, weekday: int
) -> None:
    day = weekday if differs(pattern) else None
    minute = 5 * five
    taken = [minute_of(pattern[i].at) for i in indexes_on(pattern, day or 0)]
    assume(minute not in taken)
    after, index = with_point(pattern, day, minute)
    assert after[index].at == time_at(minute)
    left, right = WeekLine(pattern), WeekLine(after)
    for look in range(0, 7 * DAY_MINUTES, 61):
        # The added point is on a hundredth of a degree.
        assert left.at(look)[0] == pytest.approx(right.at(look)[0], abs=0.011)


@given(patterns())
def test_parting_the_days_changes_nothing_and_is_taken_back(
    pattern: tuple[PatternPoint, ...],
) -> None:
    assert lines_agree(parted(pattern), pattern)
    if not differs(pattern):
        assert alike(parted(pattern), 3) == pattern


def test_one_day_can_be_laid_upon_others() -> None:
    week = parted(DAY)
    saturday = indexes_on(week, 5)[0]
    week = moved(week, saturday, celsius=10.0)
    after = day_copied(week, 5, (6,))
    line = WeekLine(after)
    assert line.at(6 * DAY_MINUTES + 6 * 60)[0] == 10.0
    assert line.at(4 * DAY_MINUTES + 6 * 60)[0] == 16.0


def test_a_day_that_the_line_only_crosses_can_stand_for_all() -> None:
    week = (PatternPoint(at=time(12), celsius=18.0, day=2),)
    assert [point.celsius for point in alike(week, 0)] == [18.0]


def test_the_last_point_stays_and_a_step_has_two() -> None:
    with pytest.raises(InvalidEntry, match="needs one expected temperature"):
        without_point(CONSTANT, 0)
    after, index = with_step(DAY, None, 15 * 60)
    assert after[index - 1 : index + 1] == (after[index], after[index])
    assert valid(after)
    assert without_point(without_point(after, index), index - 1) == DAY


def test_humidity_comes_to_all_points_and_goes_from_all() -> None:
    damp = with_humidity(CONSTANT, 55.0)
    assert [point.humidity_pct for point in damp] == [55.0]
    assert with_humidity(damp, None) == CONSTANT
    assert with_humidity(DAY, 40.0) == DAY
    assert moved(DAY, 0, humidity=200.0)[0].humidity_pct == 100.0
