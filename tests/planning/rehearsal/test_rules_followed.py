"""The parts of the comparison with rules of thumb: the workshop, the rules, the counting."""

from __future__ import annotations

import math
from datetime import timedelta

import numpy as np
import pytest

from studio_planner.planning.quick import quick_plan
from studio_planner.planning.rehearsal.following import follow
from studio_planner.planning.rehearsal.rehearsing import grid_of
from studio_planner.science.air import dew_point
from studio_planner.science.stages import Edge, Stage
from tests.benchmarks.followed import (
    DOUBLING,
    LABEL,
    MAKERS,
    OURS,
    STARTS,
    beats,
    compared,
    counted,
    print_table,
    studio_at,
    true_world,
)
from tests.planning.benchmark_studios import START, make_studio
from tests.planning.rehearsal.outdoors import (
    DAY_CELSIUS,
    GAIN_CELSIUS,
    NIGHT_CELSIUS,
    TIME_CONSTANT_HOURS,
    TYPED_HOURS,
    YEAR,
    Course,
    expected_after,
    two_years,
    workshop,
)
from tests.planning.rehearsal.rules_of_thumb import by_doubling, by_the_label

COURSE = two_years()
STUDIO = make_studio(0, 4, 3, 1)
CURES = (Stage.RECOAT_OPENS, Stage.HANDLE, Stage.PRINT_FREE, Stage.FULL_CURE)


def test_an_unheated_workshop_follows_the_weather_by_a_first_order_lag() -> None:
    celsius = workshop([30.0] * 100, [50.0] * 100).celsius
    end = 30.0 + GAIN_CELSIUS
    for hour in (0, 10, 50, 99):
        lag = math.exp(-(hour + 1) / TIME_CONSTANT_HOURS)
        assert celsius[hour] == pytest.approx(end + (DAY_CELSIUS - end) * lag)


def test_the_heater_holds_day_and_night_and_never_more() -> None:
    celsius = workshop([-5.0] * 240, [80.0] * 240).celsius.reshape(10, 24)
    assert celsius[1:, 9:22] == pytest.approx(np.full((9, 13), DAY_CELSIUS))
    assert celsius.min() == pytest.approx(NIGHT_CELSIUS)
    # Warming up in the morning takes its time.
    assert celsius[5, 7] == pytest.approx(NIGHT_CELSIUS + 2.0)


def test_the_moisture_inside_is_that_of_the_weather() -> None:
    inside = workshop([10.0] * 48, [70.0] * 48)
    for celsius, humidity in zip(inside.celsius, inside.humidity, strict=True):
        assert dew_point(celsius, humidity) == pytest.approx(dew_point(10.0, 70.0))


def test_a_year_in_the_workshop_is_never_colder_than_the_night_nor_cooled() -> None:
    assert len(COURSE.celsius) == 2 * 8760
    assert COURSE.celsius.min() >= NIGHT_CELSIUS
    assert 26.0 < COURSE.celsius.max() < 33.0
    assert COURSE.humidity.max() <= 100.0


def test_a_maker_expects_what_the_last_weeks_were_and_how_far_they_strayed() -> None:
    days = np.tile(20.0 + np.array([0.0, 1.0]), 14)
    celsius = np.concatenate([np.repeat(days, 24), np.full(24 * 30, 99.0)])
    course = Course(celsius, np.full(len(celsius), 50.0))
    expected = expected_after(course, YEAR + timedelta(days=28, hours=7))
    assert [point.celsius for point in expected.pattern] == [20.5] * len(TYPED_HOURS)
    assert expected.band_celsius == 0.5
    assert expected.mean_celsius == pytest.approx(20.5)


def test_the_true_air_of_a_grid_is_the_course_of_the_workshop() -> None:
    start = STARTS[0]
    studio = studio_at(0, start, expected_after(COURSE, start))
    grid = grid_of(quick_plan(studio, start))
    cells = COURSE.cells(grid)
    hour = int((grid.start - YEAR.timestamp()) / 3600.0)
    assert cells.shape == (1, grid.cells)
    quarter = 0.75 * COURSE.celsius[hour] + 0.25 * COURSE.celsius[hour + 1]
    assert cells[0, 0] == pytest.approx(quarter)


@pytest.mark.parametrize("celsius", [12.0, 17.3, 21.0, 28.0])
def test_the_label_tells_the_same_hours_in_any_weather(celsius: float) -> None:
    for product, read in zip(STUDIO.products, by_the_label(STUDIO).products, strict=True):
        for stage in CURES:
            told, law = product.law(stage), read.law(stage)
            assert told is not None
            assert law is not None
            assert law.hours(celsius, Edge.LATE) == pytest.approx(told.hours(20.0), rel=0.02)


def test_what_closes_is_read_off_the_label_as_it_stands() -> None:
    told, read = STUDIO.product("slow"), by_the_label(STUDIO).product("slow")
    one, other = told.law(Stage.RECOAT_CLOSES), read.law(Stage.RECOAT_CLOSES)
    assert one is not None
    assert other is not None
    assert other.hours(26.0, Edge.EARLY) == pytest.approx(one.hours(20.0), rel=0.02)


def test_doubling_every_ten_degrees_halves_at_thirty() -> None:
    label = by_the_label(STUDIO).product("slow").law(Stage.HANDLE)
    warm = by_doubling(STUDIO, 30.0).product("slow").law(Stage.HANDLE)
    assert label is not None
    assert warm is not None
    assert warm.hours(18.0) == pytest.approx(label.hours(18.0) / 2.0)


def test_the_studio_moves_to_a_start_with_its_dates() -> None:
    expected = expected_after(COURSE, STARTS[3])
    studio = studio_at(1, STARTS[3], expected)
    first, moved = make_studio(1, 20, 5, 2).orders[0], studio.orders[0]
    assert moved.promised - first.promised == STARTS[3] - START
    assert studio.places[0].pattern == expected.pattern
    assert studio.places[0].band_celsius == expected.band_celsius


def test_what_goes_wrong_is_counted_once_for_every_maker() -> None:
    start = STARTS[0]
    studio = studio_at(0, start, expected_after(COURSE, start))
    plan = quick_plan(studio, start)
    world = true_world(studio, plan, COURSE, tests=True)
    followed = follow(studio, plan, world)
    found = counted(studio, plan, followed)
    assert found["orders"] == MAKERS * len(studio.orders)
    assert found["windows"] == MAKERS * sum(coat.window is not None for coat in plan.coats)
    assert found["scuffed"] + found["lost"] <= found["missed"] <= found["windows"]
    assert found["late"] <= found["broken"] <= found["late"] + found["raw"]
    assert found["raw"] == 0
    dues = {order.key: order.due(studio.time_zone).timestamp() for order in studio.orders}
    late = sum(int((followed.leaves[key] > due).sum()) for key, due in dues.items())
    assert found["late"] == late


def test_in_the_height_of_summer_our_plan_misses_fewer_windows_than_the_label(
    capsys: pytest.CaptureFixture[str],
) -> None:
    july = STARTS[6]
    rows = compared(COURSE, [july], [0])
    assert rows == compared(COURSE, [july], [0])
    assert rows[True][OURS]["missed"] < rows[True][LABEL]["missed"]
    print_table(rows[True])
    printed = capsys.readouterr().out
    assert all(name in printed for name in (OURS, LABEL, DOUBLING))
    worse = {**rows[True], OURS: rows[True][LABEL]}
    assert not beats(worse)
